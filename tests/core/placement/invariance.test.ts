import { describe, expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { place } from '#core/placement/place.ts';
import { planCase, questionOf } from '#core/plan.ts';
import { reportOf } from '#core/report.ts';
import type { BoundRow } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import { random } from './random.ts';
import { client } from './reduced.ts';

const CASES = (['turns-left', 'stands-then-tires'] as const).map((name): readonly [string, Case] => [
	name,
	{ ...client(name), lead: 'reference-led', tape: { unit: 'mm', step: mm(25) } }
]);

function shuffled(rows: readonly BoundRow[], seed: number): readonly BoundRow[] {
	const next = random(seed);
	return rows
		.map((row) => [next(), row] as const)
		.toSorted(([a], [b]) => a - b)
		.map(([, row]) => row);
}

function placed(c: Case, order: (rows: readonly BoundRow[]) => readonly BoundRow[]) {
	const { scene, rows, wanted } = questionOf(c);
	const run = place(scene, order(rows), wanted);
	let step = run.next();
	while (!step.done) step = run.next();
	return step.value;
}

describe.each(CASES)('[placement R5] %s', (_, c) => {
	const first = placed(c, (rows) => rows);

	test('the order of the rows in the packs moves nothing', () => {
		expect(first.status).toBe('optimal');
		for (const order of [
			(rows: readonly BoundRow[]) => rows.toReversed(),
			(rows: readonly BoundRow[]) => shuffled(rows, 4)
		]) {
			const again = placed(c, order);
			expect(again.marks).toEqual(first.marks);
			expect(again.cost).toEqual(first.cost);
		}
	});

	test('the same case gives the same bytes', () => {
		const bytes = () => JSON.stringify(reportOf(planCase(c)));
		expect(bytes()).toBe(bytes());
	});
});
