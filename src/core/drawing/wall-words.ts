import type { Box, Entity, Spot } from './entity.ts';
import { freeSpot, type Search } from './free-spot.ts';
import { line, rectangle } from './path.ts';
import { PT, widthOf, write } from './type.ts';

/** A word that belongs to an area of the wall. Units and frame: mm of the sheet. */
export interface Wording {
	readonly id: string;
	readonly text: string;
	readonly on: Box;
	/** Where its middle would like to be, when not on the area's edges. */
	readonly wishes?: readonly Spot[];
}

const SIZE = 8.5;
const HEIGHT = 3.6;
const PAD = 0.5;
const AIR = 1.4;

/**
 * Words on paper patches, each on its own area where that is free, else in the nearest free place with a leader; in the
 * first of the boxes `within` that has one.
 * Shape: adds every patch to `taken`, so that what comes later keeps clear of it.
 */
export function wallWords(words: readonly Wording[], taken: Box[], within: readonly Box[]): readonly Entity[] {
	return words.flatMap(({ id, text, on, wishes }) => {
		const width = widthOf(text, SIZE) + 2 * PAD;
		const search = { width: width + AIR, height: HEIGHT, wishes: wishes ?? wishesOn(on, width), taken };
		const spot = firstFree(search, within);
		if (!spot) return [];
		const [x, y] = spot;
		const box = { x0: x - width / 2, y0: y - HEIGHT / 2, x1: x + width / 2, y1: y + HEIGHT / 2 };
		taken.push(box);
		return [
			...leader(id, spot, pointedAt(spot, on, wishes), width),
			rectangle(`${id}/patch`, 'patch', box),
			write(id, text, [x, y + 0.33 * SIZE * PT], { size: SIZE, tone: 'grey', anchor: 'middle' })
		];
	});
}

function firstFree(search: Omit<Search, 'within'>, boxes: readonly Box[]): Spot | undefined {
	for (const within of boxes) {
		const spot = freeSpot({ ...search, within });
		if (spot) return spot;
	}
	return undefined;
}

/** Places on an area, the lower edge first, then upward, middle, left and right. */
function wishesOn(on: Box, width: number): readonly Spot[] {
	const half = width / 2 + 1.3;
	const low = on.y1 - HEIGHT / 2 - 0.8;
	const high = on.y0 + HEIGHT / 2 + 0.8;
	const columns = [on.x0 + half, (on.x0 + on.x1) / 2, on.x1 - half];
	const flat = on.y1 - on.y0 < HEIGHT + 1.6;
	const rows = flat ? [(on.y0 + on.y1) / 2] : Array.from({ length: 9 }, (_, i) => low + ((high - low) * i) / 8);
	return rows.flatMap((y) => columns.map((x): Spot => [x, y]));
}

/** The nearest point of what a word belongs to. */
function pointedAt([x, y]: Spot, on: Box, wishes: readonly Spot[] = []): Spot {
	const away = ([u, v]: Spot) => Math.hypot(u - x, v - y);
	const [nearest] = wishes.toSorted((a, b) => away(a) - away(b));
	return nearest ?? [clamp(x, on.x0, on.x1), clamp(y, on.y0, on.y1)];
}

function leader(id: string, [x, y]: Spot, to: Spot, width: number): readonly Entity[] {
	const apart = Math.abs(to[0] - x) > width / 2 || Math.abs(to[1] - y) > HEIGHT / 2;
	return apart ? [line(`${id}/leader`, 'leader', [x, y], to)] : [];
}

const clamp = (n: number, least: number, most: number): number => Math.min(Math.max(n, least), most);
