import type { Tape } from '#core/units/format.ts';
import type { Box } from './entity.ts';
import type { Units } from './figure.ts';

/** Sheets this program draws, the smaller of each pair first. */
export const SHEET_NAMES = ['A4', 'A3', 'Letter', 'Tabloid'] as const;
/** A sheet this program draws. */
export type SheetName = (typeof SHEET_NAMES)[number];

/** Whose sheets they are; what each is not told is never drawn for them. */
export const READERS = ['hers', 'therapist', 'installer'] as const;
/** Whose sheets they are. */
export type Reader = (typeof READERS)[number];

/** How sheets are drawn: for whom, their size, and the tape their figures are read on. */
export interface OnPaper {
	readonly reader: Reader;
	readonly sheet: SheetName;
	readonly tape: Tape;
	/** Figures to set out by stand in the other unit too. */
	readonly both?: boolean;
}

/** The units of its figures, the other one where both are asked for. */
export const unitsOn = ({ tape: { unit }, both }: Pick<OnPaper, 'tape' | 'both'>): Units =>
	both ? { unit, other: unit === 'mm' ? 'in' : 'mm' } : { unit };

/** Sizes of the sheets, upright. Units: mm. Source: ISO 216 A4, A3; ANSI/ASME Y14.1 A and B, 8.5 x 11 and 11 x 17 in. */
export const SHEETS: Readonly<Record<SheetName, { readonly width: number; readonly height: number }>> = {
	A4: { width: 210, height: 297 },
	A3: { width: 297, height: 420 },
	Letter: { width: 215.9, height: 279.4 },
	Tabloid: { width: 279.4, height: 431.8 }
};

/** The sheet that is usual with a tape. */
export const usualSheet = ({ unit }: Tape): SheetName => (unit === 'in' ? 'Letter' : 'A4');

/** The sheet for what is read in the hand: lists, her own sheets and templates; only drawings take the larger one. */
export const inHand = (how: OnPaper): OnPaper => ({
	...how,
	sheet: how.sheet === 'A3' ? 'A4' : how.sheet === 'Tabloid' ? 'Letter' : how.sheet
});

/** Height of the row of cautions and title block at the foot. Units: mm. */
export const FOOT = 27;

/** The part of a sheet that may be drawn on. Units: mm. Source: ISO 5457 margins, 20 at the filing edge and 10. */
export function fieldOf(sheet: SheetName): Box {
	const { width, height } = SHEETS[sheet];
	return { x0: 20, y0: 10, x1: width - 10, y1: height - 10 };
}
