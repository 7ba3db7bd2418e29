// Every page, at phone and desk width, in the light, the dark and high
// contrast: axe, contrast, sizes of targets, reflow, text spacing.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import { desk, newPage, newPhone, phone } from './lib/browser.mjs';
import { calculator, ready, shelf } from './lib/form.mjs';
import { lookAt } from './lib/look.mjs';
import { serve } from './lib/server.mjs';
import { pages, releaseA } from './lib/site.mjs';

const axe = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

const lights = {
	light: { colorScheme: 'light' },
	dark: { colorScheme: 'dark' },
	contrast: { colorScheme: 'light', contrast: 'more' },
	forced: { colorScheme: 'light', forcedColors: 'active' },
};

// visit opens every page of the manual in one tab, with its calculators ready
// and everything folded opened, and collects what look finds.
async function visit(t, options, look, list = pages()) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false, reducedMotion: 'reduce', ...options });
	await context.addInitScript({ path: axe });
	const page = await newPage(context);
	const found = new Map();
	for (const name of list) {
		await page.goto(site.url + name);
		await Promise.all((await page.locator('section.calc').all()).map(ready));
		await page.evaluate(() => {
			for (const details of document.querySelectorAll('details:not(.settings)')) details.open = true;
			scrollTo(0, 0);
		});
		for (const fault of await look(page, name)) {
			if (!found.has(fault)) found.set(fault, []);
			found.get(fault).push(name);
		}
	}
	return [...found].map(([fault, names]) => `${fault}  (${names.length > 3 ? `${names.length} pages, first ${names[0]}` : names.join(', ')})`);
}

function none(list) { assert.equal(list.length, 0, `${list.length} findings:\n${list.slice(0, 60).join('\n')}`); }

async function runAxe(page) {
	const violations = await page.evaluate(async () => {
		const result = await window.axe.run(document, {
			resultTypes: ['violations'],
			runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
		});
		return result.violations.flatMap((v) => v.nodes.map((node) => `${v.id}: ${v.help}: ${node.target.join(' ')}`));
	});
	return violations;
}

for (const [light, media] of Object.entries(lights)) {
	for (const viewport of [phone, desk]) {
		if (light === 'forced' && viewport === desk) continue;
		test(`axe has nothing to say about any page: ${light}, ${viewport.width} px`, async (t) => {
			none(await visit(t, { viewport, ...media }, runAxe));
		});
	}
}

for (const light of ['light', 'dark', 'contrast']) {
	test(`all text has a contrast of 7 to 1, and what is read at the wall 15 to 1: ${light}`, async (t) => {
		none(await visit(t, lights[light], (page) => page.evaluate(lookAt.contrast)));
	});
}

test('every control is 44 px each way, those of calculators 60 px high', async (t) => {
	none(await visit(t, {}, async (page) => {
		const list = await page.evaluate(lookAt.targets);
		await page.locator('.settings summary').click();
		return [...list, ...await page.evaluate(lookAt.targets)];
	}));
});

test('controls of calculators stand 8 px apart', async (t) => {
	none(await visit(t, {}, (page) => page.evaluate(lookAt.gaps), pages().filter((name) => name.includes('/calc/') && !name.includes('-source'))));
});

test('at 320 px nothing scrolls sideways but tables in their own box', async (t) => {
	none(await visit(t, { viewport: { width: 320, height: 640 } }, (page) => page.evaluate(lookAt.reflow)));
});

test('with the text spacing of WCAG 1.4.12 and with text of 200 % nothing is cut off', async (t) => {
	none(await visit(t, { viewport: { width: 320, height: 640 } }, async (page) => {
		await page.evaluate(lookAt.space);
		const spaced = await page.evaluate(lookAt.reflow);
		const cut = await page.evaluate(lookAt.clipped);
		return [...spaced, ...cut];
	}));
	none(await visit(t, { viewport: { width: 640, height: 900 } }, async (page) => {
		await page.evaluate(() => {
			const sheet = new CSSStyleSheet();
			sheet.replaceSync(':root { font-size: 200% !important }');
			document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
		});
		return [...await page.evaluate(lookAt.reflow), ...await page.evaluate(lookAt.clipped)];
	}));
});

test('the tests of this file do see faults', async (t) => {
	const site = await serve(t, releaseA, {
		answer: (name) => (name === 'bad.html' ? {
			body: `<!doctype html><html lang="en"><title>Bad page</title><body><main class="sheet"><h1>Bad</h1><p style="color:#777;background:#fff">grey words</p>
				<button style="width:20px;height:20px;padding:0">x</button><div style="width:900px">wide</div><img src="x.png">
				<p style="height:8px;overflow:hidden">cut off below this line</p></main></body>`,
		} : undefined),
	});
	const context = await newPhone(t);
	await context.addInitScript({ path: axe });
	const page = await newPage(context);
	await page.goto(`${site.url}bad.html`);
	assert.ok((await runAxe(page)).some((line) => line.startsWith('image-alt')));
	assert.ok((await page.evaluate(lookAt.contrast)).some((line) => line.includes('grey words')));
	assert.ok((await page.evaluate(lookAt.targets)).length === 1);
	assert.ok((await page.evaluate(lookAt.reflow)).length > 0);
	assert.ok((await page.evaluate(lookAt.clipped)).length > 0);
});

for (const { calculator: id, inputs } of shelf) {
	test(`${id}: the keyboard alone fills it in, focus always in sight`, async (t) => {
		const site = await serve(t, releaseA);
		const page = await newPage(await newPhone(t, { saving: false }));
		await page.goto(`${site.url}en/calc/${id}.html`);
		const calc = calculator(page, id);
		await ready(calc);
		await page.evaluate(() => { scrollTo(0, 0); document.activeElement?.blur(); });
		const reached = new Set();
		let said = false;
		for (let i = 0; i < 400; i++) {
			await page.keyboard.press('Tab');
			const at = await page.evaluate(lookAt.focus);
			if (!at) break;
			assert.ok(at.visible, `the focus on ${at.what} is not in sight: ${at.why}`);
			assert.ok(at.marked, `the focus on ${at.what} does not show`);
			if (at.field) reached.add(at.field.split('.')[0]);
			if (at.field === firstNumber(inputs) && !said) {
				await page.keyboard.press('Control+a');
				await page.keyboard.type('abc');
				await calc.locator('.error:visible').first().waitFor();
				await page.keyboard.press('Control+a');
				await page.keyboard.type(await page.evaluate(() => document.activeElement.defaultValue));
				await calc.locator('.error:visible').first().waitFor({ state: 'hidden' });
				said = true;
			}
			if (at.past) break;
		}
		assert.ok(said, 'the first number was never reached');
		const asked = await calc.evaluate((section) => [...section.querySelectorAll('.fields > [data-field], .fields > [data-rows]')]
			.filter((box) => !box.hidden).map((box) => box.dataset.field ?? box.dataset.rows));
		assert.deepEqual(asked.filter((field) => !reached.has(field)), [], 'inputs that Tab does not reach');
	});
}

function firstNumber(inputs) { return Object.entries(inputs).find(([, field]) => field.unit !== undefined)[0]; }
