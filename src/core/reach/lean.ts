import { add, dot, less, leftOf, times, type Vec } from '#core/geometry/vec.ts';
import type { Arm, ReachKind } from './arm.ts';
import { slack, type Posture } from './slack.ts';

/** Leaning further than this is not asked of anybody. Units: degrees. Ours, no source. */
export const MOST_LEAN = 45;

const FAN = 6;
const RADIANS = Math.PI / 180;
const UP: Vec = [0, 0, 1];

/**
 * The posture with the trunk leaned about the hip.
 * Units and frame: degrees from upright; `direction` level, of length 1. The way the pelvis faces stays, and so do the
 * directions the shoulder's range is held against.
 */
export function leaned(posture: Posture, hip: Vec, degrees: number, direction: Vec): Posture {
	const from = less(posture.shoulder, hip);
	const along = dot(from, direction);
	const [sin, cos] = [Math.sin(degrees * RADIANS), Math.cos(degrees * RADIANS)];
	const moved = add(
		times(direction, along * cos + from[2] * sin - along),
		times(UP, from[2] * cos - along * sin - from[2])
	);
	return { ...posture, shoulder: add(posture.shoulder, moved) };
}

const directions = ({ forward }: Posture): readonly Vec[] => [forward, leftOf(forward), times(leftOf(forward), -1)];

// How far the shoulder is from the axis it turns about.
function arm(posture: Posture, hip: Vec, direction: Vec): number {
	const from = less(posture.shoulder, hip);
	return Math.hypot(dot(from, direction), from[2]);
}

/** How far the shoulder travels in a lean, in a straight line. Units: mm for degrees. */
export const leanTravel = (posture: Posture, hip: Vec, degrees: number, direction: Vec): number =>
	2 * arm(posture, hip, direction) * Math.sin((degrees * RADIANS) / 2);

function degreesFor(travel: number, radius: number): number {
	if (travel <= 0 || radius === 0) return 0;
	return Math.min(MOST_LEAN, (2 * Math.asin(Math.min(1, travel / (2 * radius)))) / RADIANS);
}

/**
 * Upright and a fixed fan of leans, forward and to both sides, in which the shoulder travels at most `most`.
 * Units: mm of travel; Infinity for all up to MOST_LEAN. Shape: the fan knows nothing of targets.
 */
export function leanFan(posture: Posture, hip: Vec, most: number): readonly Posture[] {
	const leans = directions(posture).flatMap((direction) => {
		const degrees = degreesFor(most, arm(posture, hip, direction));
		if (degrees === 0) return [];
		return Array.from({ length: FAN }, (_, i) => leaned(posture, hip, (degrees * (i + 1)) / FAN, direction));
	});
	return [posture, ...leans];
}

/** The most slack any posture of a fan gives. Units: mm. Shape: slope at most 1. */
export function slackOverFan(arm: Arm, fan: readonly Posture[], target: Vec, kind: ReachKind): number {
	let most = -Infinity;
	for (const posture of fan) most = Math.max(most, slack(arm, posture, target, kind));
	return most;
}

/** Upright and every lean with at most `most` mm of travel: `slackOverFan` for one target. Units: mm. */
export const slackWithLean = (
	arm: Arm,
	posture: Posture,
	hip: Vec,
	target: Vec,
	kind: ReachKind,
	most: number
): number => slackOverFan(arm, leanFan(posture, hip, most), target, kind);
