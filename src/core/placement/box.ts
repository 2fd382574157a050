import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Mm } from '#core/units/length.ts';
import type { Held, Weighed } from './bound.ts';
import { slotKeys, type Unknown } from './problem.ts';
import type { Spot } from './lattice.ts';

const value = (values: readonly Mm[], i: number): number => values[i] ?? NaN;

type Range = readonly [number, number];

/** Places of one unknown that lie together: one slot, and a range of its lattice on each axis, by number. */
export class Box {
	/** A mark in the middle of the box. */
	readonly mark: Mark;
	/** Half its extent along each axis. Units: mm. */
	readonly half: Range;
	/** No place of the box is farther than this from the middle, as the crow flies. Units: mm. */
	readonly radius: number;
	/** Number of its first place in the order of walls, parts, heights and distances along the wall. */
	readonly rank: number;
	/** What its own rows say of it, once that was worked out. */
	alone?: Weighed;
	/** What it costs beside a mark, where that was worked out; of two boxes the one of the earlier unknown keeps it. */
	readonly beside = new Map<Held, Weighed>();
	#halves?: readonly [Box, Box];

	constructor(
		readonly unknown: Unknown,
		readonly spot: Spot,
		readonly x: Range,
		readonly y: Range,
		/** Rows about the unknown alone that can still cost something in here. */
		readonly rows: Unknown['rows'] = unknown.rows
	) {
		const [x0, x1] = [value(spot.xs.values, x[0]), value(spot.xs.values, x[1])];
		const [y0, y1] = [value(spot.ys.values, y[0]), value(spot.ys.values, y[1])];
		// The middle of a box need not lie on the grid; a box of one place is that place exactly.
		const place = { ...spot.slot, x: ((x0 + x1) / 2) as Mm, y: ((y0 + y1) / 2) as Mm, turn: 0 } as const;
		const { accessory } = unknown;
		this.mark = { accessory, place, variant: variantOf(spot.slot.variant), stage: 'proposed' };
		this.half = [(x1 - x0) / 2, (y1 - y0) / 2];
		this.radius = Math.hypot(...this.half);
		this.rank = spotRank(unknown, spot) + y[0] * spot.xs.values.length + x[0];
	}

	/** Wall, part, height and distance along the wall of its first place: what decides when all else is equal. */
	get keys(): readonly [number, number, number, number] {
		const { spot, x, y } = this;
		return [...slotKeys(spot.slot), value(spot.ys.values, y[0]), value(spot.xs.values, x[0])];
	}

	/** The two halves, cut across the longer side. Shape: not for a single place. */
	halves(): readonly [Box, Box] {
		return (this.#halves ??= this.#cut());
	}

	#cut(): readonly [Box, Box] {
		const { unknown, spot, x, y, half, alone } = this;
		const part = (px: Range, py: Range) => new Box(unknown, spot, px, py, alone?.open);
		if (half[0] >= half[1]) {
			const cut = (x[0] + x[1]) >> 1;
			return [part([x[0], cut], y), part([cut + 1, x[1]], y)];
		}
		const cut = (y[0] + y[1]) >> 1;
		return [part(x, [y[0], cut]), part(x, [cut + 1, y[1]])];
	}
}

/** How many places an unknown has before those of one of its slots. */
function spotRank({ spots }: Unknown, spot: Spot): number {
	let rank = 0;
	for (const one of spots) {
		if (one === spot) break;
		rank += one.xs.values.length * one.ys.values.length;
	}
	return rank;
}

/** True when the box is one place. */
export const single = (box: Box): boolean => box.x[0] === box.x[1] && box.y[0] === box.y[1];

/** All places of an unknown, a box a slot. */
export function rootsOf(unknown: Unknown): readonly Box[] {
	return unknown.spots.flatMap((spot) => {
		const [xs, ys] = [spot.xs.values.length, spot.ys.values.length];
		return xs > 0 && ys > 0 ? [new Box(unknown, spot, [0, xs - 1], [0, ys - 1])] : [];
	});
}
