import type { Box } from '#core/drawing/entity.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { ScreenView } from './screen-view.ts';

/** What a finger needs. Units: px. Source: WCAG 2.2, 2.5.5 Target Size (Enhanced). */
const LEAST = 44;
/** A side longer than this has its grips on its corners, a shorter one has them outside, so that a finger still finds what is between. */
const LONG = 3 * LEAST;

/** How things lie on a drawing: of a wall, or of a floor. */
export type GripView = Pick<ScreenView, 'width' | 'height' | 'scale' | 'left' | 'right' | 'top' | 'bottom' | 'x' | 'y'>;

/** A box as a style sets it. Units: px, from the left and top of the drawing. */
export interface Placed {
	readonly left: number;
	readonly top: number;
	readonly width: number;
	readonly height: number;
}

/** What is seen of a part of a wall or floor; at the edge of the drawing where nothing is. Units: px. */
export function seenBox({ x0, x1, y0, y1 }: Rect, view: GripView): Box {
	const [across, down] = [kept(view.left, view.right), kept(view.top, view.bottom)];
	return { x0: across(view.x(x0)), x1: across(view.x(x1)), y0: down(view.y(y1)), y1: down(view.y(y0)) };
}

/** Where a finger takes hold of it: no smaller than a finger needs. */
export function touchBox({ x0, x1, y0, y1 }: Box): Placed {
	const [width, height] = [Math.max(LEAST, x1 - x0), Math.max(LEAST, y1 - y0)];
	return { left: (x0 + x1 - width) / 2, top: (y0 + y1 - height) / 2, width, height };
}

/** One grip of an area: which sides it takes, and its middle. Units: px. */
export interface SizeGrip {
	readonly across: -1 | 0 | 1;
	readonly up: -1 | 0 | 1;
	readonly x: number;
	readonly y: number;
}

const SIDES = [-1, 0, 1] as const;

/** The grips round an area: four corners and four edges, none on another and all on the drawing. */
export function sizeGrips(box: Box, { width, height }: Pick<GripView, 'width' | 'height'>): readonly SizeGrip[] {
	const { left, top, width: wide, height: high } = touchBox(box);
	const half = LEAST / 2;
	const along = (side: number, from: number, long: number): number => {
		const out = Math.min(half, Math.max(0, (LONG - long) / 4));
		return from + long / 2 + side * (long / 2 + out);
	};
	return SIDES.flatMap((up) =>
		SIDES.filter((across) => across !== 0 || up !== 0).map((across) => ({
			across,
			up,
			x: kept(half, width - half)(along(across, left, wide)),
			y: kept(half, height - half)(along(-up, top, high))
		}))
	);
}

function kept(least: number, most: number): (n: number) => number {
	return (n) => Math.min(Math.max(n, least), most);
}
