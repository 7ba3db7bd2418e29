// Prints latencies with the CPU throttled by four: from a keystroke to the search
// results, and from a keystroke to the new result and figure of each calculator.
// `make bench` runs it. It asserts nothing.
import { chromium } from 'playwright-core';
import { launchOptions, phone } from './lib/chromium.mjs';
import { calculator, ready, catalog } from './lib/form.mjs';
import { Site } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';

const slowdown = 4;
// Typed key by key, as hands type: words, sentences, typing errors.
const typed = {
	en: ['string line', 'vibratr', 'stinger', '3/8', 'wnidow', 'hold point', 'what do i do when the truck is late', 'how much concrete for a 40 ft wall'],
	es: ['puntal', 'vibradro', 'se abrio la forma', 'cuanto concreto pido', 'que hago si se lastima alguien'],
};
const searchLimits = { median: 40, p95: 75 }; // ms

const site = new Site(releaseA, {});
await site.start();
const browser = await chromium.launch(launchOptions);
// Without service workers: saving the manual would run at the same time.
const context = await browser.newContext({ viewport: phone, serviceWorkers: 'block' });
const page = await context.newPage();
const devtools = await context.newCDPSession(page);
await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });

// timed types a text into an input and resolves when an element in one of the places
// has changed and been painted, with the milliseconds since the keystroke.
await page.addInitScript(() => {
	window.timed = (input, text, places) => new Promise((done) => {
		const watch = new MutationObserver(() => {
			watch.disconnect();
			requestAnimationFrame(() => setTimeout(() => done(performance.now() - start)));
		});
		for (const place of places) watch.observe(place, { subtree: true, childList: true, characterData: true, attributes: true });
		setTimeout(() => { watch.disconnect(); done(NaN); }, 2000);
		const start = performance.now();
		input.value = text;
		input.dispatchEvent(new InputEvent('input', { bubbles: true }));
	});
});

for (const lang of Object.keys(typed)) {
	await page.goto(`${site.url}${lang}/order-concrete.html`);
	const load = await page.evaluate(async () => {
		const start = performance.now();
		const box = document.getElementById('q');
		box.focus();
		box.value = 'wall';
		box.dispatchEvent(new InputEvent('input', { bubbles: true }));
		while (!document.querySelector('#hits b')) await new Promise((done) => requestAnimationFrame(done));
		return performance.now() - start;
	});
	console.log(`search in ${lang}, first time: module and index loaded and answered in ${load.toFixed(0)} ms (CPU ÷ ${slowdown})`);
	const times = [];
	for (const text of typed[lang]) {
		for (let n = 1; n <= text.length; n++) {
			times.push(await page.evaluate(async (text) => {
				await new Promise((done) => setTimeout(done, 80)); // a quick hand
				return window.timed(document.getElementById('q'), text, [document.getElementById('hits')]);
			}, text.slice(0, n)));
		}
	}
	report(`search in ${lang}, to the painted list (limits ${searchLimits.median} and ${searchLimits.p95} ms)`, times);
}

const every = [];
for (const { calculator: id, inputs } of catalog) {
	await page.goto(`${site.url}en/calc/${id}.html`);
	await ready(calculator(page, id));
	const times = [];
	// The first number that changes the result; some numbers matter only above a limit.
	for (const field of Object.keys(inputs).filter((path) => inputs[path].unit !== undefined)) {
		if (Number.isNaN(await key(field, 0))) continue;
		for (let i = 1; i <= 40; i++) times.push(await key(field, i));
		break;
	}
	if (times.length === 0) throw new Error(`${id}: no number of the example changes its result`);
	report(id, times);
	every.push(...times);
}
report('all calculators', every);
await browser.close();
await site.stop();

// key types into a number field, alternately the example and the example with its
// first number increased by one, which keeps a text like 8' 0" valid. The field is in
// the middle of the screen, as for a reader.
function key(path, nr) {
	return page.evaluate(async ([path, nr]) => {
		const section = document.querySelector('section.calc');
		const input = section.querySelector(`[data-field="${path}"] input`);
		if (!input?.checkVisibility()) return NaN;
		input.scrollIntoView({ block: 'center' });
		await new Promise((done) => setTimeout(done, 150)); // until deferred work of the last result has run
		const text = input.defaultValue;
		const number = Number.parseFloat(text);
		const next = nr % 2 ? text : text.replace(String(number), String(number + 1));
		return window.timed(input, next, section.querySelectorAll('[data-part=given], [data-part=drawing]'));
	}, [path, nr]);
}

function report(what, times) {
	const good = times.filter((time) => !Number.isNaN(time)).sort((a, b) => a - b);
	const at = (part) => good[Math.ceil(good.length * part) - 1];
	const unchanged = times.length - good.length;
	console.log(`${what}: key to painted result, median ${at(0.5)?.toFixed(0)} ms, p95 ${at(0.95)?.toFixed(0)} ms of ${good.length}${unchanged ? `, ${unchanged} showed no change` : ''} (CPU ÷ ${slowdown})`);
}
