import { describe, expect, test } from 'vitest';
import { MEASURES } from '#core/measures/registry.ts';
import { answerOf } from '#core/rules/answer.ts';
import { A117_1_2003 } from '#core/rules/packs/a117-1-2003.ts';
import { ADA_2010 } from '#core/rules/packs/ada-2010.ts';
import { CBC_11B } from '#core/rules/packs/cbc-11b.ts';
import type { Row } from '#core/rules/row.ts';
import { inches } from '#core/units/length.ts';

// Written by hand from the clause each row names, just under, on and just over each end, 1/16 in off. Exact inches decide;
// what only the millimetres printed beside them allow is borderline; a range has no tolerance; an absolute value has 3 mm
// of ours, which is a little less than 1/8 in. Inches, but for the two rows that say otherwise.
const EDGES: Readonly<Record<string, string>> = {
	'ADA-TURN': '59 15/16 outside, 60 inside, 60 1/16 inside',
	'ADA-REACH-LOW': '14 15/16 outside, 15 inside, 15 1/16 inside',
	'ADA-REACH-HIGH': '47 15/16 inside, 48 inside, 48 1/16 outside',
	// 1120 and 1170 are printed: 44 1/16 in is 1119.2, 46 1/16 in 1169.99.
	'ADA-REACH-F-OVER': '43 15/16 inside, 44 inside, 44 1/16 borderline, 44 1/8 outside',
	'ADA-REACH-F-DEPTH': '24 15/16 inside, 25 inside, 25 1/16 outside',
	'ADA-REACH-S-OVER': '45 15/16 inside, 46 inside, 46 1/16 borderline, 46 1/8 outside',
	'ADA-REACH-S-SEAT': '33 15/16 inside, 34 inside, 34 1/16 outside',
	'ADA-REACH-S-DEPTH': '23 15/16 inside, 24 inside, 24 1/16 outside',
	// 915 is printed: with our 3 mm 36 1/8 in, 917.6, is inside the printed figure alone.
	'ADA-SIZE-T-WIDTH': '35 7/8 outside, 35 15/16 inside, 36 inside, 36 1/16 inside, 36 1/8 borderline, 36 3/16 outside',
	'ADA-SIZE-T-DEPTH': '35 7/8 outside, 35 15/16 inside, 36 inside, 36 1/16 inside, 36 1/8 borderline, 36 3/16 outside',
	'ADA-ENTRY': '35 15/16 outside, 36 inside, 36 1/16 inside',
	'ADA-CLR-T-WIDTH': '35 15/16 outside, 36 inside, 36 1/16 inside',
	'ADA-CLR-T-LENGTH': '47 15/16 outside, 48 inside, 48 1/16 inside',
	'ADA-SIZE-S-WIDTH': '59 15/16 outside, 60 inside, 60 1/16 inside',
	// 760 is printed: 29 15/16 in is 760.4.
	'ADA-SIZE-S-DEPTH': '29 7/8 outside, 29 15/16 borderline, 30 inside, 30 1/16 inside',
	'ADA-ENTRY-S': '59 15/16 outside, 60 inside, 60 1/16 inside',
	'ADA-CLR-S-WIDTH': '29 7/8 outside, 29 15/16 borderline, 30 inside, 30 1/16 inside',
	'ADA-CLR-S-LENGTH': '59 15/16 outside, 60 inside, 60 1/16 inside',
	'ADA-SIZE-A': '35 7/8 outside, 35 15/16 inside, 36 inside, 36 1/16 inside, 36 1/8 borderline, 36 3/16 outside',
	'ADA-SIZE-A2': '59 15/16 outside, 60 inside, 60 1/16 inside',
	'ADA-ENTRY-A': '35 15/16 outside, 36 inside, 36 1/16 inside',
	'ADA-GB-SAMEZ': '0 inside, 1/16 inside, 1/8 outside',
	// 455 is printed: with our 3 mm from 452 on, by exact inches from 454.2 on.
	'ADA-GB-18': '17 3/4 outside, 17 7/8 borderline, 17 15/16 inside, 18 inside, 18 1/16 inside, 24 inside',
	'ADA-GB-CORNER-S0': '5 15/16 inside, 6 inside, 6 1/16 outside',
	'ADA-GB-CORNER-S1': '5 15/16 inside, 6 inside, 6 1/16 outside',
	'ADA-GB-CORNER-SEAT': '5 15/16 inside, 6 inside, 6 1/16 outside',
	'ADA-GB-NOSEAT': '-1/16 outside, 0 inside, 1/16 inside',
	'ADA-CT-Z-T-LOW': '37 15/16 outside, 38 inside, 38 1/16 inside',
	'ADA-CT-Z-T-HIGH': '47 15/16 inside, 48 inside, 48 1/16 outside',
	'ADA-CT-X-T-NEAR': '-1/16 outside, 0 inside, 1/16 inside',
	'ADA-CT-X-T-FAR': '14 15/16 inside, 15 inside, 15 1/16 outside',
	'ADA-CT-X-S': '26 15/16 inside, 27 inside, 27 1/16 outside',
	'ADA-CT-Z-R-BAR': '1 7/16 outside, 1 1/2 inside, 1 9/16 inside',
	'ADA-CT-Z-R-HIGH': '47 15/16 inside, 48 inside, 48 1/16 outside',
	'ADA-CT-X-Aa': '26 15/16 inside, 27 inside, 27 1/16 outside',
	'ADA-CT-X-Ab': '14 15/16 inside, 15 inside, 15 1/16 outside',
	'ADA-HS-HOSE': '58 15/16 outside, 59 inside, 59 1/16 inside',
	// Degrees Fahrenheit; 49 C is printed, which is 120.2 F.
	'ADA-TEMP': '119 inside, 120 inside, 120.1 borderline, 121 outside, 122 outside',
	'ADA-THR-R': '7/16 inside, 1/2 inside, 9/16 outside',
	'ADA-THR-T': '7/16 inside, 1/2 inside, 9/16 outside',
	'ADA-GB-DIA': '1 3/16 outside, 1 1/4 inside, 1 5/16 inside, 1 15/16 inside, 2 inside, 2 1/16 outside',
	// 100 is printed: 3 15/16 in is 100.01.
	'ADA-GB-PERIM': '3 7/8 outside, 3 15/16 borderline, 4 inside, 4 1/16 inside, 4.8 inside, 4.8625 outside',
	'ADA-GB-SECTION': '1 15/16 inside, 2 inside, 2 1/16 outside',
	'ADA-GB-WALLGAP': '1 3/8 outside, 1 7/16 inside, 1 1/2 inside, 1 9/16 inside, 1 5/8 outside',
	'ADA-GB-ABOVE': '11 15/16 outside, 12 inside, 12 1/16 inside',
	'ADA-GB-BELOW': '1 7/16 outside, 1 1/2 inside, 1 9/16 inside',
	'ADA-GB-END': '1 7/16 outside, 1 1/2 inside, 1 9/16 inside',
	'ADA-GB-Z-LOW': '32 15/16 outside, 33 inside, 33 1/16 inside, 35 15/16 inside, 36 inside, 36 1/16 outside',
	'ADA-GB-Z-HIGH': '32 15/16 outside, 33 inside, 33 1/16 inside, 35 15/16 inside, 36 inside, 36 1/16 outside',
	'ADA-LOAD-BAR': '-1/16 outside, 0 inside, 1/16 inside',
	// 430 and 485 are printed: 16 15/16 in is 430.2, 19 1/16 in 484.2.
	'ADA-ST-Z': '16 7/8 outside, 16 15/16 borderline, 17 inside, 19 inside, 19 1/16 borderline, 19 1/8 outside',
	'ADA-ST-END': '2 15/16 inside, 3 inside, 3 1/16 outside',
	'ADA-ST-REAR': '2 7/16 inside, 2 1/2 inside, 2 9/16 outside',
	'ADA-ST-FRONT': '14 15/16 outside, 15 inside, 15 1/16 inside, 15 15/16 inside, 16 inside, 16 1/16 outside',
	'ADA-ST-SIDE': '1 7/16 inside, 1 1/2 inside, 1 9/16 outside',
	'ADA-ST-LREAR': '1 7/16 inside, 1 1/2 inside, 1 9/16 outside',
	'ADA-ST-LFRONT': '13 15/16 outside, 14 inside, 14 1/16 inside, 14 15/16 inside, 15 inside, 15 1/16 outside',
	'ADA-ST-LEND': '21 15/16 outside, 22 inside, 22 1/16 inside, 22 15/16 inside, 23 inside, 23 1/16 outside',
	'ADA-LOAD-SEAT': '-1/16 outside, 0 inside, 1/16 inside',
	'A03-SEATWALL': '23 15/16 outside, 24 inside, 24 1/16 inside, 35 15/16 inside, 36 inside, 36 1/16 outside',
	// 455 is printed: 17 15/16 in is 455.6.
	'A03-VB-LEN': '17 7/8 outside, 17 15/16 borderline, 18 inside, 18 1/16 inside',
	'A03-VB-Z': '2 15/16 outside, 3 inside, 3 1/16 inside, 5 15/16 inside, 6 inside, 6 1/16 outside',
	'A03-VB-X': '3 15/16 inside, 4 inside, 4 1/16 outside',
	'A03-GB-CORNER-S0': '5 15/16 inside, 6 inside, 6 1/16 outside',
	'A03-GB-CORNER-S1': '5 15/16 inside, 6 inside, 6 1/16 outside',
	'A03-GB-CORNER-A': '5 15/16 inside, 6 inside, 6 1/16 outside',
	'A03-CT-X-T': '14 15/16 inside, 15 inside, 15 1/16 outside',
	'A03-CT-Z-LOW': '37 15/16 outside, 38 inside, 38 1/16 inside',
	'A03-CT-Z-HIGH': '47 15/16 inside, 48 inside, 48 1/16 outside',
	'A03-CT-X-A': '26 15/16 inside, 27 inside, 27 1/16 outside',
	'CA-CT-X-S-NEAR': '15 15/16 outside, 16 inside, 16 1/16 inside',
	'CA-CT-X-S-FAR': '26 15/16 inside, 27 inside, 27 1/16 outside',
	// Inches of fall in a foot.
	'CA-FALL': '7/16 inside, 1/2 inside, 9/16 outside',
	'CA-LOAD-BAR': '-1/16 outside, 0 inside, 1/16 inside',
	'CA-LOAD-SEAT': '-1/16 outside, 0 inside, 1/16 inside'
};

const numeric = [ADA_2010, A117_1_2003, CBC_11B].flatMap((pack) =>
	pack.rows.filter(({ allowed }) => typeof allowed === 'object' && !('ask' in allowed))
);

/** A figure as a tape has it: whole inches, a fraction, or both. */
function figure(words: string): number {
	const sign = words.startsWith('-') ? -1 : 1;
	const parts = words.replace('-', '').split(' ');
	return sign * parts.map((p) => p.split('/').map(Number)).reduce((sum, [n = 0, of = 1]) => sum + n / of, 0);
}

/** A figure in the unit the measure of a row counts in. */
function inUnit({ measure }: Row, n: number): number {
	const { unit } = MEASURES[measure];
	if (unit === 'degC') return ((n - 32) * 5) / 9;
	return unit === 'ratio' ? n / 12 : inches(n);
}

describe('edges of the clauses of the United States', () => {
	test('[rules R4] every numeric row of the three documents stands in the table', () => {
		expect(numeric.map(({ id }) => id).toSorted()).toEqual(Object.keys(EDGES).toSorted());
	});

	test.each(numeric.map((row) => [row.clause, row.id, row] as const))('[rules R4] clause %s, %s', (_, id, row) => {
		const edges = (EDGES[id] ?? '').split(', ').map((words) => {
			const at = words.lastIndexOf(' ');
			return [words.slice(0, at), words.slice(at + 1)] as const;
		});
		expect(edges.length).toBeGreaterThanOrEqual(3);
		const found = edges.map(([words]) => [words, answerOf(row, inUnit(row, figure(words)))]);
		expect(found).toEqual(edges);
	});
});
