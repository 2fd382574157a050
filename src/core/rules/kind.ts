import type { Row } from './row.ts';

/** What a row comes to: how many limits it has, or that it has none; advice is told apart from what counts. */
export const ROW_KINDS = ['range', 'least or most', 'one value', 'yes or no', 'asked', 'advice'] as const;

/** One of the kinds. */
export type RowKind = (typeof ROW_KINDS)[number];

/** The kind of a row. Shape: each row has one; a value with a tolerance of ours is one value, whichever end it stands for. */
export function kindOf({ allowed, advice, ourTolerance }: Row): RowKind {
	if (advice) return 'advice';
	if (typeof allowed === 'string') return 'yes or no';
	if ('ask' in allowed) return 'asked';
	const { min, max } = allowed;
	if (ourTolerance !== undefined || (min && max && min.n === max.n)) return 'one value';
	return min && max ? 'range' : 'least or most';
}
