import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { questionOf } from '#core/plan.ts';
import Expected from '#ui/panels/expected.svelte';
import Findings from '#ui/panels/findings.svelte';
import { keyOf } from '#ui/panels/finding-words.ts';
import { judge } from '#core/rules/judge.ts';
import { openedCase, someMarks } from './a-plan.ts';

const LATER = ['people', 'client', 'later'];
const told = (value: string) => ({ value, how: 'told' });

test('[ui R12] the first thing expected brings the section, the last one takes it away, each as one step', () => {
	const opened = openedCase();
	expect(opened.act([{ path: [...LATER, 'washes'], to: told('in-chair') }])).toBeNull();
	expect(opened.act([{ path: [...LATER, 'rises'], to: told('cannot') }])).toBeNull();
	expect(opened.at(LATER)).toEqual({ washes: told('in-chair'), rises: told('cannot') });
	opened.setHow([...LATER, 'rises'], 'observed');
	expect(opened.at([...LATER, 'rises', 'how'])).toBe('observed');
	opened.act([{ path: [...LATER, 'washes'] }]);
	opened.act([{ path: [...LATER, 'rises'] }]);
	expect(opened.at(LATER)).toBeUndefined();
	opened.undo();
	expect(opened.at([...LATER, 'rises', 'value'])).toBe('cannot');
});

test('[ui R12] it starts closed, says what is expected, and shows what stays as now', async () => {
	const opened = openedCase();
	opened.act([{ path: [...LATER, 'washes'], to: told('in-chair') }]);
	const { container } = render(Expected, { opened, person: 'client', chosen: undefined, onchoose: () => undefined });
	const details = container.querySelector('details');
	expect(details?.open).toBe(false);
	await userEvent.setup().click(screen.getByText(/expected to be otherwise/));
	expect(details?.open).toBe(true);
	expect(screen.getByRole('button', { name: /^Washes/ }).textContent).toContain('in a shower chair');
	expect(screen.getByRole('button', { name: /^Rises/ }).textContent).toMatch(/with the arms\s*as now/);
});

test('[ui R12] a number expected is typed as one step of the history', () => {
	const opened = openedCase();
	for (const text of ['7', '70']) {
		opened.enter({
			path: [...LATER, 'mass'],
			text,
			reading: { kind: 'value', value: Number(text) },
			kept: (value) => ({ value, how: 'told' }),
			show: String,
			needed: false
		});
	}
	opened.seal();
	opened.undo();
	expect(opened.at(LATER)).toBeUndefined();
});

test('[ui R13] a row that speaks of now and of later is told apart, and told once where it says the same', () => {
	const opened = openedCase();
	opened.act([{ path: [...LATER, 'rises'], to: told('cannot') }]);
	const question = questionOf(opened.case);
	const findings = judge(question.scene, question.rows, someMarks(question));
	const later = findings.filter((one) => one.later);
	expect(later.length).toBeGreaterThan(0);
	expect(new Set(findings.map(keyOf)).size).toBe(findings.length);
	const now = findings.find(
		(one) => !one.later && later.some((then) => then.row === one.row && then.about.join() === one.about.join())
	);
	const same = later.find((one) => one.row === now?.row && one.about.join() === now.about.join());
	if (!now || !same) throw new RangeError('no row speaks of both');
	const shown = (answer: typeof now.answer): readonly string[] => {
		const { container, unmount } = render(Findings, {
			findings: [now, { ...same, answer }],
			about: '',
			lettered: [],
			tape: { unit: 'mm' }
		});
		const items = [...container.querySelectorAll('li')].map((item) => item.textContent);
		unmount();
		return items;
	};
	expect(shown(now.answer)).toHaveLength(1);
	const other = shown(now.answer === 'outside' ? 'unknown' : 'outside');
	expect(other.filter((says) => says.includes('Later: '))).toHaveLength(1);
	expect(other).toHaveLength(2);
});
