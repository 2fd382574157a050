import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import RecordText from '#ui/panels/record-text.svelte';

const TEXT = 'Shower plan\n- one line\n';
const area = (): HTMLTextAreaElement => screen.getByRole('textbox', { name: 'Text for your own record', hidden: true });

test('[ui R31] the text is read only, whole, and copied at one press, and that is said', async () => {
	const user = userEvent.setup();
	render(RecordText, { text: TEXT });
	await user.click(screen.getByText('Text for your own record'));
	expect([area().value, area().readOnly]).toEqual([TEXT, true]);
	await user.click(screen.getByRole('button', { name: 'Copy the text' }));
	expect(await navigator.clipboard.readText()).toBe(TEXT);
	expect(screen.getByRole('status').textContent).toBe('Copied.');
});

test('[ui R31] where the browser does not copy, all of it is selected, and that is said', async () => {
	const user = userEvent.setup();
	vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new Error('not allowed'));
	render(RecordText, { text: TEXT });
	await user.click(screen.getByText('Text for your own record'));
	await user.click(screen.getByRole('button', { name: 'Copy the text' }));
	await vi.waitFor(() => {
		expect(screen.getByRole('status').textContent).toMatch(/selected/);
	});
	expect([area().selectionStart, area().selectionEnd]).toEqual([0, TEXT.length]);
});

test('[ui R31] without places it says when there will be a text', () => {
	render(RecordText, { text: undefined });
	expect(screen.queryByRole('button', { hidden: true })).toBeNull();
	expect(screen.getByText(/when the places are found/)).toBeTruthy();
});
