import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { readCase } from '#core/case/read.ts';
import type { Drawing } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import { READERS, usualSheet } from '#core/drawing/sheet.ts';
import { furtherOf } from '#core/further.ts';
import { planCase, type Plan } from '#core/plan.ts';
import { pdfOf } from '#core/render/pdf.ts';
import { svgOf } from '#core/render/svg.ts';
import type { Beside } from '#core/report.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { worthMeasuring } from '#core/worth.ts';
import type { Line } from './bench-placement.ts';
import { BROWSER_ARGS, findBrowser } from './browser.mjs';

const CLIENT = 'turns-left';
const RUNS = 5;
/** A full set is to be there within this. Units: s, bytes. */
const AIMS = { seconds: 3, bytes: 800_000 };
const WEIGHTS = { regular: 400, semibold: 600 } as const;

/** A full set of packs once: seconds and bytes. */
interface Run {
	readonly seconds: number;
	readonly bytes: number;
}

const font = (weight: keyof typeof WEIGHTS): string =>
	readFileSync(fileURLToPath(new URL(`../../static/fonts/source-sans-3-${weight}.ttf`, import.meta.url)), 'base64');

const FONTS = { regular: font('regular'), semibold: font('semibold') };

/** The plan of the example with all that is worked out beside it; none of this is measured. */
function planned(): { plan: Plan; beside: Beside } {
	const read = readCase(readFileSync(`personas/clients/${CLIENT}/case.json`, 'utf8'));
	if (read.kind === 'bad') throw new Error(`${CLIENT}: ${JSON.stringify(read.problems)}`);
	const plan = planCase(read.case);
	const further = furtherOf(plan);
	let step = further.next();
	while (!step.done) step = further.next();
	return { plan, beside: { ...step.value, worth: worthMeasuring(plan) } };
}

const packs = (plan: Plan, beside: Beside, unit: LengthUnit): readonly (readonly Drawing[])[] =>
	READERS.map((reader) => packOf(plan, { reader, sheet: usualSheet({ unit }), tape: { unit } }, beside)).filter(
		(sheets) => sheets.length > 0
	);

/** Drawn and written by us: the drawing is in the time too. */
function ours(plan: Plan, beside: Beside, unit: LengthUnit): Run {
	const began = performance.now();
	const meta = { title: 'bench', digest: plan.digest };
	const bytes = packs(plan, beside, unit).reduce((sum, sheets) => sum + pdfOf(sheets, meta, FONTS).length, 0);
	return { seconds: (performance.now() - began) / 1000, bytes };
}

/** The same pages as SVG, printed with tags as ours are by a browser that runs already, with the same fonts; drawing and SVG are not in its time. */
async function theirs(page: Page, sets: readonly string[]): Promise<Run> {
	const began = performance.now();
	let bytes = 0;
	for (const html of sets) {
		await page.setContent(html);
		await page.evaluate(async () => {
			await document.fonts.ready;
		});
		bytes += (await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true })).length;
	}
	return { seconds: (performance.now() - began) / 1000, bytes };
}

const FACES = Object.entries(WEIGHTS)
	.map(
		([weight, number]) =>
			`@font-face{font-family:'Source Sans 3';font-weight:${number};src:url(data:font/ttf;base64,${FONTS[weight as keyof typeof WEIGHTS]})}`
	)
	.join('');

/** The sheets of one reader as a page to print: each sheet a page of its size. */
function htmlOf(sheets: readonly Drawing[]): string {
	const pages = sheets.map(({ size }, i) => `@page p${i}{size:${size.width}mm ${size.height}mm;margin:0}`).join('');
	const style = `<style>${FACES}${pages}html,body{margin:0}div{break-after:page;overflow:hidden}svg{display:block}</style>`;
	const body = sheets.map(
		(sheet, i) => `<div style="page:p${i};height:${sheet.size.height - 0.1}mm">${svgOf(sheet)}</div>`
	);
	return `<!doctype html><html lang="en"><title>bench</title>${style}${body.join('')}</html>`;
}

function median(runs: readonly Run[]): number {
	const sorted = runs.map(({ seconds }) => seconds).toSorted((a, b) => a - b);
	return sorted[sorted.length >> 1] ?? NaN;
}

function lineOf(
	unit: LengthUnit,
	mine: readonly Run[],
	other: readonly Run[],
	more: Readonly<Record<string, string | number>>
): Line {
	const [first] = mine;
	const [seconds, peer] = [median(mine), median(other)];
	const [bytes, peerBytes] = [mine[0]?.bytes ?? NaN, other[0]?.bytes ?? NaN];
	// The first run, with nothing warm yet, is what somebody waits for.
	const met =
		(first?.seconds ?? Infinity) <= AIMS.seconds && bytes <= AIMS.bytes && seconds < peer && bytes < peerBytes;
	return {
		bench: 'sheets',
		case: `${CLIENT}, ${unit}`,
		ours: seconds,
		peer,
		ratio: peer / seconds,
		first: first?.seconds ?? null,
		bytes,
		'peer bytes': peerBytes,
		'bytes ratio': (peerBytes / bytes).toFixed(2),
		...more,
		aims: `${AIMS.seconds} s and ${AIMS.bytes} bytes at first, faster and smaller than the peer`,
		met: met ? 'yes' : 'no'
	};
}

/**
 * A full set of packs, drawn and written, beside the same pages printed from SVG by a headless browser that runs already.
 * Units: seconds, bytes. Shape: a line a tape. Fails: Error without a browser.
 */
export async function* sheets(): AsyncGenerator<Line, void, undefined> {
	const { plan, beside } = planned();
	const found = await findBrowser();
	if ('missing' in found) throw new Error(`the peer is a browser: ${found.missing}`);
	const browser = await chromium.launch({
		executablePath: found.executablePath,
		env: { ...process.env, ...found.env },
		args: BROWSER_ARGS
	});
	try {
		const page = await browser.newPage();
		await page.setContent('<p>awake</p>');
		await page.pdf();
		for (const unit of ['in', 'mm'] as const) {
			const mine: Run[] = [];
			const other: Run[] = [];
			const drawn = packs(plan, beside, unit);
			const html = drawn.map(htmlOf);
			for (let i = 0; i < RUNS; i++) {
				mine.push(ours(plan, beside, unit));
				other.push(await theirs(page, html));
			}
			const pages = drawn.reduce((sum, sheets) => sum + sheets.length, 0);
			yield lineOf(unit, mine, other, {
				packs: drawn.length,
				pages,
				runs: RUNS,
				browser: browser.version(),
				node: process.versions.node
			});
		}
	} finally {
		await browser.close();
	}
}
