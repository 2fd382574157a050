import type { Plan } from '#core/plan.ts';
import type { Worth } from '#core/worth.ts';
import type { Drawing } from '../entity.ts';
import { itemList } from '../item-list.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import type { OnPaper } from '../sheet.ts';
import { toldParts } from '../summary.ts';
import type { FootWords } from '../title-block.ts';

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
	return listSheets(plan, how, { title: 'What is known', says, blocks, foot: FOOT_WORDS });
}

const FOOT_WORDS: FootWords = {
	id: 'foot',
	title: 'Health data',
	words:
		'This sheet and every sheet with reach or a figure stay with the therapist. Who fits the parts has sheets without them. The same words are in summary.txt, to be pasted into a record.'
};
