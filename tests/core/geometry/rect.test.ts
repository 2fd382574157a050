import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apart, around, depthIn, grown, moved } from '#core/geometry/rect.ts';
import type { Rect } from '#core/geometry/vec.ts';

const n = fc.double({ min: -1000, max: 1000, noNaN: true });
const wide = fc.double({ min: 0, max: 500, noNaN: true });
const rects = fc.tuple(n, n, wide, wide).map(([x0, y0, w, h]): Rect => ({ x0, y0, x1: x0 + w, y1: y0 + h }));
const unit: Rect = { x0: 0, y0: 0, x1: 100, y1: 60 };

describe('rectangles', () => {
	test.each([
		['side by side', { x0: 130, y0: 0, x1: 200, y1: 60 }, 30],
		['touching', { x0: 100, y0: 0, x1: 200, y1: 60 }, 0],
		['overlapping', { x0: 90, y0: 0, x1: 200, y1: 60 }, -10],
		// Source: the 3-4-5 triangle, ten times over.
		['corner to corner', { x0: 130, y0: 100, x1: 200, y1: 160 }, 50],
		['one inside the other', { x0: 40, y0: 20, x1: 60, y1: 40 }, -40]
	])('[geometry R5] %s', (_, other, distance) => {
		expect(apart(unit, other)).toBe(distance);
		expect(apart(other, unit)).toBe(distance);
	});

	test('[geometry R5] apart changes by no more than one of the rectangles moves', () => {
		fc.assert(
			fc.property(rects, rects, n, n, (a, b, dx, dy) => {
				const change = apart(moved(a, dx, dy), b) - apart(a, b);
				expect(Math.abs(change)).toBeLessThanOrEqual(Math.hypot(dx, dy) + 1e-9);
			})
		);
	});

	test('[geometry R5] outside, apart is the least distance between two points of them', () => {
		fc.assert(
			fc.property(rects, rects, (a, b) => {
				fc.pre(apart(a, b) > 0);
				const gap = (low: number, high: number) => Math.max(low, 0, high);
				const dx = gap(a.x0 - b.x1, b.x0 - a.x1);
				const dy = gap(a.y0 - b.y1, b.y0 - a.y1);
				expect(apart(a, b)).toBeCloseTo(Math.hypot(dx, dy), 9);
			})
		);
	});

	test.each([
		[50, 30, 30],
		[50, 55, 5],
		[100, 30, 0],
		[103, 64, -5],
		[110, 30, -10]
	])('[geometry R6] a point at %s, %s is %s deep in 100 by 60', (x, y, deep) => {
		expect(depthIn(unit, x, y)).toBe(deep);
	});

	test('[geometry R6] depth changes by no more than the point moves, also where the rectangle is turned inside out', () => {
		const any = fc.tuple(n, n, n, n).map(([x0, y0, x1, y1]): Rect => ({ x0, y0, x1, y1 }));
		fc.assert(
			fc.property(any, n, n, n, n, (r, x, y, dx, dy) => {
				const change = depthIn(r, x + dx, y + dy) - depthIn(r, x, y);
				expect(Math.abs(change)).toBeLessThanOrEqual(Math.hypot(dx, dy) + 1e-9);
			})
		);
	});

	test('[geometry R7] grown and shrunk, moved and moved back, a rectangle is itself', () => {
		const whole = fc.integer({ min: -999, max: 999 });
		const some = fc.tuple(whole, whole, whole, whole).map(([x0, y0, x1, y1]): Rect => ({ x0, y0, x1, y1 }));
		fc.assert(
			fc.property(some, whole, whole, (r, a, b) => {
				expect(grown(grown(r, a), -a)).toEqual(r);
				expect(moved(moved(r, a, b), -a, -b)).toEqual(r);
			})
		);
		expect(grown(unit, 10)).toEqual({ x0: -10, y0: -10, x1: 110, y1: 70 });
		expect(moved(unit, 1, 2)).toEqual({ x0: 1, y0: 2, x1: 101, y1: 62 });
	});

	test('[geometry R7] around is the smallest that holds all, and asks for at least one', () => {
		expect(around([unit, { x0: -5, y0: 20, x1: 30, y1: 90 }])).toEqual({ x0: -5, y0: 0, x1: 100, y1: 90 });
		expect(() => around([])).toThrow(RangeError);
	});
});
