import type { Vec, WallPoint } from './vec.ts';

/** The walls a compartment may have, named as one looks in from the entry, in the order places are compared. */
export const WALL_IDS = ['back', 'left', 'right', 'front'] as const;

/** The walls of a compartment; the front wall stands beside the entry. */
export type WallId = (typeof WALL_IDS)[number];

/** Inside size of a compartment. Units: mm; width along the back wall, depth from the back wall to the entry line. */
export interface Footprint {
	readonly width: number;
	readonly depth: number;
}

/** Length of a wall along its own x. Units: mm. */
export const wallLength = (wall: WallId, room: Footprint): number =>
	wall === 'back' || wall === 'front' ? room.width : room.depth;

/**
 * The plan point that stands `off` from a wall at a point of that wall.
 * Units and frame: mm, wall frame in, plan frame out. The left wall is read from the entry to the back, the right wall
 * from the back to the entry, the front wall from the right wall to the left.
 */
export function toPlan(wall: WallId, [x, y]: WallPoint, off: number, room: Footprint): Vec {
	switch (wall) {
		case 'back':
			return [x, off, y];
		case 'left':
			return [off, room.depth - x, y];
		case 'right':
			return [room.width - off, x, y];
		case 'front':
			return [room.width - x, room.depth - off, y];
	}
}

/** The point of a wall nearest to a plan point, and how far it stands off. Units and frame: mm, plan in, wall out. */
export function toWall(
	wall: WallId,
	[x, y, z]: Vec,
	room: Footprint
): { readonly at: WallPoint; readonly off: number } {
	switch (wall) {
		case 'back':
			return { at: [x, z], off: y };
		case 'left':
			return { at: [room.depth - y, z], off: x };
		case 'right':
			return { at: [y, z], off: room.width - x };
		case 'front':
			return { at: [room.width - x, z], off: room.depth - y };
	}
}

/** The wall seen in a mirror held along the depth of the room: left and right change places. */
export const mirroredWall = (wall: WallId): WallId => (wall === 'left' ? 'right' : wall === 'right' ? 'left' : wall);

/** The wall one faces with one's back to a wall. */
export const oppositeWall = (wall: WallId): WallId => OPPOSITE[wall];

const OPPOSITE = { back: 'front', front: 'back', left: 'right', right: 'left' } as const;

/** The way one faces with one's back to a wall. Frame: plan, of length 1. */
export const INTO: Readonly<Record<WallId, Vec>> = {
	back: [0, 1, 0],
	front: [0, -1, 0],
	left: [1, 0, 0],
	right: [-1, 0, 0]
};
