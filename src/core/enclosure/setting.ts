import type { Enclosure, Wall } from '#core/case/record.ts';

/** Off square by more than this over the depth, nothing is squared across from one wall to another. Units: mm. Ours. */
export const SQUARE = 5;

/**
 * How far the side walls have run off square at the entry, from the diagonals: more than 0 toward the right as one looks in.
 * Units and frame: mm along the width, plan frame. Shape: undefined while the diagonals are not measured.
 * Source: parallelogram, sin(off) = (d1^2 - d2^2) / (4 w h).
 */
export function offSquare({ width, widthLow, diagonals }: Enclosure): number | undefined {
	if (!diagonals) return undefined;
	const { fromLeft, fromRight } = diagonals;
	const along = widthLow ?? width;
	return (fromLeft.value ** 2 - fromRight.value ** 2) / (4 * along.value);
}

/**
 * What goes behind a bracket so that all brackets of one part lie in one upright plane.
 * Units and frame: mm, wall frame; `heights` are those of all of them. Shape: 0 where the wall was not held to a level.
 */
export function packing({ plumb }: Wall, y: number, heights: readonly number[]): number {
	if (!plumb) return 0;
	const face = (at: number) => (plumb.out * at) / plumb.over;
	return Math.max(...heights.map(face)) - face(y);
}

/** Points of light reflectance a bar differs by from its wall to be seen. Source: building guidance of the UK, from memory: advice only. */
const SEEN = 30;

/**
 * The light reflectance values at which a part stands out from its wall: at most, at least, or either.
 * Shape: undefined where the wall's is not known; an end that no finish has is left out.
 */
export function contrastOf({ facing }: Wall): { readonly atMost?: number; readonly atLeast?: number } | undefined {
	const wall = facing?.reflectance;
	if (wall === undefined) return undefined;
	const [atMost, atLeast] = [wall - SEEN, wall + SEEN];
	return { ...(atMost >= 0 && { atMost }), ...(atLeast <= 100 && { atLeast }) };
}
