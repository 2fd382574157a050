/** How far the upper arm can be raised. Units: degrees, 0 hanging, 90 level, 180 overhead. */
export interface ShoulderRange {
	/** Straight ahead. */
	readonly flexion: number;
	/** To the side. */
	readonly abduction: number;
	/** Across the body, past the midline. */
	readonly adduction: number;
	/** Behind the body, where it is less than every shoulder is taken to go. */
	readonly behind?: number;
}

/**
 * The cone of directions the upper arm can take, as flat edges between rays, all from the shoulder.
 * Shape: 12 numbers an edge: its inward normal; its ray; then, in its plane, the normals that point into the edge at
 * its first and at its last ray. Axes: ahead, outward, up.
 */
export interface Cone {
	readonly edges: Float64Array;
}

const EDGES = 24;
const STEP = (2 * Math.PI) / EDGES;
const RADIANS = Math.PI / 180;
const WIDTH = 12;

/** Ours, no source: how far the upper arm goes back behind the body. */
export const BEHIND = 50;

// A limit at the very top or bottom would make edges without a direction.
const clamped = (degrees: number): number => Math.min(179, Math.max(1, degrees));

type Ray = readonly [number, number, number];

const cross = (a: Ray, b: Ray): Ray => [
	a[1] * b[2] - a[2] * b[1],
	a[2] * b[0] - a[0] * b[2],
	a[0] * b[1] - a[1] * b[0]
];

const scaled = (a: Ray, k: number): Ray => [a[0] * k, a[1] * k, a[2] * k];

const unit = (a: Ray): Ray => scaled(a, 1 / Math.hypot(...a));

// Quarter turns from straight ahead: outward, behind, across, ahead again; linear in azimuth between.
function rayAt(azimuth: number, { flexion, abduction, adduction, behind = BEHIND }: ShoulderRange): Ray {
	const quarters = [flexion, abduction, behind, adduction, flexion].map(clamped);
	const turn = azimuth / (Math.PI / 2);
	const first = Math.min(3, Math.floor(turn + 1e-9));
	const [from = 0, to = 0] = quarters.slice(first);
	const raised = (from + (to - from) * (turn - first)) * RADIANS;
	return [Math.sin(raised) * Math.cos(azimuth), Math.sin(raised) * Math.sin(azimuth), -Math.cos(raised)];
}

/** The cone of a shoulder's range. Shape: exact in the four directions recorded, chords of 15 degrees between. */
export function coneOf(range: ShoulderRange): Cone {
	const rays = Array.from({ length: EDGES + 1 }, (_, i) => rayAt((i % EDGES) * STEP, range));
	const edges = Float64Array.from(
		rays.slice(1).flatMap((next, i) => {
			const ray = rays[i] ?? next;
			const normal = unit(cross(next, ray));
			return [...normal, ...ray, ...cross(ray, normal), ...cross(normal, next)];
		})
	);
	return { edges };
}

const dotAt = (list: Float64Array, i: number, a: number, o: number, u: number): number =>
	(list[i] ?? 0) * a + (list[i + 1] ?? 0) * o + (list[i + 2] ?? 0) * u;

/** How far along the nearest ray of the cone a point lies; negative past a right angle. Units: mm. */
export function alongCone({ edges }: Cone, ahead: number, outward: number, up: number): number {
	let most = -Infinity;
	for (let k = 0; k < edges.length; k += WIDTH) most = Math.max(most, dotAt(edges, k + 3, ahead, outward, up));
	return most;
}

/**
 * How far inside the cone a point lies, never more than `enough`; negative is its distance outside.
 * Units and frame: mm from the shoulder. Shape: slope at most 1, for it is a distance.
 */
// Bare numbers, not a point: this runs millions of times and should leave nothing to collect.
export function insideCone({ edges }: Cone, ahead: number, outward: number, up: number, enough: number): number {
	const azimuth = Math.atan2(outward, ahead);
	const sector = Math.min(EDGES - 1, Math.floor((azimuth < 0 ? azimuth + 2 * Math.PI : azimuth) / STEP));
	const sign = dotAt(edges, sector * WIDTH, ahead, outward, up) >= 0 ? 1 : -1;
	if (sign > 0 && enough <= 0) return enough;
	const rho2 = ahead * ahead + outward * outward + up * up;
	let nearest = sign > 0 ? Math.min(enough * enough, rho2) : rho2;
	for (let k = 0; k < edges.length; k += WIDTH) {
		const off = dotAt(edges, k, ahead, outward, up);
		if (off * off >= nearest) continue;
		if (dotAt(edges, k + 6, ahead, outward, up) >= 0 && dotAt(edges, k + 9, ahead, outward, up) >= 0)
			nearest = off * off;
		else {
			const along = Math.max(0, dotAt(edges, k + 3, ahead, outward, up));
			nearest = Math.min(nearest, Math.max(0, rho2 - along * along));
		}
	}
	return sign * Math.sqrt(nearest);
}
