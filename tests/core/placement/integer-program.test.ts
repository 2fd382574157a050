import { expect, test } from 'vitest';
import { Search } from '#core/placement/search.ts';
import { leastBy, peer, type Choices } from '#cli/peer/integer-program.ts';
import { price } from './priced.ts';
import { client, placesOf, reduced, varied } from './reduced.ts';

const INSTANCES = 50;

/** A reduced problem written out for the integer program, prices worked out from findings. */
function choicesOf({ scene, rows, unknowns }: ReturnType<typeof reduced>): Choices {
	const places = unknowns.map((u) =>
		placesOf(u)
			.map((mark) => ({ mark, y: mark.place.y, price: price(scene, rows, [mark]) }))
			.filter((p) => p.price[0] === 0)
	);
	return {
		unknowns: places.map((list, i) => ({
			line: unknowns[i]?.accessory.line,
			places: list.map(({ y, price: [, ...parts] }) => ({ y, parts }))
		})),
		pair: (i, p, j, q) => {
			const [a, b] = [places[i]?.[p], places[j]?.[q]];
			if (!a || !b) return null;
			const [broken, ...parts] = price(scene, rows, [a.mark, b.mark]);
			return broken > 0 ? null : parts;
		}
	};
}

test(
	'[placement R3] an integer-programming library finds the same price, strength by strength',
	{ timeout: 120_000 },
	async () => {
		const highs = await peer();
		let met = 0;
		let six = 0;
		for (let seed = 0; seed < INSTANCES; seed++) {
			const base = client(seed % 2 ? 'stands-then-tires' : 'turns-left');
			const problem = reduced(varied(base, 500 + seed), 500 + seed, {
				accessories: 4 + (seed % 3),
				values: seed < 25 ? 5.5 : 4.5
			});
			const search = new Search(problem, { until: 'proof', evaluations: 1e9 });
			const run = search.run();
			while (!run.next().done);
			const least = leastBy(highs, choicesOf(problem));
			if (least) met++;
			if (least && problem.unknowns.length === 6) six++;
			expect(least, `seed ${String(seed)}`).toEqual(search.found?.cost.slice(0, 5) ?? null);
		}
		// Instances no plan can meet say little.
		expect(met).toBeGreaterThanOrEqual(15);
		expect(six).toBeGreaterThanOrEqual(4);
	}
);
