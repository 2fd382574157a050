import type { WayOut } from '#core/placement/answer.ts';
import type { Plan } from '#core/plan.ts';
import { comparisonSheetsOf } from './comparison-sheet.ts';
import type { Drawing } from './entity.ts';
import { elevationOf } from './elevation.ts';
import { loadsSheetsOf } from './loads-sheet.ts';
import { marksSheetsOf } from './marks-sheet.ts';
import { wallsUsed } from './setting-out.ts';
import { fieldOf, type OnPaper } from './sheet.ts';
import { write } from './type.ts';

/**
 * All sheets of a plan in order, numbered: the marks with the ways out of what clashes, each wall that has one, the
 * arithmetic of the brackets, then the documents beside each other.
 */
export function sheetsOf(plan: Plan, how: OnPaper, ways: readonly WayOut[] = []): readonly Drawing[] {
	const sheets = [
		...marksSheetsOf(plan, how, ways),
		...wallsUsed(plan).map((wall) => elevationOf(plan, wall, how)),
		...loadsSheetsOf(plan, how),
		...comparisonSheetsOf(plan, how)
	];
	const right = fieldOf(how.sheet).x1;
	return sheets.map((sheet, i) => {
		const text = `Sheet ${String(i + 1)} of ${String(sheets.length)}, revision \u2013`;
		const number = write('head/sheet', text, [right, 24], { size: 10.5, tone: 'grey', anchor: 'end' });
		return { ...sheet, entities: [...sheet.entities, number] };
	});
}
