import { expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { planCase, questionOf, type Plan } from '#core/plan.ts';
import { place } from '#core/placement/place.ts';
import { problemOf } from '#core/placement/problem.ts';
import { Search } from '#core/placement/search.ts';
import type { BoundRow } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import { client, varied } from './reduced.ts';

const base = client('turns-left');
const coarse: Case = { ...base, lead: 'reference-led', tape: { unit: 'mm', step: mm(25) } };

const changed = (change: (c: Case) => Case): Case => change(coarse);

const overAll = { kind: 'pipe', x0: mm(0), x1: mm(914.4), y0: mm(-1016), y1: mm(1100), how: 'measured' } as const;

const IMPOSSIBLE: Readonly<Record<string, Case>> = {
	'no lean and the control on the far wall': changed((c) => {
		const her = c.people['client'];
		if (!her) throw new Error('the example has a client');
		const upright = { value: mm(0), how: 'observed' as const };
		const lean = { value: { kind: 'none' as const }, how: 'observed' as const };
		return { ...c, people: { ...c.people, client: { ...her, sittingForward: upright, lean } } };
	}),
	'a pipe over the whole seat wall': changed((c) => {
		const { walls } = c.enclosure;
		const left = { ...walls.left, keepOuts: { all: overAll } };
		return { ...c, enclosure: { ...c.enclosure, walls: { ...walls, left } } };
	}),
	'a pipe over the whole control wall': changed((c) => {
		const { walls } = c.enclosure;
		const right = { ...walls.right, keepOuts: { all: overAll } };
		return { ...c, enclosure: { ...c.enclosure, walls: { ...walls, right } } };
	}),
	'the seat built too far from the control': changed((c) => {
		const her = c.people['client'];
		if (!her) throw new Error('the example has a client');
		const lean = { value: { kind: 'none' as const }, how: 'observed' as const };
		const seat = planCase(c).marks.find((m) => m.accessory.id === 'seat')?.place;
		if (!seat) throw new Error('the example has a seat');
		return {
			...c,
			people: { ...c.people, client: { ...her, lean } },
			places: { seat: { ...seat, x: mm(250), stage: 'built' } }
		};
	}),
	'a surveyed wall with nothing behind it': changed((c) => {
		const { walls } = c.enclosure;
		return { ...c, enclosure: { ...c.enclosure, walls: { ...walls, back: { ...walls.back, backing: {} } } } };
	})
};

/** Whether some plan breaks none of these rows; asked of a search of its own. */
function meetable(c: Case, rows: readonly BoundRow[]): boolean {
	const { scene, wanted } = questionOf(c);
	const spoken = wanted.filter((a) => rows.some((r) => r.about.includes(a.id)));
	const search = new Search(problemOf(scene, rows, spoken), { until: 'first', evaluations: 1e9 });
	const run = search.run();
	while (!run.next().done);
	return search.found !== null;
}

test('[placement R7] without the change each of these makes, the case has a plan', () => {
	expect(planCase(coarse).status).toBe('optimal');
});

/** Every clash of a plan as rows: each cannot be met, without any one member can; no row is in two; beside them all is met. */
function expectClashes(c: Case, plan: Plan, name: string): void {
	const { rows } = questionOf(c);
	const key = (r: { row: string; about: readonly string[] }) => `${r.row}/${r.about.join('+')}`;
	const clashes = (plan.clashes ?? []).map(({ rows: named }) => {
		const clash = rows.filter((r) => named.some((row) => key(row) === key({ row: r.row.id, about: r.about })));
		expect(clash.length, name).toBe(named.length);
		return clash;
	});
	expect(clashes.length, name).toBeGreaterThan(0);
	expect(
		plan.clashes?.some((clash) => clash.unproved),
		name
	).toBe(false);
	for (const clash of clashes) {
		expect(clash.length, name).toBeGreaterThan(0);
		expect(clash.every((r) => r.strength === 'must')).toBe(true);
		expect(meetable(c, clash), name).toBe(false);
		for (const row of clash) {
			const rest = clash.filter((r) => r !== row);
			expect(rest.length === 0 || meetable(c, rest), `${name} without ${row.row.id}`).toBe(true);
		}
	}
	const all = clashes.flat();
	expect(new Set(all).size, name).toBe(all.length);
	const left = rows.filter((r) => r.strength === 'must' && r.about.length > 0 && !all.includes(r));
	expect(meetable(c, left), `${name}, all clashes set aside`).toBe(true);
}

test.each(Object.entries(IMPOSSIBLE))(
	'[placement R7] %s: the rows named clash, any one dropped frees its own, and all set aside nothing clashes',
	(name, c) => {
		const plan = planCase(c);
		expect(plan.status).toBe('impossible');
		expectClashes(c, plan, name);
	}
);

test('[placement R7] rooms and bodies at random: what is called impossible is, and no row named is idle', () => {
	let impossible = 0;
	let several = 0;
	for (let seed = 0; seed < 16; seed++) {
		const name = seed % 2 ? 'stands-then-tires' : 'turns-left';
		const tape = { unit: 'mm', step: mm(50) } as const;
		const c: Case = { ...varied(client(name), 900 + seed), lead: 'reference-led', tape };
		const plan = planCase(c);
		if (plan.status !== 'impossible') continue;
		impossible++;
		if ((plan.clashes?.length ?? 0) > 1) several++;
		expectClashes(c, plan, `seed ${String(seed)}`);
	}
	expect(impossible).toBeGreaterThan(5);
	expect(several).toBeGreaterThan(0);
});

test('[placement R7] a wall too short for every part says so itself: the room may clash alone', () => {
	const { width } = coarse.enclosure;
	const c: Case = { ...coarse, enclosure: { ...coarse.enclosure, width: { ...width, value: mm(600) } } };
	const { scene, wanted, rows } = questionOf(c);
	const none = wanted.map((a) => (a.id === 'bar-back' ? { ...a, slots: [] } : a));
	const run = place(scene, rows, none);
	let step = run.next();
	while (!step.done) step = run.next();
	expect(step.value.status).toBe('impossible');
	expect(step.value.clashes?.[0]?.rows).toEqual([
		{ row: 'EV-REQ-RISE', about: ['bar-back'], says: 'Every horizontal bar is longer than its wall.' }
	]);
});
