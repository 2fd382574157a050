import type { Drawing } from '#core/drawing/entity.ts';
import { write } from '#core/drawing/type.ts';
import { dxfOf } from '#core/render/dxf.ts';
import { GlyphMissing, missingGlyphs } from '#core/render/missing.ts';
import { pdfOf } from '#core/render/pdf.ts';
import { svgOf } from '#core/render/svg.ts';
import { describe, expect, test } from 'vitest';
import { FONTS } from './fonts.ts';

const sheet = (title: string, ...texts: readonly string[]): Drawing => ({
	title,
	size: { width: 210, height: 297 },
	entities: texts.map((text, i) => write(String(i), text, [10, 10 * i], { size: 10 })),
	frame: { scale: 10, origin: [0, 0], picture: 'wall' }
});

const refused = sheet('Marks', 'by \u65e5\u672c\u65e5, \u0416 \u03a9 \u00e9 \u2212 1/2');

describe('a sign the fonts lack', () => {
	test.each([
		['PDF', () => pdfOf([sheet('Loads', 'fine'), refused], { title: 't', digest: '0'.repeat(32) }, FONTS)],
		['SVG', () => svgOf(refused)],
		['DXF', () => dxfOf(refused)]
	])('[render R6] stops a %s, which says what was seen, where, and what to do', (_, make) => {
		expect(make).toThrow(GlyphMissing);
		expect(make).toThrow(
			"The paper's font has no sign for '\u65e5' (U+65E5), in 'by \u65e5\u672c\u65e5, \u0416 \u03a9 \u00e9 \u2212 1/2' on sheet Marks. Write it another way: the font has Latin, Greek and Cyrillic letters, not all of them."
		);
		expect(make).toThrow('U+672C');
	});

	test('[render R6] a letter and an accent written apart are the one letter there is', () => {
		expect(missingGlyphs([sheet('Marks', 'Andre\u0301')])).toEqual([]);
		expect(svgOf(sheet('Marks', 'Andre\u0301'))).toContain('Andr\u00e9');
	});

	test('[render R6] is told once a line, with every sheet it is on', () => {
		const found = missingGlyphs([sheet('Marks', 'a \u65e5'), sheet('Loads', 'a \u65e5', 'a \u65e5', 'b \u65e5')]);
		expect(found.map(({ code, text, sheets }) => [code, text, sheets])).toEqual([
			['U+65E5', 'a \u65e5', ['Marks', 'Loads']],
			['U+65E5', 'b \u65e5', ['Loads']]
		]);
	});

	test('[render R6] is shown where it stands in a long line', () => {
		const long = `${'a '.repeat(90)}\u65e5${' b'.repeat(90)}`;
		expect(() => svgOf(sheet('Marks', long))).toThrow(
			`in '\u2026${'a '.repeat(15)}\u65e5${' b'.repeat(14)} \u2026' on`
		);
		expect(() => svgOf(sheet('Marks', `${'a '.repeat(90)}\u65e5`))).toThrow("a \u65e5' on");
	});

	test('[render R6] that nobody sees is told by its number, and cannot break the message', () => {
		const [bell, direction] = missingGlyphs([sheet('Marks', 'a\u0007b'), sheet('Marks', 'c\u202ed')]);
		expect([bell?.code, direction?.code]).toEqual(['U+0007', 'U+202E']);
		try {
			svgOf(sheet('Marks', 'a\u0007b\u202e'));
		} catch (error) {
			expect(String(error)).toMatch(/^[^\u0007\u202e]*$/u);
			expect(String(error)).toContain('no sign for U+0007');
		}
		expect.assertions(3);
	});

	test('[render R6] Latin, Greek and Cyrillic letters, and what the drawings set, are there', () => {
		const words = 'Straße Łódź Ñandú œuvre Αθήνα Київ −5 ½ 1/2 · – ← → ↑ ↓ “x”';
		expect(missingGlyphs([sheet('Marks', words)])).toEqual([]);
	});
});
