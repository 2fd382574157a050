import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodiesOf, covariance, type Body } from '#core/body/body.ts';
import { quantile } from '#core/body/quantile.ts';
import { DIMENSIONS, SURVEY, type Dimension, type Sex } from '#core/body/survey.ts';
import { person } from '#core/case/person.ts';

const told = <T>(value: T) => ({ value, how: 'told' });
/** Known without error, as the published regressions know their predictors. */
const exact = (value: number) => ({ value, how: 'measured', sd: 0.001 });
const bodyOf = (sex: Sex | undefined, { mass, ...body }: Readonly<Record<string, object>> = {}): Body => {
	const input = { role: 'client', sex: sex && told(sex), age: told(40), mass, body };
	const made = bodiesOf({ one: person.parse(input) })['one'];
	if (!made) throw new Error('no body');
	return made;
};
const at = (sex: Sex, name: Dimension) => {
	const i = DIMENSIONS.indexOf(name);
	return { mean: SURVEY[sex].mean[i] ?? NaN, sd: Math.sqrt(SURVEY[sex].lower[i]?.[i] ?? NaN) };
};

/**
 * Dimension, sex, mean, sd; 5th, 10th, 25th, 50th, 75th, 90th and 95th percentile of the people themselves.
 * Source: ANSUR II 2012 public release (1,986 women, 4,082 men), counted on the raw records apart from the covariances;
 * of the percentiles none went into the table.
 */
const PRINTED: readonly (readonly [Dimension, Sex, number, number, readonly number[]])[] = [
	['stature', 'female', 1628.5, 64.2, [1525, 1547, 1586.2, 1626, 1672, 1713, 1740]],
	['stature', 'male', 1756.2, 68.6, [1648, 1669, 1710, 1755, 1802, 1844, 1870]],
	['mass', 'female', 67.8, 11, [51.3, 54.6, 60.1, 66.8, 74.6, 82.4, 87.1]],
	['mass', 'male', 85.5, 14.2, [64.4, 68.2, 75.6, 84.6, 94.4, 104.4, 110.7]],
	['shoulderStanding', 'female', 1335.1, 58.1, [1242, 1262, 1298, 1332, 1374, 1411, 1433.8]],
	['shoulderStanding', 'male', 1440.7, 63.3, [1339, 1361, 1398, 1439, 1481, 1521, 1546]],
	['wristStanding', 'female', 794.2, 38.2, [732.2, 745, 769, 794, 819, 843, 860]],
	['wristStanding', 'male', 847.5, 41.7, [780, 795, 819, 847, 875, 902, 917]],
	['sittingHeight', 'female', 856.6, 33.1, [803, 813, 834, 857, 879, 900, 912]],
	['sittingHeight', 'male', 918.3, 35.7, [860, 873, 894.2, 918, 943, 964, 977]],
	['eyeAboveSeat', 'female', 747.7, 30.4, [698, 708, 727, 748, 768, 787, 799]],
	['eyeAboveSeat', 'male', 804.5, 33.2, [750, 763, 782, 804, 827, 847, 860]],
	['shoulderAboveSeat', 'female', 566.7, 28.3, [520, 530, 547, 567, 585, 602, 615]],
	['shoulderAboveSeat', 'male', 608.8, 31.6, [558, 569, 587, 608, 629, 651, 662]],
	['elbowAboveSeat', 'female', 232.4, 26.3, [189, 198, 215, 233, 251, 265, 275.8]],
	['elbowAboveSeat', 'male', 245, 28.7, [197, 208, 226, 246, 265, 282, 291]],
	['popliteal', 'female', 388.2, 23.6, [350, 358, 373, 387, 403, 419, 428]],
	['popliteal', 'male', 429.8, 24.8, [390, 398, 413, 430, 447, 461, 471]],
	['kneeHeight', 'female', 511.3, 27.1, [469.2, 478, 493, 510, 529, 547, 557]],
	['kneeHeight', 'male', 554.2, 27.9, [509, 518, 535, 553, 572, 590, 602]],
	['buttockPopliteal', 'female', 485.1, 28.7, [441, 450, 466, 483, 503, 524, 535]],
	['buttockPopliteal', 'male', 502.9, 27.4, [459, 467, 484.2, 502, 522, 538, 548]],
	['buttockKnee', 'female', 590.6, 32.6, [541, 550, 569, 589, 610, 634, 646]],
	['buttockKnee', 'male', 618, 30.6, [569, 578, 597, 617, 639, 658, 669]],
	['shoulderBreadth', 'female', 365.3, 18.3, [335, 342, 353, 365, 378, 389, 396]],
	['shoulderBreadth', 'male', 415.7, 19.2, [384, 392, 403, 415, 428, 441, 447]],
	['hipBreadth', 'female', 399, 32.7, [348, 359, 377, 397, 419, 440, 456]],
	['hipBreadth', 'male', 379.3, 30.2, [333, 342, 358, 378, 397, 418, 431]],
	['thumbtipReach', 'female', 744, 42.8, [674.2, 691, 715, 742, 772, 801, 816]],
	['thumbtipReach', 'male', 811.9, 43.7, [742, 757, 782, 811, 838, 868, 886]],
	['overheadSitting', 'female', 1309.7, 62.4, [1207, 1230, 1267, 1309, 1350, 1395, 1413]],
	['overheadSitting', 'male', 1426.7, 67.7, [1316, 1340, 1380, 1426, 1472, 1515, 1540]],
	['armSpan', 'female', 1660.3, 83, [1529, 1555.5, 1605, 1657, 1712.8, 1770.5, 1802.8]],
	['armSpan', 'male', 1814.2, 84.6, [1680, 1707, 1757, 1812, 1868.8, 1923, 1956.9]],
	['forearmToFingertip', 'female', 439.9, 23.4, [404.2, 412, 424, 438, 454, 471, 480]],
	['forearmToFingertip', 'male', 480.2, 23.3, [444, 450, 465, 480, 495, 509, 519.9]],
	['forearmToGrip', 'female', 317.7, 18, [290, 296, 306, 316, 329, 341, 350]],
	['forearmToGrip', 'male', 349, 18, [320, 326, 337, 348.5, 361, 372, 379]],
	['handLength', 'female', 181.1, 10.1, [165, 169, 174, 180, 187, 194, 199]],
	['handLength', 'male', 193.3, 9.9, [177, 181, 187, 193, 200, 206, 210]],
	['armToGrip', 'female', 611.5, 32.6, [561.2, 572, 590, 609, 631, 655, 667.8]],
	['armToGrip', 'male', 665.2, 33, [612, 623, 644, 664, 686, 707, 720]],
	['armToFingertip', 'female', 733.6, 37.6, [675, 687.5, 709, 731, 758, 783, 800]],
	['armToFingertip', 'male', 796.4, 38.1, [735, 748, 771, 796, 821, 845, 861]]
];
const SHARES = [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95];

/**
 * Dimension, sex, slope, intercept, residual sd, 5th and 95th percentile of the residuals.
 * Source: least squares on stature over the same raw records.
 */
const ON_STATURE: readonly (readonly [Dimension, Sex, number, number, number, number, number])[] = [
	['shoulderStanding', 'female', 0.8793, -96.85, 13.66, -22.7, 22.0],
	['shoulderStanding', 'male', 0.8926, -126.89, 16.16, -27.0, 26.7],
	['wristStanding', 'female', 0.5083, -33.52, 19.86, -32.3, 33.3],
	['wristStanding', 'male', 0.5204, -66.38, 21.51, -35.1, 35.7],
	['sittingHeight', 'female', 0.3935, 215.83, 21.32, -36.9, 33.2],
	['sittingHeight', 'male', 0.4057, 205.8, 22.38, -38.9, 34.9],
	['eyeAboveSeat', 'female', 0.3479, 181.11, 20.6, -35.5, 31.4],
	['eyeAboveSeat', 'male', 0.3681, 157.98, 21.51, -37.3, 34.2],
	['shoulderAboveSeat', 'female', 0.2675, 131.09, 22.48, -37.8, 36.7],
	['shoulderAboveSeat', 'male', 0.2902, 99.06, 24.49, -41.9, 39.5],
	['popliteal', 'female', 0.2962, -94.08, 13.96, -23.4, 22.2],
	['popliteal', 'male', 0.3056, -106.96, 13.31, -21.7, 22.4],
	['kneeHeight', 'female', 0.3698, -90.9, 13.02, -20.7, 22.4],
	['kneeHeight', 'male', 0.3633, -83.82, 12.68, -20.3, 21.4],
	['buttockPopliteal', 'female', 0.3267, -46.98, 19.62, -30.0, 35.8],
	['buttockPopliteal', 'male', 0.3051, -32.87, 17.75, -27.8, 29.6],
	['buttockKnee', 'female', 0.3798, -27.86, 21.65, -32.4, 38.2],
	['buttockKnee', 'male', 0.357, -9.03, 18.35, -28.5, 31.9],
	['shoulderBreadth', 'female', 0.1612, 102.82, 15.09, -24.9, 24.7],
	['shoulderBreadth', 'male', 0.1486, 154.64, 16.23, -26.5, 26.9],
	['hipBreadth', 'female', 0.1883, 92.24, 30.44, -46.8, 52.1],
	['hipBreadth', 'male', 0.1612, 96.27, 28.12, -43.7, 48.6],
	['thumbtipReach', 'female', 0.4468, 16.38, 31.71, -48.5, 55.3],
	['thumbtipReach', 'male', 0.4404, 38.53, 31.57, -48.3, 54.4],
	['overheadSitting', 'female', 0.7878, 26.78, 36.57, -59.1, 58.6],
	['overheadSitting', 'male', 0.7825, 52.45, 41.33, -67.8, 65.6],
	['armToGrip', 'female', 0.4054, -48.64, 19.67, -29.7, 33.9],
	['armToGrip', 'male', 0.3911, -21.63, 19.22, -29.9, 33.1],
	['armToFingertip', 'female', 0.4764, -42.25, 21.91, -32.5, 39.9],
	['armToFingertip', 'male', 0.4612, -13.64, 21.31, -33.2, 37.0],
	['forearmToGrip', 'female', 0.2033, -13.41, 12.43, -18.7, 21.7],
	['forearmToGrip', 'male', 0.1972, 2.6, 11.91, -18.2, 21.0],
	['handLength', 'female', 0.1012, 16.23, 7.68, -11.9, 13.4],
	['handLength', 'male', 0.0977, 21.74, 7.36, -11.6, 12.7]
];

/**
 * Dimension, sex, intercept, slopes by predictor, residual sd.
 * Source: least squares on other predictors over the same raw records.
 */
const ON_OTHERS: readonly (readonly [Dimension, Sex, number, Readonly<Record<string, number>>, number])[] = [
	['hipBreadth', 'female', 305.5847, { stature: -0.0524, mass: 2.6375 }, 18.06],
	['hipBreadth', 'male', 261.4245, { stature: -0.0272, mass: 1.9359 }, 14.11],
	['armToGrip', 'female', -9.691, { stature: 0.3614, mass: 0.4816 }, 19.16],
	['armToGrip', 'male', -2.3963, { stature: 0.3692, mass: 0.2254 }, 19.02],
	['armToGrip', 'female', 6.3363, { armSpan: 0.3645 }, 12.23],
	['armToGrip', 'male', 13.8524, { armSpan: 0.359 }, 12.84],
	['armToGrip', 'female', 79.9584, { kneeHeight: 1.0395 }, 16.49],
	['armToGrip', 'male', 100.2823, { kneeHeight: 1.0194 }, 16.63],
	['armToGrip', 'female', 82.0894, { forearmToGrip: 1.6662 }, 12.73],
	['armToGrip', 'male', 79.5329, { forearmToGrip: 1.6781 }, 13.2],
	['armToGrip', 'female', -31.142, { stature: 0.14, forearmToGrip: 1.3052 }, 11.12],
	['armToGrip', 'male', -24.966, { stature: 0.1376, forearmToGrip: 1.2851 }, 11.64],
	['popliteal', 'female', -136.9208, { stature: 0.3445, mass: -0.5296 }, 13.07],
	['popliteal', 'male', -138.2391, { stature: 0.3413, mass: -0.3667 }, 12.49],
	['popliteal', 'female', -3.9092, { kneeHeight: 0.7669 }, 11.19],
	['popliteal', 'male', -21.0337, { kneeHeight: 0.8136 }, 9.96],
	['popliteal', 'female', -43.7566, { kneeHeight: 0.9495, mass: -0.7894 }, 8.63],
	['popliteal', 'male', -52.2644, { kneeHeight: 0.954, mass: -0.5449 }, 7.39],
	['shoulderAboveSeat', 'female', -42.0192, { sittingHeight: 0.7106 }, 15.76],
	['shoulderAboveSeat', 'male', -44.2857, { sittingHeight: 0.7111 }, 18.74],
	['shoulderAboveSeat', 'female', 158.8674, { stature: 0.2362, mass: 0.3434 }, 22.26],
	['shoulderAboveSeat', 'male', 157.5416, { stature: 0.2235, mass: 0.6855 }, 22.93],
	['stature', 'female', 565.4048, { kneeHeight: 2.0792 }, 30.87],
	['stature', 'male', 544.9437, { kneeHeight: 2.1858 }, 31.11],
	['stature', 'female', 576.2529, { armSpan: 0.6338 }, 36.84],
	['stature', 'male', 546.6807, { armSpan: 0.6667 }, 38.93],
	['stature', 'female', 42.7686, { kneeHeight: 1.5863, sittingHeight: 0.9043 }, 15.41],
	['stature', 'male', 53.4905, { kneeHeight: 1.6432, sittingHeight: 0.8626 }, 15.8]
];

describe('[body R12] the survey table against what was counted on the people themselves', () => {
	test('every dimension of both halves is held against a printed row', () => {
		const held = PRINTED.map(([name, sex]) => `${name} ${sex}`);
		expect(held.toSorted()).toEqual(DIMENSIONS.flatMap((d) => [`${d} female`, `${d} male`]).toSorted());
	});

	test.each(PRINTED)('%s, %s: mean %s, sd %s', (name, sex, mean, sd) => {
		expect(Math.abs(at(sex, name).mean - mean)).toBeLessThanOrEqual(0.051);
		expect(Math.abs(at(sex, name).sd - sd)).toBeLessThanOrEqual(0.051);
	});

	// The table says normal, people are nearly so: of sd at most 0.16 off, the weight of men being the worst.
	test.each(PRINTED)('%s, %s: the percentiles of an estimate from nothing are those of the people', (...row) => {
		const [name, sex, , , percentiles] = row;
		const { dims } = bodyOf(sex);
		// Elbow above the seat is in the table and never estimated.
		const one = name === 'elbowAboveSeat' ? { value: at(sex, name).mean, sd: at(sex, name).sd } : dims[name];
		if (!one) throw new RangeError(name);
		for (const [i, share] of SHARES.entries()) {
			const off = (one.value + quantile(share) * one.sd - (percentiles[i] ?? NaN)) / one.sd;
			expect(Math.abs(off), `${String(share)}: ${String(off)}`).toBeLessThanOrEqual(name === 'mass' ? 0.16 : 0.151);
		}
	});

	// Source: reference fixture T22, ANSUR II women.
	test('T22: height under the knee of women 350, 387, 428', () => {
		const one = bodyOf('female').dims.popliteal;
		for (const [share, mm] of [
			[0.05, 350],
			[0.5, 387],
			[0.95, 428]
		] as const)
			expect(Math.abs((one?.value ?? NaN) + quantile(share) * (one?.sd ?? NaN) - mm)).toBeLessThan(1.3);
	});

	// Source: British adults of 19-65 as tabled by an ergonomics course: another country, another count.
	test.each([
		['male', 610, 665, 715, 32],
		['female', 555, 600, undefined, undefined]
	] as const)('shoulder to grip of British %s', (sex, low, middle, high, sd) => {
		const arm = bodyOf(sex).dims.armToGrip;
		const of = (share: number) => (arm?.value ?? NaN) + quantile(share) * (arm?.sd ?? NaN);
		// Half a step of that table is 2.5; two countries are half an sd apart at most.
		expect(Math.abs(of(0.05) - low)).toBeLessThan(5);
		expect(Math.abs(of(0.5) - middle)).toBeLessThan(12);
		if (high !== undefined) expect(Math.abs(of(0.95) - high)).toBeLessThan(6);
		if (sd !== undefined) expect(Math.abs((arm?.sd ?? NaN) - sd)).toBeLessThan(1.5);
	});
});

describe('[body R12] estimates against least squares on the people themselves', () => {
	test.each(ON_STATURE)('%s, %s, from stature', (name, sex, slope, intercept, sd, low, high) => {
		for (const z of [-1.5, 0, 1.5]) {
			const stature = at(sex, 'stature').mean + z * at(sex, 'stature').sd;
			const one = bodyOf(sex, { stature: exact(stature) }).dims[name];
			if (!one) throw new RangeError(name);
			// The slope is printed to a ten thousandth: 0.1 mm at 1900.
			expect(Math.abs(one.value - (intercept + slope * stature))).toBeLessThanOrEqual(0.12);
			expect(Math.abs(one.sd - sd)).toBeLessThanOrEqual(0.02);
			// What nine in ten of them were off by.
			expect(Math.abs(quantile(0.05) * one.sd - low)).toBeLessThanOrEqual(0.2 * one.sd);
			expect(Math.abs(quantile(0.95) * one.sd - high)).toBeLessThanOrEqual(0.2 * one.sd);
		}
	});

	test.each(ON_OTHERS)('%s, %s, from others', (name, sex, intercept, slopes, sd) => {
		for (const z of [-1, 0, 1]) {
			const given = Object.keys(slopes).map((by) => {
				const { mean, sd: wide } = at(sex, by as Dimension);
				return [by, mean + z * wide] as const;
			});
			const one = bodyOf(sex, Object.fromEntries(given.map(([by, value]) => [by, exact(value)]))).dims[name];
			if (!one) throw new RangeError(name);
			const line = given.reduce((sum, [by, value]) => sum + (slopes[by] ?? NaN) * value, intercept);
			expect(Math.abs(one.value - line)).toBeLessThanOrEqual(0.3);
			expect(Math.abs(one.sd - sd)).toBeLessThanOrEqual(0.03);
		}
	});
});

/** Solves a system by Gaussian elimination with the largest pivot first, one right hand side a column. */
function solved(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] {
	const rows = a.map((line, i) => [...line, ...(b[i] ?? [])]);
	const n = rows.length;
	for (let k = 0; k < n; k++) {
		let pivot = k;
		for (let i = k + 1; i < n; i++) if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[pivot]?.[k] ?? 0)) pivot = i;
		const [top, other] = [rows[pivot], rows[k]];
		if (!top || !other) throw new RangeError('no row');
		rows[pivot] = other;
		rows[k] = top;
		for (let i = 0; i < n; i++) {
			const line = rows[i];
			if (!line || i === k) continue;
			const share = (line[k] ?? 0) / (top[k] ?? NaN);
			for (let j = k; j < line.length; j++) line[j] = (line[j] ?? 0) - share * (top[j] ?? 0);
		}
	}
	return rows.map((line, i) => line.slice(n).map((value) => value / (line[i] ?? NaN)));
}

interface Conditional {
	readonly mean: readonly number[];
	readonly cov: readonly (readonly number[])[];
	readonly distance: number;
}

/** The normal given a subset, all at once: S_yx (S_xx + D)^-1 (x - m). Source: any textbook of multivariate statistics. */
function conditional(sex: Sex, seen: readonly { i: number; value: number; sd: number }[]): Conditional {
	const { mean, lower } = SURVEY[sex];
	const s = (i: number, j: number) => lower[Math.max(i, j)]?.[Math.min(i, j)] ?? NaN;
	const all = DIMENSIONS.map((_, i) => i);
	const xx = seen.map((a) => seen.map((b) => s(a.i, b.i) + (a === b ? a.sd * a.sd : 0)));
	const off = seen.map(({ i, value }) => value - (mean[i] ?? NaN));
	const rhs = seen.map(({ i }, k) => [off[k] ?? NaN, ...all.map((y) => s(i, y))]);
	const weights = solved(xx, rhs);
	const sum = (of: (k: number) => number) => seen.reduce((total, _, k) => total + of(k), 0);
	return {
		mean: all.map((y) => (mean[y] ?? NaN) + sum((k) => s(y, seen[k]?.i ?? NaN) * (weights[k]?.[0] ?? NaN))),
		cov: all.map((y) => all.map((z) => s(y, z) - sum((k) => s(y, seen[k]?.i ?? NaN) * (weights[k]?.[1 + z] ?? NaN)))),
		distance: sum((k) => (off[k] ?? NaN) * (weights[k]?.[0] ?? NaN))
	};
}

/** What a tape or a scale may take, of what estimates are made from. */
const TAKEN: readonly Dimension[] = [
	'mass',
	'armSpan',
	'kneeHeight',
	'sittingHeight',
	'forearmToGrip',
	'handLength',
	'shoulderStanding',
	'wristStanding',
	'popliteal',
	'buttockPopliteal',
	'shoulderBreadth',
	'hipBreadth'
];

describe('[body R12] a second implementation of the conditional normal', () => {
	/** How tall, then of each dimension that was taken how far off what goes with that, in sds, and how surely it was taken. */
	const people = fc.record({
		sex: fc.constantFrom<Sex>('female', 'male'),
		tall: fc.double({ min: -1.8, max: 1.8, noNaN: true }),
		taken: fc.subarray([...TAKEN]),
		off: fc.array(fc.double({ min: -1.8, max: 1.8, noNaN: true }), { minLength: 12, maxLength: 12 }),
		sd: fc.constantFrom(0.01, 3, 5, 20)
	});
	type Person = typeof people extends fc.Arbitrary<infer P> ? P : never;

	function both({ sex, tall, taken, off, sd }: Person, known: Sex | undefined) {
		const stature = at(sex, 'stature').mean + tall * at(sex, 'stature').sd;
		const along = conditional(sex, [{ i: 0, value: stature, sd: 0.01 }]);
		const seen = [
			{ i: 0, value: stature, sd },
			...taken.map((name, k) => {
				const i = DIMENSIONS.indexOf(name);
				return { i, value: (along.mean[i] ?? NaN) + (off[k] ?? 0) * Math.sqrt(along.cov[i]?.[i] ?? NaN), sd };
			})
		];
		// The record keeps lengths to 1/320 mm.
		const snapped = seen.map((one) =>
			DIMENSIONS[one.i] === 'mass' ? one : { ...one, value: Math.round(one.value * 320) / 320 }
		);
		const facts = Object.fromEntries(
			snapped.map((one) => [DIMENSIONS[one.i] ?? '', { value: one.value, how: 'measured', sd }])
		);
		const range = known ? SURVEY[known].stature : ([SURVEY.female.stature[0], SURVEY.male.stature[1]] as const);
		const mass = snapped.find(({ i }) => DIMENSIONS[i] === 'mass')?.value ?? 70;
		fc.pre(stature >= range[0] && stature <= range[1] && mass >= 45 && mass <= 125);
		return { body: bodyOf(known, facts), seen: snapped, names: snapped.map(({ i }) => DIMENSIONS[i]) };
	}

	test('whatever was taken, estimates, their sds and how they err together agree, and so does what is refused', () => {
		let [kept, refused] = [0, 0];
		fc.assert(
			fc.property(people, (who) => {
				const { body, seen, names } = both(who, who.sex);
				const { mean, cov, distance } = conditional(who.sex, seen);
				fc.pre(Math.abs(distance - 9) > 1e-3);
				expect(body.refusal !== undefined).toBe(distance > 9);
				if (body.refusal) {
					refused++;
					return;
				}
				kept++;
				for (const [i, name] of DIMENSIONS.entries()) {
					if (names.includes(name) || name === 'elbowAboveSeat') continue;
					const one = body.dims[name];
					expect(one?.value).toBeCloseTo(mean[i] ?? NaN, 4);
					expect(one?.sd).toBeCloseTo(Math.sqrt(cov[i]?.[i] ?? NaN), 4);
				}
				const [arm, sits] = [DIMENSIONS.indexOf('armToGrip'), DIMENSIONS.indexOf('shoulderAboveSeat')];
				expect(covariance(body, 'armToGrip', 'shoulderAboveSeat')).toBeCloseTo(cov[arm]?.[sits] ?? NaN, 3);
			}),
			{ numRuns: 300 }
		);
		expect(kept).toBeGreaterThan(100);
		expect(refused).toBeGreaterThan(5);
	});

	test('of no sex told, the two halves drawn evenly', () => {
		fc.assert(
			fc.property(people, (who) => {
				const { body, seen, names } = both(who, undefined);
				const [a, b] = [conditional('female', seen), conditional('male', seen)];
				fc.pre(Math.min(a.distance, b.distance) < 8.99);
				for (const [i, name] of DIMENSIONS.entries()) {
					if (names.includes(name) || name === 'elbowAboveSeat') continue;
					const [x, y] = [a.mean[i] ?? NaN, b.mean[i] ?? NaN];
					const within = ((a.cov[i]?.[i] ?? NaN) + (b.cov[i]?.[i] ?? NaN)) / 2;
					// Second moments less the square of the mean.
					const variance = within + (x * x + y * y) / 2 - ((x + y) / 2) ** 2;
					expect(body.dims[name]?.value).toBeCloseTo((x + y) / 2, 4);
					expect(body.dims[name]?.sd).toBeCloseTo(Math.sqrt(variance), 3);
				}
			}),
			{ numRuns: 100 }
		);
	});
});
