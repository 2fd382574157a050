import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { barriers, goTo, openCase } from './at.ts';
import { visit, type Visit } from './visit.ts';

let visitor: Visit;

beforeEach(async () => {
	visitor = await visit(undefined, { viewport: { width: 1180, height: 900 } });
});

afterEach(async () => {
	await visitor.close();
});

const things = (page: Page) => page.getByRole('group', { name: 'What is behind, on the drawing' });
const add = (page: Page, name: string) =>
	page.getByRole('group', { name: 'Add behind this wall' }).getByRole('button', { name });
const named = (page: Page, name: RegExp) => things(page).getByRole('button', { name });

test('[behind W1] a stud is put and moved by keys, then dragged; a keep-out is tapped onto the wall', async () => {
	const { page } = visitor;
	await openCase(page, 'M.W.');
	await goTo(page, 'Enclosure');
	await page.getByRole('button', { name: 'Behind the right wall' }).click();

	// By keys alone: armed, put in the middle, moved ten steps and one back, kept.
	await add(page, 'Stud').focus();
	await page.keyboard.press('Enter');
	await page.keyboard.press('Enter');
	await named(page, /^Stud 1, middle 18,/).waitFor();
	await page.keyboard.press('Shift+ArrowRight');
	await page.keyboard.press('ArrowLeft');
	await page.keyboard.press('Enter');
	const stud = named(page, /^Stud 1, middle 20 1\/4,/);
	await stud.waitFor();
	expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toContain('Stud 1');
	await page.getByRole('textbox', { name: 'stud 1, middle' }).waitFor();
	expect(await page.getByRole('textbox', { name: 'stud 1, middle' }).inputValue()).toBe('20 1/4 in');

	// By pointer: kept on letting go, in whole steps; one undo brings it back.
	const box = await stud.boundingBox();
	if (!box) throw new RangeError('the stud is not on the drawing');
	await page.mouse.move(box.x + box.width / 2, box.y + 60);
	await page.mouse.down();
	await page.mouse.move(box.x + box.width / 2 + 20, box.y + 70, { steps: 4 });
	await page.mouse.move(box.x + box.width / 2 + 48, box.y + 70, { steps: 4 });
	await page.mouse.up();
	await expect.poll(() => stud.count()).toBe(0);
	expect(await page.getByRole('textbox', { name: 'stud 1, middle' }).inputValue()).toMatch(/^2\d( [13]\/[24])? in$/);
	await page.getByRole('button', { name: 'Undo' }).click();
	await stud.waitFor();

	// By a tap; the buttons size it and take it away.
	await stud.click();
	await page.getByRole('button', { name: 'Let go' }).click();
	const before = await things(page)
		.getByRole('button', { name: /^Keep-out/ })
		.count();
	await add(page, 'Not to be drilled').click();
	const wall = await page.getByRole('button', { name: /^Not to be drilled: put it/ }).boundingBox();
	if (!wall) throw new RangeError('there is nowhere to tap');
	await page.mouse.click(wall.x + wall.width * 0.6, wall.y + wall.height * 0.7);
	await expect
		.poll(() =>
			things(page)
				.getByRole('button', { name: /^Keep-out/ })
				.count()
		)
		.toBe(before + 1);
	const chosen = page.getByRole('region', { name: 'What is chosen' });
	await chosen.getByRole('heading', { name: /^Keep-out \d, pipe/ }).waitFor();
	expect(await barriers(page), 'with a thing chosen').toEqual([]);
	await chosen.getByRole('button', { name: 'Size' }).click();
	await chosen.getByRole('button', { name: 'Wider by 1/4 in' }).click();
	await chosen.getByText('4 1/4', { exact: false }).first().waitFor();
	await chosen.getByRole('button', { name: 'Take it away' }).click();
	await expect
		.poll(() =>
			things(page)
				.getByRole('button', { name: /^Keep-out/ })
				.count()
		)
		.toBe(before);

	// Where a stud is already, a second one is refused in words.
	await page.getByRole('button', { name: 'Undo' }).click();
	await add(page, 'Stud').click();
	await page.keyboard.press('Enter');
	await add(page, 'Stud').click();
	await page.keyboard.press('Enter');
	await page.getByRole('alert').filter({ hasText: 'Another stud is there already' }).waitFor();
	expect(visitor.complaints).toEqual([]);
});

/** Types into the field that has the focus, then goes on to the next. */
async function typeOn(page: Page, ...texts: readonly string[]): Promise<void> {
	for (const text of texts) {
		await page.keyboard.type(text);
		await page.keyboard.press('Tab');
	}
}

test('[behind W2] a drain, a wall out of plumb and a bar on it are recorded by keys alone, and are there after a reload', async () => {
	const { page } = visitor;
	await openCase(page, 'M.W.');
	await goTo(page, 'Enclosure');
	const drain = page.getByRole('button', { name: /^Drain, middle of it/ });
	await drain.focus();
	await page.keyboard.press('Enter');
	await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
	await typeOn(page, '18', '17 1/2');
	// Half of it is no drain yet, and stays on the screen through another step.
	await goTo(page, 'Person');
	await goTo(page, 'Enclosure');
	expect(await drain.textContent()).toContain('not taken yet');
	await drain.focus();
	await page.keyboard.press('Enter');
	await page.getByText('recorded once this is said too: width left to right, depth back to front').waitFor();
	expect(await page.getByRole('textbox', { name: 'Middle out from the back' }).inputValue()).toBe('17 1/2 in');
	await page.keyboard.press('Tab');
	await page.keyboard.press('Tab');
	await typeOn(page, '4', '4');
	await expect.poll(() => drain.textContent()).toMatch(/18, 17 1\/2 in.*measured/);
	expect(await barriers(page), 'with a drain entered').toEqual([]);

	await page.getByRole('button', { name: 'Behind the right wall' }).focus();
	await page.keyboard.press('Enter');
	const plumb = page.getByRole('button', { name: /^Out of plumb/ });
	await plumb.focus();
	await page.keyboard.press('Enter');
	await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
	await typeOn(page, '-1/4', '48');
	await expect.poll(() => plumb.textContent()).toMatch(/-1\/4 in.*measured/);

	await page.getByRole('button', { name: 'Add existing thing' }).focus();
	await page.keyboard.press('Enter');
	const form = page.getByRole('form', { name: 'New existing thing' });
	await form.getByRole('textbox', { name: 'from' }).focus();
	await typeOn(page, '4', '28', '-12', '-10 1/2');
	// What becomes of it stays as it is; it will be grabbed.
	await page.keyboard.press('Tab');
	await page.keyboard.press('Space');
	await form.getByRole('button', { name: 'Add' }).focus();
	await page.keyboard.press('Enter');
	await named(page, /^Existing thing 1, grab bar, from 4 to 28, low \u221212, high \u221210 1\/2$/).waitFor();
	expect(await page.getByRole('checkbox', { name: 'existing thing 1, will be grabbed' }).isChecked()).toBe(true);
	expect(await barriers(page), 'with a bar on the wall').toEqual([]);

	await page.reload();
	await expect.poll(() => drain.textContent()).toMatch(/18, 17 1\/2 in/);
	await page.getByRole('button', { name: 'Behind the right wall' }).click();
	await expect.poll(() => plumb.textContent()).toMatch(/-1\/4 in/);
	await named(page, /^Existing thing 1, grab bar/).waitFor();
	expect(visitor.complaints).toEqual([]);
});

test('[behind W3] a drain is put, moved by keys and then dragged on the plan of the room, and the record follows', async () => {
	const { page } = visitor;
	await openCase(page, 'M.W.');
	await goTo(page, 'Enclosure');
	const plan = page.getByRole('group', { name: 'What is on the floor, on the plan' });
	const drain = plan.getByRole('button', { name: /^Drain/ });
	const cell = page.getByRole('button', { name: /^Drain, middle of it/ });

	// By keys alone: put in the middle of the floor and assumed, then four steps toward the entry and ten to the right.
	await page.getByRole('button', { name: 'Add the drain' }).focus();
	await page.keyboard.press('Enter');
	await plan.getByRole('button', { name: /^Drain, assumed, middle from the left 18, out from the back 18,/ }).waitFor();
	expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toMatch(/^Drain, assumed/);
	for (let i = 0; i < 4; i += 1) await page.keyboard.press('ArrowDown');
	await page.keyboard.press('Shift+ArrowRight');
	await page.keyboard.press('Enter');
	await expect.poll(() => cell.textContent()).toMatch(/20 1\/2, 19 in.*assumed/);
	expect(await barriers(page), 'with a drain chosen').toEqual([]);

	// By pointer: its figures go with it, and it is kept on letting go; one undo brings it back.
	await page.getByRole('button', { name: 'Let go' }).click();
	const box = await drain.boundingBox();
	if (!box) throw new RangeError('the drain is not on the plan');
	const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
	await page.mouse.move(x, y);
	await page.mouse.down();
	await page.mouse.move(x - 30, y - 20, { steps: 4 });
	await page.mouse.move(x - 60, y - 40, { steps: 4 });
	await plan.getByText(/^middle from the left .* in$/).waitFor();
	await page.mouse.up();
	await expect.poll(() => cell.textContent()).not.toContain('20 1/2, 19');
	const named = (await drain.getAttribute('aria-label')) ?? '';
	expect(Number(/from the left (\d+)/.exec(named)?.[1])).toBeLessThan(19);
	expect(Number(/out from the back (\d+)/.exec(named)?.[1])).toBeLessThan(18);
	await page.getByRole('button', { name: 'Undo' }).click();
	await expect.poll(() => cell.textContent()).toMatch(/20 1\/2, 19 in/);

	await page.reload();
	await plan
		.getByRole('button', { name: /^Drain, assumed, middle from the left 20 1\/2, out from the back 19,/ })
		.waitFor();
	expect(visitor.complaints).toEqual([]);
});
