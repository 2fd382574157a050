import type { Enclosure } from '#core/case/record.ts';
import { PRESETS } from '#core/structure/demand.ts';
import { stepName } from '#ui/state/room-words.ts';
import type { Quantity } from './quantity.ts';
import type { Cell, Choice, Field, FieldPath, NumberField } from './spec.ts';
import { TYPE, wallCells } from './wall-cells.ts';

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
export const roomCells = (e: Enclosure): readonly Cell[] => [TYPE, SIZE, ...wallCells(e), ...entryCells(e), ...REST];

function entryCells({ type }: Enclosure): readonly Cell[] {
	const name = stepName(type);
	const { over, floor } = STEP_WORDS[name];
	return [
		cell('entryWidth', 'Clear between what stands in it.', number('Entry, clear', ['entryWidth'])),
		cell('threshold', over, number(capital(name), ['threshold'])),
		cell(
			'floorRise',
			'Where it is highest, above the bathroom floor; 0 on a level entry.',
			number(floor, ['floorRise'])
		)
	];
}

const REST: readonly Cell[] = [
	cell('height', 'Bathroom floor to the top of the walls.', needed('Walls, high', 'height')),
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
	},
	cell('backing', 'May the wall be opened to put wood behind the finish?', {
		kind: 'choice',
		label: 'Backing may be added',
		path: ['enclosure', 'backingMayBeAdded'],
		choices: YES_NO,
		how: 'told'
	}),
	{
		id: 'clear',
		label: 'Clear space outside',
		hint: 'Free floor in front of the entry, along it and away from it.',
		fields: [
			number('Clear space, along the entry', ['clearLength']),
			number('Clear space, away from it', ['clearWidth'])
		]
	},
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
	),
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
	}),
	cell(
		'lead',
		'What gives way first when not everything can be had.',
		plainChoice(
			'Led by',
			['lead'],
			[
				{ value: 'person-led', label: 'the person' },
				{ value: 'reference-led', label: 'the document' }
			]
		)
	)
];
