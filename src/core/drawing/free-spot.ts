import { overlap, type Box, type Spot } from './entity.ts';

/** What a label needs: its size, where its middle would like to be, what is taken, and what it must stay within. */
export interface Search {
	readonly width: number;
	readonly height: number;
	readonly wishes: readonly Spot[];
	readonly taken: readonly Box[];
	readonly within: Box;
	/** What else a place must satisfy. */
	readonly also?: (spot: Spot) => boolean;
	/** How far from every wish it may be at most. Units: mm; any distance when absent. */
	readonly most?: number;
}

/** Distance between places tried once no wish is free. Units: mm. */
const GRID = 2;

/**
 * Middle of a free place for a label: the first wish that is free, else the free place nearest to any wish.
 * Units and frame: mm of the sheet. Fails: undefined when there is no free place at all.
 */
export function freeSpot(search: Search): Spot | undefined {
	return wishThatIsFree(search) ?? nearestFree(search);
}

/** The first wish that is free. Fails: undefined when none is. */
export const wishThatIsFree = (search: Search): Spot | undefined => search.wishes.find((spot) => isFree(search, spot));

/** The area of a label about its middle. Units and frame: mm of the sheet. */
export const boxAt = ([x, y]: Spot, { width, height }: Pick<Search, 'width' | 'height'>): Box => ({
	x0: x - width / 2,
	y0: y - height / 2,
	x1: x + width / 2,
	y1: y + height / 2
});

function isFree(search: Search, spot: Spot): boolean {
	const { taken, within, also = () => true } = search;
	const box = boxAt(spot, search);
	const inside = box.x0 >= within.x0 && box.x1 <= within.x1 && box.y0 >= within.y0 && box.y1 <= within.y1;
	return inside && !taken.some((other) => overlap(box, other)) && also(spot);
}

/** The free place nearest to any wish. Units and frame: mm of the sheet. Fails: undefined when there is none near enough. */
export function nearestFree(search: Search): Spot | undefined {
	const { within, width, height, wishes, most = Infinity } = search;
	const [xs, ys] = [wishes.map(([x]) => x), wishes.map(([, y]) => y)];
	// Nothing farther than that from all wishes is looked at, always on the same grid.
	const first = (start: number, least: number): number =>
		start + GRID * Math.max(0, Math.floor((least - start) / GRID));
	const x0 = first(within.x0 + width / 2, Math.min(...xs) - most);
	const y0 = first(within.y0 + height / 2, Math.min(...ys) - most);
	const x1 = Math.min(within.x1 - width / 2, Math.max(...xs) + most);
	const y1 = Math.min(within.y1 - height / 2, Math.max(...ys) + most);
	let best: Spot | undefined;
	let least = most ** 2;
	for (let y = y0; y <= y1; y += GRID) {
		for (let x = x0; x <= x1; x += GRID) {
			const far = nearestOf(wishes, x, y);
			if (far < least && isFree(search, [x, y])) [best, least] = [[x, y], far];
		}
	}
	return best;
}

/** The square of how far the nearest of some points is. */
function nearestOf(points: readonly Spot[], x: number, y: number): number {
	let least = Infinity;
	for (const [u, v] of points) least = Math.min(least, (u - x) ** 2 + (v - y) ** 2);
	return least;
}
