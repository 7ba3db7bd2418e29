// One browser for all tests, and a new context for each test.
import { after } from 'node:test';
import { chromium } from 'playwright-core';
import { launchOptions, phone, plainHost } from './chromium.mjs';

export { desktop, phone, plainHost } from './chromium.mjs';

let shared;

// browser is the browser that run.mjs started, or a new one if a test file runs alone.
export async function browser() {
	const address = process.env.COURSEBOOK_BROWSER;
	shared ??= address ? await chromium.connect(address) : await chromium.launch(launchOptions);
	return shared;
}

after(async () => { await shared?.close(); });

// newPhone opens a context with a phone's screen and closes it at the end of the
// test. context.requests lists the addresses of all requests, context.foreignRequests
// those to other hosts. With {saving: false} pages cannot register the service
// worker, so that other tests do not download the whole manual.
export async function newPhone(t, { saving = true, ...options } = {}) {
	const context = await (await browser()).newContext({ viewport: phone, locale: 'en-US', ...options });
	if (!saving) {
		await context.addInitScript(() => {
			if ('ServiceWorkerContainer' in window) ServiceWorkerContainer.prototype.register = () => Promise.reject(new Error('not in this test'));
		});
	}
	// Tests also measure elements outside the screen, whose layout content-visibility
	// defers. Articles of the one-file edition stay deferred: the layout of all of
	// them takes too long.
	await context.addInitScript(() => {
		const sheet = new CSSStyleSheet();
		sheet.replaceSync(':not(.article) { content-visibility: visible !important; }');
		document.adoptedStyleSheets = [sheet];
	});
	context.setDefaultTimeout(10_000);
	t.after(() => context.close());
	context.foreignRequests = [];
	context.requests = [];
	context.on('request', (request) => {
		context.requests.push(request.url());
		const { protocol, hostname } = new URL(request.url());
		if (/^(https?|wss?):$/.test(protocol) && hostname !== '127.0.0.1' && hostname !== plainHost) context.foreignRequests.push(request.url());
	});
	return context;
}

// newPage opens a page. page.errors lists its uncaught errors and violations of the
// content security policy.
export async function newPage(context) {
	const page = await context.newPage();
	page.errors = [];
	page.on('pageerror', (error) => page.errors.push(`error: ${error.message}`));
	page.on('console', (message) => {
		if (/Content Security Policy|Trusted ?Type|Refused to/i.test(message.text())) page.errors.push(`policy: ${message.text()}`);
	});
	return page;
}
