import fc from 'fast-check';
import { expect, test } from 'vitest';
import { counted, priceOf } from '#core/placement/price.ts';
import { planCase, questionOf } from '#core/plan.ts';
import type { Finding } from '#core/rules/row.ts';
import { judge } from '#core/rules/judge.ts';
import { mm } from '#core/units/length.ts';
import { MEASURES } from '#core/measures/registry.ts';
import { priceOfAll } from './priced.ts';
import { random } from './random.ts';
import { client } from './reduced.ts';

const COARSE = { ...client('turns-left'), tape: { unit: 'mm', step: mm(25) } } as const;
const QUESTION = questionOf(COARSE);
const COUNTED = QUESTION.rows.filter((r) => r.strength !== 'reported' && MEASURES[r.row.measure].unit === 'mm');

test('[placement R1] a bigger shortfall never counts less, at any strength', () => {
	const short = fc.double({ min: 0, max: 9000, noNaN: true });
	fc.assert(
		fc.property(fc.constantFrom(...COUNTED), short, short, (row, a, b) => {
			const [less, more] = [counted(row, Math.min(a, b)), counted(row, Math.max(a, b))];
			return less <= more && counted(row, 0) === 0;
		}),
		{ seed: 5, numRuns: 2000 }
	);
});

test('[placement R1] a wish counts in whole 25 mm steps squared, a document in whole mm begun', () => {
	const of = (strength: Finding['strength']) => COUNTED.find((r) => r.strength === strength);
	const [wish, clause] = [of('should'), of('prefer')];
	if (!wish || !clause) throw new Error('the example has both');
	expect([0, 24.9, 25, 49.9, 50, 75].map((n) => counted(wish, n))).toEqual([0, 0, 1, 1, 4, 9]);
	expect([0, 0.5, 1, 1.5, 60].map((n) => counted(clause, n))).toEqual([0, 1, 1, 2, 60]);
});

test('[placement R1] a wish about reach that is missed counts no more the farther it is missed', () => {
	const reach = COUNTED.find((r) => r.row.id === 'WISH-WATER-FROM-ENTRY');
	if (!reach) throw new Error('the example walks in');
	expect([74, 75, 99, 100, 101, 430].map((n) => counted(reach, n))).toEqual([4, 9, 9, 16, 16, 16]);
});

test('[placement R4] two ways of pricing findings agree, the broken musts and the order of strengths', () => {
	const { marks } = planCase({ ...COARSE, lead: 'reference-led' });
	const next = random(9);
	const by = (most: number) => Math.round((next() * 2 - 1) * most);
	let broken = 0;
	for (let i = 0; i < 200; i++) {
		const put = marks.map((m) => ({
			...m,
			place: { ...m.place, x: mm(m.place.x + by(60)), y: mm(m.place.y + by(90)) }
		}));
		const findings = judge(QUESTION.scene, QUESTION.rows, put).filter((f) => f.row.of !== 'case');
		const [count, , ...parts] = priceOf(findings);
		const [musts, ...rest] = priceOfAll(findings);
		expect([count, ...parts]).toEqual([musts, ...rest.slice(0, 4)]);
		if (musts > 0) broken++;
	}
	expect(broken).toBeGreaterThan(20);
});
