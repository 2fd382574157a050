import type { Case, Enclosure } from '#core/case/record.ts';
import { demandOf, PRESETS } from '#core/structure/demand.ts';
import type { Edit } from '#core/log/change.ts';
import { stepName } from '#ui/state/room-words.ts';
import type { Quantity } from './quantity.ts';
import { referenceCells } from './reference-cells.ts';
import type { Cell, Choice, ChoiceField, Field, FieldPath, NumberField } from './spec.ts';
import { TYPE, wallCells } from './wall-cells.ts';
import { part, wholeCell } from './whole-cell.ts';

/** The step marks are set out in when a tape is chosen, mm: 5 mm or 1/4 in. */
export const STEP = { mm: 5, in: 6.35 } as const;

const YES_NO: readonly Choice[] = [
	{ value: true, label: 'yes' },
	{ value: false, label: 'no' }
];

const FORCES: readonly Choice[] = ([1100, 1112, 1300, 1500] as const).map((value) => ({
	value,
	label: PRESETS[value],
	short: `${String(value)} N`
}));

function number(label: string, path: FieldPath, quantity: Quantity = 'length'): NumberField {
	return { kind: 'number', label, path: ['enclosure', ...path], quantity };
}

function needed(label: string, name: string): NumberField {
	return { ...number(label, [name]), needed: true };
}

function plainChoice(label: string, path: FieldPath, choices: readonly Choice[]): Field {
	return { kind: 'choice', label, path, choices, plain: true, needed: true };
}

function cell(id: string, hint: string, ...fields: readonly [Field, ...Field[]]): Cell {
	return { id, label: fields[0].label, hint, fields };
}

function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The inside size, asked with the first numbers and again among the numbers of the room. */
export const SIZE: Cell = {
	id: 'size',
	label: 'Enclosure, wide × deep',
	hint: 'Finished face to finished face; deep from the back wall to the entry line.',
	fields: [needed('Enclosure, wide', 'width'), needed('Enclosure, deep', 'depth')]
};

/** What is stepped over, and what one stands on then, by what is called so. */
const STEP_WORDS = {
	threshold: { over: 'What has to be stepped or rolled over.', floor: 'Shower floor, raised' },
	'edge of the tray': { over: 'Bathroom floor to the top of the edge.', floor: 'Floor of the tray, raised' },
	'rim of the bath': { over: 'Bathroom floor to the top of the rim.', floor: 'Floor of the bath, raised' }
} as const;

/** The numbers of a room, by what it is. Paths begin at the case. */
export function roomCells(c: Case): readonly Cell[] {
	const e = c.enclosure;
	const signed = demandOf(c).statement !== 'not asked' || e.loadStatement !== undefined;
	return [
		TYPE,
		SIZE,
		...OTHER_SIZES,
		...wallCells(e),
		...entryCells(e),
		...floorCells(e),
		...HEIGHTS,
		DRAIN,
		...OUTFIT,
		...(signed ? [STATEMENT] : []),
		...TAPE,
		...referenceCells(c)
	];
}

/** Walls lean, and corners are not square. */
const OTHER_SIZES: readonly Cell[] = [
	{
		id: 'widths',
		label: 'Wide, near floor and near top',
		hint: 'The same width a hand above the floor and a hand below the top of the walls.',
		between: ', ',
		fields: [number('Wide, near the floor', ['widthLow']), number('Wide, near the top', ['widthHigh'])]
	},
	{
		id: 'depths',
		label: 'Deep, near floor and near top',
		hint: 'The same depth a hand above the floor and a hand below the top of the walls.',
		between: ', ',
		fields: [number('Deep, near the floor', ['depthLow']), number('Deep, near the top', ['depthHigh'])]
	},
	wholeCell(
		{
			id: 'diagonals',
			label: 'Corner to corner',
			hint: 'Across the floor both ways, looking in; they tell whether the corners are square.',
			between: ', '
		},
		{ path: ['enclosure', 'diagonals'], known: 'each' },
		[
			{ kind: 'number', label: 'From the back left', path: ['fromLeft'], quantity: 'length', needed: true },
			{ kind: 'number', label: 'From the back right', path: ['fromRight'], quantity: 'length', needed: true }
		]
	)
];

const CLOSINGS: readonly Choice[] = [
	{ value: 'open', label: 'nothing, it is open', short: 'nothing' },
	{ value: 'curtain', label: 'curtain' },
	{ value: 'door-out', label: 'door that opens outward', short: 'door, outward' },
	{ value: 'door-in', label: 'door that opens inward', short: 'door, inward' },
	{ value: 'slides', label: 'sliding door' },
	{ value: 'screen', label: 'fixed screen' }
];

/** What closes the entry; a hinge is asked of what has one. */
function closing({ closing: recorded }: Enclosure): Cell {
	const hinged = recorded?.kind === 'door-out' || recorded?.kind === 'door-in';
	const unhinged: readonly Edit[] = [{ path: ['enclosure', 'closing', 'hinge'] }];
	const kind: ChoiceField = {
		kind: 'choice',
		label: 'What is there',
		path: ['kind'],
		choices: CLOSINGS,
		plain: true,
		needed: true,
		how: 'observed',
		along: { open: unhinged, curtain: unhinged, slides: unhinged, screen: unhinged }
	};
	const hinge: ChoiceField = {
		kind: 'choice',
		label: 'Hinge, looking in',
		path: ['hinge'],
		choices: [
			{ value: 'left', label: 'at the left', short: 'hinge left' },
			{ value: 'right', label: 'at the right', short: 'hinge right' }
		],
		plain: true
	};
	return wholeCell(
		{ id: 'closing', label: 'What closes the entry', hint: 'What is there now, or is to stay.' },
		{ path: ['enclosure', 'closing'], known: 'kept' },
		hinged ? [kind, hinge] : [kind]
	);
}

function entryCells(e: Enclosure): readonly Cell[] {
	const name = stepName(e.type);
	const { over, floor } = STEP_WORDS[name];
	return [
		cell('entryWidth', 'Clear between what stands in it.', number('Entry, clear', ['entryWidth'])),
		closing(e),
		cell('threshold', over, number(capital(name), ['threshold'])),
		cell(
			'floorRise',
			'Where it is highest, above the bathroom floor; 0 on a level entry.',
			number(floor, ['floorRise'])
		)
	];
}

/** Floor that has to be free, in front of the entry and round the shower; over a bath nobody rolls in, and there is no seat to park beside. */
function floorCells({ type, turningOver, besideLength, besideWidth }: Enclosure): readonly Cell[] {
	const bath = type === 'over-bath';
	return [
		{
			id: 'clear',
			label: 'Clear space outside',
			hint: 'Free floor in front of the entry, along it and away from it.',
			fields: [
				number('Clear space, along the entry', ['clearLength']),
				number('Clear space, away from it', ['clearWidth'])
			]
		},
		cell('turning', 'The widest circle free of everything.', number('Circle to turn in', ['turning'])),
		...(bath && turningOver === undefined
			? []
			: [
					cell(
						'turning-over',
						'How far that circle lies over the shower.',
						number('Circle over the shower', ['turningOver'])
					)
				]),
		...(bath && !(besideLength ?? besideWidth) ? [] : [BESIDE]),
		BATHROOM
	];
}

/** A wheeled chair is parked here. */
const BESIDE: Cell = {
	id: 'beside',
	label: 'Free beside the seat',
	hint: 'Floor no door swings over: along the way one sits, and across it.',
	fields: [number('Beside the seat, along it', ['besideLength']), number('Beside the seat, across', ['besideWidth'])]
};

const BATHROOM: Cell = {
	id: 'bathroom',
	label: 'Bathroom, wall to wall',
	hint: 'The whole room: along the wall of the seat, and at right angles to it.',
	fields: [number('Bathroom, along the seat wall', ['roomAlong']), number('Bathroom, the other way', ['roomAhead'])]
};

const HEIGHTS: readonly Cell[] = [
	cell('height', 'Bathroom floor to the top of the walls.', needed('Walls, high', 'height')),
	cell('ceiling', 'Bathroom floor to the ceiling above the shower.', number('Ceiling, high', ['ceiling'])),
	cell('ceilingHolds', 'May a post be clamped against it? Not a hung ceiling.', {
		kind: 'choice',
		label: "Ceiling takes a post's pressure",
		path: ['enclosure', 'ceilingHolds'],
		choices: YES_NO,
		how: 'told'
	}),
	cell('datum', 'The level line above the bathroom floor at the entry.', number('Datum line above floor', ['datum'])),
	cell(
		'floorToCome',
		'What is still laid on the floor that was measured from: it lifts every height.',
		number('Floor still to come, thick', ['floorToCome'])
	),
	{
		id: 'fall',
		label: 'Floor falls',
		hint: 'Rise over run, and the side the water runs to.',
		fields: [
			number('Floor falls', ['fall'], 'fall'),
			{
				kind: 'choice',
				label: 'It falls to the',
				path: ['enclosure', 'fallsTo'],
				plain: true,
				choices: [
					{ value: 'back', label: 'back wall' },
					{ value: 'entry', label: 'entry' },
					{ value: 'seat', label: 'seat wall' },
					{ value: 'control', label: 'control wall' }
				]
			}
		]
	}
];

/** The drain in the floor. */
const DRAIN: Cell = wholeCell(
	{
		id: 'drain',
		label: 'Drain, middle of it',
		hint: 'From the back left corner, looking in: along the back wall, then out from it.',
		faced: 2,
		between: ', '
	},
	{ path: ['enclosure', 'drain'], known: 'kept' },
	[
		part('Middle from the left', 'x'),
		part('Middle out from the back', 'y'),
		part('Width left to right', 'wide'),
		part('Depth back to front', 'deep')
	]
);

const OUTFIT: readonly Cell[] = [
	cell('newBuilt', 'Built or being built as new, so that walls can still be made ready.', {
		kind: 'choice',
		label: 'Newly built',
		path: ['enclosure', 'newBuilt'],
		choices: YES_NO,
		how: 'told'
	}),
	cell('tenure', 'Whose the walls are: somebody else is asked before they are drilled.', {
		kind: 'choice',
		label: 'The walls are',
		path: ['enclosure', 'tenure'],
		choices: [
			{ value: 'own', label: 'her own' },
			{ value: 'rented', label: 'rented' },
			{ value: 'shared', label: 'owned by several', short: 'shared' }
		],
		how: 'told'
	}),
	cell('permission', 'Whether who owns them agreed in writing to holes and backing.', {
		kind: 'choice',
		label: 'Drilling is agreed in writing',
		path: ['enclosure', 'permission'],
		choices: YES_NO,
		how: 'declared'
	}),
	cell('backing', 'May the wall be opened to put wood behind the finish?', {
		kind: 'choice',
		label: 'Backing may be added',
		path: ['enclosure', 'backingMayBeAdded'],
		choices: YES_NO,
		how: 'told'
	}),
	cell(
		'controls',
		'What is turned to have water, set how warm it is and choose where it comes out.',
		plainChoice(
			'Controls',
			['enclosure', 'controls'],
			[
				{ value: 'one', label: 'one lever for all', short: 'one lever' },
				{ value: 'apart', label: 'each by itself' }
			]
		)
	),
	cell(
		'secondOutlet',
		'Beside the hand shower, chosen by a diverter.',
		plainChoice('Second outlet', ['enclosure', 'secondOutlet'], YES_NO)
	),
	cell('hose', 'From the outlet to the handset.', number('Hose', ['hose'])),
	cell('water', 'Mixed, at the handset, turned to the hottest.', number('Water, hottest', ['water'], 'warmth')),
	cell('damp', 'Seen or smelt behind the finish.', {
		kind: 'choice',
		label: 'Damp behind the wall',
		path: ['enclosure', 'dampBehind'],
		choices: YES_NO,
		how: 'observed'
	}),
	cell(
		'demand',
		'Of every bar, seat and fixing; the full weight of the heaviest user, once recorded, when that is more.',
		plainChoice('Force to be carried', ['enclosure', 'demand'], FORCES)
	)
];

/** Above what parts are commonly marked for, somebody competent signs for the whole. */
const STATEMENT: Cell = wholeCell(
	{
		id: 'loadStatement',
		label: 'Signed for this force',
		hint: 'Who signed that bars, seat, fixings and wall carry how much, and in which paper.',
		faced: 1
	},
	{ path: ['enclosure', 'loadStatement'], known: 'declared' },
	[
		part('Force that is signed for', 'load', 'force'),
		{ kind: 'words', label: 'Signed by', path: ['by'], plain: true, needed: true, most: 80 },
		{ kind: 'words', label: 'Name or number of the paper', path: ['document'], plain: true, needed: true, most: 200 }
	]
);

const TAPE: readonly Cell[] = [
	{
		id: 'unit',
		label: 'Tape of the house',
		hint: 'What the installer measures with; printed on the sheets.',
		fields: [
			{
				kind: 'choice',
				label: 'Tape of the house',
				path: ['tape', 'unit'],
				plain: true,
				needed: true,
				choices: [
					{ value: 'mm', label: 'millimetres' },
					{ value: 'in', label: 'inches' }
				],
				// A step of the other tape would be on no rule the installer has.
				along: {
					mm: [{ path: ['tape', 'step'], to: STEP.mm }],
					in: [{ path: ['tape', 'step'], to: STEP.in }]
				}
			}
		]
	},
	cell('step', 'The step marks are set out in.', {
		...number('Marking step', []),
		path: ['tape', 'step'],
		plain: true,
		needed: true
	})
];
