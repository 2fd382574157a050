import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Entity, Spot } from './entity.ts';
import { figure } from './figure.ts';
import { line, rectangle, shape } from './path.ts';
import type { View } from './view.ts';
import { PT, widthOf, write } from './type.ts';
import { endsOf, spanOf } from './wall-ends.ts';

/** How far the cut walls at inside corners and the floor at an open end are drawn. Units: mm. */
const CUT = 3;
const OUT = 6;

/** Hides what was drawn below the floor, so that hidden lines end at it. */
export function belowFloor(room: Room, wall: WallId, view: View): Entity {
	const { x0, x1, y1 } = view.window;
	const [left, right] = floorEnds(room, wall, view);
	return shape('floor/below', 'patch', [x0, left], [x1, right], [x1, y1 + 0.3], [x0, y1 + 0.3]);
}

/**
 * The wall's outline, its floor with the fall, the cut of the walls beside it, and F at the entry. An open side has no
 * outline, a wall beside the entry only as far as it stands.
 */
export function wallOutline(room: Room, wall: WallId, view: View, studs: readonly number[]): readonly Entity[] {
	const { x0, y0, x1 } = view.window;
	const [left, right] = floorEnds(room, wall, view);
	const ends = endsOf(room, wall);
	const at = { left: ends.left === 'corner', right: ends.right === 'corner' };
	const base = view.y(room.bathroomFloor);
	// At the entry the floor goes on where it is level with the bathroom's.
	const level = { left: ends.left !== 'entry' || near(left, base), right: ends.right !== 'entry' || near(right, base) };
	const out = {
		left: at.left ? CUT : level.left ? OUT - 1.6 : 0,
		right: at.right ? CUT : level.right ? OUT : 0
	};
	return [
		...(at.left ? [rectangle('outline/cut/left', 'cut', { x0: x0 - CUT, y0: y0 - 2, x1: x0, y1: left })] : []),
		...(at.right ? [rectangle('outline/cut/right', 'cut', { x0: x1, y0: y0 - 2, x1: x1 + CUT, y1: right })] : []),
		...(room.walls[wall].stands ? standing(room, wall, view, studs) : []),
		line('outline/floor', 'outline', [x0 - out.left, left], [x0, left], [x1, right], [x1 + out.right, right]),
		...(level.left ? [] : [line('outline/entry', 'outline', [x0 - OUT + 1.6, base], [x0, base])]),
		...(level.right ? [] : [line('outline/entry', 'outline', [x1, base], [x1 + OUT, base])]),
		...entryFloor(room, wall, view)
	];
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.1;

/** The two sides of a wall as far as it stands and its top, broken off where it goes on above. */
function standing(room: Room, wall: WallId, view: View, studs: readonly number[]): readonly Entity[] {
	const { y0 } = view.window;
	const { from, to } = spanOf(room, wall);
	const floor = (x: number) => view.y(room.floorUnder(wall, x, x).low);
	const [left, right] = [view.x(from), view.x(to)];
	if (!view.broken)
		return [line('outline', 'outline', [left, floor(from)], [left, y0], [right, y0], [right, floor(to)])];
	return [
		line('outline/left', 'outline', [left, floor(from)], [left, y0]),
		line('outline/right', 'outline', [right, floor(to)], [right, y0]),
		breakLine(
			{ x0: left, x1: right, y: y0 },
			studs.map((x) => view.x(x))
		)
	];
}

/** Sheet y of the floor at the left and right end of a side. */
function floorEnds(room: Room, wall: WallId, view: View): readonly [number, number] {
	const { length } = room.walls[wall];
	return [view.y(room.floorUnder(wall, 0, 0).low), view.y(room.floorUnder(wall, length, length).low)];
}

/** The break across the top, its kink clear of the studs whose ticks stand there. */
function breakLine({ x0, x1, y }: { x0: number; x1: number; y: number }, studs: readonly number[]): Entity {
	const places = [0.5, 0.42, 0.58, 0.34, 0.66].map((share) => x0 + share * (x1 - x0));
	const middle = places.find((at) => studs.every((stud) => Math.abs(stud - at) > 5)) ?? (x0 + x1) / 2;
	const points: Spot[] = [
		[x0 - CUT - 1, y],
		[middle - 2.4, y],
		[middle - 0.8, y - 2],
		[middle + 0.8, y + 2],
		[middle + 2.4, y],
		[x1 + CUT + 1, y]
	];
	return line('outline/break', 'break', ...points);
}

/** The level mark of the bathroom floor, F, where the side meets the entry: outside its end, or in the opening of the front. */
function entryFloor(room: Room, wall: WallId, view: View): readonly Entity[] {
	const x = entryOn(room, wall, view);
	if (x === undefined) return [];
	const y = view.y(room.bathroomFloor);
	return [
		shape('floor/mark', 'solid', [x, y - 0.6], [x - 1.3, y - 2.9], [x + 1.3, y - 2.9]),
		write('floor/word', 'floor', [x, y - 7.6], { size: 8.5, tone: 'grey', anchor: 'middle' }),
		write('floor/name', 'F', [x, y - 3.8], { size: 10.5, weight: 'semibold', anchor: 'middle' })
	];
}

function entryOn(room: Room, wall: WallId, view: View): number | undefined {
	const { left, right } = endsOf(room, wall);
	if (right === 'entry') return view.window.x1 + 4.1;
	if (left === 'entry') return view.window.x0 - 3.9;
	const { width } = room.footprint;
	const { x0, x1 } = room.opening;
	return wall === 'front' && x1 > x0 ? view.x(width - (x0 + x1) / 2) : undefined;
}

/** How the floor falls along a wall, in words under it; nothing when it is level there. */
export function fallWords(room: Room, wall: WallId, view: View, unit: LengthUnit): readonly Entity[] {
	const { length } = room.walls[wall];
	const [left, right] = [room.floorUnder(wall, 0, 0).low, room.floorUnder(wall, length, length).low];
	const fall = figure(Math.abs(left - right), unit);
	if (fall === '0') return [];
	const ends: Record<WallId, readonly [string, string]> = {
		back: ['the left', 'the right'],
		left: ['the entry', 'the corner'],
		right: ['the corner', 'the entry'],
		front: ['the left', 'the right']
	};
	const text = `shower floor falls ${fall} to ${ends[wall][left > right ? 1 : 0]}`;
	const size = unit === 'mm' ? 8.5 : 10;
	const middle = (view.window.x0 + view.window.x1) / 2;
	const y = view.window.y1 + 5;
	const half = widthOf(text, size) / 2 + 0.8;
	return [
		rectangle('floor/fall/patch', 'patch', { x0: middle - half, x1: middle + half, y0: y - 1.9, y1: y + 1.9 }),
		write('floor/fall', text, [middle, y + 0.33 * size * PT], { size, tone: 'grey', anchor: 'middle' })
	];
}
