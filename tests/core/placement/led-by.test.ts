import { describe, expect, test } from 'vitest';
import { REFERENCES } from '#core/case/references.ts';
import { planCase } from '#core/plan.ts';
import { client } from './reduced.ts';

/** Clients whose search is short; the others end as the notes of placement say. */
const SHORT = ['first-flat', 'strong-walls', 'water-by-her-son', 'wheeled-in'] as const;

describe.each(SHORT)('%s led by each document', (name) => {
	test.each(REFERENCES)(
		'[placement R17] %s: ends with the proof, or with the rows that clash',
		{ timeout: 60_000 },
		(reference) => {
			const plan = planCase({ ...client(name), lead: 'reference-led', reference });
			if (plan.status === 'impossible') {
				const clashes = plan.clashes ?? [];
				expect(clashes.length).toBeGreaterThan(0);
				for (const { rows } of clashes) expect(rows.length).toBeGreaterThan(0);
				return;
			}
			expect(plan.status).toBe('optimal');
			// Only what is not recorded, or what no place of a mark changes, keeps a must of an ended plan from being inside.
			const broken = plan.findings.filter((f) => f.strength === 'must' && f.answer === 'outside' && f.about.length > 0);
			expect(broken.map((f) => f.row.id)).toEqual([]);
		}
	);
});
