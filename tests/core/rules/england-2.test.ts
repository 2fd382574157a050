import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import { PERSON } from '#core/rules/packs/person.ts';
import { UK_ADM_2 } from '#core/rules/packs/uk-adm-2.ts';
import { amiss, answersOf, at, corner, drawn, findingsOf, HANDS, inHand, measured, without } from './england.ts';

// Source of every expected answer: Approved Document M Volume 2, 2015 edition with 2020 amendments, 5.18 and Diagrams 22 to 24.
describe.each(HANDS)('Approved Document M Volume 2, Diagram 23, %s', (hand) => {
	const found = (marks = drawn(), c = corner()) => answersOf(UK_ADM_2, ...inHand(hand, c, marks));
	const out = (marks = drawn(), c = corner()) => amiss(found(marks, c));

	test('[rules R3] U2-K1 all as Diagram 23 draws it is inside', () => {
		const all = found();
		expect(amiss(all)).toEqual([]);
		const spoken = Object.keys(all).filter((id) => all[id] === 'inside');
		// All rows but those about the upright bar, which Diagram 23 does not have, and what is only asked.
		expect(spoken.length).toBe(UK_ADM_2.rows.length - 2 - 6);
	});

	// The bar from 240 to 840, the plate of the rail from 850: within 10 of 250 and 900 there is room for both.
	test('[rules R3] Diagram 23 the parts we offer have room beside each other', () => {
		const marks = drawn({ bar: { u: 240 }, ahead: { u: 910 }, control: { z: 850 } });
		expect(out(marks)).toEqual([]);
		const fits = findingsOf(PERSON, ...inHand(hand, corner(), marks)).filter((f) => f.row.clause === 'fits');
		expect(fits.filter((f) => f.answer !== 'inside' && f.answer !== 'not-here').map((f) => f.row.id)).toEqual([]);
		const tight = findingsOf(PERSON, ...inHand(hand, corner(), drawn({ control: { z: 850 } })));
		expect(tight.filter((f) => f.row.clause === 'fits' && f.answer === 'outside').map((f) => f.about)).toEqual([
			['rail-ahead', 'bar-back']
		]);
	});

	test('[rules R3] U2-K2 5.18(q) a control at 1050 is above 1000', () => {
		expect(out(drawn({ control: { z: 1050 } }))).toEqual(['U2-12-HIGH']);
	});

	test.each([750, 1000])('[rules R3] U2-K3 5.18(q) a control at %d is inside', (z) => {
		expect(out(drawn({ control: { z } }))).toEqual([]);
	});

	test('[rules R3] U2-K4 Diagram 23, a head that goes no lower than 1300 cannot be had at 1200', () => {
		expect(out(drawn({ low: { z: 1300 } }))).toEqual(['U2-14-LOW']);
	});

	test('[rules R3] U2-K5 5.18(b) whether a spring throws the seat up is asked', () => {
		expect(found()['U2-06']).toBe('ask');
	});

	test('[rules R3] U2-K6 Diagram 23, a seat centre line at 530 is outside by our 10 mm', () => {
		expect(out(drawn({ seat: { v: 530 } }))).toEqual(['U2-04']);
		expect(out(drawn({ seat: { v: 510 } }))).toEqual([]);
	});

	test('[rules R3] U2-K7 5.18(b) no rail on the wall of the seat, or on the one of the controls', () => {
		expect(out(without(drawn(), 'rail-other'))).toEqual(['U2-19-SEAT-WALL']);
		expect(out(without(drawn(), 'rail-ahead'))).toEqual(['U2-19-CONTROLS']);
	});

	test('[rules R3] U2-K8 Diagram 24 has the rail 300 from the centre line: inside, and the note says why', () => {
		const marks = drawn({ rail: { off: 300 } });
		expect(out(marks)).toEqual([]);
		const row = findingsOf(UK_ADM_2, ...inHand(hand, corner(), marks)).find((f) => f.row.id === 'U2-07')?.row;
		expect(row?.note).toContain('Diagram 24');
	});

	test('[rules R3] U2-K9 Diagrams 22, 23, rails at 780 are above 680', () => {
		expect(out(drawn({ rail: { z: 780 }, ahead: { z: 780 } }))).toEqual(['U2-08']);
	});

	test('[rules R3] Diagram 23 a rail on the side of the corner is not the one of the open side', () => {
		expect(out(drawn({ rail: { off: -320 } }))).toEqual(['U2-07-SIDE']);
	});

	test('[rules R3] Diagram 23 control, head and level bar are on the wall of the controls', () => {
		expect(out(drawn({ control: { wall: 'front' } }))).toEqual(['U2-13-WALL']);
		expect(out(drawn({ low: { wall: 'front' } }))).toEqual(['U2-13-HEAD-WALL']);
		const elsewhere = at('bar-back', 'rise', ['front', 600, 664], variantOf('bar-over-all-600'));
		expect(out([...without(drawn(), 'bar-back'), elsewhere])).toEqual(['U2-10-WALL']);
	});

	test('[rules R3] 5.18(b) a seat on legs does not tip up; without a seat there is none', () => {
		const legs = { ...variantOf('seat-legs-500'), depth: variantOf('seat-off-wall-450').depth };
		const onLegs = at('seat', 'sit', ['left', 900, 480], legs);
		expect(out([...without(drawn(), 'seat'), onLegs])).toEqual(['U2-06-TIPS']);
		expect(out(without(drawn(), 'seat'))).toEqual(['U2-06-SEAT']);
	});

	// The floor falls 0.02 to the back: at the wall of the controls it is 28 lower than at the entry, 1400 away.
	test('[rules R3] heights are from the floor directly below, the seat from the bathroom floor', () => {
		const falling = corner({ fall: measured(0.02), fallsTo: 'back' });
		expect(found(drawn(), falling)['U2-03']).toBe('inside');
		expect(found(drawn({ control: { z: 975 } }), falling)['U2-12-HIGH']).toBe('outside');
		expect(found(drawn({ control: { z: 970 } }), falling)['U2-12-HIGH']).toBe('inside');
		expect(found(drawn({ control: { z: 725 } }), falling)['U2-12-LOW']).toBe('inside');
		expect(out(drawn({ bar: { top: 652 }, ahead: { z: 652 }, rail: { z: 664 }, low: { z: 1172 } }), falling)).toEqual(
			[]
		);
	});

	test('[rules R5] of a bath it says nothing', () => {
		const all = found(drawn(), corner({ type: 'over-bath' }));
		expect(new Set(Object.values(all))).toEqual(new Set(['not-here']));
	});

	test('[rules R2] of an upright bar it tells and never steers', () => {
		const c = corner();
		const bar = at('entry-bar', 'step-in', ['back', 1100, 700], variantOf('post-bar-450'));
		const told = findingsOf(UK_ADM_2, ...inHand(hand, c, [...drawn(), bar])).filter((f) =>
			f.row.id.startsWith('U2-11')
		);
		expect(told.map((f) => [f.answer, f.strength])).toEqual([
			['outside', 'reported'],
			['outside', 'reported']
		]);
	});
});

test('[rules R1] the one tolerance is ours, and said to be', () => {
	const given = UK_ADM_2.rows.flatMap(({ ourTolerance }) => ourTolerance ?? []);
	expect(new Set(given)).toEqual(new Set([10]));
	expect(UK_ADM_2.judgement.join(' ')).toContain('10 mm to either side are ours');
	// Ranges have none, but for the one between two figures that Diagrams 23 and 24 print of one thing.
	const ranged = UK_ADM_2.rows.filter(
		({ allowed, ourTolerance }) =>
			ourTolerance !== undefined && typeof allowed === 'object' && 'min' in allowed && allowed.min.n !== allowed.max?.n
	);
	expect(ranged.map(({ id }) => id)).toEqual(['U2-07']);
});

test('[rules R1] U2-20 of load, diameter and gap it prints nothing, and says so', () => {
	expect(UK_ADM_2.judgement.some((line) => /load.*diameter.*gap/.test(line))).toBe(true);
});
