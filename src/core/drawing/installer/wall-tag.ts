import type { WallId } from '#core/geometry/frame.ts';
import type { Entity, Spot } from '../entity.ts';
import { circle, shape } from '../path.ts';
import { PT, write } from '../type.ts';

/** Out of the room through each wall. Frame: the sheet, y down. */
export const OUT: Readonly<Record<WallId, Spot>> = { back: [0, -1], left: [-1, 0], right: [1, 0], front: [0, 1] };

/** Radius of the tag of a wall, and how far its point goes past it. Units: mm. */
const WALL_TAG = 3.6;
const POINT = 2.6;
/** The square that takes the tag whichever way it points. Units: mm. */
export const TAG_SIZE = 2 * (WALL_TAG + POINT);

/** The tag of a wall: a ring with the number of its sheet, its point towards the wall as one looks at it. */
export function wallTagAt(
	id: string,
	{ wall, sheet }: { wall: WallId; sheet: number },
	[x, y]: Spot
): readonly Entity[] {
	const [dx, dy] = OUT[wall];
	const far = WALL_TAG + POINT;
	const wing = 0.82 * WALL_TAG;
	const root = 0.57 * WALL_TAG;
	const at = (along: number, across: number): Spot => [x + along * dx - across * dy, y + along * dy + across * dx];
	const size = 11;
	return [
		shape(`${id}/point`, 'solid', at(far, 0), at(root, wing), at(root, -wing)),
		circle(`${id}/ring`, 'ring', [x, y], WALL_TAG),
		write(id, String(sheet), [x, y + 0.33 * size * PT], { size, weight: 'semibold', anchor: 'middle' })
	];
}
