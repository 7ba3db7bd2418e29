// The module traps. A wrapper around the exports of its instance throws the error that
// a trap throws.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { agrees, calculator, eventually, ready, set, readInputs } from './lib/form.mjs';
import { search } from './lib/journey.mjs';
import { serve } from './lib/server.mjs';
import { releaseA } from './lib/site.mjs';
import { uiText } from './lib/words.mjs';

// plant installs the wrapper. The next window.bad requests trap; window.instances
// lists for each instance the number of calls after its trap.
function plant() {
	window.bad = 0;
	window.instances = [];
	const instantiate = WebAssembly.instantiate;
	WebAssembly.instantiate = async (...args) => {
		const instance = await instantiate(...args);
		const record = { trapped: false, calledAfter: 0 };
		window.instances.push(record);
		const guard = (f) => (...a) => {
			if (record.trapped) record.calledAfter++;
			return f(...a);
		};
		const { memory, _initialize, buffer, answer } = instance.exports;
		return { exports: { memory, _initialize, buffer: guard(buffer), answer: guard((n) => {
			if (window.bad > 0) {
				window.bad--;
				record.trapped = true;
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

test('a trapped module is started again, the request repeated, and the page shows it', async (t) => {
	const { page } = await open(t, 'es/calc/wall-volume.html');
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await trap(page, 1);
	await set(calc, 'core', '10 in');
	await agrees(calc, 'wall-volume', { lang: 'es' });
	assert.equal((await why(calc).innerText()).trim(), uiText('ui.restarted', {}, 'es'));
	assert.deepEqual(await instances(page), [{ trapped: true, calledAfter: 0 }, { trapped: false, calledAfter: 0 }]);
	// The new instance has the Spanish texts too.
	await set(calc, 'core', '6 in');
	await agrees(calc, 'wall-volume', { lang: 'es' });
	assert.deepEqual(page.errors, []);
});

test('a second trap stops the module; inputs are stored, no result is shown, and the next visit works', async (t) => {
	const { page } = await open(t, 'en/calc/wall-volume.html');
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await trap(page, 2);
	await set(calc, 'core', '10 in');
	await eventually(async () => assert.equal((await why(calc).innerText()).trim(), uiText('ui.stopped')));
	assert.ok(await calc.locator('fieldset.fields').evaluate((fields) => fields.disabled), 'the inputs are open');
	assert.equal((await readInputs(calc)).find(([path]) => path === 'core')[1], '10 in');
	assert.equal(await calc.locator('.lead dd:visible').count(), 0, 'a result is shown for inputs that were not computed');
	assert.deepEqual(await instances(page), [{ trapped: true, calledAfter: 0 }, { trapped: true, calledAfter: 0 }]);
	await page.locator('#q').fill('wall');
	await page.locator('#hits').waitFor();
	assert.equal((await page.locator('#hits .count').innerText()).trim(), uiText('ui.stopped'));
	assert.equal((await instances(page)).length, 2, 'the module was started a third time');
	await page.reload();
	await ready(calc);
	assert.equal((await readInputs(calc)).find(([path]) => path === 'core')[1], '10 in', 'the typed input is lost');
	await agrees(calc, 'wall-volume');
});

test('inputs that trap every time can be reset to the example', async (t) => {
	const { page } = await open(t, 'en/calc/wall-volume.html');
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await trap(page, 1000);
	await set(calc, 'core', '10 in');
	await eventually(async () => assert.equal((await why(calc).innerText()).trim(), uiText('ui.stopped')));
	await calc.locator('[data-do=reset]').click();
	await eventually(async () => assert.notEqual((await readInputs(calc)).find(([path]) => path === 'core')[1], '10 in'));
	await page.reload();
	await ready(calc);
	await agrees(calc, 'wall-volume');
	assert.ok(await calc.locator('[data-do=reset]').isDisabled(), 'the inputs are not the example');
});

test('a trap in a search: the index is loaded again and the search answered', async (t) => {
	const { page } = await open(t, 'en/order-concrete.html');
	const before = await search(page, 'dry line');
	await trap(page, 1);
	const after = await search(page, 'dry line');
	assert.deepEqual(after.map((hit) => hit.page + hit.hash), before.map((hit) => hit.page + hit.hash));
	assert.ok((await page.locator('#hits .count').innerText()).includes(uiText('ui.restarted')));
	assert.ok((await instances(page)).every(({ calledAfter }) => calledAfter === 0));
});

test('after a trap during its start the module is started again', async (t) => {
	const { page } = await open(t, 'en/calc/wall-volume.html');
	await page.addInitScript(() => { window.bad = 1; });
	await page.reload();
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	await agrees(calc, 'wall-volume');
	assert.deepEqual(await instances(page), [{ trapped: true, calledAfter: 0 }, { trapped: false, calledAfter: 0 }]);
});
