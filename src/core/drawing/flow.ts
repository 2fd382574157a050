import { stacked, type Block } from './block.ts';
import type { Entity } from './entity.ts';

/** A place that is filled from above. Units and frame: mm of the sheet, y down. */
export interface Column {
	readonly x: number;
	readonly y0: number;
	readonly y1: number;
}

/** What was drawn into columns, the room that is left in each, and how many blocks found none. */
export interface Poured<Name extends string> {
	readonly entities: readonly Entity[];
	readonly columns: Readonly<Record<Name, Column>>;
	readonly left: number;
}

/** A block as it begins a page or column: under the head that is said again. */
export const headed = (block: Block): Block => block.anew ?? (block.again ? stacked(block.again, block) : block);

/**
 * Blocks in order down one page after another; a block is never cut, and empty space begins no page.
 * Shape: at least one page; a block higher than a page stands alone on one.
 */
export function flowed(blocks: readonly Block[], { x, y0, y1 }: Column): readonly (readonly Entity[])[] {
	const pages: Entity[][] = [[]];
	let y = y0;
	for (const block of blocks) {
		const full = y > y0 && y + block.height > y1;
		const piece = full ? headed(block) : block;
		const drawn = piece.draw(x, full ? y0 : y);
		if (full && drawn.length === 0) continue;
		if (full) pages.push([]);
		pages.at(-1)?.push(...drawn);
		y = (full ? y0 : y) + piece.height;
	}
	return pages;
}

/** Blocks in order down some columns, each from where it is free; never back to one that was left. */
export function poured<Name extends string>(
	blocks: readonly Block[],
	columns: Readonly<Record<Name, Column>>,
	order: readonly Name[]
): Poured<Name> {
	const free: Record<Name, Column> = { ...columns };
	const entities: Entity[] = [];
	let at = 0;
	for (const [i, block] of blocks.entries()) {
		let piece = block;
		let name = order[at];
		while (name !== undefined && free[name].y0 + piece.height > free[name].y1) {
			name = order[++at];
			piece = headed(block);
		}
		if (name === undefined) return { entities, columns: free, left: blocks.length - i };
		const { x, y0, y1 } = free[name];
		entities.push(...piece.draw(x, y0));
		free[name] = { x, y0: y0 + piece.height, y1 };
	}
	return { entities, columns: free, left: 0 };
}
