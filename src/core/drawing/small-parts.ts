import { LOWER_BANGLE } from '#core/case/accessory.ts';
import type { Box, Spot } from './entity.ts';
import { boxOn, layerOf, middle, outlineOn, type Drawn, type Ground } from './part.ts';
import { circle, cross, line, lines, rounded, shape } from './path.ts';
import type { SetOut } from './setting-out.ts';

/** The lever control: plate, hub, lever. */
export function control(set: SetOut, { view }: Ground): Drawn {
	const box = outlineOn(view, set);
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
	return {
		entities: [
			circle(`${set.id}/plate`, layerOf(set), [x, y], r),
			circle(`${set.id}/hub`, 'detail', [x, y], 0.42 * r),
			lever,
			cross(`${set.id}/centre`, 'centre', [x, y], 2)
		],
		covers: [box]
	};
}

/** The rest of a hand shower: a fork. */
export function rest(set: SetOut, { view }: Ground): Drawn {
	const box = outlineOn(view, set);
	const [x, y] = middle(box);
	return {
		entities: [
			rounded(`${set.id}/body`, layerOf(set), box, Math.min(0.8, (box.x1 - box.x0) / 2)),
			lines(`${set.id}/fork`, 'detail', [forkOf([x, y], 0.28 * (box.x1 - box.x0))]),
			cross(`${set.id}/centre`, 'centre', [x, y], 2)
		],
		covers: [box]
	};
}

const forkOf = ([x, y]: Spot, r: number): readonly Spot[] => [
	[x - r, y - 0.6 * r],
	[x - r, y + 0.36 * r],
	[x - 0.6 * r, y + 0.78 * r],
	[x + 0.6 * r, y + 0.78 * r],
	[x + r, y + 0.36 * r],
	[x + r, y - 0.6 * r]
];

/** The holder a hand shower hangs from while it rains: a fork under the head of the hand shower. */
export function holder(set: SetOut, on: Ground): Drawn {
	const { entities, covers } = rest(set, on);
	const box = outlineOn(on.view, set);
	const [x] = middle(box);
	const r = 0.26 * (box.x1 - box.x0);
	const head: Spot = [x, box.y0 + 1.4 * r];
	return { entities: [...entities, circle(`${set.id}/head`, 'detail', head, r)], covers };
}

/** The outlet of the hose: a plate, and the elbow the hose goes down from. */
export function outlet(set: SetOut, { view }: Ground): Drawn {
	const box = outlineOn(view, set);
	const [x, y] = middle(box);
	const r = (box.x1 - box.x0) / 2;
	return {
		entities: [
			circle(`${set.id}/plate`, layerOf(set), [x, y], r),
			circle(`${set.id}/elbow`, 'detail', [x, y], 0.45 * r),
			lines(`${set.id}/hose`, 'detail', [
				[
					[x - 0.25 * r, y + 0.4 * r],
					[x - 0.25 * r, y + 0.95 * r]
				],
				[
					[x + 0.25 * r, y + 0.4 * r],
					[x + 0.25 * r, y + 0.95 * r]
				]
			]),
			cross(`${set.id}/centre`, 'centre', [x, y], 2)
		],
		covers: [box]
	};
}

/** A call cord: the cord from what it hangs from, above all that is drawn, down to the lower bangle, and both bangles. */
export function callCord(set: SetOut, { view, room }: Ground): Drawn {
	const { place, variant } = set.mark;
	const r = variant.outline.x1 / view.scale;
	const low = room.floorUnder(place.wall, place.x, place.x).high + LOWER_BANGLE;
	const [upper, lower] = [view.spot(place.x, place.y), view.spot(place.x, low)];
	const [x, y] = upper;
	const around = ([cx, cy]: Spot): Box => ({ x0: cx - r, y0: cy - r, x1: cx + r, y1: cy + r });
	const strand = (y0: number, y1: number): Box => ({ x0: x - 0.4, y0, x1: x + 0.4, y1 });
	return {
		entities: [
			lines(`${set.id}/cord`, 'detail', [
				[
					[x, Math.min(view.window.y0, y - r)],
					[x, y - r]
				],
				[
					[x, y + r],
					[x, lower[1] - r]
				]
			]),
			circle(`${set.id}/upper`, layerOf(set), upper, r),
			circle(`${set.id}/lower`, layerOf(set), lower, r),
			cross(`${set.id}/centre`, 'centre', upper, 2)
		],
		covers: [around(upper), around(lower), strand(y + r, lower[1] - r), strand(view.window.y0, y - r)]
	};
}

/** A rail that folds down: its plate, the hinge it is set out by, and in broken lines the room it takes folded up. */
export function rail(set: SetOut, { view }: Ground): Drawn {
	const { outline, brackets } = set.mark.variant;
	const { x, y } = set.mark.place;
	const [bracket] = brackets;
	const head = bracket ? bracket.y + bracket.radius : 0;
	const plate = boxOn(view, { x0: x + outline.x0, x1: x + outline.x1, y0: y + outline.y0, y1: y + head });
	const up = boxOn(view, { x0: x + outline.x0, x1: x + outline.x1, y0: y + head, y1: y + outline.y1 });
	const hinge = view.spot(x, y);
	const half = 0.35 * (plate.x1 - plate.x0);
	return {
		entities: [
			rounded(`${set.id}/folded`, 'folded', up, Math.min(2, (up.x1 - up.x0) / 2)),
			rounded(`${set.id}/plate`, layerOf(set), plate, 0.8),
			line(`${set.id}/hinge`, 'detail', [hinge[0] - half, hinge[1]], [hinge[0] + half, hinge[1]]),
			...set.fixings.map((f, i) => cross(`${set.id}/plate/${String(i)}/centre`, 'centre', view.spot(f.x, f.y), 2)),
			cross(`${set.id}/centre`, 'centre', hinge, 2)
		],
		covers: [up, plate]
	};
}
