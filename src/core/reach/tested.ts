import type { Body } from '#core/body/body.ts';
import type { Estimate } from '#core/body/estimate.ts';
import type { Side } from '#core/body/hands.ts';
import type { ArmLengths } from '#core/body/measured.ts';
import type { Tested, TestedJoint } from '#core/body/tested.ts';
import { mm } from '#core/units/length.ts';
import type { ArmSpec } from './arm.ts';
import { FEWEST, fitTo, type Answer, type Fitted, type LeftOut } from './fit.ts';
import { missingFor, MOVABLE, priorOf, type Movable, type Prior } from './prior.ts';
import { reachOf } from './reach.ts';
import { tapedOf, type Taped, type TestRoom } from './taped.ts';

/** A value with its standard deviation. Units: those of its dimension. */
interface Known {
	readonly value: number;
	readonly sd: number;
}

/**
 * One dimension before and after the points. Units and frame: mm, `flexion` and `abduction` in degrees, `easy` a share of
 * the arm; `up`, `ahead` and `outward` are the shoulder's, from the loaded seat, the plane of the back, the centre line.
 */
export interface Moved {
	readonly dimension: Movable | 'reach';
	readonly before: Known;
	readonly after: Known;
	/** What it rests on now: it was measured and stayed; the estimate still; or the points. */
	readonly rests: 'measured' | 'estimate' | 'points';
}

/** What the points of one hand came to. */
export interface HandTest {
	/** How many were taped. */
	readonly points: number;
	/** Why nothing was fitted; the estimate stays. */
	readonly refused?: string;
	/** In the order of arm to grip, then MOVABLE; empty where nothing was fitted. */
	readonly moved: readonly Moved[];
	readonly leftOut: readonly LeftOut[];
	/** The points show that the elbow nobody recorded lifts the hand above the line of the upper arm. */
	readonly lifts: boolean;
	/** How far each point that was kept still lies off, by id. Units: mm, + inside what is reached. */
	readonly off: Readonly<Record<string, number>>;
}

/** What the points of a person came to, by hand; a hand without points is left out. */
export type ReachTest = Readonly<Partial<Record<Side, HandTest>>>;

/** Never surer of a reach than this. Units: mm. Source: house rules of the reach test; the model errs by about 40. */
const SUREST = 20;
/** A standard deviation less than a third smaller than before: it still rests on the estimate. Ours. */
const STILL_ESTIMATE = 2 / 3;

const SIDES = ['left', 'right'] as const;

/** The mean and sd of the arm to grip: the upper arm and the rest together. */
function reachIn({ mean, cov }: Prior): Known {
	const at = (i: number, j: number) => cov[i]?.[j] ?? 0;
	const variance = at(0, 0) + 2 * at(0, 1) + at(1, 1);
	return { value: (mean[0] ?? 0) + (mean[1] ?? 0), sd: Math.sqrt(Math.max(0, variance)) };
}

const valueIn = ({ mean, cov }: Prior, i: number): Known => ({
	value: mean[i] ?? 0,
	sd: Math.sqrt(Math.max(0, cov[i]?.[i] ?? 0))
});

/** Below a thousandth of its unit nothing is left but rounding: it was held. */
const HELD = 1e-3;

function moved(dimension: Moved['dimension'], before: Known, after: Known): Moved {
	const held = before.sd < HELD;
	const rests = held ? 'measured' : after.sd > STILL_ESTIMATE * before.sd ? 'estimate' : 'points';
	return { dimension, before, after: held ? before : after, rests };
}

function movedBy(prior: Prior, fitted: Fitted): readonly Moved[] {
	const reach = moved('reach', reachIn(prior), reachIn(fitted));
	const floored = {
		...reach.after,
		sd: reach.rests === 'measured' ? reach.after.sd : Math.max(SUREST, reach.after.sd)
	};
	return [
		{ ...reach, after: floored },
		...MOVABLE.map((dimension, i) => moved(dimension, valueIn(prior, i), valueIn(fitted, i)))
	];
}

const NOTHING: Omit<HandTest, 'points' | 'refused'> = { moved: [], leftOut: [], lifts: false, off: {} };

const few = (n: number): string => (n === 1 ? '1 point is' : `${String(n)} points are`);

function refusal(body: Body, side: Side, points: readonly Taped[]): string | null {
	if (points.length < FEWEST) {
		return `${few(points.length)} too few: tape at least ${String(FEWEST)}. The estimate stays.`;
	}
	const missing = missingFor(body, side);
	return missing === null ? null : `There is no estimate to start from: measure ${missing}.`;
}

const MOST_KEPT = 64;
const kept = new Map<string, Answer>();

/** A fit is asked for again at every change of a case, most of which leave it as it is. Shape: the same figures, the same answer. */
function answered(spec: ArmSpec, prior: Prior, points: readonly Taped[]): Answer {
	const { hand, range, elbow, elbowDeficit, elbowFlexion } = spec;
	const key = JSON.stringify([hand, range, elbow, elbowDeficit, elbowFlexion, prior, points]);
	const found = kept.get(key) ?? fitTo(spec, prior, points);
	const [oldest] = kept.keys();
	if (kept.size >= MOST_KEPT && oldest !== undefined) kept.delete(oldest);
	kept.set(key, found);
	return found;
}

function handTest(body: Body, side: Side, room: TestRoom): HandTest | null {
	const points = tapedOf(body, side, room);
	if (points.length === 0) return null;
	const spec: ArmSpec | null | undefined = reachOf({ one: body })['one']?.[side];
	const refused = refusal(body, side, points);
	if (refused !== null || !spec) return { points: points.length, refused: refused ?? '', ...NOTHING };
	const prior = priorOf(body, side, spec);
	const { fitted, leftOut } = answered(spec, prior, points);
	if (fitted) {
		const { lifts, off } = fitted;
		return { points: points.length, moved: movedBy(prior, fitted), leftOut, lifts, off };
	}
	const left = points.length - leftOut.length;
	return {
		points: points.length,
		refused: `They do not go together: ${few(left)} left, too few. Tape them again. The estimate stays.`,
		...NOTHING,
		leftOut
	};
}

/** What the taped points of everybody came to, by person; nobody without points. Shape: bodies as `bodiesOf` gives them. */
export const reachTestsOf = (
	bodies: Readonly<Record<string, Body>>,
	room: TestRoom
): Readonly<Record<string, ReachTest>> =>
	Object.fromEntries(
		Object.entries(bodies).flatMap(([id, body]) => {
			const hands = SIDES.flatMap((side) => {
				const test = handTest(body, side, room);
				return test ? [[side, test] as const] : [];
			});
			return hands.length > 0 ? [[id, Object.fromEntries(hands)] as const] : [];
		})
	);

function armAfter(arm: ArmLengths, { moved: all, lifts }: HandTest): ArmLengths {
	const { toGrip, upper } = arm;
	if (all.length === 0 || !toGrip || !upper) return arm;
	const of = (dimension: Moved['dimension']) => all.find((m) => m.dimension === dimension);
	const value = (dimension: Moved['dimension']) => of(dimension)?.after.value ?? 0;
	const length = (dimension: Moved['dimension'], before: Estimate): Estimate => {
		const found = of(dimension);
		if (!found || found.rests === 'measured') return before;
		return { ...before, value: mm(found.after.value), sd: found.after.sd };
	};
	const joints: readonly TestedJoint[] = ['flexion', 'abduction'];
	const degrees = (joint: TestedJoint) => Math.min(180, Math.max(0, Math.round(value(joint) * 100) / 100));
	const tested: Tested = {
		shoulder: { ahead: mm(value('ahead')), outward: mm(value('outward')), up: mm(value('up')) },
		flexion: degrees('flexion'),
		abduction: degrees('abduction'),
		// Rounded, so that a room and its mirror image give the same figures.
		easy: Math.min(1, Math.max(0.5, Math.round(value('easy') * 1000) / 1000)),
		lifts,
		told: joints.filter((joint) => of(joint)?.rests === 'points')
	};
	return { toGrip: length('reach', toGrip), upper: length('upper', upper), tested };
}

/** The same bodies with every arm as its points make it; what was measured stays as it is. Shape: `bodies` itself where none were taped. */
export function testedBodies(
	bodies: Readonly<Record<string, Body>>,
	tests: Readonly<Record<string, ReachTest>>
): Readonly<Record<string, Body>> {
	if (Object.keys(tests).length === 0) return bodies;
	return Object.fromEntries(
		Object.entries(bodies).map(([id, body]) => {
			const { left, right } = tests[id] ?? {};
			const arms = {
				left: left ? armAfter(body.arms.left, left) : body.arms.left,
				right: right ? armAfter(body.arms.right, right) : body.arms.right
			};
			return [id, { ...body, arms }];
		})
	);
}
