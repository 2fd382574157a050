import { z } from 'zod';
import { mm, type Mm } from '#core/units/length.ts';

z.config({ jitless: true });

/** How a fact is known, from the surest to the least. Declared names its paper in `by`. */
export const HOWS = ['measured', 'observed', 'told', 'declared', 'assumed'] as const;

/** How a fact is known. */
export type How = (typeof HOWS)[number];

/** A value with how it is known, by whom and when, and the words it was typed in. `sd` in the value's unit. */
export interface Fact<T> {
	readonly value: T;
	readonly how: How;
	readonly sd?: number | undefined;
	readonly typed?: string | undefined;
	readonly by?: string | undefined;
	readonly when?: string | undefined;
}

/** Short free text of the record. */
export const text = (most: number): z.ZodString => z.string().min(1).max(most);

/** A length on the grid. Units: mm, both ends belong to the range. */
export const length = (least: number, most: number): z.ZodType<Mm, number> =>
	z
		.number()
		.min(least)
		.max(most)
		// Runs on what is out of range too: that is left as it is, to be named as seen.
		.overwrite((n) => (n >= least && n <= most ? mm(n) : n)) as unknown as z.ZodType<Mm, number>;

/** A fact about a value. */
export const fact = <T extends z.ZodType>(value: T) =>
	z.strictObject({
		value,
		how: z.enum(HOWS),
		sd: z.number().positive().optional(),
		typed: text(60).optional(),
		by: text(80).optional(),
		when: z.iso.date().optional()
	});
