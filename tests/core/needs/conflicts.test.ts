import { describe, expect, test } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { handsFor } from '#core/body/hands.ts';
import { questionOf } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import { EVIDENCE } from '#core/rules/packs/evidence.ts';
import { NEEDS } from '#core/rules/packs/needs.ts';
import { PERSON } from '#core/rules/packs/person.ts';
import type { Answer } from '#core/rules/row.ts';
import { demandOf } from '#core/structure/demand.ts';
import { caseWith, mark } from '../rules/baseline.ts';

/**
 * What evidence says of where help belongs, and where it disagrees with itself or with a printed height, each as a small case
 * in the room of the clause fixtures: 914 by 914, seat on the left wall, the control opposite, back wall to the sitter's left.
 */
const told = <T>(value: T) => ({ value, how: 'told' as const });
type Tree = Readonly<Record<string, unknown>>;
const FLAT = { fall: told(0), datum: told(0), threshold: told(0) };
const WIDE = { type: 'roll-in', width: told(1600), depth: told(1600), entryWidth: told(1500) };
const ON_FOOT = { transfer: told('walks'), chair: {} };
const knee = (popliteal: number) => ({
	body: { popliteal: told(popliteal), shoulderAboveSeat: told(567), shoulderBreadth: told(365), hipBreadth: told(399) }
});

const of = (client: Tree, enclosure: Tree = {}, others: Tree = {}): Case =>
	caseWith({ case: { reference: null }, client, enclosure: { ...FLAT, ...enclosure }, others });

type Purpose = Mark['accessory']['purpose'];
const at = (
	id: string,
	purpose: Purpose,
	variant: string,
	[wall, x, y]: readonly [Mark['place']['wall'], number, number]
) => mark(id, { purpose, wall, x, y, variant: variantOf(variant) });
const seatAt = (y: number, x = 457) => at('seat', 'sit', 'seat-450', ['left', x, y]);
const controlAt = (x: number, y: number) => at('control', 'run-water', 'control-lever', ['right', x, y]);

/** The answer of a row, of one mark where more than one is asked; undefined where the case does not bind it. */
function answer(c: Case, row: string, marks: readonly Mark[], about?: string): Answer | undefined {
	const question = questionOf(c);
	const there = marks.flatMap((m) => {
		const accessory = question.wanted.find(({ id }) => id === m.accessory.id);
		return accessory ? [{ ...m, accessory }] : [];
	});
	return judge(question.scene, question.rows, there).find(
		(f) => f.row.id === row && f.answer !== 'not-here' && (about === undefined || f.about[0] === about)
	)?.answer;
}
const ids = (c: Case) => questionOf(c).wanted.map(({ id }) => id);
const said = [EVIDENCE, NEEDS, PERSON].flatMap(({ judgement }) => judgement).join(' ');

describe('[needs R25] entering, leaving, catching oneself', () => {
	const walks = of({ ...ON_FOOT, rises: told('alone') });
	const bar = (x: number, y: number, part = 'post-bar-450') => [at('entry-bar', 'step-in', part, ['right', x, y])];

	// Source: Guitard 2011, 80 people at a bath: a vertical bar at the side preferred going in and coming out.
	test('one vertical bar at the edge of the entry, at most 150 mm inside it, held before the step and after it', () => {
		expect(ids(walks)).toContain('entry-bar');
		expect(ids(of({ transfer: told('slide-board') }))).not.toContain('entry-bar');
		// 914.4 deep; the wall on the right is measured from the back.
		expect(answer(walks, 'EV-ENTRY-EDGE', bar(780, 900))).toBe('inside');
		expect(answer(walks, 'EV-ENTRY-EDGE', bar(700, 900))).toBe('outside');
		for (const row of ['BODY-ENTRY-BAR', 'WISH-ENTRY-BAR-INSIDE'])
			expect(answer(walks, row, bar(850, 900)), row).toBe('inside');
		expect(answer(walks, 'BODY-ENTRY-BAR', bar(850, 1900))).toBe('outside');
	});

	// Source: Levine 2025, hands 9.4 % lower after a slip; ANSUR II women, wrist 794: a tenth below it 714.6.
	test('it begins a tenth below the wrist and ends at the shoulder: 1332 of a median woman', () => {
		expect(answer(walks, 'EV-ENTRY-FOOT', bar(850, 714))).toBe('inside');
		expect(answer(walks, 'EV-ENTRY-FOOT', bar(850, 716))).toBe('outside');
		const { length } = variantOf('post-bar-450');
		expect(answer(walks, 'EV-ENTRY-HEAD', bar(850, 1333 - length))).toBe('inside');
		expect(answer(walks, 'EV-ENTRY-HEAD', bar(850, 1331 - length))).toBe('outside');
	});

	// Source: Levine 2025, horizontal grasps stay near the rim and near the seat.
	test('a horizontal bar far from seat or entry is wasted: it begins near the seat', () => {
		const rising = of({ ...ON_FOOT, rises: told('alone') }, WIDE);
		const far = at('bar-back', 'rise', 'bar-450', ['back', 1000, 800]);
		expect(answer(rising, 'EV-RISE-NEAR', [seatAt(450, 1000), far])).toBe('outside');
	});

	// Source: Sveistrup 2006 and Sanford 1995: what codes print is no better liked or used.
	test('a code layout is a floor to check against: a printed clause never binds a plan the person leads, and the trial outranks it', () => {
		const { rows } = questionOf(caseWith({ case: { reference: 'ada-2010' } }));
		const strengths = new Set(rows.filter(({ row }) => row.origin === 'document').map(({ strength }) => strength));
		expect(strengths.has('must')).toBe(false);
		expect(said).toContain('The trial on the wall outranks every figure.');
	});
});

describe('[needs R25] rising', () => {
	const rising = of({ ...ON_FOOT, rises: told('with-arms') }, WIDE);
	/** A bar on the back wall that begins `near` ahead of the seat's front edge, which `seat-450` has at its depth from the wall. */
	const { depth } = variantOf('seat-450');
	const bar = (near: number, part: string) => at('bar-back', 'rise', part, ['back', depth + near, 800]);

	// Source: O'Meara and Smith 2005, 12 people of 69-88 years: hand 150 and 400 mm ahead of the edge of the seat.
	test('a rising bar is there from 150 to 400 mm ahead of the edge of the seat', () => {
		const seat = seatAt(450, 1200);
		const long = variantOf('bar-450').length;
		expect(answer(rising, 'EV-RISE-NEAR', [seat, bar(149, 'bar-450')])).toBe('inside');
		expect(answer(rising, 'EV-RISE-NEAR', [seat, bar(151, 'bar-450')])).toBe('outside');
		expect(answer(rising, 'EV-RISE-FAR', [seat, bar(401 - long, 'bar-450')])).toBe('inside');
		expect(answer(rising, 'EV-RISE-FAR', [seat, bar(399 - long, 'bar-450')])).toBe('outside');
	});

	// Source: O'Meara and Smith 2006: one-sided help loads the knee of its own side more; after one-sided injury, ask.
	test('after one-sided injury the side is asked, not decided', () => {
		const row = NEEDS.rows.find(({ id }) => id === 'NEED-RISING-SIDE');
		expect(row).toMatchObject({ when: { weaker: ['one'] }, whom: expect.stringContaining('treats') as string });
		const marks = [seatAt(450, 1200), bar(0, 'bar-450')];
		expect(answer(of({ ...ON_FOOT, weakerSide: told('left') }, WIDE), 'NEED-RISING-SIDE', marks)).toBe('ask');
		expect(answer(of({ ...ON_FOOT, weakerSide: told('neither') }, WIDE), 'NEED-RISING-SIDE', marks)).toBeUndefined();
	});

	// Source: Kinoshita 2015 and 2012, Kato 2020: a high bar asks for less leaning, a low one brings weight forward, angled both.
	test('how high a bar is better for her, and an angled one, is left to the trial and said', () => {
		expect(said).toContain('who cannot lean forward rises easier by a higher bar');
		expect(said).toContain('an angled bar');
		const seat = seatAt(450, 1200);
		const high = (above: number) => at('bar-back', 'rise', 'bar-450', ['back', 300, 450 + above]);
		for (const [above, want] of [
			[199, 'outside'],
			[200, 'inside'],
			[450, 'inside'],
			[451, 'outside']
		] as const)
			expect(answer(rising, 'EV-RISE-HEIGHT', [seat, high(above)]), String(above)).toBe(want);
	});

	// Source: Lee 2019, rails 330, 356 and 381 from the centre line; nursing practice, 254 above the seat.
	test('rails on both sides 330 to 381 beside the centre line, 200 to 280 above the seat where no elbow was measured', () => {
		expect(ids(rising)).toEqual(expect.arrayContaining(['rail-one', 'rail-other']));
		const rail = (off: number, above: number) => [
			seatAt(450, 800),
			at('rail-one', 'push-up', 'rail-600', ['left', 800 + off, 450 + above])
		];
		for (const [off, want] of [
			[329, 'outside'],
			[330, 'inside'],
			[381, 'inside'],
			[382, 'outside']
		] as const)
			expect(answer(rising, 'EV-RAIL-SIDE', rail(off, 240)), String(off)).toBe(want);
		for (const [above, want] of [
			[199, 'outside'],
			[200, 'inside'],
			[280, 'inside'],
			[281, 'outside']
		] as const)
			expect(answer(rising, 'EV-RAIL-HEIGHT', rail(350, above)), String(above)).toBe(want);
	});

	// Source: reference, decision 5: a printed bar is to pull and steady on; disagreements.test.ts has the sums.
	test('that a bar at the printed height is no surface to push up from is said', () => {
		expect(said).toContain('A bar 355 to 485 mm above a seat is for pulling and steadying');
	});
});

describe('[needs R25] washed by somebody, and what is behind the seat', () => {
	// Source: Access Board research report 4-21-4: who helps wants fewer bars and open sides.
	test('who helps has 600 mm beside the seat, and one rail is left out; two have both sides and no rail', () => {
		const helped = (by: string) => of({ rises: told('with-arms'), helpedBy: told(by) }, WIDE);
		const rails = (by: string) => ids(helped(by)).filter((id) => id.startsWith('rail'));
		expect([rails('nobody').length, rails('one').length, rails('two').length]).toEqual([2, 1, 0]);
		const half = variantOf('seat-450').length / 2;
		// The front is open and far, so only the back wall limits.
		const both = (beside: number) => answer(helped('two'), 'NEED-HELPERS-BESIDE', [seatAt(450, 1600 - beside - half)]);
		expect([both(600), both(599)]).toEqual(['inside', 'outside']);
	});

	// Source: Sanath 2016: a bar behind prompts unsafe stretching; ADA 2010 has none above the seat.
	test.each(['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'])(
		'%s: no bar to hold is behind who sits',
		(type) => {
			for (const washes of ['seated', 'both'])
				for (const transfer of ['walks', 'sitting-pivot']) {
					const c = of({ washes: told(washes), transfer: told(transfer), sits: told('one-hand') }, { type });
					const bars = questionOf(c).wanted.filter(({ kind }) => kind === 'horizontal-bar');
					expect(bars.length).toBeGreaterThan(0);
					expect(bars.flatMap(({ slots }) => slots.map(({ wall }) => wall))).not.toContain('left');
				}
			const bar = at('entry-bar', 'step-in', 'post-bar-450', ['left', 60, 900]);
			expect(answer(of({ ...ON_FOOT }), 'EV-ENTRY-CLEAR', [bar])).toBe('outside');
		}
	);

	// Source: Guay 2015, 23.2 % of body weight in 7 healthy young people: reference fixture T17, 182.0 N at 80 kg.
	test('structure takes the force of the standard, or all of a heavier body: never the 23 %', () => {
		expect(demandOf(of({ mass: told(80) })).force).toBe(1112);
		expect(demandOf(of({ mass: told(80) })).force).toBeGreaterThan(6 * 182);
		// 130 kg: 1274.9 N, up to the next 50 N.
		expect(demandOf(of({ mass: told(130) })).force).toBe(1300);
	});
});

describe('[needs R25] how high the seat is, by how she gets there', () => {
	const high = (c: Case, row: string, y: number) => answer(c, row, [seatAt(y)]);

	// Source: University of Pittsburgh for the Access Board: 95 % within 25 mm; T18, chair 510 and seat 480.
	test('from a wheeled chair: level with it within 25 mm', () => {
		const c = of({ chair: { seatHeight: told(510) }, transfer: told('sitting-pivot') });
		expect([480, 484, 485, 535, 536].map((y) => high(c, 'EV-SEAT-CHAIR', y))).toEqual([
			'outside',
			'outside',
			'inside',
			'inside',
			'outside'
		]);
		expect(high(c, 'EV-SEAT-RISE', 485)).toBeUndefined();
		// The same study: half reach 711 up and 356 down from 561, 150 and 205.
		expect([304, 305, 660, 661].map((y) => high(c, 'BODY-SEAT-TRANSFER', y))).toEqual([
			'outside',
			'inside',
			'inside',
			'outside'
		]);
	});

	// Source: pubmed 23740582, chair-stand scores rise to 110-120 % of the lower leg. 110 and 120 % of 400 are 440 and 480.
	test('a weak riser on foot: 110 to 120 % of the height under the knee, with the feet check', () => {
		const c = of({ ...ON_FOOT, ...knee(400), rises: told('with-arms') });
		expect([439, 440].map((y) => high(c, 'EV-SEAT-RISE', y))).toEqual(['outside', 'inside']);
		for (const row of ['EV-SEAT-FEET-HOLD', 'BODY-FEET-HOLD'])
			expect(
				[480, 481].map((y) => high(c, row, y)),
				row
			).toEqual(['inside', 'outside']);
		expect(high(c, 'EV-SEAT-FEET-FLAT', 440)).toBeUndefined();
	});

	// Source: reference, seat height: poor sitting balance, feet flat first; an ergonomics course, at most the height under the knee.
	test('who does not sit steady: feet flat first, whatever rising wants', () => {
		const c = of({ ...ON_FOOT, ...knee(400), rises: told('with-arms'), sits: told('held') });
		expect([400, 401].map((y) => high(c, 'EV-SEAT-FEET-FIRST', y))).toEqual(['inside', 'outside']);
		expect(high(c, 'EV-SEAT-RISE', 440)).toBeUndefined();
	});

	// Source: reference, seat height: with hip precaution; geometry, level thighs at the height under the knee.
	test('a hip that must not bend past level: no lower than under the knee, no wish for flat feet, and who set it is asked', () => {
		const c = of({ ...ON_FOOT, ...knee(400), rises: told('alone'), hipLimit: told(true) });
		expect([399, 400].map((y) => high(c, 'BODY-HIP-LIMIT', y))).toEqual(['outside', 'inside']);
		expect(high(c, 'EV-SEAT-FEET-FLAT', 420)).toBeUndefined();
		expect(high(c, 'NEED-HIP', 420)).toBe('ask');
	});
});

describe('[needs R25] crossing from a chair', () => {
	const crossing = (chair: Tree, enclosure: Tree = {}) =>
		of(
			{ transfer: told('sitting-pivot'), chair: { seatHeight: told(480), ...chair } },
			{ clearLength: told(2642), clearWidth: told(1410), ...enclosure }
		);

	// Source: University of Pittsburgh for the Access Board: 95 % cross 89 mm, 47 of 113 not what stands 152 mm above the seat.
	test('a gap of at most 89 mm, and nothing above the seat of the chair on the way', () => {
		expect([89, 90].map((gap) => answer(crossing({ gap: told(gap) }), 'NEED-GAP', []))).toEqual(['inside', 'outside']);
		expect([0, 152].map((o) => answer(crossing({ obstacle: told(o) }), 'NEED-OBSTACLE', []))).toEqual([
			'inside',
			'outside'
		]);
	});

	// Source: plane geometry, (L cos + W sin, L sin + W cos); 1362 by 786 is the least clear floor of a manual chair.
	test.each([
		['beside', 1362, 786],
		['facing', 786, 1362],
		['aslant', 1519, 1519]
	])('the box of a chair parked %s: %i by %i', (approach, long, wide) => {
		const chair = { width: told(786), length: told(1362), approach: told(approach) };
		const on = (l: number, w: number) =>
			answer(crossing(chair, { clearLength: told(l), clearWidth: told(w) }), 'NEED-CHAIR-PARKS', []);
		expect(on(long, wide)).toBe('inside');
		expect(on(long - 2, wide)).toBe('outside');
		expect(on(long, wide - 2)).toBe('outside');
	});

	// Source: reference, section 5: a wheeled shower chair replaces the transfer, its own width is checked.
	test('a shower chair passes the entry, now or later', () => {
		const chair = (width: number) => ({ chair: { seatHeight: told(530), width: told(width) } });
		const entry = { entryWidth: told(700) };
		const through = (client: Tree) => answer(of(client, entry), 'BODY-CHAIR-THROUGH', []);
		expect(through({ washes: told('in-chair'), ...chair(700) })).toBe('inside');
		expect(through({ washes: told('in-chair'), ...chair(701) })).toBe('outside');
		expect(through({ ...chair(701), later: { washes: told('in-chair') } })).toBe('outside');
		expect(through(chair(701))).toBeUndefined();
	});
});

describe('[needs R25] valve and hand shower', () => {
	// Source: reference, section 4: "operable from seat and from outside the spray and by a helper" is three checks of reach.
	test('three checks: from the seat, from the entry, and a helper from the dry side', () => {
		const c = of(
			{ ...ON_FOOT, rises: told('alone'), lean: told({ kind: 'none' }) },
			{},
			{ helper: { role: 'helper' } }
		);
		const seat = seatAt(450);
		const near = controlAt(700, 1000);
		for (const row of ['BODY-REACH', 'WISH-WATER-FROM-ENTRY', 'WISH-WATER-HELPER']) {
			expect(answer(c, row, [seat, near]), row).toBeDefined();
			expect(answer(c, row, [seat, controlAt(700, 2000)]), row).toBe('outside');
		}
		// The control wall is 774 ahead of her back, further than an arm of 611; the back wall is beside her.
		expect(answer(c, 'WISH-WATER-FROM-ENTRY', [seat, near])).toBe('inside');
		expect(answer(c, 'WISH-WATER-HELPER', [seat, near])).toBe('inside');
		const back = at('control', 'run-water', 'control-lever', ['back', 550, 900]);
		expect(answer(c, 'BODY-REACH', [seat, back])).toBe('inside');
	});

	// Source: reference, section 4: lower cradle inside the seated band, upper inside the standing band.
	test('who washes both ways: a rest is reached from the seat, a high holder standing', () => {
		const c = of({ ...ON_FOOT, washes: told('both'), rises: told('alone') });
		expect(ids(c)).toEqual(expect.arrayContaining(['handset-rest', 'handset-holder']));
		const rest = (y: number) => [seatAt(450), at('handset-rest', 'rest-handset', 'rest', ['back', 550, y])];
		expect([900, 1700].map((y) => answer(c, 'BODY-REACH-HANDSET', rest(y)))).toEqual(['inside', 'outside']);
		const holder = (y: number) => [at('handset-holder', 'hang-handset', 'rest', ['right', 457, y])];
		expect([1500, 2000].map((y) => answer(c, 'BODY-REACH-HOLDER', holder(y)))).toEqual(['inside', 'outside']);
	});

	// Source: reference, section 4, mirror rule.
	test('water and hand shower are for the stronger hand; nothing needed lies on the side that is overlooked', () => {
		for (const [weaker, stronger] of [
			['left', 'right'],
			['right', 'left']
		] as const) {
			const { people } = of({ weakerSide: told(weaker) });
			const client = people['client'];
			if (!client) throw new RangeError('no client');
			for (const purpose of ['run-water', 'divert', 'rest-handset', 'hang-handset'] as const)
				expect(handsFor(purpose, client)).toEqual([stronger]);
		}
		const overlooks = (side: string) => of({ ...ON_FOOT, overlooks: told(side) });
		const on = (x: number) => [seatAt(450, 457), controlAt(x, 900)];
		// The seat's middle is 457 from the front, 457.4 from the back; her left is the back wall's side.
		expect(answer(overlooks('left'), 'NEED-IN-SIGHT', on(470))).toBe('inside');
		expect(answer(overlooks('left'), 'NEED-IN-SIGHT', on(440))).toBe('outside');
		expect(answer(overlooks('right'), 'NEED-IN-SIGHT', on(440))).toBe('inside');
		expect(answer(overlooks('right'), 'NEED-IN-SIGHT', on(470))).toBe('outside');
	});

	// Source: Ontario Building Code, appendix on hot water: 43 C for who may not feel or flee it. 109.4 F is 43 C.
	test('who may be scalded: 43 C, and a stop', () => {
		const c = (water: number) => of({ feelsHeat: told(false) }, { water: told(water) });
		expect([43, 43.2].map((water) => answer(c(water), 'EV-HEAT-NOT-FELT', []))).toEqual(['inside', 'outside']);
		expect(answer(c(43), 'EV-HEAT-STOP', [])).toBe('ask');
	});
});
