import { describe, expect, test } from 'vitest';
import { overlap, type Drawing } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import { SHEETS, type OnPaper } from '#core/drawing/sheet.ts';
import { boxOf } from '#core/drawing/type.ts';
import { sideSheetsOf } from '#core/drawing/therapist/side-sheet.ts';
import type { Plan } from '#core/plan.ts';
import { inches, mm } from '#core/units/length.ts';
import { CLIENT, EXAMPLE, fixtureCase, fixturePlan } from './fixture.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const MM: OnPaper = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm', step: mm(5) } };
const INCHES: OnPaper = { reader: 'therapist', sheet: 'Letter', tape: { unit: 'in', step: inches(1 / 4) } };

/** The example client with the lengths a figure on a seat is drawn from. */
const BODY = {
	...CLIENT.body,
	popliteal: measured(380),
	buttockPopliteal: measured(470),
	sittingHeight: measured(830)
};

function planWith(client: object): Plan {
	return fixturePlan(fixtureCase({ client: { ...CLIENT, body: BODY, ...client } }), EXAMPLE);
}

const texts = (sheets: readonly Drawing[]): string =>
	sheets.flatMap(({ entities }) => entities.flatMap((e) => (e.kind === 'text' ? [e.text] : []))).join(' ');

describe('[drawing R25] the sheet from the side', () => {
	test('tells scale, whose size, seat, shoulders, soles and hands, each from the plan itself', () => {
		const plan = planWith({ ownFigure: measured(true) });
		const said = texts(sideSheetsOf(plan, MM));
		expect(said).toContain('Scale 1:');
		expect(said).toContain('The client, drawn at own size');
		// Places of the example: seat 560 under the line; shoulder taped 530 above it.
		expect(said).toContain('Top of the seat: \u2212560.');
		const { room } = plan.scene;
		const floor = room.floorAt(500, 470);
		const gap = -560 - floor - 380;
		expect(gap).toBeGreaterThan(10);
		const told = Number(/The soles are (\d+) above the floor/.exec(said)?.[1]);
		expect(Math.abs(told - gap)).toBeLessThan(4);
		expect(said).toMatch(/Control, middle of plate: (left|right) hand at \+100/);
	});

	test('upright, the shoulders stand where they were taped', () => {
		const plan = planWith({ ownFigure: measured(true), lean: measured({ kind: 'none' }) });
		expect(texts(sideSheetsOf(plan, MM))).toContain('Shoulders as drawn: \u221230.');
	});

	test('a hand that does not get there is told short by what the measure lacks', () => {
		const plan = planWith({ ownFigure: measured(true), lean: measured({ kind: 'none' }) });
		expect(texts(sideSheetsOf(plan, MM))).toMatch(/hand at \+100, \d+ short of it/);
	});

	test('of a neutral figure no length is told as anybody\u2019s', () => {
		const said = texts(sideSheetsOf(planWith({}), MM));
		expect(said).toContain('A neutral figure, not the size of anybody here.');
		expect(said).not.toContain('Shoulders');
		expect(said).not.toContain('drawn at own size');
		expect(said).not.toContain('to spare');
	});

	test('every picture is told in words, with its scale and the letters that are seen', () => {
		for (const { pictures = {}, entities } of sideSheetsOf(planWith({ ownFigure: measured(true) }), MM)) {
			const keys = [...new Set(entities.flatMap(({ picture }) => picture ?? []))];
			expect(Object.keys(pictures).toSorted()).toEqual(keys.toSorted());
			for (const key of keys) {
				expect(pictures[key]).toMatch(/seen from the side\. Scale 1:.*Seen: [A-Z], /);
				const letters = entities.flatMap((e) => (e.kind === 'text' && e.id.startsWith(`${key}/tag/`) ? [e.text] : []));
				expect(letters.length).toBeGreaterThan(0);
				for (const letter of letters) expect(pictures[key]).toContain(`${letter}, `);
				// The parts of a picture stand together.
				const at = entities.flatMap((e, i) => (e.picture === key ? [i] : []));
				expect((at.at(-1) ?? 0) - (at[0] ?? 0)).toBe(at.length - 1);
			}
		}
	});

	test.each([
		['mm', MM],
		['inches', INCHES]
	] as const)('%s: no text lies on another or past the sheet', (_, how) => {
		for (const { entities, size } of sideSheetsOf(planWith({ ownFigure: measured(true) }), how)) {
			expect(size).toEqual(SHEETS[how.sheet]);
			const boxes = entities.flatMap((e) => (e.kind === 'text' ? [{ id: e.id, box: boxOf(e) }] : []));
			for (const [i, a] of boxes.entries()) {
				expect(a.box.x0 >= 0 && a.box.x1 <= size.width && a.box.y1 <= size.height).toBe(true);
				for (const b of boxes.slice(i + 1)) expect([a.id, b.id, overlap(a.box, b.box)]).toEqual([a.id, b.id, false]);
			}
		}
	});

	test('is the therapist\u2019s alone, and not there where nobody is shown', () => {
		const plan = planWith({ ownFigure: measured(true) });
		const titles = (reader: OnPaper['reader']) => packOf(plan, { ...MM, reader }).map(({ title }) => title);
		expect(titles('therapist')).toContain('From the side');
		expect(titles('installer')).not.toContain('From the side');
		const layers = packOf(plan, { ...MM, reader: 'installer' }).flatMap(({ entities }) =>
			entities.flatMap((e) => (e.kind === 'path' ? [e.layer] : []))
		);
		expect(layers.filter((layer) => layer.startsWith('figure-'))).toEqual([]);
		expect(sideSheetsOf(fixturePlan(fixtureCase(), []), MM)).toEqual([]);
	});
});
