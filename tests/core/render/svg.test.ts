/** @vitest-environment jsdom */
import type { Text } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import { elevationOf } from '#core/drawing/elevation.ts';
import { write } from '#core/drawing/type.ts';
import { svgOf } from '#core/render/svg.ts';
import { describe, expect, test } from 'vitest';
import { fixtureCase, fixturePlan } from '../drawing/fixture.ts';

const plan = fixturePlan(fixtureCase());
const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const parsed = (svg: string): Document => new DOMParser().parseFromString(svg, 'image/svg+xml');

describe('an SVG', () => {
	test('[render R3] is well formed, one unit a mm, and has every text of the drawing', () => {
		for (const how of [A4, { reader: 'therapist', sheet: 'Letter', tape: { unit: 'in' } } as const]) {
			for (const d of packOf(plan, how)) {
				const doc = parsed(svgOf(d));
				expect(doc.documentElement.getAttribute('viewBox')).toBe(
					`0 0 ${String(d.size.width)} ${String(d.size.height)}`
				);
				expect(doc.documentElement.getAttribute('width')).toBe(`${String(d.size.width)}mm`);
				const texts = d.entities.filter((e): e is Text => e.kind === 'text').flatMap((t) => t.runs.map((r) => r.text));
				expect(Array.from(doc.querySelectorAll('text'), (t) => t.textContent)).toEqual(texts);
			}
		}
	});

	test('[render R3] a bar of 600 is as long as the scale says', () => {
		const drawing = elevationOf(plan, 'right', A4);
		const doc = parsed(svgOf(drawing));
		const crosses = Array.from(doc.querySelectorAll('[id^="bar-control/flange/"][id$="centre"]'), (p) => {
			const [, x0 = 0, x1 = 0] = /^M([\d.]+) [\d.]+L([\d.]+)/.exec(p.getAttribute('d') ?? '')?.map(Number) ?? [];
			return (x0 + x1) / 2;
		});
		expect(crosses).toHaveLength(2);
		expect((crosses[1] ?? 0) - (crosses[0] ?? 0)).toBeCloseTo(600 / (drawing.frame?.scale ?? NaN), 3);
	});

	test('[render R3] a fraction is read aloud as one, whatever it looks like', () => {
		const text = write('t', '34 7/8', [10, 10], { size: 12 });
		const svg = svgOf({ title: 't', size: { width: 20, height: 20 }, entities: [text] });
		expect(parsed(svg).querySelector('[aria-label]')?.getAttribute('aria-label')).toBe('34 7/8');
	});

	test('[render R3] says the language of its words', () => {
		const sheet = { title: 't', size: { width: 20, height: 20 }, entities: [] };
		expect(svgOf({ ...sheet, language: 'es' })).toContain(' lang="es">');
		expect(svgOf(sheet)).toContain(' lang="en">');
	});

	test('[render R3] what somebody typed cannot become markup', () => {
		const text = write('t"><script>', '<b>&"', [1, 1], { size: 12 });
		const doc = parsed(svgOf({ title: '<i>', size: { width: 20, height: 20 }, entities: [text] }));
		expect(doc.querySelector('script, b, i')).toBeNull();
		expect(doc.querySelector('text')?.textContent).toBe('<b>&"');
	});

	test('[render R3] what XML has no sign for, and blanks, are no part of an id', () => {
		const text = write('stud/a b\u0001\uffff', 'x', [1, 1], { size: 12 });
		const doc = parsed(svgOf({ title: 't', size: { width: 20, height: 20 }, entities: [text] }));
		expect(doc.querySelector('text')?.id).toBe('stud/au20.bu1.uffff.');
	});

	test('[render R3] no number is broken and no id stands twice', () => {
		for (const d of packOf(plan, A4)) {
			expect(svgOf(d)).not.toMatch(/NaN|Infinity|undefined|\de-\d/);
			const ids = d.entities.map((e) => e.id);
			expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
		}
	});
});
