import type { Variant } from '#core/case/accessory.ts';

/** A corner of a part from above: along its wall from its place, and out from the wall. Units: mm. */
type Corner = readonly [along: number, out: number];

/** The outline of a seat from above, its rear edge first; an L has two corners more than a rectangle. */
export function seatPlan({ outline: { x0, x1 }, gap, depth, arm }: Variant): readonly Corner[] {
	const rear: readonly Corner[] = [
		[x0, gap],
		[x1, gap]
	];
	if (!arm) return [...rear, [x1, depth], [x0, depth]];
	return arm.x0 === x0
		? [...rear, [x1, depth], [arm.x1, depth], [arm.x1, arm.to], [x0, arm.to]]
		: [...rear, [x1, arm.to], [arm.x0, arm.to], [arm.x0, depth], [x0, depth]];
}
