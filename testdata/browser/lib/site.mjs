// Builds what the tests look at: the command, the manual as release A, the
// one-file edition, and release B, whose start page differs by one sentence.
// The small releases are the manual that `coursebook start` writes, for what
// only the worker decides: saving it takes seconds and not half a minute.
// All test files share one build: run.mjs makes it and passes its folder on.
import { execFileSync } from 'node:child_process';
import { appendFileSync, cpSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = resolve(fileURLToPath(import.meta.url), '../../../..');

// The sentence that only release B has.
// alone is a page that has no twin in the newer edition.
export const alone = 'radius-wall';
export const newSentence = 'This sentence stands only in the newer edition.';

const go = process.env.GO || 'go';
const given = process.env.COURSEBOOK_TEST_DIR;
export const work = given || mkdtempSync(join(tmpdir(), 'coursebook-browser-'));
export const binary = join(work, 'coursebook');
export const releaseA = join(work, 'a');
export const releaseB = join(work, 'b');
export const smallA = join(work, 'small-a');
export const smallB = join(work, 'small-b');
export const smallPage = 'en/pour-the-wall.html'; // smallB has the new sentence here
export const pocket = join(work, 'pocket.html');

if (!given) {
	process.on('exit', () => rmSync(work, { recursive: true, force: true }));
	buildAll();
}

// command runs coursebook and returns its standard output.
export function command(...args) {
	return execFileSync(binary, args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 26 });
}

export function buildAll() {
	execFileSync(go, ['build', '-o', binary, './generator'], { cwd: root, stdio: 'inherit' });
	build('-out', releaseA, '-pocket', pocket);
	const content = join(work, 'content-b');
	cpSync(join(root, 'content'), content, { recursive: true });
	appendFileSync(join(content, 'en/blow-out.md'), `\n${newSentence}\n`);
	rmSync(join(content, 'es', `${alone}.md`));
	build('-content', content, '-out', releaseB);
	const small = join(work, 'content-small');
	cpSync(join(root, 'generator/starter'), small, { recursive: true });
	build('-content', small, '-out', smallA);
	appendFileSync(join(small, smallPage.replace('.html', '.md')), `\n${newSentence}\n`);
	build('-content', small, '-out', smallB);
}

function build(...args) {
	try {
		command('build', ...args);
	} catch (error) {
		const lines = error.stderr.split('\n').filter((line) => / error: |errors?, /.test(line));
		throw new Error(`the manual does not build:\n${lines.slice(-20).join('\n') || error.stderr}`);
	}
}

// files lists what a folder publishes, with slashes, sorted. The publisher's own
// mark has a name with a dot.
export function files(dir) {
	return readdirSync(dir, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => relative(dir, join(entry.parentPath ?? entry.path, entry.name)).split(sep).join('/'))
		.filter((name) => !name.startsWith('.'))
		.sort();
}

// spread takes about so many of a list, evenly, the first among them; all of
// them where COURSEBOOK_EVERYWHERE is set.
export function spread(list, about) {
	const step = process.env.COURSEBOOK_EVERYWHERE ? 1 : Math.max(1, Math.floor(list.length / about));
	return list.filter((_, i) => i % step === 0);
}

// pages lists the HTML pages of a release.
export function pages(dir = releaseA) {
	const list = files(dir).filter((name) => name.endsWith('.html'));
	if (!existsSync(join(dir, 'index.html')) || list.length < 20) throw new Error(`${dir} holds no manual: ${list}`);
	return list;
}
