import { describe, expect, test } from 'vitest';
import { leaned } from '#core/reach/lean.ts';
import { slack } from '#core/reach/slack.ts';
import { armWith, shoulderAt, sphere, zero } from './arms.ts';

/** Slack on a wall straight ahead: how far the wall is, how far to the side and how high the target. */
const onWall =
	(arm: ReturnType<typeof sphere>, { height, off, x = 0 }: { height: number; off: number; x?: number }) =>
	(z: number) =>
		slack(arm, shoulderAt(height), [x, off, z], 'grip');

const expectNear = (seen: number, published: number, within: number) => {
	expect(Math.abs(seen - published), `${seen} against ${published}`).toBeLessThanOrEqual(within);
};

describe('published cases', () => {
	// Source: Pythagoras, 5-12-13.
	test('[reach R1] T01: a sphere of 650 meets a wall 250 off in a circle of 600', () => {
		const arm = sphere(650);
		expectNear(
			zero((x) => slack(arm, shoulderAt(1000), [x, 250, 1000], 'grip'), 0, 900),
			600,
			0.01
		);
	});

	// Source: Pythagoras, 3-4-5.
	test.each([
		[0, 400, 1600],
		[360, 520, 1480]
	])('[reach R1] T02: at %s to the side from %s to %s', (x, low, high) => {
		const at = onWall(sphere(650), { height: 1000, off: 250, x });
		expectNear(zero(at, 1000, 0), low, 0.01);
		expectNear(zero(at, 1000, 2000), high, 0.01);
	});

	test('[reach R1] T03: a wall as far as the arm is long is one point, further none', () => {
		const at = (off: number) => onWall(sphere(600), { height: 1000, off });
		expect(at(600)(1000)).toBe(0);
		expect(at(600)(1000.5)).toBeLessThan(0);
		expect(at(601)(1000)).toBe(-1);
	});

	// Source: by hand, 304 - 38 - 16 = 250.
	test('[reach R1] T05: a bar stands nearer than its wall by its gap and half its tube', () => {
		const arm = sphere(650);
		expectNear(
			zero((x) => slack(arm, shoulderAt(1000), [x, 304 - 38 - 16, 1000], 'grip'), 0, 900),
			600,
			0.01
		);
	});

	// Source: bench reach as published with Drillis and Contini's fractions by T. Armstrong.
	test('[reach R1] T07: shoulder 1230, arm 558, target 900: 450 ahead', () => {
		const arm = sphere(558);
		expectNear(
			zero((y) => slack(arm, shoulderAt(1230), [0, y, 900], 'grip'), 300, 700),
			450,
			0.1
		);
	});

	// Source: plane geometry, 567 sin 20 and 567 (1 - cos 20).
	test('[reach R6] T11: 20 degrees of lean', () => {
		const { shoulder } = leaned(shoulderAt(567), [0, 0, 0], 20, [0, 1, 0]);
		expectNear(shoulder[1], 193.93, 0.01);
		expectNear(567 - shoulder[2], 34.19, 0.01);
	});
});

describe('the two-link arm', () => {
	const limited = (flexion: number, elbow: 'recorded' | 'assumed' = 'recorded', elbowFlexion = 150) =>
		armWith({ range: { flexion, abduction: Math.min(flexion, 114), adduction: 30 }, elbow, elbowFlexion });

	// Source: plane two-link geometry; 121 degrees of flexion in daily tasks, Namdari 2012.
	test('[reach R3] T12a: shoulder 1000, wall 300 off, target 1400', () => {
		const at = (arm: ReturnType<typeof sphere>) => slack(arm, shoulderAt(1000), [0, 300, 1400], 'grip');
		expect(at(limited(121))).toBeGreaterThan(0);
		expect(at(limited(100))).toBeLessThan(0);
		expectNear(
			zero((flexion) => at(limited(flexion)), 150, 90),
			108.77,
			0.05
		);
		expectNear(
			zero((bend) => at(limited(150, 'recorded', bend)), 150, 30),
			70.18,
			0.05
		);
	});

	// Source: the same; hand on an arc about the elbow at the limit.
	test.each([
		[60, 1142.9],
		[90, 1299.8],
		[121, 1458.3],
		[179, 1532.3]
	])('[reach R3] T12b: flexion %s, elbow recorded: up to %s', (flexion, highest) => {
		expectNear(zero(onWall(limited(flexion), { height: 1000, off: 300 }), 1050, 1600), highest, 0.1);
	});

	test('[reach R2] T12b: flexion 121, elbow not recorded: up to 1180.3', () => {
		expectNear(zero(onWall(limited(121, 'assumed'), { height: 1000, off: 300 }), 1050, 1600), 1180.3, 0.1);
	});

	// Source: cosine rule.
	test('[reach R1] T12c: elbow bends 150 and lacks 30: from 158.5 to 590.2', () => {
		const arm = armWith({ elbowDeficit: 30 });
		const ahead = (y: number) => slack(arm, shoulderAt(1000), [0, y, 1000], 'grip');
		expectNear(zero(ahead, 400, 0), 158.5, 0.1);
		expectNear(zero(ahead, 400, 800), 590.2, 0.1);
	});

	// Source: Pythagoras; 380 to 1220, 2010 ADA Standards 308.
	test('[reach R1] T14: seat 450, shoulder +563, arm 611, wall 300 off: 480.7 to 1545.3, so not down to 380', () => {
		const at = onWall(sphere(611), { height: 450 + 563, off: 300 });
		expectNear(zero(at, 1013, 0), 480.7, 0.1);
		expectNear(zero(at, 1013, 2000), 1545.3, 0.1);
		expect(at(380)).toBeLessThan(0);
		expect(at(1220)).toBeGreaterThan(0);
	});

	// Source: first-order propagation of 600 +-20 and 300 +-15.
	test('[reach R1] T16: a radius of 519.6 that errs by 24.66', () => {
		const radius = (arm: number, off: number) => {
			const made = sphere(arm);
			return zero((x) => slack(made, shoulderAt(1000), [x, off, 1000], 'grip'), 100, 900);
		};
		expectNear(radius(600, 300), 519.6, 0.02);
		const byArm = (radius(600.5, 300) - radius(599.5, 300)) * 20;
		const byWall = (radius(600, 300.5) - radius(600, 299.5)) * 15;
		expectNear(Math.hypot(byArm, byWall), 24.66, 0.02);
	});
});
