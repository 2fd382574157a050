import { packOf } from '#core/drawing/pack.ts';
import type { Drawing, Text } from '#core/drawing/entity.ts';
import { startOf } from '#core/drawing/type.ts';
import { pdfOf } from '#core/render/pdf.ts';
import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { fixtureCase, fixturePlan } from '../drawing/fixture.ts';
import { FONTS } from './fonts.ts';

const MM = 25.4 / 72;
const plan = fixturePlan(fixtureCase());
const meta = { title: 'Marks of example-0417', digest: plan.digest };

const open = (bytes: Uint8Array) =>
	getDocument({ data: bytes.slice(), verbosity: 0, standardFontDataUrl: 'node_modules/pdfjs-dist/standard_fonts/' })
		.promise;

interface Found {
	readonly text: string;
	readonly x: number;
	readonly y: number;
	readonly width: number;
}

async function textsOn(page: PDFPageProxy, height: number): Promise<readonly Found[]> {
	const { items } = await page.getTextContent({ disableNormalization: true });
	return items.flatMap((item) => {
		if (!('str' in item) || item.str.trim() === '') return [];
		const [x, y] = [Number(item.transform[4]), Number(item.transform[5])];
		return [{ text: item.str, x: x * MM, y: height - y * MM, width: item.width * MM }];
	});
}

const runsOn = (d: Drawing) =>
	d.entities
		.filter((e): e is Text => e.kind === 'text')
		.flatMap((t) => t.runs.map((r) => ({ text: r.text, x: startOf(t) + r.x, y: t.at[1] - r.rise, width: r.width })));

/** Middles of level strokes of one length, left to right. Units: mm. */
async function strokesOf(page: PDFPageProxy, length: number): Promise<readonly number[]> {
	const { fnArray, argsArray } = await page.getOperatorList();
	const middles: number[] = [];
	fnArray.forEach((fn, i) => {
		if (fn !== OPS.constructPath) return;
		const [, [points]] = argsArray[i] as [number, [Float32Array | null]];
		const p = Array.from(points ?? []);
		// Each step is its kind (0 move, 1 line) and its point.
		for (let k = 0; k + 5 < p.length; k += 3) {
			const [kind, x0 = 0, y0 = 0, next, x1 = 0, y1 = 0] = p.slice(k, k + 6);
			if (kind === 2 || next === 2) return;
			if (kind === 0 && next === 1 && y0 === y1 && Math.abs((x1 - x0) * MM - length) < 1e-3)
				middles.push(((x0 + x1) / 2) * MM);
		}
	});
	return middles.toSorted((a, b) => a - b);
}

describe.each([
	['A4', 'mm'],
	['Letter', 'in']
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
		const page = await (await open(bytes)).getPage(1);
		const [, , width = 0, height = 0] = page.view;
		expect(width * MM).toBeCloseTo(drawings[0]?.size.width ?? 0, 2);
		expect(height * MM).toBeCloseTo(drawings[0]?.size.height ?? 0, 2);
	});

	test('[render R1] the flange crosses of a 600 bar are as far apart as the scale says', async () => {
		const number = drawings.findIndex((d) => d.title === 'Control wall') + 1;
		const scale = unit === 'mm' ? 10 : 12;
		const [a = 0, b = 0, ...more] = await strokesOf(await (await open(bytes)).getPage(number), 2 * (40 / scale + 0.9));
		// The vertical bar has two more, over each other.
		expect(more).toHaveLength(2);
		expect(b - a).toBeCloseTo(600 / scale, 3);
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
	test('[render R2] of nothing is refused', () => {
		expect(() => pdfOf([], meta, FONTS)).toThrow(RangeError);
	});
});
