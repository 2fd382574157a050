import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import { disagreementsOf } from '#core/needs/disagreements.ts';
import { seatLinesOf, type SeatLine } from '#core/needs/seat-lines.ts';
import { questionOf } from '#core/plan.ts';
import { elevationShapes } from '#ui/drawing/elevation-shapes.ts';
import { ReachField } from '#ui/drawing/reach-field.ts';
import { screenView } from '#ui/drawing/screen-view.ts';
import Disagreements from '#ui/panels/disagreements.svelte';
import SeatHeight from '#ui/panels/seat-height.svelte';
import { openedCase, someMarks } from './a-plan.ts';

const INCHES = { unit: 'in' } as const;

/** M.W., who comes from a chair 19 in high and was measured under the knee, with a mark for each thing wanted. */
function planned() {
	const question = questionOf(openedCase().case);
	const marks = someMarks(question);
	const seat = marks.find(({ accessory }) => accessory.kind === 'seat');
	const heights = seatLinesOf({ ...question, marks });
	if (!seat || !heights) throw new RangeError('M.W. has a seat');
	return { question, marks, seat, heights };
}

const spaced = (text: string | null): string => (text ?? '').replaceAll('\u00a0', ' ');

describe('[ui R28] the seat in hand says who pays for its height', () => {
	test('its height, then each line with its sentence, what comes first on top', () => {
		const { heights } = planned();
		const { container } = render(SeatHeight, { heights, tape: INCHES });
		expect(screen.getByRole('region', { name: 'How high the seat is' })).toBeDefined();
		const [first, ...others] = [...container.querySelectorAll('dt')].map(({ textContent }) => textContent.trim());
		expect(first).toBe('level with the chair, comes first here');
		expect(others).toEqual(['feet flat', 'easy rising']);
		const says = [...container.querySelectorAll('dd')].map(({ textContent }) => spaced(textContent));
		expect(says).toHaveLength(3);
		expect(says.every((one) => /: (the (arms|feet|knees) pay|nobody pays)/.test(one))).toBe(true);
		expect(says.join()).not.toContain(' mm');
	});

	test('what is not measured says how it is known, and what is missing is asked', () => {
		const { heights } = planned();
		const lines = heights.lines.map((one): SeatLine => ({ ...one, how: 'estimated' }));
		const asks = ['How high is the seat of the wheeled chair?'];
		const { container } = render(SeatHeight, { heights: { ...heights, lines, asks }, tape: INCHES });
		expect(container.querySelectorAll('dt')[1]?.textContent.trim()).toBe('feet flat, estimated');
		expect(screen.getByText('How high is the seat of the wheeled chair?')).toBeDefined();
	});
});

describe('[ui R28] the lines lie on the wall of the seat while it is touched', () => {
	function shapesOn(touched: string, how?: 'estimated', width = 620) {
		const { question, marks, seat, heights } = planned();
		const { scene } = question;
		const { wall } = seat.place;
		const view = screenView({ room: scene.room, wall, marks: [seat], width, height: (700 * width) / 620 });
		const lettered = marks.map((mark: Mark) => ({ mark, letter: 'A', answer: 'inside' as const, wishes: 0 }));
		const lines = heights.lines.map((one): SeatLine => (how ? { ...one, how } : one));
		const asked = { scene, wall, lettered, touched, from: [], view, unit: 'in' as const, field: new ReachField() };
		return { view, lines, shapes: elevationShapes({ ...asked, heights: lines }) };
	}

	test.each([620, 390, 340])(
		'%s px wide: each at its height with its name, dashed; sketched where estimated',
		(width) => {
			const { view, lines, shapes } = shapesOn('seat', undefined, width);
			expect(lines).toHaveLength(3);
			for (const { line, at, name } of lines) {
				const drawn = shapes.find(({ id }) => id === `seat-line/${line}`);
				expect(drawn?.attrs['class']).toBe('hidden');
				const [, y] = /^M[^ ]+ ([\d.]+)L/.exec(String(drawn?.attrs['d'])) ?? [];
				expect(Number(y)).toBeCloseTo(view.y(at.from), 1);
				const word = shapes.find(({ id }) => id === `seat-line/${line}/words`);
				expect(word?.runs?.map(({ text }) => text).join('')).toBe(name);
				const pointer = shapes.find(({ id }) => id === `seat-line/${line}/pointer`);
				const [, from, to] = /^M[^ ]+ ([\d.]+)V([\d.]+)h/.exec(String(pointer?.attrs['d'])) ?? [];
				expect(Number(from)).toBeCloseTo(view.y(at.from), 1);
				expect(Number(to)).toBeCloseTo(Number(word?.attrs['y']) - 5, 1);
			}
			const sketched = shapesOn('seat', 'estimated').shapes.filter(({ id }) => /^seat-line\/[^/]+$/.test(id));
			expect(sketched.map(({ attrs }) => attrs['class'])).toEqual(['sketch2', 'sketch2', 'sketch2']);
		}
	);

	test('not while something else is touched', () => {
		expect(shapesOn('control').shapes.filter(({ id }) => id.startsWith('seat-line/'))).toEqual([]);
	});
});

describe('[ui R28] where documents and function disagree is told in a fold', () => {
	test('closed at first, opened by hand, in the unit of the tape', async () => {
		const { question, marks } = planned();
		const found = disagreementsOf({ ...question, marks }).filter(({ about }) => about[0] === 'bar-back');
		expect(found.length).toBeGreaterThan(0);
		render(Disagreements, { disagreements: found, tape: INCHES });
		const fold = screen.getByText('Where documents and function disagree');
		expect(fold.closest('details')?.open).toBe(false);
		await userEvent.click(fold);
		expect(fold.closest('details')?.open).toBe(true);
		const says = spaced(fold.closest('details')?.textContent ?? '');
		expect(says).toContain('a bar to pull and steady on, not one to push up from');
		expect(says).toContain('Pushing up wants a surface 7 7/8 to 11 in above the seat');
	});

	test('nothing is shown where nothing disagrees', () => {
		render(Disagreements, { disagreements: [], tape: INCHES });
		expect(screen.queryByText('Where documents and function disagree')).toBeNull();
	});
});
