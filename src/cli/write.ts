import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Problem } from '#core/case/record.ts';
import { usualSheet, type SheetName } from '#core/drawing/sheet.ts';
import { fileOf } from '#core/files/file.ts';
import { namesOf, type FileName } from '#core/files/names.ts';
import type { Plan } from '#core/plan.ts';
import { GlyphMissing, missingSays } from '#core/render/missing.ts';
import type { Beside } from '#core/report.ts';
import type { Tape } from '#core/units/format.ts';

/** Where the sheets go, what they are drawn for, and the tape their figures are read on. */
export interface Output {
	readonly folder: string;
	readonly tape: Tape;
	/** Null for the usual one of the tape. */
	readonly sheet: SheetName | null;
	readonly both: boolean;
}

const font = (weight: 'regular' | 'semibold'): string =>
	readFileSync(fileURLToPath(new URL(`../../static/fonts/source-sans-3-${weight}.ttf`, import.meta.url)), 'base64');

/** Every file of a plan by name, or a problem for every sign the fonts of the paper lack. */
function filesOf(
	plan: Plan,
	beside: Beside,
	{ tape, sheet, both }: Output
): { readonly files: readonly (readonly [FileName, string | Uint8Array])[]; readonly problems: readonly Problem[] } {
	const how = { sheet: sheet ?? usualSheet(tape), tape, both };
	const fonts = { regular: font('regular'), semibold: font('semibold') };
	const files: [FileName, string | Uint8Array][] = [];
	const lacking = new Set<string>();
	for (const name of namesOf(plan)) {
		try {
			files.push([name, fileOf(name, { plan, beside, how, fonts })]);
		} catch (error) {
			if (!(error instanceof GlyphMissing)) throw error;
			for (const missing of error.missing) lacking.add(missingSays({ ...missing, sheets: missing.sheets.slice(0, 1) }));
		}
	}
	return { files, problems: [...lacking].map((says) => ({ path: 'the sheets', says })) };
}

/**
 * Writes every file of a plan into a folder, all of them or none that is torn.
 * Fails: the problems, when the fonts lack a sign of what is drawn or the folder cannot be written; none when all is done.
 */
export function writeSheets(plan: Plan, beside: Beside, output: Output): readonly Problem[] {
	const { folder } = output;
	const { files, problems } = filesOf(plan, beside, output);
	if (problems.length > 0) return problems;
	let draft: string | null = null;
	try {
		mkdirSync(folder, { recursive: true });
		draft = mkdtempSync(path.join(folder, '.draft-'));
		for (const [name, bytes] of files) writeFileSync(path.join(draft, name), bytes);
		for (const [name] of files) renameSync(path.join(draft, name), path.join(folder, name));
		return [];
	} catch (error) {
		const code = (error as NodeJS.ErrnoException).code ?? 'no reason';
		return [{ path: 'the folder', says: `cannot be written (${code}); nothing there is half written` }];
	} finally {
		if (draft !== null) rmSync(draft, { recursive: true, force: true });
	}
}
