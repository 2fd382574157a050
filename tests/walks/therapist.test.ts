import { readdirSync } from 'node:fs';
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
		// Every example stands there before anything is counted.
		const rows = readdirSync('personas/clients').length;
		await page
			.getByRole('link')
			.nth(rows - 1)
			.waitFor();
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

	test('[therapist W5] makes a new case a shower over a bath with an open end, and says what is expected later', async () => {
		const { page } = visitor;
		await page.getByRole('button', { name: 'New case' }).click();
		await page.getByRole('heading', { level: 1, name: 'Person' }).waitFor({ state: 'attached' });
		await page.getByRole('button', { name: 'What to mind' }).click();
		await page.getByText('What is expected to be otherwise').click();
		const later = page.getByRole('group').filter({ has: page.getByText('What is expected to be otherwise') });
		await later.getByRole('button', { name: /^Washes/ }).click();
		await later.getByRole('radio', { name: 'in a shower chair' }).check();
		await later.getByRole('button', { name: 'As now', exact: true }).waitFor();

		await goTo(page, 'Enclosure');
		await page.getByRole('button', { name: /^Type of enclosure/ }).click();
		await page.getByRole('radio', { name: 'shower over a bath' }).check();
		await page.getByRole('button', { name: /^Rim of the bath/ }).waitFor();
		await page.getByRole('button', { name: /^Walls that stand/ }).click();
		// Who sits has the right wall behind: it cannot go.
		const right = page.getByRole('group', { name: 'Right wall' });
		await right.getByText('open').click();
		await page.getByRole('alert').filter({ hasText: 'Choose another wall' }).waitFor();
		expect(await right.getByRole('radio', { name: 'stands' }).isChecked()).toBe(true);
		await page.getByRole('group', { name: 'Left wall' }).getByRole('radio', { name: 'open' }).check();
		await page.getByRole('img', { name: /back and right walls stand; left open/ }).waitFor();
		expect(await page.getByRole('button', { name: 'Behind the left wall' }).count()).toBe(0);

		await page.reload();
		await page.getByRole('img', { name: /back and right walls stand; left open/ }).waitFor();
		await goTo(page, 'Person');
		await page.getByRole('button', { name: 'What to mind' }).click();
		await page.getByText('washes', { exact: true }).waitFor();
		expect(visitor.complaints).toEqual([]);
	});
});
