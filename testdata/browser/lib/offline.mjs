// The state of the saved manual: the page's status and the browser's caches.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { eventually } from './form.mjs';
import { files } from './site.mjs';
import { uiText } from './words.mjs';

// saved waits until the page shows that the manual is saved.
export async function saved(page, lang = 'en') {
	await eventually(async () => assert.equal((await page.locator('#saved').innerText()).trim(), uiText('ui.saved.yes', {}, lang)), 30_000);
}

// cached lists the entries of all caches of the origin: cache name, path, SHA-256.
export function cached(page) {
	return page.evaluate(async () => {
		const list = [];
		for (const name of await caches.keys()) {
			const cache = await caches.open(name);
			for (const request of await cache.keys()) {
				const bytes = await (await cache.match(request)).arrayBuffer();
				const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
				list.push({ cache: name, path: new URL(request.url).pathname, sum: [...sum].map((b) => b.toString(16).padStart(2, '0')).join('') });
			}
		}
		return list;
	});
}

// hashes returns the SHA-256 of every file of a release by its path.
export function hashes(release, base = '/') {
	return new Map(files(release).map((name) => [base + name, createHash('sha256').update(readFileSync(join(release, name))).digest('hex')]));
}

// whole fails unless the entries are exactly the files of one release, byte for byte.
export function whole(list, release, base = '/') {
	const want = hashes(release, base);
	want.delete(`${base}sw.js`);
	assert.deepEqual(new Map(list.map(({ path, sum }) => [path, sum]).sort()), new Map([...want].sort()));
}
