import type { Mark } from '#core/case/accessory.ts';
import { oppositeWall, toPlan, WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import { apart } from '#core/geometry/rect.ts';
import type { Measure, Scene } from './scene.ts';
import {
	alongSeatWall,
	centreLine,
	floorUnder,
	fromBack,
	fromSeatWall,
	onWall,
	projecting,
	seatFront,
	tube
} from './where.ts';

/** Level of the top of a level bar. Units: mm from the datum line. */
export const top = (bar: Mark): number => bar.place.y + bar.variant.diameter / 2;

/** From the corner two walls share to the nearer flange centre of a bar on one of them. */
function endFromCorner(s: Scene, bar: Mark, other: WallId): number {
	const { wall, x } = bar.place;
	const length = s.room.walls[wall].length;
	return CLOCKWISE[wall] === other ? length - (x + bar.variant.length) : x;
}

/** The wall that joins the right end of a wall, seen from inside. */
const CLOCKWISE = { back: 'right', right: 'front', front: 'left', left: 'back' } as const;

/** The clear space between two bars that meet in a corner: along the one, along the other, or between their heights. */
function cornerClearance(s: Scene, a: Mark, b: Mark): number {
	if (oppositeWall(a.place.wall) === b.place.wall) return s.room.footprint.width;
	return Math.max(
		endFromCorner(s, a, b.place.wall) - b.variant.gap - b.variant.diameter,
		endFromCorner(s, b, a.place.wall) - a.variant.gap - a.variant.diameter,
		Math.abs(a.place.y - b.place.y) - (a.variant.diameter + b.variant.diameter) / 2
	);
}

/** Whether two walls make an inside corner: both stand there. */
function meet({ walls }: Scene['room'], wall: WallId, other: WallId): boolean {
	const [a, b] = [walls[wall], walls[other]];
	if (!b.stands) return false;
	if (CLOCKWISE[wall] === other) return a.to === a.length && b.from === 0;
	return CLOCKWISE[other] === wall && a.from === 0 && b.to === b.length;
}

/** At which ends of a wall, seen from inside, another makes an inside corner with it. */
export const cornersOn = (s: Scene, wall: WallId): { readonly first: boolean; readonly last: boolean } => ({
	first: WALL_IDS.some((other) => CLOCKWISE[other] === wall && meet(s.room, wall, other)),
	last: meet(s.room, wall, CLOCKWISE[wall])
});

/** The larger of the gaps a bar leaves to inside corners; an open end makes none. */
function cornerGap(s: Scene, bar: Mark, others: readonly WallId[]): number {
	const corners = others.filter((other) => meet(s.room, bar.place.wall, other));
	return Math.max(0, ...corners.map((other) => endFromCorner(s, bar, other)));
}

/** How far a bar and the footprint of a seat are apart in plan, along the way that parts them most. */
function clearOfSeat(s: Scene, bar: Mark, seat: Mark): number {
	const { wall, x } = bar.place;
	const { gap, diameter, length } = bar.variant;
	const ends = [
		{ x, off: gap },
		{ x: x + length, off: gap + diameter }
	];
	const along = ends.map((at) => alongSeatWall(s, wall, at));
	const ahead = ends.map((at) => fromSeatWall(s, wall, at));
	const apartFrom = ({ edges, rear, front }: Footing): number =>
		Math.max(
			Math.min(...along) - Math.max(...edges),
			Math.min(...edges) - Math.max(...along),
			Math.min(...ahead) - front,
			rear - Math.max(...ahead)
		);
	return Math.min(...footingsOf(s, seat).map(apartFrom));
}

/** A rectangle of the footprint of a seat: its two side edges along the seat wall, and how far ahead it begins and ends. */
interface Footing {
	readonly edges: readonly [number, number];
	readonly rear: number;
	readonly front: number;
}

/** The footprint of a seat: one rectangle, or two that make an L. */
function footingsOf(s: Scene, seat: Mark): readonly Footing[] {
	const { length, depth, gap, arm } = seat.variant;
	const middle = centreLine(s, seat);
	const front = seatFront(s, seat);
	const body: Footing = { edges: [middle - length / 2, middle + length / 2], rear: front - depth + gap, front };
	if (!arm) return [body];
	const edge = (x: number): number => alongSeatWall(s, seat.place.wall, { x: seat.place.x + x, off: 0 });
	return [body, { ...body, edges: [edge(arm.x0), edge(arm.x1)], front: arm.to }];
}

/** How far ahead a seat reaches along a wall beside it: to the end of its arm on the wall the arm runs along. */
function seatEdgeOn(s: Scene, seat: Mark, wall: WallId): number {
	const { arm, outline } = seat.variant;
	if (!arm) return seatFront(s, seat);
	const own = seat.place.wall;
	const beside = arm.x1 === outline.x1 ? CLOCKWISE[own] === wall : CLOCKWISE[wall] === own;
	return beside ? arm.to : seatFront(s, seat);
}

/** Bars among themselves, over the floor, and against what is near them. */
export const BARS = {
	'bar-top-from-high-floor': {
		what: 'Top of the gripping surface above the highest floor under the bar.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, bar) => top(bar) - floorUnder(s, bar).high
	},
	'bar-top-from-low-floor': {
		what: 'Top of the gripping surface above the lowest floor under the bar.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, bar) => top(bar) - floorUnder(s, bar).low
	},
	'bar-gap': {
		what: 'Clear space between wall and bar.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, bar) => bar.variant.gap
	},
	'bar-diameter': {
		what: 'Outside diameter of a round bar.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, bar) => bar.variant.diameter
	},
	'bar-perimeter': {
		what: 'Way round the section of a bar.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, bar) => Math.PI * bar.variant.diameter
	},
	'bar-end-from-control-wall': {
		what: 'From the control wall to the flange centre of a back-wall bar that lies farther from it.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, bar) => s.room.sitting.reach - Math.min(...ends(s, bar))
	},
	'from-entry-line': {
		what: 'From the open part of the entry line to the axis of a vertical bar, in plan.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, bar) => {
			const { footprint, opening, entryLine } = s.room;
			const [x, y] = toPlan(bar.place.wall, [bar.place.x, 0], bar.variant.gripOff, footprint);
			return Math.hypot(Math.max(0, opening.x0 - x, x - opening.x1), entryLine - y);
		}
	},
	'bar-entry-end': {
		what: 'From the entry line to the nearer flange centre of a bar on a side wall.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, bar) => s.room.footprint.depth - Math.max(...endsFromBack(s, bar))
	},
	'bar-back-end': {
		what: 'From the back wall to the nearer flange centre of a bar on a side wall.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, bar) => Math.min(...endsFromBack(s, bar))
	},
	'bar-height-difference': {
		what: 'Difference in height between the tops of two bars, without sign.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'pair',
		of: (_, a, b) => Math.abs(top(a) - top(b))
	},
	'clear-of-bar': {
		what: 'From a bar, flange centre to flange centre, to the outline of what projects on the same wall.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (_, bar, other) => apart(projecting(bar), projecting(other))
	},
	'clear-above-bar': {
		what: 'From the top of a bar up to the underside of what projects above it, or sideways to what does not overlap it.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (_, bar, other) => {
			const it = projecting(other);
			const over = tube(bar);
			return Math.max(it.y0 - over.y1, it.x0 - over.x1, over.x0 - it.x1);
		}
	},
	'bar-corner-gap': {
		what: 'From a flange centre of a bar to the wall of the inside corner there; the larger where there are two.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, bar) => cornerGap(s, bar, WALL_IDS)
	},
	'bar-corner-gap-off-seat': {
		what: 'The same, the corner with the wall behind the seat apart.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, bar) =>
			cornerGap(
				s,
				bar,
				WALL_IDS.filter((wall) => wall !== s.room.seatWall)
			)
	},
	'clear-of-seat': {
		what: 'Between a bar and the footprint of the seat in plan, along the way that parts them most; negative over the seat.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: clearOfSeat
	},
	'underside-above-bar': {
		what: 'From the top of a bar up to the underside of what is on its wall.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'pair',
		of: (_, m, bar) => onWall(m, m.variant.outline).y0 - top(bar)
	},
	'corner-clearance': {
		what: 'Clear space between two bars on adjoining walls, from the flange centre of one to the tube of the other.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: cornerClearance
	},
	'near-end-past-seat': {
		what: 'From the front edge of the seat forward to the nearer flange centre of the bar; negative behind the edge.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, bar, seat) => Math.min(...ends(s, bar)) - seatFront(s, seat)
	},
	'near-end-past-seat-edge': {
		what: 'The same from the edge of the seat at the wall of the bar: the end of its arm where that runs along it.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, bar, seat) => Math.min(...ends(s, bar)) - seatEdgeOn(s, seat, bar.place.wall)
	},
	'far-end-past-seat': {
		what: 'From the front edge of the seat forward to the farther flange centre of the bar.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, bar, seat) => Math.max(...ends(s, bar)) - seatFront(s, seat)
	}
} satisfies Record<string, Measure>;

/** Both flange centres of a bar, from the seat wall. Units: mm. */
export function ends(s: Scene, bar: Mark): readonly [number, number] {
	const { wall, x } = bar.place;
	const off = bar.variant.gripOff;
	return [fromSeatWall(s, wall, { x, off }), fromSeatWall(s, wall, { x: x + bar.variant.length, off })];
}

/** Both flange centres of a bar on a side wall, from the back wall. */
function endsFromBack(s: Scene, bar: Mark): readonly [number, number] {
	const { wall, x } = bar.place;
	const { gripOff, length } = bar.variant;
	const { footprint } = s.room;
	return [fromBack(wall, x, gripOff, footprint), fromBack(wall, x + length, gripOff, footprint)];
}
