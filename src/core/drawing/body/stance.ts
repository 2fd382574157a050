import { add, leftOf, less, size, times, type Vec } from '#core/geometry/vec.ts';
import type { Side } from '#core/body/hands.ts';
import { leaned } from '#core/reach/lean.ts';
import type { Posture } from '#core/reach/slack.ts';
import { BEFORE_BACK, hipOf, isMissing, seatedPosture } from '#core/reach/station.ts';
import { ANKLE, type DrawnBody } from './drawn-body.ts';
import { limb, type Limb } from './limb.ts';

/** A body in a place, before its hands do anything. Units and frame: mm, plan frame. */
export interface Stance {
	readonly hip: Vec;
	readonly facing: Vec;
	readonly postures: Readonly<Record<Side, Posture>>;
	/** Hip, knee and ankle. */
	readonly legs: Readonly<Record<Side, Limb>>;
	/** The middle of the head. */
	readonly head: Vec;
}

/** A lean of the trunk about the hip. Units: degrees from upright; `toward` level, of length 1. */
export interface Leaning {
	readonly degrees: number;
	readonly toward: Vec;
}

/** Middle of a hip from the middle of the body. Ours. */
const ASIDE = 85;
/** How far the knee lies below the hip on a seat that is high enough. Ours. */
const DROP = 25;
/** Lift of the hip off the seat, and forward, as somebody leaves it; feet drawn back from below the knees. Ours. */
const RISING = { lift: 50, ahead: 90, back: 130 };

/** The head before the shoulders. Ours. */
const HEAD_AHEAD = 35;

const UP: Vec = [0, 0, 1];
const asideOf = (facing: Vec, side: Side): Vec => times(leftOf(facing), side === 'left' ? ASIDE : -ASIDE);

/** Where somebody sits. Units and frame: mm, plan frame; `floor` is the level under her feet. */
export interface Seat {
	readonly back: Vec;
	readonly facing: Vec;
	readonly floor: number;
}

/** Both shoulders, leaned; undefined where a length is not known. */
function seatedPostures(
	d: DrawnBody,
	{ back, facing }: Seat,
	lean?: Leaning
): { readonly hip: Vec; readonly postures: Stance['postures'] } | undefined {
	const seated = {
		body: d.body,
		backPlanePoint: back,
		facing,
		sittingForward: d.body.person.sittingForward?.value ?? 0
	};
	const hip = hipOf(seated);
	const of = (side: Side): Posture | undefined => {
		const posture = seatedPosture({ ...seated, side });
		if (isMissing(posture)) return undefined;
		return lean ? leaned(posture, hip, lean.degrees, lean.toward) : posture;
	};
	const [left, right] = [of('left'), of('right')];
	return left && right && { hip, postures: { left, right } };
}

/** On a seat: feet on the floor below the knees, or hanging where the seat is higher than her lower leg. */
export function seatedStance(d: DrawnBody, seat: Seat, lean?: Leaning): Stance | undefined {
	const found = seatedPostures(d, seat, lean);
	if (!found) return undefined;
	const { hip, postures } = found;
	const { thigh, shank } = d.lengths;
	const kneeZ = Math.min(hip[2] + thigh * 0.7, Math.max(hip[2] - DROP, seat.floor + ANKLE + shank));
	const ahead = Math.sqrt(Math.max(0, thigh * thigh - (kneeZ - hip[2]) ** 2));
	const leg = (side: Side): Limb => {
		const root = add(hip, asideOf(seat.facing, side));
		const joint = add(root, add(times(seat.facing, ahead), [0, 0, kneeZ - hip[2]]));
		// Shins that are longer than the knee is high are put forward.
		const drop = Math.min(shank, joint[2] - seat.floor - ANKLE);
		const out = Math.sqrt(Math.max(0, shank * shank - drop * drop));
		return { root, joint, end: add(joint, add(times(seat.facing, out), times(UP, -drop))) };
	};
	return {
		hip,
		facing: seat.facing,
		postures,
		legs: { left: leg('left'), right: leg('right') },
		head: headOver(d, hip, postures)
	};
}

/** As somebody leaves a seat: the trunk well forward, the feet drawn back, the hip just off the seat. */
export function risingStance(d: DrawnBody, seat: Seat, degrees: number): Stance | undefined {
	const { facing, floor } = seat;
	const found = seatedPostures(d, seat, { degrees, toward: facing });
	if (!found) return undefined;
	const lift: Vec = add(times(facing, RISING.ahead), times(UP, RISING.lift));
	const hip = add(found.hip, lift);
	const { thigh, shank } = d.lengths;
	const foot = add(found.hip, times(facing, thigh - RISING.back + BEFORE_BACK / 2));
	const leg = (side: Side): Limb => {
		const aside = asideOf(facing, side);
		const ankle: Vec = add([foot[0], foot[1], floor + ANKLE], aside);
		return limb(add(hip, aside), ankle, { upper: thigh, fore: shank, toward: facing });
	};
	const moved = (p: Posture): Posture => ({ ...p, shoulder: add(p.shoulder, lift) });
	const postures = { left: moved(found.postures.left), right: moved(found.postures.right) };
	return { hip, facing, postures, legs: { left: leg('left'), right: leg('right') }, head: headOver(d, hip, postures) };
}

/** Knees of somebody who stands are not quite straight. Units: mm of the leg. Ours. */
const SOFT = 5;

/** Feet of somebody who stands: ahead of the middle, and the level each stands on. */
export interface Feet {
	readonly left: { readonly ahead: number; readonly level: number };
	readonly right: { readonly ahead: number; readonly level: number };
}

/** On her feet, with shoulders where reach has them. Shape: knees bend when the legs are longer than the hip is high. */
export function standingStance(d: DrawnBody, postures: Stance['postures'], feet: Feet): Stance {
	const facing = postures.left.forward;
	const middle = times(add(postures.left.shoulder, postures.right.shoulder), 0.5);
	const { thigh, shank, trunk } = d.lengths;
	const over = ({ ahead, level }: Feet['left']): number =>
		level + ANKLE + Math.sqrt(Math.max(0, (thigh + shank - SOFT) ** 2 - ahead * ahead));
	const hip: Vec = [middle[0], middle[1], Math.min(middle[2] - trunk, over(feet.left), over(feet.right))];
	const leg = (side: Side): Limb => {
		const { ahead, level } = feet[side];
		const aside = asideOf(facing, side);
		const ankle = add(add([hip[0], hip[1], level + ANKLE], aside), times(facing, ahead));
		return limb(add(hip, aside), ankle, { upper: thigh, fore: shank, toward: facing });
	};
	return { hip, facing, postures, legs: { left: leg('left'), right: leg('right') }, head: headOver(d, hip, postures) };
}

/** How far the soles hang above a level, at most of the two. Units: mm. */
export const soleAbove = ({ legs }: Stance, floor: number): number =>
	Math.max(legs.left.end[2], legs.right.end[2]) - ANKLE - floor;

/** The head over the neck: with the trunk, but half upright, and a little before it. */
function headOver({ lengths }: DrawnBody, hip: Vec, postures: Stance['postures']): Vec {
	const way = add(trunkWay({ hip, postures }), UP);
	const over = times(way, lengths.head / Math.max(1e-9, size(way)));
	return add(betweenShoulders({ postures }), add(over, times(postures.left.forward, HEAD_AHEAD)));
}

/** The middle between the shoulders. Units and frame: mm, plan frame. */
export const betweenShoulders = ({ postures }: Pick<Stance, 'postures'>): Vec =>
	times(add(postures.left.shoulder, postures.right.shoulder), 0.5);

/** The way the trunk points, from hip to shoulders. Shape: of length 1. */
export function trunkWay(stance: Pick<Stance, 'hip' | 'postures'>): Vec {
	const way = less(betweenShoulders(stance), stance.hip);
	return times(way, 1 / Math.max(1, size(way)));
}
