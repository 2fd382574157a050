import { describe, expect, test } from 'vitest';
import { bodiesOf, type Body } from '#core/body/body.ts';
import { person } from '#core/case/person.ts';
import type { Vec } from '#core/geometry/vec.ts';
import { leanNeeded, leastLean } from '#core/reach/least-lean.ts';
import { reachOf, type PersonArm } from '#core/reach/reach.ts';
import { slack, type Posture } from '#core/reach/slack.ts';
import {
	hipOf,
	isMissing,
	seatedPosture,
	standingHipHeight,
	standingPosture,
	type Missing
} from '#core/reach/station.ts';
import { armWith, shoulderAt } from './arms.ts';

const told = <T>(value: T) => ({ value, how: 'told' });
const measured = (value: number) => ({ value, how: 'measured' });

function bodyOf(input: object): Body {
	const body = bodiesOf({ one: person.parse({ role: 'client', ...input }) })['one'];
	if (!body) throw new Error('no body');
	return body;
}

function armOf(body: Body, side: 'left' | 'right' = 'left'): PersonArm {
	const arm = reachOf({ one: body })['one']?.[side];
	if (!arm) throw new Error('no arm');
	return arm;
}

function posture(answer: Posture | Missing): Posture {
	if (isMissing(answer)) throw new Error(answer.missing);
	return answer;
}

const MEDIAN = bodyOf({ sex: told('female'), age: told(40) });

// On the left wall of a compartment, looking across to the right one.
const seatAt = (body: Body, sittingForward = 0) => ({
	body,
	backPlanePoint: [0, 500, 455] as const,
	facing: [1, 0, 0] as const,
	sittingForward
});

describe('the transfer compartment', () => {
	/** Control on the wall opposite the seat, 914 away, its operable point 120 off that wall, where she reaches furthest. */
	function opposite(sittingForward: number) {
		const seated = seatAt(MEDIAN, sittingForward);
		const upright = posture(seatedPosture({ ...seated, side: 'left' }));
		const target: Vec = [914 - 120, upright.shoulder[1], upright.shoulder[2]];
		return { arm: armOf(MEDIAN), upright, target, hip: hipOf(seated) };
	}

	// Source: trial computation by hand: 914 - 120 - 80 = 714 to go, 611 + 0.20 * 181 = 648 of arm.
	test('[reach R6] a median woman sitting back upright does not reach the control opposite her', () => {
		const { arm, upright, target } = opposite(0);
		expect(slack(arm, upright, target, 'push')).toBeCloseTo(647.7 - 714, 0);
	});

	// Source: the same: 477 sin 8 = 66 and 477 sin 14 = 115.
	test.each([
		[0, 8],
		[50, 14]
	])('[reach R6] with %s to spare she leans about %s degrees', (margin, degrees) => {
		const { arm, upright, target, hip } = opposite(0);
		expect(Math.abs(leanNeeded(arm, upright, hip, target, 'push', margin) - degrees)).toBeLessThan(0.3);
		expect(leastLean(arm, upright, hip, target, 'push', margin)?.toward).toBe('ahead');
	});

	test.each([
		[80, 0],
		[140, 50]
	])('[reach R6] sitting %s forward she needs no lean for %s to spare', (forward, margin) => {
		const { arm, upright, target, hip } = opposite(forward);
		expect(leastLean(arm, upright, hip, target, 'push', margin)).toEqual({ degrees: 0, travel: 0, toward: 'ahead' });
	});
});

describe('the least lean', () => {
	const hip: Vec = [-183, 0, 543];
	const upright = shoulderAt(1020);
	const least = (target: Vec, margin: number) => leastLean(armWith({}), upright, hip, target, 'grip', margin);

	// Source: circle geometry: a lean of f degrees takes the shoulder 477 sin f ahead and 477 (1 - cos f) down.
	test('[reach R6] ahead at the height it comes down to: asin of what is lacking', () => {
		const lean = least([0, 611 + 100, 1020 - 10.6], 0);
		expect(lean?.degrees).toBeCloseTo(12.1, 1);
		expect(lean?.travel).toBeCloseTo(2 * 477 * Math.sin((12.1 / 2) * (Math.PI / 180)), 0);
	});

	test('[reach R6] to the side when that is less, and none beyond 45 degrees', () => {
		expect(least([611 + 100, 0, 1000], 0)?.toward).toBe('left');
		expect(least([0, 2000, 1000], 0)).toBeNull();
		expect(leanNeeded(armWith({}), upright, hip, [0, 2000, 1000], 'grip', 0)).toBe(Infinity);
	});

	test('[reach R6] found just enough: a hundredth of a degree less is short', () => {
		const target: Vec = [40, 700, 900];
		const found = least(target, 20);
		const at = (degrees: number) => {
			const [s, c] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
			return slack(armWith({}), { ...upright, shoulder: [0, 477 * s, 543 + 477 * c] }, target, 'grip');
		};
		expect(at(found?.degrees ?? NaN)).toBeGreaterThanOrEqual(20 - 1e-9);
		expect(at((found?.degrees ?? NaN) - 0.01)).toBeLessThan(20);
	});
});

describe('stations', () => {
	// Source: ANSUR II 2012 women: shoulder sitting 566.7, biacromial 365.3; frame: facing +x, her left is toward -y.
	test('[reach R7] a sitter', () => {
		const [left, right] = (['left', 'right'] as const).map((side) =>
			posture(seatedPosture({ ...seatAt(MEDIAN, 30), side }))
		);
		expect(left?.shoulder[0]).toBe(110);
		expect(left?.shoulder[1]).toBeCloseTo(500 - 182.7, 1);
		expect(right?.shoulder[1]).toBeCloseTo(500 + 182.7, 1);
		expect(left?.shoulder[2]).toBeCloseTo(455 + 566.7, 1);
		expect(hipOf(seatAt(MEDIAN, 30))).toEqual([110, 500, 545]);
	});

	// Source: ANSUR II 2012 women: acromial height 1335.1, wrist height 794.2.
	test('[reach R7] a stander', () => {
		const standing = { body: MEDIAN, at: [400, 1000, -20] as const, facing: [0, -1, 0] as const };
		const { shoulder } = posture(standingPosture({ ...standing, side: 'right' }));
		expect(shoulder[0]).toBeCloseTo(400 + 182.7, 1);
		expect(shoulder[1]).toBe(1000);
		expect(shoulder[2]).toBeCloseTo(1335.1 - 20, 1);
		expect(standingHipHeight(standing)).toBeCloseTo(794.2 - 20, 1);
	});

	test('[reach R7] where nothing may be estimated the answer names what to measure', () => {
		const refused = bodyOf({ sex: told('female'), mass: measured(140) });
		const standing = { body: refused, at: [0, 0, 0] as const, facing: [0, 1, 0] as const };
		expect(seatedPosture({ ...seatAt(refused), side: 'left' })).toEqual({ missing: 'shoulder above the seat' });
		expect(standingPosture({ ...standing, side: 'left' })).toEqual({ missing: 'shoulder height standing' });
		expect(standingHipHeight(standing)).toEqual({ missing: 'wrist height standing' });
		const half = bodyOf({ sex: told('female'), mass: measured(140), body: { shoulderAboveSeat: measured(500) } });
		expect(seatedPosture({ ...seatAt(half), side: 'left' })).toEqual({ missing: 'shoulder breadth' });
		expect(reachOf({ one: refused })['one']).toEqual({ left: null, right: null });
	});
});

describe('the arms of a person', () => {
	test('[reach R9] what was recorded is used, each side its own', () => {
		const body = bodyOf({
			sex: told('female'),
			age: told(80),
			arms: {
				left: {
					toGrip: measured(600),
					upperArm: measured(310),
					flexion: measured(95),
					elbowDeficit: measured(20),
					elbowFlexion: measured(130)
				}
			}
		});
		const [left, right] = [armOf(body, 'left'), armOf(body, 'right')];
		expect([left.upper, left.fore, left.range.flexion, left.elbowDeficit, left.elbowFlexion, left.elbow]).toEqual([
			310,
			290,
			95,
			20,
			130,
			'recorded'
		]);
		expect(left.assumed).toEqual(['abduction', 'adduction']);
		expect([left.how, left.sd, right.how, right.sd]).toEqual(['measured', 5, 'estimated', 15]);
		expect([right.range.flexion, right.elbow]).toEqual([140, 'assumed']);
		expect(right.assumed).toHaveLength(5);
	});

	// Source: Bassey 1989 (abduction from 65); Gill 2020: 158.5 less 40.6 of fall over 20 to 91 years.
	test.each([
		['female', 64, 158, 149],
		['female', 65, 148, 124],
		['female', 74, 148, 124],
		['female', 75, 140, 114],
		['male', 64, 161, 151],
		['male', 65, 151, 129],
		['male', 75, 142, 121],
		['female', undefined, 140, 114],
		[undefined, 70, 148, 124]
	])('[reach R9] %s of %s: flexion %s and abduction %s assumed', (sex, age, flexion, abduction) => {
		const { range } = armOf(bodyOf({ sex: sex && told(sex), age: age && told(age) }));
		expect(range).toEqual({ flexion, abduction, adduction: 30 });
	});

	test('[reach R4] a hand nobody knows adds nothing', () => {
		const body = bodyOf({ sex: told('female'), mass: measured(140), arms: { left: { toGrip: measured(600) } } });
		expect(armOf(body).spans.push.outer).toBeCloseTo(600, 9);
		expect(armOf(body).toMidline).toBe(0);
	});
});
