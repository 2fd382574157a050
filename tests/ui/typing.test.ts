import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, test, vi } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { questionOf } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import WordsField from '#ui/fields/words-field.svelte';
import { PlanState } from '#ui/state/plan-state.svelte.ts';
import type { Listener } from '#ui/state/planner.ts';
import { answeredWith, openedCase, someMarks } from './a-plan.ts';

const heard = vi.hoisted((): { listener: unknown; asked: string[] } => ({ listener: undefined, asked: [] }));
vi.mock('#ui/state/planner.ts', () => ({
	planner: {
		plan: (_: Case, listener: unknown) => {
			heard.asked.push('plan');
			heard.listener = listener;
		},
		stands: () => heard.asked.push('stands'),
		drop: () => heard.asked.push('drop')
	}
}));

const GOALS = ['people', 'client', 'goals'];
const PERSON = ['people', 'client'];

/** M.W. with a search under way; `type` is one letter at a time. */
function searching() {
	const opened = openedCase();
	const plan = new PlanState(() => opened.case);
	const follow = (): void => {
		plan.follow(opened.case);
	};
	follow();
	const type = (path: readonly string[], words: string): void => {
		for (let n = 1; n <= words.length; n += 1) {
			opened.enterWords(path, words.slice(0, n), { needed: false, whole: undefined });
			follow();
		}
	};
	const answer = (): void => {
		(heard.listener as Listener).onplanned(answeredWith(someMarks(plan.question)));
	};
	return { opened, plan, follow, type, answer };
}

beforeEach(() => {
	heard.asked = [];
});

test('[ui R33] words, typed letter by letter, ask nothing, and the plan stays and is whole', () => {
	const { opened, plan, follow, type, answer } = searching();
	answer();
	const { marks } = plan;
	type(GOALS, 'To stand under the water');
	type([...PERSON, 'initials'], 'M.W.X.');
	opened.act([{ path: [...PERSON, 'consents'], to: { value: true, how: 'told' } }]);
	follow();
	expect(heard.asked).toEqual(['plan']);
	expect([plan.fresh, plan.searching, plan.marks]).toEqual([true, undefined, marks]);
	expect(plan.plan?.scene.c.people['client']?.goals).toBe('To stand under the water');
	opened.undo();
	follow();
	expect([plan.fresh, heard.asked]).toEqual([true, ['plan']]);
});

test('[ui R33] a search under way goes on while words are typed, and its answer is taken', () => {
	const { plan, type, answer } = searching();
	type(GOALS, 'To sit');
	expect(heard.asked).toEqual(['plan']);
	answer();
	expect([plan.fresh, plan.searching]).toEqual([true, undefined]);
});

test('[ui R33] what places depend on is looked for again at once', () => {
	const { opened, plan, follow, answer } = searching();
	answer();
	opened.act([{ path: [...PERSON, 'body', 'popliteal'], to: { value: 433, how: 'measured' } }]);
	follow();
	expect([heard.asked, plan.fresh]).toEqual([['plan', 'plan'], false]);
});

test('[ui R33] an answer that is kept ends what waited for it at once, without a search', () => {
	const { opened, plan, follow, answer } = searching();
	answer();
	opened.act([{ path: [...PERSON, 'consents'], to: { value: false, how: 'told' } }]);
	follow();
	const asked = plan.findings.find(({ row }) => row.id === 'NEED-CONSENT-REFUSED');
	expect([asked?.strength, plan.basis]).toEqual(['must', 'provisional']);
	const others = plan.findings.filter(({ row }) => row.id !== 'NEED-CONSENT-REFUSED');
	opened.act([
		{ path: ['departures', 'NEED-CONSENT-REFUSED/case'], to: { reason: 'The court, in March.', by: 'the court' } }
	]);
	follow();
	expect(plan.findings.filter(({ row }) => row.id !== 'NEED-CONSENT-REFUSED')).toEqual(others);
	expect(heard.asked).toEqual(['plan']);
});

test('[ui R33] what the key of a plan leaves out changes no answer that counts and nothing that is wanted', () => {
	const { case: c } = openedCase();
	const { client } = c.people;
	if (!client) throw new RangeError('the example has no client');
	const seen = [true, false].map((value) => {
		const said = { ...client, goals: String(value), initials: 'X', consents: { value, how: 'told' as const } };
		const departures = { 'ADA-SLOPE/case': { reason: String(value), by: 'S.K.' } };
		const question = questionOf({ ...c, people: { ...c.people, client: said }, departures });
		const findings = judge(question.scene, question.rows, someMarks(question));
		const counts = findings
			.filter(({ answer }) => answer !== 'ask')
			.map(({ row, about, answer }) => [row.id, about, answer]);
		return [question.wanted, counts];
	});
	expect(seen[0]).toEqual(seen[1]);
});

test('[ui R34] sentences stand on as many lines as they take, and are one line of the record', async () => {
	const opened = openedCase();
	const user = userEvent.setup();
	render(WordsField, { opened, path: GOALS, label: 'Wishes', shown: true, optional: true, most: 400 });
	const field = screen.getByLabelText<HTMLTextAreaElement>('Wishes');
	expect(field.tagName).toBe('TEXTAREA');
	await user.clear(field);
	await user.click(field);
	await user.paste('To stand\nunder the water');
	expect(opened.at(GOALS)).toBe('To stand under the water');
});
