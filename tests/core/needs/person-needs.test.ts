import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { lookAgainOf } from '#core/needs/look-again.ts';
import { planCase, planFrom, questionOf } from '#core/plan.ts';
import { settled } from '#core/report.ts';
import { conditionsOf } from '#core/rules/applies.ts';
import { judge } from '#core/rules/judge.ts';
import { NEEDS } from '#core/rules/packs/needs.ts';
import { caseWith, mark, marksOf } from '../rules/baseline.ts';

const told = <T>(value: T) => ({ value, how: 'told' as const });
const alone = { case: { reference: null } };

type Client = Record<string, unknown>;

const withClient = (client: Client, enclosure: Record<string, unknown> = {}): Case =>
	caseWith({ ...alone, client, enclosure });
const ids = (c: Case) => questionOf(c).wanted.map((a) => a.id);
const rowIds = (c: Case) => new Set(questionOf(c).rows.map(({ row }) => row.id));
/** A seat wall with room for a rail on both sides. */
const LONG = { type: 'roll-in', depth: told(1600), width: told(1600) };

const ONE_HAND = { weakerSide: told('left'), weakerHolds: told(false) };

/** What a case asks of somebody, by row, with what waits for the answer; judged on the baseline's own marks. */
function waitsIn(c: Case): Readonly<Record<string, readonly string[]>> {
	const question = questionOf(c);
	const marks = marksOf().filter(({ accessory }) => question.wanted.some((a) => a.id === accessory.id));
	const placed = { marks, status: 'given', cost: [], bound: [], evaluations: 0, nodes: 0 } as const;
	const plan = planFrom(question, placed);
	return Object.fromEntries(plan.probes.waits.map(({ row, about }) => [row, about]));
}

describe('what a person needs', () => {
	test('[needs R11] who stands for less than a shower takes is offered a seat, and says why', () => {
		const stands = { washes: told('standing'), transfer: told('walks') };
		expect(ids(withClient(stands))).not.toContain('seat');
		for (const more of [{ standsFor: told(9) }, { tires: told(true) }, { seizures: told(true) }]) {
			const seat = questionOf(withClient({ ...stands, ...more })).wanted.find(({ id }) => id === 'seat');
			expect(seat?.reason, JSON.stringify(more)).toContain('standing does not last as long as a shower');
			expect(conditionsOf(withClient({ ...stands, ...more })).washes).toBe('both');
		}
		expect(ids(withClient({ ...stands, standsFor: told(10) }))).not.toContain('seat');
	});

	test.each([
		['hemiplegia', { weakerSide: told('right') }, 'NEED-RISING-SIDE', ['bar-back']],
		['dementia', { followsSteps: told(false) }, 'NEED-STEPS-WATER', ['control']],
		['skin', { skinAtRisk: told(true) }, 'NEED-SKIN', ['seat']],
		['hip precaution', { hipLimit: told(true) }, 'NEED-HIP', ['seat']],
		['continence', { washedBelow: told(true) }, 'NEED-BELOW', ['seat']],
		['hoist', { transfer: told('hoist') }, 'NEED-HOIST', ['seat']],
		['two carers', { helpedBy: told('two') }, 'NEED-HANDLING', ['seat']],
		['poor sitting balance', { sits: told('held') }, 'NEED-SEAT-SUPPORT', ['seat']],
		['growth', { age: told(9) }, 'NEED-GROWS', ['seat']],
		['seizures', { seizures: told(true) }, 'NEED-SEIZURES', []],
		['a walking aid', { walkingAid: { kind: told('frame') } }, 'NEED-AID-PARKED', []],
		['a worsening condition', { prognosis: told('worsening') }, 'NEED-EXPECTED', []]
	])('[needs R12] %s asks somebody by name and keeps only that waiting', (_, client, row, about) => {
		expect(waitsIn(withClient({ weakerSide: told('neither') }))).not.toHaveProperty(row);
		expect(waitsIn(withClient({ weakerSide: told('neither'), ...client }))[row]).toEqual(about);
	});

	test.each([
		['capacity', { followsSteps: told(false), consents: told(true) }, 'NEED-CAPACITY'],
		['nobody to call', { followsSteps: told(false), callsHelp: told('none-wanted') }, 'NEED-WITHIN-CALL'],
		['a control that may be got at', { followsSteps: told(false), runsWater: told('helper') }, 'NEED-STEPS-BEYOND'],
		['one hand that holds and washes', { ...ONE_HAND, sits: told('one-hand') }, 'NEED-ONE-HAND-HOLDS'],
		['a weaker hand nobody watched', { weakerSide: told('left') }, 'NEED-WEAKER-HOLDS']
	])('[needs R12] %s is asked', (_, client, row) => {
		expect(rowIds(withClient({}))).not.toContain(row);
		expect(rowIds(withClient(client))).toContain(row);
	});

	test('[needs R12] legs over a rim are asked about, and whose the walls are', () => {
		expect(rowIds(withClient({}))).toContain('NEED-TENURE');
		expect(rowIds(withClient({}))).not.toContain('NEED-LEGS-OVER');
		expect(rowIds(withClient({}, { type: 'over-bath' }))).toContain('NEED-LEGS-OVER');
		expect(rowIds(withClient({}, { tenure: told('own') }))).not.toContain('NEED-TENURE');
	});

	test('[needs R15] one hand that holds washes with a high holder, above the shoulder of who sits and within reach', () => {
		expect(ids(withClient({}))).not.toContain('handset-holder');
		expect(ids(withClient(ONE_HAND))).toContain('handset-holder');
		expect(rowIds(withClient(ONE_HAND))).toContain('BODY-REACH-HOLDER-SEAT');
		expect(rowIds(withClient(ONE_HAND))).toContain('NEED-HOLDER-SEATED');
		expect(rowIds(withClient(ONE_HAND))).not.toContain('EV-HOLDER-HIGH');
	});

	test('[needs R12] what was answered waits no longer, and what it was about is not told as open', () => {
		const client = { skinAtRisk: told(true), consents: told(true) };
		const answer = { 'NEED-SKIN/seat': { reason: 'A soft pad, no opening.', by: 'nurse' } };
		expect(waitsIn(withClient(client))).toHaveProperty('NEED-SKIN');
		const answered = caseWith({ case: { reference: null, departures: answer }, client });
		expect(waitsIn(answered)).not.toHaveProperty('NEED-SKIN');
	});

	test.each([
		['her refusal', { consents: told(false) }, {}, 'NEED-CONSENT-REFUSED'],
		['walls of somebody else', { consents: told(true) }, { tenure: told('rented') }, 'NEED-PERMISSION'],
		['a refused permission', { consents: told(true) }, { permission: told(false) }, 'NEED-PERMISSION']
	])('[needs R13] nothing is settled against %s', (_, client, enclosure, row) => {
		const c = withClient(client, enclosure);
		const plan = planFrom(questionOf(c), {
			marks: marksOf().filter(({ accessory }) => questionOf(c).wanted.some((a) => a.id === accessory.id)),
			status: 'given',
			cost: [],
			bound: [],
			evaluations: 0,
			nodes: 0
		});
		expect(plan.findings.find((f) => f.row.id === row)).toMatchObject({ answer: 'ask', strength: 'must' });
		expect(plan.basis).toBe('provisional');
		expect(settled(plan)).toBe(false);
		expect(rowIds(withClient({ consents: told(true) }, { tenure: told('own') }))).not.toContain(row);
		expect(
			rowIds(withClient({ consents: told(true) }, { tenure: told('rented'), permission: told(true) }))
		).not.toContain(row);
	});

	test('[needs R14] low vision, heat not felt and children ask for bars that are seen and a stop on the control', () => {
		const dim = withClient({ seesBars: told(false) });
		expect(rowIds(dim)).toContain('EV-BARS-SEEN');
		for (const { reason } of questionOf(dim).wanted) expect(reason).toContain('In a colour that stands out');
		for (const { reason } of questionOf(withClient({})).wanted) expect(reason).not.toContain('In a colour');
		const scalds: readonly Client[] = [
			{ feelsHeat: told(false) },
			{ followsSteps: told(false) },
			{ seizures: told(true) },
			{ age: told(11) },
			{ arms: { left: { toGrip: told(600), feels: told(false) }, right: { toGrip: told(600) } } }
		];
		for (const client of scalds) expect(rowIds(withClient(client)), JSON.stringify(client)).toContain('EV-HEAT-STOP');
		expect(rowIds(withClient({ feelsHeat: told(true), age: told(12) }))).not.toContain('EV-HEAT-STOP');
	});

	test('[needs R15] rails: for pushing up, as arm rests, one for a side that is kept open, none between two helpers', () => {
		const rails = (client: Client) =>
			ids(withClient({ rises: told('with-arms'), ...client }, LONG)).filter((id) => id.startsWith('rail'));
		expect(rails({})).toEqual(['rail-one', 'rail-other']);
		expect(rails({ helpedBy: told('one') })).toEqual(['rail-one']);
		expect(rails({ helpedBy: told('two') })).toEqual([]);
		expect(rails({ followsSteps: told(false) })).toEqual([]);
		expect(rails({ rises: told('alone') })).toEqual([]);
		expect(rails({ rises: told('alone'), sits: told('back-rest') })).toEqual(['rail-one', 'rail-other']);
	});

	test('[needs R15] who does not sit with both hands free gets a bar to sit steady by, lifted in or not', () => {
		const hoisted = { transfer: told('hoist'), rises: told('cannot') };
		expect(ids(withClient(hoisted))).not.toContain('bar-back');
		const bar = questionOf(withClient({ ...hoisted, sits: told('one-hand') })).wanted.find(
			({ id }) => id === 'bar-back'
		);
		expect(bar).toMatchObject({ purpose: 'sit-steady', because: 'NEED-REQ-SIT-STEADY' });
	});

	test('[needs R16] pain, sight, hands, chair, aid and helpers move or judge a mark', () => {
		const of = (client: Client, enclosure: Record<string, unknown> = {}) => {
			const c = withClient(client, enclosure);
			const { scene, rows } = questionOf(c);
			const marks = marksOf().filter(({ accessory }) => rows.some(({ about }) => about.includes(accessory.id)));
			return judge(scene, rows, marks);
		};
		const answer = (row: string, client: Client, enclosure = {}) =>
			of(client, enclosure).find((f) => f.row.id === row && f.answer !== 'not-here')?.answer;
		// Seat on the left wall, back wall to her left: what she overlooks on the left is the bar on the back wall.
		const sight = (side: string) =>
			of({ overlooks: told(side) }).find((f) => f.row.id === 'NEED-IN-SIGHT' && f.about[0] === 'bar-back')?.answer;
		expect(sight('left')).toBe('outside');
		expect(sight('right')).toBe('inside');
		const hand = (mm: number) => ({
			arms: { left: { toGrip: told(600), closesRound: told(mm) }, right: { toGrip: told(600) } }
		});
		expect(answer('NEED-HAND-CLOSES', hand(32))).toBe('inside');
		expect(answer('NEED-HAND-CLOSES', hand(30))).toBe('outside');
		const chair = (more: Client) => ({
			transfer: told('sitting-pivot'),
			chair: { seatHeight: told(480), width: told(650), length: told(1100), ...more }
		});
		const floor = { clearLength: told(1200), clearWidth: told(1000) };
		expect(answer('NEED-CHAIR-PARKS', chair({ approach: told('beside') }), floor)).toBe('inside');
		expect(answer('NEED-CHAIR-PARKS', chair({ approach: told('facing') }), floor)).toBe('outside');
		// (1100 + 650) / sqrt 2 = 1237.4 long, more than there is.
		expect(answer('NEED-CHAIR-PARKS', chair({ approach: told('aslant') }), floor)).toBe('outside');
		expect(answer('NEED-CHAIR-PARKS', chair({}), floor)).toBe('unknown');
		// 42 % could not cross 152 mm, so that nothing is to stand there; 95 % cross 89 mm (studies of transfers).
		expect(answer('NEED-OBSTACLE', chair({ obstacle: told(0) }))).toBe('inside');
		expect(answer('NEED-OBSTACLE', chair({ obstacle: told(1) }))).toBe('outside');
		expect(answer('NEED-GAP', chair({ gap: told(89) }))).toBe('inside');
		expect(answer('NEED-GAP', chair({ gap: told(95) }))).toBe('outside');
		const entry = { entryWidth: told(700) };
		const aid = (mm: number) => ({ walkingAid: { kind: told('frame'), width: told(mm) } });
		expect(answer('NEED-AID-THROUGH', aid(700), entry)).toBe('inside');
		expect(answer('NEED-AID-THROUGH', aid(710), entry)).toBe('outside');
		const inChair = (mm: number) => ({ washes: told('in-chair'), chair: { seatHeight: told(530), width: told(mm) } });
		expect(answer('BODY-CHAIR-THROUGH', inChair(700), entry)).toBe('inside');
		expect(answer('BODY-CHAIR-THROUGH', inChair(701), entry)).toBe('outside');
		expect(answer('NEED-HELPER-BESIDE', { helpedBy: told('one') })).toBe('inside');
		expect(answer('NEED-HELPERS-BESIDE', { helpedBy: told('two') })).toBe('outside');
	});

	test('[needs R16] who gets out another way than in needs what both ways need', () => {
		const walks = { transfer: told('walks'), chair: {} };
		expect(ids(withClient(walks))).toContain('entry-bar');
		expect(rowIds(withClient(walks))).not.toContain('NEED-OBSTACLE');
		const slides = withClient({ ...walks, leaves: told('slide-board') });
		expect(ids(slides)).toContain('entry-bar');
		for (const row of ['NEED-OBSTACLE', 'NEED-CHAIR-PARKS', 'EV-SEAT-CHAIR']) expect(rowIds(slides)).toContain(row);
		expect(ids(withClient({ transfer: told('sitting-pivot') }))).not.toContain('entry-bar');
		expect(ids(withClient({ transfer: told('sitting-pivot'), leaves: told('walks') }))).toContain('entry-bar');
		expect(waitsIn(withClient({ ...walks, leaves: told('hoist') }))['NEED-HOIST']).toEqual(['seat']);
	});

	test('[needs R16] a rail is as high as the elbow that was measured; where none was it is asked, and the study decides', () => {
		const rows = (elbow?: number) => {
			const body = { popliteal: told(388), ...(elbow !== undefined && { elbowAboveSeat: told(elbow) }) };
			const { scene, rows } = questionOf(withClient({ rises: told('with-arms'), body }, LONG));
			const seat = mark('seat', { purpose: 'sit', wall: 'left', x: 800, y: 450, variant: variantOf('seat-450') });
			const rail = mark('rail-one', {
				purpose: 'push-up',
				wall: 'left',
				x: 1150,
				y: 690,
				variant: variantOf('rail-700')
			});
			return judge(scene, rows, [seat, rail]).filter((f) => f.about[0] === 'rail-one' && f.answer !== 'not-here');
		};
		const answer = (id: string, elbow?: number) => rows(elbow).find((f) => f.row.id === id)?.answer;
		expect(answer('NEED-RAIL-ELBOW')).toBe('unknown');
		expect(answer('EV-RAIL-HEIGHT')).toBe('inside');
		expect([answer('NEED-RAIL-ELBOW', 215), answer('NEED-RAIL-ELBOW', 214)]).toEqual(['inside', 'outside']);
		expect(answer('EV-RAIL-HEIGHT', 215)).toBeUndefined();
	});

	test('[needs R16] every row of this pack is asked by some case here', () => {
		const cases = [
			withClient({}, { tenure: told('rented') }),
			withClient({ consents: told(false), transfer: told('hoist'), sits: told('held'), skinAtRisk: told(true) }),
			withClient(
				{ washedBelow: told(true), hipLimit: told(true), helpedBy: told('two'), age: told(9) },
				{ controls: 'apart' }
			),
			withClient({
				washedBelow: told(true),
				helpedBy: told('one'),
				overlooks: told('left'),
				followsSteps: told(false)
			}),
			withClient({ seizures: told(true), prognosis: told('worsening'), weakerSide: told('left') }),
			withClient({ walkingAid: { kind: told('frame'), width: told(600) }, washes: told('in-chair') }),
			withClient({
				transfer: told('sitting-pivot'),
				chair: { seatHeight: told(480), gap: told(80) },
				arms: { left: { toGrip: told(600), closesRound: told(40) }, right: {} }
			}),
			withClient({ arms: { left: {}, right: { closesRound: told(40) } } }),
			withClient({
				followsSteps: told(false),
				runsWater: told('helper'),
				callsHelp: told('none-wanted'),
				consents: told(true)
			}),
			withClient({}, { type: 'over-bath' }),
			withClient({ rises: told('with-arms') }, LONG),
			withClient({ weakerSide: told('left'), weakerHolds: told(false), sits: told('one-hand') }),
			withClient({ sits: told('one-hand'), transfer: told('hoist'), rises: told('cannot') })
		];
		const asked = new Set(cases.flatMap((c) => [...rowIds(c)]));
		expect(NEEDS.rows.map(({ id }) => id).filter((id) => !asked.has(id))).toEqual([]);
	});
});

describe('when to look again', () => {
	test.each([
		[{}, 12],
		[{ prognosis: told('stable') }, 12],
		[{ prognosis: told('worsening') }, 6],
		[{ prognosis: told('varying') }, 6],
		[{ age: told(17) }, 6],
		[{ age: told(18) }, 12]
	])('[needs R17] %j: every %i months', (client, every) => {
		const again = lookAgainOf(withClient(client));
		expect(again.every).toBe(every);
		expect(again.says).toContain(`every ${String(every)} months`);
	});

	test('[needs R17] facts more than a year older than the newest are named', () => {
		const on = (when: string) => ({ value: 70, how: 'measured', when });
		const c = withClient({
			mass: on('2025-03-01'),
			sittingForward: { value: 10, how: 'measured', when: '2026-03-01' }
		});
		expect(lookAgainOf(c).stale).toEqual([]);
		const older = withClient({
			mass: on('2025-02-28'),
			sittingForward: { value: 10, how: 'measured', when: '2026-03-01' }
		});
		expect(lookAgainOf(older).stale).toEqual([{ person: 'client', path: ['mass'], when: '2025-02-28' }]);
	});
});

describe('a body outside the survey', () => {
	test('[needs R18] a child is planned from measures only: nothing is estimated, what is missing is asked', () => {
		const child = withClient({
			age: told(9),
			mass: told(30),
			body: { stature: told(1330) },
			arms: { left: {}, right: {} }
		});
		const { scene } = questionOf(child);
		expect(scene.bodies['client']?.refusal?.why).toContain('younger than 18');
		expect(scene.bodies['client']?.dims.popliteal).toBeUndefined();
		const measured = withClient({
			age: told(9),
			mass: told(30),
			body: {
				stature: told(1330),
				shoulderAboveSeat: told(450),
				shoulderBreadth: told(290),
				popliteal: told(330),
				hipBreadth: told(260),
				shoulderStanding: told(1060),
				wristStanding: told(640),
				handLength: told(145)
			},
			arms: {
				left: { toGrip: told(470), upperArm: told(245) },
				right: { toGrip: told(470), upperArm: told(245) }
			},
			transfer: told('walks'),
			chair: {}
		});
		const plan = planCase(measured);
		expect(plan.marks.length).toBeGreaterThan(3);
		expect(plan.probes.questions.map(({ asks }) => asks).join(' ')).not.toMatch(/How long is the arm/);
		expect(lookAgainOf(measured).every).toBe(6);
	});
});
