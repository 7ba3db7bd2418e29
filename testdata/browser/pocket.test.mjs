// The one-file edition, opened from the disk: it agrees with the command and sends no
// request.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, runCommand, eventually, fill, published, ready, catalog, units } from './lib/form.mjs';
import { search } from './lib/journey.mjs';
import { pocket, spread, work } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

const address = pathToFileURL(pocket).href;

const anchor = (id) => `en.calc.${id}`;

async function open(t, options = {}) {
	const context = await newPhone(t, options);
	const page = await newPage(context);
	await page.goto(address);
	return { context, page };
}

test('calculators agree with the command, with no request', async (t) => {
	const { context, page } = await open(t);
	for (const { calculator: id } of spread(catalog, 9)) {
		await page.goto(`${address}#${anchor(id)}`);
		const article = page.locator('.article:visible');
		await eventually(async () => assert.match(await article.getAttribute('id'), new RegExp(`\\.${id}$`)));
		const calc = article.locator(`section.calc[data-calc="${id}"]`);
		await ready(calc);
		await units(calc, 'us');
		await agrees(calc, id);
		for (const entries of published(id, 1)) {
			const answer = runCommand(id, entries);
			if (answer.refused) continue;
			await fill(calc, answer.inputs);
			await agrees(calc, id);
		}
		await units(calc, 'metric');
		await agrees(calc, id, { units: 'metric' });
	}
	assert.deepEqual(context.requests.filter((url) => !url.startsWith(address) && !url.startsWith('data:')), []);
	assert.deepEqual(page.errors, []);
});

test('search, pages and ticks work in one file, one page at a time', async (t) => {
	const { page, context } = await open(t);
	assert.equal(await page.locator('.article:visible').count(), 1);
	await search(page, 'dry line');
	const link = page.locator('#hits li a[href^="#en.string-line"]').first();
	await link.click();
	await eventually(async () => assert.match(await page.locator('.article:visible').getAttribute('id'), /string-line/));
	await page.locator('.article:visible ul.checks label').first().click();
	await page.reload();
	assert.ok(await page.locator('.article:visible ul.checks input').first().isChecked());
	const html = readFileSync(pocket, 'utf8');
	const listed = (pattern) => [...html.matchAll(pattern)].map((m) => m[1]);
	const articles = listed(/<div class="?article"? id="?([^" >]+)/g);
	assert.ok(articles.length > 300, `only ${articles.length} articles`);
	// All articles in one call, because a call for each of some 400 articles is slow.
	const wrong = await page.evaluate(async (articles) => {
		const wrong = [];
		for (const article of articles) {
			const navigated = location.hash === `#${article}` ? null : new Promise((done) => addEventListener('hashchange', done, { once: true }));
			location.hash = `#${article}`;
			await navigated;
			const open = [...document.querySelectorAll('.article')].filter((l) => l.checkVisibility());
			if (open.length !== 1 || open[0].id !== article) wrong.push(`${article} opens ${open.map((l) => l.id)}`);
			else if (open[0].querySelector('h1').textContent.trim().length <= 2) wrong.push(`${article} has no title`);
		}
		return wrong;
	}, articles);
	assert.deepEqual(wrong, []);
	const ids = new Set(listed(/\sid="?([^" >]+)/g));
	const links = listed(/<a[^>]*\shref="?#([^" >]+)/g);
	assert.ok(links.length > 1000, `only ${links.length} links`);
	const dead = [...new Set(links.filter((id) => !ids.has(decodeURIComponent(id))))];
	assert.deepEqual(dead, [], 'dead links');
	assert.deepEqual(context.requests.filter((url) => !url.startsWith(address) && !url.startsWith('data:')), []);
	assert.deepEqual(page.errors, []);
});

test('ticks and numbers are exported to a file and imported on another device', async (t) => {
	const { page } = await open(t);
	await page.goto(`${address}#en.blow-out`);
	await page.locator('.article:visible ul.checks label').first().click();
	await page.locator('.keep summary').click();
	const [download] = await Promise.all([page.waitForEvent('download'), page.locator('[data-do=export]').click()]);
	const path = join(work, 'exported.json');
	await download.saveAs(path);
	assert.equal(JSON.parse(readFileSync(path, 'utf8')).coursebook, 1);
	const other = await open(t);
	await other.page.goto(`${address}#en.blow-out`);
	assert.ok(!await other.page.locator('.article:visible ul.checks input').first().isChecked());
	await other.page.locator('#import').setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
	await eventually(async () => assert.equal(await other.page.locator('#kept').innerText(), uiText('ui.pocket.wrong')));
	// An import reloads the file, which takes some seconds.
	await Promise.all([other.page.waitForEvent('load', { timeout: 30_000 }), other.page.locator('#import').setInputFiles(path)]);
	await eventually(async () => assert.ok(await other.page.locator('.article:visible ul.checks input').first().isChecked()));
});

test('a device that does not store texts is reported', async (t) => {
	const context = await newPhone(t);
	await context.addInitScript(() => Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('denied', 'SecurityError'); } }));
	const page = await newPage(context);
	await page.goto(address);
	assert.equal(await page.locator('#kept').innerText(), uiText('ui.pocket.unkept'));
	assert.deepEqual(page.errors, []);
});

test('without script the one file is one long readable document', async (t) => {
	const { page } = await open(t, { javaScriptEnabled: false });
	const [articles, unseen] = await page.evaluate(() => {
		const articles = [...document.querySelectorAll('.article')];
		const seen = (e) => e?.checkVisibility({ visibilityProperty: true }) && e.textContent.trim() !== '';
		return [articles.length, articles.filter((article) => !seen(article.querySelector('h1'))).map((article) => article.id)];
	});
	assert.ok(articles > 300, `only ${articles} articles`);
	assert.deepEqual(unseen, [], 'articles without a visible title');
	assert.equal(await page.locator('.live:visible').count(), 0);
});
