// The drawings of the manual, as a browser draws them.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { root } from './lib/site.mjs';

test('no label of a drawing is cut at its edge', async (t) => {
	const page = await newPage(await newPhone(t, { saving: false }));
	const folder = join(root, 'content/pictures');
	const names = readdirSync(folder).filter((name) => name.endsWith('.svg'));
	assert.ok(names.length > 40, `${names.length} drawings`);
	let labels = 0;
	const all = [];
	for (const name of names) {
		await page.setContent(readFileSync(join(folder, name), 'utf8'));
		const { count, cut } = await page.evaluate(() => {
			const svg = document.querySelector('svg');
			const edge = svg.getBoundingClientRect();
			const texts = [...svg.querySelectorAll('text')];
			return {
				count: texts.length,
				cut: texts.filter((text) => {
					const box = text.getBoundingClientRect();
					return box.left < edge.left || box.right > edge.right || box.top < edge.top || box.bottom > edge.bottom;
				}).map((text) => text.textContent),
			};
		});
		labels += count;
		all.push(...cut.map((text) => `${name}: ${text}`));
	}
	assert.deepEqual(all, []);
	assert.ok(labels > 200, `${labels} labels`);
});
