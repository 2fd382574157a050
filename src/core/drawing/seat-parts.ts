import type { Box, Entity } from './entity.ts';
import { boxOn, layerOf, outlineOn, type Drawn, type Ground } from './part.ts';
import { circle, cross, line, rectangle, rounded } from './path.ts';
import { BACK_REST } from './seat-plan.ts';
import type { SetOut } from './setting-out.ts';

/** Legs of a seat: how wide, how far in from its sides, and their feet. Units: mm of the wall. Source: ours. */
const LEG = { half: 14, in: 40, foot: 24, thick: 12 };
/** The board of a seat, and the clamps of a board on rims. Units: mm of the wall. Source: ours. */
const BOARD = 30;
const CLAMP = { half: 12, in: 60 };

const NOTHING: Drawn = { entities: [], covers: [] };

/** A seat the wall holds: its outline, its board, the plates behind it, its front legs, its back rest, and the arm of an L with its leg. */
export function seat(set: SetOut, { view, room }: Ground): Drawn {
	const box = outlineOn(view, set);
	const plates = set.fixings.flatMap(({ x, y }, i): Entity[] => {
		const radius = (set.mark.variant.brackets[i]?.radius ?? 0) / view.scale;
		const id = `${set.id}/plate/${String(i)}`;
		return [
			circle(id, 'detail', view.spot(x, y), radius * 0.8),
			cross(`${id}/centre`, 'centre', view.spot(x, y), radius)
		];
	});
	const arm = armOf(set, { view, room });
	const legs = set.mark.variant.frontLegs === undefined ? NOTHING : legsOf(set, { view, room });
	const rest = backRestOf(set, { view, room });
	return {
		entities: [...rest.entities, ...legs.entities, ...outline(set, box, view.scale), ...plates, ...arm.entities],
		covers: [box, ...rest.covers, ...legs.covers, ...arm.covers]
	};
}

/** The back rest of a seat that stands off its wall, in broken lines: its own size is read off the part. */
function backRestOf(set: SetOut, { view }: Ground): Drawn {
	const { backRest, outline } = set.mark.variant;
	if (backRest === undefined) return NOTHING;
	const { x, y } = set.mark.place;
	const on = boxOn(view, {
		x0: x + outline.x0 + BACK_REST.in,
		x1: x + outline.x1 - BACK_REST.in,
		y0: y + BACK_REST.low,
		y1: y + BACK_REST.high
	});
	return { entities: [rounded(`${set.id}/back-rest`, 'folded', on, 0.8)], covers: [on] };
}

/** The arm of an L seat, seen end on: its inner edge, and the leg under it down to the floor. */
function armOf(set: SetOut, { view, room }: Ground): Drawn {
	const { arm, outline } = set.mark.variant;
	if (!arm) return NOTHING;
	const { x, y, wall } = set.mark.place;
	const inner = x + (arm.x0 === outline.x0 ? arm.x1 : arm.x0);
	const middle = x + (arm.x0 + arm.x1) / 2;
	const { low } = room.floorUnder(wall, middle, middle);
	const leg = boxOn(view, { x0: middle - LEG.half, x1: middle + LEG.half, y0: low, y1: y + outline.y0 });
	const foot = boxOn(view, { x0: middle - LEG.foot, x1: middle + LEG.foot, y0: low, y1: low + LEG.thick });
	return {
		entities: [
			line(`${set.id}/arm`, 'detail', view.spot(inner, y), view.spot(inner, y + outline.y0)),
			rectangle(`${set.id}/arm/leg`, layerOf(set), leg),
			rectangle(`${set.id}/arm/foot`, layerOf(set), foot)
		],
		covers: [leg, foot]
	};
}

const outline = (set: SetOut, box: Box, scale: number): readonly Entity[] => {
	const under = box.y0 + BOARD / scale;
	return [
		rounded(`${set.id}/outline`, layerOf(set), box, 0.8),
		line(`${set.id}/board`, 'detail', [box.x0, under], [box.x1, under])
	];
};

/** A seat on its own legs. */
export function onLegs(set: SetOut, on: Ground): Drawn {
	const box = outlineOn(on.view, set);
	const legs = legsOf(set, on);
	return { entities: [...legs.entities, ...outline(set, box, on.view.scale)], covers: [box, ...legs.covers] };
}

/** Legs under both ends of a seat, down to the floor below each. */
function legsOf(set: SetOut, { view, room }: Ground): Drawn {
	const { variant, place } = set.mark;
	const legs = [variant.outline.x0 + LEG.in, variant.outline.x1 - LEG.in].map((along) => {
		const x = place.x + along;
		const { low } = room.floorUnder(place.wall, x, x);
		const leg = { x0: x - LEG.half, x1: x + LEG.half, y0: low, y1: place.y + variant.outline.y0 };
		const foot = { x0: x - LEG.foot, x1: x + LEG.foot, y0: low, y1: low + LEG.thick };
		return { leg: boxOn(view, leg), foot: boxOn(view, foot) };
	});
	return {
		entities: legs.flatMap(({ leg, foot }, i) => [
			rectangle(`${set.id}/leg/${String(i)}`, layerOf(set), leg),
			rectangle(`${set.id}/foot/${String(i)}`, layerOf(set), foot)
		]),
		covers: [...legs.map(({ leg }) => leg), ...legs.map(({ foot }) => foot)]
	};
}

/** A board seen along its length, with the clamps that keep it between the rims. */
export function board(set: SetOut, { view }: Ground): Drawn {
	const { variant, place } = set.mark;
	const { x0, x1, y0, y1 } = variant.outline;
	const plank = boxOn(view, { x0: place.x + x0, x1: place.x + x1, y0: place.y + y1 - BOARD, y1: place.y + y1 });
	const clamps = [x0 + CLAMP.in, x1 - CLAMP.in].map((along) =>
		boxOn(view, {
			x0: place.x + along - CLAMP.half,
			x1: place.x + along + CLAMP.half,
			y0: place.y + y0,
			y1: place.y + y1 - BOARD
		})
	);
	return {
		entities: [
			...clamps.map((box, i) => rectangle(`${set.id}/clamp/${String(i)}`, layerOf(set), box)),
			rounded(`${set.id}/outline`, layerOf(set), plank, Math.min(0.8, (plank.y1 - plank.y0) / 2))
		],
		covers: [outlineOn(view, set)]
	};
}
