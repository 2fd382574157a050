import type { Estimate } from '#core/body/estimate.ts';
import type { Case, Person } from '#core/case/record.ts';
import { compare } from '#core/placement/cost.ts';
import { counted, shortOf } from '#core/placement/price.ts';
import { clauseOf } from '#core/placement/told.ts';
import { sameRow } from '#core/placement/worse.ts';
import { judge } from '#core/rules/judge.ts';
import { STRENGTHS, type Finding, type Row } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import { questionOf, type Plan } from './plan.ts';

/** A length of somebody that was estimated: what measuring it could move. Units: mm. */
export interface Worth {
	readonly person: string;
	/** Where the record would keep it, from the person on. */
	readonly path: readonly string[];
	/** Between these it lies for nine people in ten like this one: the 5th and the 95th percentile. */
	readonly low: number;
	readonly high: number;
	/** Rows that answer otherwise at one of the two than they do now, strongest first. */
	readonly rows: readonly Row[];
	/** The strongest of them in a sentence that names its mark. Lengths in mm, for `onTape`. */
	readonly says: string;
}

/** The most lengths that are named: who measures has one visit. */
const MOST = 5;

/** Standard deviations from the middle to the 5th and to the 95th percentile. Source: normal distribution. */
const TAIL = 1.645;

/** Lengths that can be taken with a tape, by where a person keeps them. */
const TAPED = [
	'stature',
	'armSpan',
	'kneeHeight',
	'sittingHeight',
	'forearmToGrip',
	'handLength',
	'shoulderStanding',
	'wristStanding',
	'shoulderAboveSeat',
	'popliteal',
	'buttockPopliteal',
	'shoulderBreadth',
	'hipBreadth'
] as const;

const SIDES = ['left', 'right'] as const;

/**
 * What is estimated of the people of a plan, what could move most first: the marks as they are, judged with each length at its
 * 5th and at its 95th percentile, all other estimates following it.
 * Shape: at most five, only lengths at which some row that steers answers otherwise; no place is looked for.
 */
export function worthMeasuring(plan: Plan): readonly Worth[] {
	const run = weighing(plan);
	let step = run.next();
	while (!step.done) step = run.next();
	return step.value;
}

/** The same, pausing after each length. */
export function* weighing(plan: Plan): Generator<undefined, readonly Worth[], undefined> {
	const found: Weighed[] = [];
	for (const asked of estimatesOf(plan)) {
		found.push(...weighed(plan, plan.scene.c, asked));
		yield;
	}
	return found
		.toSorted((a, b) => compare(b.moves, a.moves))
		.slice(0, MOST)
		.map(({ person, path, low, high, rows, says }) => ({ person, path, low, high, rows, says }));
}

const estimatesOf = ({ scene: { bodies } }: Plan): readonly Asked[] =>
	Object.values(bodies).flatMap((body): Asked[] => {
		const of = (path: readonly string[], estimate: Estimate | undefined): Asked[] =>
			estimate?.how === 'estimated' ? [{ person: body.id, path, estimate }] : [];
		return [
			...TAPED.flatMap((name) => of(['body', name], body.dims[name])),
			...SIDES.flatMap((side) => of(['arms', side, 'toGrip'], body.arms[side].toGrip))
		];
	});

interface Weighed extends Worth {
	/** How many rows answer otherwise, then how much more or less they count, strength by strength. */
	readonly moves: readonly number[];
}

interface Asked {
	readonly person: string;
	readonly path: readonly string[];
	readonly estimate: Estimate;
}

function weighed(plan: Plan, c: Case, { person, path, estimate: { value, sd } }: Asked): Weighed[] {
	const [low, high] = [value - TAIL * sd, value + TAIL * sd];
	const ends = [low, high].map((n) => judgedAt(plan, c, { person, path, value: n }));
	const moved = ends.flatMap((findings) => findings.flatMap((is) => changed(plan.findings, is)));
	if (moved.length === 0) return [];
	const moves = STRENGTHS.flatMap((strength) => {
		const own = moved.filter(({ is }) => is.strength === strength);
		return [own.length, own.reduce((sum, { by }) => sum + by, 0)];
	});
	const strongest = moved.toSorted((a, b) => STRENGTHS.indexOf(a.is.strength) - STRENGTHS.indexOf(b.is.strength));
	const rows = [...new Set(strongest.map(({ is }) => is.row))];
	return [{ person, path, low, high, rows, says: saying(plan, strongest[0]?.is), moves }];
}

function saying({ marks }: Plan, finding: Finding | undefined): string {
	if (!finding) return '';
	const [subject] = finding.about;
	const clause = clauseOf(
		finding,
		marks.filter(({ accessory }) => accessory.id === subject)
	);
	return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}

/** What the rows say of the marks of a plan once a length is so. Shape: nothing where such a body is refused an estimate. */
function judgedAt(
	plan: Plan,
	c: Case,
	at: { person: string; path: readonly string[]; value: number }
): readonly Finding[] {
	const person = c.people[at.person];
	if (!person) return [];
	const people = { ...c.people, [at.person]: withLength(person, at.path, at.value) };
	const { scene, rows } = questionOf({ ...c, people });
	return scene.bodies[at.person]?.refusal ? [] : judge(scene, rows, plan.marks);
}

function withLength(person: Person, [group, ...rest]: readonly string[], value: number): Person {
	const fact = { value: mm(value), how: 'measured' as const };
	const [name = '', part = ''] = rest;
	if (group === 'body') return { ...person, body: { ...person.body, [name]: fact } };
	const side = name === 'left' ? 'left' : 'right';
	return { ...person, arms: { ...person.arms, [side]: { ...person.arms[side], [part]: fact } } };
}

/** A finding that steers and answers otherwise than before, or counts for more or less, with by how much. */
function changed(before: readonly Finding[], is: Finding): readonly { readonly is: Finding; readonly by: number }[] {
	if (is.strength === 'tie-break') return [];
	const was = before.find((one) => sameRow(one, is));
	if (!was) return [];
	const by = Math.abs(counted(is, shortOf(is)) - counted(was, shortOf(was)));
	return was.answer !== is.answer || by > 0 ? [{ is, by }] : [];
}
