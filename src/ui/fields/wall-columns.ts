import { EXISTING } from '#core/enclosure/keep-out.ts';
import type { Json } from '#core/log/json.ts';
import { CHOOSABLE, KNOWN_WORDS } from './known.ts';
import type { Quantity } from './quantity.ts';

/** One column of a table of things behind or on a wall: one part of a thing. */
export type Column = NumberColumn | WordsColumn | ChoiceColumn | YesNoColumn;

/** What every column says of itself: the key of its part, and its words. */
interface Headed {
	readonly key: string;
	readonly label: string;
}

/** A column of numbers. */
export interface NumberColumn extends Headed {
	readonly kind: 'number';
	readonly quantity: Quantity;
	readonly optional?: true;
}

interface WordsColumn extends Headed {
	readonly kind: 'words';
}

/** A column in which one of a few words is chosen. */
export interface ChoiceColumn extends Headed {
	readonly kind: 'choice';
	readonly choices: readonly Word[];
}

/** A column that is yes or no; no until somebody says yes. */
interface YesNoColumn extends Headed {
	readonly kind: 'yes-no';
}

/** One word of a choice, and what the record keeps; nothing where it keeps nothing. */
interface Word {
	readonly value?: Json;
	readonly label: string;
}

/** A table of one kind of thing of a wall: where it stands in the record, and what a new one begins with. */
export interface WallTable {
	readonly id: string;
	readonly group: 'studs' | 'backing' | 'keepOuts' | 'existing';
	readonly title: string;
	/** One of them, for buttons and labels. */
	readonly one: string;
	/** Which things of the group belong to this table, by their kind; all when empty. */
	readonly kinds: readonly string[];
	/** A choice that comes first says what a thing is. */
	readonly columns: readonly Column[];
	/** What a new one holds until it is said otherwise. */
	readonly fixed: Readonly<Record<string, Json>>;
	/** One may take all of its wall. */
	readonly whole?: true;
}

const AREA: readonly Column[] = [
	{ kind: 'number', key: 'x0', label: 'from', quantity: 'length' },
	{ kind: 'number', key: 'x1', label: 'to', quantity: 'length' },
	{ kind: 'number', key: 'y0', label: 'low', quantity: 'length' },
	{ kind: 'number', key: 'y1', label: 'high', quantity: 'length' }
];

const HOW_KNOWN = choice(
	'how',
	'how known',
	CHOOSABLE.map((value) => ({ value, label: KNOWN_WORDS[value] }))
);

const same = (...words: readonly string[]): readonly Word[] => words.map((value) => ({ value, label: value }));

/** The tables of a wall, in the order they are surveyed. Along the wall from its left end, heights from the datum line. */
export const WALL_TABLES: readonly WallTable[] = [
	{
		id: 'existing',
		group: 'existing',
		title: 'On the wall already',
		one: 'existing thing',
		kinds: [],
		columns: [
			choice(
				'what',
				'what',
				Object.entries(EXISTING).map(([value, label]) => ({ value, label }))
			),
			...AREA,
			choice('fate', 'what becomes of it', [
				{ value: 'keep', label: 'stays' },
				{ value: 'remove', label: 'taken away' }
			]),
			{ kind: 'yes-no', key: 'grabbed', label: 'will be grabbed' },
			{ kind: 'yes-no', key: 'tested', label: 'tested as a bar' },
			HOW_KNOWN
		],
		fixed: { what: 'grab-bar', fate: 'keep', how: 'measured' }
	},
	{
		id: 'keepOuts',
		group: 'keepOuts',
		title: 'Not to be drilled',
		one: 'keep-out',
		kinds: [],
		columns: [
			choice('kind', 'what', [
				...same('pipe', 'cable'),
				{ value: 'electric-point', label: 'switch, socket, lamp or fan' },
				...same('rod', 'seam'),
				{ value: 'valve-body', label: 'valve body' },
				{ value: 'old-hole', label: 'old hole' },
				...same('niche')
			]),
			...AREA,
			{ kind: 'number', key: 'uncertain', label: 'give or take', quantity: 'length', optional: true },
			HOW_KNOWN
		],
		fixed: { kind: 'pipe', how: 'measured' }
	},
	{
		id: 'studs',
		group: 'studs',
		title: 'Studs',
		one: 'stud',
		kinds: [],
		columns: [
			{ kind: 'number', key: 'x', label: 'middle', quantity: 'length' },
			{ kind: 'number', key: 'width', label: 'width', quantity: 'length' },
			choice('steel', 'of steel', [
				{ label: 'no, of wood' },
				{ value: true, label: 'yes, gauge not known' },
				...([18, 27, 33, 43, 54] as const).map((value) => ({ value, label: `${String(value)} mil` }))
			]),
			HOW_KNOWN
		],
		fixed: { how: 'measured' }
	},
	{
		id: 'wood',
		group: 'backing',
		title: 'Wood behind the finish',
		one: 'backing',
		kinds: ['sheet', 'blocking'],
		columns: [
			choice('kind', 'what', same('sheet', 'blocking')),
			...AREA,
			{ kind: 'number', key: 'thickness', label: 'thick', quantity: 'length' },
			{ kind: 'number', key: 'gravity', label: 'wood, gravity', quantity: 'plain', optional: true },
			HOW_KNOWN
		],
		fixed: { kind: 'blocking', how: 'measured' },
		whole: true
	},
	{
		id: 'masonry',
		group: 'backing',
		title: 'Masonry behind the finish',
		one: 'masonry',
		kinds: ['masonry'],
		columns: [
			...AREA,
			choice('unit', 'of what', [
				{ label: 'not known' },
				{ value: 'solid', label: 'solid brick, block or concrete' },
				{ value: 'hollow', label: 'hollow brick or block' },
				{ value: 'aerated', label: 'aerated block' }
			]),
			HOW_KNOWN
		],
		fixed: { kind: 'masonry', how: 'measured' },
		whole: true
	},
	{
		id: 'declared',
		group: 'backing',
		title: 'Strength declared by paper',
		one: 'declared area',
		kinds: ['declared'],
		columns: [
			...AREA,
			{ kind: 'number', key: 'load', label: 'load', quantity: 'force' },
			choice('holds', 'what it holds', [
				{ value: 'bars', label: 'bars' },
				{ value: 'seat', label: 'a seat' },
				{ value: 'bars-and-seat', label: 'bars and a seat' }
			]),
			{ kind: 'words', key: 'document', label: 'its paper' },
			{ kind: 'words', key: 'fixing', label: 'with what fixing' }
		],
		fixed: { kind: 'declared', holds: 'bars' },
		whole: true
	}
];

/** What a thing is, as its table says it; nothing where the table has but one kind. */
export function whatIs({ columns: [first] }: WallTable, thing: Readonly<Record<string, Json>>): string | undefined {
	return first?.kind === 'choice' ? first.choices.find(({ value }) => value === thing[first.key])?.label : undefined;
}

function choice(key: string, label: string, choices: readonly Word[]): ChoiceColumn {
	return { kind: 'choice', key, label, choices };
}
