import { figure, signed } from '#core/drawing/figure.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { Json } from '#core/log/json.ts';
import { mm, type LengthUnit } from '#core/units/length.ts';

/**
 * Where something lies that is moved by hand: an area, an upright by its middle, what lies on a floor by its middle, or
 * a wall by how far it goes.
 * Units and frame: mm; on a wall its own frame; on a floor x along the back wall and y less than 0 out from it, so that
 * up is up on the drawing of either.
 */
export type Spread = Rect | Upright | Lying | Reaching;

interface Upright {
	readonly x: number;
	readonly width: number;
}

interface Lying {
	readonly x: number;
	readonly y: number;
	readonly wide: number;
	readonly deep: number;
}

/** It begins at one end of its side of the room; only its other end is moved. */
interface Reaching {
	readonly from: 'left' | 'right';
	readonly long: number;
}

/** Something recorded that is moved by hand. */
export interface Thing {
	/** One of its drawing. */
	readonly key: string;
	/** Where it is in the record, below what its drawing is of. */
	readonly path: readonly string[];
	/** As the fields and tables call it: "Stud 2". */
	readonly name: string;
	/** What was chosen for it, in words. */
	readonly kind: string | undefined;
	readonly spread: Spread;
	/** It is not taken away by hand. */
	readonly stays?: true;
}

/** What is taken hold of: an edge or a corner by its sides; the whole thing where both are 0. */
export interface Hold {
	readonly across: -1 | 0 | 1;
	readonly up: -1 | 0 | 1;
}

/** The whole of a thing. */
export const WHOLE: Hold = { across: 0, up: 0 };

/** What things are kept on: a wall or a floor. */
export interface Area {
	readonly from: number;
	readonly to: number;
	readonly bottom: number;
	readonly top: number;
}

/** Where things are kept: on their wall or floor, in marking steps. */
export interface Ground {
	readonly area: Area;
	/** Units: mm. */
	readonly step: number;
}

/** A way of the hand. Units: mm, or steps. */
export interface Shift {
	readonly x: number;
	readonly y: number;
}

interface Ends {
	readonly least: number;
	readonly most: number;
}

/** Half a tick of the grid of lengths, as a share of a marking step. */
const ON_STEP = 1e-4;

/** The least that lies on a floor and the shortest wall, as the record takes them. Units: mm. */
const LEAST_LYING = 30;
const LEAST_REACHING = 50;

/** Whether it has a size of its own besides where it is. */
export const isSized = (spread: Spread): boolean => !('long' in spread);

/** Which edges and corners it is sized by: an area by all, what keeps its middle by its edges. */
export function isHeldBy(spread: Spread, { across, up }: Hold): boolean {
	return 'x0' in spread || ('deep' in spread && across * up === 0);
}

/** What a thing takes of its wall or floor; an upright takes all the height there is. */
export function extentOf(spread: Spread, { from, to, bottom, top }: Area): Rect {
	if ('x0' in spread) return spread;
	if ('long' in spread) {
		const [x0, x1] = spread.from === 'left' ? [from, from + spread.long] : [to - spread.long, to];
		return { x0, x1, y0: bottom, y1: bottom };
	}
	const { x } = spread;
	if ('deep' in spread) {
		const { y, wide, deep } = spread;
		return { x0: x - wide / 2, x1: x + wide / 2, y0: y - deep / 2, y1: y + deep / 2 };
	}
	return { x0: x - spread.width / 2, x1: x + spread.width / 2, y0: bottom, y1: top };
}

/** A thing moved or sized from where it was by a way of the hand, to the nearest marking steps. */
export function dragged(spread: Spread, hold: Hold, by: Shift, on: Ground): Spread {
	const way = ownWay(spread, by);
	// What keeps its middle grows to both sides of it.
	const pulled = 'deep' in spread && !isWhole(hold) ? { x: 2 * hold.across * way.x, y: 2 * hold.up * way.y } : way;
	return put(spread, hold, (value, axis) => Math.round((value + pulled[axis]) / on.step), on);
}

/** A thing some marking steps on: moved, or its far edge moved. One that lies between two steps comes to a step first. */
export function steppedOn(spread: Spread, sized: boolean, by: Shift, on: Ground): Spread {
	const way = ownWay(spread, by);
	const hold: Hold = sized ? { across: by.x === 0 ? 0 : 1, up: by.y === 0 ? 0 : 1 } : WHOLE;
	const at = (value: number, axis: 'x' | 'y'): number => {
		const [count, steps] = [value / on.step, way[axis]];
		return (steps > 0 ? Math.floor(count + ON_STEP) : Math.ceil(count - ON_STEP)) + steps;
	};
	// What does not move along an axis stays between its steps there.
	return put(spread, hold, (value, axis) => (way[axis] === 0 ? value / on.step : at(value, axis)), on);
}

/** A wall that begins at the right is longer to the left. */
const ownWay = (spread: Spread, by: Shift): Shift =>
	'long' in spread && spread.from === 'right' ? { x: -by.x, y: by.y } : by;

const isWhole = ({ across, up }: Hold): boolean => across === 0 && up === 0;

/** Values on their way, in marking steps. */
type Going = (value: number, axis: 'x' | 'y') => number;

/** A value on its way, kept between its ends. */
type Kept = (value: number, axis: 'x' | 'y', ends: Ends) => number;

function put(spread: Spread, hold: Hold, going: Going, { area, step }: Ground): Spread {
	const to: Kept = (value, axis, ends) => within(going(value, axis) * step, value, ends, step);
	if ('long' in spread) {
		return { ...spread, long: to(spread.long, 'x', { least: LEAST_REACHING, most: area.to - area.from }) };
	}
	if ('deep' in spread) return putLying(spread, hold, to, area);
	if (!('x0' in spread)) {
		const { x, width } = spread;
		if (isWhole(hold)) return { x: to(x, 'x', { least: area.from, most: area.to }), width };
		// An upright keeps its middle; only its width is another.
		return hold.up !== 0 ? spread : { x, width: to(width, 'x', { least: step, most: area.to - area.from }) };
	}
	const { across, up } = hold;
	const { x0, x1, y0, y1 } = spread;
	if (isWhole(hold)) {
		const x = to(x0, 'x', { least: area.from, most: area.to - (x1 - x0) });
		const y = to(y0, 'y', { least: area.bottom, most: area.top - (y1 - y0) });
		return { x0: x, x1: mm(x + x1 - x0), y0: y, y1: mm(y + y1 - y0) };
	}
	return {
		x0: across < 0 ? to(x0, 'x', { least: area.from, most: x1 - step }) : x0,
		x1: across > 0 ? to(x1, 'x', { least: x0 + step, most: area.to }) : x1,
		y0: up < 0 ? to(y0, 'y', { least: area.bottom, most: y1 - step }) : y0,
		y1: up > 0 ? to(y1, 'y', { least: y0 + step, most: area.top }) : y1
	};
}

/** All of it stays on the floor; sized, it keeps its middle. */
function putLying(lying: Lying, hold: Hold, to: Kept, { from, to: end, bottom, top }: Area): Spread {
	const { x, y, wide, deep } = lying;
	if (isWhole(hold)) {
		return {
			...lying,
			x: to(x, 'x', { least: from + wide / 2, most: end - wide / 2 }),
			y: to(y, 'y', { least: bottom + deep / 2, most: top - deep / 2 })
		};
	}
	const about = (n: number, low: number, high: number): Ends => ({
		least: LEAST_LYING,
		most: 2 * Math.min(n - low, high - n)
	});
	return {
		...lying,
		wide: hold.across === 0 ? wide : to(wide, 'x', about(x, from, end)),
		deep: hold.up === 0 ? deep : to(deep, 'y', about(y, bottom, top))
	};
}

/** Kept between two ends, on a step where there is one between them; what was recorded beyond may stay there. */
function within(asked: number, from: number, { least, most }: Ends, step: number): number {
	const [low, high] = [Math.min(least, from), Math.max(most, from)];
	if (asked < low) return mm(from === low ? low : Math.ceil(low / step - ON_STEP) * step);
	if (asked > high) return mm(from === high ? high : Math.floor(high / step + ON_STEP) * step);
	return mm(asked);
}

/** One value of the record, by its path below its thing. */
interface Part {
	readonly path: readonly string[];
	readonly value: number;
}

/** What the record holds of where a thing lies. */
export function partsOf(spread: Spread): readonly Part[] {
	if ('long' in spread) return [{ path: ['value'], value: spread.long }];
	// The record has it out from the back wall.
	const kept = 'deep' in spread ? { ...spread, y: mm(-spread.y) } : spread;
	return Object.entries<number>({ ...kept }).map(([key, value]) => ({ path: [key], value }));
}

/** Of a fact with a new value, what was said of the old one alone. */
export function outdatedBy(spread: Spread): readonly (readonly string[])[] {
	return 'long' in spread ? [['typed'], ['when']] : [];
}

/** Where a thing is, in a few words for each direction, as its record has it; what keeps its middle, how large too. */
function spreadWords(spread: Spread, unit: LengthUnit): readonly string[] {
	const fig = (n: number): string => figure(n, unit);
	if ('long' in spread) return [`long ${fig(spread.long)}`];
	if ('deep' in spread) {
		const { x, y, wide, deep } = spread;
		return [`middle from the left ${fig(x)}`, `out from the back ${fig(-y)}`, `wide ${fig(wide)}, deep ${fig(deep)}`];
	}
	if (!('x0' in spread)) return [`middle ${fig(spread.x)}`];
	const { x0, x1, y0, y1 } = spread;
	return [`from ${fig(x0)} to ${fig(x1)}`, `low ${signed(y0, unit)}, high ${signed(y1, unit)}`];
}

/** The same while it is in the hand: of what keeps its middle only what the hand changes, its place or its size. */
export function wordsInHand(spread: Spread, from: Spread | undefined, unit: LengthUnit): readonly string[] {
	const words = spreadWords(spread, unit);
	if (!('deep' in spread) || !from || !('deep' in from)) return words;
	const sized = spread.wide !== from.wide || spread.deep !== from.deep;
	return sized ? words.slice(2) : words.slice(0, 2);
}

/** A thing in words: "Stud 2, middle 406". */
export function thingWords({ name, kind, spread }: Thing, unit: LengthUnit): string {
	const wide = 'width' in spread ? [`${figure(spread.width, unit)} wide`] : [];
	return [name, ...(kind === undefined ? [] : [kind]), ...spreadWords(spread, unit), ...wide].join(', ');
}

/** Where a record says that something is. Units and frame: mm, wall frame. */
export function spreadOf({ x, width, x0, x1, y0, y1 }: Readonly<Record<string, Json>>): Spread | undefined {
	if (typeof x === 'number' && typeof width === 'number') return { x, width };
	if (typeof x0 !== 'number' || typeof x1 !== 'number' || typeof y0 !== 'number' || typeof y1 !== 'number')
		return undefined;
	return { x0, x1, y0, y1 };
}
