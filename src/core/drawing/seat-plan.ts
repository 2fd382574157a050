import type { Mark, Variant } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import { toPlan } from '#core/geometry/frame.ts';
import type { Box, Entity, Spot } from './entity.ts';
import type { Layer } from './layers.ts';
import { lines, rectangle, shape } from './path.ts';
import { PT, write } from './type.ts';

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

/** Size of the word on a seat. Units: pt. */
const SMALL = 8.5;

/** Where a part is drawn from above, and with which line. Units and frame: `spot` plan frame in, mm of the sheet out. */
export interface FromAbove {
	readonly id: string;
	readonly layer: Layer;
	readonly spot: (x: number, y: number) => Spot;
}

/** A place of the sheet by where it is beside a mark: along its wall, and out from the wall. Units: mm. */
export const cornersOf =
	({ footprint }: Room, { place }: Mark, { spot }: Pick<FromAbove, 'spot'>) =>
	([along, out]: Corner): Spot => {
		const [x, y] = toPlan(place.wall, [place.x + along, 0], out, footprint);
		return spot(x, y);
	};

/** A seat from above with its back rest and what holds it off its wall, and its word where that has room. */
export function seatFromAbove(room: Room, mark: Mark, on: FromAbove): readonly Entity[] {
	const { variant } = mark;
	const { id, layer } = on;
	const corner = cornersOf(room, mark, on);
	const { x0, x1 } = variant.outline;
	const [near, far] = variant.stands === 'rims' ? [0, room.footprint.depth] : [variant.gap, variant.depth];
	const within = boxRound(corner([x0, near]), corner([x1, far]));
	const rest = backRestPlan(variant).map(corner);
	const held = heldOff(variant).map((along): readonly Spot[] => [corner([along, 0]), corner([along, variant.gap])]);
	return [
		...(held.length > 0 ? [lines(`${id}/held`, layer, held)] : []),
		...(rest.length > 0 ? [shape(`${id}/back-rest`, layer, ...rest)] : []),
		variant.arm ? shape(id, layer, ...seatPlan(variant).map(corner)) : rectangle(id, layer, within),
		...named(id, variant.stands === 'rims' ? 'board' : 'seat', within)
	];
}

/** The rectangle between two corners. */
export const boxRound = ([ax, ay]: Spot, [bx, by]: Spot): Box => ({
	x0: Math.min(ax, bx),
	y0: Math.min(ay, by),
	x1: Math.max(ax, bx),
	y1: Math.max(ay, by)
});

/** A word inside a thing, where it has room. */
function named(id: string, text: string, on: Box): readonly Entity[] {
	const at: Spot = [(on.x0 + on.x1) / 2, (on.y0 + on.y1) / 2 + 0.33 * SMALL * PT];
	const word = write(`${id}/word`, text, at, { size: SMALL, tone: 'grey', anchor: 'middle' });
	return word.width + 1 < on.x1 - on.x0 && on.y1 - on.y0 > 3 ? [word] : [];
}
