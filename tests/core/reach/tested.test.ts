import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bodiesOf } from '#core/body/body.ts';
import { caseOf } from '#core/case/read.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { INTO, toPlan, type WallId } from '#core/geometry/frame.ts';
import { add, leftOf, times, type Vec } from '#core/geometry/vec.ts';
import { questionOf } from '#core/plan.ts';
import { handTestWords, reachTestsIn } from '#core/reach-words.ts';
import { armFrom } from '#core/reach/arm.ts';
import { reachOf } from '#core/reach/reach.ts';
import { slack, type Posture } from '#core/reach/slack.ts';
import { seatedPosture } from '#core/reach/station.ts';
import { reachTestsOf, testedBodies } from '#core/reach/tested.ts';

const EXAMPLE = readFileSync('personas/clients/turns-left/case.json', 'utf8');
const SAT = { behind: 'left', x: 440, off: 30, seatHeight: 455, floor: 'shower', how: 'measured' } as const;
type Json = Record<string, never> & { people: { client: { body: object; arms: { left: object; right: object } } } };

/** The example with both arms to grip left to be estimated, and points of either hand. */
function caseWith(left: object, right: object = {}, more: object = {}): Case {
	const json = JSON.parse(EXAMPLE) as Json;
	const { client } = json.people;
	client.arms = { left: { points: left }, right: { points: right } };
	Object.assign(client, { reachTest: SAT }, more);
	const read = caseOf(json);
	if (read.kind === 'bad') throw new Error(JSON.stringify(read.problems));
	return read.case;
}

const NOBODY = caseWith({});
const ROOM = roomOf(NOBODY.enclosure);

/** Her left arm as it really is: longer by `more` than estimated, its shoulder 15 lower than recorded. */
function really(more: number) {
	const bodies = bodiesOf(NOBODY.people);
	const guess = reachOf(bodies)['client']?.left;
	if (!guess) throw new Error('no arm');
	const arm = armFrom({ ...guess, upper: guess.upper + more / 2, fore: guess.fore + more / 2 });
	const forward = INTO[SAT.behind];
	const [x, y] = toPlan(SAT.behind, [SAT.x, 0], SAT.off + 80, ROOM.footprint);
	const up = ROOM.floorAt(x - 80, y) + SAT.seatHeight + 546.1;
	const shoulder = add([x, y, up], times(leftOf(forward), guess.toMidline));
	return { arm, posture: { shoulder, forward, side: 'left' } satisfies Posture };
}

/** Where a fingertip that slides along a wall from its start stops. */
function slid(more: number, wall: WallId, from: readonly [number, number], way: readonly [number, number]) {
	const { arm, posture } = really(more);
	const at = (t: number): readonly [number, number] => [from[0] + way[0] * t, from[1] + way[1] * t];
	let t = 0;
	while (slack(arm, posture, toPlan(wall, at(t + 1), 0, ROOM.footprint), 'fingertip') >= 0) t++;
	const [x, y] = at(t);
	return { wall, x, y, reach: 'just', hand: 'fingertip', how: 'measured' };
}

/** Points on the wall beside her, from 250 ahead of her shoulder and 250 below it. */
function pointsOf(more: number) {
	const { shoulder } = really(more).posture;
	const from = [shoulder[0] + 250, shoulder[2] - 250] as const;
	return {
		ahead: slid(more, 'back', from, [1, 0]),
		down: slid(more, 'back', from, [0, -1]),
		'ahead-low': slid(more, 'back', from, [0.8, -0.6]),
		'ahead-up': slid(more, 'back', from, [0.8, 0.6])
	};
}

const leftTest = (c: Case) => {
	const found = reachTestsOf(bodiesOf(c.people), ROOM)['client']?.left;
	if (!found) throw new Error('no test');
	return found;
};
const reachIn = (c: Case) => leftTest(c).moved[0];

describe('[reach R10] from walls to the arm', () => {
	test.each([-40, 0, 40])('an arm %s longer than estimated: it moves that way, and the plan takes it', (more) => {
		const c = caseWith(pointsOf(more));
		const found = reachIn(c);
		if (!found) throw new Error('nothing moved');
		expect(found.dimension).toBe('reach');
		const by = found.after.value - found.before.value;
		expect(Math.sign(Math.round(by))).toBeCloseTo(Math.sign(more));
		// One wall tells an arm from the place of its shoulder only as far as the estimate does.
		expect(Math.abs(by - more)).toBeLessThan(1.5 * found.after.sd);
		const { scene } = questionOf(c);
		const arm = scene.arms['client']?.left;
		expect(arm?.spans.grip.outer).toBeCloseTo(found.after.value, 2);
		expect(arm?.how).toBe('estimated');
		const body = scene.bodies['client'];
		if (!arm || !body) throw new Error('no arm');
		const [x, y] = toPlan(SAT.behind, [SAT.x, 0], SAT.off, ROOM.footprint);
		const backPlanePoint: Vec = [x, y, ROOM.floorAt(x, y) + SAT.seatHeight];
		const posture = seatedPosture({ body, side: 'left', backPlanePoint, facing: INTO[SAT.behind], sittingForward: 0 });
		for (const [id, point] of Object.entries(c.people['client']?.arms.left.points ?? {})) {
			const off = slack(
				arm,
				posture as Posture,
				toPlan(point.wall, [point.x, point.y], 0, ROOM.footprint),
				'fingertip'
			);
			expect(off, id).toBeCloseTo(leftTest(c).off[id] ?? NaN, 1);
			expect(Math.abs(off), id).toBeLessThan(15);
		}
	});

	test('the other hand, which has no points, stays as estimated', () => {
		const bodies = bodiesOf(caseWith(pointsOf(30)).people);
		expect(testedBodies(bodies, reachTestsOf(bodies, ROOM))['client']?.arms.right).toBe(bodies['client']?.arms.right);
	});

	test('what was measured stays as it is', () => {
		const c = caseWith(pointsOf(30));
		const test = leftTest(c);
		expect(test.moved.find(({ dimension }) => dimension === 'up')?.rests).toBe('measured');
		const { scene } = questionOf(c);
		expect(scene.bodies['client']?.arms.left.tested?.shoulder.up).toBe(546.1);
	});

	test('a case without points has the same bodies, and a plan without a word of it', () => {
		const bodies = bodiesOf(NOBODY.people);
		expect(testedBodies(bodies, reachTestsOf(bodies, ROOM))).toBe(bodies);
		expect(reachTestsIn(questionOf(NOBODY).scene)).toEqual({});
	});
});

describe('[reach R10] a hand and its mirror image', () => {
	test('have the same fit to the last bit', () => {
		const c = caseWith(pointsOf(25), {}, { weakerSide: { value: 'right', how: 'told' } });
		const mirrored = questionOf(mirroredCase(c)).scene;
		const { scene } = questionOf(c);
		expect(reachTestsIn(mirrored)['client']?.right).toEqual(reachTestsIn(scene)['client']?.left);
		expect(mirrored.bodies['client']?.arms.right).toEqual(scene.bodies['client']?.arms.left);
	});
});

describe('[reach R12] how sure it is', () => {
	test('never surer than 20, however many points', () => {
		const { shoulder } = really(0).posture;
		const from = [shoulder[0] + 250, shoulder[2] - 250] as const;
		const many = Object.fromEntries(
			Array.from({ length: 24 }, (_, i) => {
				const turn = -1.5 + i / 10;
				return [`p${String(i)}`, slid(0, 'back', from, [Math.cos(turn), Math.sin(turn)])];
			})
		);
		expect(reachIn(caseWith(many))?.after.sd).toBe(20);
	});

	test('fewer than three points are refused in a sentence, and the estimate stays', () => {
		const { ahead, down } = pointsOf(60);
		const c = caseWith({ ahead, down });
		expect(leftTest(c).refused).toBe('2 points are too few: tape at least 3. The estimate stays.');
		const bodies = bodiesOf(c.people);
		expect(testedBodies(bodies, reachTestsOf(bodies, ROOM))['client']?.arms.left).toBe(bodies['client']?.arms.left);
	});

	test('where nothing may be estimated it is said what to measure', () => {
		const c = caseWith(pointsOf(0), {}, { age: { value: 12, how: 'told' } });
		expect(leftTest(c).refused).toBe(
			'There is no estimate to start from: measure the arm from the shoulder to a rod held in the fist.'
		);
	});
});

describe('[reach R11] in words', () => {
	test('what moved, what still rests on the estimate, what was measured, what was left out', () => {
		const points = pointsOf(40);
		const odd = { ...points.down, y: points.down.y - 220 };
		const lines = handTestWords(leftTest(caseWith({ ...points, odd })));
		expect(lines[0]).toMatch(/^arm to grip \d+ mm -> \d+ mm, give or take \d+ mm -> 2\d mm/);
		expect(lines).toContainEqual(expect.stringMatching(/^unmoved, still on the estimate: .*reach without stretching$/));
		expect(lines).toContain('as measured: shoulder above the seat');
		expect(lines.at(-1)).toMatch(
			/^"odd" cannot belong and was left out: it lies \d+ mm farther than the other points tell$/
		);
	});
});
