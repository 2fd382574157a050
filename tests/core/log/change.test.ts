import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyChange, changeFor, fits, inverse, valueAt } from '#core/log/change.ts';
import { difference } from '#core/log/difference.ts';
import { applyAct } from '#core/log/fold.ts';
import { same, type Json } from '#core/log/json.ts';

const STATE: Json = { people: { a: { age: 71 }, b: {} }, room: { width: 914 }, list: [1, 2] };

// A small alphabet of keys, so that two random states share many paths.
const json: fc.Arbitrary<Json> = fc.letrec<{ value: Json }>((tie) => ({
	value: fc.oneof(
		{ maxDepth: 4 },
		fc.constantFrom<Json>(null, true, 0, 1, 'x'),
		fc.array(tie('value'), { maxLength: 2 }),
		fc.dictionary(fc.constantFrom('a', 'b', 'c', '__proto__'), tie('value'), { noNullPrototype: true })
	)
})).value;

describe('changes', () => {
	test('[log R3] only the objects along the path are new', () => {
		const after = applyChange(STATE, { path: ['people', 'a', 'age'], from: 71, to: 72 });
		expect(after).toEqual({ ...STATE, people: { a: { age: 72 }, b: {} } });
		expect(valueAt(after, ['room'])).toBe(valueAt(STATE, ['room']));
		expect(valueAt(after, ['people', 'b'])).toBe(valueAt(STATE, ['people', 'b']));
		expect(valueAt(STATE, ['people', 'a', 'age'])).toBe(71);
	});

	test.each([
		[['people', 'c'], { age: 80 }],
		[['room', 'width'], 1000],
		[['people', 'a'], undefined],
		[['list'], [2, 1]],
		[['room', '__proto__'], { width: 1 }],
		[[], { empty: true }]
	] as const)('[log R3] a change at %o and its inverse leave the state as it was', (path, to) => {
		const change = changeFor(STATE, to === undefined ? { path } : { path, to });
		const after = applyChange(STATE, change);
		expect(valueAt(after, path)).toEqual(to);
		expect(fits(STATE, change)).toBe(true);
		expect(fits(after, inverse(change))).toBe(true);
		expect(applyChange(after, inverse(change))).toEqual(STATE);
	});

	test.each([
		[['nobody', 'age'], 1],
		[['room', 'width', 'mm'], 1],
		[['list', '0'], 1],
		[['toString', 'name'], 1],
		[[], undefined]
	] as const)('[log R3] no object holds %o, so nothing can be put there', (path, to) => {
		const change = changeFor(STATE, to === undefined ? { path } : { path, to });
		expect(fits(STATE, change)).toBe(false);
		expect(() => applyChange(STATE, change)).toThrow(RangeError);
	});

	test('[log R3] a change fits only on what it says it replaces', () => {
		expect(fits(STATE, { path: ['room', 'width'], from: 914, to: 1 })).toBe(true);
		expect(fits(STATE, { path: ['room', 'width'], from: 915, to: 1 })).toBe(false);
		expect(fits(STATE, { path: ['room', 'width'], to: 1 })).toBe(false);
	});
});

describe('difference', () => {
	test('[log R4] names the deepest places that differ, in order', () => {
		const after: Json = { people: { a: { age: 72 }, c: {} }, room: { width: 914 }, list: [1] };
		expect(difference(STATE, after)).toEqual([
			{ path: ['list'], from: [1, 2], to: [1] },
			{ path: ['people', 'a', 'age'], from: 71, to: 72 },
			{ path: ['people', 'b'], from: {} },
			{ path: ['people', 'c'], to: {} }
		]);
	});

	test('[log R4] applied to the one it gives the other, backwards too, and it is empty only between equals', () => {
		fc.assert(
			fc.property(json, json, (a, b) => {
				const changes = difference(a, b);
				expect(changes.length === 0).toBe(same(a, b));
				expect(same(applyAct(a, { kind: 'change', changes }), b)).toBe(true);
				const back = changes.map(inverse).reverse();
				expect(same(applyAct(b, { kind: 'change', changes: back }), a)).toBe(true);
			})
		);
	});

	test('[log R4] sameness is that of the JSON: the order of keys does not count', () => {
		fc.assert(
			fc.property(json, json, (a, b) => {
				const sorted = (value: Json) => JSON.stringify(value, (_, item: Json) => turned(item));
				expect(same(a, b)).toBe(sorted(a) === sorted(b));
				expect(same(a, JSON.parse(sorted(a)) as Json)).toBe(true);
			})
		);
	});
});

function turned(item: Json): Json {
	if (typeof item !== 'object' || item === null || Array.isArray(item)) return item;
	return Object.fromEntries(Object.entries(item).sort(([a], [b]) => (a < b ? -1 : 1)));
}
