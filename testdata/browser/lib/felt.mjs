// How a page feels while it loads: what Chromium measures of the largest paint and of
// shifts of the layout (W3C, Largest Contentful Paint; WICG, Layout Instability).

// The pages, one of each kind that a crew opens in a hurry.
export const hurried = ['index.html', 'en/placing-by-lifts.html', 'en/calc/form-pressure.html', 'en/blow-out.html', 'es/index.html', 'es/calc/wall-volume.html'];

// slow makes a page as slow as a phone of the lower middle on a poor line: a processor four
// times slower than this machine's, 562 ms for an answer, 1.44 Mb/s ("slow 4G" of
// Chromium's own tools; from memory).
export async function slow(page, { network = true } = {}) {
	const devtools = await page.context().newCDPSession(page);
	await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
	if (!network) return;
	await devtools.send('Network.enable');
	await devtools.send('Network.emulateNetworkConditions', { offline: false, latency: 562, downloadThroughput: 1.44e6 / 8, uploadThroughput: 675e3 / 8 });
}

// felt loads a page and returns its largest contentful paint in ms, and the sum of all
// shifts of its layout that no touch caused, until a second after everything has loaded.
export async function felt(page, url) {
	await page.goto(url, { waitUntil: 'load' });
	await page.waitForTimeout(1000);
	return page.evaluate(() => new Promise((done) => {
		let paint = 0;
		let shift = 0;
		new PerformanceObserver((list) => { for (const e of list.getEntries()) paint = e.startTime; }).observe({ type: 'largest-contentful-paint', buffered: true });
		new PerformanceObserver((list) => { for (const e of list.getEntries()) if (!e.hadRecentInput) shift += e.value; }).observe({ type: 'layout-shift', buffered: true });
		setTimeout(() => done({ paint, shift }), 300);
	}));
}
