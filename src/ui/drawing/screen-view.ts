import type { Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Px } from './shape.ts';

/** A wall on the screen: how it is scaled and where it lies. Units: px; wall coordinates in mm. */
export interface ScreenView {
	readonly width: number;
	readonly height: number;
	/** px for one mm. */
	readonly scale: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	/** The lowest floor level. */
	readonly bottom: number;
	/** The wall goes on above what is drawn. */
	readonly broken: boolean;
	readonly x: (wallX: number) => number;
	readonly y: (level: number) => number;
	readonly at: (wallX: number, level: number) => Px;
}

/** What a view is made for. Units: px for `width` and `height`. */
export interface Framed {
	readonly room: Room;
	readonly wall: WallId;
	readonly marks: readonly Mark[];
	/** Other levels that must be seen, mm. */
	readonly levels?: readonly number[];
	readonly width: number;
	readonly height: number;
}

/** Room beside the wall, px: the ladder of heights to the left, hatching to the right, running figures above. */
const BESIDE = { left: 124, right: 24, top: 52, bottom: 20 } as const;
/** What is drawn above the highest mark, mm; a wall is never drawn lower than a person reaches. */
const ABOVE = 160;
const LEAST_SEEN = 1500;

/** The height a wall takes that is scaled by a width alone. Units: px. */
export function heightFor(framed: Omit<Framed, 'height'>): number {
	const { length } = framed.room.walls[framed.wall];
	const { low, seen } = seenOf(framed);
	return ((framed.width - BESIDE.left - BESIDE.right) / length) * (seen - low) + BESIDE.top + BESIDE.bottom;
}

/** The levels a drawing goes from and to. */
function seenOf({ room, wall, marks, levels = [] }: Omit<Framed, 'height'>): {
	readonly low: number;
	readonly seen: number;
} {
	const { length, top } = room.walls[wall];
	const low = Math.min(room.bathroomFloor, room.floorUnder(wall, 0, length).low);
	const hung = marks.filter(({ variant }) => variant.stands !== 'floor-and-ceiling');
	const tops = [...levels, ...hung.map((m) => m.place.y + m.variant.outline.y1)];
	const highest = Math.max(low + LEAST_SEEN, ...tops.map((level) => level + ABOVE));
	return { low, seen: Math.min(top, highest) };
}

/** The largest scale at which the wall stands in the space given, from the floor to above the highest mark. */
export function screenView(framed: Framed): ScreenView {
	const { room, wall, width, height } = framed;
	const { length, top } = room.walls[wall];
	const { low, seen } = seenOf(framed);
	const scale = Math.min(
		(width - BESIDE.left - BESIDE.right) / length,
		(height - BESIDE.top - BESIDE.bottom) / (seen - low)
	);
	const left = BESIDE.left;
	const bottom = height - BESIDE.bottom;
	const x = (wallX: number): number => left + wallX * scale;
	const y = (level: number): number => bottom - (level - low) * scale;
	return {
		width,
		height,
		scale,
		left,
		right: x(length),
		top: y(seen),
		bottom,
		broken: seen < top,
		x,
		y,
		at: (wallX, level) => [x(wallX), y(level)]
	};
}
