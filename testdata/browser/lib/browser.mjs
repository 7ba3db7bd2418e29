// One browser for all tests; a fresh context, as good as a new phone, for each.
import { after } from 'node:test';
import { chromium } from 'playwright-core';
import { launchOptions, phone, plainHost } from './chromium.mjs';

export { desk, phone, plainHost } from './chromium.mjs';

let shared;

// browser is the one that run.mjs started, or one of this file's own.
export async function browser() {
	const address = process.env.COURSEBOOK_BROWSER;
	shared ??= address ? await chromium.connect(address) : await chromium.launch(launchOptions);
	return shared;
}

after(async () => { await shared?.close(); });

// newPhone opens a context that closes with the test. Every page in it notes
// what must never happen: page.faults lists uncaught errors, violations of the
// content security policy and requests to foreign hosts.
// With {saving: false} the page cannot register its worker, so that a test of
// something else does not download the whole manual.
export async function newPhone(t, { saving = true, ...options } = {}) {
	const context = await (await browser()).newContext({ viewport: phone, locale: 'en-US', ...options });
	if (!saving) {
		await context.addInitScript(() => {
			if ('ServiceWorkerContainer' in window) ServiceWorkerContainer.prototype.register = () => Promise.reject(new Error('not in this test'));
		});
	}
	// Tests read and measure what lies outside the screen too, where a browser
	// puts off the work until a reader scrolls there. The one-file edition
	// stays as it is: all of it at once is more than a browser should lay out.
	await context.addInitScript(() => {
		const sheet = new CSSStyleSheet();
		sheet.replaceSync(':not(.article) { content-visibility: visible !important; }');
		document.adoptedStyleSheets = [sheet];
	});
	context.setDefaultTimeout(10_000);
	t.after(() => context.close());
	context.foreign = [];
	context.sent = [];
	context.on('request', (request) => {
		context.sent.push(request.url());
		const { protocol, hostname } = new URL(request.url());
		if (/^(https?|wss?):$/.test(protocol) && hostname !== '127.0.0.1' && hostname !== plainHost) context.foreign.push(request.url());
	});
	return context;
}

export async function newPage(context) {
	const page = await context.newPage();
	page.faults = [];
	page.on('pageerror', (error) => page.faults.push(`error: ${error.message}`));
	page.on('console', (message) => {
		if (/Content Security Policy|Trusted ?Type|Refused to/i.test(message.text())) page.faults.push(`policy: ${message.text()}`);
	});
	return page;
}
