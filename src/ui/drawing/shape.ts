/** One element of a screen drawing. Units: px of the drawing, y down. `runs` are pieces of text set one after the other. */
export interface Shape {
	/** Stable over drawings of the same thing, so that only what changed is touched. */
	readonly id: string;
	/** The accessory it belongs to. */
	readonly about?: string;
	readonly tag: 'path' | 'circle' | 'rect' | 'text';
	readonly attrs: Readonly<Record<string, string | number>>;
	readonly runs?: readonly Run[];
}

/** A piece of text with what sets it apart. */
export interface Run {
	readonly text: string;
	readonly attrs: Readonly<Record<string, string | number>>;
}

/** A point of the drawing. Units: px, y down. */
export type Px = readonly [x: number, y: number];

/** The room there is for a drawing. Units: px. */
export interface Size {
	readonly width: number;
	readonly height: number;
}

/** A line through points, closed or not. */
export function path(id: string, kind: string, points: readonly Px[], closed: 'closed' | 'open' = 'open'): Shape {
	const d = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`).join('');
	return { id, tag: 'path', attrs: { class: kind, d: closed === 'closed' ? `${d}Z` : d } };
}

/** Anything a path can draw, spelt out. */
export function drawn(id: string, kind: string, d: string): Shape {
	return { id, tag: 'path', attrs: { class: kind, d } };
}

/** A rectangle between two corners. */
export function rect(id: string, kind: string, a: Px, b: Px, round = 0): Shape {
	const [x, y] = [Math.min(a[0], b[0]), Math.min(a[1], b[1])];
	const [width, height] = [Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1])];
	return {
		id,
		tag: 'rect',
		attrs: { class: kind, x: short(x), y: short(y), width: short(width), height: short(height), rx: short(round) }
	};
}

/** A circle. */
export function circle(id: string, kind: string, [x, y]: Px, radius: number): Shape {
	return { id, tag: 'circle', attrs: { class: kind, cx: short(x), cy: short(y), r: short(radius) } };
}

/** One line of text; fractions are set as such. */
export function text(id: string, kind: string, [x, y]: Px, words: string): Shape {
	const runs = words.split(/(\d+\/\d+)/).flatMap((piece, i): Run[] => {
		if (piece === '') return [];
		return [{ text: piece, attrs: i % 2 === 1 ? { class: 'frac' } : {} }];
	});
	return { id, tag: 'text', attrs: { class: kind, x: short(x), y: short(y) }, runs };
}

/** The same shapes, belonging to an accessory. */
export function aboutAll(about: string, shapes: readonly Shape[]): readonly Shape[] {
	return shapes.map((shape) => ({ ...shape, about }));
}

const short = (n: number): number => Math.round(n * 100) / 100;
