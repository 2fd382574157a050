import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { questionOf } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import Comparison from '#ui/panels/comparison.svelte';
import type { CaseState } from '#ui/state/case-state.svelte.ts';
import { Compared } from '#ui/state/compared.ts';
import { letteredMarks } from '#ui/state/places-view.ts';
import { openedCase, someMarks } from './a-plan.ts';

/** M.W. with a mark for each thing wanted, judged as it stands. */
function planned(opened: CaseState) {
	const question = questionOf(opened.case);
	const marks = someMarks(question);
	return { question, marks, findings: judge(question.scene, question.rows, marks) };
}

function shown() {
	const opened = openedCase();
	const plan = planned(opened);
	const lettered = letteredMarks(plan.question, plan.marks, plan.findings);
	render(Comparison, { opened, plan, lettered });
	return { opened, plan };
}

describe('[ui R35] documents beside each other and the person', () => {
	test('at first only what is outside or in conflict, all at one press', async () => {
		shown();
		const count = () => screen.getAllByRole('table').length;
		const few = count();
		expect(few).toBeGreaterThan(0);
		await userEvent.click(screen.getByRole('button', { name: /^All \d+ quantities$/ }));
		expect(count()).toBeGreaterThan(few);
		expect(screen.getByRole('button', { name: 'Only what is outside or in conflict' })).toBeDefined();
	});

	test('a quantity is a table: each source by name, what it allows, the answer by word', () => {
		shown();
		const table = screen.getByRole('table', { name: 'A Seat: Top above the bathroom floor' });
		const names = within(table)
			.getAllByRole('rowheader')
			.map(({ textContent }) => textContent.trim());
		// Chapter 6, 610.3; 3.8.3.13.(2)(f); Diagrams 22 and 23.
		expect(names.some((name) => name.startsWith('ADA 2010'))).toBe(true);
		expect(names.some((name) => name.startsWith('Ontario'))).toBe(true);
		expect(names.some((name) => name.startsWith('The person'))).toBe(true);
		for (const row of within(table).getAllByRole('row').slice(1)) {
			expect(row.textContent).toMatch(/inside|outside|borderline|not known/);
		}
	});

	test('what is accepted with a typed reason is kept by row and accessory, and can be taken back', async () => {
		const { opened } = shown();
		const [fold] = screen.getAllByText('Outside: accept, because');
		if (!fold) throw new RangeError('nothing is outside');
		await userEvent.click(fold);
		const [field] = within(fold.closest('details') as HTMLElement).getAllByLabelText('Accept, because');
		if (!field) throw new RangeError('nothing to type into');
		await userEvent.type(field, 'tried with her');
		const [key, kept] =
			Object.entries(opened.case.departures).find(([, { reason }]) => reason === 'tried with her') ?? [];
		expect(key).toMatch(/^[A-Z0-9-]+\/seat$/i);
		expect(kept).toEqual({ reason: 'tried with her', by: 'therapist' });
	});

	test('a quantity that is accepted is told as outside, accepted', () => {
		const opened = openedCase();
		const before = planned(opened);
		const outside = before.findings.find(
			({ row, answer, about }) => row.origin === 'document' && answer === 'outside' && about.length === 1
		);
		if (!outside) throw new RangeError('nothing is outside');
		opened.act([
			{ path: ['departures', `${outside.row.id}/${outside.about[0] ?? ''}`], to: { reason: 'chosen', by: 'therapist' } }
		]);
		const plan = planned(opened);
		const lettered = letteredMarks(plan.question, plan.marks, plan.findings);
		render(Comparison, { opened, plan, lettered });
		expect(screen.getAllByText('Outside, accepted: chosen').length).toBeGreaterThan(0);
		expect(screen.getAllByRole('button', { name: 'Take back' }).length).toBeGreaterThan(0);
	});

	test('typing a reason compares nothing anew', () => {
		const opened = openedCase();
		const compared = new Compared();
		const first = compared.of(opened.case, planned(opened));
		opened.act([{ path: ['departures', 'ADA-ST-Z/seat'], to: { reason: 'chosen', by: 'therapist' } }]);
		expect(compared.of(opened.case, planned(opened))).toBe(first);
		opened.act([{ path: ['reference'], to: 'uk-adm-2' }]);
		expect(compared.of(opened.case, planned(opened))).not.toBe(first);
	});
});
