import { elevationOf } from '#core/drawing/elevation.ts';
import { overlap, widened, type Drawing, type Text } from '#core/drawing/entity.ts';
import { extent } from '#core/drawing/path.ts';
import { settingOut } from '#core/drawing/setting-out.ts';
import { sheetsOf } from '#core/drawing/sheets.ts';
import { boxOf, printable } from '#core/drawing/type.ts';
import type { Plan } from '#core/plan.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHILD, CLIENT, fixtureCase, fixturePlan, mirrored, WALLS, type Put } from './fixture.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const between = (min: number, max: number) => fc.integer({ min, max });

/** Accessories anywhere on walls of one length, overlapping or not. */
const puts = (length: number): fc.Arbitrary<readonly Put[]> =>
	fc.tuple(
		fc.tuple(
			fc.constant('seat'),
			fc.constantFrom('seat-450', 'seat-600'),
			fc.constant('left' as const),
			between(300, length - 300),
			between(-650, -400)
		),
		fc.tuple(
			fc.constant('control'),
			fc.constant('control-lever'),
			fc.constant('right' as const),
			between(90, length - 90),
			fc.oneof(between(-200, 300), between(-3, 3))
		),
		fc.tuple(
			fc.constant('handset-rest'),
			fc.constant('rest'),
			fc.constant('right' as const),
			between(40, length - 40),
			between(-200, 400)
		),
		fc.tuple(
			fc.constant('bar-control'),
			fc.constantFrom('bar-300', 'bar-450', 'bar-600'),
			fc.constant('right' as const),
			between(40, length - 650),
			between(-300, 100)
		),
		fc.tuple(
			fc.constant('bar-back'),
			fc.constantFrom('bar-300', 'bar-600'),
			fc.constantFrom('back' as const, 'right' as const),
			between(40, length - 650),
			between(-300, 100)
		),
		fc.tuple(
			fc.constant('entry-bar'),
			fc.constantFrom('post-bar-450', 'post-bar-750'),
			fc.constant('right' as const),
			between(length - 300, length - 40),
			between(-250, 200)
		)
	);

interface Drawn {
	readonly plan: Plan;
	readonly how: { readonly sheet: 'A4' | 'Letter'; readonly tape: { readonly unit: 'mm' | 'in' } };
}

const scenes = (client: object): fc.Arbitrary<Drawn> =>
	fc
		.record({
			length: between(760, 1700),
			height: between(1900, 2800),
			datum: fc.constantFrom(0, 900, 1000, 1016, 1250),
			fall: fc.constantFrom(0, 0.0208, 0.05),
			fallsTo: fc.constantFrom('back', 'entry', 'seat', 'control'),
			seatWall: fc.constantFrom('left' as const, 'right' as const),
			sheet: fc.constantFrom('A4' as const, 'Letter' as const),
			unit: fc.constantFrom('mm' as const, 'in' as const),
			surveyed: fc.boolean()
		})
		.chain((s) => puts(s.length).map((all) => ({ ...s, all })))
		.map(({ length, height, datum, fall, fallsTo, seatWall, sheet, unit, surveyed, all }) => {
			const raised = all.map(([id, part, wall, x, y]): Put => [id, part, wall, x, y + 1000 - datum]);
			const walls = seatWall === 'left' ? WALLS : { ...WALLS, left: WALLS.right, right: WALLS.left };
			const enclosure = {
				seatWall,
				width: measured(length),
				depth: measured(length),
				height: measured(height),
				datum: measured(datum),
				fall: measured(fall),
				fallsTo,
				walls: { ...walls, back: { ...walls.back, surveyed } }
			};
			const plan = fixturePlan(
				fixtureCase({ enclosure, client }),
				seatWall === 'left' ? raised : mirrored(raised, length)
			);
			return { plan, how: { sheet, tape: { unit } } };
		});

const texts = (d: Drawing): readonly Text[] => d.entities.filter((e): e is Text => e.kind === 'text');

function clashes(d: Drawing): readonly string[] {
	const sign = d.entities.flatMap((e) =>
		e.kind === 'path' && e.id === 'datum/sign' ? [{ t: { id: e.id, text: '' }, box: extent(e) }] : []
	);
	const written = texts(d)
		.filter((t) => t.text !== '')
		.map((t) => ({ t, box: widened(boxOf(t), -0.05) }));
	const boxes = [...written, ...sign];
	return boxes.flatMap(({ t, box }, i) =>
		boxes.slice(i + 1).flatMap((o) => (overlap(box, o.box) ? [`${t.id} "${t.text}" and ${o.t.id} "${o.t.text}"`] : []))
	);
}

/** Words on the wall and tags that lie on a part which is not their own. */
function onThings(d: Drawing, plan: Plan): readonly string[] {
	const parts = settingOut(plan).flatMap(({ id }) =>
		d.entities.flatMap((e) =>
			e.kind === 'path' && e.id.startsWith(`${id}/`) && (e.layer === 'thing' || e.layer === 'thing-open')
				? [{ id, box: widened(extent(e), -0.1) }]
				: []
		)
	);
	return texts(d)
		.filter((t) => t.id.endsWith('/word') || t.id.endsWith('/tag/letter'))
		.flatMap((t) =>
			parts.flatMap((p) =>
				!t.id.startsWith('legend') && !t.id.startsWith('key') && t.about !== p.id && overlap(boxOf(t), p.box)
					? [`${t.id} on ${p.id}`]
					: []
			)
		);
}

function beyondSheet(d: Drawing): readonly string[] {
	const { width, height } = d.size;
	return texts(d).flatMap((t) => {
		const { x0, y0, x1, y1 } = boxOf(t);
		return x0 < 19.5 || x1 > width - 9.5 || y0 < 9 || y1 > height - 9 ? [`${t.id} "${t.text}"`] : [];
	});
}

function check({ plan, how }: Drawn): void {
	for (const wall of ['left', 'right', 'back'] as const) {
		const d = elevationOf(plan, wall, how);
		expect(clashes(d)).toEqual([]);
		expect(onThings(d, plan)).toEqual([]);
		expect(beyondSheet(d)).toEqual([]);
		const tagged = settingOut(plan).filter((s) => s.mark.place.wall === wall);
		for (const { id } of tagged) expect(texts(d).some((t) => t.id === `${id}/tag/letter`)).toBe(true);
	}
}

describe('labels', () => {
	test('[drawing R4] no text lies on another, on a strange part, or beyond the sheet, over plans of every kind', () => {
		fc.assert(fc.property(scenes(CHILD), check), { numRuns: 200 });
	}, 60_000);

	test('[drawing R4] nor where reach is drawn', () => {
		fc.assert(fc.property(scenes(CLIENT), check), { numRuns: 12 });
	}, 60_000);

	test('[drawing R4] nor on any sheet of the set, in texts of any length', () => {
		const name = fc.string({ minLength: 1, maxLength: 200, unit: 'grapheme' }).filter((s) => s.trim() !== '');
		fc.assert(
			fc.property(scenes(CHILD), name, ({ plan, how }, says) => {
				const probes = {
					reasons: [],
					leans: [{ accessory: 'control', degrees: 3, travel: 30, says }],
					questions: [{ id: 'q', about: ['seat'], asks: says }]
				};
				for (const d of sheetsOf({ ...plan, probes }, how)) {
					expect(clashes(d)).toEqual([]);
					expect(beyondSheet(d)).toEqual([]);
					for (const t of texts(d)) expect(printable(t.text)).toBe(t.text);
				}
			}),
			{ numRuns: 25 }
		);
	}, 60_000);
});
