/** Figures to be made small together, by unknowns that each are 0 within 1 unless the figures say otherwise. */
export interface Problem {
	/** How many unknowns. */
	readonly unknowns: number;
	/** Each in standard deviations of its own. Shape: as many for every `z`; continuous. */
	readonly residuals: (z: readonly number[]) => readonly number[];
}

/** Where they are smallest. Shape: `cov` square, of the unknowns, as the figures bend there. */
export interface Least {
	readonly z: readonly number[];
	/** Sum of squares, of the unknowns too. */
	readonly cost: number;
	readonly cov: readonly (readonly number[])[];
}

const STEPS = 60;
const HAIR = 1e-4;
const STILL = 1e-12;
const NO_GAIN = 1e-9;
const SOFTEST = 1e-6;
const STIFFEST = 1e8;

type Matrix = readonly (readonly number[])[];

const square = (list: readonly number[]): number => list.reduce((sum, n) => sum + n * n, 0);

/** By how much each figure changes with each unknown: central differences. */
function slopes({ unknowns, residuals }: Problem, z: readonly number[]): Matrix {
	const columns = Array.from({ length: unknowns }, (_, k) => {
		const moved = (by: number) => residuals(z.map((n, i) => (i === k ? n + by : n)));
		const [more, fewer] = [moved(HAIR), moved(-HAIR)];
		return more.map((n, i) => (n - (fewer[i] ?? 0)) / (2 * HAIR));
	});
	return (columns[0] ?? []).map((_, i) => columns.map((column) => column[i] ?? 0));
}

const normal = (jacobian: Matrix, unknowns: number, stiff: number): Matrix =>
	Array.from({ length: unknowns }, (_, i) =>
		Array.from({ length: unknowns }, (_, j) =>
			jacobian.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), i === j ? 1 + stiff : 0)
		)
	);

/**
 * A lower triangle that times itself turned over is the matrix. Shape: symmetric, not below 0; a column whose rest is 0
 * is left 0.
 */
export function root(matrix: Matrix): Matrix {
	const lower = matrix.map((row) => row.map(() => 0));
	for (const [i, row] of lower.entries())
		for (let j = 0; j <= i; j++) {
			const other = lower[j] ?? [];
			const pivot = other[j] ?? 0;
			let rest = matrix[i]?.[j] ?? 0;
			for (let k = 0; k < j; k++) rest -= (row[k] ?? 0) * (other[k] ?? 0);
			if (i === j) row[j] = rest > STILL * (matrix[i]?.[i] ?? 0) ? Math.sqrt(rest) : 0;
			else row[j] = pivot ? rest / pivot : 0;
		}
	return lower;
}

/** What a positive definite matrix times it gives `right`. */
function solved(matrix: Matrix, right: readonly number[]): number[] {
	const lower = root(matrix);
	const half: number[] = [];
	for (const [i, row] of lower.entries())
		half.push(row.slice(0, i).reduce((rest, n, k) => rest - n * (half[k] ?? 0), right[i] ?? 0) / (row[i] ?? 1));
	const out = half.map(() => 0);
	for (let i = half.length - 1; i >= 0; i--) {
		let rest = half[i] ?? 0;
		for (let k = i + 1; k < half.length; k++) rest -= (lower[k]?.[i] ?? 0) * (out[k] ?? 0);
		out[i] = rest / (lower[i]?.[i] ?? 1);
	}
	return out;
}

/**
 * The least sum of squares near a start, by damped Gauss-Newton steps that never make it more.
 * Shape: always ends, after `steps` at the latest; at a kink of the figures it may stop a little off.
 * Source: D. W. Marquardt 1963, with the identity for the damping, as the unknowns are alike.
 */
export function least(problem: Problem, start: readonly number[], steps = STEPS): Least {
	const { unknowns, residuals } = problem;
	const costAt = (r: readonly number[], z: readonly number[]) => square(r) + square(z);
	let z = start;
	let figures = residuals(z);
	let cost = costAt(figures, z);
	let stiff = 1e-3;
	for (let step = 0; step < steps && stiff < STIFFEST; step++) {
		const jacobian = slopes(problem, z);
		const uphill = z.map((n, i) => jacobian.reduce((sum, row, k) => sum + (row[i] ?? 0) * (figures[k] ?? 0), n));
		let gain = 0;
		while (gain === 0 && stiff < STIFFEST) {
			const by = solved(normal(jacobian, unknowns, stiff), uphill);
			const next = z.map((n, i) => n - (by[i] ?? 0));
			const there = residuals(next);
			const lower = cost - costAt(there, next);
			if (lower > 0) {
				[z, figures, cost, gain] = [next, there, cost - lower, lower];
				stiff = Math.max(SOFTEST, stiff / 10);
			} else stiff *= 10;
		}
		if (gain < NO_GAIN * (1 + cost)) break;
	}
	const bend = normal(slopes(problem, z), unknowns, 0);
	const cov = z.map((_, k) =>
		solved(
			bend,
			z.map((_, i) => (i === k ? 1 : 0))
		)
	);
	return { z, cost, cov };
}
