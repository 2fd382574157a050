import { readdirSync, readFileSync } from 'node:fs';
import { readCase } from '#core/case/read.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';
import { placeCase, questionOf } from '#core/plan.ts';
import { problemOf } from '#core/placement/problem.ts';
import { Search } from '#core/placement/search.ts';
import { place } from '#core/placement/place.ts';
import { leastBy, peer } from './peer/integer-program.ts';
import { choicesOf, reduced } from './peer/reduced.ts';

/** One measurement. Times in seconds; peer and ratio are null where no peer is meaningful. */
interface Line {
	readonly bench: string;
	readonly case: string;
	readonly ours: number;
	readonly peer: number | null;
	readonly ratio: number | null;
	readonly [more: string]: string | number | null;
}

const CLIENTS = 'personas/clients';
const RUNS = 3;

function clients(): readonly (readonly [string, Case])[] {
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

/** A whole search, with the time of its first plan and of its end. */
function whole(name: string, c: Case): Line {
	const began = performance.now();
	const elapsed = () => (performance.now() - began) / 1000;
	let first: number | null = null;
	const run = placeCase(c);
	let step = run.next();
	while (!step.done) {
		if (first === null && step.value.found) first = elapsed();
		step = run.next();
	}
	const { status, nodes, evaluations } = step.value;
	return {
		bench: 'placement whole',
		case: name,
		ours: elapsed(),
		peer: null,
		ratio: null,
		first,
		status,
		nodes,
		evaluations
	};
}

/** The same reduced instance by our search and by the library, side by side. */
async function beside(name: string, c: Case): Promise<Line> {
	const solving = c.enclosure.seatWall === 'right' ? mirroredCase(c) : c;
	const { scene, rows, wanted } = questionOf(solving);
	const run = place(scene, rows, wanted);
	let step = run.next();
	// Any plan will do to cut the instance out around it.
	while (!step.done && !step.value.found) step = run.next();
	const marks = step.done ? step.value.marks : (step.value.found?.marks ?? []);
	const highs = await peer();
	const ours: number[] = [];
	const theirs: number[] = [];
	let same = true;
	for (let i = 0; i < RUNS; i++) {
		const problem = reduced(problemOf(scene, rows, wanted), marks);
		const search = new Search(problem, { until: 'proof', nodes: 1e7 });
		ours.push(seconds(() => [...search.run()]));
		let least: readonly number[] | null = null;
		theirs.push(seconds(() => (least = leastBy(highs, choicesOf(problem)))));
		same &&= JSON.stringify(least) === JSON.stringify(search.found?.cost.slice(0, 5) ?? null);
	}
	const [a, b] = [median(ours), median(theirs)];
	return {
		bench: 'placement reduced',
		case: name,
		ours: a,
		peer: b,
		ratio: b / a,
		same: same ? 'same cost' : 'other cost'
	};
}

function show(line: Line, json: boolean): void {
	if (json) {
		console.log(JSON.stringify(line));
		return;
	}
	const words = Object.entries(line).map(([key, value]) =>
		typeof value === 'number' ? `${key} ${String(Math.round(value * 1000) / 1000)}` : `${key} ${String(value)}`
	);
	console.log(words.join(', '));
}

async function placement(json: boolean): Promise<number> {
	for (const [name, c] of clients()) show(await beside(name, c), json);
	for (const [name, c] of clients()) show(whole(name, c), json);
	return 0;
}

const [name, ...options] = process.argv.slice(2);
if (name === 'placement' && options.every((o) => o === '--json')) {
	process.exitCode = await placement(options.includes('--json'));
} else {
	console.error(
		`expected the name of a bench: placement, and perhaps --json - saw "${process.argv.slice(2).join(' ')}"`
	);
	process.exitCode = 2;
}
