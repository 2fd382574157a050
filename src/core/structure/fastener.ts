import { inches } from '#core/units/length.ts';
import { gaugeDiameter, lagLateral, lagWithdrawal, lateral, woodScrewWithdrawal } from './screw.ts';

/** A screw the holes of a bracket are counted with. Units: mm; values in N at a specific gravity of the wood. */
export interface Fastener {
	readonly name: '#14 wood screw' | '1/4 in lag screw';
	readonly diameter: number;
	/** The point, which holds nothing. */
	readonly tip: number;
	/** The most thread that is counted, without the point. */
	readonly longest: number;
	/** Wood thinner than this counts for nothing, and why so. */
	readonly least: number;
	readonly leastSays: string;
	/** Withdrawal per mm of thread. */
	readonly withdrawal: (gravity: number) => number;
	/** Across its axis at full penetration. */
	readonly across: (gravity: number) => number;
	/** How deep it is in the wood for what it takes across its axis, by the depth of the wood, and the depth for all of it. */
	readonly bite: (depth: number) => number;
	readonly full: number;
}

const GAUGE_14 = gaugeDiameter(14);

/**
 * The wood screw every generic bracket is checked with first, a judgement of ours.
 * Source: NDS; least depth of six diameters and full lateral value at seven from memory; longest thread common practice.
 */
export const WOOD_SCREW: Fastener = {
	name: '#14 wood screw',
	diameter: GAUGE_14,
	// One diameter, a judgement of ours.
	tip: GAUGE_14,
	// Screws with more thread than this are not on the shelf.
	longest: 64,
	least: 6 * GAUGE_14,
	leastSays: 'six diameters',
	withdrawal: (gravity) => woodScrewWithdrawal({ gravity, diameter: GAUGE_14 }),
	across: (gravity) => lateral({ gravity, diameter: GAUGE_14 }),
	bite: (depth) => depth,
	full: 7 * GAUGE_14
};

const QUARTER = inches(0.25);

/**
 * The lag screw that is counted where the wood screw is not enough, if the holes of the real part take it.
 * Source: NDS, withdrawal without the tapered tip; least penetration four diameters without the tip, 12.1.4.6 of 2015; all
 * of the lateral value at eight, note 3 of table 12K; thread of a screw 4 in long 2 1/2 in less a tip of 5/32, appendix L (from memory).
 */
export const LAG_SCREW: Fastener = {
	name: '1/4 in lag screw',
	diameter: QUARTER,
	// One diameter, more than the 5/32 in of the table: a judgement of ours.
	tip: QUARTER,
	longest: inches(2.5 - 5 / 32),
	least: 5 * QUARTER,
	leastSays: 'four diameters and the tip',
	withdrawal: (gravity) => lagWithdrawal({ gravity, diameter: QUARTER }),
	across: lagLateral,
	bite: (depth) => Math.max(0, depth - QUARTER),
	full: 8 * QUARTER
};

/** How far a screw keeps from the edge of wood: 2.5 diameters, and 13 mm. Units: mm. Source: a judgement of ours. */
export const edgeOf = ({ diameter }: Fastener): number => Math.max(2.5 * diameter, 13);
