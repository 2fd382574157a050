import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import { readOffId } from '#core/case/read-off.ts';
import MarksTable from '#ui/panels/marks-table.svelte';
import RealPart from '#ui/panels/real-part.svelte';
import { Hands } from '#ui/state/hands.svelte.ts';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import { letteredMarks } from '#ui/state/places-view.ts';
import { heldAs, isReadOff } from '#ui/state/real-parts.ts';
import { openedCase } from './a-plan.ts';

vi.mock('#ui/state/planner.ts', () => ({
	planner: { plan: () => undefined, stands: () => undefined, drop: () => undefined }
}));

const PATH = ['parts', 'bar-back'];
const REAL = {
	name: 'bar from the shelf',
	centres: 610,
	diameter: 35,
	standOff: 60,
	flange: { across: 90, circle: 64, holes: 4, hole: 6.5 }
};
const FIELDS = [
	['Name written on it', 'bar from the shelf'],
	['Centre to centre', '610 mm'],
	['Thickness of the tube', '35 mm'],
	['Wall to the tube axis', '60 mm'],
	['Flange, across', '90 mm'],
	['Circle of its holes', '64 mm'],
	['Width of a hole', '6.5 mm']
] as const;

async function open() {
	const opened = openedCase();
	render(RealPart, { opened, accessory: 'bar-back' });
	const user = userEvent.setup();
	await user.click(screen.getByText('The real part'));
	const type = async (label: string, text: string): Promise<void> => {
		const input = screen.getByRole('textbox', { name: label });
		await user.clear(input);
		await user.type(input, text);
	};
	const typeAll = async (but: string, otherwise: string): Promise<void> => {
		for (const [label, text] of FIELDS) await type(label, label === but ? otherwise : text);
		await user.click(screen.getByRole('radio', { name: '4' }));
	};
	return { opened, user, type, typeAll };
}

const alerts = (): string =>
	screen
		.getAllByRole('alert')
		.map(({ textContent }) => textContent.trim())
		.join('');

describe('[ui R22] the real part of a bar', { timeout: 30_000 }, () => {
	test('is recorded whole with the last of what is needed, as one step, and comes out whole', async () => {
		const { opened, user, typeAll, type } = await open();
		expect(screen.getByText('not read off yet')).toBeTruthy();
		await type('Flange, across', '90 mm');
		expect(screen.getByText('not all read off yet')).toBeTruthy();
		await typeAll('', '');
		expect(opened.at(PATH)).toEqual(REAL);
		expect(screen.getAllByText('bar from the shelf').length).toBeGreaterThan(0);
		opened.undo();
		expect(opened.at(PATH)).toBeUndefined();
		opened.redo();
		await type('Marked load, if any', '1500');
		expect(opened.at(PATH)).toEqual({ ...REAL, load: 1500 });
		await type('Width of a hole', '7 mm');
		await user.tab();
		expect(opened.at(PATH)).toMatchObject({ flange: { ...REAL.flange, hole: 7 } });
		await user.click(screen.getByRole('button', { name: 'Take it away' }));
		expect(opened.at(PATH)).toBeUndefined();
		expect(screen.getByText('not read off yet')).toBeTruthy();
		opened.undo();
		expect(opened.at(PATH)).toMatchObject({ load: 1500 });
	});

	test('holes beyond the flange are told in words with units, and mending any of it is enough', async () => {
		const { opened, type, typeAll } = await open();
		await typeAll('Circle of its holes', '86 mm');
		expect(opened.at(PATH)).toBeUndefined();
		expect(alerts()).toMatch(
			/^Expected holes of 1\/4 in inside a flange 3 9\/16 in across - saw them on a circle of 3 3\/8 in\. Measure it again\.$/
		);
		await type('Flange, across', '120 mm');
		expect(alerts()).toBe('');
		expect(opened.at(PATH)).toMatchObject({ flange: { across: 120, circle: 86 } });
		await type('Flange, across', '80 mm');
		expect(alerts()).toContain('saw them on a circle');
		expect(opened.at(PATH)).toMatchObject({ flange: { across: 120 } });
	});

	test('is asked of a bar of one leg, and a place that is held for it keeps a sold part of its kind', () => {
		const real = variantOf(readOffId('horizontal-bar', REAL as never));
		expect([real, variantOf('bar-24in')].map((variant) => isReadOff({ variant }))).toEqual([true, true]);
		expect(['l-bar-24in-left', 'post-32', 'seat-16in']).not.toContain(heldAs({ variant: real }));
		expect(variantOf(heldAs({ variant: real }))).toMatchObject({ kind: 'horizontal-bar', length: 609.6 });
	});

	test('is moved by hand like any other, and its name stands in the table of marks', () => {
		const opened = openedCase();
		const place = { wall: 'back', variant: 'bar-24in', x: 300, y: -150, turn: 0, stage: 'pinned' };
		expect(opened.act([{ path: PATH, to: REAL }])).toBeNull();
		expect(opened.act([{ path: ['places', 'bar-back'], to: place }])).toBeNull();
		const plan = new PlanState(() => opened.case);
		const hands = new Hands(opened, plan);
		expect(plan.atRest.find(({ accessory }) => accessory.id === 'bar-back')?.variant.length).toBe(610);
		hands.step('bar-back', 'higher', 2);
		hands.keep();
		expect(opened.case.places['bar-back']).toMatchObject({ variant: 'bar-24in' });
		expect(opened.case.places['bar-back']?.y).toBeGreaterThan(-150);
		const lettered = letteredMarks(plan.question, plan.marks, plan.findings);
		render(MarksTable, { lettered, plan, tape: { unit: 'mm' }, chosen: undefined, ontouch: () => undefined });
		expect(screen.getByText('real: bar from the shelf')).toBeTruthy();
	});
});
