import type { Enclosure } from '#core/case/record.ts';
import { WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { Edit } from '#core/log/change.ts';
import type { Cell, Choice, ChoiceField, Field } from './spec.ts';

type Type = Enclosure['type'];

const TYPE_CHOICES: readonly (Choice & { readonly value: Type })[] = [
	{ value: 'transfer', label: 'transfer: three walls, a seat beside the entry', short: 'transfer' },
	{ value: 'roll-in', label: 'roll-in: entry along a whole long side', short: 'roll-in' },
	{
		value: 'alternate-roll-in',
		label: 'alternate roll-in: entry at one end, a wall beside it',
		short: 'alternate roll-in'
	},
	{ value: 'corner', label: 'corner of the room: open on the other sides', short: 'corner of the room' },
	{ value: 'step-in-tray', label: 'tray with an edge to step over', short: 'step-in tray' },
	{ value: 'over-bath', label: 'shower over a bath', short: 'over a bath' }
];

/** What a wall is called in a choice. */
export const WALL_WORDS: Readonly<Record<WallId, string>> = {
	back: 'back wall',
	left: 'left wall',
	right: 'right wall',
	front: 'wall beside the entry'
};

/** Sides of a transfer and of an alternate roll-in stand by what they are called. */
const WITH_OPEN_SIDES: readonly Type[] = ['roll-in', 'corner', 'step-in-tray', 'over-bath'];
const WITH_FRONT_WALL: readonly Type[] = ['alternate-roll-in', 'corner', 'step-in-tray', 'over-bath'];
/** Who sits in a transfer shower or on a bath has one end of it at the back. */
const SEAT_AT_AN_END: readonly Type[] = ['transfer', 'over-bath'];

/** Clear entry that is left beside a wall until the wall is measured, and the least wall. Units: mm. Source: ADA 2010, 608.2.3, 36 in. */
const ENTRY = 914.4;
const LEAST_WALL = 100;

/** The type of enclosure. */
export const TYPE: Cell = {
	id: 'type',
	label: 'Type of enclosure',
	hint: 'What comes nearest; the numbers are asked after it.',
	fields: [plainChoice('Type of enclosure', ['enclosure', 'type'], TYPE_CHOICES)]
};

/** Which walls there are and which of them is behind who sits. Shape: what makes no sense for the type is asked only when it is recorded. */
export function wallCells(e: Enclosure): readonly Cell[] {
	const open = !e.walls.back.stands || !e.walls.left.stands || !e.walls.right.stands;
	return [
		...(WITH_OPEN_SIDES.includes(e.type) || open ? [sides()] : []),
		...(WITH_FRONT_WALL.includes(e.type) || e.walls.front.stands ? [frontWall(e)] : []),
		seatWall(e)
	];
}

function sides(): Cell {
	const side = (id: 'back' | 'left' | 'right'): Field =>
		plainChoice(
			capital(WALL_WORDS[id]),
			['enclosure', 'walls', id, 'stands'],
			[
				{ value: true, label: 'stands', short: id },
				{ value: false, label: 'open', short: '' }
			]
		);
	return {
		id: 'sides',
		label: 'Walls that stand',
		hint: 'Looking in from the entry. On an open side only a post from floor to ceiling can stand.',
		fields: [side('back'), side('left'), side('right')]
	};
}

function frontWall({ walls, frontWall: wall, width }: Enclosure): Cell {
	const length = { value: Math.max(LEAST_WALL, width.value - ENTRY), how: 'assumed' as const };
	const stands: ChoiceField = {
		...plainChoice(
			'Wall beside the entry',
			['enclosure', 'walls', 'front', 'stands'],
			[
				{ value: true, label: 'there is one', short: '' },
				{ value: false, label: 'none' }
			]
		),
		along: {
			true: wall ? [] : [{ path: ['enclosure', 'frontWall'], to: { side: 'right', length } } satisfies Edit],
			false: [{ path: ['enclosure', 'frontWall'] }]
		}
	};
	return {
		id: 'frontWall',
		label: 'Wall beside the entry',
		hint: 'A piece of wall on the entry side, with the entry at its end. Its length is assumed until it is measured.',
		fields: walls.front.stands
			? [
					stands,
					plainChoice(
						'At which end, looking in',
						['enclosure', 'frontWall', 'side'],
						[
							{ value: 'left', label: 'left' },
							{ value: 'right', label: 'right' }
						]
					),
					{
						kind: 'number',
						label: 'Wall beside the entry, long',
						path: ['enclosure', 'frontWall', 'length'],
						quantity: 'length',
						needed: true
					}
				]
			: [stands]
	};
}

function seatWall(e: Enclosure): Cell {
	const may = WALL_IDS.filter((id) => {
		if (id === e.seatWall) return true;
		return e.walls[id].stands && (!SEAT_AT_AN_END.includes(e.type) || id === 'left' || id === 'right');
	});
	const bath = e.type === 'over-bath';
	return {
		id: 'seatWall',
		label: 'Wall behind who sits',
		hint: bath
			? 'Looking in over the rim: the end of the bath at the back of who sits on the board, or washes.'
			: 'Looking in from the entry. Without a seat, the wall behind who washes.',
		fields: [
			plainChoice(
				'Wall behind who sits',
				['enclosure', 'seatWall'],
				may.map((id) => ({ value: id, label: WALL_WORDS[id], ...(id === 'front' && { short: 'beside the entry' }) }))
			)
		]
	};
}

function plainChoice(label: string, path: readonly string[], choices: readonly Choice[]): ChoiceField {
	return { kind: 'choice', label, path, choices, plain: true, needed: true };
}

function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
