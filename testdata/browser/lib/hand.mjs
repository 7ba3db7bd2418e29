// A gloved hand on a phone: it touches what is wholly in view, types, swipes, and counts.
import assert from 'node:assert/strict';

// swipe is how far one swipe moves a page, in shares of the screen's height (our own value).
const swipe = 0.8;

// covered tells whether an element is wholly inside the visual viewport, below the rail and
// above the answer bar.
function covered(element) {
	const box = element.getBoundingClientRect();
	const rail = document.querySelector('.rail').getBoundingClientRect();
	const view = visualViewport;
	let top = view.offsetTop;
	if (getComputedStyle(document.querySelector('.rail')).position === 'sticky') top = Math.max(top, rail.bottom);
	let bottom = view.offsetTop + view.height;
	const bar = document.querySelector('.glance');
	if (bar && !bar.contains(element)) {
		const at = bar.getBoundingClientRect();
		if (getComputedStyle(bar).position === 'sticky' && at.bottom >= bottom - 1 && at.top > box.top) bottom = at.top;
	}
	if (element.closest('.rail, .top')) top = view.offsetTop;
	return { above: top - box.top, below: box.bottom - bottom, left: view.offsetLeft - box.left, right: box.right - view.offsetLeft - view.width };
}

const inside = (gap) => Object.values(gap).every((n) => n <= 0.5);

// Hand does one task on a page and counts touches, keys and swipes.
export class Hand {
	constructor(page) {
		this.page = page;
		this.touches = this.keys = this.swipes = 0;
	}

	// sees asserts that an element is wholly in view, after a swipe if it is not.
	async sees(locator, what) {
		await locator.waitFor({ state: 'visible' });
		const gap = await locator.evaluate(covered);
		if (inside(gap)) return;
		assert.ok(gap.left <= 0.5 && gap.right <= 0.5, `${what} is cut off at a side`);
		const height = await this.page.evaluate(() => visualViewport.height);
		const most = swipe * height;
		const way = gap.below > 0 ? Math.min(most, gap.below + 8) : -Math.min(most, gap.above + 8);
		await this.page.evaluate((way) => scrollBy({ top: way, behavior: 'instant' }), way);
		this.swipes++;
		this.reason = `${what}: ${JSON.stringify(gap)}`;
		assert.ok(inside(await locator.evaluate(covered)), `${what} is not in view after a swipe: ${JSON.stringify(gap)}`);
	}

	async touch(locator, what = String(locator)) {
		await this.sees(locator, what);
		await locator.tap();
		this.touches++;
	}

	// type types a text into the field that has the focus; next is the keyboard's key that
	// leads to the next field.
	async type(text) {
		await this.page.keyboard.type(text);
		this.keys += text.length;
	}

	async next() {
		await this.page.keyboard.press('Enter');
		this.keys++;
	}

	count() {
		return { touches: this.touches, keys: this.keys, swipes: this.swipes, reason: this.reason };
	}
}
