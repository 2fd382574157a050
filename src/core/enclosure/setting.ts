import type { Enclosure, Wall } from '#core/case/record.ts';

/**
 * How far the side walls have run off square at the entry, from the diagonals: more than 0 toward the right as one looks in.
 * Units and frame: mm along the width, plan frame. Shape: undefined while the diagonals are not measured.
 * Source: parallelogram, sin(off) = (d1^2 - d2^2) / (4 w h).
 */
export function offSquare({ width, diagonals }: Enclosure): number | undefined {
	if (!diagonals) return undefined;
	const { fromLeft, fromRight } = diagonals;
	return (fromLeft.value ** 2 - fromRight.value ** 2) / (4 * width.value);
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
