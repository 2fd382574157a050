import { describe, expect, test } from 'vitest';
import { kindOf } from '#core/rules/kind.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import type { Row } from '#core/rules/row.ts';

const mm = (n: number) => ({ n, unit: 'mm' }) as const;

/** A row that allows something, all else alike. */
const allowing = (allowed: Row['allowed'], more: Partial<Row> = {}): Row => ({
	id: 'X',
	document: 'a document',
	edition: '1',
	clause: '1',
	source: { title: 'test', how: 'own' },
	origin: 'document',
	of: 'case',
	measure: 'inside-width',
	allowed,
	says: 'X.',
	...more
});

describe('[rules R15] every row is of one kind', () => {
	test.each([
		['two ends', allowing({ min: mm(900), max: mm(1300) }), 'range'],
		['one end', allowing({ min: mm(900) }), 'least or most'],
		['the other end', allowing({ max: mm(900) }), 'least or most'],
		['a strict end', allowing({ min: mm(400), strict: true }), 'least or most'],
		['two ends that are one', allowing({ min: mm(480), max: mm(480) }), 'one value'],
		['a point that may be passed, with our tolerance', allowing({ min: mm(455) }, { ourTolerance: 3 }), 'one value'],
		['yes', allowing('yes'), 'yes or no'],
		['no', allowing('no'), 'yes or no'],
		['a question', allowing({ ask: 'Is it?' }), 'asked'],
		['what never steers, whatever it allows', allowing({ min: mm(460), max: mm(500) }, { advice: true }), 'advice']
	] as const)('%s', (_, row, kind) => {
		expect(kindOf(row)).toBe(kind);
	});

	test('only what is one value has a tolerance of ours', () => {
		const tolerated = packsFor(null).flatMap(({ rows }) => rows.filter((row) => row.ourTolerance !== undefined));
		expect(tolerated.map(kindOf).filter((kind) => kind !== 'one value' && kind !== 'advice')).toEqual([]);
	});
});
