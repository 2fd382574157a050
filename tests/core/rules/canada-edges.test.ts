import { describe, expect, test } from 'vitest';
import { answerOf } from '#core/rules/answer.ts';
import { BC_BCBC_2024 } from '#core/rules/packs/bc-bcbc-2024.ts';
import { ON_OBC_2012 } from '#core/rules/packs/on-obc-2012.ts';
import type { Answer, Pack, Row } from '#core/rules/row.ts';

type Edges = Readonly<Record<string, readonly (readonly [number, Answer])[]>>;

// In mm, and degrees Celsius for ON-35: just under, on and just over each end. Expected answers written from the clauses
// of O. Reg. 332/12: limits belong to what is allowed; only what is printed as one value has a tolerance, 10 mm of ours.
const ONTARIO: Edges = {
	// 3.8.3.8.(7)(a) at least 1.3 kN: 0 is what just carries it.
	'ON-23': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// 3.8.3.8.(7)(b) 30 to 40.
	'ON-21': [
		[29.9, 'outside'],
		[30, 'inside'],
		[30.1, 'inside'],
		[39.9, 'inside'],
		[40, 'inside'],
		[40.1, 'outside']
	],
	// 3.8.3.8.(7)(c) 38 to 50.
	'ON-22': [
		[37.9, 'outside'],
		[38, 'inside'],
		[38.1, 'inside'],
		[49.9, 'inside'],
		[50, 'inside'],
		[50.1, 'outside']
	],
	// 3.8.3.13.(2)(a) at least 1500 by 900.
	'ON-01': [
		[1499.9, 'outside'],
		[1500, 'inside'],
		[1500.1, 'inside']
	],
	'ON-02': [
		[899.9, 'outside'],
		[900, 'inside'],
		[900.1, 'inside']
	],
	// (b) at least 900 deep, as wide as the shower: 0 is as wide.
	'ON-03': [
		[899.9, 'outside'],
		[900, 'inside'],
		[900.1, 'inside']
	],
	'ON-04': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// (e) at most 13.
	'ON-06': [
		[0, 'inside'],
		[12.9, 'inside'],
		[13, 'inside'],
		[13.1, 'outside']
	],
	// (f)(i) at least 450 by 400.
	'ON-08': [
		[449.9, 'outside'],
		[450, 'inside'],
		[450.1, 'inside']
	],
	'ON-09': [
		[399.9, 'outside'],
		[400, 'inside'],
		[400.1, 'inside']
	],
	// (f)(ii) 460 to 480.
	'ON-10': [
		[459.9, 'outside'],
		[460, 'inside'],
		[460.1, 'inside'],
		[479.9, 'inside'],
		[480, 'inside'],
		[480.1, 'outside']
	],
	// (f)(iii) at least 1.3 kN.
	'ON-12': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// (f)(iv) within 500.
	'ON-13': [
		[0, 'inside'],
		[499.9, 'inside'],
		[500, 'inside'],
		[500.1, 'outside']
	],
	// (g)(ii) 1000 long, one value; longer is not failed.
	'ON-14': [
		[989.9, 'outside'],
		[990, 'inside'],
		[1000, 'inside'],
		[1010.1, 'inside'],
		[1500, 'inside']
	],
	// (g)(ii) 50 to 80.
	'ON-15': [
		[49.9, 'outside'],
		[50, 'inside'],
		[50.1, 'inside'],
		[79.9, 'inside'],
		[80, 'inside'],
		[80.1, 'outside']
	],
	// (g)(ii) 600 to 650.
	'ON-16': [
		[599.9, 'outside'],
		[600, 'inside'],
		[600.1, 'inside'],
		[649.9, 'inside'],
		[650, 'inside'],
		[650.1, 'outside']
	],
	// (g)(iii) 1000 long, one value.
	'ON-17': [
		[989.9, 'outside'],
		[990, 'inside'],
		[1000, 'inside'],
		[1010.1, 'inside'],
		[1500, 'inside']
	],
	// (g)(iii) 750 to 870.
	'ON-18-HIGH': [
		[749.9, 'outside'],
		[750, 'inside'],
		[750.1, 'inside'],
		[869.9, 'inside'],
		[870, 'inside'],
		[870.1, 'outside']
	],
	'ON-18-LOW': [
		[749.9, 'outside'],
		[750, 'inside'],
		[750.1, 'inside'],
		[869.9, 'inside'],
		[870, 'inside'],
		[870.1, 'outside']
	],
	// (g)(iii) 750 long, one value.
	'ON-19': [
		[0, 'outside'],
		[739.9, 'outside'],
		[740, 'inside'],
		[750, 'inside'],
		[760.1, 'inside']
	],
	// (g)(iii) 400 to 500.
	'ON-20': [
		[399.9, 'outside'],
		[400, 'inside'],
		[400.1, 'inside'],
		[499.9, 'inside'],
		[500, 'inside'],
		[500.1, 'outside']
	],
	// (h) at most 1200.
	'ON-29': [
		[1199.9, 'inside'],
		[1200, 'inside'],
		[1200.1, 'outside']
	],
	// (h) in reach: 0 is what is just reached.
	'ON-30': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	'ON-30-HELPER': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// (i) at least 1800.
	'ON-31': [
		[1799.9, 'outside'],
		[1800, 'inside'],
		[1800.1, 'inside']
	],
	// (i) in reach.
	'ON-32': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// (i) 1200 and 2030, one value each.
	'ON-33-REST': [
		[1189.9, 'outside'],
		[1190, 'inside'],
		[1200, 'inside'],
		[1210, 'inside'],
		[1210.1, 'outside']
	],
	'ON-33-HIGH': [
		[2019.9, 'outside'],
		[2020, 'inside'],
		[2030, 'inside'],
		[2040, 'inside'],
		[2040.1, 'outside']
	],
	// 7.6.5 at most 49.
	'ON-35': [
		[48.9, 'inside'],
		[49, 'inside'],
		[49.1, 'outside']
	]
};

// The same from BCBC 2024: least lengths are least lengths, the gap is 35 to 45, no distance to the controls, no water.
const BRITISH_COLUMBIA: Edges = {
	// 3.7.2.7.(1) at least 1.3 kN.
	'BC-23': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// 3.7.2.7.(1) 30 to 40.
	'BC-21': [
		[29.9, 'outside'],
		[30, 'inside'],
		[30.1, 'inside'],
		[39.9, 'inside'],
		[40, 'inside'],
		[40.1, 'outside']
	],
	// 3.7.2.7.(1)(e) 35 to 45.
	'BC-22': [
		[34.9, 'outside'],
		[35, 'inside'],
		[35.1, 'inside'],
		[44.9, 'inside'],
		[45, 'inside'],
		[45.1, 'outside']
	],
	// 3.8.3.17.(1)(a) at least 1500 by 900.
	'BC-01': [
		[1499.9, 'outside'],
		[1500, 'inside'],
		[1500.1, 'inside']
	],
	'BC-02': [
		[899.9, 'outside'],
		[900, 'inside'],
		[900.1, 'inside']
	],
	// (b) at least 900 deep, as wide as the shower.
	'BC-03': [
		[899.9, 'outside'],
		[900, 'inside'],
		[900.1, 'inside']
	],
	'BC-04': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// (e) at most 13.
	'BC-06': [
		[6, 'inside'],
		[12.9, 'inside'],
		[13, 'inside'],
		[13.1, 'outside']
	],
	// (f)(ii) at least 1000.
	'BC-14': [
		[999.9, 'outside'],
		[1000, 'inside'],
		[1100, 'inside']
	],
	// (f)(ii) 50 to 80.
	'BC-15': [
		[49.9, 'outside'],
		[50, 'inside'],
		[50.1, 'inside'],
		[79.9, 'inside'],
		[80, 'inside'],
		[80.1, 'outside']
	],
	// (f)(ii) 600 to 650.
	'BC-16': [
		[599.9, 'outside'],
		[600, 'inside'],
		[600.1, 'inside'],
		[649.9, 'inside'],
		[650, 'inside'],
		[650.1, 'outside']
	],
	// (f)(iii) at least 1000.
	'BC-17': [
		[999.9, 'outside'],
		[1000, 'inside'],
		[1100, 'inside']
	],
	// (f)(iii) 750 to 870.
	'BC-18-HIGH': [
		[749.9, 'outside'],
		[750, 'inside'],
		[750.1, 'inside'],
		[869.9, 'inside'],
		[870, 'inside'],
		[870.1, 'outside']
	],
	'BC-18-LOW': [
		[749.9, 'outside'],
		[750, 'inside'],
		[750.1, 'inside'],
		[869.9, 'inside'],
		[870, 'inside'],
		[870.1, 'outside']
	],
	// (f)(iii) at least 750.
	'BC-19': [
		[0, 'outside'],
		[749.9, 'outside'],
		[750, 'inside'],
		[760, 'inside']
	],
	// (f)(iii) 400 to 500.
	'BC-20': [
		[399.9, 'outside'],
		[400, 'inside'],
		[400.1, 'inside'],
		[499.9, 'inside'],
		[500, 'inside'],
		[500.1, 'outside']
	],
	// (g) at least 450 by 400.
	'BC-08': [
		[449.9, 'outside'],
		[450, 'inside'],
		[450.1, 'inside']
	],
	'BC-09': [
		[399.9, 'outside'],
		[400, 'inside'],
		[400.1, 'inside']
	],
	// (g) 460 to 480.
	'BC-10': [
		[459.9, 'outside'],
		[460, 'inside'],
		[460.1, 'inside'],
		[479.9, 'inside'],
		[480, 'inside'],
		[480.1, 'outside']
	],
	// (g) at least 1.3 kN.
	'BC-12': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// (h) at most 1200, in reach.
	'BC-29': [
		[1199.9, 'inside'],
		[1200, 'inside'],
		[1200.1, 'outside']
	],
	'BC-30': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	'BC-30-HELPER': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	// (i) at least 1800, in reach, 1200 and 2030 one value each.
	'BC-31': [
		[1799.9, 'outside'],
		[1800, 'inside'],
		[1800.1, 'inside']
	],
	'BC-32': [
		[-0.1, 'outside'],
		[0, 'inside'],
		[0.1, 'inside']
	],
	'BC-33-REST': [
		[1189.9, 'outside'],
		[1190, 'inside'],
		[1200, 'inside'],
		[1210, 'inside'],
		[1210.1, 'outside']
	],
	'BC-33-HIGH': [
		[2019.9, 'outside'],
		[2020, 'inside'],
		[2030, 'inside'],
		[2040, 'inside'],
		[2040.1, 'outside']
	]
};

const numericOf = ({ rows }: Pack): readonly Row[] =>
	rows.filter(({ allowed }) => typeof allowed === 'object' && !('ask' in allowed));

describe.each([
	['Ontario, O. Reg. 332/12', ON_OBC_2012, ONTARIO],
	['British Columbia, BCBC 2024', BC_BCBC_2024, BRITISH_COLUMBIA]
] as const)('%s, edges', (_, pack, edges) => {
	test('[rules R4] every numeric row stands in the table of edges', () => {
		expect(numericOf(pack).map(({ id }) => id)).toEqual(Object.keys(edges));
	});

	test.each(
		numericOf(pack).flatMap((row) =>
			(edges[row.id] ?? []).map(([value, answer]) => [row.clause, row.id, value, answer, row] as const)
		)
	)('[rules R4] clause %s, %s at %s is %s', (_clause, _id, value, answer, row) => {
		expect(answerOf(row, value)).toBe(answer);
	});
});
