import { readdirSync, readFileSync } from 'node:fs';
import { readCase } from '#core/case/read.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';
import type { Placed } from '#core/placement/answer.ts';
import { place } from '#core/placement/place.ts';
import { problemOf } from '#core/placement/problem.ts';
import { Search } from '#core/placement/search.ts';
import { placeCase, questionOf } from '#core/plan.ts';
import { leastBy, peer } from './peer/integer-program.ts';
import { choicesOf, reduced } from './peer/reduced.ts';

/** One measurement. Times in seconds; peer and ratio are null where no peer is meaningful. */
export interface Line {
	readonly bench: string;
	readonly case: string;
	readonly ours: number;
	readonly peer: number | null;
	/** How many times as long the peer takes. */
	readonly ratio: number | null;
	readonly [more: string]: string | number | null;
}

const CLIENTS = 'personas/clients';
const RUNS = 3;
/** What takes longer than this is run once. Units: seconds. */
const LONG = 5;

function cases(): readonly (readonly [string, Case])[] {
	return readdirSync(CLIENTS).flatMap((name) => {
		const read = readCase(readFileSync(`${CLIENTS}/${name}/case.json`, 'utf8'));
		if (read.kind === 'bad') throw new Error(`${name}: ${JSON.stringify(read.problems)}`);
		return (['person-led', 'reference-led'] as const).map(
			(lead) => [`${name} ${lead}`, { ...read.case, lead }] as const
		);
	});
}

function seconds(run: () => unknown): number {
	const began = performance.now();
	run();
	return (performance.now() - began) / 1000;
}

const median = (all: readonly number[]): number => all.toSorted((a, b) => a - b)[all.length >> 1] ?? NaN;

/** A whole search: when it had its first plan, when it ended, and how. */
function timed(c: Case): { first: number | null; ended: number; placed: Placed } {
	const began = performance.now();
	const elapsed = () => (performance.now() - began) / 1000;
	let first: number | null = null;
	const run = placeCase(c);
	let step = run.next();
	while (!step.done) {
		if (first === null && step.value.found) first = elapsed();
		step = run.next();
	}
	return { first, ended: elapsed(), placed: step.value };
}

function whole(name: string, c: Case): Line {
	const runs = [timed(c)];
	while (runs.length < RUNS && runs.every(({ ended }) => ended < LONG)) runs.push(timed(c));
	const firsts = runs.flatMap(({ first }) => (first === null ? [] : [first]));
	const [last] = runs.slice(-1);
	return {
		bench: 'placement whole',
		case: name,
		ours: median(runs.map(({ ended }) => ended)),
		peer: null,
		ratio: null,
		first: firsts.length > 0 ? median(firsts) : null,
		status: last?.placed.status ?? null,
		nodes: last?.placed.nodes ?? null,
		evaluations: last?.placed.evaluations ?? null,
		runs: runs.length
	};
}

/** The same reduced instance by our search and by the library, side by side; both start from its rows and end with its cost. */
async function beside(name: string, c: Case): Promise<Line> {
	const { scene, rows, wanted } = questionOf(c.enclosure.seatWall === 'right' ? mirroredCase(c) : c);
	const run = place(scene, rows, wanted);
	let step = run.next();
	// Any plan will do to cut the instance out around it.
	while (!step.done && !step.value.found) step = run.next();
	const marks = step.done ? step.value.marks : (step.value.found?.marks ?? []);
	const highs = await peer();
	const [ours, theirs, solving]: [number[], number[], number[]] = [[], [], []];
	let same = true;
	for (let i = 0; i < RUNS; i++) {
		const problem = reduced(problemOf(scene, rows, wanted), marks);
		const search = new Search(problem, { until: 'proof', evaluations: 1e9 });
		ours.push(seconds(() => [...search.run()]));
		let alone = 0;
		const solve: typeof highs.solve = (model, options) => {
			const began = performance.now();
			const solution = highs.solve(model, options);
			alone += (performance.now() - began) / 1000;
			return solution;
		};
		let least: readonly number[] | null = null;
		theirs.push(seconds(() => (least = leastBy({ solve }, choicesOf(problem)))));
		solving.push(alone);
		same &&= JSON.stringify(least) === JSON.stringify(search.found?.cost.slice(0, 5) ?? null);
	}
	const [a, b] = [median(ours), median(theirs)];
	return {
		bench: 'placement reduced',
		case: name,
		ours: a,
		peer: b,
		ratio: b / a,
		// Of the peer's time, what the library itself took once every price was written out for it.
		solving: median(solving),
		cost: same ? 'same' : 'not the same',
		runs: RUNS
	};
}

/** Placement of the example clients, led by the person and by the document: reduced beside the library, then whole. */
export async function* placement(): AsyncGenerator<Line, void, undefined> {
	for (const [name, c] of cases()) yield await beside(name, c);
	for (const [name, c] of cases()) yield whole(name, c);
}
