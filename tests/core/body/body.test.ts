import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodiesOf, covariance, type Body } from '#core/body/body.ts';
import { quantile } from '#core/body/quantile.ts';
import { person } from '#core/case/person.ts';

type Input = Parameters<typeof person.parse>[0];

const bodyOf = (input: object): Body => {
	const body = bodiesOf({ one: person.parse({ role: 'client', ...input } satisfies Input) })['one'];
	if (!body) throw new Error('no body');
	return body;
};

/** A value known without error, so that the published conditional means, which know no error, can be met. */
const exact = (value: number) => ({ value, how: 'measured', sd: 0.001 });
const measured = (value: number) => ({ value, how: 'measured' });
const told = <T>(value: T) => ({ value, how: 'told' });
const woman = { sex: told('female'), age: told(40) };
const man = { sex: told('male'), age: told(40) };

const near = (
	body: Body,
	name: 'armToGrip' | 'shoulderAboveSeat' | 'popliteal',
	[mean, sd]: [number, number],
	within: number
) => {
	expect(Math.abs((body.dims[name]?.value ?? NaN) - mean)).toBeLessThanOrEqual(within);
	expect(Math.abs((body.dims[name]?.sd ?? NaN) - sd)).toBeLessThanOrEqual(within);
};

describe('estimates', () => {
	// Source: regressions on the raw ANSUR II 2012 public release, computed apart from the covariance table.
	test('[body R2] T08a: a woman of 1600', () => {
		const body = bodyOf({ ...woman, body: { stature: exact(1600) } });
		near(body, 'armToGrip', [599.9, 19.7], 0.2);
		near(body, 'shoulderAboveSeat', [559.1, 22.5], 0.2);
		near(body, 'popliteal', [379.8, 14], 0.2);
		const arm = body.dims.armToGrip;
		expect(Math.abs((arm?.value ?? NaN) + quantile(0.05) * (arm?.sd ?? NaN) - 567.6)).toBeLessThanOrEqual(0.2);
		expect(Math.abs((arm?.value ?? NaN) + quantile(0.95) * (arm?.sd ?? NaN) - 632.3)).toBeLessThanOrEqual(0.2);
	});

	// Source: conditional normal of the same release, matrix inverse in another program.
	test.each([
		[
			'T09a',
			woman,
			{ kneeHeight: exact(500), sittingHeight: exact(840) },
			undefined,
			[599.6, 16.5],
			[555.1, 15.7],
			[379.6, 11.2]
		],
		[
			'T09b',
			woman,
			{ kneeHeight: exact(500), sittingHeight: exact(840), forearmToGrip: exact(315) },
			undefined,
			[603.4, 11.2],
			[554.7, 15.7],
			[379.6, 11.2]
		],
		['T09c', man, { kneeHeight: exact(540), armSpan: exact(1800) }, exact(80), [656.8, 12], [600.1, 26], [419.6, 7.4]]
	] as const)(
		'[body R2] %s: a conditional normal from any measured subset',
		(_, who, body, mass, arm, shoulder, popliteal) => {
			const one = bodyOf({ ...who, body, mass });
			near(one, 'armToGrip', [...arm], 0.3);
			near(one, 'shoulderAboveSeat', [...shoulder], 0.3);
			near(one, 'popliteal', [...popliteal], 0.3);
		}
	);

	// Source: ANSUR II 2012, own computation: given stature, arm and sitting shoulder err against each other.
	test('[body R2] T10: errors that go together', () => {
		const body = bodyOf({ ...woman, body: { stature: exact(1600) } });
		const both = covariance(body, 'armToGrip', 'shoulderAboveSeat');
		const [arm, shoulder] = [
			covariance(body, 'armToGrip', 'armToGrip'),
			covariance(body, 'shoulderAboveSeat', 'shoulderAboveSeat')
		];
		expect(Math.abs(both / Math.sqrt(arm * shoulder) + 0.377)).toBeLessThan(0.002);
		expect(Math.abs(Math.sqrt(arm + shoulder + 2 * both) - 23.6)).toBeLessThan(0.2);
		expect(Math.abs(Math.sqrt(arm + shoulder) - 29.9)).toBeLessThan(0.2);
	});

	// Source: Drillis and Contini's fractions as published for a stature of 1504 by T. Armstrong.
	test('[body R2] T06: within one sd of the published link lengths', () => {
		const { dims } = bodyOf({ ...woman, body: { stature: exact(1504) } });
		for (const [one, published] of [
			[dims.shoulderStanding, 1230],
			[dims.armToGrip, 558],
			[dims.handLength, 162]
		] as const)
			expect(Math.abs((one?.value ?? NaN) - published)).toBeLessThan(one?.sd ?? 0);
	});

	test('[body R2] a value less sure moves the estimate less and leaves it wider', () => {
		const [sure, unsure] = [measured(1700), told(1700)].map(
			(stature) => bodyOf({ ...woman, body: { stature } }).dims.armToGrip
		);
		expect(unsure?.value).toBeLessThan(sure?.value ?? 0);
		expect(unsure?.value).toBeGreaterThan(611.5);
		expect(unsure?.sd).toBeGreaterThan(sure?.sd ?? Infinity);
	});

	test('[body R2] what is measured never widens an estimate', () => {
		const length = (least: number, most: number) =>
			fc.option(fc.integer({ min: least, max: most }).map(measured), { nil: undefined });
		fc.assert(
			fc.property(
				fc.record({ stature: length(1580, 1680), kneeHeight: length(490, 530), armSpan: length(1600, 1700) }),
				(body) => {
					const more = bodyOf({ ...woman, body: { ...body, sittingHeight: measured(850) } });
					const fewer = bodyOf({ ...woman, body });
					fc.pre(!more.refusal && !fewer.refusal);
					expect(more.dims.armToGrip?.sd).toBeLessThanOrEqual((fewer.dims.armToGrip?.sd ?? 0) + 1e-9);
				}
			)
		);
	});

	// Source: means and sd of both halves of ANSUR II 2012: 611.46 (32.62) and 665.2 (33.0); sd of an even mixture by hand.
	test('[body R3] no sex: halfway, and as wide as both and their distance', () => {
		const arm = bodyOf({ age: told(40) }).dims.armToGrip;
		expect(Math.abs((arm?.value ?? NaN) - 638.3)).toBeLessThan(0.1);
		expect(Math.abs((arm?.sd ?? NaN) - Math.sqrt((32.62 ** 2 + 33 ** 2) / 2 + (53.7 / 2) ** 2))).toBeLessThan(0.1);
	});

	test.each([
		[59, 1],
		[60, 1],
		[61, 1.5],
		[undefined, 1.5]
	])('[body R4] age %s: sd times %s', (age, times) => {
		const body = { stature: measured(1600) };
		const one = bodyOf({ sex: told('female'), age: age && told(age), body });
		const young = bodyOf({ ...woman, body });
		expect(one.dims.popliteal?.sd).toBeCloseTo((young.dims.popliteal?.sd ?? NaN) * times, 9);
		expect(one.dims.stature?.sd).toBe(5);
	});
});

describe('recorded values', () => {
	test.each([
		['measured', 5],
		['observed', 10],
		['told', 20],
		['declared', 20],
		['assumed', 20]
	] as const)('[body R1] a length %s: sd %s', (how, sd) => {
		expect(bodyOf({ ...woman, body: { kneeHeight: { value: 500, how } } }).dims.kneeHeight).toEqual({
			value: 500,
			how,
			sd
		});
	});

	test('[body R1] an sd of its own is kept', () => {
		const { dims } = bodyOf({ ...woman, body: { kneeHeight: { value: 500, how: 'told', sd: 3 } }, mass: measured(70) });
		expect(dims.kneeHeight).toEqual({ value: 500, how: 'told', sd: 3 });
		expect(dims.mass).toEqual({ value: 70, how: 'measured', sd: 1 });
	});

	test('[body R6] elbow above the seat: measured or not known', () => {
		expect(bodyOf({ ...woman, body: { stature: measured(1600) } }).dims.elbowAboveSeat).toBeUndefined();
		expect(bodyOf({ ...woman, body: { elbowAboveSeat: measured(210) } }).dims.elbowAboveSeat?.value).toBe(210);
	});

	test('[body R7] a slump is kept, and neither lengthens the arm nor stops an estimate', () => {
		const erect = bodyOf({ ...woman, body: { stature: measured(1600) } });
		const slumped = bodyOf({ ...woman, body: { stature: measured(1600), shoulderAboveSeat: measured(440) } });
		expect(slumped.dims.shoulderAboveSeat?.value).toBe(440);
		expect(slumped.dims.armToGrip).toEqual(erect.dims.armToGrip);
		expect(slumped.refusal).toBeUndefined();
	});

	test('[body R2] recorded values err alone', () => {
		const body = bodyOf({ ...woman, body: { stature: measured(1600) } });
		expect(covariance(body, 'stature', 'armToGrip')).toBe(0);
		expect(covariance(body, 'stature', 'stature')).toBe(25);
		expect(() => covariance(body, 'stature', 'elbowAboveSeat')).toThrow('elbowAboveSeat');
	});
});

describe('refusal', () => {
	// Source: first and last hundredth of ANSUR II 2012, own computation: 1482.5-1777.6 women, 1601.6-1927.0 men.
	test.each([
		['a woman of 1482', { ...woman, body: { stature: measured(1482.4) } }, 'stature outside 1483 to 1778'],
		['a woman of 1482.5', { ...woman, body: { stature: measured(1482.5) } }, null],
		['a woman of 1777.6', { ...woman, body: { stature: measured(1777.6) } }, null],
		['a woman of 1777.7', { ...woman, body: { stature: measured(1777.7) } }, 'stature outside'],
		['a man of 1601.5', { ...man, body: { stature: measured(1601.5) } }, 'stature outside 1602 to 1927'],
		['a man of 1601.6', { ...man, body: { stature: measured(1601.6) } }, null],
		['a man of 1927', { ...man, body: { stature: measured(1927) } }, null],
		['a man of 1927.1', { ...man, body: { stature: measured(1927.1) } }, 'stature outside'],
		['no sex, 1482.4', { age: told(40), body: { stature: measured(1482.4) } }, 'stature outside 1483 to 1927'],
		['17 years', { ...woman, age: told(17) }, 'younger than 18'],
		['18 years', { ...woman, age: told(18) }, null],
		['44.9 kg', { ...woman, mass: measured(44.9) }, 'mass outside'],
		['45 kg', { ...woman, mass: measured(45) }, null],
		['125 kg', { ...man, mass: measured(125) }, null],
		['125.1 kg', { ...man, mass: measured(125.1) }, 'mass outside']
	])('[body R5] %s: %s', (_, input, why) => {
		const { refusal, dims } = bodyOf(input);
		if (why === null) expect(refusal).toBeUndefined();
		else expect(refusal?.why).toContain(why);
		expect(dims.armToGrip === undefined).toBe(why !== null);
	});

	// Source: three standard deviations of one dimension is a squared Mahalanobis distance of 9; ANSUR II 2012 knee height
	// of women 511.287, sd sqrt(733.024), with a tape of sd 5 sqrt(758.024).
	test.each([
		[-0.1, null],
		[0.1, 'do not go together']
	])('[body R5] a knee height %s mm past three sd: %s', (past, why) => {
		const { refusal } = bodyOf({ ...woman, body: { kneeHeight: measured(511.287 + 3 * Math.sqrt(758.024) + past) } });
		expect(refusal?.why ?? null).toEqual(why === null ? null : expect.stringContaining(why));
	});

	test('[body R5] two measures, each ordinary, that do not go together', () => {
		const body = { shoulderStanding: measured(1260), stature: measured(1700) };
		expect(bodyOf({ ...woman, body: { stature: body.stature } }).refusal).toBeUndefined();
		expect(bodyOf({ ...woman, body: { shoulderStanding: body.shoulderStanding } }).refusal).toBeUndefined();
		expect(bodyOf({ ...woman, body }).refusal?.why).toContain('do not go together');
	});

	test('[body R5] what was measured stays', () => {
		const body = bodyOf({
			...woman,
			mass: measured(140),
			body: { shoulderAboveSeat: measured(540) },
			arms: { left: { toGrip: measured(590) } }
		});
		expect(Object.keys(body.dims).sort()).toEqual(['armToGrip', 'mass', 'shoulderAboveSeat']);
		expect(body.arms.left.toGrip?.value).toBe(590);
		expect(bodyOf({ ...woman, mass: measured(140) }).arms).toEqual({ left: {}, right: {} });
	});
});

describe('arms', () => {
	test('[body R8] each arm its own; the other side with sd 15', () => {
		const { arms } = bodyOf({ ...woman, arms: { left: { toGrip: measured(600) } } });
		expect(arms.left.toGrip).toEqual({ value: 600, sd: 5, how: 'measured' });
		expect(arms.right.toGrip).toEqual({ value: 600, sd: 15, how: 'estimated' });
		const both = bodyOf({ ...woman, arms: { left: { toGrip: measured(600) }, right: { toGrip: measured(570) } } });
		expect(both.arms.right.toGrip?.value).toBe(570);
		expect(both.dims.armToGrip?.value).toBe(585);
	});

	// Source: acromion-radiale over acromion to grip in ANSUR II 2012: 311.2/611.5 women, 335.2/665.2 men.
	test.each([
		['female', 0.509],
		['male', 0.504],
		[undefined, 0.5065]
	])('[body R8] sex %s: upper arm %s of arm to grip', (sex, share) => {
		const { arms } = bodyOf({ sex: sex && told(sex), age: told(40), arms: { left: { toGrip: measured(600) } } });
		expect(arms.left.upper?.value).toBeCloseTo(600 * share, 9);
		expect(arms.left.upper?.how).toBe('estimated');
	});

	test('[body R8] a measured upper arm is kept', () => {
		const { arms } = bodyOf({ ...woman, arms: { right: { upperArm: measured(290) } } });
		expect(arms.right.upper).toEqual({ value: 290, sd: 5, how: 'measured' });
		expect(arms.left.upper?.value).not.toBe(290);
	});

	// Source: 5th percentile woman of ANSUR II 2012.
	test('[body R9] a helper nobody measured', () => {
		const { dims, arms } = bodyOf({ role: 'helper' });
		expect(dims.shoulderStanding).toEqual({ value: 1242, sd: 0, how: 'assumed' });
		expect(arms.left.toGrip).toEqual({ value: 561, sd: 0, how: 'assumed' });
		expect(bodyOf({ role: 'helper', ...woman, body: { stature: measured(1700) } }).dims.shoulderStanding?.how).toBe(
			'estimated'
		);
		expect(bodyOf({}).dims.shoulderStanding?.how).toBe('estimated');
	});
});

describe('the normal quantile', () => {
	// Source: NIST/SEMATECH handbook of statistics, table of the cumulative normal.
	test.each([
		[0.5, 0],
		[0.95, 1.6448536],
		[0.975, 1.959964],
		[0.999, 3.0902323],
		[0.05, -1.6448536],
		[0.01, -2.3263479]
	])('[body R2] %s: %s', (p, z) => {
		expect(quantile(p)).toBeCloseTo(z, 6);
	});

	test.each([0, 1, -0.1, 1.1, NaN])('[body R2] %s is no probability', (p) => {
		expect(() => quantile(p)).toThrow(RangeError);
	});
});
