import type { Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import { toPlan, type Footprint, type WallId } from '#core/geometry/frame.ts';
import { add, dot, less, times, type Rect, type Vec } from '#core/geometry/vec.ts';
import type { Scene } from './scene.ts';

/** How far from the back wall, toward the entry, a point of a wall lies. Units and frame: mm; wall x and stand-off in. */
export const fromBack = (wall: WallId, x: number, off: number, room: Footprint): number =>
	toPlan(wall, [x, 0], off, room)[1];

/** How far in front of the seat wall a point of a wall lies, into the room. Units and frame: mm. */
export function fromSeatWall(s: Scene, wall: WallId, at: { readonly x: number; readonly off: number }): number {
	const { footprint, sitting } = s.room;
	return dot(less(toPlan(wall, [at.x, 0], at.off, footprint), sitting.corner), sitting.ahead);
}

/** How far along the seat wall, from the corner the seat is set out from, a point of a wall lies. Units and frame: mm. */
export function alongSeatWall(s: Scene, wall: WallId, at: { readonly x: number; readonly off: number }): number {
	const { footprint, sitting } = s.room;
	return dot(less(toPlan(wall, [at.x, 0], at.off, footprint), sitting.corner), sitting.along);
}

/** Where the plane the back rests on meets the centre line of a seat, on top of it. Units and frame: mm, plan frame. */
export function seatPoint(s: Scene, { place, variant }: Mark): Vec {
	const { footprint, sitting } = s.room;
	if (variant.stands !== 'rims') return toPlan(place.wall, [place.x, place.y], variant.backRest ?? 0, footprint);
	// A board lies across the whole width of the bath.
	const middle = toPlan(place.wall, [place.x, place.y], footprint.depth / 2, footprint);
	return less(middle, times(sitting.ahead, variant.depth / 2));
}

/** The centre line of a seat, from the corner it is set out from. Units: mm. */
export const centreLine = (s: Scene, seat: Mark): number => {
	const { corner, along } = s.room.sitting;
	return dot(less(seatPoint(s, seat), corner), along);
};

/** The middle of the front edge of a seat. Units and frame: mm, plan frame. */
export const seatEdge = (s: Scene, seat: Mark): Vec =>
	add(seatPoint(s, seat), times(s.room.sitting.ahead, seat.variant.depth - (seat.variant.backRest ?? 0)));

/** The front edge of a seat, ahead of the seat wall. Units: mm. */
export const seatFront = (s: Scene, seat: Mark): number => {
	const { corner, ahead } = s.room.sitting;
	return dot(less(seatEdge(s, seat), corner), ahead);
};

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

/** What is to be asked where no wall beside the entry is recorded. */
export const NO_FRONT_WALL = 'At which end of the front does the wall beside the entry stand, and how long is it?';

/** The side wall farthest from an entry at one end of the front; none where the entry is as wide as the room. */
export function farSide({ opening, footprint }: Room): WallId | undefined {
	if (opening.x0 > 0) return 'left';
	return opening.x1 < footprint.width ? 'right' : undefined;
}

/** The lowest and highest shower floor below what a hand works or holds. Units: mm from the datum line. */
export const floorUnder = (s: Scene, m: Mark): ReturnType<Room['floorUnder']> =>
	s.room.floorUnder(m.place.wall, m.place.x + m.variant.grip.x0, m.place.x + m.variant.grip.x1);
