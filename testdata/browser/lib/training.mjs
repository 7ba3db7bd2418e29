// Builds the invented manual with a course from the files of the command's test, and
// answers its questions.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { command, root, work } from './site.mjs';

const dir = mkdtempSync(join(work, 'training-'));
export const site = join(dir, 'site');
export const pocket = join(dir, 'pocket.html');

for (const [, name, text] of readFileSync(join(root, 'testdata/sites/training.txtar'), 'utf8').matchAll(/^-- (book\/\S+) --\n([^]*?)(?=^-- |$(?![^]))/gm)) {
	mkdirSync(dirname(join(dir, name)), { recursive: true });
	writeFileSync(join(dir, name), text);
}
command('build', '-content', join(dir, 'book'), '-out', site, '-pocket', pocket);
process.on('exit', () => rmSync(dir, { recursive: true, force: true }));

// ask shows a question of a lesson, of which one at a time is shown.
export async function ask(question) {
	await question.locator('form').waitFor({ state: 'attached' });
	if (await question.isVisible()) return;
	await question.evaluate((item) => { location.hash = item.id; });
	await question.waitFor();
}

// choose answers a question of choice by the text of the answer, since its place changes.
export async function choose(question, text) {
	await ask(question);
	await question.locator('.options button').getByText(text, { exact: true }).click();
}

// put answers a question of order: it clicks the steps in the given order.
export async function put(question, steps) {
	await ask(question);
	for (const step of steps) await question.locator('.ordering button', { hasText: step }).click();
	await check(question);
}

// check submits the answer of a question.
export async function check(question) {
	await question.locator('button[type=submit]').click();
}

// type answers a question of numbers.
export async function type(question, text) {
	await ask(question);
	await question.locator('.answering input').fill(text);
	await check(question);
}

// drawn waits until numbers are drawn and returns the texts of those that vary.
export async function drawn(question) {
	await ask(question);
	await question.scrollIntoViewIfNeeded();
	await question.locator('fieldset.number:not([disabled])').waitFor();
	return question.locator('.given .fresh dd').allInnerTexts();
}

// feet parses 12' 6-1/2"; metres parses 3.81 m and 3,81 m.
export function feet(text) {
	const [, whole, inches, top, bottom] = text.match(/^(\d+)' (\d+)(?:-(\d+)\/(\d+))?"$/);
	return Number(whole) + (Number(inches) + (top ? top / bottom : 0)) / 12;
}

export function metres(text) {
	return Number(text.match(/^([\d.,]+) m$/)[1].replace(',', '.'));
}
