import { readdirSync, readFileSync } from 'node:fs';
import { readCase } from '#core/case/read.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';
import type { Placed } from '#core/placement/answer.ts';
import { place } from '#core/placement/place.ts';
import { problemOf } from '#core/placement/problem.ts';
import { Search } from '#core/placement/search.ts';
import { questionOf, turned, type Question } from '#core/plan.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import { mm } from '#core/units/length.ts';
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
/** Rows a search on a growing problem may ask before it is called bounded. */
const BUDGET = 2_000_000;
const COUNTS = [4, 6, 8, 10, 12, 14, 16];
const STEPS = [10, 5, 2];
/** How often each mark is dragged a little to time the judge. */
const DRAGS = 50;

function cases(): readonly (readonly [string, Case])[] {
	return readdirSync(CLIENTS).map((name) => {
		const read = readCase(readFileSync(`${CLIENTS}/${name}/case.json`, 'utf8'));
		if (read.kind === 'bad') throw new Error(`${name}: ${JSON.stringify(read.problems)}`);
		return [name, read.case];
	});
}

function seconds(run: () => unknown): number {
	const began = performance.now();
	run();
	return (performance.now() - began) / 1000;
}

/** The middle of some numbers; of an even count, halfway between the two in the middle. */
function median(all: readonly number[]): number {
	const sorted = all.toSorted((a, b) => a - b);
	const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
	return ((low ?? NaN) + (high ?? NaN)) / 2;
}

/** A whole search: when it had its first plan, when it ended, and how. */
function timed({ scene, rows, wanted }: Question): { first: number | null; ended: number; placed: Placed } {
	const began = performance.now();
	const elapsed = () => (performance.now() - began) / 1000;
	let first: number | null = null;
	const run = place(scene, rows, wanted);
	let step = run.next();
	while (!step.done) {
		if (first === null && step.value.found) first = elapsed();
		step = run.next();
	}
	return { first, ended: elapsed(), placed: step.value };
}

const PART_NAMES = ['wishes not met', 'wish steps', 'document rows', 'document mm', 'tie-breaks'];

/** How far a bound lies below a cost: the first part in which they differ. */
function gapOf({
	cost,
	bound
}: {
	readonly cost: readonly number[];
	readonly bound: readonly number[];
}): string | null {
	if (cost.length === 0) return null;
	const at = PART_NAMES.findIndex((_, i) => cost[i] !== bound[i]);
	return at < 0 ? 'none' : `${String((cost[at] ?? 0) - (bound[at] ?? 0))} ${PART_NAMES[at] ?? ''}`;
}

function whole(name: string, question: Question): { line: Line; placed: Placed } {
	const first = timed(question);
	const runs = [first];
	while (runs.length < RUNS && runs.every(({ ended }) => ended < LONG)) runs.push(timed(question));
	const firsts = runs.flatMap(({ first }) => (first === null ? [] : [first]));
	const { placed } = first;
	const line = {
		bench: 'placement whole',
		case: name,
		ours: median(runs.map(({ ended }) => ended)),
		peer: null,
		ratio: null,
		first: firsts.length > 0 ? median(firsts) : null,
		status: placed.status,
		gap: gapOf(placed),
		nodes: placed.nodes,
		evaluations: placed.evaluations,
		runs: runs.length
	};
	return { line, placed };
}

/**
 * The same instance, cut out round the plan, by our search and by the library, side by side; both start from its rows and
 * end with its cost.
 */
async function beside(name: string, { scene, rows, wanted }: Question, marks: readonly Mark[]): Promise<Line> {
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

/** One search on a problem of some size, until it is proved or its budget ends. */
function grown(bench: string, name: string, { scene, rows, wanted }: Question): Line {
	const began = performance.now();
	const elapsed = () => (performance.now() - began) / 1000;
	const search = new Search(problemOf(scene, rows, wanted), { until: 'proof', evaluations: BUDGET });
	let first: number | null = null;
	const run = search.run();
	let step = run.next();
	while (!step.done) {
		if (first === null && search.found) first = elapsed();
		step = run.next();
	}
	return {
		bench,
		case: name,
		ours: elapsed(),
		peer: null,
		ratio: null,
		first,
		status: search.found ? step.value : `${step.value}, no plan`,
		gap: search.found && gapOf({ cost: search.found.cost, bound: search.bound }),
		nodes: search.tally.nodes,
		evaluations: search.tally.evaluations
	};
}

const solved = (c: Case): Question => questionOf(turned(c) ? mirroredCase(c) : c);

/** The question with so many accessories: the first of them, or all and some a second and third time. */
function withCount(question: Question, count: number): Question {
	const { scene } = question;
	const wanted = Array.from({ length: count }, (_, i) => {
		const rest = question.wanted.slice(1);
		const again = i < question.wanted.length ? question.wanted[i] : rest[(i - question.wanted.length) % rest.length];
		if (!again) throw new Error('a case with no accessory');
		const round = i < question.wanted.length ? 0 : 1 + Math.floor((i - question.wanted.length) / rest.length);
		const suffix = round > 0 ? `-${String(round + 1)}` : '';
		return { ...again, id: again.id + suffix, ...(again.line && { line: again.line + suffix }) };
	});
	return { scene, wanted, nowhere: [], others: [], rows: bind(packsFor(scene.c.reference), wanted, scene.c) };
}

/** The judge on one mark dragged a little: every row that speaks of it, beside all other marks. */
function dragged(name: string, c: Case): Line {
	const { scene, rows, wanted } = solved(c);
	const run = place(scene, rows, wanted);
	let step = run.next();
	while (!step.done && !step.value.found) step = run.next();
	const marks = step.done ? step.value.marks : (step.value.found?.marks ?? []);
	const each = marks.flatMap((mark) => {
		const touched = rows.filter((r) => r.about.includes(mark.accessory.id));
		return Array.from({ length: DRAGS }, (_, i) => {
			const place = { ...mark.place, x: mm(mark.place.x + i), y: mm(mark.place.y - i) };
			return seconds(() =>
				judge(
					scene,
					touched,
					marks.map((m) => (m === mark ? { ...mark, place } : m))
				)
			);
		});
	});
	return {
		bench: 'placement dragged',
		case: name,
		ours: median(each),
		peer: null,
		ratio: null,
		microseconds: Math.round(median(each) * 1e6),
		worst: Math.round(Math.max(...each) * 1e6),
		runs: each.length
	};
}

/**
 * Placement of the example clients, led by the person and by the document: whole, and cut down beside the library with
 * the median ratio; then, as each is led, with more accessories and finer steps until bounded, and the judge on a dragged
 * mark.
 */
export async function* placement(): AsyncGenerator<Line, void, undefined> {
	const ratios: number[] = [];
	const clients = cases();
	for (const [name, led] of clients) {
		for (const lead of ['person-led', 'reference-led'] as const) {
			const question = solved({ ...led, lead });
			const { line, placed } = whole(`${name} ${lead}`, question);
			yield line;
			// Where nothing fits there is nothing to cut out.
			if (placed.status === 'impossible') continue;
			const cut = await beside(`${name} ${lead}`, question, placed.marks);
			if (cut.ratio !== null) ratios.push(cut.ratio);
			yield cut;
		}
	}
	yield { bench: 'placement median', case: 'all', ours: 1, peer: median(ratios), ratio: median(ratios) };
	for (const [name, c] of clients) {
		for (const count of COUNTS) {
			yield grown('placement accessories', `${name} ${String(count)}`, withCount(solved(c), count));
		}
	}
	for (const [name, c] of clients) {
		for (const step of STEPS) {
			const fine: Case = { ...c, tape: { unit: 'mm', step: mm(step) } };
			yield grown('placement steps', `${name} ${String(step)} mm`, solved(fine));
		}
	}
	for (const [name, c] of clients) yield dragged(name, c);
}
