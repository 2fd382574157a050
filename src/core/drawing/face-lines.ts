import type { Wall } from '#core/case/record.ts';
import { cableStrips } from '#core/enclosure/keep-out.ts';
import type { RoomWall } from '#core/enclosure/room.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { Box, Entity, Spot } from './entity.ts';
import { hatch, lines, rectangle } from './path.ts';
import { isSeen } from './seen.ts';
import type { View } from './view.ts';
import type { Wording } from './labels.ts';

/** Joints nearer to each other than this are a grey area. Units: mm of the sheet. */
const NEAREST = 1.5;
/** Between the lines of a strip where cables may run. Units: mm of the sheet. */
const STRIP = 6;

/** Middles of tile joints between two ends, from one of them. Units: mm. */
function joints(one: number, module: number, [from, to]: readonly [number, number]): readonly number[] {
	const first = Math.ceil((from - one) / module);
	const count = Math.max(0, Math.floor((to - one) / module) - first + 1);
	return Array.from({ length: count }, (_, i) => one + (first + i) * module);
}

/** Where the joints of tiles are on a wall as far as it stands, when they were seen. Units and frame: mm, wall frame. */
export function jointsOf(
	{ facing }: Wall,
	{ from, to, bottom, top }: Pick<RoomWall, 'from' | 'to' | 'bottom' | 'top'>,
	nearest: number
): { readonly across: readonly number[]; readonly up: readonly number[] } {
	const tiles = facing?.tiles;
	if (!tiles || !isSeen(tiles.how)) return { across: [], up: [] };
	const [across, up] = [tiles.across + tiles.joint, tiles.up + tiles.joint];
	if (Math.min(across, up) < nearest) return { across: [], up: [] };
	return { across: joints(tiles.x, across, [from, to]), up: joints(tiles.y, up, [bottom, top]) };
}

/** The joints of tiles as the lightest lines; none where they would lie too near. */
export function tileLines(wall: Wall, on: RoomWall, view: View): readonly Entity[] {
	const { across, up } = jointsOf(wall, { ...on, bottom: on.bottom - 200 }, NEAREST * view.scale);
	const { x0, x1 } = view.wall;
	const { y0, y1 } = view.window;
	const inside = up.map((level) => view.y(level)).filter((y) => y > y0 && y < y1);
	const strokes: readonly (readonly Spot[])[] = [
		...across.map((x): readonly Spot[] => [
			[view.x(x), y0],
			[view.x(x), y1]
		]),
		...inside.map((y): readonly Spot[] => [
			[x0, y],
			[x1, y]
		])
	];
	return strokes.length > 0 ? [lines('tiles', 'tile', strokes)] : [];
}

/** The strips of a wall where cables may run from its electric points, with words on each upright one. */
export function cableBands(
	wall: Wall,
	on: RoomWall,
	view: View
): { readonly entities: readonly Entity[]; readonly words: readonly Wording[] } {
	const strips = stripsOn(wall, on).flatMap((strip) => view.box(strip) ?? []);
	return {
		entities: strips.flatMap((box, i) => band(`cables/${String(i)}`, box)),
		words: strips.flatMap((box, i) =>
			box.y1 - box.y0 > box.x1 - box.x0 || strips.length === 1
				? [{ id: `cables/${String(i)}/word`, text: 'cables may run here', on: box }]
				: []
		)
	};
}

/** The same on the wall itself, as far as it stands. Units and frame: mm, wall frame. */
export const stripsOn = (wall: Wall, { from, to, bottom, top }: RoomWall): readonly Rect[] =>
	cableStrips(wall, { from, to, bottom: bottom - 200, top });

const band = (id: string, box: Box): readonly Entity[] => [
	hatch(`${id}/hatch`, 'cables-hatch', box, { gap: STRIP, lean: 'falling' }),
	rectangle(id, 'cables', box)
];
