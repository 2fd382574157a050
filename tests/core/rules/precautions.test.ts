import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import type { Answer } from '#core/rules/row.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { EVIDENCE } from '#core/rules/packs/evidence.ts';
import { PERSON } from '#core/rules/packs/person.ts';
import { caseWith, mark, sceneOf } from './baseline.ts';

const said = <T>(value: T) => ({ value, how: 'told' as const });

/** What a row answers for the client of the baseline, 388 mm under the knee, on a seat so high above the floor. */
function answers(row: string, client: Record<string, unknown>, { high = 400, water = 46 } = {}): readonly Answer[] {
	const c = caseWith({ client, enclosure: { water: said(water), fall: said(0), datum: said(0) } });
	const seat = mark('seat', { purpose: 'sit', wall: 'left', x: 400, y: high, variant: variantOf('seat-450') });
	const rows = bind([PERSON, EVIDENCE], [seat.accessory], c).filter((bound) => bound.row.id === row);
	return judge(sceneOf(c), rows, [seat]).map(({ answer }) => answer);
}

describe('what makes a seat, the water or a bar another one', () => {
	// Source: assessment form fields, a hip precaution raises the least seat height; that level is the height under the knee is geometry.
	test.each([
		[387, 'outside'],
		[388, 'inside'],
		[460, 'inside']
	] as const)('[rules R12] a hip that must not bend past level on a seat %s high: %s', (high, answer) => {
		expect(answers('BODY-HIP-LIMIT', { hipLimit: said(true) }, { high })).toEqual([answer]);
	});

	test('[rules R12] a hip that may, or was not asked about, is not judged', () => {
		expect(answers('BODY-HIP-LIMIT', { hipLimit: said(false) }, { high: 300 })).toEqual([]);
		expect(answers('BODY-HIP-LIMIT', {}, { high: 300 })).toEqual([]);
	});

	// Source: Ontario Building Code appendix, 43 C proposed as the most in care homes.
	test.each([
		[42.9, 'inside'],
		[43, 'inside'],
		[43.1, 'outside']
	] as const)('[rules R12] heat that is not felt, water of %s C: %s', (water, answer) => {
		expect(answers('EV-HEAT-NOT-FELT', { feelsHeat: said(false) }, { water })).toEqual([answer]);
		expect(answers('EV-HEAT-STOP', { feelsHeat: said(false) }, { water })).toEqual(['ask']);
		expect(answers('EV-HEAT-NOT-FELT', { feelsHeat: said(true) }, { water })).toEqual([]);
	});

	test('[rules R12] who does not see a bar on its wall: asked', () => {
		expect(answers('EV-BARS-SEEN', { seesBars: said(false) })).toEqual(['ask']);
		expect(answers('EV-BARS-SEEN', { seesBars: said(true) })).toEqual([]);
	});
});
