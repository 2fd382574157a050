import { describe, expect, test } from 'vitest';
import { variantOf, type Accessory, type Mark, type Purpose } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { MEASURES, type MeasureId } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { caseWith, mark, sceneOf } from '../rules/baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** A room of 1500 by 1000, level, the seat on the left wall; whatever a test gives. */
const roomWith = (enclosure: object = {}): Scene =>
	sceneOf(
		caseWith({
			case: { tape: { unit: 'mm', step: 5 }, reference: null },
			enclosure: { type: 'roll-in', width: measured(1500), depth: measured(1000), ...enclosure }
		})
	);

function reading(id: MeasureId, s: Scene, ...[a, b]: readonly Mark[]): Reading {
	const measure: Measure = MEASURES[id];
	if (measure.about === 'case') return measure.of(s, []);
	if (!a) throw new Error('a mark is wanted');
	if (measure.about === 'mark') return measure.of(s, a);
	if (!b) throw new Error('two marks are wanted');
	return measure.of(s, a, b);
}

const part = (id: string, purpose: Purpose, at: { wall: WallId; variant: string; x: number; y: number }): Mark =>
	mark(id, { purpose, wall: at.wall, x: at.x, y: at.y, variant: variantOf(at.variant) });

// Every figure is worked out by hand from the places and sizes given here: no source, plain arithmetic.
describe('lengths, ends and middles', () => {
	const scene = roomWith();
	const lBar = part('bar-back', 'rise', { wall: 'back', variant: 'l-bar-1000-750-left', x: 450, y: 800 });
	const otherLBar = part('bar-back', 'rise', { wall: 'back', variant: 'l-bar-1000-750-right', x: 450, y: 800 });
	// The left wall is read from the entry: its left end is the entry, its right end the back wall.
	const upright = part('entry-bar', 'step-in', { wall: 'left', variant: 'post-bar-1000', x: 60, y: 620 });
	const seat = part('seat', 'sit', { wall: 'left', variant: 'seat-450', x: 1000 - 300, y: 470 });
	const offWall = part('seat', 'sit', { wall: 'left', variant: 'seat-off-wall-450', x: 1000 - 500, y: 480 });
	const control = part('control', 'run-water', { wall: 'back', variant: 'control-lever', x: 500, y: 1000 });

	test.each([
		['bar-length', [lBar], 1000],
		['bar-length', [upright], 1000],
		['upright-length', [lBar], 750],
		['upright-from-seat-wall', [lBar], 450],
		['upright-from-seat-wall', [otherLBar], 1450],
		['bar-start-from-seat-wall', [lBar], 450],
		['bar-axis-from-high-floor', [lBar], 800],
		['foot-above-floor', [upright], 620],
		// The axis of a 32 mm bar, 800 high: its top is 816.
		['foot-above-bar', [{ ...upright, place: { ...upright.place, y: 900 } } as Mark, lBar], 84],
		['seat-width', [seat], 450],
		['seat-depth', [seat], 395 - 20],
		['seat-depth', [offWall], 650 - 250],
		['seat-front', [offWall], 650],
		['seat-centre-from-corner', [seat], 300],
		['seat-centre-from-corner', [offWall], 500],
		['middle-from-seat-wall', [control], 500],
		['middle-from-corner', [control], 500],
		['middle-from-high-floor', [control], 1000],
		// The lever stands 150 wide from 425 to 575 along the back wall, 120 off it; the seat ends 395 off the left wall.
		['apart-in-plan', [control, seat], 425 - 395],
		['on-corner-wall', [control], 1],
		['on-corner-wall', [seat], 0],
		['on-seat-wall', [seat], 1],
		['on-seat-wall', [control], 0]
	] as const)('[measures R17] %s', (id, marks, expected) => {
		expect(reading(id, scene, ...marks)).toBeCloseTo(expected, 6);
	});

	test('[measures R17] a straight bar has an upright of no length, and no place for it', () => {
		const bar = part('bar-back', 'rise', { wall: 'back', variant: 'bar-900', x: 200, y: 800 });
		expect(reading('upright-length', scene, bar)).toBe(0);
		expect(reading('upright-from-seat-wall', scene, bar)).toHaveProperty('missing');
	});

	test('[measures R17] in a room that falls 20 in 1000 toward the back, heights are told from both ends of the floor below', () => {
		const falling = roomWith({ fall: measured(0.02), fallsTo: 'seat' });
		const [high, low] = (['bar-axis-from-high-floor', 'bar-axis-from-low-floor'] as const).map((id) =>
			reading(id, falling, lBar)
		);
		// The bar runs 1000 mm along the fall.
		expect((low as number) - (high as number)).toBeCloseTo(20, 6);
	});

	test('[measures R17] no figure from a corner where the wall beside does not stand', () => {
		const open = roomWith({ walls: { back: {}, left: {}, right: { stands: false } } });
		const far = part('control', 'run-water', { wall: 'back', variant: 'control-lever', x: 1400, y: 1000 });
		expect(reading('middle-from-corner', open, far)).toBe(1400);
		expect(reading('middle-from-corner', roomWith(), far)).toBe(100);
	});
});

describe('sitting before a back rest', () => {
	// A back rest 250 off the wall moves who sits 250 ahead: what she reaches, reaches 250 farther. No source, plain geometry.
	test.each(['reach-upright', 'reach-easy', 'reach-leaning'] as const)('[measures R17] %s goes with her', (id) => {
		const scene = roomWith();
		const control = (x: number) => part('control', 'run-water', { wall: 'back', variant: 'control-lever', x, y: 900 });
		const seat = (variant: string) => part('seat', 'sit', { wall: 'left', variant, x: 500, y: 480 });
		const usual = reading(id, scene, control(500), seat('seat-450'));
		const ahead = reading(id, scene, control(750), seat('seat-off-wall-450'));
		expect(ahead).toEqual(usual);
		expect(reading(id, scene, control(500), seat('seat-off-wall-450'))).not.toEqual(usual);
	});

	test('[measures R17] her feet stand below its front edge', () => {
		const scene = roomWith({ fall: measured(0.02), fallsTo: 'seat' });
		const seat = (variant: string) => part('seat', 'sit', { wall: 'left', variant, x: 500, y: 480 });
		const [usual, ahead] = ['seat-450', 'seat-off-wall-450'].map((v) =>
			reading('seat-above-knee-fold', scene, seat(v))
		);
		// Farther up the fall by 650 less 395.
		expect((usual as number) - (ahead as number)).toBeCloseTo(0.02 * (650 - 395), 6);
	});
});

describe('facts of the room', () => {
	const wanted = (wall: WallId, variant: string): Accessory =>
		part('test', 'rise', { wall, variant, x: 0, y: 0 }).accessory;
	const of = (id: MeasureId, s: Scene, all: readonly Accessory[] = []) => {
		const measure: Measure = MEASURES[id];
		if (measure.about !== 'case') throw new Error('about the case');
		return measure.of(s, all);
	};

	test.each([
		['inside-least', 1000],
		['inside-most', 1500],
		['turning-circle', 1500],
		['turning-over-shower', 400],
		['beside-seat-length', 1300],
		['beside-seat-width', 800],
		['room-along', 2000],
		['room-ahead', 2200],
		['clear-floor-past-width', 1600 - 1500]
	] as const)('[measures R17] %s', (id, expected) => {
		const facts = {
			turning: measured(1500),
			turningOver: measured(400),
			besideLength: measured(1300),
			besideWidth: measured(800),
			roomAlong: measured(2000),
			roomAhead: measured(2200),
			clearLength: measured(1600)
		};
		expect(of(id, roomWith(facts))).toBe(expected);
	});

	test('[measures R17] what nobody recorded is a question, never a no', () => {
		const bare = roomWith({ clearLength: undefined, turning: undefined });
		const asked = [
			'turning-circle',
			'beside-seat-width',
			'room-along',
			'clear-floor-past-width',
			'drain-present'
		] as const;
		for (const id of asked) expect(of(id, bare)).toHaveProperty('missing');
	});

	test('[measures R17] what is on a wall for certain', () => {
		const scene = roomWith();
		const rail = wanted('left', 'rail-700');
		expect(of('rail-on-seat-wall', scene, [rail])).toBe(1);
		expect(of('rail-on-corner-wall', scene, [rail])).toBe(0);
		expect(of('rail-on-corner-wall', scene, [wanted('back', 'rail-700')])).toBe(1);
		expect(of('l-bar-on-back-wall', scene, [wanted('back', 'l-bar-750-left')])).toBe(1);
		expect(of('l-bar-on-back-wall', scene, [wanted('back', 'bar-900')])).toBe(0);
		expect(of('support-present', scene)).toBe(0);
		expect(of('support-present', scene, [rail])).toBe(1);
	});
});
