// A reader's use of the manual on a phone, online.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { join } from 'node:path';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, box, calculator, eventually, ready, set, readResult, readInputs, units } from './lib/form.mjs';
import { choose, leaveSettings, mainJob, openSettings, search } from './lib/journey.mjs';
import { serve } from './lib/server.mjs';
import { alone, files, releaseA, releaseB, root } from './lib/site.mjs';
import { uiPattern, uiText } from './lib/words.mjs';

async function phone(t, options = {}) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, ...options });
	return { site, context, page: await newPage(context) };
}

test('the main job, in English and Spanish', async (t) => {
	const { site, page, context } = await phone(t);
	await mainJob(page, site.url);
	assert.deepEqual(context.foreignRequests, []);
});

// Search texts, and the page that must be among the first three hits.
const queries = [
	['blow-out', 'en/blow-out.html'], ['blowout', 'en/blow-out.html'],
	['radi', 'en/radius-wall.html'], ['consoli', 'en/internal-vibration.html'],
	['bracng', 'en/bracing-and-lean.html'], ['widnow', 'en/window-frames.html'],
	['stinger', 'en/internal-vibration.html'], ['dry line', 'en/string-line.html'], ['yardage', 'en/order-concrete.html'],
];

test('search finds exact words, beginnings, typing errors and synonyms', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(site.url);
	for (const [text, wanted] of queries) {
		const found = (await search(page, text)).map((hit) => hit.page);
		assert.ok([...new Set(found)].slice(0, 3).includes(wanted), `“${text}” finds ${found}, not ${wanted}`);
	}
	assert.match(await page.locator('#hits [role=status]').innerText(), uiPattern('ui.search.many'));
});

test('search finds the trade’s signs that the manual contains', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(site.url);
	const text = files(join(root, 'content/en')).map((name) => readFileSync(join(root, 'content/en', name), 'utf8')).join('\n');
	let tried = 0;
	for (const sign of ['3/8', '1/2', '#5', '#4', "f'c", '10M', '15M', '2x4']) {
		const pattern = new RegExp(`(^|[^\\w/#.-])${sign.replace(/[/#']/g, '\\$&')}($|[^\\w/])`, 'm');
		if (!pattern.test(text)) continue;
		tried++;
		const hits = await search(page, sign);
		assert.ok(hits.length > 0, `“${sign}” is in the manual and is not found`);
		const bodies = await Promise.all(hits.slice(0, 3).map(async (hit) => (await page.request.get(site.url + hit.page)).text()));
		assert.ok(bodies.every((body) => body.replaceAll('&#39;', "'").includes(sign)), `“${sign}” finds pages without it: ${JSON.stringify(hits.slice(0, 3))}`);
	}
	assert.ok(tried >= 2, 'the manual contains none of the signs');
});

test('a search with no hit shows it and a link to all pages', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(site.url);
	await search(page, 'zzzzqqqq');
	assert.equal(await page.locator('#hits [role=status]').innerText(), uiText('ui.search.none', { q: 'zzzzqqqq' }));
	await page.locator('#hits li a').first().click();
	await page.waitForURL(/all\.html/);
});

test('search works from the keyboard and jumps to the section', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(site.url);
	const hits = await search(page, 'spacing worked');
	const at = hits.findIndex((hit) => hit.hash !== '' && hit.page === 'en/order-concrete.html');
	assert.ok(at >= 0, `no hit leads to a section: ${JSON.stringify(hits)}`);
	await page.locator('#q').focus();
	for (let i = 0; i <= at; i++) await page.keyboard.press('ArrowDown');
	await page.keyboard.press('Enter');
	await page.waitForURL(/order-concrete\.html#/);
	await eventually(async () => {
		const place = await page.evaluate(() => {
			const head = document.getElementById(decodeURIComponent(location.hash.slice(1)));
			const { top, left, height } = head.getBoundingClientRect();
			const over = document.elementFromPoint(left + 8, top + height / 2);
			return { top, bottom: innerHeight, free: over === head || head.contains(over) };
		});
		assert.ok(place.top >= 0 && place.top < place.bottom && place.free, `the section is not visible: ${JSON.stringify(place)}`);
	});
	await page.locator('#q').fill('brace');
	await page.locator('#hits').waitFor();
	await page.keyboard.press('Escape');
	await page.locator('#hits').waitFor({ state: 'hidden' });
});

test('ticks are stored for each site and cleared only on the second touch', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}en/blow-out.html`);
	const ticks = page.locator('ul.checks input');
	const count = page.locator('.check-count').first();
	const all = await ticks.count();
	await page.locator('ul.checks label').nth(1).click();
	await page.locator('ul.checks label').nth(2).click();
	await page.reload();
	assert.deepEqual(await ticks.evaluateAll((list) => list.map((tick) => tick.checked)), [false, true, true, ...Array(all - 3).fill(false)]);
	assert.equal(await count.innerText(), uiText('ui.checks.count', { n: 2, all }));

	await openSettings(page);
	await page.locator('[name=job]').fill('Lot 7');
	await leaveSettings(page);
	await eventually(async () => assert.equal(await page.locator('ul.checks input:checked').count(), 0, 'ticks of another site are shown'));
	await page.locator('ul.checks label').nth(0).click();
	await openSettings(page);
	await page.locator('[name=job]').fill('');
	await leaveSettings(page);
	await eventually(async () => assert.equal(await page.locator('ul.checks input:checked').count(), 2, 'ticks of the first site are lost'));

	const clear = page.locator('.check-foot button').first();
	await clear.click();
	assert.equal(await clear.innerText(), uiText('ui.checks.sure', { n: 2 }));
	assert.equal(await page.locator('ul.checks input:checked').count(), 2, 'one touch cleared the ticks');
	await clear.click();
	assert.equal(await page.locator('ul.checks input:checked').count(), 0);
	await page.reload();
	assert.equal(await page.locator('ul.checks input:checked').count(), 0, 'cleared ticks are shown again');
	assert.deepEqual(page.errors, []);
});

test('the blow-out page is one touch away from every page', async (t) => {
	const { site, page } = await phone(t);
	for (const name of ['index.html', 'en/order-concrete.html', 'en/calc/wall-volume.html', 'es/string-line.html', 'en/all.html', '404.html']) {
		await page.goto(site.url + name);
		const alarm = page.locator('.alarm');
		assert.ok(await alarm.isVisible(), `${name} has no link to the blow-out page`);
		await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
		await alarm.click();
		await page.waitForURL(/blow-out\.html/);
	}
});

test('units, role and light are stored for all pages', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}en/order-concrete.html`);
	const amount = page.locator('main .q:visible').first();
	assert.ok(await amount.locator('.us').isVisible() && await amount.locator('.si').isVisible(), 'without a choice both systems are visible');
	await choose(page, 'units', 'metric');
	await page.goto(`${site.url}en/placing-by-lifts.html`);
	assert.equal(await page.locator('main .us:visible').count(), 0, 'US units are visible with metric');
	assert.ok(await page.locator('main .si:visible').count() > 3);
	await choose(page, 'units', 'us');
	assert.equal(await page.locator('main .si:visible').count(), 0, 'metric units are visible with US');
	assert.ok(await page.locator('main .us:visible').count() > 3);

	await page.goto(site.url);
	await page.locator('.iam select').selectOption('vibrator-hand');
	await page.goto(`${site.url}en/stage/consolidation.html`);
	const marked = page.locator('[data-roles]:has(.mine)');
	assert.ok(await marked.count() > 2, 'the role marks nothing');
	for (const roles of await marked.evaluateAll((list) => list.map((item) => item.dataset.roles))) assert.match(roles, /vibrator-hand/);
	assert.equal(await page.locator('.mine').first().innerText(), uiText('ui.mine'));

	await choose(page, 'light', 'dark');
	await page.reload();
	const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
	assert.ok(paper.match(/\d+/g).slice(0, 3).every((part) => Number(part) < 60), `dark is ${paper}`);
	assert.deepEqual(page.errors, []);
});

test('a page without a translation links to the other language’s start page', async (t) => {
	const { site, page } = await phone(t);
	site.folder = releaseB;
	await page.goto(`${site.url}en/${alone}.html`);
	await page.locator('.language[lang=es]').click();
	await page.waitForURL(/\/es\/(index\.html)?$/);
	assert.equal(await page.locator('html').getAttribute('lang'), 'es');
});

test('Spanish calculator, decimal comma: labels, results and refusals agree with the command', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}es/calc/form-pressure.html`);
	const calc = calculator(page, 'form-pressure');
	await ready(calc);
	await choose(page, 'mark', 'comma');
	await units(calc, 'metric');
	const style = { units: 'metric', mark: 'comma', lang: 'es' };
	await agrees(calc, 'form-pressure', style);
	await set(calc, 'height', '2,75');
	await agrees(calc, 'form-pressure', style);
	await set(calc, 'height', '2.75');
	await eventually(async () => {
		const { outs, none, errors } = await readResult(calc);
		assert.deepEqual(outs, {});
		assert.equal(none, uiText('ui.calc.see-input', {}, 'es'));
		assert.match(errors.join(), /2,75/, 'the refusal does not show how to write it');
	});
	const label = await box(calc, 'height').locator('label').innerText();
	assert.ok(label.length > 3 && !/Height placed/.test(label), `the label is English: ${label}`);
	assert.deepEqual(page.errors, []);
});

test('the decimal mark of the text is that of the setting, and addresses in documents stay', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}es/last-truck-call.html`);
	const text = () => page.locator('main').evaluate((main) => [...main.querySelectorAll('figcaption, p, li, td')].map((e) => e.textContent).join(' '));
	const before = await text();
	assert.match(before, /1\.308/);
	await choose(page, 'mark', 'comma');
	assert.match(await text(), /1,308/);
	assert.doesNotMatch(await text(), /1\.308/);
	const sources = await page.locator('main .sources').innerText();
	await page.reload();
	await eventually(async () => assert.match(await text(), /1,308/, 'the setting is lost on the next page'));
	assert.equal(await page.locator('main .sources').innerText(), sources);
	await choose(page, 'mark', 'point');
	assert.equal(await text(), before);
	await page.goto(`${site.url}es/braces-and-planks.html`);
	await choose(page, 'mark', 'comma');
	assert.doesNotMatch(await page.locator('main').innerText(), /1926,\d/, 'a section of a regulation was rewritten');
	assert.deepEqual(page.errors, []);
});

test('a wrong address is answered in each language, and the install name is the reader\u2019s', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}no-such-page.html`);
	const main = page.locator('main');
	assert.ok((await main.innerText()).includes(uiText('ui.missing.title')));
	assert.equal(await main.locator('[lang=es] h2').innerText(), uiText('ui.missing.title', {}, 'es'));
	await main.locator('[lang=es] a').first().click();
	await page.waitForURL(/\/es\/index\.html$/);
	const app = await page.evaluate(async () => {
		const link = document.querySelector('link[rel=manifest]').href;
		return { link, ...await (await fetch(link)).json() };
	});
	assert.equal(app.lang, 'es');
	assert.equal(new URL(app.start_url, app.link).href, `${site.url}es/`);
	assert.equal(app.name, (await page.title()).split(' – ').at(-1));
});

test('changing to metric and back restores the typed texts', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}en/calc/form-pressure.html`);
	const calc = calculator(page, 'form-pressure');
	await ready(calc);
	await units(calc, 'us');
	for (const [path, text] of [['height', '9 ft 3 1/2 in'], ['thickness', '0.65 ft'], ['temperature', '21.5 °C'], ['pump-rate', '11']]) await set(calc, path, text);
	await agrees(calc, 'form-pressure');
	const before = await readInputs(calc, true);
	const { outs } = await readResult(calc);
	await units(calc, 'metric');
	await agrees(calc, 'form-pressure', { units: 'metric' });
	assert.notDeepEqual(await readInputs(calc, true), before, 'nothing was converted');
	await units(calc, 'us');
	await eventually(async () => assert.deepEqual(await readInputs(calc, true), before));
	await eventually(async () => assert.deepEqual((await readResult(calc)).outs, outs, 'the units have changed the answer'));
	await units(calc, 'metric');
	await agrees(calc, 'form-pressure', { units: 'metric' });
	await set(calc, 'height', '3');
	await agrees(calc, 'form-pressure', { units: 'metric' });
	await units(calc, 'us');
	await eventually(async () => assert.notEqual((await readInputs(calc, true)).find(([path]) => path === 'height')[1], '9 ft 3 1/2 in', 'an edited input was overwritten by an older text'));
	await agrees(calc, 'form-pressure');
});

test('typed inputs are stored, marked as the reader’s, and reset to the example on request', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}en/calc/wall-volume.html`);
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	const example = await readInputs(calc);
	assert.equal(await calc.locator('[data-part=tag]').innerText(), uiText('ui.calc.example'));
	await set(calc, 'core', '6 in');
	await set(calc, 'runs.2.length', '31 ft 2 in');
	await agrees(calc, 'wall-volume');
	const inputs = await readInputs(calc);
	await page.reload();
	await ready(calc);
	await eventually(async () => assert.deepEqual(await readInputs(calc), inputs));
	const all = await calc.locator('.fields [data-example] input:visible').count();
	const tag = () => calc.locator('[data-part=tag]').innerText();
	await eventually(async () => assert.match(await tag(), new RegExp(`^${uiText('ui.calc.partly', { n: '\\d+', m: '\\d+' })}$`)));
	await eventually(async () => assert.equal(Number((await tag()).match(/\d+/)[0]), all - 2, 'two inputs are the reader’s'));
	await agrees(calc, 'wall-volume');
	await calc.locator('[data-do=reset]').click();
	await eventually(async () => assert.deepEqual(await readInputs(calc), example));
	await agrees(calc, 'wall-volume');
	await eventually(async () => assert.equal(await calc.locator('[data-part=tag]').innerText(), uiText('ui.calc.example')));
});

test('during typing a refusal and a result are never shown together', async (t) => {
	const { site, page } = await phone(t);
	await page.goto(`${site.url}en/calc/form-pressure.html`);
	const calc = calculator(page, 'form-pressure');
	await ready(calc);
	// Checked at every change of the page.
	await page.evaluate(() => {
		window.clashes = [];
		const section = document.querySelector('section.calc');
		new MutationObserver(() => {
			const seen = (node) => node.checkVisibility();
			const errors = [...section.querySelectorAll('.error')].filter(seen).length;
			const numbers = [...section.querySelectorAll('[data-out] dd')].filter((dd) => seen(dd) && /\d/.test(dd.textContent)).length;
			if (errors > 0 && numbers > 0) window.clashes.push(`${errors} errors beside ${numbers} numbers`);
		}).observe(section, { subtree: true, childList: true, attributes: true, characterData: true });
	});
	const input = box(calc, 'height').locator('input');
	for (const text of ['', '9', '9x', '9 ft', '9 ft 3', '9 ft 3 in', '-', '1,5', '10 ft']) {
		await input.fill(text);
		await new Promise((done) => setTimeout(done, 60));
	}
	await agrees(calc, 'form-pressure');
	assert.deepEqual(await page.evaluate(() => window.clashes), []);
});
