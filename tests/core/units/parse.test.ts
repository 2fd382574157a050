import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatFeet, formatFigure, formatLength } from '#core/units/format.ts';
import { fromTicks, inches, mm, type LengthUnit } from '#core/units/length.ts';
import { parseLength } from '#core/units/parse.ts';

const IN_FRACTION = inches(34.5);
const FEET_AND_INCHES = inches(76.5);

describe('reading a length', () => {
	test.each([
		['34 1/2 in', 'mm', IN_FRACTION],
		['34-1/2"', 'mm', IN_FRACTION],
		['34 - 1/2 in.', 'mm', IN_FRACTION],
		['34½ in', 'mm', IN_FRACTION],
		['34 ½″', 'mm', IN_FRACTION],
		['34 1⁄2 inches', 'mm', IN_FRACTION],
		["34 1/2''", 'mm', IN_FRACTION],
		['34.5 IN', 'mm', IN_FRACTION],
		['34,5 in', 'mm', IN_FRACTION],
		['34 1/2', 'in', IN_FRACTION],
		['33.25 in', 'mm', inches(33.25)],
		['33.125 in', 'mm', inches(33.125)],
		['1/2 in', 'mm', inches(0.5)],
		['⅞"', 'mm', inches(0.875)],
		['.5 in', 'mm', inches(0.5)],
		['1 63/64 in', 'mm', inches(127 / 64)],
		['34', 'in', inches(34)],
		['34', 'mm', mm(34)],
		['6\' 4 1/2"', 'mm', FEET_AND_INCHES],
		['6\'-4 1/2"', 'mm', FEET_AND_INCHES],
		['6’–4½”', 'mm', FEET_AND_INCHES],
		['6′ 4½″', 'mm', FEET_AND_INCHES],
		['6 ft 4 1/2 in', 'mm', FEET_AND_INCHES],
		["6'4 1/2", 'mm', FEET_AND_INCHES],
		['6.375 ft', 'mm', FEET_AND_INCHES],
		["6'", 'mm', inches(72)],
		['6\'-0"', 'mm', inches(72)],
		['86,5 cm', 'in', mm(865)],
		['86.5cm', 'in', mm(865)],
		['865', 'mm', mm(865)],
		['865 mm', 'in', mm(865)],
		['863.6', 'mm', mm(863.6)],
		['1.2 m', 'mm', mm(1200)],
		['1.200 m', 'mm', mm(1200)],
		['0,125 m', 'mm', mm(125)],
		['\u00a0865\u202fmm ', 'mm', mm(865)],
		['0', 'mm', mm(0)],
		['10 m', 'mm', mm(10_000)]
	] as const)('[units R4] "%s" on a tape in %s', (text, unit, value) => {
		expect(parseLength(text, unit)).toEqual({ kind: 'length', value });
	});

	test.each([
		['', 'mm', /nothing/],
		['   ', 'in', /nothing/],
		['abc', 'mm', /not a length/],
		['34 1/2 in in', 'mm', /not a length/],
		['1e3', 'mm', /not a length/],
		['34.', 'mm', /not a length/],
		['1.2.3', 'mm', /not a length/],
		['in', 'in', /not a length/],
		["'", 'in', /not a length/],
		['NaN', 'mm', /not a length/],
		['34 35', 'mm', /two numbers/],
		['1 200 mm', 'mm', /two numbers/],
		['6-4', 'in', /two numbers/],
		['6\' 4 5"', 'in', /two numbers/],
		['-34', 'mm', /negative/],
		['−34 in', 'mm', /negative/],
		['1,200', 'mm', /as 1200 or as a decimal/],
		['1,200 in', 'mm', /as 1200 or as a decimal/],
		['1,200 m', 'mm', /as 1200 or as a decimal/],
		['1.200', 'mm', /as 1200 or as a decimal/],
		['86.500 cm', 'mm', /as 86500 or as a decimal/],
		['1,234.5', 'mm', /not a length/],
		['34 1/2', 'mm', /inches only/],
		['34 1/2 cm', 'mm', /inches only/],
		['34 1/3 in', 'mm', /halves to sixty-fourths/],
		['34 1/0 in', 'mm', /halves to sixty-fourths/],
		['34 4/4 in', 'mm', /not less than one/],
		['34 1/2 1/4 in', 'mm', /not a length/],
		['6\' 12"', 'mm', /fewer than 12/],
		["6.5' 4", 'mm', /whole feet/],
		['10.1 m', 'mm', /longer than 10 m/],
		['10000.1', 'mm', /longer than 10 m/],
		["33'", 'mm', /longer than 10 m/],
		["9999999999999999'", 'mm', /longer than 10 m/],
		['9999999999999999 1/2 in', 'mm', /longer than 10 m/],
		['9999999999999999999999999999999999999999', 'mm', /longer than 10 m/],
		['99999999999999999999999999999999999999999', 'mm', /too long/]
	] as const)('[units R5] "%s" on a tape in %s is refused', (text, unit, why) => {
		const parsed = parseLength(text, unit);
		expect(parsed.kind).toBe('refused');
		if (parsed.kind !== 'refused') return;
		expect(parsed.why).toMatch(why);
		expect(parsed.saw).toBe(text.trim().slice(0, 40));
	});

	test('[units R5] five million characters are refused by their number alone', () => {
		const parsed = parseLength('1 '.repeat(2_500_000), 'mm');
		expect(parsed).toEqual({ kind: 'refused', saw: '1 '.repeat(20), why: 'this is too long for a length' });
	});

	test('[units R5] no text at all makes it throw, and what it takes lies within 0 to 10 m', () => {
		const unit = fc.constantFrom<LengthUnit>('mm', 'in');
		const scraps = fc.constantFrom('3', '12', ' ', '-', '/', "'", '"', '.', ',', 'in', 'mm', 'cm', 'm', 'ft', '½', '⁄');
		const text = fc.oneof(
			fc.string(),
			fc.array(scraps, { maxLength: 9 }).map((parts) => parts.join(''))
		);
		fc.assert(
			fc.property(text, unit, (typed, tape) => {
				const parsed = parseLength(typed, tape);
				if (parsed.kind === 'refused') return;
				expect(parsed.value).toBeGreaterThanOrEqual(0);
				expect(parsed.value).toBeLessThanOrEqual(10_000);
				expect(mm(parsed.value)).toBe(parsed.value);
			}),
			{ numRuns: 2000 }
		);
	});
});

describe('reading what was printed', () => {
	const lengths = fc.integer({ min: 0, max: 3_200_000 }).map(fromTicks);

	test('[units R7] for every sixty-fourth to 96 in, print, read and snap give it back', () => {
		const step = inches(1 / 64);
		for (let k = 0; k <= 6144; k++) {
			const value = inches(k / 64);
			expect(parseLength(formatLength(value, { unit: 'in', step }), 'mm')).toEqual({ kind: 'length', value });
			expect(parseLength(formatFigure(value, { unit: 'in', step }), 'in')).toEqual({ kind: 'length', value });
			expect(parseLength(formatFeet(value, step), 'mm')).toEqual({ kind: 'length', value });
		}
	});

	test('[units R7] every tenth of a millimetre to 3 m printed in mm is read back', () => {
		for (let tenths = 0; tenths <= 30_000; tenths++) {
			const value = mm(tenths / 10);
			expect(parseLength(formatLength(value, { unit: 'mm' }), 'in')).toEqual({ kind: 'length', value });
		}
	});

	test('[units R7] any length printed and read again is within half a step', () => {
		fc.assert(
			fc.property(lengths, (value) => {
				for (const [unit, half] of [
					['mm', 0.05],
					['in', 25.4 / 32]
				] as const) {
					const back = parseLength(formatLength(value, { unit }), 'mm');
					if (back.kind === 'refused') throw new Error(back.why);
					expect(Math.abs(back.value - value)).toBeLessThanOrEqual(half + 1e-9);
				}
			})
		);
	});
});
