import type { Variant } from '#core/case/accessory.ts';

/** A corner of a part from above: along its wall from its place, and out from the wall. Units: mm. */
type Corner = readonly [along: number, out: number];

/** The back rest of a seat that stands off its wall: how far in from its sides, how thick, and from where to where above its top. Units: mm. Source: ours. */
export const BACK_REST = { in: 20, thick: 30, low: 200, high: 450 } as const;

/** The back rest of a seat from above, its face toward who sits the last; none where the wall is the rest. */
export function backRestPlan({ outline: { x0, x1 }, backRest }: Variant): readonly Corner[] {
	if (backRest === undefined) return [];
	const [left, right] = [x0 + BACK_REST.in, x1 - BACK_REST.in];
	return [
		[left, backRest - BACK_REST.thick],
		[right, backRest - BACK_REST.thick],
		[right, backRest],
		[left, backRest]
	];
}

/** What holds a seat off its wall, from above: along the wall, from the wall to the rear of the seat. Units: mm. */
export const heldOff = ({ brackets, backRest }: Variant): readonly number[] =>
	backRest === undefined ? [] : brackets.map(({ x }) => x);

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
