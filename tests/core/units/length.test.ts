import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degrees } from '#core/units/angle.ts';
import { newtons, pounds } from '#core/units/force.ts';
import { fromTicks, inches, mm, toInches, toTicks } from '#core/units/length.ts';

describe('lengths', () => {
	test('[units R1] tenths of a millimetre to 10 m stay as they are written', () => {
		for (let tenths = 0; tenths <= 100_000; tenths += 1) {
			expect(toTicks(mm(tenths / 10))).toBe(tenths * 32);
			expect(mm(tenths / 10)).toBe(tenths / 10);
		}
	});

	// Source: international inch, 25.4 mm exactly, so 1/64 in = 127/320 mm.
	test('[units R1] every sixty-fourth of an inch to 96 in is whole on the grid', () => {
		for (let k = 0; k <= 6144; k++) {
			expect(toTicks(inches(k / 64))).toBe(k * 127);
			expect(toInches(inches(k / 64))).toBe(k / 64);
		}
	});

	test.each([
		[863.5, true],
		[863.6, true],
		[863.7, false]
	])('[units R2] %s mm under a 34 in maximum (863.6 mm): %s', (at, within) => {
		expect(mm(at) <= inches(34)).toBe(within);
	});

	test('[units R2] every half inch to 96 in equals its millimetres written out in tenths', () => {
		for (let halves = 0; halves <= 192; halves++) {
			const tenths = halves * 127; // half an inch is 12.7 mm
			expect(mm(tenths / 10)).toBe(inches(halves / 2));
		}
	});

	test('[units R2] a sum made in any order is the same length', () => {
		const grid = fc.integer({ min: -3_200_000, max: 3_200_000 }).map(fromTicks);
		fc.assert(
			fc.property(grid, grid, grid, (a, b, c) => {
				expect(mm(mm(a + b) + c)).toBe(mm(a + mm(b + c)));
				expect(mm(mm(a + b) - b)).toBe(a);
			})
		);
	});

	test('[units R1] snapping moves nothing by more than half a tick, and a second time not at all', () => {
		fc.assert(
			fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (n) => {
				expect(Math.abs(mm(n) - n)).toBeLessThanOrEqual(1 / 640 + 1e-9);
				expect(mm(mm(n))).toBe(mm(n));
			})
		);
	});

	test('[units R1] there is one zero', () => {
		expect(Object.is(mm(-0), 0)).toBe(true);
		expect(Object.is(mm(-0.001), 0)).toBe(true);
		expect(Object.is(inches(-0), 0)).toBe(true);
	});

	test.each([NaN, Infinity, -Infinity, 1e300])('[units R3] %s is not a length', (n) => {
		expect(() => mm(n)).toThrow(RangeError);
		expect(() => inches(n)).toThrow(RangeError);
	});
});

describe('forces and angles', () => {
	// Source: NIST Special Publication 811, appendix B.8: 1 lbf = 4.448 222 N; 250 lbf is the familiar 1112 N.
	test('[units R6] pounds-force become newtons', () => {
		expect(pounds(1)).toBeCloseTo(4.448222, 6);
		expect(pounds(250)).toBeCloseTo(1112.06, 2);
		expect(newtons(1112)).toBe(1112);
	});

	test.each([NaN, Infinity])('[units R3] %s is neither a force nor an angle', (n) => {
		expect(() => newtons(n)).toThrow(RangeError);
		expect(() => pounds(n)).toThrow(RangeError);
		expect(() => degrees(n)).toThrow(RangeError);
	});

	test('[units R6] an angle stays as it is given', () => {
		expect(degrees(-90)).toBe(-90);
	});
});
