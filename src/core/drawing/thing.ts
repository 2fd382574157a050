import type { Rect } from '#core/geometry/vec.ts';
import { moved } from '#core/geometry/rect.ts';
import type { Box, Entity, Spot } from './entity.ts';
import { circle, cross, line, lines, rectangle, rounded, shape } from './path.ts';
import type { SetOut } from './setting-out.ts';
import type { View } from './view.ts';

/** An accessory drawn on its wall, with the areas it covers. Units and frame: mm of the sheet. */
export interface Thing {
	readonly set: SetOut;
	readonly entities: readonly Entity[];
	readonly covers: readonly Box[];
}

/** How far a centre cross goes past its flange. */
const PAST = 0.9;

/** Draws the part of a mark to scale with the centres of its brackets. A part that is open is dashed. */
export function thingOf(set: SetOut, view: View): Thing {
	const { variant, place } = set.mark;
	const outline = on(view, moved(variant.outline, place.x, place.y));
	const kinds = {
		'horizontal-bar': bar,
		'vertical-bar': bar,
		'fold-down-rail': seat,
		seat,
		control,
		outlet: rest,
		'handset-rest': rest
	};
	const entities = kinds[variant.kind](set, view, outline).map((e) => ({ ...e, about: set.id }));
	return { set, entities, covers: coversOf(set, view, outline) };
}

const on = (view: View, r: Rect): Box => ({ x0: view.x(r.x0), y0: view.y(r.y1), x1: view.x(r.x1), y1: view.y(r.y0) });
const layerOf = (set: SetOut): 'thing' | 'thing-open' => (set.open ? 'thing-open' : 'thing');
const middle = (b: Box): Spot => [(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2];

function tube(set: SetOut, view: View): Box {
	const xs = set.fixings.map(({ x }) => x);
	const ys = set.fixings.map(({ y }) => y);
	const half = set.mark.variant.diameter / 2;
	const [w, h] = set.mark.variant.kind === 'horizontal-bar' ? [0, half] : [half, 0];
	return on(view, {
		x0: Math.min(...xs) - w,
		x1: Math.max(...xs) + w,
		y0: Math.min(...ys) - h,
		y1: Math.max(...ys) + h
	});
}

function coversOf(set: SetOut, view: View, outline: Box): readonly Box[] {
	if (set.mark.variant.diameter === 0) return [outline];
	const flanges = set.mark.variant.brackets.map((b, i) => {
		const { x, y } = set.fixings[i] ?? { x: 0, y: 0 };
		return on(view, { x0: x - b.radius, x1: x + b.radius, y0: y - b.radius, y1: y + b.radius });
	});
	return [tube(set, view), ...flanges];
}

function bar(set: SetOut, view: View): readonly Entity[] {
	const layer = layerOf(set);
	const flanges = set.fixings.flatMap(({ x, y }, i): Entity[] => {
		const radius = (set.mark.variant.brackets[i]?.radius ?? 0) / view.scale;
		const id = `${set.id}/flange/${String(i)}`;
		return [
			circle(id, layer, view.spot(x, y), radius),
			cross(`${id}/centre`, 'centre', view.spot(x, y), radius + PAST)
		];
	});
	return [rectangle(`${set.id}/tube`, layer, tube(set, view)), ...flanges];
}

function seat(set: SetOut, view: View, box: Box): readonly Entity[] {
	const board = box.y0 + Math.min(3, (box.y1 - box.y0) / 3);
	const plates = set.fixings.flatMap(({ x, y }, i): Entity[] => {
		const radius = (set.mark.variant.brackets[i]?.radius ?? 0) / view.scale;
		const id = `${set.id}/plate/${String(i)}`;
		return [
			circle(id, 'detail', view.spot(x, y), radius * 0.8),
			cross(`${id}/centre`, 'centre', view.spot(x, y), radius)
		];
	});
	return [
		rounded(`${set.id}/outline`, layerOf(set), box, 0.8),
		line(`${set.id}/board`, 'detail', [box.x0, board], [box.x1, board]),
		...plates
	];
}

function control(set: SetOut, view: View, box: Box): readonly Entity[] {
	const [x, y] = middle(box);
	const r = (box.x1 - box.x0) / 2;
	const lever = shape(
		`${set.id}/lever`,
		'detail',
		[x - 0.11 * r, y + 0.42 * r],
		[x - 0.08 * r, y + 0.88 * r],
		[x + 0.08 * r, y + 0.88 * r],
		[x + 0.11 * r, y + 0.42 * r]
	);
	return [
		circle(`${set.id}/plate`, layerOf(set), [x, y], r),
		circle(`${set.id}/hub`, 'detail', [x, y], 0.42 * r),
		lever,
		cross(`${set.id}/centre`, 'centre', [x, y], 2)
	];
}

function rest(set: SetOut, _: View, box: Box): readonly Entity[] {
	const [x, y] = middle(box);
	const r = 0.28 * (box.x1 - box.x0);
	const fork = lines(`${set.id}/fork`, 'detail', [
		[
			[x - r, y - 1],
			[x - r, y + 0.6],
			[x - 0.6 * r, y + 1.3],
			[x + 0.6 * r, y + 1.3],
			[x + r, y + 0.6],
			[x + r, y - 1]
		]
	]);
	return [rounded(`${set.id}/body`, layerOf(set), box, 0.8), fork, cross(`${set.id}/centre`, 'centre', [x, y], 2)];
}
