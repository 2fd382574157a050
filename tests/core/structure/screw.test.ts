import { describe, expect, test } from 'vitest';
import {
	combined,
	gaugeDiameter,
	lagLateral,
	lagUltimate,
	lagWithdrawal,
	lateral,
	penetrationFactor,
	woodScrewUltimate,
	woodScrewWithdrawal
} from '#core/structure/screw.ts';

const LBF = 4.4482216152605;
const IN = 25.4;
const perInch = (newtonsPerMm: number) => (newtonsPerMm * IN) / LBF;

describe('screws', () => {
	// Source: Wood Handbook, worked example, G 0.70, #8, 1 in: 1262 lbf.
	test('[structure R1] the ultimate withdrawal of a wood screw', () => {
		const lbf = (woodScrewUltimate({ gravity: 0.7, diameter: 0.164 * IN }) * IN) / LBF;
		expect(Math.abs(lbf / 1261.65 - 1)).toBeLessThan(0.001);
	});

	// Source: a printed table of NDS values, G 0.45, D 0.190 in: 109 lbf/in.
	test('[structure R1] the design withdrawal of a wood screw', () => {
		expect(Math.abs(perInch(woodScrewWithdrawal({ gravity: 0.45, diameter: 0.19 * IN })) - 109.65)).toBeLessThan(0.5);
	});

	// Source: NDS table 12.2A, lbf/in.
	test.each([
		[1 / 4, 0.35, 132],
		[1 / 4, 0.42, 173],
		[1 / 4, 0.5, 225],
		[1 / 4, 0.55, 260],
		[1 / 4, 0.67, 349],
		[3 / 8, 0.42, 235],
		[3 / 8, 0.43, 243],
		[3 / 8, 0.5, 305],
		[3 / 8, 0.55, 352]
	])('[structure R1] a lag screw of %s in at specific gravity %s: %s lbf/in', (inches, gravity, expected) => {
		expect(Math.round(perInch(lagWithdrawal({ gravity, diameter: inches * IN })))).toBe(expected);
	});

	// Source: exact conversion; 125.4 is also the figure of the metric Wood Handbook.
	test.each([
		['wood screw, ultimate', woodScrewUltimate, 108.248],
		['lag screw, ultimate', lagUltimate, 125.375],
		['wood screw, design', woodScrewWithdrawal, 19.65],
		['lag screw, design', lagWithdrawal, 27.861]
	] as const)('[structure R1] the coefficient in N and mm, %s', (_, formula, expected) => {
		expect(Math.abs(formula({ gravity: 1, diameter: 1 }) / expected - 1)).toBeLessThan(1e-4);
	});

	// Source: Wood Handbook, table 8-9.
	test.each([
		[8, 4.17],
		[10, 4.83],
		[12, 5.49],
		[14, 6.15],
		[20, 8.13]
	])('[structure R1] a #%s screw is %s mm thick', (gauge, expected) => {
		expect(Math.abs(gaugeDiameter(gauge) - expected)).toBeLessThan(0.005);
	});

	// Source: arithmetic, #12 with 1.5 in of thread at specific gravity 0.42: 724.6 N, 3991 N ultimate.
	test('[structure R1] a #12 screw with 38.1 mm of thread in spruce', () => {
		const screw = { gravity: 0.42, diameter: gaugeDiameter(12) };
		expect(Math.abs((woodScrewWithdrawal(screw) * 38.1) / 724.6 - 1)).toBeLessThan(0.002);
		expect(Math.abs((woodScrewUltimate(screw) * 38.1) / 3991 - 1)).toBeLessThan(0.002);
	});

	// Source: older allowable rule, printed values for #12 in the groups: 185, 151 and 118 lbf.
	test.each([
		[0.42, 118],
		[0.43, 151],
		[0.47, 151],
		[0.48, 185],
		[0.55, 185]
	])('[structure R2] a #12 screw across its axis at specific gravity %s: %s lbf', (gravity, lbf) => {
		expect(Math.round(lateral({ gravity, diameter: gaugeDiameter(12) }) / LBF)).toBe(lbf);
	});

	// Source: NDS table 12K, lag screw 1/4 in, steel side plate of 14 gage, across the grain, lbf.
	test.each([
		[0.67, 130],
		[0.55, 120],
		[0.5, 110],
		[0.49, 110],
		[0.46, 100],
		[0.43, 100],
		[0.42, 100],
		[0.37, 90],
		[0.36, 90],
		[0.35, 90]
	])('[structure R17] a 1/4 in lag screw across its axis at specific gravity %s: %s lbf', (gravity, lbf) => {
		expect(lagLateral(gravity) / LBF).toBeCloseTo(lbf, 6);
	});

	// Source: NDS table 12K, note 3: p / 8D between four and eight diameters.
	test.each([
		[3.99, 0],
		[4, 0.5],
		[6, 0.75],
		[9, 1]
	])('[structure R17] a lag screw at %s diameters of penetration: %s of the lateral value', (diameters, part) => {
		expect(penetrationFactor(diameters * 5, 5, 40)).toBeCloseTo(part, 9);
	});

	test.each([
		[3.99, 0],
		[4, 4 / 7],
		[5.6, 0.8],
		[7, 1],
		[12, 1]
	])('[structure R2] at %s diameters of penetration: %s of the lateral value', (diameters, part) => {
		expect(penetrationFactor(diameters * 5, 5)).toBeCloseTo(part, 9);
	});

	// Source: arithmetic on the NDS form (from memory): 971.8 N at 61.53 degrees, utilisation 0.800.
	test('[structure R2] tension and shear together', () => {
		const { allowed, used } = combined({ withdrawal: 1026.9, lateral: 821.8 }, 683.5, 370.7);
		expect(Math.abs(allowed / 971.8 - 1)).toBeLessThan(0.005);
		expect(Math.abs(used / 0.8 - 1)).toBeLessThan(0.005);
	});

	test('[structure R2] straight out the withdrawal decides, straight across the lateral value', () => {
		const values = { withdrawal: 500, lateral: 800 };
		expect(combined(values, 250, 0).used).toBeCloseTo(0.5, 9);
		expect(combined(values, 0, 200).used).toBeCloseTo(0.25, 9);
	});
});
