import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { VARIANTS, variantOf, type Kind, type Mark, type Variant } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { MEASURES, type MeasureId } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { mirroredCase, mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import { mm } from '#core/units/length.ts';
import { caseWith, mark, sceneOf } from '../rules/baseline.ts';

const IDS = Object.keys(MEASURES) as MeasureId[];
const ABOUT_MARKS = IDS.filter((id) => MEASURES[id].about !== 'case');

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** Rooms and bodies of many shapes, some with facts nobody recorded. */
const aCase = fc
	.record({
		seatWall: fc.constantFrom('left', 'right', 'front'),
		side: fc.constantFrom('left', 'right'),
		width: fc.integer({ min: 800, max: 1400 }),
		depth: fc.integer({ min: 800, max: 1400 }),
		fall: fc.double({ min: 0, max: 0.1, noNaN: true }),
		fallsTo: fc.constantFrom('back', 'entry', 'seat', 'control'),
		lean: fc.constantFrom(undefined, { kind: 'none' }, { kind: 'holding', at: 150 }),
		sittingForward: fc.constantFrom(undefined, 0, 120),
		arm: fc.constantFrom(undefined, 560, 640),
		flexion: fc.constantFrom(undefined, 70, 120),
		walls: fc.constantFrom({ surveyed: false }, { surveyed: true }),
		helper: fc.boolean(),
		overlooks: fc.constantFrom('left', 'right'),
		hurtsFrom: fc.constantFrom(undefined, 40),
		hinge: fc.constantFrom(undefined, 'left', 'right'),
		tiles: fc.constantFrom(undefined, { across: 300, up: 200, joint: 3, x: 11, y: -40, how: 'measured' }),
		drain: fc.record({ x: fc.integer({ min: 0, max: 800 }), y: fc.integer({ min: 0, max: 800 }) })
	})
	.map(({ seatWall, side, width, depth, fall, fallsTo, walls, hinge, drain, tiles, ...p }) => {
		const studs = { a: { x: width / 3, width: 38, how: 'measured' } };
		const keepOuts = { pipe: { kind: 'pipe', x0: 200, x1: 230, y0: 0, y1: 2000, how: 'measured' } };
		const backing = { board: { kind: 'sheet', x0: 100, x1: 600, y0: 200, y1: 1300, thickness: 25, how: 'told' } };
		const facing = { kind: 'tile', thickness: 20, tiles };
		const wall = { ...walls, studs, keepOuts, backing, facing };
		const arm = {
			...(p.arm !== undefined && { toGrip: measured(p.arm) }),
			...(p.flexion !== undefined && { flexion: measured(p.flexion) }),
			...(p.hurtsFrom !== undefined && { hurtsFrom: measured(p.hurtsFrom) }),
			closesRound: measured(35)
		};
		return caseWith({
			enclosure: {
				seatWall,
				width: measured(width),
				depth: measured(depth),
				fall: measured(fall),
				closing: { kind: 'door-in', hinge, how: 'measured' },
				drain: { ...drain, wide: 120, deep: 120, how: 'measured' },
				fallsTo,
				...(seatWall === 'front' && { type: 'alternate-roll-in', frontWall: { side, length: measured(600) } }),
				walls: { back: wall, left: wall, right: wall, front: { ...wall, stands: seatWall === 'front' } }
			},
			client: {
				arms: { left: arm, right: {} },
				overlooks: measured(p.overlooks),
				body: { elbowAboveSeat: measured(220) },
				lean: p.lean && measured(p.lean),
				sittingForward: p.sittingForward === undefined ? undefined : measured(p.sittingForward)
			}
		});
	});

const PURPOSE = {
	seat: 'sit',
	control: 'run-water',
	'handset-rest': 'rest-handset',
	'horizontal-bar': 'rise',
	'vertical-bar': 'step-in',
	outlet: 'feed-hose',
	'fold-down-rail': 'push-up',
	'call-cord': 'call'
} as const;

const aPart = (kinds: readonly Kind[]): fc.Arbitrary<Variant> =>
	fc.constantFrom(...VARIANTS.filter((v) => kinds.includes(v.kind)));

/** A part beside the seat belongs on its wall, an upright one at the entry, all else on the walls in front of the seat. */
function wallsFor({ room: { seatWall, controlWall } }: Scene, kind: Kind): WallId[] {
	if (kind === 'seat' || kind === 'fold-down-rail') return [seatWall];
	if (kind === 'vertical-bar') return seatWall === 'front' ? ['left', 'right'] : [controlWall];
	return seatWall === 'front' ? ['back', 'left', 'right'] : ['back', controlWall];
}

const aMark = (s: Scene, id: string, kinds: readonly Kind[]): fc.Arbitrary<Mark> =>
	aPart(kinds).chain((variant) =>
		fc
			.record({
				wall: fc.constantFrom(...wallsFor(s, variant.kind)),
				x: fc.integer({ min: 0, max: 1300 }),
				y: fc.integer({ min: 0, max: 1900 }),
				hands: fc.constantFrom(['left'] as const, ['left', 'right'] as const)
			})
			.map(({ wall, x, y, hands }) => mark(id, { purpose: PURPOSE[variant.kind], wall, x, y, variant, hands }))
	);

const BARS: readonly Kind[] = ['horizontal-bar', 'vertical-bar'];
const ALL: readonly Kind[] = ['seat', 'control', 'handset-rest', ...BARS];
const HAND: readonly Kind[] = ['control', 'handset-rest'];
const WORKED: readonly Kind[] = ['control', 'handset-rest', ...BARS];

/** Which kinds a measure speaks of: its subject, and its other. */
function kindsFor(id: MeasureId): readonly [readonly Kind[], readonly Kind[]] {
	if (id.startsWith('seat-') || id.startsWith('hips-')) return [['seat'], ALL];
	if (id.includes('-past-seat') || id === 'clear-of-seat') return [['horizontal-bar'], ['seat']];
	if (id === 'underside-above-bar') return [HAND, ['horizontal-bar']];
	if (id.endsWith('edge-from-seat-wall') || id === 'edge-off-centre-line') return [HAND, ['seat']];
	if (id === 'other-rail-beyond') return [['fold-down-rail'], ['fold-down-rail']];
	if (id === 'off-seat-front' || id.startsWith('over-seat-')) return [['call-cord'], ['seat']];
	if (id === 'above-elbow' || id === 'holder-above-sitter') return [['fold-down-rail'], ['seat']];
	if (id === 'off-seat-centre-line') return [['fold-down-rail'], ['seat']];
	if (id === 'hose-to-spare') return [['outlet'], ['handset-rest']];
	if (id === 'reach-easy' || id === 'centres-apart' || id === 'height-difference')
		return [HAND, id === 'reach-easy' ? ['seat'] : HAND];
	if (id === 'toward-overlooked-side') return [WORKED, ['seat']];
	if (id.startsWith('reach') || id === 'above-seat' || id.endsWith('-centre-line')) return [WORKED, ['seat']];
	if (id === 'corner-clearance' || id === 'bar-height-difference') return [['horizontal-bar'], ['horizontal-bar']];
	if (id === 'clear-of-door') return [ALL, ALL];
	if (id === 'foot-above-bar') return [['vertical-bar'], ['horizontal-bar']];
	if (id === 'apart-in-plan') return [HAND, ['seat']];
	if (id.startsWith('upright-')) return [['horizontal-bar'], ALL];
	if (id.startsWith('bar-') || id.startsWith('clear-')) return [['horizontal-bar'], BARS];
	if (id.startsWith('foot-') || id.startsWith('head-') || id === 'from-entry-line') return [['vertical-bar'], ALL];
	return [ALL, ALL];
}

/** Pairs a measure speaks of: on one wall, on two, or anywhere. */
function wallsSuit(id: MeasureId, a: Mark, b: Mark): boolean {
	const same = a.place.wall === b.place.wall;
	if (id === 'clear-of-bar' || id === 'clear-above-bar' || id === 'outlines-apart') return same;
	return id === 'corner-clearance' || id === 'boxes-apart' ? !same : true;
}

/** A scene and two marks a measure speaks of. */
const drawnFor = (id: MeasureId): fc.Arbitrary<readonly [Scene, Mark, Mark]> =>
	aCase.map(sceneOf).chain((s) => {
		const [first, second] = kindsFor(id);
		return fc
			.tuple(fc.constant(s), aMark(s, 'a', first), aMark(s, 'b', second))
			.filter(([, a, b]) => wallsSuit(id, a, b));
	});

const ends = (r: Reading): readonly [number, number] | string => {
	if (typeof r === 'number') return [r, r];
	return 'best' in r ? [r.best, r.sure] : r.missing;
};

function read(measure: Measure, s: Scene, marks: readonly [Mark, Mark]): readonly [number, number] | string {
	if (measure.about === 'mark') return ends(measure.of(s, marks[0]));
	return measure.about === 'pair' ? ends(measure.of(s, ...marks)) : 'case';
}

/** What steps of marks may change a measure by; the axis it does not lie along counts a tenth, as floors fall. */
function mostFor({ slope, along }: Measure, steps: readonly (readonly [number, number])[]): number {
	const share = (axis: 'x' | 'y') => (along === undefined || along === axis ? 1 : 0.1);
	return steps.reduce((sum, [dx, dy]) => sum + slope * (share('x') * Math.abs(dx) + share('y') * Math.abs(dy)), 0);
}

const moved = (m: Mark, dx: number, dy: number): Mark => ({
	...m,
	place: { ...m.place, x: mm(m.place.x + dx), y: mm(m.place.y + dy) }
});

const aStep = fc.tuple(fc.integer({ min: -400, max: 400 }), fc.integer({ min: -400, max: 400 }));

describe('measures', () => {
	test.each(ABOUT_MARKS)('[measures R1] %s changes by no more than its marks move along the axes', (id) => {
		const measure: Measure = MEASURES[id];
		const drawn = drawnFor(id);
		fc.assert(
			fc.property(drawn, aStep, aStep, ([s, a, b], [ax, ay], [bx, by]) => {
				const here = read(measure, s, [a, b]);
				const there = read(measure, s, [moved(a, ax, ay), moved(b, bx, by)]);
				// What is missing is missing wherever the mark is.
				if (typeof here === 'string' || typeof there === 'string') {
					expect(there).toEqual(here);
					return;
				}
				const most = mostFor(
					measure,
					measure.about === 'pair'
						? [
								[ax, ay],
								[bx, by]
							]
						: [[ax, ay]]
				);
				expect(Math.abs(there[0] - here[0])).toBeLessThanOrEqual(most + 1e-6);
				expect(Math.abs(there[1] - here[1])).toBeLessThanOrEqual(most + 1e-6);
			}),
			{ numRuns: 300 }
		);
	});

	test.each(ABOUT_MARKS)('[measures R2] %s is the same in the mirrored room', (id) => {
		const measure: Measure = MEASURES[id];
		const drawn = drawnFor(id);
		const other = { left: 'right', right: 'left' } as const;
		fc.assert(
			fc.property(drawn, ([s, a, b]) => {
				const mirrored = sceneOf(mirroredCase(s.c));
				const across = (m: Mark): Mark => {
					const place = mirroredPlace(m.place, s.room.footprint);
					const hands = m.accessory.hands.map((h) => other[h]);
					return { ...m, accessory: { ...m.accessory, hands }, place, variant: variantOf(place.variant) };
				};
				const here = read(measure, s, [a, b]);
				const there = read(measure, mirrored, [across(a), across(b)]);
				if (typeof here === 'string' || typeof there === 'string') {
					expect(there).toEqual(here);
					return;
				}
				expect(there[0]).toBeCloseTo(here[0], 2);
				expect(there[1]).toBeCloseTo(here[1], 2);
			}),
			{ numRuns: 60 }
		);
	});

	test.each(ABOUT_MARKS)(
		'[measures R3] %s gives figures, or the question that is open; a reach at its best is never less than for sure',
		(id) => {
			const measure: Measure = MEASURES[id];
			const drawn = drawnFor(id);
			fc.assert(
				fc.property(drawn, ([s, a, b]) => {
					const here = read(measure, s, [a, b]);
					if (typeof here === 'string') expect(here).toMatch(/\?$|^Measure/);
					else {
						expect(here.every(Number.isFinite)).toBe(true);
						if (id.includes('reach')) expect(here[0]).toBeGreaterThanOrEqual(here[1]);
					}
				}),
				{ numRuns: 60 }
			);
		}
	);
});
