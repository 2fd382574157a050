import { describe, expect, test } from 'vitest';
import { MEASURES } from '#core/measures/registry.ts';
import { REFERENCES } from '#core/case/references.ts';
import { DOCUMENTS, packsFor } from '#core/rules/packs/index.ts';
import type { Quantity, Row } from '#core/rules/row.ts';

const packs = packsFor('ada-2010');
const rows = packs.flatMap((pack) => pack.rows);
const requires = packs.flatMap((pack) => pack.requires);

/** Units a quantity may have for the unit its measure counts in. */
const UNITS: Readonly<Record<string, readonly Quantity['unit'][]>> = {
	mm: ['mm', 'in'],
	N: ['N', 'lbf'],
	degC: ['degC', 'degF'],
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

	test('[rules R1] nothing recalled or habitual is shipped as a rule of a document', () => {
		const told = rows.filter((row) => row.origin === 'document').map((row) => row.source.how);
		expect(told.filter((how) => how !== 'seen' && how !== 'derived')).toEqual([]);
	});

	test('[rules R15] every document is a pack under its id, and says what it binds and how homes stand to it', () => {
		expect(DOCUMENTS.map(({ id }) => id)).toEqual([...REFERENCES]);
		for (const { scope, rows } of DOCUMENTS) {
			expect(scope?.binds).toMatch(/^[A-Z].*\.$/);
			expect(scope?.homes).toMatch(/^[A-Z].*\.$/);
			expect(rows.length).toBeGreaterThan(0);
			expect(rows.filter(({ origin }) => origin !== 'document')).toEqual([]);
		}
		expect(packs.filter(({ scope }) => scope).map(({ id }) => id)).toEqual(DOCUMENTS.map(({ id }) => id));
	});

	test('[rules R15] a document has one tolerance of ours, and only on what it prints as one value', () => {
		for (const { rows } of DOCUMENTS) {
			const tolerances = rows.flatMap(({ ourTolerance }) => (ourTolerance === undefined ? [] : [ourTolerance]));
			expect(new Set(tolerances).size).toBeLessThanOrEqual(1);
		}
	});

	test('[rules R15] what a pack of differences has instead is in the pack it differs from', () => {
		for (const { differsFrom } of DOCUMENTS) {
			if (!differsFrom) continue;
			const other = DOCUMENTS.find(({ id }) => id === differsFrom.pack);
			const ids = [...(other?.rows ?? []), ...(other?.requires ?? [])].map(({ id }) => id);
			expect(differsFrom.instead.filter((id) => !ids.includes(id))).toEqual([]);
		}
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
		for (const id of REFERENCES) {
			const order = packsFor(id).filter(({ scope }) => scope);
			expect(order[0]?.id).toBe(id);
			expect(new Set(order.map((pack) => pack.id))).toEqual(new Set(REFERENCES));
		}
	});
});
