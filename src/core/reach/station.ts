import type { Body } from '#core/body/body.ts';
import type { Dimension } from '#core/body/survey.ts';
import { add, leftOf, times, type Vec } from '#core/geometry/vec.ts';
import type { Side } from '#core/body/hands.ts';
import type { Posture } from './slack.ts';

/** What has to be measured before the question can be answered. */
export interface Missing {
	readonly missing: string;
}

/** Somebody on a seat. Units and frame: mm, plan frame. */
export interface Seated {
	readonly body: Body;
	/** Where the plane her back rests on meets the seat's centre line, at the top of the loaded seat. */
	readonly backPlanePoint: Vec;
	/** The way the seat faces. Shape: level, of length 1. */
	readonly facing: Vec;
	/** How far in front of the back rest she sits. */
	readonly sittingForward: number;
}

/** Somebody on her feet. Units and frame: mm, plan frame. */
export interface Standing {
	readonly body: Body;
	/** The point of the floor between her feet. */
	readonly at: Vec;
	/** Shape: level, of length 1. */
	readonly facing: Vec;
}

/** Shoulder and hip in front of the plane the back rests on. Ours; ANSUR II gives 74 (women) and 83 (men). */
export const BEFORE_BACK = 80;

/** Hip joint above the seat. From memory. */
const HIP_ABOVE_SEAT = 90;

const WORDS: Readonly<Partial<Record<Dimension, string>>> = {
	shoulderAboveSeat: 'shoulder above the seat',
	shoulderStanding: 'shoulder height standing',
	wristStanding: 'wrist height standing',
	shoulderBreadth: 'shoulder breadth'
};

/** Whether an answer is only the name of what must be measured. */
export const isMissing = (answer: object): answer is Missing => 'missing' in answer;

function known(body: Body, name: Dimension): number | Missing {
	return body.dims[name]?.value ?? { missing: WORDS[name] ?? name };
}

const up = (height: number): Vec => [0, 0, height];

function shoulderAt(
	body: Body,
	base: Vec,
	{ height, facing, side }: { height: Dimension; facing: Vec; side: Side }
): Posture | Missing {
	const [above, breadth] = [known(body, height), known(body, 'shoulderBreadth')];
	if (typeof above !== 'number') return above;
	if (typeof breadth !== 'number') return breadth;
	const outward = times(leftOf(facing), side === 'left' ? breadth / 2 : -breadth / 2);
	return { shoulder: add(add(base, up(above)), outward), forward: facing, side };
}

const before = ({ backPlanePoint, facing, sittingForward }: Omit<Seated, 'body'>): Vec =>
	add(backPlanePoint, times(facing, BEFORE_BACK + sittingForward));

/**
 * Where a sitter's shoulder is, upright; where a reach test told it for this side, there.
 * Units and frame: mm, plan frame. Fails: names the dimension to measure.
 */
export function seatedPosture(seated: Seated & { readonly side: Side }): Posture | Missing {
	const { body, facing, side, backPlanePoint, sittingForward } = seated;
	const { tested } = body.arms[side];
	if (!tested) return shoulderAt(body, before(seated), { height: 'shoulderAboveSeat', facing, side });
	const { ahead, outward, up: above } = tested.shoulder;
	const level = add(times(facing, ahead + sittingForward), times(leftOf(facing), side === 'left' ? outward : -outward));
	return { shoulder: add(add(backPlanePoint, level), up(above)), forward: facing, side };
}

/** The point a sitter leans about, on the centre line. Units and frame: mm, plan frame. */
export const hipOf = (seated: Omit<Seated, 'body'>): Vec => add(before(seated), up(HIP_ABOVE_SEAT));

/**
 * Where a stander's shoulder is, upright.
 * Units and frame: mm, plan frame. Fails: names the dimension to measure.
 */
export const standingPosture = (standing: Standing & { readonly side: Side }): Posture | Missing =>
	shoulderAt(standing.body, standing.at, { height: 'shoulderStanding', facing: standing.facing, side: standing.side });

/** How low a stander works without bending: the height of the wrist. Units: mm, a z. Fails: names what to measure. */
export function standingHipHeight({ body, at }: Pick<Standing, 'body' | 'at'>): number | Missing {
	const wrist = known(body, 'wristStanding');
	return typeof wrist === 'number' ? at[2] + wrist : wrist;
}
