import type { Segment, Spot } from '../entity.ts';

/** A joint with the thickness of the body round it. Units: those of the drawing. */
export interface Joint {
	readonly at: Spot;
	readonly radius: number;
}

/**
 * The outline of a limb between two joints: both circles and the straight lines that touch them.
 * Frame: y down. Shape: closed; no arc is longer than half a circle; where one circle holds the other, the larger alone.
 */
export function capsule(a: Joint, b: Joint): readonly Segment[] {
	const [dx, dy] = [b.at[0] - a.at[0], b.at[1] - a.at[1]];
	const length = Math.hypot(dx, dy);
	if (length <= Math.abs(a.radius - b.radius)) return disc(a.radius > b.radius ? a : b);
	const along = Math.atan2(dy, dx);
	// Where the common tangents touch, as seen from each centre.
	const turn = Math.acos((a.radius - b.radius) / length);
	const on = ({ at, radius }: Joint, angle: number): Spot => [
		at[0] + radius * Math.cos(angle),
		at[1] + radius * Math.sin(angle)
	];
	const arc = (joint: Joint, angle: number): Segment => ({
		by: 'arc',
		to: on(joint, angle),
		radius: joint.radius,
		clockwise: true
	});
	return [
		{ by: 'move', to: on(a, along + turn) },
		arc(a, along + Math.PI),
		arc(a, along - turn),
		{ by: 'line', to: on(b, along - turn) },
		arc(b, along),
		arc(b, along + turn)
	];
}

function disc({ at: [x, y], radius }: Joint): readonly Segment[] {
	const half = (to: Spot): Segment => ({ by: 'arc', to, radius, clockwise: true });
	return [{ by: 'move', to: [x - radius, y] }, half([x + radius, y]), half([x - radius, y])];
}
