import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { goTo, openCase, SEARCHED, searched } from './at.ts';
import { visit, type Visit } from './visit.ts';

const TABLET = { viewport: { width: 1180, height: 820 }, hasTouch: true };

describe('the therapist, with a tablet', () => {
	let visitor: Visit;

	beforeEach(async () => {
		visitor = await visit(undefined, TABLET);
	});

	afterEach(async () => {
		await visitor.close();
	});

	test(
		'[therapist W1] opens M.W., types another right arm, sees what it moved, reloads, and undoes it',
		{ timeout: 3 * SEARCHED },
		async () => {
			const { page } = visitor;
			await openCase(page, 'M.W.');
			await goTo(page, 'Places');
			await searched(page);
			await goTo(page, 'Person');
			await page.getByRole('button', { name: /Right arm to the grip/ }).click();
			const arm = page.getByLabel('Right arm to the grip', { exact: true }).and(page.locator('input'));
			await expect.poll(() => arm.inputValue()).toBe('22 3/4 in');

			await arm.fill('22 1/4 in');
			expect(await arm.inputValue()).toBe('22 1/4 in');
			// Reach is judged at once, before any search.
			const moved = page.getByRole('row', { name: /Stretched reach, right hand/ });
			await expect.poll(async () => (await moved.textContent())?.replace(/\s/g, ' ')).toContain('22 3/4');
			await expect.poll(async () => (await moved.textContent())?.replace(/\s/g, ' ')).toContain('22 1/4');

			await page.reload();
			await page.getByRole('button', { name: /Right arm to the grip/ }).click();
			await expect.poll(() => arm.inputValue()).toBe('22 1/4 in');
			await page.getByRole('button', { name: 'Undo' }).click();
			await expect.poll(() => arm.inputValue()).toBe('22 3/4 in');
			await page.getByRole('button', { name: 'Redo' }).click();
			await expect.poll(() => arm.inputValue()).toBe('22 1/4 in');
			expect(visitor.complaints).toEqual([]);
		}
	);

	test('[therapist W2] nonsense stays in the field with its reason, and the last good number stands', async () => {
		const { page } = visitor;
		await openCase(page, 'M.W.');
		await goTo(page, 'Person');
		await page.getByRole('button', { name: /Right arm to the grip/ }).click();
		const arm = page.getByLabel('Right arm to the grip', { exact: true }).and(page.locator('input'));
		await arm.fill('twenty two');
		await expect.poll(() => page.getByRole('alert').filter({ hasText: 'not a length' }).count()).toBe(1);
		expect(await arm.inputValue()).toBe('twenty two');
		expect(await arm.getAttribute('aria-invalid')).toBe('true');
		await goTo(page, 'Enclosure');
		await goTo(page, 'Person');
		await page.getByRole('button', { name: /Right arm to the grip/ }).click();
		expect(await arm.inputValue()).toBe('twenty two');
		await page.reload();
		await page.getByRole('button', { name: /Right arm to the grip/ }).click();
		await expect.poll(() => arm.inputValue()).toBe('22 3/4 in');
		expect(visitor.complaints).toEqual([]);
	});

	test(
		'[therapist W3] reads each wall: marks, strips in words, findings with their clause',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await openCase(page, 'M.W.');
			await goTo(page, 'Places');
			await searched(page);
			for (const [wall, mark] of [
				['Back wall', 'Handset rest'],
				['Left wall', 'Seat'],
				['Right wall', /^B Control/]
			] as const) {
				await page.getByRole('button', { name: wall }).click();
				await page.getByRole('list', { name: 'Marks on this wall' }).getByRole('button', { name: mark }).click();
				await page
					.getByRole('region', { name: 'The mark that is touched' })
					.getByRole('heading', { name: mark })
					.waitFor();
			}
			const leaf = page.getByRole('region', { name: 'What is said about the mark' });
			expect(await leaf.textContent()).toMatch(/ADA Standards 2010, 6\d\d\.\d/);
			expect(await leaf.getByRole('img', { name: /ADA (from|up to|\d)/ }).count()).toBeGreaterThan(0);
			expect(visitor.complaints).toEqual([]);
		}
	);

	test('[therapist W4] a bad file is refused in plain words and changes nothing; a good one comes back', async () => {
		const { page } = visitor;
		const file = page.locator('input[type=file]');
		await page.getByRole('link', { name: 'M.W.' }).waitFor();
		const rows = await page.getByRole('listitem').count();
		for (const [content, says] of [
			['', 'the file is empty'],
			['{"schema":"graspline-case","version"', 'may be torn'],
			['{"schema":"graspline-case","version":9}', 'newer program'],
			['[1,2]', 'expected an object']
		] as const) {
			await file.setInputFiles({ name: 'case.json', mimeType: 'application/json', buffer: Buffer.from(content) });
			await page.getByText(says).waitFor();
			expect(await page.getByRole('link').count()).toBe(rows);
		}
		await page.getByRole('button', { name: 'New case' }).click();
		await page.getByRole('heading', { level: 1, name: 'Person' }).waitFor({ state: 'attached' });
		expect(await page.getByText('not asked').count()).toBeGreaterThanOrEqual(4);
		expect(visitor.complaints).toEqual([]);
	});
});
