import type { Cell, FieldPath } from './spec.ts';
import { rooted } from './spec.ts';

/** The same cells, their fields below a place of the record. */
export function cellsAt(cells: readonly Cell[], at: FieldPath): readonly Cell[] {
	return cells.map((cell) => ({ ...cell, fields: cell.fields.map((field) => rooted(field, at)) }));
}
