/** A force on a bar between two posts. Units: N and mm; `at` from the first post. */
export interface OnBar {
	readonly force: number;
	readonly span: number;
	readonly at: number;
}

/** What each post takes. Units: N. */
export interface Shares {
	readonly near: number;
	readonly far: number;
}

/** Shares of the posts when the bar may turn at them. Source: statics of a simple beam. */
export function simpleShares({ force, span, at }: OnBar): Shares {
	const near = (force * (span - at)) / span;
	return { near, far: force - near };
}

/**
 * Shares of the posts when they hold the bar rigidly. At a post it takes everything, so two posts never halve the demand.
 * Source: fixed beam, R = P b^2 (3a + b) / L^3.
 */
export function fixedShares({ force, span, at }: OnBar): Shares {
	const rest = span - at;
	const near = (force * rest ** 2 * (3 * at + rest)) / span ** 3;
	return { near, far: force - near };
}
