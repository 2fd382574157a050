import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { readCase } from '#core/case/read.ts';
import { REFERENCES } from '#core/case/references.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import CellFields from '#ui/fields/cell-fields.svelte';
import { roomCells } from '#ui/fields/enclosure-cells.ts';
import { faceOf } from '#ui/fields/face.ts';
import type { Cell } from '#ui/fields/spec.ts';
import type { CaseState } from '#ui/state/case-state.svelte.ts';
import { aCase } from './a-case.ts';

const cellsOf = (opened: CaseState): readonly Cell[] => roomCells(opened.case);
const ids = (opened: CaseState): readonly string[] => cellsOf(opened).map(({ id }) => id);

function cellOf(opened: CaseState, id: string): Cell {
	const cell = cellsOf(opened).find((one) => one.id === id);
	if (!cell) throw new RangeError(`no cell is called ${id}`);
	return cell;
}

/** What a cell says on its face. */
const faces = (opened: CaseState, id: string): readonly string[] =>
	cellOf(opened, id).fields.map(
		(field) => faceOf(field, opened.at(field.path), { tape: { unit: 'mm' }, asTyped: false }).text
	);

/** Opens a cell, does something there, and closes it. */
async function inCell(
	opened: CaseState,
	id: string,
	doing: (user: ReturnType<typeof userEvent.setup>) => Promise<void>
) {
	const { unmount } = render(CellFields, { opened, cell: cellOf(opened, id), clearWords: 'Not known' });
	await doing(userEvent.setup());
	unmount();
}

const chooses = (opened: CaseState, id: string, word: string): Promise<void> =>
	inCell(opened, id, (user) => user.click(screen.getByRole('radio', { name: word })));

const chosen = (): readonly string[] =>
	screen
		.getAllByRole<HTMLInputElement>('radio')
		.filter(({ checked }) => checked)
		.map((input) => input.closest('label')?.textContent.trim() ?? '');

const reads = (opened: CaseState): string => readCase(JSON.stringify(opened.case)).kind;

describe('[ui R9] the document a plan is held against is chosen', () => {
	test('every document by its name, and none', async () => {
		const { opened } = aCase();
		await inCell(opened, 'reference', () => {
			const words = screen.getAllByRole('radio').map((input) => input.closest('label')?.textContent.trim());
			expect(words).toEqual([...DOCUMENTS.map(({ name }) => name), 'none']);
			expect(chosen()).toEqual(['ADA Standards 2010']);
			return Promise.resolve();
		});
	});

	test('each is kept by its id and shown by a short name', async () => {
		const { opened } = aCase();
		for (const { id, name } of DOCUMENTS.toReversed()) {
			await chooses(opened, 'reference', name);
			expect(opened.case.reference).toBe(id);
			expect(faces(opened, 'reference')[0]).toMatch(/^.{3,21}$/);
			expect(reads(opened)).toBe('case');
		}
		expect(new Set(REFERENCES)).toEqual(new Set(DOCUMENTS.map(({ id }) => id)));
	});

	test('none is a choice like the others: it stands in the record as none, and is shown as chosen', async () => {
		const { opened } = aCase();
		await chooses(opened, 'reference', 'none');
		expect(opened.case.reference).toBeNull();
		expect(faces(opened, 'reference')).toEqual(['none']);
		expect(reads(opened)).toBe('case');
		await inCell(opened, 'reference', () => {
			expect(chosen()).toEqual(['none']);
			// What the record cannot be without is not emptied.
			expect(screen.queryByRole('button', { name: 'Not known' })).toBeNull();
			return Promise.resolve();
		});
		opened.undo();
		expect(opened.case.reference).toBe('ada-2010');
	});

	test('[ui R10] without a document none leads, and who leads is not asked until there is one', async () => {
		const { opened } = aCase();
		await chooses(opened, 'lead', 'the document');
		expect(opened.case.lead).toBe('reference-led');
		await chooses(opened, 'reference', 'none');
		expect([opened.case.reference, opened.case.lead]).toEqual([null, 'person-led']);
		expect(ids(opened)).not.toContain('lead');
		opened.undo();
		expect([opened.case.reference, opened.case.lead]).toEqual(['ada-2010', 'reference-led']);
		await chooses(opened, 'reference', 'Approved Document M Volume 2');
		expect(opened.case.lead).toBe('reference-led');
		expect(ids(opened)).toContain('lead');
	});

	test('[ui R9] a record led by no document shows that it is', () => {
		const { opened } = aCase();
		opened.act([{ path: ['lead'], to: 'reference-led' }]);
		opened.act([{ path: ['reference'], to: null }]);
		expect(ids(opened)).toContain('lead');
	});

	// Categories: Approved Document M Volume 1, M4(2), M4(3)(2)(a), M4(3)(2)(b).
	test('[ui R9] the category of a dwelling is asked where the document has categories, or one is recorded', async () => {
		const { opened } = aCase();
		expect(ids(opened)).not.toContain('category');
		await chooses(opened, 'reference', 'Approved Document M Volume 1');
		await chooses(opened, 'category', 'M4(3)(2)(b), wheelchair accessible');
		expect(opened.case.enclosure.category).toMatchObject({ value: 'm4-3-accessible', how: 'told' });
		expect(faces(opened, 'category')).toEqual(['M4(3)(2)(b)']);
		await chooses(opened, 'reference', 'ADA Standards 2010');
		expect(ids(opened)).toContain('category');
		opened.act([{ path: ['enclosure', 'category'] }]);
		expect(ids(opened)).not.toContain('category');
	});
});

describe('[ui R9] floor that is free is recorded', () => {
	test.each([
		['turning', 'Circle to turn in', 'turning'],
		['turning-over', 'Circle over the shower', 'turningOver'],
		['beside', 'Beside the seat, along it', 'besideLength'],
		['beside', 'Beside the seat, across', 'besideWidth'],
		['bathroom', 'Bathroom, along the seat wall', 'roomAlong'],
		['bathroom', 'Bathroom, the other way', 'roomAhead'],
		['clear', 'Clear space, along the entry', 'clearLength'],
		['clear', 'Clear space, away from it', 'clearWidth']
	] as const)('%s, %s', async (id, label, key) => {
		const { opened } = aCase();
		await inCell(opened, id, async (user) => {
			const input = screen.getByRole('textbox', { name: label });
			await user.clear(input);
			await user.type(input, '1305');
		});
		expect(opened.case.enclosure[key]).toMatchObject({ value: 1305, how: 'measured', typed: '1305' });
		expect(reads(opened)).toBe('case');
	});

	test('whether it is newly built is told, and may be left unknown again', async () => {
		const { opened } = aCase();
		await chooses(opened, 'newBuilt', 'yes');
		expect(opened.case.enclosure.newBuilt).toMatchObject({ value: true, how: 'told' });
		await inCell(opened, 'newBuilt', (user) => user.click(screen.getByRole('button', { name: 'Not known' })));
		expect(opened.case.enclosure.newBuilt).toBeUndefined();
	});

	test('over a bath nobody parks beside a seat or turns over the shower; what is recorded is shown', () => {
		const { opened } = aCase();
		opened.act([{ path: ['enclosure', 'type'], to: 'over-bath' }]);
		expect(ids(opened)).not.toContain('beside');
		expect(ids(opened)).not.toContain('turning-over');
		opened.act([
			{ path: ['enclosure', 'besideWidth'], to: { value: 800, how: 'measured' } },
			{ path: ['enclosure', 'turningOver'], to: { value: 100, how: 'measured' } }
		]);
		expect(ids(opened)).toContain('beside');
		expect(ids(opened)).toContain('turning-over');
	});
});
