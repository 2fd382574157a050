import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { caseOf } from '#core/case/read.ts';

const measured = (value: number, typed?: string) => ({ value, how: 'measured', ...(typed && { typed }) });

/** What is wrong with the example once its client has these lengths of the body and of the left arm, and no others. */
function problems(body: object, left: object = {}): readonly string[] {
	const json = JSON.parse(readFileSync('personas/clients/turns-left/case.json', 'utf8')) as {
		people: { client: { body: object; arms: object } };
	};
	Object.assign(json.people.client, { body, arms: { left, right: {} } });
	const read = caseOf(json);
	return read.kind === 'bad' ? read.problems.map(({ path, says }) => `${path}: ${says}`) : [];
}

describe('[case R9] a body nobody has is refused at the field, with both lengths', () => {
	test.each([
		['shoulderStanding', 'stature', 1500, 'the shoulder, standing', 'the stature'],
		['wristStanding', 'shoulderStanding', 900, 'the wrist, standing', 'the shoulder, standing'],
		['popliteal', 'kneeHeight', 450, 'the height under the knee', 'the height of the knee'],
		['popliteal', 'shoulderStanding', 640, 'the height under the knee', 'the shoulder, standing'],
		['elbowAboveSeat', 'shoulderAboveSeat', 400, 'the elbow above the seat', 'the shoulder above the seat'],
		['shoulderAboveSeat', 'sittingHeight', 600, 'the shoulder above the seat', 'the sitting height']
	])('%s below %s: under, on and over %s mm', (small, large, at, less, more) => {
		const seen = (n: number) => problems({ [small]: measured(n), [large]: measured(at) });
		const says = `people.client.body.${small}: expected ${less} less than ${more}, ${String(at)}`;
		expect(seen(at - 1)).toEqual([]);
		expect(seen(at)).toEqual([`${says} - saw ${String(at)}`]);
		expect(seen(at + 1)).toEqual([`${says} - saw ${String(at + 1)}`]);
	});

	test('an arm as long as the body, and an upper arm as long as the arm', () => {
		expect(problems({ stature: measured(950) }, { toGrip: measured(960) })).toEqual([
			'people.client.arms.left.toGrip: expected the arm to the grip less than the stature, 950 - saw 960'
		]);
		expect(problems({}, { toGrip: measured(300), upperArm: measured(300) })).toEqual([
			'people.client.arms.left.upperArm: expected the upper arm less than the arm to the grip, 300 - saw 300'
		]);
	});
});

describe('[case R10] a length that is not what was typed is refused', () => {
	test.each([
		['412', 412, '19 in', ['people.client.body.popliteal.value: expected 482.6, as it was typed, "19 in" - saw 412']],
		[
			'412',
			412,
			'41,2 mm',
			['people.client.body.popliteal.value: expected 41.2, as it was typed, "41,2 mm" - saw 412']
		],
		['the same, in inches', 482.6, '19 in', []],
		['the same, in centimetres', 412, '41,2 cm', []],
		['read on a coarser tape', 413, '41,2 cm', []],
		['a bare figure, in whatever unit was shown', 482.6, '19', []],
		['words', 412, 'as before', []]
	])('%s mm typed as "%s"', (_, value, typed, says) => {
		expect(problems({ popliteal: measured(value, typed) })).toEqual(says);
	});
});
