import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Problem } from '#core/case/record.ts';
import { usualSheet, type SheetName } from '#core/drawing/sheet.ts';
import { fileOf } from '#core/files/file.ts';
import { namesOf } from '#core/files/names.ts';
import type { Plan } from '#core/plan.ts';
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

/**
 * Writes every file of a plan into a folder, all of them or none that is torn.
 * Fails: the problem, when the folder cannot be written.
 */
export function writeSheets(plan: Plan, beside: Beside, { folder, tape, sheet, both }: Output): Problem | null {
	const how = { sheet: sheet ?? usualSheet(tape), tape, both };
	const fonts = { regular: font('regular'), semibold: font('semibold') };
	const files = namesOf(plan).map((name) => [name, fileOf(name, { plan, beside, how, fonts })] as const);
	let draft: string | null = null;
	try {
		mkdirSync(folder, { recursive: true });
		draft = mkdtempSync(path.join(folder, '.draft-'));
		for (const [name, bytes] of files) writeFileSync(path.join(draft, name), bytes);
		for (const [name] of files) renameSync(path.join(draft, name), path.join(folder, name));
		return null;
	} catch (error) {
		const code = (error as NodeJS.ErrnoException).code ?? 'no reason';
		return { path: 'the folder', says: `cannot be written (${code}); nothing there is half written` };
	} finally {
		if (draft !== null) rmSync(draft, { recursive: true, force: true });
	}
}
