import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import CellFields from '#ui/fields/cell-fields.svelte';
import { roomCells } from '#ui/fields/enclosure-cells.ts';
import type { Cell } from '#ui/fields/spec.ts';
import { aCase } from './a-case.ts';

/** A cell of the room or of a wall, open for typing. */
function open(id: string, unit: 'mm' | 'in' = 'mm', cells: (c: Case) => readonly Cell[] = roomCells) {
	const { opened, kept } = aCase(unit);
	const cell = cells(opened.case).find((one) => one.id === id);
	if (!cell) throw new RangeError(`no cell is called ${id}`);
	const { rerender } = render(CellFields, { opened, cell, clearWords: 'Not known' });
	const user = userEvent.setup();
	const type = async (label: string, text: string): Promise<void> => {
		const input = screen.getByRole('textbox', { name: label });
		await user.clear(input);
		await user.type(input, text);
	};
	const again = (): Promise<void> => {
		const next = cells(opened.case).find((one) => one.id === id);
		return rerender({ opened, cell: next ?? cell, clearWords: 'Not known' });
	};
	return { opened, kept, user, type, again };
}

const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
const alerts = (): string =>
	screen
		.getAllByRole('alert')
		.map(({ textContent }) => textContent.trim())
		.join('');
const DRAIN = ['enclosure', 'drain'];

async function typeDrain(type: (label: string, text: string) => Promise<void>, x = '457'): Promise<void> {
	await type('Middle from the left', x);
	await type('Middle out from the back', '400');
	await type('Width left to right', '100');
	await type('Depth back to front', '110');
}

describe('[ui R20] facts that are recorded all at once', () => {
	test('what is said so far stays on the screen, and is recorded with the last of it, as one step', async () => {
		const { opened, user, type } = open('drain');
		await type('Middle from the left', '457');
		await type('Width left to right', '100');
		expect(opened.at(DRAIN)).toBeUndefined();
		expect(field('Middle from the left').value).toBe('457');
		expect(screen.getByRole('status').textContent).toContain('middle out from the back, depth back to front');
		await typeDrain(type);
		expect(opened.at(DRAIN)).toEqual({ x: 457, y: 400, wide: 100, deep: 110, how: 'measured' });
		expect(screen.getByRole('status').textContent.trim()).toBe('');
		await user.tab();
		opened.undo();
		expect(opened.at(DRAIN)).toBeUndefined();
		opened.redo();
		expect(opened.at([...DRAIN, 'deep'])).toBe(110);
	});

	test('what is begun is there still on coming back, and is left with all that was typed', async () => {
		const { opened, user, type } = open('drain');
		await type('Middle from the left', '457');
		await type('Width left to right', 'broad');
		document.body.replaceChildren();
		const cell = roomCells(opened.case).find(({ id }) => id === 'drain');
		if (!cell) throw new RangeError('a drain is asked');
		render(CellFields, { opened, cell, clearWords: 'Not known' });
		expect([field('Middle from the left').value, field('Width left to right').value]).toEqual(['457 mm', 'broad']);
		await user.click(screen.getByRole('button', { name: 'Leave it' }));
		expect([field('Middle from the left').value, field('Width left to right').value]).toEqual(['', '']);
	});

	test('a number beyond its limit is refused at once, beside itself, and the others stay', async () => {
		const { opened, type } = open('drain');
		await type('Width left to right', '5');
		expect(alerts()).toBe('Less than can be here: at least 30 mm.');
		await typeDrain(type);
		expect(alerts()).toBe('');
		expect(opened.at([...DRAIN, 'wide'])).toBe(100);
		await type('Width left to right', '9000');
		expect(alerts()).toBe('More than can be here: at most 3000 mm.');
		expect(opened.at([...DRAIN, 'wide'])).toBe(900);
	});

	test('what cannot be all at once says what was seen, what was expected and what to do; mending any of it is enough', async () => {
		const { opened, type } = open('drain');
		await typeDrain(type, '1500');
		expect(opened.at(DRAIN)).toBeUndefined();
		expect(alerts()).toBe(
			'Expected its middle on the floor, 914.4 mm by 914.4 mm - saw 1500 mm, 400 mm. Measure again from the back left corner.'
		);
		await type('Middle from the left', '450');
		expect(alerts()).toBe('');
		expect(opened.at(DRAIN)).toMatchObject({ x: 450, deep: 110 });
	});

	test('it says how it is known, and goes whole', async () => {
		const { opened, user, type } = open('drain');
		await typeDrain(type);
		await user.selectOptions(screen.getByRole('combobox', { name: 'Drain, middle of it, how it is known' }), 'told');
		expect(opened.at([...DRAIN, 'how'])).toBe('told');
		await user.click(screen.getByRole('button', { name: 'Take it away' }));
		expect(opened.at(DRAIN)).toBeUndefined();
		expect(field('Depth back to front').value).toBe('');
	});

	test('both diagonals or none, each with how it is known, told on the tape of the house where they cannot close', async () => {
		const { opened, type } = open('diagonals', 'in');
		const path = ['enclosure', 'diagonals'];
		await type('From the back left', '51');
		expect(opened.at(path)).toBeUndefined();
		await type('From the back right', '60');
		expect(alerts()).toMatch(/^Expected diagonals about 50 7\/8 in, .* saw 51 in and 60 in\. Measure corner to corner/);
		await type('From the back right', '50 3/4');
		expect(opened.at(path)).toMatchObject({
			fromLeft: { value: 1295.4, how: 'measured', typed: '51' },
			fromRight: { value: 1289.05, how: 'measured', typed: '50 3/4' }
		});
	});

	test('what closes the entry is one choice; a hinge is asked of a door that has one, and goes with it', async () => {
		const { opened, user, again } = open('closing');
		expect(screen.queryByRole('group', { name: 'Hinge, looking in' })).toBeNull();
		await user.click(screen.getByRole('radio', { name: 'door that opens inward' }));
		expect(opened.at(['enclosure', 'closing'])).toEqual({ kind: 'door-in', how: 'observed' });
		await again();
		await user.click(screen.getByRole('radio', { name: 'at the left' }));
		await user.click(screen.getByRole('radio', { name: 'curtain' }));
		expect(opened.at(['enclosure', 'closing'])).toEqual({ kind: 'curtain', how: 'observed' });
		opened.undo();
		expect(opened.at(['enclosure', 'closing', 'hinge'])).toBe('left');
	});

	test('who signs for a great force is asked only when it is to be signed, or is recorded', () => {
		const { opened } = aCase();
		const asked = (): boolean => roomCells(opened.case).some(({ id }) => id === 'loadStatement');
		expect(asked()).toBe(false);
		opened.act([{ path: ['people', 'client', 'mass'], to: { value: 170, how: 'told' } }]);
		expect(asked()).toBe(true);
		opened.act([
			{ path: ['people', 'client', 'mass'] },
			{ path: ['enclosure', 'loadStatement'], to: { document: 'a letter', by: 'an engineer', load: 1800 } }
		]);
		expect(asked()).toBe(true);
	});
});

test('[ui R20] who signed, what and for how much are recorded together', async () => {
	const signed = (c: Case): readonly Cell[] =>
		roomCells({ ...c, people: { client: { role: 'client', mass: { value: 170, how: 'told' } } } } as unknown as Case);
	const { opened, type } = open('loadStatement', 'mm', signed);
	await type('Signed by', 'an engineer');
	await type('Force that is signed for', '1800');
	expect(opened.at(['enclosure', 'loadStatement'])).toBeUndefined();
	await type('Name or number of the paper', 'L 12');
	expect(opened.at(['enclosure', 'loadStatement'])).toEqual({ by: 'an engineer', load: 1800, document: 'L 12' });
});

test('[screen R3] a width near the floor that no wall of this room can have is refused with what to do', async () => {
	const { opened, type } = open('widths');
	await type('Wide, near the floor', '700');
	expect(alerts()).toMatch(/^Expected it within 100 mm at every height .* Measure again at this height\.$/);
	expect(opened.at(['enclosure', 'widthLow'])).toBeUndefined();
	await type('Wide, near the floor', '905');
	expect(opened.at(['enclosure', 'widthLow'])).toMatchObject({ value: 905, how: 'measured' });
});
