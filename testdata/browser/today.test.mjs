// Home, the stages, the settings: what a reader sees first, and what follows him.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { desktop, newPage, newPhone, phone } from './lib/browser.mjs';
import { eventually } from './lib/form.mjs';
import { choose, leaveSettings, openSettings } from './lib/journey.mjs';
import { saved } from './lib/offline.mjs';
import { serve } from './lib/server.mjs';
import { files, pocket, releaseA, starterA } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

const languages = { en: 'index.html', es: 'es/index.html' };

async function start(t, options = {}) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, ...options });
	return { site, context, page: await newPage(context) };
}

// inView lists the links of a place whose whole target is not on the screen.
const outOfView = (selector) => [...document.querySelectorAll(selector)].filter((link) => {
	const box = link.closest('li').getBoundingClientRect();
	return box.top < 0 || box.bottom > visualViewport.height || box.left < 0 || box.right > visualViewport.width;
}).map((link) => link.textContent);

test('home is one screen: today, the tiles and every stage are in view', async (t) => {
	const { site, page } = await start(t);
	for (const [lang, home] of Object.entries(languages)) {
		await page.goto(site.url + home);
		assert.ok(await page.locator('.tiles a').count() >= 4, lang);
		assert.ok(await page.locator('.days a').count() >= 6, lang);
		assert.ok(await page.locator('.iam select').isVisible(), lang);
		assert.deepEqual(await page.evaluate(outOfView, '.tiles a, .days a'), [], lang);
	}
	assert.deepEqual(page.errors, []);
});

test('every page of the manual that has a stage is two touches from home', async (t) => {
	const { site, page } = await start(t);
	for (const [lang, home] of Object.entries(languages)) {
		await page.goto(site.url + home);
		const stages = await page.locator('.tiles a, .days a').evaluateAll((links) => links.map((link) => link.href));
		const reached = new Set();
		for (const stage of stages) {
			await page.goto(stage);
			for (const href of await page.locator('main a').evaluateAll((links) => links.map((link) => link.pathname.slice(1)))) reached.add(href);
		}
		const missed = [];
		for (const name of files(releaseA).filter((file) => file.startsWith(`${lang}/`) && file.endsWith('.html'))) {
			if (/-source\.html$/.test(name) || name === home) continue;
			if (!reached.has(name) && !/\/(settings|index)\.html$/.test(name) && !stages.some((stage) => stage.endsWith(name))) missed.push(name);
		}
		assert.deepEqual(missed, [], lang);
	}
});

test('home leads back to the page that was read last, in each language', async (t) => {
	const { site, page } = await start(t);
	await page.goto(site.url);
	assert.ok(await page.locator('[data-part=again]').isHidden(), 'a last page without any');
	await page.goto(`${site.url}en/string-line.html`);
	const title = await page.locator('h1').innerText();
	await page.goto(`${site.url}es/bulge.html`);
	await page.goto(`${site.url}en/all.html`);
	await page.locator('.homeward').click();
	await page.locator('.again a', { hasText: title }).click();
	await page.waitForURL(/en\/string-line\.html$/);
	await page.goto(`${site.url}es/`);
	assert.equal(await page.locator('.again a').evaluate((link) => link.pathname), '/es/bulge.html');
	assert.deepEqual(page.errors, []);
});

test('the role shows its course, and marks its pages in a stage', async (t) => {
	const { site, page } = await start(t);
	await page.goto(site.url);
	assert.equal(await page.locator('.own:visible').count(), 0);
	await page.locator('.iam select').selectOption('hose-hand');
	assert.equal(await page.locator('.own:visible').count(), 1);
	assert.deepEqual(await page.evaluate(outOfView, '.tiles a, .days a'), [], 'with a course home is longer than a screen');
	await page.goto(`${site.url}en/stage/placing.html`);
	assert.ok(await page.locator('.pages [data-mine]').count() > 0);
	assert.deepEqual(page.errors, []);
});

test('a stage shows how many checks of each page are ticked, by the named site', async (t) => {
	const { site, page } = await start(t);
	await page.goto(`${site.url}en/blow-out.html`);
	await page.locator('ul.checks label').nth(1).click();
	const all = await page.locator('ul.checks input').count();
	await page.goto(`${site.url}en/stage/trouble.html`);
	const mark = page.locator('.pages li', { has: page.locator('a[href$="blow-out.html"]') }).locator('.ticked');
	assert.equal(await mark.innerText(), uiText('ui.checks.count', { n: 1, all }));
	assert.equal(await page.locator('.ticked:visible').count(), 1);
	await openSettings(page);
	await page.locator('[name=job]').fill('Lot 7');
	await leaveSettings(page);
	await eventually(async () => assert.equal(await page.locator('.ticked:visible').count(), 0, 'ticks of another site'));
	assert.deepEqual(page.errors, []);
});

test('text size and full sun are stored for all pages', async (t) => {
	const { site, page } = await start(t);
	await page.goto(`${site.url}en/bulge.html`);
	const size = () => page.evaluate(() => parseFloat(getComputedStyle(document.querySelector('main p')).fontSize));
	const usual = await size();
	await choose(page, 'size', 'largest');
	await eventually(async () => assert.ok(await size() > 1.3 * usual, 'the text is not larger after leaving the settings'));
	await page.goto(`${site.url}es/calc/wall-volume.html`);
	assert.ok(await size() > 1.3 * usual);
	assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), 'the page pans sideways');
	await choose(page, 'light', 'sun');
	await page.reload();
	assert.deepEqual(await page.evaluate(() => [getComputedStyle(document.body).color, getComputedStyle(document.body).backgroundColor]),
		['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
	assert.deepEqual(page.errors, []);
});

test('the call button stands on the first screen, calls the stored number and shows what to say', async (t) => {
	const { site, page } = await start(t);
	for (const name of ['en/blow-out.html', 'es/injury-and-burns.html', 'en/bleeding.html']) {
		await page.goto(site.url + name);
		const button = page.locator('[data-call]');
		assert.equal(await button.getAttribute('href'), 'tel:911', name);
		const box = await button.boundingBox();
		assert.ok(box.height >= 44 && box.y > 0 && box.y + box.height <= phone.height, `${name}: the button is at ${JSON.stringify(box)}`);
	}
	await openSettings(page);
	await page.locator('[name=emergency]').fill('066');
	await page.locator('[name=where]').fill('Gate 2, "Mill" Road');
	await leaveSettings(page);
	await eventually(async () => assert.equal(await page.locator('[data-call]').getAttribute('href'), 'tel:066'));
	assert.equal(await page.locator('[data-call]').innerText(), uiText('ui.call', { n: '066' }));
	assert.equal(await page.locator('[data-part=where]').innerText(), uiText('ui.call.where', { where: 'Gate 2, "Mill" Road' }));
	assert.deepEqual(page.errors, []);
});

test('the book is shared by the list of the phone, or its address is copied', async (t) => {
	const { site, context, page } = await start(t);
	await context.addInitScript(() => { navigator.share = async (data) => { window.shared = data; }; });
	await page.goto(`${site.url}en/settings.html`);
	await page.locator('[data-do=share]').click();
	assert.equal(await page.evaluate(() => window.shared.url), site.url);
	await context.addInitScript(() => {
		delete navigator.share;
		Object.defineProperty(navigator, 'share', { value: undefined });
		Object.defineProperty(navigator, 'clipboard', { value: { writeText: async (text) => { window.copied = text; } } });
	});
	await page.reload();
	await page.locator('[data-do=share]').click();
	await page.locator('[data-part=shared]', { hasText: uiText('ui.share.copied') }).waitFor();
	assert.equal(await page.evaluate(() => window.copied), site.url);
	assert.deepEqual(page.errors, []);
});

test('offline and online, an address without a page below a folder shows the page for it, with its style and links', async (t) => {
	const site = await serve(t, starterA, { base: '/a/' });
	const context = await newPhone(t);
	const page = await newPage(context);
	await page.goto(site.url);
	await saved(page);
	for (const offline of [false, true]) {
		if (offline) await site.stop();
		for (const path of ['en/nothing.html', 'en/calc/deep/nothing.html', 'nothing']) {
			await page.goto(site.url + path);
			assert.equal(await page.locator('h1').innerText(), uiText('ui.missing.title'), path);
			assert.equal(await page.evaluate(() => getComputedStyle(document.querySelector('.unseen')).position), 'absolute', `${path} has no style`);
			await page.locator('main .cards a').first().click();
			await page.locator('.tiles').waitFor(); // its first link leads home
		}
	}
});

test('without a worker an address below a folder shows the page for it with its style, and its links lead home', async (t) => {
	for (const base of ['/', '/a/b/']) {
		const site = await serve(t, releaseA, { base });
		const page = await newPage(await newPhone(t, { saving: false }));
		for (const path of ['nothing', 'en/nothing.html', 'en/calc/nothing.html']) {
			await page.goto(site.url + path);
			assert.equal(await page.evaluate(() => getComputedStyle(document.querySelector('.unseen')).position), 'absolute', `${base}${path} has no style`);
			await page.locator('main .cards a').first().click();
			await page.locator('.tiles').waitFor(); // its first link leads home
		}
		assert.deepEqual(page.errors, []);
	}
});

test('in the one-file edition: home, the settings, the last page and ticks work', async (t) => {
	const context = await newPhone(t, { viewport: phone });
	const page = await newPage(context);
	await page.goto(`file://${pocket}`);
	await page.locator('.tiles .bad a').click();
	await page.locator('.pages .bad a').click();
	await page.locator('ul.checks label').first().click();
	const title = await page.locator('main h1').innerText();
	await page.locator('.settings').click();
	await page.locator('.panel label:has([name=size][value=large])').click();
	assert.equal(await page.evaluate(() => document.documentElement.dataset.size), 'large');
	await page.locator('.panel [data-do=close]').click();
	await page.locator('main h1', { hasText: title }).waitFor();
	await page.locator('.homeward').click();
	await page.locator('.again a', { hasText: title }).waitFor();
	assert.ok(!(await page.locator('.saved').first().innerText()).includes(uiText('ui.saved.asking')), 'it looks for ever');
	await page.locator('.tiles .bad a').click();
	await eventually(async () => assert.equal(await page.locator('.ticked:visible').count(), 1));
	assert.deepEqual(page.errors, []);
});

test('on a desk the page of a stage uses the width', async (t) => {
	const { site, page } = await start(t, { viewport: desktop });
	await page.goto(`${site.url}en/stage/before.html`);
	const [first, second] = await page.locator('.pages > li').evaluateAll((items) => items.slice(0, 2).map((item) => item.getBoundingClientRect().left));
	assert.ok(second > first + 300, 'the list has one column');
	assert.ok(await page.locator('.pages p').first().isVisible(), 'without summaries');
});
