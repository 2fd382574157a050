import { overlap, type Box, type Spot } from './entity.ts';

/** What a label needs: its size, where its middle would like to be, what is taken, and what it must stay within. */
export interface Search {
	readonly width: number;
	readonly height: number;
	readonly wishes: readonly Spot[];
	readonly taken: readonly Box[];
	readonly within: Box;
}

/** Distance between places tried once no wish is free. Units: mm. */
const GRID = 2;

/**
 * Middle of a free place for a label: the first wish that is free, else the free place nearest to any wish.
 * Units and frame: mm of the sheet. Fails: undefined when there is no free place at all.
 */
export function freeSpot(search: Search): Spot | undefined {
	return search.wishes.find((spot) => isFree(search, spot)) ?? nearestFree(search);
}

function isFree({ width, height, taken, within }: Search, [x, y]: Spot): boolean {
	const box = { x0: x - width / 2, y0: y - height / 2, x1: x + width / 2, y1: y + height / 2 };
	const inside = box.x0 >= within.x0 && box.x1 <= within.x1 && box.y0 >= within.y0 && box.y1 <= within.y1;
	return inside && !taken.some((other) => overlap(box, other));
}

function nearestFree(search: Search): Spot | undefined {
	const { within, width, height } = search;
	let best: Spot | undefined;
	let least = Infinity;
	for (let y = within.y0 + height / 2; y <= within.y1 - height / 2; y += GRID) {
		for (let x = within.x0 + width / 2; x <= within.x1 - width / 2; x += GRID) {
			const far = Math.min(...search.wishes.map(([u, v]) => Math.hypot(x - u, y - v)));
			if (far < least && isFree(search, [x, y])) [best, least] = [[x, y], far];
		}
	}
	return best;
}
