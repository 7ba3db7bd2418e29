// Every calculator on its own page, on a phone: what the page shows is what
// the command line says, for examples, published cases, both systems of units,
// rows added and removed; bad input is said at the field and leaves no number.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, ask, box, calculator, eventually, fill, published, ready, rowCount, set, shelf, shown, typed, units } from './lib/form.mjs';
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

assert.ok(shelf.length >= 3, 'the shelf is nearly empty');

for (const { calculator: id, inputs } of shelf) {
	const numbers = Object.entries(inputs).filter(([, field]) => field.unit !== undefined).map(([path]) => path);
	const lists = Object.entries(inputs).filter(([, field]) => field.columns).map(([path]) => path);

	test(`${id}: example and published cases agree with the command line`, async (t) => {
		const { page, calc } = await open(t, id);
		await units(calc, 'us');
		await agrees(calc, id);
		const cases = published(id, 4);
		assert.ok(cases.length > 0, 'no published case');
		for (const entries of cases) {
			const answer = ask(id, entries);
			if (answer.refused) continue;
			await fill(calc, answer.inputs);
			const want = await agrees(calc, id);
			await eventually(async () => {
				const { said } = await shown(calc);
				assert.ok(Object.values(want.outs).some((text) => said.includes(text)), `the live region says none of the results: ${said}`);
			});
		}
		assert.deepEqual(page.faults, []);
	});

	test(`${id}: metric inputs and results agree with the command line, and back`, async (t) => {
		const { page, calc } = await open(t, id);
		await units(calc, 'us');
		const before = await typed(calc);
		await units(calc, 'metric');
		await agrees(calc, id, { units: 'metric' });
		await units(calc, 'us');
		await eventually(async () => assert.deepEqual(await typed(calc), before));
		await agrees(calc, id);
		assert.deepEqual(page.faults, []);
	});

	test(`${id}: bad input is refused at the field, with no number left on show`, async (t) => {
		const { page, calc } = await open(t, id);
		await units(calc, 'us');
		for (const path of numbers) {
			if (!await box(calc, path).isVisible()) continue;
			const input = box(calc, path).locator('input');
			const good = await input.inputValue();
			for (const bad of ['abc', '1,500', '99999999', '-5']) {
				const answer = ask(id, [...(await typed(calc)).filter(([p]) => p !== path), [path, bad]]);
				if (!answer.refused) continue;
				await input.fill(bad);
				await refusedAt(calc, path, bad);
			}
			await input.fill(good);
			await agrees(calc, id);
			assert.equal(await input.getAttribute('aria-invalid') ?? 'false', 'false');
		}
		assert.deepEqual(page.faults, []);
	});

	for (const list of lists) {
		test(`${id}: rows of ${list} can be added and removed`, async (t) => {
			const { page, calc } = await open(t, id);
			await units(calc, 'us');
			const rows = calc.locator(`.fields > [data-rows="${list}"] .rowlist > li`);
			if (!await calc.locator(`.fields > [data-rows="${list}"]`).isVisible()) return;
			const n = await rows.count();
			const first = (await typed(calc)).filter(([path]) => path.startsWith(`${list}.1.`));
			await rowCount(calc, list, n + 1);
			for (const [path, text] of first) await set(calc, path.replace('.1.', `.${n + 1}.`), text);
			const answer = ask(id, await typed(calc));
			if (!answer.refused) await agrees(calc, id);
			const cell = `${list}.${n + 1}.${first.find(([path]) => inputs[list].columns[path.split('.')[2]].unit !== undefined)[0].split('.')[2]}`;
			await set(calc, cell, 'abc');
			await refusedAt(calc, cell, 'abc');
			await rowCount(calc, list, n);
			await agrees(calc, id);
			assert.deepEqual(page.faults, []);
		});
	}
}

// refusedAt waits for the refusal and checks that it is at the field, that a
// screen reader is told, and that no result of any kind is left on show.
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
