import { describe, expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { planFrom, questionOf } from '#core/plan.ts';
import { settled } from '#core/report.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { PERSON } from '#core/rules/packs/person.ts';
import { sentence } from '#core/rules/sentence.ts';
import { answers, caseWith, marksOf, sceneOf } from './baseline.ts';

const weighing = (kg: number, enclosure = {}): Case =>
	caseWith({ client: { mass: { value: kg, how: 'measured' } }, enclosure });

const signedIn = (c: Case) =>
	judge(
		sceneOf(c),
		bind([PERSON], [], c).filter(({ row }) => row.id === 'WALL-LOAD-SIGNED'),
		[]
	);

const paper = (load: number) => ({ loadStatement: { document: 'letter 7', by: 'an engineer', load } });

describe('what only a competent signature answers', () => {
	test.each([
		[159, []],
		[159.1, ['ask']]
	])('[rules R11] at %s kg: %j', (kg, expected) => {
		expect(signedIn(weighing(kg)).map(({ answer }) => answer)).toEqual(expected);
	});

	test('[rules R11] it is a must whoever leads and whether or not backing may be added', () => {
		const backingMayBeAdded = { value: true, how: 'told' };
		expect(signedIn(weighing(180, { backingMayBeAdded })).map(({ strength }) => strength)).toEqual(['must']);
	});

	// 180 kg: 1765.197 N, up to the next 50 N.
	test('[rules R11] it names newtons and no weight', () => {
		const [finding] = signedIn(weighing(180));
		if (!finding) throw new Error('nothing is asked');
		const words = [sentence(finding, { unit: 'mm' }), ...Object.values(finding.row).map(String)].join(' ');
		expect(words).toContain('Here 1800 N.');
		expect(words).not.toMatch(/\b(180|159)\b|kg/);
	});

	test.each([
		[1799, 1],
		[1800, 0]
	])('[rules R11] a paper for %s N leaves %s open', (load, open) => {
		expect(signedIn(weighing(180, paper(load)))).toHaveLength(open);
	});

	test('[rules R11] until it is signed nothing is settled', () => {
		const planned = (c: Case) => {
			const question = questionOf(c);
			const rows = question.rows.filter(({ row }) => row.id === 'WALL-LOAD-SIGNED');
			return planFrom({ ...question, rows }, { status: 'given', marks: [] } as never);
		};
		const [open, closed] = [planned(weighing(180)), planned(weighing(180, paper(2000)))];
		expect([open.basis, settled(open)]).toEqual(['provisional', false]);
		expect([closed.basis, settled(closed)]).toEqual(['settled', true]);
	});
});

describe('a plan that asks less than a document', () => {
	test.each([
		[1100, 'unknown'],
		[1112, 'inside'],
		[1300, 'inside']
	])('[rules R3] 609.8, 610.4 with %s N asked: %s', (demand, answer) => {
		const found = answers(caseWith({ enclosure: { demand } }), marksOf());
		expect(found['ADA-LOAD-SEAT']).toBe(answer);
	});
});
