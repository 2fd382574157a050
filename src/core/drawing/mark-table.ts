import { formatFigure, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import type { Plan } from '#core/plan.ts';
import { reportOf } from '#core/report.ts';
import { cornerOf, lettersOf } from './setting-out.ts';

/** A table of plain cells: text, or a number as it is in the plan. Shape: the first row holds the heads. */
export type Table = readonly (readonly (string | number)[])[];

const HEADS = ['letter', 'id', 'kind', 'wall', 'x', 'y', 'from corner', 'above floor', 'length', 'fixings', 'into'];

/**
 * Every mark of a plan as a row of cells; figures are those of plan.json.
 * Units and frame: mm, wall frame, y from the datum line; fixings as `x y` pairs. Shape: in the order of the letters.
 */
export function markTable(plan: Plan): Table {
	const letters = lettersOf(plan);
	const exact: Tape = { unit: 'mm' };
	const rows = reportOf(plan).accessories.map((a) => [
		letters[a.id] ?? '',
		a.id,
		a.kind,
		a.wall,
		a.x,
		a.y,
		mm(cornerOf(plan.scene.room, a.wall).from(a.x)),
		a.aboveFloor,
		a.length,
		a.fixings.map((f) => `${formatFigure(mm(f.x), exact)} ${formatFigure(mm(f.y), exact)}`).join('; '),
		[...new Set(a.fixings.map((f) => f.into))].join('; ')
	]);
	return [HEADS, ...rows];
}
