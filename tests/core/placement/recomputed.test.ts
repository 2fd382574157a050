import { expect, test } from 'vitest';
import { problemOf } from '#core/placement/problem.ts';
import { Search } from '#core/placement/search.ts';
import { questionOf } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import { mm } from '#core/units/length.ts';
import { priceOfAll, priceOfFigures } from './priced.ts';
import { client, varied } from './reduced.ts';

const INSTANCES = 30;
const TAPE = { unit: 'mm', step: mm(50) } as const;

test(`[placement R4] every plan met on the way costs what its findings cost, in ${String(INSTANCES)} rooms and bodies`, () => {
	let plans = 0;
	let paid = 0;
	for (let seed = 0; seed < INSTANCES; seed++) {
		const c = { ...varied(client(seed % 2 ? 'stands-then-tires' : 'turns-left'), 900 + seed), tape: TAPE };
		const { scene, rows, wanted } = questionOf(c);
		// Whole lattices with everything wanted; a plan need not be the best one to cost what it costs.
		const search = new Search(problemOf(scene, rows, wanted), { until: 'proof', evaluations: 3e5 });
		const run = search.run();
		let last = search.found;
		for (let step = run.next(); ; step = run.next()) {
			if (search.found && search.found !== last) {
				plans++;
				const { marks, cost } = search.found;
				const figures = priceOfFigures(c, marks);
				const price = priceOfAll(judge(scene, rows, marks)).map((n, i) => n + (figures[i] ?? 0));
				expect([0, ...cost.slice(0, 5)], `seed ${String(seed)}`).toEqual(price);
				if (price.slice(1, 5).some((part) => part > 0)) paid++;
				last = search.found;
			}
			if (step.done) break;
		}
	}
	// Plans that cost nothing would say little.
	expect(plans).toBeGreaterThan(INSTANCES);
	expect(paid).toBeGreaterThan(INSTANCES / 2);
});
