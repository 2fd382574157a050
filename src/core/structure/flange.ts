import type { Flange } from '#core/case/accessory.ts';

/** The generic flange until a real one is read off: 80 mm disc, three holes on a 60 mm circle, 32 mm bar 38 mm clear. */
export const FLANGE: Flange = { radius: 40, circle: 30, holes: 3, standOff: 54 };

/**
 * Tension in each screw under a force along the wall, the disc rocking over its far edge.
 * Units: N and degrees; `turn` is the angle from the direction of the pull to the first hole, so 0 is one hole toward
 * the pull and 60 two. Source: exact mechanics of a rigid disc on equal elastic screws.
 */
export function screwTensions(flange: Flange, force: number, turn: number): readonly number[] {
	const arms = Array.from({ length: flange.holes }, (_, i) => {
		const angle = ((turn + (360 * i) / flange.holes) * Math.PI) / 180;
		return flange.radius + flange.circle * Math.cos(angle);
	});
	const squares = arms.reduce((sum, arm) => sum + arm * arm, 0);
	return arms.map((arm) => (force * flange.standOff * arm) / squares);
}

/**
 * Greatest tension in a screw per newton along the wall, over every direction of the pull.
 * Source: as screwTensions; e (R + r) / (n (R^2 + r^2 / 2)) for three and more; two screws are worst a little off the
 * line of the pull, where the derivative of e (R + r c) / (2 (R^2 + r^2 c^2)) in the cosine c is nothing.
 */
export function leverage({ radius: r, circle: c, holes, standOff }: Flange): number {
	if (holes === 2) {
		const cosine = Math.min(1, (r / c) * (Math.SQRT2 - 1));
		return (standOff * (r + c * cosine)) / (2 * (r * r + (c * cosine) ** 2));
	}
	return (standOff * (r + c)) / (holes * (r * r + (c * c) / 2));
}
