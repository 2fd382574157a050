import { describe, expect, test } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';
import { wallLength, type WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { Scene } from '#core/measures/scene.ts';
import { reinforcementOf } from '#core/needs/reinforcement.ts';
import { wantedFor } from '#core/needs/wanted.ts';
import { bind, chosenFrom } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import { mm } from '#core/units/length.ts';
import { caseWith, rollIn, sceneOf } from '../rules/baseline.ts';

const measured = (value: number) => ({ value, how: 'measured' as const });
const NEW = { newBuilt: { value: true, how: 'told' } } as const;
const METRIC = { tape: { unit: 'mm', step: 5 } } as const;

/** Half the 80 mm disc of the generic flange, half its 32 mm tube, and the disc of the plate of a seat. Units: mm. */
const FLANGE = 40;
const TUBE = 16;
const PLATE = 50;

const areas = (c: Case, of: string): readonly (Rect & { readonly wall: WallId })[] =>
	reinforcementOf(sceneOf(c)).flatMap((area) => (area.of.includes(of) ? [{ wall: area.wall, ...area.rect }] : []));

/** A room of 1600 by 1000 on a level floor, seat on the left wall, heights from the floor. */
const ontario = (enclosure: object = {}): Case =>
	rollIn({
		enclosure: { ...NEW, width: measured(1600), depth: measured(1000), datum: measured(0), ...enclosure },
		case: { ...METRIC, reference: 'on-obc-2012' }
	});

describe('where a new dwelling is to be solid', () => {
	test('[needs R32] only a new dwelling with a chosen document has such areas', () => {
		const none = [
			caseWith(),
			caseWith({ enclosure: { newBuilt: { value: false, how: 'told' } } }),
			caseWith({ enclosure: NEW, case: { reference: null } }),
			caseWith({ enclosure: { ...NEW, dwelling: false } })
		];
		for (const c of none) expect(reinforcementOf(sceneOf(c))).toEqual([]);
		expect(reinforcementOf(sceneOf(caseWith({ enclosure: NEW })))).not.toEqual([]);
	});

	test('[needs R32] bars of ADA 2010, 609.4: top 33 to 36 in, so with a 32 mm tube and an 80 mm flange 782.2 to 938.4 mm up', () => {
		// 33 in = 838.2, 36 in = 914.4; the axis is half a tube below the top, the disc half a flange past the axis.
		const [low, high] = [838.2 - TUBE - FLANGE, 914.4 - TUBE + FLANGE];
		expect([low, high]).toEqual([782.2, 938.4]);
		const c = caseWith({ enclosure: NEW, case: METRIC });
		for (const [id, wall] of [
			['bar-control', 'right'],
			['bar-back', 'back']
		] as const) {
			const [area, ...more] = areas(c, id);
			expect(more).toEqual([]);
			expect(area?.wall).toBe(wall);
			expect(area?.y0).toBeCloseTo(low, 2);
			expect(area?.y1).toBeCloseTo(high, 2);
			// 608.3.1 prints no corner gap for a transfer compartment: the wall bounds it, 36 in.
			expect(area?.x0).toBeCloseTo(0, 2);
			expect(area?.x1).toBeCloseTo(914.4, 2);
		}
	});

	test('[needs R32] that band holds what was reckoned for any bar of 1 1/4 to 2 in with a 3 in flange, but for what a thicker tube adds below', () => {
		// Derived for a top of 33 to 36 in: axes 32.0 to 35.375 in, so a flange of 3 in reaches from 30.5 to 36.875 in.
		const [area] = areas(caseWith({ enclosure: NEW }), 'bar-back');
		expect((area?.y0 ?? NaN) / 25.4).toBeCloseTo(30.5, 0);
		expect((area?.y1 ?? NaN) / 25.4).toBeCloseTo(36.875, 0);
		expect((area?.y1 ?? NaN) / 25.4).toBeGreaterThan(36.875);
	});

	test('[needs R32] the seat of ADA 2010, 610.3: top 17 to 19 in, at most 1 1/2 in off the back wall and 3 in off the entry', () => {
		const c = caseWith({ enclosure: NEW, case: METRIC });
		const [area, ...more] = areas(c, 'seat');
		expect(more).toEqual([]);
		expect(area?.wall).toBe('left');
		// The plates of the generic seat are 70 below its top.
		expect(area?.y0).toBeCloseTo(431.8 - 70 - PLATE, 2);
		expect(area?.y1).toBeCloseTo(482.6 - 70 + PLATE, 2);
		// Only the seat of 820 fills 36 in so: 94.4 are left over, at most 76.2 of them by the entry and 38.1 by the back wall,
		// so its side is 18.2 to 38.1 off the back wall; its plates are 60 in from its ends.
		expect(914.4 - (area?.x1 ?? NaN)).toBeCloseTo(18.2 + 60 - PLATE, 2);
		expect(area?.x0).toBeCloseTo(914.4 - 38.1 - 820 + 60 - PLATE, 2);
	});

	test('[needs R32] the upright bar of O. Reg. 332/12, 3.8.3.13.(2)(g)(ii): 50 to 80 mm off the entry, its foot 600 to 650 mm up', () => {
		const found = areas(ontario(), 'entry-bar').toSorted((a, b) => a.y0 - b.y0);
		// Two flanges 1000 apart; the left wall, seen from inside, begins at the entry.
		expect(found).toHaveLength(2);
		for (const [i, up] of [0, 1000].entries()) {
			expect(found[i]?.wall).toBe('left');
			expect(found[i]?.x0).toBeCloseTo(50 - FLANGE, 2);
			expect(found[i]?.x1).toBeCloseTo(80 + FLANGE, 2);
			expect(found[i]?.y0).toBeCloseTo(600 + up - FLANGE, 2);
			expect(found[i]?.y1).toBeCloseTo(650 + up + FLANGE, 2);
		}
	});

	test('[needs R32] the L bar of 3.8.3.13.(2)(g)(iii): level part 750 to 870 mm up, upright 400 to 500 mm from the seat wall', () => {
		const found = areas(ontario(), 'bar-back').toSorted((a, b) => a.y0 - b.y0);
		const [level, top] = found;
		expect(found).toHaveLength(2);
		expect(found.every(({ wall }) => wall === 'back')).toBe(true);
		// Away from the seat wall the level part ends 1000 past the upright; toward it there is no room for 1000.
		expect(level).toMatchObject({ x0: 400 - FLANGE, x1: 1500 + FLANGE, y0: 750 - FLANGE, y1: 870 + FLANGE });
		expect(top).toMatchObject({ x0: 400 - FLANGE, x1: 500 + FLANGE, y0: 1500 - FLANGE, y1: 1620 + FLANGE });
	});

	test('[needs R32] what holds the wall today changes nothing', () => {
		const c = ontario();
		const bare = ontario({ walls: { back: {}, left: {}, right: {} } });
		expect(reinforcementOf(sceneOf(bare))).toEqual(reinforcementOf(sceneOf(c)));
	});

	test('[needs R32] in the mirrored room everything lies mirrored', () => {
		const c = ontario();
		const other = mirroredCase(c);
		const room = { width: 1600, depth: 1000 };
		const swap = { left: 'right', right: 'left', back: 'back', front: 'front' } as const;
		const key = ({ wall, x0, y0 }: { wall: string; x0: number; y0: number }) =>
			`${wall} ${y0.toFixed(1)} ${x0.toFixed(1)}`;
		const flat = (one: Case) => reinforcementOf(sceneOf(one)).map(({ wall, rect }) => ({ wall, ...rect }));
		const back = flat(other).map(({ wall, x0, x1, ...rest }) => {
			const length = wallLength(wall, room);
			return { wall: swap[wall], x0: length - x1, x1: length - x0, ...rest };
		});
		expect(back.map(key).toSorted()).toEqual(flat(c).map(key).toSorted());
	});

	test.each(DOCUMENTS.map(({ id }) => id))(
		'[needs R32] %s: no fixing the rows allow by themselves is ever outside, wherever it is tried',
		(reference) => {
			for (const make of [caseWith, rollIn]) {
				const c = make({ enclosure: { ...NEW, fall: measured(0.02) }, case: { ...METRIC, reference } });
				const scene = sceneOf(c);
				for (const mark of allowedMarks(scene)) {
					const kept = reinforcementOf(scene).filter(({ wall }) => wall === mark.place.wall);
					for (const { x, y } of mark.variant.brackets) {
						const [at, up] = [mark.place.x + x, mark.place.y + y];
						const inside = kept.some(({ rect }) => at >= rect.x0 && at <= rect.x1 && up >= rect.y0 && up <= rect.y1);
						expect(inside, `${mark.accessory.id} ${mark.variant.id} at ${String(at)}, ${String(up)}`).toBe(true);
					}
				}
			}
		}
	);
});

/** Marks at every place of a coarse net that no row of the document about one thing alone has outside. */
function allowedMarks(scene: Scene): readonly Mark[] {
	const { c } = scene;
	const counts = chosenFrom(DOCUMENTS, c.reference);
	const packs = DOCUMENTS.map((pack) => ({ ...pack, rows: pack.rows.filter(({ id }) => counts(pack, id)) }));
	const holds = ['seat', 'horizontal-bar', 'vertical-bar', 'fold-down-rail'];
	return wantedFor(DOCUMENTS, c, scene.bodies)
		.filter(({ kind }) => holds.includes(kind))
		.flatMap((accessory) => {
			// What the wall carries today is what the areas are to change.
			const rows = bind(packs, [accessory], c).filter(
				({ row, about }) => about.length === 1 && !row.advice && !row.measure.startsWith('carries')
			);
			return accessory.slots.flatMap(({ wall, variant: id }) => {
				const variant = variantOf(id);
				const { from, to, bottom, top } = scene.room.walls[wall];
				return net(from - variant.outline.x0, to - variant.outline.x1).flatMap((x) =>
					net(bottom - variant.outline.y0, top - variant.outline.y1).flatMap((y): Mark[] => {
						const place = { wall, variant: id, x: mm(x), y: mm(y), turn: 0 } as const;
						const mark: Mark = { accessory, variant, place, stage: 'proposed' };
						return judge(scene, rows, [mark]).some(({ answer }) => answer === 'outside' || answer === 'borderline')
							? []
							: [mark];
					})
				);
			});
		});
}

/** Places from one end to the other, both ends with them. Units: mm. */
function net(from: number, to: number): readonly number[] {
	if (to < from) return [];
	const n = Math.max(1, Math.round((to - from) / 97));
	return Array.from({ length: n + 1 }, (_, i) => from + ((to - from) * i) / n);
}
