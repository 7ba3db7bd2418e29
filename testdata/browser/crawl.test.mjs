// Pages load with no violation of the content security policy, no uncaught error and
// no request to another host; the policy blocks injected code; hostile text in the
// address, the search box and the device's storage stays text.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { calculator, openCards, ready } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { files, pages, releaseA, spread } from './lib/site.mjs';

// A link is dead if its file or its anchor does not exist.
test('no link of any page is dead', () => {
	const published = new Set(files(releaseA));
	const ids = new Map();
	const dead = new Set();
	const attributes = (html, name) => [...html.matchAll(new RegExp(`\\s${name}=(?:"([^"]*)"|'([^']*)'|([^\\s>"']+))`, 'g'))].map((m) => m[1] ?? m[2] ?? m[3]);
	const read = (name) => readFileSync(`${releaseA}/${name}`, 'utf8');
	const idsOf = (name) => {
		if (!ids.has(name)) ids.set(name, new Set(attributes(read(name), 'id')));
		return ids.get(name);
	};
	let links = 0;
	for (const name of pages()) {
		for (const href of [...attributes(read(name), 'href'), ...attributes(read(name), 'src')]) {
			const url = new URL(href.replaceAll('&amp;', '&'), `http://site/${name}`);
			if (url.host !== 'site') continue;
			links++;
			const target = decodeURIComponent(url.pathname.slice(1)).replace(/(^|\/)$/, '$1index.html');
			if (!published.has(target)) dead.add(`${name}: ${href}`);
			else if (url.hash && target.endsWith('.html') && !idsOf(target).has(decodeURIComponent(url.hash.slice(1)))) dead.add(`${name}: ${href}`);
		}
	}
	assert.ok(links > 2000, `only ${links} links were read`);
	assert.deepEqual([...dead], [], 'dead links');
});

test('pages load with no violation, no error and no foreign request', async (t) => {
	const site = await serve(t, releaseA);
	const context = await newPhone(t);
	const page = await newPage(context);
	const broken = new Set();
	page.on('response', (response) => { if (response.status() >= 400) broken.add(`${response.status()} ${response.url()}`); });
	for (const name of spread(pages(), 24)) {
		await page.goto(site.url + name, { waitUntil: 'load' });
		assert.ok((await page.title()).length > 3, `${name} has no title`);
		await openCards(page);
		for (const calc of await page.locator('section.calc').all()) await ready(calc);
	}
	assert.deepEqual(page.errors, []);
	assert.deepEqual(context.foreignRequests, []);
	assert.deepEqual([...broken], []);
});

test('the policy blocks an injected script, eval, a foreign image and a raw HTML sink', async (t) => {
	const site = await serve(t, releaseA);
	const page = await newPage(await newPhone(t, { saving: false }));
	await page.goto(`${site.url}index.html`);
	const happened = await page.evaluate(async () => {
		const seen = [];
		document.addEventListener('securitypolicyviolation', (event) => seen.push(event.effectiveDirective));
		const script = document.createElement('script');
		try { script.textContent = 'window.injected = 1'; document.body.append(script); } catch { seen.push('text sink'); }
		const link = document.createElement('a');
		try { link.setAttribute('onclick', 'window.injected = 2'); } catch { seen.push('handler sink'); }
		document.body.append(link);
		link.click();
		try { document.body.insertAdjacentHTML('beforeend', '<b>x</b>'); } catch { seen.push('html sink'); }
		const image = new Image();
		image.src = 'https://elsewhere.example/x.png';
		document.body.append(image);
		await new Promise((done) => { image.onerror = done; });
		try { setTimeout('window.injected = 3', 0); } catch { seen.push('timer sink'); }
		await new Promise((done) => { setTimeout(done, 200); });
		return { seen, injected: window.injected };
	});
	assert.equal(happened.injected, undefined, `something ran: ${JSON.stringify(happened)}`);
	for (const what of ['handler sink', 'html sink', 'timer sink', 'img-src']) assert.ok(happened.seen.includes(what), `${what} was not blocked: ${happened.seen}`);
});

const attacks = [
	'<img src=x onerror="window.pwned=1">', '"><script>window.pwned=1</script>', "javascript:window.pwned=1",
	'<svg onload=window.pwned=1>', '{{constructor.constructor("window.pwned=1")()}}', '\u202Eevil', '__proto__', '\u0000\t\n\\t',
];

test('hostile address, hash and search text stay text', async (t) => {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false });
	const page = await newPage(context);
	for (const attack of attacks) {
		const text = encodeURIComponent(attack);
		await page.goto(`${site.url}en/calc/wall-volume.html?q=${text}&x=${text}#${text}`);
		await ready(calculator(page, 'wall-volume'));
		await page.locator('#q').fill(attack);
		await page.locator('#hits').waitFor();
		await page.locator('#hits').filter({ hasText: /\S/ }).waitFor();
		await sane(page);
	}
	assert.deepEqual(context.foreignRequests, []);
});

test('hostile text typed into a calculator and stored on the device stays text', async (t) => {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false });
	const page = await newPage(context);
	const address = `${site.url}en/calc/wall-volume.html`;
	await page.goto(address);
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	const core = calc.locator('[data-field=core] input');
	for (const attack of attacks) {
		await core.fill(attack);
		await calc.locator('[data-field=core] .error').waitFor();
		await sane(page);
		await page.reload();
		await ready(calc);
		await sane(page);
	}
	// The page works with any stored text, broken or hostile.
	const keys = await page.evaluate(() => Object.keys(localStorage));
	assert.ok(keys.length > 0, 'the page stores nothing');
	for (const junk of [...attacks, '{"a":', 'null', '[]', '{"__proto__":{"polluted":1}}', '1e999', '{"core":{"x":1},"runs":7}']) {
		await page.evaluate(([names, value]) => { for (const name of names) localStorage.setItem(name, value); }, [keys, junk]);
		await page.reload();
		await ready(calc);
		await sane(page);
		assert.equal(await page.evaluate(() => ({}).polluted), undefined);
	}
	const real = page.errors.filter((fault) => !fault.startsWith('policy'));
	assert.deepEqual(real, []);
	assert.deepEqual(page.errors, []);
});

// sane fails if an attack ran or became markup.
async function sane(page) {
	assert.equal(await page.evaluate(() => window.pwned), undefined, 'a payload ran');
	const planted = await page.locator('img[src=x], svg[onload], [onerror]').count();
	assert.equal(planted, 0, 'a payload became markup');
}
