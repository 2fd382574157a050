import { jsPDF } from 'jspdf';
import type { Drawing, Entity, Path, Spot, Text } from '#core/drawing/entity.ts';
import { LAYERS, TONES, type Style, type Tone } from '#core/drawing/layers.ts';
import { startOf, type Weight } from '#core/drawing/type.ts';
import { arcCurves } from './arc.ts';
import { refuseMissing } from './missing.ts';
import { PdfTags } from './pdf-tags.ts';
import { piecesOf } from './structure.ts';

/** The two fonts of the paper as TrueType files in base64. */
export type PdfFonts = Readonly<Record<Weight, string>>;

/** What a PDF says of itself. `digest` is the state it shows, at least 32 hexadecimal digits. */
export interface PdfMeta {
	readonly title: string;
	readonly digest: string;
}

const FAMILY = 'SourceSans3';
/** Core has no clock, and the same case gives the same bytes; the day of drawing is written on the paper by hand. */
const CREATED = "D:20000101000000+00'00'";

/**
 * Drawings as one tagged PDF, a page each, at exact size with embedded fonts.
 * Units and frame: mm of the sheet. Shape: the same drawings give the same bytes; its language is that of the first.
 * Fails: RangeError without a drawing, GlyphMissing when the fonts lack a sign.
 */
export function pdfOf(drawings: readonly Drawing[], meta: PdfMeta, fonts: PdfFonts): Uint8Array {
	const [first] = drawings;
	if (!first) throw new RangeError('a PDF needs at least one drawing');
	refuseMissing(drawings);
	const doc = new jsPDF({
		unit: 'mm',
		format: [first.size.width, first.size.height],
		orientation: lieOf(first),
		compress: true,
		putOnlyUsedFonts: true,
		floatPrecision: 'smart'
	});
	describe(doc, meta);
	embed(doc, fonts);
	const tags = new PdfTags(doc);
	drawings.forEach((drawing, i) => {
		if (i > 0) doc.addPage([drawing.size.width, drawing.size.height], lieOf(drawing));
		tags.begin(drawing);
		for (const piece of piecesOf(drawing)) {
			tags.piece(piece, () => {
				const last = piece.entities.at(-1);
				for (const entity of piece.entities) draw(doc, entity, { tags, goesOn: piece.role === 'P' && entity !== last });
			});
		}
	});
	return new Uint8Array(doc.output('arraybuffer'));
}

/** The library turns a page that is not as it is told to lie. */
const lieOf = ({ size }: Drawing) => (size.width > size.height ? 'landscape' : 'portrait');

function describe(doc: jsPDF, { title, digest }: PdfMeta): void {
	doc.setFileId(digest.slice(0, 32).toUpperCase());
	doc.setCreationDate(CREATED);
	doc.setDocumentProperties({ title, creator: 'Graspline' });
	doc.viewerPreferences({ DisplayDocTitle: true });
}

function embed(doc: jsPDF, fonts: PdfFonts): void {
	for (const weight of ['regular', 'semibold'] as const) {
		const file = `${FAMILY}-${weight}.ttf`;
		doc.addFileToVFS(file, fonts[weight]);
		doc.addFont(file, FAMILY, weight);
	}
}

/** What a text is drawn with: the tags, and whether its sentence goes on in the next line. */
interface Within {
	readonly tags: PdfTags;
	readonly goesOn: boolean;
}

function draw(doc: jsPDF, entity: Entity, { tags, goesOn }: Within): void {
	// The colour of the sheet is the paper's own.
	if (entity.kind === 'path' && entity.layer === 'sheet') return;
	if (entity.kind === 'path') drawPath(doc, entity);
	else if (entity.runs.length < 2) drawText(doc, entity, goesOn);
	else {
		tags.readAs(entity.text + (goesOn ? ' ' : ''), () => {
			drawText(doc, entity, goesOn);
		});
	}
}

/** What is filled with paper on the screen is white in print. */
const colour = (tone: Tone): string => (tone === 'paper' ? '#ffffff' : TONES[tone]);

function drawPath(doc: jsPDF, { d, closed, layer }: Path): void {
	const style: Style = LAYERS[layer];
	if (style.fill) doc.setFillColor(colour(style.fill));
	if (style.stroke) {
		doc.setDrawColor(colour(style.stroke));
		doc.setLineWidth(style.width);
		doc.setLineJoin('round');
		doc.setLineDashPattern([...(style.dash ?? [])], 0);
	}
	let at: Spot = [0, 0];
	for (const step of d) {
		if (step.by === 'arc') for (const [a, b, to] of arcCurves(at, step)) doc.curveTo(...a, ...b, ...to);
		else if (step.by === 'line') doc.lineTo(...step.to);
		else doc.moveTo(...step.to);
		at = step.to;
	}
	if (closed) doc.close();
	if (style.fill && style.stroke) doc.fillStroke();
	else if (style.fill) doc.fill();
	else doc.stroke();
}

/** Lines are joined by who listens to them: one that goes on ends in a space. */
function drawText(doc: jsPDF, text: Text, goesOn: boolean): void {
	doc.setTextColor(colour(text.tone));
	const start = startOf(text);
	const last = text.runs.at(-1);
	for (const run of text.runs) {
		doc.setFont(FAMILY, run.weight);
		doc.setFontSize(run.size);
		doc.text(run === last && goesOn ? `${run.text} ` : run.text, start + run.x, text.at[1] - run.rise);
	}
}
