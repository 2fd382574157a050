import type { Plan } from '#core/plan.ts';
import { elevationOf } from '../elevation.ts';
import type { Drawing } from '../entity.ts';
import { loadsSheetsOf } from '../loads-sheet.ts';
import { wallsUsed } from '../setting-out.ts';
import type { OnPaper } from '../sheet.ts';

/** What is fitted where, into what and with what force, for whoever fits it; nothing of a person. */
export function installerSheetsOf(plan: Plan, how: OnPaper): readonly Drawing[] {
	return [...wallsUsed(plan).map((wall) => elevationOf(plan, wall, how)), ...loadsSheetsOf(plan, how)];
}
