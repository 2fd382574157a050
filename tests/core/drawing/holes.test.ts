import { overlap, type Text } from '#core/drawing/entity.ts';
import { holeTable } from '#core/drawing/hole-table.ts';
import { holesSheetsOf } from '#core/drawing/installer/holes.ts';
import { packOf } from '#core/drawing/pack.ts';
import type { OnPaper } from '#core/drawing/sheet.ts';
import { boxOf } from '#core/drawing/type.ts';
import { csvOf } from '#core/render/csv.ts';
import { fixingsOf, reportOf } from '#core/report.ts';
import { describe, expect, test } from 'vitest';
import { fixtureCase, fixturePlan, WALLS } from './fixture.ts';
import { REAL, readOffPlan } from './read-off.ts';

const plan = readOffPlan({ 'bar-control': REAL, 'entry-bar': { ...REAL, centres: 450, holes: 4 } });
const how = (unit: 'mm' | 'in', both = false): OnPaper => ({
	both,
	reader: 'installer',
	sheet: unit === 'mm' ? 'A4' : 'Letter',
	tape: { unit }
});
const HEADS = 'hole,id,wall,bracket,x,y,from corner,diameter,screw,into,not yet';

/** Texts of the rows of a sheet of holes, by id. */
const texts = (of: typeof plan, unit: 'mm' | 'in') =>
	new Map(
		holesSheetsOf(of, how(unit)).flatMap(({ entities }) =>
			entities.filter((e): e is Text => e.kind === 'text').map((t) => [t.id, t.text] as const)
		)
	);

describe('[drawing R20] the schedule of holes', () => {
	test('tells every hole from corner and datum line, with its diameter, screw and what it goes into', () => {
		const said = texts(plan, 'mm');
		// The second bracket is at 700; the third of three holes, one at the bottom, stands 26.0 right of it and 15 up.
		expect(said.get('holes/D2/D2.3/x')).toBe('726 mm');
		expect(said.get('holes/D2/D2.3/y')).toBe('\u2212135 mm');
		expect(said.get('holes/D2/D2.3/wide')).toBe('6.5 mm');
		expect(said.get('holes/D2/into/0')).toBe('3 screws; area declared for 1334 N');
		expect(said.get('holes/D2/name/0')).toBe('D2, right bracket, Control wall');
		expect(said.get('holes/D2/head/0')).toBe('from left corner');
		// Each hole is a row.
		expect([...said.keys()].filter((id) => /\.\d$/.test(id))).toHaveLength(14);
	});

	test('in inches to 1/64', () => {
		// 726 mm is 28.583 in, 28 37.3/64; 135 is 5.315, 5 20.2/64; 6.5 is 0.256, 16.4/64.
		const said = texts(plan, 'in');
		expect(said.get('holes/D2/D2.3/x')).toBe('28 37/64 in');
		expect(said.get('holes/D2/D2.3/y')).toBe('\u22125 5/16 in');
		expect(said.get('holes/D2/D2.3/wide')).toBe('1/4 in');
	});

	test('says of what is not drilled yet why', () => {
		expect(texts(plan, 'mm').get('holes/F1/name/0')).toBe(
			'F1, lower bracket, Control wall. Do not drill yet: its question is open.'
		);
		const later = readOffPlan({ 'bar-control': REAL }, { later: ['bar-control'] });
		expect(texts(later, 'mm').get('holes/D1/name/0')).toContain('Do not drill yet: it is wanted only later.');
		const bare = readOffPlan({ 'bar-back': REAL });
		expect(texts(bare, 'mm').get('holes/E1/name/0')).toContain('Do not drill: nothing recorded here carries it.');
	});

	test('in the other unit too, where both are asked for', () => {
		const said = new Map(
			holesSheetsOf(plan, how('in', true)).flatMap(({ entities }) =>
				entities.filter((e): e is Text => e.kind === 'text').map((t) => [t.id, t.text] as const)
			)
		);
		expect([said.get('holes/D2/D2.3/x'), said.get('holes/D2/D2.3/x/other')]).toEqual(['28 37/64 in', '726 mm']);
	});

	test('names the screw that is counted, else the fixing of the paper, else says that it is not known', () => {
		const block = { kind: 'blocking', x0: 100, x1: 900, y0: -250, y1: -50, thickness: 38, how: 'observed' };
		const enclosure = { walls: { ...WALLS, back: { backing: { block }, surveyed: true } } };
		const said = texts(readOffPlan({ 'bar-back': { ...REAL, centres: 450 } }, { enclosure }), 'mm');
		expect(said.get('holes/E1/into/0')).toMatch(/^(#14 wood|1\/4 in lag) screw; wood blocking 38 mm thick$/);
		expect(texts(plan, 'mm').get('holes/F2/into/0')).toBe('screw not known; into what is not known');
	});

	test('stands in the pack of the installer with no text on another, as the templates do', () => {
		for (const [unit, both] of [
			['mm', false],
			['in', false],
			['mm', true],
			['in', true]
		] as const) {
			const sheets = packOf(plan, how(unit, both)).filter(
				({ title }) => title === 'Holes' || title === 'Templates 1:1'
			);
			expect(sheets.length).toBeGreaterThan(2);
			for (const { entities } of sheets) {
				const boxes = entities
					.filter((e): e is Text => e.kind === 'text')
					.map((t) => ({ text: t.text, box: boxOf(t) }));
				const on = boxes.flatMap((a, i) =>
					boxes
						.slice(i + 1)
						.filter((b) => overlap(a.box, b.box))
						.map((b) => [a.text, b.text])
				);
				expect(on).toEqual([]);
			}
		}
	});

	test('is no sheet where nothing was read off', () => {
		expect(holesSheetsOf(fixturePlan(fixtureCase()), how('mm'))).toEqual([]);
	});
});

describe('[drawing R20] holes as a table', () => {
	const [heads = [], ...rows] = holeTable(plan);
	const cell = (row: readonly (string | number)[], head: string) => row[heads.indexOf(head)];

	test('have the very figures of plan.json, in its order', () => {
		const told = reportOf(plan).accessories.flatMap(({ fixings }) => fixings.flatMap(({ holes = [] }) => holes));
		expect(told).toHaveLength(14);
		expect(rows.map((row) => [cell(row, 'x'), cell(row, 'y')])).toEqual(told.map(([x, y]) => [x, y]));
		const mark = plan.marks.find((m) => m.accessory.id === 'entry-bar');
		const holes = mark ? fixingsOf(plan.scene, mark).flatMap((f) => f.holes ?? []) : [];
		expect(
			rows.filter((row) => cell(row, 'id') === 'entry-bar').map((row) => [cell(row, 'x'), cell(row, 'y')])
		).toEqual(holes);
	});

	test('name each hole by letter, bracket and number, with wall, end and what keeps it from being drilled', () => {
		expect(rows.map((row) => row[0]).slice(0, 7)).toEqual(['D1.1', 'D1.2', 'D1.3', 'D2.1', 'D2.2', 'D2.3', 'F1.1']);
		expect(rows[6]?.slice(1, 4)).toEqual(['entry-bar', 'right', 'lower']);
		expect(rows.map((row) => cell(row, 'not yet'))).toEqual([
			...Array.from({ length: 6 }, () => ''),
			...Array.from({ length: 8 }, () => 'Do not drill yet: its question is open.')
		]);
	});

	test('have the heads alone where nothing was read off', () => {
		expect(csvOf(holeTable(fixturePlan(fixtureCase())))).toBe(`${HEADS}\r\n`);
	});
});
