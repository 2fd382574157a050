import type { Rect } from './vec.ts';

/**
 * How far apart two rectangles are; negative is the depth of their overlap.
 * Units: mm. Shape: slope at most 1 in each coordinate of either rectangle.
 */
export function apart(a: Rect, b: Rect): number {
	const dx = Math.max(a.x0 - b.x1, b.x0 - a.x1);
	const dy = Math.max(a.y0 - b.y1, b.y0 - a.y1);
	if (dx > 0 && dy > 0) return Math.hypot(dx, dy);
	return Math.max(dx, dy);
}

/** How deep a point lies inside a rectangle; negative outside. Units: mm. Shape: slope at most 1. */
export function depthIn(rect: Rect, x: number, y: number): number {
	const point = { x0: x, y0: y, x1: x, y1: y };
	const inside = Math.min(x - rect.x0, rect.x1 - x, y - rect.y0, rect.y1 - y);
	return inside >= 0 ? inside : -apart(rect, point);
}

/** A rectangle grown on every side by `by`, shrunk when `by` is negative. Units: mm. */
export const grown = (r: Rect, by: number): Rect => ({ x0: r.x0 - by, y0: r.y0 - by, x1: r.x1 + by, y1: r.y1 + by });

/** A rectangle moved by dx, dy. Units: mm. */
export const moved = (r: Rect, dx: number, dy: number): Rect => ({
	x0: r.x0 + dx,
	y0: r.y0 + dy,
	x1: r.x1 + dx,
	y1: r.y1 + dy
});

/** The smallest rectangle round some rectangles. Fails: RangeError on an empty list. */
export function around(rects: readonly Rect[]): Rect {
	if (rects.length === 0) throw new RangeError('around needs at least one rectangle');
	return {
		x0: Math.min(...rects.map((r) => r.x0)),
		y0: Math.min(...rects.map((r) => r.y0)),
		x1: Math.max(...rects.map((r) => r.x1)),
		y1: Math.max(...rects.map((r) => r.y1))
	};
}
