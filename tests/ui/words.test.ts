import { describe, expect, test } from 'vitest';
import { figureOf } from '#ui/fields/figure.ts';
import { pressed, type Key } from '#ui/fields/keypad.ts';
import { readQuantity, showQuantity } from '#ui/fields/quantity.ts';
import { readSigned } from '#ui/fields/signed-length.ts';

const MM = { unit: 'mm' } as const;

describe('what is typed', () => {
	test.each([
		['66', 'mass', 66],
		['156 lb', 'mass', 70.8],
		['1:48', 'fall', 0.020833],
		['2 %', 'fall', 0.02],
		['level', 'fall', 0],
		['115 °F', 'warmth', 46.1],
		['110', 'degrees', 110]
	] as const)('[screen R7] "%s" as %s is %s in the unit of the record', (text, quantity, value) => {
		expect(readQuantity(text, quantity, MM)).toEqual({ kind: 'value', value });
	});

	test.each([
		['', 'mass', 'empty'],
		['heavy', 'mass', 'refused'],
		['66 stone', 'mass', 'refused'],
		['steep', 'fall', 'refused']
	] as const)('[screen R7] "%s" as %s is %s', (text, quantity, kind) => {
		expect(readQuantity(text, quantity, MM).kind).toBe(kind);
	});

	test.each([
		['-40 in', -1016],
		['−100', -100],
		['12,5 cm', 125]
	])('[screen R8] "%s" is %s mm from the datum line', (text, value) => {
		expect(readSigned(text, 'length', MM)).toEqual({ kind: 'value', value });
	});

	test('[screen R9] what is shown is read back', () => {
		for (const fall of [0, 1 / 48, 0.02, 0.0125]) {
			const read = readQuantity(showQuantity(fall, 'fall', MM), 'fall', MM);
			expect(read.kind === 'value' && Math.abs(read.value - fall)).toBeLessThan(1e-4);
		}
	});
});

test.each([
	['34 1/2 in', { figure: '34', fraction: '1/2', unit: 'in' }],
	['−1/2 in', { figure: '−', fraction: '1/2', unit: 'in' }],
	['+5', { figure: '+5', fraction: '', unit: '' }],
	['86,5 cm', { figure: '86,5', fraction: '', unit: 'cm' }],
	['to the left', { figure: 'to the left', fraction: '', unit: '' }]
])('[screen R10] "%s" is set as figure, fraction and unit', (text, parts) => {
	expect(figureOf(text)).toEqual(parts);
});

const digit = (text: string): Key => ({ kind: 'digit', text });
test.each([
	['59', digit('0'), '590'],
	['59 cm', digit('5'), '595 cm'],
	['34', { kind: 'fraction', text: '1/2' }, '34 1/2 in'],
	['34 1/2 in', { kind: 'fraction', text: '1/4' }, '34 1/4 in'],
	['590', { kind: 'unit', text: 'cm' }, '590 cm'],
	['34 1/2 in', { kind: 'back' }, '34 1/2'],
	['34 1/2', { kind: 'back' }, '34'],
	['34', { kind: 'back' }, '3'],
	['', { kind: 'back' }, '']
] as const)('[screen R11] "%s" after the key %o is "%s"', (text, key, after) => {
	expect(pressed(text, key)).toBe(after);
});
