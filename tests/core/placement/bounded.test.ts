import { expect, test, vi } from 'vitest';
import type * as search from '#core/placement/search.ts';
import type { Case } from '#core/case/record.ts';
import { placeCase, planCase, planFrom, questionOf } from '#core/plan.ts';
import { compare } from '#core/placement/cost.ts';
import { settled } from '#core/report.ts';
import { mm } from '#core/units/length.ts';
import { client } from './reduced.ts';

const budget = vi.hoisted(() => ({ share: Infinity }));

// The same search with a purse of its own: the budget of the house is about a minute, too long to wait for here.
vi.mock('#core/placement/search.ts', async (original) => {
	const { Search } = await original<typeof search>();
	class Short extends Search {
		constructor(problem: ConstructorParameters<typeof Search>[0], limits: search.Limits) {
			super(problem, { ...limits, evaluations: Math.min(limits.evaluations, budget.share) });
		}
	}
	return { Search: Short };
});

const COARSE: Case = { ...client('turns-left'), lead: 'reference-led', tape: { unit: 'mm', step: mm(25) } };

test('[placement R8] a plan is called bounded when the budget ends first, and never before', () => {
	const proved = planCase(COARSE);
	expect(proved.status).toBe('optimal');
	expect(proved.bound).toEqual(proved.cost);
	for (const share of [0.02, 0.2, 0.6]) {
		budget.share = Math.ceil(proved.evaluations * share);
		const run = placeCase(COARSE);
		let step = run.next();
		while (!step.done) step = run.next();
		const plan = planFrom(questionOf(COARSE), step.value);
		expect(plan.status).toBe('bounded');
		expect(compare(plan.bound, proved.cost)).toBeLessThanOrEqual(0);
		if (plan.cost.length > 0) expect(compare(plan.cost, proved.cost)).toBeGreaterThanOrEqual(0);
		expect(settled(plan)).toBe(false);
	}
	budget.share = proved.evaluations + 1;
	expect(planCase(COARSE).status).toBe('optimal');
});

test('[placement R8] a case without a plan is not called impossible when the budget ends first', () => {
	budget.share = Infinity;
	const her = COARSE.people['client'];
	if (!her) throw new Error('the example has a client');
	const upright = { value: mm(0), how: 'observed' as const };
	const lean = { value: { kind: 'none' as const }, how: 'observed' as const };
	const c: Case = { ...COARSE, people: { ...COARSE.people, client: { ...her, sittingForward: upright, lean } } };
	const proved = planCase(c);
	expect(proved.status).toBe('impossible');
	expect(proved.clashes?.[0]?.rows.length).toBeGreaterThan(0);
	budget.share = Math.floor(proved.evaluations / 2);
	const stopped = planCase(c);
	expect(stopped.status).toBe('bounded');
	expect(stopped.marks).toEqual([]);
	expect(stopped.clashes).toBeUndefined();
});
