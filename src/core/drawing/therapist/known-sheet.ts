import type { Plan } from '#core/plan.ts';
import type { Worth } from '#core/worth.ts';
import { paragraph, stacked, type Block } from '../block.ts';
import type { Drawing } from '../entity.ts';
import { itemList } from '../item-list.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import type { OnPaper } from '../sheet.ts';
import { toldParts } from '../summary.ts';
import { write } from '../type.ts';

/** What is known of the people and the room, and how, for the therapist's own file; what the sheets of marks tell is left to them. */
export function knownSheetsOf(plan: Plan, how: OnPaper, worth: readonly Worth[]): readonly Drawing[] {
	const width = listWidth(how);
	const parts = toldParts(plan, worth, how.tape).filter(({ onMarks }) => onMarks !== true);
	const blocks = parts.flatMap(({ head, lines }, i) =>
		itemList(
			{
				id: `known/${String(i)}`,
				title: head,
				items: lines.map((says) => ({ letters: '', says }))
			},
			width
		)
	);
	const says = 'For the therapist alone. Estimates stand apart from what was measured, seen or told.';
	return listSheets(plan, how, { title: 'What is known', says, blocks, foot: foot(width - 94) });
}

function foot(width: number): Block {
	const head: Block = {
		height: 5.2,
		draw: (x, y) => [write('foot/title', 'Health data', [x, y + 3.4], { size: 11, weight: 'semibold' })]
	};
	const words =
		'This sheet and every sheet with reach or a figure stay with the therapist. Who fits the parts has sheets without them. The same words are in summary.txt, to be pasted into a record.';
	return stacked(head, paragraph('foot', words, { size: 8.5, width, leading: 1.32 }));
}
