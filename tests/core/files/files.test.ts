import { caseSchema, type Case } from '#core/case/record.ts';
import { readCase } from '#core/case/read.ts';
import { SHEET_NAMES, usualSheet } from '#core/drawing/sheet.ts';
import { fileOf } from '#core/files/file.ts';
import { namesOf, type FileName } from '#core/files/names.ts';
import { planCase, type Plan } from '#core/plan.ts';
import DxfParser from 'dxf-parser';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { CLIENT_PLACES } from '../drawing/client-places.ts';
import { clientPlan } from '../drawing/client-plans.ts';
import { FONTS } from '../render/fonts.ts';
import { open } from '../render/pdf-reader.ts';

/** Files that speak of the person. */
const HERS: readonly FileName[] = ['hers.pdf', 'therapist.pdf', 'summary.txt', 'plan.json'];

function written(plan: Plan, unit: 'mm' | 'in', names: readonly FileName[] = namesOf(plan)) {
	const how = { sheet: usualSheet({ unit }), tape: { unit } };
	return names.map((name) => [name, fileOf(name, { plan, beside: {}, how, fonts: FONTS })] as const);
}

/** Rows of comma-separated values. Source: the grammar of RFC 4180, section 2. Fails: Error where it is not followed. */
function rowsIn(text: string): readonly (readonly string[])[] {
	const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
	const rows: string[][] = [[]];
	while (cell.lastIndex < text.length) {
		const [, quoted, plain = '', end] = cell.exec(text) ?? [];
		if (end === undefined) throw new Error('not RFC 4180');
		rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? plain);
		if (end !== ',') rows.push([]);
	}
	return rows.slice(0, -1);
}

/** A reader of XML that is not ours. Its package has no types. */
const { JSDOM } = createRequire(import.meta.url)('jsdom') as {
	readonly JSDOM: new (html: string) => { readonly window: { readonly DOMParser: typeof DOMParser } };
};
const parser = new new JSDOM('').window.DOMParser();

/** What is wrong with a file that is text, as an independent reader finds it. */
function brokenIn(name: FileName, text: string): readonly string[] {
	if (name.endsWith('.svg')) {
		const root = parser.parseFromString(text, 'image/svg+xml').documentElement;
		const ids = Array.from(root.querySelectorAll('[id]'), ({ id }) => id);
		return root.tagName === 'svg' && !ids.some((id) => /\s/.test(id)) ? [] : [`${name}: not well-formed`];
	}
	if (name.endsWith('.dxf')) {
		const entities = new DxfParser().parseSync(text)?.entities ?? [];
		return entities.length > 10 && /^[\n -~]*$/.test(text) ? [] : [`${name}: not a DXF`];
	}
	if (name.endsWith('.csv')) {
		const [heads, ...rows] = rowsIn(text);
		const bad = rows.filter((row) => row.length !== heads?.length || row.some((says) => /^[=+@\t\r]/.test(says)));
		return bad.map((row) => `${name}: ${row.join(' | ')}`);
	}
	if (name === 'plan.json') JSON.parse(text);
	return [];
}

describe('the files of every example client', () => {
	const each = Object.keys(CLIENT_PLACES).flatMap((name) =>
		(['mm', 'in'] as const).map((unit) => [name, unit] as const)
	);

	test.each(each)(
		'[files R1] %s on the tape of %s: each is there and is read by an independent reader, without a search',
		async (name, unit) => {
			const plan = clientPlan(name);
			expect(plan.status).toBe('given');
			const files = written(plan, unit);
			const names = files.map(([name]) => name);
			expect(names).toEqual(expect.arrayContaining([...HERS, 'installer.pdf', 'marks.csv', 'holes.csv']));
			for (const wall of new Set(plan.marks.map(({ place }) => place.wall))) {
				expect(names).toEqual(expect.arrayContaining([`${wall}-wall.svg`, `${wall}-wall.dxf`]));
			}
			for (const [name, bytes] of files) {
				if (typeof bytes === 'string') expect(brokenIn(name, bytes)).toEqual([]);
				else expect((await open(bytes)).numPages).toBeGreaterThan(1);
			}
			const marks = files.find(([name]) => name === 'marks.csv')?.[1] ?? '';
			expect(rowsIn(String(marks)).map(([, id]) => id)).toEqual(['id', ...plan.marks.map((m) => m.accessory.id)]);
		},
		60_000
	);
});

/** Texts that mean something to one of the formats; `zqx` is looked for. */
const HOSTILE = {
	'markup and quotes': 'zqx "q" \'x\' <b>&amp; </text> ]]> & x, y',
	'strings of PDF': 'zqx (open \\( ) \\\\ )) endstream',
	'lines and records': 'zqx one\ntwo\r\nthree\t0\nSECTION\n0\nEOF',
	'a formula': '=zqx(1+2)',
	'signs of control of DXF': 'zqx %%c ^J \\P \\U+0041 {\\fx;}',
	'one word without an end': 'zqx'.repeat(134)
};

/** Every text of a record replaced, as long as it may be; names of things too. */
function saying(text: string, c: Case): Case {
	const cut = (most: number): string => text.slice(0, most);
	const told = (person: Case['people'][string]) => ({
		...Object.fromEntries(
			Object.entries<unknown>(person).map(([field, fact]) =>
				typeof fact === 'object' && fact !== null && 'how' in fact
					? [field, { ...fact, by: cut(80), typed: cut(60) }]
					: [field, fact]
			)
		),
		initials: cut(12),
		goals: cut(400)
	});
	const named = <T>(things: Readonly<Record<string, T>>) =>
		Object.fromEntries(Object.values(things).map((thing, i) => [`${String(i)}${cut(38)}`, thing]));
	const { walls } = c.enclosure;
	return caseSchema.parse({
		...c,
		people: Object.fromEntries(
			Object.entries(c.people).map(([id, person]) => [id === 'client' ? id : cut(40), told(person)])
		),
		departures: { 'NEED-DRY/case': { reason: cut(400), by: cut(80) } },
		enclosure: {
			...c.enclosure,
			loadStatement: { document: 'Letter of 3 March', by: cut(80), load: 2000 },
			walls: Object.fromEntries(
				Object.entries(walls).map(([id, wall]) => [
					id,
					// Whoever fits the parts knows a stud by its place, and is not told its name.
					{ ...wall, studs: named(wall.studs), backing: named(wall.backing), keepOuts: named(wall.keepOuts) }
				])
			)
		}
	});
}

describe('texts of a record', () => {
	test.each(Object.entries(HOSTILE))(
		'[files R2] [files R4] %s: no file breaks, and none but hers and the therapist\u2019s has a word of it',
		async (_, text) => {
			// Two bars of this client are read off, so that its table of holes has rows.
			const plan = clientPlan('strong-walls', (c) => saying(text, c));
			const files = written(plan, 'mm');
			expect(rowsIn(String(files.find(([name]) => name === 'holes.csv')?.[1])).length).toBeGreaterThan(6);
			for (const [name, bytes] of files) {
				if (typeof bytes === 'string') {
					expect(brokenIn(name, bytes)).toEqual([]);
					// Names of studs are in a drawing as ids alone.
					const seen = bytes.replace(/ id="[^"]*"/g, '').toLowerCase();
					expect([name, seen.includes('zqx')]).toEqual([name, name === 'summary.txt' || name === 'plan.json']);
				} else {
					const pdf = await open(bytes);
					const pages = Array.from({ length: pdf.numPages }, (_, i) => pdf.getPage(i + 1));
					const texts = await Promise.all(pages.map(async (page) => (await page).getTextContent()));
					const all = texts.flatMap(({ items }) => items.map((item) => ('str' in item ? item.str : ''))).join(' ');
					expect([name, all.toLowerCase().includes('zqx')]).toEqual([name, name === 'therapist.pdf']);
				}
			}
		},
		60_000
	);

	test.each(Object.keys(CLIENT_PLACES))(
		'[files R2] why a thing is wanted, and what was accepted, is in no table and no DXF: %s',
		(name) => {
			const plan = clientPlan(name);
			const reasons = plan.wanted.map(({ reason }) => reason.slice(0, 30));
			const accepted = Object.values(plan.scene.c.departures).map(({ reason }) => reason.slice(0, 30));
			const theirs = namesOf(plan).filter((name) => name.endsWith('.csv') || name.endsWith('.dxf'));
			const told = written(plan, 'mm', theirs).flatMap(([name, bytes]) =>
				[...reasons, ...accepted].filter((says) => String(bytes).includes(says)).map((says) => `${name}: ${says}`)
			);
			expect(told).toEqual([]);
			// The same words are found where they are.
			expect(String(fileOf('plan.json', { plan, beside: {}, how: HOW, fonts: FONTS }))).toContain(reasons[0]);
		}
	);
});

const HOW = { sheet: SHEET_NAMES[0], tape: { unit: 'mm' } } as const;

/** The same JSON with the fields of every object the other way round. */
function backward(json: unknown): unknown {
	if (Array.isArray(json)) return json.map(backward);
	if (typeof json !== 'object' || json === null) return json;
	return Object.fromEntries(
		Object.entries(json)
			.toReversed()
			.map(([key, value]) => [key, backward(value)])
	);
}

test('[files R3] the order of the fields of a record moves no figure: tables and plan.json are the same', () => {
	const recorded: unknown = JSON.parse(readFileSync('personas/clients/turns-left/case.json', 'utf8'));
	const places = Object.fromEntries(
		(CLIENT_PLACES['turns-left'] ?? []).map(([id, variant, wall, x, y]) => [
			id,
			{ variant, wall, x, y, stage: 'pinned' }
		])
	);
	const plans = [(json: unknown) => json, backward].map((turned) => {
		const read = readCase(JSON.stringify(turned({ ...(recorded as object), places })));
		if (read.kind === 'bad') throw new Error(JSON.stringify(read.problems));
		return planCase(read.case);
	});
	const [one, other] = plans.map((plan) =>
		Object.fromEntries(written(plan, 'in', ['marks.csv', 'holes.csv', 'plan.json']))
	);
	expect(other).toEqual(one);
	const [plan] = plans;
	if (!plan) throw new RangeError('there is a plan');
	for (const [name, bytes] of written(plan, 'in')) {
		const again = written(plan, 'in', [name]).map(([, once]) => Buffer.from(once));
		expect([name, again[0]?.equals(Buffer.from(bytes))]).toEqual([name, true]);
	}
}, 60_000);
