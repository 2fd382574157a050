import type { Case, Person } from '#core/case/record.ts';
import { cellsAt } from './cells-of.ts';
import { firstCells, HELPER, moreCells } from './person-cells.ts';
import type { Cell, Field, FieldPath } from './spec.ts';

function taped(id: string, label: string, hint: string): Cell {
	return {
		id,
		label,
		hint,
		fields: [{ kind: 'number', label, path: ['body', id], quantity: 'length', dimension: id }]
	};
}

/** Lengths that are estimated of a person and asked nowhere else: what measuring them could move is told. Paths begin at the person. */
export const ESTIMATES: readonly Cell[] = [
	taped('armSpan', 'Arm span', 'Arms out level, back to a wall: tip of one middle finger to the tip of the other.'),
	taped('sittingHeight', 'Sitting height', 'Sitting as tall as possible: loaded seat to the crown of the head.'),
	taped('kneeHeight', 'Knee, sitting', 'Knee bent square: floor to the top of the knee.'),
	taped(
		'forearmToGrip',
		'Elbow to the grip',
		'Elbow bent square: back of the elbow to the middle of a rod in the fist.'
	),
	taped('buttockPopliteal', 'Back to the fold of the knee', 'Sitting: back of the hips to the hollow of the knee.'),
	taped('shoulderBreadth', 'Shoulders, across', 'From one bony point of the shoulder to the other.'),
	taped('hipBreadth', 'Hips, across', 'Sitting: the hips where they are widest.')
];

/** Cells of one who helps or showers here too: each has an id of its own, however many there are. Paths begin at the case. */
export const cellsOfOther = (id: string, cells: readonly Cell[]): readonly Cell[] =>
	cellsAt(cells, ['people', id]).map((cell) => ({ ...cell, id: `${id} ${cell.id}` }));

/** What may be taped of somebody who helps beside what is asked. Paths begin at the person. */
export function helperEstimates(helper: Person): readonly Cell[] {
	const asked = new Set(HELPER.flatMap(({ fields }) => fields.map(keyOf)));
	return [...firstCells(helper), ...moreCells(helper), ...ESTIMATES]
		.filter(({ fields: [field] }) => field?.path[0] === 'body' && !asked.has(keyOf(field)))
		.map(({ id, label, hint, fields }) => ({
			id: `helper-${id}`,
			label: `Helper: ${label.toLowerCase()}`,
			hint,
			fields: fields.map((field) => ({ ...field, label: `Helper: ${field.label.toLowerCase()}` }))
		}));
}

/** Where a length is entered: the set of cells it stands in, and its cell there. Paths begin at the case. */
export interface Entry {
	readonly set: 'first' | 'more' | 'others';
	readonly cell: Cell;
}

/** Where a length of somebody is entered; undefined for whom no cells are shown. `path` begins at the person. */
export function entryOf({ people }: Case, id: string, path: FieldPath): Entry | undefined {
	const person = people[id];
	if (person?.role !== 'client' && person?.role !== 'helper') return undefined;
	const at = (cells: readonly Cell[]): readonly Cell[] => cellsAt(cells, ['people', id]);
	const sets: readonly (readonly [Entry['set'], readonly Cell[]])[] =
		person.role === 'helper'
			? [['others', cellsOfOther(id, [...HELPER, ...helperEstimates(person)])]]
			: [
					['first', at(firstCells(person))],
					['more', at([...moreCells(person), ...ESTIMATES])]
				];
	const wanted = ['people', id, ...path].join('.');
	return sets
		.flatMap(([set, cells]) => cells.map((cell) => ({ set, cell })))
		.find(({ cell }) => cell.fields.some((field) => keyOf(field) === wanted));
}

const keyOf = ({ path }: Field): string => path.join('.');
