// Nothing jumps while a page loads.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { felt, hurried, slow } from './lib/felt.mjs';
import { serve } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';

const mostShift = 0.02; // our own limit; 0.1 counts as good on the web (from memory)

for (const name of hurried) {
	test(`the layout of ${name} does not shift while it loads on a slow phone`, async (t) => {
		const site = await serve(t, releaseA);
		const page = await newPage(await newPhone(t, { saving: false }));
		await slow(page, { network: false });
		const { shift } = await felt(page, site.url + name);
		assert.ok(shift <= mostShift, `the layout shifts by ${shift.toFixed(3)}`);
	});
}
