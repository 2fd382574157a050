import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { barriers, goTo, openCase } from './at.ts';
import { visit, type Visit } from './visit.ts';

let visitor: Visit;

beforeEach(async () => {
	visitor = await visit(undefined, { viewport: { width: 390, height: 844 }, hasTouch: true });
});

afterEach(async () => {
	await visitor.close();
});

const field = (page: Page, name: string) => page.getByRole('textbox', { name });
const choice = (page: Page, group: string, name: RegExp) =>
	page.getByRole('group', { name: group }).getByRole('radio', { name });

/** Tapes a point of the back wall with a fingertip. */
async function tape(page: Page, x: string, y: string, reach: RegExp): Promise<void> {
	await page.getByRole('button', { name: 'Fingertip' }).click();
	await choice(page, 'Wall it is on', /^back/).check();
	await field(page, 'Along the wall').fill(x);
	await field(page, 'From the datum line').fill(y);
	await choice(page, 'How far the hand went', reach).check();
}

test(
	'[reach-test W1] where she sat and three points are entered on a phone: it is said and drawn what moved',
	{ timeout: 90_000 },
	async () => {
		const { page } = visitor;
		await openCase(page, 'M.W.');
		await goTo(page, 'Person');
		await page.getByRole('button', { name: 'Reach test' }).click();
		await page.getByText('Stop at pain').waitFor();
		await page.getByRole('img', { name: /^From the side/ }).waitFor();
		await page.getByRole('button', { name: 'Left hand' }).click();
		expect(await barriers(page), 'before anything is taped').toEqual([]);

		await page.getByRole('button', { name: /^Where the person sat/ }).click();
		await choice(page, 'Wall behind', /^left/).check();
		await field(page, 'Middle of the back, from its left').fill('17 3/8');
		await field(page, 'Back, or its rest, off the wall').fill('1 1/4');
		await field(page, 'Top of the loaded seat, from its floor').fill('18');
		await choice(page, 'Floor the seat stood on', /shower/).check();

		const came = page.getByRole('region', { name: 'What came of it, left hand' });
		await tape(page, '30', '-8 3/4', /^just/);
		await came.getByText('2 more points of this hand to tape.').waitFor();
		await tape(page, '27 1/2', '9 3/4', /^just/);
		await tape(page, '23 1/2', '-8', /^comfortable/);
		const shoulder = came.getByRole('listitem').filter({ hasText: /Shoulder ahead of her back[^]*give or take/ });
		await shoulder.waitFor();
		expect(await came.getByText(/more point/).count()).toBe(0);
		const wall = came.getByRole('img', {
			name: 'Back wall, seen from inside, with 3 points taped by the left hand and how far that hand goes, before the test and after'
		});
		await wall.scrollIntoViewIfNeeded();
		for (const says of ['before', 'after', 'a', 'b', 'c']) await wall.getByText(says, { exact: true }).waitFor();
		expect(await barriers(page), 'with three points').toEqual([]);
		const beyond = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
		expect(await beyond()).toBeLessThanOrEqual(0);

		// A point beyond the end of its wall stays in its field; what is recorded stands, through a reload too.
		await field(page, 'Along the wall').fill('60');
		await page.getByRole('alert').filter({ hasText: 'beyond the end of its wall' }).waitFor();
		await page.reload();
		await page.getByRole('button', { name: 'Reach test' }).click();
		await page.getByRole('button', { name: /^Point c, comfortable back, 23 1\/2 in/ }).waitFor();
		await shoulder.waitFor();
		expect(visitor.complaints).toEqual([]);
	}
);
