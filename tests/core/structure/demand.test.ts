import { describe, expect, test } from 'vitest';
import { demandOf } from '#core/structure/demand.ts';
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
		[113.4, 113.4 * 9.80665],
		[300, 2941.995]
	])('[structure R5] %s kg asks for %s N', (mass, force) => {
		expect(weighing(mass).force).toBeCloseTo(force, 9);
	});

	test('[structure R5] the heaviest of all people counts', () => {
		expect(weighing(60, 140).force).toBeCloseTo(140 * 9.80665, 9);
	});

	test.each([
		[113, 0],
		[114, 1],
		[159, 1],
		[160, 2]
	])('[structure R5] %s kg brings %s notes', (mass, notes) => {
		expect(weighing(mass).notes).toHaveLength(notes);
	});

	test('[structure R5] a weight that is not recorded is asked for', () => {
		expect(weighing(undefined).force).toBe(1112);
		expect(weighing(undefined, 80).notes[0]).toContain('weigh');
	});

	test('[structure R5] its words name no weight', () => {
		const { because, notes } = weighing(163);
		expect([because, ...notes].join(' ')).not.toMatch(/163|kg/);
	});
});
