import { oppositeWall, WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { Variant } from './accessory.ts';
import type { Enclosure } from './record.ts';

/** A wall by what it does: behind the seat, faced from it, beside who sits, at the corner the seat is set out from, or beside the entry. */
export type WallRole = 'seat-wall' | 'control-wall' | 'beside' | 'corner-wall' | 'entry-side';

/**
 * The sides of an enclosure that play a role, open ones too: what stands by itself may stand there.
 * Shape: in the order of WALL_IDS; one side may play several.
 */
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
		case 'corner-wall':
			return wall === cornerWall(e);
		case 'entry-side':
			// Behind a wall beside the entry nothing is reached from outside.
			return (wall === 'left' || wall === 'right') && !(e.walls.front.stands && wall === e.frontWall?.side);
	}
}

/** The side that makes the corner a seat is set out from with its wall: the back of a seat on a side wall, the nearer side of one on the front wall, else the left. */
function cornerWall({ seatWall, frontWall }: Enclosure): WallId {
	if (seatWall === 'left' || seatWall === 'right') return 'back';
	return seatWall === 'front' && frontWall?.side === 'right' ? 'right' : 'left';
}

/** Whether a part belongs on a side: a board on the rims of a bath, a seat on its wall, on an open side only a post. */
export function mayGo({ kind, stands }: Variant, wall: WallId, e: Enclosure): boolean {
	if (stands === 'rims') return e.type === 'over-bath' && wall === 'back';
	if (kind === 'seat') return e.type !== 'over-bath' && wall === e.seatWall;
	return e.walls[wall].stands || stands === 'floor-and-ceiling';
}
