// The Nu HTML checker over every built page and the one-file edition, warnings
// included.
import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { pages, pocket, releaseA, work } from './lib/site.mjs';

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

// mayStand passes over what the checker says amiss, and nothing else:
//   - It reads files, and for a file the policy's 'self' allows nothing; in the
//     one-file edition it reads neither the hashes nor the data: of the policy.
//     crawl.test.mjs and pocket.test.mjs hold both policies against a browser.
//   - It shortens long addresses to their first letters.
//   - The results of all kinds of quantity carry the same two names; the form
//     shows those of one kind.
//   - It does not know container queries yet (CSS Conditional Rules 5).
function mayStand({ url, message }) {
	const [, address] = message.match(/^Resource violates Content Security Policy \(meta tag\): [a-z ]+ “([^”]+)” blocked by “(?:style|script|img)-src” directive\.$/) ?? [];
	if (/\/(pocket|unit-conversion)\.html$/.test(url) && /“dt” name “/.test(message)) return true;
	if (url.endsWith('/pocket.html')) {
		return address?.startsWith('data:image/') || /^Inline (style|script) violates Content Security Policy .*missing .*hash/.test(message) ||
			/^CSS: (“container-type”: Property “container-type” doesn't exist|Unrecognized at-rule “@container”)\.?$/.test(message);
	}
	if (!address || /^[a-z]+:|^\//.test(address)) return false;
	const file = join(dirname(fileURLToPath(url)), address);
	const [start, cut] = file.split('...');
	const there = cut === undefined ? existsSync(file) : readdirSync(dirname(start)).some((name) => join(dirname(start), name).startsWith(start));
	return file.startsWith(releaseA) && there;
}

test('the Nu HTML checker has nothing to say about any page, and does see a fault', async () => {
	const faulty = join(work, 'faulty.html');
	writeFileSync(faulty, '<!doctype html><html lang="en"><title>x</title><p><div></div></p>');
	const messages = await check([...pages().map((name) => join(releaseA, name)), pocket, faulty]);
	const planted = messages.filter((message) => message.url.endsWith('/faulty.html'));
	assert.ok(planted.some((message) => message.type === 'error'), 'the checker passes over a fault');
	const told = messages.filter((message) => !planted.includes(message) && !mayStand(message))
		.map((m) => `${m.url}:${m.lastLine}: ${m.subType ?? m.type}: ${m.message}\n    ${m.extract?.trim()}`);
	assert.equal(told.length, 0, `${told.length} messages:\n${[...new Set(told)].slice(0, 30).join('\n')}`);
});
