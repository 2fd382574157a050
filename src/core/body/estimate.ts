import type { Fact, How } from '#core/case/fact.ts';

/** A value with its standard deviation and how it is known. Units: mm, mass in kg. */
export interface Estimate {
	readonly value: number;
	readonly sd: number;
	readonly how: How | 'estimated';
}

// Ours, no source: what a tape, an eye, a memory and a paper are worth when nobody said.
const LENGTH_SD: Readonly<Record<How, number>> = { measured: 5, observed: 10, told: 20, declared: 20, assumed: 20 };
const MASS_SD: Readonly<Record<How, number>> = { measured: 1, observed: 5, told: 5, declared: 5, assumed: 5 };

/** A recorded length as it stands. Units: mm. */
export const lengthSeen = ({ value, how, sd }: Fact<number>): Estimate => ({ value, how, sd: sd ?? LENGTH_SD[how] });

/** A recorded mass as it stands. Units: kg. */
export const massSeen = ({ value, how, sd }: Fact<number>): Estimate => ({ value, how, sd: sd ?? MASS_SD[how] });

/** A value nobody took, with its standard deviation. */
export const estimated = (value: number, sd: number): Estimate => ({ value, sd, how: 'estimated' });
