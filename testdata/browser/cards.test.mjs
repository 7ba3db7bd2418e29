// Calculators in procedures and lessons: closed cards that open in place.
import assert from 'node:assert/strict';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { before, test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, runCommand, box, eventually, expected, openCard, ready, set, readResult, readInputs, units } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { command, releaseA, root, work } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

// A manual with one calculator twice on a page, the second time with preset inputs,
// and another calculator.
const folder = join(work, 'cards');
const oneFile = join(work, 'cards.html');
const rows = [['core', '6 in'], ['runs.1.length', '20 ft'], ['runs.1.height', '9 ft'], ['runs.1.count', '1']];

before(() => {
	const content = join(work, 'content-cards');
	cpSync(join(root, 'generator/starter'), content, { recursive: true });
	writeFileSync(join(content, 'en/two-cards.md'), `---
title: Cards
summary: One calculator twice.
kind: reference
---

\`\`\`calculator
id: wall-volume
\`\`\`

\`\`\`calculator
id: wall-volume
set: {core: 6 in, runs: 20 ft | 9 ft | 1}
\`\`\`

\`\`\`calculator
id: pour-time
\`\`\`
`);
	command('build', '-content', content, '-out', folder, '-pocket', oneFile);
});

async function open(t, { release = releaseA, path = 'en/order-concrete.html', saving = false, answer, ...options } = {}) {
	const site = await serve(t, release, { answer });
	const context = await newPhone(t, { saving, ...options });
	const page = await newPage(context);
	await page.goto(site.url + path);
	return { site, context, page };
}

test('a closed card shows its results and one example, marked as an example', async (t) => {
	const { page } = await open(t);
	const card = page.locator('[data-card=wall-volume]');
	assert.equal(await card.locator('section.calc').count(), 0, 'a form is on the page before it is opened');
	const answer = await card.locator('.answer').innerText();
	const { outs } = expected(runCommand('wall-volume', []));
	assert.ok(answer.startsWith(uiText('ui.card.example')) && answer.includes(outs['order-yd']), answer);
	assert.equal(await card.locator('.open button').getAttribute('aria-expanded'), 'false');
	assert.deepEqual(page.errors, []);
});

test('no example result that depends on a maker’s number', async (t) => {
	const { site, page } = await open(t, { path: 'en/placing-by-lifts.html' });
	const rated = page.locator('[data-card]');
	assert.equal(await rated.getAttribute('data-card'), 'form-pressure');
	const { outs } = expected(runCommand('form-pressure', []));
	assert.ok((await rated.locator('.answer').innerText()).includes(outs.deed), 'the card does not show that the form is not checked');
	assert.ok(!/psf|kPa/.test(await rated.innerText()), await rated.innerText());
	await page.goto(`${site.url}es/placing-by-lifts.html`);
	assert.ok(!/psf|kPa/.test(await page.locator('[data-card=form-pressure]').innerText()));
});

test('a card opens by touch, computes, closes and keeps the inputs', async (t) => {
	const { page, context } = await open(t, { hasTouch: true });
	const card = page.locator('[data-card=wall-volume]');
	const button = card.locator('.open button');
	assert.equal(await button.innerText(), uiText('ui.card.open'));
	await button.tap();
	const calc = card.locator('section.calc');
	await ready(calc);
	assert.equal(await button.getAttribute('aria-expanded'), 'true');
	assert.equal(await button.innerText(), uiText('ui.card.close'));
	assert.ok(!await card.locator('.answer').isVisible(), 'the example’s answer is shown above the reader’s result');
	await units(calc, 'us');
	await agrees(calc, 'wall-volume');
	await set(calc, 'core', '10 in');
	await agrees(calc, 'wall-volume');
	const inputs = await readInputs(calc);
	await button.tap();
	assert.ok(!await calc.isVisible());
	assert.equal(await button.getAttribute('aria-expanded'), 'false');
	await button.tap();
	assert.deepEqual(await readInputs(calc), inputs);
	assert.equal(context.requests.filter((url) => url.endsWith('/en/calc/wall-volume.html')).length, 1, 'the calculator’s page is fetched more than once');
	await page.reload();
	assert.deepEqual(await readInputs(await openCard(page, 'wall-volume')), inputs, 'the reader’s numbers are lost');
	assert.deepEqual(page.errors, []);
});

test('a card opens by keyboard, and Tab moves the focus from its button into the form', async (t) => {
	const { page } = await open(t, { path: 'es/order-concrete.html' });
	const button = page.locator('[data-card=wall-volume] .open button');
	await button.focus();
	await page.keyboard.press('Enter');
	const calc = page.locator('[data-card=wall-volume] section.calc');
	await ready(calc);
	assert.ok(await button.evaluate((b) => b === document.activeElement), 'the focus has left the button');
	assert.equal(await button.innerText(), uiText('ui.card.close', {}, 'es'));
	await page.keyboard.press('Tab');
	assert.ok(await calc.evaluate((section) => section.contains(document.activeElement)), 'the focus does not move into the form');
	await agrees(calc, 'wall-volume', { lang: 'es' });
	await button.focus();
	await page.keyboard.press('Space');
	assert.ok(!await calc.isVisible());
	assert.deepEqual(page.errors, []);
});

// uniqueIds checks that no id occurs twice and that every reference is to an element
// of the same card.
async function uniqueIds(page) {
	const wrong = await page.evaluate(() => {
		const ids = [...document.querySelectorAll('[id]')].map((e) => e.id);
		const found = ids.filter((id, i) => ids.indexOf(id) !== i);
		for (const card of document.querySelectorAll('[data-card]:has(section.calc)')) {
			for (const label of card.querySelectorAll('label[for]')) if (!card.contains(label.control)) found.push(`for=${label.htmlFor}`);
			for (const e of card.querySelectorAll('[aria-describedby]')) {
				for (const id of e.getAttribute('aria-describedby').split(' ')) if (!card.contains(document.getElementById(id))) found.push(`describedby ${id}`);
			}
		}
		return found;
	});
	assert.deepEqual(wrong, []);
}

for (const [name, start] of [
	['the site', async (t) => (await open(t, { release: folder, path: 'en/two-cards.html' })).page],
	['the one-file edition', async (t) => {
		const page = await newPage(await newPhone(t));
		await page.goto(`${pathToFileURL(oneFile).href}#en.two-cards`);
		return page;
	}],
]) {
	test(`${name}: cards on one page are independent; preset inputs are filled in`, async (t) => {
		const page = await start(t);
		const cards = page.locator('[data-card]:visible');
		await eventually(async () => assert.equal(await cards.count(), 3));
		const calcs = [];
		for (const i of [0, 1, 2]) {
			await cards.nth(i).locator('.open button').click();
			calcs.push(cards.nth(i).locator('section.calc'));
			await ready(calcs[i]);
		}
		await uniqueIds(page);
		await units(calcs[0], 'us');
		await agrees(calcs[0], 'wall-volume');
		await agrees(calcs[1], 'wall-volume');
		await agrees(calcs[2], 'pour-time');
		const { outs } = expected(runCommand('wall-volume', rows));
		assert.deepEqual((await readResult(calcs[1])).outs['order-yd'], outs['order-yd'], 'the preset inputs are not computed');
		assert.equal(await box(calcs[1], 'core').locator('input').inputValue(), '6"');
		assert.equal(await calcs[1].locator('[data-rows=runs] .rowlist > li').count(), 1);
		assert.equal(await calcs[1].locator('[data-part=tag]').innerText(), uiText('ui.calc.example'));

		await set(calcs[0], 'measured', 'inside');
		await agrees(calcs[0], 'wall-volume');
		await agrees(calcs[1], 'wall-volume');
		await set(calcs[1], 'core', '12 in');
		await agrees(calcs[1], 'wall-volume');
		await calcs[1].locator('[data-do=reset]').click();
		await agrees(calcs[1], 'wall-volume');
		assert.deepEqual((await readResult(calcs[1])).outs['order-yd'], outs['order-yd'], 'the preset example is lost');
		await uniqueIds(page);
		assert.deepEqual(page.errors, []);
	});
}

test('in the one-file edition a calculator’s page and its card both work', async (t) => {
	const page = await newPage(await newPhone(t));
	const file = pathToFileURL(oneFile).href;
	await page.goto(`${file}#en.calc.pour-time`);
	const first = page.locator('.article:visible section.calc');
	await ready(first);
	await set(first, 'volume', '20 yd³');
	await agrees(first, 'pour-time');
	await page.goto(`${file}#en.two-cards`);
	const calc = await openCard(page, 'pour-time');
	await agrees(calc, 'pour-time');
	assert.deepEqual(page.errors, []);
});

test('without script a card is a link to the calculator’s page', async (t) => {
	const { page } = await open(t, { javaScriptEnabled: false });
	const card = page.locator('[data-card=wall-volume]');
	assert.equal(await card.locator('button').count(), 0);
	await card.getByRole('link', { name: uiText('ui.card.open') }).click();
	await page.waitForURL(/\/en\/calc\/wall-volume\.html$/);
});

for (const [what, reply] of [
	['no answer', { status: 503, body: 'no' }],
	['a network’s sign-in page', { body: '<!doctype html><title>Sign in</title><p>Pay here' }],
	['a page of another edition', 'other'],
]) {
	test(`${what} in place of the calculator’s page: the card shows it and a link, and can be tried again`, async (t) => {
		const name = 'en/calc/wall-volume.html';
		const other = readFileSync(join(releaseA, name), 'utf8').replace(/(data-id="?)([0-9a-f])/, (_, b, digit) => b + (digit === '0' ? '1' : '0'));
		let fails = true;
		const { page } = await open(t, { answer: (path) => (path === name && fails ? (reply === 'other' ? { body: other } : reply) : undefined) });
		const card = page.locator('[data-card=wall-volume]');
		const button = card.locator('.open button');
		await button.click();
		await card.getByText(uiText('ui.card.failed')).waitFor();
		assert.equal(await button.getAttribute('aria-expanded'), 'false');
		assert.equal(await card.locator('section.calc').count(), 0);
		assert.match(await card.getByRole('link', { name: uiText('ui.card.open') }).getAttribute('href'), /calc\/wall-volume\.html$/);
		fails = false;
		const calc = await openCard(page, 'wall-volume');
		await agrees(calc, 'wall-volume');
		assert.ok(!await card.getByText(uiText('ui.card.failed')).isVisible());
		assert.deepEqual(page.errors, []);
	});
}
