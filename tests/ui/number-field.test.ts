import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import NumberField from '#ui/fields/number-field.svelte';
import type { NumberField as Field } from '#ui/fields/spec.ts';
import { aCase } from './a-case.ts';

const PATH = ['people', 'client', 'arms', 'right', 'toGrip'];
const ARM: Field = { kind: 'number', label: 'Right arm to the grip', path: PATH, quantity: 'length' };

function field(unit: 'mm' | 'in' = 'mm') {
	const { opened, kept } = aCase(unit);
	render(NumberField, { opened, field: ARM, size: 'large', alone: true });
	const input = screen.getByLabelText<HTMLInputElement>('Right arm to the grip');
	return { opened, kept, input, user: userEvent.setup() };
}

test.each([
	['34 1/2 in', 'mm', 876.3],
	['86,5 cm', 'mm', 865],
	['590', 'mm', 590],
	['23 1/4', 'in', 590.55]
] as const)(
	'[screen R1] "%s" typed where the tape is %s is kept as %s mm, in the words it was typed',
	async (text, unit, value) => {
		const { opened, input, user } = field(unit);
		await user.type(input, text);
		expect(opened.at(PATH)).toMatchObject({ value, typed: text, how: 'measured' });
		expect(input.value).toBe(text);
	}
);

test('[screen R2] what cannot be read stays as typed, says why beside the field, and leaves the record alone', async () => {
	const { opened, input, user } = field();
	await user.type(input, '590o');
	expect(input.value).toBe('590o');
	expect(input).toHaveProperty('ariaInvalid', 'true');
	expect(screen.getByRole('alert').textContent).toContain('not a length');
	const described = input.getAttribute('aria-describedby')?.split(' ') ?? [];
	expect(described).toContain(screen.getByRole('alert').id);
	expect(opened.at([...PATH, 'value'])).toBe(590);
});

test('[screen R3] a number beyond what the record takes is refused with the limit, in the tape of the house', async () => {
	const { opened, input, user } = field();
	await user.type(input, '5900');
	expect(screen.getByRole('alert').textContent).toBe('More than can be here: at most 1000 mm.');
	expect(opened.at([...PATH, 'value'])).toBe(590);
	await user.type(input, '{Backspace}');
	expect(screen.getByRole('alert').textContent).toBe('');
});

test('[screen R4] the arrow keys step by the marking increment of the house', async () => {
	const { opened, input, user } = field();
	await user.type(input, '590{ArrowUp}');
	expect(opened.at([...PATH, 'value'])).toBe(595);
	await user.type(input, '{ArrowDown}{ArrowDown}');
	expect(opened.at([...PATH, 'value'])).toBe(585);
});

test('[screen R5] every input event is kept, leaving the field seals it, and undo takes it back as one step', async () => {
	const { opened, kept, input, user } = field();
	await user.type(input, '590');
	expect(kept.at(-1)?.open).toBeDefined();
	await user.tab();
	expect(kept.at(-1)?.open).toBeUndefined();
	opened.undo();
	expect(opened.at(PATH)).toBeUndefined();
	opened.redo();
	expect(opened.at([...PATH, 'value'])).toBe(590);
});

test('[screen R6] the keys on the screen type too', async () => {
	const { opened, user } = field('in');
	for (const key of ['2', '3', '1/4 in']) await user.click(screen.getByRole('button', { name: key }));
	expect(opened.at(PATH)).toMatchObject({ value: 590.55, typed: '23 1/4 in' });
	await user.click(screen.getByRole('button', { name: 'cm' }));
	expect(screen.getByRole('alert').textContent).toContain('inches only');
});
