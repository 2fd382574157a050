import type { Mark } from '#core/case/accessory.ts';
import type { ScreenView } from './screen-view.ts';

/** Where a mark is taken hold of on the drawing. Units: px, from the left and top of it. */
export interface GripBox {
	readonly mark: Mark;
	readonly left: number;
	readonly top: number;
	readonly width: number;
	readonly height: number;
}

/** What a finger needs. Units: px. Source: WCAG 2.2, 2.5.5 Target Size (Enhanced). */
const LEAST = 44;

/** A box for each mark of a wall, no smaller than a finger needs; small ones come last, so that they lie on top. */
export function gripBoxes(marks: readonly Mark[], view: ScreenView): readonly GripBox[] {
	return marks.map((mark) => boxOf(mark, view)).sort((a, b) => b.width * b.height - a.width * a.height);
}

function boxOf(mark: Mark, view: ScreenView): GripBox {
	const { place, variant } = mark;
	const { x0, x1, y0, y1 } = variant.outline;
	const [left, high] = view.at(place.x + x0, place.y + y1);
	const top = Math.max(high, view.top);
	const [right, bottom] = view.at(place.x + x1, place.y + y0);
	const [width, height] = [Math.max(LEAST, right - left), Math.max(LEAST, bottom - top)];
	return { mark, left: (left + right - width) / 2, top: (top + bottom - height) / 2, width, height };
}
