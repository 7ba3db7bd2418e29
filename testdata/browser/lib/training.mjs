// The invented manual with a course, from the same files that the command's
// own test builds, and what a reader does with its questions.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { command, root, work } from './site.mjs';

const made = mkdtempSync(join(work, 'training-'));
export const site = join(made, 'site');
export const pocket = join(made, 'pocket.html');

for (const [, name, text] of readFileSync(join(root, 'testdata/sites/training.txtar'), 'utf8').matchAll(/^-- (book\/\S+) --\n([^]*?)(?=^-- |$(?![^]))/gm)) {
	mkdirSync(dirname(join(made, name)), { recursive: true });
	writeFileSync(join(made, name), text);
}
command('build', '-content', join(made, 'book'), '-out', site, '-pocket', pocket);
process.on('exit', () => rmSync(made, { recursive: true, force: true }));

// choose answers a choice by its number, from 1.
export async function choose(question, number) {
	await question.locator('label.tick').nth(number - 1).click();
	await check(question);
}

// put touches the steps of an order in the order given.
export async function put(question, steps) {
	for (const step of steps) await question.locator('.ordering button', { hasText: step }).click();
	await check(question);
}

export async function check(question) {
	await question.locator('button[type=submit]').click();
}

// type answers a question of numbers.
export async function type(question, text) {
	await question.locator('.answering input').fill(text);
	await check(question);
}

// drawn waits for fresh numbers and gives those that vary, in the unit typed.
export async function drawn(question) {
	await question.scrollIntoViewIfNeeded();
	await question.locator('fieldset.number:not([disabled])').waitFor();
	return question.locator('.given .fresh dd').allInnerTexts();
}

// feet reads 12' 6-1/2" and metres 3.81 m or 3,81 m.
export function feet(text) {
	const [, whole, inches, top, bottom] = text.match(/^(\d+)' (\d+)(?:-(\d+)\/(\d+))?"$/);
	return Number(whole) + (Number(inches) + (top ? top / bottom : 0)) / 12;
}

export function metres(text) {
	return Number(text.match(/^([\d.,]+) m$/)[1].replace(',', '.'));
}
