import type { Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { Footprint, WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { Scene } from './scene.ts';

/** How far from the back wall, toward the entry, a point of a wall lies. Units and frame: mm; wall x and stand-off in. */
export function fromBack(wall: WallId, x: number, off: number, room: Footprint): number {
	if (wall === 'back') return off;
	return wall === 'left' ? room.depth - x : x;
}

/** How far in front of the seat wall a point of a wall lies, toward the control wall. Units and frame: mm. */
export function fromSeatWall(s: Scene, wall: WallId, at: { readonly x: number; readonly off: number }): number {
	const { footprint, seatWall } = s.room;
	if (wall === seatWall) return at.off;
	if (wall !== 'back') return footprint.width - at.off;
	return seatWall === 'left' ? at.x : footprint.width - at.x;
}

/** The centre line of a seat, from the back wall toward the entry. Units: mm. */
export const centreLine = (s: Scene, seat: Mark): number =>
	fromBack(seat.place.wall, seat.place.x, 0, s.room.footprint);

/** Where a rectangle of a part is on its wall. Units and frame: mm, wall frame. */
export const onWall = (mark: Mark, rect: Rect): Rect => ({
	x0: mark.place.x + rect.x0,
	y0: mark.place.y + rect.y0,
	x1: mark.place.x + rect.x1,
	y1: mark.place.y + rect.y1
});

/** The tube of a bar, flange centre to flange centre. Units and frame: mm, wall frame. */
export function tube(bar: Mark): Rect {
	const { grip, diameter, kind } = bar.variant;
	const half = diameter / 2;
	const across = kind === 'vertical-bar' ? { x: half, y: 0 } : { x: 0, y: half };
	return onWall(bar, {
		x0: grip.x0 - across.x,
		y0: grip.y0 - across.y,
		x1: grip.x1 + across.x,
		y1: grip.y1 + across.y
	});
}

/** What of a part counts in a gap to a bar: the tube of a bar, the outline of anything else. Units and frame: mm, wall. */
export const projecting = (mark: Mark): Rect =>
	mark.variant.diameter > 0 ? tube(mark) : onWall(mark, mark.variant.outline);

/** The lowest and highest shower floor below what a hand works or holds. Units: mm from the datum line. */
export const floorUnder = (s: Scene, m: Mark): ReturnType<Room['floorUnder']> =>
	s.room.floorUnder(m.place.wall, m.place.x + m.variant.grip.x0, m.place.x + m.variant.grip.x1);
