import type { Accessory, Mark } from '#core/case/accessory.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { BoundRow } from '#core/rules/row.ts';
import { compare, PARTS } from './cost.ts';
import { problemOf } from './problem.ts';
import { Search, type Progress } from './search.ts';

/** What is asked of a search: what may be seen, what is wanted, and the rows with their strengths. */
export interface Question {
	readonly scene: Scene;
	readonly wanted: readonly Accessory[];
	readonly rows: readonly BoundRow[];
}

/** What a search for a question gave. Shape: no marks when nothing was found; proved when nothing costs less. */
export interface Solved {
	readonly marks: readonly Mark[] | null;
	readonly proved: boolean;
	readonly evaluations: number;
}

/** Finds places for a question within a budget of rows asked. */
export type Solve = (question: Question, evaluations: number) => Generator<Progress, Solved, undefined>;

/** True when no plan does better in wishes and documents: what is left of the proof is about rounder numbers. */
export const butForTies = ({ found, bound }: Pick<Search, 'found' | 'bound'>): boolean =>
	found !== null && compare(found.cost.slice(0, PARTS.tie), bound.slice(0, PARTS.tie)) <= 0;

/** Places for a question beside its plan: the best that a budget finds, to the proof but for tie-breaks. */
export function* solve(question: Question, evaluations: number): Generator<Progress, Solved, undefined> {
	const { scene, rows, wanted } = question;
	const problem = problemOf(scene, rows, wanted);
	const search = new Search(problem, { until: 'proof', evaluations });
	const run = search.run();
	let step = run.next();
	while (!step.done && !butForTies(search)) {
		yield { ...search.tally, found: null, bound: search.bound };
		step = run.next();
	}
	const proved = butForTies(search) || (step.done === true && step.value === 'proved');
	const all = search.found && [...problem.given, ...search.found.marks];
	const marks = all && wanted.flatMap((a) => all.filter((m) => m.accessory.id === a.id));
	return { marks, proved, evaluations: search.tally.evaluations };
}

/** True when some plan meets these rows, false when none does, null when the budget ends first. */
export function* meets(
	{ scene, rows, wanted }: Question,
	evaluations: number
): Generator<Progress, boolean | null, undefined> {
	// What no row speaks of plays no part.
	const spoken = wanted.filter((a) => rows.some((r) => r.about.includes(a.id)));
	const search = new Search(problemOf(scene, rows, spoken), { until: 'first', evaluations });
	const run = search.run();
	let step = run.next();
	while (!step.done) {
		yield { ...search.tally, found: null, bound: search.bound };
		step = run.next();
	}
	if (search.found) return true;
	return step.value === 'proved' ? false : null;
}
