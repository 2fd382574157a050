import type { Brand } from './brand.ts';

/** An angle in degrees. Where its zero lies and which way it turns is said by whoever stores it. */
export type Degree = Brand<'degree'>;

/**
 * An angle from degrees.
 * Fails: RangeError on what is not a finite number.
 */
export function degrees(n: number): Degree {
	if (!Number.isFinite(n)) throw new RangeError(`an angle must be a finite number - saw ${String(n)}`);
	return n as Degree;
}
