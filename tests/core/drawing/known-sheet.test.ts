import { packOf } from '#core/drawing/pack.ts';
import { toldParts } from '#core/drawing/summary.ts';
import { describe, expect, test } from 'vitest';
import { fixtureCase, fixturePlan } from './fixture.ts';

const plan = fixturePlan(fixtureCase());

const said = (reader: 'hers' | 'therapist' | 'installer'): string =>
	packOf(plan, { reader, sheet: 'A4', tape: { unit: 'mm' } })
		.flatMap(({ entities }) => entities.flatMap((e) => (e.kind === 'text' ? [e.text] : [])))
		.join(' ');

describe('[drawing R30] what is known of people and room', () => {
	const known = toldParts(plan, [], { unit: 'mm' }).filter(({ onMarks }) => onMarks !== true);

	test('there is something to be told', () => {
		expect(known.map(({ head }) => head)).toContain('Not asked yet');
		expect(known.some(({ head }) => head.startsWith('Client'))).toBe(true);
	});

	test('is told whole on the therapist\u2019s sheets', () => {
		const words = said('therapist').replace(/\s+/g, ' ');
		for (const { head, lines } of known) {
			expect(words).toContain(head);
			for (const line of lines) expect(words).toContain(line.replace(/(?<=[\s(])-(?=\d)/g, '\u2212'));
		}
	});

	test.each(['hers', 'installer'] as const)('and on no sheet of %s', (reader) => {
		const words = said(reader);
		for (const { head } of known.filter((one) => one.head !== 'Enclosure')) expect(words).not.toContain(head);
	});
});
