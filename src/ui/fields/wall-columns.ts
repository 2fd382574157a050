import type { Json } from '#core/log/json.ts';
import type { Quantity } from './quantity.ts';

/** One column of a table of things behind a wall. */
export type Column =
	| {
			readonly kind: 'number';
			readonly key: string;
			readonly label: string;
			readonly quantity: Quantity;
			readonly optional?: true;
	  }
	| { readonly kind: 'words'; readonly key: string; readonly label: string };

/** A table of one kind of thing behind a wall: where it stands in the record, and what a new one begins with. */
export interface WallTable {
	readonly id: string;
	readonly group: 'studs' | 'backing' | 'keepOuts';
	readonly title: string;
	/** One of them, for buttons and labels. */
	readonly one: string;
	/** Which things of the group belong to this table, by their kind; all when empty. */
	readonly kinds: readonly string[];
	readonly columns: readonly Column[];
	/** The part of a thing that is chosen from words. */
	readonly chosen: 'kind' | 'holds';
	/** What a new row holds beside its columns. */
	readonly fixed: Readonly<Record<string, Json>>;
	/** How it is known can be said. */
	readonly known: boolean;
}

const AREA: readonly Column[] = [
	{ kind: 'number', key: 'x0', label: 'from', quantity: 'length' },
	{ kind: 'number', key: 'x1', label: 'to', quantity: 'length' },
	{ kind: 'number', key: 'y0', label: 'low', quantity: 'length' },
	{ kind: 'number', key: 'y1', label: 'high', quantity: 'length' }
];

/** The tables of a wall, in the order they are surveyed. Along the wall from its left end, heights from the datum line. */
export const WALL_TABLES: readonly WallTable[] = [
	{
		id: 'studs',
		group: 'studs',
		title: 'Studs',
		one: 'stud',
		kinds: [],
		columns: [
			{ kind: 'number', key: 'x', label: 'middle', quantity: 'length' },
			{ kind: 'number', key: 'width', label: 'width', quantity: 'length' }
		],
		chosen: 'kind',
		fixed: { how: 'measured' },
		known: true
	},
	{
		id: 'wood',
		group: 'backing',
		title: 'Wood behind the finish',
		one: 'backing',
		kinds: ['sheet', 'blocking'],
		columns: [
			...AREA,
			{ kind: 'number', key: 'thickness', label: 'thick', quantity: 'length' },
			{ kind: 'number', key: 'gravity', label: 'wood, gravity', quantity: 'plain', optional: true }
		],
		chosen: 'kind',
		fixed: { kind: 'blocking', how: 'measured' },
		known: true
	},
	{
		id: 'masonry',
		group: 'backing',
		title: 'Masonry behind the finish',
		one: 'masonry',
		kinds: ['masonry'],
		columns: AREA,
		chosen: 'kind',
		fixed: { kind: 'masonry', how: 'measured' },
		known: true
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
			{ kind: 'words', key: 'document', label: 'its paper' },
			{ kind: 'words', key: 'fixing', label: 'with what fixing' }
		],
		chosen: 'holds',
		fixed: { kind: 'declared', holds: 'bars' },
		known: false
	},
	{
		id: 'keepOuts',
		group: 'keepOuts',
		title: 'Not to be drilled',
		one: 'keep-out',
		kinds: [],
		columns: [...AREA, { kind: 'number', key: 'uncertain', label: 'give or take', quantity: 'length', optional: true }],
		chosen: 'kind',
		fixed: { kind: 'pipe', how: 'measured' },
		known: true
	}
];

/** What may be chosen for a thing of a table, with its words. */
export const KIND_WORDS: Readonly<Record<string, string>> = {
	sheet: 'sheet',
	blocking: 'blocking',
	pipe: 'pipe',
	cable: 'cable',
	rod: 'rod',
	seam: 'seam',
	'valve-body': 'valve body',
	'old-hole': 'old hole',
	niche: 'niche',
	bars: 'holds bars',
	seat: 'holds a seat',
	'bars-and-seat': 'holds bars and a seat'
};

/** What may be chosen in a table; none where there is nothing to choose. */
export function kindsFor(table: WallTable): readonly string[] {
	if (table.group === 'keepOuts') return ['pipe', 'cable', 'rod', 'seam', 'valve-body', 'old-hole', 'niche'];
	if (table.chosen === 'holds') return ['bars', 'seat', 'bars-and-seat'];
	return table.kinds.length > 1 ? table.kinds : [];
}
