import type { Entity, Path, Spot } from '../entity.ts';

const cornersOf = ({ d }: Path): readonly Spot[] => d.map(({ to }) => to);

function toSegment([x, y]: Spot, [ax, ay]: Spot, [bx, by]: Spot): number {
	const [dx, dy] = [bx - ax, by - ay];
	const length = dx * dx + dy * dy;
	const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / length));
	return Math.hypot(x - ax - t * dx, y - ay - t * dy);
}

/** Whether a point lies inside a closed outline: a ray to the right crosses it an odd number of times. */
function within([x, y]: Spot, corners: readonly Spot[]): boolean {
	let inside = false;
	for (const [i, [ax, ay]] of corners.entries()) {
		const [bx, by] = corners.at(i - 1) ?? [ax, ay];
		if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) inside = !inside;
	}
	return inside;
}

/**
 * Whether a round place is clear of some outlines; an arc counts as its chord.
 * Units and frame: mm of the sheet.
 */
export function clearOf(entities: readonly Entity[], radius: number): (spot: Spot) => boolean {
	const outlines = entities.flatMap((e) => (e.kind === 'path' ? [{ corners: cornersOf(e), closed: e.closed }] : []));
	const near = (spot: Spot, corners: readonly Spot[], closed: boolean) =>
		corners.some((corner, i) => {
			const before = i > 0 || closed ? corners.at(i - 1) : corner;
			return toSegment(spot, before ?? corner, corner) < radius;
		});
	return (spot) =>
		!outlines.some(({ corners, closed }) => near(spot, corners, closed) || (closed && within(spot, corners)));
}
