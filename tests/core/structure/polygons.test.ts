import { BooleanOperations, Box, Point, Polygon, Vector } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { holeSlack } from '#core/enclosure/hole-slack.ts';
import { roomOf } from '#core/enclosure/room.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { FAR } from '#core/structure/carrying.ts';
import type { Member } from '#core/structure/member.ts';
import { depthOf, regionOf } from '#core/structure/region.ts';
import { gaugeDiameter } from '#core/structure/screw.ts';
import { enclosureWith } from '../enclosure/some-room.ts';
import { backWall } from './some-case.ts';

// Source: @flatten-js/core, a polygon library that others keep. Nothing here but the figures themselves is ours: what
// our sources do with rectangles and a minimum or maximum is done with polygons moved, cut, joined and measured.
const WALLS = 200;
const EXACT = 1e-6;

/** On a grid far finer than what is compared, so that edges that lie on one another do so exactly: the library asks it. */
function snapped(n: number): number {
	return Math.round(n * 2 ** 24) / 2 ** 24;
}

/** Corners on a coarse grid, so that edges often lie on one another or touch. */
const rects = fc
	.record({
		x0: fc.integer({ min: 0, max: 80 }),
		y0: fc.integer({ min: -70, max: 70 }),
		wide: fc.integer({ min: 1, max: 40 }),
		high: fc.integer({ min: 1, max: 40 })
	})
	.map(({ x0, y0, wide, high }) => ({
		x0: x0 * 10,
		x1: (x0 + wide) * 10,
		y0: y0 * 10,
		y1: (y0 + high) * 10
	}));
const some = fc.array(rects, { minLength: 1, maxLength: 4 });
/** In steps of a thousandth: a drawn double is mostly next to nothing. */
const within = (min: number, max: number) => fc.integer({ min: min * 1000, max: max * 1000 }).map((n) => n / 1000);
const anywhere = fc.tuple(within(-100, 1000), within(-900, 1200));
/** Near a corner of what is there, where the nearest edge changes. */
const nearby = fc.tuple(fc.nat(), fc.boolean(), fc.boolean(), within(-60, 60), within(-60, 60));

/** Points all over a wall and round the corners of what is on it. */
const wallOf = fc.tuple(
	some,
	fc.array(anywhere, { minLength: 10, maxLength: 10 }),
	fc.array(nearby, { minLength: 15, maxLength: 15 })
);
type Drawn = typeof wallOf extends fc.Arbitrary<infer T> ? T : never;

function pointsOf([on, far, near]: Drawn): readonly (readonly [number, number])[] {
	const atCorners = near.map(([i, right, up, dx, dy]) => {
		const rect = on[i % on.length] ?? { x0: 0, y0: 0, x1: 0, y1: 0 };
		return [(right ? rect.x1 : rect.x0) + dx, (up ? rect.y1 : rect.y0) + dy] as const;
	});
	return [...far, ...atCorners];
}

const polygon = ({ x0, y0, x1, y1 }: Rect) => new Polygon(new Box(x0, y0, x1, y1));
const joined = (all: readonly Polygon[]) => all.reduce((a, b) => BooleanOperations.unify(a, b), new Polygon());

/** Distance to the edge, + inside; minus infinity where there is nothing. */
function signedDistance(shape: Polygon, x: number, y: number): number {
	if (shape.isEmpty()) return -Infinity;
	const point = new Point(x, y);
	const [toEdge] = shape.distanceTo(point);
	return shape.contains(point) ? toEdge : -toEdge;
}

// Source: the README: 2.5 diameters of a #14 and at least 13 mm from an edge.
const EDGE = snapped(Math.max(2.5 * gaugeDiameter(14), 13));
// Source: the generic flange, three holes on a 60 mm circle.
const RADIUS = 30;

/** Wood less the edge that screws keep. */
function bitten({ x0, y0, x1, y1 }: Rect, edge: number): Polygon {
	const room = Math.min(x1 - x0, y1 - y0) > 2 * edge;
	return room ? polygon({ x0: x0 + edge, y0: y0 + edge, x1: x1 - edge, y1: y1 - edge }) : new Polygon();
}

/** Where the centre of a flange may be: for each of four turns the bitten wood moved back by each hole, and what is in all three. */
function flangeCentres(wood: Rect): Polygon {
	const bites = bitten(wood, EDGE);
	if (bites.isEmpty()) return bites;
	const turns = [0, 90, 180, 270].map((turn) =>
		[0, 120, 240]
			.map((hole) => ((turn + hole) * Math.PI) / 180)
			.map((angle) => new Vector(snapped(-RADIUS * Math.cos(angle)), snapped(-RADIUS * Math.sin(angle))))
			.map((back) => bites.translate(back))
			.reduce((a, b) => (a.isEmpty() ? a : BooleanOperations.intersect(a, b)))
	);
	return joined(turns.filter((shape) => !shape.isEmpty()));
}

const wood = (rect: Rect): Member => ({
	name: 'wood',
	rect,
	sure: true,
	kind: 'wood',
	depth: 60,
	gravity: 0.5,
	sheet: false
});
const blocking = (on: readonly Rect[]) =>
	Object.fromEntries(
		on.map((rect, i) => [`b${String(i)}`, { kind: 'blocking', ...rect, thickness: 60, gravity: 0.5, how: 'measured' }])
	);

/** How often each thing that can be said of a point was said, so that a promise about none of them is noticed. */
interface Met {
	in: number;
	less: number;
	out: number;
	none: number;
}
const none = (): Met => ({ in: 0, less: 0, out: 0, none: 0 });

/** The greatest depth in some shapes: outside the distance to them, inside at most the distance to the edge of all. */
function expectUnion(ours: number, theirs: number, met: Met): void {
	if (theirs === -Infinity) {
		expect(ours).toBeLessThanOrEqual(-FAR);
		met.none++;
	} else if (theirs < EXACT) {
		expect(Math.abs(ours - theirs)).toBeLessThan(EXACT);
		met.out++;
	} else {
		expect(ours).toBeGreaterThan(-EXACT);
		expect(ours).toBeLessThan(theirs + EXACT);
		met.in++;
		if (ours < theirs - EXACT) met.less++;
	}
}

/** The least distance from what is kept clear of: inside the distance to the edge of all, outside at most the way out. */
function expectRest(ours: number, theirs: number, met: Met): void {
	if (theirs > -EXACT) {
		expect(Math.abs(ours - theirs)).toBeLessThan(EXACT);
		met.in++;
	} else {
		expect(ours).toBeLessThan(EXACT);
		expect(ours).toBeGreaterThan(theirs - EXACT);
		if (theirs === -Infinity) met.none++;
		else met.out++;
		if (ours > theirs + EXACT) met.less++;
	}
}

/** Tries a promise on 200 walls, the same every time. */
const onWalls = (promise: (on: readonly Rect[], points: ReturnType<typeof pointsOf>) => void) => {
	fc.assert(
		fc.property(fc.noBias(wallOf), (drawn) => {
			promise(drawn[0], pointsOf(drawn));
		}),
		{ numRuns: WALLS }
	);
};

describe('regions against a kept polygon library', () => {
	test('[structure R11] a flange in wood: outside the exact distance, inside a lower bound', () => {
		const met = none();
		onWalls((on, points) => {
			for (const rect of on) {
				const region = regionOf(wood(rect), { bracket: 'flange', force: 1112, damp: false });
				const shape = flangeCentres(rect);
				for (const [x, y] of points) expectUnion(depthOf(region, x, y), signedDistance(shape, x, y), met);
			}
		});
		for (const times of Object.values(met)) expect(times).toBeGreaterThan(20);
	});

	test('[structure R11] a whole wall: the same for the nearest of all pieces', () => {
		const met = none();
		onWalls((on, points) => {
			const holds = backWall({ backing: blocking(on) });
			const shape = joined(on.map(flangeCentres).filter((one) => !one.isEmpty()));
			for (const [x, y] of points) {
				expectUnion(holds.at('back', { kind: 'flange' }, x, y).sure, signedDistance(shape, x, y), met);
			}
		});
		for (const times of Object.values(met)) expect(times).toBeGreaterThan(20);
	});

	test('[structure R11] a rest asks one rectangle a piece: exact inside as well', () => {
		const met = none();
		onWalls((on, points) => {
			for (const rect of on) {
				const region = regionOf(wood(rect), { bracket: 'rest', force: 1112, damp: false });
				const shape = bitten(rect, 13);
				for (const [x, y] of points) expectUnion(depthOf(region, x, y), signedDistance(shape, x, y), met);
			}
		});
		expect(met.in).toBeGreaterThan(100);
		expect(met.less).toBe(0);
	});

	test('[enclosure R5] the slack of a hole: exact where it is clear, elsewhere at most the way out', () => {
		const met = none();
		const kinds = ['pipe', 'cable', 'old-hole', 'niche'] as const;
		const hows = ['measured', 'told'] as const;
		onWalls((on, points) => {
			const keepOuts = Object.fromEntries(
				on.map((rect, i) => [`k${String(i)}`, { kind: kinds[i], how: hows[i % 2], ...rect }])
			);
			const room = roomOf(enclosureWith({ fall: { value: 0, how: 'measured' } }, { back: { keepOuts } }));
			const { from, to, bottom, top } = room.walls.back;
			const free = room.walls.back.keepOuts
				.map(({ rect }) => polygon(rect))
				.reduce(
					(rest, keepOut) => (rest.isEmpty() ? rest : BooleanOperations.subtract(rest, keepOut)),
					polygon({ x0: from, y0: bottom, x1: to, y1: top })
				);
			for (const [x, y] of points) {
				const radius = 40;
				const ours = holeSlack(room, 'back', { x, y, radius }) + radius;
				expectRest(ours, signedDistance(free, x, y), met);
			}
		});
		expect(Math.min(met.in, met.out, met.less)).toBeGreaterThan(100);
	});
});
