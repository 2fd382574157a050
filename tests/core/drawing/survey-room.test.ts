import { describe, expect, test } from 'vitest';
import type { Entity, Path, Text } from '#core/drawing/entity.ts';
import { extent } from '#core/drawing/path.ts';
import { readOffId } from '#core/case/read-off.ts';
import { settingOut } from '#core/drawing/setting-out.ts';
import { packOf } from '#core/drawing/pack.ts';
import { reportOf } from '#core/report.ts';
import { mm } from '#core/units/length.ts';
import { EXAMPLE, fixtureCase, fixturePlan, WALLS, type Put } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const told = <T>(value: T) => ({ value, how: 'told' as const });
const drawn = (enclosure: object = {}, puts?: readonly Put[]): readonly Entity[] =>
	packOf(fixturePlan(fixtureCase({ enclosure }), puts), A4).flatMap((sheet) => sheet.entities);
const said = (entities: readonly Entity[]): string =>
	entities
		.filter((e): e is Text => e.kind === 'text')
		.map((t) => t.text)
		.join(' ');
const called = (entities: readonly Entity[], id: string): Path | undefined =>
	entities.find((e): e is Path => e.kind === 'path' && e.id === id);
const right = (more: object) => ({ walls: { ...WALLS, right: { ...WALLS.right, ...more } } });

describe('what the survey tells of the room, on paper', () => {
	test('what closes the entry is drawn, sketched where it is only told, and said', () => {
		const closed = (closing: object) => drawn({ closing: { how: 'measured', ...closing } });
		expect(called(drawn(), 'key/open/front/0')?.layer).toBe('plan-entry');
		expect(called(closed({ kind: 'curtain' }), 'key/curtain')?.layer).toBe('plan-thing');
		expect(called(closed({ kind: 'curtain', how: 'told' }), 'key/curtain')?.layer).toBe('plan-told');
		expect(said(closed({ kind: 'curtain', how: 'told' }))).toContain('A curtain closes the entry, as told.');
		expect(called(closed({ kind: 'screen' }), 'key/screen')?.layer).toBe('plan-screen');
		expect(called(closed({ kind: 'slides' }), 'key/leaf/1')).toBeDefined();
		expect(closed({ kind: 'open' })).toEqual(drawn());
	});

	test.each([
		['left', 'door-in', -1],
		['left', 'door-out', 1],
		['right', 'door-in', -1],
		['right', 'door-out', 1]
	] as const)('a leaf hung on the %s, %s, goes its way from its hinge', (hinge, kind, way) => {
		const all = drawn({ closing: { kind, hinge, how: 'measured' } });
		const [from, to] = (called(all, 'key/leaf')?.d ?? []).map((s) => s.to);
		const side = called(all, `key/side/${hinge}`);
		expect(from?.[0]).toBeCloseTo(side ? extent(side).x0 : NaN, 6);
		expect(Math.sign((to?.[1] ?? 0) - (from?.[1] ?? 0))).toBe(way);
	});

	test('a door whose hinge is not known is drawn closed, and a word says so', () => {
		const all = drawn({ closing: { kind: 'door-out', how: 'measured' } });
		const leaf = called(all, 'key/leaf');
		const { y0, y1 } = leaf ? extent(leaf) : { y0: 0, y1: 9 };
		expect(y1 - y0).toBeLessThan(1);
		expect(called(all, 'key/swing')).toBeUndefined();
		expect(said(all)).toContain('How the door is hung is not known.');
	});

	test('the drain lies where it was measured', () => {
		const all = drawn({ drain: { x: 457, y: 300, wide: 200, deep: 100, how: 'told' } });
		const [drain, back] = [called(all, 'key/drain'), called(all, 'key/side/back')];
		if (!drain || !back) throw new Error('no drain');
		expect(drain.layer).toBe('plan-told');
		const [on, wall] = [extent(drain), extent(back)];
		expect((on.x0 + on.x1) / 2).toBeCloseTo((wall.x0 + wall.x1) / 2, 6);
		expect(((on.y0 + on.y1) / 2 - wall.y0) / (wall.x1 - wall.x0)).toBeCloseTo(300 / 914, 6);
		expect(said(all)).toContain('its middle 457 from the left, 300 from the back, as told');
	});

	test('sizes are told as measured low, in the middle and high, only where there are several', () => {
		expect(said(drawn({ widthLow: measured(910), widthHigh: measured(920) }))).toContain('910 low, 914, 920 high');
		expect(said(drawn())).not.toContain('The least counts');
	});

	test('a post is as long as from its floor to the ceiling, and who holds it is said', () => {
		const puts: readonly Put[] = [['post', 'post', 'right', 700, -1000]];
		const level = { fall: measured(0) };
		const all = drawn({ ...level, ceiling: measured(2400), ceilingHolds: told(true) }, puts);
		expect(said(all)).toContain('2400 from floor to ceiling');
		expect(said(all)).toContain('ceiling holds it as told');
		expect(said(drawn(level, puts))).toContain('the floor and ceiling must hold it: ask');
	});

	test('off square the wall is measured from a corner that is named', () => {
		const off = { diagonals: { fromLeft: measured(1300), fromRight: measured(1285) } };
		expect(said(drawn(off))).toContain('from its corner with the back wall');
		expect(said(drawn())).not.toContain('off square');
	});
});

describe('what the survey tells of the face of a wall, on paper', () => {
	const tiles = { across: 200, up: 200, joint: 3, x: 100, y: 0, how: 'measured' };
	const tiled = (change: object) =>
		drawn(right({ facing: { kind: 'tile', thickness: 9, tiles: { ...tiles, ...change } } }));

	test('joints of tiles are drawn where they are, behind what is hidden, when seen and not too near', () => {
		const lines = called(tiled({}), 'tiles');
		expect(lines?.d.filter((s) => s.by === 'move').length).toBeGreaterThan(8);
		expect(called(tiled({ how: 'told' }), 'tiles')).toBeUndefined();
		const small = right({ facing: { kind: 'tile', thickness: 9, tiles: { ...tiles, across: 20, up: 20, joint: 2 } } });
		// 2.2 mm apart at 1:10, 1.1 at 1:20.
		expect(called(drawn(small), 'tiles')?.layer).toBe('tile');
		expect(called(drawn({ ...small, depth: measured(1700) }), 'tiles')).toBeUndefined();
	});

	test('where cables may run from a switch is a band with its words', () => {
		const point = { kind: 'electric-point', x0: 300, x1: 380, y0: 500, y1: 580, how: 'measured' };
		const all = drawn(right({ keepOuts: { point } }));
		expect(called(all, 'cables/0')?.layer).toBe('cables');
		expect(said(all)).toContain('cables may run here');
		expect(said(drawn())).not.toContain('cables may run here');
	});

	test('[drawing R10] of a real part the flange is told and its holes are drawn where they are; a generic one has none', () => {
		const flange = { across: mm(90), circle: mm(64), holes: 4 as const, hole: mm(6.5) };
		const id = readOffId('horizontal-bar', {
			name: 'a bar',
			centres: mm(610),
			diameter: mm(35),
			standOff: mm(60),
			flange
		});
		const puts = EXAMPLE.map((put): Put => (put[0] === 'bar-back' ? ['bar-back', id, 'back', 150, -150] : put));
		const plan = fixturePlan(fixtureCase(), puts);
		const all = packOf(plan, A4).flatMap((sheet) => sheet.entities);
		expect(said(all)).toContain('flange 90 across, 4 holes of 6.5 on a circle of 64');
		const holes = all.filter(({ id: of }) => /^bar-\w+\/flange\/\d\/hole/.test(of));
		expect(new Set(holes.map(({ id: of }) => of)).size).toBe(8);
		expect(holes.every(({ id: of }) => of.startsWith('bar-back/'))).toBe(true);
		const told = reportOf(plan).accessories.find((one) => one.id === 'bar-back')?.fixings ?? [];
		const set = settingOut(plan).find((one) => one.id === 'bar-back')?.fixings ?? [];
		for (const [i, { holes: at = [] }] of set.entries()) {
			expect(at.map(([x, y]) => [Math.round(x * 10) / 10, Math.round(y * 10) / 10])).toEqual(told[i]?.holes);
		}
		expect(said(drawn())).not.toContain('flange 90');
	});

	test('facing with its hollow, membrane and contrast are told; not known is nothing', () => {
		const all = said(
			drawn(
				right({
					facing: { kind: 'panel', thickness: 6, gap: 25, reflectance: 60 },
					membrane: told(true)
				})
			)
		);
		expect(all).toContain('Face: panel 6 thick, 25 hollow behind it.');
		expect(all.replace(/\s+/g, ' ')).toContain('pack the 25 hollow behind the panel solid at each bracket');
		expect(all).toContain('seal inside each hole and round each bracket');
		expect(all).toContain('30 or less, or 90 or more, in light reflectance');
		expect(said(drawn(right({ membrane: measured(false) })))).toBe(said(drawn()));
	});
});
