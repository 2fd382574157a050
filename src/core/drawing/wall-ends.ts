import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';

/** What a side ends at: another wall, the entry line, an open side, or the opening beside a wall of the entry. */
export type WallEnd = 'corner' | 'entry' | 'open' | 'opening';

/** The sides to the left and right of a side, seen from inside. */
export const BESIDE: Readonly<Record<WallId, { readonly left: WallId; readonly right: WallId }>> = {
	back: { left: 'left', right: 'right' },
	left: { left: 'front', right: 'back' },
	right: { left: 'back', right: 'front' },
	front: { left: 'right', right: 'left' }
};

/** The part of a side that is drawn as its wall; of an open side the whole. Units and frame: mm, wall frame. */
export function spanOf(room: Room, wall: WallId): { readonly from: number; readonly to: number } {
	const { stands, from, to, length } = room.walls[wall];
	return stands ? { from, to } : { from: 0, to: length };
}

/** What a side ends at, left and right as seen from inside. */
export function endsOf(room: Room, wall: WallId): { readonly left: WallEnd; readonly right: WallEnd } {
	const { from, to } = spanOf(room, wall);
	const { left, right } = BESIDE[wall];
	return {
		left: from > 0 ? 'opening' : endAt(room, wall, left),
		right: to < room.walls[wall].length ? 'opening' : endAt(room, wall, right)
	};
}

function endAt({ walls }: Room, wall: WallId, next: WallId): WallEnd {
	if (next !== 'front') return walls[next].stands ? 'corner' : 'open';
	const { stands, from, to, length } = walls.front;
	const reaches = wall === 'left' ? to === length : from === 0;
	return stands && reaches ? 'corner' : 'entry';
}

/** What the end of a side is called that is no corner. */
const END_WORDS = { entry: 'entry', open: 'open side', opening: 'opening' } as const;

/** What a side has to its left and to its right, in a sentence. */
export function endsSay(room: Room, wall: WallId): string {
	const { left, right } = endsOf(room, wall);
	const word = (end: WallEnd, next: WallId) => (end === 'corner' ? `${next} wall` : END_WORDS[end]);
	const first = word(left, BESIDE[wall].left);
	return `${first[0]?.toUpperCase() ?? ''}${first.slice(1)} to the left, ${word(right, BESIDE[wall].right)} to the right.`;
}
