import type { Block } from './block.ts';
import type { Entity } from './entity.ts';

/** The place a page leaves for what flows through it. Units and frame: mm of the sheet, y down. */
export interface Column {
	readonly x: number;
	readonly y0: number;
	readonly y1: number;
}

/**
 * Blocks in order down one page after another; a block is never cut.
 * Shape: at least one page; a block higher than a page stands alone on one.
 */
export function flowed(blocks: readonly Block[], { x, y0, y1 }: Column): readonly (readonly Entity[])[] {
	const pages: Entity[][] = [[]];
	let y = y0;
	for (const block of blocks) {
		if (y > y0 && y + block.height > y1) {
			pages.push([]);
			y = y0;
		}
		pages.at(-1)?.push(...block.draw(x, y));
		y += block.height;
	}
	return pages;
}
