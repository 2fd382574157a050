import { describe, expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { mirroredCase, mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import { planCase, type Plan } from '#core/plan.ts';
import { reportOf, settled } from '#core/report.ts';
import { inches, mm } from '#core/units/length.ts';
import { client } from './reduced.ts';
import { priceOfAll, priceOfFigures } from './priced.ts';

/** Led by its document the example is proved in about a second. */
const QUICK: Case = { ...client('turns-left'), lead: 'reference-led' };
const PLAN = planCase(QUICK);
/** On a coarse tape, where much is planned more than once. */
const COARSE: Case = { ...QUICK, tape: { unit: 'mm', step: mm(25) } };

const placesOf = (plan: Plan) => plan.marks.map((m) => [m.accessory.id, m.place] as const);

/** A map written the other way round. */
function turned<T>(map: Readonly<Record<string, T>>): Record<string, T> {
	return Object.fromEntries(Object.entries(map).toReversed());
}

const given = (plan: Plan): Case['places'] =>
	Object.fromEntries(plan.marks.map((m) => [m.accessory.id, { ...m.place, stage: 'pinned' as const }]));

test('[placement R4] the cost of a plan is what its findings cost, and how round its figures are', () => {
	const figures = priceOfFigures(QUICK, PLAN.marks);
	const price = priceOfAll(PLAN.findings).map((n, i) => n + (figures[i] ?? 0));
	expect(PLAN.status).toBe('optimal');
	expect([0, ...PLAN.cost.slice(0, 5)]).toEqual(price);
});

describe('[placement R5] nothing moves but by what was measured and chosen', () => {
	test('a mirrored room gets the mirrored plan', () => {
		const mirrored = planCase(mirroredCase(QUICK));
		const { footprint } = PLAN.scene.room;
		expect(placesOf(mirrored)).toEqual(placesOf(PLAN).map(([id, place]) => [id, mirroredPlace(place, footprint)]));
		expect(mirrored.cost.slice(0, 5)).toEqual(PLAN.cost.slice(0, 5));
		const answers = (plan: Plan) => plan.findings.map((f) => [f.row.id, f.about, f.answer, f.slack]);
		expect(answers(mirrored)).toEqual(answers(PLAN));
	});

	test('the order things are recorded in', () => {
		const { walls } = COARSE.enclosure;
		const wall = (w: Case['enclosure']['walls']['back']) => ({
			...w,
			backing: turned(w.backing),
			keepOuts: turned(w.keepOuts),
			studs: turned(w.studs)
		});
		const shuffled: Case = {
			...COARSE,
			people: turned(COARSE.people),
			enclosure: {
				...COARSE.enclosure,
				walls: {
					...turned(walls),
					right: wall(walls.right),
					left: wall(walls.left),
					back: wall(walls.back),
					front: wall(walls.front)
				}
			}
		};
		expect(JSON.stringify(reportOf(planCase(shuffled)))).toBe(JSON.stringify(reportOf(planCase(COARSE))));
	});

	test('what was typed, and by whom', () => {
		const { width } = COARSE.enclosure;
		const retold: Case = {
			...COARSE,
			enclosure: { ...COARSE.enclosure, width: { ...width, typed: '91,44 cm', by: 'S.K.' } }
		};
		expect(placesOf(planCase(retold))).toEqual(placesOf(planCase(COARSE)));
	});
});

describe('[placement R6] what is given is judged, never moved', () => {
	test('everything given', () => {
		const places = given(PLAN);
		const plan = planCase({ ...QUICK, places });
		expect(plan.status).toBe('given');
		expect(plan.marks.map((m) => m.stage)).toEqual(PLAN.marks.map(() => 'pinned'));
		expect(placesOf(plan)).toEqual(placesOf(PLAN));
		expect(plan.findings.map((f) => f.answer)).toEqual(PLAN.findings.map((f) => f.answer));
		expect(settled(plan)).toBe(true);
	});

	test('what is wanted and has no wall leaves the plan open, inside as the rest may be', () => {
		const plan = planCase({ ...QUICK, places: given(PLAN) });
		expect(settled({ ...plan, nowhere: plan.wanted.slice(0, 1) })).toBe(false);
	});

	test('a given mark that breaks a must is found outside and stays, unless its departure has a reason', () => {
		const places = given(PLAN);
		const seat = places['seat'];
		if (!seat) throw new Error('the example has a seat');
		const high: Case = { ...QUICK, places: { ...places, seat: { ...seat, y: (seat.y + 25.4) as typeof seat.y } } };
		const plan = planCase(high);
		const broken = plan.findings.filter((f) => f.strength === 'must' && f.answer === 'outside');
		expect(broken.map((f) => f.row.id)).toContain('ADA-ST-Z');
		expect(plan.marks.find((m) => m.accessory.id === 'seat')?.place.y).toBe(seat.y + 25.4);
		expect(settled(plan)).toBe(false);
		const departures = Object.fromEntries(
			broken.map((f) => [`${f.row.id}/${f.about[0] ?? 'case'}`, { reason: 'her chair is higher', by: 'S.K.' }])
		);
		expect(settled(planCase({ ...high, departures }))).toBe(true);
	});

	test('the rest is placed round what is given', () => {
		const seat = given(PLAN)['seat'];
		const plan = planCase({ ...QUICK, places: seat ? { seat } : {} });
		expect(plan.status).toBe('optimal');
		expect(placesOf(plan)).toEqual(placesOf(PLAN));
	});
});

describe('[placement R9] a lean that was not asked is not an impossibility', () => {
	const base = QUICK.people['client'];
	if (!base) throw new Error('the example has a client');
	const { lean, sittingForward, ...unasked } = base;
	if (!lean || !sittingForward) throw new Error('the example was asked for both');
	// A coarse tape keeps the search short.
	const withClient = (client: Case['people'][string]): Case => ({
		...QUICK,
		tape: { unit: 'in', step: inches(0.5) },
		people: { ...QUICK.people, client }
	});

	test('not asked: unknown, with the lean in numbers', () => {
		const plan = planCase(withClient({ ...unasked, sittingForward }));
		expect(plan.status).toBe('optimal');
		const reach = plan.findings.filter((f) => f.row.id === 'BODY-REACH' && f.about[0] === 'control');
		expect(reach.map((f) => f.answer)).toEqual(['unknown']);
		expect(plan.probes.questions.some((q) => q.about.includes('control') && /lean/.test(q.asks))).toBe(true);
		const [lean] = plan.probes.leans.filter((l) => l.accessory === 'control');
		expect(lean?.travel).toBeGreaterThan(40);
		expect(lean?.says).toContain(`${lean?.travel?.toFixed(0) ?? ''} mm`);
		expect(plan.basis).toBe('provisional');
	});

	test('recorded as none: the far wall is out of reach, and the clash says which rows', () => {
		const none = { value: { kind: 'none' as const }, how: 'observed' as const };
		const plan = planCase(withClient({ ...unasked, lean: none }));
		expect(plan.status).toBe('impossible');
		const rows = plan.clashes?.[0]?.rows.map((r) => r.row) ?? [];
		expect(rows).toContain('BODY-REACH');
	});
});
