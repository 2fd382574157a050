import type { Body } from '#core/body/body.ts';
import type { Estimate } from '#core/body/estimate.ts';
import type { Side } from '#core/body/hands.ts';
import { armFrom, type Arm } from './arm.ts';
import { ASSUMED_ADDUCTION, ASSUMED_ELBOW_FLEXION, assumedRange } from './shoulder-range.ts';

/** A joint range that was assumed because nobody recorded it. */
type AssumedJoint = 'flexion' | 'abduction' | 'adduction' | 'elbowDeficit' | 'elbowFlexion';

/** An arm as a person has it. */
export interface PersonArm extends Arm {
	/** How the arm to grip is known. */
	readonly how: Estimate['how'];
	readonly assumed: readonly AssumedJoint[];
}

/** Both arms of a person; null where the arm to grip must be measured first. */
export interface Reach {
	readonly left: PersonArm | null;
	readonly right: PersonArm | null;
}

const JOINTS: readonly AssumedJoint[] = ['flexion', 'abduction', 'adduction', 'elbowDeficit', 'elbowFlexion'];

function armOf({ person, dims, arms }: Body, side: Side): PersonArm | null {
	const { toGrip, upper, tested } = arms[side];
	if (!toGrip || !upper) return null;
	const facts = person.arms[side];
	const assumed = assumedRange(person.sex?.value, person.age?.value);
	const arm = armFrom({
		side,
		upper: upper.value,
		fore: Math.max(0, toGrip.value - upper.value),
		// A hand nobody knows adds nothing to the grip.
		hand: dims.handLength?.value ?? 0,
		range: {
			flexion: tested?.flexion ?? facts.flexion?.value ?? assumed.flexion,
			abduction: tested?.abduction ?? facts.abduction?.value ?? assumed.abduction,
			adduction: facts.adduction?.value ?? ASSUMED_ADDUCTION
		},
		elbowDeficit: facts.elbowDeficit?.value ?? 0,
		elbowFlexion: facts.elbowFlexion?.value ?? ASSUMED_ELBOW_FLEXION,
		elbow: facts.elbowFlexion || tested?.lifts ? 'recorded' : 'assumed',
		sd: toGrip.sd,
		toMidline: tested?.shoulder.outward ?? (dims.shoulderBreadth?.value ?? 0) / 2,
		...(facts.hurtsFrom && { hurtsFrom: facts.hurtsFrom.value }),
		...(tested && { easy: tested.easy })
	});
	const told: readonly AssumedJoint[] = tested?.told ?? [];
	return { ...arm, how: toGrip.how, assumed: JOINTS.filter((joint) => !facts[joint] && !told.includes(joint)) };
}

/** The arms of every body, by person. Nobody sits anywhere yet. */
export const reachOf = (bodies: Readonly<Record<string, Body>>): Readonly<Record<string, Reach>> =>
	Object.fromEntries(
		Object.entries(bodies).map(([id, body]) => [id, { left: armOf(body, 'left'), right: armOf(body, 'right') }])
	);
