// Checks every built page and the one-file edition with the Nu HTML checker; warnings
// fail too.
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

// isExpected accepts these messages of the checker, which are not errors of a page:
//   - The checker reads files, for which the policy's 'self' allows nothing; in the
//     one-file edition it supports neither the hashes nor the data: of the policy.
//     crawl.test.mjs and pocket.test.mjs test both policies in a browser.
//   - It shortens long addresses to their first letters.
//   - In the conversion of units the results of all kinds of quantity have the same two
//     names; only those of one kind are visible.
//   - It does not support container queries yet (CSS Conditional Rules 5), nor the pseudo
//     element ::highlight() (CSS Custom Highlight API 1).
function isExpected({ url, message, extract }) {
	const [, address] = message.match(/^Resource violates Content Security Policy \(meta tag\): [a-z ]+ “([^”]+)” blocked by “(?:style|script|img)-src” directive\.$/) ?? [];
	if (/\/(pocket|unit-conversion)\.html$/.test(url) && /“dt” name “/.test(message)) return true;
	if (url.endsWith('/pocket.html')) {
		if (/^CSS: Parse Error\.?$/.test(message) && /ighlight\(spoken\)/.test(extract)) return true;
		return address?.startsWith('data:image/') || /^Inline (style|script) violates Content Security Policy .*missing .*hash/.test(message) ||
			/^CSS: (“container-type”: Property “container-type” doesn't exist|Unrecognized at-rule “@container”)\.?$/.test(message);
	}
	// The page for missing addresses also looks for its style and script in the folders above its address.
	if (url.endsWith('/404.html') && /^(\.\.\/)+assets\//.test(address ?? '')) return true;
	if (!address || /^[a-z]+:|^\//.test(address)) return false;
	const file = join(dirname(fileURLToPath(url)), address);
	const [start, cut] = file.split('...');
	const exists = cut === undefined ? existsSync(file) : readdirSync(dirname(start)).some((name) => join(dirname(start), name).startsWith(start));
	return file.startsWith(releaseA) && exists;
}

test('the Nu HTML checker has no message about any page, and finds a planted error', async () => {
	const faulty = join(work, 'faulty.html');
	writeFileSync(faulty, '<!doctype html><html lang="en"><title>x</title><p><div></div></p>');
	const messages = await check([...pages().map((name) => join(releaseA, name)), pocket, faulty]);
	const planted = messages.filter((message) => message.url.endsWith('/faulty.html'));
	assert.ok(planted.some((message) => message.type === 'error'), 'the checker misses the planted error');
	const found = messages.filter((message) => !planted.includes(message) && !isExpected(message))
		.map((m) => `${m.url}:${m.lastLine}: ${m.subType ?? m.type}: ${m.message}\n    ${m.extract?.trim()}`);
	assert.equal(found.length, 0, `${found.length} messages:\n${[...new Set(found)].slice(0, 30).join('\n')}`);
});
