import type { WallId } from '#core/geometry/frame.ts';
import { isObject, type Json } from '#core/log/json.ts';
import { inches, type LengthUnit } from '#core/units/length.ts';
import { WALL_TABLES, whatIs, type WallTable } from '#ui/fields/wall-columns.ts';
import { freeId, rowsOf } from '#ui/fields/wall-rows.ts';
import { dragged, spreadOf, WHOLE, type Ground, type Shift, type Spread, type Thing } from './spread.ts';
import type { Kind, Site } from './site.ts';

/** The record of a wall as things, in the order of the tables. */
export function thingsBehind(wall: Json | undefined): readonly Thing[] {
	if (!isObject(wall)) return [];
	return WALL_TABLES.flatMap((table) => {
		const things = wall[table.group];
		return rowsOf(things, table).flatMap(({ id, thing }, i): Thing[] => {
			const spread = spreadOf(thing);
			if (!spread) return [];
			const name = `${table.one.charAt(0).toUpperCase()}${table.one.slice(1)} ${String(i + 1)}`;
			const path = [table.group, id];
			return [{ key: path.join('/'), path, name, kind: whatIs(table, thing), spread }];
		});
	});
}

/** What is put on a wall by hand. */
export interface NewKind extends Kind {
	readonly table: WallTable['id'];
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
function inside(spread: Spread, { area }: Ground): Spread {
	if (!('x0' in spread)) {
		return 'width' in spread ? { ...spread, x: Math.min(Math.max(spread.x, area.from), area.to) } : spread;
	}
	const { x0, x1, y0, y1 } = spread;
	const [wide, high] = [x1 - x0, y1 - y0];
	const x = Math.max(area.from, Math.min(x0, area.to - wide));
	const y = Math.max(area.bottom, Math.min(y0, area.top - high));
	return { x0: x, x1: x + wide, y0: y, y1: y + high };
}

/** What is behind one wall, to be moved on its drawing. */
export function behindWall(wall: WallId): Site<NewKind> {
	return {
		home: ['enclosure', 'walls', wall],
		things: thingsBehind,
		area: ({ walls }) => walls[wall],
		room: ({ room }) => room,
		made: (kind, { unit, at, on, record }) => {
			const { table, made } = newThing(kind, unit, at, on);
			const things = isObject(record) ? record[table.group] : undefined;
			return { path: [table.group, freeId(things, table)], to: made };
		}
	};
}
