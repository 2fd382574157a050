import { ANSWER_WORDS, glyph } from '#core/drawing/glyph.ts';
import { LAYERS, TONES, type Style } from '#core/drawing/layers.ts';
import { tag } from '#core/drawing/tag.ts';
import type { Drawing, Entity, Spot } from '#core/drawing/entity.ts';
import { pdfOf } from '#core/render/pdf.ts';
import type { Answer } from '#core/rules/row.ts';
import { describe, expect, test } from 'vitest';
import { contrast } from '../../contrast.ts';
import { FONTS } from './fonts.ts';
import { open } from './pdf-reader.ts';

/** Ten dots a mm, so that cells begin on whole dots. */
const DPI = 254;
const PX = DPI / 25.4;
/** What is lighter is lost in the copy. */
const LIGHT = 225;
const CELL = 10;
/** Dots by which two must differ: one and a half square mm of black. */
const DIFFERENT = 150;
/** Dots on its edge by which a shape differs from itself elsewhere on the sheet, at most. */
const NOISE = 90;

/** A sheet as a photocopier gives it: black or nothing, one cell of 10 mm after the other. */
async function copied(cells: readonly ((at: Spot) => readonly Entity[])[]): Promise<readonly (readonly boolean[])[]> {
	const drawing: Drawing = {
		title: 'copy',
		size: { width: CELL * cells.length, height: CELL },
		entities: cells.flatMap((draw, i) => draw([CELL * (i + 0.5), CELL / 2]))
	};
	const doc = await open(pdfOf([drawing], { title: 'copy', digest: '0'.repeat(32) }, FONTS));
	const page = await doc.getPage(1);
	const viewport = page.getViewport({ scale: DPI / 72 });
	const factory = doc.canvasFactory as {
		create(width: number, height: number): { canvas: HTMLCanvasElement; context: CanvasRenderingContext2D };
	};
	const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
	const { canvas, context } = factory.create(width, height);
	await page.render({ canvas, canvasContext: context, viewport }).promise;
	const { data } = context.getImageData(0, 0, width, height);
	const black = (x: number, y: number): boolean => {
		const at = 4 * (y * width + x);
		return 0.299 * (data[at] ?? 0) + 0.587 * (data[at + 1] ?? 0) + 0.114 * (data[at + 2] ?? 0) < LIGHT;
	};
	const side = Math.floor(CELL * PX) - 1;
	return cells.map((_, i) =>
		Array.from({ length: side * side }, (_, k) => black(Math.round(i * CELL * PX) + (k % side), Math.floor(k / side)))
	);
}

/** Every pair of names with the number of dots in which they differ. */
async function pairs(named: readonly (readonly [string, (at: Spot) => readonly Entity[]])[]) {
	const cells = await copied(named.map(([, draw]) => draw));
	return named.flatMap(([a], i) =>
		named.slice(i + 1).map(([b], k) => {
			const [one = [], other = []] = [cells[i], cells[i + 1 + k]];
			return [`${a}, ${b}`, one.filter((dot, n) => dot !== other[n]).length] as const;
		})
	);
}

describe('a photocopy, black or nothing', () => {
	test('[render R8] keeps every answer apart from every other', async () => {
		const answers = Object.keys(ANSWER_WORDS) as Answer[];
		const found = await pairs(answers.map((answer) => [answer, (at: Spot) => glyph(answer, answer, at)]));
		expect(found).toHaveLength((answers.length * (answers.length - 1)) / 2);
		expect(found.filter(([, dots]) => dots < DIFFERENT)).toEqual([]);
	});

	test('[render R8] keeps a mark that is settled, one that is open and one for later apart', async () => {
		const set = (open: boolean, later: boolean) => (at: Spot) =>
			tag(`tag/${String(open)}${String(later)}`, { letter: 'B', id: 'b', open, later }, at, 2.6);
		const found = await pairs([
			['settled', set(false, false)],
			['open', set(true, false)],
			['later', set(false, true)]
		]);
		expect(found.filter(([, dots]) => dots < DIFFERENT)).toEqual([]);
	});

	test('[render R8] the same twice differs at its edge only: the test can fail', async () => {
		const same = (at: Spot) => glyph('inside', 'inside', at);
		const found = await pairs([
			['a', same],
			['b', same]
		]);
		expect(found.map(([, dots]) => dots <= NOISE)).toEqual([true]);
	});
});

describe('contrast on paper and on the screen', () => {
	const grounds = ['#ffffff', TONES.paper];

	test('[render R8] the formula gives what is known of two greys', () => {
		// Source: WebAIM, contrast checker; #767676 is the lightest grey that passes 4.5 on white.
		expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
		expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
	});

	test.each(['ink', 'grey', 'datum'] as const)('[render R8] text in %s has 7 to 1', (tone) => {
		for (const ground of grounds) expect(contrast(TONES[tone], ground)).toBeGreaterThanOrEqual(7);
	});

	test.each(Object.entries(LAYERS))('[render R8] a line of %s has 3 to 1', (_, style: Style) => {
		// Source: WCAG 2.2, 1.4.11, graphics that are needed to understand.
		if (style.stroke)
			for (const ground of grounds) expect(contrast(TONES[style.stroke], ground)).toBeGreaterThanOrEqual(3);
	});
});
