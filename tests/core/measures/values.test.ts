import { describe, expect, test } from 'vitest';
import { variantOf, type Mark, type Purpose } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { MEASURES, type MeasureId } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { inches } from '#core/units/length.ts';
import { caseWith, mark, marksOf, sceneOf } from '../rules/baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

function reading(id: MeasureId, s: Scene, ...marks: readonly (Mark | undefined)[]): Reading {
	const measure: Measure = MEASURES[id];
	const [a, b] = marks;
	if (measure.about === 'case') return measure.of(s, []);
	if (!a) throw new Error('a mark is wanted');
	if (measure.about === 'mark') return measure.of(s, a);
	if (!b) throw new Error('two marks are wanted');
	return measure.of(s, a, b);
}

const part = (id: string, purpose: Purpose, at: { wall: WallId; variant: string; x: number; y: number }): Mark =>
	mark(id, { purpose, wall: at.wall, x: at.x, y: at.y, variant: variantOf(at.variant) });

const find = (marks: readonly Mark[], id: string): Mark | undefined => marks.find((m) => m.accessory.id === id);

describe('places in plan', () => {
	const scene = sceneOf(caseWith());
	const marks = marksOf();
	const [seat, control, back] = [find(marks, 'seat'), find(marks, 'control'), find(marks, 'bar-back')];

	// Figures of baseline T1, in inches, worked out by hand from where its parts are said to be.
	test.each([
		['seat-top-above-bathroom-floor', 18],
		['seat-side-to-wall-beside', 1],
		['seat-end-to-entry', 36 - 33.5],
		['seat-rear', 2],
		['seat-front', 15.5],
		['seat-off-centre', 18 - 17.25]
	] as const)('[measures R4] %s of the baseline seat is %s in', (id, value) => {
		expect(reading(id, scene, seat)).toBeCloseTo(value * 25.4, 6);
	});

	test.each([
		['near-edge-from-centre-line', 24 - 17.25],
		['far-edge-from-centre-line', 24 - 17.25],
		['above-seat', 43 - 18]
	] as const)('[measures R4] %s of the baseline control is %s in', (id, value) => {
		expect(reading(id, scene, control, seat)).toBeCloseTo(value * 25.4, 6);
	});

	test.each([
		['bar-end-from-control-wall', 18],
		['bar-top-from-low-floor', 34]
	] as const)('[measures R4] %s of the baseline back-wall bar is %s in', (id, value) => {
		expect(reading(id, scene, back)).toBeCloseTo(value * 25.4, 6);
	});

	test('[measures R4] the span of a back-wall bar is counted from the front edge of the seat', () => {
		expect(reading('near-end-past-seat', scene, back, seat)).toBeCloseTo((18 - 15.5) * 25.4, 6);
		expect(reading('far-end-past-seat', scene, back, seat)).toBeCloseTo((31 - 15.5) * 25.4, 6);
	});

	test('[measures R4] on a fall of 1:48 toward the back a bar has its lowest floor at the back wall', () => {
		const falling = sceneOf(caseWith({ enclosure: { fall: measured(1 / 48), fallsTo: 'back' } }));
		const bar = find(marks, 'bar-control');
		// From 5 to 34 in off the back wall of 36 in: the floor lies 31/48 and 2/48 in below the entry.
		expect(reading('bar-top-from-low-floor', falling, bar)).toBeCloseTo((34 + 31 / 48) * 25.4, 6);
		expect(reading('bar-top-from-high-floor', falling, bar)).toBeCloseTo((34 + 2 / 48) * 25.4, 6);
	});

	test('[measures R5] a part that sticks out of its wall or meets another is negative by how far', () => {
		const bar = (x: number) => part('a', 'rise', { wall: 'back', variant: 'bar-600', x, y: 900 });
		expect(reading('inside-wall', scene, bar(30))).toBe(-10);
		expect(
			reading(
				'outlines-apart',
				scene,
				bar(40),
				part('b', 'run-water', { wall: 'back', variant: 'control-lever', x: 300, y: 1015 })
			)
		).toBe(-10);
	});

	test('[measures R5] two bars near a corner meet there, and not where one stops short', () => {
		const back600 = (x: number) => part('a', 'rise', { wall: 'back', variant: 'bar-600', x, y: 900 });
		const side = part('b', 'steady', { wall: 'right', variant: 'bar-600', x: 60, y: 900 });
		const far = scene.room.footprint.width - 600;
		expect(reading('boxes-apart', scene, back600(far - 50), side)).toBe(-50);
		expect(reading('boxes-apart', scene, back600(far - 120), side)).toBe(10);
		// 38 gap and 32 tube of the crossing bar off the flange centre.
		expect(reading('corner-clearance', scene, back600(far - 120), side)).toBe(120 - 70);
	});
});

describe('side of transfer', () => {
	// Looking in from the entry, facing a right-hand wall, the back of the room is on one's left.
	test.each([
		['left', 'left', 1],
		['left', 'right', 0],
		['right', 'right', 1],
		['right', 'left', 0]
	] as const)('[measures R6] seat on the %s wall, moving in to her own %s: %s', (seatWall, movesIn, agrees) => {
		const c = caseWith({
			enclosure: { seatWall },
			client: { movesIn: measured(movesIn), movesOut: measured(movesIn) }
		});
		expect(reading('transfer-side-agrees', sceneOf(c))).toBe(agrees);
		expect(reading('transfer-side-out-agrees', sceneOf(c))).toBe(1 - agrees);
	});
});

describe('reach', () => {
	const room = (client: object, size = 914): Case =>
		caseWith({
			enclosure: { width: measured(size), depth: measured(size) },
			client: { sittingForward: measured(0), ...client }
		});
	const seat = part('seat', 'sit', { wall: 'left', variant: 'seat-820', x: 457, y: 455 });
	// Straight ahead of the left shoulder, half the shoulder breadth off the centre line.
	const control = part('control', 'run-water', { wall: 'right', variant: 'control-lever', x: 457 - 365 / 2, y: 1022 });

	// Source: trial computation in the definitions; survey percentiles of ANSUR II, acromion to grip.
	test.each([561, 611, 668])(
		'[measures R7] opposite the seat of a 914 compartment an arm of %s has no 50 to spare upright',
		(toGrip) => {
			const arms = { left: { toGrip: measured(toGrip) }, right: { toGrip: measured(toGrip) } };
			expect(reading('reach-upright', sceneOf(room({ arms })), control, seat)).toBeLessThan(50);
		}
	);

	test('[measures R7] a median woman needs about 66 mm of shoulder travel there: 8 degrees about the hip', () => {
		const leaning = (at: number) => sceneOf(room({ lean: measured({ kind: 'free', at }) }));
		expect(reading('reach-leaning', leaning(55), control, seat)).toBeLessThan(0);
		expect(reading('reach-leaning', leaning(80), control, seat)).toBeGreaterThanOrEqual(0);
	});

	test('[measures R7] the same is reached upright by one who sits 80 forward', () => {
		expect(reading('reach-upright', sceneOf(room({ sittingForward: measured(80) })), control, seat)).toBeGreaterThan(0);
	});

	test('[measures R8] a lean nobody asked about leaves it open, between none and every lean', () => {
		const open = reading('reach-leaning', sceneOf(room({ lean: undefined })), control, seat);
		const none = reading('reach-leaning', sceneOf(room({ lean: measured({ kind: 'none' }) })), control, seat);
		expect(open).toMatchObject({ sure: none });
		if (typeof open === 'number' || !('best' in open)) throw new Error('open');
		expect(open.best).toBeGreaterThan(50);
		expect(open.missing).toContain('lean');
	});

	test('[measures R8] how far forward nobody asked leaves it open, from upright at the back to 140 forward', () => {
		const [back, front] = [0, 140].map((at) =>
			reading('reach-upright', sceneOf(room({ sittingForward: measured(at) })), control, seat)
		);
		const none = { lean: measured({ kind: 'none' }) };
		const open = reading('reach-leaning', sceneOf(room({ ...none, sittingForward: undefined })), control, seat);
		expect(open).toMatchObject({ sure: back, best: front, missing: expect.stringContaining('back rest') as string });
	});

	test('[measures R8] an estimated arm leaves it open, a recorded one does not', () => {
		const estimated = reading('reach-upright', sceneOf(room({ arms: {} })), control, seat);
		expect(estimated).toMatchObject({ missing: expect.stringContaining('arm') as string });
		expect(typeof reading('reach-upright', sceneOf(room({})), control, seat)).toBe('number');
	});

	test('[measures R8] a body that may not be estimated is asked for', () => {
		const child = room({ age: measured(10), body: {}, arms: {} });
		expect(reading('reach-leaning', sceneOf(child), control, seat)).toMatchObject({
			missing: expect.any(String) as string
		});
		expect(reading('seat-above-knee-fold', sceneOf(child), seat)).toMatchObject({
			missing: expect.any(String) as string
		});
	});

	test('[measures R9] only the hands that may use it count, and the best of them', () => {
		const arms = { left: { toGrip: measured(700) }, right: { toGrip: measured(450) } };
		const by = (weakerSide: 'left' | 'right' | 'neither') =>
			reading('reach-upright', sceneOf(room({ arms, weakerSide: measured(weakerSide) })), control, seat);
		expect(by('right')).toBe(by('neither'));
		expect(Number(by('left'))).toBeLessThan(Number(by('right')));
	});

	test('[measures R9] easy reach is never more than stretched reach', () => {
		const scene = sceneOf(room({}));
		for (const y of [600, 800, 1000, 1200]) {
			const at = { ...control, place: { ...control.place, y: inches(y / 25.4) } };
			expect(Number(reading('reach-easy', scene, at, seat))).toBeLessThanOrEqual(
				Number(reading('reach-upright', scene, at, seat))
			);
		}
	});

	test('[measures R10] what stands near the entry is nearer from the dry side than what is at the back', () => {
		const alone = sceneOf(caseWith());
		const helped = sceneOf(caseWith({ others: { helper: { role: 'helper' } } }));
		const at = (x: number) => part('control', 'run-water', { wall: 'right', variant: 'control-lever', x, y: 1050 });
		expect(reading('helper-reach', alone, at(700))).toMatchObject({ missing: 'Who helps?' });
		for (const [id, scene] of [
			['helper-reach', helped],
			['reach-from-entry', alone]
		] as const) {
			expect(Number(reading(id, scene, at(800)))).toBeGreaterThan(0);
			expect(Number(reading(id, scene, at(200)))).toBeLessThan(0);
		}
	});
});

describe('fit of the body', () => {
	// Source: case T20 of the human test values: popliteal 380, seat 480: 126.3 %, 100 over, feet not flat.
	test('[measures R11] a seat of 480 over 380 under the knee is 100 over it, and over 120 %', () => {
		const body = { ...caseWith().people['client']?.body, popliteal: measured(380) };
		const scene = sceneOf(caseWith({ client: { body } }));
		const seat = part('seat', 'sit', { wall: 'left', variant: 'seat-820', x: 457, y: 480 });
		expect(reading('seat-above-knee-fold', scene, seat)).toBeCloseTo(100, 6);
		expect(reading('seat-above-easy-rise', scene, seat)).toBeCloseTo(480 - 418, 6);
		expect(reading('seat-above-high-rise', scene, seat)).toBeCloseTo(480 - 456, 6);
		expect(reading('seat-above-chair', scene, seat)).toBe(0);
	});

	test('[measures R11] the entry bar is measured from a tenth below the wrist to the shoulder of who stands outside', () => {
		const scene = sceneOf(caseWith());
		const bar = part('entry-bar', 'step-in', { wall: 'right', variant: 'post-bar-750', x: 850, y: 700 });
		expect(reading('foot-below-wrist', scene, bar)).toBeCloseTo(0.9 * 794 - 700, 6);
		expect(reading('head-above-shoulder', scene, bar)).toBeCloseTo(1450 - 1332, 6);
	});
});
