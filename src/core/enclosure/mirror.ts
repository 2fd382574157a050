import type { Enclosure, Wall } from '#core/case/record.ts';
import { footprintOf } from '#core/case/size.ts';
import { mirroredWall } from '#core/geometry/frame.ts';
import { mm, type Mm } from '#core/units/length.ts';

interface Wide {
	readonly x0: Mm;
	readonly x1: Mm;
}

/**
 * The same enclosure for the other hand: left and right walls exchanged, every wall read
 * from its other end.
 * Shape: done twice it gives the first one back.
 */
export function mirroredEnclosure(e: Enclosure): Enclosure {
	const { width, depth } = footprintOf(e);
	return {
		...e,
		seatWall: mirroredWall(e.seatWall),
		...(e.diagonals && { diagonals: { fromLeft: e.diagonals.fromRight, fromRight: e.diagonals.fromLeft } }),
		...(e.closing?.hinge && { closing: { ...e.closing, hinge: e.closing.hinge === 'left' ? 'right' : 'left' } }),
		...(e.drain && { drain: { ...e.drain, x: mm(width - e.drain.x) } }),
		...(e.frontWall && { frontWall: { ...e.frontWall, side: e.frontWall.side === 'left' ? 'right' : 'left' } }),
		walls: {
			front: mirrored(e.walls.front, width),
			back: mirrored(e.walls.back, width),
			left: mirrored(e.walls.right, depth),
			right: mirrored(e.walls.left, depth)
		}
	};
}

function mirrored(wall: Wall, length: number): Wall {
	const across = <T extends Wide>(r: T): T => ({ ...r, x0: mm(length - r.x1), x1: mm(length - r.x0) });
	return {
		...wall,
		...(wall.facing?.tiles && {
			facing: { ...wall.facing, tiles: { ...wall.facing.tiles, x: mm(length - wall.facing.tiles.x) } }
		}),
		...(wall.rhythm && { rhythm: { ...wall.rhythm, from: mm(length - wall.rhythm.from) } }),
		studs: each(wall.studs, (s) => ({ ...s, x: mm(length - s.x) })),
		backing: each(wall.backing, across),
		keepOuts: each(wall.keepOuts, across),
		existing: each(wall.existing, across)
	};
}

function each<T>(map: Readonly<Record<string, T>>, change: (one: T) => T): Record<string, T> {
	return Object.fromEntries(Object.entries(map).map(([id, one]) => [id, change(one)]));
}
