import { variantOf, type Accessory, type Mark, type Slot } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase, mirroredMark } from '#core/enclosure/mirrored-case.ts';
import { mirroredWall } from '#core/geometry/frame.ts';
import { alternativesOf, otherHandOf, type OtherHand } from '#core/placement/alternatives.ts';
import type { Alternative, WayOut } from '#core/placement/answer.ts';
import { changesBetween, type Changes } from '#core/placement/changes.ts';
import { compare } from '#core/placement/cost.ts';
import { priceOf } from '#core/placement/price.ts';
import type { Progress } from '#core/placement/search.ts';
import { solve, type Solve } from '#core/placement/solve.ts';
import { called, inMm } from '#core/placement/told.ts';
import { waysOutOf } from '#core/placement/ways-out.ts';
import { judge } from '#core/rules/judge.ts';
import { questionOf, turned, type Plan } from './plan.ts';

/** What is looked for once a plan is there: other plans; where there is none, ways out, and the other handing if that has one. */
export interface Further {
	readonly waysOut: readonly WayOut[];
	readonly alternatives: readonly Alternative[];
}

/** Rows the search round a mark set free may ask. Source: ours. */
const BUDGET = 5_000_000;

/** Solves questions about the room of a case as its plan is solved: in a mirror where that is, and turned back. */
function solverFor(c: Case): Solve {
	if (!turned(c)) return solve;
	const mirror = questionOf(mirroredCase(c));
	return function* ({ scene, wanted, rows }, evaluations) {
		// In the mirror hands change sides too: only where a thing may go is taken over from what is asked.
		const seen = mirror.wanted.flatMap((m): Accessory[] => {
			const asked = wanted.find((a) => a.id === m.id);
			return asked ? [{ ...m, slots: asked.slots.map(mirroredSlot) }] : [];
		});
		const there = { ...mirror.scene, c: { ...mirror.scene.c, tape: scene.c.tape } };
		const solved = yield* solve({ scene: there, rows, wanted: seen }, evaluations);
		const back = (mark: Mark): Mark[] =>
			wanted
				.filter((a) => a.id === mark.accessory.id)
				.map((accessory) => mirroredMark(mark, accessory, scene.room.footprint));
		return { ...solved, marks: solved.marks?.flatMap(back) ?? null };
	};
}

const mirroredSlot = ({ wall, variant }: Slot): Slot => ({
	wall: mirroredWall(wall),
	variant: variantOf(variant).mirror ?? variant
});

/** The case with the seat on the other side; only while nothing has a place yet. */
function otherHand(c: Case): OtherHand | null {
	const seatWall = mirroredWall(c.enclosure.seatWall);
	const other = seatWall !== c.enclosure.seatWall && c.enclosure.walls[seatWall].stands;
	if (Object.keys(c.places).length > 0 || !other) return null;
	const handed: Case = { ...c, enclosure: { ...c.enclosure, seatWall } };
	return { question: questionOf(handed), solve: solverFor(handed) };
}

/**
 * What to do next about a plan, pausing with its progress: the verified ways out when there is none, else other plans.
 * Shape: to be asked for after the plan; stop asking and nothing is lost but this.
 */
export function* furtherOf(plan: Plan): Generator<Progress, Further, undefined> {
	const { scene, wanted, rows, marks, findings, status } = plan;
	const question = { scene, wanted, rows };
	const own = solverFor(scene.c);
	const hand = otherHand(scene.c);
	if (status === 'impossible') {
		const turned = hand && (yield* otherHandOf(hand));
		const waysOut = yield* waysOutOf({ question, solve: own }, plan.clashes ?? []);
		return { waysOut: [...waysOut, ...(yield* plumbedOut(plan))], alternatives: turned ? [turned] : [] };
	}
	// Without marks there is nothing to differ from.
	if (marks.length === 0) return { waysOut: [], alternatives: [] };
	const others = yield* alternativesOf({ question, marks, findings }, own, hand);
	return { waysOut: [], alternatives: [...others, ...(yield* plumbedElse(plan))] };
}

/** A plan that counts less once one given mark may move. Shape: offered, never forced. */
export interface Better extends Changes {
	readonly accessory: string;
	readonly marks: readonly Mark[];
}

/**
 * Whether a plan with given marks would count less if one of them were free, the others staying as they are.
 * Shape: null when the mark is not given, is built, or nothing better is found within the budget.
 */
export function* betterWithout(plan: Plan, id: string): Generator<Progress, Better | null, undefined> {
	if (plan.scene.c.places[id]?.stage === 'built') return null;
	const freed = yield* without(plan, id);
	return freed?.better ? { accessory: id, marks: freed.marks, ...freed.changes } : null;
}

/** A plan with one given mark free. */
interface Freed {
	readonly marks: readonly Mark[];
	readonly changes: Changes;
	/** It counts less than the plan with that mark as given. */
	readonly better: boolean;
	readonly proved: boolean;
}

function* without(plan: Plan, id: string): Generator<Progress, Freed | null, undefined> {
	const { c } = plan.scene;
	const { [id]: given, ...places } = c.places;
	if (!given) return null;
	const free: Case = { ...c, places };
	const question = questionOf(free);
	const { marks, proved } = yield* solverFor(free)(question, BUDGET);
	if (!marks) return null;
	const findings = judge(question.scene, question.rows, marks);
	const better = compare(priceOf(findings), priceOf(plan.findings)) < 0;
	return { marks, changes: changesBetween(plan.findings, findings, marks), better, proved };
}

/** A given valve or outlet somewhere else: what a plumber would do. */
interface Plumbed extends Freed {
	readonly id: string;
	readonly name: string;
	/** Where it would be, in the words of a sentence. */
	readonly to: string;
}

/** What is given and sits on pipes, each set free alone. */
function* plumbed(plan: Plan): Generator<Progress, readonly Plumbed[], undefined> {
	const found: Plumbed[] = [];
	const given = plan.wanted.filter((a) => plan.scene.c.places[a.id]);
	for (const { id } of given.filter(({ kind }) => kind === 'control' || kind === 'outlet')) {
		const freed = yield* without(plan, id);
		const mark = freed?.marks.find((m) => m.accessory.id === id);
		if (!freed || !mark) continue;
		const { wall, x, y } = mark.place;
		const to = `on the ${wall} wall, ${inMm(x)} from its left corner, ${inMm(y)} from the datum line`;
		found.push({ ...freed, id, name: called(mark), to });
	}
	return found;
}

/** Ways out that give up nothing but where a valve or an outlet is. */
function* plumbedOut(plan: Plan): Generator<Progress, readonly WayOut[], undefined> {
	return (yield* plumbed(plan)).map(({ id, name, to, marks, proved }) => ({
		gives: [
			{
				row: PLUMBED,
				about: [id],
				says: `${name}: It stays where it is.`,
				short: null,
				next: `Have it moved: ${to}.`
			}
		],
		marks,
		proved
	}));
}

/** What moving a valve or an outlet would make better. */
function* plumbedElse(plan: Plan): Generator<Progress, readonly Alternative[], undefined> {
	return (yield* plumbed(plan))
		.filter(({ better }) => better)
		.map(({ name, to, changes, marks, proved }) => ({
			kind: 'plumbing' as const,
			says: `The ${name} moved from where it is: ${to}.`,
			...changes,
			marks,
			proved
		}));
}

/** Stands for a row where what is given up is only where something is. */
const PLUMBED = 'ROOM-AS-PLUMBED';
