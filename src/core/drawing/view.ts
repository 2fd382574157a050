import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Box, Spot } from './entity.ts';
import type { Units } from './figure.ts';
import { fieldOf, FOOT, type SheetName } from './sheet.ts';
import { endsOf, spanOf } from './wall-ends.ts';

/** A wall on a sheet: its scale, where it lies, and the columns beside it. Units and frame: mm of the sheet. */
export interface View {
	/** One mm of the sheet is this many mm of the wall. */
	readonly scale: number;
	/** The wall as far as it is drawn; its lower edge is the lowest floor level. */
	readonly window: Box;
	/** Sheet y over which nothing of wall or marks is drawn. */
	readonly top: number;
	/** Sheet y of the datum line. */
	readonly datum: number;
	/** The wall goes on above what is drawn. */
	readonly broken: boolean;
	readonly x: (wallX: number) => number;
	readonly y: (level: number) => number;
	readonly spot: (wallX: number, level: number) => Spot;
	/** Sheet x of the part of the side that is its wall. */
	readonly wall: { readonly x0: number; readonly x1: number };
	/** A rectangle of the wall, cut to what stands and is drawn; undefined when nothing is left. */
	readonly box: (r: Rect) => Box | undefined;
	/** Left edge of the level ladder, its own line, and the left edge of the whole field. */
	readonly ladder: number;
	readonly rail: number;
	readonly left: number;
	/** The column of words at the right. */
	readonly column: Box;
}

/** What a view must have room for. Units: mm of the wall; `ladder` mm of the sheet. */
export interface Wanted {
	readonly sheet: SheetName;
	readonly unit: LengthUnit;
	readonly room: Room;
	readonly wall: WallId;
	/** Highest level that must be seen. */
	readonly highest: number;
	/** What the figures of the ladder take, from its left edge to its own line. */
	readonly ladder: number;
}

/**
 * Source: ISO 5455 1:5, 1:10, 1:20 and 1:50, the others are ours where the step between them is too wide; US elevations 3,
 * 1 1/2, 1, 3/4, 1/2, 3/8, 1/4 in to a foot.
 */
export const SCALES = { mm: [5, 7.5, 10, 15, 20, 25, 30, 40, 50], in: [4, 8, 12, 16, 24, 32, 48] } as const;
const US_NAMES: Readonly<Record<number, string>> = {
	4: '3\u2033',
	8: '1 1/2\u2033',
	12: '1\u2033',
	16: '3/4\u2033',
	24: '1/2\u2033',
	32: '3/8\u2033',
	48: '1/4\u2033'
};
const TOP = 35;
const BESIDE = 9;
/** The column of words: as wide as reads well, wider where the sheet is. */
const COLUMN = { least: 46, most: 62, share: 0.29 };
/** From the wall to the ladder's own line, and more where the level mark of the floor stands between them. */
const RAIL = { plain: 5, besideFloor: 8 };
/** From the lowest floor to the lower edge of the running dimensions. */
const UNDER = 22;

const UNIT_NAMES = { mm: 'mm', in: 'inches' } as const;

const beside = (other: LengthUnit | undefined): string =>
	other === undefined ? '' : `, ${UNIT_NAMES[other]} in brackets`;

/** The unit of a sheet in words, with the one that stands in brackets beside it. */
export const unitWords = ({ unit, other }: Units): string => `${UNIT_NAMES[unit]}${beside(other)}`;

/** A scale in words of its trade. */
export const scaleName = (scale: number, unit: LengthUnit): string =>
	unit === 'mm' ? `1:${String(scale)}, mm` : `${US_NAMES[scale] ?? ''} = 1\u2032-0\u2033, inches`;

/** The same with the unit that stands in brackets beside it. */
export const scaleWords = (scale: number, unit: LengthUnit, other: LengthUnit | undefined): string =>
	`${scaleName(scale, unit)}${beside(other)}`;

/** The largest scale at which a wall fits its sheet, and where everything goes; the smallest when none does. */
export function viewOf(wanted: Wanted): View {
	const scales: readonly number[] = SCALES[wanted.unit];
	const fits = (scale: number) => {
		const { width, height } = spaceFor(wanted);
		const { length } = wanted.room.walls[wanted.wall];
		return length / scale <= width && (wanted.highest - lowest(wanted)) / scale <= height;
	};
	return viewAt(wanted, scales.find(fits) ?? scales.at(-1) ?? 1);
}

/** What stands left and right of a wall beside the column of words. The level mark of the floor stands on one side only. */
function asideOf({ room, wall, ladder }: Wanted): { left: number; right: number; rail: number } {
	const entryLeft = endsOf(room, wall).left === 'entry';
	const rail = entryLeft ? RAIL.besideFloor : RAIL.plain;
	return { left: ladder + rail, right: BESIDE - (rail - RAIL.plain), rail };
}

function spaceFor(wanted: Wanted): { width: number; height: number } {
	const field = fieldOf(wanted.sheet);
	const { left, right } = asideOf(wanted);
	return {
		width: field.x1 - field.x0 - left - right - COLUMN.least,
		height: field.y1 - FOOT - UNDER - TOP
	};
}

const lowest = ({ room, wall }: Wanted): number =>
	Math.min(room.bathroomFloor, room.floorUnder(wall, 0, room.walls[wall].length).low);

function viewAt(wanted: Wanted, scale: number): View {
	const field = fieldOf(wanted.sheet);
	const { length, top } = wanted.room.walls[wanted.wall];
	const space = spaceFor(wanted);
	const spare = Math.max(0, space.width - length / scale);
	const most = Math.max(COLUMN.most, COLUMN.share * (field.x1 - field.x0));
	const column = COLUMN.least + Math.min(spare, most - COLUMN.least);
	const ladder = field.x0 + (spare - (column - COLUMN.least)) / 2;
	const { left, rail } = asideOf(wanted);
	const x0 = ladder + left;
	const drawn = Math.min(space.height, (Math.max(top, wanted.highest) - lowest(wanted)) / scale);
	const floor = field.y1 - FOOT - UNDER - (space.height - drawn) / 2;
	const datum = floor + lowest(wanted) / scale;
	const broken = datum - top / scale < TOP;
	const window = { x0, y0: broken ? TOP : datum - top / scale, x1: x0 + length / scale, y1: floor };
	const x = (wallX: number) => x0 + wallX / scale;
	const { from, to } = spanOf(wanted.room, wanted.wall);
	const wall = { x0: x(from), x1: x(to) };
	const y = (level: number) => datum - level / scale;
	const cut = (n: number, least: number, most: number) => Math.min(Math.max(n, least), most);
	return {
		scale,
		window,
		top: Math.min(window.y0, y(wanted.highest)),
		datum,
		broken,
		wall,
		x,
		y,
		spot: (wallX, level) => [x(wallX), y(level)],
		box: (r) => {
			const box = {
				x0: cut(x(r.x0), wall.x0, wall.x1),
				y0: cut(y(r.y1), window.y0, window.y1),
				x1: cut(x(r.x1), wall.x0, wall.x1),
				y1: cut(y(r.y0), window.y0, window.y1)
			};
			return box.x1 - box.x0 > 0.01 && box.y1 - box.y0 > 0.01 ? box : undefined;
		},
		ladder,
		rail: x0 - rail,
		left: field.x0,
		column: { x0: field.x1 - column, y0: TOP - 2, x1: field.x1, y1: field.y1 - FOOT - 4 }
	};
}
