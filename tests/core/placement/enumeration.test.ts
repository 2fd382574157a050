import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import { Search } from '#core/placement/search.ts';
import { compare } from '#core/placement/cost.ts';
import { client, placesOf, reduced, varied } from './reduced.ts';
import { orderOf, price, type Price } from './priced.ts';

const INSTANCES = 500;

interface Best {
	readonly price: readonly number[];
	readonly marks: readonly Mark[];
}

const plus = (a: readonly number[], b: readonly number[]): number[] => a.map((n, i) => n + (b[i] ?? 0));

/** Every plan of a reduced problem, written out; only what is already worse than the best is not followed to its end. */
function enumerated(problem: ReturnType<typeof reduced>): Best | null {
	const { scene, rows, unknowns } = problem;
	const options = unknowns.map((u) =>
		placesOf(u)
			.map((mark) => ({ mark, price: price(scene, rows, [mark]) }))
			.filter((o) => o.price[0] === 0)
	);
	const pairs = new Map<string, Price>();
	const pair = (a: Mark, b: Mark): Price => {
		const key = JSON.stringify([a.accessory.id, a.place, b.accessory.id, b.place]);
		const known = pairs.get(key) ?? price(scene, rows, [a, b]);
		pairs.set(key, known);
		return known;
	};
	let best: Best | null = null;
	const beats = (found: Best): boolean => {
		if (!best) return true;
		const order = (b: Best) => [...b.price, ...b.marks.flatMap(orderOf)];
		return compare(order(found), order(best)) < 0;
	};
	const follow = (marks: readonly Mark[], sum: readonly number[]): void => {
		if (best && compare(sum, best.price) > 0) return;
		const next = options[marks.length];
		if (!next) {
			const found = { price: sum, marks };
			if (beats(found)) best = found;
			return;
		}
		for (const { mark, price: own } of next) {
			const line = mark.accessory.line;
			if (line !== undefined && marks.some((m) => m.accessory.line === line && m.place.y !== mark.place.y)) continue;
			const whole = marks.reduce<readonly number[]>((all, m) => plus(all, pair(m, mark)), plus(sum, own));
			if (whole[0] === 0) follow([...marks, mark], whole);
		}
	};
	follow([], [0, 0, 0, 0, 0, 0]);
	return best;
}

describe('[placement R3] the answer is the best of every plan written out', () => {
	const bases = ['turns-left', 'stands-then-tires'].map(client);
	let met = 0;

	test(`${String(INSTANCES)} random instances, prices worked out from findings`, { timeout: 120_000 }, () => {
		for (let seed = 0; seed < INSTANCES; seed++) {
			const base = bases[seed % bases.length];
			if (!base) continue;
			const c = varied(base, seed);
			const problem = reduced(c, seed, { accessories: 1 + (seed % 3), values: seed % 3 === 2 ? 4 : 5 });
			const search = new Search(problem, { until: 'proof', evaluations: 1e9 });
			const run = search.run();
			while (!run.next().done);
			const best = enumerated(problem);
			if (best) met++;
			const found = search.found && {
				price: [0, ...search.found.cost.slice(0, 5)],
				marks: search.found.marks.map((m) => [m.accessory.id, m.place])
			};
			const expected = best && { price: best.price, marks: best.marks.map((m) => [m.accessory.id, m.place]) };
			expect(found, `seed ${String(seed)}`).toEqual(expected);
		}
		// Instances no plan can meet say little: most must have an answer.
		expect(met).toBeGreaterThan(INSTANCES / 3);
	});
});
