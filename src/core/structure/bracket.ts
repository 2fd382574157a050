import type { Bracket, Flange, PartBracket } from '#core/case/accessory.ts';
import { FLANGE, leverage } from './flange.ts';

/** A bracket that a person's weight comes on. */
export type HoldingBracket = Exclude<Bracket, 'rest' | 'none'>;

/** How a bracket loads its worst screw. */
export interface BracketModel {
	readonly name: string;
	/** Part of a force straight out of the wall that one screw takes. */
	readonly direct: number;
	/** Tension of the worst screw per newton along the wall. */
	readonly leverage: number;
}

// A seat without legs: load 380 mm from the wall, 100 mm between the upper row and the lower bearing edge. Somebody at
// one end of it sits on one plate, with two upper screws and one lower: the other takes no share.
const SEAT = { out: 380, height: 100, upper: 2, screws: 3 };

// A seat with front legs: the load is never past the legs by more than 30 mm, so that the upper row has no tension but
// what the hinge asks, 30 mm out from the wall on a plate as above. Folded up it is hauled on, at one end, by three screws.
const HINGE = { out: 30, height: 100, upper: 2, screws: 3 };

// A rail that folds down: load at the far end of the longest, 850 mm from the wall, on one plate 200 mm high with two
// upper screws; a shorter rail loads its plate less.
const RAIL = { out: 850, height: 200, upper: 2, screws: 4 };

/** The brackets that hold a person. Source: FLANGE; the seats' and the rail's figures are generic, ours, until the part is read off. */
const MODELS: Readonly<Record<HoldingBracket, BracketModel>> = {
	flange: { name: 'three-hole flange', direct: 1 / FLANGE.holes, leverage: leverage(FLANGE) },
	'seat-plate': {
		name: 'seat plate, no legs',
		direct: 1 / SEAT.screws,
		leverage: SEAT.out / SEAT.height / SEAT.upper
	},
	'leg-plate': {
		name: 'hinge plate of a seat with front legs',
		direct: 1 / HINGE.screws,
		leverage: HINGE.out / HINGE.height / HINGE.upper
	},
	'rail-plate': {
		name: 'plate of a fold-down rail',
		direct: 1 / RAIL.screws,
		leverage: RAIL.out / RAIL.height / RAIL.upper
	}
};

/** What of a bracket its hold on a wall depends on. */
export type Meets = Pick<PartBracket, 'kind' | 'flange'>;

/** How a bracket loads its worst screw: a real flange as it was read off, all else as the generic part. */
export const modelOf = (kind: HoldingBracket, flange?: Flange): BracketModel =>
	flange ? { name: 'flange as read off', direct: 1 / flange.holes, leverage: leverage(flange) } : MODELS[kind];

/** Radius of the disc a bracket covers. Units: mm. */
export const radiusOf = (kind: Exclude<Bracket, 'none'>, flange?: Flange): number => flange?.radius ?? RADII[kind];

/** Radius of the disc each generic bracket covers on the wall. Units: mm. */
const RADII: Readonly<Record<Exclude<Bracket, 'none'>, number>> = {
	flange: FLANGE.radius,
	'seat-plate': 50,
	'leg-plate': 50,
	'rail-plate': 90,
	rest: 20
};

/** Load of the worst screw of a bracket. Units: N; `direction` in degrees out of the plane of the wall. */
export interface ScrewLoad {
	/** One force along the wall. */
	readonly inPlane: number;
	/** One force in the worst direction. */
	readonly anyDirection: number;
	readonly direction: number;
	/** Shear on a screw under that same force. */
	readonly shear: number;
	/** Direct pull and moment together, the superseded rule. */
	readonly sum1991: number;
}

/**
 * What a force does to the worst screw of a bracket, over every direction along the wall.
 * Source: exact mechanics; the sum is ADAAG 1991, 4.26.3(4).
 */
export function screwLoad({ direct, leverage: k }: BracketModel, force: number): ScrewLoad {
	const direction = Math.atan2(direct, k);
	return {
		inPlane: force * k,
		anyDirection: force * Math.hypot(direct, k),
		direction: (direction * 180) / Math.PI,
		shear: force * Math.cos(direction) * direct,
		sum1991: force * (direct + k)
	};
}
