import type { Text } from '#core/drawing/entity.ts';
import { markTable } from '#core/drawing/mark-table.ts';
import { marksSheetsOf } from '#core/drawing/marks-sheet.ts';
import { packOf } from '#core/drawing/pack.ts';
import { printable } from '#core/drawing/type.ts';
import { planCase } from '#core/plan.ts';
import { NEEDS } from '#core/rules/packs/needs.ts';
import type { Finding } from '#core/rules/row.ts';
import { sentence } from '#core/rules/sentence.ts';
import { describe, expect, test } from 'vitest';
import { EXAMPLE, fixtureCase, fixturePlan, mirrored } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const places = (puts = EXAMPLE) =>
	Object.fromEntries(puts.map(([id, variant, wall, x, y]) => [id, { wall, variant, x, y, stage: 'pinned' }]));
const said = (sheets: ReturnType<typeof packOf>): string =>
	sheets
		.flatMap((d) => d.entities.filter((e): e is Text => e.kind === 'text'))
		.map((t) => t.text)
		.join(' ');

describe('the sheet of marks', () => {
	const plan = planCase(fixtureCase({ more: { places: places() } }));
	const sheets = marksSheetsOf(plan, A4);

	test('[drawing R7] all that is not inside is told, habits of setting out apart, in the words every view uses', () => {
		const words = said(sheets);
		const paper = plan.findings.filter((f) => f.strength !== 'tie-break');
		const told = paper.filter((f) => f.answer !== 'inside' && f.answer !== 'not-here');
		expect(told.length).toBeGreaterThan(0);
		for (const f of told) expect(words).toContain(printable(sentence(f, A4.tape)));
	});

	test('[drawing R7] every answer is counted with its shape', () => {
		const paper = plan.findings.filter((f) => f.strength !== 'tie-break');
		const inside = paper.filter((f) => f.answer === 'inside').length;
		expect(said(sheets)).toContain(`${String(inside)} inside`);
	});

	test('[drawing R7] what must be settled comes first, then wishes, then the document, then what is to judge', () => {
		const row = plan.findings[0]?.row;
		if (!row) throw new Error('nothing was judged');
		const finding = (says: string, change: object): Finding => ({
			row: { ...row, says, allowed: 'yes', measure: 'inside-wall', origin: 'document', ...change },
			strength: 'prefer',
			about: [],
			answer: 'outside',
			...change
		});
		const findings = [
			finding('Judge.', { answer: 'ask' }),
			finding('Craft.', { origin: 'craft', strength: 'tie-break' }),
			finding('Document.', {}),
			finding('Wish.', { origin: 'wish', strength: 'should' }),
			finding('Must.', { origin: 'room', strength: 'must' })
		];
		const words = said(marksSheetsOf({ ...plan, findings }, A4));
		const inOrder = [
			'Must be settled',
			'Must.',
			'Wishes not wholly met',
			'Wish.',
			'Outside the range of the chosen document',
			'Document.',
			'To judge on the spot',
			'Judge.'
		];
		const places = inOrder.map((part) => words.indexOf(part));
		expect(places).toEqual(places.toSorted((a, b) => a - b));
		expect(places).not.toContain(-1);
		expect(words).not.toContain('Craft.');
		expect(words).toContain('3 outside');
	});

	test('[drawing R7] every lean and every question is told', () => {
		const probes = {
			reasons: [],
			drifts: [],
			leans: [{ accessory: 'control', degrees: 12, travel: 150, says: 'The control is reached by leaning 150 mm.' }],
			waits: [],
			questions: [{ id: 'q', about: ['seat'], asks: 'What is behind the left wall?' }]
		};
		const words = said(marksSheetsOf({ ...plan, probes }, A4));
		expect(words).toContain('The control is reached by leaning 150 mm.');
		expect(words).toContain('What is behind the left wall?');
	});

	test('[drawing R7] every clash is told where nothing meets everything, and every way out', () => {
		const row = (says: string, about: readonly string[] = ['seat']) => ({ row: 'r', about, says });
		const clashes = [
			{ rows: [row('The seat is level with the chair.')] },
			{ rows: [row('The door is 900 mm wide.', [])] },
			{ rows: [row('The bar is below 900 mm.', ['bar-back']), row('The bar is above 900 mm.', ['bar-back'])] }
		];
		const gives = [{ ...row('The seat is level with the chair.'), short: 40, next: 'Ask for a seat on legs.' }];
		const ways = [
			{ gives, marks: [], proved: true },
			{
				gives: [{ ...row('The door is 900 mm wide.', []), short: null, next: 'Ask for a wider door.' }],
				marks: [],
				proved: true
			}
		];
		const impossible = { ...plan, marks: [], status: 'impossible' as const, basis: 'settled' as const, clashes };
		const words = said(marksSheetsOf(impossible, A4, ways));
		for (const part of [
			'No place meets everything that must be met.',
			'These cannot be met, each by itself A The seat is level with the chair.',
			'The door is 900 mm wide.',
			'These cannot be met together D The bar is below 900 mm. D The bar is above 900 mm.',
			'1. Give up: The seat is level with the chair. It then misses by 40 mm. Next: Ask for a seat on legs.',
			'2. Give up: The door is 900 mm wide. It is then not met. Next: Ask for a wider door.'
		]) {
			expect(words).toContain(part);
		}
		expect(
			said(marksSheetsOf(impossible, { reader: 'therapist', sheet: 'Letter', tape: { unit: 'in' } }, ways))
		).toContain('misses by 1 9/16 in');
	});

	test('[drawing R7] what is wanted and no wall here can take is told with its reason', () => {
		const [first] = plan.wanted;
		if (!first) throw new Error('nothing is wanted');
		const words = said(
			marksSheetsOf({ ...plan, nowhere: [{ ...first, id: 'other', reason: 'A bar where no wall is.' }] }, A4)
		);
		expect(words).toContain('Wanted, and no wall here can take it  A bar where no wall is.');
	});

	test('[drawing R7] the room to move of every mark is told, and that one aims at the mark', () => {
		const words = said(marksSheetsOf(fixturePlan(fixtureCase()), A4));
		for (const part of [
			'aim at the mark',
			'Room to move: 12 mm left, 25 mm right, 10 mm lower, 10 mm higher.',
			'Room to move: none left, 6 mm right, none lower, 4 mm higher.',
			'Room to move: no room.'
		]) {
			expect(words).toContain(part);
		}
	});

	test('[drawing R7] what is wanted only later says so, with its letter in a thin ring', () => {
		const sheets = marksSheetsOf(fixturePlan(fixtureCase(), EXAMPLE, ['bar-back']), A4);
		expect(said(sheets)).toContain('Horizontal bar 450 c/c, later');
		expect(said(sheets)).toContain('nothing is drilled there now');
		const disc = sheets.flatMap((d) => d.entities).find((e) => e.id === 'list/bar-back/tag/disc');
		expect(disc).toMatchObject({ layer: 'tag-later' });
	});

	test('[drawing R7] where nothing has a place, everything wanted is told with its letter', () => {
		const none = { ...plan, marks: [], status: 'impossible' as const };
		const words = said(marksSheetsOf(none, A4));
		for (const { reason } of plan.wanted) expect(words).toContain(reason.slice(0, 40));
		expect(words).toContain('There is nothing to set out.');
		expect(said(sheets)).not.toContain('Wanted, and without a place');
	});

	test('[drawing R7] what the figures leave out stands on every one of these sheets', () => {
		for (const sheet of sheets) {
			for (const part of ['Wet and soapy reach', 'the spray', 'outranks']) expect(said([sheet])).toContain(part);
		}
	});

	test('[drawing R7] sheets are numbered through, and every wall with a mark has one', () => {
		const all = packOf(plan, A4);
		const titles = all.slice(sheets.length).map((d) => d.title);
		const walls = ['Control wall', 'Back wall', 'Seat wall'];
		expect([...new Set(titles)]).toEqual([...walls, 'From the side', 'Loads', 'Documents compared', 'What is known']);
		expect(titles.slice(0, walls.length)).toEqual(walls);
		all.forEach((d, i) => {
			expect(said([d])).toContain(`Sheet ${String(i + 1)} of ${String(all.length)}, revision \u2013`);
		});
	});

	test('[drawing R6] no sheet uses words that promise', () => {
		expect(said(packOf(plan, A4))).not.toMatch(/complian|\bsafe|optimal|fits you/i);
	});
});

describe('the table of marks', () => {
	test('[drawing R1] x is the plan\u2019s, from corner is from the inside corner', () => {
		const right = fixturePlan(fixtureCase({ enclosure: { seatWall: 'right' } }), mirrored(EXAMPLE, 914));
		const [heads = [], ...rows] = markTable(right);
		const cell = (id: string, head: string) => rows.find((r) => r[1] === id)?.[heads.indexOf(head)];
		expect([cell('control', 'wall'), cell('control', 'x'), cell('control', 'from corner')]).toEqual(['left', 374, 540]);
		expect(cell('bar-control', 'fixings')).toBe('214 -150; 814 -150');
	});
});

describe('walls of somebody else', () => {
	const ask = NEEDS.rows.find(({ id }) => id === 'NEED-PERMISSION');
	const sheetsFor = (enclosure: object, answer: 'ask' | null) => {
		const plan = fixturePlan(fixtureCase({ enclosure }));
		if (!ask) throw new Error('no such row');
		const finding = { row: ask, strength: 'must', about: [], answer: 'ask' } as const;
		return marksSheetsOf({ ...plan, findings: [...plan.findings, ...(answer ? [finding] : [])] }, A4);
	};
	const told = <T>(value: T) => ({ value, how: 'told' as const });

	test.each([
		['rented', { tenure: told('rented') }],
		['shared', { tenure: told('shared') }],
		['refused', { tenure: told('rented'), permission: told(false) }]
	])(
		'[needs R13] %s: the first sheet says that nothing is drilled before, and what the owner may want must be settled',
		(_, enclosure) => {
			// 24 CFR 100.203: description of the work, permits and what is put back may be asked for.
			const [first, ...rest] = sheetsFor(enclosure, 'ask');
			if (!first) throw new Error('no sheet');
			expect(said([first])).toContain('Nothing is drilled before whoever owns these walls has agreed in writing.');
			const all = said([first, ...rest]);
			const at = all.indexOf('Are holes and backing agreed to in writing?');
			expect(at).toBeGreaterThan(all.indexOf('Must be settled'));
			expect(all).toMatch(/described, its permits, and a word on what is put back/);
		}
	);

	test.each([
		['own', { tenure: told('own') }],
		['agreed', { tenure: told('rented'), permission: told(true) }]
	])('[needs R13] %s: nothing of it', (_, enclosure) => {
		expect(said(sheetsFor(enclosure, null))).not.toContain('whoever owns');
	});

	test('[needs R13] what holds in the United States is told as that, with its source', () => {
		expect(ask?.note).toContain('24 CFR 100.203');
		expect(ask?.note).toMatch(/^In the United States .* Elsewhere other law holds\.$/);
		expect(ask?.says).not.toContain('CFR');
	});
});
