import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Rect } from '#core/geometry/vec.ts';
import { FLANGE } from '#core/structure/flange.ts';
import { depthOf, regionOf } from '#core/structure/region.ts';
import { gaugeDiameter } from '#core/structure/screw.ts';
import { bestTurn } from '#core/structure/turn.ts';

// Source: the README: three holes on a circle of 30 mm, 2.5 diameters of a #14 from the edge of the wood.
const RADIUS = 30;
const EDGE = 2.5 * gaugeDiameter(14);
/** The side of the triangle of holes with its edges. */
const ROOMY = RADIUS * Math.sqrt(3) + 2 * EDGE;
/** Every half degree of a third of the circle, after which three equal holes are the same again. */
const ALL_TURNS = Array.from({ length: 240 }, (_, i) => i / 2);
const FOUR = [0, 90, 180, 270];

/** How far the least of three holes is past the edge distance, the first of them `turn` degrees clockwise from up. */
function spare(wood: Rect, x: number, y: number, turn: number): number {
	const holes = [0, 120, 240].map((hole) => {
		const angle = ((turn + hole) * Math.PI) / 180;
		return [x + RADIUS * Math.sin(angle), y + RADIUS * Math.cos(angle)] as const;
	});
	const toEdges = holes.map(([hx, hy]) => Math.min(hx - wood.x0, wood.x1 - hx, hy - wood.y0, wood.y1 - hy));
	return Math.min(...toEdges) - EDGE;
}

const works = (wood: Rect, x: number, y: number, turns: readonly number[]) =>
	turns.filter((turn) => spare(wood, x, y, turn) >= -1e-9).length / turns.length;

const depthIn = (rect: Rect) => {
	const region = regionOf(
		{ name: 'wood', rect, sure: true, kind: 'wood', depth: 60, gravity: 0.5, sheet: false },
		{ bracket: 'flange', force: 1112, damp: false }
	);
	return (x: number, y: number) => depthOf(region, x, y);
};

/** A piece of wood between two sizes each way, and centres of flanges in it. */
const pieces = (least: number, most: number, leastHigh = least, mostHigh = most) => {
	const steps = (min: number, max: number) =>
		fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((n) => n / 1000);
	const centre = fc.tuple(steps(0, 1), steps(0, 1));
	return fc.noBias(
		fc
			.tuple(steps(least, most), steps(leastHigh, mostHigh), fc.array(centre, { minLength: 30, maxLength: 30 }))
			.map(([x1, y1, at]) => ({
				wood: { x0: 0, y0: 0, x1, y1 },
				centres: at.map(([x, y]) => [x * x1, y * y1] as const)
			}))
	);
};

/** What four turns lose against all: the greatest distance from a centre that some turn allows to one that ours allow. */
function loss(drawn: ReturnType<typeof pieces>, numRuns: number): number {
	let most = 0;
	const run = fc.property(drawn, ({ wood, centres }) => {
		const depth = depthIn(wood);
		for (const [x, y] of centres) if (works(wood, x, y, ALL_TURNS) > 0) most = Math.max(most, -depth(x, y));
	});
	fc.assert(run, { numRuns });
	return most;
}

describe('bracket angle against brute force', () => {
	test('[structure R8] inside is where one of four turns keeps all three holes from the edge, and only there', () => {
		const met = { inside: 0, outside: 0 };
		const drawn = pieces(60, 200);
		fc.assert(
			fc.property(drawn, ({ wood, centres }) => {
				const depth = depthIn(wood);
				for (const [x, y] of centres) {
					const inside = depth(x, y) >= 0;
					expect(works(wood, x, y, FOUR) > 0).toBe(inside);
					if (inside) expect(works(wood, x, y, ALL_TURNS)).toBeGreaterThan(0);
					met[inside ? 'inside' : 'outside']++;
				}
			}),
			{ numRuns: 200 }
		);
		expect(Math.min(met.inside, met.outside)).toBeGreaterThan(500);
	});

	// Source: exact geometry. In a corner, 30 (cos 30 - cos 45) = 4.77; at the end of a strip just too narrow for the side of the
	// triangle, 30 (cos 30 - cos 60) along it and 30 - 30 cos 30 across: 11.69.
	test('[structure R8] in wood of 82.7 mm and more four turns lose no more than 4.8 mm against all', () => {
		const most = loss(pieces(ROOMY, 110), 300);
		expect(most).toBeLessThan(4.768);
		expect(most).toBeGreaterThan(4);
	});

	test('[structure R8] in narrower strips they lose no more than 11.7 mm, at the ends', () => {
		const most = loss(pieces(ROOMY, 110, ROOMY - 1, ROOMY - 0.001), 600);
		expect(most).toBeLessThan(11.695);
		expect(most).toBeGreaterThan(6);
		expect(loss(pieces(ROOMY, 110, 74, ROOMY - 1), 300)).toBeLessThan(11.695);
	});

	// Source: exact geometry. Turned by 15 degrees the triangle goes into a square of 51.96 cos 15 = 50.19, and 30.73 of edges: 80.92.
	test.each([
		[80.9, false, false],
		[81, true, false],
		[82.6, true, false],
		[82.7, true, true]
	])('[structure R8] a block %s mm square: some turn %s, one of ours %s', (side, some, ours) => {
		const wood = { x0: 0, y0: 0, x1: side, y1: side };
		const grid = Array.from({ length: 401 }, (_, i) => side / 2 + (i - 200) / 20);
		const at = (turns: readonly number[]) => grid.some((x) => grid.some((y) => works(wood, x, y, turns) > 0));
		expect(at([15, 45, 75, 105])).toBe(some);
		expect(at(FOUR)).toBe(ours);
		expect(depthIn(wood)(side / 2, side / 2) === -Infinity).toBe(!ours);
	});
});

describe('the turn for the installer', () => {
	const wood = { x0: 0, x1: 1000, y0: 0, y1: 300 };
	// Source: exact mechanics, disc 40, holes on radius 30, 54 mm stand-off, 1112 N; 1112 x 54 x (40 + 30 cos 30) / 6150 = 644.2 N
	// with a hole at the side. Exact geometry: 15.37 mm of edge and 15, 25.98 or 30 mm.
	test.each([
		['amid the wood', 500, 150, 'two holes are at the top', 180, 537.0],
		['under its top', 500, 269.6, 'two holes are at the top', 180, 537.0],
		['on its bottom edge', 500, 45.3, 'one hole is at the right', 90, 644.2],
		['where both sides bite, the deeper', 951.6, 45.3, 'one hole is at the left', 270, 644.2],
		['there at the right', 959, 45.3, 'one hole is at the left', 270, 644.2],
		['lower still', 500, 41.3, 'one hole is at the top', 0, 683.5],
		['at its left end', 30.4, 150, 'one hole is at the right', 90, 644.2],
		['at its right end', 969.6, 150, 'one hole is at the left', 270, 644.2]
	])('[structure R15] %s: %s, %s', (_, x, y, says, turn, tension) => {
		const best = bestTurn(wood, [x, y], { force: 1112, edge: EDGE, flange: FLANGE });
		expect([best?.says, best?.turn]).toEqual([`Turn the flange so that ${says}.`, turn]);
		expect(Math.abs((best?.tension ?? NaN) - tension)).toBeLessThan(0.1);
	});

	test('[structure R15] there is one wherever the region says inside, its holes bite, and no turn of the four that bites spares more', () => {
		fc.assert(
			fc.property(pieces(70, 200), ({ wood, centres }) => {
				const depth = depthIn(wood);
				for (const [x, y] of centres) {
					const best = bestTurn(wood, [x, y], { force: 1112, edge: EDGE, flange: FLANGE });
					expect(best !== undefined).toBe(depth(x, y) >= 0);
					if (!best) continue;
					expect(spare(wood, x, y, best.turn)).toBeGreaterThan(-1e-9);
					const bites = FOUR.filter((turn) => spare(wood, x, y, turn) >= 0);
					const least = Math.min(...bites.map(worstPushedDown));
					expect(Math.abs(best.tension - least)).toBeLessThan(1e-5);
				}
			}),
			{ numRuns: 100 }
		);
	});
});

/** Tension of the worst of three screws under 1112 N down, by hand: each has its part of the moment by its height over the lowest point of the disc. */
function worstPushedDown(turn: number): number {
	const heights = [0, 120, 240].map((hole) => 40 + RADIUS * Math.cos(((turn + hole) * Math.PI) / 180));
	return (1112 * 54 * Math.max(...heights)) / heights.reduce((sum, h) => sum + h * h, 0);
}
