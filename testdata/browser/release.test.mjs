// A page works only in a release that lists it. A server that is half-way
// through an update, or a cache between, may give page, list and module of two
// releases: then no result is computed, and the page gives the reason.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { eventually, openCard, set, shown } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { newSentence, smallA, smallB, smallPage } from './lib/site.mjs';
import { like, say } from './lib/words.mjs';

const read = (release, name) => readFileSync(join(release, name));
const listA = JSON.parse(read(smallA, 'release.json'));
// Release B has another module too: its name is new, and the fingerprint listed
// for it is not the one of the code.
const listB = { ...JSON.parse(read(smallB, 'release.json')), module: 'assets/module-0123456789.wasmz', fingerprint: '0123456789abcdef' };

// served gives each file of A or B, by what of the site is already B.
function served(name, { page, list, module }) {
	if (name === smallPage) return { body: read(page === 'B' ? smallB : smallA, name) };
	if (name === 'release.json') return { type: 'application/json', body: JSON.stringify(list === 'B' ? listB : listA) };
	const own = module === 'B' ? listB.module : listA.module;
	if (name === own) return { type: 'application/octet-stream', body: read(smallA, listA.module) };
	return name.endsWith('.wasmz') ? { status: 404, body: 'gone' } : undefined;
}

async function open(t, answer) {
	const site = await serve(t, smallA, { answer });
	const context = await newPhone(t, { saving: false });
	await context.addInitScript(() => {
		window.started = 0;
		const instantiate = WebAssembly.instantiate;
		WebAssembly.instantiate = (...args) => (window.started++, instantiate(...args));
	});
	const page = await newPage(context);
	await page.goto(site.url + smallPage);
	return { site, context, page };
}

// closed fails unless the calculator is closed for this reason: a page of
// another edition does not open its card, and in an opened card the form shows
// its example.
async function closed(page, reason) {
	const card = page.locator('[data-card]');
	await card.locator('.open button').click();
	if (reason === 'ui.update.newer') {
		await card.locator('[data-part=failed]', { hasText: say(reason) }).waitFor();
		assert.equal(await card.locator('section.calc').count(), 0, 'a form is open');
		return;
	}
	const calc = card.locator('section.calc');
	await calc.scrollIntoViewIfNeeded();
	await eventually(async () => assert.equal((await calc.locator('[data-part=why]').innerText()).trim(), say(reason)), 15_000);
	assert.ok(await calc.locator('fieldset.fields').evaluate((fields) => fields.disabled), 'the inputs are open');
	assert.equal((await calc.locator('[data-part=tag]').innerText()).trim(), say('ui.calc.example'));
}

for (const page of ['A', 'B']) {
	for (const list of ['A', 'B']) {
		for (const module of ['A', 'B']) {
			const state = { page, list, module };
			// Where page and list agree, the list is believed: its module may be
			// missing, or not be the one that is listed.
			const reason = page !== list ? 'ui.update.newer' : list !== module ? 'ui.calc.no-load' : list === 'B' ? 'ui.calc.other' : '';
			test(`page of ${page}, list of ${list}, module of ${module}: ${reason || 'works'}`, async (t) => {
				const { site, page: tab } = await open(t, (name) => served(name, state));
				if (!reason) {
					assert.ok((await shown(await openCard(tab, 'form-pressure'))).outs);
					await eventually(async () => assert.equal((await tab.locator('#page-id').innerText()).trim(), say('ui.edition', { id: listA.edition })));
					return;
				}
				await closed(tab, reason);
				if (reason === 'ui.calc.other') assert.equal(await tab.evaluate(() => window.started), 1);
				else assert.equal(await tab.evaluate(() => window.started), 0, 'a module was started');
				assert.deepEqual(tab.faults, []);
				if (reason !== 'ui.update.newer') return;
				await tab.locator('#edition').getByText(say('ui.update.newer')).waitFor();
				assert.match(await tab.locator('#page-id').innerText(), like('ui.page-id'));
				assert.equal(site.count(smallPage), 2, 'the page is not fetched again once');
				await tab.locator('#edition button').click();
				await closed(tab, reason);
				assert.equal(site.count(smallPage), 3, 'a page that was reloaded is fetched again');
			});
		}
	}
}

test('search says that a newer edition is on the server', async (t) => {
	const { page } = await open(t, (name) => served(name, { page: 'A', list: 'B', module: 'B' }));
	await page.locator('#q').fill('wall');
	await page.locator('#hits').waitFor();
	assert.equal((await page.locator('#hits .count').innerText()).trim(), say('ui.update.newer'));
});

test('a page from a stale cache is loaded again once and is then the new one', async (t) => {
	const site = await serve(t, smallA, { maxAge: 31_536_000 });
	const context = await newPhone(t, { saving: false });
	const first = await newPage(context);
	await first.goto(site.url + smallPage);
	const calc = await openCard(first, 'form-pressure');
	site.folder = smallB;
	const second = await newPage(context);
	await second.goto(site.url + smallPage);
	await second.getByText(newSentence).waitFor();
	await openCard(second, 'form-pressure');
	const { edition } = JSON.parse(read(smallB, 'release.json'));
	await eventually(async () => assert.equal((await second.locator('#page-id').innerText()).trim(), say('ui.edition', { id: edition })));
	assert.equal(site.count(smallPage), 3, 'not: first tab, once more for the second, and its reload');
	// The first tab goes on with the release it began with.
	await set(calc, 'height', '7 ft');
	assert.equal((await shown(calc)).none, '');
});

test('without script the foot of a page shows the page’s own id', async (t) => {
	const site = await serve(t, smallA);
	const page = await newPage(await newPhone(t, { javaScriptEnabled: false, saving: false }));
	await page.goto(site.url + smallPage);
	assert.equal((await page.locator('#page-id').innerText()).trim(), say('ui.page-id', { id: listA.pages[smallPage] }));
});
