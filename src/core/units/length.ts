import type { Brand } from './brand.ts';

/** A length in millimetres on the 1/320 mm grid. Only this folder makes one. */
export type Mm = Brand<'mm'>;

/** The two tapes a house can be measured with. */
export type LengthUnit = 'mm' | 'in';

// The coarsest grid on which 0.1 mm (32 ticks) and 1/64 in (127 ticks) are both whole.
const TICKS_PER_MM = 320;
const TICKS_PER_INCH = 25.4 * TICKS_PER_MM;

/**
 * The length nearest to a number of millimetres.
 * Units and frame: mm; sums and differences go through here again.
 * Fails: RangeError on what is not a finite number.
 */
export function mm(n: number): Mm {
	return fromTicks(Math.round(n * TICKS_PER_MM));
}

/**
 * The length nearest to a number of inches; every 1/64 in is met exactly.
 * Units and frame: inches in, mm out.
 * Fails: RangeError on what is not a finite number.
 * Source: international inch, 25.4 mm exactly (NIST Special Publication 811, appendix B.6).
 */
export function inches(n: number): Mm {
	return fromTicks(Math.round(n * TICKS_PER_INCH));
}

/**
 * The length as a number of inches; 34 in gives 34 and 1/64 in gives 0.015625, without remainder.
 * Units and frame: mm in, inches out.
 */
export function toInches(length: Mm): number {
	return toTicks(length) / TICKS_PER_INCH;
}

/**
 * The length as a whole number of ticks of the grid, for arithmetic that must not round.
 * Units and frame: 1/320 mm.
 */
export function toTicks(length: Mm): number {
	return Math.round(length * TICKS_PER_MM);
}

/**
 * The length of a whole number of ticks.
 * Units and frame: 1/320 mm in, mm out.
 * Fails: RangeError on what is not a whole number, or too large to count exactly.
 */
export function fromTicks(ticks: number): Mm {
	if (!Number.isSafeInteger(ticks)) throw new RangeError(`a length must be a finite number - saw ${String(ticks)}`);
	// Adding 0 turns -0 into 0: one length, one number.
	return ((ticks + 0) / TICKS_PER_MM) as Mm;
}
