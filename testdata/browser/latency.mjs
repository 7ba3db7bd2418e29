// Prints how long a reader waits at a phone four times slower than this
// machine: from a key to the search results, and from a key to the new result
// of a calculator. Part of `make bench`; it asserts nothing.
import { chromium } from 'playwright-core';
import { launchOptions, phone } from './lib/chromium.mjs';
import { calculator, ready, shelf } from './lib/form.mjs';
import { Site } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';

const slowdown = 4;
const words = ['brace', 'string line', 'vibratr', 'stinger', 'order concrete', '3/8', 'hold point', 'wnidow', 'cold joint', 'form pressure',
	'pump', 'blowout', 'radius', 'slump', 'honeycomb', 'gauge block', 'anchor bolt', 'lift', 'truck ticket', 'curved wall'];

const site = new Site(releaseA, {});
await site.start();
const browser = await chromium.launch(launchOptions);
const context = await browser.newContext({ viewport: phone });
const page = await context.newPage();
const devtools = await context.newCDPSession(page);
await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });

// changed resolves in the page when what look() reads has changed and has been
// painted, with the milliseconds since the key.
await page.addInitScript(() => {
	window.timed = (input, text, look) => new Promise((done) => {
		const before = look();
		const start = performance.now();
		const watch = new MutationObserver(() => {
			if (look() === before) return;
			watch.disconnect();
			requestAnimationFrame(() => setTimeout(() => done(performance.now() - start)));
		});
		watch.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
		input.value = text;
		input.dispatchEvent(new InputEvent('input', { bubbles: true }));
		setTimeout(() => { watch.disconnect(); done(NaN); }, 5000);
	});
});

await page.goto(site.url);
const load = await page.evaluate(async () => {
	const start = performance.now();
	const hits = document.getElementById('hits');
	document.getElementById('q').focus();
	await window.timed(document.getElementById('q'), 'wall', () => String(hits.hidden));
	return performance.now() - start;
});
console.log(`search, first time: module and index loaded and answered in ${load.toFixed(0)} ms (CPU ÷ ${slowdown})`);

const searches = [];
for (const word of words) {
	searches.push(await page.evaluate((text) => {
		const hits = document.getElementById('hits');
		return window.timed(document.getElementById('q'), text, () => hits.innerText);
	}, word));
}
report('search', searches);

for (const { calculator: id, inputs } of shelf) {
	await page.goto(`${site.url}en/calc/${id}.html`);
	await ready(calculator(page, id));
	const field = Object.entries(inputs).find(([, f]) => f.unit !== undefined)[0];
	const times = [];
	for (let i = 0; i < 20; i++) {
		times.push(await page.evaluate(([path, nr]) => {
			const section = document.querySelector('section.calc');
			const input = section.querySelector(`[data-field="${path}"] input`);
			// To and fro between the example and one more of its first number:
			// 9' 0" reads as well as 8' 0", which 8.25' 0" would not.
			const text = input.defaultValue;
			const number = Number.parseFloat(text);
			const next = nr % 2 ? text : text.replace(String(number), String(number + 1));
			const look = () => section.querySelector('[data-part=drawing]').innerHTML + [...section.querySelectorAll('[data-part=given]')].map((p) => p.textContent);
			return window.timed(input, next, look);
		}, [field, i]));
	}
	report(id, times);
}
await browser.close();
await site.stop();

function report(what, times) {
	const good = times.filter((time) => !Number.isNaN(time)).sort((a, b) => a - b);
	const at = (part) => good[Math.min(good.length - 1, Math.floor(good.length * part))];
	const lost = times.length - good.length;
	console.log(`${what}: key to painted result, median ${at(0.5)?.toFixed(0)} ms, p95 ${at(0.95)?.toFixed(0)} ms of ${good.length}${lost ? `, ${lost} showed no change` : ''} (CPU ÷ ${slowdown})`);
}
