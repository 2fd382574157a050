import { inflateSync } from 'node:zlib';
import { getDocument, OPS, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

const MM = 25.4 / 72;

/** A PDF opened by an independent reader, Mozilla's pdf.js. */
export const open = (bytes: Uint8Array): Promise<PDFDocumentProxy> =>
	getDocument({ data: bytes.slice(), verbosity: 0, standardFontDataUrl: 'node_modules/pdfjs-dist/standard_fonts/' })
		.promise;

/** A text of a page. Units and frame: mm, y down. */
export interface Found {
	readonly text: string;
	readonly x: number;
	readonly y: number;
	readonly width: number;
}

/** Every text of a page that is not empty. */
export async function textsOn(page: PDFPageProxy, height: number): Promise<readonly Found[]> {
	const { items } = await page.getTextContent({ disableNormalization: true });
	return items.flatMap((item) => {
		if (!('str' in item) || item.str.trim() === '') return [];
		const [x, y] = [Number(item.transform[4]), Number(item.transform[5])];
		return [{ text: item.str, x: x * MM, y: height - y * MM, width: item.width * MM }];
	});
}

/** Middles of level strokes of one length, left to right. Units: mm. */
export async function strokesOf(page: PDFPageProxy, length: number): Promise<readonly number[]> {
	const { fnArray, argsArray } = await page.getOperatorList();
	const middles: number[] = [];
	fnArray.forEach((fn, i) => {
		if (fn !== OPS.constructPath) return;
		const [, [points]] = argsArray[i] as [number, [Float32Array | null]];
		const p = Array.from(points ?? []);
		// Each step is its kind (0 move, 1 line) and its point.
		for (let k = 0; k + 5 < p.length; k += 3) {
			const [kind, x0 = 0, y0 = 0, next, x1 = 0, y1 = 0] = p.slice(k, k + 6);
			if (kind === 2 || next === 2) return;
			if (kind === 0 && next === 1 && y0 === y1 && Math.abs((x1 - x0) * MM - length) < 1e-3)
				middles.push(((x0 + x1) / 2) * MM);
		}
	});
	return middles.toSorted((a, b) => a - b);
}

/** What the pages of a PDF draw with, as it is written, one text a page. Source: ISO 32000-1, 7.3.8 streams. */
export function contentsOf(bytes: Uint8Array): readonly string[] {
	const file = Buffer.from(bytes);
	const texts: string[] = [];
	for (let at = file.indexOf('stream\n'); at >= 0; at = file.indexOf('stream\n', at + 7)) {
		const end = file.indexOf('endstream', at);
		if (file.subarray(at - 3, at).toString() === 'end' || end < 0) continue;
		const text = inflateSync(file.subarray(at + 7, end)).toString('latin1');
		if (text.includes(' BDC')) texts.push(text);
	}
	return texts;
}
