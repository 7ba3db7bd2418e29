// Works a calculator's form the way a hand would, and asks the command line
// for the same case.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { binary, command, root } from './site.mjs';

// catalog is the list of calculators as the command line gives it.
export const catalog = JSON.parse(command('calc', '-json'));

export function calculator(page, id) { return page.locator(`section.calc[data-calc="${id}"]`); }

// numbers lists the inputs of a calculator that take a number, by path.
export function numbers(inputs) {
	return Object.entries(inputs).filter(([, field]) => field.unit !== undefined).map(([path]) => path);
}

// openCard opens the closed card of a calculator on a page that places it, and
// gives the calculator.
export async function openCard(page, id) {
	const card = page.locator(`[data-card="${id}"]:visible`).first();
	const button = card.locator('.open button');
	await button.waitFor();
	if (await button.getAttribute('aria-expanded') === 'false') await button.click();
	const calc = card.locator(`section.calc[data-calc="${id}"]`);
	await ready(calc);
	return calc;
}

// openCards opens every closed card of a page.
export async function openCards(page) {
	for (const card of await page.locator('[data-card]:visible').all()) {
		await card.locator('.open button[aria-expanded=false]').click();
		await ready(card.locator('section.calc'));
	}
}

// ready waits until the calculator answers: its inputs are open. It starts
// when it comes near the screen.
export async function ready(calc) {
	await calc.scrollIntoViewIfNeeded();
	await calc.locator('fieldset.fields:not([disabled])').waitFor({ timeout: 20_000 });
}

// typed reads the form: path and text of every input, as the command line
// takes them. A list without rows is path=''.
export function typed(calc) {
	return calc.evaluate((section) => {
		const text = (box) => {
			const radio = box.querySelector('input[type=radio]');
			if (radio) return box.querySelector('input[type=radio]:checked')?.value ?? '';
			const tick = box.querySelector('input[type=checkbox]');
			if (tick) return tick.checked ? 'yes' : 'no';
			return box.querySelector('input, select').value;
		};
		const list = [];
		for (const box of section.querySelectorAll('.fields > [data-field], .fields > [data-rows]')) {
			if (box.hidden) continue;
			const path = box.dataset.field ?? box.dataset.rows;
			if (box.dataset.field) {
				list.push([path, text(box)]);
				continue;
			}
			const rows = [...box.querySelectorAll('.rowlist > li')];
			if (rows.length === 0) list.push([path, '']);
			rows.forEach((row, i) => {
				for (const cell of row.querySelectorAll('[data-col]')) list.push([`${path}.${i + 1}.${cell.dataset.col}`, text(cell)]);
			});
		}
		return list;
	});
}

// shown reads what the form displays: lead and other results by path, lists
// as rows of texts, notes, and whether a result is on show at all. Where the
// printed example shows both systems of units, one is read.
export function shown(calc, system = 'us') {
	return calc.evaluate((section, part) => {
		const seen = (node) => node.checkVisibility({ checkVisibilityCSS: true });
		const text = (node) => {
			const own = node.querySelector(`.q ${part}`);
			return (own && seen(own) ? own : node).innerText.trim();
		};
		const outs = {};
		for (const box of section.querySelectorAll('[data-out]')) {
			if (seen(box)) outs[box.dataset.out] = text(box.querySelector('dd'));
		}
		const lists = {};
		for (const table of section.querySelectorAll('table[data-list]')) {
			if (!seen(table)) continue;
			lists[table.dataset.list] = [...table.querySelectorAll('tbody tr')].map((row) => [...row.cells].map(text));
		}
		const none = section.querySelector('[data-part=none]');
		return {
			outs, lists,
			none: seen(none) ? none.innerText.trim() : '',
			said: section.querySelector('[data-part=said]').textContent.trim(),
			notes: [...section.querySelectorAll('[data-part=notes] > *')].filter(seen).map((note) => note.innerText.replace(/\s+/g, ' ').trim()),
			errors: [...section.querySelectorAll('.error')].filter(seen).map((error) => error.innerText.trim()),
		};
	}, system === 'us' ? '.us' : '.si');
}

// Asking the command line: a run that is refused gives {refused: its words}.
export function ask(id, entries, { units = 'us', mark = 'point', lang = 'en' } = {}) {
	const options = ['-json', '-units', units, '-lang', lang, ...(mark === 'comma' ? ['-comma'] : [])];
	try {
		const out = execFileSync(binary, ['calc', id, ...options, ...entries.map(([path, text]) => `${path}=${text}`)],
			{ cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
		return JSON.parse(out);
	} catch (error) {
		if (error.status !== 1) throw error;
		return { refused: error.stderr.trim() };
	}
}

// expected puts the command line's answer into the shape of shown().
export function expected(answer) {
	const outs = {};
	const lists = {};
	for (const [path, value] of Object.entries(answer.outputs)) {
		if (Array.isArray(value)) {
			const cols = catalog.find((c) => c.calculator === answer.calculator).outputs[path].columns;
			lists[path] = value.map((row) => Object.keys(cols).map((col) => row[col]?.text ?? ''));
		} else if (value.text !== '') {
			outs[path] = value.text;
		}
	}
	return { outs, lists };
}

// agrees waits until the page shows what the command line says for the texts
// that are in the form, and fails with both where it never does.
export async function agrees(calc, id, style = {}) {
	const entries = await typed(calc);
	const answer = ask(id, entries, style);
	assert.ok(!answer.refused, `${id}: the command line refuses what the form holds: ${answer.refused}\n${JSON.stringify(entries)}`);
	const want = expected(answer);
	await eventually(async () => {
		const { outs, lists, none } = await shown(calc, style.units);
		assert.equal(none, '', 'the page shows no result');
		assert.deepEqual(squeeze({ outs, lists: full(lists) }), squeeze({ outs: want.outs, lists: full(want.lists) }),
			`${id} with ${JSON.stringify(entries)}`);
	});
	return want;
}

// Empty lists are not shown; an empty one and none are the same.
function full(lists) { return Object.fromEntries(Object.entries(lists).filter(([, rows]) => rows.length > 0)); }

// Spaces of every kind count as one; order of keys does not count.
function squeeze(value) {
	const sorted = (v) => (v && typeof v === 'object' && !Array.isArray(v)
		? Object.fromEntries(Object.keys(v).sort().map((key) => [key, sorted(v[key])])) : v);
	return JSON.parse(JSON.stringify(sorted(value)).replace(/[\s\u00a0\u202f\u2009]+/g, ' '));
}

// eventually repeats a check until it holds; its last failure is the test's.
export async function eventually(check, timeout = 8000) {
	const end = Date.now() + timeout;
	for (;;) {
		try {
			return await check();
		} catch (error) {
			if (Date.now() > end) throw error;
			await new Promise((done) => setTimeout(done, 40));
		}
	}
}

// box is the place of one input: a field, or a cell of a list (runs.2.length).
export function box(calc, path) {
	const [field, row, col] = path.split('.');
	if (row === undefined) return calc.locator(`.fields > [data-field="${field}"]`);
	return calc.locator(`.fields > [data-rows="${field}"] .rowlist > li`).nth(Number(row) - 1).locator(`[data-col="${col}"]`);
}

// set fills in one input. A field that is not asked in this case is left out.
export async function set(calc, path, text) {
	const place = box(calc, path);
	if (!await place.isVisible()) return false;
	if (await place.locator('input[type=radio]').count() > 0) {
		if (!await place.locator(`input[value="${text}"]`).isChecked()) await place.locator(`label:has(input[value="${text}"])`).click();
	} else if (await place.locator('input[type=checkbox]').count() > 0) {
		if (await place.locator('input').isChecked() !== (text === 'yes')) await place.locator('label').click();
	} else if (await place.locator('select').count() > 0) {
		await place.locator('select').selectOption(text);
	} else {
		await place.locator('input').fill(text);
	}
	return true;
}

// rowCount makes a list have n rows, with the page's own buttons.
export async function rowCount(calc, field, n) {
	const list = calc.locator(`.fields > [data-rows="${field}"]`);
	if (!await list.isVisible()) return;
	const rows = list.locator('.rowlist > li');
	while (await rows.count() > n) await rows.last().locator('[data-do=drop]').click();
	while (await rows.count() < n) await list.locator('[data-do=add]').click();
}

// fill puts a whole case into the form, as the command line writes it out.
// Answers that open further questions come first.
// What a case leaves empty is emptied.
export async function fill(calc, inputs) {
	const fields = Object.entries(inputs);
	for (const path of await calc.evaluate((section) => [...section.querySelectorAll('.fields > [data-field]')].map((place) => place.dataset.field))) {
		const input = box(calc, path).locator('input:not([type=radio], [type=checkbox])');
		if (!(path in inputs) && await input.isVisible()) await input.fill('');
	}
	for (let round = 0; round < 2; round++) {
		for (const [path, value] of fields) {
			if (!Array.isArray(value) && (await box(calc, path).locator('input[type=radio], input[type=checkbox], select').count()) > 0) {
				await set(calc, path, typeof value.value === 'boolean' ? (value.value ? 'yes' : 'no') : value.value);
			}
		}
	}
	for (const [path, value] of fields) {
		if (!Array.isArray(value)) {
			await set(calc, path, typeof value.value === 'boolean' ? (value.value ? 'yes' : 'no') : typeof value.value === 'number' ? value.text : value.value);
			continue;
		}
		await rowCount(calc, path, value.length);
		for (const [i, row] of value.entries()) {
			for (const [col, cell] of Object.entries(row)) await set(calc, `${path}.${i + 1}.${col}`, cell.text);
		}
	}
}

// published gives cases of a calculator from the published values, each a
// list of inputs; they come from handbooks and standards, named in the file.
export function published(id, most) {
	const seen = new Set();
	for (const line of readFileSync(join(root, `testdata/published/${id}.tsv`), 'utf8').split('\n')) {
		const [name, inputs, output] = line.split('\t');
		if (!output || name === 'id' || name.startsWith('#') || output.startsWith('formula:') || inputs === '') continue;
		seen.add(inputs);
	}
	const all = [...seen].map((inputs) => inputs.split('; ').map((part) => part.trim().split(/=(.*)/s).slice(0, 2)));
	const step = Math.max(1, Math.floor(all.length / most));
	return all.filter((_, i) => i % step === 0).slice(0, most);
}

// units presses the calculator's own switch of units.
export async function units(calc, system) {
	await calc.locator(`.tools label:has(input[value="${system}"])`).click();
}
