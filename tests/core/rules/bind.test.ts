import { describe, expect, test } from 'vitest';
import { wantedFor } from '#core/needs/wanted.ts';
import { bind, strengthOf } from '#core/rules/bind.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import type { BoundRow, Origin, Pack, Row, Strength } from '#core/rules/row.ts';
import { caseWith, marksOf, sceneOf } from './baseline.ts';

// Source: the table of strengths in the house's design, origin by lead.
const TABLE: Readonly<Record<Origin, readonly [personLed: Strength, referenceLed: Strength]>> = {
	room: ['must', 'must'],
	body: ['must', 'must'],
	wall: ['must', 'must'],
	wish: ['should', 'prefer'],
	document: ['prefer', 'must'],
	craft: ['tie-break', 'tie-break']
};

describe('strength', () => {
	test.each(Object.entries(TABLE) as [Origin, readonly [Strength, Strength]][])(
		'[rules R2] %s counts as %s person-led and reference-led',
		(origin, [person, reference]) => {
			const led = { backing: false, chosen: true } as const;
			expect(strengthOf(origin, { ...led, lead: 'person-led' })).toBe(person);
			expect(strengthOf(origin, { ...led, lead: 'reference-led' })).toBe(reference);
		}
	);

	test.each(['person-led', 'reference-led'] as const)(
		'[rules R2] %s, a wall that may be backed is only preferred',
		(lead) => {
			expect(strengthOf('wall', { lead, backing: true, chosen: false })).toBe('prefer');
		}
	);

	test.each(['person-led', 'reference-led'] as const)(
		'[rules R2] %s, a document not chosen is only reported',
		(lead) => {
			expect(strengthOf('document', { lead, backing: false, chosen: false })).toBe('reported');
		}
	);
});

/** A document with one row on the hose, and one that differs from it. */
const hose = (id: string, more: Partial<Row> = {}): Row => ({
	id,
	document: 'Invented document',
	edition: '1',
	clause: '1',
	source: { title: 'invented for this test', how: 'seen' },
	origin: 'document',
	of: 'case',
	measure: 'hose-length',
	allowed: { min: { n: 1500, unit: 'mm' } },
	says: 'The hose is long.',
	...more
});
const scope = { short: 'Invented', binds: 'Nothing.', homes: 'Nothing.' };
const pack = (id: string, rows: readonly Row[], differsFrom?: Pack['differsFrom']): Pack => ({
	id,
	name: id,
	scope,
	...(differsFrom && { differsFrom }),
	requires: [],
	rows,
	judgement: []
});

describe('documents beside each other', () => {
	const whole = pack('ada-2010', [hose('KEPT'), hose('REPLACED'), hose('TOLD', { advice: true })]);
	const differing = pack('cbc-11b', [hose('OWN')], { pack: 'ada-2010', instead: ['REPLACED'] });
	const strengths = (reference: 'ada-2010' | 'cbc-11b') =>
		Object.fromEntries(
			bind([whole, differing], [], caseWith({ case: { reference, lead: 'reference-led' } })).map((r) => [
				r.row.id,
				r.strength
			])
		);

	test('[rules R16] a document that differs from another counts with what it shares, not with what it has instead', () => {
		expect(strengths('cbc-11b')).toMatchObject({ KEPT: 'must', REPLACED: 'reported', OWN: 'must' });
		expect(strengths('ada-2010')).toMatchObject({ KEPT: 'must', REPLACED: 'must', OWN: 'reported' });
	});

	test('[rules R16] advice is told and never steers, whoever leads', () => {
		expect(strengths('ada-2010')).toMatchObject({ TOLD: 'reported' });
		expect(strengths('cbc-11b')).toMatchObject({ TOLD: 'reported' });
	});
});

describe('binding', () => {
	const wanted = marksOf().map((m) => m.accessory);
	const about = (rows: readonly BoundRow[], id: string) =>
		rows.filter((r) => r.row.id === id).map((r) => r.about.join(' + '));
	const bound = (c = caseWith()) => bind(packsFor(c.reference), wanted, c);

	test('[rules R5] a row is tied to each mark it speaks of, and a pair once', () => {
		expect(about(bound(), 'ADA-GB-Z-LOW')).toEqual(['bar-back', 'bar-control']);
		expect(about(bound(), 'ADA-CT-X-T-NEAR')).toEqual(['control + seat']);
		expect(about(bound(), 'ADA-GB-SAMEZ')).toEqual(['bar-back + bar-control']);
		expect(about(bound(), 'ADA-ENTRY')).toEqual(['']);
	});

	test('[rules R5] a pair that can never be on such walls is left out', () => {
		expect(about(bound(), 'ROOM-APART')).toEqual(['control + bar-control']);
		expect(about(bound(), 'ROOM-CORNER')).not.toContain('control + bar-control');
	});

	test('[rules R5] a row of the document with nothing to speak of is kept, reported and about nothing', () => {
		const alone = bind(packsFor('ada-2010'), [], caseWith());
		const seat = alone.find((r) => r.row.id === 'ADA-ST-Z');
		expect(seat).toMatchObject({ strength: 'reported', about: [] });
		expect(alone.some((r) => r.row.id === 'BODY-SEAT-WIDTH')).toBe(false);
	});

	test('[rules R5] conditions choose rows: the chair sets the seat of one who comes in a chair', () => {
		const walks = caseWith({ client: { transfer: { value: 'walks', how: 'told' }, chair: {} } });
		expect(about(bound(), 'EV-SEAT-CHAIR')).toEqual(['seat']);
		expect(about(bound(walks), 'EV-SEAT-CHAIR')).toEqual([]);
		expect(about(bound(walks), 'EV-SEAT-RISE')).toEqual(['seat']);
	});

	test('[rules R2] without a chosen document every row of it is reported', () => {
		const c = caseWith({ case: { reference: null } });
		const strengths = bind(packsFor(c.reference), wanted, c)
			.filter((r) => r.row.origin === 'document')
			.map((r) => r.strength);
		expect(new Set(strengths)).toEqual(new Set(['reported']));
	});

	test('[rules R5] the same rows are bound for what needs say', () => {
		const c = caseWith();
		const needed = wantedFor(packsFor(c.reference), c, sceneOf(c).bodies);
		const rows = bind(packsFor(c.reference), needed, c);
		expect(about(rows, 'BODY-REACH')).toEqual(['control + seat']);
		expect(about(rows, 'BODY-REACH-HANDSET')).toEqual(['handset-rest + seat']);
	});
});
