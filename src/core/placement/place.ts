import type { Accessory } from '#core/case/accessory.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { BoundRow } from '#core/rules/row.ts';
import type { Placed } from './answer.ts';
import { clashesOf, clashesTold } from './clash.ts';
import { problemOf } from './problem.ts';
import { Search, type Progress } from './search.ts';
import { butForTies } from './solve.ts';

/** Rows asked before the answer is called bounded. Source: ours, half a minute to two of one core. */
const BUDGET = 60_000_000;

/** Rows asked for rounder numbers once no plan can do better in wishes and documents. Source: ours, about a second. */
const ROUNDER = 4_000_000;

/**
 * Places for everything wanted that has none.
 * Shape: pauses with its progress; marks in the order wanted, those given as they are.
 */
export function* place(
	scene: Scene,
	rows: readonly BoundRow[],
	wanted: readonly Accessory[]
): Generator<Progress, Placed, undefined> {
	const problem = problemOf(scene, rows, wanted);
	const search = new Search(problem, { until: 'proof', evaluations: BUDGET });
	const run = search.run();
	let enough = Infinity;
	let step = run.next();
	while (!step.done && search.tally.evaluations < enough) {
		if (enough === Infinity && butForTies(search)) enough = search.tally.evaluations + ROUNDER;
		yield { ...search.tally, found: search.found, bound: search.bound };
		step = run.next();
	}
	const { found, bound, tally } = search;
	const all = [...problem.given, ...(found?.marks ?? [])];
	const marks = wanted.flatMap((a) => all.filter((m) => m.accessory.id === a.id));
	const cost = found?.cost ?? [];
	if (!found && step.value === 'proved') {
		const question = { scene, rows, wanted };
		const clashes = clashesTold(question, yield* clashesOf(question));
		return { ...tally, marks: problem.given, status: 'impossible', cost, bound, clashes };
	}
	const proved = step.value === 'proved' || butForTies(search) ? ('optimal' as const) : ('bounded' as const);
	return { ...tally, marks, status: problem.unknowns.length === 0 ? 'given' : proved, cost, bound };
}
