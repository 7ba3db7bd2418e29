// A procedure and a calculator, printed to PDF; the PDF is read.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { calculator, expected, runCommand, openCard, ready, set, agrees } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { releaseA, work } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

async function open(t, path, options = {}) {
	const site = await serve(t, releaseA);
	const page = await newPage(await newPhone(t, { saving: false, ...options }));
	await page.goto(site.url + path);
	return page;
}

// paper prints to PDF and returns the number of pages, their size and their texts.
async function paper(page, name, options = {}) {
	const file = join(work, `${name}-${process.pid}.pdf`);
	writeFileSync(file, await page.pdf({ format: 'Letter', preferCSSPageSize: true, ...options }));
	const info = execFileSync('pdfinfo', [file], { encoding: 'utf8' });
	const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
	return { count: Number(info.match(/^Pages:\s+(\d+)/m)[1]), size: info.match(/^Page size:\s+(.*)$/m)[1], pages: text.split('\f').slice(0, -1), text, flat: text.replace(/\s+/g, ' ') };
}

test('a procedure on paper: all steps, checks and ticks, hold points, title, date and address; no controls', async (t) => {
	const page = await open(t, 'en/blow-out.html');
	await page.locator('ul.checks label').first().click();
	const { count, flat } = await paper(page, 'procedure');
	assert.ok(count >= 1 && count <= 4, `${count} pages`);
	for (const part of await page.locator('main h1, main ol > li strong, ul.checks label').allInnerTexts()) {
		assert.ok(flat.includes(part.replace(/\s+/g, ' ').trim()), `“${part}” is not on paper`);
	}
	assert.match(flat, /Revised \d{4}-\d\d-\d\d/, 'no revision date');
	assert.match(flat, /en\/blow-out\.html/, 'no address');
	assert.match(flat, /DANGER/);
	for (const control of ['ui.checks.clear', 'ui.search.short', 'ui.settings', 'ui.all', 'ui.skip']) {
		assert.ok(!flat.includes(uiText(control)), `the control “${uiText(control)}” is printed`);
	}
});

test('a long procedure on paper: no step or check is split between pages', async (t) => {
	const page = await open(t, 'en/order-concrete.html');
	const { count, pages } = await paper(page, 'long');
	assert.ok(count >= 2 && count <= 12, `${count} pages`);
	// Letters only: on paper the other system of units is in brackets.
	const letters = (text) => text.replace(/[^\p{L}]/gu, '');
	const sheets = pages.map(letters);
	const rows = (await page.locator('ol.steps > li, ul.checks li').allInnerTexts()).map(letters);
	assert.ok(rows.length > 15);
	const split = rows.filter((row) => !sheets.some((sheet) => sheet.includes(row)));
	assert.deepEqual(split, [], 'rows that are on no page as a whole');
});

test('on paper no heading, caption or signal word is the last line of a page, and nothing folded is left out', async (t) => {
	const page = await open(t, 'en/blow-out.html');
	const base = page.url().replace('en/blow-out.html', '');
	let sheets = 0;
	for (const path of ['en/placing-by-lifts', 'en/order-concrete', 'en/under-windows', 'en/string-line', 'en/crew-sheet', 'en/pump-set-up', 'es/placing-by-lifts', 'es/the-hour', 'es/bracing-and-lean', 'es/repairs']) {
		await page.goto(`${base}${path}.html`);
		const letters = (text) => text.replace(/[^\p{L}\d]/gu, '').toLowerCase();
		// A signal word has its sign before it; a sentence that ends with a heading in quotes is none.
		const head = (text) => text.replace(/^[^\p{L}\d]+/u, '').replace(/\s+/g, ' ').trim();
		const heads = new Set((await page.locator('main :is(h2, h3, caption, .signal, .next-title)').evaluateAll((list) => list.map((e) => e.textContent))).map(head));
		const folded = (await page.locator('main details:not([open]) > :not(summary)').evaluateAll((list) => list.filter((e) => !e.querySelector('.si, table')).map((e) => e.textContent))).map(letters).filter(Boolean);
		const { pages, flat } = await paper(page, 'foot');
		const whole = letters(flat);
		sheets += pages.length;
		for (const [i, text] of pages.slice(0, -1).entries()) {
			const last = text.trimEnd().split('\n').at(-1).trim();
			assert.ok(!heads.has(head(last)), `${path}: “${last}” is alone at the foot of sheet ${i + 1}`);
		}
		for (const part of folded) assert.ok(whole.includes(part.slice(0, 40)), `${path}: “${part.slice(0, 40)}” is not on paper`);
	}
	assert.ok(sheets > 30, `${sheets} sheets`);
});

test('a calculator on paper: the reader’s inputs and results in ink, tables and formulas on its second page', async (t) => {
	const page = await open(t, 'en/calc/form-pressure.html');
	const calc = calculator(page, 'form-pressure');
	await ready(calc);
	await set(calc, 'height', '9 ft');
	await agrees(calc, 'form-pressure');
	const { outs } = expected(runCommand('form-pressure', [['height', '9 ft']]));
	const { flat, count, size } = await paper(page, 'calculator');
	assert.ok(count >= 2 && count <= 15, `${count} pages`);
	assert.match(size, /612 x 792|595/, `paper of ${size}`);
	for (const [path, text] of Object.entries(outs)) assert.ok(flat.includes(text.replace(/\s+/g, ' ')), `${path} ${text} is not on paper`);
	assert.ok(flat.includes('9 ft'), 'the input is not on paper');
	for (const control of ['ui.calc.reset', 'ui.search.short', 'ui.settings']) assert.ok(!flat.includes(uiText(control)), `${uiText(control)} is printed`);

	await page.goto(page.url().replace('.html', '-source.html'));
	const second = await paper(page, 'second');
	const titles = await page.locator('.chart h3, .formula h3, .function h3').allInnerTexts();
	assert.ok(titles.length > 20, `${titles.length} tables, formulas and functions`);
	for (const title of titles) assert.ok(second.flat.includes(title.replace(/\s+/g, ' ').trim()), `“${title}” is not on paper`);
});

test('a closed calculator on paper: its title and address, never the example; an open one: the reader’s results', async (t) => {
	const page = await open(t, 'en/order-concrete.html');
	const card = page.locator('[data-card=wall-volume]');
	const answer = await card.locator('.answer').innerText();
	assert.ok(answer.startsWith(uiText('ui.card.example')), answer);
	const noExample = async (name) => {
		const { flat } = await paper(page, name);
		for (const part of [await card.locator('h3').innerText(), 'en/calc/wall-volume.html']) assert.ok(flat.includes(part), `${name}: “${part}” is not on paper`);
		for (const part of [uiText('ui.card.example'), uiText('ui.calc.example'), uiText('ui.card.open'), uiText('ui.card.close'), 'Order in cubic yards']) assert.ok(!flat.includes(part), `${name}: “${part}” is printed`);
	};
	await noExample('closed');
	const calc = await openCard(page, 'wall-volume');
	await noExample('opened');
	await set(calc, 'core', '6 in');
	await agrees(calc, 'wall-volume');
	await calc.locator('[data-do=reset]').waitFor();
	const { flat } = await paper(page, 'own');
	const { outs } = expected(runCommand('wall-volume', [['core', '6 in']]));
	assert.ok(flat.includes(outs['order-yd'].replace(/\s+/g, ' ')), 'the reader’s result is not on paper');
	assert.ok(!flat.includes(answer.replace(/\s+/g, ' ').trim()), 'the answer of the example is printed beside the reader’s');
});

test('on paper both systems of units are printed for every choice of units', async (t) => {
	const page = await open(t, 'en/order-concrete.html');
	await page.evaluate(() => { document.documentElement.dataset.units = 'metric'; });
	const { flat } = await paper(page, 'units');
	assert.match(flat, /120 ft \(3[67](\.\d+)? m\)/, 'the author’s figure is not on paper');
});

test('with the dark colours, paper is white', async (t) => {
	const page = await open(t, 'en/blow-out.html', { colorScheme: 'dark' });
	await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
	const { ink, ground } = await page.evaluate(() => {
		const style = getComputedStyle(document.querySelector('main p'));
		return { ink: style.color, ground: getComputedStyle(document.body).backgroundColor };
	});
	assert.ok(ink.match(/\d+/g).slice(0, 3).every((part) => Number(part) < 60), `ink is ${ink}`);
	assert.match(ground, /rgba\(0, 0, 0, 0\)|rgb\(255, 255, 255\)/, `paper is ${ground}`);
});
