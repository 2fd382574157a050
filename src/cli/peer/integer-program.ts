import loadHighs, { type Highs } from 'highs';

/** One place an unknown may take: its height for lines, and what it costs alone, part by part. */
export interface Choice {
	readonly y: number;
	readonly parts: readonly number[];
}

/** A placement problem written out: every place of every unknown that breaks no must alone. */
export interface Choices {
	readonly unknowns: readonly { readonly line?: string | undefined; readonly places: readonly Choice[] }[];
	/** What two places cost together, part by part; null when they break a must. */
	readonly pair: (i: number, p: number, j: number, q: number) => readonly number[] | null;
}

const PARTS = 5;

interface Program {
	readonly rows: readonly string[];
	/** The terms of each part of the cost. */
	readonly costs: readonly (readonly string[])[];
	readonly binaries: readonly string[];
}

const x = (i: number, p: number): string => `x${String(i)}_${String(p)}`;

const sumOf = (terms: readonly string[]): string => (terms.length ? terms.join(' + ') : '0 none');

/** Pairs of places as a transport between the two unknowns: exact for places, and tight between them. */
function pairOf({ unknowns, pair }: Choices, i: number, j: number): Pick<Program, 'rows' | 'costs'> {
	const [a, b] = [unknowns[i]?.places ?? [], unknowns[j]?.places ?? []];
	const costs: string[][] = Array.from({ length: PARTS }, () => []);
	const of = a.map((_, p) => b.map((__, q) => pair(i, p, j, q)));
	const free = of.every((row) => row.every((parts) => parts?.every((part) => part === 0)));
	if (free) return { rows: [], costs };
	const name = (p: number, q: number) => `y${String(i)}_${String(p)}_${String(j)}_${String(q)}`;
	const allowed = (p: number, q: number): string[] => (of[p]?.[q] ? [name(p, q)] : []);
	of.forEach((row, p) => {
		row.forEach((parts, q) => {
			parts?.forEach((part, k) => part > 0 && costs[k]?.push(`${String(part)} ${name(p, q)}`));
		});
	});
	return {
		rows: [
			...a.map((_, p) => `${sumOf(b.flatMap((__, q) => allowed(p, q)))} - ${x(i, p)} = 0`),
			...b.map((_, q) => `${sumOf(a.flatMap((__, p) => allowed(p, q)))} - ${x(j, q)} = 0`)
		],
		costs
	};
}

function programOf(choices: Choices): Program {
	const { unknowns } = choices;
	const rows = unknowns.map(({ places }, i) => `${sumOf(places.map((_, p) => x(i, p)))} = 1`);
	const costs: string[][] = Array.from({ length: PARTS }, (_, k) =>
		unknowns.flatMap(({ places }, i) =>
			places.flatMap(({ parts }, p) => ((parts[k] ?? 0) > 0 ? [`${String(parts[k])} ${x(i, p)}`] : []))
		)
	);
	unknowns.forEach(({ line }, i) => {
		unknowns.slice(i + 1).forEach((other, past) => {
			const j = i + 1 + past;
			const pair = pairOf(choices, i, j);
			rows.push(...pair.rows);
			pair.costs.forEach((terms, k) => costs[k]?.push(...terms));
			if (line !== undefined && line === other.line) rows.push(...oneHeight(choices, i, j));
		});
	});
	return { rows, costs, binaries: unknowns.flatMap(({ places }, i) => places.map((_, p) => x(i, p))) };
}

function oneHeight({ unknowns }: Choices, i: number, j: number): string[] {
	const at = (k: number, y: number): string[] =>
		(unknowns[k]?.places ?? []).flatMap((place, p) => (place.y === y ? [x(k, p)] : []));
	const heights = new Set([i, j].flatMap((k) => (unknowns[k]?.places ?? []).map(({ y }) => y)));
	return [...heights].map((y) => `${sumOf(at(i, y))} - ${at(j, y).join(' - ') || '0 none'} = 0`);
}

/** The solver of integer programs, loaded once. Source: HiGHS 1.15, MIT, through the npm package of that name. */
export const peer = (): Promise<Highs> => loadHighs();

/**
 * The least cost of a problem by an integer-programming library, one part after the other, each kept at its best.
 * Shape: five parts; null when no choice breaks no must.
 * Fails: throws when the library ends any other way, so that its giving up is not taken for there being no answer.
 */
export function leastBy(highs: Pick<Highs, 'solve'>, choices: Choices): readonly number[] | null {
	if (choices.unknowns.some(({ places }) => places.length === 0)) return null;
	const { rows, costs, binaries } = programOf(choices);
	const kept: string[] = [];
	const least: number[] = [];
	for (const terms of costs) {
		const model = [
			'Minimize',
			` cost: ${sumOf(terms)}`,
			'Subject To',
			...[...rows, ...kept].map((row, n) => ` r${String(n)}: ${row}`),
			'Binary',
			...binaries.map((name) => ` ${name}`),
			'End'
		].join('\n');
		const { Status, ObjectiveValue } = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 });
		if (Status === 'Infeasible' && least.length === 0) return null;
		if (Status !== 'Optimal') throw new Error(`the library ended with "${Status}" at part ${String(least.length)}`);
		const best = Math.round(ObjectiveValue);
		least.push(best);
		if (terms.length > 0) kept.push(`${sumOf(terms)} <= ${String(best + 0.25)}`);
	}
	return least;
}
