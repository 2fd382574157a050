/** A label that wants to stand at a place on a line, with the room it needs before and after. Units: mm. */
export interface Wish {
	readonly at: number;
	readonly before: number;
	readonly after: number;
	/** How hard it holds its place against its neighbours; 1 when absent. */
	readonly weight?: number;
}

interface Pool {
	readonly count: number;
	readonly weight: number;
	readonly mean: number;
}

/**
 * Where labels in a row stand so that none overlaps and all together move least (squares), between two ends.
 * Units: mm. Shape: wishes sorted by `at`; places in the same order; what does not fit between the ends goes past the last.
 * Source: isotonic regression by pooling adjacent violators.
 */
export function spread(wishes: readonly Wish[], from: number, to: number): readonly number[] {
	const offsets: number[] = [];
	let offset = 0;
	wishes.forEach((w, i) => {
		const previous = wishes[i - 1];
		offset += previous ? previous.after + w.before : 0;
		offsets.push(offset);
	});
	const pools: Pool[] = [];
	wishes.forEach((w, i) => {
		let pool: Pool = { count: 1, weight: w.weight ?? 1, mean: w.at - (offsets[i] ?? 0) };
		for (let last = pools.at(-1); last && last.mean > pool.mean; last = pools.at(-1)) {
			pools.pop();
			pool = merged(last, pool);
		}
		pools.push(pool);
	});
	const least = from + (wishes[0]?.before ?? 0);
	const most = Math.max(least, to - offset - (wishes.at(-1)?.after ?? 0));
	const means = pools.flatMap((p) => Array.from({ length: p.count }, () => Math.min(Math.max(p.mean, least), most)));
	return means.map((mean, i) => mean + (offsets[i] ?? 0));
}

function merged(a: Pool, b: Pool): Pool {
	const weight = a.weight + b.weight;
	return { count: a.count + b.count, weight, mean: (a.mean * a.weight + b.mean * b.weight) / weight };
}
