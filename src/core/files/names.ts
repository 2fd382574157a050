import { READERS, type Reader } from '#core/drawing/sheet.ts';
import { wallsUsed } from '#core/drawing/setting-out.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';

/** The name of a file a plan can be written to. */
export type FileName =
	`${Reader}.pdf` | `${WallId}-wall.${'svg' | 'dxf'}` | 'marks.csv' | 'holes.csv' | 'summary.txt' | 'plan.json';

/** Every file of a plan: a PDF a reader who has a sheet, a drawing and a DXF a wall, then the tables, the plain text and the plan as data. */
export function namesOf(plan: Plan): readonly FileName[] {
	// Her sheets speak of marks only.
	const readers = READERS.filter((reader) => reader !== 'hers' || plan.marks.length > 0);
	return [
		...readers.map((reader) => `${reader}.pdf` as const),
		...wallsUsed(plan).flatMap((wall) => [`${wall}-wall.svg`, `${wall}-wall.dxf`] as const),
		'marks.csv',
		'holes.csv',
		'summary.txt',
		'plan.json'
	];
}
