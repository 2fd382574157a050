import { covariance, type Body } from '#core/body/body.ts';
import type { Side } from '#core/body/hands.ts';
import type { Dimension } from '#core/body/survey.ts';
import { EASY, type ArmSpec } from './arm.ts';
import { BEFORE_BACK } from './station.ts';

/** What a fit may move, in the order of its unknowns. Units: mm, degrees for the joints, `easy` a share of the arm. */
export const MOVABLE = ['upper', 'fore', 'up', 'ahead', 'outward', 'flexion', 'abduction', 'easy'] as const;

/** One thing a fit may move. */
export type Movable = (typeof MOVABLE)[number];

/** What is known before the points. Shape: `cov` square, in the order of MOVABLE; 0 for what was measured and stays. */
export interface Prior {
	readonly mean: readonly number[];
	readonly cov: readonly (readonly number[])[];
}

/** Source: thumbtip reach less pinch arm, ANSUR II 2012, own computation; survey sd. Units: mm. */
const AHEAD_SD = 27;
/** How far elbows lie apart in arms of one length. Units: mm. Ours, after the survey sd of upper arm and arm. */
const ELBOW_SD = 8;
/** Units: degrees. Ours; within a band of ages it is 14 to 22 (Bassey 1989), and who needs a shower planned is stiffer. */
const JOINT_SD = { measured: 0, observed: 10, told: 15, declared: 15, assumed: 30 } as const;
/** Units: share of the arm. Ours. */
const EASY_SD = 0.05;

type Lengths = 'armToGrip' | 'shoulderAboveSeat' | 'shoulderBreadth';

/** How two lengths err together; of what was measured nothing errs, it is held. */
function together(body: Body, a: Lengths, b: Lengths): number {
	const held = (name: Dimension) => body.dims[name]?.how === 'measured';
	return held(a) || held(b) ? 0 : covariance(body, a, b);
}

/** The sd of the arm to grip and of the elbow on it; `share` is how much of an error of the arm the upper arm takes. */
function elbowOf(body: Body, side: Side) {
	const { toGrip, upper } = body.arms[side];
	const own = body.person.arms[side].upperArm;
	const arm = toGrip?.how === 'measured' ? 0 : (toGrip?.sd ?? 0) ** 2;
	if (own) return { arm, share: 0, elbow: own.how === 'measured' ? 0 : (upper?.sd ?? 0) ** 2 };
	return { arm, share: (upper?.value ?? 0) / (toGrip?.value ?? 1), elbow: ELBOW_SD ** 2 };
}

/** The words for what has to be measured before points can be fitted, or null. */
export function missingFor({ dims, arms }: Body, side: Side): string | null {
	if (!arms[side].toGrip || !arms[side].upper) return 'the arm from the shoulder to a rod held in the fist';
	if (!dims.shoulderAboveSeat) return 'the shoulder above the seat';
	return dims.shoulderBreadth ? null : 'the shoulder breadth';
}

/**
 * What is known of one arm of a sitter before its points: what was measured as it is, the rest as estimated.
 * Shape: asked only where `missingFor` is null.
 */
export function priorOf(body: Body, side: Side, arm: ArmSpec): Prior {
	const { arm: v, share: s, elbow } = elbowOf(body, side);
	const { flexion, abduction } = body.person.arms[side];
	// Only an arm estimated from the body errs with the rest of it.
	const ofBody = body.arms[side].toGrip?.how === 'estimated' && body.dims.armToGrip?.how === 'estimated';
	const withArm = (name: 'shoulderAboveSeat' | 'shoulderBreadth') => (ofBody ? together(body, 'armToGrip', name) : 0);
	const [armUp, armOut] = [withArm('shoulderAboveSeat'), withArm('shoulderBreadth') / 2];
	const up = together(body, 'shoulderAboveSeat', 'shoulderAboveSeat');
	const upOut = together(body, 'shoulderAboveSeat', 'shoulderBreadth') / 2;
	const out = together(body, 'shoulderBreadth', 'shoulderBreadth') / 4;
	const joint = (how: keyof typeof JOINT_SD = 'assumed', sd?: number) =>
		how === 'measured' ? 0 : (sd ?? JOINT_SD[how]) ** 2;
	const lower = [
		[s * s * v + elbow],
		[s * (1 - s) * v - elbow, (1 - s) * (1 - s) * v + elbow],
		[s * armUp, (1 - s) * armUp, up],
		[0, 0, 0, AHEAD_SD ** 2],
		[s * armOut, (1 - s) * armOut, upOut, 0, out],
		[0, 0, 0, 0, 0, joint(flexion?.how, flexion?.sd)],
		[0, 0, 0, 0, 0, 0, joint(abduction?.how, abduction?.sd)],
		[0, 0, 0, 0, 0, 0, 0, EASY_SD ** 2]
	];
	return {
		mean: [
			arm.upper,
			arm.fore,
			body.dims.shoulderAboveSeat?.value ?? 0,
			BEFORE_BACK,
			arm.toMidline,
			arm.range.flexion,
			arm.range.abduction,
			EASY
		],
		cov: lower.map((_, i) => lower.map((_, j) => lower[Math.max(i, j)]?.[Math.min(i, j)] ?? 0))
	};
}
