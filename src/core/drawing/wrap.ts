import { widthOf, type Weight } from './type.ts';

/**
 * A text broken into lines no wider than `width`; a word that is wider stands alone and is broken between letters.
 * Units: pt, mm.
 */
export function wrapped(text: string, width: number, size: number, weight: Weight = 'regular'): readonly string[] {
	const lines: string[] = [];
	let line = '';
	for (const word of words(text).flatMap((w) => pieces(w, width, size))) {
		const longer = line === '' ? word : `${line} ${word}`;
		if (line !== '' && widthOf(longer, size, weight) > width) {
			lines.push(line);
			line = word;
		} else line = longer;
	}
	return line === '' ? lines : [...lines, line];
}

/** Words, with a number kept together with its fraction and its unit, and what a no-break space joins. */
const words = (text: string): readonly string[] =>
	(text.match(/\S*\d(?: \d+\/\d+)?(?: (?:mm|in|N)\b\S*)?(?=[^\S\u00a0]|$)|[\S\u00a0]+/g) ?? []).map((word) =>
		word.trim()
	);

function pieces(word: string, width: number, size: number): readonly string[] {
	if (widthOf(word, size, 'semibold') <= width) return [word];
	const middle = Math.ceil(word.length / 2);
	if (word.length < 2) return [word];
	return [...pieces(word.slice(0, middle), width, size), ...pieces(word.slice(middle), width, size)];
}
