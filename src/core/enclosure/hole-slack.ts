import type { WallId } from '#core/geometry/frame.ts';
import { depthIn } from '#core/geometry/rect.ts';
import type { Room } from './room.ts';

/** A round bracket on a wall. Units and frame: mm, wall frame; x, y its centre. */
export interface Disc {
	readonly x: number;
	readonly y: number;
	readonly radius: number;
}

/**
 * How far a bracket keeps clear of everything its holes must not meet, and of the edges of the wall; negative when not.
 * Units and frame: mm, wall frame.
 * Shape: slope at most 1 along any direction on the wall.
 */
export function holeSlack(room: Room, wall: WallId, { x, y, radius }: Disc): number {
	const { from, to, bottom, top, keepOuts } = room.walls[wall];
	let least = depthIn({ x0: from, y0: bottom, x1: to, y1: top }, x, y);
	for (const { rect } of keepOuts) least = Math.min(least, -depthIn(rect, x, y));
	return least - radius;
}
