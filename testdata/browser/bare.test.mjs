// Without script, without WebAssembly, with a module of another edition, over http:
// pages can be read and show what does not work and why.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { newPage, newPhone, plainHost } from './lib/browser.mjs';
import { runCommand, calculator, eventually, expected, ready, catalog } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { files, pages, releaseA, spread } from './lib/site.mjs';
import { uiPattern, uiText } from './lib/words.mjs';

test('without script pages can be read and every control that needs script is hidden', async (t) => {
	const site = await serve(t, releaseA);
	const page = await newPage(await newPhone(t, { javaScriptEnabled: false, saving: false }));
	for (const name of spread(pages(), 24)) {
		await page.goto(site.url + name);
		assert.ok((await page.locator('main h1').innerText()).length > 2, `${name} shows no title`);
		assert.equal(await page.locator('.live >> visible=true').count(), 0, `${name} shows controls that need script`);
		const idle = page.locator('button:visible');
		assert.equal(await idle.count(), 0, `${name} shows buttons that do nothing`);
		const open = page.locator('main input:visible:enabled:not([type=checkbox]), main select:visible:enabled');
		assert.equal(await open.count(), 0, `${name} shows inputs that do nothing`);
	}
});

for (const { calculator: id } of spread(catalog, 9)) {
	test(`${id}: without script the worked example, formulas and tables can be read`, async (t) => {
		const site = await serve(t, releaseA);
		const page = await newPage(await newPhone(t, { javaScriptEnabled: false, saving: false }));
		await page.goto(`${site.url}en/calc/${id}.html`);
		const calc = calculator(page, id);
		assert.ok(await calc.getByText(uiText('ui.calc.no-script')).isVisible());
		for (const units of ['us', 'metric']) {
			const { outs } = expected(runCommand(id, [], { units }));
			for (const [path, text] of Object.entries(outs)) {
				const shown = (await calc.locator(`[data-out="${path}"] dd`).innerText()).replace(/\s+/g, ' ');
				assert.ok(shown.includes(text.replace(/\s+/g, ' ')), `${path} shows “${shown}”, not ${text}`);
			}
		}
		await calc.locator('details.work summary').click();
		assert.ok(await calc.locator('details.work code').first().isVisible(), 'no worked arithmetic');
		await page.getByRole('link', { name: uiText('ui.calc.listing') }).click();
		assert.ok(await page.locator('.formula math').first().isVisible());
		for (const formula of await page.locator('.formula').all()) assert.ok((await formula.locator('.plain').innerText()).length > 3);
		const tables = page.locator('section.tables');
		assert.ok(await tables.count() > 0, 'no printed table');
		for (const table of await tables.locator('table').all()) assert.ok((await table.locator('td').count()) > 3, 'an empty table');
	});
}

// unfit opens a calculator where it cannot run and checks the reason shown.
async function unfit(t, { init, answer, path = 'en/calc/form-pressure.html', reason }) {
	const site = await serve(t, releaseA, { answer });
	const context = await newPhone(t, { saving: false });
	if (init) await context.addInitScript(init);
	const page = await newPage(context);
	await page.goto(site.url + path);
	const calc = page.locator('section.calc').first();
	const why = calc.locator('[data-part=why]');
	await why.waitFor();
	await eventually(async () => assert.equal((await why.innerText()).trim(), reason));
	assert.ok(await calc.locator('fieldset.fields').evaluate((fields) => fields.disabled), 'the inputs are open');
	const leads = await calc.locator('.lead dd:visible').allInnerTexts();
	assert.match(leads.join(), /\d/, 'no example result is shown');
	assert.ok(await calc.locator('[data-part=tag]').isVisible(), 'nothing marks the numbers as an example');
	assert.ok(await page.getByRole('link', { name: uiText('ui.calc.listing') }).isVisible(), 'no link to the tables is shown');
	assert.deepEqual(page.errors, []);
	return page;
}

test('without WebAssembly a calculator shows why, the example and the link to its tables', (t) =>
	unfit(t, { init: 'delete window.WebAssembly', reason: uiText('ui.calc.no-module') }));

test('without DecompressionStream a calculator shows why', (t) =>
	unfit(t, { init: 'delete window.DecompressionStream', reason: uiText('ui.calc.no-module') }));

test('a module that cannot be loaded is reported', (t) =>
	unfit(t, { answer: (name) => (name.endsWith('.wasmz') ? { status: 404, body: 'gone' } : undefined), reason: uiText('ui.calc.no-load') }));

test('an HTML error page in place of the module is reported', (t) =>
	unfit(t, { answer: (name) => (name.endsWith('.wasmz') ? { body: '<!doctype html><title>Sign in</title>' } : undefined), reason: uiText('ui.calc.no-load') }));

test('a module of another edition is refused by its fingerprint', (t) => {
	const list = JSON.parse(readFileSync(`${releaseA}/release.json`, 'utf8'));
	list.fingerprint = list.fingerprint.replace(/^./, (digit) => (digit === '0' ? '1' : '0'));
	return unfit(t, { answer: (name) => (name === 'release.json' ? { body: JSON.stringify(list) } : undefined), reason: uiText('ui.calc.other') });
});

for (const [what, answer] of [['is missing', { status: 404, body: 'gone' }], ['is a sign-in page', { body: '<!doctype html><title>Sign in</title>' }]]) {
	test(`if release.json ${what}, a calculator shows it, and the search box links to the list of all pages`, async (t) => {
		const page = await unfit(t, { answer: (name) => (name === 'release.json' ? answer : undefined), reason: uiText('ui.calc.no-list') });
		assert.match(await page.locator('#page-id').innerText(), uiPattern('ui.page-id'));
		await page.locator('#q').fill('wall');
		await page.locator('#hits').waitFor();
		assert.deepEqual(await page.locator('#hits li a').allInnerTexts(), [uiText('ui.all')]);
	});
}

test('storage that cannot be written does not break a page', async (t) => {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false });
	await context.addInitScript(() => {
		const refuse = () => { throw new DOMException('denied', 'SecurityError'); };
		Object.defineProperty(window, 'localStorage', { get: refuse });
	});
	const page = await newPage(context);
	await page.goto(`${site.url}en/calc/form-pressure.html`);
	const calc = calculator(page, 'form-pressure');
	await ready(calc);
	await calc.locator('[data-field=height] input').fill('9 ft');
	await page.getByText(uiText('ui.unkept')).first().waitFor();
	assert.deepEqual(page.errors, []);
});

test('over http the manual works and shows that it is not saved', async (t) => {
	const site = await serve(t, releaseA, { host: plainHost });
	const page = await newPage(await newPhone(t));
	await page.goto(`${site.url}en/calc/wall-volume.html`);
	assert.equal(await page.evaluate(() => isSecureContext), false, 'the test reaches a secure context');
	await ready(calculator(page, 'wall-volume'));
	await page.locator('#saved', { hasText: uiText('ui.saved.http') }).waitFor();
	assert.deepEqual(page.errors, []);
});

test('script, style, module and index have a hash in their names; sw.js has none', () => {
	const names = files(releaseA);
	for (const name of names.filter((n) => n.startsWith('assets/'))) assert.match(name, /^assets\/[a-z0-9-]+-[0-9a-z]{10}\.[a-z0-9]+$/, name);
	for (const ext of ['js', 'css', 'wasmz']) assert.ok(names.some((n) => n.startsWith('assets/') && n.endsWith(`.${ext}`)), `no ${ext} in assets`);
	assert.ok(names.includes('sw.js'));
});
