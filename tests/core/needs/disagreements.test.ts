import { describe, expect, test } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase, mirroredMark } from '#core/enclosure/mirrored-case.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { disagreementsOf } from '#core/needs/disagreements.ts';
import { bind } from '#core/rules/bind.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import { caseWith, mark, sceneOf } from '../rules/baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const FLAT = { fall: measured(0), datum: measured(0), threshold: measured(0) };
const ON_FOOT = { chair: {}, transfer: measured('walks') };

const seatAt = (y: number) => mark('seat', { purpose: 'sit', wall: 'left', x: 400, y, variant: variantOf('seat-450') });
const barAt = (y: number) =>
	mark('bar-back', { purpose: 'rise', wall: 'back', x: 300, y, variant: variantOf('bar-450') });
const railAt = (y: number) =>
	mark('rail-one', { purpose: 'push-up', wall: 'left', x: 100, y, variant: variantOf('rail-600') });
const controlAt = (y: number) =>
	mark('control', { purpose: 'run-water', wall: 'right', x: 500, y, variant: variantOf('control-lever') });

function said(c: Case, marks: readonly Mark[], nowhere: readonly Mark[] = []) {
	const wanted = marks.map(({ accessory }) => accessory);
	const rows = bind(packsFor(c.reference), wanted, c);
	return disagreementsOf({ scene: sceneOf(c), rows, marks, wanted, nowhere: nowhere.map((m) => m.accessory) });
}

const on = (client: object, marks: readonly Mark[], enclosure: object = {}) =>
	said(caseWith({ client, enclosure: { ...FLAT, ...enclosure } }), marks);

const RADIUS = variantOf('bar-450').diameter / 2;

describe('[needs R23] a bar to rise by at a printed height is no bar to push up from', () => {
	// Source: reference, a bar 840-915 over a seat of 430-485 is 355-485 above the seat; by exact inches 838.2-914.4, to its top.
	test.each([
		[431.8, 838.2 - 431.8, 914.4 - 431.8],
		[482.6, 838.2 - 482.6, 914.4 - 482.6]
	])('over a seat of %s', (seat, low, high) => {
		const [push] = on({ rises: measured('with-arms') }, [seatAt(seat), barAt(850)]);
		expect(push?.about).toEqual(['bar-back', 'seat']);
		expect(push?.rows).toEqual(['ADA-GB-Z-LOW', 'EV-RAIL-HEIGHT']);
		const [printed, wanted] = push?.heights ?? [];
		expect((printed?.from ?? 0) - seat + RADIUS).toBeCloseTo(low, 2);
		expect((printed?.to ?? 0) - seat + RADIUS).toBeCloseTo(high, 2);
		expect((wanted?.from ?? 0) - seat).toBeCloseTo(200, 2);
		expect((wanted?.to ?? 0) - seat).toBeCloseTo(280, 2);
		const [from, to] = [low - RADIUS, high - RADIUS].map((n) => String(Math.round(n)));
		expect(push?.says).toContain(
			`At the height of ADA Standards 2010, 609.4 a horizontal bar is ${from ?? ''} to ${to ?? ''} mm above a seat at this height: a bar to pull and steady on, not one to push up from. Pushing up wants a surface 200 to 280 mm above the seat (Study of rails on both sides, 11 people of 25-58 years, 2019).`
		);
		expect(push?.says).toContain(`Here the bar is ${String(Math.round((850 - seat) * 10) / 10)} mm above the seat.`);
	});

	const wide = { width: measured(1500), depth: measured(1500) };
	const SEAT = seatAt(450);
	test('what the plan does about it: a rail, two, one without a wall, none and why', () => {
		const rises = (how: string) => ({ rises: measured(how) });
		const last = (client: object, marks: readonly Mark[], enclosure: object = {}) =>
			on(client, [SEAT, barAt(850), ...marks], enclosure)[0]
				?.says.split('. ')
				.at(-1);
		const rail = railAt(700);
		const other: Mark = { ...rail, accessory: { ...rail.accessory, id: 'rail-other' } };
		expect(last(rises('with-arms'), [rail], wide)).toBe('This plan has a rail to push up from.');
		expect(last(rises('with-arms'), [rail, other], wide)).toBe('This plan has rails on both sides to push up from.');
		expect(last(rises('with-arms'), [])).toBe(
			'This plan has no rail to push up from: the wall of the seat leaves no room for one.'
		);
		expect(last(rises('alone'), [], wide)).toBe(
			'This plan has no rail to push up from: that the client rises with her arms is not recorded.'
		);
		const c = caseWith({ client: rises('with-arms'), enclosure: FLAT });
		expect(said(c, [SEAT, barAt(850)], [rail])[0]?.says).toContain('A rail to push up from is wanted and has no wall.');
	});

	test('a seat so high that the printed height is one to push from: nothing is said', () => {
		expect(on({}, [seatAt(600), barAt(850)]).filter(({ rows }) => rows.includes('EV-RAIL-HEIGHT'))).toEqual([]);
	});
});

describe('[needs R24] two sources that no height of one mark meets are told with both', () => {
	test('a chair higher than the printed seat', () => {
		const chair = { chair: { seatHeight: measured(530) }, transfer: measured('sitting-pivot') };
		const [one] = on({ ...chair, body: { popliteal: measured(480) } }, [seatAt(482.6)]);
		expect(one).toMatchObject({ about: ['seat'], rows: ['ADA-ST-Z', 'EV-SEAT-CHAIR'] });
		expect(one?.heights[0].from).toBeCloseTo(431.8, 2);
		expect(one?.heights[1]).toEqual({ from: 505, to: 555 });
		expect(one?.says).toBe(
			'ADA Standards 2010, 610.3: The top of the seat is 17 to 19 in above the bathroom floor. Study of independent transfers for the US Access Board 2010, level transfer: The seat is level with the wheeled chair, within 25 mm. No height of the seat is both: 22.4 mm lie between them. Here it keeps the first and is 22.4 mm off the second.'
		);
	});

	test('a chair 505 high is level with a seat of 19 in: nothing to tell', () => {
		const chair = { chair: { seatHeight: measured(505) }, transfer: measured('sitting-pivot') };
		expect(on({ ...chair, body: { popliteal: measured(480) } }, [seatAt(482.6)])).toEqual([]);
	});

	test('110 % of a long lower leg against the printed seat', () => {
		const client = { ...ON_FOOT, rises: measured('with-arms'), body: { popliteal: measured(460) } };
		const [one] = on(client, [seatAt(482.6)]);
		expect(one?.rows).toEqual(['ADA-ST-Z', 'EV-SEAT-RISE']);
		// 506 less 482.6.
		expect(one?.says).toContain('23.4 mm lie between them');
		expect(one?.heights[1]).toEqual({ from: expect.closeTo(506, 2) as number, to: Infinity });
	});

	test('the chair against the feet, with no document in it', () => {
		const client = {
			chair: { seatHeight: measured(530) },
			transfer: measured('sitting-pivot'),
			body: { popliteal: measured(400) }
		};
		const found = on(client, [seatAt(500)]).map(({ rows }) => rows);
		// 120 % of 400 is 480; the chair wants 505 at least.
		expect(found).toContainEqual(['EV-SEAT-CHAIR', 'EV-SEAT-FEET-HOLD']);
	});

	test('a printed control height above the working zone of a low seat, with the seat named', () => {
		const found = on({}, [seatAt(430), controlAt(1000)]).find(({ about }) => about[0] === 'control');
		expect(found).toMatchObject({ about: ['control', 'seat'], rows: ['ADA-CT-Z-T-LOW', 'EV-ZONE-HEIGHT'] });
		expect(found?.says).toContain('No height of the control is both, with the seat where it is');
		expect(on({}, [seatAt(560), controlAt(1000)]).filter(({ about }) => about[0] === 'control')).toEqual([]);
	});

	test('an estimate disagrees only where all of its band does', () => {
		const rows = (popliteal: object) =>
			on({ ...ON_FOOT, rises: measured('with-arms'), body: popliteal }, [seatAt(482.6)]).flatMap((one) => one.rows);
		expect(rows({ stature: measured(1740) })).not.toContain('EV-SEAT-RISE');
		expect(rows({ popliteal: measured(445) })).toContain('EV-SEAT-RISE');
	});

	test('nothing recorded of the person, and nothing placed: nothing is said and nothing breaks', () => {
		expect(on({ body: {}, arms: { left: {}, right: {} }, chair: {} }, [])).toEqual([]);
		expect(on({ body: {}, arms: { left: {}, right: {} }, chair: {} }, [seatAt(450)])).toEqual([]);
	});
});

test('[needs R22] the mirrored room says the same of what disagrees', () => {
	const c = caseWith({ client: { chair: { seatHeight: measured(560) } }, enclosure: { fall: measured(0.02) } });
	const marks = [seatAt(440), barAt(850), controlAt(1000)];
	const { footprint } = roomOf(c.enclosure);
	const other = marks.map((m) => mirroredMark(m, m.accessory, footprint));
	const [here, there] = [said(c, marks), said(mirroredCase(c), other)];
	expect(here.length).toBeGreaterThanOrEqual(3);
	expect(there.map(({ says }) => says)).toEqual(here.map(({ says }) => says));
});
