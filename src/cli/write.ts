import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Problem } from '#core/case/record.ts';
import { elevationOf } from '#core/drawing/elevation.ts';
import { markTable } from '#core/drawing/mark-table.ts';
import { wallsUsed } from '#core/drawing/setting-out.ts';
import { packOf } from '#core/drawing/pack.ts';
import { READERS, usualSheet, type OnPaper, type SheetName } from '#core/drawing/sheet.ts';
import { summaryOf } from '#core/drawing/summary.ts';
import type { Plan } from '#core/plan.ts';
import { csvOf } from '#core/render/csv.ts';
import { pdfOf } from '#core/render/pdf.ts';
import { svgOf } from '#core/render/svg.ts';
import { reportOf, type Beside } from '#core/report.ts';
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

function filesOf(
	plan: Plan,
	beside: Beside,
	{ tape, sheet, both }: Output
): readonly (readonly [string, string | Uint8Array])[] {
	const how: OnPaper = { reader: 'installer', sheet: sheet ?? usualSheet(tape), tape, both };
	const packs = READERS.map((reader) => ({ reader, sheets: packOf(plan, { ...how, reader }, beside) }));
	const meta = { title: `Marks of ${plan.scene.c.id}`, digest: plan.digest };
	const fonts = { regular: font('regular'), semibold: font('semibold') };
	return [
		...packs.flatMap(({ reader, sheets }) =>
			sheets.length > 0 ? [[`${reader}.pdf`, pdfOf(sheets, meta, fonts)] as const] : []
		),
		...wallsUsed(plan).map((wall) => [`${wall}-wall.svg`, svgOf(elevationOf(plan, wall, how))] as const),
		['marks.csv', csvOf(markTable(plan))],
		['summary.txt', summaryOf(plan, beside.worth, tape)],
		['plan.json', `${JSON.stringify(reportOf(plan, beside), null, '\t')}\n`]
	];
}

/**
 * Writes a PDF a reader, an SVG a wall as it is drawn for whoever fits it, marks.csv, summary.txt and plan.json into a folder, all of them or none that is torn.
 * Fails: the problem, when the folder cannot be written.
 */
export function writeSheets(plan: Plan, beside: Beside, output: Output): Problem | null {
	const { folder } = output;
	const files = filesOf(plan, beside, output);
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
