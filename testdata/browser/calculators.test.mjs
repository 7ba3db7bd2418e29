// Every calculator on its page, on a phone: the page shows the results of the
// command, for examples, published cases, both systems of units, added and removed
// rows. Bad input is reported at the field, and no number is shown.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, runCommand, box, calculator, eventually, fill, numbers, published, ready, rowCount, set, catalog, readResult, readInputs, units } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

async function open(t, id) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false });
	const page = await newPage(context);
	await page.goto(`${site.url}en/calc/${id}.html`);
	const calc = calculator(page, id);
	await ready(calc);
	return { page, calc };
}

assert.ok(catalog.length >= 30, 'the catalog is nearly empty');

// These calculators together have every kind of input; each of their inputs is
// tested. The others are tested with fewer cases here, because the same code handles
// their declarations; generator/catalog_test.go tests every input of each by the
// command, generator/module/module_test.go the published values in the module.
const thorough = new Set(['wall-volume', 'form-pressure', 'string-line', 'daylight']);

for (const { calculator: id, inputs } of catalog) {
	const full = thorough.has(id);
	const lists = Object.entries(inputs).filter(([, field]) => field.columns).map(([path]) => path);

	test(`${id}: agrees with the command, in both systems of units, and refuses bad input`, async (t) => {
		const { page, calc } = await open(t, id);
		await units(calc, 'us');
		await agrees(calc, id);
		await bothUnits(calc, id);
		if (full) {
			const cases = published(id, 4);
			assert.ok(cases.length > 0, 'no published case');
			for (const entries of cases) await oneCase(calc, id, entries);
			const reset = calc.locator('[data-do=reset]');
			if (await reset.isVisible()) await reset.click();
			await eventually(() => agrees(calc, id));
		}
		const visible = [];
		for (const path of numbers(inputs)) if (await box(calc, path).isVisible()) visible.push(path);
		for (const path of full ? visible : visible.slice(0, 1)) await badInput(calc, id, path, full ? ['abc', '1,500', '99999999', '-5'] : ['abc']);
		for (const list of full ? lists : []) await rows(calc, id, inputs, list);
		assert.deepEqual(page.errors, []);
	});
}

// oneCase fills a published case and compares results and live region.
async function oneCase(calc, id, entries) {
	const answer = runCommand(id, entries);
	if (answer.refused) return;
	await fill(calc, answer.inputs);
	const want = await agrees(calc, id);
	await eventually(async () => {
		const { announced } = await readResult(calc);
		assert.ok(Object.values(want.outs).some((text) => announced.includes(text)), `the live region has none of the results: ${announced}`);
	});
}

async function bothUnits(calc, id) {
	const before = await readInputs(calc, true);
	await units(calc, 'metric');
	await agrees(calc, id, { units: 'metric' });
	assert.deepEqual((await readInputs(calc)).map(([path, text]) => [path, text]), before, 'the units have changed what was typed');
	await units(calc, 'us');
	await eventually(async () => assert.deepEqual(await readInputs(calc, true), before));
	await agrees(calc, id);
}

// badInput fills bad values in one field: each is refused at the field and no number
// is shown; the good value restores the result.
async function badInput(calc, id, path, values) {
	const input = box(calc, path).locator('input');
	const good = await input.inputValue();
	for (const bad of values) {
		const answer = runCommand(id, [...(await readInputs(calc, true)).filter(([p]) => p !== path), [path, bad]]);
		if (!answer.refused) continue;
		await input.fill(bad);
		await refusedAt(calc, path, bad);
	}
	await input.fill(good);
	await agrees(calc, id);
	assert.equal(await input.getAttribute('aria-invalid') ?? 'false', 'false');
}

async function rows(calc, id, inputs, list) {
	if (!await calc.locator(`.fields [data-rows="${list}"]`).isVisible()) return;
	const n = await calc.locator(`.fields [data-rows="${list}"] .rowlist > li`).count();
	const first = (await readInputs(calc)).filter(([path]) => path.startsWith(`${list}.1.`));
	if (first.length === 0) return;
	await rowCount(calc, list, n + 1);
	for (const [path, text] of first) await set(calc, path.replace('.1.', `.${n + 1}.`), text);
	const answer = runCommand(id, await readInputs(calc));
	if (!answer.refused) await agrees(calc, id);
	const cell = `${list}.${n + 1}.${first.find(([path]) => inputs[list].columns[path.split('.')[2]].unit !== undefined)[0].split('.')[2]}`;
	await set(calc, cell, 'abc');
	await refusedAt(calc, cell, 'abc');
	await rowCount(calc, list, n);
	await agrees(calc, id);
}

// refusedAt waits for the refusal and checks that it is at the field and announced to
// screen readers, and that no result of any kind is shown.
async function refusedAt(calc, path, bad) {
	await eventually(async () => {
		const now = await readResult(calc);
		assert.notEqual(now.none, '', `${path}=${bad}: the page does not show that there is no result`);
		assert.deepEqual(now.outs, {}, `${path}=${bad}: a number is shown`);
		assert.deepEqual(now.lists, {}, `${path}=${bad}: a list is shown`);
		assert.deepEqual(now.notes, [], `${path}=${bad}: notes beside the reason`);
		const input = box(calc, path).locator('input');
		assert.equal(await input.getAttribute('aria-invalid'), 'true', `${path}=${bad}: the field is not marked`);
		const error = box(calc, path).locator('.error');
		assert.ok(await error.isVisible() && (await error.innerText()).length > 10, `${path}=${bad}: no error at the field`);
		const described = (await input.getAttribute('aria-describedby') ?? '').split(' ');
		assert.ok(described.includes(await error.getAttribute('id')), `${path}=${bad}: the error does not describe its field`);
		assert.equal(now.none, uiText('ui.calc.see-input'));
	});
	assert.ok(!await calc.locator('[data-part=drawing]').isVisible(), 'the figure of old numbers is shown');
	assert.ok(!await calc.locator('[data-part=work]').isVisible(), 'the arithmetic of old numbers is shown');
	assert.ok(!await calc.locator('[data-part=exact]').isVisible(), 'unrounded old numbers are shown');
}

// typist opens a calculator on a phone whose fold is closed, as a reader finds it.
async function typist(t, id, { lang = 'en', view, init, ...options } = {}) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, hasTouch: true, ...options });
	if (init) await context.addInitScript(init);
	const page = await newPage(context);
	await page.goto(`${site.url}${lang}/calc/${id}.html`);
	const calc = calculator(page, id);
	await calc.locator('fieldset.fields:not([disabled])').waitFor({ timeout: 20_000 });
	await calc.locator('.bar:not([hidden])').waitFor();
	const line = calc.locator('.bar .line');
	return { page, calc, line, site, badge: calc.locator('.bar .badge'), context };
}

// value returns the text of the first text input of a field.
function input(calc, path) { return box(calc, path).locator('input').first(); }

test('the answer is an example until every invented number is the reader’s', async (t) => {
	const { page, calc, line, badge } = await typist(t, 'tie-load');
	const own = ['pressure', 'across', 'up'];
	assert.ok(await badge.isVisible(), 'the bar does not call the example an example');
	for (const [i, path] of own.entries()) {
		assert.equal(await input(calc, path).evaluate((e) => getComputedStyle(e).fontStyle), 'italic', `${path} looks like the reader’s`);
		await input(calc, path).fill(['700', '8', '16'][i]);
		assert.equal(await input(calc, path).evaluate((e) => getComputedStyle(e).fontStyle), 'normal', `${path} looks like an example`);
		await eventually(async () => assert.equal(await badge.isVisible(), i < own.length - 1, `after ${path}`));
	}
	await eventually(async () => assert.equal(await calc.locator('[data-part=tag]').innerText(), uiText('ui.calc.yours')));
	await page.reload();
	await line.waitFor();
	await eventually(async () => assert.equal(await badge.isVisible(), false, 'the reader’s numbers are an example after a reload'));
	assert.equal(await input(calc, 'pressure').inputValue(), '700');
	await calc.locator('[data-do=reset]').click();
	await eventually(async () => assert.equal(await badge.isVisible(), true, 'the example does not come back'));
	assert.deepEqual(page.errors, []);
});

test('“Start empty” leaves no invented number and no row, and puts the reader at the first input', async (t) => {
	const { page, calc, line } = await typist(t, 'wall-volume');
	await calc.locator('[data-do=empty]').click();
	await eventually(async () => assert.equal(await line.innerText(), uiText('ui.calc.missing', { label: 'Core thickness' }), 'the bar does not ask for what is missing'));
	assert.deepEqual(await calc.locator('[data-rows="runs"] .rowlist input').evaluateAll((list) => list.map((e) => e.value)), ['', '', '1', '']);
	assert.equal(await calc.locator('[data-rows="openings"] li').count(), 0, 'example openings stay');
	assert.equal(await calc.locator('[data-rows="block-outs"] li').count(), 0, 'example block-outs stay');
	assert.equal(await calc.locator('.error').count(), 0, 'an input that is only empty is called wrong');
	assert.equal(await page.evaluate(() => document.activeElement.closest('[data-col]')?.dataset.col), 'length');
	await page.keyboard.type('40');
	await page.keyboard.press('Enter');
	assert.equal(await page.evaluate(() => document.activeElement.closest('[data-col]')?.dataset.col), 'height', 'Enter does not go to the next input');
	await page.keyboard.type('9');
	await line.click();
	assert.equal(await page.evaluate(() => document.activeElement.closest('[data-field]')?.dataset.field), 'core', 'the bar does not go to the missing input');
	await page.keyboard.type('6');
	await agrees(calc, 'wall-volume');
	assert.equal(await calc.locator('.bar .badge').isVisible(), false);
});

test('a tap on an input or its label selects, Enter goes on and leaves the last input, and the first key moves nothing', async (t) => {
	const { page, calc } = await typist(t, 'squaring');
	const first = input(calc, 'side-a');
	await first.tap();
	const place = await first.boundingBox();
	await page.keyboard.type('6');
	assert.equal(await first.inputValue(), '6', 'the tap does not select');
	assert.deepEqual(await first.boundingBox(), place, 'the first key moves the field');
	await box(calc, 'side-b').locator('label').tap();
	await page.keyboard.type('8');
	assert.equal(await input(calc, 'side-b').inputValue(), '8', 'a tap on the label does not select');
	const seen = [];
	for (let i = 0; i < 12 && await page.evaluate(() => document.activeElement !== document.body); i++) {
		seen.push(await page.evaluate(() => document.activeElement.closest('[data-field], [data-rows]')?.dataset.field));
		await page.keyboard.press('Enter');
	}
	assert.ok(seen.length > 1 && seen.length < 12, `Enter does not leave the last input: ${seen}`);
	assert.equal(await page.evaluate(() => document.activeElement === document.body), true);
});
