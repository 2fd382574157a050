import { describe, expect, test } from 'vitest';
import { variantOf, type Mark, type Purpose } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Reference } from '#core/case/references.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { wantedFor } from '#core/needs/wanted.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { A117_1_2003 } from '#core/rules/packs/a117-1-2003.ts';
import { ADA_2010 } from '#core/rules/packs/ada-2010.ts';
import { CBC_11B } from '#core/rules/packs/cbc-11b.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import { inches } from '#core/units/length.ts';
import {
	alternate,
	barPart,
	caseWith,
	mark,
	marksOf,
	otherHand,
	rollIn,
	sceneOf,
	STANDING,
	workedPart
} from './baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** The same record with another document leading. */
const by = (reference: Reference, c: Case): Case => ({ ...c, reference, lead: 'reference-led' });

/** Rows of the document that leads, and of the one it differs from, that are neither inside nor only asked. */
function outside(reference: Reference, c: Case, marks: readonly Mark[]): readonly string[] {
	const led = by(reference, c);
	const rows = bind(
		packsFor(reference),
		marks.map((m) => m.accessory),
		led
	).filter(({ row, strength }) => row.origin === 'document' && strength === 'must');
	const found = judge(sceneOf(led), rows, marks).filter((f) => !['inside', 'ask', 'not-here'].includes(f.answer));
	return [...new Set(found.map((f) => f.row.id))];
}

/** What a document asks a case, marks or none. */
function asked(reference: Reference, c: Case): readonly string[] {
	const led = by(reference, c);
	const rows = bind(packsFor(reference), [], led).filter(({ strength }) => strength === 'must');
	return judge(sceneOf(led), rows, [])
		.filter((f) => f.answer === 'ask')
		.map((f) => f.row.id);
}

/** A bar by its left flange centre and length, in inches along its wall; its top 34 in high. */
const bar = (id: string, purpose: Purpose, wall: WallId, [x, to]: readonly [number, number], top = 34): Mark =>
	mark(id, {
		purpose,
		wall,
		x: inches(x),
		y: inches(top - 0.625),
		variant: barPart('horizontal-bar', { length: to - x })
	});

const control = (wall: WallId, x: number, [bottom, top]: readonly [number, number] = [38, 46]): Mark =>
	mark('control', {
		purpose: 'run-water',
		wall,
		x: inches(x),
		y: inches((bottom + top) / 2),
		variant: workedPart('control', { across: 0, up: (top - bottom) / 2 })
	});

const seat = (wall: WallId, [from, to]: readonly [number, number]): Mark =>
	mark('seat', {
		purpose: 'sit',
		wall,
		x: inches((from + to) / 2),
		y: inches(18),
		variant: { ...variantOf('seat-820'), length: inches(to - from), gap: inches(2), depth: inches(15.5) }
	});

interface Upright {
	readonly foot?: number;
	readonly from?: number;
	readonly length?: number;
	readonly wall?: WallId;
}

/** The upright bar on the control wall of the baseline: its foot so high, so far in from the front edge, so long. */
const upright = ({ foot = 38, from = 3, length = 18, wall = 'right' }: Upright = {}): Mark =>
	mark('entry-bar', {
		purpose: 'step-in',
		wall,
		x: inches(wall === 'right' ? 36 - from : from),
		y: inches(foot),
		variant: barPart('vertical-bar', { length })
	});

// The left wall is read from the entry, the right wall from the back wall, the front wall from the right wall.
const SEATED = [
	seat('left', [2.5, 29]),
	control('back', 24),
	bar('bar-back', 'rise', 'back', [16, 55.5]),
	bar('bar-control', 'steady', 'right', [4.5, 27])
];
const ALTERNATE = [
	seat('front', [38, 59.5]),
	control('back', 25),
	bar('bar-back', 'rise', 'left', [17.5, 31.5]),
	bar('bar-control', 'steady', 'back', [4.5, 55.5])
];

const instead = (marks: readonly Mark[], other: Mark): readonly Mark[] => [
	...marks.filter((m) => m.accessory.id !== other.accessory.id),
	other
];
const raised = (marks: readonly Mark[]): readonly Mark[] =>
	marks.map((m) => (m.variant.kind === 'horizontal-bar' ? { ...m, place: { ...m.place, y: inches(36 - 0.625) } } : m));
const wanted = (reference: Reference, c: Case) => wantedFor(packsFor(reference), by(reference, c), sceneOf(c).bodies);

// Every fixture: ICC A117.1-2003 as the Access Board prints it beside the ADA standards, figures in inches.
describe.each(['as drawn', 'in the mirrored room'])('ICC A117.1-2003 %s', (hand) => {
	const out = (reference: Reference, c: Case, marks: readonly Mark[]) =>
		outside(reference, ...(hand === 'as drawn' ? ([c, marks] as const) : otherHand(c, marks)));
	const a117 = (c: Case, marks: readonly Mark[]) => out('a117-1-2003', c, marks);
	const T1 = [...marksOf(), upright()];

	test('[rules R3] F25a 608.3.1.2 the baseline with an upright bar 4 above, 18 long, 3 in from the edge is inside', () => {
		expect(a117(caseWith(), T1)).toEqual([]);
		expect(out('ada-2010', caseWith(), T1)).toEqual([]);
	});

	test('[rules R3] 608.3.1.2 without an upright bar the control wall lacks one; the ADA standards ask for none', () => {
		expect(a117(caseWith(), marksOf())).toEqual(['A03-VB-REQ']);
		expect(out('ada-2010', caseWith(), marksOf())).toEqual([]);
	});

	test('[rules R3] F25b 608.3.1.2 an upright bar from 36.0, 2 above, is outside, and inside by ADA 609.3', () => {
		const marks = [...marksOf(), upright({ foot: 36 })];
		expect(a117(caseWith(), marks)).toEqual(['A03-VB-Z']);
		expect(out('ada-2010', caseWith(), marks)).toEqual([]);
	});

	test.each([
		['3 above', { foot: 37 }, []],
		['6 above', { foot: 40 }, []],
		['6 1/16 above', { foot: 40.0625 }, ['A03-VB-Z']],
		['4 from the edge', { from: 4 }, []],
		['4 1/16 from the edge', { from: 4.0625 }, ['A03-VB-X']],
		['17 7/8 long', { length: 17.875 }, ['A03-VB-LEN']],
		['on the seat wall', { wall: 'left' }, ['A03-VB-REQ', 'A03-VB-WALL']]
	] as const)('[rules R3] 608.3.1.2 an upright bar %s', (_, at, rows) => {
		expect(a117(caseWith(), [...marksOf(), upright(at)])).toEqual(rows);
	});

	test('[rules R3] F02 608.5.1 controls 2.25 behind the centre line: outside by ADA, inside here', () => {
		const marks = [...marksOf({ control: { fromBack: 15, bottom: 40, top: 46 } }), upright()];
		expect(out('ada-2010', caseWith(), marks)).toEqual(['ADA-CT-X-T-NEAR']);
		expect(a117(caseWith(), marks)).toEqual([]);
	});

	test('[rules R3] 608.5.1 controls up to 15 to either side of the centre line, 17.25 from the back wall', () => {
		const at = (fromBack: number) =>
			a117(caseWith(), [...marksOf({ control: { fromBack, bottom: 40, top: 46 } }), upright({ foot: 40, from: 1 })]);
		expect([2.25, 32.25].map(at)).toEqual([[], []]);
		expect([2.1875, 32.3125].map(at)).toEqual([['A03-CT-X-T'], ['A03-CT-X-T']]);
	});

	test('[rules R3] F04 608.5.1, 608.5.2, 608.5.3 controls from 37.5 over a bar of 36.0', () => {
		const low = [37.5, 46] as const;
		const transfer = [
			...marksOf({ control: { fromBack: 24, bottom: 37.5, top: 46 }, barTop: 36 }),
			upright({ foot: 40 })
		];
		const [s, a] = [
			raised(instead(SEATED, control('back', 24, low))),
			raised(instead(ALTERNATE, control('back', 25, low)))
		];
		expect(out('ada-2010', caseWith(), transfer)).toEqual(['ADA-CT-Z-T-LOW']);
		expect(a117(caseWith(), transfer)).toEqual(['ADA-CT-Z-T-LOW']);
		expect([out('ada-2010', rollIn(), s), out('ada-2010', alternate(), a)]).toEqual([[], []]);
		expect([a117(rollIn(), s), a117(alternate(), a)]).toEqual([['A03-CT-Z-LOW'], ['A03-CT-Z-LOW']]);
	});

	test('[rules R3] 608.5.2, 608.5.3 controls of roll-ins 38 to 48 high', () => {
		const s = (heights: readonly [number, number]) => a117(rollIn(), instead(SEATED, control('back', 24, heights)));
		expect(s([38, 48])).toEqual([]);
		expect(s([37.9375, 48])).toEqual(['A03-CT-Z-LOW']);
		expect(s([38, 48.0625])).toEqual(['A03-CT-Z-HIGH']);
		expect(a117(alternate(), ALTERNATE)).toEqual([]);
	});

	test('[rules R3] 608.5.3 on the end wall 27 from the seat wall, on the back wall 15 off the centre line', () => {
		const a = (wall: WallId, x: number) => a117(alternate(), instead(ALTERNATE, control(wall, x)));
		expect([a('left', 27), a('back', 26.25)]).toEqual([[], []]);
		expect([a('left', 27.0625), a('back', 26.3125)]).toEqual([['A03-CT-X-A'], ['ADA-CT-X-Ab']]);
		expect(a('right', 15)).toEqual(['A03-CT-WALL-A']);
	});

	test('[rules R3] 608.2.3 the wall of the seat in an alternate roll-in is 24 to 36 long', () => {
		const at = (n: number) =>
			a117(alternate({ enclosure: { frontWall: { side: 'left', length: measured(inches(n)) } } }), []);
		expect([23.9375, 24, 36, 36.0625].map((n) => at(n).includes('A03-SEATWALL'))).toEqual([true, false, false, true]);
	});

	test('[rules R3] 608.4 an alternate roll-in has a seat, whoever washes; by ADA one who stands needs none', () => {
		const c = alternate({ client: STANDING });
		expect(a117(c, [])).toContain('A03-ST-REQ-A');
		expect(a117(c, ALTERNATE)).toEqual([]);
		expect(wanted('a117-1-2003', c).map(({ id }) => id)).toContain('seat');
		expect(wanted('ada-2010', c).map(({ id }) => id)).not.toContain('seat');
	});

	test('[rules R3] 608.3.2 bars of roll-ins end at most 6 from the walls, with a seat and without', () => {
		const back = (to: number) => a117(rollIn(), instead(SEATED, bar('bar-back', 'rise', 'back', [16, to])));
		expect([back(54), back(53.9375)]).toEqual([[], ['A03-GB-CORNER-S1']]);
		const far = (from: number) =>
			a117(alternate(), instead(ALTERNATE, bar('bar-control', 'steady', 'back', [from, 55.5])));
		expect([far(6), far(6.0625)]).toEqual([[], ['A03-GB-CORNER-A']]);
		const none = (from: number) => {
			const third = bar('bar-seat-wall', 'rise', 'left', [3, 25.5]);
			const rest = SEATED.filter((m) => m.accessory.id !== 'seat');
			const c = rollIn({ client: STANDING });
			return a117(c, [...instead(rest, bar('bar-back', 'rise', 'back', [from, 55.5])), third]);
		};
		expect([none(6), none(6.0625)]).toEqual([[], ['A03-GB-CORNER-S0']]);
	});

	test('[rules R3] F10, F20, F29 609.3, 608.2, 608.9 what is the same is judged by the rows of ADA', () => {
		expect(a117(caseWith(), [...marksOf({ gap: 1.75 }), upright()])).toEqual(['ADA-GB-WALLGAP']);
		expect(a117(caseWith({ enclosure: { width: measured(inches(38)) } }), [])).toContain('ADA-SIZE-T-WIDTH');
		expect(a117(caseWith({ enclosure: { water: measured(50) } }), T1)).toEqual(['ADA-TEMP']);
	});
});

describe('what A117.1-2003 asks for', () => {
	test('[rules R5] 608.3.1.2 a transfer compartment wants an upright bar on the control wall, by ADA none', () => {
		// Who slides across on a board holds nothing upright of her own.
		const client = { transfer: measured('slide-board') };
		const found = wanted('a117-1-2003', caseWith({ client })).find(({ id }) => id === 'entry-bar');
		expect(new Set(found?.slots.map(({ wall }) => wall))).toEqual(new Set(['right']));
		expect(wanted('ada-2010', caseWith({ client })).map(({ id }) => id)).not.toContain('entry-bar');
		expect(wanted('a117-1-2003', rollIn({ client })).map(({ id }) => id)).not.toContain('entry-bar');
	});

	test('[rules R1] 1004.11.3.1.3.3 the size of a Type B shower is asked in a dwelling alone', () => {
		expect(asked('a117-1-2003', caseWith({ enclosure: { dwelling: true } }))).toContain('A03-B-SIZE');
		expect(asked('a117-1-2003', caseWith({ enclosure: { dwelling: false } }))).not.toContain('A03-B-SIZE');
	});
});

// Every fixture: California Building Code, chapter 11B and 1607.9.2, figures in inches.
describe('California 11B', () => {
	const california = (c: Case, marks: readonly Mark[]) => outside('cbc-11b', c, marks);

	test('[rules R3] the baselines of ADA are inside', () => {
		expect(california(caseWith(), marksOf())).toEqual([]);
		expect(california(rollIn(), SEATED)).toEqual([]);
		expect(california(alternate(), ALTERNATE)).toEqual([]);
	});

	test('[rules R3] F16a 11B-608.5.2 controls 16 to 27 from the wall of the seat; by ADA any up to 27', () => {
		const at = (x: number) => {
			const marks = instead(SEATED, control('back', x));
			return [california(rollIn(), marks), outside('ada-2010', rollIn(), marks)];
		};
		expect(at(15.9375)).toEqual([['CA-CT-X-S-NEAR'], []]);
		expect(at(16)).toEqual([[], []]);
		expect(at(27)).toEqual([[], []]);
		expect(at(30)).toEqual([['CA-CT-X-S-FAR'], ['ADA-CT-X-S']]);
	});

	test('[rules R3] 11B-608.5.2 the whole of what is worked lies in the window', () => {
		const lever = mark('control', {
			purpose: 'run-water',
			wall: 'back',
			x: inches(17.5),
			y: inches(42),
			variant: workedPart('control', { across: 2, up: 2 })
		});
		expect(california(rollIn(), instead(SEATED, lever))).toEqual(['CA-CT-X-S-NEAR']);
	});

	test('[rules R3] 1607.9.2 bars and seat carry 250 lb, in the place of ADA 609.8 and 610.4', () => {
		const led = by('cbc-11b', caseWith());
		const rows = bind(
			packsFor('cbc-11b'),
			marksOf().map((m) => m.accessory),
			led
		).filter(({ strength, row }) => strength === 'must' && row.id.includes('LOAD'));
		const ids = rows
			.filter(({ row }) => row.origin === 'document')
			.map(({ row, about }) => `${row.id} ${about.join()}`);
		expect(ids).toEqual(['CA-LOAD-BAR bar-back', 'CA-LOAD-BAR bar-control', 'CA-LOAD-SEAT seat']);
	});

	test('[rules R3] 11B-809.10.6.2 in a dwelling the floor falls at most 1/2 in in a foot', () => {
		const at = (fall: number, dwelling: boolean) =>
			california(caseWith({ enclosure: { fall: measured(fall), dwelling } }), []).includes('CA-FALL');
		expect([at(0.5 / 12, true), at(0.5625 / 12, true), at(0.5625 / 12, false)]).toEqual([false, true, false]);
	});

	test('[rules R1] 11B-603.5, 608.2.1, 608.5, 608.10 what the record cannot tell is asked', () => {
		const own = (c: Case) => asked('cbc-11b', c).filter((id) => id.startsWith('CA-'));
		const elsewhere = { enclosure: { dwelling: false } };
		expect(own(caseWith(elsewhere))).toEqual(['CA-DISPENSER', 'CA-TRANSFER-WHERE', 'CA-CT-CLOSE', 'CA-SOAP-Z']);
		expect(own(caseWith({ enclosure: { dwelling: true } }))).not.toContain('CA-TRANSFER-WHERE');
		expect(own(rollIn(elsewhere))).not.toContain('CA-TRANSFER-WHERE');
	});
});

test('[rules R3] F23d 608.6 in a dwelling too a hand shower is wanted: the exception for a fixed head leaves dwellings out', () => {
	for (const c of [caseWith(), rollIn(), alternate()]) {
		const dwelling = { ...c, enclosure: { ...c.enclosure, dwelling: true } };
		expect(wanted('ada-2010', dwelling).map(({ id }) => id)).toContain('handset-rest');
	}
	expect(ADA_2010.rows.find(({ id }) => id === 'ADA-HS-TYPE')?.note).toContain('dwellings');
});

test('[rules R1] 304.3.1 a circle of 60 in to turn in; where nobody measured it, it is unknown', () => {
	const at = (turning: object | undefined) => outside('ada-2010', caseWith({ enclosure: { turning } }), marksOf());
	expect(at(measured(inches(60)))).toEqual([]);
	expect(at(measured(inches(59.9375)))).toEqual(['ADA-TURN']);
	expect(at(undefined)).toEqual(['ADA-TURN']);
});

describe('packs of differences', () => {
	test.each([A117_1_2003, CBC_11B])('[rules R1] $name has its own rows in the place of rows ADA has', (pack) => {
		const ids = ADA_2010.rows.map(({ id }) => id);
		expect(pack.differsFrom?.instead.length).toBeGreaterThan(0);
		for (const id of pack.differsFrom?.instead ?? []) expect(ids).toContain(id);
	});

	test.each([A117_1_2003, CBC_11B])('[rules R1] rows of $name stand in the order of its clauses', (pack) => {
		const number = ({ clause }: { clause: string }) =>
			(clause.split(',')[0] ?? '')
				.replace('11B-', '')
				.split('.')
				.map((n) => n.padStart(4, '0'))
				.join('.');
		expect(pack.rows.map(number)).toEqual(pack.rows.map(number).toSorted());
	});

	test('[rules R2] where a pack of differences leads, the rows it has others for are only reported', () => {
		const led = by('a117-1-2003', caseWith());
		const rows = bind(
			packsFor('a117-1-2003'),
			marksOf().map((m) => m.accessory),
			led
		);
		const of = (id: string) => new Set(rows.filter(({ row }) => row.id === id).map(({ strength }) => strength));
		expect([of('ADA-CT-X-T-NEAR'), of('ADA-GB-Z-LOW'), of('A03-CT-X-T')]).toEqual([
			new Set(['reported']),
			new Set(['must']),
			new Set(['must'])
		]);
	});
});
