import { expect, test } from 'vitest';
import { elevationOf } from '#core/drawing/elevation.ts';
import type { Drawing } from '#core/drawing/entity.ts';
import { loadsSheetsOf } from '#core/drawing/loads-sheet.ts';
import { extent } from '#core/drawing/path.ts';
import { EXAMPLE, fixtureCase, fixturePlan, type Put } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const PUTS: readonly Put[] = EXAMPLE.map((put): Put => {
	const [id, , wall, x, y] = put;
	return id === 'seat' ? [id, 'seat-front-legs-450', wall, x, y] : put;
});
const textOf = (d: Drawing): string => d.entities.flatMap((e) => (e.kind === 'text' ? [e.text] : [])).join(' ');
const plan = fixturePlan(fixtureCase(), PUTS);
const { wall } = plan.marks.find(({ accessory }) => accessory.id === 'seat')?.place ?? { wall: 'left' };

test('[drawing R1] front legs are drawn down to the floor beside the plates, and the schedule says what is under one', () => {
	const drawing = elevationOf(plan, wall, A4);
	const ends = ['seat/leg/0', 'seat/leg/1', 'seat/outline'].map((id) => {
		const path = drawing.entities.find((e) => e.id === id);
		if (path?.kind !== 'path') throw new Error(`no ${id}`);
		return extent(path);
	});
	const [one, other, seat] = ends;
	expect(one?.y1).toBeGreaterThan((seat?.y1 ?? NaN) + 1);
	expect(other?.y1).toBeGreaterThan((seat?.y1 ?? NaN) + 1);
	expect(drawing.entities.filter((e) => e.id.startsWith('seat/plate/')).length).toBeGreaterThan(0);
	// 1112 x 395 / 365.
	expect(textOf(drawing)).toMatch(/Folding seat with front legs 450/);
	expect(textOf(drawing).replaceAll(/\s+/g, ' ')).toContain('1203 N under one');
});

test('[drawing R8] the sheet of loads says it as well', () => {
	const words = loadsSheetsOf(plan, A4).map(textOf).join(' ');
	expect(words).toContain('1203 N');
});
