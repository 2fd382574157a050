import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerOf, slackOf } from '#core/rules/answer.ts';
import { applies, conditionsOf } from '#core/rules/applies.ts';
import { bind } from '#core/rules/bind.ts';
import { findingOf, judge } from '#core/rules/judge.ts';
import { exactly } from '#core/rules/limit.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import type { Allowed, BoundRow, Row } from '#core/rules/row.ts';
import { sentence } from '#core/rules/sentence.ts';
import { inches, mm } from '#core/units/length.ts';
import { caseWith, marksOf, sceneOf } from './baseline.ts';

const rowWith = (allowed: Allowed, more: Partial<Row> = {}): Row => ({
	id: 'ROW',
	document: 'Document',
	edition: '1',
	clause: '1.1',
	source: { title: 'test', how: 'seen' },
	origin: 'document',
	of: 'horizontal-bar',
	measure: 'bar-top-from-low-floor',
	allowed,
	says: 'The bar is so high.',
	...more
});

const bound = (row: Row): BoundRow => ({ row, strength: 'must', about: ['bar'] });
const RANGE = rowWith({ min: { n: 33, unit: 'in', printed: 840 }, max: { n: 36, unit: 'in', printed: 915 } });

describe('answers', () => {
	test('[rules R4] 34 in is met by every way of writing 863.6', () => {
		const row = rowWith({ max: { n: 34, unit: 'in' } });
		for (const value of [863.6, 34 * 25.4, inches(34), 800 + 63.6]) expect(answerOf(row, value)).toBe('inside');
		expect(answerOf(row, mm(863.603125))).toBe('outside');
	});

	test('[rules R4] a strict limit leaves its end outside', () => {
		const row = rowWith({ max: { n: 100, unit: 'mm' }, strict: true });
		expect([99.9, 100, 100.1].map((v) => answerOf(row, v))).toEqual(['inside', 'outside', 'outside']);
	});

	test.each([
		['yes', 1, 'inside'],
		['yes', 0, 'outside'],
		['no', 0, 'inside'],
		['no', 1, 'outside']
	] as const)('[rules R4] asked for %s, %s is %s', (allowed, value, answer) => {
		expect(answerOf(rowWith(allowed, { measure: 'on-control-wall' }), value)).toBe(answer);
	});

	test.each([
		[{ best: 900, sure: 850, missing: 'q' }, 'inside'],
		[{ best: 900, sure: 800, missing: 'q' }, 'unknown'],
		[{ best: 800, sure: 700, missing: 'q' }, 'outside'],
		[{ best: 1000, sure: 700, missing: 'q' }, 'unknown'],
		[{ missing: 'q' }, 'unknown']
	] as const)('[rules R6] between bounds %j the answer is %s', (reading, answer) => {
		expect(answerOf(RANGE, reading)).toBe(answer);
	});

	test('[rules R6] unknown is never inside: inside holds for every value between the bounds', () => {
		const value = fc.double({ min: 600, max: 1200, noNaN: true });
		fc.assert(
			fc.property(value, value, fc.double({ min: 0, max: 1, noNaN: true }), (best, sure, share) => {
				const answer = answerOf(RANGE, { best, sure, missing: 'q' });
				const between = answerOf(RANGE, best + share * (sure - best));
				if (answer === 'inside') expect(between).toBe('inside');
				if (answer === 'outside') expect(between).not.toBe('inside');
			})
		);
	});

	test('[rules R6] slack at best is never less than for sure, and moves no faster than the reading', () => {
		const value = fc.double({ min: 600, max: 1200, noNaN: true });
		fc.assert(
			fc.property(value, value, fc.double({ min: -50, max: 50, noNaN: true }), (best, sure, by) => {
				const here = slackOf(RANGE, { best, sure, missing: 'q' });
				const there = slackOf(RANGE, { best: best + by, sure: sure + by, missing: 'q' });
				expect(here.best).toBeGreaterThanOrEqual(here.sure);
				expect(Math.abs(there.best - here.best)).toBeLessThanOrEqual(Math.abs(by) + 1e-5);
				expect(Math.abs(there.sure - here.sure)).toBeLessThanOrEqual(Math.abs(by) + 1e-5);
			})
		);
	});

	// Source: NIST Special Publication 811, appendix B.
	test.each([
		[{ n: 120, unit: 'degF' }, 48.888889],
		[{ n: 250, unit: 'lbf' }, 1112.055404],
		[{ n: 1 / 48, unit: 'ratio' }, 0.020833],
		[{ n: 59, unit: 'in' }, 1498.6]
	] as const)('[rules R4] %j is %s', (quantity, value) => {
		expect(exactly(quantity)).toBeCloseTo(value, 5);
	});
});

describe('judge', () => {
	test('[rules R7] one finding a bound row, in order; the same again gives the same', () => {
		const c = caseWith();
		const marks = marksOf();
		const rows = bind(
			packsFor(c.reference),
			marks.map((m) => m.accessory),
			c
		);
		const findings = judge(sceneOf(c), rows, marks);
		expect(findings.map((f) => f.row.id)).toEqual(rows.map((r) => r.row.id));
		expect(judge(sceneOf(c), rows, marks)).toEqual(findings);
		for (const f of findings) {
			if (f.answer === 'inside' && f.slack !== undefined) expect(f.slack).toBeGreaterThanOrEqual(0);
			if (f.answer === 'outside' && f.slack !== undefined) expect(f.slack).toBeLessThan(0);
		}
	});

	test('[rules R7] a fact nobody recorded gives unknown with its question', () => {
		const c = caseWith({ enclosure: { hose: undefined, water: undefined, threshold: undefined } });
		// What documents not chosen do not know is told with them.
		const rows = bind(packsFor(c.reference), [], c).filter(({ strength }) => strength !== 'reported');
		const unknown = judge(sceneOf(c), rows, []).filter((f) => f.answer === 'unknown');
		expect(unknown.map((f) => f.row.id)).toEqual(['NEED-CHAIR-PARKS', 'ADA-HS-HOSE', 'ADA-TEMP', 'ADA-THR-T']);
		for (const f of unknown) expect(f.missing).toMatch(/\?$/);
	});

	test('[rules R7] a mark that is not there leaves its rows not here', () => {
		const c = caseWith();
		const [seat, ...others] = marksOf();
		if (!seat) throw new Error('baseline');
		const rows = bind(packsFor(c.reference), [seat.accessory, ...others.map((m) => m.accessory)], c);
		const found = judge(sceneOf(c), rows, others).filter((f) => f.about.includes('seat'));
		expect(new Set(found.map((f) => f.answer))).toEqual(new Set(['not-here']));
	});

	test('[rules R5] a fact not recorded counts as unknown among conditions', () => {
		const c = caseWith({ client: { washes: undefined, transfer: undefined, rises: undefined, chair: {} } });
		expect(conditionsOf(c)).toMatchObject({ washes: 'unknown', walks: 'unknown', rises: 'unknown', chair: 'unknown' });
		expect(applies({ walks: ['yes'] }, c)).toBe(false);
		expect(applies({ walks: ['yes', 'unknown'] }, c)).toBe(true);
		expect(applies(undefined, c)).toBe(true);
	});

	test.each([
		['seated', 'yes'],
		['both', 'yes'],
		['standing', 'no'],
		['in-chair', 'no']
	])('[rules R5] who washes %s is offered a seat: %s; where nobody asked, one is', (washes, seat) => {
		expect(conditionsOf(caseWith({ client: { washes: { value: washes, how: 'told' } } }))).toMatchObject({ seat });
		expect(conditionsOf(caseWith({ client: { washes: undefined } }))).toMatchObject({ seat: 'yes' });
	});

	test.each([
		['walks', 'yes', 'no'],
		['stand-pivot', 'yes', 'yes'],
		['sitting-pivot', 'no', 'yes'],
		['slide-board', 'no', 'yes'],
		['hoist', 'no', 'yes']
	])('[rules R5] who comes in by %s walks: %s, comes from a chair: %s', (transfer, walks, chair) => {
		const c = caseWith({ client: { transfer: { value: transfer, how: 'told' }, chair: {} } });
		expect(conditionsOf(c)).toMatchObject({ walks, chair });
	});
});

describe('sentences', () => {
	const says = (row: Row, reading: Parameters<typeof findingOf>[1], unit: 'mm' | 'in' = 'mm') =>
		sentence(findingOf(bound(row), reading), { unit });

	test.each([
		[RANGE, 864.2, 'mm', 'The bar is so high. Here 864.2 mm, 26 mm to spare.'],
		[RANGE, 1022.4, 'mm', 'The bar is so high. Here 1022.4 mm, 108 mm too high.'],
		[RANGE, 812.8, 'in', 'The bar is so high. Here 32 in, 1 in too low.'],
		[RANGE, 915, 'mm', 'The bar is so high. Here 915 mm; the document prints 915 mm, but 36 in is 914.4 mm.'],
		[RANGE, { missing: 'How high?' }, 'mm', 'The bar is so high. Not known: How high?']
	] as const)('[rules R8] %#', (row, reading, unit, words) => {
		expect(says(row, reading, unit)).toBe(words);
	});

	test('[rules R8] 17 in is 431.8', () => {
		const row = rowWith({ min: { n: 17, unit: 'in', printed: 430 } }, { measure: 'seat-top-above-bathroom-floor' });
		expect(says(row, 431)).toBe('The bar is so high. Here 431 mm; the document prints 430 mm, but 17 in is 431.8 mm.');
	});

	test('[rules R8] questions and yes or no', () => {
		expect(says(rowWith({ ask: 'Is it so?' }), 0)).toBe('To ask: Is it so?');
		const wall = rowWith('yes', { measure: 'on-control-wall' });
		expect(says(wall, 1)).toBe('The bar is so high.');
		expect(says(wall, 0)).toBe('The bar is so high. Here it is not so.');
	});

	test('[rules R8] every finding of a plan has one sentence with no figure missing', () => {
		const c = caseWith({ client: { lean: undefined } });
		const marks = marksOf({ barTop: 40, control: { fromBack: 10, bottom: 30, top: 60 } });
		const rows = bind(
			packsFor(c.reference),
			marks.map((m) => m.accessory),
			c
		);
		for (const f of judge(sceneOf(c), rows, marks)) {
			for (const unit of ['mm', 'in'] as const) expect(sentence(f, { unit })).not.toMatch(/NaN|undefined|Infinity/);
		}
	});
});
