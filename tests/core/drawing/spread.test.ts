import { freeSpot } from '#core/drawing/free-spot.ts';
import { overlap } from '#core/drawing/entity.ts';
import { spread } from '#core/drawing/spread.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const wishes = fc
	.array(
		fc.record({
			at: fc.integer({ min: 0, max: 200 }),
			before: fc.integer({ min: 1, max: 9 }),
			after: fc.integer({ min: 1, max: 9 })
		}),
		{ minLength: 1, maxLength: 8 }
	)
	.map((all) => all.toSorted((a, b) => a.at - b.at));

const gaps = (all: readonly { before: number; after: number }[], places: readonly number[]) =>
	places.slice(1).map((p, i) => p - (places[i] ?? 0) - (all[i]?.after ?? 0) - (all[i + 1]?.before ?? 0));

const moved = (all: readonly { at: number }[], places: readonly number[]) =>
	all.reduce((sum, w, i) => sum + (w.at - (places[i] ?? 0)) ** 2, 0);

describe('labels in a row', () => {
	test('[drawing R4] none lies on its neighbour, and their order stays', () => {
		fc.assert(
			fc.property(wishes, (all) => {
				for (const gap of gaps(all, spread(all, -Infinity, Infinity))) expect(gap).toBeGreaterThan(-1e-9);
			})
		);
	});

	test('[drawing R4] labels that are apart stay where they are', () => {
		expect(
			spread(
				[10, 30, 50].map((at) => ({ at, before: 5, after: 5 })),
				0,
				100
			)
		).toEqual([10, 30, 50]);
	});

	test('[drawing R4] no other arrangement that keeps them apart moves them less', () => {
		const shifts = fc.array(fc.double({ min: -4, max: 4, noNaN: true }), { minLength: 8, maxLength: 8 });
		fc.assert(
			fc.property(wishes, shifts, (all, by) => {
				const best = spread(all, -Infinity, Infinity);
				const other = best.map((p, i) => p + (by[i] ?? 0));
				fc.pre(gaps(all, other).every((gap) => gap >= 0));
				expect(moved(all, best)).toBeLessThanOrEqual(moved(all, other) + 1e-6);
			})
		);
	});

	test('[drawing R4] the ends are kept as long as all fit between them', () => {
		fc.assert(
			fc.property(wishes, (all) => {
				const need = all.reduce((sum, w) => sum + w.before + w.after, 0);
				const places = spread(all, 50, 50 + need + 3);
				expect((places[0] ?? 0) - (all[0]?.before ?? 0)).toBeGreaterThanOrEqual(50 - 1e-9);
				expect((places.at(-1) ?? 0) + (all.at(-1)?.after ?? 0)).toBeLessThanOrEqual(50 + need + 3 + 1e-9);
			})
		);
	});

	test('[drawing R4] a heavy one keeps its place', () => {
		const [, heavy = 0] = spread(
			[
				{ at: 9, before: 5, after: 5 },
				{ at: 10, before: 5, after: 5, weight: 1000 }
			],
			-99,
			99
		);
		expect(heavy).toBeCloseTo(10, 1);
	});
});

describe('a free place for a label', () => {
	const within = { x0: 0, y0: 0, x1: 60, y1: 60 };
	const wide = { width: 10, height: 4, within };

	test('[drawing R4] the first wish that is free is taken', () => {
		const taken = [{ x0: 0, y0: 0, x1: 20, y1: 20 }];
		expect(
			freeSpot({
				...wide,
				taken,
				wishes: [
					[10, 10],
					[40, 40],
					[50, 50]
				]
			})
		).toEqual([40, 40]);
	});

	test('[drawing R4] else a place that meets nothing and stays within, or none when there is none', () => {
		const side = fc.integer({ min: 0, max: 50 });
		const box = fc.tuple(side, side).map(([x0, y0]) => ({ x0, y0, x1: x0 + 18, y1: y0 + 18 }));
		fc.assert(
			fc.property(fc.array(box, { maxLength: 14 }), (taken) => {
				const spot = freeSpot({ ...wide, taken, wishes: [[30, 30]] });
				if (!spot) return;
				const label = { x0: spot[0] - 5, x1: spot[0] + 5, y0: spot[1] - 2, y1: spot[1] + 2 };
				expect(taken.some((t) => overlap(t, label))).toBe(false);
				expect(Math.min(label.x0, label.y0, 60 - label.x1, 60 - label.y1)).toBeGreaterThanOrEqual(0);
			})
		);
		expect(freeSpot({ ...wide, taken: [within], wishes: [[30, 30]] })).toBeUndefined();
	});
});
