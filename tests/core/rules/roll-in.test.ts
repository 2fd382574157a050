import { describe, expect, test } from 'vitest';
import { variantOf, type Mark, type Purpose } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { wantedFor } from '#core/needs/wanted.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import { inches } from '#core/units/length.ts';
import {
	alternate,
	answers,
	barPart,
	caseWith,
	mark,
	marksOf,
	otherHand,
	outside,
	rollIn,
	sceneOf,
	STANDING,
	workedPart
} from './baseline.ts';

/** A bar by its left flange centre and length, in inches along its wall; its top 34 in high. */
const bar = (id: string, purpose: Purpose, wall: WallId, [x, to]: readonly [number, number], top = 34): Mark =>
	mark(id, {
		purpose,
		wall,
		x: inches(x),
		y: inches(top - 0.625),
		variant: barPart('horizontal-bar', { length: to - x })
	});

/** A control whose operable envelope is a line, in inches along its wall. */
const control = (wall: WallId, x: number, [bottom, top]: readonly [number, number] = [38, 46]): Mark =>
	mark('control', {
		purpose: 'run-water',
		wall,
		x: inches(x),
		y: inches((bottom + top) / 2),
		variant: workedPart('control', { across: 0, up: (top - bottom) / 2 })
	});

/** A seat from one point of its wall to another, in inches; rear 2, front 15.5, top 18. */
const seat = (wall: WallId, [from, to]: readonly [number, number], variant = 'seat-820'): Mark =>
	mark('seat', {
		purpose: 'sit',
		wall,
		x: inches((from + to) / 2),
		y: inches(18),
		variant: { ...variantOf(variant), length: inches(to - from), gap: inches(2), depth: inches(15.5) }
	});

// The left wall is read from the entry, the right wall from the back wall, the front wall from the right wall.
const BACK = bar('bar-back', 'rise', 'back', [16, 55.5]);
const RIGHT = bar('bar-control', 'steady', 'right', [4.5, 27]);
const THIRD = bar('bar-seat-wall', 'rise', 'left', [3, 25.5]);
const SEATED = [seat('left', [2.5, 29]), control('back', 24), BACK, RIGHT];
const SEATLESS = [control('back', 24), bar('bar-back', 'rise', 'back', [4.5, 55.5]), RIGHT, THIRD];

// The seat lies from 0.5 to 22 off the far side wall, its front edge 20.5 off the back wall.
const FAR = bar('bar-back', 'rise', 'left', [17.5, 31.5]);
const ACROSS = bar('bar-control', 'steady', 'back', [4.5, 55.5]);
const ON_FRONT = seat('front', [38, 59.5]);
const ALTERNATE = [ON_FRONT, control('back', 25), FAR, ACROSS];
const ALTERNATE_SEATLESS = [control('left', 12), bar('bar-back', 'rise', 'left', [4.5, 31.5]), ACROSS];

const without = (marks: readonly Mark[], id: string): readonly Mark[] => marks.filter((m) => m.accessory.id !== id);
const instead = (marks: readonly Mark[], other: Mark): readonly Mark[] => [
	...without(marks, other.accessory.id),
	other
];

// Every fixture: reference of clause fixtures, figures in inches, derived from the clause named in the title.
describe.each(['as drawn', 'in the mirrored room'])('roll-in compartments %s, clause fixtures', (hand) => {
	const found = (c: Case, marks: readonly Mark[]) =>
		answers(...(hand === 'as drawn' ? ([c, marks] as const) : otherHand(c, marks)));
	const out = (c: Case, marks: readonly Mark[]) => outside(found(c, marks));

	test('[rules R3] the baselines, with a seat and without, are inside every clause', () => {
		expect(out(rollIn(), SEATED)).toEqual([]);
		expect(out(rollIn({ client: STANDING }), SEATLESS)).toEqual([]);
		expect(out(alternate(), ALTERNATE)).toEqual([]);
		expect(out(alternate({ client: STANDING }), ALTERNATE_SEATLESS)).toEqual([]);
	});

	test.each([
		['608.2.2', 'ADA-SIZE-S-WIDTH', rollIn(), SEATED],
		['608.3.2', 'ADA-GB-CORNER-S1', rollIn(), SEATED],
		['608.3.2', 'ADA-GB-CORNER-SEAT', rollIn(), SEATED],
		['608.5.2', 'ADA-CT-X-S', rollIn(), SEATED],
		['608.5.2', 'ADA-CT-Z-R-BAR', rollIn(), SEATED],
		['610.3', 'ADA-ST-END', rollIn(), SEATED],
		['608.3.2', 'ADA-GB-CORNER-S0', rollIn({ client: STANDING }), SEATLESS],
		['608.3.3', 'ADA-GB-CORNER-SEAT', alternate(), ALTERNATE],
		['608.3.3', 'ADA-GB-NOSEAT', alternate(), ALTERNATE],
		['608.5.3', 'ADA-CT-X-Ab', alternate(), ALTERNATE],
		['610.3', 'ADA-ST-END', alternate(), ALTERNATE]
	] as const)('[rules R5] %s, %s speaks of its baseline', (_, id, c, marks) => {
		expect(found(c, marks)[id]).toBe('inside');
	});

	test('[rules R3] F04 608.5.2, 608.5.3 controls from 37.5 over a bar of 36.0 are inside in roll-ins', () => {
		const raised = (marks: readonly Mark[]) =>
			marks.map((m) =>
				m.variant.kind === 'horizontal-bar' ? { ...m, place: { ...m.place, y: inches(36 - 0.625) } } : m
			);
		for (const [bottom, rows] of [
			[37.5, []],
			[37.25, ['ADA-CT-Z-R-BAR', 'ADA-GB-BELOW']]
		] as const) {
			const low = [bottom, 46] as const;
			expect(out(rollIn(), raised(instead(SEATED, control('back', 24, low))))).toEqual(rows);
			expect(out(alternate(), raised(instead(ALTERNATE, control('back', 25, low))))).toEqual(rows);
		}
	});

	test('[rules R3] 608.5.2 controls up to 48.25 are outside', () => {
		expect(out(rollIn(), instead(SEATED, control('back', 24, [40, 48])))).toEqual([]);
		expect(out(rollIn(), instead(SEATED, control('back', 24, [40, 48.25])))).toEqual(['ADA-CT-Z-R-HIGH']);
	});

	test('[rules R3] F14a 608.3.2 no seat, a back-wall bar of 42 in the middle is 9 off each corner', () => {
		const c = rollIn({ client: STANDING });
		expect(out(c, instead(SEATLESS, bar('bar-back', 'rise', 'back', [9, 51])))).toEqual(['ADA-GB-CORNER-S0']);
		expect(out(c, instead(SEATLESS, bar('bar-back', 'rise', 'back', [6, 54])))).toEqual([]);
	});

	test('[rules R3] F14c 608.3.2 no seat, bars on two walls only', () => {
		const c = rollIn({ client: STANDING });
		expect(out(c, without(SEATLESS, 'bar-seat-wall'))).toEqual(['ADA-GB-WALLS-S0']);
		expect(out(c, without(SEATLESS, 'bar-back'))).toEqual(['ADA-GB-WALLS-S-BACK']);
		expect(out(c, without(SEATLESS, 'bar-control'))).toEqual(['ADA-GB-WALLS-S-OPPOSITE']);
	});

	test('[rules R5] 608.3.2 a bar that might be on two walls counts for the one it is on', () => {
		const onEither = (wall: WallId, x: number) => {
			const it = bar('bar-control', 'steady', wall, [x, x + 22.5]);
			const slots = (['back', 'left', 'right'] as const).map((w) => ({ wall: w, variant: it.variant.id }));
			return { ...it, accessory: { ...it.accessory, slots } };
		};
		const rows = (m: Mark) => {
			const [c, marks] = hand === 'as drawn' ? ([rollIn(), [m]] as const) : otherHand(rollIn(), [m]);
			const kept = marks.map((k) => ({ ...k, accessory: { ...k.accessory, slots: m.accessory.slots } }));
			const all = answers(c, kept);
			return [all['ADA-GB-WALLS-S-OPPOSITE'], all['ADA-GB-WALLS-S-STEADY'], all['ADA-GB-WALLS-S-BACK']];
		};
		expect(rows(onEither('right', 4.5))).toEqual(['inside', 'inside', 'outside']);
		expect(rows(onEither('back', 33))).toEqual(['outside', 'outside', 'inside']);
	});

	test('[rules R3] F14a 608.3.2 with a seat a bar of 42 in the middle runs 9 off the far corner', () => {
		const rows = out(rollIn(), instead(SEATED, bar('bar-back', 'rise', 'back', [9, 51])));
		expect(rows).toEqual(['ADA-GB-CORNER-S1', 'ADA-GB-NOSEAT']);
	});

	test('[rules R3] F15b 608.3.2 a bar from 16 to 56 clears the seat and ends 4 off the far wall', () => {
		const rows = (from: number) => {
			const all = found(rollIn(), instead(SEATED, bar('bar-back', 'rise', 'back', [from, 56])));
			return ['ADA-GB-CORNER-S1', 'ADA-GB-CORNER-SEAT', 'ADA-GB-NOSEAT'].map((id) => all[id]);
		};
		expect(rows(16)).toEqual(['inside', 'inside', 'inside']);
		expect(rows(15.5)).toEqual(['inside', 'inside', 'inside']);
		expect(rows(15.25)).toEqual(['inside', 'inside', 'outside']);
		expect(rows(21.5)).toEqual(['inside', 'inside', 'inside']);
		expect(rows(21.75)).toEqual(['inside', 'outside', 'inside']);
	});

	test('[rules R3] 608.3.2, 608.3.3 no bar above the seat; in a transfer compartment it is not forbidden', () => {
		const over = bar('bar-seat-wall', 'rise', 'left', [3, 25.5]);
		expect(found(rollIn(), [...SEATED, over])['ADA-GB-NOSEAT']).toBe('outside');
		const far = bar('bar-back', 'rise', 'left', [15.25, 31.5]);
		expect(found(alternate(), instead(ALTERNATE, far))['ADA-GB-NOSEAT']).toBe('outside');
		const transfer = [...marksOf(), bar('bar-seat-wall', 'rise', 'left', [3, 31])];
		expect(found(caseWith(), transfer)['ADA-GB-NOSEAT']).toBe('not-here');
	});

	test('[rules R3] F16a 608.5.2 controls 30 from the seat wall are outside, 27 inside', () => {
		expect(out(rollIn(), instead(SEATED, control('back', 30)))).toEqual(['ADA-CT-X-S']);
		expect(out(rollIn(), instead(SEATED, control('back', 27)))).toEqual([]);
	});

	test('[rules R3] F16c 608.5.2 controls opposite the seat are outside with a seat, inside without', () => {
		const there = control('right', 15);
		expect(out(rollIn(), instead(SEATED, there))).toEqual(['ADA-CT-WALL-S1', 'ADA-CT-X-S']);
		expect(out(rollIn({ client: STANDING }), instead(SEATLESS, there))).toEqual([]);
	});

	test('[rules R3] F17a 610.3 in 32 deep a seat from 1.0 to 28.0 ends 4.0 from the entry', () => {
		const deep = rollIn({ enclosure: { depth: { value: inches(32), how: 'measured' } } });
		const marks = (from: number, to: number) => instead(SEATED, seat('left', [32 - to, 32 - from]));
		expect(found(deep, marks(1, 28))['ADA-ST-END']).toBe('outside');
		expect(found(deep, marks(1, 29))['ADA-ST-END']).toBe('inside');
	});

	test('[rules R3] 610.3 in an alternate roll-in the seat runs to within 3 of the edge of the entry', () => {
		// The wall beside the entry is 24 long: seats from 1 off the far side wall to 20.75 and to 21.
		expect(out(alternate(), instead(ALTERNATE, seat('front', [39.25, 59])))).toEqual(['ADA-ST-END']);
		expect(out(alternate(), instead(ALTERNATE, seat('front', [39, 59])))).toEqual([]);
		expect(out(alternate(), instead(ALTERNATE, seat('front', [38, 58.25])))).toEqual(['ADA-ST-SIDE']);
	});

	test('[rules R3] 610.3 a seat in a roll-in folds, on a side wall or on the wall beside the entry', () => {
		expect(out(rollIn(), instead(SEATED, seat('left', [2.5, 29], 'seat-legs-500')))).toEqual(['ADA-ST-FOLD']);
		const turned = alternate({ enclosure: { seatWall: 'left' } });
		expect(found(turned, instead(ALTERNATE, seat('left', [2.5, 35])))['ADA-ST-WALL-A']).toBe('outside');
		const behind = rollIn({ enclosure: { seatWall: 'back' } });
		expect(found(behind, instead(SEATED, seat('back', [1, 29])))['ADA-ST-WALL-S']).toBe('outside');
	});

	test('[rules R3] F18a 608.5.3 controls on the back wall 13.75 off the centre line of the seat are inside', () => {
		expect(out(alternate(), instead(ALTERNATE, control('back', 25)))).toEqual([]);
		expect(out(alternate(), instead(ALTERNATE, control('back', 26.25)))).toEqual([]);
		expect(out(alternate(), instead(ALTERNATE, control('back', 26.5)))).toEqual(['ADA-CT-X-Ab']);
	});

	test('[rules R3] F18c 608.5.3 controls on the side wall 30 from the wall of the seat are outside', () => {
		expect(out(alternate(), instead(ALTERNATE, control('left', 30)))).toEqual(['ADA-CT-X-Aa']);
		expect(out(alternate(), instead(ALTERNATE, control('left', 27)))).toEqual([]);
		expect(out(alternate(), instead(ALTERNATE, control('right', 15)))).toEqual(['ADA-CT-WALL-A1']);
	});

	test('[rules R3] F18d 608.5.3 without a seat, controls on the back wall are outside', () => {
		const c = alternate({ client: STANDING });
		expect(out(c, instead(ALTERNATE_SEATLESS, control('back', 25)))).toEqual(['ADA-CT-WALL-A0']);
	});

	test('[rules R3] 608.3.3 bars on the back wall and on the side wall farthest from the entry', () => {
		expect(out(alternate(), without(ALTERNATE, 'bar-control'))).toEqual(['ADA-GB-WALLS-A-BACK']);
		expect(out(alternate(), without(ALTERNATE, 'bar-back'))).toEqual(['ADA-GB-WALLS-A-FAR']);
		const near = bar('bar-back', 'rise', 'right', [4.5, 20]);
		expect(out(alternate(), instead(ALTERNATE, near))).toEqual(
			expect.arrayContaining(['ADA-GB-WALLS-A-FAR', 'ADA-GB-WALLS-A-RISE'])
		);
	});

	test('[rules R3] 608.3.3 without a seat the far bar runs to within 6 of both its corners', () => {
		const c = alternate({ client: STANDING });
		const far = (from: number, to: number) =>
			out(c, instead(ALTERNATE_SEATLESS, bar('bar-back', 'rise', 'left', [from, to])));
		expect(far(6, 30)).toEqual([]);
		expect(far(6.25, 30)).toEqual(['ADA-GB-CORNER-S0']);
		expect(far(6, 29.75)).toEqual(['ADA-GB-CORNER-S0']);
	});

	test('[rules R3] F20 608.2.1, 608.2.2, 608.2.3 two inches more: absolute in T and A, a minimum in S', () => {
		const more = (n: number) => ({ value: inches(n), how: 'measured' });
		expect(out(caseWith({ enclosure: { width: more(38) } }), [])).toContain('ADA-SIZE-T-WIDTH');
		expect(out(alternate({ enclosure: { depth: more(38) } }), [])).toContain('ADA-SIZE-A');
		const deep = found(rollIn({ enclosure: { depth: more(38) } }), []);
		expect([deep['ADA-SIZE-S-DEPTH'], deep['ADA-SIZE-S-WIDTH']]).toEqual(['inside', 'inside']);
	});

	test('[rules R3] F21a 608.2.1 a lavatory that leaves 42 from the control wall', () => {
		const c = caseWith({ enclosure: { clearLength: { value: inches(42), how: 'measured' } } });
		expect(out(c, [])).toContain('ADA-CLR-T-LENGTH');
	});

	test('[rules R3] F21c 608.2.2.1 at which end of the clear floor a lavatory stands is asked', () => {
		expect(found(rollIn(), SEATED)['ADA-CLR-S-LAVATORY']).toBe('ask');
		expect(found(alternate(), ALTERNATE)['ADA-CLR-S-LAVATORY']).toBe('not-here');
	});

	test('[rules R3] F22a 608.7, 303 a threshold of 0.5 is inside only when bevelled, which is asked', () => {
		const half = { value: inches(0.5), how: 'measured' };
		const rows = found(rollIn({ enclosure: { threshold: half } }), SEATED);
		expect([rows['ADA-THR-R'], rows['ADA-THR-R-BEVEL']]).toEqual(['inside', 'ask']);
		const high = { value: inches(0.75), how: 'measured' };
		expect(out(alternate({ enclosure: { threshold: high } }), ALTERNATE)).toEqual(['ADA-THR-R']);
	});

	test('[rules R3] F22c 608.7 in a transfer compartment 0.5 upright is inside and nothing is asked', () => {
		const rows = found(caseWith(), marksOf());
		expect([rows['ADA-THR-T'], rows['ADA-THR-R'], rows['ADA-THR-R-BEVEL']]).toEqual(['inside', 'not-here', 'not-here']);
	});

	test('[rules R3] F23c 608.5, 608.6 a hand shower at 50 and higher is outside', () => {
		const rest = (bottom: number) =>
			mark('handset-rest', {
				purpose: 'rest-handset',
				wall: 'back',
				x: inches(20),
				y: inches(bottom + 1),
				variant: workedPart('handset-rest', { across: 0, up: 1 })
			});
		expect(out(rollIn(), [...SEATED, rest(50)])).toEqual(['ADA-CT-Z-R-HIGH']);
		expect(out(rollIn(), [...SEATED, rest(46)])).toEqual([]);
	});

	test('[rules R3] F23d 608.6 whether the hand shower is one is asked, in a dwelling too', () => {
		expect(found(rollIn(), SEATED)['ADA-HS-TYPE']).toBe('ask');
	});

	test('[rules R5] where no wall beside the entry is recorded, which side is far from it is unknown', () => {
		const open = alternate({
			client: STANDING,
			enclosure: {
				seatWall: 'left',
				frontWall: undefined,
				walls: {
					back: {},
					left: {},
					right: {}
				}
			}
		});
		expect(found(open, ALTERNATE_SEATLESS)['ADA-CT-WALL-A0']).toBe('unknown');
		expect(found(open, ALTERNATE_SEATLESS)['ADA-GB-WALLS-A-FAR']).toBe('unknown');
	});
});

describe('what roll-in compartments ask for', () => {
	const wanted = (c: Case) =>
		Object.fromEntries(
			wantedFor(packsFor(c.reference), c, sceneOf(c).bodies).map(({ id, slots }) => [
				id,
				[...new Set(slots.map(({ wall }) => wall))]
			])
		);

	test('[rules R5] 608.3.2 with a seat bars on the back wall and opposite, without on all three', () => {
		expect(wanted(rollIn())).toMatchObject({ seat: ['left'], 'bar-back': ['back'], 'bar-control': ['right'] });
		expect(wanted(rollIn())).not.toHaveProperty('bar-seat-wall');
		const standing = wanted(rollIn({ client: STANDING }));
		expect(standing).toMatchObject({ 'bar-back': ['back'], 'bar-seat-wall': ['left'] });
		expect(standing).not.toHaveProperty('seat');
	});

	test('[rules R5] 608.3.3, 608.5, 608.6 in an alternate roll-in, with a seat or without', () => {
		for (const c of [alternate(), alternate({ client: STANDING })]) {
			expect(Object.keys(wanted(c))).toEqual(
				expect.arrayContaining(['control', 'handset-rest', 'bar-back', 'bar-control'])
			);
			expect(wanted(c)).not.toHaveProperty('bar-seat-wall');
		}
	});

	test('[rules R5] in a wheeled shower chair no seat is asked', () => {
		const c = rollIn({ client: { washes: { value: 'in-chair', how: 'told' } } });
		expect(wanted(c)).not.toHaveProperty('seat');
		expect(wanted(c)).toHaveProperty('bar-seat-wall');
	});
});
