import type { Vec, WallPoint } from './vec.ts';

/** The walls of a compartment, named as one looks in from the entry. */
export type WallId = 'back' | 'left' | 'right';

/** Inside size of a compartment. Units: mm; width along the back wall, depth from the back wall to the entry line. */
export interface Footprint {
	readonly width: number;
	readonly depth: number;
}

/** Length of a wall along its own x. Units: mm. */
export const wallLength = (wall: WallId, room: Footprint): number => (wall === 'back' ? room.width : room.depth);

/**
 * The plan point that stands `off` from a wall at a point of that wall.
 * Units and frame: mm, wall frame in, plan frame out. The left wall is read from the entry to the back, the right wall
 * from the back to the entry.
 */
export function toPlan(wall: WallId, [x, y]: WallPoint, off: number, room: Footprint): Vec {
	switch (wall) {
		case 'back':
			return [x, off, y];
		case 'left':
			return [off, room.depth - x, y];
		case 'right':
			return [room.width - off, x, y];
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
	}
}

/** The wall seen in a mirror held along the depth of the room: left and right change places. */
export const mirroredWall = (wall: WallId): WallId => (wall === 'left' ? 'right' : wall === 'right' ? 'left' : 'back');
