import type { Mark } from '#core/case/accessory.ts';
import { toPlan } from '#core/geometry/frame.ts';
import { less, size, type Vec } from '#core/geometry/vec.ts';
import type { Side } from '#core/body/hands.ts';
import { armWithMargin, type Arm, type ReachKind } from '#core/reach/arm.ts';
import type { PersonArm } from '#core/reach/reach.ts';
import { gap, slack, slackOver, STILL, type Posture } from '#core/reach/slack.ts';
import type { Room } from '#core/enclosure/room.ts';

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
	/** How far all of it may lie from there along each axis. */
	readonly spread: Vec;
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
	if (variant.diameter > 0)
		return { from: at(grip.x0, grip.y0), to: at(grip.x1, grip.y1), kind: 'grip', spread: STILL };
	if (variant.gripTo !== undefined) {
		const out = (off: number): Vec => toPlan(place.wall, [place.x, place.y], off, room.footprint);
		return { from: out(gripOff), to: out(variant.gripTo), kind: 'grip', spread: STILL };
	}
	const middle = at((grip.x0 + grip.x1) / 2, (grip.y0 + grip.y1) / 2);
	return { from: middle, to: middle, kind: kind === 'control' ? 'push' : 'grip', spread: STILL };
}

/**
 * The most slack an arm has on a target from any posture; of a bar, on the point nearest to the shoulder or on an end.
 * Units: mm. Shape: slope at most 1 in the target; with a spread, what it is at most; more than `enough` is not looked for.
 */
export function most(arm: Arm, postures: readonly Posture[], target: Target, enough = Infinity): number {
	const { from, to, kind, spread } = target;
	if (from === to) return onPoint(arm, postures, { point: from, kind, spread, enough });
	// Which point of a bar is nearest changes as it moves: there the slope alone tells.
	const still = onBar(arm, postures, target, enough - size(spread));
	return still + size(spread);
}

function onBar(arm: Arm, postures: readonly Posture[], { from, to, kind }: Target, enough: number): number {
	let best = onPoint(arm, postures, { point: from, kind, spread: STILL, enough });
	if (best >= enough) return best;
	best = Math.max(best, onPoint(arm, postures, { point: to, kind, spread: STILL, enough }));
	const along = less(to, from);
	for (const posture of postures) {
		if (best >= enough) return enough;
		const point = nearest(from, along, posture.shoulder);
		if (arm.spans[kind].outer - gap(posture.shoulder, point, STILL) > best)
			best = Math.max(best, slack(arm, posture, point, kind));
	}
	return Math.min(best, enough);
}

interface Point {
	readonly point: Vec;
	readonly kind: ReachKind;
	readonly spread: Vec;
	readonly enough: number;
}

/** Slack is never more than what is left of the arm: the nearest shoulder is asked first, most others not at all. */
function onPoint(arm: Arm, postures: readonly Posture[], { point, kind, spread, enough }: Point): number {
	const { outer } = arm.spans[kind];
	let first = postures[0];
	let least = Infinity;
	for (const posture of postures) {
		const away = gap(posture.shoulder, point, spread);
		if (away >= least) continue;
		least = away;
		first = posture;
	}
	if (!first) return -Infinity;
	let best = slackOver(arm, first, point, kind, spread);
	for (const posture of postures) {
		if (best >= enough) return enough;
		if (posture === first || outer - gap(posture.shoulder, point, spread) <= best) continue;
		best = Math.max(best, slackOver(arm, posture, point, kind, spread));
	}
	return Math.min(best, enough);
}

function nearest(from: Vec, along: Vec, to: Vec): Vec {
	const square = along[0] * along[0] + along[1] * along[1] + along[2] * along[2];
	const offset = along[0] * (to[0] - from[0]) + along[1] * (to[1] - from[1]) + along[2] * (to[2] - from[2]);
	const share = Math.min(1, Math.max(0, offset / square));
	return [from[0] + share * along[0], from[1] + share * along[1], from[2] + share * along[2]];
}
