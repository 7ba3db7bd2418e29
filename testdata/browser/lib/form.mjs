// Fills and reads a calculator's form, and runs the command with the same inputs.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { binary, command, root } from './site.mjs';

// catalog is the list of calculators that the command prints.
export const catalog = JSON.parse(command('calc', '-json'));

// calculator is the section of a calculator on a page.
export function calculator(page, id) { return page.locator(`section.calc[data-calc="${id}"]`); }

// numbers lists the inputs of a calculator that take a number, by path.
export function numbers(inputs) {
	return Object.entries(inputs).filter(([, field]) => field.unit !== undefined).map(([path]) => path);
}

// openCard opens the card of a calculator and returns the calculator.
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

// ready waits until the inputs of a calculator are enabled, and unfolds those that do
// not decide. A calculator starts only near the screen, so it is scrolled into view.
export async function ready(calc) {
	await calc.scrollIntoViewIfNeeded();
	await calc.locator('fieldset.fields:not([disabled])').waitFor({ timeout: 20_000 });
	await calc.evaluate((section) => section.querySelector('.rest')?.setAttribute('open', ''));
}

// readInputs returns path and text of every input that applies, in the form of the
// command's arguments: as it was typed, or, if shown is true, as the form shows it in the
// reader's units. An input that was typed in another style has units and decimal mark
// behind its text. A list without rows is path=''.
export function readInputs(calc, shown = false) {
	return calc.evaluate((section, shown) => {
		const text = (box) => {
			const radio = box.querySelector('input[type=radio]');
			if (radio) return [box.querySelector('input[type=radio]:checked')?.value ?? ''];
			const tick = box.querySelector('input[type=checkbox]');
			if (tick) return [tick.checked ? 'yes' : 'no'];
			const input = box.querySelector('input, select');
			if (shown || input.dataset.typed === undefined) return [input.value];
			return [input.dataset.typed, input.dataset.system, input.dataset.mark];
		};
		const list = [];
		for (const box of section.querySelectorAll('.fields [data-field], .fields [data-rows]')) {
			if (box.hidden) continue;
			const path = box.dataset.field ?? box.dataset.rows;
			if (box.dataset.field) {
				list.push([path, ...text(box)]);
				continue;
			}
			const rows = [...box.querySelectorAll('.rowlist > li')];
			if (rows.length === 0) list.push([path, '']);
			rows.forEach((row, i) => {
				for (const cell of row.querySelectorAll('[data-col]')) list.push([`${path}.${i + 1}.${cell.dataset.col}`, ...text(cell)]);
			});
		}
		return list;
	}, shown);
}

// argument writes an input as the command reads it in a style: with the unit and the
// decimal mark that it was typed in, where these are others.
function argument(id, [path, text, system, mark], style) {
	if (!system) return [path, text];
	const [field, , col] = path.split('.');
	const { inputs } = catalog.find((c) => c.calculator === id);
	const unit = (col ? inputs[field].columns[col] : inputs[field])[system];
	const bare = /^[-\d.,/ ]+$/.test(text) && system !== style.units && unit;
	const marked = mark === (style.mark ?? 'point') ? text : text.replace(mark === 'point' ? '.' : ',', mark === 'point' ? ',' : '.');
	return [path, bare ? `${marked} ${unit}` : marked];
}

// readResult returns the visible result: outputs by path, lists as rows of texts,
// notes, errors, and the text shown if there is no result. If the page's example
// shows both systems of units, only the given system is returned.
export function readResult(calc, system = 'us') {
	return calc.evaluate((section, figureClass) => {
		const seen = (node) => node.checkVisibility({ checkVisibilityCSS: true });
		const text = (node) => {
			const figure = node.querySelector(`.q ${figureClass}`);
			return (figure && seen(figure) ? figure : node).innerText.trim();
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
			announced: section.querySelector('[data-part=said]').textContent.trim(),
			notes: [...section.querySelectorAll('[data-part=notes] > *')].filter(seen).map((note) => note.innerText.replace(/\s+/g, ' ').trim()),
			errors: [...section.querySelectorAll('.error')].filter(seen).map((error) => error.innerText.trim()),
		};
	}, system === 'us' ? '.us' : '.si');
}

// runCommand runs a calculator by the command. Refused inputs return {refused:
// the printed error}.
export function runCommand(id, entries, { units = 'us', mark = 'point', lang = 'en' } = {}) {
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

// expected converts the command's answer to the form of readResult.
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

// agrees waits until the page shows the command's result for the present inputs,
// and returns that result. It fails with both results at the timeout.
export async function agrees(calc, id, style = {}) {
	const entries = (await readInputs(calc)).map((entry) => argument(id, entry, { units: 'us', ...style }));
	const answer = runCommand(id, entries, style);
	assert.ok(!answer.refused, `${id}: the command refuses the inputs of the form: ${answer.refused}\n${JSON.stringify(entries)}`);
	const want = expected(answer);
	await eventually(async () => {
		const { outs, lists, none } = await readResult(calc, style.units);
		assert.equal(none, '', 'the page shows no result');
		assert.deepEqual(squeeze({ outs, lists: full(lists) }), squeeze({ outs: want.outs, lists: full(want.lists) }),
			`${id} with ${JSON.stringify(entries)}`);
	});
	return want;
}

// full drops empty lists, which the page does not show.
function full(lists) { return Object.fromEntries(Object.entries(lists).filter(([, rows]) => rows.length > 0)); }

// squeeze replaces every run of spaces of any kind by one space and sorts keys.
function squeeze(value) {
	const sorted = (v) => (v && typeof v === 'object' && !Array.isArray(v)
		? Object.fromEntries(Object.keys(v).sort().map((key) => [key, sorted(v[key])])) : v);
	return JSON.parse(JSON.stringify(sorted(value)).replace(/[\s\u00a0\u202f\u2009]+/g, ' '));
}

// eventually repeats a check until it passes; at the timeout it throws the last error.
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

// box is the element of one input: a field, or a cell of a list (runs.2.length).
export function box(calc, path) {
	const [field, row, col] = path.split('.');
	if (row === undefined) return calc.locator(`.fields [data-field="${field}"]`);
	return calc.locator(`.fields [data-rows="${field}"] .rowlist > li`).nth(Number(row) - 1).locator(`[data-col="${col}"]`);
}

// set fills one input and returns true, or returns false if the input is hidden.
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

// rowCount adds or removes rows of a list until it has n, with the page's buttons.
export async function rowCount(calc, field, n) {
	const list = calc.locator(`.fields [data-rows="${field}"]`);
	if (!await list.isVisible()) return;
	const rows = list.locator('.rowlist > li');
	while (await rows.count() > n) await rows.last().locator('[data-do=drop]').click();
	while (await rows.count() < n) await list.locator('[data-do=add]').click();
}

// fill fills all inputs of a case in the form of the command's JSON, choices first,
// because they show further inputs. Inputs that the case lacks are emptied.
export async function fill(calc, inputs) {
	const fields = Object.entries(inputs);
	for (const path of await calc.evaluate((section) => [...section.querySelectorAll('.fields [data-field]')].map((place) => place.dataset.field))) {
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

// published returns at most so many cases from the published values of a
// calculator, each a list of inputs. The file names the sources of the values.
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

// units clicks the calculator's switch of units.
export async function units(calc, system) {
	await calc.locator(`.tools label:has(input[value="${system}"])`).click();
}
