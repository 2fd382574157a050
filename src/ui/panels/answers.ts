import type { Answer } from '#core/rules/row.ts';

/** What is said beside the glyph of an answer. */
export const ANSWER_WORDS: Readonly<Record<Answer, string>> = {
	inside: 'inside',
	outside: 'outside',
	borderline: 'borderline',
	unknown: 'not known',
	ask: 'a person decides',
	'not-here': 'not here'
};

const WORST_FIRST: readonly Answer[] = ['outside', 'unknown', 'borderline', 'ask', 'inside', 'not-here'];

/** The answer that weighs most among several; inside when there is none. */
export function weightiest(answers: readonly Answer[]): Answer {
	return WORST_FIRST.find((one) => answers.includes(one)) ?? 'inside';
}

/** The order in which answers are read: what needs somebody first. */
export function byWeight(a: Answer, b: Answer): number {
	return WORST_FIRST.indexOf(a) - WORST_FIRST.indexOf(b);
}
