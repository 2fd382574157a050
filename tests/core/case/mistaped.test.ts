import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { caseOf } from '#core/case/read.ts';
import type { Problem } from '#core/case/record.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';

const EXAMPLE = readFileSync('personas/clients/turns-left/case.json', 'utf8');
const SAT = { behind: 'left', x: 450, off: 20, seatHeight: 455, floor: 'shower', how: 'measured' };
const AHEAD = { wall: 'right', x: 450, y: 100, reach: 'just', hand: 'fingertip', how: 'measured' };

/** The example with where she sat and points of her left hand. */
function read(points: object, reachTest: object | null = SAT) {
	const json = JSON.parse(EXAMPLE) as { people: { client: { arms: { left: object } } } };
	const { client } = json.people;
	if (reachTest) Object.assign(client, { reachTest });
	Object.assign(client.arms.left, { points });
	return caseOf(json);
}

function problems(points: object, reachTest: object | null = SAT): readonly Problem[] {
	const found = read(points, reachTest);
	return found.kind === 'bad' ? found.problems : [];
}

const AT = 'people.client.arms.left.points';

describe('[case R8] a reach test', () => {
	test('is read, and its mirror image is its own mirror image', () => {
		const found = read({ a: AHEAD, b: { ...AHEAD, hand: 'grip', off: 40, when: '2026-05-04' } });
		if (found.kind === 'bad') throw new Error(JSON.stringify(found.problems));
		const mirrored = mirroredCase(found.case);
		expect(mirrored.people['client']?.arms.right.points?.['a']?.wall).toBe('left');
		expect(mirrored.people['client']?.reachTest?.behind).toBe('right');
		expect(mirroredCase(mirrored).people).toEqual(found.case.people);
	});

	test.each([
		['a point beyond its wall', { a: { ...AHEAD, x: 1200 } }, SAT, `${AT}.a`, 'on its wall'],
		['a point above its wall', { a: { ...AHEAD, y: 3000 } }, SAT, `${AT}.a`, 'on its wall'],
		['a point under the floor', { a: { ...AHEAD, y: -2000 } }, SAT, `${AT}.a`, 'on its wall'],
		['a point where no wall stands', { a: { ...AHEAD, wall: 'front' } }, SAT, `${AT}.a`, 'that stands'],
		['a fist without how far it stood off', { a: { ...AHEAD, hand: 'grip' } }, SAT, `${AT}.a.off`, 'saw nothing'],
		['points without where she sat', { a: AHEAD }, null, 'people.client.reachTest', 'where she sat'],
		['no wall behind her', { a: AHEAD }, { ...SAT, behind: 'front' }, 'people.client.reachTest', 'that stands'],
		['a seat beyond the room', { a: AHEAD }, { ...SAT, off: 1500 }, 'people.client.reachTest', 'in the room'],
		[
			'farther without stretching than with',
			{ far: { ...AHEAD, x: 20, reach: 'comfortable' }, near: { ...AHEAD, wall: 'back', x: 820 } },
			SAT,
			`${AT}.far`,
			'than "near", just reached the same way'
		]
	] as const)('%s is refused', (_, points, sat, path, says) => {
		const found = problems(points, sat);
		expect(found.map((p) => p.path)).toContain(path);
		expect(found.find((p) => p.path === path)?.says).toContain(says);
	});

	test('a little farther, and the other way, is not', () => {
		const easy = { ...AHEAD, reach: 'comfortable' };
		expect(problems({ a: AHEAD, b: easy })).toEqual([]);
		expect(problems({ a: easy, b: { ...AHEAD, wall: 'back', x: 300, y: 100 } })).toEqual([]);
	});
});
