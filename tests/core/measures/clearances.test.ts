import { describe, expect, test } from 'vitest';
import { variantOf, type Mark, type Purpose } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Scene } from '#core/measures/scene.ts';
import { caseWith, mark, sceneOf } from '../rules/baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** A room 1000 by 1000 with the seat on the left wall, changed as told. */
const room = (change: Record<string, unknown>): Scene =>
	sceneOf(caseWith({ enclosure: { seatWall: 'left', width: measured(1000), depth: measured(1000), ...change } }));
const at = (variant: string, purpose: Purpose, wall: WallId, [x, y]: readonly [number, number]): Mark =>
	mark(variant, { purpose, wall, x, y, variant: variantOf(variant) });

describe('the leaf of a door that opens inward', () => {
	const inward = (hinge?: 'left' | 'right', entryWidth?: number) =>
		room({
			closing: { kind: 'door-in', hinge, how: 'measured' },
			...(entryWidth !== undefined && { entryWidth: measured(entryWidth) })
		});
	const rest = at('rest', 'rest-handset', 'right', [700, 0]);
	const read = (s: Scene, m = rest) => MEASURES['clear-of-door'].of(s, m);

	test('[measures R16] sweeps a quarter of a circle round its hinge', () => {
		// The rest takes 670 to 730 along the right wall, 70 out: 270 from the entry, 930 to 1000 across.
		expect(read(inward('right', 800))).toBeCloseTo(270 - 800, 6);
		expect(read(inward('left', 800))).toBeCloseTo(Math.hypot(930, 270) - 800, 6);
		expect(read(inward('left', 1000))).toBeCloseTo(Math.hypot(930, 270) - 1000, 6);
	});

	test('[measures R16] is asked about where its hinge is not recorded, and bothers nothing where it opens outward', () => {
		expect(read(inward(undefined, 800))).toEqual({
			best: Math.hypot(930, 270) - 800,
			sure: 270 - 800,
			missing: 'On which side is the door of the entry hung?'
		});
		expect(read(room({ closing: { kind: 'door-out', hinge: 'left', how: 'measured' } }))).toBeGreaterThan(5000);
	});
});

describe('the drain', () => {
	const drained = (x: number, y: number) => room({ drain: { x, y, wide: 100, deep: 100, how: 'measured' } });
	const read = (s: Scene, m: Mark) => MEASURES['feet-off-drain'].of(s, m);

	test('[measures R16] a post stands beside it by half its foot', () => {
		// 300 along the back wall, its axis 116 out; the drain ends 250 along.
		const post = at('post', 'step-in', 'back', [300, 0]);
		expect(read(drained(200, 116), post)).toBeCloseTo(50 - 20, 6);
		expect(read(drained(300, 116), post)).toBeCloseTo(-50 - 20, 6);
	});

	test('[measures R16] each of four legs keeps off it, and what the wall holds has none', () => {
		// 500 wide at 500 along the left wall, read from the entry: legs 280 and 720 along, 50 and 365 out.
		const seat = at('seat-legs-500', 'sit', 'left', [500, 0]);
		expect(read(drained(365, 720), seat)).toBeCloseTo(-70, 6);
		expect(read(drained(50, 280), seat)).toBeCloseTo(-70, 6);
		expect(read(drained(200, 500), seat)).toBeGreaterThan(0);
		const front = at('seat-front-legs-450', 'sit', 'left', [500, 0]);
		expect(read(drained(365, 695), front)).toBeCloseTo(-70, 6);
		expect(read(drained(50, 305), front)).toBeGreaterThan(0);
		expect(read(drained(365, 720), at('seat-450', 'sit', 'left', [500, 0]))).toBeGreaterThan(5000);
	});
});

describe('the ceiling', () => {
	const read = (s: Scene, variant: string) => MEASURES['ceiling-holds'].of(s, at(variant, 'step-in', 'back', [300, 0]));

	test('[measures R16] is asked for a post alone', () => {
		expect(read(room({}), 'post')).toEqual({ missing: 'Does the ceiling take the pressure of a post?' });
		expect(read(room({ ceilingHolds: measured(true) }), 'post')).toBe(1);
		expect(read(room({ ceilingHolds: measured(false) }), 'post')).toBe(0);
		expect(read(room({}), 'post-bar-450')).toBe(1);
	});
});

describe('crossings of tile joints', () => {
	const tiled = (across: number, up: number): Scene => {
		const tiles = { across, up, joint: 0, x: 0, y: 0, how: 'measured' };
		return room({ walls: { back: { facing: { kind: 'tile', thickness: 20, tiles } }, left: {}, right: {} } });
	};
	const bar = (x: number, y: number) => at('bar-600', 'steady', 'back', [x, y]);
	const read = (s: Scene, m: Mark) => MEASURES['off-crossings'].of(s, m);

	test('[measures R16] are as far from a disc as from the nearer of its brackets', () => {
		expect(read(tiled(300, 200), bar(150, 100))).toBeCloseTo(Math.hypot(150, 100) - 40, 6);
		// The brackets are 600 apart: on tiles of 290 the second is 20 nearer to a crossing.
		expect(read(tiled(290, 200), bar(145, 100))).toBeCloseTo(Math.hypot(125, 100) - 40, 6);
		expect(read(tiled(300, 200), bar(300, 200))).toBeCloseTo(-40, 6);
	});

	test('[measures R16] are not minded where no disc fits between them, nor where no tiles are recorded', () => {
		expect(read(tiled(50, 50), bar(25, 25))).toBeGreaterThan(5000);
		expect(read(room({}), bar(25, 25))).toBeGreaterThan(5000);
	});
});

describe('sizes at several heights', () => {
	const sized = (more: Partial<Case['enclosure']>) => room(more).room;

	test('[enclosure R7] the least counts, and a lean nobody found is asked about', () => {
		const walls = { back: {}, left: {}, right: {} };
		const { footprint, unknowns } = sized({ widthLow: measured(990), widthHigh: measured(1004) } as never);
		expect(footprint).toEqual({ width: 990, depth: 1000 });
		expect(unknowns.join(' ')).toContain('The width differs by 14 mm from low to high');
		const plumb = { over: 1200, out: 12, how: 'measured' };
		const held = { ...walls, left: { plumb }, right: { plumb } };
		expect(sized({ widthLow: measured(990), walls: held } as never).unknowns.join(' ')).not.toContain('differs');
		expect(sized({ depthHigh: measured(996) } as never).unknowns.join(' ')).not.toContain('differs');
	});
});

describe('room for the driver', () => {
	const read = (s: Scene, m: Mark) => MEASURES['driver-room'].of(s, m);
	const bar = (x: number) => at('bar-600', 'steady', 'back', [x, 0]);

	test('[measures R16] is counted to the walls that stand beside', () => {
		expect(read(room({}), bar(50))).toBe(50);
		expect(read(room({}), bar(370))).toBe(30);
		const walls = { back: {}, left: {}, right: { stands: false } };
		expect(read(room({ type: 'corner', walls }), bar(370))).toBe(370);
	});
});
