import type { WallId } from '#core/geometry/frame.ts';
import type { Wall } from '#core/case/record.ts';
import type { Cell, Choice, NumberField } from './spec.ts';
import { part, wholeCell } from './whole-cell.ts';

const FACINGS: readonly Choice[] = [
	{ value: 'tile', label: 'tile' },
	{ value: 'panel', label: 'panel' },
	{ value: 'board', label: 'board' }
];

/** What is asked of one wall as a whole. Paths begin at the case. */
export function wallFacts(id: WallId, wall: Wall): readonly Cell[] {
	const at = ['enclosure', 'walls', id];
	return [
		facing(at, wall),
		...(wall.facing && (wall.facing.kind === 'tile' || wall.facing.tiles) ? [tiles(at)] : []),
		{
			id: 'membrane',
			label: 'Sealing membrane',
			hint: 'Behind the finish; every hole goes through it and must be sealed again.',
			fields: [
				{
					kind: 'choice',
					label: 'Sealing membrane',
					path: [...at, 'membrane'],
					choices: [
						{ value: true, label: 'yes' },
						{ value: false, label: 'no' }
					],
					how: 'told'
				}
			]
		},
		wholeCell(
			{
				id: 'plumb',
				label: 'Out of plumb',
				hint: 'Hold a level upright: how far its top comes into the room, with a minus when the wall goes away.',
				faced: 1
			},
			{ path: [...at, 'plumb'], known: 'kept' },
			[{ ...part('Into the room at the top', 'out'), signed: true }, part('Over a height of', 'over')]
		),
		wholeCell(
			{
				id: 'rhythm',
				label: 'Studs counted on, every',
				hint: 'From the middle of one that is found, both ways; each counts as assumed until it is found.',
				faced: 1
			},
			{ path: [...at, 'rhythm'], known: 'assumed' },
			[part('Middle to middle', 'every'), part('From the middle of', 'from'), part('Each wide', 'width')]
		)
	];
}

function facing(at: readonly string[], wall: Wall): Cell {
	// Only tiles have rows.
	const untiled = wall.facing?.tiles ? [{ path: [...at, 'facing', 'tiles'] }] : [];
	return wholeCell(
		{
			id: 'facing',
			label: 'Facing',
			hint: 'What one touches, and the air behind it: 0 where it lies on, or is packed solid behind each bracket.',
			faced: 2
		},
		{ path: [...at, 'facing'], known: 'chosen' },
		[
			{
				kind: 'choice',
				label: 'Kind of facing',
				path: ['kind'],
				choices: FACINGS,
				plain: true,
				needed: true,
				along: { panel: untiled, board: untiled }
			},
			part('Thickness with its glue', 'thickness'),
			{ kind: 'number', label: 'Air gap behind it', path: ['gap'], quantity: 'length', plain: true },
			{ kind: 'number', label: 'Light given back (0 to 100)', path: ['reflectance'], quantity: 'plain', plain: true }
		]
	);
}

function tiles(at: readonly string[]): Cell {
	const place = (label: string, key: string): NumberField => ({ ...part(label, key), signed: true });
	return wholeCell(
		{
			id: 'tiles',
			label: 'Tiles, wide × high',
			hint: 'One tile without its joint, the joint, and where one crossing of joints is on this wall.',
			faced: 2
		},
		{ path: [...at, 'facing', 'tiles'], known: 'kept' },
		[
			part('Width of one tile', 'across'),
			part('Height of one tile', 'up'),
			part('Width of a joint', 'joint'),
			place('Crossing from the left end', 'x'),
			place('Crossing from the datum line', 'y')
		]
	);
}
