import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { barriers, goTo, light, LIGHTS, openCase, SEARCHED, searched } from './at.ts';
import { visit, type Visit } from './visit.ts';

describe('the family, at the kitchen table', () => {
	let visitor: Visit;

	beforeEach(async () => {
		visitor = await visit(undefined, { viewport: { width: 1024, height: 768 } });
	});

	afterEach(async () => {
		await visitor.close();
	});

	test(
		'[family W1] with the keyboard alone they come to the table and read it',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await page.getByRole('link', { name: 'M.W.' }).focus();
			await page.keyboard.press('Enter');
			const step = page.getByRole('navigation', { name: 'Path of the case' }).getByRole('link', { name: 'Places' });
			await step.focus();
			await page.keyboard.press('Enter');
			await searched(page);
			await page.getByRole('button', { name: 'Table' }).focus();
			await page.keyboard.press('Enter');
			const seat = page.getByRole('row').filter({ hasText: 'Seat' }).first();
			expect(await seat.textContent()).toContain('left');
			expect(await seat.textContent()).toMatch(/inside|outside|borderline|not known/);
			expect(visitor.complaints).toEqual([]);
		}
	);

	test(
		'[family W2] no text is smaller than 16 px, and at twice the size nothing runs out of the screen',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await openCase(page, 'M.W.');
			await goTo(page, 'Places');
			await searched(page);
			await page.getByRole('button', { name: 'Table' }).click();
			const smallest = await page.evaluate(() => {
				const all = [...document.querySelectorAll('main *')].filter((e) =>
					[...e.childNodes].some((n) => n.nodeType === 3)
				);
				return Math.min(...all.map((e) => parseFloat(getComputedStyle(e).fontSize)));
			});
			expect(smallest).toBeGreaterThanOrEqual(16);
			// Twice the size on the same screen is half the room.
			await page.setViewportSize({ width: 512, height: 384 });
			const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
			expect(wide).toBeLessThanOrEqual(0);
		}
	);

	test.each(LIGHTS)(
		'[family W3] no barrier on any screen in the light %s',
		{ timeout: 2 * SEARCHED },
		async (wanted) => {
			const { page } = visitor;
			await page.getByRole('link', { name: 'M.W.' }).waitFor();
			await light(page, wanted);
			expect(await barriers(page), 'caseload').toEqual([]);
			await openCase(page, 'M.W.');
			await goTo(page, 'Person');
			await page.getByRole('button', { name: /Right arm to the grip/ }).click();
			expect(await barriers(page), 'person').toEqual([]);
			await page.getByRole('button', { name: 'What else moves it' }).click();
			await page.getByRole('button', { name: /Leans forward/ }).click();
			expect(await barriers(page), 'what else moves it').toEqual([]);
			await goTo(page, 'Enclosure');
			expect(await barriers(page), 'enclosure').toEqual([]);
			await page.getByRole('button', { name: 'Behind the right wall' }).click();
			await page.getByRole('button', { name: 'Add keep-out' }).click();
			expect(await barriers(page), 'behind a wall').toEqual([]);
			await goTo(page, 'Places');
			await searched(page);
			expect(await barriers(page), 'places').toEqual([]);
			await page.getByRole('button', { name: 'Table' }).click();
			expect(await barriers(page), 'table').toEqual([]);
			await goTo(page, 'Sheets');
			await page
				.getByRole('img', { name: /as it prints/ })
				.first()
				.waitFor();
			expect(await barriers(page), 'sheets').toEqual([]);
		}
	);
});
