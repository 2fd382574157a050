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
		return { waysOut, alternatives: turned ? [turned] : [] };
	}
	// Without marks there is nothing to differ from.
	if (marks.length === 0) return { waysOut: [], alternatives: [] };
	return { waysOut: [], alternatives: yield* alternativesOf({ question, marks, findings }, own, hand) };
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
	const { c } = plan.scene;
	const { [id]: given, ...places } = c.places;
	if (!given || given.stage === 'built') return null;
	const freed: Case = { ...c, places };
	const question = questionOf(freed);
	const { marks } = yield* solverFor(freed)(question, BUDGET);
	if (!marks) return null;
	const findings = judge(question.scene, question.rows, marks);
	if (compare(priceOf(findings), priceOf(plan.findings)) >= 0) return null;
	return { accessory: id, marks, ...changesBetween(plan.findings, findings, marks) };
}
