import { describe, expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { planFrom, questionOf, type Plan } from '#core/plan.ts';
import { reportOf } from '#core/report.ts';
import { judge } from '#core/rules/judge.ts';
import { STRENGTHS } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import { worthMeasuring } from '#core/worth.ts';
import { planned } from './placement/planned.ts';
import { client } from './placement/reduced.ts';

function planOf(c: Case): Plan {
	const { marks } = planned(c, 300_000);
	return planFrom(questionOf(c), { marks, status: 'bounded', cost: [], bound: [], evaluations: 0, nodes: 0 });
}

const her = client('turns-left');
const plan = planOf(her);
const seen = (value: number) => ({ value: mm(value), how: 'measured' as const });

/** The case with one more length of the client measured. */
function withLength(path: readonly string[], value: number): Case {
	const c = structuredClone(her);
	const person = c.people['client'];
	const [group, name = '', part = ''] = path;
	if (!person) throw new Error('the example has a client');
	if (group === 'body') Object.assign(person.body, { [name]: seen(value) });
	else Object.assign(person.arms[name as 'left' | 'right'], { [part]: seen(value) });
	return c;
}

const answers = (c: Case): ReadonlyMap<string, string> =>
	new Map(
		judge(questionOf(c).scene, questionOf(c).rows, plan.marks).map((f) => [
			[f.row.id, ...f.about, String(f.later)].join(' '),
			`${f.answer} ${String(f.slack)}`
		])
	);

describe('what is worth measuring', () => {
	const worth = worthMeasuring(plan);

	test('[placement R16] at one end or the other every row that is named answers otherwise', () => {
		expect(worth.length).toBeGreaterThan(0);
		const now = answers(her);
		for (const { path, low, high, rows } of worth) {
			const ends = [low, high].map((n) => answers(withLength(path, n)));
			for (const row of rows) {
				const own = [...now.keys()].filter((key) => key.startsWith(`${row.id} `));
				expect(
					own.some((key) => ends.some((end) => end.get(key) !== now.get(key))),
					row.id
				).toBe(true);
			}
		}
	});

	test('[placement R16] what is measured is not named, and stronger rows come first', () => {
		for (const { person, path } of worth) {
			expect(path[0] === 'body' && Object.hasOwn(her.people[person]?.body ?? {}, path[1] ?? '')).toBe(false);
		}
		const strength = new Map(plan.rows.map(({ row, strength: s }) => [row.id, STRENGTHS.indexOf(s)]));
		const first = worth.map(({ rows }) => strength.get(rows[0]?.id ?? '') ?? 0);
		expect(first).toEqual(first.toSorted((a, b) => a - b));
	});

	test('[placement R16] at most five are named, each with a sentence about a mark that is there', () => {
		expect(worth.length).toBeLessThanOrEqual(5);
		const blank = structuredClone(her);
		for (const one of Object.values(blank.people)) Object.assign(one, { body: {}, arms: { left: {}, right: {} } });
		const most = worthMeasuring({
			...plan,
			...questionOf(blank),
			findings: judge(questionOf(blank).scene, questionOf(blank).rows, plan.marks)
		});
		expect(most).toHaveLength(5);
		const names = plan.marks.map(({ accessory }) => accessory.kind.replaceAll('-', ' '));
		for (const { says } of [...worth, ...most]) {
			expect(says).toMatch(/^[A-Z].*[^.]\.$/);
			expect(
				names.some((name) => says.toLowerCase().includes(name)),
				says
			).toBe(true);
		}
	});

	test('[placement R16] plan data names them by row, with the band in mm', () => {
		const { worthMeasuring: told } = reportOf(plan, { worth });
		expect(told?.map(({ path }) => path)).toEqual(worth.map(({ path }) => path));
		expect(told?.map(({ rows }) => rows)).toEqual(worth.map(({ rows }) => rows.map(({ id }) => id)));
		expect(told?.every(({ low, high }) => low < high)).toBe(true);
		expect(reportOf(plan)).not.toHaveProperty('worthMeasuring');
	});

	test('[placement R16] once measured it is not named again, whatever it is', () => {
		const [most] = worth;
		if (!most) throw new Error('something is worth measuring');
		const after = worthMeasuring(planOf(withLength(most.path, (most.low + most.high) / 2)));
		expect(after.some(({ path }) => path.join() === most.path.join())).toBe(false);
	});
});
