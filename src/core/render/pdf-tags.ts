import type { jsPDF } from 'jspdf';
import type { Box, Drawing } from '#core/drawing/entity.ts';
import { PT } from '#core/drawing/type.ts';
import { boxAround, type Piece, type Role } from './structure.ts';

/** What the library writes with and its own types leave out. */
interface Inside {
	readonly events: { subscribe(topic: string, heard: (said: { objId: number; pageNumber: number }) => void): void };
	/** Numbers an object that is written later. */
	newObjectDeferred(): number;
	newObjectDeferredBegin(id: number, remember: boolean): void;
	readonly out: (text: string) => void;
}

/** Source: Tabs in structure order is of PDF 1.5; what the library calls itself, 1.3, knows no tags. */
const VERSION = '1.7';

/** A piece of a page in the tree: its numbers among the marked pieces of the page, and what is said of it. */
interface Element {
	readonly role: Role;
	readonly marks: number[];
	readonly alt?: string;
	readonly box?: Box;
}

interface Page {
	readonly drawing: Drawing;
	readonly elements: Map<string, Element>;
	marked: number;
}

/**
 * The structure of a PDF, gathered while its pages are drawn and written with it: a section a sheet, in it headings,
 * paragraphs and figures with their words; all else is an artifact.
 * Source: ISO 32000-1, 14.7 logical structure, 14.8 tagged PDF, 14.9 alternative and replacement text.
 */
export class PdfTags {
	private readonly inside: Inside;
	private readonly pages: Page[] = [];
	private readonly pageIds: number[] = [];
	private root = 0;

	constructor(doc: jsPDF) {
		const own = doc as unknown as { internal: Inside; __private__: { setPdfVersion(version: string): void } };
		own.__private__.setPdfVersion(VERSION);
		this.inside = own.internal;
		const { events, out } = this.inside;
		events.subscribe('putPage', ({ objId, pageNumber }) => {
			this.pageIds[pageNumber - 1] = objId;
			out(`/StructParents ${pageNumber - 1} /Tabs /S`);
		});
		events.subscribe('postPutResources', () => {
			this.putTree();
		});
		events.subscribe('putCatalog', () => {
			const [first] = this.pages;
			if (first) out(`/Lang (${languageOf(first.drawing)})`);
			out(`/MarkInfo <</Marked true>> /StructTreeRoot ${this.root} 0 R`);
		});
	}

	/** What is drawn from here on is on the page of this drawing. */
	begin(drawing: Drawing): void {
		this.pages.push({ drawing, elements: new Map(), marked: 0 });
	}

	/** Draws a piece as what it is. */
	piece(piece: Piece, draw: () => void): void {
		const { out } = this.inside;
		out(piece.role ? `/${piece.role} <</MCID ${this.mark(piece, piece.role)}>> BDC` : '/Artifact BMC');
		draw();
		out('EMC');
	}

	/** Draws what is read as another text than its signs one after the other. */
	readAs(text: string, draw: () => void): void {
		const { out } = this.inside;
		out(`/Span <</ActualText ${textString(text)}>> BDC`);
		draw();
		out('EMC');
	}

	private mark({ key, alt, entities }: Piece, role: Role): number {
		const page = this.pages.at(-1);
		if (!page) throw new RangeError('a piece is drawn on a page');
		const number = page.marked++;
		// Only the parts of a picture may stand apart; a text that comes again is another.
		const name = role === 'Figure' ? key : String(number);
		const known = page.elements.get(name);
		if (known) known.marks.push(number);
		else if (alt === undefined) page.elements.set(name, { role, marks: [number] });
		else page.elements.set(name, { role, marks: [number], alt, box: boxAround(entities) });
		return number;
	}

	/** Root, document, a section a page, its elements, and the tree that leads from marked pieces back to them. */
	private putTree(): void {
		const { inside } = this;
		const id = () => inside.newObjectDeferred();
		const [root, whole, parents] = [id(), id(), id()];
		const sections = this.pages.map((page, i) => ({
			page,
			id: id(),
			at: this.pageIds[i] ?? 0,
			elements: [...page.elements.values()].map((element) => ({ element, id: id() }))
		}));
		this.root = root;
		this.put(
			root,
			`<</Type /StructTreeRoot /K ${whole} 0 R /ParentTree ${parents} 0 R /ParentTreeNextKey ${sections.length}>>`
		);
		this.put(whole, `<</S /Document /P ${root} 0 R /K ${refs(sections)}>>`);
		this.put(parents, `<</Nums [${sections.map(({ elements }, i) => `${i} ${backRefs(elements)}`).join(' ')}]>>`);
		for (const section of sections) {
			const { drawing } = section.page;
			const said = `/Lang (${languageOf(drawing)}) /T ${textString(drawing.title)}`;
			this.put(section.id, `<</S /Sect /P ${whole} 0 R ${said} /K ${refs(section.elements)}>>`);
			for (const { element, id } of section.elements) {
				const { role, marks } = element;
				const kids = marks.length === 1 ? String(marks[0]) : `[${marks.join(' ')}]`;
				const words = figureSays(element, drawing.size.height);
				this.put(id, `<</S /${role} /P ${section.id} 0 R /Pg ${section.at} 0 R /K ${kids}${words}>>`);
			}
		}
	}

	private put(id: number, dictionary: string): void {
		this.inside.newObjectDeferredBegin(id, true);
		this.inside.out(dictionary);
		this.inside.out('endobj');
	}
}

/** The language of a drawing's words. */
const languageOf = ({ language = 'en' }: Pick<Drawing, 'language'>): string => language;

const refs = (of: readonly { readonly id: number }[]): string => `[${of.map(({ id }) => `${id} 0 R`).join(' ')}]`;

/** The element of each marked piece of a page, by its number. */
function backRefs(elements: readonly { readonly element: Element; readonly id: number }[]): string {
	const owners: { id: number }[] = [];
	for (const { element, id } of elements) for (const mark of element.marks) owners[mark] = { id };
	return refs(owners);
}

function figureSays({ alt, box }: Element, height: number): string {
	if (alt === undefined || !box) return '';
	const corners = [box.x0, height - box.y1, box.x1, height - box.y0].map((n) => (n / PT).toFixed(2)).join(' ');
	return ` /Alt ${textString(alt)} /A <</O /Layout /Placement /Block /BBox [${corners}]>>`;
}

/** A text as a PDF has it. Source: ISO 32000-1, 7.9.2.2 text strings: ASCII as it is, all else in UTF-16. */
function textString(text: string): string {
	if (/^[ -~]*$/.test(text)) return `(${text.replace(/[\\()]/g, '\\$&')})`;
	const units = Array.from({ length: text.length }, (_, i) => text.charCodeAt(i).toString(16).padStart(4, '0'));
	return `<FEFF${units.join('').toUpperCase()}>`;
}
