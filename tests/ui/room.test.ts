import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { readCase } from '#core/case/read.ts';
import type { Enclosure } from '#core/case/record.ts';
import { roomOf } from '#core/enclosure/room.ts';
import ChoiceField from '#ui/fields/choice-field.svelte';
import { roomCells } from '#ui/fields/enclosure-cells.ts';
import { faceOf, joinedText } from '#ui/fields/face.ts';
import { firstCells } from '#ui/fields/person-cells.ts';
import type { Cell, ChoiceField as Choosing } from '#ui/fields/spec.ts';
import type { CaseState } from '#ui/state/case-state.svelte.ts';
import { openCounts } from '#ui/state/open-counts.ts';
import { roomWords } from '#ui/state/room-words.ts';
import { aCase } from './a-case.ts';
import { openedCase } from './a-plan.ts';

const labels = (opened: CaseState): readonly string[] => roomCells(opened.case).map(({ label }) => label);

function cellOf(opened: CaseState, id: string): Cell {
	const cell = roomCells(opened.case).find((one) => one.id === id);
	if (!cell) throw new RangeError(`no cell is called ${id}`);
	return cell;
}

/** Chooses a word of a cell as a hand does; gives what is said against it. */
async function choose(
	opened: CaseState,
	id: string,
	{ label, word }: { label: string; word: string | RegExp }
): Promise<string> {
	const field = cellOf(opened, id).fields.find((one) => one.label === label) as Choosing;
	const { unmount, container } = render(ChoiceField, { opened, field });
	await userEvent.setup().click(screen.getByRole('radio', { name: word }));
	const chosen = within(container)
		.getAllByRole<HTMLInputElement>('radio')
		.filter(({ checked }) => checked);
	// What is marked as chosen is what the record has.
	expect(chosen).toHaveLength(1);
	const says = within(container).getByRole('alert').textContent.trim();
	unmount();
	return says;
}

const ofType = (opened: CaseState, type: Enclosure['type']): string | null =>
	opened.act([{ path: ['enclosure', 'type'], to: type }]);

describe('what is asked of a room', () => {
	test('[ui R9] the force to be carried is chosen by its source, 1112 N until somebody does', async () => {
		const { opened } = aCase();
		expect(opened.case.enclosure.demand).toBe(1112);
		const chosen = { label: 'Force to be carried', word: /Building Code of Canada/ };
		expect(await choose(opened, 'demand', chosen)).toBe('');
		expect(opened.case.enclosure.demand).toBe(1300);
	});

	test.each([
		['transfer', 'Threshold', ['Walls that stand', 'Wall beside the entry']],
		['roll-in', 'Threshold', ['Wall beside the entry']],
		['alternate-roll-in', 'Threshold', ['Walls that stand']],
		['corner', 'Threshold', []],
		['step-in-tray', 'Edge of the tray', []],
		['over-bath', 'Rim of the bath', []]
	] as const)('[ui R9] of a %s the %s is asked, and not %j', (type, step, not) => {
		const { opened } = aCase();
		ofType(opened, type);
		expect(labels(opened)).toContain(step);
		const walls = ['Walls that stand', 'Wall beside the entry'];
		expect(walls.filter((label) => !labels(opened).includes(label))).toEqual(not);
	});

	test('[ui R9] what is recorded is shown, whatever the type', () => {
		const { opened } = aCase();
		ofType(opened, 'corner');
		opened.act([{ path: ['enclosure', 'walls', 'left', 'stands'], to: false }]);
		ofType(opened, 'transfer');
		expect(labels(opened)).toContain('Walls that stand');
		const faces = cellOf(opened, 'sides').fields.map((field) =>
			faceOf(field, opened.at(field.path), { tape: { unit: 'mm' }, asTyped: false })
		);
		expect(joinedText(faces)).toBe('back, right');
	});

	test('[ui R9] who walks in is not asked for a wheeled chair', () => {
		const opened = openedCase();
		const { person, id } = opened.client;
		const asked = (): readonly string[] => firstCells(opened.client.person).map((one) => one.id);
		expect(asked()).toContain('chair');
		opened.act([
			{ path: ['people', id, 'transfer'], to: { value: 'walks', how: 'told' } },
			{ path: ['people', id, 'chair'], to: {} }
		]);
		expect(person).not.toBe(opened.client.person);
		expect(asked()).not.toContain('chair');
	});

	test('[ui R9] only a wall that stands waits to be looked behind', () => {
		const { opened } = aCase();
		expect(openCounts(opened.case, { questions: [] }).enclosure).toBe(3);
	});
});

describe('a record never says two things', () => {
	test('[ui R10] a wall beside the entry comes with side and an assumed length, and goes with both', async () => {
		const { opened } = aCase();
		ofType(opened, 'alternate-roll-in');
		const label = 'Wall beside the entry';
		expect(await choose(opened, 'frontWall', { label, word: 'there is one' })).toBe('');
		expect(opened.at(['enclosure', 'frontWall', 'length', 'how'])).toBe('assumed');
		expect(readCase(JSON.stringify(opened.case)).kind).toBe('case');
		expect(cellOf(opened, 'frontWall').fields).toHaveLength(3);
		expect(await choose(opened, 'frontWall', { label, word: 'none' })).toBe('');
		expect(opened.at(['enclosure', 'frontWall'])).toBeUndefined();
		expect(readCase(JSON.stringify(opened.case)).kind).toBe('case');
	});

	test('[ui R10] the wall behind who sits cannot be taken away, and what to do first is said', async () => {
		const { opened } = aCase();
		ofType(opened, 'corner');
		const says = await choose(opened, 'sides', { label: 'Right wall', word: 'open' });
		expect(says).toContain('Choose another wall for that first');
		expect(opened.at(['enclosure', 'walls', 'right', 'stands'])).toBe(true);
		await choose(opened, 'seatWall', { label: 'Wall behind who sits', word: 'back wall' });
		expect(await choose(opened, 'sides', { label: 'Right wall', word: 'open' })).toBe('');
		expect(cellOf(opened, 'seatWall').fields[0]).toMatchObject({
			choices: [{ value: 'back' }, { value: 'left' }]
		});
	});

	test('[ui R10] a wall on which something is held cannot be taken away, and what it is is said', () => {
		const opened = openedCase();
		ofType(opened, 'corner');
		const place = { wall: 'right', variant: 'control-lever', x: 400, y: 0, turn: 0, stage: 'pinned' };
		expect(opened.act([{ path: ['places', 'control'], to: place }])).toBeNull();
		const why = opened.act([{ path: ['enclosure', 'walls', 'right', 'stands'], to: false }]);
		expect(why).toContain('Control is held');
		expect(opened.at(['enclosure', 'walls', 'right', 'stands'])).toBe(true);
	});

	test('[ui R10] an area behind a wall is not turned inside out', () => {
		const opened = openedCase();
		const area = { kind: 'pipe', x0: 100, x1: 200, y0: 0, y1: 100, how: 'measured' };
		const path = ['enclosure', 'walls', 'back', 'keepOuts', 'new'];
		expect(opened.act([{ path, to: area }])).toBeNull();
		expect(opened.act([{ path: [...path, 'x0'], to: 300 }])).toContain('Change the other end first');
		expect(opened.at([...path, 'x0'])).toBe(100);
	});
});

test('[ui R11] the room from above is said in words: walls, open sides, entry', () => {
	const { opened } = aCase();
	ofType(opened, 'over-bath');
	opened.act([
		{ path: ['enclosure', 'walls', 'left', 'stands'], to: false },
		{ path: ['enclosure', 'threshold'], to: { value: 560, how: 'measured' } }
	]);
	const words = roomWords(roomOf(opened.case.enclosure), 'over-bath');
	expect(words).toBe(
		'back and right walls stand; left open; entry over the rim of the bath; who sits has the right wall behind'
	);
});
