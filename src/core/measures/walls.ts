import type { Mark } from '../case/accessory.ts';
import { holeSlack } from '../enclosure/hole-slack.ts';
import { apart } from '../geometry/rect.ts';
import { FAR } from '../structure/carrying.ts';
import type { Measure, Reading, Scene } from './scene.ts';
import { fromBack, onWall } from './where.ts';

/** How far the outline keeps inside the wall: both ends, the floor below and the top of the wall. */
function fitsWall(s: Scene, m: Mark): number {
	const { x0, y0, x1, y1 } = onWall(m, m.variant.outline);
	const { length, top } = s.room.walls[m.place.wall];
	return Math.min(x0, length - x1, y0 - s.room.floorUnder(m.place.wall, x0, x1).high, top - y1);
}

function holesClear(s: Scene, m: Mark): number {
	let least = FAR;
	for (const { x, y, radius } of m.variant.brackets) {
		const disc = { x: m.place.x + x, y: m.place.y + y, radius };
		least = Math.min(least, holeSlack(s.room, m.place.wall, disc));
	}
	return least;
}

/** The bracket that is held worst speaks for the part; a question any bracket raises is a question about the part. */
function carries(s: Scene, m: Mark): Reading {
	let best = FAR;
	let sure = FAR;
	let missing: string | undefined;
	for (const bracket of m.variant.brackets) {
		const held = s.holds.at(m.place.wall, bracket.kind, m.place.x + bracket.x, m.place.y + bracket.y);
		best = Math.min(best, held.best);
		sure = Math.min(sure, held.sure);
		missing ??= held.missing;
	}
	return best === sure ? best : { best, sure, missing: missing ?? `What is behind the ${m.place.wall} wall?` };
}

interface Extent {
	readonly from: number;
	readonly to: number;
}

const between = (a: Extent, b: Extent): number => Math.max(a.from - b.to, b.from - a.to);

function alongWidth(s: Scene, m: Mark): Extent {
	const { width } = s.room.footprint;
	const { outline, depth } = m.variant;
	if (m.place.wall === 'back') return { from: m.place.x + outline.x0, to: m.place.x + outline.x1 };
	return m.place.wall === 'left' ? { from: 0, to: depth } : { from: width - depth, to: width };
}

function alongDepth(s: Scene, m: Mark): Extent {
	const { outline, depth } = m.variant;
	if (m.place.wall === 'back') return { from: 0, to: depth };
	const ends = [outline.x0, outline.x1].map((x) => fromBack(m.place.wall, m.place.x + x, 0, s.room.footprint));
	return { from: Math.min(...ends), to: Math.max(...ends) };
}

/** Boxes are apart as far as along the axis that parts them most. */
function boxesApart(s: Scene, a: Mark, b: Mark): number {
	const heights = Math.max(
		a.place.y + a.variant.outline.y0 - (b.place.y + b.variant.outline.y1),
		b.place.y + b.variant.outline.y0 - (a.place.y + a.variant.outline.y1)
	);
	return Math.max(heights, between(alongWidth(s, a), alongWidth(s, b)), between(alongDepth(s, a), alongDepth(s, b)));
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
