import type { Plan } from '#core/plan.ts';
import type { Drawing } from '../entity.ts';
import type { OnPaper } from '../sheet.ts';

/** What goes where and how it is used, for her and whoever helps her. */
export function hersSheetsOf(_plan: Plan, _how: OnPaper): readonly Drawing[] {
	return [];
}
