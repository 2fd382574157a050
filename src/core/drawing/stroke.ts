import type { Box, Spot } from './entity.ts';

/** A straight line on a sheet. Units and frame: mm of the sheet. */
export type Stroke = readonly [from: Spot, to: Spot];

/**
 * Whether a stroke has a point inside a rectangle.
 * Source: clipping of a line against each pair of sides, after Liang and Barsky.
 */
export function runsThrough([[x, y], [u, v]]: Stroke, box: Box): boolean {
	let [from, to] = [0, 1];
	const sides = [
		[u - x, box.x0 - x, box.x1 - x],
		[v - y, box.y0 - y, box.y1 - y]
	] as const;
	for (const [along, least, most] of sides) {
		if (along === 0) {
			if (least >= 0 || most <= 0) return false;
			continue;
		}
		const [a, b] = [least / along, most / along];
		from = Math.max(from, Math.min(a, b));
		to = Math.min(to, Math.max(a, b));
	}
	return from < to;
}

/** Whether two strokes cross; strokes that only touch, or lie along one line, do not. */
export function crosses([a, b]: Stroke, [c, d]: Stroke): boolean {
	const side = ([x, y]: Spot, [u, v]: Spot, [s, t]: Spot): number => Math.sign((u - x) * (t - y) - (v - y) * (s - x));
	return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
