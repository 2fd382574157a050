import type { How } from '#core/case/fact.ts';
import type { Wall } from '#core/case/record.ts';
import type { RoomWall } from '#core/enclosure/room.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { mm } from '#core/units/length.ts';

/** One thing behind the finish. Units and frame: mm, wall frame; `load` in N. */
export type Member = {
	readonly name: string;
	readonly rect: Rect;
	/** Seen, measured or declared, not only told or assumed. */
	readonly sure: boolean;
} & (
	| {
			readonly kind: 'declared';
			readonly load: number;
			readonly document: string;
			readonly fixing: string;
			readonly brackets: readonly string[];
	  }
	| { readonly kind: 'wood'; readonly depth: number; readonly gravity?: number; readonly sheet: boolean }
	| { readonly kind: 'stud'; readonly mil?: number }
	| { readonly kind: 'masonry'; readonly unit?: 'solid' | 'hollow' | 'aerated' }
);

/** Everything recorded behind a wall. Units and frame: mm, wall frame; studs run the height of the wall. */
export function membersOf(wall: RoomWall, recorded: Wall): readonly Member[] {
	return [
		...Object.values(recorded.backing).map(backed),
		...studsBehind(recorded, wall).map(([, stud]) => framed(stud, wall))
	];
}

/** Two studs nearer to one another than this are one. Units: mm. Ours. */
const SAME = 60;

type Stud = Wall['studs'][string];

/** The studs of a wall by id: those found, then those counted on from one that is known where none was found. Units and frame: mm, wall frame. */
export function studsBehind(recorded: Wall, wall: RoomWall): readonly (readonly [string, Stud])[] {
	const counted = countedOn(recorded, wall).map((stud, i) => [`counted-${String(i + 1)}`, stud] as const);
	return [...Object.entries(recorded.studs), ...counted];
}

/** Never sure: nobody found them. */
function countedOn({ rhythm, studs }: Wall, { from, to }: RoomWall): readonly Stud[] {
	if (!rhythm) return [];
	const { every, width } = rhythm;
	const first = Math.ceil((from - rhythm.from) / every);
	const last = Math.floor((to - rhythm.from) / every);
	const counted = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => rhythm.from + (first + i) * every);
	return counted
		.filter((x) => Object.values(studs).every((found) => Math.abs(found.x - x) >= SAME))
		.map((x) => ({ x: mm(x), width, how: 'assumed' as const }));
}

function backed(b: Wall['backing'][string]): Member {
	const rect = { x0: b.x0, y0: b.y0, x1: b.x1, y1: b.y1 };
	if (b.kind === 'declared') {
		const { load, document, fixing } = b;
		const brackets = HELD[b.holds];
		return {
			kind: 'declared',
			name: `area declared for ${figure(load)} N`,
			rect,
			sure: true,
			load,
			document,
			fixing,
			brackets
		};
	}
	if (b.kind === 'masonry') {
		const name = b.unit === undefined ? 'masonry' : `${b.unit} masonry`;
		return { kind: 'masonry', name, rect, sure: isSure(b.how), ...(b.unit && { unit: b.unit }) };
	}
	return {
		kind: 'wood',
		name: `${b.kind === 'sheet' ? 'sheet' : 'wood blocking'} ${figure(b.thickness)} mm thick`,
		rect,
		sure: isSure(b.how),
		depth: b.thickness,
		...(b.gravity === undefined ? {} : { gravity: b.gravity }),
		sheet: b.kind === 'sheet'
	};
}

function framed(stud: Wall['studs'][string], { bottom, top }: RoomWall): Member {
	return {
		kind: 'stud',
		name: `${stud.steel ? 'steel stud' : 'stud'} ${figure(stud.width)} mm wide`,
		...(typeof stud.steel === 'number' && { mil: stud.steel }),
		rect: { x0: stud.x - stud.width / 2, y0: bottom, x1: stud.x + stud.width / 2, y1: top },
		sure: isSure(stud.how)
	};
}

/** The brackets of what a paper names. */
const HELD = {
	bars: ['flange'],
	seat: ['seat-plate', 'leg-plate'],
	'bars-and-seat': ['flange', 'seat-plate', 'leg-plate']
} as const;

const isSure = (how: How): boolean => how === 'measured' || how === 'observed' || how === 'declared';

const figure = (n: number): string => String(Math.round(n * 10) / 10);
