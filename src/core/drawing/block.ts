import type { Entity } from './entity.ts';
import { PT, write, type Hand } from './type.ts';
import { wrapped } from './wrap.ts';

/** A piece of a column: how high it is, and how it is drawn with its upper left corner at a place. Units: mm. */
export interface Block {
	readonly height: number;
	readonly draw: (x: number, y: number) => readonly Entity[];
	/** The head that is said again where the piece begins a new column or page. */
	readonly again?: Block;
	/** The whole piece as it stands where it begins a new page, where that is more than its head and itself. */
	readonly anew?: Block;
}

/** How a paragraph is set: its width, and its leading as a multiple of the size. Units: mm. */
export interface Measure extends Hand {
	readonly width: number;
	readonly leading?: number;
}

/** Lines of text broken to a width. */
export function paragraph(id: string, text: string, how: Measure): Block {
	const lines = wrapped(text, how.width, how.size, how.weight);
	const step = how.size * PT * (how.leading ?? 1.28);
	return {
		height: lines.length * step,
		draw: (x, y) => lines.map((l, i) => write(`${id}/${String(i)}`, l, [x, y + step * (i + 0.78)], how))
	};
}

/** An empty piece. */
export const space = (height: number): Block => ({ height, draw: () => [] });

/** Blocks under each other as one. */
export const stacked = (...blocks: readonly Block[]): Block => ({
	height: blocks.reduce((sum, b) => sum + b.height, 0),
	draw: (x, y) => {
		let at = y;
		return blocks.flatMap((b) => {
			const drawn = b.draw(x, at);
			at += b.height;
			return drawn;
		});
	}
});

/** A block moved to the right. */
export const indented = (by: number, block: Block): Block => ({
	height: block.height,
	draw: (x, y) => block.draw(x + by, y)
});

/** Blocks in rows of two, the second this far to the right of the first. Units: mm. */
export const inPairs = (blocks: readonly Block[], across: number): readonly Block[] =>
	blocks.flatMap((left, i): Block[] => {
		if (i % 2 === 1) return [];
		const right = blocks[i + 1] ?? space(0);
		return [
			{
				height: Math.max(left.height, right.height),
				draw: (x, y) => [...left.draw(x, y), ...right.draw(x + across, y)]
			}
		];
	});
