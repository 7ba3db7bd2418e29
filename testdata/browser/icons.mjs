// Draws the theme's icon for phones that take no SVG: `make icons`. The maskable one fills
// its square, because a phone cuts a shape of its own out of it, and keeps the drawing in
// the inner 80 percent that every shape leaves (W3C, Web Application Manifest, maskable icons).
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { launchOptions } from './lib/chromium.mjs';
import { fileURLToPath } from 'node:url';

const theme = fileURLToPath(new URL('../../themes/plumb', import.meta.url));
const icon = readFileSync(join(theme, 'icon.svg'), 'utf8');
const background = '#fdfdfb'; // of the icon itself
const browser = await chromium.launch(launchOptions);
for (const [name, size, share] of [['icon-180.png', 180, 1], ['icon-192.png', 192, 1], ['icon-512.png', 512, 1], ['icon-maskable-512.png', 512, 0.6]]) {
	const page = await browser.newPage({ viewport: { width: size, height: size } });
	await page.setContent(`<style>html{background:${background}}body{margin:0;height:100vh;display:grid;place-items:center}svg{width:${100 * share}%}</style>${icon}`);
	writeFileSync(join(theme, name), await page.screenshot());
	await page.close();
}
await browser.close();
