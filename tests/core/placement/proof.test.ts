import { expect, test } from 'vitest';
import { Search } from '#core/placement/search.ts';
import { client, reduced, varied } from './reduced.ts';

/** Rooms of two clients, cut down to six accessories or so and a few places each, where a proof that begins at once once went wrong among others. */
const SEEDS = [66, 1136, ...Array.from({ length: 30 }, (_, i) => i)];

function found(seed: number, before?: { first: number; better: number }): readonly number[] | undefined | 'stopped' {
	const c = varied(client(seed % 2 === 1 ? 'stands-then-tires' : 'turns-left'), seed);
	const problem = reduced(c, seed, { accessories: 6, values: 6 + (seed % 3) * 3 });
	const search = new Search(problem, {
		until: 'proof',
		evaluations: 5_000_000,
		...(before && { before })
	});
	const run = search.run();
	let step = run.next();
	while (!step.done) step = run.next();
	return step.value === 'proved' ? search.found?.cost : 'stopped';
}

test('[placement R8] a proof that begins at once ends with the same plan as a search that never weighs two unknowns together', () => {
	let met = 0;
	for (const seed of SEEDS) {
		const plain = found(seed);
		if (plain === 'stopped') continue;
		met += plain === undefined ? 0 : 1;
		expect(found(seed, { first: 2_000, better: 0 }), String(seed)).toEqual(plain);
	}
	expect(met).toBeGreaterThan(10);
}, 120_000);
