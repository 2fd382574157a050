import type { Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import { add, dot, leftOf, less, size, times, type Vec } from '#core/geometry/vec.ts';
import { targetOf } from '#core/measures/hand.ts';
import type { Arm, ReachKind } from '#core/reach/arm.ts';
import { slack, type Posture } from '#core/reach/slack.ts';
import { limb, type Limb } from './limb.ts';

/** Where a hand goes. Units and frame: mm, plan frame. */
export interface Goal {
	readonly at: Vec;
	readonly kind: ReachKind;
	/** What is left of the arm there; below 0 the hand stops short by so much. */
	readonly slack: number;
}

const PIECES = 24;
/** Where a hand holds best, as shares of the arm ahead of the shoulder and below it. Ours. */
const BEST = { ahead: 0.55, below: 0.4 };

/**
 * The point of a mark a hand takes: of a bar, of those it reaches, the one nearest to before the chest; with none in reach the one it
 * comes nearest to.
 */
export function goalOn(arm: Arm, posture: Posture, mark: Mark, room: Room): Goal {
	const { from, to, kind } = targetOf(mark, room);
	const goal = (at: Vec): Goal => ({ at, kind, slack: slack(arm, posture, at, kind) });
	if (from === to) return goal(from);
	const long = arm.spans[kind].outer;
	const ideal = add(posture.shoulder, add(times(posture.forward, BEST.ahead * long), [0, 0, -BEST.below * long]));
	const goals = Array.from({ length: PIECES + 1 }, (_, i) => goal(add(from, times(less(to, from), i / PIECES))));
	const near = (g: Goal): number => size(less(g.at, ideal));
	const better = (a: Goal, b: Goal): Goal => {
		if (a.slack >= 0 && b.slack >= 0) return near(b) < near(a) ? b : a;
		return b.slack > a.slack ? b : a;
	};
	return goals.reduce(better);
}

const STEP = 0.01;
const TRIES = 40;
const NEAR = 0.01;

/**
 * Where a hand ends that goes for a point: there, or as near as the arm and its joints let it, at full stretch.
 * Units and frame: mm, plan frame. Shape: never beyond the arm; short by exactly what the slack lacks where one limit stops it.
 */
export function handEnd(arm: Arm, posture: Posture, { at, kind }: Goal): Vec {
	let hand = at;
	for (let i = 0; i < TRIES; i++) {
		const left = slack(arm, posture, hand, kind);
		if (left >= -NEAR) break;
		// The slack is a distance: its slope points to where the hand still gets.
		hand = add(hand, times(uphill(arm, posture, { at: hand, kind }), -left));
	}
	return hand;
}

function uphill(arm: Arm, posture: Posture, { at, kind }: Pick<Goal, 'at' | 'kind'>): Vec {
	const slope = (by: Vec): number =>
		(slack(arm, posture, add(at, by), kind) - slack(arm, posture, less(at, by), kind)) / (2 * STEP);
	const way: Vec = [slope([STEP, 0, 0]), slope([0, STEP, 0]), slope([0, 0, STEP])];
	const long = size(way);
	return long < 1e-6 ? [0, 0, 0] : times(way, 1 / long);
}

/** Elbows hang: below the line to the hand, a little back and out. Ours. */
const ELBOW = { below: 1, back: 0.35, out: 0.25 };
/** An elbow that would go too far back is lifted to the side by such steps, at most so far. Units: degrees. Ours. */
const LIFT = { step: 5, most: 80 };

/**
 * The arm of somebody whose hand is at a point: the elbow hangs, or is lifted to the side where it would go too far back.
 * Units and frame: mm, plan frame; `behind` is how far back of the shoulder there is room. Shape: links as long as the arm's own.
 */
export function armTo(
	arm: Arm,
	{ shoulder, forward, side }: Posture,
	hand: { readonly at: Vec; readonly kind: ReachKind },
	behind: number
): Limb {
	const outward = times(leftOf(forward), side === 'left' ? 1 : -1);
	const lifted = (degrees: number): Limb => {
		const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
		const out = add([0, 0, -ELBOW.below * cos], times(outward, ELBOW.out + sin));
		const toward = add(out, times(forward, -ELBOW.back * cos));
		return limb(shoulder, hand.at, { upper: arm.upper, fore: arm.spans[hand.kind].fore, toward });
	};
	let degrees = 0;
	while (degrees < LIFT.most && dot(less(lifted(degrees).joint, shoulder), forward) < -behind) degrees += LIFT.step;
	return lifted(degrees);
}

/** A point brought within what an arm spans, along its own direction. Units and frame: mm, plan frame. */
export function withinSpan(arm: Arm, { shoulder }: Posture, point: Vec): Vec {
	const way = less(point, shoulder);
	const far = Math.max(1, size(way));
	const { outer, inner } = arm.spans.grip;
	return add(shoulder, times(way, Math.min(outer, Math.max(inner, far)) / far));
}
