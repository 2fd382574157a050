import type { Mark } from '#core/case/accessory.ts';
import { holeSlack } from '#core/enclosure/hole-slack.ts';
import { toPlan, type WallId } from '#core/geometry/frame.ts';
import { apart } from '#core/geometry/rect.ts';
import { FAR } from '#core/structure/carrying.ts';
import type { Between, Measure, Reading, Scene } from './scene.ts';
import { onWall } from './where.ts';

/** A load a document prints. Units: N. */
interface Printed {
	readonly force: number;
	readonly words: string;
}

/** Source: ICC A117.1 609.8; ADA 2010 609.8 and 610.4. */
const POUNDS_250: Printed = { force: 1112, words: '250 lbf (1112 N)' };
/** Source: Ontario Building Code 3.8.3.8.(7) and 3.8.3.13; British Columbia Building Code 3.7.2.7 and 3.8.3.17. */
const KILONEWTONS_1_3: Printed = { force: 1300, words: '1.3 kN' };

/** How far the outline keeps inside the wall: both ends, the highest floor along it and its top. */
function fitsWall(s: Scene, m: Mark): number {
	const { outline } = m.variant;
	const { x, y } = m.place;
	const { from, to, bottom, top } = s.room.walls[m.place.wall];
	return Math.min(x + outline.x0 - from, to - x - outline.x1, y + outline.y0 - bottom, top - y - outline.y1);
}

/** On a wall nobody looked into, clear of what is recorded is not clear of what runs there. */
function holesClear(s: Scene, m: Mark): Reading {
	let least = FAR;
	for (const { x, y, radius } of m.variant.brackets) {
		const disc = { x: m.place.x + x, y: m.place.y + y, radius };
		least = Math.min(least, holeSlack(s.room, m.place.wall, disc));
	}
	const { wall } = m.place;
	if (s.room.walls[wall].surveyed) return least;
	return {
		best: least,
		sure: -FAR,
		missing: `What runs behind the ${wall} wall? Scan it for pipes, cables and metal.`
	};
}

/** The bracket that is held worst speaks for the part; a question any bracket raises is a question about the part. */
function carries(s: Scene, m: Mark): number | Between {
	let best = FAR;
	let sure = FAR;
	let missing: string | undefined;
	for (const bracket of m.variant.brackets) {
		const held = s.holds.at(m.place.wall, bracket, m.place.x + bracket.x, m.place.y + bracket.y);
		best = Math.min(best, held.best);
		sure = Math.min(sure, held.sure);
		missing ??= held.missing;
	}
	return best === sure ? best : { best, sure, missing: missing ?? `What is behind the ${m.place.wall} wall?` };
}

/** The same for a load a document prints: where this plan asks for less, carrying that says nothing sure of more. */
const carriesPrinted =
	({ force, words }: Printed) =>
	(s: Scene, m: Mark): Reading => {
		const held = carries(s, m);
		if (s.holds.demand.force >= force || m.variant.brackets.length === 0) return held;
		return {
			best: typeof held === 'number' ? held : held.best,
			sure: -FAR,
			missing: `This plan asks for less than ${words}: do the fixings carry that too?`
		};
	};

/** From the middle of the brackets to a wall that stands at right angles to theirs. */
function driverRoom(s: Scene, { place, variant }: Mark): Reading {
	const { from, to, length } = s.room.walls[place.wall];
	const [atFirst, atLast] = ENDS[place.wall];
	// A front wall ends where the entry begins.
	const first = s.room.walls[atFirst].stands && from === 0 ? from : -FAR;
	const last = s.room.walls[atLast].stands && to === length ? to : FAR;
	return Math.min(FAR, ...variant.brackets.map(({ x }) => Math.min(place.x + x - first, last - place.x - x)));
}

/** The walls at the left and at the right end of each as one faces it. */
const ENDS: Readonly<Record<WallId, readonly [WallId, WallId]>> = {
	back: ['left', 'right'],
	left: ['front', 'back'],
	right: ['back', 'front'],
	front: ['right', 'left']
};

/** Of a real bar: the load marked on it beside the force of this plan. */
function ratedBy(s: Scene, { accessory }: Mark): Reading {
	const real = s.c.parts[accessory.id];
	if (!real) return 1;
	if (real.load === undefined) return { missing: `What load is marked on "${real.name}"?` };
	return real.load >= s.holds.demand.force ? 1 : 0;
}

/** What a part takes up along its wall from its place, and how far out from it. Units: mm. */
interface Span {
	readonly x0: number;
	readonly x1: number;
	readonly to: number;
}

/** What a part takes up: one box, or two that make an L. */
export const spansOf = ({ variant: { outline, depth, arm } }: Mark): readonly Span[] => {
	const body = { x0: outline.x0, x1: outline.x1, to: depth };
	return arm ? [body, arm] : [body];
};

/** Where a box of a part begins and ends along the width of the room, and from the back wall outward. Units and frame: mm, plan frame. */
export function boxOf(s: Scene, { place }: Mark, { x0, x1, to }: Span): { readonly width: Ends; readonly depth: Ends } {
	const near = toPlan(place.wall, [place.x + x0, 0], 0, s.room.footprint);
	const far = toPlan(place.wall, [place.x + x1, 0], to, s.room.footprint);
	return {
		width: [Math.min(near[0], far[0]), Math.max(near[0], far[0])],
		depth: [Math.min(near[1], far[1]), Math.max(near[1], far[1])]
	};
}

/** From where to where along an axis of the plan. Units: mm. */
export type Ends = readonly [number, number];

/** From one span to another; negative how deep they meet. */
const between = ([a0, a1]: Ends, [b0, b1]: Ends): number => Math.max(a0 - b1, b0 - a1);

/** Boxes are apart as far as along the axis that parts them most. */
function boxesApart(s: Scene, a: Mark, b: Mark): number {
	const heights = (m: Mark): Ends => [m.place.y + m.variant.outline.y0, m.place.y + m.variant.outline.y1];
	let inPlan = Infinity;
	for (const span of spansOf(a)) {
		const one = boxOf(s, a, span);
		for (const against of spansOf(b)) {
			const other = boxOf(s, b, against);
			inPlan = Math.min(inPlan, Math.max(between(one.width, other.width), between(one.depth, other.depth)));
		}
	}
	return Math.max(inPlan, between(heights(a), heights(b)));
}

/** A part on its wall, what its holes meet, what they bite, and room between parts. */
export const WALLS = {
	'inside-wall': {
		what: 'How far the outline of a part lies inside the edges of its wall.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: fitsWall
	},
	'holes-clear': {
		what: 'How far the brackets keep clear of pipes, cables, seams and the edges of the wall.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: holesClear
	},
	carries: {
		what: 'How far the worst bracket lies inside what carries the load of this plan.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: carries
	},
	'carries-printed': {
		what: 'How far the worst bracket lies inside what carries 1112 N, or the load of this plan where that is more.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: carriesPrinted(POUNDS_250)
	},
	'carries-1300': {
		what: 'How far the worst bracket lies inside what carries 1300 N, or the load of this plan where that is more.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: carriesPrinted(KILONEWTONS_1_3)
	},
	'driver-room': {
		what: 'From the middle of the nearest bracket to a wall at right angles to its own.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: driverRoom
	},
	'marked-load': {
		what: 'Whether the load marked on a part that was read off is at least the force of this plan; 1 for generic parts.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: ratedBy
	},
	'outlines-apart': {
		what: 'From the outline of a part to the outline of another on the same wall.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (_, a, b) => apart(onWall(a, a.variant.outline), onWall(b, b.variant.outline))
	},
	'boxes-apart': {
		what: 'Between the boxes two parts on different walls take up, along the axis that parts them most.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: boxesApart
	}
} satisfies Record<string, Measure>;
