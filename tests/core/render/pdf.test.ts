import { packOf } from '#core/drawing/pack.ts';
import type { Drawing, Text } from '#core/drawing/entity.ts';
import { startOf } from '#core/drawing/type.ts';
import { scaleName } from '#core/drawing/view.ts';
import { pdfOf } from '#core/render/pdf.ts';
import { describe, expect, test } from 'vitest';
import { fixtureCase, fixturePlan } from '../drawing/fixture.ts';
import { FONTS } from './fonts.ts';
import { open, strokesOf, textsOn } from './pdf-reader.ts';

const MM = 25.4 / 72;
const plan = fixturePlan(fixtureCase());
const meta = { title: 'Marks of example-0417', digest: plan.digest };

const runsOn = (d: Drawing) =>
	d.entities
		.filter((e): e is Text => e.kind === 'text')
		.flatMap((t) => t.runs.map((r) => ({ text: r.text, x: startOf(t) + r.x, y: t.at[1] - r.rise, width: r.width })));

const textsOf = (d: Drawing | undefined) => d?.entities.flatMap((e) => (e.kind === 'text' ? [e.text] : []));

describe.each([
	['A4', 'mm'],
	['A3', 'mm'],
	['Letter', 'in'],
	['Tabloid', 'in']
] as const)('a PDF on %s in %s, read by an independent reader', (sheet, unit) => {
	const drawings = packOf(plan, { reader: 'therapist', sheet, tape: { unit } });
	const bytes = pdfOf(drawings, meta, FONTS);

	test('[render R1] every text is where the drawing says, to a hundredth of a mm, and as wide', async () => {
		const doc = await open(bytes);
		expect(doc.numPages).toBe(drawings.length);
		for (const [i, d] of drawings.entries()) {
			const found = await textsOn(await doc.getPage(i + 1), d.size.height);
			for (const run of runsOn(d).filter((r) => r.text.trim() !== '')) {
				const near = found.filter((f) => Math.abs(f.x - run.x) < 0.01 && Math.abs(f.y - run.y) < 0.01);
				expect([run.text, near.map((f) => f.text)]).toEqual([run.text, [run.text]]);
				expect(Math.abs((near[0]?.width ?? 0) - run.width)).toBeLessThan(0.02);
			}
		}
	});

	test('[render R1] sheets have their exact size', async () => {
		const doc = await open(bytes);
		for (const [i, d] of drawings.entries()) {
			const [, , width = 0, height = 0] = (await doc.getPage(i + 1)).view;
			expect(width * MM).toBeCloseTo(d.size.width, 2);
			expect(height * MM).toBeCloseTo(d.size.height, 2);
		}
		const walls = drawings.filter((d) => d.frame).map((d) => [d.size.width, d.size.height]);
		// Sources: ISO 216; ANSI/ASME Y14.1 A and B, 8.5 x 11 and 11 x 17 in.
		const sizes = { A4: [210, 297], A3: [297, 420], Letter: [215.9, 279.4], Tabloid: [279.4, 431.8] };
		expect(walls).toEqual(walls.map(() => sizes[sheet]));
	});

	test('[render R1] the flange crosses of a 600 bar are as far apart as the scale says', async () => {
		const number = drawings.findIndex((d) => d.title === 'Control wall') + 1;
		const scale = drawings[number - 1]?.frame?.scale ?? NaN;
		expect(textsOf(drawings[number - 1])).toContain(scaleName(scale, unit));
		const [a = 0, b = 0, ...more] = await strokesOf(await (await open(bytes)).getPage(number), 2 * (40 / scale + 0.9));
		// The vertical bar has two more, over each other.
		expect(more).toHaveLength(2);
		expect(b - a).toBeCloseTo(600 / scale, 3);
		// 1000 mm of wall are 100.00 mm of paper at 1:10.
		expect((((b - a) / 600) * 1000 * (scale / 10)).toFixed(2)).toBe('100.00');
	});

	test('[render R2] the same plan gives the same bytes', () => {
		expect(
			Buffer.from(pdfOf(packOf(plan, { reader: 'therapist', sheet, tape: { unit } }), meta, FONTS)).equals(
				Buffer.from(bytes)
			)
		).toBe(true);
	});

	test('[render R2] it says its title and language', async () => {
		const { info } = await (await open(bytes)).getMetadata();
		expect(info).toMatchObject({ Title: 'Marks of example-0417', Language: 'en' });
	});
});

describe('a PDF', () => {
	test('[render R1] of a sheet that lies on its side has its size too', async () => {
		const lying = { title: 't', size: { width: 297, height: 210 }, entities: [] };
		const page = await (await open(pdfOf([lying, lying], meta, FONTS))).getPage(2);
		expect(page.view.map((n) => Math.round(n * MM))).toEqual([0, 0, 297, 210]);
	});

	test('[render R2] of nothing is refused', () => {
		expect(() => pdfOf([], meta, FONTS)).toThrow(RangeError);
	});
});
