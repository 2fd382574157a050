import { describe, expect, test } from 'vitest';
import { MEASURES } from '#core/measures/registry.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import type { Quantity, Row } from '#core/rules/row.ts';

const packs = packsFor('ada-2010');
const rows = packs.flatMap((pack) => pack.rows);
const requires = packs.flatMap((pack) => pack.requires);

/** Units a quantity may have for the unit its measure counts in. */
const UNITS: Readonly<Record<string, readonly Quantity['unit'][]>> = {
	mm: ['mm', 'in'],
	degC: ['degF'],
	ratio: ['ratio'],
	yes: []
};

function quantities({ allowed }: Row): readonly Quantity[] {
	if (typeof allowed !== 'object' || 'ask' in allowed) return [];
	return [allowed.min, allowed.max].filter((q) => q !== undefined);
}

describe('packs', () => {
	test('[rules R1] every id is used once', () => {
		const ids = [...rows, ...requires].map(({ id }) => id);
		expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
	});

	test.each([...rows, ...requires].map((row) => [row.id, row] as const))(
		'[rules R1] %s names its document, edition, clause and source, and how it was read',
		(_, { document, edition, clause, source, says }) => {
			for (const words of [document, edition, clause, source.title]) expect(words).not.toBe('');
			expect(['seen', 'seen-2', 'own', 'derived', 'judgement']).toContain(source.how);
			expect(says).toMatch(/^[A-Z].*\.$/);
		}
	);

	test.each(rows.map((row) => [row.id, row] as const))('[rules R1] %s asks its measure in its own unit', (_, row) => {
		const { unit, about } = MEASURES[row.measure];
		for (const q of quantities(row)) expect(UNITS[unit]).toContain(q.unit);
		if (row.allowed === 'yes' || row.allowed === 'no') expect(unit).toBe('yes');
		if (typeof row.allowed === 'object' && !('ask' in row.allowed)) expect(quantities(row)).not.toEqual([]);
		expect(about).toBe(row.of === 'case' ? 'case' : row.and === undefined ? 'mark' : 'pair');
	});

	test('[rules R1] a document in inches prints its millimetres beside every figure', () => {
		const inInches = rows.flatMap((row) => quantities(row).filter((q) => q.unit === 'in'));
		expect(inInches.length).toBeGreaterThan(30);
		expect(inInches.filter((q) => q.printed === undefined)).toEqual([]);
	});

	test('[rules R1] nothing recalled and unverified is shipped as a rule of a document', () => {
		const told = rows.filter((row) => row.origin === 'document').map((row) => row.source.how);
		expect(new Set(told)).toEqual(new Set(['seen']));
	});

	test('[rules R1] rows of the document stand in the order of its clauses', () => {
		const clauses =
			packs.find((pack) => pack.id === 'ada-2010')?.rows.map((row) => row.clause.split(',')[0] ?? '') ?? [];
		const number = (clause: string) =>
			clause
				.split('.')
				.map((n) => n.padStart(4, '0'))
				.join('.');
		expect(clauses.map(number)).toEqual(clauses.map(number).toSorted());
	});

	test('[rules R1] every pack says what it leaves to judgement', () => {
		for (const pack of packs) expect(pack.judgement).not.toEqual([]);
	});

	test('[rules R1] the chosen document comes before the others, and none is lost without one', () => {
		expect(packsFor(null).map((pack) => pack.id)).toEqual(packs.map((pack) => pack.id));
	});
});
