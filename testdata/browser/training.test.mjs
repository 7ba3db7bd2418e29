// The training: answering and marking questions, repetition, export and import of
// answers, and the sign-off sheet.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { newPage, newPhone } from './lib/browser.mjs';
import { eventually } from './lib/form.mjs';
import { choose as setting } from './lib/journey.mjs';
import { measure } from './lib/measure.mjs';
import { serve } from './lib/server.mjs';
import { work } from './lib/site.mjs';
import { ask, choose, check, drawn, feet, metres, pocket, put, site as built, type } from './lib/training.mjs';
import { uiPattern, uiText } from './lib/words.mjs';

const noon = new Date('2026-11-25T12:00:00');

async function open(t, path, { at = noon, ...options } = {}) {
	const server = await serve(t, built);
	const context = await newPhone(t, { saving: false, ...options });
	const page = await newPage(context);
	await page.clock.install({ time: at });
	await page.goto(server.url + path);
	return { page, context, url: server.url };
}

const question = (page, n) => page.locator(`#q-${n}`);
const verdict = (q) => q.locator('.verdict');

// expectVerdict waits for a verdict, with the days until the question is asked again.
async function expectVerdict(q, key, days) {
	const text = uiText(key) + (days === undefined ? '' : ' ' + uiText('ui.train.back', { n: days }));
	await eventually(async () => assert.equal((await verdict(q).innerText()).trim(), text));
}

test('a choice: one touch, marked with sign and word at the choices, the reason in view, a link to the page; another try', async (t) => {
	const { page } = await open(t, 'en/lesson-corner.html', { hasTouch: true });
	const q = question(page, 1);
	assert.ok(await q.locator(':scope > .reply').isHidden(), 'the answer is visible before the question is answered');
	await choose(q, 'The short side');
	await expectVerdict(q, 'ui.train.not-right', 2);
	const marked = async () => Object.fromEntries(await q.locator('.options button:visible').evaluateAll((list) =>
		list.map((b) => [b.querySelector('span').textContent, [b.dataset.mark, b.querySelector('small').textContent, getComputedStyle(b.querySelector('small'), '::before').content[1]]])));
	assert.deepEqual(await marked(), {
		'The short side': ['wrong', uiText('ui.train.yours-was'), '✗'],
		'The long side': ['right', uiText('ui.train.the-right'), '✓'],
	});
	const why = q.getByText('It anchors the corner.');
	const box = await why.boundingBox();
	assert.ok(box.y > 60 && box.y + box.height < 740, `the reason is at ${box.y} px`);
	assert.ok(await q.getByText('It anchors the corner.').isVisible());
	assert.equal(await q.locator('.reply a').getAttribute('href'), 'pour.html');
	await q.getByRole('button', { name: uiText('ui.train.retry') }).click();
	assert.equal(await q.locator('[data-mark]').count(), 0);
	assert.equal(await q.locator('.options button:visible').count(), 3);
	assert.ok(await q.locator(':scope > .reply').isHidden());
	await choose(q, 'The long side');
	await expectVerdict(q, 'ui.train.right', 2);
	assert.deepEqual(await marked(), { 'The long side': ['right', uiText('ui.train.the-right'), '✓'] });
	assert.deepEqual(page.errors, []);
});

test('one question at a time, choices first, with progress and score; Back returns; after the last the next lesson', async (t) => {
	const { page } = await open(t, 'en/lesson-corner.html');
	const shown = () => page.locator('.question:visible').evaluateAll((list) => list.map((q) => q.id));
	const score = page.locator('.score');
	const at = (n, right) => `${uiText('ui.train.at', { n, all: 3 })} · ${uiText('ui.train.score', { n: right })}`;
	assert.deepEqual(await shown(), ['q-1']);
	assert.equal(await score.innerText(), at(1, 0));
	await choose(question(page, 1), 'The short side');
	assert.equal(await score.innerText(), at(1, 0));
	await page.getByRole('link', { name: uiText('ui.train.next') }).click();
	await eventually(async () => assert.deepEqual(await shown(), ['q-3']));
	assert.ok((await page.locator('.quiz').boundingBox()).y >= 60, 'the score is under the header');
	await choose(question(page, 3), 'This one');
	assert.equal(await score.innerText(), at(2, 1));
	assert.deepEqual(await page.locator('.tally button').evaluateAll((list) => list.map((b) => b.dataset.mark)), ['wrong', 'right', '']);
	await page.goBack();
	await eventually(async () => assert.deepEqual(await shown(), ['q-1']));
	await page.locator('.tally button').nth(2).click();
	assert.deepEqual(await shown(), ['q-2']);
	await put(question(page, 2), order);
	assert.equal(await page.getByRole('link', { name: uiText('ui.train.next') }).count(), 0);
	await page.getByRole('link', { name: uiText('ui.train.onward', { title: 'Square a corner' }) }).click();
	await page.waitForURL(/lesson-square\.html$/);
	await page.goBack();
	await eventually(async () => assert.equal(await score.innerText(), at(1, 2), 'the score is forgotten'));
	assert.deepEqual(page.errors, []);
});

test('from the list of courses: the next lesson, three questions and the reason for the wrong one in six touches and the third answer', async (t) => {
	const { page } = await open(t, 'en/training.html', { hasTouch: true });
	let touches = 0;
	const touch = async (target) => { touches++; await target.tap(); };
	await touch(page.locator('[data-part=next] a'));
	await page.waitForURL(/lesson-corner\.html$/);
	await touch(page.getByRole('link', { name: uiText('ui.questions') }));
	await touch(question(page, 1).locator('.options button', { hasText: 'The short side' }));
	assert.ok(await question(page, 1).getByText('It anchors the corner.').isVisible());
	await touch(page.getByRole('link', { name: uiText('ui.train.next') }));
	await touch(question(page, 3).locator('.options button').first());
	await touch(page.getByRole('link', { name: uiText('ui.train.next') }));
	await question(page, 2).waitFor();
	assert.equal(touches, 6);
});

test('the list of courses shows what was tried, and the next lesson of the role', async (t) => {
	const { page, url } = await open(t, 'en/lesson-corner.html');
	await choose(question(page, 1), 'The short side');
	await choose(question(page, 3), 'This one');
	await page.goto(url + 'en/training.html');
	const lesson = page.locator('.lessons li').first();
	assert.equal(await lesson.locator('.tried').innerText(), uiText('ui.train.tried', { n: 1, all: 3 }));
	assert.equal(await page.locator('.tried').count(), 1);
	assert.equal(await page.locator('[data-part=next] a').innerText(), uiText('ui.train.onward', { title: await lesson.locator('a').innerText() }));
});

test('a picture: the figure has its text, and the choice is marked', async (t) => {
	const { page } = await open(t, 'en/lesson-corner.html');
	const q = question(page, 3);
	await ask(q);
	assert.equal(await q.locator('img').getAttribute('alt'), 'Two lines that meet');
	await q.scrollIntoViewIfNeeded();
	await eventually(async () => assert.ok(await q.locator('img').evaluate((img) => img.naturalWidth > 0)));
	await choose(q, 'This one');
	await expectVerdict(q, 'ui.train.right', 2);
});

const order = ['Look up', 'Stand aside', 'Shout', 'Stop the pump'];

test('an order: shuffled, clicked in order, undone, marked', async (t) => {
	const { page } = await open(t, 'en/lesson-corner.html');
	const q = question(page, 2);
	await ask(q);
	assert.notDeepEqual(await q.locator('.ordering button span').allInnerTexts(), order);
	await put(q, ['Shout']);
	await expectVerdict(q, 'ui.train.pick');
	await q.locator('.ordering button', { hasText: 'Shout' }).click();
	assert.equal(await q.locator('[aria-pressed=true]').count(), 0, 'a second click does not undo a step');
	await put(q, [...order].reverse());
	await expectVerdict(q, 'ui.train.not-right', 2);
	assert.deepEqual(await q.locator('.reply ol > li').allInnerTexts(), order);
	assert.deepEqual(await q.locator('.ordering button').evaluateAll((list) => list.map((b) => b.dataset.mark)), ['wrong', 'wrong', 'wrong', 'wrong']);
	await q.getByRole('button', { name: uiText('ui.train.retry') }).click();
	await put(q, order);
	await expectVerdict(q, 'ui.train.right', 2);
});

// showings opens a lesson with a seeded source of random numbers, answers a question and tries
// again so often, and returns how often the choice was at each place.
async function showings(t, path, number, choice, times) {
	const server = await serve(t, built);
	const context = await newPhone(t, { saving: false });
	await context.addInitScript(() => {
		let state = 1;
		Math.random = () => { // Mulberry32
			let x = state = (state + 0x6d2b79f5) | 0;
			x = Math.imul(x ^ (x >>> 15), x | 1);
			x ^= x + Math.imul(x ^ (x >>> 7), x | 61);
			return ((x ^ (x >>> 14)) >>> 0) / 2 ** 32;
		};
	});
	const page = await newPage(context);
	await page.goto(server.url + path);
	await question(page, number).locator('.options button').first().waitFor({ state: 'attached' });
	return page.evaluate(async ({ number, choice, times }) => {
		const q = document.querySelector(`#q-${number}`);
		const after = q.querySelector('.after');
		const places = Array(q.querySelectorAll('.options button').length).fill(0);
		for (let i = 0; i < times; i++) {
			const choices = [...q.querySelectorAll('.options button')];
			places[choices.findIndex((b) => b.textContent === choice)]++;
			choices[0].click();
			for (let wait = 0; after.hidden && wait < 100; wait++) await null;
			after.querySelector('button').click();
		}
		return places;
	}, { number, choice, times });
}

test('choices are shuffled at each showing, evenly; those with an order of their own never', async (t) => {
	const places = await showings(t, 'en/lesson-corner.html', 1, 'The long side', 1000);
	assert.equal(places.length, 3);
	for (const n of places) assert.ok(n >= 280 && n <= 380, `the right choice is at its places ${places} times`);
	assert.deepEqual(await showings(t, 'en/lesson-square.html', 3, 'The diagonal', 20), [0, 20]);
});

test('keyboard only: a choice and an order are answered', async (t) => {
	const { page } = await open(t, 'en/lesson-corner.html');
	await question(page, 1).getByRole('button', { name: 'The long side' }).focus();
	await page.keyboard.press('Space');
	await expectVerdict(question(page, 1), 'ui.train.right', 2);
	assert.equal(await page.evaluate(() => document.activeElement.textContent), uiText('ui.train.next'), 'the focus is lost after an answer');
	await ask(question(page, 2));
	for (const step of order) {
		await question(page, 2).locator('.ordering button', { hasText: step }).focus();
		await page.keyboard.press('Space');
	}
	await question(page, 2).locator('button[type=submit]').focus();
	await page.keyboard.press('Enter');
	await expectVerdict(question(page, 2), 'ui.train.right', 2);
});

// The right answer is the hypotenuse (Euclid, Elements I.47) of the numbers on the
// page; it is computed here, not by the program.
test('numbers: drawn anew each time, marked by the formula within the tolerance, with the arithmetic', async (t) => {
	const { page } = await open(t, 'en/lesson-square.html');
	const q = question(page, 1);
	const seen = new Set();
	for (let i = 0; i < 4; i++) {
		const given = await drawn(q);
		seen.add(given.join());
		const right = Math.hypot(...given.map(feet));
		const off = i % 2 ? 0.5 / 12 : 0.1 / 12; // 1/2 in. is beyond 1/4 in., 1/10 in. within
		await type(q, `${right + off} ft`);
		await eventually(async () => assert.match(await verdict(q).innerText(), new RegExp('^' + uiText(i % 2 ? 'ui.train.not-right' : 'ui.train.right'))));
		const shown = (await q.locator('strong').innerText()).split(': ')[1];
		assert.ok(Math.abs(feet(shown) - right) <= 1 / 16 / 12, `${shown} for ${given}`);
		await q.locator('.work summary').click();
		assert.ok(await q.locator('.work li').count() >= 1);
		await q.getByRole('button', { name: uiText('ui.train.again') }).click();
		await eventually(async () => assert.notEqual((await drawn(q)).join(), given.join()));
	}
	assert.ok(seen.size >= 3, `the numbers hardly change: ${[...seen]}`);
	assert.deepEqual(page.errors, []);
});

test('numbers that cannot be parsed: reported at the question, nothing stored, the answer stays hidden', async (t) => {
	const { page } = await open(t, 'en/lesson-square.html');
	const q = question(page, 1);
	await drawn(q);
	await check(q);
	await expectVerdict(q, 'ui.train.pick');
	for (const text of ['long', '12 kg', '1,5']) {
		await type(q, text);
		await eventually(async () => assert.match(await verdict(q).innerText(), uiPattern('ui.train.unread')));
		assert.ok(await q.locator(':scope > .reply').isHidden());
		assert.equal(await q.locator('input').getAttribute('aria-invalid'), 'true');
	}
	assert.equal(await page.evaluate(() => Object.keys(localStorage).filter((k) => k.endsWith('answers')).length), 0);
});

test('numbers in metres with a decimal comma, in Spanish', async (t) => {
	const { page } = await open(t, 'es/lesson-square.html');
	await setting(page, 'units', 'metric');
	await setting(page, 'mark', 'comma');
	const q = question(page, 1);
	await eventually(async () => assert.match((await drawn(q)).join(' '), /^\d+,\d+ m \d+,\d+ m$/));
	const right = Math.hypot(...(await drawn(q)).map(metres));
	await type(q, right.toFixed(3).replace('.', ','));
	await eventually(async () => assert.equal(await verdict(q).innerText(), uiText('ui.train.right', {}, 'es') + ' ' + uiText('ui.train.back', { n: 2 }, 'es')));
	assert.match(await q.locator('strong').innerText(), /\d+,\d+ m$/);
});

// due is the number of due questions that the page shows.
async function due(page) {
	return Number((await page.locator('[data-part=due-said]').innerText()).match(/\d+/)?.[0] ?? 0);
}

test('questions are due after 2, 7 and 30 days, after a wrong answer in 2', async (t) => {
	const { page, url } = await open(t, 'en/lesson-eyes.html');
	const q = question(page, 1);
	let day = 0;
	const at = async (days) => {
		day += days;
		await page.clock.setSystemTime(new Date(noon.getTime() + day * 86_400_000));
		await page.goto(url + 'en/training.html');
	};
	const answer = async (text, key, days) => {
		await page.locator('[data-part=due-list] a').click();
		await page.waitForURL(/lesson-eyes\.html#q-1$/);
		await choose(q, text);
		await expectVerdict(q, key, days);
	};
	await choose(q, 'Rinse');
	await expectVerdict(q, 'ui.train.right', 2);
	await at(0);
	assert.equal(await due(page), 0, 'due on the day it was answered');
	await at(1);
	assert.equal(await due(page), 0, 'due a day early');
	await page.goto(url + 'en/lesson-eyes.html');
	await choose(q, 'Rinse');
	await expectVerdict(q, 'ui.train.right', 1); // an early answer changes nothing
	for (const [wait, text, key, next] of [[1, 'Rinse', 'ui.train.right', 7], [7, 'Rinse', 'ui.train.right', 30], [30, 'Call', 'ui.train.not-right', 2], [2, 'Rinse', 'ui.train.right', 7]]) {
		await at(wait - 1);
		const early = await due(page);
		await at(1);
		assert.equal(early, 0, `due a day before ${wait} days are over`);
		assert.equal(await due(page), 1, `not due after ${wait} days`);
		await page.goto(url + 'index.html');
		assert.equal(await page.locator('[data-due]').innerText(), uiText('ui.train.home', { n: 1 }));
		await page.goto(url + 'en/training.html');
		await answer(text, key, next);
	}
	await page.goto(url + 'index.html');
	assert.ok(await page.locator('[data-due]').isHidden());
	assert.equal(await page.locator('main a[href="en/training.html"]').count(), 1);
});

test('a lesson is done when each of its questions was right once, in either language', async (t) => {
	const { page, url } = await open(t, 'en/lesson-eyes.html');
	await choose(question(page, 1), 'Rinse');
	await choose(question(page, 2), 'Call');
	await choose(question(page, 3), 'Yes'); // wrong
	await page.goto(url + 'en/training.html');
	const done = page.locator('[data-part=done]');
	assert.equal(await done.innerText(), uiText('ui.train.done', { n: 0, all: 3 }));
	await page.goto(url + 'es/lesson-eyes.html');
	await choose(question(page, 3), 'No');
	await page.goto(url + 'es/training.html');
	assert.equal(await done.innerText(), uiText('ui.train.done', { n: 1, all: 3 }, 'es'));
	assert.equal(await page.locator('.lessons li', { hasText: 'Cuide los ojos' }).locator('.mine').innerText(), uiText('ui.train.finished', {}, 'es'));
	await page.goto(url + 'en/course-foreman.html');
	assert.equal(await done.innerText(), uiText('ui.train.done', { n: 1, all: 3 }));
});

// exportAnswers clicks the export and returns the path of the file and its suggested
// name.
async function exportAnswers(page, name) {
	const [file] = await Promise.all([page.waitForEvent('download'), page.locator('[data-do=train-export]').click()]);
	const path = join(work, `${process.pid}-${name}.json`);
	await file.saveAs(path);
	return { path, name: file.suggestedFilename() };
}

async function importAnswers(page, path) {
	await page.locator('[data-do=train-import]').setInputFiles(path);
}

test('answers are exported and imported; of two answers the later is used, and none is lost', async (t) => {
	const one = await open(t, 'en/lesson-eyes.html');
	await choose(question(one.page, 1), 'Rinse');
	await choose(question(one.page, 2), 'Wait'); // wrong
	await one.page.goto(one.url + 'en/training.html');
	const file = await exportAnswers(one.page, 'one');
	assert.equal(file.name, 'training-all-2026-11-25.json');

	const two = await open(t, 'en/lesson-eyes.html', { at: new Date(noon.getTime() + 86_400_000) });
	await choose(question(two.page, 2), 'Call'); // right, a day later
	await choose(question(two.page, 3), 'No');
	await two.page.goto(two.url + 'en/training.html');
	await setting(two.page, 'role', 'foreman');
	await importAnswers(two.page, file.path);
	await eventually(async () => assert.equal(await two.page.locator('[data-part=carried]').innerText(), uiText('ui.train.taken', { n: 2 })));
	assert.equal(await two.page.locator('[data-part=done]').innerText(), uiText('ui.train.done', { n: 1, all: 3 }));
	const both = await exportAnswers(two.page, 'two');
	assert.equal(both.name, 'training-foreman-2026-11-26.json');
	const { answers } = JSON.parse(readFileSync(both.path, 'utf8'));
	assert.deepEqual(Object.values(answers).map((a) => a.ok), [true, true, true]);

	await importAnswers(one.page, both.path);
	await eventually(async () => assert.equal(await one.page.locator('[data-part=carried]').innerText(), uiText('ui.train.taken', { n: 3 })));
	assert.equal(await one.page.locator('[data-part=done]').innerText(), uiText('ui.train.done', { n: 1, all: 3 }));
});

test('a file of another format is refused and changes nothing', async (t) => {
	const { page, url } = await open(t, 'en/lesson-eyes.html');
	await choose(question(page, 1), 'Rinse');
	await page.goto(url + 'en/training.html');
	const stored = () => page.evaluate(() => JSON.stringify(Object.entries(localStorage).filter(([k]) => k.endsWith('answers'))));
	const before = await stored();
	const good = '{"box":1,"due":20000,"at":1,"ok":true}';
	for (const text of ['', 'no json', '[]', 'null', '{"training":2,"answers":{}}', '{"training":1}', '{"training":1,"answers":[]}', '{"coursebook":1,"kept":{}}',
		`{"training":1,"answers":{"lesson-eyes.1.x":${good},"a b":${good}}}`, `{"training":1,"answers":{"__proto__":${good}}}`,
		'{"training":1,"answers":{"lesson-eyes.1.x":{"box":9,"due":20000,"at":1,"ok":true}}}', '{"training":1,"answers":{"lesson-eyes.1.x":null}}',
		'{"training":1,"answers":{"lesson-eyes.1.x":{"box":1,"due":"<b>","at":1,"ok":true}}}']) {
		const path = join(work, `${process.pid}-strange.json`);
		writeFileSync(path, text);
		await page.locator('[data-part=carried]').evaluate((p) => (p.textContent = ''));
		await importAnswers(page, path);
		await eventually(async () => assert.equal(await page.locator('[data-part=carried]').innerText(), uiText('ui.train.strange'), text));
		assert.equal(await stored(), before, text);
	}
	assert.deepEqual(page.errors, []);
});

test('a question that the manual no longer contains is not counted', async (t) => {
	const { page, url } = await open(t, 'en/training.html');
	await page.evaluate(() => localStorage.setItem(`coursebook ${location.pathname.replace('en/training.html', '')} answers`, '{"lesson-gone.1.abc":{"box":1,"due":1,"at":1,"ok":true}}'));
	await page.reload();
	assert.equal(await due(page), 0);
	await page.goto(url + 'index.html');
	assert.ok(await page.locator('[data-due]').isHidden());
});

test('without storage the page shows a note, and questions work', async (t) => {
	const server = await serve(t, built);
	const context = await newPhone(t, { saving: false });
	await context.addInitScript(() => Object.defineProperty(window, 'localStorage', { get() { throw new Error('refused'); } }));
	const page = await newPage(context);
	await page.goto(server.url + 'en/training.html');
	assert.equal(await page.locator('[data-part=unkept]').innerText(), uiText('ui.unkept'));
	await page.goto(server.url + 'en/lesson-eyes.html');
	await choose(question(page, 1), 'Rinse');
	await expectVerdict(question(page, 1), 'ui.train.right', 2);
});

test('without the module a question of numbers keeps its printed numbers and answer', async (t) => {
	const server = await serve(t, built);
	const context = await newPhone(t, { saving: false });
	await context.route('**/*.wasmz', (route) => route.abort());
	const page = await newPage(context);
	await page.goto(server.url + 'en/lesson-square.html');
	const q = question(page, 1);
	await ask(q);
	await q.scrollIntoViewIfNeeded();
	await expectVerdict(q, 'ui.calc.no-load');
	await q.locator(':scope > .reply > summary').click();
	assert.match(await q.locator('strong').innerText(), /\d+' \d+/);
});

test('without script every question is shown with its answer folded', async (t) => {
	const { page } = await open(t, 'en/lesson-square.html', { javaScriptEnabled: false });
	const q = question(page, 1);
	const given = (await q.locator('.given .fresh .us').allInnerTexts()).map(feet);
	assert.equal(given.length, 2);
	assert.ok(await q.locator('strong').isHidden());
	await q.locator(':scope > .reply > summary').click();
	const shown = await q.locator('strong .us').innerText();
	assert.ok(Math.abs(feet(shown) - Math.hypot(...given)) <= 1 / 16 / 12, `${shown} for ${given}`);
	assert.equal(await q.locator('form').count(), 0);
});

test('the sign-off sheet prints on one page, with name, lines for both, date and address', async (t) => {
	const { page } = await open(t, 'en/course-foreman.html');
	await page.locator('[data-part=hand]').fill('Invented Hand');
	await page.reload();
	assert.equal(await page.locator('[data-part=hand]').inputValue(), 'Invented Hand', 'the name is forgotten');
	for (const format of ['Letter', 'A4']) {
		const file = join(work, `${process.pid}-sign.pdf`);
		writeFileSync(file, await page.pdf({ format, preferCSSPageSize: true }));
		assert.match(execFileSync('pdfinfo', [file], { encoding: 'utf8' }), /^Pages:\s+1$/m, `${format}: more than one page`);
		const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).replace(/\s+/g, ' ');
		for (const part of [uiText('ui.sign.title', { course: 'Course of the foreman' }), 'Invented Hand', uiText('ui.sign.date'), uiText('ui.sign.trainer'), uiText('ui.sign.hand'),
			'Reads the string.', 'Signs the day off.', '2026-11-25', 'en/course-foreman.html']) {
			assert.ok(text.includes(part), `${format}: no “${part}”: ${text}`);
		}
		for (const part of ['Three short lessons', uiText('ui.sign.print'), 'Fill a corner']) assert.ok(!text.includes(part), `“${part}” is printed`);
	}
});

test('all pages of the training pass axe in light and dark and have the sizes and contrasts of other pages', async (t) => {
	const { page, context, url } = await open(t, 'en/lesson-corner.html', { reducedMotion: 'reduce' });
	await context.addInitScript({ path: createRequire(import.meta.url).resolve('axe-core/axe.min.js') });
	for (const name of ['en/lesson-corner.html', 'en/lesson-square.html', 'en/training.html', 'en/course-foreman.html']) {
		await page.goto(url + name);
		if (name.includes('corner')) {
			await choose(question(page, 1), 'The long side');
			await put(question(page, 2), order);
		}
		if (name.includes('square')) {
			await drawn(question(page, 1));
			await type(question(page, 1), '1 ft');
			await expectVerdict(question(page, 1), 'ui.train.not-right', 2);
			await drawn(question(page, 2));
			await type(question(page, 2), 'long');
		}
		for (const colorScheme of ['light', 'dark']) {
			await page.emulateMedia({ colorScheme });
			assert.deepEqual(await page.evaluate(async () => (await window.axe.run(document, { resultTypes: ['violations'] })).violations
				.flatMap((v) => v.nodes.map((node) => `${v.id}: ${node.target.join(' ')}`))), [], `${name}, ${colorScheme}`);
			assert.deepEqual(await page.evaluate(measure.contrast), [], `${name}, ${colorScheme}`);
		}
		assert.deepEqual(await page.evaluate(measure.targets), [], name);
		assert.deepEqual(await page.evaluate(measure.reflow), [], name);
	}
});

test('the training works in the one-file edition, and its exported file contains the answers', async (t) => {
	const context = await newPhone(t);
	const page = await newPage(context);
	const address = pathToFileURL(pocket).href;
	await page.goto(`${address}#en.lesson-square`);
	const article = page.locator('.article:visible');
	const q = article.locator('.question').first();
	const right = Math.hypot(...(await drawn(q)).map(feet));
	await type(q, `${right} ft`);
	await expectVerdict(q, 'ui.train.right', 2);
	await q.getByRole('link', { name: uiText('ui.train.next') }).click();
	assert.match(decodeURIComponent(page.url()), /#en\.lesson-square\.q-2$/);
	assert.equal(await article.getAttribute('id'), 'en.lesson-square');
	await page.goto(`${address}#es.lesson-corner`);
	await choose(article.locator('.question').first(), 'El lado largo');
	await eventually(async () => assert.match(await article.locator('.verdict').first().innerText(), new RegExp(uiText('ui.train.right', {}, 'es'))));
	const before = await page.evaluate(() => localStorage.getItem(Object.keys(localStorage).find((k) => k.endsWith('answers'))));
	const path = join(work, `${process.pid}-pocket.json`);
	writeFileSync(path, JSON.stringify({ coursebook: 1, kept: { answers: before.replaceAll(/"at":\d+/g, '"at":5').replaceAll(/"box":1/g, '"box":3') } }));
	await page.locator('.keep summary').click();
	await Promise.all([page.waitForEvent('load', { timeout: 30_000 }), page.locator('#import').setInputFiles(path)]);
	assert.equal(await page.evaluate(() => localStorage.getItem(Object.keys(localStorage).find((k) => k.endsWith('answers')))), before, 'an older answer of a file replaces a later one');
	await page.goto(`${address}#en.training`);
	await page.evaluate(() => localStorage.setItem(Object.keys(localStorage).find((k) => k.endsWith('answers')),
		localStorage.getItem(Object.keys(localStorage).find((k) => k.endsWith('answers'))).replaceAll(/"due":\d+/g, '"due":1')));
	await page.reload();
	assert.equal(await article.locator('[data-part=due-list] a').count(), 2);
	await article.locator('[data-part=due-list] a').first().click();
	await eventually(async () => assert.match(await article.getAttribute('id'), /^en\.lesson-/));
	assert.deepEqual(page.errors, []);
	assert.deepEqual(context.foreignRequests, []);
});
