// The search box: its list, what it offers before typing, and what it keeps.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { eventually } from './lib/form.mjs';
import { search } from './lib/journey.mjs';
import { serve } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

async function phone(t, options = {}) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, ...options });
	return { site, context, page: await newPage(context) };
}

test('a page is listed once, calculators and urgent pages are marked by word and sign, and the count is exact', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(site.url);
	const hits = await search(page, 'truck late');
	const pages = hits.map((hit) => hit.page);
	assert.deepEqual([...new Set(pages)], pages, 'a page is listed twice');
	assert.equal(pages[0], 'en/late-truck.html');
	const first = page.locator('#hits li').first();
	assert.equal(await first.locator('.kind').innerText(), uiText('ui.search.urgent'));
	assert.match(await first.locator('.kind').evaluate((e) => getComputedStyle(e, '::before').content), /!/);
	const n = Number((await page.locator('#hits .count').innerText()).match(/\d+/)[0]);
	assert.ok(n >= hits.length, `${n} pages for ${hits.length} hits`);
	const few = await search(page, 'tourniquet');
	assert.equal(await page.locator('#hits .count').innerText(), uiText('ui.search.many', { n: few.length }));
	const calc = await search(page, 'DIN 18218');
	assert.equal(calc[0].page, 'calc/din-pressure.html');
	assert.equal(await page.locator('#hits li').first().locator('.kind').innerText(), uiText('ui.search.calculator'));
	assert.deepEqual(page.errors, []);
});

test('excerpts end at words and fill their lines, and the list stays inside the screen', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(site.url);
	await search(page, 'concrete');
	const excerpts = await page.locator('#hits .excerpt').evaluateAll((list) => list.map((e) => ({
		text: e.textContent, hidden: e.scrollHeight - e.clientHeight, wide: e.scrollWidth - e.clientWidth,
	})));
	for (const { text, wide } of excerpts) {
		assert.ok(text.length >= 30, `a short excerpt: ${text}`);
		assert.match(text, /[\p{L}\p{N}.!?)…"”%]$/u);
		assert.ok(wide <= 0, text);
	}
	assert.ok(excerpts.filter((e) => e.hidden > 2).length <= 1, `excerpts are cut: ${JSON.stringify(excerpts)}`);
	const box = await page.locator('#hits').evaluate((e) => ({ ...e.getBoundingClientRect().toJSON(), all: e.scrollHeight, height: e.clientHeight, screen: innerHeight }));
	assert.ok(box.bottom <= box.screen, `the list ends at ${box.bottom} of ${box.screen}`);
	assert.ok(box.all > box.height, 'the list has nothing to scroll');
	const before = await page.evaluate(() => scrollY);
	await page.locator('#hits').evaluate((e) => e.scrollTo(0, e.scrollHeight));
	const last = await page.locator('#hits li').last().evaluate((e) => e.getBoundingClientRect().bottom);
	assert.ok(last <= box.screen, 'the last hit cannot be scrolled to');
	assert.equal(await page.evaluate(() => scrollY), before, 'the page scrolled with the list');
});

test('the empty box offers calculators, urgent pages and the searches of this device', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(site.url);
	await page.locator('#q').focus();
	const chips = page.locator('#hits .chips button');
	await eventually(async () => assert.deepEqual(await chips.allInnerTexts(), [uiText('ui.search.calculator'), uiText('ui.search.urgent')]));
	for (const chip of await chips.all()) assert.ok((await chip.boundingBox()).height >= 44);
	await chips.nth(1).click();
	const urgent = page.locator('#hits li a');
	await eventually(async () => assert.ok(await urgent.count() > 5));
	assert.ok((await urgent.evaluateAll((list) => list.map((a) => a.pathname))).some((path) => path.endsWith('/en/blow-out.html')));
	await chips.nth(0).click();
	await eventually(async () => {
		const paths = await urgent.evaluateAll((list) => list.map((a) => a.pathname));
		assert.ok(paths.length > 20 && paths.every((path) => path.includes('/en/calc/')), `${paths}`);
	});

	// A search is kept once a page of its list was opened.
	await search(page, 'stinger');
	await search(page, 'dry line');
	await page.locator('#hits li a').first().click();
	await page.waitForURL(/string-line/);
	await page.locator('#q').focus();
	await eventually(async () => assert.deepEqual((await chips.allInnerTexts()).slice(2), ['dry line']));
	await chips.nth(2).click();
	await eventually(async () => assert.match(await urgent.first().getAttribute('href'), /string-line/));
	assert.equal(await page.locator('#q').inputValue(), 'dry line');
	assert.equal(await chips.count(), 0, 'the offers stay beside the list');
	assert.deepEqual(page.errors, []);
});

test('after Back the box has its words and its list', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}en/order-concrete.html`);
	const hits = await search(page, 'cold joint');
	await page.locator('#hits li a').nth(1).click();
	await page.waitForURL((url) => url.pathname.endsWith(hits[1].page));
	await page.goBack();
	await page.waitForURL(/order-concrete/);
	await page.locator('#hits[data-q="cold joint"] li a').first().waitFor();
	assert.equal(await page.locator('#q').inputValue(), 'cold joint');
	assert.equal(await page.locator('#hits li a').count(), hits.length);
	assert.deepEqual(page.errors, []);
});

test('index and module are requested side by side, and a search that is not loaded says so', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(site.url);
	const started = [];
	let release;
	const held = new Promise((done) => (release = done));
	await page.route(/assets\/(index-en|module)/, async (route) => {
		started.push(route.request().url().match(/index|module/)[0]);
		await held;
		await route.continue();
	});
	await page.locator('#q').fill('brace');
	await eventually(() => assert.deepEqual([...started].sort(), ['index', 'module']));
	await eventually(async () => assert.equal(await page.locator('#hits .count').innerText(), uiText('ui.search.away')));
	release();
	await eventually(async () => assert.match(await page.locator('#hits li a').first().innerText(), /brace/i));
	assert.deepEqual(page.errors, []);
});
