import type { Plan } from '#core/plan.ts';
import type { Block } from './block.ts';
import type { Drawing } from './entity.ts';
import { datumWords } from './figure.ts';
import { flowed } from './flow.ts';
import { line, rectangle, shape } from './path.ts';
import { fieldOf, FOOT, inHand, SHEETS, type OnPaper } from './sheet.ts';
import { footWords, titleBlock, type FootWords } from './title-block.ts';
import { write } from './type.ts';
import { unitWords } from './view.ts';

const HEAD = 30;
/** Under the head, and above the foot. Units: mm. */
const AFTER = 5;
const UNDER = 4;

/** What stands on a sheet of words and lists. */
export interface Listed {
	readonly title: string;
	/** What is to be known before reading, in one sentence under the title. */
	readonly says: string;
	readonly blocks: readonly Block[];
	/** What its figures are in; the tape's unit when absent. */
	readonly unit?: string;
	/** Stands at the foot of every page. */
	readonly foot: FootWords;
}

/** How wide what stands on such a sheet is. Units: mm. */
export function listWidth(how: OnPaper): number {
	const field = fieldOf(inHand(how).sheet);
	return field.x1 - field.x0;
}

/** How high a column of such a sheet is. Units: mm. */
export const listHeight = (how: OnPaper): number => fieldOf(inHand(how).sheet).y1 - FOOT - UNDER - HEAD - AFTER;

/** Sheets of words and lists hung from the datum line. Shape: as many as it takes; nothing is left out for want of room. */
export function listSheets(plan: Plan, how: OnPaper, { title, says, blocks, unit, foot }: Listed): readonly Drawing[] {
	const { sheet } = inHand(how);
	const { width, height } = SHEETS[sheet];
	const field = fieldOf(sheet);
	const column = { x: field.x0, y0: HEAD + AFTER, y1: field.y1 - FOOT - UNDER };
	return flowed(blocks, column).map((entities) => ({
		title,
		size: { width, height },
		entities: [
			rectangle('sheet', 'sheet', { x0: 0, y0: 0, x1: width, y1: height }),
			write('head/title', title, [field.x0, 18.2], { size: 24, weight: 'semibold', heading: 1 }),
			write('head/says', says, [field.x0, 24], { size: 10.5, tone: 'grey' }),
			write('head/unit', unit ?? unitWords({ unit: how.tape.unit }), [field.x1, 18.2], {
				size: 14,
				weight: 'semibold',
				anchor: 'end'
			}),
			line('datum/line', 'datum', [field.x0, HEAD], [field.x1, HEAD]),
			shape('datum/sign', 'datum-sign', [field.x0 + 2, HEAD], [field.x0, HEAD - 3.2], [field.x0 + 4, HEAD - 3.2]),
			write('datum/words', datumWords(-plan.scene.room.bathroomFloor, how.tape.unit), [field.x0 + 5.4, HEAD - 1.2], {
				size: 9.5,
				weight: 'semibold',
				tone: 'datum'
			}),
			...entities,
			...footWords(foot, field),
			...titleBlock({ caseId: plan.scene.c.id, subject: title, digest: plan.digest }, field)
		]
	}));
}
