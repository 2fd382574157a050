import { describe, expect, test } from 'vitest';
import { variantOf, type Mark, type Purpose } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { A117_1_2003 } from '#core/rules/packs/a117-1-2003.ts';
import { ADA_2010 } from '#core/rules/packs/ada-2010.ts';
import { CBC_11B } from '#core/rules/packs/cbc-11b.ts';
import type { Finding, Pack } from '#core/rules/row.ts';
import { inches } from '#core/units/length.ts';
import { barPart, caseWith, mark, marksOf, sceneOf, workedPart } from './baseline.ts';

const PACKS: readonly Pack[] = [ADA_2010, A117_1_2003, CBC_11B];

/** What the three documents say of one mark, or of the case where none is named: rows that speak, with their answers. */
function said(c: Case, marks: readonly Mark[], about?: string): Readonly<Record<string, Finding['answer']>> {
	const rows = bind(
		PACKS,
		marks.map((m) => m.accessory),
		c
	);
	const found = judge(sceneOf(c), rows, marks).filter(
		(f) => f.answer !== 'not-here' && (about === undefined ? f.about.length === 0 : f.about[0] === about)
	);
	return Object.fromEntries(found.map((f) => [f.row.id, f.answer]));
}

/** The back-wall bar of a transfer compartment, from 20 to 30 in along it, its top 34 in high, 1.75 in off the wall. */
const backBar = (purpose: Purpose): Mark =>
	mark('bar-back', {
		purpose,
		wall: 'back',
		x: inches(20),
		y: inches(34 - 0.625),
		variant: barPart('horizontal-bar', { length: 10, gap: 1.75 })
	});

/** An upright bar on the control wall, 1.75 in off it. */
const uprightBar = (purpose: Purpose): Mark =>
	mark('upright', {
		purpose,
		wall: 'right',
		x: inches(33),
		y: inches(38),
		variant: barPart('vertical-bar', { length: 18, gap: 1.75 })
	});

describe('where the documents of the United States speak', () => {
	// 608.3.1 wants a bar at the back wall as far as 18 in from the control wall, 609 is about every bar, whatever it is for.
	test.each(['rise', 'sit-steady'] as const)('[rules R5] 608.3.1, 609.3, 609.8 of a back-wall bar to %s', (purpose) => {
		const found = said(caseWith(), [backBar(purpose)], 'bar-back');
		expect(found).toMatchObject({ 'ADA-GB-18': 'outside', 'ADA-GB-WALLGAP': 'outside', 'ADA-GB-DIA': 'inside' });
		expect(Object.keys(found)).toEqual(expect.arrayContaining(['ADA-LOAD-BAR', 'CA-LOAD-BAR']));
	});

	test.each(['step-in', 'step-out'] as const)('[rules R5] 609.3, 609.8 of an upright bar to %s', (purpose) => {
		const found = said(caseWith(), [uprightBar(purpose)], 'upright');
		expect(found).toMatchObject({ 'ADA-GB-WALLGAP': 'outside', 'ADA-GB-DIA': 'inside' });
		expect(Object.keys(found)).toEqual(expect.arrayContaining(['ADA-LOAD-BAR', 'CA-LOAD-BAR']));
	});

	// 608.5.1: on the wall opposite the seat, and there so far from its centre line. On another wall only the first is amiss.
	test('[rules R5] 608.5.1 how far from the centre line is asked on the control wall alone', () => {
		const rest = (wall: 'back' | 'right'): Mark =>
			mark('rest', {
				purpose: 'rest-handset',
				wall,
				x: inches(24),
				y: inches(42),
				variant: workedPart('handset-rest', { across: 1, up: 1 })
			});
		const seat = marksOf().slice(0, 1);
		const across = ['ADA-CT-X-T-NEAR', 'ADA-CT-X-T-FAR', 'A03-CT-X-T'];
		const there = said(caseWith(), [...seat, rest('right')], 'rest');
		expect(across.map((id) => there[id])).toEqual(['inside', 'inside', 'inside']);
		const elsewhere = said(caseWith(), [...seat, rest('back')], 'rest');
		expect(elsewhere['ADA-CT-WALL']).toBe('outside');
		expect(across.map((id) => elsewhere[id])).toEqual([undefined, undefined, undefined]);
	});

	// 608 and 610.3 are about shower compartments; a bath has 607 and 610.2, which print no place of a seat on a wall.
	test('[rules R5] 608.3, 608.10, 610.3.1 keep silent over a bath; 609, 610.2 and 607.6 do not', () => {
		const bath = caseWith({
			enclosure: { type: 'over-bath', seatWall: 'back', threshold: { value: 540, how: 'measured' } }
		});
		const board = mark('seat', { purpose: 'sit', wall: 'back', x: 450, y: 540, variant: variantOf('bath-board') });
		expect(said(bath, [board], 'seat')).toEqual({
			'ADA-ST-Z': 'outside',
			'ADA-LOAD-SEAT': 'inside',
			'CA-LOAD-SEAT': 'inside'
		});
		const ofBath = Object.keys(said(bath, [board]));
		expect(ofBath).toEqual(expect.arrayContaining(['ADA-HS-HOSE', 'ADA-TEMP', 'ADA-CT-FORCE']));
		expect(ofBath.filter((id) => /^(A03|CA)-|LOW$/.test(id))).toEqual(['CA-DISPENSER']);
		const bars = [backBar('rise'), { ...backBar('steady'), place: { ...backBar('steady').place, y: inches(20) } }];
		expect(said(bath, bars, 'bar-back')).toMatchObject({ 'ADA-GB-WALLGAP': 'outside' });
		expect(said(bath, bars, 'bar-back')).not.toHaveProperty('ADA-GB-SAMEZ');
	});
});
