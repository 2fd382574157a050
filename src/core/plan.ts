import { bodiesOf } from '#core/body/body.ts';
import type { Accessory, Mark } from '#core/case/accessory.ts';
import { asRead } from '#core/case/read-off.ts';
import { laterCase } from '#core/case/later.ts';
import type { Case } from '#core/case/record.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { canonical } from '#core/log/canonical.ts';
import { sha256Hex } from '#core/log/digest.ts';
import type { Scene } from '#core/measures/scene.ts';
import { laterToo, wantedFor } from '#core/needs/wanted.ts';
import type { Placed, Probes } from '#core/placement/answer.ts';
import { mirroredCase, mirroredMark } from '#core/enclosure/mirrored-case.ts';
import { place } from '#core/placement/place.ts';
import { probe } from '#core/placement/probe.ts';
import type { Progress } from '#core/placement/search.ts';
import { reachOf } from '#core/reach/reach.ts';
import { reachTestsOf, testedBodies } from '#core/reach/tested.ts';
import { bind, bindLater } from '#core/rules/bind.ts';
import { mustBeSigned } from '#core/rules/departures.ts';
import { judge } from '#core/rules/judge.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import type { BoundRow, Finding } from '#core/rules/row.ts';
import { backingNeeded, type NeededBacking } from '#core/structure/backing.ts';
import { betterOnLegs, carryingOf } from '#core/structure/carrying.ts';
import { demandOf } from '#core/structure/demand.ts';

/** What a case asks for, before anything has a place: the scene, what is wanted, and the rows with their strengths. */
export interface Question {
	readonly scene: Scene;
	readonly wanted: readonly Accessory[];
	/** What is wanted and has no wall it could go to. */
	readonly nowhere: readonly Accessory[];
	readonly rows: readonly BoundRow[];
	/** Rows that are only told: of documents not chosen, and advice. They place nothing and ask nothing. */
	readonly others: readonly BoundRow[];
}

/** Everything computed from one case. Shape: the same case gives the same plan. */
export interface Plan extends Question, Placed {
	readonly findings: readonly Finding[];
	/** What the rows say of these marks that are only told. */
	readonly told: readonly Finding[];
	/** What must be added behind the walls for these marks, where it may be. */
	readonly backing: readonly NeededBacking[];
	readonly probes: Probes;
	/** Settled, or provisional because something about wall, room or body is not known. */
	readonly basis: 'settled' | 'provisional';
	/** SHA-256 of the case in canonical form, real parts that were read off in the places given for them. */
	readonly digest: string;
}

/** The question a case puts. Shape: pure and quick; no place is looked for. */
export function questionOf(recorded: Case): Question {
	const c = asRead(recorded);
	const after = laterCase(c);
	const [now, later] = [sceneOf(c), after && sceneOf(after)];
	const packs = packsFor(c.reference);
	const asked = wantedFor(packs, c, now.bodies, betterOnLegs(now.holds));
	const wanted =
		after && later ? laterToo(asked, wantedFor(packs, after, later.bodies, betterOnLegs(later.holds)), c) : asked;
	const placed = wanted.filter((a) => a.slots.length > 0);
	const rows = bind(
		packs,
		placed.filter((a) => a.when !== 'later'),
		c
	);
	const all = after ? [...rows, ...bindLater(packs, placed, after, rows)] : rows;
	return {
		scene: { ...now, ...(later && { later }) },
		wanted: placed,
		nowhere: wanted.filter((a) => a.slots.length === 0),
		rows: all.filter(({ strength }) => strength !== 'reported'),
		others: all.filter(({ strength, later: then }) => strength === 'reported' && !then)
	};
}

function sceneOf(c: Case): Scene {
	const room = roomOf(c.enclosure);
	const estimated = bodiesOf(c.people);
	const bodies = testedBodies(estimated, reachTestsOf(estimated, room));
	const arms = reachOf(bodies);
	return { c, bodies, arms, room, holds: carryingOf(room, c, demandOf(c)) };
}

/** Provisional while something that counts is not known of wall, room or body, or waits for an answer. */
export function basisOf({ c, room }: Scene, findings: readonly Finding[]): Plan['basis'] {
	const open = room.unknowns.length > 0 || findings.some((f) => f.answer === 'unknown' || mustBeSigned(c, f));
	return open ? 'provisional' : 'settled';
}

/** A plan from its question and the places found for it: judged and explained. */
export function planFrom(question: Question, placed: Placed): Plan {
	const { scene, rows, others } = question;
	const findings = judge(scene, rows, placed.marks);
	return {
		...question,
		...placed,
		findings,
		told: judge(scene, others, placed.marks),
		backing: backingNeeded(scene, placed.marks),
		probes: probe(question, placed.marks, findings),
		basis: basisOf(scene, findings),
		digest: sha256Hex(canonical(scene.c))
	};
}

/**
 * Whether a room is solved in a mirror: with the seat on the right, or the wall beside the entry on the left; where the
 * room itself has no hand, by whichever record comes first. Shape: never true of both a case and its mirror image.
 */
export function turned(c: Case): boolean {
	const { seatWall, frontWall, walls } = c.enclosure;
	if (seatWall === 'left' || seatWall === 'right') return seatWall === 'right';
	if (walls.front.stands && frontWall) return frontWall.side === 'left';
	return canonical(mirroredCase(c)) < canonical(c);
}

/** The places for a case, pausing with its progress; a room and its mirror image are solved as one. */
export function* placeCase(c: Case): Generator<Progress, Placed, undefined> {
	const { wanted } = questionOf(c);
	const mirror = turned(c);
	const solved = questionOf(mirror ? mirroredCase(c) : c);
	const placed = yield* place(solved.scene, solved.rows, solved.wanted);
	if (!mirror) return placed;
	const { footprint } = solved.scene.room;
	const back = (mark: Mark): Mark[] =>
		wanted.filter((a) => a.id === mark.accessory.id).map((accessory) => mirroredMark(mark, accessory, footprint));
	return { ...placed, marks: placed.marks.flatMap(back) };
}

/** The plan for a case, in one go. */
export function planCase(c: Case): Plan {
	const run = placeCase(c);
	let step = run.next();
	while (!step.done) step = run.next();
	return planFrom(questionOf(c), step.value);
}
