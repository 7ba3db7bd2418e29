// Glossary terms: their meaning opens in place.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { newPage, newPhone } from './lib/browser.mjs';
import { eventually } from './lib/form.mjs';
import { serve } from './lib/server.mjs';
import { pocket, releaseA } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

async function open(t, path, { answer, ...options } = {}) {
	const site = await serve(t, releaseA, { answer });
	const context = await newPhone(t, { saving: false, ...options });
	const page = await newPage(context);
	await page.goto(site.url + path);
	return { site, page, context };
}

const meaning = (page) => page.locator('.meaning:visible');

for (const lang of ['en', 'es']) {
	test(`${lang}: a touch on a term opens its meaning below the paragraph, with a link to the glossary; another closes it`, async (t) => {
		const { page } = await open(t, `${lang}/placing-at-corners.html`, { hasTouch: true });
		const term = page.locator('.step a.term').first();
		const name = await term.innerText();
		const address = await term.evaluate((a) => a.href);
		const before = page.url();
		await term.tap();
		await meaning(page).waitFor();
		assert.equal(page.url(), before);
		assert.equal(await term.getAttribute('aria-expanded'), 'true');
		const text = await meaning(page).innerText();
		assert.ok(text.length > name.length + 20, text);
		const link = meaning(page).locator('.meaning-foot a');
		assert.equal(await link.evaluate((a) => a.href), address);
		for (const target of [link, meaning(page).getByRole('button')]) assert.ok((await target.boundingBox()).height >= 44);
		const [step, panel] = [await term.locator('xpath=ancestor::li[1]').boundingBox(), await meaning(page).boundingBox()];
		assert.ok(panel.y >= step.y && panel.y + panel.height <= step.y + step.height + 1, 'the meaning is not in the step of the term');
		assert.ok(panel.y >= 60 && panel.y + panel.height <= 740, 'the meaning is not on the screen');
		await term.tap();
		await eventually(async () => assert.equal(await meaning(page).count(), 0));
		assert.deepEqual(page.errors, []);
	});
}

test('the keyboard opens a meaning; Escape and the button return to the term; one is open at a time', async (t) => {
	const { page } = await open(t, 'en/placing-at-corners.html');
	const terms = page.locator('.step a.term');
	await terms.first().focus();
	await page.keyboard.press('Enter');
	await meaning(page).waitFor();
	assert.ok(await meaning(page).evaluate((p) => p.contains(document.activeElement)));
	await page.keyboard.press('Escape');
	assert.equal(await meaning(page).count(), 0);
	assert.ok(await terms.first().evaluate((a) => a === document.activeElement), 'the focus is lost');
	await terms.nth(1).press('Enter');
	await meaning(page).getByRole('button', { name: uiText('ui.close') }).waitFor();
	await terms.first().click();
	await eventually(async () => assert.equal(await terms.first().getAttribute('aria-expanded'), 'true'));
	assert.equal(await meaning(page).count(), 1);
	await meaning(page).getByRole('button').click();
	assert.equal(await meaning(page).count(), 0);
	assert.ok(await terms.first().evaluate((a) => a === document.activeElement));
});

test('in the one-file edition a meaning opens too', async (t) => {
	const page = await newPage(await newPhone(t));
	await page.goto(`${pathToFileURL(pocket).href}#en.placing-at-corners`);
	await page.locator('.article:visible .step a.term').first().click();
	await meaning(page).waitFor();
	assert.match(page.url(), /#en\.placing-at-corners$/);
	assert.deepEqual(page.errors, []);
});

test('without script, and where the glossary cannot be read, a term is a link to its entry', async (t) => {
	const plain = await open(t, 'en/placing-at-corners.html', { javaScriptEnabled: false });
	await plain.page.locator('.step a.term').first().click();
	await plain.page.waitForURL(/glossary\.html#/);
	const { page } = await open(t, 'en/placing-at-corners.html', { answer: (path) => (path === 'en/glossary.html' ? { status: 503, body: 'no' } : undefined) });
	await page.locator('.step a.term').first().click();
	await page.waitForURL(/glossary\.html#/);
});
