import type { Box, Path, Segment, Spot } from './entity.ts';
import type { Layer } from './layers.ts';

/** An open line through points. */
export const line = (id: string, layer: Layer, ...points: readonly Spot[]): Path => ({
	kind: 'path',
	id,
	layer,
	d: through(points),
	closed: false
});

/** Several separate lines in one path. */
export const lines = (id: string, layer: Layer, each: readonly (readonly Spot[])[]): Path => ({
	kind: 'path',
	id,
	layer,
	d: each.flatMap(through),
	closed: false
});

/** A closed polygon. */
export const shape = (id: string, layer: Layer, ...points: readonly Spot[]): Path => ({
	kind: 'path',
	id,
	layer,
	d: through(points),
	closed: true
});

/** A rectangle. */
export const rectangle = (id: string, layer: Layer, { x0, y0, x1, y1 }: Box): Path =>
	shape(id, layer, [x0, y0], [x1, y0], [x1, y1], [x0, y1]);

/** A rectangle with round corners. */
export function rounded(id: string, layer: Layer, { x0, y0, x1, y1 }: Box, radius: number): Path {
	const corner = (to: Spot): Segment => ({ by: 'arc', to, radius, clockwise: true });
	const straight = (to: Spot): Segment => ({ by: 'line', to });
	return {
		kind: 'path',
		id,
		layer,
		closed: true,
		d: [
			{ by: 'move', to: [x0 + radius, y0] },
			straight([x1 - radius, y0]),
			corner([x1, y0 + radius]),
			straight([x1, y1 - radius]),
			corner([x1 - radius, y1]),
			straight([x0 + radius, y1]),
			corner([x0, y1 - radius]),
			straight([x0, y0 + radius]),
			corner([x0 + radius, y0])
		]
	};
}

/** A circle. */
export function circle(id: string, layer: Layer, [x, y]: Spot, radius: number): Path {
	const half = (to: Spot): Segment => ({ by: 'arc', to, radius, clockwise: true });
	return {
		kind: 'path',
		id,
		layer,
		closed: true,
		d: [{ by: 'move', to: [x - radius, y] }, half([x + radius, y]), half([x - radius, y])]
	};
}

/** Two crossed lines through a centre. */
export const cross = (id: string, layer: Layer, [x, y]: Spot, arm: number): Path =>
	lines(id, layer, [
		[
			[x - arm, y],
			[x + arm, y]
		],
		[
			[x, y - arm],
			[x, y + arm]
		]
	]);

/**
 * Hatching at 45 degrees, as real lines that end at the edge of a rectangle.
 * Units and frame: mm of the sheet; `gap` measured across the lines. Rising lines run up to the right.
 */
export function hatch(id: string, layer: Layer, box: Box, how: { gap: number; lean: 'rising' | 'falling' }): Path {
	const step = how.gap * Math.SQRT2;
	const height = box.y1 - box.y0;
	const strokes: Spot[][] = [];
	// Lines hang on a grid of the whole sheet, so that neighbouring areas meet without a jump.
	const up = how.lean === 'rising';
	const offset = up ? box.y1 : -box.y0;
	const first = Math.ceil((box.x0 + offset - height) / step);
	for (let foot = first * step - offset; foot < box.x1; foot += step) {
		const from = Math.max(box.x0, foot);
		const to = Math.min(box.x1, foot + height);
		if (to - from < 0.05) continue;
		const y = (x: number) => (up ? box.y1 - (x - foot) : box.y0 + (x - foot));
		strokes.push([
			[from, y(from)],
			[to, y(to)]
		]);
	}
	return lines(id, layer, strokes);
}

/** The rectangle round a path's points; exact for lines and whole circles. */
export function extent(path: Path): Box {
	const xs = path.d.map((s) => s.to[0]);
	const ys = path.d.map((s) => s.to[1]);
	// A circle is written as two halves between its left and right ends.
	const bulge = path.d.length === 3 && path.d[1]?.by === 'arc' ? path.d[1].radius : 0;
	return { x0: Math.min(...xs), y0: Math.min(...ys) - bulge, x1: Math.max(...xs), y1: Math.max(...ys) + bulge };
}

const through = (points: readonly Spot[]): readonly Segment[] =>
	points.map((to, i) => ({ by: i === 0 ? 'move' : 'line', to }));
