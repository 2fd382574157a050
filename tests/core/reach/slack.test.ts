import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Vec } from '#core/geometry/vec.ts';
import { armFrom, armWithMargin, easyArm, type ArmSpec, type ReachKind } from '#core/reach/arm.ts';
import { leanFan, slackOverFan, slackWithLean } from '#core/reach/lean.ts';
import { easySlack, slack, type Posture } from '#core/reach/slack.ts';
import { armWith, shoulderAt, SPEC } from './arms.ts';

const upTo = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anySpec: fc.Arbitrary<ArmSpec> = fc.record({
	side: fc.constantFrom('left', 'right'),
	upper: between(150, 400),
	fore: between(150, 400),
	hand: between(0, 220),
	range: fc.record({ flexion: upTo(180), abduction: upTo(180), adduction: upTo(90) }),
	elbowDeficit: upTo(120),
	elbowFlexion: between(30, 160),
	elbow: fc.constantFrom('recorded', 'assumed'),
	sd: between(0.1, 60),
	toMidline: between(0, 250)
});
const anyPoint: fc.Arbitrary<Vec> = fc.tuple(between(-900, 900), between(-900, 900), between(-900, 900));
const anyKind: fc.Arbitrary<ReachKind> = fc.constantFrom('grip', 'push', 'fingertip');
const anyPosture: fc.Arbitrary<Posture> = fc
	.tuple(anyPoint, upTo(2 * Math.PI), fc.constantFrom('left', 'right'))
	.map(([shoulder, turn, side]) => ({ shoulder, forward: [Math.cos(turn), Math.sin(turn), 0], side }));
/** Steps from a hair to a hand, since a slope can hide in either. */
const anyStep: fc.Arbitrary<Vec> = fc
	.tuple(anyPoint, fc.constantFrom(1e-4, 1e-2, 0.2))
	.map(([p, k]) => [p[0] * k, p[1] * k, p[2] * k]);

const moved = (a: Vec, by: Vec): Vec => [a[0] + by[0], a[1] + by[1], a[2] + by[2]];
const HIP: Vec = [0, 0, -480];
const hipUnder = ({ shoulder }: Posture): Vec => moved(shoulder, HIP);

describe('slope', () => {
	const slacks = {
		slack: (spec: ArmSpec, posture: Posture, target: Vec, kind: ReachKind) =>
			slack(armFrom(spec), posture, target, kind),
		easySlack: (spec: ArmSpec, posture: Posture, target: Vec, kind: ReachKind) =>
			easySlack(armFrom(spec), posture, target, kind, 30),
		slackWithLean: (spec: ArmSpec, posture: Posture, target: Vec, kind: ReachKind) =>
			slackWithLean(armFrom(spec), posture, hipUnder(posture), target, kind, 200)
	};

	test.each(Object.entries(slacks))('[reach R1] %s: at most 1 in the target, never NaN', (_, of) => {
		fc.assert(
			fc.property(anySpec, anyPosture, anyPoint, anyStep, anyKind, (spec, posture, offset, step, kind) => {
				const target = moved(posture.shoulder, offset);
				const [here, there] = [of(spec, posture, target, kind), of(spec, posture, moved(target, step), kind)];
				expect(Number.isFinite(here)).toBe(true);
				expect(Math.abs(here - there)).toBeLessThanOrEqual(Math.hypot(...step) + 1e-6);
			}),
			{ numRuns: 5000 }
		);
	});

	test.each(Object.entries(slacks))('[reach R1] %s: at most 1 in the shoulder', (_, of) => {
		fc.assert(
			fc.property(anySpec, anyPosture, anyPoint, anyStep, anyKind, (spec, posture, offset, step, kind) => {
				const target = moved(posture.shoulder, offset);
				const other = { ...posture, shoulder: moved(posture.shoulder, step) };
				expect(Math.abs(of(spec, posture, target, kind) - of(spec, other, target, kind))).toBeLessThanOrEqual(
					Math.hypot(...step) + 1e-6
				);
			}),
			{ numRuns: 2000 }
		);
	});

	// Recorded from a failure: rounding decided whether such a target was taken to lie at a right angle to the cone.
	test('[reach R1] a long forearm and a stiff shoulder: no jump more than a right angle past the cone', () => {
		const arm = armWith({ upper: 150, fore: 400, range: { flexion: 20, abduction: 20, adduction: 10 } });
		for (let k = 0; k < 2000; k++) {
			const forward: Vec = [Math.sin(k), Math.cos(k), 0];
			const target: Vec = [170 * forward[0], 170 * forward[1], 306];
			const [here, there] = [target, moved(target, [1e-4, 1e-4, 1e-4])].map((one) =>
				slack(arm, { ...shoulderAt(0), forward }, one, 'grip')
			);
			expect(Math.abs((here ?? NaN) - (there ?? NaN))).toBeLessThan(2e-4);
		}
	});

	test('[reach R1] on the shoulder itself, straight above and straight below it: a number', () => {
		for (const elbow of ['recorded', 'assumed'] as const)
			for (const up of [-700, -300, 0, 300, 700]) {
				const arm = armWith({ elbow, range: { flexion: 120, abduction: 100, adduction: 0 } });
				expect(slack(arm, shoulderAt(1000), [0, 0, 1000 + up], 'grip')).not.toBeNaN();
			}
		expect(slack(armWith({}), shoulderAt(1000), [0, 0, 1000], 'grip')).toBeCloseTo(-158.5, 1);
	});

	test('[reach R1] the left arm is the right one in a mirror', () => {
		fc.assert(
			fc.property(anySpec, anyPoint, anyKind, (spec, [x, y, z], kind) => {
				const [left, right] = [
					slack(armFrom(spec), shoulderAt(0), [x, y, z], kind),
					slack(armFrom(spec), { ...shoulderAt(0), side: 'right' }, [-x, y, z], kind)
				];
				expect(left).toBeCloseTo(right, 9);
			})
		);
	});

	// Source: the frame's own words: facing along +y from the back wall, her left is toward +x.
	test('[reach R2] out of a left shoulder is +x for one who faces the entry', () => {
		const arm = armWith({ range: { flexion: 90, abduction: 120, adduction: 20 }, elbow: 'assumed' });
		expect(slack(arm, shoulderAt(0), [400, 0, 100], 'grip')).toBeGreaterThan(0);
		expect(slack(arm, shoulderAt(0), [-400, 0, 100], 'grip')).toBeLessThan(0);
	});
});

describe('nesting', () => {
	test('[reach R5] easy lies inside with margin inside stretched, at every probability', () => {
		fc.assert(
			fc.property(
				anySpec,
				anyPosture,
				anyPoint,
				anyKind,
				between(0.001, 0.999),
				(spec, posture, offset, kind, probability) => {
					const arm = armFrom(spec);
					const target = moved(posture.shoulder, offset);
					const [easy, margin, full] = [easyArm(arm), armWithMargin(arm, probability), arm].map((one) =>
						slack(one, posture, target, kind)
					);
					expect(easy).toBeLessThanOrEqual(margin ?? NaN);
					expect(margin).toBeLessThanOrEqual(full ?? NaN);
					expect(easySlack(arm, posture, target, kind, -500)).toBeLessThanOrEqual(easy ?? NaN);
					expect(easySlack(armWithMargin(arm, probability), posture, target, kind, -500)).toBe(
						easySlack(arm, posture, target, kind, -500)
					);
				}
			),
			{ numRuns: 1000 }
		);
	});

	// Source: the one-sided 95 % point of the normal, 1.645.
	test('[reach R5] at 0.95 an arm is 1.645 sd shorter, and no shorter than easy', () => {
		const outer = (sd: number) => armWithMargin(armWith({ sd })).spans.grip.outer;
		expect(outer(20)).toBeCloseTo(611 - 32.9, 1);
		expect(outer(60)).toBeCloseTo(0.9 * 611, 9);
		expect(armWithMargin(armWith({}), 0.2).spans.grip.outer).toBe(611);
	});

	test('[reach R4] fingers reach beyond a push and a push beyond a grip, by shares of the hand', () => {
		const far = (kind: ReachKind) => slack(armWith({}), shoulderAt(0), [0, 500, 0], kind);
		expect(far('push') - far('grip')).toBeCloseTo(0.2 * 181, 9);
		expect(far('fingertip') - far('grip')).toBeCloseTo(0.65 * 181, 9);
		expect(armWith({}).spans.fingertip.sd).toBeCloseTo(Math.hypot(20, 10), 9);
	});

	test('[reach R5] never easy: across the midline, above the shoulder, below the hip', () => {
		const at = (x: number, z: number) => easySlack(armWith({}), shoulderAt(1000), [x, 300, z], 'grip', 500);
		expect(at(-183, 800)).toBe(0);
		expect(at(-184, 800)).toBe(-1);
		expect(at(0, 1000)).toBe(0);
		expect(at(0, 1001)).toBe(-1);
		expect(at(0, 500)).toBeLessThanOrEqual(0);
		expect(at(0, 510)).toBeLessThanOrEqual(10);
		expect(at(0, 499)).toBeLessThan(0);
		expect(at(0, 800)).toBeGreaterThan(100);
	});

	test('[reach R1] more range, a longer forearm or a freer elbow never lose a target in the outer half', () => {
		const grown = fc.record({ flexion: between(60, 120), abduction: between(60, 120), adduction: between(10, 60) });
		fc.assert(
			fc.property(grown, upTo(50), anyPoint, (range, more, target) => {
				const wider = {
					flexion: range.flexion + more,
					abduction: range.abduction + more,
					adduction: range.adduction + more
				};
				const [less, larger] = [range, wider].map((one) =>
					slack(armWith({ range: one }), shoulderAt(0), target, 'grip')
				);
				// Chords of the cone bend by less than 2 mm; zero is where they may differ in sign.
				if ((less ?? 0) > 2) expect(larger).toBeGreaterThanOrEqual(0);
				const stiff = slack(armWith({ range, elbow: 'assumed' }), shoulderAt(0), target, 'grip');
				expect(stiff).toBeLessThanOrEqual(less ?? NaN);
			}),
			{ numRuns: 2000 }
		);
	});
});

describe('forward kinematics', () => {
	const RANGE = { flexion: 125, abduction: 110, adduction: 35 };
	const arm = armWith({ range: RANGE, elbowDeficit: 10, elbowFlexion: 140 });
	const rad = Math.PI / 180;

	/** The limit of elevation, linear between the four directions recorded. */
	function limit(azimuth: number): number {
		const at: readonly [number, number][] = [
			[-180, 50],
			[-90, RANGE.adduction],
			[0, RANGE.flexion],
			[90, RANGE.abduction],
			[180, 50]
		];
		for (const [k, [a, from]] of at.entries()) {
			const [b, to] = at[k + 1] ?? [180, 50];
			if (azimuth <= b) return from + ((to - from) * (azimuth - a)) / Math.max(1, b - a);
		}
		return 50;
	}

	const direction = (azimuth: number, raised: number): Vec => [
		Math.sin(raised * rad) * Math.sin(azimuth * rad),
		Math.sin(raised * rad) * Math.cos(azimuth * rad),
		-Math.cos(raised * rad)
	];

	/** Hands of an arm whose upper arm stands at azimuth and elevation, elbow bent upward in the vertical plane. */
	function hand(azimuth: number, raised: number, bend: number): Vec {
		const [upper, fore] = [direction(azimuth, raised), direction(azimuth, raised + bend)];
		return [0, 1, 2].map((i) => (upper[i] ?? 0) * 311 + (fore[i] ?? 0) * 300) as unknown as Vec;
	}

	test('[reach R3] every hand of a bent arm ahead is reached', () => {
		let tried = 0;
		for (let azimuth = -90; azimuth <= 45; azimuth += 5)
			for (let raised = 0; raised <= limit(azimuth); raised += 5)
				for (let bend = 10; bend <= 140; bend += 10) {
					// Past the zenith the hand is behind the vertical plane it was bent in.
					if (raised + bend > 180) continue;
					tried++;
					expect(slack(arm, shoulderAt(0), hand(azimuth, raised, bend), 'grip')).toBeGreaterThanOrEqual(-2);
				}
		expect(tried).toBeGreaterThan(3000);
	});

	test('[reach R2] every hand of an arm as straight as it goes is reached, whichever way it points', () => {
		const stretched = armWith({ range: RANGE });
		for (let azimuth = -180; azimuth < 180; azimuth += 5)
			for (let raised = 1; raised <= limit(azimuth); raised += 4)
				expect(slack(stretched, shoulderAt(0), hand(azimuth, raised, 0), 'grip')).toBeGreaterThanOrEqual(-2);
	});

	test('[reach R3] no target is called reached unless some hand of an arm with a free shoulder comes near it', () => {
		const hands: Vec[] = [];
		const cone = (azimuth: number, raised: number) => raised <= limit(azimuth) + 1;
		for (let azimuth = -180; azimuth < 180; azimuth += 6)
			for (let raised = 0; raised <= 180; raised += 6) {
				if (!cone(azimuth, raised)) continue;
				for (let bend = 10; bend <= 140; bend += 10)
					for (let turn = 0; turn < 360; turn += 20) hands.push(turned(azimuth, raised, bend, turn));
			}
		fc.assert(
			fc.property(anyPoint, (target) => {
				if (slack(arm, shoulderAt(0), target, 'grip') < 0) return;
				const nearest = hands.reduce(
					(least, h) => Math.min(least, Math.hypot(h[0] - target[0], h[1] - target[1], h[2] - target[2])),
					Infinity
				);
				// Half a mesh of 6 degrees at 600 mm, and of 20 degrees of turn at 300 mm.
				expect(nearest).toBeLessThan(75);
			}),
			{ numRuns: 400 }
		);
	});

	/** A hand whose forearm is turned about the upper arm. */
	function turned(azimuth: number, raised: number, bend: number, turn: number): Vec {
		const [u, v] = [direction(azimuth, raised), direction(azimuth, raised + 90)];
		const w: Vec = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
		const [c, s] = [Math.cos(bend * rad), Math.sin(bend * rad)];
		const fore = (i: 0 | 1 | 2) => u[i] * c + (v[i] * Math.cos(turn * rad) + w[i] * Math.sin(turn * rad)) * s;
		const at = (i: 0 | 1 | 2) => u[i] * 311 + fore(i) * 300;
		return [at(0), at(1), at(2)];
	}

	test('[reach R3] ahead, in the vertical plane, just past the limit is not reached', () => {
		for (let bend = 10; bend <= 140; bend += 5) {
			if (RANGE.flexion + bend >= 179) continue;
			expect(slack(arm, shoulderAt(0), hand(0, RANGE.flexion - 0.1, bend), 'grip')).toBeGreaterThan(-1e-6);
			expect(slack(arm, shoulderAt(0), hand(0, RANGE.flexion + 0.1, bend), 'grip')).toBeLessThan(0);
		}
	});

	test('[reach R3] out to the side a bent elbow gains nothing', () => {
		const [free, stiff] = [arm, armWith({ range: RANGE, elbowDeficit: 10, elbowFlexion: 140, elbow: 'assumed' })];
		for (let bend = 20; bend <= 65; bend += 5) {
			const target = hand(90, RANGE.abduction, bend);
			expect(slack(free, shoulderAt(0), target, 'grip')).toBeLessThan(0);
			expect(slack(stiff, shoulderAt(0), target, 'grip')).toBeLessThan(0);
		}
	});
});

describe('leaning', () => {
	const posture = shoulderAt(1020);
	const hip: Vec = [-183, 0, 543];

	test('[reach R6] a fan stays within the travel allowed, and holds upright', () => {
		fc.assert(
			fc.property(upTo(400), (most) => {
				const fan = leanFan(posture, hip, most);
				expect(fan[0]).toBe(posture);
				for (const { shoulder } of fan)
					expect(Math.hypot(shoulder[0], shoulder[1], shoulder[2] - 1020)).toBeLessThanOrEqual(most + 1e-9);
			})
		);
		expect(leanFan(posture, hip, 0)).toEqual([posture]);
		expect(leanFan(posture, hip, Infinity)).toHaveLength(19);
	});

	test('[reach R6] more lean never gives less, at the ends of the fan', () => {
		const arm = armWith({});
		const at = (most: number) => slackWithLean(arm, posture, hip, [0, 800, 900], 'grip', most);
		const upright = slack(arm, posture, [0, 800, 900], 'grip');
		expect(at(0)).toBe(upright);
		expect(at(100)).toBeGreaterThan(upright + 80);
		expect(at(200)).toBeGreaterThan(at(100));
		expect(at(Infinity)).toBe(slackOverFan(arm, leanFan(posture, hip, Infinity), [0, 800, 900], 'grip'));
	});
});

test('[reach R1] the arm the tests start from is the median woman of ANSUR II 2012: 611 to grip', () => {
	expect(SPEC.upper + SPEC.fore).toBe(611);
});
