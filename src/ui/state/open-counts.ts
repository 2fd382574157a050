import type { Case } from '#core/case/record.ts';
import { WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import { valueAt } from '#core/log/change.ts';
import type { Json } from '#core/log/json.ts';
import { cellsAt } from '#ui/fields/cells-of.ts';
import { firstCells } from '#ui/fields/person-cells.ts';
import type { Cell } from '#ui/fields/spec.ts';
import { clientOf } from './client.ts';
import type { StepId } from './steps.ts';

/** What the count needs of a plan. */
export interface Questions {
	readonly questions: readonly unknown[];
}

/** The first numbers of the client that nobody asked for. */
export function missingCells(c: Case): readonly Cell[] {
	const { id, person } = clientOf(c);
	return cellsAt(firstCells(person), ['people', id]).filter(({ fields }) =>
		fields.some(({ path }) => valueAt(c as unknown as Json, path) === undefined)
	);
}

/** The walls that stand and nobody has looked behind. */
export function unseenWalls({ enclosure: { walls } }: Case): readonly WallId[] {
	return WALL_IDS.filter((id) => walls[id].stands && !walls[id].surveyed);
}

/** How many things are open at each step: numbers nobody asked for, walls nobody looked behind, questions. */
export function openCounts(c: Case, { questions }: Questions): Readonly<Record<StepId, number>> {
	const { width } = c.enclosure;
	return {
		person: missingCells(c).length + (width.how === 'assumed' ? 1 : 0),
		enclosure: unseenWalls(c).length,
		places: questions.length,
		sheets: 0
	};
}
