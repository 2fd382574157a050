/**
 * A point or direction in the plan frame.
 * Units and frame: mm; x along the back wall to the right looking in from the entry, y from the back wall toward the
 * entry, z up from the datum line. This frame is left-handed, see README.md.
 */
export type Vec = readonly [number, number, number];

/** A point on one wall. Units and frame: mm; x right along the wall seen from inside, y up from the datum line. */
export type WallPoint = readonly [number, number];

/** A rectangle with upright sides. Units and frame: mm, on a wall: x right, y up. Shape: x0 <= x1 and y0 <= y1. */
export interface Rect {
	readonly x0: number;
	readonly y0: number;
	readonly x1: number;
	readonly y1: number;
}

/** Sum of two vectors. */
export const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

/** First vector less the second. */
export const less = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

/** A vector times a number. */
export const times = (a: Vec, k: number): Vec => [a[0] * k, a[1] * k, a[2] * k];

/** Scalar product. */
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Length of a vector. */
export const size = (a: Vec): number => Math.sqrt(dot(a, a));

/** The direction to the left of a body facing `forward`. Shape: `forward` level. Frame: left-handed plan frame. */
export const leftOf = (forward: Vec): Vec => [forward[1], -forward[0], 0];
