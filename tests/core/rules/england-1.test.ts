import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import { variantOf } from '#core/case/accessory.ts';
import { UK_ADM_1 } from '#core/rules/packs/uk-adm-1.ts';
import { amiss, answersOf, at, corner, findingsOf, HANDS, inHand, measured } from './england.ts';

/** A level shower in a new dwelling of a category; the seat on the left wall, or on another. */
const shower = (category: string, enclosure: object = {}) =>
	corner({
		category: measured(category),
		newBuilt: measured(true),
		width: measured(1200),
		depth: measured(1200),
		clearWidth: measured(500),
		turningOver: measured(450),
		...enclosure
	});

/** A control 900 above the floor, so far from the corner of seat and controls. Units: mm. */
const control = (u = 700, z = 900): readonly Mark[] => [
	at('control', 'run-water', ['back', u, z], variantOf('control-lever'))
];

// Source of every expected answer: Approved Document M Volume 1, 2015 edition with 2016 amendments: 2.26, 2.30(b), 3.36, 3.43(d),
// 3.44(b), Diagrams 2.5, 3.10 and 3.11, Appendix A.
describe.each(HANDS)('Approved Document M Volume 1, level access showers, %s', (hand) => {
	const found = (c = shower('m4-3-accessible'), marks = control()) => answersOf(UK_ADM_1, ...inHand(hand, c, marks));
	const out = (c = shower('m4-3-accessible'), marks = control()) => amiss(found(c, marks));
	const told = ['U1-10-M43'];

	test('[rules R3] U1-K1 1200 by 1200 in a corner, seat and controls on adjacent walls, the circle 450 over it', () => {
		const all = found();
		// A valve 700 from one corner is 500 from the other of a wall of 1200: 3.44(b) is told and never steers.
		expect(amiss(all)).toEqual(told);
		for (const id of ['U1-01-ACC', 'U1-02', 'U1-03', 'U1-04', 'U1-05', 'U1-07-SEAT-WALL', 'U1-07-ADJACENT'])
			expect([id, all[id]]).toEqual([id, 'inside']);
		for (const id of ['U1-02-BOTH', 'U1-06', 'U1-08-M43', 'U1-11']) expect([id, all[id]]).toEqual([id, 'ask']);
	});

	test('[rules R3] U1-K1 the seat on the wall opposite the entry, the controls on a side wall', () => {
		const north = shower('m4-3-accessible', { seatWall: 'back' });
		const west = (wall: 'left' | 'right') => [at('control', 'run-water', [wall, 600, 900], variantOf('control-lever'))];
		expect(out(north, west('left'))).toEqual(told);
		expect(out(north, west('right'))).toEqual(told);
	});

	test('[rules R3] U1-K2 Diagram 3.11, 1100 by 1200 is too small', () => {
		expect(out(shower('m4-3-accessible', { width: measured(1100) }))).toContain('U1-01-ACC');
		expect(out(shower('m4-3-accessible', { depth: measured(1100) }))).toContain('U1-01-ACC');
	});

	// The record knows no bath beside the shower: what the diagram allows then is printed with the row, and accepted by hand.
	test('[rules R3] U1-K3 Diagram 3.11, 1000 by 1200 where a bath goes later: the row names the exception', () => {
		const c = shower('m4-3-accessible', { width: measured(1000) });
		const size = findingsOf(UK_ADM_1, ...inHand(hand, c, control())).find((f) => f.row.id === 'U1-01-ACC');
		expect(size?.answer).toBe('outside');
		expect(size?.row.note).toContain('when the bath beside it goes, 1000 by 1200 mm is enough');
	});

	test('[rules R3] U1-K4 3.43(d) controls on the wall of the seat, or opposite it', () => {
		const on = (wall: 'left' | 'right') => [at('control', 'run-water', [wall, 700, 900], variantOf('control-lever'))];
		expect(out(undefined, on('left'))).toContain('U1-07-SEAT-WALL');
		expect(out(undefined, on('right'))).toContain('U1-07-ADJACENT');
		expect(amiss(found(shower('m4-3-adaptable'), on('left')))).not.toContain('U1-07-SEAT-WALL');
	});

	test('[rules R3] U1-K5 Diagrams 3.10, 3.11, the circle 600 over the shower', () => {
		expect(out(shower('m4-3-accessible', { turningOver: measured(600) }))).toEqual([...told, 'U1-04']);
		expect(out(shower('m4-3-adaptable', { turningOver: measured(600) }))).toEqual(told);
	});

	test('[rules R3] U1-K6 2.30(b), 3.44(b) a valve 500 from the corner: told of M4(3), never steering', () => {
		const wide = { width: measured(1500) };
		expect(found(shower('m4-2', wide), control(500))['U1-10-M42']).toBe('inside');
		const there = inHand(hand, shower('m4-3-accessible', wide), control(500));
		const far = findingsOf(UK_ADM_1, ...there).find((f) => f.row.id === 'U1-10-M43');
		expect([far?.answer, far?.strength]).toEqual(['outside', 'reported']);
		expect(found(shower('m4-3-accessible', wide), control(700))['U1-10-M43']).toBe('inside');
	});

	test.each(['m4-2', 'm4-3-adaptable', 'm4-3-accessible'])(
		'[rules R3] U1-K7 Appendix A, %s, an upstand of 20',
		(is) => {
			expect(out(shower(is, { threshold: measured(20) }))).toContain('U1-05');
			expect(out(shower(is))).not.toContain('U1-05');
		}
	);

	test('[rules R3] Diagrams 2.5, 3.10, 3.11 1000 by 1000 is enough for M4(2) only', () => {
		const small = { width: measured(1000), depth: measured(1000) };
		expect(out(shower('m4-2', small))).toEqual([]);
		expect(out(shower('m4-3-adaptable', small))).toContain('U1-01-AD');
		expect(out(shower('m4-3-accessible', small))).toContain('U1-01-ACC');
	});
});

describe('which category counts', () => {
	const answers = (enclosure: object) => answersOf(UK_ADM_1, corner(enclosure), control());

	test('[rules R5] the category is asked while it is not known, of a home that may be new', () => {
		expect(answers({})['U1-00']).toBe('ask');
		expect(answers({ newBuilt: measured(true) })['U1-00']).toBe('ask');
		expect(answers({ newBuilt: measured(false) })['U1-00']).toBe('not-here');
		expect(answers({ category: measured('m4-2') })['U1-00']).toBe('not-here');
	});

	test('[rules R5] without a category nothing else is said, of a bath nothing at all', () => {
		const others = Object.entries(answers({})).filter(([id]) => id !== 'U1-00');
		expect(new Set(others.map(([, is]) => is))).toEqual(new Set(['not-here']));
		const bath = answers({ type: 'over-bath', category: measured('m4-3-accessible') });
		expect(new Set(Object.values(bath))).toEqual(new Set(['not-here']));
	});

	test('[rules R5] what is not recorded is unknown', () => {
		const c = corner({ category: measured('m4-3-accessible'), turning: undefined, threshold: undefined });
		const all = answersOf(UK_ADM_1, c, control());
		for (const id of ['U1-03', 'U1-04', 'U1-05']) expect([id, all[id]]).toEqual([id, 'unknown']);
	});

	test('[rules R2] of heights and distances of a valve it only tells', () => {
		const advice = UK_ADM_1.rows.filter(({ id }) => /^U1-(09|10)/.test(id));
		expect(advice.length).toBe(6);
		expect(advice.every((row) => row.advice)).toBe(true);
	});

	test('[rules R1] it asks for no part, and borrows no height from Volume 2', () => {
		expect(UK_ADM_1.requires).toEqual([]);
		expect(UK_ADM_1.rows.filter(({ of }) => of !== 'case' && of !== 'control')).toEqual([]);
	});
});
