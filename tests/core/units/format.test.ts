import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatFeet, formatFigure, formatHeight, formatLength, inchParts, roundInward } from '#core/units/format.ts';
import { fromTicks, inches, mm, toInches } from '#core/units/length.ts';

const SIXTEENTH = inches(1 / 16);

describe('printing a length', () => {
	test.each([
		[865, '865 mm'],
		[863.6, '863.6 mm'],
		[863.64, '863.6 mm'],
		[863.65, '863.7 mm'],
		[0, '0 mm'],
		[-12.5, '-12.5 mm'],
		[-0.04, '0 mm'],
		[2400, '2400 mm']
	])('[units R8] %s mm on a tape in mm: %s', (n, text) => {
		expect(formatLength(mm(n), { unit: 'mm' })).toBe(text);
	});

	test.each([
		[34.5, '34 1/2 in'],
		[34, '34 in'],
		[0.5, '1/2 in'],
		[0, '0 in'],
		[34 + 1 / 64, '34 in'],
		[34 + 1 / 32, '34 1/16 in'],
		[34 + 63 / 64, '35 in'],
		[33.875, '33 7/8 in'],
		[-1.25, '-1 1/4 in']
	])('[units R8] %s in on a tape in inches: %s', (n, text) => {
		expect(formatLength(inches(n), { unit: 'in' })).toBe(text);
	});

	// Source: sixteenths worked by hand: 840 mm / 1.5875 mm = 529.13 sixteenths; 1219.2 mm = 48 in.
	test.each([
		[840, '33 1/16'],
		[1219.2, '48']
	])('[units R8] %s mm to the nearest sixteenth: %s', (n, text) => {
		expect(formatFigure(mm(n), { unit: 'in' })).toBe(text);
	});

	test('[units R8] every sixty-fourth to 96 in comes apart into the same sixty-fourths, reduced', () => {
		for (let k = 0; k <= 6144; k++) {
			const { sign, whole, numerator, denominator } = inchParts(inches(k / 64), inches(1 / 64));
			expect(sign).toBe('');
			expect((whole * denominator + numerator) * (64 / denominator)).toBe(k);
			expect(numerator < denominator && (numerator % 2 === 1 || denominator === 1)).toBe(true);
		}
	});

	test('[units R8] the default step of inches is the sixteenth', () => {
		for (let k = 0; k <= 1536; k++) {
			const { whole, numerator, denominator } = inchParts(inches(k / 16));
			expect(whole + numerator / denominator).toBe(k / 16);
		}
	});

	test.each([
		[76.5, '6\'-4 1/2"'],
		[72, '6\'-0"'],
		[4.5, '0\'-4 1/2"'],
		[0.5, '0\'-1/2"'],
		[71 + 31 / 32, '6\'-0"'],
		[-14, '-1\'-2"']
	])('[units R8] %s in as feet and inches: %s', (n, text) => {
		expect(formatFeet(inches(n))).toBe(text);
	});

	test.each([
		[mm(863.6), 'mm', '865 mm'],
		[mm(862.4), 'mm', '860 mm'],
		[mm(863.6), 'in', '34 in'],
		[mm(840), 'in', '33 in'],
		[inches(33.125), 'in', '33 1/4 in']
	] as const)('[units R9] a height of %s mm on a tape in %s: %s', (height, unit, text) => {
		expect(formatHeight(height, { unit })).toBe(text);
	});

	test('[units R9] a height is finer only where the step says so', () => {
		expect(formatHeight(mm(863.6), { unit: 'mm', step: mm(0.1) })).toBe('863.6 mm');
		expect(formatHeight(mm(840), { unit: 'in', step: SIXTEENTH })).toBe('33 1/16 in');
	});

	test('[units R8] a step no inch tape has is a mistake of the program', () => {
		expect(() => inchParts(mm(840), mm(1))).toThrow(RangeError);
		expect(() => inchParts(mm(840), mm(0))).toThrow(RangeError);
	});
});

describe('rounding at a limit', () => {
	// Source: sixteenths worked by hand: 485 mm = 305.5 sixteenths, so 19 1/16 in = 484.19 mm; 455 mm = 286.6, so 17 15/16 in = 455.61 mm.
	test.each([
		[485, 'max', '19 1/16', 484.19],
		[455, 'min', '17 15/16', 455.61],
		[1219.2, 'max', '48', 1219.2],
		[1219.2, 'min', '48', 1219.2]
	] as const)('[units R10] %s mm as a %s in sixteenths: %s', (n, limit, text, at) => {
		const rounded = roundInward(mm(n), limit, SIXTEENTH);
		expect(formatFigure(rounded, { unit: 'in' })).toBe(text);
		expect(rounded).toBeCloseTo(at, 2);
	});

	test.each([
		[859.9, 'max', 855],
		[860, 'max', 860],
		[860.1, 'max', 860],
		[859.9, 'min', 860],
		[860, 'min', 860],
		[860.1, 'min', 865]
	] as const)('[units R10] %s mm as a %s in steps of 5 mm: %s', (n, limit, at) => {
		expect(roundInward(mm(n), limit, mm(5))).toBe(at);
	});

	test('[units R10] a rounded limit keeps the limit, lies within a step, and stays when rounded again', () => {
		const value = fc.integer({ min: -3_200_000, max: 3_200_000 }).map(fromTicks);
		const step = fc.constantFrom(mm(0.1), mm(1), mm(5), inches(1 / 64), SIXTEENTH, inches(1 / 4));
		fc.assert(
			fc.property(value, step, (limit, by) => {
				const least = roundInward(limit, 'min', by);
				const most = roundInward(limit, 'max', by);
				expect(least >= limit && most <= limit).toBe(true);
				expect(mm(least - limit) < by && mm(limit - most) < by).toBe(true);
				expect(roundInward(least, 'max', by)).toBe(least);
				expect(roundInward(most, 'min', by)).toBe(most);
			})
		);
	});

	test('[units R10] a limit that is itself on the tape is printed as the document prints it', () => {
		for (const limit of [17, 19, 33, 36, 38, 48]) {
			expect(toInches(roundInward(inches(limit), 'max', SIXTEENTH))).toBe(limit);
			expect(toInches(roundInward(inches(limit), 'min', SIXTEENTH))).toBe(limit);
		}
	});

	test.each([0, -1])('[units R10] a step of %s mm is a mistake of the program', (step) => {
		expect(() => roundInward(mm(1), 'min', mm(step))).toThrow(RangeError);
	});
});
