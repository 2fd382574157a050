import { expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { planCase, questionOf } from '#core/plan.ts';
import { problemOf } from '#core/placement/problem.ts';
import { Search } from '#core/placement/search.ts';
import type { BoundRow } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import { client } from './reduced.ts';

const base = client('turns-left');
const coarse: Case = { ...base, lead: 'reference-led', tape: { unit: 'mm', step: mm(50) } };

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
	'a surveyed wall with nothing behind it': changed((c) => {
		const { walls } = c.enclosure;
		return { ...c, enclosure: { ...c.enclosure, walls: { ...walls, back: { ...walls.back, backing: {} } } } };
	})
};

/** Whether some plan breaks none of these rows; asked of a search of its own. */
function meetable(c: Case, rows: readonly BoundRow[]): boolean {
	const { scene, wanted } = questionOf(c);
	const spoken = wanted.filter((a) => rows.some((r) => r.about.includes(a.id)));
	const search = new Search(problemOf(scene, rows, spoken), { until: 'first', nodes: 1e6 });
	const run = search.run();
	while (!run.next().done);
	return search.found !== null;
}

test.each(Object.entries(IMPOSSIBLE))(
	'[placement R7] %s: the rows named clash, and any one of them dropped frees the rest',
	(_, c) => {
		const plan = planCase(c);
		expect(plan.status).toBe('impossible');
		const named = (r: BoundRow) =>
			plan.clash?.rows.some((row) => row.row === r.row.id && row.about.join() === r.about.join()) ?? false;
		const clash = questionOf(c).rows.filter(named);
		expect(clash.length).toBe(plan.clash?.rows.length);
		expect(clash.length).toBeGreaterThan(0);
		expect(meetable(c, clash)).toBe(false);
		for (const row of clash) {
			const rest = clash.filter((r) => r !== row);
			expect(rest.length === 0 || meetable(c, rest), `without ${row.row.id}`).toBe(true);
		}
	}
);
