import { MESSAGES } from '#core/drawing/hers/messages.ts';
import { describe, expect, test } from 'vitest';
import { allPlans, hersIn, LANGUAGES, paragraphsOf, type Language } from './hers-plans.ts';
import { countsOf, fernandezHuerta, fleschKincaid, kandelMoles, sentencesIn, wordsIn } from './reading.ts';

const plans = allPlans();

/** What is read as sentences: paragraphs that end as one, and each thing that is wrong after the words that lead to it. */
function prose(name: string, language: Language): readonly string[] {
	const plan = plans.get(name);
	if (!plan) return [];
	const all = [...paragraphsOf(hersIn(plan, language))];
	const lead = all.find(([id]) => id === 'wrong/title')?.[1] ?? '';
	return all.flatMap(([id, text]) => {
		if (/^wrong\/\d+\/says$/.test(id)) return [`${lead} ${text}.`];
		return /[.?]$/.test(text) && !id.startsWith('key/letters') ? [text] : [];
	});
}

const NAMES = [...plans.keys()];

describe('the formulas', () => {
	test('[drawing R22] Flesch-Kincaid agrees with the worked value of the npm package flesch-kincaid', () => {
		expect(fleschKincaid({ sentences: 1, words: 13, syllables: 26 })).toBeCloseTo(13.08, 2);
		// Its own text has 12 words and 23 syllables; the library never counts fewer.
		const platypus = 'The Australian platypus is seemingly a hybrid of mammal and reptilian creature.';
		const { sentences, words, syllables } = countsOf([platypus], 'en');
		expect({ sentences, words }).toEqual({ sentences: 1, words: 12 });
		expect(syllables).toBeGreaterThanOrEqual(23);
	});

	test.each([
		['barra', 2],
		['agua', 2],
		['asiento', 3],
		['ducha', 2],
		['baño', 2],
		['izquierda', 3],
		['quien', 1],
		['línea', 3],
		['día', 2],
		['grifo', 2],
		['levantarse', 4],
		['cuélguela', 3],
		['aún', 2],
		['leer', 2]
	])('[drawing R22] the syllables of the Spanish word %s are %i', (word, n) => {
		expect(countsOf([word], 'es').syllables).toBe(n);
	});

	test.each([
		['barre', 1],
		['siège', 1],
		['douchette', 2],
		['gauche', 1],
		['derrière', 2],
		['l’eau', 1],
		['robinet', 3],
		['installateur', 4],
		['libre', 1],
		['de', 1]
	])('[drawing R22] the syllables of the French word %s are %i', (word, n) => {
		expect(countsOf([word], 'fr').syllables).toBe(n);
	});
});

describe('her words', () => {
	test.each(NAMES)('[drawing R22] of %s are read in grade 8 or before, no sentence of 15 words', (name) => {
		const texts = prose(name, 'en');
		expect(texts.length).toBeGreaterThan(10);
		expect(fleschKincaid(countsOf(texts, 'en'))).toBeLessThanOrEqual(8);
		for (const sentence of texts.flatMap(sentencesIn)) expect(wordsIn(sentence).length, sentence).toBeLessThan(15);
	});

	test.each(NAMES)('[drawing R22] of %s are normal or easier to read in Spanish and French', (name) => {
		expect(fernandezHuerta(countsOf(prose(name, 'es'), 'es'))).toBeGreaterThanOrEqual(60);
		expect(kandelMoles(countsOf(prose(name, 'fr'), 'fr'))).toBeGreaterThanOrEqual(60);
	});

	test('[drawing R22] every message by itself is read in grade 8 or before', () => {
		const { uses, tests, mind, again, signing, choices, until } = MESSAGES.en;
		const all = [
			...Object.values(uses).flatMap(({ purpose, how }) => [purpose, how]),
			...Object.values(tests),
			...Object.values(mind.says),
			...Object.values(until.says),
			...Object.values(choices.states),
			...Object.values(choices.helped),
			...Object.values(choices.hand),
			...Object.values(signing.owner),
			again.says(12),
			again.sooner,
			mind.lean(4)
		];
		for (const text of all) expect(fleschKincaid(countsOf([text], 'en')), text).toBeLessThanOrEqual(8);
	});

	test.each(NAMES)('[drawing R22] of %s say the same things in every language, none of them in English', (name) => {
		const plan = plans.get(name);
		if (!plan) throw new Error(name);
		const english = paragraphsOf(hersIn(plan, 'en'));
		for (const language of ['es', 'fr'] as const) {
			const own = paragraphsOf(hersIn(plan, language));
			const ids = (all: ReadonlyMap<string, string>) =>
				new Set([...all.keys()].filter((id) => !id.startsWith('head/')));
			expect([...ids(own)].toSorted()).toEqual([...ids(english)].toSorted());
			for (const [id, text] of own) {
				if (/[a-z]{3}/i.test(text.replace(/\b[a-z]+-[\w-]+\b/g, ''))) expect(text, id).not.toBe(english.get(id));
				expect(text).not.toMatch(/\b(the|and|your|you|with|when|not|is|of|it)\b/i);
			}
		}
	});

	test.each(NAMES)('[drawing R22] of %s are nobody’s record: no name, no weight, no word of a clinic', (name) => {
		const plan = plans.get(name);
		if (!plan) throw new Error(name);
		const { people } = plan.scene.c;
		for (const language of LANGUAGES) {
			for (const [id, text] of paragraphsOf(hersIn(plan, language))) {
				if (id.startsWith('foot/') || id.startsWith('head/')) continue;
				expect(text).not.toMatch(
					/client|patient|assess|transfer|diagnos|therap|clinic|condition|seizure|disab|compliant|safe\b|optimal/i
				);
				for (const { initials, mass } of Object.values(people)) {
					if (initials) expect(text).not.toContain(initials);
					if (mass) expect(text).not.toMatch(new RegExp(`\\b${String(mass.value)}\\b`));
				}
			}
		}
	});
});
