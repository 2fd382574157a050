import type { Px } from './shape.ts';

/** A joint with the thickness of the body round it. Units: px. */
export interface Joint {
	readonly at: Px;
	readonly radius: number;
}

/** The outline of a limb between two joints: both circles and the straight lines that touch them. */
export function capsule(a: Joint, b: Joint): string {
	const [dx, dy] = [b.at[0] - a.at[0], b.at[1] - a.at[1]];
	const length = Math.hypot(dx, dy);
	const along = Math.atan2(dy, dx);
	// Where the common tangents touch, as seen from each centre.
	const turn = Math.acos(Math.min(1, Math.max(-1, (a.radius - b.radius) / Math.max(length, 1e-6))));
	const on = ({ at, radius }: Joint, angle: number): string =>
		`${(at[0] + radius * Math.cos(angle)).toFixed(1)} ${(at[1] + radius * Math.sin(angle)).toFixed(1)}`;
	const arc = (joint: Joint, angle: number, large: boolean): string =>
		`A${joint.radius.toFixed(1)} ${joint.radius.toFixed(1)} 0 ${large ? '1' : '0'} 1 ${on(joint, angle)}`;
	return [
		`M${on(a, along + turn)}`,
		arc(a, along - turn, turn < Math.PI / 2),
		`L${on(b, along - turn)}`,
		arc(b, along + turn, turn > Math.PI / 2),
		'Z'
	].join('');
}
