import type { Plan } from '#core/plan.ts';
import type { Entity, Spot } from '../entity.ts';
import { boxAt, freeSpot } from '../free-spot.ts';
import { lines } from '../path.ts';
import { widthOf, write } from '../type.ts';
import type { FloorView, Free } from './floor-things.ts';

const SMALL = 8.5;

/** How the floor falls: the way down, of length 1 in the plan frame, and how much; nothing where it is level or not known. */
export function fallOf(room: Plan['scene']['room']): { readonly down: Spot; readonly ratio: string } | undefined {
	const { width, depth } = room.footprint;
	const base = room.floorAt(0, 0);
	const [gx, gy] = [(room.floorAt(width, 0) - base) / width, (room.floorAt(0, depth) - base) / depth];
	const steep = Math.hypot(gx, gy);
	if (steep < 1e-4) return undefined;
	return { down: [-gx / steep, -gy / steep], ratio: `1:${String(Math.round(1 / steep))}` };
}

/** Length of the arrow of the fall. Units: mm. */
const ARROW = 11;

/** Which way the floor falls and how much, beside an arrow; the notes say it too, so it is left out where there is no room. */
export function fall(
	{ scene: { room } }: Plan,
	{ view, taken, within }: Free & { readonly view: FloorView }
): readonly Entity[] {
	const falls = fallOf(room);
	if (!falls) return [];
	const { down, ratio } = falls;
	const text = `fall ${ratio}`;
	const wide = widthOf(text, SMALL);
	const upright = Math.abs(down[1]) > Math.abs(down[0]);
	const size = upright ? { width: wide + 5, height: ARROW + 1 } : { width: Math.max(wide, ARROW) + 1, height: 6.6 };
	const [cx, cy] = [(view.box.x0 + view.box.x1) / 2, (view.box.y0 + view.box.y1) / 2];
	const spot = freeSpot({ ...size, wishes: [[cx, cy]], taken, within });
	if (!spot) return [];
	const [x, y] = spot;
	taken.push(boxAt(spot, size));
	const middle: Spot = upright ? [x - size.width / 2 + 1.4, y] : [x, y + 1.8];
	const at = (along: number, across: number): Spot => [
		middle[0] + along * down[0] - across * down[1],
		middle[1] + along * down[1] + across * down[0]
	];
	const half = ARROW / 2;
	const word: Spot = upright ? [x - size.width / 2 + 3.6, y + 1] : [x - wide / 2, y - 0.8];
	return [
		lines('floor/fall/arrow', 'detail', [
			[at(-half, 0), at(half, 0)],
			[at(half - 2, 1.1), at(half, 0), at(half - 2, -1.1)]
		]),
		write('floor/fall', text, word, { size: SMALL, tone: 'grey' })
	];
}
