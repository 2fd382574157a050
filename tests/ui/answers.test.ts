import { render } from '@testing-library/svelte';
import { expect, test } from 'vitest';
import type { Answer } from '#core/rules/row.ts';
import AnswerGlyph from '#ui/panels/answer-glyph.svelte';
import { ANSWER_WORDS, weightiest } from '#ui/panels/answers.ts';
import KnownGlyph from '#ui/panels/known-glyph.svelte';
import { KNOWN_WORDS, type Known } from '#ui/fields/known.ts';
import RangeStrip from '#ui/panels/range-strip.svelte';
import { laidStrip } from '#ui/drawing/strip.ts';
import { stripWords } from '#ui/panels/strip-words.ts';

test('[screen R12] each answer has a shape and a word of its own', () => {
	const answers = Object.keys(ANSWER_WORDS) as Answer[];
	const shapes = answers.map((answer) => render(AnswerGlyph, { answer }).container.querySelector('svg')?.innerHTML);
	expect(new Set(shapes).size).toBe(answers.length);
	expect(new Set(Object.values(ANSWER_WORDS)).size).toBe(answers.length);
});

test('[screen R13] each way of knowing has a shape and a word of its own', () => {
	const ways = Object.keys(KNOWN_WORDS) as Known[];
	const shapes = ways.map((how) => render(KnownGlyph, { how }).container.querySelector('svg')?.innerHTML);
	expect(new Set(shapes).size).toBe(ways.length);
});

test('[screen R14] what is not known weighs more than what is inside, and less than what is outside', () => {
	expect(weightiest(['inside', 'unknown', 'borderline'])).toBe('unknown');
	expect(weightiest(['unknown', 'outside'])).toBe('outside');
	expect(weightiest([])).toBe('inside');
});

const STRIP = {
	value: 980,
	spans: [
		{ name: 'ADA', min: 965.2, max: 1219.2 },
		{ name: 'study', min: undefined, max: 1000 }
	],
	easy: [700, 1000],
	stretched: [650, 1250]
} as const;

test('[screen R15] on a strip the mark, every closed end and three figures lie inside, and bands behind', () => {
	const laid = laidStrip(STRIP, 300, 'mm');
	const [ada, study] = laid.rows;
	for (const x of [laid.mark, ada?.from, ada?.to, study?.to]) expect(x).toBeGreaterThan(70);
	for (const x of [laid.mark, ada?.from, ada?.to, study?.to]) expect(x).toBeLessThan(300);
	expect(laid.mark).toBeGreaterThan(ada?.from ?? Infinity);
	expect(study?.open).toBe('from');
	expect(laid.bands.map(({ kind }) => kind)).toEqual(['stretched', 'easy']);
	expect(laid.figures).toHaveLength(3);
});

test('[screen R16] in inches the scale counts in inches', () => {
	const quarters = laidStrip(STRIP, 300, 'in').figures.map(({ value }) => (value / 25.4) * 4);
	expect(quarters.length).toBeGreaterThan(0);
	for (const n of quarters) expect(n).toBeCloseTo(Math.round(n), 9);
});

test('[screen R17] a strip says in words all it shows', () => {
	const label = stripWords(STRIP, 'Height.', { unit: 'mm' });
	const { getByRole } = render(RangeStrip, { strip: STRIP, tape: { unit: 'mm' }, label });
	const said = getByRole('img').getAttribute('aria-label');
	for (const part of ['980 mm', 'ADA 965.2 mm to 1219.2 mm', 'study up to 1000 mm', 'easy from 700 mm']) {
		expect(said).toContain(part);
	}
});
