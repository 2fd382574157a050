import type { Mark } from '#core/case/accessory.ts';
import { BACK_REST } from '#core/drawing/seat-plan.ts';
import type { Room } from '#core/enclosure/room.ts';
import { toPlan, toWall, type WallId } from '#core/geometry/frame.ts';
import { drawn, rect, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';

/** The seat in profile, where it stands out from a wall beside the one that is looked at. */
export function profileShapes(seat: Mark, room: Room, wall: WallId, view: ScreenView): readonly Shape[] {
	const ways = [wall, seat.place.wall].map((id) => id === 'back' || id === 'front');
	if (ways[0] === ways[1]) return [];
	const { footprint } = room;
	const { gap, depth, stands, arm, frontLegs, backRest } = seat.variant;
	const across = stands === 'rims';
	const along = (off: number): number =>
		toWall(wall, toPlan(seat.place.wall, [seat.place.x, 0], off, footprint), footprint).at[0];
	// A board lies across the whole bath.
	const [x0, y] = view.at(along(across ? 0 : gap), seat.place.y);
	const x1 = view.x(along(across ? footprint.depth : (arm?.to ?? depth)));
	const under = y + 14;
	const board = rect('profile/seat', 'fine profile', [x0, y], [x1, under], 4);
	if (across) return [board];
	const foot =
		stands === 'legs'
			? legs(x0, x1, { under, floor: view.bottom })
			: frontLegs !== undefined
				? `M${String(view.x(along(frontLegs)))} ${String(under)}V${String(view.bottom)}`
				: strut(view.x(along(0)), x0 + (x1 - x0) * 0.6, { under, low: view.y(seat.place.y - 120) }) +
					(arm ? `M${String(x0 + (x1 - x0) * 0.9)} ${String(under)}V${String(view.bottom)}` : '');
	if (backRest === undefined) return [drawn('profile/strut', 'fine', foot), board];
	const beam = `M${String(view.x(along(0)))} ${String(under)}H${String(x0)}`;
	const rest = [backRest - BACK_REST.thick, backRest].map((off) => view.x(along(off))) as [number, number];
	return [
		drawn('profile/strut', 'fine', foot + beam),
		rect(
			'profile/back-rest',
			'fine profile',
			[rest[0], view.y(seat.place.y + BACK_REST.high)],
			[rest[1], view.y(seat.place.y + BACK_REST.low)],
			3
		),
		board
	];
}

function strut(wall: number, to: number, { under, low }: { under: number; low: number }): string {
	return `M${String(wall)} ${String(low)}L${String(to)} ${String(under)}`;
}

function legs(x0: number, x1: number, { under, floor }: { under: number; floor: number }): string {
	const [a, b] = [x0 + (x1 - x0) * 0.12, x0 + (x1 - x0) * 0.88].map(String);
	return `M${a ?? ''} ${String(under)}V${String(floor)}M${b ?? ''} ${String(under)}V${String(floor)}`;
}
