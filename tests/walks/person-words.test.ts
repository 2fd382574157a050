import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { barriers, goTo, openCase } from './at.ts';
import { visit, type Visit } from './visit.ts';

let visitor: Visit;

beforeEach(async () => {
	visitor = await visit(undefined, { viewport: { width: 1024, height: 768 }, hasTouch: true });
	await openCase(visitor.page, 'R.T.');
	await goTo(visitor.page, 'Person');
});

afterEach(async () => {
	await visitor.close();
});

const tab = (page: Page, name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click();

async function boxOf(one: Locator) {
	const box = await one.boundingBox();
	if (!box) throw new RangeError('it is not on the screen');
	return box;
}

test(
	'[ui R34] each label stands above its own field, and a long answer is seen whole',
	{ timeout: 60_000 },
	async () => {
		const { page } = visitor;
		await tab(page, 'What to mind');
		for (const label of ['Initials, never the name', 'What she wants from it, in her own words']) {
			const [words, field] = [await boxOf(page.getByText(label, { exact: true })), await boxOf(page.getByLabel(label))];
			expect(Math.abs(words.x - field.x), label).toBeLessThan(2);
			expect(words.y + words.height, label).toBeLessThanOrEqual(field.y + 1);
		}
		const wants = page.getByLabel('What she wants from it, in her own words');
		await wants.fill(
			'To wash my hair with my own hand, standing as long as it goes, and to sit when it does not. '.repeat(4)
		);
		expect(await wants.evaluate((one) => one.scrollHeight - one.clientHeight)).toBeLessThanOrEqual(1);
		expect(await barriers(page)).toEqual([]);
		await page.getByRole('button', { name: /^Skin at risk/ }).click();
		const entry = await boxOf(page.getByRole('region', { name: 'Skin at risk where she sits' }));
		const field = await boxOf(wants);
		expect(field.x + field.width).toBeLessThanOrEqual(entry.x);
	}
);

test('[ui R32] what takes somebody away is not covered by what is entered', { timeout: 60_000 }, async () => {
	const { page } = visitor;
	await tab(page, 'Who else');
	await tab(page, 'Somebody helps');
	await page.getByRole('button', { name: /^Helper: mass/ }).click();
	await page.getByRole('region', { name: 'Helper: mass' }).waitFor();
	expect(await barriers(page)).toEqual([]);
	await page.getByRole('button', { name: 'Take away' }).click({ timeout: 2000 });
	expect(await page.getByText('Nobody else so far').count()).toBe(1);
});
