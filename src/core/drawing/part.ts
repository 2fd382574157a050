import type { Room } from '#core/enclosure/room.ts';
import { moved } from '#core/geometry/rect.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { Box, Entity, Spot } from './entity.ts';
import { circle, cross } from './path.ts';
import type { SetOut } from './setting-out.ts';
import type { View } from './view.ts';

/** A part drawn, and the areas it covers, the one that may carry its tag first. Units and frame: mm of the sheet. */
export interface Drawn {
	readonly entities: readonly Entity[];
	readonly covers: readonly Box[];
}

/** A wall as far as a part on it must know. */
export type OnWall = Pick<View, 'scale' | 'window' | 'broken' | 'x' | 'y' | 'spot'>;

/** Where a part is drawn. */
export interface Ground {
	readonly view: OnWall;
	readonly room: Room;
}

/** How far a centre cross goes past its flange. Units: mm. */
const PAST = 0.9;

/** A rectangle of the wall on the sheet, not cut. */
export const boxOn = (view: OnWall, r: Rect): Box => ({
	x0: view.x(r.x0),
	y0: view.y(r.y1),
	x1: view.x(r.x1),
	y1: view.y(r.y0)
});

/** The outline of a mark on the sheet. */
export const outlineOn = (view: OnWall, { mark: { variant, place } }: SetOut): Box =>
	boxOn(view, moved(variant.outline, place.x, place.y));

/** The line a part is drawn with. */
export const layerOf = (set: SetOut): 'thing' | 'thing-open' => (set.open ? 'thing-open' : 'thing');

/** The middle of a box. */
export const middle = (b: Box): Spot => [(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2];

/** The flanges of a bar with their centres, of a real one with its holes. */
export function flanges(set: SetOut, view: OnWall): readonly Entity[] {
	return set.fixings.flatMap(({ x, y, holes = [] }, i): Entity[] => {
		const { radius = 0, flange } = set.mark.variant.brackets[i] ?? {};
		const on = radius / view.scale;
		const id = `${set.id}/flange/${String(i)}`;
		return [
			circle(id, layerOf(set), view.spot(x, y), on),
			...holes.map(([hx, hy], n) =>
				circle(`${id}/hole/${String(n)}`, 'centre', view.spot(hx, hy), (flange?.hole ?? 0) / 2 / view.scale)
			),
			cross(`${id}/centre`, 'centre', view.spot(x, y), on + PAST)
		];
	});
}

/** The areas under the flanges of a bar. */
export const underFlanges = (set: SetOut, view: OnWall): readonly Box[] =>
	set.mark.variant.brackets.map((b, i) => {
		const { x, y } = set.fixings[i] ?? { x: 0, y: 0 };
		return boxOn(view, { x0: x - b.radius, x1: x + b.radius, y0: y - b.radius, y1: y + b.radius });
	});
