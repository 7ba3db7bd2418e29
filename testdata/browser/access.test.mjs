// Accessibility of the pages at two widths, in light, dark and high contrast: axe,
// contrast, sizes of targets, reflow, text spacing, keyboard.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import { desktop, newPage, newPhone, phone } from './lib/browser.mjs';
import { calculator, numbers, openCards, ready, catalog } from './lib/form.mjs';
import { leaveSettings, openSettings } from './lib/journey.mjs';
import { measure } from './lib/measure.mjs';
import { serve } from './lib/server.mjs';
import { pages, releaseA, spread } from './lib/site.mjs';

const axe = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

// The states in which pages are tested. In light all rules of axe run; in the other
// states only the rules about colours, because the document is the same.
const states = [
	{ name: 'light, 360 px', viewport: phone },
	{ name: 'light, 1280 px', viewport: desktop },
	{ name: 'dark, 360 px', viewport: phone, media: { colorScheme: 'dark' }, rules: ['color-contrast', 'link-in-text-block'] },
	{ name: 'dark, 1280 px', viewport: desktop, media: { colorScheme: 'dark' }, rules: ['color-contrast', 'link-in-text-block'] },
	{ name: 'high contrast, 360 px', viewport: phone, media: { contrast: 'more' }, rules: ['color-contrast', 'link-in-text-block'] },
	{ name: 'high contrast, 1280 px', viewport: desktop, media: { contrast: 'more' }, rules: ['color-contrast', 'link-in-text-block'] },
	{ name: 'dark high contrast, 360 px', viewport: phone, media: { colorScheme: 'dark', contrast: 'more' }, rules: ['color-contrast'] },
];
const defaults = { colorScheme: 'light', contrast: null, reducedMotion: 'reduce', forcedColors: 'none' };

async function runAxe(page, rules) {
	return page.evaluate(async (only) => {
		const result = await window.axe.run(document, {
			resultTypes: ['violations'], iframes: false, preload: false,
			runOnly: only ? { type: 'rule', values: only } : { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] },
		});
		return result.violations.flatMap((v) => v.nodes.map((node) => `${v.id}: ${v.help}: ${node.target.join(' ')}`));
	}, rules);
}

// The page of every calculator and 30 other pages are tested in the first state, 10
// of them in all states, because the other states differ only in colours and widths,
// which one style sheet sets. With COURSEBOOK_EVERYWHERE every page is tested in
// all states.
const inAllStates = spread(pages(), 10);
const tested = [...new Set([...spread(pages(), 30), ...inAllStates, ...catalog.map((c) => `en/calc/${c.calculator}.html`)])];

// measureAll opens every tested page once and measures it in its states. It returns
// the findings by measurement, each with the names of its pages.
async function measureAll(t) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false });
	await context.addInitScript({ path: axe });
	const page = await newPage(context);
	const all = new Map();
	let name;
	const note = (what, findings) => {
		if (!all.has(what)) all.set(what, new Map());
		for (const finding of findings) all.get(what).set(finding, [...(all.get(what).get(finding) ?? []), name]);
	};
	for (name of tested) {
		await page.emulateMedia(defaults);
		await page.setViewportSize(phone);
		await page.goto(site.url + name);
		note('targets', await page.evaluate(measure.targets)); // with its cards closed
		await openCards(page);
		for (const calc of await page.locator('section.calc').all()) await ready(calc);
		await page.evaluate(() => {
			for (const details of document.querySelectorAll('details')) details.open = true;
			scrollTo(0, 0);
			// Where a bar is stuck, part of an input lies below it; the tests of the keyboard
			// hold that an input with the focus does not.
			const sheet = new CSSStyleSheet();
			sheet.replaceSync('.bar { position: static !important; }');
			document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
		});
		note('targets', await page.evaluate(measure.targets));
		note('gaps', await page.evaluate(measure.gaps));
		note('edges', await page.evaluate(measure.edges));
		for (const { name: state, viewport, media, rules } of inAllStates.includes(name) ? states : states.slice(0, 1)) {
			await page.setViewportSize(viewport);
			await page.emulateMedia({ ...defaults, ...media });
			note(`axe: ${state}`, await runAxe(page, rules));
			if (viewport === phone) note(`contrast: ${state}`, await page.evaluate(measure.contrast));
		}
		if (!inAllStates.includes(name)) continue;
		await page.emulateMedia(defaults);
		await page.setViewportSize({ width: 320, height: 640 });
		note('reflow', await page.evaluate(measure.reflow));
		await page.evaluate(measure.space);
		note('spacing', [...await page.evaluate(measure.reflow), ...await page.evaluate(measure.clipped)]);
		await page.setViewportSize({ width: 640, height: 900 });
		await page.evaluate(measure.enlarge);
		note('200 %', [...await page.evaluate(measure.reflow), ...await page.evaluate(measure.clipped)]);
	}
	return all;
}

function none(findings) {
	const lines = [...findings].map(([finding, names]) => `${finding}  (${names.length > 3 ? `${names.length} pages, first ${names[0]}` : names.join(', ')})`);
	assert.equal(lines.length, 0, `${lines.length} findings:\n${lines.slice(0, 60).join('\n')}`);
}

test('the pages of the manual', async (t) => {
	const all = await measureAll(t);
	for (const { name } of states) await t.test(`axe has no findings: ${name}`, () => none(all.get(`axe: ${name}`)));
	for (const { name, viewport } of states) {
		if (viewport === phone) await t.test(`all text has a contrast of 7 to 1, body text 15 to 1: ${name}`, () => none(all.get(`contrast: ${name}`)));
	}
	await t.test('every control is 44 px each way, those of calculators 60 px high', () => none(all.get('targets')));
	await t.test('controls of calculators are 8 px apart', () => none(all.get('gaps')));
	await t.test('inputs of a calculator have one left edge', () => none(all.get('edges')));
	await t.test('at 320 px only tables scroll sideways, in their box', () => none(all.get('reflow')));
	await t.test('with the text spacing of WCAG 1.4.12 nothing is cut off', () => none(all.get('spacing')));
	await t.test('with text of twice the size nothing is cut off', () => none(all.get('200 %')));
});

test('the settings: controls are large enough, axe has no findings, leaving goes back to the page before', async (t) => {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false });
	await context.addInitScript({ path: axe });
	const page = await newPage(context);
	for (const name of ['index.html', 'es/calc/form-pressure.html']) {
		await page.goto(site.url + name);
		await openSettings(page);
		none((await page.evaluate(measure.targets)).map((line) => [line, [name]]));
		none((await page.evaluate(measure.contrast)).map((line) => [line, [name]]));
		none((await runAxe(page)).map((line) => [line, [name]]));
		await leaveSettings(page);
	}
});

test('forced colours: the chosen, marked and focused controls are visible', async (t) => {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, forcedColors: 'active' });
	await context.addInitScript({ path: axe });
	const page = await newPage(context);
	await page.goto(`${site.url}en/calc/form-pressure.html`);
	const calc = calculator(page, 'form-pressure');
	await ready(calc);
	none((await runAxe(page)).map((line) => [line, ['form-pressure']]));
	// A chosen option must differ from the others by more than a colour.
	const looks = await calc.locator('[data-field=cement] label').evaluateAll((labels) => labels.map((label) => {
		const input = label.querySelector('input');
		const style = [label, label.querySelector('span')].map((e) => getComputedStyle(e)).map((s) => [s.borderWidth, s.borderStyle, s.borderColor, s.outlineStyle, s.backgroundColor, s.textDecorationLine, s.fontWeight]);
		const box = input.getBoundingClientRect();
		return { chosen: input.checked, native: box.width > 8 && getComputedStyle(input).opacity !== '0' && getComputedStyle(input).appearance !== 'none', style: JSON.stringify(style) };
	}));
	const chosen = looks.find((look) => look.chosen);
	assert.ok(chosen.native || looks.filter((look) => !look.chosen).every((look) => look.style !== chosen.style), JSON.stringify(looks));
});

test('the measurements of this file find planted errors', async (t) => {
	const site = await serve(t, releaseA, {
		answer: (name) => (name === 'bad.html' ? {
			body: `<!doctype html><html lang="en"><title>Bad page</title><body><main class="sheet"><h1>Bad</h1><p style="color:#777;background:#fff">grey words</p>
				<button style="width:20px;height:20px;padding:0">x</button><div style="width:900px">wide</div><img src="x.png">
				<p style="height:8px;overflow:hidden">cut off below this line</p>
				<section class="calc"><div class="fields"><p data-field="one">one</p><p data-field="two" style="padding-left:9px">two</p></div></section></main></body>`,
		} : undefined),
	});
	const context = await newPhone(t);
	await context.addInitScript({ path: axe });
	const page = await newPage(context);
	await page.goto(`${site.url}bad.html`);
	assert.ok((await runAxe(page)).some((line) => line.startsWith('image-alt')));
	assert.ok((await page.evaluate(measure.contrast)).some((line) => line.includes('grey words')));
	assert.ok((await page.evaluate(measure.targets)).length === 1);
	assert.deepEqual((await page.evaluate(measure.edges)).map((line) => line.split(' ')[0]), ['two']);
	assert.ok((await page.evaluate(measure.reflow)).length > 0);
	assert.ok((await page.evaluate(measure.clipped)).length > 0);
});

for (const { calculator: id, inputs } of catalog) {
	test(`${id}: the keyboard alone fills it in, and the focus is always visible`, async (t) => {
		const site = await serve(t, releaseA);
		const page = await newPage(await newPhone(t, { saving: false, reducedMotion: 'reduce' }));
		await page.goto(`${site.url}en/calc/${id}.html`);
		const calc = calculator(page, id);
		await ready(calc);
		await page.evaluate(() => { scrollTo(0, 0); document.activeElement?.blur(); });
		const reached = new Set();
		let errorShown = false;
		for (let i = 0; i < 400; i++) {
			await page.keyboard.press('Tab');
			let at = await page.evaluate(measure.focus);
			for (let wait = 0; at && !at.visible && wait < 10; wait++) at = await page.evaluate(measure.focus);
			if (!at) break;
			assert.ok(at.visible, `the focus on ${at.what} is not visible: ${at.why}`);
			assert.ok(at.marked, `the focus on ${at.what} has no ring`);
			if (at.field) reached.add(at.field.split('.')[0]);
			if (!errorShown && numbers(inputs).includes(at.field)) {
				await page.keyboard.press('Control+a');
				await page.keyboard.type('abc');
				await calc.locator('.error:visible').first().waitFor();
				await page.keyboard.press('Control+a');
				await page.keyboard.type(await page.evaluate(() => document.activeElement.defaultValue));
				await calc.locator('.error:visible').first().waitFor({ state: 'hidden' });
				errorShown = true;
			}
			if (at.past) break;
		}
		assert.ok(errorShown, 'no number was reached');
		const asked = await calc.evaluate((section) => [...section.querySelectorAll('.fields [data-field], .fields [data-rows]')]
			.filter((box) => !box.hidden).map((box) => box.dataset.field ?? box.dataset.rows));
		assert.deepEqual(asked.filter((field) => !reached.has(field)), [], 'inputs that Tab does not reach');
	});
}
