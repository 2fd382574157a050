import type { Arc, Spot } from '#core/drawing/entity.ts';

/** A cubic curve from where the pen is: two control points and the end. */
export type Curve = readonly [Spot, Spot, Spot];

/**
 * An arc of at most half a circle as cubic curves, each at most a quarter.
 * Units: mm. Shape: off the true arc by at most 0.0003 of its radius.
 * Source: control distance 4/3 tan(angle/4), exact at the ends and the middle.
 */
export function arcCurves(from: Spot, arc: Arc): readonly Curve[] {
	const { to, radius, clockwise } = arc;
	const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
	const chord = Math.hypot(dx, dy);
	const off = Math.sqrt(Math.max(0, radius * radius - (chord * chord) / 4));
	const side = clockwise ? 1 : -1;
	// y grows downward: the centre of the short clockwise arc lies to the right hand of the way, which is -dy, dx.
	const centre: Spot = [
		(from[0] + to[0]) / 2 - (side * off * dy) / chord,
		(from[1] + to[1]) / 2 + (side * off * dx) / chord
	];
	const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
	const sweep = side * 2 * Math.asin(Math.min(1, chord / (2 * radius)));
	const count = Math.abs(sweep) > Math.PI / 2 + 1e-9 ? 2 : 1;
	return Array.from({ length: count }, (_, i) => quarter(centre, radius, start + (sweep * i) / count, sweep / count));
}

function quarter([cx, cy]: Spot, r: number, start: number, sweep: number): Curve {
	const k = (4 / 3) * Math.tan(sweep / 4);
	const end = start + sweep;
	const on = (angle: number): Spot => [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
	const [a, b] = [on(start), on(end)];
	return [
		[a[0] - k * r * Math.sin(start), a[1] + k * r * Math.cos(start)],
		[b[0] + k * r * Math.sin(end), b[1] - k * r * Math.cos(end)],
		b
	];
}
