// Takes the picture of the README, `make picture`: the home page, a procedure, and a
// calculator with an answer, side by side at the size of a phone.
import { chromium } from 'playwright-core';
import { fileURLToPath } from 'node:url';
import { launchOptions, phone } from './lib/chromium.mjs';
import { ready, calculator } from './lib/form.mjs';
import { Site } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';

const gap = 12;
const site = new Site(releaseA, {});
await site.start();
const browser = await chromium.launch(launchOptions);
const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
const shots = [];
for (const name of ['', 'en/placing-by-lifts.html', 'en/calc/string-line.html']) {
	const page = await context.newPage();
	await page.goto(site.url + name);
	if (name.includes('calc/')) await ready(calculator(page, 'string-line'));
	// Not on the picture: whether it is saved depends on the machine that takes it.
	await page.evaluate(() => { for (const line of document.querySelectorAll('.saved')) line.remove(); });
	shots.push((await page.screenshot()).toString('base64'));
	await page.close();
}
const sheet = await browser.newPage({ viewport: { width: shots.length * (phone.width + gap) + gap, height: phone.height + 2 * gap } });
await sheet.setContent(`<style>body{margin:${gap}px;display:flex;gap:${gap}px;background:#5d646d}</style>${shots.map((shot) => `<img src="data:image/png;base64,${shot}">`).join('')}`);
await sheet.screenshot({ path: fileURLToPath(new URL('../phone.png', import.meta.url)) });
await browser.close();
await site.stop();
