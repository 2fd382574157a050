import type { Tape } from '#core/units/format.ts';
import type { Box } from './entity.ts';

/** Sheets this program draws. */
export type SheetName = 'A4' | 'Letter';

/** How sheets are drawn: their size, and the tape their figures are read on. */
export interface OnPaper {
	readonly sheet: SheetName;
	readonly tape: Tape;
}

/** Sizes of the sheets, upright. Units: mm. Source: ISO 216 A4; ANSI/ASME Y14.1 A, 8.5 x 11 in. */
export const SHEETS: Readonly<Record<SheetName, { readonly width: number; readonly height: number }>> = {
	A4: { width: 210, height: 297 },
	Letter: { width: 215.9, height: 279.4 }
};

/** Height of the row of cautions and title block at the foot. Units: mm. */
export const FOOT = 27;

/** The part of a sheet that may be drawn on. Units: mm. Source: ISO 5457 margins, 20 at the filing edge and 10. */
export function fieldOf(sheet: SheetName): Box {
	const { width, height } = SHEETS[sheet];
	return { x0: 20, y0: 10, x1: width - 10, y1: height - 10 };
}
