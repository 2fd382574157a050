import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WallId } from '#core/geometry/frame.ts';
import { mirroredWall } from '#core/geometry/frame.ts';
import { holeSlack } from '#core/enclosure/hole-slack.ts';
import { mirroredEnclosure } from '#core/enclosure/mirror.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { enclosureWith } from './some-room.ts';

const tick = (most: number) => fc.integer({ min: 0, max: most * 320 }).map((n) => n / 320);
const rect = fc.tuple(tick(400), tick(400), tick(400), tick(400)).map(([a, w, b, h]) => ({
	x0: a,
	x1: a + w,
	y0: b,
	y1: b + h
}));
const map = <T>(one: fc.Arbitrary<T>) => fc.dictionary(fc.constantFrom('a', 'b', 'c'), one);
const wall = fc.record({
	studs: map(fc.record({ x: tick(900), width: fc.constant(38), how: fc.constant('measured') })),
	backing: map(rect.map((r) => ({ kind: 'sheet', ...r, thickness: 18, how: 'told' }))),
	facing: fc.record({ x: tick(900), y: tick(900) }).map((at) => ({
		kind: 'tile',
		thickness: 12,
		tiles: { ...at, across: 300, up: 200, joint: 3, how: 'measured' }
	})),
	keepOuts: map(rect.map((r) => ({ kind: 'pipe', ...r, how: 'observed', uncertain: 10 }))),
	surveyed: fc.boolean()
});
const enclosures = fc
	.record({
		back: wall,
		left: wall,
		right: wall,
		seat: fc.constantFrom('left', 'right'),
		to: fc.constantFrom('seat', 'back'),
		hinge: fc.constantFrom('left', 'right'),
		low: tick(50)
	})
	.map(({ seat, to, hinge, low, ...walls }) => {
		const seen = { how: 'measured' };
		const changed = {
			seatWall: seat,
			fallsTo: to,
			fall: { value: 0.02, ...seen },
			widthLow: { value: 914 - low, ...seen },
			closing: { kind: 'door-in', hinge, ...seen },
			drain: { x: 200 + low, y: 300, wide: 100, deep: 100, ...seen }
		};
		return enclosureWith(changed, walls);
	});

describe('the mirrored enclosure', () => {
	test('[enclosure R6] twice mirrored is the first one', () => {
		fc.assert(
			fc.property(enclosures, (e) => {
				expect(mirroredEnclosure(mirroredEnclosure(e))).toEqual(e);
			})
		);
	});

	test('[enclosure R6] left and right change places and are read from the other end', () => {
		const e = enclosureWith(
			{},
			{
				left: { studs: { s: { x: 100, width: 38, how: 'measured' } }, surveyed: true },
				back: { keepOuts: { p: { kind: 'pipe', x0: 10, x1: 30, y0: 0, y1: 5, how: 'measured' } } }
			}
		);
		const m = mirroredEnclosure(e);
		expect(m.seatWall).toBe('left');
		expect(m.walls.right.studs['s']?.x).toBe(800);
		expect(m.walls.right.surveyed).toBe(true);
		expect(m.walls.left.surveyed).toBe(false);
		expect(m.walls.back.keepOuts['p']).toMatchObject({ x0: 884, x1: 904, y0: 0, y1: 5 });
	});

	test('[enclosure R6] a bracket has the same slack, and stands over the same floor, at the mirrored place', () => {
		const walls = fc.constantFrom<WallId>('back', 'left', 'right');
		fc.assert(
			fc.property(enclosures, walls, tick(900), tick(800), (e, id, x, y) => {
				const [room, other] = [roomOf(e), roomOf(mirroredEnclosure(e))];
				const [opposite, across] = [mirroredWall(id), room.walls[id].length - x];
				expect(holeSlack(other, opposite, { x: across, y, radius: 40 })).toBeCloseTo(
					holeSlack(room, id, { x, y, radius: 40 }),
					9
				);
				expect(other.floorUnder(opposite, across, across).low).toBeCloseTo(room.floorUnder(id, x, x).low, 9);
			})
		);
	});
});
