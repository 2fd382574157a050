import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';

/** Which sides one finds at the left and the right end of a side, seen from inside. */
const BESIDE: Readonly<Record<WallId, { readonly left: WallId; readonly right: WallId }>> = {
	back: { left: 'left', right: 'right' },
	left: { left: 'front', right: 'back' },
	right: { left: 'back', right: 'front' },
	front: { left: 'right', right: 'left' }
};

/** Whether another wall meets the end of a side, so that there is an inside corner. */
export function cornerAt(room: Room, wall: WallId, end: 'left' | 'right'): boolean {
	const beside = room.walls[BESIDE[wall][end]];
	if (!beside.stands) return false;
	// Seen from inside, the front wall begins at the right wall and ends at the left one.
	if (beside.id === 'front') return wall === 'right' ? beside.from === 0 : beside.to === beside.length;
	return true;
}

/** At which end of a side the entry is open; undefined where it is not beside it. */
export function entryAt(room: Room, wall: WallId): 'left' | 'right' | undefined {
	if (wall !== 'left' && wall !== 'right') return undefined;
	return cornerAt(room, wall, wall) ? undefined : wall;
}
