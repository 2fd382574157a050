import { describe, expect, test } from 'vitest';
import { demandOf, PRESETS } from '#core/structure/demand.ts';
import { caseWith } from './some-case.ts';

const weighing = (...masses: readonly (number | undefined)[]) =>
	demandOf(
		caseWith(
			{},
			{},
			Object.fromEntries(
				masses.map((value, i) => [
					`p${String(i)}`,
					{ role: i === 0 ? 'client' : 'helper', ...(value === undefined ? {} : { mass: { value, how: 'measured' } }) }
				])
			)
		)
	);

describe('the demand', () => {
	// Source: 1112 N as printed in ICC A117.1 609.8; 1112 / 9.80665 = 113.39 kg.
	test.each([
		[70, 1112],
		[113.3, 1112],
		// 1112.07 N, 2941.995 N and 2941.995 + 19.6 N, up to the next 50 N.
		[113.4, 1150],
		[300, 2950],
		[302, 3000]
	])('[structure R5] %s kg asks for %s N', (mass, force) => {
		expect(weighing(mass).force).toBeCloseTo(force, 9);
	});

	test('[structure R5] the heaviest of all people counts', () => {
		// 1372.931 N.
		expect(weighing(60, 140).force).toBe(1400);
	});

	test.each([
		[113, false],
		[114, true],
		[159, true]
	])('[structure R5] %s kg asks for more than the preset: %s', (mass, more) => {
		expect(weighing(mass).because === 'the full weight of the heaviest user').toBe(more);
	});

	test('[structure R5] a weight that is not recorded is asked for', () => {
		expect(weighing(undefined).force).toBe(1112);
		expect(weighing(undefined, 80).open).toBe(true);
		expect(weighing(60).open).toBe(false);
	});

	test('[structure R5] its words name no weight', () => {
		expect(weighing(163).because).not.toMatch(/163|kg/);
	});

	const asking = (enclosure: Record<string, unknown>, mass = 70) =>
		demandOf(caseWith({}, enclosure, { client: { role: 'client', mass: { value: mass, how: 'measured' } } }));

	// 1500 / 9.80665 = 152.96 kg.
	test.each([
		[1100, 70, 1100],
		[1300, 113.4, 1300],
		[1500, 152.9, 1500],
		[1500, 153, 1550]
	])('[structure R5] %s N chosen and %s kg ask for %s N', (demand, mass, force) => {
		expect(asking({ demand }, mass).force).toBeCloseTo(force, 9);
	});

	test.each([1100, 1112, 1300, 1500] as const)('[structure R5] %s N names its source', (demand) => {
		expect(asking({ demand }).because).toBe(`the ${PRESETS[demand]}`);
		expect(asking({ demand }).because).toContain(`${String(demand)} N`);
	});

	test('[structure R5] another force is no preset', () => {
		expect(() => asking({ demand: 1200 })).toThrow();
	});

	test.each([
		[159, 'not asked'],
		[159.1, 'wanted']
	])('[structure R14] at %s kg a statement is %s', (mass, statement) => {
		expect(weighing(mass).statement).toBe(statement);
	});

	// 163 kg: 1598.48 N, up to the next 50 N.
	test.each([
		[1599, 'wanted'],
		[1600, 'given'],
		[2000, 'given']
	])('[structure R14] a paper for %s N of the 1600 N asked for: %s', (load, statement) => {
		const loadStatement = { document: 'letter 7', by: 'an engineer', load };
		expect(asking({ loadStatement }, 163).statement).toBe(statement);
	});
});
