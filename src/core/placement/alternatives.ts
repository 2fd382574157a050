import type { Accessory, Mark } from '#core/case/accessory.ts';
import { MEASURES } from '#core/measures/registry.ts';
import { judge } from '#core/rules/judge.ts';
import type { BoundRow, Finding } from '#core/rules/row.ts';
import type { Alternative } from './answer.ts';
import { changesBetween, type Changes } from './changes.ts';
import { compare, type Cost } from './cost.ts';
import { priceOf, shortOf } from './price.ts';
import type { Progress } from './search.ts';
import type { Question, Solve } from './solve.ts';
import { called } from './told.ts';
import { mm } from '#core/units/length.ts';

/** Rows all searches for alternatives may ask together, and one alone. Source: ours, some seconds of one core. */
const BUDGET = { all: 4_000_000, one: 1_000_000 } as const;

/** Other plans are looked for on fewer marks of the tape, so far apart at most, and on every limit. Units: mm. Source: ours. */
const APART = 26;

/** The most alternatives that are told. */
const MOST = 3;

/** One wish step, and what it must buy of the document to be worth telling. Units: mm. Source: ours. */
const STEP = 25;
const WORTH = 50;

/** A plan, and the question it answers. */
export interface Answered {
	readonly question: Question;
	readonly marks: readonly Mark[];
	readonly findings: readonly Finding[];
}

/** The same room with the seat on the other wall, where that can still be chosen. */
export interface OtherHand {
	readonly question: Question;
	readonly solve: Solve;
}

/** A question like the plan's own, with something else asked for. */
interface Other {
	readonly kind: Exclude<Alternative['kind'], 'plumbing'>;
	readonly question: Question;
	readonly solve: Solve;
	/** The question its plan is judged by. */
	readonly judged: Question;
	readonly about?: string;
}

interface Weighed {
	readonly alternative: Alternative;
	readonly price: Cost;
	readonly key: string;
}

const withSlots = (question: Question, accessory: Accessory, slots: Accessory['slots']): Question => ({
	...question,
	wanted: question.wanted.map((a) => (a === accessory ? { ...a, slots } : a))
});

/** Every accessory that may still move, on another wall, and with another part on the same one. */
function otherSlots({ question, marks }: Answered, solve: Solve): { walls: Other[]; parts: Other[] } {
	const free = marks.filter((m) => m.stage === 'proposed');
	const others = (kind: 'wall' | 'part', keep: (mark: Mark, slot: Accessory['slots'][number]) => boolean) =>
		free.flatMap((mark): Other[] => {
			const accessory = question.wanted.find((a) => a.id === mark.accessory.id);
			const slots = accessory?.slots.filter((slot) => keep(mark, slot)) ?? [];
			if (!accessory || slots.length === 0) return [];
			const asked = withSlots(question, accessory, slots);
			return [{ kind, question: asked, solve, judged: question, about: accessory.id }];
		});
	return {
		walls: others('wall', ({ place }, slot) => slot.wall !== place.wall),
		parts: others('part', ({ place }, slot) => slot.wall === place.wall && slot.variant !== place.variant)
	};
}

/** The plan's question with one wish asked 25 mm less of, for each wish near a document row that is not met. */
function lessComfort({ question, findings }: Answered, solve: Solve): Other[] {
	const missed = findings.filter((f) => f.strength === 'prefer' && f.row.origin === 'document' && shortOf(f) > 0);
	const total = missed.reduce((sum, f) => sum + shortOf(f), 0);
	if (total < WORTH && !missed.some((f) => MEASURES[f.row.measure].unit === 'yes')) return [];
	const about = new Set(missed.flatMap((f) => f.about));
	const wishes = findings.filter(
		(f) =>
			f.strength === 'should' &&
			MEASURES[f.row.measure].slope === 1 &&
			(shortOf(f) > 0 || (f.slack ?? Infinity) < STEP) &&
			f.about.some((id) => about.has(id))
	);
	return wishes.map((wish) => {
		const eased = (bound: BoundRow): BoundRow =>
			bound.row.id === wish.row.id && bound.about.join() === wish.about.join()
				? { ...bound, row: { ...bound.row, ourTolerance: (bound.row.ourTolerance ?? 0) + STEP } }
				: bound;
		const rows = question.rows.map(eased);
		return { kind: 'reference', question: { ...question, rows }, solve, judged: question };
	});
}

const slotsKey = (marks: readonly Mark[]): string =>
	marks.map(({ accessory, place }) => `${accessory.id} ${place.wall} ${place.variant}`).join();

const placesKey = (marks: readonly Mark[]): string =>
	marks.map(({ accessory, place }) => `${accessory.id} ${place.wall} ${place.variant} ${place.x} ${place.y}`).join();

/** True when giving up one step of one wish, not more, buys much of the document. */
function buysMuch(before: Cost, after: Cost): boolean {
	// Broken musts, their mm, wishes of yes or no, wish steps; then document rows of yes or no, and mm.
	const [musts, short, wishNo = 0, wish = 0, clauses = 0, mm = 0] = before;
	const [musts2, short2, wishNo2 = 0, wish2 = 0, clauses2 = 0, mm2 = 0] = after;
	if (musts !== musts2 || short !== short2 || wishNo2 > wishNo) return false;
	const steps = Math.ceil(Math.sqrt(wish)) * 2 + 1;
	return wish2 - wish <= steps && (clauses2 < clauses || (clauses2 === clauses && mm - mm2 >= WORTH));
}

function saysOf({ kind, about, judged }: Other, before: readonly Mark[], after: readonly Mark[]): string {
	const [was, is] = [before, after].map((marks) => marks.find((m) => m.accessory.id === about));
	switch (kind) {
		case 'wall':
			return was && is ? `The ${called(is)} on the ${is.place.wall} wall, not on the ${was.place.wall} wall.` : '';
		case 'part':
			return was && is ? `A ${is.variant.name} instead of the ${was.variant.name}.` : '';
		case 'handing':
			return handed(judged);
		case 'reference':
			return 'A little less comfort, and much closer to the document.';
	}
}

/** What changes; of a trade for the document the gains are the document's. */
function changesFor(
	kind: Other['kind'],
	before: readonly Finding[],
	{ findings, marks }: Pick<Answered, 'findings' | 'marks'>
): Changes {
	const changes = changesBetween(before, findings, marks);
	if (kind !== 'reference') return changes;
	const clauses = findings.filter((f) => f.strength === 'prefer');
	return { ...changes, better: changesBetween(before, clauses, marks).better };
}

/** A question whose marks lie on a coarser tape: enough to compare, and quick. */
function coarser(question: Question): Question {
	const { c } = question.scene;
	const many = Math.max(1, Math.floor(APART / c.tape.step));
	return { ...question, scene: { ...question.scene, c: { ...c, tape: { ...c.tape, step: mm(c.tape.step * many) } } } };
}

function* weigh(plan: Answered, other: Other, evaluations: number): Generator<Progress, Tried, undefined> {
	const solved = yield* other.solve(coarser(other.question), evaluations);
	if (!solved.marks || placesKey(solved.marks) === placesKey(plan.marks)) return { spent: solved.evaluations };
	// Judged by what was asked in the first place, not by what was asked to find it.
	const own = (id: string) => other.judged.wanted.find((a) => a.id === id);
	const marks = solved.marks.map((m) => ({ ...m, accessory: own(m.accessory.id) ?? m.accessory }));
	const findings = judge(other.judged.scene, other.judged.rows, marks);
	const price = priceOf(findings);
	const spent = solved.evaluations;
	const before = priceOf(plan.findings);
	if ((price[0] ?? 0) > (before[0] ?? 0)) return { spent };
	if (other.kind === 'reference' && !buysMuch(before, price)) return { spent };
	const changes = changesFor(other.kind, plan.findings, { findings, marks });
	// Another size is worth a look where it gains something.
	if (other.kind === 'part' && changes.better.length === 0) return { spent };
	const alternative: Alternative = {
		kind: other.kind,
		says: saysOf(other, plan.marks, marks),
		...changes,
		marks,
		proved: solved.proved
	};
	return { spent, found: { alternative, price, key: other.kind === 'reference' ? placesKey(marks) : slotsKey(marks) } };
}

interface Tried {
	readonly spent: number;
	readonly found?: Weighed;
}

/** What is built differently says more than another size. */
const KINDS: readonly Alternative['kind'][] = ['wall', 'handing', 'part'];

/** One trade at most; then one of a kind after the other, the cheapest first, other sizes last; each way of differing once. */
function chosen(found: readonly Weighed[]): readonly Alternative[] {
	const kindOf = (f: Weighed) => f.alternative.kind;
	const best = found.filter((f) => kindOf(f) === 'reference').toSorted(gained);
	const others = found.filter((f) => kindOf(f) !== 'reference').toSorted((a, b) => compare(a.price, b.price));
	const once = others.filter((f, i) => others.findIndex((g) => g.key === f.key) === i);
	const turn = (f: Weighed) => once.filter((g) => kindOf(g) === kindOf(f)).indexOf(f);
	const rank = (f: Weighed) => [kindOf(f) === 'part' ? 1 : 0, turn(f), KINDS.indexOf(kindOf(f))];
	const rest = once.toSorted((a, b) => compare(rank(a), rank(b)));
	return [...best.slice(0, 1), ...rest].slice(0, MOST).map((f) => f.alternative);
}

/** Which of two is closer to the document. */
const gained = (a: Weighed, b: Weighed): number =>
	compare(a.price.slice(-2), b.price.slice(-2)) || compare(a.price, b.price);

/**
 * Other plans worth a look beside one that breaks no must it need not: another wall or another part for one accessory,
 * the other handing, or a wish step given up for much of the document.
 * Shape: at most three, none of them the plan; each found by a search of its own within a common budget.
 */
export function* alternativesOf(
	plan: Answered,
	solve: Solve,
	hand: OtherHand | null
): Generator<Progress, readonly Alternative[], undefined> {
	const { walls, parts } = otherSlots(plan, solve);
	const handed: Other[] = hand ? [{ kind: 'handing', ...hand, judged: hand.question }] : [];
	const found: Weighed[] = [];
	let left: number = BUDGET.all;
	for (const other of [...walls, ...handed, ...lessComfort(plan, solve), ...parts]) {
		if (left <= 0) break;
		const tried = yield* weigh(plan, other, Math.min(BUDGET.one, left));
		left -= tried.spent;
		if (tried.found) found.push(tried.found);
	}
	return chosen(found);
}

/** The other way round as the plan where this way there is none. Shape: null where that breaks a must too. */
export function* otherHandOf({ question, solve }: OtherHand): Generator<Progress, Alternative | null, undefined> {
	const { marks, proved } = yield* solve(coarser(question), BUDGET.one);
	if (!marks || (priceOf(judge(question.scene, question.rows, marks))[0] ?? 0) > 0) return null;
	const says = handed(question);
	return { kind: 'handing', says, worse: [], better: ['There everything that must be met is met.'], marks, proved };
}

const handed = ({ scene }: Question): string =>
	`The shower the other way round: the seat on the ${scene.room.seatWall} wall.`;
