import { oppositeWall, WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { Variant } from './accessory.ts';
import type { Enclosure } from './record.ts';

/** A wall by what it does: behind the seat, faced from it, beside who sits, or beside the entry. */
export type WallRole = 'seat-wall' | 'control-wall' | 'beside' | 'entry-side';

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
		case 'entry-side':
			// Behind a wall beside the entry nothing is reached from outside.
			return (wall === 'left' || wall === 'right') && !(e.walls.front.stands && wall === e.frontWall?.side);
	}
}

/** Whether a part belongs on a side: a board on the rims of a bath, a seat on its wall, on an open side only a post. */
export function mayGo({ kind, stands }: Variant, wall: WallId, e: Enclosure): boolean {
	if (stands === 'rims') return e.type === 'over-bath' && wall === 'back';
	if (kind === 'seat') return e.type !== 'over-bath' && wall === e.seatWall;
	return e.walls[wall].stands || stands === 'floor-and-ceiling';
}
