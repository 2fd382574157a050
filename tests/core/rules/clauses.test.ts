import { describe, expect, test } from 'vitest';
import { answerOf } from '#core/rules/answer.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { ADA_2010 } from '#core/rules/packs/ada-2010.ts';
import type { Answer, Row } from '#core/rules/row.ts';
import { inches } from '#core/units/length.ts';
import { answers, barPart, caseWith, mark, marksOf, outside, sceneOf, workedPart } from './baseline.ts';

function row(id: string): Row {
	const found = ADA_2010.rows.find((r) => r.id === id);
	if (!found) throw new Error(`no row ${id}`);
	return found;
}

// Every fixture: reference of clause fixtures, figures in inches, derived from the clause named in the title.
describe('transfer compartment, clause fixtures', () => {
	test('[rules R3] F01 the baseline is inside every clause', () => {
		expect(outside(answers(caseWith(), marksOf()))).toEqual([]);
	});

	test('[rules R3] F02 608.5.1 controls 2.25 behind the centre line are outside', () => {
		const marks = marksOf({ control: { fromBack: 15, bottom: 40, top: 46 } });
		expect(outside(answers(caseWith(), marks))).toEqual(['ADA-CT-X-T-NEAR']);
	});

	test('[rules R3] 608.5.1 the window runs from the centre line, 17.25, to 15 in beyond it, 32.25', () => {
		const at = (fromBack: number) =>
			outside(answers(caseWith(), marksOf({ control: { fromBack, bottom: 40, top: 46 } })));
		expect(at(17.25)).toEqual([]);
		expect(at(32.25)).toEqual([]);
		expect(at(17.1875)).toEqual(['ADA-CT-X-T-NEAR']);
		expect(at(32.3125)).toEqual(['ADA-CT-X-T-FAR']);
	});

	test('[rules R3] F04 608.5.1 controls from 37.5 are too low in a transfer compartment', () => {
		const marks = marksOf({ control: { fromBack: 24, bottom: 37.5, top: 46 }, barTop: 36 });
		expect(outside(answers(caseWith(), marks))).toEqual(['ADA-CT-Z-T-LOW']);
	});

	test('[rules R3] F05a, F05c 609.3 eleven inches free above a bar are outside', () => {
		expect(answerOf(row('ADA-GB-ABOVE'), inches(44 - 33))).toBe('outside');
		expect(answerOf(row('ADA-GB-ABOVE'), inches(47 - 36))).toBe('outside');
		expect(answerOf(row('ADA-GB-ABOVE'), inches(12))).toBe('inside');
	});

	test('[rules R3] F06 609.3 a recessed niche over a bar is not a projecting object', () => {
		const niche = { kind: 'niche', x0: 400, x1: 700, y0: inches(36), y1: inches(48), how: 'measured' };
		const walls = { back: { keepOuts: { niche }, surveyed: true }, left: {}, right: {} };
		const found = answers(caseWith({ enclosure: { walls } }), marksOf());
		expect([found['ADA-GB-ABOVE'], found['ADA-GB-BELOW']]).toEqual(['not-here', 'inside']);
	});

	test.each([
		['F07 36.25 in: a range of two ends has no tolerance', inches(36.25), 'outside'],
		['F08a 839 mm: inches decide, though 840 is printed', 839, 'inside'],
		['F08b 915 mm: only the printed figure passes', 915, 'borderline'],
		['36 in', inches(36), 'inside'],
		['33 in', 33 * 25.4, 'inside']
	] as const)('[rules R4] 609.4 bar top, %s', (_, top, answer) => {
		const found = answers(caseWith(), marksOf({ barTop: top / 25.4 }));
		expect([found['ADA-GB-Z-LOW'], found['ADA-GB-Z-HIGH']]).toEqual([answer, answer]);
	});

	test('[rules R3] F10 609.3 a gap of 1.75 is outside', () => {
		expect(outside(answers(caseWith(), marksOf({ gap: 1.75 })))).toContain('ADA-GB-WALLGAP');
	});

	test('[rules R3] F11a 609.2.1 a round bar of 1.0 is outside', () => {
		expect(outside(answers(caseWith(), marksOf({ diameter: 1 })))).toContain('ADA-GB-DIA');
	});

	test.each([
		['F11b an ellipse of 1.8 by 0.9', 4.36, 1.8, 'inside'],
		['F11c a rounded square of 1.5', 5.79, 1.5, 'outside']
	] as const)('[rules R3] 609.2.2 %s', (_, round, across, answer) => {
		expect(answerOf(row('ADA-GB-PERIM'), inches(round))).toBe(answer);
		expect(answerOf(row('ADA-GB-SECTION'), inches(across))).toBe('inside');
	});

	test('[rules R3] 609.2.2 does not speak of round bars', () => {
		expect(answers(caseWith(), marksOf())['ADA-GB-PERIM']).toBe('not-here');
	});

	test('[rules R3] F20 608.2.1 a compartment of 38 by 36 is outside: absolute', () => {
		const c = caseWith({ enclosure: { width: { value: inches(38), how: 'measured' } } });
		expect(answers(c, marksOf())['ADA-SIZE-T-WIDTH']).toBe('outside');
	});

	test('[rules R3] F21a 608.2.1 a clear floor of 42 from the control wall is outside', () => {
		const c = caseWith({ enclosure: { clearLength: { value: inches(42), how: 'measured' } } });
		expect(outside(answers(c, marksOf()))).toEqual(['ADA-CLR-T-LENGTH']);
	});

	test('[rules R3] F22c, F22d 608.7 a threshold of 0.5 is inside, of 1.5 outside with the exception named', () => {
		expect(answers(caseWith(), marksOf())['ADA-THR-T']).toBe('inside');
		const c = caseWith({ enclosure: { threshold: { value: inches(1.5), how: 'measured' } } });
		expect(outside(answers(c, marksOf()))).toEqual(['ADA-THR-T']);
		expect(row('ADA-THR-T').note).toContain('2 in');
	});

	test('[rules R3] F23a 608.6 a hose of 57 is outside', () => {
		const c = caseWith({ enclosure: { hose: { value: inches(57), how: 'measured' } } });
		expect(outside(answers(c, marksOf()))).toEqual(['ADA-HS-HOSE']);
	});

	test('[rules R3] F23b 609.3 a shower fitting 1.0 above a bar is outside, 1.5 inside', () => {
		const rest = (foot: number) =>
			mark('handset-rest', {
				purpose: 'rest-handset',
				wall: 'right',
				x: inches(24),
				y: inches(foot + 2),
				variant: workedPart('handset-rest', { across: 1, up: 2 })
			});
		const found = (foot: number) => answers(caseWith(), [...marksOf({ barTop: 36 }), rest(foot)])['ADA-GB-BELOW'];
		expect(found(37)).toBe('outside');
		expect(found(37.5)).toBe('inside');
	});

	test('[rules R3] F24a 609.3 a bar ending 3.5 from the corner is too near a crossing bar: 0.5 free', () => {
		const axis = inches(33.25);
		const bar = (id: string, wall: 'back' | 'right', x: number, part: { length: number; diameter?: number }) =>
			mark(id, {
				purpose: wall === 'back' ? 'rise' : 'steady',
				wall,
				x: inches(x),
				y: axis,
				variant: barPart('horizontal-bar', part)
			});
		const crossing = bar('bar-control', 'right', 1.5, { length: 30, diameter: 1.5 });
		const found = (end: number) => {
			const marks = [bar('bar-back', 'back', 36 - end - 14.5, { length: 14.5 }), crossing];
			return judge(
				sceneOf(caseWith()),
				bind(
					[ADA_2010],
					marks.map((m) => m.accessory),
					caseWith()
				),
				marks
			).find((f) => f.row.id === 'ADA-GB-END');
		};
		expect(found(3.5)).toMatchObject({ answer: 'outside', measured: inches(0.5) });
		expect(found(4.5)).toMatchObject({ answer: 'inside', measured: inches(1.5) });
	});

	test('[rules R3] F25b 609.3 a vertical bar 2 in over a horizontal one is inside', () => {
		const vertical = mark('entry-bar', {
			purpose: 'step-in',
			wall: 'right',
			x: inches(33),
			y: inches(36),
			variant: barPart('vertical-bar', { length: 18 })
		});
		expect(outside(answers(caseWith(), [...marksOf(), vertical]))).toEqual([]);
	});

	test('[rules R3] F29 608.6 water of 122 F is outside', () => {
		const c = caseWith({ enclosure: { water: { value: 50, how: 'measured' } } });
		expect(outside(answers(c, marksOf()))).toEqual(['ADA-TEMP']);
	});

	test('[rules R3] 608.3.1, 608.4, 608.5.1 presence and wall', () => {
		const found = answers(caseWith(), []);
		expect([found['ADA-ST-REQ'], found['ADA-GB-WALLS-T-BACK'], found['ADA-GB-WALLS-T-CONTROL']]).toEqual([
			'outside',
			'outside',
			'outside'
		]);
		const [seat, control, ...bars] = marksOf();
		if (!seat || !control) throw new Error('baseline');
		const moved = { ...control, place: { ...control.place, wall: 'back' as const } };
		expect(answers(caseWith(), [seat, moved, ...bars])['ADA-CT-WALL']).toBe('outside');
	});
});

// In mm, just under, on and just over each end. Expected answers written from the clause: exact inches decide; what only
// the millimetres printed beside them allow is borderline; a range has no tolerance; an absolute value has 3 mm of ours.
const LIMITS: Readonly<Record<string, readonly (readonly [number, Answer])[]>> = {
	'ADA-TURN': [
		[1523.9, 'outside'],
		[1524, 'inside'],
		[1524.1, 'inside']
	],
	'ADA-REACH-LOW': [
		[379.9, 'outside'],
		[380.9, 'borderline'],
		[381, 'inside'],
		[381.1, 'inside']
	],
	'ADA-REACH-HIGH': [
		[1219.1, 'inside'],
		[1219.2, 'inside'],
		[1219.3, 'borderline'],
		[1220.1, 'outside']
	],
	'ADA-REACH-F-OVER': [
		[1117.5, 'inside'],
		[1117.6, 'inside'],
		[1120, 'borderline'],
		[1120.1, 'outside']
	],
	'ADA-REACH-F-DEPTH': [
		[634.9, 'inside'],
		[635, 'inside'],
		[635.1, 'outside']
	],
	'ADA-REACH-S-OVER': [
		[1168.3, 'inside'],
		[1168.4, 'inside'],
		[1170, 'borderline'],
		[1170.1, 'outside']
	],
	'ADA-REACH-S-SEAT': [
		[863.5, 'inside'],
		[863.6, 'inside'],
		[865, 'borderline'],
		[865.1, 'outside']
	],
	'ADA-REACH-S-DEPTH': [
		[609.5, 'inside'],
		[609.6, 'inside'],
		[610, 'borderline'],
		[610.1, 'outside']
	],
	'ADA-SIZE-T-WIDTH': [
		[911.3, 'outside'],
		[911.4, 'inside'],
		[914.4, 'inside'],
		[917.4, 'inside'],
		[917.5, 'borderline'],
		[918.1, 'outside']
	],
	'ADA-SIZE-T-DEPTH': [
		[911.3, 'outside'],
		[911.4, 'inside'],
		[917.4, 'inside'],
		[918, 'borderline'],
		[918.1, 'outside']
	],
	'ADA-ENTRY': [
		[914.3, 'outside'],
		[914.4, 'inside'],
		[914.5, 'inside']
	],
	'ADA-CLR-T-WIDTH': [
		[914.3, 'outside'],
		[914.4, 'inside'],
		[914.5, 'inside']
	],
	'ADA-CLR-T-LENGTH': [
		[1219.1, 'outside'],
		[1219.2, 'inside'],
		[1219.3, 'inside']
	],
	'ADA-SIZE-S-WIDTH': [
		[1523.9, 'outside'],
		[1524, 'inside'],
		[1524.1, 'inside']
	],
	'ADA-SIZE-S-DEPTH': [
		[759.9, 'outside'],
		[761.9, 'borderline'],
		[762, 'inside'],
		[762.1, 'inside']
	],
	'ADA-ENTRY-S': [
		[1523.9, 'outside'],
		[1524, 'inside'],
		[1524.1, 'inside']
	],
	'ADA-CLR-S-WIDTH': [
		[759.9, 'outside'],
		[761.9, 'borderline'],
		[762, 'inside'],
		[762.1, 'inside']
	],
	'ADA-CLR-S-LENGTH': [
		[1523.9, 'outside'],
		[1524, 'inside'],
		[1524.1, 'inside']
	],
	'ADA-SIZE-A': [
		[911.3, 'outside'],
		[911.4, 'inside'],
		[917.4, 'inside'],
		[917.5, 'borderline'],
		[918.1, 'outside']
	],
	'ADA-SIZE-A2': [
		[1523.9, 'outside'],
		[1524, 'inside'],
		[1524.1, 'inside']
	],
	'ADA-ENTRY-A': [
		[914.3, 'outside'],
		[914.4, 'inside'],
		[914.5, 'inside']
	],
	'ADA-GB-CORNER-S0': [
		[152.3, 'inside'],
		[152.4, 'inside'],
		[152.5, 'outside']
	],
	'ADA-GB-CORNER-S1': [
		[152.3, 'inside'],
		[152.4, 'inside'],
		[152.5, 'outside']
	],
	'ADA-GB-CORNER-SEAT': [
		[152.3, 'inside'],
		[152.4, 'inside'],
		[152.5, 'outside']
	],
	'ADA-GB-NOSEAT': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	'ADA-CT-X-S': [
		[685.7, 'inside'],
		[685.8, 'inside'],
		[685.9, 'outside']
	],
	'ADA-CT-Z-R-BAR': [
		[37.9, 'outside'],
		[38, 'borderline'],
		[38.1, 'inside'],
		[38.2, 'inside']
	],
	'ADA-CT-Z-R-HIGH': [
		[1219.1, 'inside'],
		[1219.2, 'inside'],
		[1219.3, 'borderline'],
		[1220.1, 'outside']
	],
	'ADA-CT-X-Aa': [
		[685.7, 'inside'],
		[685.8, 'inside'],
		[685.9, 'outside']
	],
	'ADA-CT-X-Ab': [
		[380.9, 'inside'],
		[381, 'inside'],
		[381.1, 'outside']
	],
	'ADA-THR-R': [
		[12.6, 'inside'],
		[12.7, 'inside'],
		[12.8, 'borderline'],
		[13.1, 'outside']
	],
	'ADA-GB-SAMEZ': [
		[0, 'inside'],
		[3, 'inside'],
		[3.1, 'outside']
	],
	'ADA-GB-18': [
		[451.9, 'outside'],
		[454.1, 'borderline'],
		[454.2, 'inside'],
		[457.2, 'inside'],
		[457.3, 'inside']
	],
	'ADA-CT-Z-T-LOW': [
		[964.9, 'outside'],
		[965.1, 'borderline'],
		[965.2, 'inside'],
		[965.3, 'inside']
	],
	'ADA-CT-Z-T-HIGH': [
		[1219.1, 'inside'],
		[1219.2, 'inside'],
		[1219.3, 'borderline'],
		[1220.1, 'outside']
	],
	'ADA-CT-X-T-NEAR': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	'ADA-CT-X-T-FAR': [
		[380.9, 'inside'],
		[381, 'inside'],
		[381.1, 'outside']
	],
	'ADA-HS-HOSE': [
		[1498.5, 'outside'],
		[1498.6, 'inside'],
		[1498.7, 'inside']
	],
	'ADA-TEMP': [
		[48.8, 'inside'],
		[(88 * 5) / 9, 'inside'],
		[49, 'borderline'],
		[49.1, 'outside']
	],
	'ADA-THR-T': [
		[12.6, 'inside'],
		[12.7, 'inside'],
		[12.8, 'borderline'],
		[13.1, 'outside']
	],
	'ADA-GB-DIA': [
		[31.7, 'outside'],
		[31.75, 'inside'],
		[32, 'inside'],
		[50.8, 'inside'],
		[50.9, 'borderline'],
		[51.1, 'outside']
	],
	'ADA-GB-PERIM': [
		[99.9, 'outside'],
		[101.5, 'borderline'],
		[101.6, 'inside'],
		[121.9, 'inside'],
		[122, 'outside']
	],
	'ADA-GB-SECTION': [
		[50.7, 'inside'],
		[50.8, 'inside'],
		[50.9, 'borderline'],
		[51.1, 'outside']
	],
	'ADA-GB-WALLGAP': [
		[34.9, 'outside'],
		[35.1, 'inside'],
		[38.1, 'inside'],
		[41.1, 'inside'],
		[41.2, 'outside']
	],
	'ADA-GB-ABOVE': [
		[304.7, 'outside'],
		[304.8, 'inside'],
		[304.9, 'inside']
	],
	'ADA-GB-BELOW': [
		[37.9, 'outside'],
		[38, 'borderline'],
		[38.1, 'inside'],
		[38.2, 'inside']
	],
	'ADA-GB-END': [
		[37.9, 'outside'],
		[38, 'borderline'],
		[38.1, 'inside'],
		[38.2, 'inside']
	],
	'ADA-GB-Z-LOW': [
		[838.1, 'outside'],
		[838.2, 'inside'],
		[838.3, 'inside'],
		[914.4, 'inside'],
		[915, 'borderline'],
		[915.1, 'outside']
	],
	'ADA-GB-Z-HIGH': [
		[838.1, 'outside'],
		[838.2, 'inside'],
		[914.3, 'inside'],
		[914.4, 'inside'],
		[914.5, 'borderline'],
		[915.1, 'outside']
	],
	'ADA-LOAD-BAR': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	'ADA-ST-Z': [
		[429.9, 'outside'],
		[431.7, 'borderline'],
		[431.8, 'inside'],
		[482.6, 'inside'],
		[482.7, 'borderline'],
		[485.1, 'outside']
	],
	'ADA-ST-END': [
		[76.1, 'inside'],
		[76.2, 'inside'],
		[76.3, 'outside']
	],
	'ADA-ST-REAR': [
		[63.4, 'inside'],
		[63.5, 'inside'],
		[64, 'borderline'],
		[64.1, 'outside']
	],
	'ADA-ST-FRONT': [
		[379.9, 'outside'],
		[380.9, 'borderline'],
		[381, 'inside'],
		[406.4, 'inside'],
		[406.5, 'outside']
	],
	'ADA-ST-SIDE': [
		[38, 'inside'],
		[38.1, 'inside'],
		[38.2, 'outside']
	],
	'ADA-ST-LREAR': [
		[38, 'inside'],
		[38.1, 'inside'],
		[38.2, 'outside']
	],
	'ADA-ST-LFRONT': [
		[354.9, 'outside'],
		[355, 'borderline'],
		[355.6, 'inside'],
		[381, 'inside'],
		[381.1, 'outside']
	],
	'ADA-ST-LEND': [
		[558.7, 'outside'],
		[558.8, 'inside'],
		[584.2, 'inside'],
		[585, 'borderline'],
		[585.1, 'outside']
	],
	'ADA-LOAD-SEAT': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	]
};

describe('limits', () => {
	const numeric = ADA_2010.rows.filter((r) => typeof r.allowed === 'object' && !('ask' in r.allowed));

	test('[rules R4] every numeric row of the document stands in the table of limits', () => {
		expect(numeric.map((r) => r.id).toSorted()).toEqual(Object.keys(LIMITS).toSorted());
	});

	test.each(
		numeric.flatMap((r) => (LIMITS[r.id] ?? []).map(([value, answer]) => [r.clause, r.id, value, answer] as const))
	)('[rules R4] clause %s, %s at %s is %s', (_, id, value, answer) => {
		expect(answerOf(row(id), value)).toBe(answer);
	});
});
