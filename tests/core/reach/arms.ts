import { armFrom, type Arm, type ArmSpec } from '#core/reach/arm.ts';
import type { Posture } from '#core/reach/slack.ts';

/** A median woman's left arm with nothing in its way. */
export const SPEC: ArmSpec = {
	side: 'left',
	upper: 311,
	fore: 300,
	hand: 181,
	range: { flexion: 180, abduction: 179, adduction: 90 },
	elbowDeficit: 0,
	elbowFlexion: 150,
	elbow: 'recorded',
	sd: 20,
	toMidline: 183
};

/** An arm that differs from SPEC. */
export const armWith = (differs: Partial<ArmSpec>): Arm => armFrom({ ...SPEC, ...differs });

/** An arm of a length to grip whose shoulder and elbow stop it nowhere: the sphere of the textbook. */
export const sphere = (toGrip: number): Arm => armWith({ upper: toGrip / 2, fore: toGrip / 2, elbowFlexion: 160 });

/** A left shoulder above the origin, facing along +y, so that straight ahead is y and outward is x. */
export const shoulderAt = (height: number): Posture => ({ shoulder: [0, 0, height], forward: [0, 1, 0], side: 'left' });

/** Where a function that falls through 0 between two places does so. */
export function zero(of: (x: number) => number, positive: number, negative: number): number {
	let [inside, outside] = [positive, negative];
	if (of(inside) < 0 || of(outside) >= 0) throw new Error(`no change of sign: ${of(inside)}, ${of(outside)}`);
	for (let i = 0; i < 60; i++) {
		const middle = (inside + outside) / 2;
		if (of(middle) >= 0) inside = middle;
		else outside = middle;
	}
	return inside;
}
