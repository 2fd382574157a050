import type { Room } from '#core/enclosure/room.ts';
import { INTO, toWall, type WallId } from '#core/geometry/frame.ts';
import { dot, type Vec } from '#core/geometry/vec.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Box, Spot } from '../entity.ts';
import { SCALES } from '../view.ts';

/** A room cut through, looking at one of its walls. */
export interface Sideways {
	/** The wall looked at; the two beside it are cut. */
	readonly far: WallId;
	readonly scale: number;
	/** What is seen: from where to where along the far wall, and levels. Units: mm of the room. */
	readonly seen: Seen;
	readonly window: Box;
	/** Where a point of the room lies on the sheet. */
	readonly spot: (at: Vec) => Spot;
	/** Where along the far wall and above the datum line lies on the sheet. */
	readonly at: (along: number, level: number) => Spot;
	/** How far a point lies toward who looks. Units: mm. */
	readonly near: (at: Vec) => number;
	/** Where a point of the room lies along the far wall. Units: mm. */
	readonly along: (at: Vec) => number;
}

/** What is seen of a room cut through. Units: mm along the far wall, levels from the datum line. */
export interface Seen {
	readonly x0: number;
	readonly x1: number;
	readonly low: number;
	readonly high: number;
}

/** Scales to choose from: those that have a name in a unit, for a sheet that states it, or any. */
export type Scales = LengthUnit | 'any';

/**
 * A room looked at from the side, at the largest scale that fits a box, in the middle of its foot; the smallest where none
 * with a name does.
 */
export function sidewaysOf(
	room: Room,
	far: WallId,
	seen: Seen,
	{ box, scales }: { box: Box; scales: Scales }
): Sideways {
	const [width, height] = [box.x1 - box.x0, box.y1 - box.y0];
	const named: readonly number[] = scales === 'any' ? [] : SCALES[scales];
	const least = Math.max((seen.x1 - seen.x0) / width, (seen.high - seen.low) / height);
	const scale = scales === 'any' ? least : (named.find((one) => one >= least) ?? named.at(-1) ?? 1);
	const left = box.x0 + Math.max(0, (width - (seen.x1 - seen.x0) / scale) / 2);
	const at = (along: number, level: number): Spot => [
		left + (along - seen.x0) / scale,
		box.y1 - (level - seen.low) / scale
	];
	const on = (p: Vec) => toWall(far, p, room.footprint);
	return {
		far,
		scale,
		seen,
		at,
		window: { x0: left, y0: at(0, seen.high)[1], x1: at(seen.x1, 0)[0], y1: box.y1 },
		spot: (p) => at(...on(p).at),
		near: (p) => dot(p, INTO[far]),
		along: (p) => on(p).at[0]
	};
}
