import type { Arc, Frame, Path, Spot } from '#core/drawing/entity.ts';

/** A corner of a polyline, and how the way from it to the next bends: the tangent of a quarter of the arc's angle. */
interface Corner {
	readonly to: Spot;
	readonly bulge: number;
}

/** An unbroken line at the wall's own size. Units and frame: mm, x right, y up from the corner at the datum line. */
export interface Polyline {
	readonly points: readonly Corner[];
	readonly closed: boolean;
	/** Of what is a whole circle. */
	readonly circle?: { readonly centre: Spot; readonly radius: number };
}

/**
 * The unbroken lines of a path. Shape: arcs bend to the left where the bulge is positive.
 * Source: group 42 of LWPOLYLINE, DXF reference.
 */
export function polylinesOf(path: Path, frame: Frame): readonly Polyline[] {
	const { scale, origin } = frame;
	const spot = ([x, y]: Spot): Spot => [(x - origin[0]) * scale, (origin[1] - y) * scale];
	const lines: { to: Spot; bulge: number }[][] = [];
	let from: Spot = [0, 0];
	for (const step of path.d) {
		if (step.by === 'move') lines.push([]);
		const last = lines.at(-1)?.at(-1);
		if (step.by === 'arc' && last) last.bulge = bulgeOf(from, step);
		lines.at(-1)?.push({ to: spot(step.to), bulge: 0 });
		from = step.to;
	}
	return lines.filter((points) => points.length > 1).map((points) => closedUp(points, path.closed));
}

/** A line that returns to where it began says that point once. */
function closedUp(points: readonly Corner[], closed: boolean): Polyline {
	const [first, last] = [points[0], points.at(-1)];
	if (!closed || !first || !last || apart(first.to, last.to) > 1e-6) return { points, closed };
	const corners = points.slice(0, -1);
	const [a, b, ...more] = corners;
	const whole = a && b && more.length === 0 && Math.abs(a.bulge) > 0.999999 && Math.abs(b.bulge) > 0.999999;
	if (!whole) return { points: corners, closed };
	const centre: Spot = [(a.to[0] + b.to[0]) / 2, (a.to[1] + b.to[1]) / 2];
	return { points: corners, closed, circle: { centre, radius: apart(a.to, b.to) / 2 } };
}

const apart = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Clockwise on the sheet is clockwise here too: both axes are as seen. */
function bulgeOf(from: Spot, { to, radius, clockwise }: Arc): number {
	const quarter = Math.asin(Math.min(1, apart(from, to) / (2 * radius))) / 2;
	return clockwise ? -Math.tan(quarter) : Math.tan(quarter);
}
