// Saving on the device and changing to a new edition. The server is stopped to test
// without a signal.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, runCommand, box, calculator, eventually, expected, openCard, ready, set, catalog, readInputs } from './lib/form.mjs';
import { mainJob, search } from './lib/journey.mjs';
import { cached, hashes, saved, whole } from './lib/offline.mjs';
import { serve } from './lib/server.mjs';
import { alone, newSentence, pages, releaseA, releaseB, starterA, starterB, starterPage, spread } from './lib/site.mjs';
import { uiPattern, uiText } from './lib/words.mjs';

// install opens the start page of a release and waits until the release is saved.
async function install(t, { release = releaseA, ...options } = {}) {
	const site = await serve(t, release, options);
	const context = await newPhone(t);
	const page = await newPage(context);
	await page.goto(site.url);
	await saved(page);
	return { site, context, page };
}

// The manual works below any path of a server.
for (const base of ['/', '/a/', '/a/b/']) {
	test(`below ${base}: saved by one visit to the start page, then everything works offline`, async (t) => {
		const { site, context, page } = await install(t, { base });
		whole(await cached(page), releaseA, base);
		await page.close();
		await site.stop();
		const cold = await newPage(context);
		for (const name of base === '/a/b/' ? spread(pages(), 24) : ['index.html', 'en/radius-wall.html', 'es/index.html']) {
			await cold.goto(site.url + name);
			assert.ok((await cold.locator('main h1').innerText()).length > 2, name);
		}
		await cold.goto(site.url);
		await saved(cold);
		await mainJob(cold, site.url);
		if (base === '/a/b/') await someCalculators(cold, site);
		assert.deepEqual(cold.errors, []);
		assert.deepEqual(context.foreignRequests, []);
	});
}

async function someCalculators(page, site) {
	for (const { calculator: id } of spread(catalog, 6)) {
		await page.goto(`${site.url}en/calc/${id}.html`);
		const calc = calculator(page, id);
		await ready(calc);
		await agrees(calc, id, { units: 'us' });
	}
}

test('offline, search finds a page never visited and marks the words', async (t) => {
	const { site, page } = await install(t);
	await site.stop();
	await page.reload();
	const hits = await search(page, 'stinger');
	assert.ok(hits.length > 0);
	await search(page, 'radius');
	await eventually(async () => assert.ok(await page.locator('#hits mark').count() > 0, 'no found word is marked'));
});

test('addresses with and without slash, index.html, .html and a query all open offline', async (t) => {
	const { site, context } = await install(t, { base: '/a/', redirectIndex: true });
	await site.stop();
	const page = await newPage(context);
	for (const path of ['', 'index.html', '?from=home', 'en/radius-wall.html', 'en/radius-wall', 'en/radius-wall.html?x=1', 'es/', 'es/index.html', 'es']) {
		await page.goto(site.url + path);
		assert.ok((await page.locator('main h1').innerText()).length > 2, path);
		const broken = await page.evaluate(() => performance.getEntriesByType('resource').filter((entry) => entry.responseStatus >= 400 || entry.transferSize + entry.decodedBodySize === 0).map((entry) => entry.name));
		assert.deepEqual(broken, [], `${path || 'the start page'} lacks its parts`);
		assert.equal(await page.evaluate(() => getComputedStyle(document.querySelector('.unseen')).position), 'absolute', `${path || 'the start page'} has no style`);
		await page.locator('html.js').waitFor({ state: 'attached' });
	}
	await page.goto(`${site.url}404.html`);
	const missingTitle = await page.locator('h1').innerText();
	await page.goto(`${site.url}en/no-such-page.html`);
	assert.equal(await page.locator('h1').innerText(), missingTitle);
});

test('a server that redirects index.html does not break the saved pages', async (t) => {
	const { site, page, context } = await install(t, { redirectIndex: true });
	whole(await cached(page), releaseA);
	await site.stop();
	const cold = await newPage(context);
	for (const path of ['', 'index.html', 'es/index.html', 'es/']) {
		await cold.goto(site.url + path);
		await saved(cold, path.startsWith('es') ? 'es' : 'en');
	}
});

for (const [name, types] of [['application/octet-stream', undefined], ['text/plain', { '.wasmz': 'text/plain' }], ['application/wasm', { '.wasmz': 'application/wasm' }]]) {
	test(`the module served as ${name} runs and is fetched once`, async (t) => {
		const site = await serve(t, releaseA, { types });
		const page = await newPage(await newPhone(t, { saving: false }));
		await page.goto(`${site.url}en/calc/wall-volume.html`);
		const calc = calculator(page, 'wall-volume');
		await ready(calc);
		await agrees(calc, 'wall-volume');
		assert.equal(site.requests.filter((path) => path.endsWith('.wasmz')).length, 1);
	});
}

test('a missing file: the page does not show "saved", and no file is cached', async (t) => {
	const site = await serve(t, starterA, { answer: (path) => (path === starterPage ? { status: 404, body: 'gone' } : undefined) });
	const page = await newPage(await newPhone(t));
	await page.goto(site.url);
	await page.locator('#saved', { hasText: uiText('ui.saved.changed') }).waitFor({ timeout: 30_000 });
	assert.deepEqual(await cached(page), []);
});

for (const [what, answer] of [
	['answers 404', { status: 404, body: 'gone' }],
	['is an HTML error page', { status: 200, body: '<!doctype html><title>Sign in to the network</title>' }],
	['answers 500', { status: 500, body: 'oops' }],
	['comes with partial content', { status: 206, body: 'x' }],
]) {
	test(`in a new edition a file ${what}: the edition is rejected and the old one works completely`, async (t) => {
		const { site, page, context } = await install(t, { release: starterA });
		site.folder = starterB;
		let requested = 0;
		site.answer = (path) => {
			if (path !== starterPage) return undefined;
			requested++;
			return answer;
		};
		assert.ok(await updateRejected(page), 'the new edition was accepted');
		assert.ok(requested > 0, 'the broken file was never requested');
		assert.ok(!await page.locator('#edition').isVisible(), 'a broken edition is offered');
		whole(await cached(page), starterA);
		await site.stop();
		const cold = await newPage(context);
		await cold.goto(site.url);
		await saved(cold);
		await cold.goto(`${site.url}${starterPage}`);
		assert.ok(!(await cold.locator('main').innerText()).includes(newSentence));
	});
}

// updateRejected starts an update and reports whether the new worker became redundant.
function updateRejected(page) {
	return page.evaluate(async () => {
		const registration = await navigator.serviceWorker.getRegistration();
		const found = new Promise((done) => registration.addEventListener('updatefound', () => done(registration.installing), { once: true }));
		await registration.update().catch(() => {});
		const worker = await found;
		return new Promise((done) => {
			const check = () => { if (['installed', 'redundant', 'activated'].includes(worker.state)) done(worker.state === 'redundant'); };
			worker.addEventListener('statechange', check);
			check();
		});
	});
}

test('storage cleared: offline no page shows "saved"', async (t) => {
	const { site, page, context } = await install(t, { release: starterA });
	const other = await newPage(context);
	await other.goto(`${site.url}en/all.html`);
	await saved(other);
	await page.evaluate(async () => { for (const name of await caches.keys()) await caches.delete(name); });
	await site.stop();
	for (const p of [page, other]) {
		await p.reload().catch(() => {}); // nothing is cached: the browser shows its error page
		await p.waitForLoadState();
		assert.equal(await p.locator('#saved', { hasText: uiText('ui.saved.yes') }).count(), 0, 'the status is false');
	}
	await site.start();
	await page.goto(site.url);
	await saved(page);
	whole(await cached(page), starterA);
});

for (const [what, clear] of [
	['site data cleared', async (page, context, origin) => {
		const devtools = await context.newCDPSession(page);
		await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'service_workers,cache_storage' });
	}],
	['worker unregistered and caches deleted', (page) => page.evaluate(async () => {
		await (await navigator.serviceWorker.getRegistration()).unregister();
		for (const name of await caches.keys()) await caches.delete(name);
	})],
]) {
	test(`${what}: offline the open page stays, with its inputs`, async (t) => {
		const { site, page, context } = await install(t, { release: starterA });
		await page.goto(site.url + starterPage);
		const calc = await openCard(page, 'form-pressure');
		await saved(page);
		await set(calc, 'height', '7 ft');
		await agrees(calc, 'form-pressure');
		const inputs = await readInputs(calc);
		await page.evaluate(() => { window.opened = 'before'; });
		await site.stop();
		await clear(page, context, site.origin);
		if (what.startsWith('site')) await page.locator('#saved', { hasText: uiText('ui.saved.gone') }).waitFor();
		await page.waitForTimeout(1500); // longer than a reload would take
		assert.equal(await page.evaluate(() => window.opened), 'before', 'the page was reloaded');
		assert.deepEqual(await readInputs(calc), inputs);
		await set(calc, 'height', '6 ft');
		await agrees(calc, 'form-pressure');
		assert.deepEqual(page.errors, []);
	});
}

test('one saved file lost: offline the page shows that it is not saved, online the file is fetched again', async (t) => {
	const { site, page } = await install(t, { release: starterA });
	const deleteFile = () => page.evaluate(async (path) => {
		const cache = await caches.open((await caches.keys())[0]);
		return cache.delete(new URL(path, location.href));
	}, starterPage);
	assert.ok(await deleteFile());
	await site.stop();
	await page.reload();
	await eventually(async () => assert.match(await page.locator('#saved').innerText(), uiPattern('ui.saved.part')));
	await site.start();
	await page.reload();
	await saved(page);
	whole(await cached(page), starterA);
	// A wrong file in its place is not cached.
	assert.ok(await deleteFile());
	site.answer = (path) => (path === starterPage ? { body: '<!doctype html><title>Sign in</title>' } : undefined);
	await page.reload();
	await eventually(async () => assert.match(await page.locator('#saved').innerText(), uiPattern('ui.saved.part')));
	assert.ok(!(await cached(page)).some(({ path }) => path === `/${starterPage}`), 'a wrong file was cached');
});

test('a full device: the new edition is rejected, and the old one stays', async (t) => {
	const { site, page, context } = await install(t, { release: starterA });
	const devtools = await context.newCDPSession(page);
	const { usage } = await devtools.send('Storage.getUsageAndQuota', { origin: site.origin });
	await devtools.send('Storage.overrideQuotaForOrigin', { origin: site.origin, quotaSize: usage + 20_000 });
	site.folder = starterB;
	assert.ok(await updateRejected(page), 'the new edition was cached beyond the quota');
	whole(await cached(page), starterA);
	await site.stop();
	await page.reload();
	await saved(page);
});

test('a first visit to a full device shows that it is full', async (t) => {
	const site = await serve(t, starterA);
	const context = await newPhone(t);
	const page = await newPage(context);
	const devtools = await context.newCDPSession(page);
	await devtools.send('Storage.overrideQuotaForOrigin', { origin: site.origin, quotaSize: 100_000 });
	await page.goto(site.url);
	await page.locator('#saved', { hasText: uiText('ui.saved.full') }).waitFor({ timeout: 30_000 });
	assert.deepEqual(await cached(page), []);
});

test('a new edition: offered, accepted by the reader, complete; typed inputs are kept', async (t) => {
	const { site, page, context } = await install(t, { maxAge: 31_536_000 });
	const address = `${site.url}en/calc/wall-volume.html`;
	await page.goto(address);
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await set(calc, 'core', '6 in');
	await agrees(calc, 'wall-volume');
	const inputs = await readInputs(calc);
	const second = await newPage(context);
	await second.goto(`${site.url}en/order-concrete.html`);
	const third = await newPage(context);
	await third.goto(`${site.url}es/${alone}.html`);
	await third.evaluate(() => { window.opened = 'before'; });

	site.folder = releaseB;
	await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
	await page.locator('#edition').waitFor({ timeout: 30_000 });
	// Until the reader accepts, both tabs use A.
	assert.deepEqual(await readInputs(calc), inputs, 'the offer changed the inputs');
	await set(calc, 'core', '10 in');
	await agrees(calc, 'wall-volume');
	await second.goto(`${site.url}en/blow-out.html`);
	assert.ok(!(await second.locator('main').innerText()).includes(newSentence), 'a page of B was served before it was accepted');
	await second.locator('#edition').waitFor();
	const before = await edition(page);
	assert.equal(await edition(second), before);

	await Promise.all([
		page.waitForEvent('load', { timeout: 20_000 }), second.waitForEvent('load', { timeout: 20_000 }),
		page.locator('#edition [data-do=change]').click(),
	]);
	await ready(calc);
	await eventually(async () => assert.equal((await readInputs(calc)).find(([path]) => path === 'core')[1], '10 in', 'typed inputs are lost'));
	await agrees(calc, 'wall-volume');
	await second.getByText(newSentence).waitFor();
	// The new edition lacks this page: the tab is not reloaded, but offers a reload.
	await third.locator('#edition').getByText(uiText('ui.update.newer', {}, 'es')).waitFor();
	assert.equal(await third.evaluate(() => window.opened), 'before', 'a page that B lacks was reloaded');
	const after = await edition(page);
	assert.notEqual(after, before, 'the edition is still A');
	assert.equal(await edition(second), after);
	await eventually(async () => whole(await cached(page), releaseB));
	await saved(page);
	await site.stop();
	const cold = await newPage(context);
	await cold.goto(`${site.url}en/blow-out.html`);
	await cold.getByText(newSentence).waitFor();
	await saved(cold);
	await cold.goto(address);
	await ready(calculator(cold, 'wall-volume'));
	await agrees(calculator(cold, 'wall-volume'), 'wall-volume');
});

test('a new edition: only files that differ are fetched', async (t) => {
	const { site, page } = await install(t, { release: starterA });
	site.requests.length = 0;
	site.folder = starterB;
	await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
	await page.locator('#edition').waitFor({ timeout: 30_000 });
	const old = hashes(starterA);
	const differ = [...hashes(starterB)].filter(([path, sum]) => old.get(path) !== sum).map(([path]) => path.slice(1));
	assert.deepEqual([...new Set(site.requests)].sort(), differ.sort());
	assert.ok(differ.length <= 4, `${differ}`);
});

function edition(page) {
	return eventually(async () => {
		const text = (await page.locator('#page-id').innerText()).trim();
		assert.match(text, uiPattern('ui.edition'));
		return text;
	});
}

test('a new edition published during saving leaves no mixture', async (t) => {
	const site = await serve(t, starterA);
	const names = new Set();
	site.answer = (path) => {
		names.add(path);
		if (names.size > 12) site.folder = starterB;
		return undefined;
	};
	const page = await newPage(await newPhone(t));
	await page.goto(site.url);
	await eventually(async () => assert.notEqual((await page.locator('#saved').innerText()).trim(), uiText('ui.saved.asking')), 30_000);
	const a = hashes(starterA);
	const b = hashes(starterB);
	await eventually(async () => {
		const byCache = Map.groupBy ? Map.groupBy(await cached(page), (entry) => entry.cache) : group(await cached(page));
		const line = (await page.locator('#saved').innerText()).trim();
		assert.doesNotMatch(line, uiPattern('ui.saved.going'), 'still saving');
		for (const [cache, list] of byCache) {
			const all = (release) => list.every(({ path, sum }) => release.get(path) === sum);
			assert.ok(all(a) || all(b), `${cache} mixes two editions`);
		}
		if (byCache.size === 0) assert.notEqual(line, uiText('ui.saved.yes'), 'nothing is cached, but the page shows "saved"');
	}, 30_000);
});

function group(list) {
	const groups = new Map();
	for (const entry of list) groups.set(entry.cache, [...(groups.get(entry.cache) ?? []), entry]);
	return groups;
}

test('caches of other apps and of other manuals on the same origin are left alone', async (t) => {
	const site = await serve(t, starterA, { base: '/a/' });
	const page = await newPage(await newPhone(t));
	await page.goto(`${site.url}app.webmanifest`); // an address of the origin without our script
	await page.evaluate(async () => {
		for (const name of ['another-app-v1', 'coursebook-/-1', 'coursebook-/a/b/-1', 'coursebook-/ab/-1', 'coursebook-/a/-old']) {
			await (await caches.open(name)).put('/thing', new Response('keep me'));
		}
	});
	await page.goto(site.url);
	await saved(page);
	site.folder = starterB;
	await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
	await page.locator('#edition').waitFor({ timeout: 30_000 });
	await Promise.all([page.waitForEvent('load', { timeout: 20_000 }), page.locator('#edition [data-do=change]').click()]);
	await saved(page);
	const names = (await page.evaluate(() => caches.keys())).sort();
	for (const name of ['another-app-v1', 'coursebook-/-1', 'coursebook-/a/b/-1', 'coursebook-/ab/-1']) assert.ok(names.includes(name), `${name} was deleted`);
	assert.ok(!names.includes('coursebook-/a/-old'), 'the old cache of this manual was not deleted');
	assert.equal(names.length, 5, `caches: ${names}`);
});

test('offline calculators agree with the command and refuse bad input', async (t) => {
	const { site, page } = await install(t);
	await site.stop();
	for (const { calculator: id, inputs } of spread(catalog, 9)) {
		await page.goto(`${site.url}es/calc/${id}.html`);
		const calc = calculator(page, id);
		await ready(calc);
		const first = (await readInputs(calc)).find(([path, text]) => /\d/.test(text) && inputs[path]?.unit !== undefined)[0];
		const good = await box(calc, first).locator('input').inputValue();
		await set(calc, first, 'abc');
		await box(calc, first).locator('.error').waitFor();
		await set(calc, first, good);
		const want = expected(runCommand(id, [], { lang: 'es' }));
		await agrees(calc, id, { lang: 'es' });
		assert.ok(Object.keys(want.outs).length > 0);
	}
});
