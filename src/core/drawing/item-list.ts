import type { Answer } from '#core/rules/row.ts';
import { indented, paragraph, space, stacked, type Block } from './block.ts';
import { glyph } from './glyph.ts';
import { write } from './type.ts';

/** One line of a list: the letters it speaks of, its sentence, and where it comes from. */
export interface Item {
	readonly letters: string;
	readonly says: string;
	readonly note?: string;
	readonly answer?: Answer;
}

const LETTERS = 10;
const GLYPH = 6;

/** A list under its title; empty when there are no items. Shape: the title stays with the first item. */
export function itemList(id: string, title: string, items: readonly Item[], width: number): readonly Block[] {
	const blocks = items.map((item, i) => itemBlock(`${id}/${String(i)}`, item, width));
	const [first, ...rest] = blocks;
	if (!first) return [];
	const head: Block = {
		height: 7,
		draw: (x, y) => [write(`${id}/title`, title, [x, y + 4.4], { size: 12, weight: 'semibold' })]
	};
	return [stacked(head, first), ...rest, space(4)];
}

function itemBlock(id: string, { letters, says, note, answer }: Item, width: number): Block {
	const left = LETTERS + (answer ? GLYPH : 0);
	const inner = width - left;
	const text = stacked(
		paragraph(`${id}/says`, says, { size: 10, width: inner }),
		...(note === undefined ? [] : [paragraph(`${id}/note`, note, { size: 8.5, tone: 'grey', width: inner })])
	);
	return {
		height: text.height + 1.4,
		draw: (x, y) => [
			...(answer ? glyph(`${id}/answer`, answer, [x + 2.2, y + 2.1]) : []),
			write(`${id}/letters`, letters, [x + (answer ? GLYPH : 0), y + 3.5], { size: 10, weight: 'semibold' }),
			...indented(left, text).draw(x, y)
		]
	};
}
