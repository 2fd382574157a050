import { oppositeWall, WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { Enclosure } from './record.ts';

/** A wall by what it does: behind the seat, faced from it, beside who sits, or beside the entry. */
export type WallRole = 'seat-wall' | 'control-wall' | 'beside' | 'entry-side';

/**
 * The walls that play a role in an enclosure and stand there.
 * Shape: in the order of WALL_IDS; one wall may play several.
 */
export const wallsOf = (e: Enclosure, role: WallRole): readonly WallId[] =>
	sidesOf(e, role).filter((wall) => e.walls[wall].stands);

/** The same, open sides too: what stands by itself may stand there. */
export const sidesOf = (e: Enclosure, role: WallRole): readonly WallId[] =>
	WALL_IDS.filter((wall) => plays(e, role, wall));

function plays(e: Enclosure, role: WallRole, wall: WallId): boolean {
	switch (role) {
		case 'seat-wall':
			return wall === e.seatWall;
		case 'control-wall':
			return wall === oppositeWall(e.seatWall);
		case 'beside':
			return wall !== e.seatWall && wall !== oppositeWall(e.seatWall);
		case 'entry-side':
			// Behind a wall beside the entry nothing is reached from outside.
			return (wall === 'left' || wall === 'right') && !(e.walls.front.stands && wall === e.frontWall?.side);
	}
}
