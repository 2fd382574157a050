import { readFileSync } from 'node:fs';
import type { PdfFonts } from '#core/render/pdf.ts';

/** The two fonts of the paper as the program embeds them. */
export const FONTS: PdfFonts = {
	regular: readFileSync('static/fonts/source-sans-3-regular.ttf').toString('base64'),
	semibold: readFileSync('static/fonts/source-sans-3-semibold.ttf').toString('base64')
};
