import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { wantedFor } from '#core/needs/wanted.ts';
import { BC_BCBC_2024 } from '#core/rules/packs/bc-bcbc-2024.ts';
import { ON_OBC_2012 } from '#core/rules/packs/on-obc-2012.ts';
import { outside, sceneOf, STANDING } from './baseline.ts';
import { answersBy, inMirror, marksOf, onto, shower, without, type Change } from './canadian.ts';

const measured = (value: number) => ({ value, how: 'measured' });
const told = (value: boolean) => ({ value, how: 'told' });

// Every case: worked cases of the house's reference on BCBC 2024; each changes one thing of the base case BC-K0.
describe.each(['as drawn', 'in the mirrored room'])('British Columbia, 3.8.3.17.(1), %s', (hand) => {
	const found = (c: Case, marks: readonly Mark[], pack = BC_BCBC_2024) =>
		answersBy(pack, ...(hand === 'as drawn' ? ([c, marks] as const) : inMirror(c, marks)));
	const out = (c: Case, marks: readonly Mark[]) => outside(found(c, marks));
	const changed = (change: Change) => out(shower(), marksOf(change));

	test('[rules R3] BC-K0 the base case, gap 40, is inside; whether the seat is impervious is asked', () => {
		expect(out(shower(), marksOf())).toEqual([]);
		expect(found(shower(), marksOf())['BC-37']).toBe('ask');
	});

	test('[rules R3] BC-K0 every row with a figure or a yes speaks of the base case, but for that of a helper', () => {
		const rows = BC_BCBC_2024.rows.filter(({ allowed }) => typeof allowed !== 'object' || !('ask' in allowed));
		const answers = found(shower(), marksOf());
		expect(rows.filter(({ id }) => answers[id] !== 'inside').map(({ id }) => id)).toEqual(['BC-30-HELPER']);
	});

	test('[rules R3] BC-K1, C5 3.7.2.7.(1)(e) a gap of 48 is outside here and inside in Ontario', () => {
		expect(changed({ gap: 48 })).toEqual(['BC-22']);
		expect(found(shower(), marksOf({ gap: 48 }), ON_OBC_2012)['ON-22']).toBe('inside');
	});

	test('[rules R3] C5 a gap of 36 is inside here and outside in Ontario; 38 and 45 suit both', () => {
		const both = (gap: number) => [
			found(shower(), marksOf({ gap }))['BC-22'],
			found(shower(), marksOf({ gap }), ON_OBC_2012)['ON-22']
		];
		expect(both(36)).toEqual(['inside', 'outside']);
		expect(both(48)).toEqual(['outside', 'inside']);
		expect(both(38)).toEqual(['inside', 'inside']);
		expect(both(45)).toEqual(['inside', 'inside']);
	});

	test('[rules R3] BC-K3 (f)(ii) a vertical bar of 1100 with its foot at 640 is inside: a least length', () => {
		expect(changed({ upright: { length: 1100, foot: 640 } })).toEqual([]);
	});

	test('[rules R3] (f)(ii), (f)(iii) least lengths have no tolerance, as Ontario has for its one value', () => {
		expect(changed({ upright: { length: 999 } })).toEqual(['BC-14']);
		expect(changed({ lBar: { length: 999 } })).toEqual(['BC-17']);
		expect(changed({ lBar: { leg: 749 } })).toEqual(['BC-19']);
		const short = marksOf({ upright: { length: 995 }, lBar: { length: 995, leg: 745 } });
		expect(outside(found(shower(), short, ON_OBC_2012))).toEqual([]);
	});

	test('[rules R3] BC-K5 (e) a threshold of 6 is inside; the bevel asked about is of what is higher', () => {
		const answers = found(shower({ enclosure: { threshold: measured(6) } }), marksOf());
		expect([answers['BC-06'], answers['BC-06-BEVEL']]).toEqual(['inside', 'ask']);
		const row = BC_BCBC_2024.rows.find(({ id }) => id === 'BC-06-BEVEL');
		expect(row?.says).toContain('more than 6 mm');
	});

	test('[rules R3] BC-K6 (h) a valve at 1210 is outside', () => {
		expect(changed({ valve: { height: 1210 } })).toEqual(['BC-29']);
	});

	test('[rules R3] BC-K8 (f)(iii) an upright part at 380 is outside', () => {
		expect(changed({ lBar: { from: 380 } })).toEqual(['BC-20']);
	});

	test('[rules R3] (f)(ii), (g) seat and vertical bar are on one side wall', () => {
		expect(out(shower(), onto(marksOf(), 'entry-bar', 'right'))).toEqual(
			expect.arrayContaining(['BC-11-BAR', 'BC-14-THERE'])
		);
		expect(out(shower(), without(marksOf(), 'seat'))).toEqual(['BC-07-THERE']);
	});

	test('[rules R3] (g) no distance from seat to controls is printed, unlike in Ontario', () => {
		const marks = marksOf({ valve: { from: 510 } });
		expect(out(shower(), marks)).not.toContain('BC-13');
		expect(BC_BCBC_2024.rows.map(({ id }) => id)).not.toContain('BC-13');
		expect(found(shower(), marks, ON_OBC_2012)['ON-13']).toBe('outside');
	});

	test('[rules R3] (c) a curtain is asked about too, an open entry is not', () => {
		const asked = (kind: string) => found(shower({ enclosure: { closing: { kind, how: 'told' } } }), [])['BC-05'];
		expect([asked('curtain'), asked('door-out'), asked('open')]).toEqual(['ask', 'ask', 'not-here']);
	});

	test('[rules R3] 3.8.5.7.(1)(e) backing for the bars is asked of a new dwelling and of nothing else', () => {
		const asked = (enclosure: object) => found(shower({ enclosure }), marksOf())['BC-38'];
		expect(asked({ dwelling: true, newBuilt: told(true) })).toBe('ask');
		expect(asked({ dwelling: true })).toBe('not-here');
		expect(asked({ dwelling: false, newBuilt: told(true) })).toBe('not-here');
	});

	test('[rules R3] no limit of hot water was seen: water of 60 C is told by no row here', () => {
		expect(out(shower({ enclosure: { water: measured(60) } }), marksOf())).toEqual([]);
		expect(BC_BCBC_2024.judgement.join(' ')).toContain('How hot the water may be');
	});

	test('[rules R3] 3.8.3.17 nothing of it speaks of a shower over a bath', () => {
		const bath = shower({ enclosure: { type: 'over-bath', threshold: measured(500) } });
		expect(new Set(Object.values(found(bath, marksOf())))).toEqual(new Set(['not-here']));
	});
});

describe('what British Columbia asks for', () => {
	test('[rules R5] (f), (g), (h), (i) the same things as Ontario', () => {
		const wanted = (pack: typeof BC_BCBC_2024, client: object) => {
			const c = shower({ client, case: { reference: pack.id, tape: { unit: 'mm', step: 5 } } });
			return wantedFor([pack], c, sceneOf(c).bodies).map(({ id, kind, purpose, slots }) => ({
				id,
				kind,
				purpose,
				slots
			}));
		};
		for (const client of [{}, STANDING]) {
			const here = wanted(BC_BCBC_2024, client);
			expect(here).toEqual(wanted(ON_OBC_2012, client));
			expect(here.map(({ id }) => id)).toEqual(
				expect.arrayContaining(['seat', 'control', 'handset-rest', 'bar-back', 'entry-bar'])
			);
		}
	});

	test('[rules R15] the pack says that it is the national text, and that fold-away bars are an alternative', () => {
		const said = BC_BCBC_2024.judgement.join(' ');
		expect(said).toContain('National Building Code of Canada 2020');
		expect(said).toContain('Fold-away bars');
		expect(BC_BCBC_2024.scope?.homes).toContain('adaptable');
	});
});
