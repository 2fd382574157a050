import type { Mark } from '#core/case/accessory.ts';
import { leansOf } from '#core/measures/lean-need.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Scene } from '#core/measures/scene.ts';
import { judge } from '#core/rules/judge.ts';
import type { BoundRow, Finding } from '#core/rules/row.ts';
import { backingFor, type NeededBacking } from '#core/structure/backing.ts';
import type { Clash, GivenUp, WayOut } from './answer.ts';
import { compare } from './cost.ts';
import { shortOf } from './price.ts';
import type { Progress } from './search.ts';
import type { Question, Solve } from './solve.ts';
import { called, inMm } from './told.ts';
import { sameRow } from './worse.ts';

/** Rows all searches for ways out may ask together, and one alone. Source: ours, some seconds of one core. */
const BUDGET = { all: 4_000_000, one: 1_000_000 } as const;

/** The most ways out that are told. */
const MOST = 5;

const keyOf = (row: string, about: readonly string[]): string => `${row}/${about.join('+')}`;

const keyFor = ({ row, about }: BoundRow | Finding): string => keyOf(row.id, about);

/** The musts, those of some keys counted in mm instead; nothing weaker plays a part. */
function relaxed(rows: readonly BoundRow[], soft: ReadonlySet<string>): readonly BoundRow[] {
	return rows.filter((r) => r.strength === 'must').map((r) => (soft.has(keyFor(r)) ? { ...r, strength: 'prefer' } : r));
}

/** The backing that would hold, in a sentence. Units and frame: mm, wall frame, height from the datum. */
function added({ wall, rect, thickness, how }: NeededBacking): string {
	if (thickness === undefined) return how;
	const { x0, x1, y0, y1 } = rect;
	const along = `between ${inMm(x0)} and ${inMm(x1)} from its left corner`;
	const up = `from ${inMm(y0)} to ${inMm(y1)} from the datum line`;
	return `Add backing ${inMm(thickness)} thick behind the ${wall} wall, ${along}, ${up}. ${how}`;
}

/** What somebody can do next about a reach that falls short. */
function bridged(scene: Scene, marks: readonly Mark[], finding: Finding): string {
	const lean = leansOf(scene, marks).find((l) => l.accessory === finding.about[0] && l.degrees !== null);
	const gap = figureless(finding) ? 'it' : inMm(shortOf(finding));
	const ways = 'leaning with a hand that holds, sitting further forward, the other hand, or a helper';
	return `${lean ? `${lean.says} ` : ''}Watch what bridges ${gap}: ${ways}.`;
}

/** What somebody can do next about a wall that does not carry. */
function backed(scene: Scene, marks: readonly Mark[], mark: Mark | undefined): string {
	if (!mark) return 'Ask what is behind the wall.';
	const needed = backingFor(scene, marks).filter((one) => one.marks.includes(mark.accessory.id));
	if (needed.length === 0) {
		// No board is reckoned for what holds light things only.
		return `Add backing behind the ${mark.place.wall} wall there, any board will do, or put the ${called(mark)} on a stud.`;
	}
	const instead =
		mark.variant.kind === 'seat' ? 'a seat that stands on the floor' : 'a post, or another place to wash from';
	return `${needed.map(added).join(' ')} Or choose ${instead}.`;
}

/** What somebody can do next about a row that is given up. */
function nextStep(scene: Scene, marks: readonly Mark[], finding: Finding): string {
	const { row, about } = finding;
	const mark = marks.find((m) => m.accessory.id === about[0]);
	const thing = mark ? called(mark) : 'part';
	// What a wall carries is asked for by documents too.
	if (row.origin === 'wall' || row.measure.startsWith('carries')) return backed(scene, marks, mark);
	if (row.origin === 'body' && row.measure.includes('reach')) return bridged(scene, marks, finding);
	if (row.origin === 'body') return `Measure again; if it stays so, choose another ${thing}.`;
	if (row.origin === 'document') {
		const by = figureless(finding) ? '' : ` by ${inMm(shortOf(finding))}`;
		return `Record a departure from ${row.document} ${row.edition}, ${row.clause}${by} with its reason, if it is right for this person.`;
	}
	return `Choose a smaller ${thing}, or another wall for it.`;
}

/** True when how far a row falls short says nothing: yes or no, or there is no such place at all. */
const figureless = ({ row, measured, slack }: Finding): boolean =>
	MEASURES[row.measure].unit === 'yes' || slack === undefined || measured === undefined;

function givenUp(scene: Scene, marks: readonly Mark[], finding: Finding): GivenUp {
	const { row, about } = finding;
	const names = about.flatMap((id) => marks.find((m) => m.accessory.id === id) ?? []).map(called);
	return {
		row: row.id,
		about,
		says: `${names.join(' and ')}: ${row.says}`,
		short: figureless(finding) ? null : shortOf(finding),
		next: nextStep(scene, marks, finding)
	};
}

/** What a way out gives up, to be compared: rows of yes or no, mm, how many rows. */
const weightOf = ({ gives }: WayOut): readonly number[] => [
	gives.filter((g) => g.short === null).length,
	gives.reduce((sum, g) => sum + (g.short ?? 0), 0),
	gives.length
];

/** The question that has no plan, and who solves one like it. */
interface Asked {
	readonly question: Question;
	readonly solve: Solve;
}

/** Everything that steers, with what is given up set aside as far as it is, and no further. */
function eased(rows: readonly BoundRow[], gives: readonly Finding[]): readonly BoundRow[] {
	return rows.flatMap((bound) => {
		const up = gives.find((f) => sameRow(f, bound));
		if (!up) return [bound];
		if (figureless(up)) return [];
		const ourTolerance = (bound.row.ourTolerance ?? 0) + Math.ceil(shortOf(up));
		return [{ ...bound, row: { ...bound.row, ourTolerance } }];
	});
}

/** A plan with some rows counted in mm instead of as musts, and what it gives up; no way when the search finds none. */
function* wayWith({ question, solve }: Asked, soft: ReadonlySet<string>): Generator<Progress, Tried, undefined> {
	const { scene, rows } = question;
	const musts = rows.filter((r) => r.strength === 'must' && soft.has(keyFor(r)));
	const broken = (marks: readonly Mark[]) => judge(scene, musts, marks).filter((f) => shortOf(f) > 0);
	const least = yield* solve({ ...question, rows: relaxed(rows, soft) }, BUDGET.one);
	if (!least.marks) return { spent: least.evaluations };
	// Nothing weaker had a say so far: where things go for comfort's sake is looked for once it is known what is given up.
	const kind = yield* solve({ ...question, rows: eased(rows, broken(least.marks)) }, BUDGET.one);
	const marks = kind.marks ?? least.marks;
	const gives = broken(marks).map((f) => givenUp(scene, marks, f));
	return { spent: least.evaluations + kind.evaluations, way: { gives, marks, proved: least.proved } };
}

interface Tried {
	readonly spent: number;
	readonly way?: WayOut;
}

/**
 * What to give up for a plan: every member of every clash; all that the document, the wall, the body or the room asks,
 * one of them at a time; each member alone. The other clashes are given up wherever that says nothing of them.
 */
function softened(rows: readonly BoundRow[], clashes: readonly Clash[]): readonly ReadonlySet<string>[] {
	const musts = rows.filter((r) => r.strength === 'must');
	const clashing = clashes.map((clash) => clash.rows.map((r) => keyOf(r.row, r.about)));
	const freed = (keys: readonly string[]) =>
		new Set([...keys, ...clashing.filter((own) => !own.some((key) => keys.includes(key))).flat()]);
	const origins = [...new Set(musts.map((r) => r.row.origin))];
	const byOrigin = origins.map((origin) => musts.filter((r) => r.row.origin === origin).map(keyFor));
	return [
		new Set(clashing.flat()),
		...byOrigin.filter((keys) => clashing.some((own) => own.some((key) => keys.includes(key)))).map(freed),
		...clashing.flat().map((key) => freed([key]))
	];
}

/**
 * The cheapest ways out of clashes: which rows are given up, by how much, and what to do next about each.
 * Shape: each is a plan a search has found, every must not named in it met; what gives up least comes first, yes/no
 * rows before mm. One that gives up all that another does, and more, is left out.
 */
export function* waysOutOf(asked: Asked, clashes: readonly Clash[]): Generator<Progress, readonly WayOut[], undefined> {
	const found: WayOut[] = [];
	let left: number = BUDGET.all;
	for (const soft of softened(asked.question.rows, clashes)) {
		if (left <= 0) break;
		const { way, spent } = yield* wayWith(asked, soft);
		left -= spent;
		if (way && way.gives.length > 0) found.push(way);
	}
	const named = (way: WayOut) => way.gives.map((g) => keyOf(g.row, g.about));
	const ordered = found.toSorted((a, b) => compare(weightOf(a), weightOf(b)));
	return ordered
		.filter((way, i) => {
			const own = named(way);
			return !ordered.some(
				(other, j) =>
					j !== i && named(other).every((key) => own.includes(key)) && (named(other).length < own.length || j < i)
			);
		})
		.slice(0, MOST);
}
