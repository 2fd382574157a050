import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import type { WallId } from '#core/geometry/frame.ts';
import type { Scene } from '#core/measures/scene.ts';
import { questionOf } from '#core/plan.ts';
import { screenView } from '#ui/drawing/screen-view.ts';
import type { Shape } from '#ui/drawing/shape.ts';
import { sitterShapes } from '#ui/drawing/sitter-shapes.ts';
import { testedShapes } from '#ui/drawing/tested-shapes.ts';
import { nextLetter } from '#ui/fields/reach-cells.ts';
import type { CaseState } from '#ui/state/case-state.svelte.ts';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import Person from '#ui/views/person.svelte';
import { openedCase } from './a-plan.ts';

vi.mock('#ui/state/planner.ts', () => ({
	planner: { plan: () => undefined, stands: () => undefined, drop: () => undefined }
}));

/** What lays a page out is not here: drawings get no room. */
vi.stubGlobal(
	'ResizeObserver',
	class {
		observe(): void {}
		unobserve(): void {}
		disconnect(): void {}
	}
);

const SAT = { behind: 'left', x: 440, off: 30, seatHeight: 455, floor: 'shower', how: 'measured' };
const POINTS = ['people', 'client', 'arms', 'left', 'points'];
const at = (x: number, y: number, reach: 'just' | 'comfortable' = 'just') => ({
	...{ wall: 'back', x, y, reach, hand: 'fingertip', how: 'measured' }
});
const [A, B, C] = [at(760, -220), at(700, 250), at(600, -200, 'comfortable')];
const FAR = at(800, -700);

/** The case of M.W. with where she sat and points of her left hand. */
function tapedCase(points: Readonly<Record<string, ReturnType<typeof at>>>): CaseState {
	const opened = openedCase();
	expect(opened.act([{ path: ['people', 'client', 'reachTest'], to: SAT }])).toBeNull();
	for (const [id, to] of Object.entries(points)) expect(opened.act([{ path: [...POINTS, id], to }])).toBeNull();
	return opened;
}

async function open(opened: CaseState) {
	render(Person, { opened, plan: new PlanState(() => opened.case) });
	const user = userEvent.setup();
	await user.click(screen.getByRole('button', { name: 'Reach test' }));
	const type = async (label: string, text: string): Promise<void> => {
		const input = screen.getByRole('textbox', { name: label });
		await user.clear(input);
		await user.type(input, text);
	};
	const choose = (group: string, name: string | RegExp): Promise<void> =>
		user.click(within(screen.getByRole('group', { name: group })).getByRole('radio', { name }));
	const press = (name: string | RegExp): Promise<void> => user.click(screen.getByRole('button', { name }));
	const point = async (x: string, y: string, reach: RegExp): Promise<void> => {
		await press('Fingertip');
		await choose('Wall it is on', 'back wall');
		await type('Along the wall', x);
		await type('From the datum line', y);
		await choose('How far the hand went', reach);
	};
	return { user, type, choose, press, point };
}

const came = (): string =>
	within(screen.getByRole('region', { name: /^What came of it/ }))
		.getByRole('status')
		.textContent.replace(/\s+/g, ' ')
		.trim();
const alerts = (): string =>
	screen
		.getAllByRole('alert')
		.map(({ textContent }) => textContent.trim())
		.join('');

describe('[ui R26] a reach test on the screen', { timeout: 60_000 }, () => {
	test('where she sat comes first, then points; with the third it is said what moved, and undo brings it back', async () => {
		const opened = openedCase();
		const { type, choose, press, point } = await open(opened);
		expect(screen.getByText('How points are taped').closest('details')?.open).toBe(true);
		await press('Left hand');
		expect(came()).toBe('3 more points of this hand to tape.');
		expect(screen.queryByRole('button', { name: 'Fingertip' })).toBeNull();

		await press(/^Where the person sat/);
		await choose('Wall behind', 'left wall');
		await type('Middle of the back, from its left', '440 mm');
		await type('Back, or its rest, off the wall', '30 mm');
		await type('Top of the loaded seat, from its floor', '455 mm');
		expect(opened.at(['people', 'client', 'reachTest'])).toBeUndefined();
		await choose('Floor the seat stood on', 'floor of the shower');
		expect(opened.at(['people', 'client', 'reachTest'])).toEqual(SAT);

		await point('760 mm', '-220 mm', /^just/);
		expect(opened.at(POINTS)).toEqual({ a: A });
		expect(came()).toContain('2 more points of this hand to tape. 1 point is too few');
		await point('700 mm', '250 mm', /^just/);
		await point('600 mm', '-200 mm', /^comfortable/);
		expect(opened.at(POINTS)).toEqual({ a: A, b: B, c: C });
		expect(came()).not.toContain('more');
		expect(came()).toMatch(/Shoulder ahead of her back [\d /]+ in becomes [\d /]+ in, give or take/);
		expect(came()).toMatch(/As measured: arm to grip/);
		expect(came()).toMatch(/still (rests )?on the estimate/);

		await press('Take it away');
		expect(opened.at(POINTS)).toEqual({ a: A, b: B });
		expect(came()).toContain('1 more point of this hand');
		opened.undo();
		expect(opened.at([...POINTS, 'c'])).toEqual(C);
	});

	test('a point off its wall stays in the field with the reason, the recorded one stands', async () => {
		const opened = tapedCase({ a: A });
		const { type, press } = await open(opened);
		expect(screen.getByRole('button', { name: 'Left hand' }).getAttribute('aria-pressed')).toBe('true');
		await press(/^Point a, just reached back,/);
		await type('Along the wall', '1200 mm');
		expect(alerts()).toBe('It would lie beyond the end of its wall. Measure wall and distance again.');
		expect(screen.getByRole('textbox', { name: 'Along the wall' }).getAttribute('aria-invalid')).toBe('true');
		// So far it is 12 in.
		expect(opened.at([...POINTS, 'a', 'x'])).toBe(304.8);
		await type('Along the wall', '750 mm');
		expect(alerts()).toBe('');
		expect(opened.at([...POINTS, 'a', 'x'])).toBe(750);
	});

	test('comfortable farther than just reached the same way is refused in a sentence of the record, on the tape', async () => {
		const opened = tapedCase({ a: A });
		const { point } = await open(opened);
		await point('860 mm', '-220 mm', /^comfortable/);
		expect(opened.at(POINTS)).toEqual({ a: A });
		expect(alerts()).toMatch(
			/^Expected it no farther than "a", just reached the same way - saw it \d[\d /]* in farther\.$/
		);
	});

	test('where she sat cannot go while points are taped from there', async () => {
		const opened = tapedCase({ a: A });
		const { press } = await open(opened);
		await press(/^Where the person sat/);
		await press('Take it away');
		expect(alerts()).toContain('Points were taped from there.');
		expect(opened.at(['people', 'client', 'reachTest'])).toEqual(SAT);
		expect(opened.act([{ path: [...POINTS, 'a'] }])).toBeNull();
		// The hand is without points again, not with none.
		expect(opened.at(POINTS)).toBeUndefined();
		await press('Take it away');
		expect(opened.at(['people', 'client', 'reachTest'])).toBeUndefined();
	});

	test('only a rod stands off its wall, and how it is known is said', async () => {
		const opened = tapedCase({ a: A });
		const { user, press, type, choose } = await open(opened);
		await press('Thumb');
		expect(screen.queryByRole('textbox', { name: 'Middle of the rod off the wall' })).toBeNull();
		await press('Rod in the fist');
		await choose('Wall it is on', 'back wall');
		await type('Along the wall', '650 mm');
		await type('From the datum line', '-500 mm');
		await choose('How far the hand went', /^just/);
		expect(opened.at([...POINTS, 'b'])).toBeUndefined();
		await type('Middle of the rod off the wall', '40 mm');
		expect(opened.at([...POINTS, 'b'])).toMatchObject({ hand: 'grip', off: 40, how: 'measured' });
		await user.selectOptions(screen.getByRole('combobox', { name: /^Point b, .* how it is known$/ }), 'told');
		expect(opened.at([...POINTS, 'b', 'how'])).toBe('told');
	});

	test('a point of which nothing is said goes when one looks elsewhere; one that is begun waits', async () => {
		const { press, type } = await open(tapedCase({ a: A }));
		const isThere = (): boolean => screen.queryByRole('button', { name: /^Point b/ }) !== null;
		await press('Fingertip');
		expect(isThere()).toBe(true);
		await press(/^Point a/);
		expect(isThere()).toBe(false);
		await press('Fingertip');
		await type('Along the wall', '650 mm');
		await press('First numbers');
		await press('Reach test');
		expect(screen.getByRole('button', { name: /^Point b/ }).textContent).toContain('not taken yet');
	});

	test('a point that cannot belong is named', async () => {
		await open(tapedCase({ a: A, b: B, c: C, wet: FAR }));
		expect(came()).toMatch(/"wet" cannot belong and was left out: it lies [\d /]+ in farther/);
	});

	test('letters are the next free one', () => {
		expect([nextLetter([]), nextLetter(['a', 'c']), nextLetter(['low'])]).toEqual(['a', 'b', 'a']);
		expect(nextLetter(Array.from({ length: 26 }, (_, i) => String.fromCharCode(97 + i)))).toBe('aa');
	});
});

describe('[ui R27] a reach test on its drawings', () => {
	function drawnFor(scene: Scene, leftOut: readonly string[] = [], wall: WallId = 'back'): readonly Shape[] {
		const view = screenView({ room: scene.room, wall, marks: [], width: 390, height: 500 });
		return testedShapes({ scene, person: 'client', side: 'left', wall, leftOut, view });
	}
	const dOf = (shapes: readonly Shape[], id: string): unknown => shapes.find((one) => one.id === id)?.attrs['d'];
	const wordsOf = (shapes: readonly Shape[]): readonly string[] =>
		shapes.flatMap(({ id, runs = [] }) =>
			/^tested\/.*-words$/.test(id) ? [runs.map((run) => run.text).join('')] : []
		);

	test('before is broken, after is drawn and lies elsewhere; every point has its letter', () => {
		const { scene } = questionOf(tapedCase({ a: A, b: B, c: C, wet: FAR }).case);
		const shapes = drawnFor(scene, ['wet']);
		const kinds = Object.fromEntries(shapes.map(({ id, attrs }) => [id, attrs['class']]));
		expect(kinds).toMatchObject({ 'tested/before': 'hidden', 'tested/after': 'line', 'tested/easy': 'fine' });
		expect(dOf(shapes, 'tested/before')).not.toBe(dOf(shapes, 'tested/after'));
		expect([...wordsOf(shapes)].sort()).toEqual(['a', 'after', 'b', 'before', 'c', 'comfortable', 'wet']);
		// A shape each: dot, ring, cross.
		expect([kinds['tested/a'], kinds['tested/c'], kinds['tested/wet']]).toEqual(['ink', 'thing', 'line']);
		expect(shapes.find(({ id }) => id === 'tested/wet')?.tag).toBe('path');
	});

	test('without enough points there is only the estimate', () => {
		const { scene } = questionOf(tapedCase({ a: A }).case);
		expect(wordsOf(drawnFor(scene))).toEqual(['a', 'estimate']);
		expect(dOf(drawnFor(scene), 'tested/after')).toBeUndefined();
	});

	test('the sitter has her shoulder where the points tell it', () => {
		const shoulderOf = (opened: CaseState): number => {
			const { scene } = questionOf(opened.case);
			const [body, arm] = [scene.bodies['client'], scene.arms['client']?.left];
			if (!body || !arm) throw new RangeError('M.W. has a left arm');
			const shapes = sitterShapes({ body, arm, side: 'left', unit: 'mm', width: 400, height: 900 });
			const [hip, shoulder] = ['sitter/joint/2', 'sitter/joint/0'].map((id) =>
				Number(shapes.find((one) => one.id === id)?.attrs['cx'])
			);
			return (hip ?? 0) - (shoulder ?? 0);
		};
		expect(shoulderOf(tapedCase({ a: A, b: B, c: C }))).not.toBeCloseTo(shoulderOf(tapedCase({})), 0);
	});
});
