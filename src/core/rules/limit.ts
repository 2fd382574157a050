import { pounds } from '#core/units/force.ts';
import { inches, mm } from '#core/units/length.ts';
import type { Pack, Quantity, Row } from './row.ts';

/** The ends of what a row allows. Units: mm, N, degrees Celsius, ratio, or 1 for yes. */
export interface Limits {
	readonly min?: number;
	readonly max?: number;
}

interface Known {
	readonly exact: Limits;
	readonly printed: Limits;
}

const known = new WeakMap<Row, Known>();

/**
 * What a row allows by the exact unit of its document, our tolerance included.
 * Units: as the measure. Shape: no ends for a row that only asks.
 */
export const limitsOf = (row: Row): Limits => knownOf(row).exact;

/** The same by the rounded metric figures a document prints beside its inches. Units: as the measure. */
export const printedLimitsOf = (row: Row): Limits => knownOf(row).printed;

/** The one tolerance of ours a document has on what it prints as one value; undefined where it prints none. Units: mm. */
export const toleranceOf = ({ rows }: Pack): number | undefined =>
	rows.find(({ ourTolerance }) => ourTolerance !== undefined)?.ourTolerance;

/**
 * A limit in the unit its measure counts in; inches, pounds-force and degrees Fahrenheit by their exact conversion.
 * Units: mm, N, degrees Celsius, ratio.
 * Source: NIST Special Publication 811, appendix B.
 */
export function exactly({ n, unit }: Quantity): number {
	switch (unit) {
		case 'mm':
			return mm(n);
		case 'N':
		case 'ratio':
		case 'degC':
			return n;
		case 'in':
			return inches(n);
		case 'lbf':
			return pounds(n);
		case 'degF':
			return ((n - 32) * 5) / 9;
	}
}

function knownOf(row: Row): Known {
	const found = known.get(row);
	if (found) return found;
	const made = { exact: read(row, exactly), printed: read(row, (q) => q.printed ?? exactly(q)) };
	known.set(row, made);
	return made;
}

function read({ allowed, ourTolerance = 0 }: Row, value: (q: Quantity) => number): Limits {
	if (allowed === 'yes') return { min: 1 };
	if (allowed === 'no') return { max: 0 };
	if ('ask' in allowed) return {};
	const { min, max } = allowed;
	return {
		...(min && { min: value(min) - ourTolerance }),
		...(max && { max: value(max) + ourTolerance })
	};
}
