import { indented, paragraph, space, stacked, type Block } from './block.ts';
import { numberRing, type Note } from './labels.ts';
import { write } from './type.ts';

const INDENT = 6;

/** The words of the numbers on a wall, a block each, the first under its head. Units: mm. */
export function noteBlocks(notes: readonly Note[], width: number): readonly Block[] {
	const head = (id: string, title: string): Block => ({
		height: 7,
		draw: (x, y) => [write(id, title, [x, y + 4.6], { size: 12, weight: 'semibold' })]
	});
	const again = head('notes/again', 'Notes, continued');
	return notes.map((note, i) => {
		const words = paragraph(`notes/${note.id}`, note.text, { size: 9, width: width - INDENT });
		const row: Block = {
			height: words.height,
			draw: (x, y) => [
				...numberRing(`notes/${note.id}/number`, note.number, [x + 1.9, y + 2]),
				...indented(INDENT, words).draw(x, y)
			]
		};
		const block = stacked(row, space(1.4));
		return i === 0 ? stacked(head('notes/title', 'Notes'), block) : { ...block, again };
	});
}
