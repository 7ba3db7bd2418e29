// Prints what a reader waits for a page on a slow phone and a poor line, from an empty
// device. `make bench` runs it. It asserts nothing; felt.test.mjs holds the shifts.
import { chromium } from 'playwright-core';
import { launchOptions, phone } from './lib/chromium.mjs';
import { felt, hurried, slow } from './lib/felt.mjs';
import { Site } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';

const site = new Site(releaseA, { zip: true });
await site.start();
const browser = await chromium.launch(launchOptions);
console.log('largest paint at a processor four times slower and slow 4G, limit 2500 ms; shifts of the layout, limit 0.02');
for (const name of hurried) {
	const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
	const page = await context.newPage();
	await slow(page);
	const { paint, shift } = await felt(page, site.url + name);
	console.log(`${name.padEnd(28)} ${String(Math.round(paint)).padStart(6)} ms   ${shift.toFixed(3)}`);
	await context.close();
}
await browser.close();
await site.stop();
