import type { Plan } from '#core/plan.ts';
import type { Beside } from '#core/report.ts';
import { comparisonSheetsOf } from '../comparison-sheet.ts';
import { elevationSheetsOf } from '../elevation.ts';
import type { Drawing } from '../entity.ts';
import { loadsSheetsOf } from '../loads-sheet.ts';
import { marksSheetsOf } from '../marks-sheet.ts';
import { wallsUsed } from '../setting-out.ts';
import type { OnPaper } from '../sheet.ts';
import { knownSheetsOf } from './known-sheet.ts';
import { sideSheetsOf } from './side-sheet.ts';

/**
 * Everything there is: the marks with the ways out of what clashes, each wall that has one, the poses from the side, the
 * arithmetic of the brackets, the documents beside each other, then what is known of people and room.
 */
export function therapistSheetsOf(
	plan: Plan,
	how: OnPaper,
	{ waysOut = [], worth = [] }: Partial<Beside>
): readonly Drawing[] {
	return [
		...marksSheetsOf(plan, how, waysOut),
		...wallsUsed(plan).flatMap((wall) => elevationSheetsOf(plan, wall, how)),
		...sideSheetsOf(plan, how),
		...loadsSheetsOf(plan, how),
		...comparisonSheetsOf(plan, how),
		...knownSheetsOf(plan, how, worth)
	];
}
