import { part, wholeCell } from './whole-cell.ts';
import type { Cell } from './spec.ts';

/** What is read off the real bar of an accessory. The path begins at the case. */
export const realPart = (accessory: string): Cell =>
	wholeCell(
		{
			id: `part/${accessory}`,
			label: 'The real part',
			hint: 'With the bar in hand: read what is written on it, lay a rule on it for the rest.'
		},
		{ path: ['parts', accessory], known: 'measured' },
		[
			{ kind: 'words', label: 'Name written on it', path: ['name'], most: 80, plain: true, needed: true },
			part('Centre to centre', 'centres'),
			part('Thickness of the tube', 'diameter'),
			part('Wall to the tube axis', 'standOff'),
			part('Flange, across', ['flange', 'across']),
			{
				kind: 'choice',
				label: 'Holes in each flange',
				path: ['flange', 'holes'],
				choices: [2, 3, 4].map((value) => ({ value, label: String(value) })),
				plain: true,
				needed: true
			},
			part('Circle of its holes', ['flange', 'circle']),
			part('Width of a hole', ['flange', 'hole']),
			{ kind: 'number', label: 'Marked load, if any', path: ['load'], quantity: 'force', plain: true }
		]
	);
