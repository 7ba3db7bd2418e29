// Builds the tested files: the command, the manual as release A, its one-file
// edition, and release B, in which one page has an additional sentence and one page
// is missing. The starter releases are two releases of the manual that `coursebook
// start` writes, for tests of the service worker alone: saving it takes seconds
// and not half a minute. All test files share one build: run.mjs makes it and passes
// its folder in COURSEBOOK_TEST_DIR.
import { execFileSync } from 'node:child_process';
import { appendFileSync, cpSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = resolve(fileURLToPath(import.meta.url), '../../../..');

// alone is a page that release B has in English only.
export const alone = 'radius-wall';
// newSentence is in release B and in starterB only.
export const newSentence = 'This sentence is only in the newer edition.';

const go = process.env.GO || 'go';
const sharedDir = process.env.COURSEBOOK_TEST_DIR;
export const work = sharedDir || mkdtempSync(join(tmpdir(), 'coursebook-browser-'));
export const binary = join(work, 'coursebook');
export const releaseA = join(work, 'a');
export const releaseB = join(work, 'b');
export const starterA = join(work, 'starter-a');
export const starterB = join(work, 'starter-b');
export const starterPage = 'en/pour-the-wall.html'; // starterB has the new sentence here
export const pocket = join(work, 'pocket.html');

if (!sharedDir) {
	process.on('exit', () => rmSync(work, { recursive: true, force: true }));
	buildAll();
}

// command runs coursebook and returns its standard output.
export function command(...args) {
	return execFileSync(binary, args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 26 });
}

// buildAll builds the command and all releases.
export function buildAll() {
	execFileSync(go, ['build', '-o', binary, './generator'], { cwd: root, stdio: 'inherit' });
	build('-out', releaseA, '-pocket', pocket);
	const content = join(work, 'content-b');
	cpSync(join(root, 'content'), content, { recursive: true });
	appendFileSync(join(content, 'en/blow-out.md'), `\n${newSentence}\n`);
	rmSync(join(content, 'es', `${alone}.md`));
	build('-content', content, '-out', releaseB);
	const starter = join(work, 'content-starter');
	cpSync(join(root, 'generator/starter'), starter, { recursive: true });
	build('-content', starter, '-out', starterA);
	appendFileSync(join(starter, starterPage.replace('.html', '.md')), `\n${newSentence}\n`);
	build('-content', starter, '-out', starterB);
}

function build(...args) {
	try {
		command('build', ...args);
	} catch (error) {
		const lines = error.stderr.split('\n').filter((line) => / error: |errors?, /.test(line));
		throw new Error(`the manual does not build:\n${lines.slice(-20).join('\n') || error.stderr}`);
	}
}

// files lists the published files of a folder, sorted, with slashes. Names that begin
// with a dot are the publisher's and are left out.
export function files(dir) {
	return readdirSync(dir, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => relative(dir, join(entry.parentPath ?? entry.path, entry.name)).split(sep).join('/'))
		.filter((name) => !name.startsWith('.'))
		.sort();
}

// spread returns about so many items of a list at equal distances, from the first on;
// all items if COURSEBOOK_EVERYWHERE is set.
export function spread(list, about) {
	const step = process.env.COURSEBOOK_EVERYWHERE ? 1 : Math.max(1, Math.floor(list.length / about));
	return list.filter((_, i) => i % step === 0);
}

// pages lists the HTML pages of a release.
export function pages(dir = releaseA) {
	const list = files(dir).filter((name) => name.endsWith('.html'));
	if (!existsSync(join(dir, 'index.html')) || list.length < 20) throw new Error(`${dir} contains no manual: ${list}`);
	return list;
}
