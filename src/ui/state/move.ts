import type { Mark } from '#core/case/accessory.ts';
import { cornerOf } from '#core/drawing/setting-out.ts';
import type { Scene } from '#core/measures/scene.ts';
import { mm, type Mm } from '#core/units/length.ts';

/** A point of a wall. Units and frame: mm, wall frame. */
export interface Spot {
	readonly x: Mm;
	readonly y: Mm;
}

/** Which way a mark is moved, on the wall as seen from inside. */
export type Way = 'left' | 'right' | 'lower' | 'higher';

/** The two ends a coordinate of a mark keeps between. */
interface Ends {
	readonly least: number;
	readonly most: number;
}

/** Half a tick of the grid of lengths, as a share of a marking step: what counts as on the step. */
const ON_STEP = 1e-4;

/** The next place some marking steps away: counted from the corner and from the datum line, and kept on the wall. */
export function stepped(scene: Scene, mark: Mark, way: Way, steps: number): Spot {
	const { x, y } = mark.place;
	if (way === 'lower' || way === 'higher') {
		return { x, y: onStep(scene, beyond(scene, y, way === 'higher' ? steps : -steps), heights(scene, mark)) };
	}
	const along = fromCorner(scene, mark);
	const away = (way === 'right') === (along.side === 'left') ? steps : -steps;
	return { x: along.back(onStep(scene, beyond(scene, along.from(x), away), along.ends)), y };
}

/** The marking step nearest to a point of the wall, kept on the wall. */
export function nearest(scene: Scene, mark: Mark, to: { readonly x: number; readonly y: number }): Spot {
	const along = fromCorner(scene, mark);
	return {
		x: along.back(onStep(scene, along.from(to.x), along.ends)),
		y: onStep(scene, to.y, heights(scene, mark))
	};
}

/** A mark at another point of its wall. */
export function movedTo(mark: Mark, { x, y }: Spot): Mark {
	return { ...mark, place: { ...mark.place, x, y } };
}

/** Some steps on from a value; one that lies between two steps comes to a step first. */
function beyond({ c }: Scene, value: number, steps: number): number {
	const count = value / c.tape.step;
	const from = steps > 0 ? Math.floor(count + ON_STEP) : Math.ceil(count - ON_STEP);
	return (from + steps) * c.tape.step;
}

/** The nearest step between two ends. Shape: a part longer than its wall stays where it is asked. */
function onStep({ c }: Scene, value: number, { least, most }: Ends): Mm {
	const { step } = c.tape;
	if (least === most) return mm(least);
	const [first, last] = [Math.ceil(least / step - ON_STEP), Math.floor(most / step + ON_STEP)];
	if (first > last) return mm(value);
	return mm(Math.min(Math.max(Math.round(value / step), first), last) * step);
}

function heights({ room }: Scene, { place, variant }: Mark): Ends {
	// What stands between floor and ceiling goes neither up nor down.
	if (variant.stands === 'floor-and-ceiling') return { least: place.y, most: place.y };
	const { bottom, top } = room.walls[place.wall];
	return { least: bottom - variant.outline.y0, most: top - variant.outline.y1 };
}

/** Distances from the corner a wall is measured from. */
function fromCorner(
	{ room }: Scene,
	{ place, variant }: Mark
): { side: 'left' | 'right'; from: (x: number) => number; back: (u: number) => Mm; ends: Ends } {
	const { side, from } = cornerOf(room, place.wall);
	const { length } = room.walls[place.wall];
	const ends = [from(-variant.outline.x0), from(length - variant.outline.x1)];
	return {
		side,
		from,
		back: (u) => mm(side === 'left' ? u : length - u),
		ends: { least: Math.min(...ends), most: Math.max(...ends) }
	};
}
