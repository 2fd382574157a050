import type { Box, Drawing, Path, Text } from '#core/drawing/entity.ts';
import { overlap } from '#core/drawing/entity.ts';
import { templatesOf } from '#core/drawing/installer/templates.ts';
import { packOf } from '#core/drawing/pack.ts';
import { extent } from '#core/drawing/path.ts';
import type { OnPaper, SheetName } from '#core/drawing/sheet.ts';
import { boxOf } from '#core/drawing/type.ts';
import type { Plan } from '#core/plan.ts';
import { pdfOf } from '#core/render/pdf.ts';
import { fixingsOf } from '#core/report.ts';
import { inches } from '#core/units/length.ts';
import fc from 'fast-check';
import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { FONTS } from '../render/fonts.ts';
import { fixtureCase, fixturePlan } from './fixture.ts';
import { REAL, readOffPlan, type Bar, type Real } from './read-off.ts';

const MM = 25.4 / 72;
const BARS = { 'bar-control': REAL, 'entry-bar': { ...REAL, centres: 450, across: 70, circle: 50, holes: 4 } } as const;
const plan = readOffPlan(BARS);
const how = (sheet: SheetName, unit: 'mm' | 'in', both = false): OnPaper => ({
	reader: 'installer',
	sheet,
	tape: { unit },
	both
});

/** A straight stroke of a page. Units and frame: mm of the sheet, y down. */
type Stroke = readonly [x0: number, y0: number, x1: number, y1: number];

/** Every straight stroke of a page of a PDF, and every text, as an independent reader has them. */
async function read(page: PDFPageProxy): Promise<{ strokes: readonly Stroke[]; texts: readonly string[] }> {
	const [, , , high = 0] = page.view;
	const { fnArray, argsArray } = await page.getOperatorList();
	const strokes: Stroke[] = [];
	fnArray.forEach((fn, i) => {
		if (fn !== OPS.constructPath) return;
		const [, [points]] = argsArray[i] as [number, [Float32Array | null]];
		const p = Array.from(points ?? []);
		let at: readonly [number, number] = [0, 0];
		// Each step is its kind (0 move, 1 line, 2 curve, 4 close) and its points.
		for (let k = 0; k < p.length;) {
			const kind = p[k];
			const length = kind === 2 ? 6 : kind === 4 ? 0 : 2;
			const to = length === 0 ? at : ([p[k + length - 1] ?? 0, p[k + length] ?? 0] as const);
			if (kind === 1) strokes.push([at[0] * MM, (high - at[1]) * MM, to[0] * MM, (high - to[1]) * MM]);
			at = to;
			k += 1 + length;
		}
	});
	const { items } = await page.getTextContent();
	return { strokes, texts: items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [item.str] : [])) };
}

const opened = async (drawings: readonly Drawing[]) => {
	const bytes = pdfOf(drawings, { title: 'Templates', digest: plan.digest }, FONTS);
	const options = { data: bytes.slice(), verbosity: 0, standardFontDataUrl: 'node_modules/pdfjs-dist/standard_fonts/' };
	const doc = await getDocument(options).promise;
	return Promise.all(drawings.map(async (_, i) => read(await doc.getPage(i + 1))));
};

const level = ([, y0, , y1]: Stroke): boolean => Math.abs(y1 - y0) < 1e-6;
const upright = ([x0, , x1]: Stroke): boolean => Math.abs(x1 - x0) < 1e-6;
const long = ([x0, y0, x1, y1]: Stroke): number => Math.hypot(x1 - x0, y1 - y0);

/** Middles of the crosses whose strokes are so long, from above and then from the left. Units: mm. */
function crossesOf(strokes: readonly Stroke[], length: number): readonly (readonly [number, number])[] {
	const fit = strokes.filter((s) => Math.abs(long(s) - length) < 1e-3);
	const middle = ([x0, y0, x1, y1]: Stroke) => [(x0 + x1) / 2, (y0 + y1) / 2] as const;
	return fit
		.filter(level)
		.map(middle)
		.filter(([x, y]) => fit.filter(upright).some((s) => Math.hypot(middle(s)[0] - x, middle(s)[1] - y) < 1e-3));
}

/** The holes of a part as the plan has them, and its brackets. */
const told = (of: Plan, id: string) => {
	const mark = of.marks.find((m) => m.accessory.id === id);
	return mark ? fixingsOf(of.scene, mark) : [];
};

describe.each([
	['A4', 'mm'],
	['A3', 'mm'],
	['Letter', 'in'],
	['Tabloid', 'in']
] as const)('templates for %s in %s, read by an independent reader of PDF', (sheet, unit) => {
	const drawings = templatesOf(plan, how(sheet, unit));
	const pages = opened(drawings);

	test('[drawing R19] are on a sheet that is held in the hand', () => {
		const expected = unit === 'mm' ? { width: 210, height: 297 } : { width: 215.9, height: 279.4 };
		expect(drawings.length).toBeGreaterThan(0);
		for (const { size } of drawings) expect(size).toEqual(expected);
	});

	test('[drawing R19] have bars of exactly 100 mm and 4 in both ways on every sheet', async () => {
		for (const { strokes } of await pages) {
			for (const way of [level, upright]) {
				const lengths = strokes.filter(way).map(long);
				for (const exact of [100, inches(4)])
					expect(lengths.filter((one) => Math.abs(one - exact) < 0.005)).toHaveLength(1);
			}
		}
	});

	test('[drawing R19] have their holes as far apart as the plan has them, to a hundredth of a mm', async () => {
		const strokes = (await pages).flatMap((page, i) =>
			page.strokes.map(([x0, y0, x1, y1]): Stroke => [x0, y0 + i * 1000, x1, y1 + i * 1000])
		);
		const found = crossesOf(strokes, REAL.hole + 4);
		for (const { x, y, holes = [] } of [...told(plan, 'bar-control'), ...told(plan, 'entry-bar')]) {
			expect(holes.length).toBeGreaterThan(2);
			// Some cross of a centre has every one of its holes round it, each where the plan has it.
			const fits = crossesOf(strokes, 8).some(([cx, cy]) =>
				holes.every(([hx, hy]) => found.some(([fx, fy]) => Math.hypot(fx - cx - (hx - x), fy - cy + (hy - y)) < 0.01))
			);
			expect(fits).toBe(true);
		}
		expect(found).toHaveLength(14);
	});

	test('[drawing R19] have a level line through every centre, right across', async () => {
		const wide = unit === 'mm' ? 180 : 185.9;
		const all = (await pages).flatMap(({ strokes }) => {
			const lines = strokes.filter((s) => level(s) && Math.abs(long(s) - wide) < 0.01);
			return crossesOf(strokes, 8).map(([, y]) => lines.filter((s) => Math.abs(s[1] - y) < 0.001).length);
		});
		expect(all).toEqual([1, 1, 1, 1]);
	});

	test('[drawing R19] say what they are, where they go and how a print is checked', async () => {
		const found = (await pages).map(({ texts }) => texts.join(' ').replace(/\s+/g, ' '));
		const all = found.join(' ');
		for (const words of ['left bracket, D1', 'right bracket, D2', 'lower bracket, F1', 'upper bracket, F2'])
			expect(all).toContain(words);
		expect(all.match(/example-0417 · state 4f3a 91c0 7be2 · revision –/g)).toHaveLength(4 + found.length);
		expect(all.match(/\bup\b/g)).toHaveLength(4);
		for (const page of found) expect(page).toMatch(/Print at 100 %, never to fit\. Measure all four bars/);
		expect(all).toContain(unit === 'mm' ? '600 mm to the other' : 'to the other');
		expect(all).toContain('Control wall. Horizontal bar, read off.');
	});
});

describe('templates', () => {
	const textsOf = (drawings: readonly Drawing[]) =>
		drawings.flatMap((d) => d.entities.filter((e): e is Text => e.kind === 'text').map(({ text }) => text));
	const circles = (drawings: readonly Drawing[], end: string) =>
		drawings.flatMap((d) => d.entities.filter((e): e is Path => e.kind === 'path' && e.id.endsWith(end)).map(extent));

	test('[drawing R19] three holes on a circle of 60 are 51.96 apart, to the tenth the plan tells', () => {
		// Exact geometry: the side of a triangle in a circle of radius 30 is 30 times the root of 3.
		const middles = circles(templatesOf(plan, how('A4', 'mm')), '/cross')
			.slice(0, 3)
			.map((b) => [(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2] as const);
		const [a = [0, 0], b = [0, 0], c = [0, 0]] = middles;
		for (const [p, q] of [
			[a, b],
			[b, c],
			[c, a]
		] as const)
			expect(Math.abs(Math.hypot(p[0] - q[0], p[1] - q[1]) - 51.96)).toBeLessThan(0.1);
	});

	test('[drawing R19] each hole stands where the plan has it, seen from inside the room: right is right, up is up', () => {
		const drawings = templatesOf(plan, how('A4', 'mm'));
		const middleOf = (id: string) => circles(drawings, id).map((b) => [(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2] as const);
		const each = [...told(plan, 'bar-control').entries()].flatMap(([i, { x, y, holes = [] }]) =>
			holes.map(([hx, hy], n) => ({ bracket: `D${i + 1}`, hole: `D${i + 1}.${n + 1}`, dx: hx - x, dy: hy - y }))
		);
		expect(each).toHaveLength(6);
		for (const { bracket, hole, dx, dy } of each) {
			const [[cx, cy] = [0, 0]] = middleOf(`template/${bracket}/flange`);
			const [[fx, fy] = [0, 0]] = middleOf(`template/${hole}/cross`);
			expect([fx - cx, cy - fy]).toEqual([expect.closeTo(dx, 6), expect.closeTo(dy, 6)]);
		}
		// Turned with one at the bottom, the second is at the upper left: clockwise as one faces the wall.
		expect(each[1]?.dx).toBeCloseTo(-26, 6);
	});

	test('[drawing R19] flange, circle and holes have the diameters that were read off', () => {
		const drawings = templatesOf(plan, how('A4', 'mm'));
		const wide = (end: string) => circles(drawings, end).map((b) => b.x1 - b.x0);
		expect(wide('D1/flange')).toEqual([expect.closeTo(80, 6)]);
		expect(wide('D1/circle')).toEqual([expect.closeTo(60, 6)]);
		expect(wide('D1.1/edge')).toEqual([expect.closeTo(6.5, 6)]);
	});

	test('[drawing R19] figures say where the centre goes, exactly, in the other unit too if asked', () => {
		const of = (unit: 'mm' | 'in', both: boolean) => textsOf(templatesOf(plan, how('A4', unit, both)));
		expect(of('mm', false)).toEqual(expect.arrayContaining(['100 mm', '700 mm', '\u2212150 mm', '835 mm', '+410 mm']));
		// 100 mm is 3.937 in, 3 60/64; 150 is 5.906, 5 58/64.
		expect(of('in', true)).toEqual(
			expect.arrayContaining(['3 15/16 in', '100 mm', '\u22125 29/32 in', '\u2212150 mm'])
		);
	});

	test('[drawing R19] what is not to be drilled yet says so and is dashed', () => {
		const drawings = templatesOf(readOffPlan(BARS, { later: ['bar-control'] }), how('A4', 'mm'));
		const layer = (id: string) =>
			drawings.flatMap((d) => d.entities.filter((e) => e.id === id)).map((e) => e.kind === 'path' && e.layer);
		expect(textsOf(drawings).filter((t) => t === 'Do not drill yet: it is wanted only later.')).toHaveLength(2);
		expect(textsOf(drawings).filter((t) => t === 'Do not drill yet: its question is open.')).toHaveLength(2);
		expect([layer('template/D1/flange'), layer('template/F1/flange')]).toEqual([['thing-later'], ['thing-open']]);
		expect([layer('template/D1/cut'), layer('template/F1/cut')]).toEqual([['question'], ['question']]);
	});

	test('[drawing R19] over a wall that carries nothing there, say so', () => {
		const drawings = templatesOf(readOffPlan({ 'bar-back': REAL }), how('A4', 'mm'));
		expect(textsOf(drawings).filter((t) => t === 'Do not drill: nothing recorded here carries it.')).toHaveLength(2);
	});

	test('[drawing R19] marks without one are named with the reason', () => {
		expect(textsOf(templatesOf(plan, how('A4', 'mm'))).join(' ')).toContain(
			'No template for A C: holes of such a part are not read off here, take them from the part itself. B: no screws are set out. E: the part is not read off yet.'
		);
	});

	test('[drawing R19] what is on the wall already, or larger than the sheet, has none', () => {
		const built: Plan = {
			...plan,
			marks: plan.marks.map((m) => (m.accessory.id === 'entry-bar' ? { ...m, stage: 'built' } : m))
		};
		const says = textsOf(templatesOf(built, how('A4', 'mm'))).join(' ');
		expect(says).not.toContain('lower bracket');
		expect(says).toContain('F: on the wall already.');
		const large = readOffPlan({ ...BARS, 'bar-back': { ...REAL, across: 190 } });
		expect(textsOf(templatesOf(large, how('A4', 'mm'))).join(' ')).toContain(
			'E: the flange is larger than this sheet.'
		);
	});

	test('[drawing R19] there are none where nothing was read off', () => {
		expect(templatesOf(fixturePlan(fixtureCase()), how('A4', 'mm'))).toEqual([]);
	});

	test('[drawing R19] name nobody, and stand in the pack of the installer alone', () => {
		const titles = (reader: OnPaper['reader']) =>
			packOf(plan, { ...how('A4', 'mm'), reader }).map(({ title }) => title);
		expect(titles('installer')).toContain('Templates 1:1');
		expect(titles('hers')).not.toContain('Templates 1:1');
	});

	test('[drawing R19] every picture has its words, and its parts stand together', () => {
		for (const { entities, pictures = {} } of templatesOf(plan, how('A4', 'mm'))) {
			const runs = entities
				.map(({ picture }) => picture)
				.filter((key, i, all) => key !== all[i - 1] && key !== undefined);
			expect(runs.toSorted()).toEqual(Object.keys(pictures).toSorted());
		}
	});
});

const real: fc.Arbitrary<Real> = fc
	.record({
		centres: fc.integer({ min: 2000, max: 15000 }),
		across: fc.integer({ min: 400, max: 1600 }),
		share: fc.double({ min: 0, max: 1, noNaN: true }),
		holes: fc.constantFrom(2 as const, 3 as const, 4 as const),
		hole: fc.integer({ min: 30, max: 130 })
	})
	.map(({ centres, across, share, holes, hole }) => {
		// Holes lie on their flange; a record that says otherwise is named and not planned.
		const [least, most] = [200, Math.min(1400, across - hole)];
		const circle = Math.round(least + share * Math.max(0, most - least));
		return { centres: centres / 10, across: across / 10, circle: circle / 10, holes, hole: hole / 10 };
	});

const placed = fc.record({
	parts: fc.record({ 'bar-control': real, 'bar-back': real, 'entry-bar': real }, { requiredKeys: [] }),
	at: fc.record({
		'bar-control': fc.tuple(fc.integer({ min: 40, max: 800 }), fc.integer({ min: -400, max: 300 })),
		'bar-back': fc.tuple(fc.integer({ min: 40, max: 800 }), fc.integer({ min: -400, max: 300 })),
		'entry-bar': fc.tuple(fc.integer({ min: 40, max: 870 }), fc.integer({ min: -400, max: 300 }))
	}),
	later: fc.subarray<Bar>(['bar-control', 'bar-back', 'entry-bar']),
	both: fc.boolean()
});

const wholly = (outer: Box, inner: Box): boolean =>
	inner.x0 >= outer.x0 - 1e-6 &&
	inner.x1 <= outer.x1 + 1e-6 &&
	inner.y0 >= outer.y0 - 1e-6 &&
	inner.y1 <= outer.y1 + 1e-6;

/** What of a sheet of templates lies where it must not. */
function faults({ size, entities }: Drawing): readonly string[] {
	const art = { x0: 10, y0: 10, x1: size.width - 10, y1: size.height - 10 };
	const texts = entities.filter((e): e is Text => e.kind === 'text').map((t) => ({ id: t.id, box: boxOf(t) }));
	const paths = entities
		.filter((e): e is Path => e.kind === 'path' && e.layer !== 'sheet')
		.map((p) => ({ id: p.id, box: extent(p) }));
	const cuts = paths.filter(({ id }) => id.endsWith('/cut'));
	const solid = paths.filter(({ id }) => /\/(cross|centre|tip|shaft|across|upright|level|plumb)$/.test(id));
	return [
		...[...texts, ...paths].filter(({ box }) => !wholly(art, box)).map(({ id }) => `${id} in the margin`),
		...texts.flatMap((a, i) =>
			texts
				.slice(i + 1)
				.filter((b) => overlap(a.box, b.box))
				.map((b) => `${a.id} on ${b.id}`)
		),
		...texts.flatMap((a) => solid.filter((b) => overlap(a.box, b.box)).map((b) => `${a.id} on ${b.id}`)),
		...cuts.flatMap((a, i) =>
			cuts
				.slice(i + 1)
				.filter((b) => overlap(a.box, b.box))
				.map((b) => `${a.id} on ${b.id}`)
		),
		// All of a template lies in its box, and nothing else does.
		...[...texts, ...paths].flatMap(({ id, box }) =>
			cuts
				.filter(
					(cut) =>
						(id.startsWith(`${cut.id.slice(0, -4)}/`) || id.startsWith(`${cut.id.slice(0, -4)}.`)) !==
						overlap(cut.box, widened(box))
				)
				.map((cut) => `${id} and ${cut.id}`)
		),
		...[...texts, ...paths]
			.filter(({ id, box }) => id.startsWith('template/') && !cuts.some((cut) => wholly(cut.box, box)))
			.map(({ id }) => `${id} beyond its box`)
	];
}

/** A line is no area of its own. */
const widened = ({ x0, y0, x1, y1 }: Box): Box => ({ x0: x0 - 1e-3, y0: y0 - 1e-3, x1: x1 + 1e-3, y1: y1 + 1e-3 });

describe.each([
	['A4', 'mm'],
	['Letter', 'in'],
	['A4', 'in'],
	['Letter', 'mm']
] as const)('any part that may be read off, on %s in %s', (sheet, unit) => {
	test('[drawing R19] keeps the margins, lays no text on another, on a hole or on a line, and is complete in its box', () => {
		fc.assert(
			fc.property(placed, ({ parts, at, later, both }) => {
				const of = readOffPlan(parts, { at, later });
				const drawings = templatesOf(of, how(sheet, unit, both));
				expect(drawings.flatMap(faults)).toEqual([]);
				// Each bracket of each part that was read off has its template.
				const cuts = drawings.flatMap((d) => d.entities.filter(({ id }) => id.endsWith('/cut')));
				expect(cuts).toHaveLength(2 * Object.keys(parts).length);
				const numbers = drawings.flatMap((d) => d.entities.filter(({ id }) => id.endsWith('/number')));
				expect(numbers).toHaveLength(Object.values(parts).reduce((sum, { holes }) => sum + 2 * holes, 0));
			}),
			{ seed: 19, numRuns: 60 }
		);
	});
});
