import { variantOf } from '#core/case/accessory.ts';
import { overlap, widened, type Drawing } from '#core/drawing/entity.ts';
import { MESSAGES } from '#core/drawing/hers/messages.ts';
import { LAYERS } from '#core/drawing/layers.ts';
import { extent } from '#core/drawing/path.ts';
import { lettersOf } from '#core/drawing/setting-out.ts';
import { boxOf } from '#core/drawing/type.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHILD, CLIENT, fixtureCase, fixturePlan, type Put } from './fixture.ts';
import { allPlans, hersIn, LANGUAGES, paragraphsOf, textsOf, pathsOf, planNamed } from './hers-plans.ts';
import { planOf, TEST_ROOMS, type TestRoom } from './rooms.ts';

const plans = allPlans();
const NAMES = [...plans.keys()];
const SHEETS = ['A4', 'Letter'] as const;

const clear = (t: ReturnType<typeof textsOf>[number]) => widened(boxOf(t), -0.05);

/** Texts and discs that lie on each other, and what lies beyond the sheet. */
function faults(d: Drawing): readonly string[] {
	const { width, height } = d.size;
	const texts = textsOf(d).map((t) => ({ id: t.id, box: clear(t) }));
	const discs = d.entities.flatMap((e) =>
		e.kind === 'path' && e.id.endsWith('/disc') ? [{ id: e.id, box: extent(e) }] : []
	);
	const own = (a: string, b: string) => a.replace(/\/(disc|letter)$/, '') === b.replace(/\/(disc|letter)$/, '');
	const all = [...texts, ...discs];
	const clashes = all.flatMap((a, i) =>
		all.slice(i + 1).flatMap((b) => (overlap(a.box, b.box) && !own(a.id, b.id) ? [`${a.id} on ${b.id}`] : []))
	);
	const beyond = texts.flatMap(({ id, box: b }) =>
		b.x0 < 18 || b.x1 > width - 16 || b.y0 < 10 || b.y1 > height - 9 ? [`${id} beyond`] : []
	);
	const off = d.entities.flatMap((e) => {
		if (e.kind !== 'path' || e.layer === 'sheet') return [];
		const b = extent(e);
		return b.x0 < 10 || b.x1 > width - 10 || b.y0 < 10 || b.y1 > height - 10 ? [`${e.id} beyond`] : [];
	});
	const ids = d.entities.map(({ id }) => id);
	return [...clashes, ...beyond, ...off, ...ids.filter((id, i) => ids.indexOf(id) !== i)];
}

/** A room of some type, its things moved about, some only later, some over a wall nobody knows. */
const rooms: fc.Arbitrary<TestRoom> = fc.constantFrom(...Object.values(TEST_ROOMS)).chain((room) =>
	fc
		.record({
			moves: fc.array(fc.tuple(fc.integer({ min: -150, max: 150 }), fc.integer({ min: -200, max: 200 })), {
				minLength: room.puts.length,
				maxLength: room.puts.length
			}),
			later: fc.subarray(room.puts.map(([id]) => id))
		})
		.map(({ moves, later }) => {
			const { walls } = planOf(room).scene.room;
			const puts = room.puts.map(([id, part, wall, x, y], i): Put => {
				const [dx, dy] = moves[i] ?? [0, 0];
				const { outline } = variantOf(part);
				const most = walls[wall].length - outline.x1;
				return [id, part, wall, Math.min(most, Math.max(-outline.x0, x + dx)), part === 'post' ? y : y + dy];
			});
			return { ...room, puts, later };
		})
);

describe('her sheets', () => {
	test('[drawing R21] are none where nothing has a place', () => {
		expect(hersIn(fixturePlan(fixtureCase(), []), 'en')).toEqual([]);
	});

	test.each(NAMES)('[drawing R21] of %s have every thing that is wanted, once, with three boxes to tick', (name) => {
		const plan = planNamed(plans, name);
		for (const language of LANGUAGES) {
			const sheets = hersIn(plan, language);
			const ids = pathsOf(sheets).map(({ id }) => id);
			for (const { id } of plan.wanted) {
				expect(ids.filter((one) => one === `choice/${id}/number/disc`)).toHaveLength(1);
				expect(ids.filter((one) => one.startsWith(`choice/${id}/tick/`))).toHaveLength(3);
			}
			expect(ids.filter((one) => /^choice\/.*\/disc$/.test(one))).toHaveLength(plan.wanted.length);
			const answers = sheets.flatMap(textsOf).filter(({ id }) => id.includes('/answer/'));
			expect(new Set(answers.map(({ text }) => text))).toEqual(new Set(MESSAGES[language].choices.answers));
		}
	});

	test.each(NAMES)('[drawing R21] of %s show every mark on its wall with its number, and the letter for it', (name) => {
		const plan = planNamed(plans, name);
		const sheets = hersIn(plan, 'en');
		const texts = sheets.flatMap(textsOf);
		for (const { accessory, place } of plan.marks) {
			const number = String(plan.wanted.findIndex(({ id }) => id === accessory.id) + 1);
			const on = texts.filter(({ id }) => id === `wall-${place.wall}/${accessory.id}/number/letter`);
			expect(on.map(({ text }) => text)).toEqual([number]);
			const said = paragraphsOf(sheets).get('key/letters') ?? '';
			expect(said).toContain(`${number}\u00a0=\u00a0${lettersOf(plan)[accessory.id] ?? ''}`);
		}
	});

	test('[drawing R21] each picture says in words what it shows, in her language', () => {
		for (const [language, caption] of [
			['en', 'The wall you face'],
			['es', 'La pared de enfrente'],
			['fr', 'Le mur en face de vous']
		] as const) {
			const sheets = hersIn(planNamed(plans, 'transfer'), language);
			for (const d of sheets) {
				expect(d.language).toBe(language);
				const shown = new Set(d.entities.flatMap(({ picture }) => picture ?? []));
				expect(new Set(Object.keys(d.pictures ?? {}))).toEqual(shown);
			}
			const alts = sheets.flatMap(({ pictures = {} }) => Object.values(pictures));
			expect(alts.some((alt) => alt.startsWith(`${caption}: 2 `))).toBe(true);
			for (const alt of alts) expect(alt).not.toMatch(/undefined|\d{3}/);
		}
	});

	test.each(NAMES)('[drawing R21] of %s have no text under 16 pt but the line of the case', (name) => {
		for (const language of LANGUAGES) {
			for (const t of hersIn(planNamed(plans, name), language).flatMap(textsOf)) {
				if (t.id !== 'foot/case')
					expect(Math.min(t.size, ...t.runs.map(({ size }) => size)), t.id).toBeGreaterThanOrEqual(16);
			}
		}
	});

	test.each(NAMES)('[drawing R21] of %s have no text or number on another or beyond the sheet', (name) => {
		for (const language of LANGUAGES)
			for (const sheet of SHEETS)
				for (const d of hersIn(planNamed(plans, name), language, sheet)) expect(faults(d)).toEqual([]);
	});

	test('[drawing R21] nor wherever things are', () => {
		fc.assert(
			fc.property(
				rooms,
				fc.constantFrom(...LANGUAGES),
				fc.constantFrom(...SHEETS),
				fc.constantFrom(CHILD, CLIENT),
				(room, language, sheet, client) => {
					const plan = planOf(room, client);
					const sheets = hersIn(plan, language, sheet);
					for (const d of sheets) expect(faults(d)).toEqual([]);
					const numbers = pathsOf(sheets).filter(({ id }) => /^wall-.*\/number\/disc$/.test(id));
					expect(numbers).toHaveLength(plan.marks.length);
				}
			),
			{ numRuns: 60 }
		);
	}, 120_000);

	test('[drawing R21] a number that is settled, asked about or for later differs by more than colour', () => {
		const [full, open, later] = (['tag', 'tag-open', 'tag-later'] as const).map((layer) => {
			const style: { fill?: string; dash?: readonly number[]; width: number } = LAYERS[layer];
			return { fill: style.fill, dashed: style.dash !== undefined };
		});
		expect(full).toEqual({ fill: 'ink', dashed: false });
		expect(open).toEqual({ fill: 'paper', dashed: true });
		expect(later).toEqual({ fill: 'paper', dashed: false });
		const plan = planOf(TEST_ROOMS.corner);
		const disc = (id: string) => pathsOf(hersIn(plan, 'en')).find((p) => p.id === `choice/${id}/number/disc`)?.layer;
		expect(disc('rail-one')).toBe('tag-later');
		expect(disc('control')).toBe('tag');
		expect(pathsOf(hersIn(planNamed(plans, 'stands-then-tires'), 'en')).some((p) => p.layer === 'tag-open')).toBe(true);
	});

	test('[drawing R21] what is open or later says so, and how she washes until then', () => {
		const corner = paragraphsOf(hersIn(planOf(TEST_ROOMS.corner), 'en'));
		expect(corner.get('choice/rail-one/state')).toBe('This is for later.');
		expect(corner.get('until/says')).toBe('Wash as you do now.');
		const asked = paragraphsOf(hersIn(planNamed(plans, 'stands-then-tires'), 'en'));
		expect([...asked.values()].some((text) => text.includes('we are asking about the wall'))).toBe(true);
		expect(asked.has('until/says')).toBe(false);
	});

	test.each(NAMES)('[drawing R21] of %s have no page that is signed and says nothing else', (name) => {
		for (const language of LANGUAGES)
			for (const sheet of SHEETS) {
				const ids = hersIn(planNamed(plans, name), language, sheet).map((d) => textsOf(d).map(({ id }) => id));
				const signed = ids.filter((page) => page.some((id) => id.startsWith('signing/says')));
				expect(signed).toHaveLength(1);
				expect(signed[0]?.some((id) => id.startsWith('again/says'))).toBe(true);
			}
	});
});
