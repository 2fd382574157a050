import type { Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { drawn, rect, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';

/** The seat in profile, where it stands out from the wall beside the one that is looked at. */
export function profileShapes(seat: Mark, room: Room, wall: WallId, view: ScreenView): readonly Shape[] {
	if (wall !== 'back' || seat.place.wall === 'back') return [];
	const { gap, depth } = seat.variant;
	const out = seat.place.wall === 'left' ? (off: number) => off : (off: number) => room.footprint.width - off;
	const [x0, y] = view.at(out(gap), seat.place.y);
	const x1 = view.x(out(depth));
	const foot = view.at(out(0), seat.place.y - 120);
	const under = y + 14;
	return [
		drawn(
			'profile/strut',
			'fine',
			`M${String(foot[0])} ${String(foot[1])}L${String(x0 + (x1 - x0) * 0.6)} ${String(under)}`
		),
		rect('profile/seat', 'fine profile', [x0, y], [x1, under], 4)
	];
}
