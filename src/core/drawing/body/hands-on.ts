import type { Side } from '#core/body/hands.ts';
import type { Mark } from '#core/case/accessory.ts';
import { add, times, type Vec } from '#core/geometry/vec.ts';
import { handsOf } from '#core/measures/client.ts';
import type { Plan } from '#core/plan.ts';
import type { DrawnBody } from './drawn-body.ts';
import { armTo, goalOn, handEnd, withinSpan, type Goal } from './hand-at.ts';
import type { Limb } from './limb.ts';
import type { Stance } from './stance.ts';

/** A hand on a thing. */
export interface Hold {
	readonly side: Side;
	readonly mark: Mark;
	readonly goal: Goal;
}

export const SIDES: readonly Side[] = ['left', 'right'];

/** Every hand that may take one of some marks, with where on it, from a stance. */
export function mayHold(
	plan: Plan,
	d: DrawnBody,
	{ postures }: Pick<Stance, 'postures'>,
	marks: readonly Mark[]
): readonly Hold[] {
	return marks.flatMap((mark) =>
		handsOf(plan.scene, mark).map((side) => ({
			side,
			mark,
			goal: goalOn(d.arms[side], postures[side], mark, plan.scene.room)
		}))
	);
}

/** The one with the most to spare, up to what is enough for a hand to be at ease; of equals the first. Units: mm. */
const ENOUGH = 40;
export const bestHold = (holds: readonly Hold[]): Hold | undefined =>
	holds.reduce<Hold | undefined>(
		(best, one) => (best && Math.min(best.goal.slack, ENOUGH) >= Math.min(one.goal.slack, ENOUGH) ? best : one),
		undefined
	);

/** One hand on each of some marks: the best first, then what the other hand has on another. */
export function holdsOn(holds: readonly Hold[]): readonly Hold[] {
	const first = bestHold(holds);
	if (!first) return [];
	const second = bestHold(holds.filter((h) => h.side !== first.side && h.mark !== first.mark));
	return second ? [first, second] : [first];
}

/** Room for an elbow behind the shoulder, with a back rest and without. Units: mm. Ours. */
const BACKED = 50;
const FREE = 300;

/** The arms of somebody whose hands hold, and otherwise rest on the thigh or hang. Units and frame: mm, plan frame. */
export function armsOf(
	d: DrawnBody,
	stance: Stance,
	holds: readonly Hold[],
	rests: 'thigh' | 'hanging'
): Readonly<Record<Side, Limb>> {
	const of = (side: Side): Limb => {
		const behind = rests === 'thigh' ? BACKED : FREE;
		const [arm, posture] = [d.arms[side], stance.postures[side]];
		const hold = holds.find((h) => h.side === side);
		if (hold) return armTo(arm, posture, { at: handEnd(arm, posture, hold.goal), kind: hold.goal.kind }, behind);
		const point = rests === 'thigh' ? onThigh(stance, side) : hanging(stance, side, arm.spans.grip.outer);
		return armTo(arm, posture, { at: withinSpan(arm, posture, point), kind: 'grip' }, behind);
	};
	return { left: of('left'), right: of('right') };
}

/** On top of the thigh, some way from the knee. Ours. */
function onThigh({ legs, facing }: Stance, side: Side): Vec {
	const { root, joint } = legs[side];
	return add(add(times(root, 0.3), times(joint, 0.7)), add([0, 0, 95], times(facing, -10)));
}

const hanging = ({ postures, facing }: Stance, side: Side, long: number): Vec =>
	add(postures[side].shoulder, add([0, 0, -0.95 * long], times(facing, 0.14 * long)));
