import type { Download } from 'playwright-core';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { goTo, openCase, SEARCHED, searched } from './at.ts';
import { visit, type Visit } from './visit.ts';

/** What was downloaded, read through the browser that is driven from afar. */
async function contentOf(download: Download): Promise<Buffer> {
	const pieces: Buffer[] = [];
	for await (const piece of await download.createReadStream()) pieces.push(piece as Buffer);
	return Buffer.concat(pieces);
}

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true };

describe('the installer, with a phone', () => {
	let visitor: Visit;

	beforeEach(async () => {
		visitor = await visit(undefined, PHONE);
	});

	afterEach(async () => {
		await visitor.close();
	});

	test(
		'[installer W1, ui R36] sees each sheet, downloads the PDF, and it has a page for every sheet shown',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await openCase(page, 'M.W.');
			await goTo(page, 'Sheets');
			await searched(page);
			await page.getByRole('button', { name: 'Installer', exact: true }).click();
			await page.getByText('Nothing about the person.').waitFor();
			const shown = await page.getByRole('img', { name: /as it prints/ }).count();
			expect(shown).toBeGreaterThan(1);
			const coming = page.waitForEvent('download');
			await page.getByRole('button', { name: 'Download this PDF' }).click();
			const download = await coming;
			expect(download.suggestedFilename()).toBe('0417-installer.pdf');
			const bytes = new Uint8Array(await contentOf(download));
			const pdf = await getDocument({ data: bytes, verbosity: 0 }).promise;
			expect(pdf.numPages).toBe(shown);
			// Letter, upright, in points: a sheet that is not scaled.
			expect((await pdf.getPage(1)).view.map(Math.round)).toEqual([0, 0, 612, 792]);
			// Drawings may be larger; what is read in the hand is not.
			await page.getByText('Paper and figures').click();
			await page.getByRole('radio', { name: 'Tabloid' }).check();
			await page.getByText('stay on the smaller paper').waitFor();
			await page.getByText('All files, one by one').click();
			const tables = page.waitForEvent('download');
			await page.getByRole('button', { name: 'Marks, CSV table' }).click();
			expect((await contentOf(await tables)).toString()).toMatch(/^letter,id,kind,wall,x,y/);
			expect(visitor.complaints).toEqual([]);
		}
	);

	test(
		'[installer W2] reads the marks on the phone: nothing runs out of the screen',
		{ timeout: 2 * SEARCHED },
		async () => {
			const { page } = visitor;
			await openCase(page, 'M.W.');
			await goTo(page, 'Places');
			await searched(page);
			await page.getByRole('button', { name: 'Table' }).click();
			const rows = page.getByRole('table').getByRole('row');
			expect(await rows.count()).toBeGreaterThan(5);
			for (const name of [/^A Seat/, /^B Control/, /^C Handset rest/, /Entry bar/]) {
				expect(await page.getByRole('rowheader', { name }).count()).toBe(1);
			}
			const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
			expect(wide).toBeLessThanOrEqual(0);
			await goTo(page, 'Enclosure');
			await page.getByRole('button', { name: 'Behind the right wall' }).click();
			expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
			expect(visitor.complaints).toEqual([]);
		}
	);
});
