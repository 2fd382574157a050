import type { Side } from '#core/body/hands.ts';
import { quantile } from '#core/body/quantile.ts';
import { BEHIND, coneOf, type Cone, type ShoulderRange } from './shoulder.ts';

/** What a hand does at the end of the arm. */
export type ReachKind = 'grip' | 'push' | 'fingertip';

/** What an arm is made from. Units: mm and degrees. */
export interface ArmSpec {
	readonly side: Side;
	/** Acromion to elbow. */
	readonly upper: number;
	/** Elbow to the centre of a 32 mm rod in the fist. */
	readonly fore: number;
	readonly hand: number;
	readonly range: ShoulderRange;
	/** How far the elbow stays bent when straightened. */
	readonly elbowDeficit: number;
	readonly elbowFlexion: number;
	/** Only a recorded elbow is trusted to lift the hand above the line of the upper arm. */
	readonly elbow: 'recorded' | 'assumed';
	/** Standard deviation of arm to grip. */
	readonly sd: number;
	/** From the shoulder to the midline of the body. */
	readonly toMidline: number;
	/** Lifting the upper arm hurts from here, whichever way. */
	readonly hurtsFrom?: number;
	/** Reach without stretching as a share of the arm, where it was tried. Shape: at most 1. */
	readonly easy?: number;
}

/** How far an arm reaches with one kind of hand, from the shoulder. Units: mm. */
export interface Span {
	readonly outer: number;
	/** Without stretching. Shape: at most `outer`. */
	readonly easy: number;
	readonly inner: number;
	/** Elbow to the point that touches. */
	readonly fore: number;
	readonly sd: number;
}

/** A two-link arm in the shoulder's own frame; it knows no rooms. Units: mm and degrees. */
export interface Arm extends ArmSpec {
	readonly spans: Readonly<Record<ReachKind, Span>>;
	readonly cone: Cone;
	/** What of the cone does not hurt, where some of it does. */
	readonly painless?: Cone;
}

/** Ours, no source: reach without stretching as a share of the arm, where it was not tried. */
export const EASY = 0.9;

/** Shares of the hand beyond the grip, and how sure. Source: Armstrong's link model; ANSUR II 0.675, fraction tables 0.60. */
const BEYOND: Readonly<Record<ReachKind, { readonly share: number; readonly sd: number }>> = {
	grip: { share: 0, sd: 0 },
	push: { share: 0.2, sd: 0 },
	fingertip: { share: 0.65, sd: 10 }
};

const chord = (u: number, g: number, bend: number): number =>
	Math.sqrt(Math.max(0, u * u + g * g + 2 * u * g * Math.cos((bend * Math.PI) / 180)));

function spanOf(spec: ArmSpec, kind: ReachKind): Span {
	const { share, sd } = BEYOND[kind];
	const fore = spec.fore + share * spec.hand;
	const outer = chord(spec.upper, fore, spec.elbowDeficit);
	const inner = chord(spec.upper, fore, spec.elbowFlexion);
	return { outer, easy: (spec.easy ?? EASY) * outer, inner, fore, sd: Math.hypot(spec.sd, sd) };
}

const eachSpan = (of: (kind: ReachKind) => Span): Arm['spans'] => ({
	grip: of('grip'),
	push: of('push'),
	fingertip: of('fingertip')
});

/** How far an arm made from lengths reaches with every kind of hand. */
export const spansOf = (spec: ArmSpec): Arm['spans'] => eachSpan((kind) => spanOf(spec, kind));

/** The arm made from lengths and ranges. */
export function armFrom(spec: ArmSpec): Arm {
	const { range, hurtsFrom: most } = spec;
	const arm = { ...spec, spans: spansOf(spec), cone: coneOf(range) };
	if (most === undefined) return arm;
	const eased = {
		flexion: Math.min(range.flexion, most),
		abduction: Math.min(range.abduction, most),
		adduction: Math.min(range.adduction, most),
		behind: Math.min(range.behind ?? BEHIND, most)
	};
	return { ...arm, painless: coneOf(eased) };
}

/** The same arm held back to what it reaches without stretching and without pain. */
export const easyArm = (arm: Arm): Arm => ({
	...arm,
	...(arm.painless && { cone: arm.painless }),
	spans: eachSpan((kind) => ({ ...arm.spans[kind], outer: arm.spans[kind].easy }))
});

/**
 * The same arm as short as it may be with a probability, but never shorter than its easy reach.
 * Fails: RangeError outside the open range 0 to 1.
 */
export function armWithMargin(arm: Arm, probability = 0.95): Arm {
	const deviations = Math.max(0, quantile(probability));
	return {
		...arm,
		spans: eachSpan((kind) => {
			const span = arm.spans[kind];
			return { ...span, outer: Math.max(span.easy, span.outer - deviations * span.sd) };
		})
	};
}
