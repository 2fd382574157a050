import { variantOf } from '#core/case/accessory.ts';
import { overlap, widened, type Drawing, type Path } from '#core/drawing/entity.ts';
import { MESSAGES } from '#core/drawing/hers/messages.ts';
import { weightOf } from '#core/drawing/hers/told.ts';
import { LAYERS } from '#core/drawing/layers.ts';
import { extent } from '#core/drawing/path.ts';
import { lettersOf } from '#core/drawing/setting-out.ts';
import { boxOf } from '#core/drawing/type.ts';
import type { Plan } from '#core/plan.ts';
import { newtons, pounds } from '#core/units/force.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHILD, CLIENT, fixtureCase, fixturePlan, type Put } from './fixture.ts';
import { allPlans, hersIn, LANGUAGES, paragraphsOf, textsOf } from './hers-plans.ts';
import { planOf, TEST_ROOMS, type TestRoom } from './rooms.ts';

const plans = allPlans();
const NAMES = [...plans.keys()];
const SHEETS = ['A4', 'Letter'] as const;

const planNamed = (name: string): Plan => {
	const plan = plans.get(name);
	if (!plan) throw new Error(name);
	return plan;
};

const paths = (sheets: readonly Drawing[]): readonly Path[] =>
	sheets.flatMap(({ entities }) => entities.filter((e): e is Path => e.kind === 'path'));
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
		const plan = planNamed(name);
		for (const language of LANGUAGES) {
			const sheets = hersIn(plan, language);
			const ids = paths(sheets).map(({ id }) => id);
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
		const plan = planNamed(name);
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
			const sheets = hersIn(planNamed('transfer'), language);
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
			for (const t of hersIn(planNamed(name), language).flatMap(textsOf)) {
				if (t.id !== 'foot/case')
					expect(Math.min(t.size, ...t.runs.map(({ size }) => size)), t.id).toBeGreaterThanOrEqual(16);
			}
		}
	});

	test.each(NAMES)('[drawing R21] of %s have no text or number on another or beyond the sheet', (name) => {
		for (const language of LANGUAGES)
			for (const sheet of SHEETS)
				for (const d of hersIn(planNamed(name), language, sheet)) expect(faults(d)).toEqual([]);
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
					const numbers = paths(sheets).filter(({ id }) => /^wall-.*\/number\/disc$/.test(id));
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
		const disc = (id: string) => paths(hersIn(plan, 'en')).find((p) => p.id === `choice/${id}/number/disc`)?.layer;
		expect(disc('rail-one')).toBe('tag-later');
		expect(disc('control')).toBe('tag');
		expect(paths(hersIn(planNamed('stands-then-tires'), 'en')).some((p) => p.layer === 'tag-open')).toBe(true);
	});

	test('[drawing R21] what is open or later says so, and how she washes until then', () => {
		const corner = paragraphsOf(hersIn(planOf(TEST_ROOMS.corner), 'en'));
		expect(corner.get('choice/rail-one/how')).toContain('This is for later.');
		expect(corner.get('until/says')).toBe('Wash as you do now.');
		const asked = paragraphsOf(hersIn(planNamed('stands-then-tires'), 'en'));
		expect([...asked.values()].some((text) => text.includes('we are asking about the wall'))).toBe(true);
		expect(asked.has('until/says')).toBe(false);
	});
});

describe('what her sheets tell', () => {
	test('[drawing R23] the weight is the force of the plan, each unit rounded down', () => {
		// 250 lbf is 1112.06 N (NIST SP 811), so 1112 N is a hair less.
		expect(weightOf(newtons(1112))).toEqual({ kg: 113, lb: 249, stone: 17, over: 11 });
		expect(weightOf(pounds(250))).toEqual({ kg: 113, lb: 250, stone: 17, over: 12 });
		expect(weightOf(newtons(1500))).toEqual({ kg: 152, lb: 337, stone: 24, over: 1 });
		// A full weight comes back as it was.
		for (let kg = 20; kg <= 400; kg++) expect(weightOf(newtons(kg * 9.80665)).kg).toBe(kg);
		const en = paragraphsOf(hersIn(planNamed('transfer'), 'en'));
		expect(en.get('load/says')).toContain('up to 113 kg. That is 249 lb, or 17 st 11 lb.');
		expect(paragraphsOf(hersIn(planNamed('transfer'), 'es')).get('load/says')).not.toMatch(/lb|st\b/);
	});

	test('[drawing R23] every part that holds a person has a blank for what it takes', () => {
		const ids = paths(hersIn(planNamed('transfer'), 'en')).map(({ id }) => id);
		const blanks = ids.filter((id) => /^rating\/.*\/line$/.test(id)).map((id) => id.split('/')[1]);
		expect(blanks).toEqual(['seat', 'bar-control', 'bar-back', 'entry-bar']);
	});

	test.each([
		['water-by-her-son', 'Only your helper turns the water.'],
		['wheeled-in', 'Put the brakes of the chair on before the water runs.'],
		['stands-then-tires', 'Sit down before you are tired. Sit right back before you wash.'],
		['stands-for-now', 'One hand holds before the other hand lets go.'],
		['first-flat', 'Sit right back before you wash.']
	])('[drawing R23] the one thing for %s: %s', (name, says) => {
		expect(paragraphsOf(hersIn(planNamed(name), 'en')).get('mind/says')).toBe(says);
	});

	test('[drawing R23] a lean to the tap is told with the bar to hold', () => {
		const plan = planNamed('turns-left');
		const lean = { accessory: 'control', degrees: 5, travel: 39, says: '' };
		const says = (leans: Plan['probes']['leans']) =>
			paragraphsOf(hersIn({ ...plan, probes: { ...plan.probes, leans } }, 'en')).get('mind/says');
		const bar = plan.wanted.findIndex(({ id }) => id === 'bar-control') + 1;
		expect(says([lean])).toContain(`Hold bar ${String(bar)} when you lean to the tap.`);
		expect(says([])).not.toContain('lean');
	});

	test('[drawing R23] who does not feel heat is never told to test the water with the hand', () => {
		const test = (change: object) => {
			const plan = fixturePlan(fixtureCase({ client: { ...CLIENT, ...change } }));
			return paragraphsOf(hersIn(plan, 'en')).get('choice/control/how');
		};
		expect(test({})).toContain('with your hand');
		expect(test({ feelsHeat: { value: false, how: 'observed' } })).toContain('with a thermometer');
		const arms = { ...CLIENT.arms, left: { ...CLIENT.arms.left, feels: { value: false, how: 'observed' } } };
		expect(test({ arms })).toContain('with your right hand');
		expect(test({ runsWater: { value: 'helper', how: 'told' } })).toBe('Your helper turns it and tests the water.');
	});

	test('[drawing R23] a bar is named as she finds it: seat on the left or on the right, or as she comes in', () => {
		const name = (seatWall: string, wall: 'back' | 'right' | 'left') => {
			const seatOn = seatWall === 'left' ? 'left' : 'right';
			const puts: Put[] = [
				['seat', 'seat-450', seatOn, 470, -560],
				['bar-back', 'bar-450', wall, 300, -150]
			];
			const plan = fixturePlan(fixtureCase({ enclosure: { seatWall } }), puts);
			return paragraphsOf(hersIn(plan, 'en')).get('choice/bar-back/name');
		};
		expect(name('left', 'back')).toBe('Bar on your left');
		expect(name('right', 'back')).toBe('Bar on your right');
		expect(name('left', 'right')).toBe('Bar in front of you');
		expect(name('right', 'right')).toBe('Bar behind you');
		const standing = fixturePlan(fixtureCase(), [['bar-back', 'bar-450', 'back', 300, -150]]);
		expect(paragraphsOf(hersIn(standing, 'en')).get('choice/bar-back/name')).toBe('Bar on the wall you face');
	});

	test('[drawing R23] the owner of the walls signs where one is to agree', () => {
		const sheets = (enclosure: object) => paragraphsOf(hersIn(fixturePlan(fixtureCase({ enclosure })), 'en'));
		expect(sheets({}).has('signing/owner')).toBe(false);
		expect(sheets({ tenure: { value: 'rented', how: 'told' } }).get('signing/owner')).toContain('in writing');
		const refused = { tenure: { value: 'rented', how: 'told' }, permission: { value: false, how: 'told' } };
		expect(sheets(refused).get('signing/owner')).toContain('has not agreed');
	});

	test('[drawing R23] it is looked at again every 6 months where a condition worsens, else every 12, without saying why', () => {
		const again = (prognosis: string) => {
			const client = { ...CLIENT, prognosis: { value: prognosis, how: 'told' } };
			return paragraphsOf(hersIn(fixturePlan(fixtureCase({ client })), 'en')).get('again/says');
		};
		expect(again('worsening')).toContain('every 6 months');
		expect(again('stable')).toContain('every 12 months');
		expect(again('worsening')?.replace('6 months', '12 months')).toBe(again('stable'));
	});
});
