// The tasks of a pour day, played by a thumb from the home page of an empty phone, offline,
// with the touches, keys and swipes that each may take (our own limits). `make bench`
// prints the counts.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { Hand } from './lib/hand.mjs';
import { saved } from './lib/offline.mjs';
import { serve } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';
import { tasks } from './lib/tasks.mjs';

const mostSwipes = 1;

test('the tasks of a pour day, counted', async (t) => {
	const site = await serve(t, releaseA);
	const first = await newPhone(t, { hasTouch: true });
	const page = await newPage(first);
	await page.goto(site.url);
	await saved(page);
	await site.stop();
	for (const lang of ['en', 'es']) {
		for (const task of tasks) {
			await t.test(`${lang}: ${task.name}`, async () => {
				await page.goto(lang === 'en' ? site.url : `${site.url}es/`);
				await page.evaluate(() => localStorage.clear());
				await page.reload();
				const hand = new Hand(page);
				await task.play(hand, page, lang);
				const count = hand.count();
				console.log(`${lang} ${task.name}: ${count.touches} touches, ${count.keys} keys, ${count.swipes} swipes`);
				assert.ok(count.touches <= task.touches, `${count.touches} touches, at most ${task.touches}`);
				assert.ok(count.keys <= (task.keys ?? 0), `${count.keys} keys, at most ${task.keys ?? 0}`);
				assert.ok(count.swipes <= mostSwipes, `${count.swipes} swipes, at most ${mostSwipes}; the last for ${count.reason}`);
				assert.deepEqual(page.errors, []);
			});
		}
	}
});
