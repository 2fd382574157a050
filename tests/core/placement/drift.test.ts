import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { MEASURES } from '#core/measures/registry.ts';
import { driftsOf, type Drift } from '#core/placement/drift.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';
import { planCase, type Plan } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import type { Finding } from '#core/rules/row.ts';
import { inches, mm } from '#core/units/length.ts';
import { random } from './random.ts';
import { client, varied } from './reduced.ts';

const DRAWS = 1000;
const COARSE = { unit: 'mm', step: mm(25) } as const;
const ORDER = ['inside', 'borderline', 'unknown', 'outside'];
const SIDES = ['left', 'right', 'lower', 'higher'] as const;

/** What a finding is worth by the words of the house design: its answer, then wish steps of 25 mm or whole mm of a document. */
function worth(f: Finding): readonly [number, number] {
	const out = f.answer === 'outside' || f.answer === 'borderline';
	// What is missed already is not missed by more.
	const most = f.row.missed ?? Infinity;
	const short = !out ? 0 : MEASURES[f.row.measure].unit === 'yes' ? 1 : Math.min(most, -(f.slack ?? 0));
	if (f.strength === 'should') return [ORDER.indexOf(f.answer), Math.floor((short + 0.002) / 25)];
	return [ORDER.indexOf(f.answer), f.strength === 'prefer' ? Math.ceil(short - 0.002) : Math.round(short * 320)];
}

function worsened(plan: Plan, marks: readonly Mark[]): readonly string[] {
	const steering = plan.rows
		.map((r, i) => ({ r, i }))
		.filter(({ r }) => ['must', 'should', 'prefer'].includes(r.strength));
	const now = judge(
		plan.scene,
		steering.map(({ r }) => r),
		marks
	);
	return now.flatMap((is, n) => {
		const was = plan.findings[steering[n]?.i ?? -1];
		if (!was) throw new Error('a row without its finding');
		const [a, b] = [worth(was), worth(is)];
		return b[0] > a[0] || (b[0] === a[0] && b[1] > a[1]) ? [`${is.row.id} ${is.about.join('+')}`] : [];
	});
}

type By = Readonly<Record<string, readonly [number, number]>>;

const drifted = (plan: Plan, by: By): readonly Mark[] =>
	plan.marks.map((m) => {
		const [dx, dy] = by[m.accessory.id] ?? [0, 0];
		return { ...m, place: { ...m.place, x: mm(m.place.x + dx), y: mm(m.place.y + dy) } };
	});

const lineOf = (plan: Plan, id: string): string => {
	const line = plan.marks.find((m) => m.accessory.id === id)?.accessory.line;
	return line === undefined ? id : `line ${line}`;
};

/** A place in every box: at random, and often in a corner, where it is most likely to go wrong. */
function draw(plan: Plan, drifts: readonly Drift[], next: () => number): Record<string, readonly [number, number]> {
	const within = (less: number, more: number) => {
		const at = next() < 0.5 ? Math.round(next() * 2) / 2 : next();
		return -less + at * (less + more);
	};
	const heights = new Map<string, number>();
	return Object.fromEntries(
		drifts.map((d) => {
			const line = lineOf(plan, d.accessory);
			const y = heights.get(line) ?? within(d.lower, d.higher);
			heights.set(line, y);
			return [d.accessory, [within(d.left, d.right), y]] as const;
		})
	);
}

const cases: readonly (readonly [string, Case])[] = [
	[
		'her own room, led by the document',
		{ ...client('turns-left'), lead: 'reference-led', tape: { unit: 'in', step: inches(1) } }
	],
	['her own room, led by her', { ...client('turns-left'), tape: { unit: 'in', step: inches(1) } }],
	['a room that is mirrored', { ...mirroredCase(client('turns-left')), lead: 'reference-led', tape: COARSE }],
	...[3, 4, 5, 8, 11].map((seed) => {
		const base = client(seed % 2 ? 'stands-then-tires' : 'turns-left');
		return [`room and body ${String(seed)}`, { ...varied(base, seed), tape: COARSE }] as const;
	})
];

describe.each(cases)('[placement R10] %s', (_, c) => {
	const plan = planCase(c);
	const { drifts } = plan.probes;

	test(`of ${String(DRAWS)} joint draws inside the boxes none worsens an answer`, () => {
		const next = random(77);
		for (let i = 0; i < DRAWS; i++) {
			const by = draw(plan, drifts, next);
			expect(worsened(plan, drifted(plan, by)), JSON.stringify(by)).toEqual([]);
		}
	});

	test('a step of the tape beyond a side that is not at the most told worsens some answer', () => {
		const next = random(78);
		const step = c.tape.unit === 'mm' ? 1 : 25.4 / 16;
		for (const d of drifts)
			for (const side of SIDES) {
				const along = side === 'left' || side === 'right';
				const to = d[side] + step;
				if (to > (along ? 25 : 10)) continue;
				const signed = side === 'left' || side === 'lower' ? -to : to;
				const beyond = () => {
					const by = draw(plan, drifts, next);
					for (const id of Object.keys(by)) {
						const [x, y] = by[id] ?? [0, 0];
						if (along && id === d.accessory) by[id] = [signed, y];
						if (!along && lineOf(plan, id) === lineOf(plan, d.accessory)) by[id] = [x, signed];
					}
					return worsened(plan, drifted(plan, by)).length > 0;
				};
				expect(Array.from({ length: 400 }).some(beyond), `${d.accessory} ${side}`).toBe(true);
			}
	});

	test('no side is told above 25 along the wall and 10 in height, and every side is whole on the tape', () => {
		expect(drifts.length).toBeGreaterThan(0);
		expect(drifts.some((d) => SIDES.some((side) => d[side] > 0))).toBe(true);
		expect(drifts.map((d) => d.accessory)).toEqual(plan.marks.map((m) => m.accessory.id));
		const step = c.tape.unit === 'mm' ? 1 : 25.4 / 16;
		for (const d of drifts) {
			expect(Math.max(d.left, d.right)).toBeLessThanOrEqual(25);
			expect(Math.max(d.lower, d.higher)).toBeLessThanOrEqual(10);
			for (const side of SIDES) expect(Math.abs(d[side] / step - Math.round(d[side] / step))).toBeLessThan(1e-6);
		}
	});
});

test('[placement R10] bars on one height line drift together, what is built does not drift, and mirrored rooms mirror', () => {
	const c: Case = { ...client('turns-left'), lead: 'reference-led', tape: COARSE };
	const plan = planCase(c);
	const of = (id: string) => plan.probes.drifts.find((d) => d.accessory === id);
	expect([of('bar-back')?.lower, of('bar-back')?.higher]).toEqual([
		of('bar-control')?.lower,
		of('bar-control')?.higher
	]);
	const built = plan.marks.map((m) => (m.accessory.id === 'seat' ? { ...m, stage: 'built' as const } : m));
	expect(driftsOf(plan.scene, plan.rows, built).map((d) => d.accessory)).not.toContain('seat');
	const mirrored = planCase(mirroredCase(c)).probes.drifts;
	expect(mirrored).toEqual(plan.probes.drifts.map((d) => ({ ...d, left: d.right, right: d.left })));
});
