// Pocket cards and posters, printed to PDF on A4 and Letter; the PDF is read.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { cpSync, appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { newPage, newPhone } from './lib/browser.mjs';
import { serve } from './lib/server.mjs';
import { command, releaseA, root, work } from './lib/site.mjs';
import { uiPattern, uiText } from './lib/words.mjs';

const papers = { A4: [595, 842], Letter: [612, 792] };
const mm = 96 / 25.4;
const point = 96 / 72;

// withAddress builds the manual with an address, so that its posters have QR codes.
let addressed;
function withAddress() {
	if (addressed) return addressed;
	const content = join(work, `content-paper-${process.pid}`);
	cpSync(join(root, 'content'), content, { recursive: true });
	appendFileSync(join(content, 'manual.yaml'), 'address: https://example.org/walls\n');
	addressed = join(work, `paper-${process.pid}`);
	command('build', '-content', content, '-out', addressed);
	return addressed;
}

// edition is the text of the edition that the script writes on cards and posters.
function edition(lang) {
	return uiText('ui.edition', { id: JSON.parse(readFileSync(join(withAddress(), 'release.json'), 'utf8')).edition }, lang);
}

async function open(t, path, folder = releaseA) {
	const site = await serve(t, folder);
	const page = await newPage(await newPhone(t, { saving: false }));
	await page.goto(site.url + path);
	await page.getByText(uiPattern('ui.edition', path.slice(0, 2))).first().waitFor({ state: 'attached' });
	return page;
}

// printed prints a page and returns the size of the paper in points and the text of
// each sheet.
async function printed(page, format) {
	const file = join(work, `paper-${process.pid}-${format}.pdf`);
	writeFileSync(file, await page.pdf({ format, preferCSSPageSize: true }));
	const info = execFileSync('pdfinfo', [file], { encoding: 'utf8' });
	const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
	const [, width, height] = info.match(/^Page size:\s+([\d.]+) x ([\d.]+)/m);
	return { size: [Number(width), Number(height)], sheets: text.split('\f').slice(0, -1), count: Number(info.match(/^Pages:\s+(\d+)/m)[1]), file };
}

const sized = (size, format) => size.every((length, i) => Math.abs(length - papers[format][i]) < 2);

// words lists the words of a text: runs of letters and digits.
const words = (text) => text.match(/[\p{L}\p{N}]+/gu) ?? [];

// missing lists the words of a text that a sheet has less often than the text. The
// order does not count: two cards are side by side, so their lines are mixed.
function missing(sheet, text) {
	const left = new Map();
	for (const word of words(sheet)) left.set(word, (left.get(word) ?? 0) + 1);
	return words(text).filter((word) => {
		left.set(word, (left.get(word) ?? 0) - 1);
		return left.get(word) < 0;
	});
}

// textsOf returns the text of each part of the sheets, with a space between the two
// figures of a quantity, where the style sheet adds punctuation.
function textsOf(page, sheets) {
	return page.locator(sheets).evaluateAll((list) => list.map((sheet) => [...sheet.querySelectorAll('h2, p, li')].map((part) => {
		const copy = part.cloneNode(true);
		for (const figure of copy.querySelectorAll('.us')) figure.append(' ');
		return copy.textContent;
	})));
}

// lay returns the printed sizes of sheets, rows and cards in mm and of type in points.
async function lay(page, format) {
	await page.emulateMedia({ media: 'print' });
	await page.setViewportSize({ width: Math.round(papers[format][0] * point), height: Math.round(papers[format][1] * point) });
	return page.evaluate(({ mm, point }) => {
		const box = (node) => node.getBoundingClientRect();
		return [...document.querySelectorAll('.cut, .poster')].map((sheet) => ({
			width: box(sheet).width / mm, height: box(sheet).height / mm,
			rows: [...sheet.querySelectorAll('.row-of-cards')].map((row) => box(row).height / mm),
			cards: [...sheet.querySelectorAll('.pocket')].map((card) => ({
				title: card.querySelector('h2').textContent,
				over: [...card.querySelectorAll('*')].some((part) => box(part).right > box(card).right + 1 || box(part).bottom > box(card).bottom + 1),
			})),
			least: Math.min(...[...sheet.querySelectorAll('h2, p, li')].map((part) => parseFloat(getComputedStyle(part).fontSize))) / point,
		}));
	}, { mm, point });
}

for (const lang of ['en', 'es']) {
	for (const format of Object.keys(papers)) {
		test(`pocket cards, ${lang}, ${format}: four places to a sheet, none split, all text, date and address on them`, async (t) => {
			const page = await open(t, `${lang}/cards.html`, withAddress());
			const sheets = await page.locator('.cut').count();
			const texts = await textsOf(page, '.cut');
			assert.ok(sheets >= 15, `${sheets} sheets`);
			const { size, sheets: paper, count } = await printed(page, format);
			assert.ok(sized(size, format), `paper of ${size}`);
			assert.equal(count, sheets, 'sheets of paper');
			texts.forEach((parts, i) => {
				for (const part of parts) assert.deepEqual(missing(paper[i], part), [], `sheet ${i + 1} lacks words of “${part}”`);
			});
			const addresses = await page.locator('.pocket .address').allInnerTexts();
			assert.ok(addresses.every((address) => address.startsWith(`https://example.org/walls/${lang}/`)), `${addresses}`);
			assert.ok(paper.every((sheet) => /20\d\d-\d\d-\d\d/.test(sheet)), 'a sheet without a date');
			assert.ok(paper.every((sheet) => sheet.includes(edition(lang))), 'a sheet without its edition');
			for (const sheet of await lay(page, format)) {
				assert.ok(sheet.width < 191 && sheet.height < 257, `a sheet of ${sheet.width} by ${sheet.height} mm`);
				assert.ok(sheet.rows.length <= 2 && sheet.cards.length <= 4, `${sheet.cards.length} cards on a sheet`);
				assert.ok(sheet.rows.every((height) => height < 128.5), `rows of ${sheet.rows} mm: ${sheet.cards.map((card) => card.title)}`);
				assert.deepEqual(sheet.cards.filter((card) => card.over).map((card) => card.title), [], 'cards that overflow');
				assert.ok(sheet.least >= 8, `type of ${sheet.least} pt`);
			}
		});

		test(`posters, ${lang}, ${format}: one to a sheet, code and address on it`, async (t) => {
			const page = await open(t, `${lang}/posters.html`, withAddress());
			const posters = await textsOf(page, '.poster');
			assert.equal(posters.length, 7);
			const { size, sheets, count } = await printed(page, format);
			assert.ok(sized(size, format), `paper of ${size}`);
			assert.equal(count, posters.length, 'sheets of paper');
			posters.forEach((parts, i) => {
				for (const part of parts) assert.deepEqual(missing(sheets[i], part), [], `poster ${i + 1} lacks words of “${part}”`);
				assert.ok(sheets[i].includes(edition(lang)), `poster ${i + 1} lacks its edition`);
				assert.match(sheets[i], new RegExp(`https://example\\.org/walls/${lang}/[a-z-]+\\.html`), 'no address in one piece');
			});
			for (const sheet of await lay(page, format)) assert.ok(sheet.least >= 10.5, `type of ${sheet.least} pt`);
			const modules = await page.locator('svg.qr').evaluateAll((list) => list.map((code) => code.getBoundingClientRect().width / code.viewBox.baseVal.width));
			assert.equal(modules.length, posters.length);
			assert.ok(modules.every((width) => width >= mm), `modules of ${modules.map((width) => width / mm)} mm`);
		});
	}
}

test('on a phone cards and posters are a list of links to their pages, with a button to print; on a desk the sheets are shown', async (t) => {
	for (const [path, sheet, least] of [['en/cards.html', '.cut', 60], ['es/posters.html', '.poster', 7]]) {
		const page = await open(t, path);
		const links = page.locator('.paper > .pages a');
		assert.ok(await links.count() >= least, `${await links.count()} links`);
		assert.ok(await links.first().isVisible());
		assert.ok(!await page.locator(sheet).first().isVisible());
		const high = await page.evaluate(() => document.documentElement.scrollHeight);
		assert.ok(high < 12_000, `the page is ${high} px long`);
		await page.evaluate(() => { window.print = () => { window.printed = true; }; });
		await page.getByRole('button', { name: uiText('ui.print.now', {}, path.slice(0, 2)) }).click();
		assert.equal(await page.evaluate(() => window.printed), true);
		await page.setViewportSize({ width: 1280, height: 800 });
		assert.ok(await page.locator(sheet).first().isVisible());
		assert.ok(!await links.first().isVisible());
	}
});

test('on cards and posters every quantity shows the author’s figure, on a desk and in print', async (t) => {
	for (const lang of ['en', 'es']) {
		for (const [kind, least] of [['cards', 60], ['posters', 1]]) {
			const page = await open(t, `${lang}/${kind}.html`);
			await page.setViewportSize({ width: 1280, height: 800 });
			for (const media of ['screen', 'print']) {
				await page.emulateMedia({ media });
				const { all, unseen } = await page.locator(':is(.cut, .poster) .q > .own').evaluateAll((list) => ({
					all: list.length,
					unseen: list.filter((figure) => figure.getBoundingClientRect().width < 4).map((figure) => figure.closest('li, p').textContent),
				}));
				assert.ok(all >= least, `${lang}/${kind}: ${all} quantities`);
				assert.deepEqual(unseen, [], `${lang}/${kind}, ${media}`);
			}
		}
	}
});

test('the number of each step of a poster is in one line, in a frame of its own', async (t) => {
	const page = await open(t, 'en/posters.html');
	await page.setViewportSize({ width: 1280, height: 800 });
	for (const media of ['screen', 'print']) {
		await page.emulateMedia({ media });
		const frames = await page.locator('.first').evaluateAll((lists) => lists.flatMap((list) => [...list.children].map((li, i) => {
			const style = getComputedStyle(li, '::before');
			const pen = document.createElement('canvas').getContext('2d');
			pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
			return {
				n: i + 1, high: parseFloat(style.height) / parseFloat(style.fontSize), room: parseFloat(style.width) - 2 * parseFloat(style.borderLeftWidth),
				text: pen.measureText(String(i + 1)).width, indent: parseFloat(getComputedStyle(li).paddingLeft), wide: parseFloat(style.width),
			};
		})));
		assert.ok(frames.some(({ n }) => n >= 18), `${frames.length} steps`);
		assert.deepEqual(frames.filter(({ high, room, text, indent, wide }) => high > 1.8 || room < text || wide > indent), [], media);
	}
});

test('a poster has every step of its page, and hold points are as large as the other steps', async (t) => {
	const page = await open(t, 'en/posters.html');
	const posters = await page.locator('.poster').evaluateAll((list) => list.map((poster) => [poster.querySelector('h2').textContent, poster.querySelectorAll('.first > li').length]));
	for (const [lang, slug] of [['en', 'injury-and-burns'], ['en', 'bar-release']]) {
		const source = readFileSync(join(root, 'content', lang, `${slug}.md`), 'utf8');
		const [, title] = source.match(/^title: (.*)$/m);
		assert.equal(Object.fromEntries(posters)[title], source.match(/^\d+\. /gm).length, title);
	}
	await page.emulateMedia({ media: 'print' });
	const sizes = await page.locator('.first:has(.held)').evaluateAll((list) => list.map((steps) => new Set([...steps.children].map((li) => getComputedStyle(li).fontSize)).size));
	assert.ok(sizes.length >= 3 && sizes.every((n) => n === 1), `${sizes}`);
});

test('the crew talk is first, with its seven checks', async (t) => {
	const page = await open(t, 'en/cards.html');
	const first = page.locator('.pocket').first();
	assert.equal(await first.locator('.boxes > li').count(), 7);
	assert.match(await first.locator('.address').innerText(), /en\/crew-talk\.html$/);
});

test('no card has more than nine checks, and every procedure with checks has its card', async (t) => {
	const site = await serve(t, releaseA);
	const page = await newPage(await newPhone(t, { saving: false }));
	await page.goto(`${site.url}en/cards.html`);
	const cards = await page.locator('.pocket').evaluateAll((list) => list.map((card) => ({
		path: card.querySelector('.address').textContent, checks: [...card.querySelectorAll('.boxes li')].map((check) => check.textContent),
	})));
	assert.ok(cards.length >= 40 && cards.every(({ checks }) => checks.length >= 1 && checks.length <= 9));
	for (const { path, checks } of [cards[1], cards.at(-1)]) {
		await page.goto(site.url + path);
		assert.deepEqual(checks, await page.locator('ul.checks li label > span').evaluateAll((list) => list.map((check) => check.textContent)), path);
	}
});

test('without an address a poster gives the way to the page and has no QR code', async (t) => {
	const page = await open(t, 'en/posters.html');
	assert.equal(await page.locator('svg.qr').count(), 0);
	const first = page.locator('.poster').first();
	const title = await first.locator('h2').innerText();
	const name = await page.locator('.brand').innerText();
	const text = (await first.innerText()).replace(/\s+/g, ' ');
	assert.ok(text.includes(uiText('ui.poster.find', { name: name.trim(), title })), text);
});

test('on grey paper signal words are white on black, and every other text is dark on white', async (t) => {
	for (const path of ['en/cards.html', 'en/posters.html']) {
		const page = await open(t, path);
		await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
		const faint = await page.evaluate(() => {
			const grey = (colour) => { const [r, g, b] = colour.match(/[\d.]+/g).map(Number); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
			return [...document.querySelectorAll('.paper section *')].filter((part) => part.childNodes.length > 0 && !part.closest('svg')).filter((part) => {
				const onBlack = part.closest('.signal');
				const ink = grey(getComputedStyle(part).color);
				return onBlack ? ink < 250 || grey(getComputedStyle(onBlack).backgroundColor) > 5 : ink > 60;
			}).map((part) => part.outerHTML.slice(0, 80));
		});
		assert.deepEqual(faint, [], path);
	}
});

test('both are linked from the list of all pages and fit a phone’s screen', async (t) => {
	const site = await serve(t, withAddress());
	const page = await newPage(await newPhone(t, { saving: false, viewport: { width: 320, height: 640 } }));
	for (const key of ['ui.cards', 'ui.posters']) {
		await page.goto(`${site.url}en/all.html`);
		await page.getByRole('link', { name: uiText(key), exact: true }).click();
		assert.equal(await page.locator('main h1').innerText(), uiText(key));
		const wide = await page.evaluate(() => document.documentElement.scrollWidth);
		assert.ok(wide <= 320, `${key}: ${wide} px wide`);
	}
	assert.deepEqual(page.errors, []);
});
