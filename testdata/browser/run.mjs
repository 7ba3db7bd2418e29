// `npm test`: builds the manual, starts one browser and runs all test files with
// Node's test runner. `npm test -- search` runs only the files whose names contain
// "search".
import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const wanted = process.argv.slice(2);
const tests = readdirSync(here)
	.filter((name) => name.endsWith('.test.mjs') && (wanted.length === 0 || wanted.some((part) => name.includes(part))));
if (tests.length === 0) throw new Error(`no test file is named like ${wanted}`);

process.env.COURSEBOOK_TEST_DIR = mkdtempSync(join(tmpdir(), 'coursebook-browser-'));
let status = 1;
try {
	const { buildAll } = await import('./lib/site.mjs');
	buildAll();
	const { launchOptions } = await import('./lib/chromium.mjs');
	const { chromium } = await import('playwright-core');
	const server = await chromium.launchServer(launchOptions);
	process.env.COURSEBOOK_BROWSER = server.wsEndpoint();
	status = await new Promise((done) => {
		spawn(process.execPath, ['--test', '--test-concurrency=2', '--test-reporter=spec', ...tests], { cwd: here, stdio: 'inherit' })
			.on('close', (code) => done(code ?? 1));
	});
	await server.close();
} finally {
	rmSync(process.env.COURSEBOOK_TEST_DIR, { recursive: true, force: true });
}
process.exit(status);
