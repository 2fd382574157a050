import { HOWS, type How } from '#core/case/fact.ts';

/** How a number on the screen is known: as recorded, worked out from the others, chosen by us, later as it is now, or not asked yet. */
export type Known = How | 'estimated' | 'chosen' | 'as-now' | 'not-asked';

/** What is said beside the glyph. */
export const KNOWN_WORDS: Readonly<Record<Known, string>> = {
	measured: 'measured',
	observed: 'observed',
	told: 'told',
	declared: 'declared',
	assumed: 'assumed',
	estimated: 'estimated',
	chosen: 'chosen',
	'as-now': 'as now',
	'not-asked': 'not asked'
};

/** The ways a fact can be known that a person may choose. Declared needs its paper and is not chosen here. */
export const CHOOSABLE: readonly How[] = HOWS.filter((how) => how !== 'declared');
