import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mirroredWall, toPlan, toWall, wallLength, type WallId } from '#core/geometry/frame.ts';
import { add, dot, leftOf, less, size, times, type Vec } from '#core/geometry/vec.ts';

const WALLS = ['back', 'left', 'right'] as const satisfies readonly WallId[];
const room = { width: 914, depth: 900 };
const n = fc.double({ min: -3000, max: 3000, noNaN: true });

describe('frames', () => {
	// Source: definitions of the frames; corners of a 914 by 900 compartment worked by hand.
	test.each([
		['back', [0, 50], [0, 0, 50]],
		['back', [914, 50], [914, 0, 50]],
		['left', [0, 50], [0, 900, 50]],
		['left', [900, 50], [0, 0, 50]],
		['right', [0, 50], [914, 0, 50]],
		['right', [900, 50], [914, 900, 50]]
	] as const)('[geometry R1] on the %s wall %j is the corner %j', (wall, at, plan) => {
		expect(toPlan(wall, at, 0, room)).toEqual(plan);
	});

	test('[geometry R1] going round from the entry, each wall ends where the next begins', () => {
		const end = (wall: WallId): Vec => toPlan(wall, [wallLength(wall, room), 0], 0, room);
		expect(end('left')).toEqual(toPlan('back', [0, 0], 0, room));
		expect(end('back')).toEqual(toPlan('right', [0, 0], 0, room));
	});

	test.each(WALLS)('[geometry R2] on the %s wall plan and wall are each the other undone', (wall) => {
		fc.assert(
			fc.property(n, n, n, (x, y, off) => {
				const back = toWall(wall, toPlan(wall, [x, y], off, room), room);
				expect(back.at[0]).toBeCloseTo(x, 9);
				expect(back.at[1]).toBe(y);
				expect(back.off).toBeCloseTo(off, 9);
			})
		);
	});

	test.each(WALLS)('[geometry R2] between points of the %s wall distances are kept', (wall) => {
		fc.assert(
			fc.property(n, n, n, n, n, n, (x, y, off, u, v, w) => {
				const apart = size(less(toPlan(wall, [x, y], off, room), toPlan(wall, [u, v], w, room)));
				expect(apart).toBeCloseTo(Math.hypot(x - u, y - v, off - w), 6);
			})
		);
	});

	test('[geometry R3] the mirror exchanges left and right only, and undoes itself', () => {
		expect(WALLS.map(mirroredWall)).toEqual(['back', 'right', 'left']);
		expect(WALLS.map((wall) => mirroredWall(mirroredWall(wall)))).toEqual(WALLS);
	});

	test('[geometry R4] whoever faces the back wall has the left wall at the left', () => {
		// Adding nothing makes a zero without sign.
		const left = (forward: Vec) => add(leftOf(forward), [0, 0, 0]);
		expect(left([0, -1, 0])).toEqual([-1, 0, 0]);
		// Facing the left wall, the entry is at the left; facing the right wall, the back wall is.
		expect(left([-1, 0, 0])).toEqual([0, 1, 0]);
		expect(left([1, 0, 0])).toEqual([0, -1, 0]);
	});

	test('[geometry R4] left is level, square to forward and as long', () => {
		fc.assert(
			fc.property(n, n, (x, y) => {
				const left = leftOf([x, y, 0]);
				expect(left[2]).toBe(0);
				expect(dot(left, [x, y, 0])).toBeCloseTo(0, 6);
				expect(size(left)).toBeCloseTo(Math.hypot(x, y), 6);
			})
		);
	});

	test('[geometry R4] sums, differences and multiples go coordinate by coordinate', () => {
		expect(add([1, 2, 3], [10, 20, 30])).toEqual([11, 22, 33]);
		expect(less([10, 20, 30], [1, 2, 3])).toEqual([9, 18, 27]);
		expect(times([1, -2, 3], 2)).toEqual([2, -4, 6]);
		expect(size([2, 3, 6])).toBe(7);
	});
});
