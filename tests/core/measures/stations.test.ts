import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { variantOf, type Mark, type Purpose } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { MeasureId } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { caseWith, mark, sceneOf } from '../rules/baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

const WIDE = { type: 'roll-in', width: measured(1600), depth: measured(1200) } as const;
const CHAIR = { washes: measured('in-chair'), chair: { seatHeight: measured(500) } } as const;

function read(id: MeasureId, s: Scene, a: Mark, b?: Mark): number {
	const measure: Measure = MEASURES[id];
	const reading: Reading =
		measure.about === 'mark' ? measure.of(s, a) : measure.about === 'pair' && b ? measure.of(s, a, b) : { missing: '' };
	return typeof reading === 'number' ? reading : NaN;
}

const control = (wall: WallId, x: number, y: number) =>
	mark('control', { purpose: 'run-water', wall, x, y, variant: variantOf('control-lever') });

const bar = (id: string, part: string, at: { wall: WallId; x: number; y: number; purpose: Purpose }) =>
	mark(id, { ...at, variant: variantOf(part) });

/** By hand: the arm of the baseline woman pushes 611 + 0.2 x 181; her shoulder stands 1332 high, 182.5 from the middle. */
const PUSH = 611 + 0.2 * 181;
const SHOULDER = 1332;
const HALF = 365 / 2;

describe('stations', () => {
	// Source: definitions of the house, reach holds over the whole play of a station; distances worked out here by hand.
	test('[measures R12] washing standing, the farthest point of the play counts', () => {
		const s = sceneOf(caseWith({ client: { washes: measured('standing') }, enclosure: { fall: measured(0) } }));
		const { width, depth } = s.room.footprint;
		const target = [width / 2, 120, 900] as const;
		const nearer = Math.max(
			...['left', 'right'].map((side) => {
				const least = Math.max(
					...[-50, 0, 50].flatMap((dx) =>
						[-50, 0, 50].map((dy) => {
							// She faces the middle of the back wall, which the target is below.
							const [x, y] = [width / 2 + dx, depth / 2 + dy];
							const far = Math.hypot(width / 2 - x, y);
							const [fx, fy] = [(width / 2 - x) / far, -y / far];
							const aside = side === 'left' ? HALF : -HALF;
							const shoulder = [x + fy * aside, y - fx * aside];
							return Math.hypot((shoulder[0] ?? 0) - target[0], (shoulder[1] ?? 0) - target[1], SHOULDER - target[2]);
						})
					)
				);
				return PUSH - least;
			})
		);
		expect(read('reach-standing', s, control('back', width / 2, 900))).toBeCloseTo(nearer, 3);
	});

	test('[measures R12] a parked chair may stand anywhere in its play: no place of it reaches less', () => {
		const scene = sceneOf(caseWith({ client: CHAIR, enclosure: WIDE }));
		const whole = read('reach-from-chair-upright', scene, control('back', 700, 1000));
		// The same chair, but 100 farther from the corner, is within the play of one that is parked less exactly.
		const shifted = sceneOf(caseWith({ client: CHAIR, enclosure: { ...WIDE, depth: measured(1400) } }));
		expect(read('reach-from-chair-upright', shifted, control('back', 700, 1000))).toBeLessThan(whole);
		expect(whole).toBeLessThan(PUSH);
	});

	test('[measures R12] a shower chair of unknown height is asked about', () => {
		const scene = sceneOf(caseWith({ client: { ...CHAIR, chair: {} }, enclosure: WIDE }));
		expect(MEASURES['reach-from-chair'].of(scene, control('back', 700, 1000))).toMatchObject({
			missing: expect.stringContaining('chair') as string
		});
	});

	const anyBar = (id: string, purpose: Purpose) =>
		fc
			.record({
				wall: fc.constantFrom('back', 'left', 'right' as WallId),
				x: fc.integer({ min: 0, max: 900 }),
				y: fc.integer({ min: 300, max: 1400 }),
				part: fc.constantFrom('bar-450', 'post-bar-600')
			})
			.map(({ part, ...at }) => bar(id, part, { ...at, purpose }));

	test.each(['held-in-turn', 'worked-while-held'] as const)('[measures R13] %s is the same either way round', (id) => {
		const s = sceneOf(caseWith());
		fc.assert(
			fc.property(anyBar('a', 'step-in'), anyBar('b', 'rise'), (a, b) => {
				const both = read(id, s, a, b);
				expect(read(id, s, b, a)).toBeCloseTo(both, 6);
			}),
			{ numRuns: 200 }
		);
	});

	test.each(['held-in-turn', 'worked-while-held'] as const)(
		'[measures R1] what %s is at most while the marks move about is never passed',
		(id) => {
			const s = sceneOf(caseWith());
			const measure = MEASURES[id] as Measure;
			const step = fc.integer({ min: -60, max: 60 });
			fc.assert(
				fc.property(
					anyBar('a', 'step-in'),
					anyBar('b', 'rise'),
					fc.tuple(step, step, step, step),
					(a, b, [ax, ay, bx, by]) => {
						const over = measure.about === 'pair' ? measure.over : undefined;
						if (!over) throw new Error('a pair with a bound');
						const spread = (m: Mark, x: number, y: number) => {
							const across = m.place.wall === 'back' ? ([x, 0] as const) : ([0, x] as const);
							return [Math.abs(across[0]), Math.abs(across[1]), Math.abs(y)] as const;
						};
						const moved = (m: Mark, x: number, y: number): Mark => ({
							...m,
							place: { ...m.place, x: (m.place.x + x) as Mark['place']['x'], y: (m.place.y + y) as Mark['place']['y'] }
						});
						const most = over(s, a, b, [spread(a, ax, ay), spread(b, bx, by)]);
						expect(read(id, s, moved(a, ax, ay), moved(b, bx, by))).toBeLessThanOrEqual(Number(most) + 1e-6);
					}
				),
				{ numRuns: 300 }
			);
		}
	);

	test('[measures R13] one hand for both may go from the one to the other, but not work while it holds', () => {
		const one = { weakerSide: measured('left'), weakerHolds: measured(false) };
		const [a, b] = [
			bar('a', 'post-bar-600', { wall: 'right', x: 750, y: 800, purpose: 'step-in' }),
			bar('b', 'bar-450', { wall: 'right', x: 200, y: 1000, purpose: 'steady' })
		];
		const s = sceneOf(caseWith({ client: one }));
		expect(read('held-in-turn', s, a, b)).toBeGreaterThan(0);
		expect(read('worked-while-held', s, control('right', 550, 1150), b)).toBeLessThan(0);
		expect(read('worked-while-held', sceneOf(caseWith()), control('right', 550, 1150), b)).toBeGreaterThan(0);
	});

	test('[measures R14] on a board one sits in the middle of the bath, back toward the seat wall', () => {
		const rim = { type: 'over-bath', threshold: measured(520), width: measured(1600), depth: measured(700) } as const;
		const s = sceneOf(caseWith({ enclosure: { ...rim, seatWall: 'left' } }));
		const board = mark('seat', { purpose: 'sit', wall: 'back', x: 500, y: 520, variant: variantOf('bath-board') });
		expect(read('seat-off-rims', s, board)).toBe(0);
		// The front edge lies half a board ahead of its middle, and feet hang from there: bar 700 ahead is 25 past it.
		const beside = bar('b', 'bar-450', { wall: 'back', x: 700, y: 700, purpose: 'rise' });
		expect(read('near-end-past-seat', s, beside, board)).toBe(25);
	});

	test('[measures R14] who sits down on a board does so from the bathroom floor, the lower of both', () => {
		const rim = { type: 'over-bath', threshold: measured(520), width: measured(1600), depth: measured(700) } as const;
		const raised = caseWith({ enclosure: { ...rim, seatWall: 'left', floorRise: measured(100), fall: measured(0) } });
		const board = mark('seat', { purpose: 'sit', wall: 'back', x: 500, y: 520, variant: variantOf('bath-board') });
		const folding = mark('seat', { purpose: 'sit', wall: 'left', x: 350, y: 520, variant: variantOf('seat-450') });
		// Under the knee 388: 520 above the bathroom floor, 420 above that of the bath.
		expect(read('seat-above-knee-fold', sceneOf(raised), board)).toBeCloseTo(132, 0);
		expect(read('seat-above-knee-fold', sceneOf(raised), folding)).toBeCloseTo(32, 0);
	});

	test('[measures R14] a rail is held out to its end', () => {
		const client = { sittingForward: measured(0) };
		const s = sceneOf(caseWith({ client, enclosure: { ...WIDE, depth: measured(1400) } }));
		const seat = mark('seat', { purpose: 'sit', wall: 'left', x: 700, y: 480, variant: variantOf('seat-450') });
		const rail = (part: string) =>
			mark('rail-one', { purpose: 'push-up', wall: 'left', x: 350, y: 720, variant: variantOf(part) });
		expect(read('reach-leaning', s, rail('rail-600'), seat)).toBeGreaterThan(0);
		expect(read('off-seat-centre-line', s, rail('rail-600'), seat)).toBeCloseTo(350, 3);
	});
});
