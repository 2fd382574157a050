import type { Enclosure } from '#core/case/record.ts';
import { toPlan, wallLength, type Footprint, type WallId } from '#core/geometry/frame.ts';
import { floorOf, type Floor } from './floor.ts';
import { keepOutsOf, type KeepOut } from './keep-out.ts';

/** One wall as the plan sees it. Units and frame: mm, wall frame, levels from the datum line. */
export interface RoomWall {
	readonly id: WallId;
	readonly length: number;
	/** The highest floor level along it. */
	readonly bottom: number;
	readonly top: number;
	readonly keepOuts: readonly KeepOut[];
	/** What is not recorded behind it is not there. */
	readonly surveyed: boolean;
}

/** A compartment as the plan sees it. Units and frame: mm, plan frame, levels from the datum line. */
export interface Room {
	readonly footprint: Footprint;
	readonly seatWall: 'left' | 'right';
	/** The wall opposite the seat. */
	readonly controlWall: 'left' | 'right';
	/** Top of the walls above the bathroom floor. */
	readonly height: number;
	/** The bathroom finish floor at the entry. */
	readonly bathroomFloor: number;
	/** Distance of the entry line from the back wall. */
	readonly entryLine: number;
	readonly walls: Readonly<Record<WallId, RoomWall>>;
	/** Level of the shower floor at a point of the plan. Shape: slope at most 0.1. */
	readonly floorAt: (x: number, y: number) => number;
	/** The lowest and highest level of the shower floor under a span of a wall. */
	readonly floorUnder: (wall: WallId, x0: number, x1: number) => Span;
	/** Level of the top of a wall. */
	readonly top: (wall: WallId) => number;
	/** What would have to be asked to know the room better, in plain sentences. */
	readonly unknowns: readonly string[];
}

/** A range of levels. Units: mm from the datum line. */
interface Span {
	readonly low: number;
	readonly high: number;
}

/**
 * The room of a surveyed enclosure. Without a datum line every level is from the bathroom floor, and said so.
 * Units and frame: mm, plan frame.
 */
export function roomOf(e: Enclosure): Room {
	const footprint = { width: e.width.value, depth: e.depth.value };
	const bathroomFloor = 0 - (e.datum?.value ?? 0);
	const floor = floorOf(e, bathroomFloor);
	const floorUnder = (wall: WallId, x0: number, x1: number) => under(floor, footprint, { wall, x0, x1 });
	const wall = (id: WallId): RoomWall => ({
		id,
		length: wallLength(id, footprint),
		bottom: floorUnder(id, 0, wallLength(id, footprint)).high,
		top: bathroomFloor + e.height.value,
		keepOuts: keepOutsOf(e.walls[id]),
		surveyed: e.walls[id].surveyed
	});
	const walls = { back: wall('back'), left: wall('left'), right: wall('right') };
	return {
		footprint,
		seatWall: e.seatWall,
		controlWall: e.seatWall === 'left' ? 'right' : 'left',
		height: e.height.value,
		bathroomFloor,
		entryLine: e.depth.value,
		walls,
		floorAt: floor.at,
		floorUnder,
		top: (id) => walls[id].top,
		unknowns: [...(e.datum ? [] : ['How high is the datum line above the bathroom floor?']), ...floor.unknowns]
	};
}

/** A plane has its extremes at the ends of a span. */
function under(floor: Floor, room: Footprint, on: { wall: WallId; x0: number; x1: number }): Span {
	const levels = [on.x0, on.x1].map((along) => {
		const [x, y] = toPlan(on.wall, [along, 0], 0, room);
		return floor.at(x, y);
	});
	return { low: Math.min(...levels), high: Math.max(...levels) };
}
