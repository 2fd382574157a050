import { onTape, type Tape } from '#core/units/format.ts';

/** A sentence as the tape of the house has it, with no figure parted from its fraction or its unit at the end of a line. */
export const said = (words: string, tape: Tape): string => unparted(onTape(words, tape));

/** The same for words that speak of the tape already. */
export function unparted(words: string): string {
	return words
		.replace(/(\d) (?=\d+\/\d)/g, '$1\u00a0')
		.replace(/(\d) (?=(?:mm|in|N|kg|%|degrees?)(?![a-z]))/g, '$1\u00a0');
}
