import { describe, expect, test } from 'vitest';
import { cableStrips, keepOutsOf } from '#core/enclosure/keep-out.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { contrastOf, offSquare, packing } from '#core/enclosure/setting.ts';
import { studsBehind } from '#core/structure/member.ts';
import { steelPullOut } from '#core/structure/screw.ts';
import { contradictions } from '#core/case/contradictions.ts';
import type { Case } from '#core/case/record.ts';
import { mm } from '#core/units/length.ts';
import { blankCase } from '#ui/state/blank.ts';

const measured = (value: number) => ({ value: mm(value), how: 'measured' as const });
const base = blankCase('setting', 'mm');
const withRoom = (more: Partial<Case['enclosure']>): Case => ({ ...base, enclosure: { ...base.enclosure, ...more } });
const skewed = (w: number, d: number, off: number) => ({
	width: measured(w),
	depth: measured(d),
	diagonals: { fromLeft: measured(Math.hypot(w + off, d)), fromRight: measured(Math.hypot(w - off, d)) }
});

describe('setting out', () => {
	test('diagonals give how far the sides run off square, toward the right when the left one is longer', () => {
		for (const off of [-40, -6, 0, 12, 33]) {
			const { enclosure } = withRoom(skewed(1200, 900, off));
			// The sheared rectangle, by Pythagoras.
			expect(offSquare(enclosure)).toBeCloseTo(off, 1);
			expect(roomOf(enclosure).unknowns.some((u) => u.includes('off square'))).toBe(Math.abs(off) > 5);
		}
	});

	test('diagonals that cannot close are named', () => {
		const { enclosure } = withRoom(skewed(1200, 900, 12));
		expect(contradictions(withRoom(enclosure))).toEqual([]);
		const bad = withRoom({ ...enclosure, diagonals: { fromLeft: measured(1900), fromRight: measured(1500) } });
		expect(contradictions(bad).map(({ path }) => path)).toEqual(['enclosure.diagonals']);
	});

	test('the lower bracket of an upright bar is packed by what the wall comes into the room between them', () => {
		const wall = { ...base.enclosure.walls.back, plumb: { over: mm(1200), out: mm(12), how: 'measured' as const } };
		expect([900, 1500].map((y) => packing(wall, y, [900, 1500]))).toEqual([6, 0]);
		const away = { ...wall, plumb: { ...wall.plumb, out: mm(-12) } };
		expect([900, 1500].map((y) => packing(away, y, [900, 1500]))).toEqual([0, 6]);
		expect(packing(base.enclosure.walls.back, 900, [900, 1500])).toBe(0);
	});

	test('sizes that cannot be of one room, and a drain beyond its floor, are named', () => {
		const at = (more: Partial<Case['enclosure']>) => contradictions(withRoom(more)).map(({ path }) => path);
		const { width } = base.enclosure;
		expect(at({ widthLow: measured(width.value - 90) })).toEqual([]);
		expect(at({ widthLow: measured(width.value - 60), widthHigh: measured(width.value + 60) })).toEqual([
			'enclosure.width'
		]);
		const drain = { x: mm(100), y: mm(100), wide: mm(100), deep: mm(100), how: 'measured' as const };
		expect(at({ drain })).toEqual([]);
		expect(at({ drain: { ...drain, y: mm(2900) } })).toEqual(['enclosure.drain']);
	});

	// 30 points: building guidance of the UK, from memory.
	test.each([
		[90, { atMost: 60 }],
		[50, { atMost: 20, atLeast: 80 }],
		[10, { atLeast: 40 }]
	])('[enclosure R9] beside a wall of %s a bar is seen at %o', (reflectance, seen) => {
		const facing = { kind: 'tile' as const, thickness: mm(10), reflectance };
		expect(contrastOf({ ...base.enclosure.walls.back, facing })).toEqual(seen);
	});

	test('floor still to come lifts the floor toward the datum line', () => {
		const e = withRoom({ datum: measured(1000), floorToCome: measured(20) }).enclosure;
		expect(roomOf(e).bathroomFloor).toBe(-980);
	});
});

describe('what is behind and on a wall', () => {
	test('studs are counted on both ways from a known one, not where one was found, and are never sure', () => {
		const room = roomOf(base.enclosure);
		const wall = {
			...base.enclosure.walls.back,
			rhythm: { from: mm(406), every: mm(406), width: mm(38) },
			studs: { one: { x: mm(400), width: mm(38), how: 'measured' as const } }
		};
		const found = studsBehind(wall, room.walls.back).flatMap(([id, stud]) => (id in wall.studs ? [] : [stud]));
		expect(found.map(({ x }) => x)).toEqual([0, 812]);
		expect(found.every(({ how }) => how === 'assumed')).toBe(true);
	});

	test('what stays is in the way of bodies, what goes leaves its holes; what is grabbed is asked about until tested', () => {
		const rail = { what: 'towel-rail', x0: mm(100), x1: mm(500), y0: mm(0), y1: mm(60), how: 'measured' } as const;
		const has = (more: { fate: 'keep' | 'remove'; grabbed: boolean; tested: boolean }) => {
			const back = { ...base.enclosure.walls.back, existing: { rail: { ...rail, ...more } } };
			return withRoom({ walls: { ...base.enclosure.walls, back } }).enclosure;
		};
		const stays = has({ fate: 'keep', grabbed: true, tested: false });
		expect(keepOutsOf(stays.walls.back).map(({ stops }) => stops)).toEqual(['holes and bodies']);
		expect(keepOutsOf(has({ fate: 'remove', grabbed: true, tested: false }).walls.back)[0]?.stops).toBe('holes');
		const asked = (e: Case['enclosure']) => roomOf(e).unknowns.filter((u) => u.includes('towel rail')).length;
		expect(asked(stays)).toBe(1);
		expect(asked(has({ fate: 'keep', grabbed: true, tested: true }))).toBe(0);
		expect(asked(has({ fate: 'remove', grabbed: true, tested: false }))).toBe(0);
	});

	// Source: BS 7671 522.6.202, straight up, down and along from what is seen; 25 mm each side is ours.
	test('[enclosure R8] cables may run straight from a switch, which itself is in the way', () => {
		const point = {
			kind: 'electric-point',
			x0: mm(400),
			x1: mm(480),
			y0: mm(100),
			y1: mm(180),
			how: 'observed'
		} as const;
		const wall = { ...base.enclosure.walls.back, keepOuts: { point } };
		expect(cableStrips(wall, { from: 0, to: 1200, bottom: -1000, top: 1100 })).toEqual([
			{ x0: 375, x1: 505, y0: -1000, y1: 1100 },
			{ x0: 0, x1: 1200, y0: 75, y1: 205 }
		]);
		expect(keepOutsOf(wall).map(({ rect, stops }) => [rect.x0, stops])).toEqual([[400, 'holes and bodies']]);
	});

	// Source: derived from AISI S100 with 45 ksi and omega 3: #12 in 18, 27, 33, 43 and 54 mil, lbf.
	test.each([
		[18, 52],
		[27, 78],
		[33, 95],
		[43, 124],
		[54, 156]
	])('a screw #12 in %i mil steel takes %i lbf', (mil, lbf) => {
		expect(Math.abs(steelPullOut(mil, 5.4864) / 4.4482216 - lbf)).toBeLessThan(1);
	});
});
