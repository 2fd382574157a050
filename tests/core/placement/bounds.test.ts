import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aloneIn, pairIn, type Weighed } from '#core/placement/bound.ts';
import { Box } from '#core/placement/box.ts';
import { compare, partsOf, plus, priced } from '#core/placement/cost.ts';
import { withItem, withoutLeast, type Heap } from '#core/placement/heap.ts';
import { problemOf } from '#core/placement/problem.ts';
import { Search } from '#core/placement/search.ts';
import { questionOf } from '#core/plan.ts';
import { random } from './random.ts';
import { client, reduced, varied } from './reduced.ts';

const costs = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 6, maxLength: 6 });

describe('[placement R1] costs are compared part by part', () => {
	test('adding the same to both keeps their order', () => {
		fc.assert(
			fc.property(
				costs,
				costs,
				costs,
				(a, b, c) => Math.sign(compare(plus(a, c), plus(b, c))) === Math.sign(compare(a, b))
			),
			{ seed: 1 }
		);
	});

	test('a price keeps the parts and their order', () => {
		const parts = fc.tuple(
			...[2000, 80_000_000, 2000, 10_000_000, 1_000_000].map((max) => fc.integer({ min: 0, max }))
		);
		fc.assert(
			fc.property(parts, parts, (a, b) => {
				expect(partsOf(priced(a))).toEqual(a);
				const [p, q] = [priced(a), priced(b)];
				return Math.sign(p.high - q.high || p.low - q.low) === Math.sign(compare(a, b));
			}),
			{ seed: 3 }
		);
	});

	test('the queue gives the least first, and is as it was after it was taken from', () => {
		fc.assert(
			fc.property(fc.array(costs), (all) => {
				let heap: Heap<readonly number[]> | null = null;
				for (const one of all) heap = withItem(heap, one, compare);
				const drained = (from: Heap<readonly number[]> | null) => {
					const out: (readonly number[])[] = [];
					for (let left = from; left; left = withoutLeast(left, compare)) out.push(left.item);
					return out;
				};
				const out = drained(heap);
				expect(out).toEqual(all.toSorted(compare));
				expect(drained(heap)).toEqual(out);
			}),
			{ seed: 2 }
		);
	});
});

test('[placement R2] every printed limit about a mark alone is a place, rounded inward', () => {
	const question = questionOf({ ...client('turns-left'), lead: 'reference-led' });
	const { unknowns } = problemOf(question.scene, question.rows, question.wanted);
	const seat = unknowns.find((u) => u.accessory.kind === 'seat');
	const floor = question.scene.room.bathroomFloor;
	// 17 and 19 in above the bathroom floor (ADA 2010, 610.3): on no lattice of 7 mm from this datum.
	for (const at of [431.8, 482.6]) expect(seat?.spots[0]?.ys.values).toContain(floor + at);
});

/** True when every part of the first is at most that of the second. */
function below(a: Weighed, b: NonNullable<Weighed>): boolean {
	const parts = partsOf(b);
	return a !== null && partsOf(a).every((part, k) => part <= (parts[k] ?? -1));
}

test('[placement R3] no place of a box costs less than the box says, with its partner anywhere in another box', () => {
	const next = random(99);
	const pick = (n: number) => Math.floor(next() * n);
	let checked = 0;
	for (let seed = 0; seed < 12; seed++) {
		const c = varied(client(seed % 2 ? 'stands-then-tires' : 'turns-left'), seed);
		const { scene, unknowns } = reduced(c, seed, { accessories: 6, values: 25 });
		for (let i = 0; i < 150; i++) {
			const [a, b] = [0, 1].map(() => {
				const unknown = unknowns[pick(unknowns.length)];
				const spot = unknown?.spots[pick(unknown.spots.length)];
				if (!unknown || !spot) throw new Error('a reduced problem has places');
				const range = (n: number): [number, number] => {
					const [p, q] = [pick(n), pick(n)];
					return [Math.min(p, q), Math.max(p, q)];
				};
				const [x, y] = [range(spot.xs.values.length), range(spot.ys.values.length)];
				const inside = ([from, to]: readonly [number, number]): [number, number] => {
					const at = from + pick(to - from + 1);
					return [at, at];
				};
				return { box: new Box(unknown, spot, x, y), place: new Box(unknown, spot, inside(x), inside(y)) };
			});
			if (!a || !b) continue;
			const least = aloneIn(scene, a.box.rows, a.box);
			const exact = aloneIn(scene, a.place.rows, a.place);
			if (exact) {
				checked++;
				expect(below(least, exact)).toBe(true);
			}
			const rows = a.box.unknown.pairs.get(b.box.unknown.accessory.id);
			if (!rows || a.box.unknown === b.box.unknown) continue;
			const together = pairIn(scene, rows, a.place, b.place);
			if (!together) continue;
			checked++;
			const apart = pairIn(scene, rows, a.box, b.box);
			expect(below(apart, together)).toBe(true);
			// Rows called met throughout really add nothing at this place.
			const met = rows.filter((r) => !apart?.open.includes(r));
			const paid = pairIn(scene, met, a.place, b.place);
			expect(paid && partsOf(paid)).toEqual([0, 0, 0, 0, 0]);
		}
	}
	expect(checked).toBeGreaterThan(500);
});

test('[placement R8] a search stopped early says so, and its bound holds', () => {
	const problem = reduced(varied(client('turns-left'), 8), 8, { accessories: 6, values: 9 });
	const whole = new Search(problem, { until: 'proof', evaluations: 1e9 });
	const proof = whole.run();
	let end = proof.next();
	while (!end.done) end = proof.next();
	expect(end.value).toBe('proved');
	if (!whole.found) throw new Error('this instance has a plan');
	for (const share of [0.1, 0.5]) {
		const search = new Search(problem, { until: 'proof', evaluations: Math.ceil(whole.tally.evaluations * share) });
		const run = search.run();
		let step = run.next();
		while (!step.done) step = run.next();
		expect(step.value).toBe('stopped');
		expect(compare(search.bound, whole.found.cost)).toBeLessThanOrEqual(0);
	}
});
