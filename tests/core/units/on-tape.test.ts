import { expect, test } from 'vitest';
import { onTape } from '#core/units/format.ts';

test.each([
	['Level with the chair, within 25 mm.', 'Level with the chair, within 1 in.'],
	['270 to 420 mm ahead', '10 5/8 to 16 1/2 in ahead'],
	['leaning 25 mm (3 degrees), 76 mm (10 degrees)', 'leaning 1 in (3 degrees), 3 in (10 degrees)'],
	['carries 1112 N, at 110 %', 'carries 1112 N, at 110 %']
])('[units R6] "%s" on a tape in inches is "%s", and itself on a tape in mm', (says, inches) => {
	expect(onTape(says, { unit: 'in' })).toBe(inches);
	expect(onTape(says, { unit: 'mm' })).toBe(says);
});
