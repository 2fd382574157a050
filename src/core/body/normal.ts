/** A joint normal distribution. Shape: `cov` square, symmetric, as long as `mean`. */
export interface Normal {
	readonly mean: readonly number[];
	readonly cov: readonly (readonly number[])[];
}

/** One component seen, with the error of seeing it. Shape: `sd` above 0. */
export interface Seen {
	readonly index: number;
	readonly value: number;
	readonly sd: number;
}

/** A normal given what was seen, and how far off what was seen lay: its squared Mahalanobis distance. */
export interface Posterior extends Normal {
	readonly distance: number;
}

const at = (list: readonly number[], i: number): number => list[i] ?? 0;

// One seen component at a time: the same as solving for all at once, without inverting a matrix.
function update(prior: Posterior, { index, value, sd }: Seen): Posterior {
	const row = prior.cov[index] ?? [];
	const spread = at(row, index) + sd * sd;
	const surprise = value - at(prior.mean, index);
	return {
		mean: prior.mean.map((m, i) => m + (at(row, i) * surprise) / spread),
		cov: prior.cov.map((line, i) => line.map((c, j) => c - (at(row, i) * at(row, j)) / spread)),
		distance: prior.distance + (surprise * surprise) / spread
	};
}

/** The distribution given what was seen of it. Shape: independent errors; the order of `seen` does not matter. */
export const given = (prior: Normal, seen: readonly Seen[]): Posterior =>
	seen.reduce(update, { ...prior, distance: 0 });

/** Mean and covariance of a draw that is equally likely from either; the distance is that of the nearer one. */
export function mixed(a: Posterior, b: Posterior): Posterior {
	const half = a.mean.map((m, i) => (m - at(b.mean, i)) / 2);
	return {
		mean: a.mean.map((m, i) => m - at(half, i)),
		cov: a.cov.map((line, i) => line.map((c, j) => (c + at(b.cov[i] ?? [], j)) / 2 + at(half, i) * at(half, j))),
		distance: Math.min(a.distance, b.distance)
	};
}
