import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { z } from 'zod';
import { person } from '#core/case/person.ts';
import type { Person as PersonRecord } from '#core/case/record.ts';
import { ESTIMATES } from '#ui/fields/estimate-cells.ts';
import { firstCells, MINDED, moreCells } from '#ui/fields/person-cells.ts';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import type { Listener } from '#ui/state/planner.ts';
import Person from '#ui/views/person.svelte';
import { answeredWith, openedCase, someMarks, nothingLaidOut } from './a-plan.ts';

const heard = vi.hoisted((): { listener: unknown } => ({ listener: undefined }));

vi.mock('#ui/state/planner.ts', () => ({
	planner: {
		plan: (_: unknown, listener: unknown) => {
			heard.listener = listener;
		},
		stands: () => undefined,
		drop: () => undefined
	}
}));

beforeEach(() => {
	nothingLaidOut();
});

/** M.W. with everything placed, on her Person screen. */
function shown() {
	const opened = openedCase();
	const plan = new PlanState(() => opened.case);
	plan.follow(opened.case);
	(heard.listener as Listener).onplanned(answeredWith(someMarks(plan.question)));
	render(Person, { opened, plan });
	return { opened, plan, user: userEvent.setup() };
}

/** Paths of a schema down to what is one fact or one plain value. */
function leaves(schema: z.ZodType, path: readonly string[] = []): readonly string[] {
	const { def } = schema as unknown as {
		def: { type: string; innerType?: z.ZodType; shape?: Record<string, z.ZodType> };
	};
	if (def.innerType) return leaves(def.innerType, path);
	if (def.type !== 'object' || !def.shape || 'how' in def.shape) return [path.join('.')];
	return Object.entries(def.shape).flatMap(([key, inner]) => leaves(inner, [...path, key]));
}

describe('[ui R32] every need of a person has its place on the screen', () => {
	test('every fact of the record of a person has a cell or a line of words', () => {
		const elsewhere = /^(role|initials|goals|later|reachTest)(\.|$)|\.points$/;
		const anybody = { weakerHolds: {}, chair: { seatHeight: {} } } as unknown as PersonRecord;
		const cells = [...firstCells(anybody), ...moreCells(anybody), ...MINDED, ...ESTIMATES];
		const entered = new Set(cells.flatMap(({ fields }) => fields.map(({ path }) => path.join('.'))));
		const asked = leaves(person).filter((path) => !elsewhere.test(path));
		expect(asked.length).toBeGreaterThan(60);
		expect(asked.filter((path) => !entered.has(path))).toEqual([]);
	});

	test('what somebody is to be asked names whom and what waits; an answer ends it, and can be taken back', async () => {
		const { opened, user } = shown();
		await user.click(screen.getByRole('button', { name: 'What to mind' }));
		await user.click(screen.getByRole('button', { name: /^Skin at risk/ }));
		await user.click(screen.getByRole('radio', { name: 'yes' }));
		const list = screen.getByRole('region', { name: 'Whom to ask' });
		const item = within(list)
			.getAllByRole('listitem')
			.find((one) => one.textContent.includes('Who looks after the skin'));
		if (!item) throw new RangeError('nobody is asked');
		expect(item.textContent).toContain('waits: seat');
		await user.type(within(item).getByRole('textbox'), 'A soft pad.');
		expect(opened.case.departures['NEED-SKIN/seat']).toEqual({ reason: 'A soft pad.', by: 'who looks after the skin' });
		expect(item.textContent).toContain('answered');
		await user.click(within(item).getByRole('button', { name: 'Ask again' }));
		expect(opened.case.departures['NEED-SKIN/seat']).toBeUndefined();
		expect(item.textContent).toContain('waits: seat');
	});

	test('the language of her own sheets is chosen there, stays out of the facts of a person, and can be taken back', async () => {
		const { opened, user } = shown();
		await user.click(screen.getByRole('button', { name: 'What to mind' }));
		await user.click(screen.getByRole('button', { name: /^Her sheets in/ }));
		const languages = screen.getAllByRole('radio').map((radio) => radio.parentElement?.textContent.trim());
		expect(languages).toEqual(['English', 'Spanish', 'French']);
		await user.click(screen.getByRole('radio', { name: 'Spanish' }));
		expect(opened.case.language).toBe('es');
		expect(screen.getByRole('button', { name: /^Her sheets in/ }).textContent).toContain('Spanish');
		opened.undo();
		expect(opened.case.language).toBeUndefined();
	});

	test('who helps and who else showers here are added, recorded each by themselves, and taken away', async () => {
		const { opened, user } = shown();
		await user.click(screen.getByRole('button', { name: 'Who else' }));
		const before = Object.keys(opened.case.people).length;
		await user.click(screen.getByRole('button', { name: 'Somebody else showers here' }));
		await user.click(screen.getByRole('button', { name: 'Somebody else showers here' }));
		expect(Object.keys(opened.case.people)).toHaveLength(before + 2);
		const second = screen.getByRole('region', { name: 'Who else showers here 2' });
		await user.click(within(second).getByRole('button', { name: /^Who else: mass/ }));
		await user.type(within(second).getByRole('textbox'), '120');
		expect(opened.case.people['household-2']?.mass?.value).toBeCloseTo(120, 0);
		expect(opened.case.people['household']?.mass).toBeUndefined();
		await user.click(within(second).getByRole('button', { name: 'Take away' }));
		expect(opened.case.people['household-2']).toBeUndefined();
		opened.undo();
		expect(opened.case.people['household-2']?.mass?.value).toBeCloseTo(120, 0);
	});

	test('her goals are kept in her own words', async () => {
		const { opened, user } = shown();
		await user.click(screen.getByRole('button', { name: 'What to mind' }));
		const goals = screen.getByRole('textbox', { name: 'What she wants from it, in her own words' });
		await user.clear(goals);
		await user.type(goals, 'To wash my hair.');
		expect(opened.client.person.goals).toBe('To wash my hair.');
	});
});
