// The module stops on an error. A wrapper around its instance plants the error:
// it throws where the code would trap.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, calculator, eventually, ready, set, typed } from './lib/form.mjs';
import { search } from './lib/journey.mjs';
import { serve } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';
import { say } from './lib/words.mjs';

// plant lets the next n requests trap that are sent while window.bad is n > 0,
// and notes for each instance how often it was called after its trap.
function plant() {
	window.bad = 0;
	window.instances = [];
	const instantiate = WebAssembly.instantiate;
	WebAssembly.instantiate = async (...args) => {
		const instance = await instantiate(...args);
		const noted = { trapped: false, calledAfter: 0 };
		window.instances.push(noted);
		const guard = (f) => (...a) => {
			if (noted.trapped) noted.calledAfter++;
			return f(...a);
		};
		const { memory, _initialize, buffer, answer } = instance.exports;
		return { exports: { memory, _initialize, buffer: guard(buffer), answer: guard((n) => {
			if (window.bad > 0) {
				window.bad--;
				noted.trapped = true;
				throw new WebAssembly.RuntimeError('unreachable');
			}
			return answer(n);
		}) } };
	};
}

async function open(t, path) {
	const site = await serve(t, releaseA);
	const context = await newPhone(t, { saving: false });
	await context.addInitScript(plant);
	const page = await newPage(context);
	await page.goto(site.url + path);
	return { site, page };
}

const trap = (page, n) => page.evaluate((times) => { window.bad = times; }, n);
const instances = (page) => page.evaluate(() => window.instances);
const why = (calc) => calc.locator('[data-part=why]');

test('a trapped module is started again, the request repeated, and the page says so', async (t) => {
	const { page } = await open(t, 'es/calc/wall-volume.html');
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await trap(page, 1);
	await set(calc, 'core', '10 in');
	await agrees(calc, 'wall-volume', { lang: 'es' });
	assert.equal((await why(calc).innerText()).trim(), say('ui.restarted', {}, 'es'));
	assert.deepEqual(await instances(page), [{ trapped: true, calledAfter: 0 }, { trapped: false, calledAfter: 0 }]);
	// Spanish texts and units are there for the new instance too.
	await set(calc, 'core', '6 in');
	await agrees(calc, 'wall-volume', { lang: 'es' });
	assert.deepEqual(page.faults, []);
});

test('a second trap stops the module; inputs are kept, no result is shown, and the next visit works', async (t) => {
	const { page } = await open(t, 'en/calc/wall-volume.html');
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await trap(page, 2);
	await set(calc, 'core', '10 in');
	await eventually(async () => assert.equal((await why(calc).innerText()).trim(), say('ui.stopped')));
	assert.ok(await calc.locator('fieldset.fields').evaluate((fields) => fields.disabled), 'the inputs are open');
	assert.equal((await typed(calc)).find(([path]) => path === 'core')[1], '10 in');
	assert.equal(await calc.locator('.lead dd:visible').count(), 0, 'a result is shown for inputs that were not worked out');
	assert.deepEqual(await instances(page), [{ trapped: true, calledAfter: 0 }, { trapped: true, calledAfter: 0 }]);
	await page.locator('#q').fill('wall');
	await page.locator('#hits').waitFor();
	assert.equal((await page.locator('#hits .count').innerText()).trim(), say('ui.stopped'));
	assert.equal((await instances(page)).length, 2, 'the module was started a third time');
	await page.reload();
	await ready(calc);
	assert.equal((await typed(calc)).find(([path]) => path === 'core')[1], '10 in', 'what was typed is lost');
	await agrees(calc, 'wall-volume');
});

test('inputs that trap every time can be set back to the example', async (t) => {
	const { page } = await open(t, 'en/calc/wall-volume.html');
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await trap(page, 1000);
	await set(calc, 'core', '10 in');
	await eventually(async () => assert.equal((await why(calc).innerText()).trim(), say('ui.stopped')));
	await calc.locator('[data-do=reset]').click();
	await eventually(async () => assert.notEqual((await typed(calc)).find(([path]) => path === 'core')[1], '10 in'));
	await page.reload();
	await ready(calc);
	await agrees(calc, 'wall-volume');
	assert.ok(await calc.locator('[data-do=reset]').isHidden(), 'the inputs are not the example');
});

test('a trap in a search: the index is loaded again and the search answered', async (t) => {
	const { page } = await open(t, 'en/order-concrete.html');
	const before = await search(page, 'dry line');
	await trap(page, 1);
	const after = await search(page, 'dry line');
	assert.deepEqual(after.map((hit) => hit.page + hit.hash), before.map((hit) => hit.page + hit.hash));
	assert.ok((await page.locator('#hits .count').innerText()).includes(say('ui.restarted')));
	assert.ok((await instances(page)).every(({ calledAfter }) => calledAfter === 0));
});

test('a trap while the module starts is no end either', async (t) => {
	const { page } = await open(t, 'en/calc/wall-volume.html');
	await page.addInitScript(() => { window.bad = 1; });
	await page.reload();
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await agrees(calc, 'wall-volume');
	assert.deepEqual(await instances(page), [{ trapped: true, calledAfter: 0 }, { trapped: false, calledAfter: 0 }]);
});
