import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import type { Json } from '#core/log/json.ts';
import { roomOf } from '#core/enclosure/room.ts';
import CellFields from '#ui/fields/cell-fields.svelte';
import { wallFacts } from '#ui/fields/wall-facts.ts';
import { WALL_TABLES } from '#ui/fields/wall-columns.ts';
import WallThings from '#ui/panels/wall-things.svelte';
import { aCase } from './a-case.ts';

const BACK = ['enclosure', 'walls', 'back'];

/** One table of the back wall, with what is on or behind it. */
function table(id: string, things: Readonly<Record<string, Json>> = {}) {
	const { opened } = aCase();
	const one = WALL_TABLES.find((known) => known.id === id);
	if (!one) throw new RangeError(`no table is called ${id}`);
	for (const [name, to] of Object.entries(things)) opened.act([{ path: [...BACK, one.group, name], to }]);
	const extent = roomOf(opened.case.enclosure).walls.back;
	render(WallThings, { opened, wall: 'back', extent, table: one });
	const all = (): readonly Json[] => Object.values(opened.at([...BACK, one.group]) as Record<string, Json>);
	return { opened, extent, all, user: userEvent.setup() };
}

const area = { x0: 100, x1: 700, y0: -50, y1: 50 };

/** Types into the fields of a new thing, by their labels. */
async function fill(user: ReturnType<typeof userEvent.setup>, typed: Readonly<Record<string, string>>): Promise<void> {
	for (const [label, text] of Object.entries(typed))
		await user.type(screen.getByRole('textbox', { name: label }), text);
}

describe('[ui R21] tables of a wall: numbers, words, choices, yes or no', () => {
	test('a bar on the wall is added with all that is asked of it, and each is changed in the table', async () => {
		const { all, user } = table('existing');
		await user.click(screen.getByRole('button', { name: 'Add existing thing' }));
		await fill(user, { from: '100', to: '700', low: '-50', high: '50' });
		await user.selectOptions(screen.getByRole('combobox', { name: 'what' }), 'towel rail');
		await user.click(screen.getByRole('checkbox', { name: 'will be grabbed' }));
		await user.click(screen.getByRole('button', { name: 'Add' }));
		const made = { what: 'towel-rail', ...area, fate: 'keep', grabbed: true, how: 'measured' };
		expect(all()).toEqual([made]);
		await user.selectOptions(
			screen.getByRole('combobox', { name: 'existing thing 1, what becomes of it' }),
			'taken away'
		);
		await user.click(screen.getByRole('checkbox', { name: 'existing thing 1, tested as a bar' }));
		await user.selectOptions(screen.getByRole('combobox', { name: 'existing thing 1, how known' }), 'told');
		expect(all()).toEqual([{ ...made, fate: 'remove', tested: true, how: 'told' }]);
	});

	test('what is not known is nothing in the record: the steel of a stud, the kind of masonry', async () => {
		const { opened, user } = table('studs', { a: { x: 300, width: 38, how: 'told' } });
		const steel = screen.getByRole<HTMLSelectElement>('combobox', { name: 'stud 1, of steel' });
		const chosen = (): string | undefined => steel.selectedOptions[0]?.text;
		expect(chosen()).toBe('no, of wood');
		await user.selectOptions(steel, 'yes, gauge not known');
		expect(opened.at([...BACK, 'studs', 'a', 'steel'])).toBe(true);
		await user.selectOptions(steel, '33 mil');
		expect(opened.at([...BACK, 'studs', 'a', 'steel'])).toBe(33);
		await user.selectOptions(steel, 'no, of wood');
		expect(opened.at([...BACK, 'studs', 'a'])).toEqual({ x: 300, width: 38, how: 'told' });
	});

	test('an electric point is one of what is not to be drilled', async () => {
		const { all, user } = table('keepOuts', { a: { kind: 'pipe', ...area, how: 'observed' } });
		await user.selectOptions(screen.getByRole('combobox', { name: 'keep-out 1, what' }), 'switch, socket, lamp or fan');
		expect(all()).toEqual([{ kind: 'electric-point', ...area, how: 'observed' }]);
	});

	test('how it is known stands though it is not among what can be chosen', () => {
		table('keepOuts', { a: { kind: 'pipe', ...area, how: 'declared' } });
		const how = screen.getByRole<HTMLSelectElement>('combobox', { name: 'keep-out 1, how known' });
		expect(how.selectedOptions[0]?.text).toBe('declared');
	});

	test.each(['wood', 'masonry', 'declared'])(
		'"Whole wall" fills where a new thing of "%s" goes with the wall itself',
		async (id) => {
			const { user, extent } = table(id);
			const one = WALL_TABLES.find((known) => known.id === id)?.one ?? '';
			await user.click(screen.getByRole('button', { name: `Add ${one}` }));
			await user.click(screen.getByRole('button', { name: 'Whole wall' }));
			const form = within(screen.getByRole('form', { name: `New ${one}` }));
			const shown = (label: string): number =>
				parseFloat(form.getByRole<HTMLInputElement>('textbox', { name: label }).value);
			expect(['from', 'to', 'low', 'high'].map(shown)).toEqual([
				extent.from,
				extent.to,
				extent.bottom,
				expect.closeTo(extent.top, 1)
			]);
			expect(extent.to).toBe(914.4);
			expect(extent.top).toBeGreaterThan(0);
		}
	);

	test('masonry of a whole wall is recorded with one press more', async () => {
		const { all, user } = table('masonry');
		await user.click(screen.getByRole('button', { name: 'Add masonry' }));
		await user.click(screen.getByRole('button', { name: 'Whole wall' }));
		await user.selectOptions(screen.getByRole('combobox', { name: 'of what' }), 'hollow brick or block');
		await user.click(screen.getByRole('button', { name: 'Add' }));
		expect(all()).toMatchObject([{ kind: 'masonry', unit: 'hollow', x0: 0, x1: 914.4 }]);
	});

	test('a new thing that cannot be keeps what was typed and names the part that is wrong', async () => {
		const { all, user } = table('wood');
		await user.click(screen.getByRole('button', { name: 'Add backing' }));
		await fill(user, { from: '100', to: '700', low: '0', high: '200', thick: '2' });
		await user.click(screen.getByRole('button', { name: 'Add' }));
		expect(screen.getByRole('alert').textContent).toContain('thick: Less than can be here: at least 6 mm.');
		expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'from' }).value).toBe('100');
		expect(all()).toEqual([]);
	});

	test('a new thing that is begun waits on its own wall while one looks at another', async () => {
		const { opened, extent, user } = table('wood');
		await user.click(screen.getByRole('button', { name: 'Add backing' }));
		await fill(user, { from: '100' });
		await user.selectOptions(screen.getByRole('combobox', { name: 'what' }), 'sheet');
		const wood = WALL_TABLES.find(({ id }) => id === 'wood');
		if (!wood) throw new RangeError('there is a table of wood');
		document.body.replaceChildren();
		const { rerender } = render(WallThings, { opened, wall: 'left', extent, table: wood });
		expect(screen.queryByRole('form')).toBeNull();
		await rerender({ opened, wall: 'back', extent, table: wood });
		expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'from' }).value).toBe('100');
		expect(screen.getByRole<HTMLSelectElement>('combobox', { name: 'what' }).selectedOptions[0]?.text).toBe('sheet');
	});

	test('what is taken away takes along what could not be taken from it', async () => {
		const { opened, user } = table('studs', { a: { x: 300, width: 38, how: 'told' } });
		await user.type(screen.getByRole('textbox', { name: 'stud 1, middle' }), 'x');
		expect(opened.draftAt([...BACK, 'studs', 'a', 'x'])).toBeDefined();
		await user.click(screen.getByRole('button', { name: 'Take stud 1 away' }));
		expect(opened.draftAt([...BACK, 'studs', 'a', 'x'])).toBeUndefined();
	});
});

describe('[ui R20] what is asked of a wall', () => {
	function fact(id: string) {
		const { opened } = aCase();
		const cell = () => {
			const one = wallFacts('back', opened.case.enclosure.walls.back).find((known) => known.id === id);
			if (!one) throw new RangeError(`no fact is called ${id}`);
			return one;
		};
		const facing = (to: Json): string | null => opened.act([{ path: [...BACK, 'facing'], to }]);
		const show = () => render(CellFields, { opened, cell: cell(), clearWords: 'Not known' });
		return { opened, facing, show, user: userEvent.setup() };
	}

	test('a facing is whole with its thickness; gap and light may follow or not', async () => {
		const { opened, show, user } = fact('facing');
		show();
		await user.click(screen.getByRole('radio', { name: 'tile' }));
		await fill(user, { 'Air gap behind it': '12' });
		expect(opened.at([...BACK, 'facing'])).toBeUndefined();
		await fill(user, { 'Thickness with its glue': '10' });
		expect(opened.at([...BACK, 'facing'])).toEqual({ kind: 'tile', gap: 12, thickness: 10 });
		await fill(user, { 'Light given back (0 to 100)': '850' });
		expect(screen.getByText('More than can be here: at most 100.')).toBeDefined();
		expect(opened.at([...BACK, 'facing', 'reflectance'])).toBe(85);
	});

	test('tiles are asked of tile alone, and go when it is another facing', async () => {
		const { opened, facing, show, user } = fact('tiles');
		expect(show).toThrow('no fact is called tiles');
		facing({ kind: 'tile', thickness: 10 });
		const { unmount } = show();
		await fill(user, { 'Width of one tile': '200', 'Height of one tile': '250', 'Width of a joint': '3' });
		await fill(user, { 'Crossing from the left end': '55', 'Crossing from the datum line': '-20' });
		const tiles = { across: 200, up: 250, joint: 3, x: 55, y: -20, how: 'measured' };
		expect(opened.at([...BACK, 'facing', 'tiles'])).toEqual(tiles);
		unmount();
		const cell = wallFacts('back', opened.case.enclosure.walls.back).find(({ id }) => id === 'facing');
		if (!cell) throw new RangeError('a facing is asked');
		render(CellFields, { opened, cell, clearWords: 'Not known' });
		await user.click(screen.getByRole('radio', { name: 'panel' }));
		expect(opened.at([...BACK, 'facing'])).toEqual({ kind: 'panel', thickness: 10 });
	});

	test('a wall that goes away at the top is out of plumb by less than nothing', async () => {
		const { opened, show, user } = fact('plumb');
		show();
		await fill(user, { 'Into the room at the top': '-8', 'Over a height of': '1200' });
		expect(opened.at([...BACK, 'plumb'])).toEqual({ out: -8, over: 1200, how: 'measured' });
	});

	test('studs counted on need one that is found, how often and how wide', async () => {
		const { opened, show, user } = fact('rhythm');
		show();
		await fill(user, { 'Middle to middle': '400', 'From the middle of': '38' });
		expect(opened.at([...BACK, 'rhythm'])).toBeUndefined();
		await fill(user, { 'Each wide': '38' });
		expect(opened.at([...BACK, 'rhythm'])).toEqual({ every: 400, from: 38, width: 38 });
	});
});
