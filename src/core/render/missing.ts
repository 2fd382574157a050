import type { Drawing } from '#core/drawing/entity.ts';
import { lackingIn } from '#core/drawing/type.ts';

/** A sign the fonts of the paper lack, and where it stands. */
export interface MissingGlyph {
	readonly sign: string;
	/** Its code point as Unicode writes it: U+65E5. */
	readonly code: string;
	/** The line it stands in, as it was typed. */
	readonly text: string;
	/** Titles of the sheets with that line, each once. */
	readonly sheets: readonly string[];
}

/** A file of drawings with signs the fonts lack is not made: an empty square on paper is read by nobody. */
export class GlyphMissing extends RangeError {
	readonly missing: readonly MissingGlyph[];

	constructor(missing: readonly MissingGlyph[]) {
		super(missing.map(missingSays).join(' '));
		this.name = 'GlyphMissing';
		this.missing = missing;
	}
}

/** Every sign the fonts lack in every line it stands in, in the order of the drawings. */
export function missingGlyphs(drawings: readonly Drawing[]): readonly MissingGlyph[] {
	const found = new Map<string, MissingGlyph>();
	for (const { title, entities } of drawings) {
		for (const e of entities) {
			if (e.kind !== 'text' || e.typed === undefined) continue;
			for (const sign of lackingIn(e.typed)) {
				const key = `${sign} ${e.typed}`;
				const sheets = [...new Set([...(found.get(key)?.sheets ?? []), title])];
				found.set(key, { sign, code: codeOf(sign), text: e.typed, sheets });
			}
		}
	}
	return [...found.values()];
}

/** Fails: GlyphMissing with all of them, when the fonts lack a sign of any of the drawings. */
export function refuseMissing(drawings: readonly Drawing[]): void {
	const missing = missingGlyphs(drawings);
	if (missing.length > 0) throw new GlyphMissing(missing);
}

/** What was seen, where, and what to do. */
export function missingSays({ sign, code, text, sheets }: MissingGlyph): string {
	const seen = UNSEEN.test(sign) ? code : `'${sign}' (${code})`;
	const where = `${sheets.length > 1 ? 'sheets' : 'sheet'} ${sheets.join(', ')}`;
	return `The paper's font has no sign for ${seen}, in '${clipped(text, sign)}' on ${where}. Write it another way: the font has Latin, Greek and Cyrillic letters, not all of them.`;
}

/** What shows nothing, or would break the line of a message. */
const UNSEEN = /[\p{C}\p{Z}\p{M}]/u;
const LONGEST = 60;

/** What of a line stands round a sign. */
function clipped(text: string, sign: string): string {
	const signs = Array.from(text);
	const from = Math.max(0, Math.min(signs.indexOf(sign) - LONGEST / 2, signs.length - LONGEST));
	const shown = signs
		.slice(from, from + LONGEST)
		.join('')
		.replace(/\p{C}/gu, ' ');
	return `${from > 0 ? '\u2026' : ''}${shown}${from + LONGEST < signs.length ? '\u2026' : ''}`;
}

const codeOf = (sign: string): string => `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
