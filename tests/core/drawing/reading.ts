import { syllable } from 'syllable';

/** What a formula of reading ease counts. */
export interface Counts {
	readonly sentences: number;
	readonly words: number;
	readonly syllables: number;
}

/**
 * Flesch-Kincaid grade level: the school year in the United States that reads a text.
 * Source: Kincaid, Fishburne, Rogers and Chissom 1975, as the npm package flesch-kincaid states it.
 */
export const fleschKincaid = ({ sentences, words, syllables }: Counts): number =>
	(0.39 * words) / sentences + (11.8 * syllables) / words - 15.59;

/**
 * Reading ease in Spanish, 60 to 70 is normal for an adult, more is easier.
 * Source: Fernandez Huerta 1959, as corrected in github.com/amunozf/legibilidad: 206.84 - 60 P - 1.02 F, P syllables a word, F words
 * a sentence.
 */
export const fernandezHuerta = ({ sentences, words, syllables }: Counts): number =>
	206.84 - (60 * syllables) / words - (1.02 * words) / sentences;

/** Reading ease in French, on Flesch's scale: 60 and more is plain. Source: Kandel and Moles 1958, from memory. */
export const kandelMoles = ({ sentences, words, syllables }: Counts): number =>
	207 - (1.015 * words) / sentences - (73.6 * syllables) / words;

const WORD = /[\p{L}\d]+(?:['’\u2019-]\p{L}+)*/gu;

/** The words of a text; blanks to write in are none. */
export const wordsIn = (text: string): readonly string[] => text.replaceAll('_', ' ').match(WORD) ?? [];

/** The sentences of a text. */
export const sentencesIn = (text: string): readonly string[] =>
	text.split(/(?<=[.?!])\s+/).filter((sentence) => wordsIn(sentence).length > 0);

/** Syllables of an English word; a number is read as one word of one syllable a digit. */
const english = (word: string): number => (/^\d+$/.test(word) ? word.length : Math.max(1, syllable(word)));

/**
 * Syllables of a Spanish word: a strong vowel each, a weak one by itself only with its own accent or without a strong one beside it;
 * u is silent in que, qui, gue, gui. Source: rules of Spanish spelling, from memory.
 */
function spanish(word: string): number {
	if (/^\d+$/.test(word)) return word.length;
	const plain = word
		.toLowerCase()
		.replace(/([qg])u(?=[eiéí])/g, '$1')
		.replace(/y$/, 'i');
	const parts = plain.match(/[aeoáéó]?[iuü]?[aeoáéó](?:[iuü](?![aeoáéóíú]))?|[íú]|[iuü]+/g) ?? [];
	// Two strong vowels side by side are two syllables.
	const strong = parts.reduce((sum, part) => sum + Math.max(1, (part.match(/[aeoáéó]/g) ?? []).length), 0);
	return Math.max(1, strong);
}

/**
 * Syllables of a French word: a group of vowels each, a mute e at the end not counted, nor the elided word before an apostrophe.
 * Source: rules of French spelling, from memory; a verb's mute -ent is counted, which makes a text harder than it is.
 */
function french(word: string): number {
	if (/^\d+$/.test(word)) return word.length;
	const bare = word.toLowerCase().replace(/^[a-z]{1,2}['’\u2019]/, '');
	const heard = bare.replace(/(?<=.*[aeiouyàâéèêëîïôûùœ].*)es?$/, (end) => end.replace('e', ''));
	return Math.max(1, (heard.match(/[aeiouyàâéèêëîïôûùœ]+/g) ?? []).length);
}

const SYLLABLES = { en: english, es: spanish, fr: french } as const;

/** What some texts count in a language. */
export function countsOf(texts: readonly string[], language: keyof typeof SYLLABLES): Counts {
	const sentences = texts.flatMap(sentencesIn);
	const words = sentences.flatMap(wordsIn);
	const syllables = words.reduce((sum, word) => sum + SYLLABLES[language](word), 0);
	return { sentences: sentences.length, words: words.length, syllables };
}
