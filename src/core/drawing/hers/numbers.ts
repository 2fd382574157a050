import type { Box, Entity, Spot } from '../entity.ts';
import { boxAt, freeSpot } from '../free-spot.ts';

import { line } from '../path.ts';
import { clearOf } from './clear-of.ts';
import type { HerItem } from './item.ts';
import { DISC, numberDisc } from './page.ts';

/** A thing in a picture, and the part of it its number belongs to. Units and frame: mm of the sheet. */
export interface Pointed {
	readonly id: string;
	readonly on: Box;
}

/** Where numbers may stand: in a box, free of what is taken; `id` begins their ids. */
interface Among {
	readonly taken: readonly Box[];
	readonly box: Box;
	readonly id: string;
	/** What must be kept clear beside that. */
	readonly figure?: readonly Entity[];
}

const AIR = 1;
/** From a number to its thing without a line between them. Units: mm. */
const NEAR = DISC.picture + 3;

/** A number beside every thing, near it and free of all others, with a line to it where it is not next to it. */
export function numbersOn(
	things: readonly Pointed[],
	items: readonly HerItem[],
	{ taken, box, id, figure = [] }: Among
): readonly Entity[] {
	const all = [...taken];
	const size = { width: 2 * DISC.picture + AIR, height: 2 * DISC.picture + AIR };
	const also = clearOf(figure, DISC.picture + AIR);
	const put = things.flatMap((thing) => {
		const item = items.find((one) => one.id === thing.id);
		const spot = item && freeSpot({ ...size, wishes: beside(thing.on), taken: all, within: box, also });
		if (!spot) return [];
		all.push(boxAt(spot, size));
		return [{ item, thing, spot }];
	});
	// Lines first, so that none crosses a number.
	return [
		...put.flatMap(({ thing, spot }) => leader(`${id}/${thing.id}/leader`, spot, thing.on)),
		...put.flatMap(({ item, spot }) => numberDisc(`${id}/${item.id}/number`, item, spot, DISC.picture))
	];
}

/** Where a number would like to be: under what lies, beside what stands. */
function beside(b: Box): readonly Spot[] {
	const off = DISC.picture + 1.6;
	const [x, y] = [(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2];
	const level: readonly Spot[] = [
		[x, b.y1 + off],
		[x, b.y0 - off]
	];
	const upright: readonly Spot[] = [
		[b.x0 - off, y],
		[b.x1 + off, y]
	];
	return b.x1 - b.x0 > b.y1 - b.y0 ? [...level, ...upright] : [...upright, ...level];
}

function leader(id: string, [x, y]: Spot, b: Box): readonly Entity[] {
	const to: Spot = [Math.min(Math.max(x, b.x0), b.x1), Math.min(Math.max(y, b.y0), b.y1)];
	return Math.hypot(to[0] - x, to[1] - y) > NEAR ? [line(id, 'detail', [x, y], to)] : [];
}
