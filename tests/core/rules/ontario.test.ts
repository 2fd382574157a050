import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { wantedFor } from '#core/needs/wanted.ts';
import { bind } from '#core/rules/bind.ts';
import { ON_OBC_2012 } from '#core/rules/packs/on-obc-2012.ts';
import { PERSON } from '#core/rules/packs/person.ts';
import { outside, sceneOf, STANDING } from './baseline.ts';
import { answersBy, inMirror, marksOf, onto, shower, without, type Change } from './canadian.ts';

const measured = (value: number) => ({ value, how: 'measured' });
const told = (value: boolean) => ({ value, how: 'told' });

// Every case: worked cases of the house's reference on O. Reg. 332/12; each changes one thing of the base case ON-K0.
describe.each(['as drawn', 'in the mirrored room'])('Ontario, 3.8.3.13.(2), %s', (hand) => {
	const found = (c: Case, marks: readonly Mark[]) =>
		answersBy(ON_OBC_2012, ...(hand === 'as drawn' ? ([c, marks] as const) : inMirror(c, marks)));
	const out = (c: Case, marks: readonly Mark[]) => outside(found(c, marks));
	const changed = (change: Change) => out(shower(), marksOf(change));

	test('[rules R3] ON-K0 the base case is inside every clause', () => {
		expect(out(shower(), marksOf())).toEqual([]);
	});

	test('[rules R3] ON-K0 every row with a figure or a yes speaks of the base case, but for that of a helper', () => {
		const rows = ON_OBC_2012.rows.filter(({ allowed }) => typeof allowed !== 'object' || !('ask' in allowed));
		const answers = found(shower(), marksOf());
		expect(rows.filter(({ id }) => answers[id] !== 'inside').map(({ id }) => id)).toEqual(['ON-30-HELPER']);
	});

	test('[rules R3] ON-K1 (f)(ii) a seat at 490 is outside', () => {
		expect(changed({ seat: { top: 490 } })).toEqual(['ON-10']);
	});

	test('[rules R3] ON-K2 (f)(ii), 3.8.3.8.(7)(b), (c) seat 480, gap 50, bar 40: the limits belong to it', () => {
		expect(changed({ seat: { top: 480 }, gap: 50, diameter: 40 })).toEqual([]);
	});

	test('[rules R3] ON-K4 (g)(iii) a level part at 680, the English height, is outside', () => {
		expect(changed({ lBar: { height: 680 } })).toEqual(['ON-18-HIGH', 'ON-18-LOW']);
	});

	test('[rules R3] ON-K7 (e) whether a threshold of 8 is bevelled is asked', () => {
		const answers = found(shower({ enclosure: { threshold: measured(8) } }), marksOf());
		expect([answers['ON-06'], answers['ON-06-BEVEL']]).toEqual(['inside', 'ask']);
	});

	test('[rules R3] ON-K8 (i) a hose of 1500 is outside', () => {
		expect(out(shower({ enclosure: { hose: measured(1500) } }), marksOf())).toEqual(['ON-31']);
	});

	test('[rules R3] ON-K10 3.3.4.9, 9.5.2.3 reinforcement is asked of a new dwelling and of nothing else', () => {
		const asked = (enclosure: object) => found(shower({ enclosure }), marksOf())['ON-36'];
		expect(asked({ dwelling: true, newBuilt: told(true) })).toBe('ask');
		expect(asked({ dwelling: true, newBuilt: told(false) })).toBe('not-here');
		expect(asked({ dwelling: true })).toBe('not-here');
		expect(asked({ dwelling: false, newBuilt: told(true) })).toBe('not-here');
	});

	test('[rules R3] (a), (b) the stall, and a clear floor as wide as it', () => {
		expect(out(shower({ enclosure: { depth: measured(899) } }), [])).toContain('ON-02');
		const narrow = shower({ enclosure: { clearLength: measured(1520) } });
		expect(out(narrow, marksOf())).toEqual(['ON-04']);
		expect(out(shower({ enclosure: { clearWidth: measured(899) } }), marksOf())).toEqual(['ON-03']);
	});

	test('[rules R3] (c) a door is asked about, a curtain and an open entry are not', () => {
		const asked = (closing: object | undefined) => found(shower({ enclosure: { closing } }), marksOf())['ON-05'];
		expect(asked(undefined)).toBe('ask');
		expect(asked({ kind: 'slides', how: 'told' })).toBe('ask');
		expect(asked({ kind: 'curtain', how: 'told' })).toBe('not-here');
		expect(asked({ kind: 'open', how: 'told' })).toBe('not-here');
	});

	test('[rules R3] (f)(i) a seat of 450 by 400 is inside, 449 wide or 399 deep outside', () => {
		expect(changed({ seat: { width: 450, depth: 400 } })).toEqual([]);
		expect(changed({ seat: { width: 449 } })).toEqual(['ON-08']);
		expect(changed({ seat: { depth: 399 } })).toEqual(['ON-09']);
	});

	test('[rules R3] (f)(ii) seat and vertical bar are on one side wall', () => {
		const marks = onto(marksOf(), 'entry-bar', 'right');
		// On the right wall the same x is from the back wall.
		expect(out(shower(), marks)).toEqual(expect.arrayContaining(['ON-11-BAR', 'ON-14-THERE']));
		expect(out(shower({ enclosure: { seatWall: 'back' } }), onto(marksOf(), 'seat', 'back'))).toContain('ON-11');
	});

	test('[rules R3] (f)(iii), 3.8.3.8.(7)(a) where less than 1.3 kN is asked for, the load stays a question', () => {
		const answers = found(shower({ enclosure: { demand: 1112 } }), marksOf());
		expect(answers['ON-12']).toBe('unknown');
		const weak = { kind: 'declared', x0: 0, x1: 2000, y0: 0, y1: 2100, load: 1200, document: 'drawing' };
		const wall = { backing: { all: { ...weak, fixing: 'screws', holds: 'bars-and-seat' } }, surveyed: true };
		const walls = { back: wall, left: wall, right: wall };
		expect(found(shower({ enclosure: { walls } }), marksOf())['ON-12']).toBe('outside');
	});

	test('[rules R3] (f)(iv) a valve 500 from the edge of the seat is inside, farther outside', () => {
		expect(found(shower(), marksOf({ valve: { from: 500 } }))['ON-13']).toBe('inside');
		expect(found(shower(), marksOf({ valve: { from: 501 } }))['ON-13']).toBe('outside');
	});

	test('[rules R3] (g)(ii) the vertical bar: 50 to 80 from the entry, its foot at 600 to 650', () => {
		expect(changed({ upright: { axis: 50, foot: 600 } })).toEqual([]);
		expect(changed({ upright: { axis: 80, foot: 650 } })).toEqual([]);
		expect(changed({ upright: { axis: 49 } })).toEqual(['ON-15']);
		expect(changed({ upright: { axis: 81 } })).toEqual(['ON-15']);
		expect(changed({ upright: { foot: 599 } })).toEqual(['ON-16']);
		expect(changed({ upright: { foot: 651 } })).toEqual(['ON-16']);
	});

	test('[rules R3] (g)(ii), (g)(iii) one length is printed: 10 mm are ours, longer is told and not failed', () => {
		expect(changed({ upright: { length: 990 }, lBar: { length: 990, leg: 740 } })).toEqual([]);
		expect(changed({ upright: { length: 1220 }, lBar: { leg: 900 } })).toEqual([]);
		expect(changed({ upright: { length: 989 } })).toEqual(['ON-14']);
		expect(changed({ lBar: { length: 989 } })).toEqual(['ON-17']);
		expect(changed({ lBar: { leg: 739 } })).toEqual(['ON-19']);
	});

	test('[rules R3] (g)(iii) the upright part is 400 to 500 from the wall of the seat, at whichever end it is', () => {
		expect(changed({ lBar: { from: 400 } })).toEqual([]);
		expect(changed({ lBar: { from: 500 } })).toEqual([]);
		expect(changed({ lBar: { from: 399 } })).toEqual(['ON-20']);
		expect(changed({ lBar: { from: 501 } })).toEqual(['ON-20']);
	});

	test('[rules R3] (g)(iii) a bar without an upright part, or none, is outside', () => {
		expect(changed({ lBar: { plain: true } })).toEqual(['ON-17-THERE', 'ON-19']);
		expect(out(shower(), without(marksOf(), 'bar-back'))).toEqual(['ON-17-THERE']);
		expect(out(shower(), without(marksOf(), 'entry-bar'))).toEqual(['ON-14-THERE']);
		expect(out(shower(), [])).toEqual(['ON-07-THERE', 'ON-14-THERE', 'ON-17-THERE']);
	});

	test('[rules R3] (h) the valve is opposite the entry, up to 1200, in reach from the seat', () => {
		expect(out(shower(), marksOf({ valve: { height: 1150 } }))).toEqual([]);
		expect(out(shower(), marksOf({ valve: { height: 1151 } }))).toEqual(['ON-29']);
		expect(found(shower(), onto(marksOf(), 'control', 'right'))['ON-28']).toBe('outside');
		const short = { arms: { left: { toGrip: measured(450) }, right: { toGrip: measured(450) } } };
		const lean = { value: { kind: 'none' }, how: 'measured' };
		expect(found(shower({ client: { ...short, lean } }), marksOf())['ON-30']).toBe('outside');
		expect(found(shower({ client: { lean: undefined } }), marksOf({ valve: { from: 500 } }))['ON-30']).toBe('unknown');
	});

	test('[rules R3] (h) where a helper runs the water, that the client reaches it is told and steers nothing', () => {
		const client = { runsWater: { value: 'helper', how: 'told' } };
		const c = shower({ client, case: { reference: 'on-obc-2012', lead: 'reference-led' } });
		const answers = found(c, marksOf());
		expect([answers['ON-30'], answers['ON-30-HELPER']]).toEqual(['not-here', 'inside']);
		const rows = bind(
			[ON_OBC_2012],
			marksOf().map((m) => m.accessory),
			c
		);
		expect(rows.find(({ row }) => row.id === 'ON-30-HELPER')?.strength).toBe('reported');
	});

	test('[rules R3] (i) the hand shower at 1200 and at 2030, one value with 10 mm of ours', () => {
		expect(changed({ rest: 1190, holder: 2040 })).toEqual([]);
		expect(changed({ rest: 1189 })).toEqual(['ON-33-REST']);
		expect(changed({ holder: 2041 })).toEqual(['ON-33-HIGH']);
	});

	test('[rules R3] 7.6.5 water of 49 C is inside, hotter outside', () => {
		expect(out(shower({ enclosure: { water: measured(49) } }), marksOf())).toEqual([]);
		expect(out(shower({ enclosure: { water: measured(49.5) } }), marksOf())).toEqual(['ON-35']);
	});

	test('[rules R3] 3.8.3.13 what is not recorded is unknown, never inside', () => {
		const nothing = { hose: undefined, water: undefined, threshold: undefined, clearWidth: undefined };
		const answers = found(shower({ enclosure: { ...nothing, clearLength: undefined } }), marksOf());
		for (const id of ['ON-31', 'ON-35', 'ON-06', 'ON-03', 'ON-04']) expect(answers[id]).toBe('unknown');
	});

	test('[rules R3] 3.8.3.13 nothing of it speaks of a shower over a bath', () => {
		const bath = shower({ enclosure: { type: 'over-bath', threshold: measured(500) } });
		expect(new Set(Object.values(found(bath, marksOf())))).toEqual(new Set(['not-here']));
	});
});

describe('what Ontario asks for', () => {
	const wanted = (client: object = {}, enclosure: object = {}) =>
		Object.fromEntries(
			[shower({ client, enclosure, case: { reference: 'on-obc-2012', tape: { unit: 'mm', step: 5 } } })].flatMap((c) =>
				wantedFor([ON_OBC_2012], c, sceneOf(c).bodies).map(({ id, slots }) => [
					id,
					[...new Set(slots.map(({ wall }) => wall))]
				])
			)
		);

	test('[rules R5] (f), (g), (h), (i) seat, vertical bar on its wall, L bar, valve, hand shower', () => {
		expect(wanted()).toEqual({
			seat: ['left'],
			control: ['back'],
			'handset-rest': ['back', 'right'],
			'handset-high': ['back'],
			'bar-back': ['back'],
			'entry-bar': ['left']
		});
		expect(wanted({}, { seatWall: 'right' })).toMatchObject({ seat: ['right'], 'entry-bar': ['right'] });
	});

	test('[rules R5] (i) a place at 2030 is wanted for whoever washes, whether or not she gets there', () => {
		for (const client of [{}, STANDING]) expect(wanted(client)).toHaveProperty('handset-high');
		const reaches = [...PERSON.rows, ...ON_OBC_2012.rows].filter(({ measure }) => measure.startsWith('reach'));
		expect(reaches.filter(({ purposes }) => purposes?.includes('fix-handset') ?? false)).toEqual([]);
	});

	test('[rules R15] 3.8.3.13 the pack says that a later regulation was not read, and that no home is bound', () => {
		expect(ON_OBC_2012.judgement.join(' ')).toContain('163/24');
		expect(ON_OBC_2012.scope?.homes).toContain('3.8.3.13.(1)');
		expect(new Set(ON_OBC_2012.rows.map(({ edition }) => edition))).toEqual(
			new Set(['O. Reg. 332/12, as amended to O. Reg. 867/21'])
		);
	});
});
