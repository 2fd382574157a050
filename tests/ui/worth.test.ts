import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { person } from '#core/case/person.ts';
import type { Case } from '#core/case/record.ts';
import { planFrom, questionOf } from '#core/plan.ts';
import { worthMeasuring, type Worth } from '#core/worth.ts';
import { entryOf } from '#ui/fields/estimate-cells.ts';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import type { Listener } from '#ui/state/planner.ts';
import Person from '#ui/views/person.svelte';
import { answeredWith, openedCase, someMarks, nothingLaidOut } from './a-plan.ts';

const heard = vi.hoisted((): { listener: unknown; stood: number } => ({ listener: undefined, stood: 0 }));

vi.mock('#ui/state/planner.ts', () => ({
	planner: {
		plan: (_: unknown, listener: unknown) => {
			heard.listener = listener;
		},
		stands: (_: unknown, listener: unknown) => {
			heard.stood += 1;
			heard.listener = listener;
		},
		drop: () => undefined
	}
}));

const listener = (): Listener => heard.listener as Listener;

beforeEach(() => {
	nothingLaidOut();
	heard.stood = 0;
});

/** M.W. with everything placed and weighed, as after a search. */
function weighed() {
	const opened = openedCase();
	const plan = new PlanState(() => opened.case);
	plan.follow(opened.case);
	const { placed } = answeredWith(someMarks(plan.question));
	listener().onplanned(answeredWith(placed.marks));
	const worth = worthMeasuring(planFrom(plan.question, placed));
	listener().onweighed(worth);
	return { opened, plan, worth };
}

describe('[ui R30] what is worth measuring', () => {
	test('is listed with its band and a sentence, and each opens the cell where it is entered', async () => {
		const { opened, plan, worth } = weighed();
		expect(worth.length).toBeGreaterThan(0);
		render(Person, { opened, plan });
		const list = screen.getByRole('region', { name: 'Worth measuring' });
		const items = [...list.querySelectorAll('li')].map((item) => item.textContent.replace(/\s+/g, ' '));
		expect(items).toHaveLength(worth.length);
		expect(items[0]).toMatch(/\d to [\d /]+ in/);
		expect(items[0]).toMatch(/\.\s*$/);
		const [first] = worth;
		const entry = first && entryOf(opened.case, first.person, first.path);
		if (!entry) throw new RangeError('what is named has a cell');
		await userEvent.setup().click(list.querySelectorAll('button')[0] ?? list);
		expect(screen.getByRole('region', { name: entry.cell.label }).querySelector('input')).not.toBeNull();
	});

	test('every length of the record that is estimated has a cell, of the client and of who helps', () => {
		const { opened } = weighed();
		opened.act([
			{ path: ['people', 'helper'], to: { role: 'helper', body: {}, arms: { left: {}, right: {} }, chair: {} } }
		]);
		const lengths = Object.keys(person.shape.body.def.innerType.shape).filter((name) => name !== 'elbowAboveSeat');
		const paths = [...lengths.map((name) => ['body', name]), ['arms', 'left', 'toGrip'], ['arms', 'right', 'toGrip']];
		expect(paths.length).toBeGreaterThan(14);
		for (const path of paths) {
			for (const id of ['client', 'helper'])
				expect(entryOf(opened.case, id, path)?.cell.label, path.join('.')).toBeTruthy();
		}
	});

	test('an answer about a case that is not there any more is not shown; undo asks again without a search', () => {
		const { opened, plan, worth } = weighed();
		expect(plan.worth).toEqual(worth);
		const stale = listener();
		opened.act([{ path: ['people', 'client', 'mass'], to: { value: 70, how: 'told' } }]);
		plan.follow(opened.case);
		expect(plan.worth).toBeUndefined();
		stale.onweighed(worth);
		expect(plan.worth).toBeUndefined();
		opened.undo();
		plan.follow(opened.case);
		expect(plan.worth).toEqual(worth);
		opened.redo();
		plan.follow(opened.case);
		listener().onplanned(answeredWith(someMarks(plan.question)));
		listener().onweighed([]);
		opened.undo();
		plan.follow(opened.case);
		expect([plan.searching, heard.stood, plan.worth]).toEqual([undefined, 1, undefined]);
	});

	test('a length of a helper that is worth it gets its cell among the helper’s', async () => {
		const { opened, plan, worth } = weighed();
		opened.act([
			{
				path: ['people', 'helper'],
				to: {
					role: 'helper',
					body: { shoulderStanding: { value: 1300, how: 'measured' } },
					arms: { left: {}, right: {} },
					chair: {}
				}
			}
		]);
		plan.follow(opened.case);
		listener().onplanned(answeredWith(someMarks(plan.question)));
		const [one] = worth;
		if (!one) throw new RangeError('something is worth measuring');
		const hers: Worth = { ...one, person: 'helper', path: ['body', 'handLength'] };
		listener().onweighed([hers]);
		render(Person, { opened, plan });
		await userEvent.setup().click(screen.getByRole('button', { name: 'Helper: hand' }));
		expect(screen.getByRole('region', { name: 'Helper: hand' })).toBeTruthy();
	});
});

test('what is asked of a case can be cloned on its way from the Worker', () => {
	const c: Case = openedCase().case;
	const question = questionOf(c);
	const { placed } = answeredWith(someMarks(question));
	const worth = worthMeasuring(planFrom(question, placed));
	expect(structuredClone(worth)).toEqual(worth);
});
