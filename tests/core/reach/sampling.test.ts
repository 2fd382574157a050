import { describe, expect, test } from 'vitest';
import type { Vec } from '#core/geometry/vec.ts';
import { armFrom, type ArmSpec } from '#core/reach/arm.ts';
import { easySlack, slack } from '#core/reach/slack.ts';
import { shoulderAt, SPEC } from './arms.ts';

/**
 * An arm is moved about in thousands of poses by plain rotations, which know nothing of slack; where the hands came to is
 * held against its sign. Source: kinematics of two links, written here a second time.
 */
const RADIANS = Math.PI / 180;
const AT = 1000;
const posture = shoulderAt(AT);

/** How high the upper arm goes toward an azimuth (0 ahead, 90 outward, 180 behind, 270 across), linear between the four. */
function limit({ range }: ArmSpec, azimuth: number, most = 180): number {
	// 50 behind is ours and the arm's own words.
	const four = [range.flexion, range.abduction, 50, range.adduction, range.flexion].map((one) => Math.min(one, most));
	const quarter = Math.min(3, Math.floor(azimuth / 90));
	const [from = NaN, to = NaN] = four.slice(quarter);
	return from + (to - from) * (azimuth / 90 - quarter);
}

/** A point at a distance along a direction from the shoulder of a left arm, which faces +y with outward at +x. */
const along = (azimuth: number, raised: number, far: number): Vec => [
	Math.sin(raised * RADIANS) * Math.sin(azimuth * RADIANS) * far,
	Math.sin(raised * RADIANS) * Math.cos(azimuth * RADIANS) * far,
	-Math.cos(raised * RADIANS) * far
];
const above = ([x, y, z]: Vec): Vec => [x, y, z + AT];
const raisedOf = ([x, y, z]: Vec): number => Math.atan2(Math.hypot(x, y), -z) / RADIANS;
const apart = (a: Vec, b: Vec): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The hand of a pose: forearm bent off the upper arm and turned about it. */
function hand(spec: ArmSpec, azimuth: number, raised: number, bend: number, turn: number): Vec {
	const [u, v] = [along(azimuth, raised, 1), along(azimuth, raised + 90, 1)];
	const w: Vec = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
	const [c, s] = [Math.cos(bend * RADIANS), Math.sin(bend * RADIANS)];
	const one = (i: 0 | 1 | 2): number =>
		u[i] * spec.upper +
		(u[i] * c + (v[i] * Math.cos(turn * RADIANS) + w[i] * Math.sin(turn * RADIANS)) * s) * spec.fore;
	return [one(0), one(1), one(2)];
}

/** Hands of all poses of a mesh, the upper arm no higher than `most`. */
function hands(spec: ArmSpec, most = 180): readonly Vec[] {
	const found: Vec[] = [];
	for (let azimuth = 0; azimuth < 360; azimuth += 9) {
		const high = limit(spec, azimuth, most);
		for (let k = 0; k <= 12; k++)
			for (let bend = spec.elbowDeficit; bend <= spec.elbowFlexion; bend += 10)
				for (let turn = 0; turn < (bend === 0 ? 1 : 360); turn += 24)
					found.push(hand(spec, azimuth, (high * k) / 12, bend, turn));
	}
	return found;
}

/**
 * Whether bending the elbow to bring the hand this near takes the upper arm further from the hand than pain allows on any
 * side of hanging: nearly straight below the shoulder, close to the body. There the model says more than a pose does.
 */
function folded(spec: ArmSpec, target: Vec, most: number): boolean {
	const far = Math.hypot(...target);
	const cos = (spec.upper ** 2 + far ** 2 - spec.fore ** 2) / (2 * spec.upper * far);
	return raisedOf(target) + most < Math.acos(Math.max(-1, Math.min(1, cos))) / RADIANS;
}

const nearest = (target: Vec, all: readonly Vec[]): number =>
	all.reduce((least, one) => Math.min(least, apart(one, target)), Infinity);

const ARMS: readonly (readonly [string, ArmSpec])[] = [
	['a free shoulder', SPEC],
	['a stiff one', { ...SPEC, range: { flexion: 100, abduction: 80, adduction: 25 } }],
	[
		'a stiff elbow',
		{ ...SPEC, range: { flexion: 130, abduction: 110, adduction: 30 }, elbowDeficit: 30, elbowFlexion: 110 }
	],
	['long and stiff across', { ...SPEC, upper: 350, fore: 340, range: { flexion: 150, abduction: 140, adduction: 60 } }]
];
/** Points of a grid about the shoulder. */
const GRID: readonly Vec[] = [-600, -400, -200, 0, 200, 400, 600].flatMap((x) =>
	[-600, -400, -200, 0, 200, 400, 600].flatMap((y) => [-500, -250, -50, 150, 350, 550].map((z): Vec => [x, y, z]))
);
/** Half a mesh of 9 degrees at arm's length, of 10 degrees of bend and of 24 of turn at the forearm's. */
const MESH = 90;

describe.each(ARMS)('[reach R14] poses of %s against the sign of slack', (_, spec) => {
	const arm = armFrom(spec);
	const straight = { ...spec, elbow: 'assumed' as const };

	test('a hand as straight as the elbow goes is reached along every direction the upper arm takes, and no further', () => {
		const outer = Math.hypot(
			spec.upper + spec.fore * Math.cos(spec.elbowDeficit * RADIANS),
			spec.fore * Math.sin(spec.elbowDeficit * RADIANS)
		);
		for (let azimuth = 0; azimuth < 360; azimuth += 7)
			for (let raised = 2; raised <= limit(spec, azimuth); raised += 6) {
				// Chords of the cone lie up to 2 mm inside the curve they stand for.
				expect(slack(arm, posture, above(along(azimuth, raised, outer)), 'grip')).toBeGreaterThan(-6);
				expect(slack(arm, posture, above(along(azimuth, raised, outer + 6)), 'grip')).toBeLessThan(0);
			}
	});

	test('an elbow nobody recorded: exactly the directions of the upper arm', () => {
		const stiff = armFrom(straight);
		for (let azimuth = 0; azimuth < 360; azimuth += 15) {
			const high = limit(spec, azimuth);
			const at = (raised: number) => slack(stiff, posture, above(along(azimuth, raised, 450)), 'grip');
			if (high > 3) expect(at(high - 2), String(azimuth)).toBeGreaterThan(0);
			if (high < 177) expect(at(high + 2), String(azimuth)).toBeLessThan(0);
		}
	});

	test('no target is called reached, easily or stretched, that no pose comes near', () => {
		const all = hands(spec);
		let reached = 0;
		for (const target of GRID) {
			if (slack(arm, posture, above(target), 'grip') < 0) continue;
			reached++;
			expect(nearest(target, all), String(target)).toBeLessThan(MESH);
		}
		expect(reached).toBeGreaterThan(15);
	});

	test('with pain from 40 degrees nothing is easy that an upper arm below 40 does not bring the hand to', () => {
		const hurts = armFrom({ ...spec, hurtsFrom: 40 });
		const painless = hands(spec, 40);
		let easy = 0;
		for (const target of GRID.flatMap(([x, y, z]): Vec[] => [
			[x / 2, y / 2, z / 2],
			[x, y, z]
		])) {
			if (easySlack(hurts, posture, above(target), 'grip', 0) < 0 || folded(spec, target, 40)) continue;
			easy++;
			expect(nearest(target, painless), String(target)).toBeLessThan(MESH);
		}
		expect(easy).toBeGreaterThan(3);
	});

	test('with pain from 40 degrees and an elbow nobody recorded, no hand above that angle is easy, whichever way', () => {
		const hurts = armFrom({ ...straight, hurtsFrom: 40 });
		let [easy, tried] = [0, 0];
		for (let azimuth = 0; azimuth < 360; azimuth += 6)
			for (let raised = 1; raised < 179; raised += 3)
				for (const far of [170, 200, 240, 300, 400, 500]) {
					const target = along(azimuth, raised, far);
					const spare = easySlack(hurts, posture, above(target), 'grip', 0);
					tried++;
					if (spare < 0) continue;
					easy++;
					expect(raisedOf(target), `${String(azimuth)} ${String(far)}`).toBeLessThanOrEqual(40.01);
				}
		expect([easy > 100, tried > 20000]).toEqual([true, true]);
	});

	test('easy lies inside stretched, and pain takes from what is easy and from nothing else', () => {
		for (const from of [20, 40, 90]) {
			const hurts = armFrom({ ...spec, hurtsFrom: from });
			for (const target of GRID) {
				const here = above(target);
				const easy = easySlack(hurts, posture, here, 'grip', 0);
				expect(easy).toBeLessThanOrEqual(slack(hurts, posture, here, 'grip') + 1e-9);
				expect(easy).toBeLessThanOrEqual(easySlack(arm, posture, here, 'grip', 0) + 1e-9);
				expect(slack(hurts, posture, here, 'grip')).toBe(slack(arm, posture, here, 'grip'));
			}
		}
	});
});
