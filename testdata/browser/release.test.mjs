// A page works only in a release that lists it. A server during an update, or an HTTP
// cache, can serve page, list and module of two releases: then no result is computed,
// and the page shows the reason.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { eventually, openCard, set, readResult } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { newSentence, starterA, starterB, starterPage } from './lib/site.mjs';
import { uiPattern, uiText } from './lib/words.mjs';

const read = (release, name) => readFileSync(join(release, name));
const listA = JSON.parse(read(starterA, 'release.json'));
// Release B has another module: its name is new, and the listed fingerprint differs
// from that of the code.
const listB = { ...JSON.parse(read(starterB, 'release.json')), module: 'assets/module-0123456789.wasmz', fingerprint: '0123456789abcdef' };

// served answers each of page, list and module from A or B.
function served(name, { page, list, module }) {
	if (name === starterPage) return { body: read(page === 'B' ? starterB : starterA, name) };
	if (name === 'release.json') return { type: 'application/json', body: JSON.stringify(list === 'B' ? listB : listA) };
	const path = module === 'B' ? listB.module : listA.module;
	if (name === path) return { type: 'application/octet-stream', body: read(starterA, listA.module) };
	return name.endsWith('.wasmz') ? { status: 404, body: 'gone' } : undefined;
}

async function open(t, answer) {
	const site = await serve(t, starterA, { answer });
	const context = await newPhone(t, { saving: false });
	await context.addInitScript(() => {
		window.started = 0;
		const instantiate = WebAssembly.instantiate;
		WebAssembly.instantiate = (...args) => (window.started++, instantiate(...args));
	});
	const page = await newPage(context);
	await page.goto(site.url + starterPage);
	return { site, context, page };
}

// closed fails unless the calculator is disabled for this reason. A page of another
// edition does not open the card; otherwise the card opens and its form shows the
// example.
async function closed(page, reason) {
	const card = page.locator('[data-card]');
	await card.locator('.open button').click();
	if (reason === 'ui.update.newer') {
		await card.locator('[data-part=failed]', { hasText: uiText(reason) }).waitFor();
		assert.equal(await card.locator('section.calc').count(), 0, 'a form is open');
		return;
	}
	const calc = card.locator('section.calc');
	await calc.scrollIntoViewIfNeeded();
	await eventually(async () => assert.equal((await calc.locator('[data-part=why]').innerText()).trim(), uiText(reason)), 15_000);
	assert.ok(await calc.locator('fieldset.fields').evaluate((fields) => fields.disabled), 'the inputs are open');
	assert.equal((await calc.locator('[data-part=tag]').innerText()).trim(), uiText('ui.calc.example'));
}

for (const page of ['A', 'B']) {
	for (const list of ['A', 'B']) {
		for (const module of ['A', 'B']) {
			const state = { page, list, module };
			// If page and list agree, the listed module can be missing or have
			// another fingerprint.
			const reason = page !== list ? 'ui.update.newer' : list !== module ? 'ui.calc.no-load' : list === 'B' ? 'ui.calc.other' : '';
			test(`page of ${page}, list of ${list}, module of ${module}: ${reason || 'works'}`, async (t) => {
				const { site, page: tab } = await open(t, (name) => served(name, state));
				if (!reason) {
					assert.ok((await readResult(await openCard(tab, 'form-pressure'))).outs);
					await eventually(async () => assert.equal((await tab.locator('#page-id').innerText()).trim(), uiText('ui.edition', { id: listA.edition })));
					return;
				}
				await closed(tab, reason);
				if (reason === 'ui.calc.other') assert.equal(await tab.evaluate(() => window.started), 1);
				else assert.equal(await tab.evaluate(() => window.started), 0, 'a module was started');
				assert.deepEqual(tab.errors, []);
				if (reason !== 'ui.update.newer') return;
				await tab.locator('#edition').getByText(uiText('ui.update.newer')).waitFor();
				assert.match(await tab.locator('#page-id').innerText(), uiPattern('ui.page-id'));
				assert.equal(site.count(starterPage), 2, 'the page is not fetched again once');
				await tab.locator('#edition button').click();
				await closed(tab, reason);
				assert.equal(site.count(starterPage), 3, 'a page that was reloaded is fetched again');
			});
		}
	}
}

test('search shows that a newer edition is on the server', async (t) => {
	const { page } = await open(t, (name) => served(name, { page: 'A', list: 'B', module: 'B' }));
	await page.locator('#q').fill('wall');
	await page.locator('#hits').waitFor();
	assert.equal((await page.locator('#hits .count').innerText()).trim(), uiText('ui.update.newer'));
});

test('a page from a stale cache is reloaded once and is then the new one', async (t) => {
	const site = await serve(t, starterA, { maxAge: 31_536_000 });
	const context = await newPhone(t, { saving: false });
	const first = await newPage(context);
	await first.goto(site.url + starterPage);
	const calc = await openCard(first, 'form-pressure');
	site.folder = starterB;
	const second = await newPage(context);
	await second.goto(site.url + starterPage);
	await second.getByText(newSentence).waitFor();
	await openCard(second, 'form-pressure');
	const { edition } = JSON.parse(read(starterB, 'release.json'));
	await eventually(async () => assert.equal((await second.locator('#page-id').innerText()).trim(), uiText('ui.edition', { id: edition })));
	assert.equal(site.count(starterPage), 3, 'want three requests: first tab, second tab, reload');
	// The first tab continues with the release it loaded.
	await set(calc, 'height', '7 ft');
	assert.equal((await readResult(calc)).none, '');
});

test('without script the footer shows the page’s id', async (t) => {
	const site = await serve(t, starterA);
	const page = await newPage(await newPhone(t, { javaScriptEnabled: false, saving: false }));
	await page.goto(site.url + starterPage);
	assert.equal((await page.locator('#page-id').innerText()).trim(), uiText('ui.page-id', { id: listA.pages[starterPage] }));
});
