import { size, type Vec } from '#core/geometry/vec.ts';
import type { Side } from '#core/body/hands.ts';
import type { Arm, ReachKind, Span } from './arm.ts';
import { alongCone, insideCone } from './shoulder.ts';

/** A shoulder in space. Units and frame: mm, plan frame. Shape: `forward` level, of length 1. */
export interface Posture {
	readonly shoulder: Vec;
	/** The way the pelvis faces. */
	readonly forward: Vec;
	readonly side: Side;
}

// Distance from the raised elbow nearest to the target, less than the forearm when bending the elbow gets the hand there.
function bent(arm: Arm, fore: number, rho: number, along: number): number {
	const toElbow = rho * rho + arm.upper * arm.upper - 2 * arm.upper * along;
	return fore - Math.sqrt(Math.max(0, toElbow));
}

function within(arm: Arm, posture: Posture, target: Vec, span: Span): number {
	const { shoulder, forward } = posture;
	const x = target[0] - shoulder[0];
	const y = target[1] - shoulder[1];
	const up = target[2] - shoulder[2];
	const ahead = x * forward[0] + y * forward[1];
	const left = x * forward[1] - y * forward[0];
	const outward = posture.side === 'left' ? left : -left;
	const rho = Math.sqrt(x * x + y * y + up * up);
	const straight = Math.min(span.outer - rho, rho - span.inner);
	const cone = insideCone(arm.cone, ahead, outward, up, straight);
	if (cone >= straight || arm.elbow === 'assumed') return Math.min(straight, cone);
	// Out to the side, past half way, the forearm points up only with a rotation of the shoulder nobody recorded.
	const wedge = Math.min(ahead, (ahead - outward) * Math.SQRT1_2);
	if (wedge <= cone) return cone;
	const off = Math.min(0, cone);
	// Past a right angle the nearest point of the cone is the shoulder itself, and the distance no longer tells the angle.
	const behind = off < -0.99 * rho ? alongCone(arm.cone, ahead, outward, up) : 0;
	const along = behind < 0 ? behind : Math.sqrt(Math.max(0, rho * rho - off * off));
	return Math.min(straight, Math.max(cone, Math.min(wedge, bent(arm, span.fore, rho, along))));
}

/**
 * How far a target may move before the hand loses it; negative, how far it is out of reach.
 * Units and frame: mm, plan frame. Shape: slope at most 1 in target and shoulder; never NaN.
 */
export const slack = (arm: Arm, posture: Posture, target: Vec, kind: ReachKind): number =>
	within(arm, posture, target, arm.spans[kind]);

/** Nowhere to move about: a target known as a point. */
export const STILL: Vec = [0, 0, 0];

/** From a point to the nearest of a box about another. Units: mm; `spread` is half the box along each axis. */
export function gap(from: Vec, to: Vec, spread: Vec): number {
	const x = Math.max(0, Math.abs(to[0] - from[0]) - spread[0]);
	const y = Math.max(0, Math.abs(to[1] - from[1]) - spread[1]);
	const z = Math.max(0, Math.abs(to[2] - from[2]) - spread[2]);
	return Math.sqrt(x * x + y * y + z * z);
}

/** What `slack` is at most while the target lies up to `spread` from where it is along each axis. Units: mm. */
export function slackOver(arm: Arm, posture: Posture, target: Vec, kind: ReachKind, spread: Vec): number {
	const own = slack(arm, posture, target, kind);
	if (spread === STILL) return own;
	return Math.min(own + size(spread), arm.spans[kind].outer - gap(posture.shoulder, target, spread));
}

/**
 * The same as `slack` without stretching or pain: with the easy share of the arm, between hip and shoulder height, on the arm's
 * own side; with a spread, what it is at most.
 * Units and frame: mm, plan frame; `hipHeight` is a z. Shape: at most `slack`; slope at most 1.
 */
export function easySlack(
	arm: Arm,
	posture: Posture,
	target: Vec,
	kind: ReachKind,
	hipHeight: number,
	spread: Vec = STILL
): number {
	const { shoulder, forward } = posture;
	const span = arm.spans[kind];
	const x = target[0] - shoulder[0];
	const y = target[1] - shoulder[1];
	const left = x * forward[1] - y * forward[0];
	const aside = Math.abs(spread[0] * forward[1]) + Math.abs(spread[1] * forward[0]);
	const fromMidline = arm.toMidline + (posture.side === 'left' ? left : -left) + aside;
	const unstretched = span.easy - gap(shoulder, target, spread);
	const height = Math.min(target[2] - hipHeight, shoulder[2] - target[2]) + spread[2];
	let angles = within(arm, posture, target, span);
	if (arm.painless) angles = Math.min(angles, within({ ...arm, cone: arm.painless }, posture, target, span));
	return Math.min(angles + size(spread), unstretched, height, fromMidline);
}
