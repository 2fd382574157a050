import type { Mark } from '../case/accessory.ts';
import { toPlan } from '../geometry/frame.ts';
import { less, type Vec } from '../geometry/vec.ts';
import { armWithMargin, type Arm, type ReachKind, type Side } from '../reach/arm.ts';
import type { PersonArm } from '../reach/reach.ts';
import { slack, type Posture } from '../reach/slack.ts';
import type { Room } from '../enclosure/room.ts';

/** One hand ready to be asked: the arm as it is, as short and as long as it may be, and every posture it works from. */
export interface Hand {
	readonly side: Side;
	readonly arm: PersonArm;
	readonly shorter: Arm;
	readonly longer: Arm;
	readonly postures: readonly Posture[];
}

/** Where a hand works or holds, from end to end; both ends are one point for a control. Units and frame: mm, plan. */
export interface Target {
	readonly from: Vec;
	readonly to: Vec;
	readonly kind: ReachKind;
}

// One-sided 95 % of a normal spread.
const DEVIATIONS = 1.645;

/** A hand with the spread of its arm. Shape: a recorded arm counts as it is. */
export function handOf(arm: PersonArm, postures: readonly Posture[]): Hand {
	const open = arm.how === 'estimated';
	return {
		side: arm.side,
		arm,
		shorter: open ? armWithMargin(arm) : arm,
		longer: open ? lengthened(arm) : arm,
		postures
	};
}

function lengthened(arm: PersonArm): Arm {
	const { grip, push, fingertip } = arm.spans;
	const more = (span: Arm['spans']['grip']) => ({ ...span, outer: span.outer + DEVIATIONS * span.sd });
	return { ...arm, spans: { grip: more(grip), push: more(push), fingertip: more(fingertip) } };
}

/** What a hand is to reach of a mark: a lever is pushed, everything else is gripped. Units and frame: mm, plan frame. */
export function targetOf({ place, variant }: Mark, room: Room): Target {
	const { grip, gripOff, kind } = variant;
	const at = (x: number, y: number): Vec => toPlan(place.wall, [place.x + x, place.y + y], gripOff, room.footprint);
	if (variant.diameter > 0) return { from: at(grip.x0, grip.y0), to: at(grip.x1, grip.y1), kind: 'grip' };
	const middle = at((grip.x0 + grip.x1) / 2, (grip.y0 + grip.y1) / 2);
	return { from: middle, to: middle, kind: kind === 'control' ? 'push' : 'grip' };
}

/**
 * The most slack an arm has on a target from any posture; of a bar, on the point nearest to the shoulder or on an end.
 * Units: mm. Shape: slope at most 1 in the target.
 */
export function most(arm: Arm, postures: readonly Posture[], { from, to, kind }: Target): number {
	const { outer } = arm.spans[kind];
	const along = less(to, from);
	const length = Math.hypot(along[0], along[1], along[2]);
	let best = -Infinity;
	for (const posture of postures) {
		const near = length > 0 ? nearest(from, along, posture.shoulder) : from;
		best = better(arm, posture, { point: near, kind, outer, best });
		if (length === 0) continue;
		best = better(arm, posture, { point: from, kind, outer, best });
		best = better(arm, posture, { point: to, kind, outer, best });
	}
	return best;
}

interface Try {
	readonly point: Vec;
	readonly kind: ReachKind;
	readonly outer: number;
	readonly best: number;
}

/** Slack is never more than what is left of the arm: most postures of a fan are passed over by that. */
function better(arm: Arm, posture: Posture, { point, kind, outer, best }: Try): number {
	const { shoulder } = posture;
	const [x, y, z] = [point[0] - shoulder[0], point[1] - shoulder[1], point[2] - shoulder[2]];
	if (outer - Math.sqrt(x * x + y * y + z * z) <= best) return best;
	return Math.max(best, slack(arm, posture, point, kind));
}

function nearest(from: Vec, along: Vec, to: Vec): Vec {
	const square = along[0] * along[0] + along[1] * along[1] + along[2] * along[2];
	const offset = along[0] * (to[0] - from[0]) + along[1] * (to[1] - from[1]) + along[2] * (to[2] - from[2]);
	const share = Math.min(1, Math.max(0, offset / square));
	return [from[0] + share * along[0], from[1] + share * along[1], from[2] + share * along[2]];
}
