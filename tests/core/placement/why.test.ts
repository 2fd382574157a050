import { describe, expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { clauseOf } from '#core/placement/told.ts';
import { planCase, type Plan } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import { STRENGTHS } from '#core/rules/row.ts';
import { inches, mm } from '#core/units/length.ts';
import { client } from './reduced.ts';

const TAPE = { unit: 'in', step: inches(1) } as const;
const HER: Case = { ...client('turns-left'), tape: TAPE };
const LED: Case = { ...HER, lead: 'reference-led' };

const moves = { along: ['x', 'left', 'right'], height: ['y', 'lower', 'higher'] } as const;

/** The rows that answer less well, or fall shorter, when a mark moves 10 mm along an axis; strongest strength first. */
function held(plan: Plan, id: string, axis: 'along' | 'height'): readonly { row: string; rank: number }[] {
	const [on] = moves[axis];
	const line = plan.marks.find((m) => m.accessory.id === id)?.accessory.line;
	const order = ['inside', 'borderline', 'unknown', 'outside'];
	const out = (f: { answer: string; slack?: number }) =>
		f.answer === 'outside' || f.answer === 'borderline' ? -(f.slack ?? -1) : 0;
	return [-10, 10]
		.flatMap((by) => {
			const marks = plan.marks.map((m) => {
				const goes = m.accessory.id === id || (on === 'y' && line !== undefined && m.accessory.line === line);
				return goes ? { ...m, place: { ...m.place, [on]: mm(m.place[on] + by) } } : m;
			});
			return judge(plan.scene, plan.rows, marks).flatMap((is, i) => {
				const was = plan.findings[i];
				if (!was || is.strength === 'reported' || is.answer === 'not-here' || was.answer === 'not-here') return [];
				const fell = order.indexOf(is.answer) > order.indexOf(was.answer);
				return fell || out(is) > out(was) + 1e-9 ? [{ row: is.row.id, rank: STRENGTHS.indexOf(is.strength) }] : [];
			});
		})
		.toSorted((a, b) => a.rank - b.rank);
}

describe.each([
	['led by her', HER],
	['led by the document', LED]
])('[placement R14] why each mark is where it is, %s', (_, c) => {
	const plan = planCase(c);

	test('two reasons a mark: along the wall, then height', () => {
		expect(plan.probes.reasons.map((r) => [r.accessory, r.axis])).toEqual(
			plan.marks.flatMap((m) => [
				[m.accessory.id, 'along'],
				[m.accessory.id, 'height']
			])
		);
	});

	test('the first row named is one of the strongest that gets worse; where none does, that is said', () => {
		for (const r of plan.probes.reasons) {
			const rows = held(plan, r.accessory, r.axis);
			const strongest = rows.filter((h) => h.rank === rows[0]?.rank).map((h) => h.row);
			if (rows.length === 0) {
				expect(r.rows).toEqual([]);
				expect(r.says).toMatch(/^Nothing asks for exactly this .* within 10 mm all is the same\.$/);
			} else {
				expect(strongest).toContain(r.rows[0]);
				for (const row of r.rows) expect(r.expert).toContain(row);
				expect(r.expert).toContain('limit ');
				expect(r.expert).toContain('10 mm ');
			}
		}
	});

	test('one sentence a coordinate, with its height above the floor, and nothing that only a specialist reads', () => {
		for (const r of plan.probes.reasons) {
			expect(r.says).toMatch(/^[A-Z][^[\]]*\.$/);
			for (const row of r.rows) expect(r.says).not.toContain(row);
			if (r.axis === 'height' && r.rows.length > 0) expect(r.says).toContain('above the floor');
		}
	});
});

test('[placement R14] the hand is named where one hand only may work it', () => {
	const plan = planCase(HER);
	for (const id of ['control', 'handset-rest']) {
		const it = plan.marks.find((m) => m.accessory.id === id);
		const reached = plan.findings.find((f) => f.row.id === 'WISH-REACH-UPRIGHT' && f.about[0] === id);
		if (!it || !reached) throw new Error(`the example reaches for ${id}`);
		expect(clauseOf(reached, plan.marks, it)).toContain('the left hand reaches it sitting upright');
	}
});

test('[placement R14] a mark that was given is not explained as if it had been chosen', () => {
	const free = planCase(LED);
	const seat = free.marks.find((m) => m.accessory.id === 'seat');
	if (!seat) throw new Error('the example wants a seat');
	const plan = planCase({ ...LED, places: { seat: { ...seat.place, stage: 'tried' } } });
	for (const r of plan.probes.reasons.filter((x) => x.accessory === 'seat' && x.rows.length > 0))
		expect(r.says).toContain('because it was given');
});
