import { elevationOf } from '#core/drawing/elevation.ts';
import { holeTable } from '#core/drawing/hole-table.ts';
import { markTable } from '#core/drawing/mark-table.ts';
import { packOf } from '#core/drawing/pack.ts';
import { READERS, type OnPaper } from '#core/drawing/sheet.ts';
import { summaryOf } from '#core/drawing/summary.ts';
import { WALL_IDS } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import { csvOf } from '#core/render/csv.ts';
import { dxfOf } from '#core/render/dxf.ts';
import { pdfOf, type PdfFonts } from '#core/render/pdf.ts';
import { svgOf } from '#core/render/svg.ts';
import { reportOf, type Beside } from '#core/report.ts';
import type { FileName } from './names.ts';

/** What is drawn, on what, and with which fonts. */
export interface Written {
	readonly plan: Plan;
	/** What is worked out beside a plan, as far as it is. */
	readonly beside: Partial<Beside>;
	readonly how: Omit<OnPaper, 'reader'>;
	readonly fonts: PdfFonts;
}

/**
 * What a file holds. Walls are drawn as for whoever fits the parts: nothing of a person.
 * Shape: the same plan gives the same bytes. Fails: GlyphMissing when the fonts lack a sign of what is drawn.
 */
export function fileOf(name: FileName, { plan, beside, how, fonts }: Written): string | Uint8Array {
	const reader = READERS.find((one) => name === `${one}.pdf`);
	if (reader) {
		const meta = { title: `Case ${plan.scene.c.id}`, digest: plan.digest };
		return pdfOf(packOf(plan, { ...how, reader }, beside), meta, fonts);
	}
	const drawn = { ...how, reader: 'installer' } as const;
	const wall = WALL_IDS.find((id) => name.startsWith(`${id}-wall.`));
	if (wall) return (name.endsWith('.dxf') ? dxfOf : svgOf)(elevationOf(plan, wall, drawn));
	switch (name) {
		case 'marks.csv':
			return csvOf(markTable(plan));
		case 'holes.csv':
			return csvOf(holeTable(plan));
		case 'summary.txt':
			return summaryOf(plan, beside.worth ?? [], how.tape);
		default:
			return `${JSON.stringify(reportOf(plan, beside), null, '\t')}\n`;
	}
}
