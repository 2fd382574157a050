import { variantOf, type Mark } from '../case/accessory.ts';
import type { Mm } from '../units/length.ts';
import { slotKeys, type Unknown } from './problem.ts';
import type { Spot } from './lattice.ts';

/** Places of one unknown that lie together: one slot, and a range of its lattice on each axis. Ranges are by number. */
export interface Box {
	readonly unknown: Unknown;
	readonly spot: Spot;
	readonly x: readonly [number, number];
	readonly y: readonly [number, number];
	/** A mark in the middle of the box. */
	readonly middle: Mark;
	/** No place of the box is farther than this from the middle, along both axes together. Units: mm. */
	readonly radius: number;
	/** Wall, part, height and distance along the wall of its first place: what decides when all else is equal. */
	readonly keys: readonly [number, number, number, number];
}

const value = (values: readonly Mm[], i: number): number => values[i] ?? NaN;

/** The box over ranges of a spot. Shape: both ranges hold at least one value. */
export function boxOf(unknown: Unknown, spot: Spot, x: Box['x'], y: Box['y']): Box {
	const [x0, x1] = [value(spot.xs.values, x[0]), value(spot.xs.values, x[1])];
	const [y0, y1] = [value(spot.ys.values, y[0]), value(spot.ys.values, y[1])];
	// The middle of a box need not lie on the grid; a box of one place is that place exactly.
	const place = { ...spot.slot, x: ((x0 + x1) / 2) as Mm, y: ((y0 + y1) / 2) as Mm, turn: 0 } as const;
	const middle: Mark = {
		accessory: unknown.accessory,
		place,
		variant: variantOf(spot.slot.variant),
		stage: 'proposed'
	};
	return { unknown, spot, x, y, middle, radius: (x1 - x0 + y1 - y0) / 2, keys: [...slotKeys(spot.slot), y0, x0] };
}

/** True when the box is one place. */
export const single = (box: Box): boolean => box.x[0] === box.x[1] && box.y[0] === box.y[1];

/** The two halves of a box, cut across its longer side. Shape: not for a single place. */
export function halves(box: Box): readonly [Box, Box] {
	const { unknown, spot, x, y } = box;
	const length = (values: readonly Mm[], r: readonly [number, number]) => value(values, r[1]) - value(values, r[0]);
	if (length(spot.xs.values, x) >= length(spot.ys.values, y) && x[0] < x[1]) {
		const cut = (x[0] + x[1]) >> 1;
		return [boxOf(unknown, spot, [x[0], cut], y), boxOf(unknown, spot, [cut + 1, x[1]], y)];
	}
	const cut = (y[0] + y[1]) >> 1;
	return [boxOf(unknown, spot, x, [y[0], cut]), boxOf(unknown, spot, x, [cut + 1, y[1]])];
}

/**
 * All places of an unknown, a box a slot, kept to the heights a companion on the same line leaves open.
 * Units: heights in mm.
 */
export function rootsOf(unknown: Unknown, heights: readonly [number, number] | null): readonly Box[] {
	return unknown.spots.flatMap((spot) => {
		const ys = spot.ys.values;
		const first = heights ? ys.findIndex((v) => v >= heights[0]) : 0;
		const last = heights ? ys.findLastIndex((v) => v <= heights[1]) : ys.length - 1;
		if (first < 0 || last < first || spot.xs.values.length === 0) return [];
		return [boxOf(unknown, spot, [0, spot.xs.values.length - 1], [first, last])];
	});
}
