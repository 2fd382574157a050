import type { Plan } from '#core/plan.ts';
import type { Beside } from '#core/report.ts';
import type { Drawing } from './entity.ts';
import { hersSheetsOf } from './hers/sheets.ts';
import { installerSheetsOf } from './installer/sheets.ts';
import type { OnPaper, Reader } from './sheet.ts';
import { therapistSheetsOf } from './therapist/sheets.ts';
import { write } from './type.ts';

const SHEETS_OF: Readonly<Record<Reader, (plan: Plan, how: OnPaper, beside: Partial<Beside>) => readonly Drawing[]>> = {
	hers: hersSheetsOf,
	therapist: therapistSheetsOf,
	installer: installerSheetsOf
};

/** All sheets for one reader in order, numbered. Shape: none without a mark that is hers, for hers; else at least one. */
export function packOf(plan: Plan, how: OnPaper, beside: Partial<Beside> = {}): readonly Drawing[] {
	const sheets = SHEETS_OF[how.reader](plan, how, beside);
	if (how.reader === 'hers') return sheets;
	return sheets.map((sheet, i) => {
		const text = `Sheet ${String(i + 1)} of ${String(sheets.length)}, revision \u2013`;
		const at = [sheet.size.width - 10, 24] as const;
		const number = write('head/sheet', text, at, { size: 10.5, tone: 'grey', anchor: 'end' });
		return { ...sheet, entities: [...sheet.entities, number] };
	});
}
