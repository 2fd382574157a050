import { describe, expect, test } from 'vitest';
import { roomOf } from '#core/enclosure/room.ts';
import { enclosureWith } from './some-room.ts';

const seen = (value: unknown) => ({ value, how: 'measured' });
const falling = (fall: number, fallsTo: string, more = {}) =>
	roomOf(enclosureWith({ fall: seen(fall), fallsTo, ...more }));

describe('the room', () => {
	test('[enclosure R1] every level is from the datum line', () => {
		const room = roomOf(enclosureWith({ fall: seen(0) }));
		expect(room.bathroomFloor).toBe(-1000);
		expect(room.top('left')).toBe(1100);
		expect(room.walls.left.bottom).toBe(-1000);
		expect(room.unknowns).toEqual([]);
	});

	test('[enclosure R1] without a datum line levels are from the bathroom floor, and the question is kept', () => {
		const room = roomOf(enclosureWith({ datum: undefined, fall: seen(0) }));
		expect(Object.is(room.bathroomFloor, 0)).toBe(true);
		expect(room.unknowns).toEqual(['How high is the datum line above the bathroom floor?']);
	});

	test.each([
		['right', 'left'],
		['left', 'right']
	] as const)('[enclosure R2] with the seat on the %s wall the control wall is the %s one', (seat, control) => {
		const room = roomOf(enclosureWith({ seatWall: seat }));
		expect([room.seatWall, room.controlWall]).toEqual([seat, control]);
	});

	test('[enclosure R2] walls have the length of their side', () => {
		const { walls, entryLine } = roomOf(enclosureWith());
		expect([walls.back.length, walls.left.length, walls.right.length, entryLine]).toEqual([914, 900, 900, 900]);
	});
});

describe('the floor', () => {
	test('[enclosure R3] a raised tray lifts the shower floor, and heights over it', () => {
		const room = falling(0.01, 'back', { threshold: seen(120), floorRise: seen(110) });
		expect(room.floorAt(400, 900)).toBe(-890);
		expect(room.floorAt(400, 0)).toBe(-899);
		expect(room.unknowns).toEqual([]);
	});

	test.each([
		[13, []],
		[13.1, ['How high is the shower floor above the bathroom floor?']]
	])('[enclosure R3] behind a threshold of %s the floor asks %j', (threshold, asks) => {
		expect(falling(0, 'back', { threshold: seen(threshold) }).unknowns).toEqual(asks);
	});

	// Source: IPC 417.5.2, 1/4 in a foot is 1:48; 900 / 48 = 18.75 and 900 / 40 = 22.5.
	test.each([
		[1 / 48, 18.75],
		[1 / 40, 22.5]
	])('[enclosure R3] a fall of %s over 900 mm drops %s mm to the back and starts level at the entry', (fall, drop) => {
		const room = falling(fall, 'back');
		expect(room.floorAt(300, 900)).toBe(-1000);
		expect(room.floorAt(300, 0)).toBeCloseTo(-1000 - drop, 9);
	});

	// Source: arithmetic; a mark 850 above the datum floor is 868.75 above a local floor 18.75 lower.
	test('[enclosure R3] the height of one mark over its own floor grows by the drop', () => {
		const room = falling(1 / 48, 'back', { datum: seen(0) });
		expect(850 - room.floorAt(0, 0)).toBeCloseTo(868.75, 9);
	});

	test('[enclosure R3] a floor that falls to the entry meets the bathroom floor there and rises to the back', () => {
		const room = falling(0.02, 'entry');
		expect(room.floorAt(500, 900)).toBe(-1000);
		expect(room.floorAt(500, 0)).toBeCloseTo(-982, 9);
		expect(room.walls.back.bottom).toBeCloseTo(-982, 9);
	});

	test.each([
		['seat', 'right', -1000, -1018.28],
		['control', 'right', -1018.28, -1000],
		['seat', 'left', -1018.28, -1000],
		['control', 'left', -1000, -1018.28]
	])('[enclosure R3] falling to the %s side with the seat %s: %s at the left, %s at the right', (to, seat, l, r) => {
		const room = falling(0.02, to, { seatWall: seat });
		expect(room.floorAt(0, 450)).toBeCloseTo(l, 9);
		expect(room.floorAt(914, 450)).toBeCloseTo(r, 9);
	});

	test('[enclosure R3] under a span both ends count, whichever way the wall is read', () => {
		const room = falling(0.02, 'back');
		// The left wall is read from the entry to the back, the right wall from the back to the entry.
		expect(room.floorUnder('left', 0, 450)).toEqual({ low: -1009, high: -1000 });
		expect(room.floorUnder('right', 0, 450)).toEqual({ low: -1018, high: -1009 });
		expect(room.floorUnder('back', 100, 800)).toEqual({ low: -1018, high: -1018 });
	});

	test('[enclosure R3] outside the footprint the nearest floor inside counts', () => {
		const room = falling(0.02, 'back');
		expect(room.floorAt(0, 2000)).toBe(-1000);
		expect(room.floorAt(0, -50)).toBe(room.floorAt(0, 0));
	});

	test.each([
		[{}, ['How much does the shower floor fall, and to which side?']],
		[{ fallsTo: 'back' }, ['How much does the shower floor fall, and to which side?']],
		[{ fall: seen(0.02) }, ['To which side does the shower floor fall?']],
		[{ fall: seen(0) }, []]
	])('[enclosure R3] with %j the floor is flat and the questions are %j', (change, questions) => {
		const room = roomOf(enclosureWith(change));
		expect([room.floorAt(0, 0), room.floorAt(914, 900)]).toEqual([-1000, -1000]);
		expect(room.unknowns).toEqual(questions);
	});
});
