// The Nu HTML checker over every built page and the one-file edition. No
// message is filtered.
import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { test } from 'node:test';
import { pages, pocket, releaseA, work } from './lib/site.mjs';

// Messages that may stand, each with the reason. There is none.
const allowed = [];

const jar = join(createRequire(import.meta.url).resolve('vnu-jar/package.json'), '../build/dist/vnu.jar');

function check(files) {
	return new Promise((done, fail) => {
		execFile('java', ['-Xss4m', '-jar', jar, '--format', 'json', ...files], { maxBuffer: 1 << 28 }, (error, out, text) => {
			try {
				done(JSON.parse(text).messages);
			} catch {
				fail(new Error(`the checker did not run: ${error}\n${text}`));
			}
		});
	});
}

test('the Nu HTML checker has nothing to say about any page', async () => {
	const list = pages();
	const messages = (await check([...list.map((name) => join(releaseA, name)), pocket]))
		.filter((message) => !allowed.includes(message.message));
	const told = messages.map((m) => `${m.url}:${m.lastLine}: ${m.subType ?? m.type}: ${m.message}\n    ${m.extract?.trim()}`);
	assert.equal(told.length, 0, `${told.length} messages:\n${[...new Set(told)].slice(0, 40).join('\n')}`);
});

test('the checker does see a fault', async () => {
	const messages = await check([fileWith('<!doctype html><html lang="en"><title>x</title><p><div></div></p>')]);
	assert.ok(messages.some((message) => message.type === 'error'));
});

function fileWith(html) {
	const name = join(work, 'faulty.html');
	writeFileSync(name, html);
	return name;
}
