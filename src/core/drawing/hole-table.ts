import type { Plan } from '#core/plan.ts';
import { mm } from '#core/units/length.ts';
import { boredOf, notYet } from './installer/holes-bored.ts';
import type { Table } from './mark-table.ts';
import { cornerOf } from './setting-out.ts';

const HEADS = ['hole', 'id', 'wall', 'bracket', 'x', 'y', 'from corner', 'diameter', 'screw', 'into', 'not yet'];

/**
 * Every hole of the real parts that were read off as a row of cells; figures are those of plan.json.
 * Units and frame: mm, wall frame, y from the datum line. Shape: in the order of the letters; the heads alone where
 * nothing was read off; the last cell says why a hole is not bored now.
 */
export function holeTable(plan: Plan): Table {
	const rows = boredOf(plan).flatMap((bored) => {
		const { set, side, holes, flange, screw, into } = bored;
		const { wall } = set.mark.place;
		const corner = cornerOf(plan.scene.room, wall);
		return holes.map(({ id, at: [x, y] }) => [
			id,
			set.id,
			wall,
			side,
			x,
			y,
			mm(corner.from(x)),
			flange.hole ?? '',
			screw ?? '',
			into,
			notYet(bored) ?? ''
		]);
	});
	return [HEADS, ...rows];
}
