import type { Rect } from '#core/geometry/vec.ts';
import type { Box, Entity, Spot } from './entity.ts';
import { boxOn, flanges, layerOf, underFlanges, type Drawn, type Ground, type OnWall } from './part.ts';
import { line, lines, rectangle, shape } from './path.ts';
import type { SetOut } from './setting-out.ts';

/** A plate under or over a post: half its width, and how thick. Units: mm of the wall. */
const PLATE = { half: 50, thick: 12 };

/** A bar of one leg: its tube and two flanges. */
export function bar(set: SetOut, { view }: Ground): Drawn {
	const tube = boxOn(view, legOf(set));
	return {
		entities: [rectangle(`${set.id}/tube`, layerOf(set), tube), axis(set, view, set.fixings), ...flanges(set, view)],
		covers: [tube, ...underFlanges(set, view)]
	};
}

/** The tube from the first flange to the last. Units and frame: mm, wall frame. */
function legOf({ fixings, mark: { variant } }: SetOut): Rect {
	const [xs, ys] = [fixings.map(({ x }) => x), fixings.map(({ y }) => y)];
	const half = variant.diameter / 2;
	const [w, h] = variant.kind === 'horizontal-bar' ? [0, half] : [half, 0];
	return { x0: Math.min(...xs) - w, x1: Math.max(...xs) + w, y0: Math.min(...ys) - h, y1: Math.max(...ys) + h };
}

/** The centre line of a tube, from flange to flange. */
const axis = ({ id }: SetOut, view: OnWall, points: readonly { readonly x: number; readonly y: number }[]): Entity =>
	line(`${id}/axis`, 'axis', ...points.map(({ x, y }) => view.spot(x, y)));

/** An L bar: one tube round both legs, and three flanges. */
export function lBar(set: SetOut, { view }: Ground): Drawn {
	const { variant, place } = set.mark;
	const half = variant.diameter / 2;
	const rise = place.y + (variant.upright?.length ?? 0);
	const [near, far] = [place.x, place.x + variant.length];
	// Outwards from the corner of the legs.
	const [corner, end, out] = variant.upright?.at === 'right' ? ([far, near, 1] as const) : ([near, far, -1] as const);
	const tube = (
		[
			[corner + out * half, place.y - half],
			[end, place.y - half],
			[end, place.y + half],
			[corner - out * half, place.y + half],
			[corner - out * half, rise],
			[corner + out * half, rise]
		] as const
	).map(([x, y]): Spot => view.spot(x, y));
	const centres = [
		{ x: end, y: place.y },
		{ x: corner, y: place.y },
		{ x: corner, y: rise }
	];
	const lying: Rect = { x0: near, x1: far, y0: place.y - half, y1: place.y + half };
	const upright: Rect = { x0: corner - half, x1: corner + half, y0: place.y, y1: rise };
	return {
		entities: [shape(`${set.id}/tube`, layerOf(set), ...tube), axis(set, view, centres), ...flanges(set, view)],
		covers: [boxOn(view, lying), boxOn(view, upright), ...underFlanges(set, view)]
	};
}

/** A post: its plates at foot and head, and the tube between them; above what was recorded it goes on to the ceiling. */
export function post(set: SetOut, { view }: Ground): Drawn {
	const { variant, place } = set.mark;
	const half = variant.diameter / 2;
	const top = place.y + variant.outline.y1;
	const tube = boxOn(view, { x0: place.x - half, x1: place.x + half, y0: place.y, y1: top });
	const end = Math.min(view.window.y0, tube.y0);
	const plate = (y: number): Box => ({
		x0: view.x(place.x - PLATE.half),
		x1: view.x(place.x + PLATE.half),
		y0: y,
		y1: y + PLATE.thick / view.scale
	});
	const foot = plate(view.y(place.y + PLATE.thick));
	const goesOn = [tube.x0, tube.x1].map((x): readonly Spot[] => [
		[x, tube.y0],
		[x, end]
	]);
	return {
		entities: [
			rectangle(`${set.id}/tube`, layerOf(set), tube),
			rectangle(`${set.id}/foot`, layerOf(set), foot),
			...(tube.y0 - end > 0.1 ? [lines(`${set.id}/on`, 'folded', goesOn)] : []),
			// Where the wall is broken off the head is above what is drawn.
			...(view.broken ? [] : [rectangle(`${set.id}/head`, layerOf(set), plate(end))])
		],
		covers: [{ ...tube, y0: end }, foot, ...(view.broken ? [] : [plate(end)])]
	};
}
