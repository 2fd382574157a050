import { describe, expect, test } from 'vitest';
import type { Drawing, Text } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import { fixtureCase, fixturePlan, WALLS } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const area = { y0: 600, y1: 700, how: 'measured' };
const wallsWith = (right: object) => ({ enclosure: { walls: { ...WALLS, right: { ...WALLS.right, ...right } } } });
const sheetsWith = (right: object): readonly Drawing[] => packOf(fixturePlan(fixtureCase(wallsWith(right))), A4);
const said = (sheets: readonly Drawing[]): string =>
	sheets
		.flatMap((d) => d.entities.filter((e): e is Text => e.kind === 'text'))
		.map((t) => t.text)
		.join(' ');

describe('what the survey adds to a wall, on paper', () => {
	test('what is there already is drawn with what becomes of it, whatever else has its name', () => {
		const existing = {
			// The name of a keep-out of the fixture.
			pipe: { what: 'towel-rail', x0: 80, x1: 420, fate: 'keep', ...area },
			old: { what: 'shelf', x0: 480, x1: 700, fate: 'remove', ...area }
		};
		const sheets = sheetsWith({ existing });
		expect(said(sheets)).toContain('towel rail stays');
		expect(said(sheets)).toContain('shelf taken away');
		for (const { entities } of sheets) expect(new Set(entities.map(({ id }) => id)).size).toBe(entities.length);
	});

	test('a stud that was counted on carries a question mark, one that was found none', () => {
		const words = (right: object) => said(sheetsWith({ ...right, studs: { a: WALLS.right.studs.a } }));
		const rhythm = { from: 30, every: 406, width: 38 };
		expect(words({}).match(/\d \?/g)).toBeNull();
		expect(words({ rhythm }).match(/\d \?/g)).toHaveLength(2);
	});

	test('what goes behind a bracket is told where its holes are, and only on a wall out of plumb', () => {
		const leaning = (out: number) => said(sheetsWith({ plumb: { over: 1200, out, how: 'measured' } }));
		// 600 between the flanges of the upright bar: half of what 1200 lean.
		expect(leaning(12)).toContain('pack 6 behind the lower bracket');
		expect(leaning(-12)).toContain('pack 6 behind the upper bracket');
		expect(leaning(0)).not.toContain('pack ');
	});

	test('masonry is named, and what its plugs take is a question', () => {
		const brick = { kind: 'masonry', unit: 'hollow', x0: 0, x1: 914, y0: -900, y1: 1000, how: 'measured' };
		expect(said(sheetsWith({ backing: { brick } }))).toContain('hollow masonry');
	});
});
