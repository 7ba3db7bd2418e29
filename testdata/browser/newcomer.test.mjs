// The commands of the README, run in a copy of the tracked files; the printed address
// is opened in a browser.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { calculator, eventually, ready, set } from './lib/form.mjs';
import { root } from './lib/site.mjs';

// commands are the first two commands of the README: indented lines with a note.
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const commands = [...readme.matchAll(/^ {4}(make \w+) +#/gm)].map((match) => match[1]).slice(0, 2);

test('the README has two commands, and the Makefile has both', () => {
	assert.deepEqual(commands, ['make site', 'make test']);
	for (const command of commands) {
		const [program, target] = command.split(' ');
		execFileSync(program, ['--dry-run', target], { cwd: root, stdio: 'pipe' });
	}
});

// copyTracked copies the working tree without ignored files.
function copyTracked(t) {
	const copy = mkdtempSync(join(tmpdir(), 'coursebook-newcomer-'));
	t.after(() => rmSync(copy, { recursive: true, force: true }));
	const list = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], { cwd: root, encoding: 'utf8' });
	for (const name of list.split('\0').filter(Boolean)) {
		mkdirSync(join(copy, dirname(name)), { recursive: true });
		cpSync(join(root, name), join(copy, name));
	}
	return copy;
}

// start runs a command and resolves with its output when a line matches. The process
// group is stopped at the end of the test.
function start(t, command, cwd, line) {
	const [program, ...args] = command.split(' ');
	const env = { ...process.env, ADDR: '127.0.0.1:0', COURSEBOOK_CHECKOUT: '' };
	const child = spawn(program, args, { cwd, env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
	t.after(() => { try { process.kill(-child.pid, 'SIGTERM'); } catch { /* it has ended */ } });
	return new Promise((done, fail) => {
		let text = '';
		const add = (data) => {
			text += data;
			if (line.test(text)) done(text);
		};
		child.stdout.setEncoding('utf8').on('data', add);
		child.stderr.setEncoding('utf8').on('data', add);
		child.on('close', (code) => fail(new Error(`${command} ended with ${code}:\n${text}`)));
		setTimeout(() => fail(new Error(`${command} printed no address in four minutes:\n${text}`)), 240_000).unref();
	});
}

test('make site: the output notes that the first run takes time, every page is served, and a calculator works', { timeout: 300_000 }, async (t) => {
	const copy = copyTracked(t);
	const printed = await start(t, commands[0], copy, /http:\/\/\S+\/ .*\n/);
	const lines = printed.trim().split('\n');
	assert.match(lines[0], /a minute or two/);
	const url = lines.at(-1).match(/http:\/\/127\.0\.0\.1:\d+\//)[0];

	const release = await (await fetch(url + 'release.json')).json();
	const pages = Object.keys(release.pages);
	assert.ok(pages.length > 300, `release.json lists only ${pages.length} pages`);
	const bad = [];
	for (const page of pages) {
		const response = await fetch(url + page);
		const text = await response.text();
		if (response.status !== 200 || !text.includes('<h1')) bad.push(`${page}: ${response.status}`);
	}
	assert.deepEqual(bad, []);

	const context = await newPhone(t, { saving: false });
	const page = await newPage(context);
	await page.goto(url);
	await page.goto(url + 'en/calc/wall-volume.html');
	const calc = calculator(page, 'wall-volume');
	await ready(calc);
	const order = () => calc.locator('[data-out="order-yd"] dd').innerText();
	const before = await order();
	await set(calc, 'core', '10 in');
	await eventually(async () => assert.notEqual(await order(), before));
	assert.deepEqual(page.errors, []);
});
