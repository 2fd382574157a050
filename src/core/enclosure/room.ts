import type { Enclosure } from '#core/case/record.ts';
import { INTO, oppositeWall, toPlan, WALL_IDS, wallLength, type Footprint, type WallId } from '#core/geometry/frame.ts';
import type { Vec } from '#core/geometry/vec.ts';
import { footprintOf, leaningOf } from '#core/case/size.ts';
import { floorOf, type Floor } from './floor.ts';
import { offSquare, SQUARE } from './setting.ts';
import { EXISTING, keepOutsOf, type KeepOut } from './keep-out.ts';

/** One wall as the plan sees it. Units and frame: mm, wall frame, levels from the datum line. */
export interface RoomWall {
	readonly id: WallId;
	/** Whether there is such a wall; where not, the side is open. */
	readonly stands: boolean;
	/** The whole side of the footprint. */
	readonly length: number;
	/** Where the wall begins and ends along its side. */
	readonly from: number;
	readonly to: number;
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
	/** The wall at the back of who sits. */
	readonly seatWall: WallId;
	/** The side opposite the seat. */
	readonly controlWall: WallId;
	/** How the room lies to who sits. */
	readonly sitting: Sitting;
	/** Where the entry is open, along the width. */
	readonly opening: { readonly x0: number; readonly x1: number };
	/** Rim of a bath, edge of a tray or threshold above the bathroom floor; 0 where none is recorded. */
	readonly step: number;
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

/**
 * The frame of who sits: from the corner the seat is set out from, along the seat wall, and ahead into the room.
 * Units and frame: mm, plan frame; directions of length 1.
 */
interface Sitting {
	readonly corner: Vec;
	readonly along: Vec;
	readonly ahead: Vec;
	/** Length of the seat wall from that corner, and of the room ahead of it. */
	readonly run: number;
	readonly reach: number;
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
	const footprint = footprintOf(e);
	const bathroomFloor = (e.floorToCome?.value ?? 0) - (e.datum?.value ?? 0);
	const floor = floorOf(e, bathroomFloor);
	const floorUnder = (wall: WallId, x0: number, x1: number) => under(floor, footprint, { wall, x0, x1 });
	const wall = (id: WallId): RoomWall => {
		const length = wallLength(id, footprint);
		return {
			id,
			stands: e.walls[id].stands,
			length,
			...extent(e, id, length),
			bottom: floorUnder(id, 0, length).high,
			top: bathroomFloor + e.height.value,
			keepOuts: keepOutsOf(e.walls[id]),
			surveyed: e.walls[id].surveyed
		};
	};
	const walls = { back: wall('back'), left: wall('left'), right: wall('right'), front: wall('front') };
	return {
		footprint,
		seatWall: e.seatWall,
		controlWall: oppositeWall(e.seatWall),
		sitting: sittingIn(footprint, walls[e.seatWall], e.frontWall?.side),
		opening: openingOf(e, footprint.width),
		step: e.threshold?.value ?? 0,
		height: e.height.value,
		bathroomFloor,
		entryLine: footprint.depth,
		walls,
		floorAt: floor.at,
		floorUnder,
		top: (id) => walls[id].top,
		unknowns: [
			...(e.datum ? [] : ['How high is the datum line above the bathroom floor?']),
			...floor.unknowns,
			...toBeGrabbed(e),
			...outOfSquare(e),
			...outOfPlumb(e)
		]
	};
}

/** What stays and will be held on to, and was never tested for that. */
function toBeGrabbed(e: Enclosure): readonly string[] {
	return WALL_IDS.flatMap((id) =>
		Object.values(e.walls[id].existing)
			.filter(({ fate, grabbed, tested }) => fate === 'keep' && grabbed && !tested)
			.map(
				({ what }) =>
					`Does the ${EXISTING[what]} on the ${id} wall hold? It will be grabbed: test it as a bar, or take it away.`
			)
	);
}

function outOfSquare(e: Enclosure): readonly string[] {
	const off = Math.abs(offSquare(e) ?? 0);
	if (off <= SQUARE) return [];
	return [
		`The side walls run ${off.toFixed(0)} mm off square by the entry: is every mark measured along its own wall, from its corner?`
	];
}

/** Sizes differing by more than this over the height want a level held to the walls. Units: mm. Ours. */
const UPRIGHT = 5;

/** The size differs over the height, and nobody held a level to the walls that would tell which of them leans. */
function outOfPlumb(e: Enclosure): readonly string[] {
	const off = leaningOf(e);
	const asked = (by: number, walls: readonly WallId[], what: string): readonly string[] => {
		const unheld = walls.filter((id) => e.walls[id].stands && !e.walls[id].plumb);
		if (by <= UPRIGHT || unheld.length === 0) return [];
		return [
			`The ${what} differs by ${by.toFixed(0)} mm from low to high: which wall leans? Hold a level upright to the ${unheld.join(' and the ')} wall.`
		];
	};
	return [...asked(off.width, ['left', 'right'], 'width'), ...asked(off.depth, ['back'], 'depth')];
}

/** Only the front wall may be shorter than its side. */
function extent({ frontWall }: Enclosure, id: WallId, length: number): Pick<RoomWall, 'from' | 'to'> {
	if (id !== 'front' || !frontWall) return { from: 0, to: length };
	const own = Math.min(frontWall.length.value, length);
	// Seen from inside the front wall is read from the right end of the room.
	return frontWall.side === 'right' ? { from: 0, to: own } : { from: length - own, to: length };
}

function openingOf({ walls, frontWall }: Enclosure, width: number): Room['opening'] {
	if (!walls.front.stands || !frontWall) return { x0: 0, x1: width };
	const own = Math.min(frontWall.length.value, width);
	return frontWall.side === 'right' ? { x0: 0, x1: width - own } : { x0: own, x1: width };
}

/** A seat on a side wall is set out from the back wall, one on the front wall from the corner it makes, else from the left. */
function sittingIn(room: Footprint, { id, from, to }: RoomWall, side: 'left' | 'right' | undefined): Sitting {
	const ends = { first: toPlan(id, [from, 0], 0, room), last: toPlan(id, [to, 0], 0, room) };
	const atLast = id === 'left' || (id === 'front' && side === 'left');
	const corner = atLast ? ends.last : ends.first;
	const other = atLast ? ends.first : ends.last;
	const run = to - from;
	const along: Vec = [(other[0] - corner[0]) / run, (other[1] - corner[1]) / run, 0];
	const ahead = INTO[id];
	return { corner, along, ahead, run, reach: ahead[0] === 0 ? room.depth : room.width };
}

/** A plane has its extremes at the ends of a span. */
function under(floor: Floor, room: Footprint, on: { wall: WallId; x0: number; x1: number }): Span {
	const levels = [on.x0, on.x1].map((along) => {
		const [x, y] = toPlan(on.wall, [along, 0], 0, room);
		return floor.at(x, y);
	});
	return { low: Math.min(...levels), high: Math.max(...levels) };
}
