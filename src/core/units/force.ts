import type { Brand } from './brand.ts';

/** A force in newtons. */
export type Newton = Brand<'N'>;

/**
 * A force from newtons.
 * Fails: RangeError on what is not a finite number.
 */
export function newtons(n: number): Newton {
	if (!Number.isFinite(n)) throw new RangeError(`a force must be a finite number - saw ${String(n)}`);
	return n as Newton;
}

/**
 * A force from pounds-force.
 * Units and frame: lbf in, N out.
 * Fails: RangeError on what is not a finite number.
 * Source: 1 lbf = 4.448 221 615 260 5 N exactly (NIST Special Publication 811, appendix B.8).
 */
export function pounds(n: number): Newton {
	return newtons(n * 4.4482216152605);
}
