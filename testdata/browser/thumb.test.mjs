// A calculator under one thumb: the bar that holds the answer, above the keyboard too; the
// keys of signs; numbers offered from one calculator to another; question and answer as a
// text and as a link; and the counted tasks of a pour day, from the home page.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, box, calculator, catalog, eventually, readInputs } from './lib/form.mjs';
import { Hand } from './lib/hand.mjs';
import { serve } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

const low = { width: 360, height: 420 }; // a phone with its keyboard open

async function phone(t, options = {}) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, hasTouch: true, ...options });
	if (options.init) await context.addInitScript(options.init);
	return { site, context, page: await newPage(context) };
}

// started opens a calculator and waits for its answer in the bar.
async function started(page, site, id, lang = 'en', more = '') {
	await page.goto(`${site.url}${lang}/calc/${id}.html${more}`);
	const calc = calculator(page, id);
	await calc.locator('.bar .line').waitFor({ timeout: 20_000 });
	return calc;
}

// inView reports whether an element is wholly in the visual viewport and below the header.
function inView(locator) {
	return locator.evaluate((e) => {
		const r = e.getBoundingClientRect();
		const rail = getComputedStyle(document.querySelector('.rail'));
		const top = rail.position === 'sticky' ? document.querySelector('.rail').getBoundingClientRect().bottom : 0;
		const view = window.visualViewport;
		return r.height > 0 && r.top >= top - 1 && r.bottom <= view.offsetTop + view.height + 1 && r.left >= -1 && r.right <= view.width + 1;
	});
}

const input = (calc, path) => box(calc, path).locator('input').first();

test('every calculator answers in a bar of at most three short lines, which stays in view at the first input', async (t) => {
	const { site, page } = await phone(t);
	for (const lang of ['en', 'es']) {
		for (const { calculator: id } of catalog) {
			const calc = await started(page, site, id, lang);
			const bar = calc.locator('.bar');
			const { height } = await bar.boundingBox();
			assert.ok(height >= 48 && height <= 66, `${lang}/${id}: the bar is ${height} px high`);
			const first = calc.locator('.fields input:visible').first();
			await first.focus();
			assert.ok(await inView(bar), `${lang}/${id}: the bar is out of view`);
			assert.ok(await inView(first), `${lang}/${id}: the first input is out of view`);
		}
	}
	assert.deepEqual(page.errors, []);
});

test('with the keyboard open the bar and the input are both in view', async (t) => {
	const { site, page } = await phone(t);
	const calc = await started(page, site, 'form-pressure');
	await page.setViewportSize(low);
	for (const path of ['length', 'height', 'thickness', 'pump-rate']) {
		await input(calc, path).focus();
		assert.ok(await inView(calc.locator('.bar')), `${path}: the bar is out of view`);
		assert.ok(await inView(input(calc, path)), `${path}: the input is out of view`);
	}
});

test('where the keyboard lies over the page, the bar follows the visual viewport', async (t) => {
	const init = () => {
		const view = new EventTarget();
		Object.assign(view, { width: 360, height: 740, offsetTop: 0, offsetLeft: 0, scale: 1 });
		Object.defineProperty(window, 'visualViewport', { value: view });
	};
	const { site, page } = await phone(t, { init });
	const calc = await started(page, site, 'form-pressure');
	const bottom = () => calc.locator('.bar').evaluate((e) => e.getBoundingClientRect().bottom);
	assert.ok(Math.abs(await bottom() - 740) <= 1);
	for (const [height, offsetTop, type] of [[420, 0, 'resize'], [420, 60, 'scroll'], [740, 0, 'resize']]) {
		await page.evaluate(([height, offsetTop, type]) => {
			Object.assign(window.visualViewport, { height, offsetTop });
			window.visualViewport.dispatchEvent(new Event(type));
		}, [height, offsetTop, type]);
		await eventually(async () => assert.ok(Math.abs(await bottom() - height - offsetTop) <= 1, `the bar ends at ${await bottom()} px, the visible part at ${height + offsetTop}`));
		await input(calc, 'thickness').focus();
		await eventually(async () => assert.ok(await inView(input(calc, 'thickness')), `${height} px and ${offsetTop}: the input lies below the keyboard`));
	}
	// A page that is only zoomed has no keyboard.
	await page.evaluate(() => {
		Object.assign(window.visualViewport, { height: 300, scale: 2 });
		window.visualViewport.dispatchEvent(new Event('resize'));
	});
	await eventually(async () => assert.ok(Math.abs(await bottom() - 740) <= 1));
});

test('a touch on the bar opens the main results and the gravest notes, Escape closes them', async (t) => {
	const { site, page } = await phone(t);
	const calc = await started(page, site, 'string-line');
	const line = calc.locator('.bar .line');
	const panel = calc.locator('.answer-panel');
	assert.equal(await panel.isVisible(), false);
	await line.tap();
	assert.ok(await panel.isVisible());
	assert.equal(await line.getAttribute('aria-expanded'), 'true');
	const leads = await calc.locator('.lead').count();
	assert.equal(await panel.locator('dt').count(), leads, 'a main result is missing');
	await page.keyboard.press('Escape');
	assert.equal(await panel.isVisible(), false);
	await line.tap();
	await panel.locator('[data-do=whole]').tap();
	await eventually(async () => assert.ok(await inView(calc.locator('.glance h2')), 'the whole answer is not in view'));
});

test('notes stand by danger: no caution above a warning, no notice above either', async (t) => {
	const { site, page } = await phone(t);
	const rank = ['danger', 'warning', 'caution', 'ask', 'notice'];
	let seen = 0;
	for (const { calculator: id } of catalog) {
		const calc = await started(page, site, id);
		await calc.locator('.fields input:not([type=radio], [type=checkbox])').first().press('ArrowRight');
		const levels = await calc.locator('[data-part=notes] > *').evaluateAll((notes) => notes.map((n) => n.className.replace('caution ', '')));
		const places = levels.map((level) => rank.indexOf(level));
		assert.deepEqual(places, [...places].sort(), `${id}: ${levels}`);
		seen += levels.length;
	}
	assert.ok(seen > 30, `only ${seen} notes`);
});

test('keys of signs go across the row and are no stops of the tab key', async (t) => {
	const { site, page } = await phone(t);
	const calc = await started(page, site, 'string-line');
	await box(calc, 'readings.1.gap').locator('input').focus();
	const keys = calc.locator('.keys button:visible');
	assert.equal(await keys.count(), 4);
	for (const key of await keys.all()) {
		const { x, width, height } = await key.boundingBox();
		assert.ok(x >= 0 && x + width <= 360 && width >= 44 && height >= 60, `a key at ${x} px of ${width} × ${height} px`);
		assert.equal(await key.getAttribute('tabindex'), '-1');
		assert.ok((await key.getAttribute('aria-label')).length > 2, 'a key is named by its sign');
	}
	assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 360, 'the page is wider than the screen');
	await calc.locator('.tools label:has(input[value=metric])').click();
	await eventually(async () => assert.equal(await calc.locator('.keys button:visible').count(), 1, 'feet and inches stay in metric units'));
	const names = await calc.locator('[data-rows=readings] [data-do=drop]').allInnerTexts();
	assert.deepEqual(names.slice(0, 2), ['Remove row 1', 'Remove row 2']);
});

test('a wide list is cards on a phone, and a narrow one fits', async (t) => {
	const { site, page } = await phone(t);
	for (const id of ['string-line', 'form-pressure', 'window-supports', 'pump-line']) {
		const calc = await started(page, site, id);
		for (const table of await calc.locator('.wide:visible').all()) {
			const [inner, outer] = await table.evaluate((e) => [e.scrollWidth, e.clientWidth]);
			assert.ok(inner <= outer + 1, `${id}: a table of ${inner} px in ${outer} px`);
		}
	}
});

test('a number typed in one calculator is offered in another, and never filled unasked', async (t) => {
	const { site, page } = await phone(t);
	let calc = await started(page, site, 'house-order');
	await input(calc, 'height').fill('9 ft 4 in');
	await agrees(calc, 'house-order');
	await eventually(async () => assert.ok(await page.evaluate(() => Object.keys(localStorage).some((key) => key.endsWith('measure height')))));
	await page.evaluate((units) => localStorage.setItem(Object.keys(localStorage).find((key) => key.endsWith('measure height')).replace('measure height', 'units'), units), 'metric');
	calc = await started(page, site, 'form-pressure');
	const offer = box(calc, 'height').locator('.offer');
	assert.equal(await input(calc, 'height').inputValue(), '2.44 m', 'the number was filled unasked');
	assert.equal(await offer.innerText(), uiText('ui.calc.offer', { value: `9' 4"`, title: 'Order for a plain house' }));
	await offer.tap();
	await eventually(async () => assert.equal(await input(calc, 'height').inputValue(), '2.84 m'));
	assert.equal(await offer.count(), 0);
	assert.equal((await readInputs(calc)).find(([path]) => path === 'height')[1], `9' 4"`, 'the number was rounded');
	assert.equal(await box(calc, 'height').getAttribute('data-own'), '', 'the number is not the reader’s');
	assert.equal(await box(calc, 'thickness').locator('.offer').count(), 0, 'a number is offered that nobody typed');
	assert.deepEqual(page.errors, []);
});

test('question and answer are copied as text with a link, which fills in the same numbers elsewhere', async (t) => {
	const { site, page, context } = await phone(t);
	await context.grantPermissions(['clipboard-read', 'clipboard-write'], { origin: new URL(site.url).origin });
	let calc = await started(page, site, 'house-order');
	for (const [path, text] of [['length', '40'], ['width', '28'], ['height', '9'], ['core', '6 in']]) await input(calc, path).fill(text);
	const { outs } = await agrees(calc, 'house-order');
	await calc.locator('[data-do=copy]').click();
	await eventually(async () => assert.equal(await calc.locator('[data-part=shared]').innerText(), uiText('ui.calc.copied')));
	const text = await page.evaluate(() => navigator.clipboard.readText());
	for (const part of ['Order for a plain house', 'Length of the house: 40', 'Core thickness: 6 in', outs['order-yd'], '#in=us.point&']) assert.ok(text.includes(part), `${part} is not in:\n${text}`);
	assert.ok(!text.includes(uiText('ui.calc.badge')), 'the reader’s numbers are called an example');
	const link = text.split('\n').at(-1);

	const other = await newPage(await newPhone(t, { saving: false }));
	await other.goto(link);
	calc = calculator(other, 'house-order');
	await calc.locator('.bar .line').waitFor({ timeout: 20_000 });
	const there = await agrees(calc, 'house-order');
	assert.deepEqual(there.outs, outs);
	assert.equal(await calc.locator('[data-part=tag]').innerText(), uiText('ui.calc.from-link'));
	assert.equal(await other.evaluate(() => Object.keys(localStorage).some((key) => key.includes('calc house-order'))), false, 'a link changes what is stored');
	assert.deepEqual([...page.errors, ...other.errors], []);
});

test('a hostile link stays text: what the form does not have is refused by name', async (t) => {
	const { site, page } = await phone(t);
	const evil = '<img src=x onerror=alert(1)>';
	const query = new URLSearchParams([['length', evil], ['__proto__', '1'], ['measured', 'nowhere'], ['width@evil.point', '3'], ['height', '9 ft'], ['height', '8 ft'], ['nosuch.1.x', '1']]);
	const calc = await started(page, site, 'house-order', 'en', `#in=us.point&${query}`);
	const why = calc.locator('[data-part=why]');
	for (const name of ['__proto__', 'measured', 'width@evil.point', 'nosuch.1.x']) assert.ok((await why.innerText()).includes(name), `${name} is not named: ${await why.innerText()}`);
	assert.equal(await input(calc, 'length').inputValue(), evil);
	assert.equal(await input(calc, 'height').inputValue(), '9 ft');
	assert.equal(await box(calc, 'length').locator('.error').count(), 1, 'the bad number is not refused at its field');
	assert.equal(await page.locator('main img').count(), 0);
	assert.deepEqual(page.errors, []);
	const long = await started(page, site, 'wall-volume', 'en', `#in=us.point&core=${'9'.repeat(9000)}`);
	assert.notEqual(await input(long, 'core').inputValue(), '9'.repeat(9000));
});

test('full storage is told, with what to do', async (t) => {
	const init = () => {
		const set = Storage.prototype.setItem;
		Storage.prototype.setItem = function (key, value) {
			if (key.includes('calc ') && value.length > 20) throw new DOMException('full', 'QuotaExceededError');
			return set.call(this, key, value);
		};
	};
	const { site, page } = await phone(t, { init });
	const calc = await started(page, site, 'house-order');
	for (const [path, text] of [['length', '40'], ['width', '28'], ['height', '9'], ['core', '6 in']]) await input(calc, path).fill(text);
	await eventually(async () => assert.equal(await calc.locator('[data-part=tag]').innerText(), uiText('ui.calc.full')));
});

// toCalculator goes from the home page to a calculator: by the page that was open last, if
// the home page has it, or by the list of calculators.
async function toCalculator(page, site, thumb, id, lang) {
	await page.goto(lang === 'en' ? site.url : `${site.url}${lang}/index.html`);
	const link = page.locator(`a[href$="${id}.html"]:visible`).first();
	await page.waitForTimeout(300);
	if (await link.count() === 0 || !await inView(link)) {
		await thumb.touch(page.locator('main a[href$="calc/index.html"]:visible, main a[href$="calc/"]:visible').first());
		await page.waitForURL(/calc\/(index\.html)?$/);
	}
	await thumb.touch(link);
	await page.waitForURL(new RegExp(`/calc/${id}.html`));
	const calc = calculator(page, id);
	await calc.locator('.bar .line').waitFor({ timeout: 20_000 });
	return calc;
}

for (const lang of ['en', 'es']) {
	test(`the order for a plain house takes 5 touches and 12 keys, with nothing of an example: ${lang}`, async (t) => {
		const { site, page } = await phone(t);
		const thumb = new Hand(page);
		const calc = await toCalculator(page, site, thumb, 'house-order', lang);
		await thumb.touch(calc.locator('[data-do=empty]'));
		for (const text of ['40', '28', '9']) {
			await thumb.type(text);
			await thumb.next();
		}
		await thumb.type('6');
		const { outs } = await agrees(calc, 'house-order', { lang });
		const line = calc.locator('.bar .line');
		await eventually(async () => assert.ok((await line.innerText()).includes(outs['order-yd']), await line.innerText()));
		assert.ok(await inView(line));
		assert.equal(await calc.locator('.bar .badge').isVisible(), false, 'the order rests on an example');
		assert.ok(thumb.touches <= 5 && thumb.keys <= 12 && thumb.swipes <= 1, `${thumb.touches} touches and ${thumb.keys} keys, ${thumb.swipes} swipes`);
		t.diagnostic(`order for a plain house, ${lang}: ${thumb.touches} touches, ${thumb.keys} keys, ${thumb.swipes} swipes`);
	});

	test(`whether the pump is too fast takes 4 touches and 18 keys, and what is not answered is asked: ${lang}`, async (t) => {
		const { site, page } = await phone(t);
		const thumb = new Hand(page);
		const calc = await toCalculator(page, site, thumb, 'form-pressure', lang);
		await thumb.touch(calc.locator('[data-do=empty]'));
		for (const text of ['136', '9', '6', '25']) {
			await thumb.type(text);
			await eventually(async () => assert.equal(await calc.locator('.bar').isVisible(), true));
			await agreesSoon(calc);
			await thumb.next();
		}
		assert.equal(await page.evaluate(() => document.activeElement.closest('[data-field]')?.dataset.field), 'rating', 'the keyboard does not go on to what the answer asks for');
		await thumb.type('1200');
		await agreesSoon(calc);
		await thumb.next();
		const mark = box(calc, 'vibration').locator('label').first();
		await eventually(async () => assert.ok(await inView(mark), 'the mark on the whip is not in view'));
		await thumb.touch(mark);
		const { outs } = await agrees(calc, 'form-pressure', { lang });
		const line = calc.locator('.bar .line');
		await eventually(async () => assert.ok((await line.innerText()).includes(outs.deed), await line.innerText()));
		assert.ok(await inView(line));
		assert.equal(await calc.locator('.bar .badge').isVisible(), false, 'the deed rests on an example');
		assert.ok((await calc.locator('.bar .asked').getAttribute('aria-label') ?? await calc.locator('.bar .asked').innerText()).length > 4, 'nothing is asked');
		assert.ok(thumb.touches <= 4 && thumb.keys <= 18 && thumb.swipes <= 1, `${thumb.touches} touches and ${thumb.keys} keys, ${thumb.swipes} swipes`);
		t.diagnostic(`is the pump too fast, ${lang}: ${thumb.touches} touches, ${thumb.keys} keys, ${thumb.swipes} swipes`);
	});

	test(`six gaps and the side take 4 touches beside the gaps, with places and thread kept from the wall before: ${lang}`, async (t) => {
		const { site, page } = await phone(t);
		// the wall before: places, thread and the gaps of that wall
		let calc = await started(page, site, 'string-line', lang);
		await calc.locator('.rest > summary').click();
		await input(calc, 'threads').fill('6');
		await input(calc, 'first-end').fill('3/4');
		await input(calc, 'second-end').fill('3/4');
		for (let row = 1; row <= 6; row++) {
			for (const [col, text] of [['name', `B${row}`], ['gap', '3/4'], ['along', `${row * 6}`]]) await box(calc, `readings.${row}.${col}`).locator('input').fill(text);
		}
		await box(calc, 'string-side').locator('label').first().click();
		await eventually(async () => assert.equal(await calc.locator('.bar .badge').isVisible(), false));
		await page.waitForTimeout(300);

		const thumb = new Hand(page);
		calc = await toCalculator(page, site, thumb, 'string-line', lang);
		await thumb.touch(calc.locator('[data-do=empty]'));
		for (const text of ['3/4', '1 1/16', '1 1/4', '7/8', '3/8', '11/16']) {
			await thumb.type(text);
			await thumb.next();
		}
		assert.equal(await box(calc, 'readings.2.name').locator('input').inputValue(), 'B2', 'the place is lost');
		const side = box(calc, 'string-side').locator('label').first();
		await eventually(async () => assert.ok(await inView(side), 'the side is not in view'));
		assert.equal(await calc.locator('[data-field=string-side] :checked').count(), 0, 'the side of the wall before counts');
		await thumb.touch(side);
		await agrees(calc, 'string-line', { lang });
		const line = calc.locator('.bar .line');
		await eventually(async () => assert.match(await line.innerText(), /B3/));
		const said = await line.innerText();
		assert.match(said, /\d\.\d\d/, said);
		assert.ok(lang === 'en' ? /lengthen|shorten/.test(said) : /alargue|acorte/.test(said), said);
		assert.ok(await inView(line));
		assert.equal(await calc.locator('.bar .badge').isVisible(), false);
		assert.ok(thumb.touches <= 4 && thumb.swipes <= 1, `${thumb.touches} touches, ${thumb.swipes} swipes`);
		t.diagnostic(`six gaps, ${lang}: ${thumb.touches} touches beside ${thumb.keys} keys, ${thumb.swipes} swipes`);
	});
}

// agreesSoon waits until the bar has the answer to the last key.
async function agreesSoon(calc) {
	await calc.evaluate(() => new Promise((done) => setTimeout(done, 150)));
}
