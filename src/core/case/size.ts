import type { Footprint } from '#core/geometry/frame.ts';
import type { Enclosure } from './record.ts';

type Sized = Pick<Enclosure, 'width' | 'depth' | 'widthLow' | 'widthHigh' | 'depthLow' | 'depthHigh'>;

/** Sizes taken at several heights of one room differ by no more than walls lean. Units: mm. Ours. */
export const LEANING = 100;

/**
 * The inside size a plan counts on: the least of what was measured at several heights, so that what fits, fits all the way up.
 * Units and frame: mm, plan frame.
 */
export function footprintOf(e: Sized): Footprint {
	return { width: Math.min(...widths(e)), depth: Math.min(...depths(e)) };
}

/** How much the inside width and depth differ over the height. Units: mm. */
export function leaningOf(e: Sized): Footprint {
	const spread = (all: readonly number[]) => Math.max(...all) - Math.min(...all);
	return { width: spread(widths(e)), depth: spread(depths(e)) };
}

const widths = ({ width, widthLow, widthHigh }: Sized) => measured([width, widthLow, widthHigh]);
const depths = ({ depth, depthLow, depthHigh }: Sized) => measured([depth, depthLow, depthHigh]);

const measured = (facts: readonly ({ readonly value: number } | undefined)[]): readonly number[] =>
	facts.flatMap((fact) => (fact ? [fact.value] : []));
