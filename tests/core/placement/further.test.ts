import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase, mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import { betterWithout, furtherOf, type Further } from '#core/further.ts';
import { planCase, questionOf, type Plan, type Question } from '#core/plan.ts';
import { MEASURES } from '#core/measures/registry.ts';
import { judge } from '#core/rules/judge.ts';
import { inches, mm } from '#core/units/length.ts';
import { priceOfAll } from './priced.ts';
import { client } from './reduced.ts';

const TAPE = { unit: 'in', step: inches(1) } as const;
const base: Case = { ...client('turns-left'), tape: TAPE };
const led: Case = { ...base, lead: 'reference-led' };

const asked = new Map<string, Further>();

/** What is looked for after a plan, once a case: it takes seconds. */
function further(plan: Plan): Further {
	const found = asked.get(plan.digest);
	if (found) return found;
	const run = furtherOf(plan);
	for (;;) {
		const step = run.next();
		if (!step.done) continue;
		asked.set(plan.digest, step.value);
		return step.value;
	}
}

function better(plan: Plan, id: string) {
	const run = betterWithout(plan, id);
	for (;;) {
		const step = run.next();
		if (step.done) return step.value;
	}
}

function upright(c: Case): Case {
	const her = c.people['client'];
	if (!her) throw new Error('the example has a client');
	const sittingForward = { value: mm(0), how: 'observed' as const };
	const lean = { value: { kind: 'none' as const }, how: 'observed' as const };
	return { ...c, people: { ...c.people, client: { ...her, sittingForward, lean } } };
}

function bareBackWall(c: Case): Case {
	const { walls } = c.enclosure;
	return { ...c, enclosure: { ...c.enclosure, walls: { ...walls, back: { ...walls.back, backing: {} } } } };
}

const broken = (plan: Question, marks: readonly Mark[]): readonly string[] =>
	judge(plan.scene, plan.rows, marks)
		.filter(
			(f) => f.strength === 'must' && f.row.of !== 'case' && (f.answer === 'outside' || f.answer === 'borderline')
		)
		.map((f) => `${f.row.id}/${f.about.join('+')}`)
		.toSorted();

const IMPOSSIBLE: readonly (readonly [string, Case])[] = [
	['she sits upright, led by the document', upright(led)],
	['nothing behind the back wall, led by her', bareBackWall(base)],
	['both, in the mirrored room', mirroredCase(bareBackWall(upright(led)))]
];

describe.each(IMPOSSIBLE)('[placement R11] no plan: %s', (_, c) => {
	const plan = planCase(c);
	const { waysOut, alternatives } = further(plan);

	test('there is a way out, and no other plan but the other way round', () => {
		expect(plan.status).toBe('impossible');
		expect(waysOut.length).toBeGreaterThan(0);
		const c2: Case = {
			...c,
			enclosure: { ...c.enclosure, seatWall: c.enclosure.seatWall === 'left' ? 'right' : 'left' }
		};
		const turned = questionOf(c2);
		for (const a of alternatives) {
			expect(a.kind).toBe('handing');
			expect(broken(turned, a.marks)).toEqual([]);
		}
	});

	test('each breaks exactly the musts it names, by as much as it says', () => {
		for (const { gives, marks } of waysOut) {
			expect(marks.map((m) => m.accessory.id)).toEqual(plan.wanted.map((a) => a.id));
			expect(broken(plan, marks)).toEqual(gives.map((g) => `${g.row}/${g.about.join('+')}`).toSorted());
			const findings = judge(plan.scene, plan.rows, marks);
			for (const g of gives) {
				const f = findings.find((x) => x.row.id === g.row && x.about.join() === g.about.join());
				if (g.short !== null) expect(g.short).toBe(-(f?.slack ?? 0));
				else expect(MEASURES[f?.row.measure ?? 'carries'].unit === 'yes' || f?.measured === undefined).toBe(true);
				expect(g.next.length).toBeGreaterThan(20);
			}
		}
	});

	test('none gives up all that another gives up, and more; what gives up least comes first', () => {
		const named = waysOut.map((w) => new Set(w.gives.map((g) => `${g.row}/${g.about.join()}`)));
		for (const [i, own] of named.entries())
			for (const [j, other] of named.entries())
				if (i !== j) expect([...other].every((key) => own.has(key))).toBe(false);
		const yesNo = waysOut.map((w) => w.gives.filter((g) => g.short === null).length);
		expect(yesNo).toEqual(yesNo.toSorted((a, b) => a - b));
	});
});

test('[placement R11] a wall that does not carry is answered with where backing would go', () => {
	const { waysOut } = further(planCase(bareBackWall(base)));
	const next = waysOut.flatMap((w) => w.gives.map((g) => g.next));
	expect(
		next.some((says) =>
			/Add backing 76 mm thick behind the back wall, between .* mm and .* mm from its left corner/.test(says)
		)
	).toBe(true);
});

const PLANNED: readonly (readonly [string, Case])[] = [
	['led by her', base],
	['led by the document', led],
	['in the mirrored room', mirroredCase(base)]
];

describe.each(PLANNED)('[placement R12] other plans, %s', (_, c) => {
	const plan = planCase(c);
	const { alternatives, waysOut } = further(plan);
	const where = (marks: readonly Mark[]) => JSON.stringify(marks.map((m) => [m.accessory.id, m.place]));

	test('at most three, none of them the plan or told twice, each with what it costs or gains', () => {
		expect(waysOut).toEqual([]);
		expect(alternatives.length).toBeLessThanOrEqual(3);
		const all = [plan.marks, ...alternatives.map((a) => a.marks)].map(where);
		expect(new Set(all).size).toBe(all.length);
		for (const a of alternatives) {
			expect(a.marks.map((m) => m.accessory.id)).toEqual(plan.marks.map((m) => m.accessory.id));
			expect(a.worse.length + a.better.length).toBeGreaterThan(0);
		}
	});

	test('another wall or part is another wall or part; none breaks a must; none that only differs is cheaper than the plan', () => {
		for (const a of alternatives.filter((x) => x.kind !== 'handing')) {
			expect(broken(plan, a.marks)).toEqual(broken(plan, plan.marks));
			const slots = (marks: readonly Mark[]) => marks.map((m) => `${m.place.wall} ${m.place.variant}`).join();
			if (a.kind !== 'reference') expect(slots(a.marks)).not.toBe(slots(plan.marks));
			// Tie-breaks are not weighed.
			const price = (marks: readonly Mark[]) => priceOfAll(judge(plan.scene, plan.rows, marks)).slice(0, 5);
			const [was, is] = [price(plan.marks), price(a.marks)];
			const at = was.findIndex((n, i) => n !== is[i]);
			if (at >= 0) expect(is[at]).toBeGreaterThan(was[at] ?? 0);
		}
	});
});

test('[placement R5] other plans and ways out of a mirrored room are the mirrored ones', () => {
	const { footprint } = planCase(base).scene.room;
	const seen = (c: Case) => {
		const { alternatives, waysOut } = further(planCase(c));
		return [...alternatives, ...waysOut].map(({ marks }) => marks.map((m) => [m.accessory.id, m.place] as const));
	};
	for (const c of [base, bareBackWall(led)]) {
		const turned = seen(c).map((marks) => marks.map(([id, place]) => [id, mirroredPlace(place, footprint)]));
		expect(turned.length).toBeGreaterThan(0);
		expect(seen(mirroredCase(c))).toEqual(turned);
	}
});

test('[placement R12] some plan has another wall to offer', () => {
	expect(further(planCase(base)).alternatives.some((a) => a.kind === 'wall')).toBe(true);
});

test('[placement R12] the other way round is offered, also where this way nothing fits', () => {
	const turned = further(planCase(base)).alternatives.find((a) => a.kind === 'handing');
	expect(turned?.says).toBe('The shower the other way round: the seat on the right wall.');
	expect(turned?.marks.find((m) => m.accessory.id === 'seat')?.place.wall).toBe('right');
	expect(turned?.worse.join()).toContain('The seat lies to the side the client moves to');
	const tired = client('stands-then-tires');
	const left: Case = { ...tired, tape: TAPE, enclosure: { ...tired.enclosure, seatWall: 'left' } };
	const plan = planCase(left);
	expect(plan.status).toBe('impossible');
	expect(further(plan).alternatives.map((a) => a.kind)).toEqual(['handing']);
});

test('[placement R12] stopping early is allowed: the search for other plans pauses often', () => {
	const run = furtherOf(planCase(led));
	expect(run.next().done).toBe(false);
	expect(run.return({ waysOut: [], alternatives: [] }).done).toBe(true);
});

describe('[placement R13] a given mark that holds the rest back', () => {
	const free = planCase(led);
	const rest = free.marks.find((m) => m.accessory.id === 'handset-rest');
	if (!rest) throw new Error('the example wants a rest');
	const given = (stage: 'pinned' | 'built', by: number): Case => ({
		...led,
		places: { 'handset-rest': { ...rest.place, x: mm(rest.place.x + by), stage } }
	});

	test('moved away, something better is offered, in words; where it was, or once built, nothing is', () => {
		const off = planCase(given('pinned', 51));
		const offered = better(off, 'handset-rest');
		expect(offered?.better.length).toBeGreaterThan(0);
		const { scene, rows } = questionOf(led);
		const price = priceOfAll(judge(scene, rows, offered?.marks ?? [])).slice(0, 5);
		expect(price).toEqual(priceOfAll(free.findings).slice(0, 5));
		expect(better(planCase(given('pinned', 0)), 'handset-rest')).toBeNull();
		expect(better(planCase(given('built', 51)), 'handset-rest')).toBeNull();
		expect(better(off, 'seat')).toBeNull();
	});
});

describe('a valve that is there', { timeout: 120_000 }, () => {
	const valve = (x: number, y: number): Case => ({
		...base,
		places: { control: { wall: 'right', variant: 'control-lever', x: mm(x), y: mm(y), turn: 0, stage: 'built' } }
	});
	const moved = (marks: readonly Mark[]) => marks.find((m) => m.accessory.id === 'control')?.place;

	test('[placement R13] out of reach, a way out moves it, and nothing else is given up', () => {
		const plan = planCase(valve(300, 700));
		expect(plan.status).toBe('impossible');
		const way = further(plan).waysOut.find(({ gives }) => gives.some((g) => g.row === 'ROOM-AS-PLUMBED'));
		expect(broken(questionOf({ ...plan.scene.c, places: {} }), way?.marks ?? [])).toEqual([]);
		expect(way?.gives[0]?.next).toContain(`${String(moved(way?.marks ?? [])?.x)} mm from its left corner`);
	});

	test('[placement R13] within reach but badly, its better place is told, and it is not moved', () => {
		const plan = planCase(valve(700, 300));
		expect(moved(plan.marks)).toMatchObject({ x: 700, y: 300 });
		const [other] = further(plan).alternatives.filter(({ kind }) => kind === 'plumbing');
		expect(other?.better.length).toBeGreaterThan(0);
		expect(moved(other?.marks ?? [])?.y).toBeLessThan(300);
	});
});
