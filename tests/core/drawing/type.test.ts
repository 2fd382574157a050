import { ADVANCES } from '#core/drawing/advances.ts';
import { boxOf, printable, runsOf, runWidth, widthOf, write } from '#core/drawing/type.ts';
import { wrapped } from '#core/drawing/wrap.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { advancesOf } from './true-type.ts';

describe('type', () => {
	test.each([
		['regular', 1],
		['semibold', 2]
	] as const)(
		'[drawing R2] widths of %s are those of the embedded font, read again from its file',
		(weight, column) => {
			const font = advancesOf(`static/fonts/source-sans-3-${weight}.ttf`);
			for (const range of ADVANCES) {
				range[column].split(' ').forEach((width, i) => {
					expect([range[0] + i, font.get(range[0] + i)]).toEqual([range[0] + i, Number(width)]);
				});
			}
		}
	);

	test('[drawing R2] every sign the sheets use of themselves is in the fonts', () => {
		for (const sign of '0123456789/\u2044\u2212+\u00b7\u2013\u2019\u2032\u2033?()') {
			expect(printable(sign)).toBe(sign);
		}
	});

	test('[drawing R2] what the fonts lack is seen as an empty square, never dropped', () => {
		expect(printable('a\u0939b\u{1f600}')).toBe('a\u25a1b\u25a1');
		expect(write('x', '\u4e2d', [0, 0], { size: 10 }).text).toBe('\u25a1');
	});

	test('[drawing R2] figures are as wide as each other in both weights, so columns stand', () => {
		for (const weight of ['regular', 'semibold'] as const) {
			const widths = Array.from('0123456789', (c) => runWidth(c, 10, weight));
			expect(new Set(widths).size).toBe(1);
		}
	});

	test('[drawing R3] a fraction is three runs: small and raised, the stroke, small on the base line; no space before it', () => {
		const runs = runsOf('34 7/8', 14, 'semibold');
		expect(runs.map((r) => r.text)).toEqual(['34', '7', '\u2044', '8']);
		expect(runs.map((r) => r.rise > 0)).toEqual([false, true, false, false]);
		expect(runs.map((r) => r.size)).toEqual([14, 14 * 0.64, 14, 14 * 0.64]);
	});

	test.each([
		['1:12', ['1:12']],
		['4/1', ['4/1']],
		['608.5, 309.4', ['608.5, 309.4']],
		['It is -3 1/16 in.', ['It is \u22123', '1', '\u2044', '16', 'in.']]
	])('[drawing R3] only fractions of an inch are set so: %s', (text, runs) => {
		expect(runsOf(text, 10, 'regular').map((r) => r.text)).toEqual(runs);
	});

	test.each([
		['-5', '\u22125'],
		['(-5)', '(\u22125)'],
		['a-5', 'a-5'],
		['2026-03', '2026-03']
	])('[drawing R3] a minus is a true minus, a hyphen stays one: %s', (text, printed) => {
		expect(printable(text)).toBe(printed);
	});

	test('[drawing R2] lines keep their width and lose no letter', () => {
		const word = fc.stringMatching(/^[a-z]{1,30}$/);
		fc.assert(
			fc.property(fc.array(word, { minLength: 1, maxLength: 20 }), fc.integer({ min: 20, max: 90 }), (words, width) => {
				const lines = wrapped(words.join(' '), width, 10);
				expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''));
				for (const line of lines) expect(widthOf(line, 10)).toBeLessThanOrEqual(width);
			})
		);
	});

	test('[drawing R2] a number is not parted from its fraction or its unit', () => {
		for (let width = 18; width < 60; width++) {
			const lines = wrapped('It stands 34 1/2 in over 1112 N of load', width, 10);
			expect(lines.some((l) => l.includes('34 1/2 in')) && lines.some((l) => l.includes('1112 N'))).toBe(true);
		}
	});

	test('[drawing R2] a text covers the same area whichever way it is anchored', () => {
		const at = (anchor: 'start' | 'middle' | 'end', x: number) =>
			boxOf(write('x', '12 3/4', [x, 5], { size: 12, anchor }));
		const width = widthOf('12 3/4', 12);
		const start = at('start', 10);
		expect(at('middle', 10 + width / 2).x0).toBeCloseTo(start.x0, 9);
		expect(at('end', 10 + width).x1).toBeCloseTo(start.x1, 9);
	});
});
