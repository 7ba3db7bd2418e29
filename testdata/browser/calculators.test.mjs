// Every calculator on its own page, on a phone: what the page shows is what
// the command line says, for examples, published cases, both systems of units,
// rows added and removed; bad input is said at the field and leaves no number.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, ask, box, calculator, eventually, fill, numbers, published, ready, rowCount, set, catalog, shown, typed, units } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';
import { say } from './lib/words.mjs';

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

// These have every kind of input between them, and are tried field by field.
// The others go through the same motions with fewer cases: their declarations
// are read by the same code, every input of each is tried on the command line
// (generator/catalog_test.go), and the published values in the shipped module
// (generator/module/module_test.go).
const thorough = new Set(['wall-volume', 'form-pressure', 'string-line', 'daylight']);

for (const { calculator: id, inputs } of catalog) {
	const whole = thorough.has(id);
	const lists = Object.entries(inputs).filter(([, field]) => field.columns).map(([path]) => path);

	test(`${id}: agrees with the command line, in both systems of units, and refuses bad input`, async (t) => {
		const { page, calc } = await open(t, id);
		await units(calc, 'us');
		await agrees(calc, id);
		await bothUnits(calc, id);
		if (whole) {
			const cases = published(id, 4);
			assert.ok(cases.length > 0, 'no published case');
			for (const entries of cases) await oneCase(calc, id, entries);
			const reset = calc.locator('[data-do=reset]');
			if (await reset.isVisible()) await reset.click();
			await eventually(() => agrees(calc, id));
		}
		const visible = [];
		for (const path of numbers(inputs)) if (await box(calc, path).isVisible()) visible.push(path);
		for (const path of whole ? visible : visible.slice(0, 1)) await badInput(calc, id, path, whole ? ['abc', '1,500', '99999999', '-5'] : ['abc']);
		for (const list of whole ? lists : []) await rows(calc, id, inputs, list);
		assert.deepEqual(page.faults, []);
	});
}

async function oneCase(calc, id, entries) {
	const answer = ask(id, entries);
	if (answer.refused) return;
	await fill(calc, answer.inputs);
	const want = await agrees(calc, id);
	await eventually(async () => {
		const { said } = await shown(calc);
		assert.ok(Object.values(want.outs).some((text) => said.includes(text)), `the live region says none of the results: ${said}`);
	});
}

async function bothUnits(calc, id) {
	const before = await typed(calc);
	await units(calc, 'metric');
	await agrees(calc, id, { units: 'metric' });
	await units(calc, 'us');
	await eventually(async () => assert.deepEqual(await typed(calc), before));
	await agrees(calc, id);
}

// badInput tries mistyped values at one field: each is refused there, with
// no number left on show, and the good value brings the result back.
async function badInput(calc, id, path, slips) {
	const input = box(calc, path).locator('input');
	const good = await input.inputValue();
	for (const bad of slips) {
		const answer = ask(id, [...(await typed(calc)).filter(([p]) => p !== path), [path, bad]]);
		if (!answer.refused) continue;
		await input.fill(bad);
		await refusedAt(calc, path, bad);
	}
	await input.fill(good);
	await agrees(calc, id);
	assert.equal(await input.getAttribute('aria-invalid') ?? 'false', 'false');
}

async function rows(calc, id, inputs, list) {
	if (!await calc.locator(`.fields > [data-rows="${list}"]`).isVisible()) return;
	const n = await calc.locator(`.fields > [data-rows="${list}"] .rowlist > li`).count();
	const first = (await typed(calc)).filter(([path]) => path.startsWith(`${list}.1.`));
	if (first.length === 0) return;
	await rowCount(calc, list, n + 1);
	for (const [path, text] of first) await set(calc, path.replace('.1.', `.${n + 1}.`), text);
	const answer = ask(id, await typed(calc));
	if (!answer.refused) await agrees(calc, id);
	const cell = `${list}.${n + 1}.${first.find(([path]) => inputs[list].columns[path.split('.')[2]].unit !== undefined)[0].split('.')[2]}`;
	await set(calc, cell, 'abc');
	await refusedAt(calc, cell, 'abc');
	await rowCount(calc, list, n);
	await agrees(calc, id);
}

// refusedAt waits for the refusal and checks that it is at the field, that a
// screen reader is notified, and that no result of any kind is left on show.
async function refusedAt(calc, path, bad) {
	await eventually(async () => {
		const now = await shown(calc);
		assert.notEqual(now.none, '', `${path}=${bad}: the page does not say that there is no result`);
		assert.deepEqual(now.outs, {}, `${path}=${bad}: a number is left on show`);
		assert.deepEqual(now.lists, {}, `${path}=${bad}: a list is left on show`);
		const input = box(calc, path).locator('input');
		assert.equal(await input.getAttribute('aria-invalid'), 'true', `${path}=${bad}: the field is not marked`);
		const error = box(calc, path).locator('.error');
		assert.ok(await error.isVisible() && (await error.innerText()).length > 10, `${path}=${bad}: no error at the field`);
		const described = (await input.getAttribute('aria-describedby') ?? '').split(' ');
		assert.ok(described.includes(await error.getAttribute('id')), `${path}=${bad}: the error does not describe its field`);
		assert.equal(now.none, say('ui.calc.see-input'));
	});
	assert.ok(!await calc.locator('[data-part=drawing]').isVisible(), 'the figure of old numbers is left on show');
	assert.ok(!await calc.locator('[data-part=work]').isVisible(), 'the arithmetic of old numbers is left on show');
	assert.ok(!await calc.locator('[data-part=exact]').isVisible(), 'unrounded old numbers are left on show');
}
