import { describe, expect, test } from 'vitest';
import { comparisonSheetsOf } from '#core/drawing/comparison-sheet.ts';
import { overlap, widened, type Drawing, type Text } from '#core/drawing/entity.ts';
import { cornerOf, lettersOf } from '#core/drawing/setting-out.ts';
import { fieldOf } from '#core/drawing/sheet.ts';
import { boxOf, printable } from '#core/drawing/type.ts';
import { hereWords, needsLook } from '#core/needs/comparison-words.ts';
import { comparisonOf } from '#core/needs/comparison.ts';
import type { Plan } from '#core/plan.ts';
import { planCase } from '#core/plan.ts';
import { onTape } from '#core/units/format.ts';
import { EXAMPLE, fixtureCase } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const places = Object.fromEntries(
	EXAMPLE.map(([id, variant, wall, x, y]) => [id, { wall, variant, x, y, stage: 'pinned' }])
);
const texts = (d: Drawing): readonly Text[] => d.entities.filter((e): e is Text => e.kind === 'text' && e.text !== '');
const said = (sheets: readonly Drawing[]): string =>
	sheets
		.flatMap(texts)
		.map(({ text }) => text)
		.join(' ');
const comparedIn = (plan: Plan) => comparisonOf({ ...plan, findings: [...plan.findings, ...plan.told] }, cornerOf);

describe('[drawing R15] the sheet of documents compared', () => {
	const plan = planCase(fixtureCase({ more: { places } }));
	const sheets = comparisonSheetsOf(plan, A4);
	const words = said(sheets);

	test('every quantity that needs looking at is there under its letter, with what the plan has', () => {
		const letters = lettersOf(plan);
		const looked = comparedIn(plan).quantities.filter((one) => needsLook(one) && one.cells.length > 1 && one.axis);
		expect(looked.length).toBeGreaterThan(0);
		for (const one of looked) {
			expect(words).toContain(one.what);
			expect(words).toContain(printable(onTape(hereWords(one), A4.tape)));
			expect(words).toContain(letters[one.about ?? '']);
		}
	});

	test('every document is there with what it binds, how homes stand to it, and a tolerance that is ours', () => {
		for (const { name, homes } of comparedIn(plan).documents) {
			expect(words).toContain(printable(name));
			expect(words.replace(/\s+/g, ' ')).toContain(printable(homes).slice(0, 30));
		}
		expect(words).toContain('that is ours');
	});

	test('a departure that was accepted prints with its reason, and as outside', () => {
		const [outside] = comparedIn(plan).quantities.flatMap(({ cells }) =>
			cells.flatMap(({ findings }) =>
				findings.filter(({ answer, row }) => answer === 'outside' && row.origin === 'document')
			)
		);
		if (!outside) throw new RangeError('nothing is outside');
		const key = `${outside.row.id}/${outside.about[0] ?? 'case'}`;
		const departures = { [key]: { reason: 'tried with her, and chosen', by: 'therapist' } };
		const accepted = said(comparisonSheetsOf(planCase(fixtureCase({ more: { places, departures } })), A4));
		expect(accepted.replace(/\s+/g, ' ')).toMatch(/[Oo]utside, accepted: tried with her, and chosen/);
		expect(words).not.toContain('accepted: tried');
	});

	test.each([
		['A4', 'mm'],
		['Letter', 'in']
	] as const)('no words lie on others or beyond a %s sheet in %s', (sheet, unit) => {
		const field = fieldOf(sheet);
		for (const d of comparisonSheetsOf(plan, { reader: 'therapist', sheet, tape: { unit } })) {
			const boxes = texts(d).map((t) => ({ t, box: widened(boxOf(t), -0.05) }));
			const clashes = boxes.flatMap(({ t, box }, i) =>
				boxes.slice(i + 1).flatMap((o) => (overlap(box, o.box) ? [`${t.text} | ${o.t.text}`] : []))
			);
			expect(clashes).toEqual([]);
			expect(
				boxes.filter(({ box }) => box.x1 > field.x1 + 0.1 || box.y1 > field.y1 + 0.1).map(({ t }) => t.text)
			).toEqual([]);
		}
	});

	test('without marks there is no such sheet, and no verdict on any', () => {
		expect(comparisonSheetsOf({ ...plan, marks: [] }, A4)).toEqual([]);
		expect(words).not.toMatch(/complian|\bsafe|optimal/i);
	});
});
