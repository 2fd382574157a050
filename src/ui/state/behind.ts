import { figure, signed } from '#core/drawing/figure.ts';
import type { RoomWall } from '#core/enclosure/room.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { isObject, type Json, type JsonObject } from '#core/log/json.ts';
import { inches, mm, type LengthUnit } from '#core/units/length.ts';
import { WALL_TABLES, whatIs, type WallTable } from '#ui/fields/wall-columns.ts';
import { rowsOf } from '#ui/fields/wall-rows.ts';

/** Where something behind a wall is: an area, or an upright by its middle. Units and frame: mm, wall frame. */
export type Spread = Rect | { readonly x: number; readonly width: number };

/** Something recorded behind or on a wall. */
export interface Thing {
	/** One of its wall. */
	readonly key: string;
	readonly table: WallTable;
	readonly id: string;
	/** As the tables call it: "Stud 2". */
	readonly name: string;
	/** What was chosen for it, in words. */
	readonly kind: string | undefined;
	readonly spread: Spread;
}

/** What is taken hold of: an edge or a corner by its sides; the whole thing where both are 0. */
export interface Hold {
	readonly across: -1 | 0 | 1;
	readonly up: -1 | 0 | 1;
}

/** The whole of a thing. */
export const WHOLE: Hold = { across: 0, up: 0 };

/** Where things are kept: on their wall, in marking steps. */
export interface Ground {
	readonly wall: Pick<RoomWall, 'from' | 'to' | 'bottom' | 'top'>;
	/** Units: mm. */
	readonly step: number;
}

interface Shift {
	readonly x: number;
	readonly y: number;
}

interface Ends {
	readonly least: number;
	readonly most: number;
}

/** Half a tick of the grid of lengths, as a share of a marking step. */
const ON_STEP = 1e-4;

/** The record of a wall as things, in the order of the tables. */
export function thingsBehind(wall: Json | undefined): readonly Thing[] {
	if (!isObject(wall)) return [];
	return WALL_TABLES.flatMap((table) => {
		const things = wall[table.group];
		return rowsOf(things, table).flatMap(({ id, thing }, i): Thing[] => {
			const spread = spreadOf(thing);
			if (!spread) return [];
			const name = `${table.one.charAt(0).toUpperCase()}${table.one.slice(1)} ${String(i + 1)}`;
			return [{ key: `${table.group}/${id}`, table, id, name, kind: whatIs(table, thing), spread }];
		});
	});
}

/** What a thing takes of its wall; an upright takes all the height there is. */
export function extentOf(spread: Spread, { bottom, top }: Pick<RoomWall, 'bottom' | 'top'>): Rect {
	if ('x0' in spread) return spread;
	return { x0: spread.x - spread.width / 2, x1: spread.x + spread.width / 2, y0: bottom, y1: top };
}

/** A thing moved or sized from where it was by a way of the hand, to the nearest marking steps. */
export function dragged(spread: Spread, hold: Hold, by: Shift, on: Ground): Spread {
	return put(spread, hold, (value, axis) => Math.round((value + by[axis]) / on.step), on);
}

/** A thing some marking steps on: moved, or its far edge moved. One that lies between two steps comes to a step first. */
export function steppedOn(spread: Spread, sized: boolean, by: Shift, on: Ground): Spread {
	const hold: Hold = sized ? { across: by.x === 0 ? 0 : 1, up: by.y === 0 ? 0 : 1 } : WHOLE;
	const at = (value: number, axis: 'x' | 'y'): number => {
		const [count, steps] = [value / on.step, by[axis]];
		return (steps > 0 ? Math.floor(count + ON_STEP) : Math.ceil(count - ON_STEP)) + steps;
	};
	// What does not move along an axis stays between its steps there.
	return put(spread, hold, (value, axis) => (by[axis] === 0 ? value / on.step : at(value, axis)), on);
}

/** Values on their way, in marking steps. */
type Going = (value: number, axis: 'x' | 'y') => number;

function put(spread: Spread, { across, up }: Hold, going: Going, { wall, step }: Ground): Spread {
	const to = (value: number, axis: 'x' | 'y', ends: Ends): number =>
		within(going(value, axis) * step, value, ends, step);
	const whole = across === 0 && up === 0;
	if (!('x0' in spread)) {
		const { x, width } = spread;
		if (whole) return { x: to(x, 'x', { least: wall.from, most: wall.to }), width };
		// An upright keeps its middle; only its width is another.
		return up !== 0 ? spread : { x, width: to(width, 'x', { least: step, most: wall.to - wall.from }) };
	}
	const { x0, x1, y0, y1 } = spread;
	if (whole) {
		const x = to(x0, 'x', { least: wall.from, most: wall.to - (x1 - x0) });
		const y = to(y0, 'y', { least: wall.bottom, most: wall.top - (y1 - y0) });
		return { x0: x, x1: mm(x + x1 - x0), y0: y, y1: mm(y + y1 - y0) };
	}
	return {
		x0: across < 0 ? to(x0, 'x', { least: wall.from, most: x1 - step }) : x0,
		x1: across > 0 ? to(x1, 'x', { least: x0 + step, most: wall.to }) : x1,
		y0: up < 0 ? to(y0, 'y', { least: wall.bottom, most: y1 - step }) : y0,
		y1: up > 0 ? to(y1, 'y', { least: y0 + step, most: wall.top }) : y1
	};
}

/** Kept between two ends, on a step where there is one between them; what was recorded beyond may stay there. */
function within(asked: number, from: number, { least, most }: Ends, step: number): number {
	const [low, high] = [Math.min(least, from), Math.max(most, from)];
	if (asked < low) return mm(from === low ? low : Math.ceil(low / step - ON_STEP) * step);
	if (asked > high) return mm(from === high ? high : Math.floor(high / step + ON_STEP) * step);
	return mm(asked);
}

/** What is put on a wall by hand. */
export interface NewKind {
	readonly table: WallTable['id'];
	readonly label: string;
	/** Its size in the units of a tape. Along the wall, upward where it is an area, and what else it begins with. */
	readonly size: Readonly<
		Record<LengthUnit, { readonly wide: number; readonly high?: number; readonly thickness?: number }>
	>;
}

/** Board, stud and bar as they are sold; a pipe with what is left free about it. Common practice, no source. */
export const NEW_KINDS: readonly NewKind[] = [
	{ table: 'studs', label: 'Stud', size: { mm: { wide: 38 }, in: { wide: inches(1.5) } } },
	{
		table: 'wood',
		label: 'Wood',
		size: {
			mm: { wide: 400, high: 140, thickness: 38 },
			in: { wide: inches(16), high: inches(5.5), thickness: inches(1.5) }
		}
	},
	{
		table: 'keepOuts',
		label: 'Not to be drilled',
		size: { mm: { wide: 100, high: 100 }, in: { wide: inches(4), high: inches(4) } }
	},
	{
		table: 'existing',
		label: 'Existing thing',
		size: { mm: { wide: 600, high: 75 }, in: { wide: inches(24), high: inches(3) } }
	}
];

/** A new thing with its middle at a point of the wall, or as near as the wall lets it. */
export function newThing(kind: NewKind, unit: LengthUnit, at: Shift, on: Ground) {
	const table = WALL_TABLES.find(({ id }) => id === kind.table);
	if (!table) throw new RangeError(`no table is called ${kind.table}`);
	const { wide, high, thickness } = kind.size[unit];
	const here: Spread =
		high === undefined
			? { x: at.x, width: wide }
			: { x0: at.x - wide / 2, x1: at.x + wide / 2, y0: at.y - high / 2, y1: at.y + high / 2 };
	const spread = dragged(inside(here, on), WHOLE, { x: 0, y: 0 }, on);
	return { table, made: { ...table.fixed, ...spread, ...(thickness === undefined ? {} : { thickness }) } };
}

/** Moved onto the wall where it reaches beyond. */
function inside(spread: Spread, { wall }: Ground): Spread {
	if (!('x0' in spread)) return { ...spread, x: Math.min(Math.max(spread.x, wall.from), wall.to) };
	const { x0, x1, y0, y1 } = spread;
	const [wide, high] = [x1 - x0, y1 - y0];
	const x = Math.max(wall.from, Math.min(x0, wall.to - wide));
	const y = Math.max(wall.bottom, Math.min(y0, wall.top - high));
	return { x0: x, x1: x + wide, y0: y, y1: y + high };
}

/** Where a thing is, in a few words for each direction: from the left end of its wall, and from the datum line. */
export function spreadWords(spread: Spread, unit: LengthUnit): readonly string[] {
	if (!('x0' in spread)) return [`middle ${figure(spread.x, unit)}`];
	const { x0, x1, y0, y1 } = spread;
	return [`from ${figure(x0, unit)} to ${figure(x1, unit)}`, `low ${signed(y0, unit)}, high ${signed(y1, unit)}`];
}

/** A thing in words: "Stud 2, middle 406". */
export function thingWords({ name, kind, spread }: Thing, unit: LengthUnit): string {
	const wide = 'x0' in spread ? [] : [`${figure(spread.width, unit)} wide`];
	return [name, ...(kind === undefined ? [] : [kind]), ...spreadWords(spread, unit), ...wide].join(', ');
}

function spreadOf({ x, width, x0, x1, y0, y1 }: JsonObject): Spread | undefined {
	if (typeof x === 'number' && typeof width === 'number') return { x, width };
	if (typeof x0 !== 'number' || typeof x1 !== 'number' || typeof y0 !== 'number' || typeof y1 !== 'number')
		return undefined;
	return { x0, x1, y0, y1 };
}
