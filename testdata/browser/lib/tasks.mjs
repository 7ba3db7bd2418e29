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
			await hand.touch(page.locator('[data-part=next] a'), 'the next lesson');
			await hand.touch(page.locator('article > p > a.button'), 'the questions');
			for (let n = 0; n < 3; n++) {
				if (n > 0) await hand.touch(page.locator('.question:visible .after a').first(), 'the next question');
				await answer(hand, page, n === 0);
			}
		},
	},
];

// answer answers the question on the screen by touching a choice, a wrong one where wrong
// is true, and reads why.
async function answer(hand, page, wrong) {
	const question = page.locator('.question:visible:not([data-verdict])');
	await question.waitFor();
	const id = await question.getAttribute('id');
	const right = await question.getAttribute('data-right');
	const choice = question.locator('.options button').filter({ visible: true });
	const values = await choice.evaluateAll((list) => list.map((b) => b.value));
	await hand.touch(choice.nth(values.findIndex((value) => (value === right) !== wrong)), 'a choice');
	const why = page.locator(`[id="${id}"] .reply p`).nth(1);
	await hand.sees(why, 'the reason');
	const verdict = await page.locator(`[id="${id}"]`).getAttribute('data-verdict');
	if (verdict !== (wrong ? 'wrong' : 'right')) throw new Error(`the answer is marked ${verdict}`);
}
