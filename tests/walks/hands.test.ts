import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { barriers, goTo, openCase, SEARCHED, searched } from './at.ts';
import { visit, type Visit } from './visit.ts';

const TABLET = { viewport: { width: 1180, height: 820 }, hasTouch: true };

const grip = (page: Page, id: string) => page.locator(`[data-grip="${id}"]`);
const nameOf = async (page: Page, id: string): Promise<string> =>
	(await grip(page, id).getAttribute('aria-label')) ?? '';
const touchedMark = (page: Page) => page.getByRole('region', { name: 'The mark that is touched' });
const undo = (page: Page) => page.getByRole('button', { name: 'Undo' }).click();

/** One finger down, along and up, as a touch screen reports it. */
async function dragByTouch(page: Page, id: string, [dx, dy]: readonly [number, number]): Promise<void> {
	const box = await grip(page, id).boundingBox();
	if (!box) throw new RangeError(`${id} is not on the drawing`);
	const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
	const finger = await page.context().newCDPSession(page);
	const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', share: number) =>
		finger.send('Input.dispatchTouchEvent', {
			type,
			touchPoints: type === 'touchEnd' ? [] : [{ x: x + dx * share, y: y + dy * share }]
		});
	await touch('touchStart', 0);
	for (let i = 1; i <= 10; i++) await touch('touchMove', i / 10);
	await touch('touchEnd', 1);
	await finger.detach();
}

describe('placing by hand', () => {
	let visitor: Visit;

	beforeEach(async () => {
		visitor = await visit(undefined, TABLET);
	});

	afterEach(async () => {
		await visitor.close();
	});

	/** At the places of M.W., found, with the control wall shown. */
	async function placesOf(page: Page): Promise<void> {
		await openCase(page, 'M.W.');
		await goTo(page, 'Places');
		await searched(page);
		await page.getByRole('button', { name: 'Right wall' }).click();
		await grip(page, 'control').waitFor();
	}

	test(
		'[hands W1] a finger drags the control: it is held there, nothing else moves, one undo brings it back',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await placesOf(page);
			const before = await nameOf(page, 'control');
			const bar = await nameOf(page, 'bar-control');
			expect(before).toContain(', free: ');
			await dragByTouch(page, 'control', [30, -60]);
			await expect.poll(() => nameOf(page, 'control')).toContain(', held here: ');
			expect(await nameOf(page, 'control')).not.toBe(before.replace('free', 'held here'));
			expect(await nameOf(page, 'bar-control')).toBe(bar);
			expect(await page.evaluate(() => scrollY)).toBe(0);
			await page.getByText('Judged as it stands').waitFor();
			// Nothing is printed of which a part was placed before the move.
			await goTo(page, 'Sheets');
			await page.getByText('what is free was not placed since').waitFor();
			expect(await page.getByRole('button', { name: 'Download this PDF' }).count()).toBe(0);
			await goTo(page, 'Places');
			await page.getByRole('button', { name: 'Right wall' }).click();
			await undo(page);
			await expect.poll(() => nameOf(page, 'control')).toBe(before);
			await searched(page);
			expect(visitor.complaints).toEqual([]);
		}
	);

	test(
		'[hands W2] the arrow keys nudge it, what changed is said, Escape takes it back',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await placesOf(page);
			const before = await nameOf(page, 'control');
			await grip(page, 'control').focus();
			await page.keyboard.press('Shift+ArrowUp');
			await page.keyboard.press('ArrowRight');
			const said = page.getByRole('status').filter({ hasText: /^Control: .* from the datum line/ });
			await expect.poll(() => said.count()).toBe(1);
			await page.getByRole('heading', { name: 'What the move changes' }).waitFor();
			expect(await nameOf(page, 'control')).not.toBe(before);
			await page.keyboard.press('Escape');
			await expect.poll(() => nameOf(page, 'control')).toBe(before);
			// A move that was kept after a rest is one step, and Escape still takes it back.
			await page.keyboard.press('ArrowDown');
			await page.keyboard.press('ArrowDown');
			await expect.poll(() => nameOf(page, 'control')).toContain(', held here: ');
			await page.keyboard.press('Escape');
			await expect.poll(() => nameOf(page, 'control')).toBe(before);
			expect(visitor.complaints).toEqual([]);
		}
	);

	test(
		'[hands W3] what is held stays when the rest is placed; a better place is offered, left, and taken',
		{ timeout: 3 * SEARCHED },
		async () => {
			const { page } = visitor;
			await placesOf(page);
			const before = await nameOf(page, 'control');
			for (let i = 0; i < 4; i++) await touchedMark(page).getByRole('button', { name: 'Higher by 1/4 in' }).click();
			await expect.poll(() => nameOf(page, 'control')).toContain(', held here: ');
			const moved = await nameOf(page, 'control');
			const offer = page.getByRole('region', { name: 'A better place exists' });
			await offer.waitFor();
			expect(await barriers(page), 'with an offer').toEqual([]);
			expect(await nameOf(page, 'control')).toBe(moved);
			await offer.getByRole('button', { name: 'Leave it' }).click();
			await expect.poll(() => offer.count()).toBe(0);

			await page.getByRole('button', { name: 'Place the rest' }).click();
			await searched(page);
			await page.getByText('1 of 6 stand where they are held.').waitFor();
			const place = (name: string): string => /: (.*), [^,]*$/.exec(name)?.[1] ?? name;
			expect(place(await nameOf(page, 'control'))).toBe(place(moved));
			expect(await offer.count()).toBe(0);

			await grip(page, 'control').focus();
			await page.keyboard.press('Shift+ArrowUp');
			await page.keyboard.press('Enter');
			const further = await nameOf(page, 'control');
			await offer.getByRole('button', { name: 'Move it there' }).click();
			await expect.poll(() => nameOf(page, 'control')).not.toBe(further);
			expect(await nameOf(page, 'control')).toContain(', held here: ');
			await touchedMark(page).getByRole('button', { name: 'Free again' }).click();
			await expect.poll(() => nameOf(page, 'control')).toContain(', free: ');
			// Freed, taken, nudged, moved.
			for (let i = 0; i < 4; i++) await undo(page);
			await expect.poll(() => nameOf(page, 'control')).toBe(before);
			expect(visitor.complaints).toEqual([]);
		}
	);

	test('[hands W4] all is held at one touch, and freed at one touch', { timeout: 2 * SEARCHED }, async () => {
		const { page } = visitor;
		await placesOf(page);
		await page.getByRole('button', { name: 'Hold all here' }).click();
		await page.getByText('Every place was given and is judged as it stands').waitFor();
		await page.getByRole('button', { name: 'Table' }).click();
		await expect.poll(() => page.getByRole('cell', { name: 'held here' }).count()).toBe(6);
		await page.getByRole('button', { name: 'Free all again' }).click();
		await expect.poll(() => page.getByRole('cell', { name: 'free' }).count()).toBe(6);
		expect(visitor.complaints).toEqual([]);
	});

	test(
		'[hands W5] a long search is ended by hand: the best plan stays, and nobody says it is proved',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await page.getByRole('link', { name: 'J.B.' }).waitFor();
			await openCase(page, 'J.B.');
			await goTo(page, 'Places');
			const stop = page.getByRole('button', { name: 'Keep these places' });
			await stop.waitFor();
			await page.getByText(/rows asked\./).waitFor();
			await stop.click();
			await page.getByText('Good places, the search was stopped before the proof').waitFor();
			expect(await page.getByRole('list', { name: 'Marks on this wall' }).getByRole('button').count()).toBeGreaterThan(
				0
			);
			await page.getByRole('button', { name: 'Look on' }).click();
			await stop.waitFor();
			expect(visitor.complaints).toEqual([]);
		}
	);

	test(
		'[hands W6] on a phone the finger drags too, and nothing runs out of the screen',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await page.setViewportSize({ width: 390, height: 844 });
			await placesOf(page);
			const before = await nameOf(page, 'entry-bar');
			await dragByTouch(page, 'entry-bar', [-4, 40]);
			await expect.poll(() => nameOf(page, 'entry-bar')).not.toBe(before);
			// 320 px is what 400 % leaves of a usual screen.
			for (const width of [320, 390]) {
				await page.setViewportSize({ width, height: 844 });
				const beyond = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
				await expect.poll(beyond).toBeLessThanOrEqual(0);
			}
			const targets = await page.getByRole('group', { name: 'Marks on the drawing' }).getByRole('button').all();
			for (const target of targets) {
				const box = await target.boundingBox();
				expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
			}
			expect(visitor.complaints).toEqual([]);
		}
	);
});
