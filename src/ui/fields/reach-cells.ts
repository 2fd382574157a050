import type { Side } from '#core/body/hands.ts';
import type { Enclosure } from '#core/case/record.ts';
import { WALL_IDS } from '#core/geometry/frame.ts';
import type { ReachKind } from '#core/reach/arm.ts';
import { WALL_WORDS } from './wall-cells.ts';
import { part, wholeCell } from './whole-cell.ts';
import type { Cell, Choice, ChoiceField, FieldPath } from './spec.ts';

/** What a point may be taped with, in the order it is offered. */
export const TAPED_WITH: readonly { readonly hand: ReachKind; readonly label: string; readonly hint: string }[] = [
	{ hand: 'fingertip', label: 'Fingertip', hint: 'Taped at the tip of the middle finger.' },
	{ hand: 'grip', label: 'Rod in the fist', hint: 'Taped at the middle of a short rod held in the fist.' },
	{ hand: 'push', label: 'Thumb', hint: 'Taped where the thumb pushes.' }
];

/** A point of a hand that is asked about: recorded, or begun with what it is taped with. */
export interface AskedPoint {
	readonly id: string;
	readonly hand: ReachKind;
	/** As recorded. */
	readonly reach?: 'comfortable' | 'just' | undefined;
}

const REACHES: readonly Choice[] = [
	{ value: 'comfortable', label: 'comfortable: without stretching', short: 'comfortable' },
	{ value: 'just', label: 'just reached: as far as it goes', short: 'just reached' }
];

/** Where the points of a hand stand in the record. */
export const pointsPath = (person: string, side: Side): FieldPath => ['people', person, 'arms', side, 'points'];

/** Where the person sat while points were taped. The path begins at the case. */
export const satCell = (person: string, e: Enclosure): Cell =>
	wholeCell(
		{
			id: 'sat',
			label: 'Where the person sat',
			hint: 'Back at the rest, facing straight away from a wall. Every point is taken from there.',
			faced: 2,
			between: ', '
		},
		{ path: ['people', person, 'reachTest'], known: 'kept' },
		[
			choice('Wall behind', ['behind'], wallsOf(e)),
			part('Middle of the back, from its left', 'x'),
			part('Back, or its rest, off the wall', 'off'),
			part('Top of the loaded seat, from its floor', 'seatHeight'),
			choice(
				'Floor the seat stood on',
				['floor'],
				[
					{ value: 'shower', label: 'floor of the shower' },
					{ value: 'bathroom', label: 'bathroom floor, or the rims of a bath' }
				]
			)
		]
	);

/** One taped point. The path begins at the case. Shape: only a rod stands off its wall. */
export function pointCell(points: FieldPath, { id, hand, reach }: AskedPoint, e: Enclosure): Cell {
	const said = REACHES.find(({ value }) => value === reach)?.short ?? 'new';
	const off = hand === 'grip' ? [part('Middle of the rod off the wall', 'off')] : [];
	return wholeCell(
		{
			id: [...points, id].join('/'),
			label: `Point ${id}, ${said}`,
			hint: `${TAPED_WITH.find((one) => one.hand === hand)?.hint ?? ''} Facing the wall, from its left end, and from the datum line; below that with a minus.`,
			faced: 3,
			between: ', '
		},
		{ path: [...points, id], known: 'kept', begins: { hand } },
		[
			choice(
				'Wall it is on',
				['wall'],
				wallsOf(e).map((one) => ({ ...one, short: one.value }))
			),
			part('Along the wall', 'x'),
			{ ...part('From the datum line', 'y'), signed: true },
			...off,
			choice('How far the hand went', ['reach'], REACHES)
		]
	);
}

/** An id no point of a hand has: the next small letter; after z they are doubled. */
export function nextLetter(taken: readonly string[]): string {
	const letters = Array.from({ length: taken.length + 1 }, (_, n) =>
		String.fromCharCode(97 + (n % 26)).repeat(1 + Math.floor(n / 26))
	);
	return letters.find((one) => !taken.includes(one)) ?? '';
}

const wallsOf = ({ walls }: Enclosure) =>
	WALL_IDS.filter((id) => walls[id].stands).map((id) => ({ value: id, label: WALL_WORDS[id] }));

function choice(label: string, path: FieldPath, choices: readonly Choice[]): ChoiceField {
	return { kind: 'choice', label, path, choices, plain: true, needed: true };
}
