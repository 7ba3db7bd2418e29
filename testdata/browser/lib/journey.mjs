// The main task of a reader, from the start page to a result, in both languages.
// Tests run it online, offline and below a path.
import assert from 'node:assert/strict';
import { agrees, eventually, openCard, set, units } from './form.mjs';
import { uiText } from './words.mjs';

// search fills the search box and returns the hits.
export async function search(page, text) {
	await page.locator('#q').fill('');
	await page.locator('#q').fill(text);
	await page.locator(`#hits[data-q=${JSON.stringify(text)}]:has(a)`).waitFor({ timeout: 20_000 });
	return page.locator('#hits li a').evaluateAll((links) => links.map((link) => ({
		page: link.pathname.split('/').slice(-2).join('/'), hash: decodeURIComponent(link.hash.slice(1)), text: link.innerText,
		marks: [...link.querySelectorAll('mark')].map((mark) => mark.textContent),
	})));
}

// openSettings goes to the page of the settings, leaveSettings back to the page before.
export async function openSettings(page) {
	await page.locator('.settings').click();
	await page.locator('.panel [data-do=close]').waitFor();
}

export async function leaveSettings(page) {
	await page.locator('.panel [data-do=close]').click();
	await page.locator('.panel').waitFor({ state: 'detached' });
}

// choose changes one setting on the page of the settings, and goes back.
export async function choose(page, name, value) {
	await openSettings(page);
	const radio = page.locator(`.panel label:has(input[name="${name}"][value="${value}"])`);
	if (await radio.count() > 0) await radio.click();
	else await page.locator(`.panel select[name="${name}"]`).selectOption(value);
	await leaveSettings(page);
}

// mainJob searches for a procedure, ticks a check, runs its calculator, and switches
// units and language.
export async function mainJob(page, home) {
	await page.goto(home);
	const hits = await search(page, 'dry line');
	const at = hits.findIndex((hit) => hit.page === 'en/string-line.html');
	assert.ok(at >= 0 && at < 3, `“dry line” does not find the string line: ${JSON.stringify(hits)}`);
	await page.locator('#hits li a').nth(at).click();
	await page.waitForURL(/string-line\.html/);

	const tick = page.locator('ul.checks input').first();
	await page.locator('ul.checks label').first().click();
	assert.ok(await tick.isChecked());
	await page.reload();
	assert.ok(await tick.isChecked(), 'the tick is forgotten');

	const calc = await openCard(page, 'string-line');
	await units(calc, 'us');
	await agrees(calc, 'string-line');
	await set(calc, 'readings.1.gap', '7/8 in');
	await agrees(calc, 'string-line');
	await units(calc, 'metric');
	await agrees(calc, 'string-line', { units: 'metric' });

	await page.locator('.language[lang=es]').click();
	await page.waitForURL(/\/es\/string-line\.html/);
	assert.equal(await page.locator('html').getAttribute('lang'), 'es');
	assert.equal(await page.locator('#q').getAttribute('placeholder'), uiText('ui.search.short', {}, 'es'));
	await openCard(page, 'string-line');
	await agrees(calc, 'string-line', { units: 'metric', lang: 'es' });
	await eventually(async () => assert.ok(await calc.locator('[data-do=reset]').isVisible(), 'the reader’s numbers are lost in the other language'));

	await page.locator('.language[lang=en]').click();
	await page.waitForURL(/\/en\/string-line\.html/);
	await openCard(page, 'string-line');
	await units(calc, 'us');
	await agrees(calc, 'string-line');
	await calc.locator('[data-do=reset]').click();
	await agrees(calc, 'string-line');
	assert.deepEqual(page.errors, []);
}
