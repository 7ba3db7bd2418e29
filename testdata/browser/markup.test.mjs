// The Nu HTML checker over every built page and the one-file edition. No
// message is filtered.
import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { serve } from './lib/server.mjs';
import { pages, pocket, releaseA } from './lib/site.mjs';

// Messages that may stand, each with the reason. There is none.
const allowed = [];

const jar = join(createRequire(import.meta.url).resolve('vnu-jar/package.json'), '../build/dist/vnu.jar');

// check gives the checker addresses rather than files, so that the policy's
// 'self' means something.
function check(addresses) {
	return new Promise((done, fail) => {
		execFile('java', ['-Xss4m', '-jar', jar, '--format', 'json', ...addresses], { maxBuffer: 1 << 28 }, (error, out, text) => {
			try {
				done(JSON.parse(text).messages);
			} catch {
				fail(new Error(`the checker did not run: ${error}\n${text}`));
			}
		});
	});
}

const faulty = '<!doctype html><html lang="en"><title>x</title><p><div></div></p>';

test('the Nu HTML checker has nothing to say about any page, and does see a fault', async (t) => {
	const site = await serve(t, releaseA, {
		answer: (name) => ({ 'faulty.html': { body: faulty }, 'pocket.html': { body: readFileSync(pocket) } })[name],
	});
	const messages = await check([...pages(), 'pocket.html', 'faulty.html'].map((name) => site.url + name));
	const planted = messages.filter((message) => message.url.endsWith('/faulty.html'));
	assert.ok(planted.some((message) => message.type === 'error'), 'the checker passes over a fault');
	const told = messages.filter((message) => !planted.includes(message) && !allowed.includes(message.message))
		.map((m) => `${m.url}:${m.lastLine}: ${m.subType ?? m.type}: ${m.message}\n    ${m.extract?.trim()}`);
	assert.equal(told.length, 0, `${told.length} messages:\n${[...new Set(told)].slice(0, 30).join('\n')}`);
});
