import fc from 'fast-check';
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, test } from 'vitest';
import { armWithMargin, easyArm } from '#core/reach/arm.ts';
import { fitTo, type Fitted } from '#core/reach/fit.ts';
import { root } from '#core/reach/least-squares.ts';
import { MOVABLE } from '#core/reach/prior.ts';
import { slack } from '#core/reach/slack.ts';
import type { Taped } from '#core/reach/taped.ts';
import { armOf, bodyOf, round, taped, told, truthOf, type Truth } from './tried.ts';

const { spec, prior } = armOf(bodyOf());
const lower = root(prior.cov);
const valuesAt = (z: readonly number[]) =>
	prior.mean.map((m, i) => (lower[i] ?? []).reduce((sum, n, k) => sum + n * (z[k] ?? 0), m));
/** A person as the estimate expects her, in standard deviations. */
const drawn = fc.array(fc.double({ min: -1.5, max: 1.5, noNaN: true }), { minLength: 8, maxLength: 8 }).map(valuesAt);
const NEUTRAL = truthOf(spec, valuesAt([0.8, -0.6, -0.7, 0.5, 0.4, 0, 0, -0.5]));

function fitted(points: readonly Taped[], of = { spec, prior }): Fitted {
	const answer = fitTo(of.spec, of.prior, points);
	if (!answer.fitted) throw new Error(`left out: ${answer.leftOut.map(({ id }) => id).join(', ')}`);
	return answer.fitted;
}

const MEASURED = { value: 150, how: 'measured' };

const sds = ({ cov }: { cov: Fitted['cov'] }) => cov.map((row, i) => Math.sqrt(Math.max(0, row[i] ?? 0)));
const high = (truth: Truth, rest: Partial<Taped> = {}) => taped(truth, 'high', [-0.1, 0, 1], rest);

describe('[reach R10] known arms come back from their points', () => {
	test('exactly taped all round, what the points can tell to 5 mm', () => {
		fc.assert(
			fc.property(drawn, (values) => {
				const truth = truthOf(spec, values);
				const points = [
					...round(truth, { sd: 0.5 }),
					taped(truth, 'easy', [1, 0.3, -0.2], { reach: 'comfortable', sd: 0.5 })
				];
				const { mean } = fitted(points);
				const arm = (v: readonly number[]) => (v[0] ?? 0) + (v[1] ?? 0);
				expect(Math.abs(arm(mean) - arm(values))).toBeLessThan(5);
				for (const name of ['up', 'ahead', 'outward'] as const) {
					const i = MOVABLE.indexOf(name);
					expect(Math.abs((mean[i] ?? NaN) - (values[i] ?? NaN)), name).toBeLessThan(5);
				}
				expect(Math.abs((mean[7] ?? NaN) - (values[7] ?? NaN))).toBeLessThan(0.01);
			}),
			{ numRuns: 25 }
		);
	});

	test('as a therapist tapes: every surface within 20 mm of where the hand stopped, nothing left out', () => {
		fc.assert(
			fc.property(drawn, (values) => {
				const { leftOut, fitted: found } = fitTo(spec, prior, [
					...round(truthOf(spec, values)),
					high(truthOf(spec, values))
				]);
				expect(leftOut).toEqual([]);
				for (const off of Object.values(found?.off ?? { none: NaN })) expect(Math.abs(off)).toBeLessThan(20);
			}),
			{ numRuns: 25 }
		);
	});

	test.each([60, 90, 110])('a shoulder that stops at %s degrees is told from a short arm', (flexion) => {
		const truth = truthOf(
			spec,
			prior.mean.map((m, i) => (MOVABLE[i] === 'flexion' ? flexion : m))
		);
		const low = { down: [0.2, 0, -1], 'out-low': [0.3, 0.8, -0.6], out: [0.1, 1, 0] } as const;
		const points = Object.entries(low).map(([id, way]) => taped(truth, id, way));
		const { mean } = fitted([...points, { ...(points[0] as Taped), id: 'high', at: stopsAt(truth) }]);
		expect(Math.abs((mean[5] ?? NaN) - flexion)).toBeLessThan(8);
		expect(Math.abs((mean[0] ?? NaN) + (mean[1] ?? NaN) - spec.upper - spec.fore)).toBeLessThan(15);
	});
});

/** Straight up a wall 350 ahead of the shoulder, from well below: where a stiff shoulder stops the hand. */
function stopsAt({ arm, posture }: Truth): Taped['at'] {
	const [ahead, outward, up] = posture.shoulder;
	for (let rise = -400; ; rise++) {
		if (slack(arm, posture, [ahead + 350, outward, up + rise + 1], 'fingertip') < 0)
			return [ahead + 350, outward, up + rise];
	}
}

describe('[reach R10] against a general library', () => {
	// Source: ml-levenberg-marquardt, which knows neither priors nor arms: a prior is more points.
	test('the same least sum of squares, and the same arm', () => {
		fc.assert(
			fc.property(
				drawn,
				fc.array(fc.double({ min: -25, max: 25, noNaN: true }), { minLength: 6, maxLength: 6 }),
				(values, jitter) => {
					const truth = truthOf(spec, values);
					const points = [...round(truth), high(truth)].map((p, i): Taped => ({
						...p,
						at: [p.at[0] + (jitter[i] ?? 0), p.at[1], p.at[2] - (jitter[5 - i] ?? 0) / 2]
					}));
					const { leftOut, fitted: ours } = fitTo(spec, prior, points);
					if (leftOut.length > 0 || !ours || ours.lifts) return;
					const figures = (z: readonly number[]) => {
						const { arm, posture } = truthOf(spec, valuesAt(z));
						return [...z, ...points.map(({ at, sd, hand }) => slack(arm, posture, at, hand) / sd)];
					};
					const cost = (z: readonly number[]) => figures(z).reduce((sum, n) => sum + n * n, 0);
					const rows = Array.from({ length: 8 + points.length }, (_, i) => i);
					const peer = levenbergMarquardt(
						{ x: rows, y: rows.map(() => 0) },
						(z) => {
							const all = figures(z);
							return (i) => all[i] ?? NaN;
						},
						{
							initialValues: lower.map(() => 0.01),
							gradientDifference: 1e-4,
							centralDifference: true,
							damping: 1e-3,
							maxIterations: 200,
							errorTolerance: 1e-12
						}
					);
					const theirs = valuesAt(peer.parameterValues);
					const z = unknownsOf(ours.mean);
					// Never a worse one than theirs; where theirs is as good, it is the same arm.
					expect(cost(z)).toBeLessThan(cost(peer.parameterValues) + 1e-3);
					if (cost(peer.parameterValues) > cost(z) + 1e-4) return;
					for (let i = 0; i < 5; i++) expect(Math.abs((ours.mean[i] ?? NaN) - (theirs[i] ?? NaN))).toBeLessThan(0.5);
				}
			),
			{ numRuns: 15 }
		);
	});

	test('a root times itself turned over is the matrix', () => {
		for (const [i, row] of prior.cov.entries())
			for (const [j, value] of row.entries())
				expect((lower[i] ?? []).reduce((sum, n, k) => sum + n * (lower[j]?.[k] ?? 0), 0)).toBeCloseTo(value, 8);
	});
});

/** The unknowns of values: forward through the triangle. */
function unknownsOf(values: readonly number[]): readonly number[] {
	const z: number[] = [];
	for (const [i, row] of lower.entries()) {
		const rest = (values[i] ?? 0) - (prior.mean[i] ?? 0) - z.reduce((sum, n, k) => sum + n * (row[k] ?? 0), 0);
		z.push(rest / (row[i] ?? 1));
	}
	return z;
}

describe('[reach R11] a point that cannot belong', () => {
	test.each([
		['farther than any arm', 1.35, {}],
		// A shoulder nobody measured may well stop short: then it may belong.
		['short of what a shoulder that was measured allows', 0.6, { flexion: MEASURED, abduction: MEASURED }]
	])('%s is named and left out, and the others tell what they told without it', (_, share, left) => {
		const of = armOf(bodyOf({ arms: { left, right: {} } }));
		const points = round(NEUTRAL);
		const { shoulder } = NEUTRAL.posture;
		for (const odd of points) {
			const along = (i: 0 | 1 | 2) => shoulder[i] + (odd.at[i] - shoulder[i]) * share;
			const others = points.filter((p) => p !== odd);
			const answer = fitTo(of.spec, of.prior, [...others, { ...odd, at: [along(0), along(1), along(2)] }]);
			expect(answer.leftOut.map(({ id }) => id)).toEqual([odd.id]);
			expect(Math.abs(answer.leftOut[0]?.off ?? NaN)).toBeGreaterThan(100);
			expect(answer.fitted?.mean).toEqual(fitted(others, of).mean);
		}
	});

	test('among three points there are too few left', () => {
		const [a, b, c] = round(NEUTRAL);
		if (!a || !b || !c) throw new Error('three points');
		const answer = fitTo(spec, prior, [a, b, { ...c, at: [c.at[0] + 500, c.at[1] + 500, c.at[2]] }]);
		expect(answer.fitted).toBeNull();
		expect(answer.leftOut.length).toBe(1);
	});
});

describe('[reach R12] how sure a fit is', () => {
	test('a point that lies where the fit says widens nothing', () => {
		fc.assert(
			fc.property(drawn, (values) => {
				const points = round(truthOf(spec, values));
				const before = fitted(points);
				const more = high(truthOf(spec, before.mean));
				const after = fitted([...points, more]);
				for (const [i, sd] of sds(after).entries()) expect(sd).toBeLessThan((sds(before)[i] ?? 0) * 1.001 + 1e-9);
			}),
			{ numRuns: 20 }
		);
	});

	test('what no point tells stays as it was', () => {
		const { mean, cov } = fitted(round(NEUTRAL));
		expect(mean[7]).toBe(prior.mean[7]);
		expect(Math.sqrt(cov[7]?.[7] ?? 0)).toBeCloseTo(0.05, 10);
	});

	test('what was measured is held', () => {
		const of = armOf(bodyOf({ arms: { left: { toGrip: { value: 620, how: 'measured' } }, right: {} } }));
		const { mean } = fitted(round(NEUTRAL), of);
		expect((mean[0] ?? 0) + (mean[1] ?? 0)).toBeCloseTo(620, 6);
	});
});

describe('[reach R5] easy lies inside stretched after a fit as before', () => {
	test('at every probability, however far the hand goes without stretching', () => {
		fc.assert(
			fc.property(drawn, fc.double({ min: 0.5, max: 0.99, noNaN: true }), (values, probability) => {
				const { arm, posture } = truthOf(spec, values);
				for (const { at } of round({ arm, posture }))
					expect(slack(easyArm(arm), posture, at, 'grip')).toBeLessThanOrEqual(
						slack(armWithMargin(arm, probability), posture, at, 'grip')
					);
			}),
			{ numRuns: 50 }
		);
	});
});

describe('[reach R13] an elbow nobody recorded', () => {
	const flexed = prior.mean.map((m, i) => (MOVABLE[i] === 'flexion' ? 100 : m));
	const held = armOf(bodyOf({ arms: { left: { flexion: { value: 100, how: 'measured' } }, right: {} } }));

	test('lifts the hand when a point is taped above the line of the upper arm', () => {
		const truth = truthOf({ ...spec, elbow: 'recorded' }, flexed);
		const above = { ...high(truth), at: stopsAt(truth) };
		const found = fitted([...round(truth), above], held);
		expect(found.lifts).toBe(true);
		expect(Math.abs(found.off['high'] ?? NaN)).toBeLessThan(20);
	});

	test('does not when none is', () => {
		expect(fitted(round(NEUTRAL), armOf(bodyOf({ mass: told(60) }))).lifts).toBe(false);
	});
});
