import type { Plan } from '#core/plan.ts';
import { elevationSheetsOf } from '../elevation.ts';
import type { Drawing } from '../entity.ts';
import { loadsSheetsOf } from '../loads-sheet.ts';
import { wallsUsed } from '../setting-out.ts';
import type { OnPaper } from '../sheet.ts';
import { behindSheets } from './behind-sheet.ts';
import { holesSheetsOf } from './holes.ts';
import { onSiteSheets } from './on-site.ts';
import { scheduleSheets } from './schedule-sheet.ts';
import { siteQuestions } from './site-questions.ts';
import { templatesOf } from './templates.ts';
import { whatGoesWhere } from './what-goes-where.ts';

/**
 * What is fitted where, into what and with what force, for whoever fits it: the plan that is the key to the others, every
 * mark, what must be behind, each wall, the loads, what to find out, and what to do and tick on site; nothing of a person.
 */
export function installerSheetsOf(plan: Plan, how: OnPaper): readonly Drawing[] {
	const walls = wallsUsed(plan);
	const before = [...scheduleSheets(plan, how), ...behindSheets(plan, how)];
	const drawn = walls.flatMap((wall) =>
		// Only the drawing is the sheet of its wall, not what goes on after it.
		elevationSheetsOf(plan, wall, how).map((sheet, i) => ({ sheet, ...(i === 0 && { wall }) }))
	);
	const after = [
		...loadsSheetsOf(plan, how),
		...siteQuestions(plan, how),
		...onSiteSheets(plan, how),
		...holesSheetsOf(plan, how),
		...templatesOf(plan, how)
	];
	const following = [
		...before.map(({ title }) => ({ title })),
		...drawn.map(({ sheet: { title }, wall }) => ({ title, ...(wall && { wall }) })),
		...after.map(({ title }) => ({ title }))
	];
	return [...whatGoesWhere(plan, how, following), ...before, ...drawn.map(({ sheet }) => sheet), ...after];
}
