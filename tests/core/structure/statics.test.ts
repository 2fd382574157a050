import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import { fixedShares, simpleShares } from '#core/structure/beam.ts';
import { modelOf, screwLoad } from '#core/structure/bracket.ts';
import { FLANGE, leverage, screwTensions } from '#core/structure/flange.ts';
import { bridgingSlope } from '#core/structure/framing.ts';
import { gaugeDiameter, woodScrewWithdrawal } from '#core/structure/screw.ts';
import { upperRow, withLegs } from '#core/structure/seat-load.ts';
import { longestSpan, midSpanStress, tubeSection } from '#core/structure/tube.ts';

describe('a flange', () => {
	// Source: exact mechanics, disc 40, holes on radius 30, 54 mm stand-off, 1112 N.
	test.each([
		['one hole toward the pull', 0, [683.5, 244.1, 244.1]],
		['two holes toward the pull', 60, [537.0, 97.6, 537.0]]
	])('[structure R3] screw tensions with %s', (_, turn, expected) => {
		const tensions = screwTensions(FLANGE, 1112, turn);
		for (const [i, n] of expected.entries()) expect(Math.abs((tensions[i] ?? NaN) - n)).toBeLessThan(0.1);
	});

	test.each([2, 3, 4])(
		'[structure R20] no turn of a real flange of %s holes loads a screw more than the leverage says',
		(holes) => {
			for (const [radius, circle] of [
				[40, 30],
				[45, 20],
				[40, 12]
			] as const) {
				const flange = { radius, circle, holes, standOff: 60 };
				const worst = Array.from({ length: 3601 }, (_, turn) => Math.max(...screwTensions(flange, 1, turn / 10)));
				// Turns are tried by tenths of a degree.
				expect(Math.max(...worst)).toBeCloseTo(leverage(flange), 5);
				expect(Math.max(...worst)).toBeLessThanOrEqual(leverage(flange) + 1e-12);
			}
		}
	);

	test('[structure R3] no turn of the flange loads a screw more than the leverage says', () => {
		const worst = Array.from({ length: 361 }, (_, turn) => Math.max(...screwTensions(FLANGE, 1112, turn)));
		expect(Math.max(...worst)).toBeCloseTo(1112 * leverage(FLANGE), 9);
	});

	// Source: as above; the sum is ADAAG 1991 4.26.3(4).
	test('[structure R3] one force in any direction, and the superseded sum', () => {
		const load = screwLoad(modelOf('flange'), 1112);
		expect(Math.abs(load.inPlane - 683.5)).toBeLessThan(0.1);
		expect(Math.abs(load.anyDirection - 777.5)).toBeLessThan(0.1);
		expect(Math.abs(load.direction - 28.47)).toBeLessThan(0.01);
		expect(Math.abs(load.sum1991 - 1054.1)).toBeLessThan(0.1);
	});

	test('[structure R3] no direction of the force loads the screw more than the worst one', () => {
		const { direct, leverage: k } = modelOf('flange');
		const load = screwLoad(modelOf('flange'), 1112);
		for (let degree = 0; degree <= 90; degree += 0.5) {
			const angle = (degree * Math.PI) / 180;
			const tension = 1112 * (direct * Math.sin(angle) + k * Math.cos(angle));
			expect(tension).toBeLessThanOrEqual(load.anyDirection + 1e-9);
		}
	});

	// Source: arithmetic: 724.6 N against 683.5, 777.5 and 1054.1 N.
	test('[structure R3] a #12 screw with 38.1 mm in spruce passes the first, fails the others', () => {
		const holds = woodScrewWithdrawal({ gravity: 0.42, diameter: gaugeDiameter(12) }) * 38.1;
		const load = screwLoad(modelOf('flange'), 1112);
		const used = [load.inPlane, load.anyDirection, load.sum1991].map((n) => n / holds);
		for (const [i, n] of [0.943, 1.073, 1.455].entries()) expect(Math.abs((used[i] ?? NaN) - n)).toBeLessThan(0.002);
	});
});

describe('bars and seats', () => {
	// Source: beam formulas, 1112 N at 150 of 600 mm.
	test('[structure R4] shares of two posts, free to turn and held', () => {
		const load = { force: 1112, span: 600, at: 150 };
		expect(simpleShares(load)).toEqual({ near: 834, far: 278 });
		expect(fixedShares(load).near).toBeCloseTo(938.25, 2);
		expect(fixedShares(load).far).toBeCloseTo(173.75, 2);
	});

	test('[structure R4] a force at a post is all on that post', () => {
		const load = { force: 1112, span: 600, at: 0 };
		expect([simpleShares(load).near, fixedShares(load).near]).toEqual([1112, 1112]);
	});

	// Source: exact geometry of a ring.
	test.each([
		[32, 1.2, 13789.6, 861.85],
		[38, 1.5, 28692.1, 1510.11]
	])('[structure R4] the section of a %s by %s tube', (diameter, wall, inertia, modulus) => {
		const section = tubeSection(diameter, wall);
		expect(Math.abs(section.inertia / inertia - 1)).toBeLessThan(1e-4);
		expect(Math.abs(section.modulus / modulus - 1)).toBeLessThan(1e-4);
	});

	// Source: PL/4 and PL/8 on a 38 x 1.2 tube, 900 mm, 1112 N.
	test('[structure R4] bending stress at mid-span', () => {
		const { simple, fixed } = midSpanStress(tubeSection(38, 1.2), 1112, 900);
		expect(Math.abs(simple - 202.2)).toBeLessThan(0.1);
		expect(Math.abs(fixed - 101.1)).toBeLessThan(0.1);
	});

	// Source: 0.66 of 205 MPa, 32 x 1.2 tube.
	test('[structure R4] the longest span at a stress', () => {
		expect(Math.abs(longestSpan(tubeSection(32, 1.2), 1112, 135.3) - 419.4)).toBeLessThan(0.5);
	});

	// Source: exact statics: 4225.6 N in the upper row; 300 kg on a seat with legs at 350.
	test('[structure R4] a seat without legs and with', () => {
		expect(upperRow({ weight: 1112, out: 380 }, 100)).toBeCloseTo(4225.6, 6);
		const { leg, wall } = withLegs({ weight: 300 * 9.80665, out: 250 }, 350);
		expect(Math.abs(leg - 2101.4)).toBeLessThan(0.1);
		expect(Math.abs(wall - 840.6)).toBeLessThan(0.1);
		// Past the leg the wall row is lifted: 420.3 N.
		expect(Math.abs(withLegs({ weight: 2942, out: 400 }, 350).wall + 420.3)).toBeLessThan(0.1);
	});

	// Source: exact statics, four upper screws of six: 4225.6 / 4 and 1112 / 6.
	test('[structure R4] a sitter at one end of the generic seat loads the two upper screws of one plate', () => {
		const load = screwLoad(modelOf('seat-plate'), 1112);
		expect(load.inPlane).toBeCloseTo(2112.8, 6);
		expect(load.sum1991).toBeCloseTo(2112.8 + 370.667, 2);
	});

	// Source: statics: 1112 / 3 out of the wall when it is hauled on folded up, 1112 x 30 / 100 / 2 along it at a hinge 30 mm out.
	test('[structure R19] the hinge plate of a seat with front legs takes a pull and shear, barely tension', () => {
		const load = screwLoad(modelOf('leg-plate'), 1112);
		expect(load.inPlane).toBeCloseTo(166.8, 6);
		expect(load.sum1991).toBeCloseTo(166.8 + 370.667, 2);
		expect(load.anyDirection).toBeCloseTo(406.47, 2);
	});

	// Source: exact statics: no uplift as long as the load is not past the legs; 1112 x 30 / 365 = 91.4 N at the very edge.
	test.each(['seat-front-legs-450', 'seat-front-legs-18in'])('[structure R19] %s stands near its front edge', (id) => {
		const { frontLegs = NaN, depth } = variantOf(id);
		expect(depth - frontLegs).toBeLessThanOrEqual(30);
		for (let out = 0; out <= frontLegs; out += 5) {
			expect(withLegs({ weight: 1112, out }, frontLegs).wall).toBeGreaterThanOrEqual(-1e-9);
		}
		expect(withLegs({ weight: 1112, out: depth }, frontLegs).wall).toBeCloseTo(-91.4, 1);
	});

	// Source: exact geometry, inches.
	test.each([
		[24, 16, 48.19],
		[18, 16, 27.27],
		[32, 16, 60]
	])('[structure R4] a bar of %s on studs %s apart slopes %s degrees', (length, spacing, slope) => {
		expect(Math.abs(Number(bridgingSlope(length * 25.4, spacing * 25.4)) - slope)).toBeLessThan(0.01);
	});

	test('[structure R4] a bar shorter than the studs are apart never meets two', () => {
		expect(bridgingSlope(12, 16)).toBe('impossible');
		expect(bridgingSlope(16, 16)).toBe(0);
	});
});
