import type { Row, Strength } from '#core/rules/row.ts';

/**
 * A cost: numbers compared one after the other, so that no amount of a weaker one outweighs a stronger one.
 * Shape: unmet wishes that are yes/no, wish steps squared, unmet document rows that are yes/no, their mm, tie-breaks;
 * then, in a whole plan, the order keys of each unknown.
 */
export type Cost = readonly number[];

/** Places of the parts of a cost. */
export const PARTS = { shouldNo: 0, should: 1, preferNo: 2, prefer: 3, tie: 4 } as const;

/** How many parts a cost has before the order keys. */
export const PART_COUNT = 5;

/**
 * The parts of a cost as two numbers, compared one after the other: what is left of documents in mm, and what is before.
 * Shape: whole numbers without loss while there are fewer than 2000 rows, as no row adds more than its cap to a part.
 */
export interface Price {
	readonly high: number;
	readonly low: number;
}

const SHOULD_ROOM = 2 ** 27;
const YES_NO_ROOM = 2 ** 12;
const TIE_ROOM = 2 ** 21;

/** The price of parts of a cost. */
export const priced = (parts: Cost): Price => {
	const [shouldNo = 0, should = 0, preferNo = 0, prefer = 0, tie = 0] = parts;
	return { high: (shouldNo * SHOULD_ROOM + should) * YES_NO_ROOM + preferNo, low: prefer * TIE_ROOM + tie };
};

/** True when the first price is more than the second. */
export const exceeds = (a: Price, b: Price): boolean => a.high > b.high || (a.high === b.high && a.low > b.low);

/** The parts of a cost that make a price. */
export function partsOf({ high, low }: Price): number[] {
	const wishes = Math.floor(high / YES_NO_ROOM);
	return [
		Math.floor(wishes / SHOULD_ROOM),
		wishes % SHOULD_ROOM,
		high % YES_NO_ROOM,
		Math.floor(low / TIE_ROOM),
		low % TIE_ROOM
	];
}

const WISH_STEP = 25;
const MOST_MM = 5000;
const TIE_STEP = 10;

/** Half a step of the grid of lengths: shortfalls are counted as they are printed, on that grid. Units: mm. */
export const HALF_TICK = 1 / 640;

/** A tie-break is paid by a mark with less than this to a limit. Units: mm. Source: drill tolerance, ours. */
export const DRILL_ROOM = 5;

/** Negative, zero or positive as the first cost is less, equal or more. Shape: both of one length. */
export function compare(a: Cost, b: Cost): number {
	for (let i = 0; i < a.length; i++) {
		const difference = (a[i] ?? 0) - (b[i] ?? 0);
		if (difference !== 0) return difference;
	}
	return 0;
}

/** Sum of two costs, part by part. */
export function plus(a: Cost, b: Cost): Cost {
	const sum = a.slice();
	for (let i = 0; i < sum.length; i++) sum[i] = (sum[i] ?? 0) + (b[i] ?? 0);
	return sum;
}

/** A shortfall as its row counts it: past the point where it is missed, how far past adds nothing. Units: mm. */
export const asMissed = ({ missed = Infinity }: Row, shortfall: number): number => Math.min(shortfall, missed);

/**
 * Adds what a shortfall costs at a strength.
 * Units: mm of shortfall; 0 for a yes/no row that is met, 1 for one that is not.
 * Shape: wishes count whole 25 mm steps, squared; document rows whole mm begun, at most 5000; tie-breaks 10 mm begun.
 * Source: steps are ours, design of the house.
 */
export function charge(cost: number[], strength: Strength, shortfall: number, counts: 'yes-no' | 'mm'): void {
	if (shortfall <= 0) return;
	switch (strength) {
		case 'should':
			if (counts === 'yes-no') cost[PARTS.shouldNo] = (cost[PARTS.shouldNo] ?? 0) + 1;
			else
				cost[PARTS.should] =
					(cost[PARTS.should] ?? 0) + Math.floor((Math.min(shortfall, MOST_MM) + HALF_TICK) / WISH_STEP) ** 2;
			return;
		case 'prefer':
			if (counts === 'yes-no') cost[PARTS.preferNo] = (cost[PARTS.preferNo] ?? 0) + 1;
			else cost[PARTS.prefer] = (cost[PARTS.prefer] ?? 0) + Math.ceil(Math.min(shortfall, MOST_MM) - HALF_TICK);
			return;
		case 'tie-break':
			cost[PARTS.tie] = (cost[PARTS.tie] ?? 0) + Math.ceil((Math.min(shortfall, MOST_MM) - HALF_TICK) / TIE_STEP);
			return;
		case 'must':
		case 'reported':
			return;
	}
}
