import { describe, expect, test } from 'vitest';
import type { Drawing, Text } from '#core/drawing/entity.ts';
import { loadsSheetsOf } from '#core/drawing/loads-sheet.ts';
import { lettersOf } from '#core/drawing/setting-out.ts';
import { printable } from '#core/drawing/type.ts';
import { planCase } from '#core/plan.ts';
import { reportOf } from '#core/report.ts';
import { EXAMPLE, fixtureCase } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const places = Object.fromEntries(
	EXAMPLE.map(([id, variant, wall, x, y]) => [id, { wall, variant, x, y, stage: 'pinned' }])
);
const said = (sheets: readonly Drawing[]): string =>
	sheets
		.flatMap((d) => d.entities.filter((e): e is Text => e.kind === 'text'))
		.map((t) => t.text)
		.join(' ');

describe('the sheet of loads', () => {
	const plan = planCase(fixtureCase({ more: { places } }));
	const words = said(loadsSheetsOf(plan, A4));
	const calculated = reportOf(plan).accessories.flatMap(({ id, fixings }) =>
		fixings
			.filter(({ verdict, used = [] }) => verdict !== 'carries' || used.length > 0)
			.map(({ lines = [] }) => ({ id, lines }))
	);

	test('[drawing R8] every line of every calculation is on paper, with the letter of what it is for', () => {
		expect(calculated.length).toBeGreaterThan(0);
		const letters = lettersOf(plan);
		for (const { id, lines } of calculated) {
			expect(words).toContain(letters[id]);
			for (const line of lines.slice(1)) expect(words.replaceAll('  ', ' ')).toContain(printable(line).slice(0, 40));
		}
	});

	test('[drawing R8] it names the force and no person', () => {
		expect(words).toContain(`${String(Math.round(plan.scene.holds.demand.force))} N`);
		expect(words).not.toMatch(/kg|weight|heaviest/);
	});

	test('[drawing R8] brackets that come to the same are told once', () => {
		const titles = new Set(calculated.map(({ lines }) => lines.join()));
		expect(words.match(/\d+ brackets?/g)).toHaveLength(titles.size);
	});

	test('[drawing R8] without anything fixed there is no such sheet', () => {
		expect(loadsSheetsOf({ ...plan, marks: [] }, A4)).toEqual([]);
	});
});
