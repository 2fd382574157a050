import type { Answer } from '#core/rules/row.ts';
import { indented, paragraph, space, stacked, type Block } from './block.ts';
import { glyph } from './glyph.ts';
import { PT, widthOf, write, type Hand } from './type.ts';
import { wrapped } from './wrap.ts';

/** One line of a list: the letters it speaks of, its sentence, and where it comes from. */
export interface Item {
	readonly letters: string;
	readonly says: string;
	readonly note?: string;
	readonly answer?: Answer;
}

/** A list of items under its head. */
export interface List {
	readonly id: string;
	readonly title: string;
	readonly items: readonly Item[];
}

const LETTERS = 10;
const GLYPH = 6;
/** From one row of letters to the next, where they do not stand in one. */
const ROW = 4.4;
const TEXT = 10;
const LOUD: Hand = { size: 12, weight: 'semibold', heading: 2 };
const QUIET: Hand = { size: 10.5, weight: 'semibold', tone: 'grey', heading: 2 };

/**
 * A list under its title; empty when there are no items.
 * Shape: the title stays with the first item, and is said again where the list goes on in another place.
 */
export function itemList({ id, title, items }: List, width: number): readonly Block[] {
	const blocks = listed({ id, title, items }, width, LOUD);
	return blocks.length > 0 ? [...blocks, space(4)] : [];
}

/** Lists with quiet heads under a common title; empty when none has an item. */
export function itemLists(id: string, title: string, lists: readonly List[], width: number): readonly Block[] {
	const [first, ...rest] = lists.flatMap((list) => {
		const blocks = listed(list, width, QUIET);
		return blocks.length > 0 ? [...blocks, space(2)] : [];
	});
	return first ? [stacked(headOf(id, title, LOUD, width), first), ...rest, space(2)] : [];
}

function listed({ id, title, items }: List, width: number, hand: Hand): readonly Block[] {
	const [first, ...rest] = items.map((item, i) => itemBlock(`${id}/${String(i)}`, item, width));
	if (!first) return [];
	const again = headOf(`${id}/again`, `${title}, continued`, QUIET, width);
	return [stacked(headOf(id, title, hand, width), first), ...rest.map((block) => ({ ...block, again }))];
}

/** The title over a list, on as many lines as it takes. */
function headOf(id: string, title: string, hand: Hand, width: number): Block {
	const lines = wrapped(title, width, hand.size, hand.weight);
	const em = hand.size * PT;
	return {
		height: (0.4 + 1.25 * lines.length) * em,
		draw: (x, y) =>
			lines.map((text, i) =>
				write(`${id}/title${i === 0 ? '' : `/${String(i)}`}`, text, [x, y + (1.04 + 1.25 * i) * em], hand)
			)
	};
}

function itemBlock(id: string, { letters, says, note, answer }: Item, width: number): Block {
	const left = LETTERS + (answer ? GLYPH : 0);
	const text = noted(id, { says, note: note ?? '' }, width - left);
	const rows = letters === '' ? [''] : wrapped(letters, LETTERS - 1, 10, 'semibold');
	return {
		height: Math.max(text.height, ROW * rows.length) + 1.4,
		draw: (x, y) => [
			...(answer ? glyph(`${id}/answer`, answer, [x + 2.2, y + 2.1]) : []),
			...rows.map((row, i) =>
				write(`${id}/letters${i === 0 ? '' : `/${String(i)}`}`, row, [x + (answer ? GLYPH : 0), y + 3.5 + ROW * i], {
					size: 10,
					weight: 'semibold'
				})
			),
			...indented(left, text).draw(x, y)
		]
	};
}

/** A sentence with its source at the right edge, on its last line where there is room, else under it. */
function noted(id: string, { says, note }: { says: string; note: string }, width: number): Block {
	const text = paragraph(`${id}/says`, says, { size: TEXT, width });
	const last = wrapped(says, width, TEXT).at(-1) ?? '';
	const source = paragraph(`${id}/note`, note, { size: 8.5, tone: 'grey', width, anchor: 'end' });
	const beside = widthOf(last, TEXT) + 4 + widthOf(note, 8.5) <= width;
	return {
		height: text.height + (beside ? 0 : source.height),
		draw: (x, y) => [
			...text.draw(x, y),
			...source.draw(x + width, y + text.height - (beside ? source.height + 0.15 : 0))
		]
	};
}
