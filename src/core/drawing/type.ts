import { ADVANCES } from './advances.ts';
import type { Box, Spot, Text } from './entity.ts';
import type { Tone } from './layers.ts';

/** The two weights of the paper. */
export type Weight = 'regular' | 'semibold';

/** A piece of text in one size. Units: mm from the start of the text and above its base line, `size` in pt. */
export interface Run {
	readonly text: string;
	readonly x: number;
	readonly rise: number;
	readonly size: number;
	readonly weight: Weight;
	readonly width: number;
}

/** How a text is set. Units: `size` in pt. */
export interface Hand {
	readonly size: number;
	readonly weight?: Weight;
	readonly tone?: Tone;
	readonly anchor?: 'start' | 'middle' | 'end';
	readonly heading?: 1 | 2;
}

/** One point of type in mm. */
export const PT = 25.4 / 72;

/** What stands for a character the fonts do not have: seen on paper, never dropped. */
const NOT_IN_FONT = '\u25a1';
const FRACTION = /(?:(\d+) )?\b(\d+)\/(2|4|8|16|32|64)\b/g;
const SMALL = 0.64;
const RAISED = 0.24;

const advances: Record<Weight, ReadonlyMap<number, number>> = { regular: table(1), semibold: table(2) };

function table(column: 1 | 2): ReadonlyMap<number, number> {
	return new Map(
		ADVANCES.flatMap((range) =>
			range[column].split(' ').map((width, i): [number, number] => [range[0] + i, Number(width)])
		)
	);
}

const inFont = (sign: string): boolean => advances.regular.has(sign.codePointAt(0) ?? 0);

/** A letter and its accent as one sign, where there is one. */
const whole = (text: string): string => text.normalize('NFC');

/** The signs of a text that the fonts lack, each once. */
export const lackingIn = (text: string): readonly string[] => [...new Set(whole(text))].filter((sign) => !inFont(sign));

/** The text with a true minus before figures, and every character the fonts lack replaced by an empty square. */
export const printable = (text: string): string =>
	Array.from(whole(text).replace(/(?<=^|[\s(])-(?=\d)/g, '\u2212'), (c) => (inFont(c) ? c : NOT_IN_FONT)).join('');

/**
 * Width of a printable text set in one run. Units: pt in, mm out.
 * Source: advance widths of the embedded font, without kerning.
 */
export function runWidth(text: string, size: number, weight: Weight): number {
	let sum = 0;
	for (const c of text) sum += advances[weight].get(c.codePointAt(0) ?? 0) ?? 1000;
	return (sum / 1000) * size * PT;
}

/**
 * A text as it is set: fractions of an inch become three runs, raised numerator, stroke and denominator, without a
 * space after the whole number. Units: pt in, mm out.
 */
export function runsOf(text: string, size: number, weight: Weight): readonly Run[] {
	const runs: Run[] = [];
	let x = 0;
	const put = (piece: string, how: { size: number; weight: Weight; rise: number; air: number }) => {
		const { size: own, weight: bold, rise, air } = how;
		const words = piece.trim();
		// Spaces at the ends of a run are kept as distance: not every reader of a file keeps them as signs.
		const before = runWidth(piece.slice(0, piece.indexOf(words)), own, bold) + air * size * PT;
		const width = runWidth(words, own, bold);
		if (words !== '') runs.push({ text: words, x: x + before, rise, size: own, weight: bold, width });
		x += air * size * PT + runWidth(piece, own, bold);
	};
	const plain = { size, weight, rise: 0, air: 0 };
	const part = { size: size * SMALL, weight: 'semibold' as const, rise: 0, air: 0 };
	let done = 0;
	const clean = printable(text);
	for (const match of clean.matchAll(FRACTION)) {
		const [all, before = '', numerator = '', denominator = ''] = match;
		put(clean.slice(done, match.index) + before, plain);
		put(numerator, { ...part, rise: RAISED * size * PT, air: before === '' ? 0 : 0.02 });
		put('\u2044', { ...plain, air: 0.03 });
		put(denominator, { ...part, air: 0.05 });
		done = match.index + all.length;
	}
	put(clean.slice(done), plain);
	return runs;
}

/** Width of a text as it is set. Units: pt in, mm out. */
export function widthOf(text: string, size: number, weight: Weight = 'regular'): number {
	const last = runsOf(text, size, weight).at(-1);
	return last ? last.x + last.width : 0;
}

/** The size of a hand, or the smaller one in which a text is no wider than this. Units: mm, pt. */
export const fitting = (text: string, width: number, { size, weight }: Pick<Hand, 'size' | 'weight'>): number =>
	size * Math.min(1, width / Math.max(width, widthOf(text, size, weight)));

/** A line of text on the sheet. Units and frame: mm, `at` on the base line. */
export function write(id: string, text: string, at: Spot, hand: Hand): Text {
	const { size, weight = 'regular', tone = 'ink', anchor = 'start', heading } = hand;
	const runs = runsOf(text, size, weight);
	const last = runs.at(-1);
	const lacks = lackingIn(text).length > 0;
	return {
		kind: 'text',
		id,
		at,
		anchor,
		size,
		weight,
		tone,
		text: printable(text),
		runs,
		width: last ? last.x + last.width : 0,
		...(heading && { heading }),
		...(lacks && { typed: whole(text) })
	};
}

/** Where a text begins. Units and frame: mm of the sheet. */
export const startOf = (t: Text): number =>
	t.at[0] - (t.anchor === 'start' ? 0 : t.anchor === 'middle' ? t.width / 2 : t.width);

/** The area a text covers, from its descenders to its ascenders. Units and frame: mm of the sheet. */
export function boxOf(t: Text): Box {
	const em = t.size * PT;
	const x0 = startOf(t);
	return { x0, x1: x0 + t.width, y0: t.at[1] - 0.72 * em, y1: t.at[1] + 0.21 * em };
}
