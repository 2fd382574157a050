import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { variantOf, VARIANTS } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { mirroredWall } from '#core/geometry/frame.ts';
import { mirroredEnclosure } from '#core/enclosure/mirror.ts';
import { radiusOf } from '#core/structure/bracket.ts';
import { FAR, type Holds } from '#core/structure/carrying.ts';
import { backWall, caseWith, holdsOf } from './some-case.ts';

const area = { x0: 100, x1: 800, y0: -700, y1: 800 };
const PAPER = { document: 'drawing 12', fixing: 'the named anchor', holds: 'bars-and-seat' };
const declared = (load: number) => ({ backing: { all: { kind: 'declared', ...area, load, ...PAPER } } });
const blocking = (change: Record<string, unknown> = {}) => ({
	backing: { one: { kind: 'blocking', ...area, thickness: 60, gravity: 0.5, how: 'measured', ...change } }
});
const studs = Object.fromEntries([19, 425, 831].map((x, i) => [`s${String(i)}`, { x, width: 38, how: 'measured' }]));
const sure = (holds: Holds, bracket: 'flange' | 'seat-plate' | 'rest', x: number, y = 0) =>
	holds.at('back', { kind: bracket }, x, y).sure;

describe('declared strength', () => {
	test.each([
		[1111, -FAR],
		[1112, 260],
		[5000, 260]
	])('[structure R6] %s N declared: %s mm inside at the middle', (load, depth) => {
		expect(sure(backWall(declared(load)), 'flange', 400)).toBe(depth);
	});

	test('[structure R6] the whole disc of a bracket must lie in the area', () => {
		const holds = backWall(declared(1112));
		expect([139, 140, 141].map((x) => sure(holds, 'flange', x))).toEqual([-1, 0, 1]);
		expect([149, 150, 151].map((x) => sure(holds, 'seat-plate', x))).toEqual([-1, 0, 1]);
		expect([119, 120, 121].map((x) => sure(holds, 'rest', x))).toEqual([-1, 0, 1]);
	});

	test('[structure R6] a paper that names flanges says nothing of a seat', () => {
		const flanges = { backing: { all: { ...declared(1300).backing.all, holds: 'bars' } } };
		const held = backWall(flanges).at('back', { kind: 'seat-plate' }, 400, 0);
		expect(held.sure).toBe(-FAR);
		expect(held.best).toBeGreaterThan(0);
		expect(held.missing).toContain('paper');
		expect(backWall(flanges).arithmetic('back', { kind: 'seat-plate' }, 400, 0).verdict).toBe('not known');
		expect(sure(backWall(flanges), 'flange', 400)).toBeGreaterThan(0);
	});

	test('[structure R6] without the weight of the client no wall is sure to carry', () => {
		const people = { client: { role: 'client' } };
		const held = holdsOf(caseWith({ back: { surveyed: true, ...declared(1300) } }, {}, people)).at(
			'back',
			{ kind: 'flange' },
			400,
			0
		);
		expect(held.sure).toBe(-FAR);
		expect(held.best).toBeGreaterThan(0);
		expect(held.missing).toContain('heavy');
	});

	test('[structure R6] a heavier user asks more of the same area', () => {
		const people = { client: { role: 'client', mass: { value: 140, how: 'measured' } } };
		const walls = { back: { surveyed: true, ...declared(1300) } };
		expect(holdsOf(caseWith(walls, {}, people)).at('back', { kind: 'flange' }, 400, 0).sure).toBe(-FAR);
		expect(holdsOf(caseWith(walls)).at('back', { kind: 'flange' }, 400, 0).sure).toBe(260);
	});
});

describe('wood by calculation', () => {
	// Source: arithmetic. 777.5 N needs 25.63 mm of thread of a lag screw of 1/4 in at specific gravity 0.42 (NDS, 173 lbf/in
	// = 30.34 N/mm) and 6.35 mm of tip; at 0.37 31.00 mm and the tip; at 0.50 five diameters, 31.75 mm, decide.
	test.each([
		[{ gravity: 0.42, thickness: 31.9 }, false],
		[{ gravity: 0.42, thickness: 32 }, true],
		[{ gravity: undefined, thickness: 37.3 }, false],
		[{ gravity: undefined, thickness: 37.4 }, true],
		[{ gravity: 0.5, thickness: 31.7 }, false],
		[{ gravity: 0.5, thickness: 31.8 }, true]
	])('[structure R7] blocking %j takes a flange: %s', (change, takes) => {
		expect(backWall(blocking(change)).at('back', { kind: 'flange' }, 400, 0).best > 0).toBe(takes);
	});

	// Source: arithmetic. Up to 37.6 mm the any-direction force is held, tension and shear on one screw together are not.
	test.each([
		[31.8, 'marginal'],
		[37.6, 'marginal'],
		[37.7, 'carries']
	])(
		'[structure R7] blocking %s mm thick, specific gravity 0.5: %s, and marginal is never sure',
		(thickness, verdict) => {
			const held = backWall(blocking({ gravity: 0.5, thickness })).at('back', { kind: 'flange' }, 400, 0);
			expect(held.best).toBeGreaterThan(0);
			expect(held.sure > 0).toBe(verdict === 'carries');
			expect(held.missing?.includes('marginal') ?? false).toBe(verdict === 'marginal');
		}
	);

	// Source: as above with the factor 0.7 for damp: 25.63 / 0.7 + 6.35 = 42.96; with 0.75 for a sheet 40.52.
	test.each([
		['damp', {}, 42.9, false],
		['damp', {}, 43, true],
		['a sheet', { kind: 'sheet' }, 40.5, false],
		['a sheet', { kind: 'sheet' }, 40.6, true]
	])('[structure R7] %s, %j, %s mm thick: %s', (what, change, thickness, takes) => {
		const enclosure = what === 'damp' ? { dampBehind: { value: true, how: 'observed' } } : {};
		const holds = backWall(blocking({ gravity: 0.42, thickness, ...change }), enclosure);
		expect(holds.at('back', { kind: 'flange' }, 400, 0).best > 0).toBe(takes);
	});

	// Source: exact geometry: 1.5 x 30 + 2 x 2.5 x 6.147 = 75.73 mm of strip, whichever way it runs.
	test.each([
		[75.7, false],
		[75.8, true]
	])('[structure R8] a strip %s mm wide takes the three holes of a flange: %s', (width, takes) => {
		const level = backWall(blocking({ y0: 0, y1: width }));
		const upright = backWall(blocking({ x0: 0, x1: width }));
		const somewhere = Array.from({ length: 800 }, (_, i) => i / 10);
		expect(somewhere.some((n) => sure(level, 'flange', 400, n) >= 0)).toBe(takes);
		expect(somewhere.some((n) => sure(upright, 'flange', n) >= 0)).toBe(takes);
	});

	test('[structure R8] the disc may overhang the wood when its holes do not', () => {
		const holds = backWall(blocking({ x0: 100, x1: 800 }));
		// One hole away from the edge: half of 30 mm, and 15.37 mm of wood beyond.
		expect(sure(holds, 'flange', 130.3)).toBeLessThan(0);
		expect(sure(holds, 'flange', 130.4)).toBeGreaterThan(0);
	});

	// Source: arithmetic. A sitter at one end asks 1112 x 1.929 = 2145 N, with the sum of 1991 2483 N. A lag screw holds 59.5 mm
	// of thread: at 0.47 35.9 x 59.5 = 2138 N, at 0.50 2346, at 0.55 2706.
	test.each([
		[0.47, -1, false],
		[0.5, 1, false],
		[0.55, 1, true]
	])('[structure R8] a seat without legs at specific gravity %s, however thick', (gravity, best, carries) => {
		const seat = backWall(blocking({ thickness: 140, gravity })).at('back', { kind: 'seat-plate' }, 400, 0);
		expect([Math.sign(seat.best), seat.sure > 0]).toEqual([best, carries]);
		expect(backWall(blocking({ thickness: 40 })).at('back', { kind: 'flange' }, 400, 0).best).toBeGreaterThan(0);
	});
});

describe('how far a wall has come', () => {
	test.each([
		['declared for bars and seat', declared(1300), 'sure', 'sure'],
		['spruce of one board', blocking({ gravity: 0.42, thickness: 38 }), 'nowhere', 'sure'],
		['the same, told', blocking({ gravity: 0.42, thickness: 38, how: 'told' }), 'nowhere', 'asked'],
		['studs alone', { studs }, 'nowhere', 'nowhere']
	])('[structure R19] %s: a seat without legs %s, with front legs %s', (_, wall, without, legs) => {
		const { atBest } = backWall(wall);
		expect([atBest('back', 'seat-plate'), atBest('back', 'leg-plate')]).toEqual([without, legs]);
		expect(atBest('left', 'leg-plate')).toBe('asked');
	});

	test('[structure R19] it is the best of all places', () => {
		const holds = backWall(blocking({ gravity: 0.42, thickness: 38 }));
		expect(holds.at('back', { kind: 'leg-plate' }, 400, 0).sure).toBeGreaterThan(0);
		expect(holds.at('back', { kind: 'leg-plate' }, 149, 0).sure).toBeLessThan(0);
		expect(holds.at('back', { kind: 'seat-plate' }, 400, 0).best).toBe(-FAR);
	});
});

describe('studs', () => {
	test('[structure R9] studs 406 apart alone take no seat and no three-hole flange anywhere', () => {
		const holds = backWall({ studs });
		for (let x = 0; x <= 914; x += 5) {
			expect(sure(holds, 'flange', x)).toBe(-FAR);
			expect(sure(holds, 'seat-plate', x)).toBe(-FAR);
			expect(holds.at('back', { kind: 'flange' }, x, 0).best).toBe(-FAR);
		}
	});

	// Source: 38 / 2 less 13 mm of edge.
	test.each([
		[418, -1],
		[419, 0],
		[425, 6],
		[431, 0],
		[432, -1]
	])('[structure R9] a rest at %s on a stud at 425 is %s mm inside', (x, depth) => {
		expect(sure(backWall({ studs }), 'rest', x)).toBe(depth);
	});

	test('[structure R9] any backing takes a rest, also a thin sheet and one declared for less', () => {
		expect(sure(backWall(blocking({ kind: 'sheet', thickness: 12 })), 'rest', 400)).toBeGreaterThan(0);
		expect(sure(backWall(declared(200)), 'rest', 400)).toBeGreaterThan(0);
	});

	test('[structure R9] what carries nothing may be anywhere', () => {
		expect(backWall({}).at('back', { kind: 'none' }, 1, 1)).toEqual({ best: FAR, sure: FAR });
	});

	test('[structure R9] two bands of blocking hold an upright bar only when it spans both', () => {
		const bands = {
			low: { kind: 'blocking', x0: 0, x1: 914, y0: -260, y1: -120, thickness: 60, gravity: 0.5, how: 'measured' },
			high: { kind: 'blocking', x0: 0, x1: 914, y0: 240, y1: 380, thickness: 60, gravity: 0.5, how: 'measured' }
		};
		const holds = backWall({ backing: bands });
		const held = (length: number) =>
			Array.from({ length: 800 }, (_, i) => i - 400).filter((y) =>
				[y, y + length].every((at) => sure(holds, 'flange', 400, at) >= 0)
			);
		expect(held(450).length).toBeGreaterThan(0);
		for (const y of held(450)) expect([y < -120, y + 450 > 240]).toEqual([true, true]);
		expect(held(300)).toEqual([]);
		expect(held(750)).toEqual([]);
	});
});

describe('what is not known', () => {
	test('[structure R10] an unknown wall never carries, and is never impossible', () => {
		const { sure, best, missing, into } = holdsOf(caseWith()).at('right', { kind: 'flange' }, 400, 0);
		expect([sure, best, missing, into]).toEqual([-FAR, FAR, 'What is behind the right wall?', undefined]);
		expect(holdsOf(caseWith()).arithmetic('right', { kind: 'flange' }, 400, 0).verdict).toBe('not known');
	});

	test('[structure R10] on a surveyed wall what is not recorded is not there', () => {
		expect(backWall({}).at('back', { kind: 'flange' }, 400, 0)).toEqual({ best: -FAR, sure: -FAR });
		expect(backWall({}).arithmetic('back', { kind: 'flange' }, 400, 0).verdict).toBe('does not');
	});

	test.each(['told', 'assumed'])('[structure R10] backing that is %s could carry, and is asked for', (how) => {
		const holds = backWall(blocking({ how }));
		const here = holds.at('back', { kind: 'flange' }, 400, 0);
		expect(here.sure).toBe(-FAR);
		expect(here.best).toBeGreaterThan(0);
		expect(here.missing).toContain('Probe before drilling');
		expect(here.into).toBe('wood blocking 60 mm thick');
		expect(holds.at('back', { kind: 'flange' }, 50, 0).best).toBeLessThan(0);
		expect(holds.at('back', { kind: 'flange' }, 50, 0).missing).toBeUndefined();
		expect(holds.arithmetic('back', { kind: 'flange' }, 400, 0).verdict).toBe('not known');
	});

	test.each(['measured', 'observed', 'declared'])('[structure R10] backing that is %s counts', (how) => {
		const here = backWall(blocking({ how })).at('back', { kind: 'flange' }, 400, 0);
		expect(here.sure).toBeGreaterThan(0);
		expect(here.best).toBe(here.sure);
		expect(here.missing).toBeUndefined();
	});

	test('[structure R10] where backing may be added the plan goes on as if it were, and says so', () => {
		const may = { backingMayBeAdded: { value: true, how: 'told' } };
		expect(backWall({}, may).at('back', { kind: 'flange' }, 400, 0)).toEqual({
			best: FAR,
			sure: -FAR,
			missing: 'Backing is to be added behind the back wall.'
		});
		const unknown = holdsOf(caseWith({}, may)).at('left', { kind: 'flange' }, 400, 0);
		expect(unknown.missing).toBe('What is behind the left wall? Backing is to be added where nothing carries.');
		expect(
			backWall({}, { backingMayBeAdded: { value: false, how: 'told' } }).at('back', { kind: 'flange' }, 9, 9).best
		).toBe(-FAR);
	});

	test('[structure R10] nothing is asked where it is sure to carry, on a wall that is else unknown', () => {
		const here = holdsOf(caseWith({ back: declared(2000) })).at('back', { kind: 'flange' }, 400, 0);
		expect(here).toEqual({ best: FAR, sure: 260, into: 'area declared for 2000 N' });
	});
});

describe('shape', () => {
	const walls = {
		back: { surveyed: true, studs, ...blocking({ x0: 300, x1: 420, y0: -50, y1: 90 }) },
		left: { surveyed: true, ...declared(1112) },
		right: { backing: { told: { kind: 'blocking', ...area, thickness: 60, how: 'told' } } }
	};
	const wallIds = fc.constantFrom<WallId>('back', 'left', 'right');
	const brackets = fc.constantFrom('flange', 'seat-plate', 'rest', 'none');
	const n = fc.double({ min: -1200, max: 1200, noNaN: true });
	const step = fc.double({ min: -90, max: 90, noNaN: true });

	test('[structure R11] both distances change by no more than the bracket moves', () => {
		const holds = holdsOf(caseWith(walls));
		fc.assert(
			fc.property(wallIds, brackets, n, n, step, step, (wall, bracket, x, y, dx, dy) => {
				const [a, b] = [holds.at(wall, { kind: bracket }, x, y), holds.at(wall, { kind: bracket }, x + dx, y + dy)];
				const most = Math.hypot(dx, dy) + 1e-9;
				expect(Math.abs(a.sure - b.sure)).toBeLessThanOrEqual(most);
				expect(Math.abs(a.best - b.best)).toBeLessThanOrEqual(most);
			}),
			{ numRuns: 1000 }
		);
	});

	test('[structure R11] what could be is never less than what is sure, and in between there is a question', () => {
		const holds = holdsOf(caseWith(walls));
		fc.assert(
			fc.property(wallIds, brackets, n, n, (wall, bracket, x, y) => {
				const { best, sure, missing } = holds.at(wall, { kind: bracket }, x, y);
				expect(best).toBeGreaterThanOrEqual(sure);
				expect(missing !== undefined).toBe(sure < 0 && best >= 0);
			}),
			{ numRuns: 500 }
		);
	});

	test('[structure R11] the mirrored room holds the same at the mirrored place', () => {
		const c = caseWith(walls);
		const [holds, other] = [holdsOf(c), holdsOf({ ...c, enclosure: mirroredEnclosure(c.enclosure) })];
		fc.assert(
			fc.property(wallIds, brackets, n, n, (wall, bracket, x, y) => {
				const length = wall === 'back' ? 914 : 900;
				const there = other.at(mirroredWall(wall), { kind: bracket }, length - x, y);
				expect(there.sure).toBeCloseTo(holds.at(wall, { kind: bracket }, x, y).sure, 6);
			})
		);
	});

	test('[structure R11] the generic parts have the radii the walls are worked with', () => {
		for (const { kind, radius } of VARIANTS.flatMap((v) => v.brackets)) {
			expect(kind === 'none' ? radius : radiusOf(kind)).toBe(radius);
		}
		expect(variantOf('bar-600').brackets).toHaveLength(2);
	});
});

describe('masonry', () => {
	const brick = { kind: 'masonry', ...area, how: 'measured' };

	test('[structure R16] it is open wherever the disc lies in it, never sure, and a pull is asked for', () => {
		const held = backWall({ backing: { brick } }).at('back', { kind: 'seat-plate' }, 400, 0);
		expect([held.sure, Math.sign(held.best)]).toEqual([-FAR, 1]);
		expect(held.missing).toContain('Pull them on this wall');
		expect(backWall({ backing: { brick } }).at('back', { kind: 'flange' }, 60, 0).best).toBeLessThan(0);
		expect(backWall({ backing: { brick } }).arithmetic('back', { kind: 'flange' }, 400, 0).verdict).toBe('not known');
		// Two light screws hold a rest in it.
		expect(sure(backWall({ backing: { brick } }), 'rest', 400)).toBeGreaterThan(0);
	});

	test('[structure R16] wood before it carries as it would alone', () => {
		const { one } = blocking().backing;
		const held = backWall({ backing: { brick, one } }).at('back', { kind: 'flange' }, 400, 0);
		expect(held.sure).toBe(backWall(blocking()).at('back', { kind: 'flange' }, 400, 0).sure);
		expect(held.sure).toBeGreaterThan(0);
	});
});

test('[structure R16] a steel stud says what a screw in it takes, and takes no flange', () => {
	const stud = (steel: number) => ({ studs: { a: { x: 400, width: 41, how: 'measured', steel } } });
	const shown = backWall(stud(33)).arithmetic('back', { kind: 'flange' }, 400, 0);
	expect(shown.verdict).toBe('does not');
	// 95 lbf of the table for #12 in 33 mil, beside 777.5 N of one force in any direction.
	expect(shown.lines.join(' ')).toMatch(/33 mil steel takes 42\d\.\d N; the worst screw has 777\.5 N/);
});
