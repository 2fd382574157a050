import { describe, expect, test } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase, mirroredMark } from '#core/enclosure/mirrored-case.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { seatLinesOf, type SeatLine } from '#core/needs/seat-lines.ts';
import { bind } from '#core/rules/bind.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import { onTape } from '#core/units/format.ts';
import { caseWith, mark, sceneOf } from '../rules/baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const FLAT = { fall: measured(0), datum: measured(0), threshold: measured(0) };
const ON_FOOT = { chair: {}, transfer: measured('walks') };

/** Who was measured so under the knee. Units: mm. */
const knee = (popliteal: number, more: object = {}) => ({ body: { popliteal: measured(popliteal) }, ...more });

function seatAt(high: number): Mark {
	return mark('seat', { purpose: 'sit', wall: 'left', x: 400, y: high, variant: variantOf('seat-450') });
}

/** The lines of a seat so high above the floor. Units: mm. */
function lines(c: Case, seat: Mark) {
	const rows = bind(packsFor(c.reference), [seat.accessory], c);
	const told = seatLinesOf({ scene: sceneOf(c), rows, marks: [seat] });
	if (!told) throw new RangeError('there is a seat');
	return told;
}

const told = (client: object, high: number) => lines(caseWith({ client, enclosure: FLAT }), seatAt(high));

function line(client: object, high: number, name: SeatLine['line']): SeatLine {
	const found = told(client, high).lines.find((one) => one.line === name);
	if (!found) throw new RangeError(`no line is called ${name}`);
	return found;
}

describe('[needs R19] the heights that pull apart, and who pays', () => {
	// Source: reference fixture T20, under the knee 380 and seat 480: 126.3 %, 100 over, the feet not flat.
	test('a seat 100 above the height under the knee: 126.3 %, the feet pay', () => {
		const { says, aboveFloor } = told(knee(380, ON_FOOT), 480);
		expect(aboveFloor).toBe(480);
		expect(says).toBe('The seat is 480 mm above the bathroom floor, 126.3 % of the height under the knee.');
		expect(line(knee(380, ON_FOOT), 480, 'feet-flat')).toMatchObject({
			at: { from: 380, to: 380 },
			aboveFloor: { from: 380, to: 380 },
			how: 'measured',
			pays: 'feet',
			says: 'The seat is 100 mm above feet flat: the feet pay, they do not rest whole on the floor.'
		});
	});

	// Source: reference fixture T18, chair 510 and seat 480: 30 lower, outside 25.
	test.each([
		[480, 'arms', 'The seat is 30 mm lower than the chair, beyond 25 mm: the arms pay, they lift on the way back.'],
		[485, 'nobody', 'The seat is level with the chair within 25 mm: nobody pays.'],
		[535, 'nobody', 'The seat is level with the chair within 25 mm: nobody pays.'],
		[536, 'arms', 'The seat is 26 mm higher than the chair, beyond 25 mm: the arms pay, they lift on the way in.']
	] as const)('a chair 510 high, a seat of %s: %s', (high, pays, says) => {
		const client = { chair: { seatHeight: measured(510) }, transfer: measured('sitting-pivot') };
		expect(line(client, high, 'chair-level')).toMatchObject({ at: { from: 510, to: 510 }, pays, says });
	});

	// 110 and 120 % of 400 are 440 and 480.
	test.each([
		[422, 'knees', 'The seat is 18 mm below easy rising: the knees pay.'],
		[440, 'nobody', 'The seat is where rising is easy: nobody pays.'],
		[480, 'nobody', 'The seat is where rising is easy: nobody pays.'],
		[485, 'feet', 'The seat is 5 mm above easy rising: the feet pay, they lose the floor.']
	] as const)('easy rising of 400 under the knee, a seat of %s: %s', (high, pays, says) => {
		expect(line(knee(400, ON_FOOT), high, 'easy-rising')).toMatchObject({ at: { from: 440, to: 440 }, pays, says });
	});

	test('a seat no higher than under the knee: the feet rest whole', () => {
		for (const high of [380, 400]) {
			const says = 'The feet rest whole on the floor: nobody pays.';
			expect(line(knee(400, ON_FOOT), high, 'feet-flat')).toMatchObject({ pays: 'nobody', says });
		}
	});

	test('heights are told from the datum line and above the bathroom floor', () => {
		const c = caseWith({ client: knee(400, ON_FOOT), enclosure: { ...FLAT, datum: measured(1000) } });
		const { at, aboveFloor, lines: all } = lines(c, seatAt(-550));
		expect([at, aboveFloor]).toEqual([-550, 450]);
		expect(all.find((one) => one.line === 'feet-flat')).toMatchObject({
			at: { from: -600, to: -600 },
			aboveFloor: { from: 400, to: 400 }
		});
	});
});

describe('[needs R20] the way of moving says which line leads', () => {
	const chair = { chair: { seatHeight: measured(510) } };
	test.each([
		['from a wheeled chair', { ...chair, transfer: measured('sitting-pivot') }, 'chair-level'],
		['on foot, rising with the arms', { ...ON_FOOT, rises: measured('with-arms') }, 'easy-rising'],
		['on foot, rising with help', { ...ON_FOOT, rises: measured('with-help') }, 'easy-rising'],
		[
			'on foot, rising with the arms, sitting held',
			{ ...ON_FOOT, rises: measured('with-arms'), sits: measured('held') },
			'feet-flat'
		],
		['on foot, rising alone', { ...ON_FOOT, rises: measured('alone') }, 'feet-flat'],
		['on foot, not rising', { ...ON_FOOT, rises: measured('cannot') }, 'feet-flat']
	])('%s', (_, client, leads) => {
		const all = told(knee(400, client), 450).lines;
		expect(all.filter((one) => one.leads).map((one) => one.line)).toEqual([leads]);
		expect(all[0]?.line).toBe(leads);
	});

	test('a hip that must not bend past level makes no line lead', () => {
		const client = knee(400, { ...chair, transfer: measured('sitting-pivot'), hipLimit: measured(true) });
		expect(
			told(client, 450)
				.lines.filter((one) => one.leads)
				.map((one) => one.line)
		).toEqual(['chair-level']);
	});
});

describe('[needs R21] what is estimated is a band, and what is missing is missing', () => {
	const tall = (stature: number) => ({
		...ON_FOOT,
		body: { stature: measured(stature) },
		arms: { left: {}, right: {} },
		mass: undefined
	});

	test('an estimate says from where to where, and who pays only where all of it agrees', () => {
		const feet = line(tall(1600), 600, 'feet-flat');
		expect(feet.how).toBe('estimated');
		// Source: reference fixture T08a, a woman of 1600: 379.8 +-14.0 under the knee.
		expect((feet.at.from + feet.at.to) / 2).toBeCloseTo(379.8, 0);
		expect((feet.at.to - feet.at.from) / 2).toBeCloseTo(1.645 * 14, 0);
		expect(feet.pays).toBe('feet');
		expect(feet.says).toMatch(/^The seat is 197 to 243 mm above feet flat, as estimated: the feet pay, /);
	});

	test('where the band decides, who pays is not known, and what would tell is asked', () => {
		const { pays, says } = line(tall(1600), 380, 'feet-flat');
		expect(pays).toBe('not known');
		expect(says).toBe(
			'By the estimate feet flat is 357 to 403 mm above the bathroom floor, the seat 380 mm: who pays is not known. How high is it from the floor to under the knee, barefoot?'
		);
	});

	test('of an estimate no share of the lower leg is told', () => {
		expect(told(tall(1600), 600).says).toBe('The seat is 600 mm above the bathroom floor.');
	});

	test.each([
		['nothing recorded', { body: {}, arms: { left: {}, right: {} }, mass: undefined, age: undefined }],
		[
			'nobody the survey speaks of',
			{ body: { stature: measured(1100) }, age: measured(6), arms: { left: {}, right: {} } }
		]
	])('%s: no lines, and the question', (_, client) => {
		const { lines: all, asks } = told({ ...ON_FOOT, ...client }, 450);
		expect(all).toEqual([]);
		expect(asks).toEqual(['How high is it from the floor to under the knee, barefoot?']);
	});

	test('a chair nobody measured is asked for; where there is none, it is not', () => {
		const asks = 'How high is the seat of the wheeled chair?';
		expect(told(knee(400, { chair: {}, transfer: measured('sitting-pivot') }), 450).asks).toEqual([asks]);
		expect(told(knee(400, ON_FOOT), 450).asks).toEqual([]);
	});

	test('without a seat there are no heights to tell', () => {
		expect(seatLinesOf({ scene: sceneOf(caseWith()), rows: [], marks: [] })).toBeUndefined();
	});
});

test('[needs R22] the mirrored room says the same of the seat', () => {
	const c = caseWith({ client: knee(380), enclosure: { fall: measured(0.02) } });
	const seat = seatAt(470);
	const other = mirroredCase(c);
	const there = lines(other, mirroredMark(seat, seat.accessory, roomOf(c.enclosure).footprint));
	expect(there).toEqual(lines(c, seat));
	expect(there.lines).toHaveLength(3);
});

test('[needs R19] on a tape in inches the same is told in inches', () => {
	const { says } = line(knee(381, ON_FOOT), 482.6, 'feet-flat');
	expect(onTape(says, { unit: 'in' })).toBe(
		'The seat is 4 in above feet flat: the feet pay, they do not rest whole on the floor.'
	);
});
