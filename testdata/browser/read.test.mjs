// Read to me, with a stand-in for the voices of a device.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { newPage, newPhone } from './lib/browser.mjs';
import { eventually } from './lib/form.mjs';
import { measure } from './lib/measure.mjs';
import { serve } from './lib/server.mjs';
import { pocket, releaseA } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

// speech replaces the voices of the browser. window.said lists what was spoken, with its
// voice; a sentence ends only when the test calls window.endSentence. window.awake is the
// number of held wake locks.
function speech(voices) {
	window.said = [];
	window.awake = 0;
	let current;
	const synthesis = new EventTarget();
	Object.assign(synthesis, {
		getVoices: () => voices,
		speak: (u) => { current = u; window.said.push([u.text, u.voice.name, u.lang]); },
		cancel: () => { const u = current; current = undefined; u?.onerror?.({ error: 'interrupted' }); },
	});
	window.endSentence = () => { const u = current; current = undefined; u.onend(); };
	Object.defineProperty(window, 'speechSynthesis', { value: synthesis });
	window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
	Object.defineProperty(navigator, 'wakeLock', { value: { request: async () => { window.awake++; return { release: async () => { window.awake--; } }; } } });
}

const voices = [
	{ name: 'cloud', lang: 'en-US', localService: false, default: true },
	{ name: 'british', lang: 'en-GB', localService: true, default: false },
	{ name: 'device', lang: 'en-US', localService: true, default: false },
	{ name: 'aparato', lang: 'es-MX', localService: true, default: false },
];

async function open(t, path, list = voices, options = {}) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, hasTouch: true, ...options });
	await context.addInitScript(speech, list);
	await context.addInitScript({ path: createRequire(import.meta.url).resolve('axe-core/axe.min.js') });
	const page = await newPage(context);
	await page.goto(site.url + path);
	return { site, page };
}

const begin = (page) => page.locator('.read:visible');
const bar = (page) => page.locator('.reading');
const said = (page) => page.evaluate(() => window.said);
const marked = (page) => page.evaluate(() => [...CSS.highlights.get('spoken') ?? []].map(String).join());

// endPart ends sentences until the part that is spoken has none left.
async function endPart(page) {
	for (let i = 0; i < 30; i++) {
		const before = (await said(page)).length;
		await page.evaluate(() => window.endSentence());
		if ((await said(page)).length === before) return;
	}
	assert.fail('a part has no end');
}

test('cautions first, then step after step, sentence by sentence, with a voice of the device; the sentence is marked; the screen stays on', async (t) => {
	const { page } = await open(t, 'en/placing-at-corners.html');
	await page.evaluate(() => { document.documentElement.dataset.units = 'us'; });
	await begin(page).tap();
	const [first] = await said(page);
	assert.deepEqual(first.slice(1), ['device', 'en-US']);
	assert.ok(first[0].startsWith('WARNING'), first[0]);
	await endPart(page);
	const caution = (await said(page)).map(([text]) => text).join(' ');
	assert.ok(caution.includes('Nobody stands outside a corner while it fills.'), caution);
	assert.equal(await page.evaluate(() => window.awake), 1, 'the screen may go dark');
	assert.equal(await marked(page), '', 'a sentence stays marked after its end');

	const heard = (await said(page)).length;
	await page.waitForTimeout(300);
	assert.equal((await said(page)).length, heard, 'it does not wait for a touch');
	await bar(page).getByRole('button', { name: uiText('ui.read.next') }).tap();
	const steps = page.locator('ol.steps > .step');
	assert.equal(await bar(page).locator('[role=status]').innerText(), uiText('ui.read.step', { n: 1, all: await steps.count() }));
	assert.equal(await marked(page), 'Look at the corner.');
	assert.equal((await said(page)).at(-1)[0], 'Look at the corner.');
	await page.evaluate(() => window.endSentence());
	assert.equal((await said(page)).at(-1)[0], await marked(page));
	assert.match(await marked(page), /^Check the backing/);
	const [box, foot] = [await steps.first().boundingBox(), await bar(page).boundingBox()];
	assert.ok(box.y >= 60 && box.y + box.height <= foot.y + 1, `the step is from ${box.y} to ${box.y + box.height} px, the bar at ${foot.y} px`);

	await bar(page).getByRole('button', { name: uiText('ui.read.again') }).tap();
	assert.equal((await said(page)).at(-1)[0], 'Look at the corner.');
	await bar(page).getByRole('button', { name: uiText('ui.read.next') }).tap();
	await endPart(page);
	const second = (await said(page)).slice(-3).map(([text]) => text).join(' ');
	assert.ok(second.includes('2 ft back from the corner') && !second.includes('mm'), second);
	assert.deepEqual(page.errors, []);
});

test('after the last step it ends; Stop and Escape end it too, and the focus returns to the button', async (t) => {
	const { page } = await open(t, 'en/blow-out.html');
	const parts = await page.locator('ol.steps > .step, .brief').count();
	await begin(page).tap();
	for (let i = 1; i < parts; i++) await bar(page).getByRole('button', { name: uiText('ui.read.next') }).tap();
	assert.ok(await bar(page).isVisible());
	await bar(page).getByRole('button', { name: uiText('ui.read.next') }).tap();
	assert.equal(await bar(page).count(), 0);
	await eventually(async () => assert.equal(await page.evaluate(() => window.awake), 0));
	for (const end of [() => page.keyboard.press('Escape'), () => bar(page).getByRole('button', { name: uiText('ui.read.stop') }).tap()]) {
		await begin(page).focus();
		await page.keyboard.press('Enter');
		await bar(page).waitFor();
		await end();
		assert.equal(await bar(page).count(), 0);
		assert.ok(await begin(page).evaluate((b) => b === document.activeElement), 'the focus is lost');
		assert.equal(await marked(page), '');
	}
	assert.equal(await page.evaluate(() => window.awake), 0);
	assert.deepEqual(page.errors, []);
});

test('in Spanish with a Spanish voice; a device without one says so, and what to do', async (t) => {
	const { page } = await open(t, 'es/placing-at-corners.html');
	await begin(page).tap();
	assert.deepEqual((await said(page))[0].slice(1), ['aparato', 'es-MX']);
	assert.equal(await begin(page).innerText(), uiText('ui.read', {}, 'es'));
	const bare = await open(t, 'es/placing-at-corners.html', [voices[0], voices[2]]);
	await begin(bare.page).tap();
	assert.equal(await bare.page.getByRole('alert').innerText(), uiText('ui.read.none', {}, 'es'));
	assert.equal(await bar(bare.page).count(), 0);
	await bare.page.goto(`${bare.site.url}en/placing-at-corners.html`);
	await begin(bare.page).tap();
	assert.equal((await said(bare.page))[0][1], 'device');
});

test('voices that come late are waited for; a voice of the network is never used', async (t) => {
	const { page } = await open(t, 'en/bulge.html', []);
	await page.evaluate((list) => setTimeout(() => {
		speechSynthesis.getVoices = () => list;
		speechSynthesis.dispatchEvent(new Event('voiceschanged'));
	}, 300), voices);
	await begin(page).tap();
	await eventually(async () => assert.equal((await said(page))[0]?.[1], 'device'));
	const network = await open(t, 'en/bulge.html', [voices[0]]);
	await begin(network.page).tap();
	assert.equal(await network.page.getByRole('alert').innerText(), uiText('ui.read.none'));
	assert.deepEqual(await said(network.page), []);
});

test('a folded caution is opened and read whole; the bar has large keys, contrast and no fault of axe, in light and dark', async (t) => {
	const { page } = await open(t, 'en/under-windows.html');
	await begin(page).tap();
	await endPart(page);
	const text = (await said(page)).map(([part]) => part).join(' ');
	assert.ok(text.includes('Keep your hands out of the gap'), text);
	for (const button of (await bar(page).getByRole('button').all()).slice(0, 2)) assert.ok((await button.boundingBox()).height >= 60);
	for (const colorScheme of ['light', 'dark']) {
		await page.emulateMedia({ colorScheme });
		assert.deepEqual(await page.evaluate(async () => (await window.axe.run(document, { resultTypes: ['violations'] })).violations
			.flatMap((v) => v.nodes.map((node) => `${v.id}: ${node.target.join(' ')}`))), [], colorScheme);
		assert.deepEqual(await page.evaluate(measure.contrast), [], colorScheme);
	}
	assert.deepEqual(await page.evaluate(measure.targets), []);
});

test('in the one-file edition another page ends the reading', async (t) => {
	const context = await newPhone(t);
	await context.addInitScript(speech, voices);
	const page = await newPage(context);
	await page.goto(`${pathToFileURL(pocket).href}#en.bulge`);
	await begin(page).click();
	await bar(page).waitFor();
	await page.evaluate(() => { location.hash = '#en.hot-load'; });
	await eventually(async () => assert.equal(await bar(page).count(), 0));
	assert.deepEqual(page.errors, []);
});
