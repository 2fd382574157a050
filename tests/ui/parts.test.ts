import { describe, expect, test } from 'vitest';
import { VARIANTS, variantOf, type Mark } from '#core/case/accessory.ts';
import type { Enclosure } from '#core/case/record.ts';
import { roomOf, type Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { mm } from '#core/units/length.ts';
import { cornerAt } from '#ui/drawing/corner-at.ts';
import { partShapes } from '#ui/drawing/part-shapes.ts';
import { profileShapes } from '#ui/drawing/profile-shapes.ts';
import { planView, roomShapes } from '#ui/drawing/room-shapes.ts';
import { heightFor, screenView } from '#ui/drawing/screen-view.ts';
import type { Shape } from '#ui/drawing/shape.ts';
import { wallShapes } from '#ui/drawing/wall-shapes.ts';
import { sidesSeen } from '#ui/state/room-words.ts';
import { aCase } from './a-case.ts';

const measured = (value: number) => ({ value: mm(value), how: 'measured' as const });

/** A room 1700 by 800, 1000 from floor to datum, with some of it otherwise. */
function roomWith(some: Partial<Enclosure>): Room {
	const { enclosure } = aCase().opened.case;
	return roomOf({ ...enclosure, width: measured(1700), depth: measured(800), datum: measured(1000), ...some });
}

/** A mark of a part on a wall, its middle 400 along and at a level. */
function markOf(id: string, wall: WallId, y: number, when: Mark['accessory']['when'] = 'now'): Mark {
	const variant = variantOf(id);
	const accessory = {
		id: variant.kind,
		kind: variant.kind,
		purpose: 'steady',
		for: 'client',
		hands: [],
		when,
		slots: [],
		because: '',
		reason: ''
	} as const;
	return { accessory, variant, stage: 'proposed', place: { wall, variant: id, x: mm(400), y: mm(y), turn: 0 } };
}

const viewOf = (room: Room, wall: WallId, marks: readonly Mark[] = []) =>
	screenView({ room, wall, marks, width: 700, height: 700 });

const classesOf = (shapes: readonly Shape[]): readonly string[] => shapes.map(({ attrs }) => String(attrs['class']));
const idsOf = (shapes: readonly Shape[]): readonly string[] => shapes.map(({ id }) => id);

describe('parts', () => {
	const room = roomWith({});

	test('[ui R14] every part has a picture, each element once', () => {
		for (const { id } of VARIANTS) {
			const mark = markOf(id, 'back', -200);
			const ids = idsOf(partShapes({ mark, room, view: viewOf(room, 'back', [mark]) }));
			expect(ids.length).toBeGreaterThan(1);
			expect(new Set(ids).size).toBe(ids.length);
		}
	});

	test('[ui R14] what is wanted only later is dashed, and nothing else is', () => {
		const drawn = (when: Mark['accessory']['when']) => {
			const mark = markOf('l-bar-600-left', 'back', -200, when);
			return classesOf(partShapes({ mark, room, view: viewOf(room, 'back', [mark]) }));
		};
		expect(drawn('later').every((one) => one.endsWith(' later'))).toBe(true);
		expect(drawn('both').some((one) => one.includes('later'))).toBe(false);
	});

	test('[ui R14] an L bar has both its legs, as high and as long as it is', () => {
		for (const [id, corner] of [
			['l-bar-600-left', 400],
			['l-bar-600-right', 1000]
		] as const) {
			const mark = markOf(id, 'back', -200);
			const view = viewOf(room, 'back', [mark]);
			const shapes = partShapes({ mark, room, view });
			const tips = shapes.filter(({ tag }) => tag === 'circle').map(({ attrs }) => [attrs['cx'], attrs['cy']]);
			const at = (x: number, y: number) => view.at(x, y).map((n) => Math.round(n * 100) / 100);
			expect(tips).toContainEqual(at(400, -200));
			expect(tips).toContainEqual(at(1000, -200));
			expect(tips).toContainEqual(at(corner, 400));
		}
	});

	test('[ui R14] a post goes from its floor to the top of what is drawn; seats on legs come down to the floor', () => {
		const post = markOf('post', 'back', -1000);
		const view = viewOf(room, 'back', [post]);
		const tube = partShapes({ mark: post, room, view }).find(({ id }) => id.endsWith('/tube'))?.attrs;
		expect(Number(tube?.['y'])).toBeLessThan(view.top);
		expect(Number(tube?.['y']) + Number(tube?.['height'])).toBeCloseTo(view.y(-1000) - 6, 0);
		const seat = markOf('seat-legs-500', 'back', -540);
		const legs = partShapes({ mark: seat, room, view }).find(({ id }) => id.endsWith('/legs'))?.attrs['d'];
		expect(legs).toContain(`V${String(view.y(-1000))}`);
	});

	test('[ui R14] front legs come down to the floor, in profile at the front alone', () => {
		const seat = markOf('seat-front-legs-450', 'left', -540);
		const view = viewOf(room, 'left', [seat]);
		const legs = partShapes({ mark: seat, room, view }).find(({ id }) => id.endsWith('/legs'))?.attrs['d'];
		expect(legs).toContain(`V${String(view.y(-1000))}`);
		const back = viewOf(room, 'back');
		const foot = profileShapes(seat, room, 'back', back).find((shape) => shape.id === 'profile/strut')?.attrs['d'];
		expect(foot).toMatch(/^M[^ML]*V[^ML]*$/);
	});

	test('[ui R14] an L seat shows its arm at its end, a leg under it, and comes out as far as the arm', () => {
		for (const [id, from] of [
			['l-seat-700-left', 400 - 350],
			['l-seat-700-right', 400 + 350 - 345]
		] as const) {
			const seat = markOf(id, 'left', -540);
			const view = viewOf(room, 'left', [seat]);
			const shapes = partShapes({ mark: seat, room, view });
			const arm = shapes.find((shape) => shape.id === 'seat/arm')?.attrs;
			expect(Number(arm?.['x'])).toBeCloseTo(view.x(from), 1);
			expect(Number(arm?.['width'])).toBeCloseTo(345 * view.scale, 1);
			const leg = shapes.find((shape) => shape.id === 'seat/arm/leg')?.attrs['d'];
			expect(leg).toContain(`V${String(view.y(-1000))}`);
			const back = viewOf(room, 'back');
			const profile = profileShapes(seat, room, 'back', back).find((shape) => shape.id === 'profile/seat')?.attrs;
			expect(Number(profile?.['x']) + Number(profile?.['width'])).toBeCloseTo(back.x(570), 1);
		}
	});

	test('[ui R14] a seat off its wall shows its back rest on its wall, from above and edge-on, as far out as it is', () => {
		// Approved Document M Volume 2, Diagram 23: front edge 650 from the wall; the back rest 250 out is ours.
		for (const wall of ['left', 'right'] as const) {
			const seat = markOf('seat-off-wall-450', wall, -530);
			const view = viewOf(room, wall, [seat]);
			const rest = partShapes({ mark: seat, room, view }).find(({ id }) => id === 'seat/back-rest')?.attrs;
			expect(Number(rest?.['x']) + Number(rest?.['width']) / 2).toBeCloseTo(view.x(400), 1);
			expect(Number(rest?.['y']) + Number(rest?.['height'])).toBeLessThan(view.y(-530));

			const back = viewOf(room, 'back');
			const out = (off: number) => back.x(wall === 'left' ? off : 1700 - off);
			const profile = profileShapes(seat, room, 'back', back);
			const endsOf = (name: string) => {
				const { x, width } = profile.find(({ id }) => id === name)?.attrs ?? {};
				return [Number(x), Number(x) + Number(width)].toSorted((a, b) => (wall === 'left' ? a - b : b - a));
			};
			expect(endsOf('profile/seat')[0]).toBeCloseTo(out(250), 1);
			expect(endsOf('profile/seat')[1]).toBeCloseTo(out(650), 1);
			expect(endsOf('profile/back-rest')[1]).toBeCloseTo(out(250), 1);
			// What holds it begins at the wall; the front legs come down to the floor.
			const strut = String(profile.find(({ id }) => id === 'profile/strut')?.attrs['d']);
			expect(strut).toContain(`M${String(out(0))} `);
			expect(strut).toContain(`M${String(out(620))} `);

			const asked = { room, type: 'roll-in', marks: [seat], width: 700, height: 500 } as const;
			const plan = planView(asked);
			const above = roomShapes(asked, plan);
			const x = (off: number) => plan.x(wall === 'left' ? off : 1700 - off);
			const drawn = above.find(({ id }) => id === 'room/seat')?.attrs;
			const [near, far] = [x(250), x(650)].toSorted((a, b) => a - b);
			expect(Number(drawn?.['x'])).toBeCloseTo(near ?? NaN, 1);
			expect(Number(drawn?.['x']) + Number(drawn?.['width'])).toBeCloseTo(far ?? NaN, 1);
			expect(idsOf(above)).toEqual(
				expect.arrayContaining(['room/seat/back-rest', 'room/seat/held/0', 'room/seat/held/1'])
			);
		}
	});

	test('[ui R14] the rail ahead comes down from its wall as far as it is long, at its hinge', () => {
		const mark = markOf('rail-700', 'back', -320);
		const asked = { room, type: 'roll-in', marks: [mark], width: 700, height: 500 } as const;
		const plan = planView(asked);
		const drawn = roomShapes(asked, plan).find(({ id }) => id.startsWith('room/mark/'))?.attrs;
		expect(Number(drawn?.['height'])).toBeCloseTo(700 * plan.scale, 1);
		expect(Number(drawn?.['x']) + Number(drawn?.['width']) / 2).toBeCloseTo(plan.x(400), 1);
	});

	test('[ui R14] a seat is seen in profile from the sides beside its wall only; a board across the bath as far as it is', () => {
		const seat = markOf('seat-400', 'left', -540);
		const seen = (mark: Mark, wall: WallId) => profileShapes(mark, room, wall, viewOf(room, wall));
		expect(seen(seat, 'left')).toEqual([]);
		expect(seen(seat, 'right')).toEqual([]);
		expect(seen(seat, 'back').length).toBeGreaterThan(0);
		const board = seen(markOf('bath-board', 'back', -440), 'left').find(({ id }) => id === 'profile/seat');
		expect(Number(board?.attrs['width'])).toBeCloseTo(800 * viewOf(room, 'left').scale, 1);
	});
});

describe('sides', () => {
	const walls = aCase().opened.case.enclosure.walls;
	const alternate = roomWith({
		type: 'alternate-roll-in',
		frontWall: { side: 'left', length: measured(700) },
		walls: { ...walls, front: { ...walls.front, stands: true } }
	});
	const corner = roomWith({ type: 'corner', walls: { ...walls, left: { ...walls.left, stands: false } } });

	test('[ui R15] a front wall is drawn from where it begins to where it ends, with the entry beside it', () => {
		const view = viewOf(alternate, 'front');
		const shapes = wallShapes({ room: alternate, type: 'alternate-roll-in', wall: 'front', view });
		const edge = shapes.find(({ id }) => id === 'wall/left')?.attrs['d'];
		// Seen from inside, a wall on the left of who looks in is on the right.
		expect(edge).toContain(`L${String(Math.round(view.x(1000) * 100) / 100)} `);
		expect(idsOf(shapes)).toContain('wall/entry-words');
	});

	test('[ui R15] an open side has no cut but its floor, and is looked at only where something stands on it', () => {
		const shapes = wallShapes({ room: corner, type: 'corner', wall: 'left', view: viewOf(corner, 'left') });
		expect(idsOf(shapes.filter(({ attrs }) => attrs['class'] === 'cut'))).toEqual(['wall/floor']);
		expect(sidesSeen(corner, [])).toEqual(['back', 'right']);
		expect(sidesSeen(corner, ['left'])).toEqual(['back', 'left', 'right']);
	});

	test('[ui R15] a corner is hatched where another wall meets it', () => {
		expect(cornerAt(corner, 'back', 'left')).toBe(false);
		expect(cornerAt(corner, 'back', 'right')).toBe(true);
		expect(cornerAt(alternate, 'left', 'left')).toBe(true);
		expect(cornerAt(alternate, 'right', 'right')).toBe(false);
	});

	test('[ui R15] a bath has its rim on every wall, at its height', () => {
		const bath = roomWith({ type: 'over-bath', threshold: measured(560) });
		for (const wall of ['back', 'left', 'right'] as const) {
			const view = viewOf(bath, wall);
			const rim = wallShapes({ room: bath, type: 'over-bath', wall, view }).find(({ id }) => id === 'wall/rim');
			expect(rim?.attrs['d']).toContain(` ${String(Math.round(view.y(-440) * 100) / 100)}`);
		}
	});

	test('[ui R11] from above: walls cut, open sides dashed, entry and rim with their words, everything inside', () => {
		const [width, height] = [360, 260];
		const marks = [markOf('seat-400', 'right', -540), markOf('post', 'left', -1000, 'later')];
		const shapes = roomShapes({ room: corner, type: 'corner', marks, wall: 'right', unit: 'mm', width, height });
		const kind = (id: string) => shapes.find((one) => one.id === id)?.attrs['class'];
		expect(kind('room/back')).toBe('cut');
		expect(kind('room/left')).toBe('hidden');
		expect(kind('room/mark/vertical-bar')).toContain('later');
		for (const id of ['room/entry-words', 'room/seat', 'room/looked']) expect(idsOf(shapes)).toContain(id);
		for (const { attrs } of shapes.filter(({ tag }) => tag === 'rect' || tag === 'text')) {
			expect(Number(attrs['x'])).toBeGreaterThanOrEqual(0);
			expect(Number(attrs['x']) + Number(attrs['width'] ?? 0)).toBeLessThanOrEqual(width);
			expect(Number(attrs['y'])).toBeGreaterThan(0);
			expect(Number(attrs['y']) + Number(attrs['height'] ?? 0)).toBeLessThanOrEqual(height);
		}
	});

	test('[ui R16] a wall drawn in the height it takes is as large as in any greater one', () => {
		const framed = { room: corner, wall: 'back', marks: [], width: 390 } as const;
		const height = heightFor(framed);
		expect(screenView({ ...framed, height }).scale).toBeCloseTo(screenView({ ...framed, height: 2000 }).scale, 9);
		expect(screenView({ ...framed, height: height - 40 }).scale).toBeLessThan(screenView({ ...framed, height }).scale);
	});
});
