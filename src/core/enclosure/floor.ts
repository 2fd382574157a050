import type { Enclosure } from '#core/case/record.ts';
import { footprintOf } from '#core/case/size.ts';
import { toWall, wallLength } from '#core/geometry/frame.ts';

/** The floor of the shower as a plane. */
export interface Floor {
	/**
	 * Level of the floor at a point of the plan; a point outside the footprint counts as the nearest one inside.
	 * Units and frame: mm, plan frame in, level from the datum line out. Shape: slope at most 0.1.
	 */
	readonly at: (x: number, y: number) => number;
	/** What would have to be asked to know the floor better. */
	readonly unknowns: readonly string[];
}

/** A threshold of a level entry. Units: mm. Source: ADA 2010, 608.7, 1/2 in. */
const LEVEL_ENTRY = 13;

/**
 * The shower floor: on the level of the bathroom floor, or as far above it as was recorded, along its highest side, or along the entry line when it falls
 * toward the entry, because the two floors meet there. A fall that is not known is taken as flat, and said so.
 * Units and frame: mm; `base` is the bathroom floor from the datum line.
 * Source: a fall is rise over run (IPC 417.5.2 gives 1:48); where the floors meet is ours.
 */
export function floorOf(e: Enclosure, base: number): Floor {
	const { at, unknowns } = sloped(e, base + (e.floorRise?.value ?? 0));
	// Over a threshold no higher than a level entry may have, the floors meet; behind a higher one nobody knows.
	const raised = e.floorRise === undefined && (e.threshold?.value ?? 0) > LEVEL_ENTRY;
	return { at, unknowns: raised ? [...unknowns, 'How high is the shower floor above the bathroom floor?'] : unknowns };
}

function sloped(e: Enclosure, base: number): Floor {
	const fall = e.fall?.value;
	const to = e.fallsTo;
	if (fall === undefined) return flat(base, 'How much does the shower floor fall, and to which side?');
	if (fall === 0) return flat(base);
	if (to === undefined) return flat(base, 'To which side does the shower floor fall?');
	const run = runOf(e, to);
	return { at: (x, y) => base - fall * run(x, y), unknowns: [] };
}

function flat(level: number, ...unknowns: readonly string[]): Floor {
	return { at: () => level, unknowns };
}

/** How far down the slope a point lies from the line where the floor is level with the bathroom. */
function runOf(e: Enclosure, to: NonNullable<Enclosure['fallsTo']>): (x: number, y: number) => number {
	const room = footprintOf(e);
	const outward = (y: number) => clamped(y, room.depth);
	if (to === 'back') return (_, y) => room.depth - outward(y);
	if (to === 'entry') return (_, y) => outward(y) - room.depth;
	// Away from the seat wall, or toward it.
	const across = wallLength(e.seatWall === 'back' || e.seatWall === 'front' ? 'left' : 'back', room);
	const ahead = (x: number, y: number) =>
		toWall(e.seatWall, [clamped(x, room.width), clamped(y, room.depth), 0], room).off;
	return to === 'control' ? ahead : (x, y) => across - ahead(x, y);
}

const clamped = (n: number, most: number): number => Math.min(Math.max(n, 0), most);
