import { describe, expect, test } from 'vitest';
import { bodiesOf } from '#core/body/body.ts';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { wantedFor } from '#core/needs/wanted.ts';
import { answerOf } from '#core/rules/answer.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { FR_ERP_2014 } from '#core/rules/packs/fr-erp-2014.ts';
import type { Answer, Finding } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import { caseWith, mark, otherHand, outside, sceneOf } from './baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** Case FR-K1 of the worked cases: a shower to roll into, seat on the left wall, every space as large as it has to be. */
const room = (enclosure: object = {}): Case =>
	caseWith({
		case: { reference: 'fr-erp-2014', lead: 'reference-led' },
		enclosure: {
			type: 'roll-in',
			width: measured(1500),
			depth: measured(1200),
			height: measured(2100),
			drain: { x: 750, y: 600, wide: 150, deep: 150, how: 'measured' },
			turning: measured(1500),
			besideWidth: measured(800),
			besideLength: measured(1300),
			...enclosure
		}
	});

interface Placed {
	readonly seatTop?: number;
	readonly valve?: { readonly fromCorner?: number; readonly up?: number };
	readonly barUp?: number;
}

/** Seat 450 out from the back corner, the valve beside it on the back wall, a bar on the wall opposite. */
function marksOf({ seatTop = 480, valve = {}, barUp = 750 }: Placed = {}): readonly [Mark, Mark, Mark] {
	const { fromCorner = 450, up = 1000 } = valve;
	return [
		mark('seat', { purpose: 'sit', wall: 'left', x: 1200 - 450, y: seatTop, variant: variantOf('seat-450') }),
		mark('control', { purpose: 'run-water', wall: 'back', x: fromCorner, y: up, variant: variantOf('control-lever') }),
		mark('bar-control', { purpose: 'steady', wall: 'right', x: 300, y: barUp, variant: variantOf('bar-600') })
	];
}

function findings(c: Case, marks: readonly Mark[]): readonly Finding[] {
	const wanted = marks.map((m) => m.accessory);
	return judge(sceneOf(c), bind([FR_ERP_2014], wanted, c), marks);
}

const byRow = (c: Case, marks: readonly Mark[]): Readonly<Record<string, Answer>> =>
	Object.fromEntries(findings(c, marks).map(({ row, answer }) => [row.id, answer]));

/** Answers by row, which the other hand gives too. */
function answers(c: Case, marks: readonly Mark[]): Readonly<Record<string, Answer>> {
	const found = byRow(c, marks);
	expect(byRow(...otherHand(c, marks))).toEqual(found);
	return found;
}

describe('worked cases, order of 8 December 2014', () => {
	test('[rules R3] FR-K1 art. 11, 18, annex 2: valve 1000 up and 450 from the corner, 800 by 1300 beside the seat, 1500 to turn', () => {
		const found = answers(room(), marksOf());
		expect(outside(found)).toEqual([]);
		for (const id of ['FR-01-LOW', 'FR-01-HIGH', 'FR-02', 'FR-03-WIDTH', 'FR-03-LENGTH', 'FR-04']) {
			expect([id, found[id]]).toEqual([id, 'inside']);
		}
		expect(['FR-05', 'FR-06', 'FR-07', 'FR-08'].map((id) => found[id])).toEqual(Array(4).fill('inside'));
		expect([found['FR-02-OBSTACLE'], found['FR-08-OTHER']]).toEqual(['ask', 'ask']);
	});

	test('[rules R3] FR-K2 art. 11 II 2 a: a valve 850 up is too low', () => {
		expect(outside(answers(room(), marksOf({ valve: { up: 850 } })))).toEqual(['FR-01-LOW', 'FR-01-HIGH']);
	});

	test('[rules R3] FR-K4 annex 2 (4): 750 beside the seat is too narrow', () => {
		expect(outside(answers(room({ besideWidth: measured(750) }), marksOf()))).toEqual(['FR-03-WIDTH']);
	});

	test('[rules R3] FR-K5 order of 31 May 1994, art. 10: a seat 450 up is told of, and steers nothing', () => {
		const marks = marksOf({ seatTop: 450 });
		expect(outside(answers(room(), marks))).toEqual(['FR-L1']);
		expect(findings(room(), marks).find(({ row }) => row.id === 'FR-L1')).toMatchObject({ strength: 'reported' });
		expect(findings(room(), marks).find(({ row }) => row.id === 'FR-02')).toMatchObject({ strength: 'must' });
	});

	test('[rules R3] 1994, art. 10: the level part of a bar 810 up is told of', () => {
		expect(outside(answers(room(), marksOf({ barUp: 810 })))).toEqual(['FR-L2-LOW', 'FR-L2-HIGH']);
	});

	test('[rules R3] art. 11 II 2 a: the corner is counted from the middle of the valve, and 400 itself is too near', () => {
		const at = (fromCorner: number) => outside(answers(room(), marksOf({ valve: { fromCorner } })));
		expect(at(400)).toEqual(['FR-02']);
		expect(at(400.1)).toEqual([]);
		// The other corner of the back wall is 1500 away.
		const [seat, control, bar] = marksOf({ valve: { fromCorner: 1500 - 400 } });
		expect(answers(room(), [seat, control, bar])['FR-02']).toBe('outside');
		// An open side makes no corner: on the wall opposite the seat only the back counts.
		const ahead = { ...control, place: { ...control.place, wall: 'right' as const, x: mm(1150) } };
		expect(answers(room(), [seat, ahead, bar])['FR-02']).toBe('inside');
	});

	test('[rules R3] art. 18 II 2: something to sit on, something to hold and a drain are wanted', () => {
		const [, control] = marksOf();
		const found = answers(room({ drain: undefined }), [control]);
		expect(['FR-05', 'FR-06', 'FR-07'].map((id) => found[id])).toEqual(['outside', 'outside', 'unknown']);
		expect(found['FR-08']).toBe('not-here');
	});

	test('[rules R3] art. 18 II 2: a tap at the far end of the wall beside the seat is out of reach of who sits upright', () => {
		// The arm is 611 to the grip; the middle of the lever is 1350 from the wall she leans on.
		expect(answers(room(), marksOf({ valve: { fromCorner: 1350 } }))['FR-08']).toBe('outside');
	});

	test('[rules R6] what was not measured is not known', () => {
		const c = room({ turning: undefined, besideWidth: undefined, besideLength: undefined });
		const found = answers(c, marksOf());
		expect(['FR-03-WIDTH', 'FR-03-LENGTH', 'FR-04'].map((id) => found[id])).toEqual(Array(3).fill('unknown'));
	});

	test('[rules R5] art. 18 speaks of showers: over a bath only what is turned by hand is judged', () => {
		const [, control] = marksOf();
		const found = answers(room({ type: 'over-bath', seatWall: 'left' }), [control]);
		expect(['FR-03-WIDTH', 'FR-04', 'FR-05', 'FR-06', 'FR-07'].map((id) => found[id])).toEqual(
			Array(5).fill('not-here')
		);
		expect(found['FR-02']).toBe('inside');
	});

	test('[needs R2] art. 18 II 2: the chosen order asks for tap, seat and something to hold, another document for none', () => {
		const wanted = (c: Case) => wantedFor([FR_ERP_2014], c, bodiesOf(c.people)).map(({ id }) => id);
		expect(wanted(room())).toEqual(['seat', 'control', 'bar-control']);
		expect(wanted({ ...room(), reference: 'ada-2010' })).toEqual([]);
	});
});

// In mm, just under, on and just over each end. Written from the clause: both ends of a range belong to it, but for the
// 400 of art. 11 II 2 a, which has to be exceeded.
const HEIGHT_OF_CONTROLS = [
	[899.9, 'outside'],
	[900, 'inside'],
	[900.1, 'inside'],
	[1299.9, 'inside'],
	[1300, 'inside'],
	[1300.1, 'outside']
] as const;
const HEIGHT_OF_BAR = [
	[699.9, 'outside'],
	[700, 'inside'],
	[700.1, 'inside'],
	[799.9, 'inside'],
	[800, 'inside'],
	[800.1, 'outside']
] as const;

const LIMITS: Readonly<Record<string, readonly (readonly [number, Answer])[]>> = {
	'FR-01-LOW': HEIGHT_OF_CONTROLS,
	'FR-01-HIGH': HEIGHT_OF_CONTROLS,
	'FR-02': [
		[399.9, 'outside'],
		[400, 'outside'],
		[400.1, 'inside']
	],
	'FR-03-WIDTH': [
		[799.9, 'outside'],
		[800, 'inside'],
		[800.1, 'inside']
	],
	'FR-03-LENGTH': [
		[1299.9, 'outside'],
		[1300, 'inside'],
		[1300.1, 'inside']
	],
	'FR-04': [
		[1499.9, 'outside'],
		[1500, 'inside'],
		[1500.1, 'inside']
	],
	'FR-08': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	'FR-08-HELPER': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	'FR-L1': [
		[459.9, 'outside'],
		[460, 'inside'],
		[460.1, 'inside'],
		[499.9, 'inside'],
		[500, 'inside'],
		[500.1, 'outside']
	],
	'FR-L2-LOW': HEIGHT_OF_BAR,
	'FR-L2-HIGH': HEIGHT_OF_BAR
};

describe('limits', () => {
	const numeric = FR_ERP_2014.rows.filter((r) => typeof r.allowed === 'object' && !('ask' in r.allowed));

	test('[rules R4] every numeric row of the order stands in the table of limits', () => {
		expect(numeric.map((r) => r.id).toSorted()).toEqual(Object.keys(LIMITS).toSorted());
	});

	test.each(
		numeric.flatMap((r) => (LIMITS[r.id] ?? []).map(([value, answer]) => [r.clause, r.id, value, answer, r] as const))
	)('[rules R4] %s, %s at %s is %s', (_clause, _id, value, answer, row) => {
		expect(answerOf(row, value)).toBe(answer);
	});
});
