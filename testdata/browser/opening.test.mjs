// The first screen of a procedure: its first step, its cautions, the row of jump marks,
// and what is folded above the steps.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { newPage, newPhone, phone } from './lib/browser.mjs';
import { serve } from './lib/server.mjs';
import { releaseA, root } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

// The procedures whose first step begins below the first screen, with the reason.
const later = {
	'braces-off-and-backfill': 'two dangers and a warning, 460 characters, of which a danger is never folded',
	'pour-clock': 'its four tables are folded above the steps, and the mark that they are invented stays above them',
	'pump-set-up': 'two dangers and a warning',
	'pump-wash-out': 'two dangers and a warning',
	repairs: 'three cautions and a folded section; in Spanish only',
};

// The least part of the first step that is on the first screen: a line of text.
const line = 20;

const procedures = ['en', 'es'].flatMap((lang) => readdirSync(join(root, 'content', lang))
	.filter((name) => name.endsWith('.md') && /^kind: procedure$/m.test(readFileSync(join(root, 'content', lang, name), 'utf8')))
	.map((name) => ({ lang, slug: name.slice(0, -3) })));

async function open(t, path, options = {}) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, ...options });
	const page = await newPage(context);
	await page.goto(site.url + path);
	return { site, page };
}

test('the first step of every procedure is on the first screen, or the page is listed with a reason', async (t) => {
	const { site, page } = await open(t, 'en/blow-out.html');
	assert.ok(procedures.length > 150, `${procedures.length} procedures`);
	const seen = new Set();
	const below = [];
	for (const { lang, slug } of procedures) {
		await page.goto(`${site.url}${lang}/${slug}.html`);
		const top = await page.evaluate(() => document.querySelector('ol.steps > .step')?.getBoundingClientRect().top ?? 0);
		if (top + line <= phone.height) continue;
		seen.add(slug);
		if (!(slug in later)) below.push(`${lang}/${slug}: the first step begins at ${Math.round(top)} px`);
	}
	assert.deepEqual(below, []);
	assert.deepEqual(Object.keys(later).filter((slug) => !seen.has(slug)), [], 'listed, but on the first screen in both languages');
	assert.deepEqual(page.errors, []);
});

test('what to do at a corner and at a bulge: the whole first step is on the first screen', async (t) => {
	const { site, page } = await open(t, 'en/placing-at-corners.html');
	for (const path of ['en/placing-at-corners.html', 'en/bulge.html', 'es/bulge.html', 'en/blow-out.html', 'es/blow-out.html']) {
		await page.goto(site.url + path);
		const { top, bottom, rail } = await page.evaluate(() => ({
			...document.querySelector('ol.steps > .step').getBoundingClientRect().toJSON(),
			rail: document.querySelector('.rail').getBoundingClientRect().bottom,
		}));
		assert.ok(top >= rail && bottom <= phone.height, `${path}: from ${top} to ${bottom} px`);
	}
});

test('a danger is never folded; a folded caution shows its signal word and first sentence, and opens at a touch', async (t) => {
	const { site, page } = await open(t, 'en/under-windows.html', { hasTouch: true });
	const folded = page.locator('.brief details').first();
	const signal = uiText('ui.signal.warning');
	const text = await folded.locator('summary').innerText();
	assert.ok(text.startsWith(signal) || text.includes(signal), text);
	assert.match(text, /\.\s*$/, 'the first sentence is not whole');
	const rest = folded.locator('p');
	assert.ok(!await rest.isVisible());
	await folded.locator('summary').tap();
	assert.ok(await rest.isVisible());
	let dangers = 0;
	for (const slug of ['pump-set-up', 'braces-off-and-backfill', 'string-line', 'blow-out']) {
		await page.goto(`${site.url}en/${slug}.html`);
		for (const danger of await page.locator('.danger').all()) {
			dangers++;
			assert.equal(await danger.locator('details').count(), 0, `${slug} folds a danger`);
			for (const part of await danger.locator('p').all()) assert.ok(await part.isVisible());
		}
	}
	assert.ok(dangers >= 5, `${dangers} dangers`);
});

for (const javaScriptEnabled of [true, false]) {
	test(`jump marks lead to the sections, ${javaScriptEnabled ? 'with' : 'without'} script`, async (t) => {
		const { site, page } = await open(t, 'en/placing-at-corners.html', { javaScriptEnabled });
		const marks = page.locator('.marks a');
		const texts = await marks.allInnerTexts();
		assert.deepEqual(texts.slice(0, 4), ['Steps', 'Check', 'Goes wrong', 'Numbers']);
		assert.equal(texts.length, await page.locator('main h2[id]').count(), 'a section without a mark');
		for (const mark of await marks.all()) assert.ok((await mark.boundingBox()).height >= 44);
		await marks.nth(3).scrollIntoViewIfNeeded();
		await marks.nth(3).click();
		await page.waitForURL(/#numbers$/);
		const at = () => page.locator('#numbers').evaluate((h) => h.getBoundingClientRect().top);
		for (let i = 0; i < 40 && (await at() < 40 || await at() > phone.height); i++) await page.waitForTimeout(50);
		assert.ok(await at() > 40 && await at() < phone.height, `the heading is at ${await at()} px`);
		await page.goto(`${site.url}es/placing-at-corners.html`);
		assert.deepEqual((await marks.allInnerTexts()).slice(0, 4), ['Pasos', 'Revisión', 'Qué sale mal', 'Números']);
	});
}

test('a section before the steps is folded, opens by its heading, and by a link to it', async (t) => {
	const { site, page } = await open(t, 'en/crew-sheet.html');
	const section = page.locator('details.before').filter({ has: page.locator('#jobs-that-need-a-name') });
	const table = section.locator('table').first();
	assert.ok(!await table.isVisible());
	await section.locator('summary').click();
	assert.ok(await table.isVisible());
	await page.goto(`${site.url}en/crew-talk.html`);
	await page.goto(`${site.url}en/crew-sheet.html#jobs-that-need-a-name`);
	await table.waitFor({ state: 'visible' });
	await page.goto(`${site.url}en/crew-sheet.html#%zz`);
	assert.deepEqual(page.errors, []);
});

test('who, when, time and gear open above the steps; in an emergency they follow the steps', async (t) => {
	const { site, page } = await open(t, 'en/placing-at-corners.html');
	const kit = page.locator('details.kit');
	assert.ok(!await kit.locator('dl').isVisible());
	await kit.locator('summary').click();
	const terms = await kit.locator('dt').allInnerTexts();
	assert.deepEqual(terms, ['ui.who', 'ui.when', 'ui.time', 'ui.gear'].map((key) => uiText(key)));
	await page.goto(`${site.url}en/blow-out.html`);
	assert.equal(await kit.count(), 0);
	const order = await page.evaluate(() => document.querySelector('ol.steps').compareDocumentPosition(document.querySelector('.who')));
	assert.equal(order & 4, 4, 'roles and gear are before the steps');
});

test('above the title a link leads to the stage of the page', async (t) => {
	const { page } = await open(t, 'en/placing-at-corners.html');
	const back = page.locator('.stage a');
	assert.equal(await back.innerText(), 'Placing');
	assert.ok((await back.boundingBox()).height >= 44);
	await back.click();
	await page.getByRole('heading', { name: 'Placing', exact: true }).waitFor();
});

test('the list from A to Z has a bar of letters that lead to their pages; on a phone titles only', async (t) => {
	const { page } = await open(t, 'es/all.html');
	const letters = page.locator('.jump a');
	assert.ok(await letters.count() > 15, `${await letters.count()} letters`);
	for (const letter of await letters.all()) {
		const box = await letter.boundingBox();
		assert.ok(box.height >= 44, `${await letter.innerText()} is ${box.height} px high`);
		const target = decodeURIComponent(await letter.evaluate((a) => a.hash.slice(1)));
		assert.equal(await page.evaluate((id) => document.getElementById(id)?.textContent, target), await letter.innerText());
	}
	assert.ok(!await page.locator('.pages p').first().isVisible());
	const high = await page.evaluate(() => document.documentElement.scrollHeight);
	assert.ok(high < 20_000, `the page is ${high} px long`);
});

test('a printed table on a phone has its unit once, numbers in one line, and its first column stays', async (t) => {
	const { page } = await open(t, 'en/tables.html');
	const table = page.locator('.chart .us table').first();
	const unit = (await table.locator('caption').innerText()).split(', ')[1];
	assert.equal(unit, 'yd³');
	const cells = table.locator('tbody td');
	for (const text of await cells.allInnerTexts()) assert.match(text, /^[\d.]+$/);
	const oneLine = await cells.first().evaluate((td) => td.clientHeight < 2.2 * parseFloat(getComputedStyle(td).fontSize) * 1.55);
	assert.ok(oneLine, 'a number is broken into two lines');
	const box = page.locator('.chart .us .wide').first();
	await box.evaluate((e) => { e.scrollLeft = 200; });
	const left = await table.locator('tbody th').first().evaluate((th) => th.getBoundingClientRect().left);
	assert.ok(left >= 0 && left < 40, `the first column is at ${left} px`);
});
