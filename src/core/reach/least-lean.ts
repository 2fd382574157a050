import { leftOf, times, type Vec } from '#core/geometry/vec.ts';
import type { Arm, ReachKind } from './arm.ts';
import { leaned, leanTravel, MOST_LEAN } from './lean.ts';
import { slack, type Posture } from './slack.ts';

/** A lean that brings a target within reach. Units: degrees from upright, mm of travel at the shoulder. */
export interface Lean {
	readonly degrees: number;
	readonly travel: number;
	/** Her own ahead, left or right. */
	readonly toward: 'ahead' | 'left' | 'right';
}

const STEP = 0.5;
const HALVINGS = 8;

const directionOf = (toward: Lean['toward'], { forward }: Posture): Vec =>
	toward === 'ahead' ? forward : times(leftOf(forward), toward === 'left' ? 1 : -1);

function leastToward(enough: (degrees: number) => boolean, before: number): number {
	let few = 0;
	while (!enough(few + STEP)) {
		few += STEP;
		if (few >= before) return Infinity;
	}
	let many = few + STEP;
	for (let i = 0; i < HALVINGS; i++) {
		const middle = (few + many) / 2;
		if (enough(middle)) many = middle;
		else few = middle;
	}
	return many;
}

/**
 * The least lean, ahead or to a side, that gives a target `margin` of slack; null when none up to MOST_LEAN does.
 * Units and frame: mm, plan frame; the trunk turns about `hip`. Shape: found to 0.002 degrees; of equals ahead, then left.
 */
export function leastLean(
	arm: Arm,
	posture: Posture,
	hip: Vec,
	target: Vec,
	kind: ReachKind,
	margin: number
): Lean | null {
	let least: Lean | null = null;
	for (const toward of ['ahead', 'left', 'right'] as const) {
		const direction = directionOf(toward, posture);
		const enough = (degrees: number): boolean =>
			slack(arm, leaned(posture, hip, degrees, direction), target, kind) >= margin;
		if (enough(0)) return { degrees: 0, travel: 0, toward: 'ahead' };
		const degrees = leastToward(enough, MOST_LEAN - STEP);
		if (degrees < (least?.degrees ?? Infinity)) {
			least = { degrees, travel: leanTravel(posture, hip, degrees, direction), toward };
		}
	}
	return least;
}

/** The degrees of the least lean; Infinity when there is none. Units: degrees from upright. */
export const leanNeeded = (
	arm: Arm,
	posture: Posture,
	hip: Vec,
	target: Vec,
	kind: ReachKind,
	margin: number
): number => leastLean(arm, posture, hip, target, kind, margin)?.degrees ?? Infinity;
