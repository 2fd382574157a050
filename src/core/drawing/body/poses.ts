import { toPlan, toWall } from '#core/geometry/frame.ts';
import type { Vec } from '#core/geometry/vec.ts';
import type { Plan } from '#core/plan.ts';
import type { Box, Entity, Path, Spot } from '../entity.ts';
import { line } from '../path.ts';
import { actingIn, farWall, type Acting, type Pose } from './acting.ts';
import { ANKLE, SKULL, type Whose } from './drawn-body.ts';
import { chairEntities, figureEntities } from './outline.ts';
import { BESIDE, CUT, entryEnd, marksSeen, roomEntities } from './side-room.ts';
import { sidewaysOf, type Scales, type Seen, type Sideways } from './sideways.ts';
import { soleAbove } from './stance.ts';

export type { Pose } from './acting.ts';

/** A pose drawn. Units and frame: mm of the sheet. */
export interface PosePicture {
	readonly entities: readonly Entity[];
	/** Where a tag may point at each thing that is seen. */
	readonly points: readonly { readonly about: string; readonly at: Spot }[];
	/** What is drawn on: the figure and every thing. */
	readonly covers: readonly Box[];
	/** One mm of the sheet is so many of the room. */
	readonly scale: number;
	/** Sheet y of the datum line. */
	readonly datum: number;
	/** At the person's own size, or nobody's. */
	readonly whose: Whose;
	/** Lengths of it are only estimated. */
	readonly sketched: boolean;
}

const POSES: readonly Pose[] = ['sitting', 'standing', 'rising', 'stepping', 'helper'];

/** The poses a plan has something to show of, in the order of a day's shower told to her. */
export const posesFor = (plan: Plan): readonly Pose[] => POSES.filter((pose) => actingIn(plan, pose) !== undefined);

/**
 * A pose from the side in the real room, to scale, as large as its box lets it be: floor, walls cut, things, datum line, figure.
 * Units and frame: mm of the sheet. Shape: nothing lies outside the box; empty where the plan has nothing of the pose to show.
 */
export function posePicture(
	plan: Plan,
	pose: Pose,
	box: Box,
	id: string,
	scales: Scales = plan.scene.c.tape.unit
): PosePicture {
	const acting = actingIn(plan, pose);
	if (!acting)
		return { entities: [], points: [], covers: [], scale: 1, datum: box.y1, whose: 'neutral', sketched: false };
	const { room } = plan.scene;
	const far = farWall(plan, acting);
	const seen = seenOf(plan, acting, far);
	const side = sidewaysOf(room, far, seen, { box: inset(box), scales });
	const across = toWall(far, acting.stance.hip, room.footprint).off;
	const marks = marksSeen(plan, side, id);
	const held = acting.holds.map(({ mark }) => mark.accessory.id);
	const [behind, before] = [marks.filter((m) => !m.before), marks.filter((m) => m.before && held.includes(m.set.id))];
	const shown = [...behind, ...before];
	const { window } = side;
	const y = side.at(0, 0)[1];
	const { d, stance, arms } = acting;
	const sketched = d.sketched[acting.seat ? 'sitting' : 'standing'];
	const how = {
		id: `${id}/figure`,
		line: d.whose === 'neutral' ? 'neutral' : sketched ? 'sketched' : 'drawn'
	} as const;
	const figure = figureEntities(stance, arms, side, how);
	return {
		scale: side.scale,
		datum: y,
		whose: d.whose,
		sketched,
		points: shown.flatMap(({ set, front }) => {
			const at = pointOn(acting, set.id, side) ?? openSpot(front, figure);
			return at ? [{ about: set.id, at }] : [];
		}),
		covers: [figureBox(acting, side), ...shown.map(({ cover }) => cover)],
		entities: [
			...roomEntities(room, side, across, id),
			...(seen.low < 0 && seen.high > 0 ? [line(`${id}/datum`, 'datum', [window.x0, y], [window.x1, y])] : []),
			...behind.flatMap(({ entities }) => entities),
			...chairOf(acting, side, `${id}/figure`),
			...figure,
			...before.flatMap(({ entities }) => entities)
		]
	};
}

/** Where a thing is looked for that may be partly behind the figure: its middle first, then nearer to its ends. */
const SHARES = [0.5, 0.3, 0.7, 0.12, 0.88];

/** A spot of a thing that the figure does not hide; undefined where it hides all of it. */
function openSpot(b: Box, figure: readonly Entity[]): Spot | undefined {
	const spots = SHARES.flatMap((u) => SHARES.map((v): Spot => [b.x0 + u * (b.x1 - b.x0), b.y0 + v * (b.y1 - b.y0)]));
	return spots.find((spot) => !figure.some((e) => e.kind === 'path' && e.closed && inPath(e, spot)));
}

/** Whether a spot is in a closed path, its arcs taken as straight. */
function inPath({ d }: Path, [x, y]: Spot): boolean {
	const corners = d.map(({ to }) => to);
	return corners.reduce((within, [x1, y1], i) => {
		const [x0, y0] = corners.at(i - 1) ?? [x1, y1];
		return y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0) ? !within : within;
	}, false);
}

/** Half the widest line, so that no line is drawn over the edge. Units: mm. */
const EDGE = 0.5;
const inset = (b: Box): Box => ({ x0: b.x0 + EDGE, y0: b.y0 + EDGE, x1: b.x1 - EDGE, y1: b.y1 - EDGE });

/** Where a hand is on a thing. */
const pointOn = ({ holds }: Acting, about: string, side: Sideways): Spot | undefined => {
	const hold = holds.find(({ mark }) => mark.accessory.id === about);
	return hold && side.spot(hold.goal.at);
};

function chairOf({ inChair, seat, stance }: Acting, side: Sideways, id: string): readonly Entity[] {
	if (!inChair || !seat) return [];
	return chairEntities({ ...seat, sole: soleAbove(stance, seat.floor) + seat.floor }, side, id);
}

/** Points of a figure, with how far its outline lies from them. */
function figurePoints({ stance, arms }: Acting): readonly { readonly at: Vec; readonly by: number }[] {
	const { legs, postures, head, hip } = stance;
	const limbs = [arms.left, arms.right, legs.left, legs.right];
	return [
		...limbs.flatMap(({ root, joint, end }) => [root, joint, end].map((at) => ({ at, by: 95 }))),
		...[legs.left, legs.right].map(({ end }) => ({ at: toe(end, postures.left.forward), by: 24 })),
		{ at: head, by: SKULL + 22 },
		{ at: hip, by: 112 }
	];
}

const toe = (ankle: Vec, facing: Vec): Vec => [
	ankle[0] + facing[0] * 152,
	ankle[1] + facing[1] * 152,
	ankle[2] - ANKLE + 24
];

function figureBox(acting: Acting, side: Sideways): Box {
	const spots = figurePoints(acting).map(({ at, by }) => ({ at: side.spot(at), by: by / side.scale }));
	const { window: w } = side;
	return {
		x0: Math.max(w.x0, Math.min(...spots.map(({ at, by }) => at[0] - by))),
		y0: Math.max(w.y0, Math.min(...spots.map(({ at, by }) => at[1] - by))),
		x1: Math.min(w.x1, Math.max(...spots.map(({ at, by }) => at[0] + by))),
		y1: Math.min(w.y1, Math.max(...spots.map(({ at, by }) => at[1] + by)))
	};
}

/** How much of the room is seen beyond what is looked at, above it, and under the floor. Units: mm. Ours. */
const ROOM = { beside: 120, above: 90, under: 70 };
/** A large room is cut off where nothing more is shown. Units: mm. Ours. */
const WHOLE = 1250;

/** The room from wall to wall, cut off where it is large and empty; outside it as far as somebody stands there. */
function seenOf(plan: Plan, acting: Acting, far: ReturnType<typeof farWall>): Seen {
	const { room } = plan.scene;
	const { length } = room.walls[far];
	const on = (p: Vec): number => toWall(far, p, room.footprint).at[0];
	const figure = figurePoints(acting);
	const xs = figure.flatMap(({ at, by }) => [on(at) - by, on(at) + by]);
	const marks = plan.marks.filter(({ place }) => place.wall === far || BESIDE[far].includes(place.wall));
	const reach = marks.flatMap(({ place, variant }) =>
		[variant.outline.x0, variant.outline.x1].flatMap((x) =>
			[0, variant.depth].map((off) => on(toPlan(place.wall, [place.x + x, place.y], off, room.footprint)))
		)
	);
	const all = [...xs, ...reach];
	const end = entryEnd(far);
	const [left, right] = [Math.min(...all) - ROOM.beside, Math.max(...all) + ROOM.beside];
	const tops = [
		...figure.map(({ at, by }) => at[2] + by),
		...marks.map(({ place, variant }) =>
			variant.stands === 'ceiling' || variant.stands === 'floor-and-ceiling' ? place.y : place.y + variant.outline.y1
		)
	];
	const floors = [room.bathroomFloor, ...[0, length].flatMap((x) => [room.floorUnder(far, x, x).low])];
	return {
		x0: end === 'left' && left < 0 ? left : length > WHOLE && left > 0 ? left : -CUT,
		x1: end === 'right' && right > length ? right : length > WHOLE && right < length ? right : length + CUT,
		low: Math.min(...floors) - ROOM.under,
		high: Math.max(...tops) + ROOM.above
	};
}
