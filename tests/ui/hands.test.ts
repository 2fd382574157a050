import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { judge } from '#core/rules/judge.ts';
import { mm } from '#core/units/length.ts';
import { Hands } from '#ui/state/hands.svelte.ts';
import { heldCase } from '#ui/state/held-case.ts';
import { judgedBeside } from '#ui/state/judged-beside.ts';
import { movedTo, nearest, stepped } from '#ui/state/move.ts';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import { standingWords } from '#ui/state/standing-words.ts';
import type { Listener } from '#ui/state/planner.ts';
import { answeredWith, openedCase, someMarks } from './a-plan.ts';

const asked = vi.hoisted(() => ({ planned: [] as unknown[], stood: [] as unknown[], ended: 0, dropped: 0 }));
const heard = vi.hoisted((): { listener: unknown } => ({ listener: undefined }));

vi.mock('#ui/state/planner.ts', () => ({
	planner: {
		plan: (c: unknown, listener: unknown) => {
			asked.planned.push(c);
			heard.listener = listener;
		},
		stands: (stands: unknown, listener: unknown) => {
			asked.stood.push(stands);
			heard.listener = listener;
		},
		enough: () => (asked.ended += 1),
		drop: () => (asked.dropped += 1)
	}
}));

const STEP = 6.35;

/** M.W. with everything placed, as after a search. */
function placed() {
	const opened = openedCase();
	const plan = new PlanState(() => opened.case);
	const hands = new Hands(opened, plan);
	const follow = (): void => {
		plan.follow(opened.case);
	};
	const answer = (): void => {
		(heard.listener as Listener).onplanned(answeredWith(someMarks(plan.question)));
	};
	follow();
	answer();
	const mark = (id: string) => {
		const found = plan.marks.find(({ accessory }) => accessory.id === id);
		if (!found) throw new RangeError(`no mark is called ${id}`);
		return found;
	};
	return { opened, plan, hands, follow, answer, mark };
}

beforeEach(() => {
	asked.planned = [];
	asked.stood = [];
	asked.ended = 0;
	asked.dropped = 0;
	vi.useFakeTimers();
});

describe('[ui R1] a move goes in whole marking steps and keeps the part on its wall', () => {
	test('one step each way, as seen on the wall', () => {
		const { plan, mark } = placed();
		const { scene } = plan.question;
		const control = mark('control');
		const from = control.place;
		expect(stepped(scene, control, 'right', 1).x - from.x).toBeCloseTo(STEP, 9);
		expect(stepped(scene, control, 'left', 5).x - from.x).toBeCloseTo(-5 * STEP, 9);
		expect(stepped(scene, control, 'higher', 5).y - from.y).toBeCloseTo(5 * STEP, 9);
		expect(stepped(scene, control, 'lower', 1).y - from.y).toBeCloseTo(-STEP, 9);
	});

	test('what stands between two steps comes to a step first', () => {
		const { plan, mark } = placed();
		const between = movedTo(mark('control'), { ...mark('control').place, y: mm(2) });
		expect(stepped(plan.question.scene, between, 'higher', 1).y).toBeCloseTo(STEP, 9);
		expect(stepped(plan.question.scene, between, 'lower', 1).y).toBeCloseTo(0, 9);
	});

	test.each([
		[-1e4, -1e4],
		[1e4, 1e4]
	])('pulled to %s, %s it stops where its outline ends inside the wall, on a step', (x, y) => {
		const { plan, mark } = placed();
		const { scene } = plan.question;
		const rest = mark('handset-rest');
		const spot = nearest(scene, rest, { x, y });
		const { outline } = rest.variant;
		const wall = scene.room.walls[rest.place.wall];
		expect(spot.x + outline.x0).toBeGreaterThanOrEqual(0);
		expect(spot.x + outline.x1).toBeLessThanOrEqual(wall.length);
		expect(spot.y + outline.y0).toBeGreaterThanOrEqual(wall.bottom);
		expect(spot.y + outline.y1).toBeLessThanOrEqual(wall.top);
		expect(spot.y / STEP).toBeCloseTo(Math.round(spot.y / STEP), 6);
	});
});

test('[ui R2] asking only rows about what moved says what judging everything says, in a quarter of a frame', () => {
	const { plan } = placed();
	const { scene, rows } = plan.question;
	const before = judge(scene, rows, plan.atRest);
	let changed = 0;
	for (const { accessory } of plan.atRest) {
		const ids = [accessory.id];
		for (const [dx, dy] of [
			[50, -30],
			[-120, 200],
			[STEP, 0]
		] as const) {
			const marks = plan.atRest.map((mark) =>
				mark.accessory.id === accessory.id
					? movedTo(mark, { x: mm(mark.place.x + dx), y: mm(mark.place.y + dy) })
					: mark
			);
			const beside = judgedBeside(plan.question, before, { marks, ids });
			expect(beside).toEqual(judge(scene, rows, marks));
			changed += beside.filter((finding, i) => finding.answer !== before[i]?.answer).length;
		}
	}
	expect(changed).toBeGreaterThan(0);
	const times = Array.from({ length: 60 }, () => {
		const start = performance.now();
		judgedBeside(plan.question, before, { marks: plan.atRest, ids: ['control'] });
		return performance.now() - start;
	}).sort((a, b) => a - b);
	expect(times[30]).toBeLessThan(1000 / 60 / 4);
});

describe('[ui R3] a move is one step of the history', () => {
	test('steps taken close together are kept as one after a rest, and undone as one', () => {
		const { opened, hands, plan, follow, mark } = placed();
		const { x, y } = mark('control').place;
		hands.step('control', 'higher', 1);
		hands.step('control', 'higher', 5);
		hands.step('control', 'right', 1);
		expect(opened.case.places).toEqual({});
		expect(mark('control').place.y - y).toBeCloseTo(6 * STEP, 9);
		vi.advanceTimersByTime(1000);
		follow();
		expect(opened.case.places['control']).toMatchObject({ stage: 'pinned', x: mm(x + STEP), y: mm(y + 6 * STEP) });
		expect(plan.underHand).toBeUndefined();
		opened.undo();
		follow();
		expect(opened.case.places).toEqual({});
		expect(mark('control').place).toMatchObject({ x, y });
		expect(mark('control').stage).toBe('proposed');
	});

	test('Escape takes back what is in hand, and then the last move, as long as nothing was done since', () => {
		const { opened, hands, follow, mark } = placed();
		const { y } = mark('control').place;
		hands.step('control', 'lower', 1);
		hands.back();
		expect(mark('control').place.y).toBe(y);
		expect(opened.canUndo).toBe(false);

		hands.step('control', 'lower', 1);
		hands.keep();
		follow();
		hands.back();
		follow();
		expect(opened.case.places).toEqual({});

		hands.step('control', 'lower', 1);
		hands.keep();
		follow();
		hands.hold(['seat']);
		follow();
		hands.back();
		expect(Object.keys(opened.case.places).sort()).toEqual(['control', 'seat']);
	});

	test('a move to where it stood leaves no entry', () => {
		const { opened, hands } = placed();
		hands.step('control', 'lower', 1);
		hands.step('control', 'higher', 1);
		hands.keep();
		expect(opened.canUndo).toBe(false);
	});

	test('bars on one line go up and down together; along the wall each goes alone', () => {
		const { opened, hands, follow, mark } = placed();
		const [own, other] = [mark('bar-control'), mark('bar-back')];
		expect(own.accessory.line).toBe(other.accessory.line);
		hands.step('bar-control', 'higher', 1);
		hands.step('bar-control', 'right', 1);
		expect(mark('bar-back').place).toMatchObject({ x: other.place.x, y: mm(other.place.y + STEP) });
		hands.keep();
		follow();
		// Only what was moved is held; the other follows its line.
		expect(Object.keys(opened.case.places)).toEqual(['bar-control']);
		expect(mark('bar-back').place).toMatchObject({ x: other.place.x, y: mm(other.place.y + STEP) });
	});

	test('what is built is not moved, and says so', () => {
		const { opened, hands, follow, mark } = placed();
		const { place } = mark('seat');
		opened.act([{ path: ['places', 'seat'], to: { ...place, stage: 'built' } }]);
		follow();
		hands.step('seat', 'higher', 1);
		expect(mark('seat').place.y).toBe(place.y);
		expect(hands.says).toContain('built');
	});

	test('a change that comes from elsewhere while a mark is in hand is not undone by it', () => {
		const { opened, hands, follow } = placed();
		hands.step('control', 'lower', 1);
		opened.act([{ path: ['people', 'client', 'initials'], to: 'X.Y.' }]);
		follow();
		vi.advanceTimersByTime(2000);
		expect(opened.case.places).toEqual({});
	});
});

describe('[ui R4] nothing else moves by itself', () => {
	test('a move, holding and freeing ask for no search; placing the rest does', () => {
		const { opened, plan, hands, follow, mark } = placed();
		const rest = mark('handset-rest').place;
		asked.planned = [];
		hands.step('control', 'lower', 5);
		hands.keep();
		follow();
		hands.hold(['seat']);
		follow();
		hands.free(['seat']);
		follow();
		expect(asked.planned).toEqual([]);
		expect(mark('handset-rest').place).toEqual(rest);
		expect(standingWords(plan).says).toBe('Judged as it stands');
		plan.search(opened.case);
		expect(asked.planned).toEqual([opened.case]);
	});

	test('a number of the person asks for a search; undo brings back what was found, without one', () => {
		const { opened, plan, follow, answer, mark } = placed();
		const before = mark('control').place;
		asked.planned = [];
		opened.act([{ path: ['people', 'client', 'arms', 'left', 'toGrip'], to: { value: 500, how: 'measured' } }]);
		follow();
		expect(asked.planned).toHaveLength(1);
		answer();
		asked.planned = [];
		opened.undo();
		follow();
		expect(asked.planned).toEqual([]);
		expect(plan.fresh).toBe(true);
		expect(mark('control').place).toEqual(before);
	});

	test('undo of a move after the rest was placed brings back what stood there', () => {
		const { opened, plan, hands, follow, mark } = placed();
		const [before, rest] = [mark('control').place, mark('handset-rest').place];
		hands.step('control', 'lower', 5);
		hands.keep();
		follow();
		plan.search(opened.case);
		const shifted = plan.marks.map((one) =>
			one.accessory.id === 'handset-rest' ? movedTo(one, { ...one.place, y: mm(one.place.y + 50) }) : one
		);
		(heard.listener as Listener).onplanned(answeredWith(shifted));
		opened.undo();
		follow();
		expect(mark('control').place).toEqual(before);
		expect(mark('handset-rest').place).toEqual(rest);
	});

	test('a move while a search runs starts it again with what is held', () => {
		const { opened, plan, hands, follow } = placed();
		plan.search(opened.case);
		asked.planned = [];
		hands.step('control', 'lower', 1);
		hands.keep();
		follow();
		expect((asked.planned[0] as Case).places['control']).toBeDefined();
	});
});

test('[ui R6] after a move a better place is asked for, with all else held but the bar on the same line', () => {
	const { opened, plan, hands, follow } = placed();
	hands.step('bar-control', 'lower', 5);
	hands.keep();
	follow();
	expect(asked.stood.at(-1)).toMatchObject({ moved: 'bar-control', c: opened.case });
	const held = heldCase(opened.case, plan.atRest, 'bar-control');
	const free = plan.question.wanted.map(({ id }) => id).filter((id) => !held.places[id]);
	expect(free).toEqual(['bar-back']);
});

test('[ui R7] a search that is ended keeps the best plan, does not claim the proof, and can look on', () => {
	const { opened, plan } = placed();
	plan.search(opened.case);
	const listener = heard.listener as Listener;
	listener.onprogress({
		evaluations: 1234567,
		bound: [0, 4, 0, 10, 0],
		found: { marks: plan.atRest, cost: [0, 9, 0, 0, 0] }
	});
	expect(standingWords(plan)).toEqual({
		says: 'Places found, looking for better ones',
		basis: 'One nearer to the wishes may exist. 1,234,567 rows asked.'
	});
	plan.enough();
	expect(asked.ended).toBe(1);
	const { placed: proved, ...rest } = answeredWith(plan.atRest);
	listener.onplanned({
		...rest,
		placed: { ...proved, status: 'bounded', cost: [0, 0, 0, 30, 0], bound: [0, 0, 0, 10, 0] }
	});
	expect(standingWords(plan).says).toBe('Good places, the search was stopped before the proof');
	expect(standingWords(plan).basis).toContain('by 20 mm at most');
	expect(plan.byHand).toBe(true);
});
