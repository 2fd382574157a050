import { planCase } from '#core/plan.ts';
import { reportOf } from '#core/report.ts';
import { elevationOf } from '#core/drawing/elevation.ts';
import type { Drawing, Entity, Path, Text } from '#core/drawing/entity.ts';
import { extent } from '#core/drawing/path.ts';
import { cornerOf, lettersOf, wallsUsed } from '#core/drawing/setting-out.ts';
import { boxOf } from '#core/drawing/type.ts';
import { parseLength } from '#core/units/parse.ts';
import { describe, expect, test } from 'vitest';
import { CHILD, EXAMPLE, fixtureCase, fixturePlan, mirrored, WALLS } from './fixture.ts';
import { planOf, TEST_ROOMS } from './rooms.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const LETTER = { reader: 'therapist', sheet: 'Letter', tape: { unit: 'in' } } as const;

const isText = (e: Entity): e is Text => e.kind === 'text';
const texts = (d: Drawing): readonly Text[] => d.entities.filter(isText);
const called = (d: Drawing, id: string): Entity | undefined => d.entities.find((e) => e.id === id);
const words = (d: Drawing): string =>
	texts(d)
		.map((t) => t.text)
		.join(' | ');

function path(d: Drawing, id: string): Path {
	const found = called(d, id);
	if (found?.kind !== 'path') throw new Error(`no path ${id}`);
	return found;
}

function middle(d: Drawing, id: string): readonly [number, number] {
	const { x0, y0, x1, y1 } = extent(path(d, id));
	return [(x0 + x1) / 2, (y0 + y1) / 2];
}

/** A printed figure read back by the units' own reader. */
function read(text: string, unit: 'mm' | 'in'): number {
	const parsed = parseLength(text.replace(/[\u2212+()]/g, ''), unit);
	if (parsed.kind !== 'length') throw new Error(`not a figure: ${text}`);
	return text.startsWith('\u2212') ? -parsed.value : parsed.value;
}

const given = (seatWall: 'left' | 'right') => {
	const puts = seatWall === 'left' ? EXAMPLE : mirrored(EXAMPLE, 914);
	const places = Object.fromEntries(
		puts.map(([id, variant, wall, x, y]) => [id, { wall, variant, x, y, stage: 'pinned' }])
	);
	return planCase(fixtureCase({ enclosure: { seatWall }, more: { places } }));
};

describe('numbers on paper', () => {
	test.each([
		['left', A4, 0.5],
		['right', A4, 0.5],
		['left', LETTER, 25.4 / 32],
		['right', LETTER, 25.4 / 32]
	] as const)('[drawing R1] seat %s: every figure is the plan\u2019s, and its tick stands at it', (hand, how, off) => {
		const plan = given(hand);
		const report = reportOf(plan);
		expect(report.accessories.length).toBeGreaterThanOrEqual(5);
		const { room } = plan.scene;
		for (const wall of wallsUsed(plan)) {
			const d = elevationOf(plan, wall, how);
			const scale = how.tape.unit === 'mm' ? 10 : 12;
			const [origin] = middle(d, 'running/origin/ring');
			const [, datum] = middle(d, 'ladder/datum/ring');
			for (const a of report.accessories.filter((one) => one.wall === wall)) {
				const bar = a.kind.endsWith('bar');
				const points = bar ? a.fixings : [{ x: a.x, y: a.y }];
				for (const { x, y } of points) {
					const { from, side } = cornerOf(room, wall);
					const along = texts(d).find(
						(t) => /^running\/[^/]+$/.test(t.id) && Math.abs(read(t.text, how.tape.unit) - from(x)) <= off
					);
					expect(along?.text).toBeDefined();
					const [tick] = middle(d, `${along?.id ?? ''}/tick`);
					expect((side === 'left' ? 1 : -1) * (tick - origin) * scale).toBeCloseTo(from(x), 6);
					const level = texts(d).find(
						(t) => /^ladder\/[^/]+$/.test(t.id) && Math.abs(read(t.text, how.tape.unit) - y) <= off
					);
					expect(level?.text).toBeDefined();
					const [, rung] = middle(d, `${level?.id ?? ''}/tick`);
					expect((datum - rung) * scale).toBeCloseTo(y, 6);
				}
				const above = texts(d)
					.filter((t) => /^ladder\/.*\/above\/\d$/.test(t.id))
					.map((t) => read(t.text, how.tape.unit));
				expect(above.some((n) => Math.abs(n - a.aboveFloor) <= off)).toBe(true);
			}
		}
	});

	test('[drawing R1] the schedule says the same figures as the dimensions', () => {
		const d = elevationOf(fixturePlan(fixtureCase()), 'right', A4);
		expect(called(d, 'schedule/bar-control/x/0')).toMatchObject({ text: '100, 700' });
		expect(called(d, 'schedule/bar-control/y/0')).toMatchObject({ text: '\u2212150' });
		expect(called(d, 'schedule/entry-bar/y/0')).toMatchObject({ text: '\u221240, +560' });
	});

	test('[drawing R1] on a fall a wide thing has both its heights, left over right', () => {
		const d = elevationOf(fixturePlan(fixtureCase()), 'right', A4);
		// The floor falls 0.0208 towards the back corner: 100 and 700 from it are 814 and 214 down the slope.
		const above = (x: number) => String(Math.round(-150 + 1000 + 0.0208 * (914 - x)));
		expect(called(d, 'ladder/bar-control.0/above/0')).toMatchObject({ text: above(100) });
		expect(called(d, 'ladder/bar-control.0/above/1')).toMatchObject({ text: above(700) });
	});
});

describe('scale', () => {
	test('[drawing R1] flange crosses of a 600 bar are 60 mm apart at 1:10 and 50 mm at 1:12', () => {
		const plan = fixturePlan(fixtureCase());
		for (const [how, apart] of [
			[A4, 60],
			[LETTER, 50]
		] as const) {
			const d = elevationOf(plan, 'right', how);
			const [a] = middle(d, 'bar-control/flange/0/centre');
			const [b] = middle(d, 'bar-control/flange/1/centre');
			expect(b - a).toBeCloseTo(apart, 9);
		}
	});

	test.each([
		[914, '1:10, mm'],
		[1200, '1:15, mm'],
		[1800, '1:20, mm'],
		[2600, '1:30, mm'],
		[3000, '1:40, mm']
	])('[drawing R1] a wall of %i mm is drawn at the largest scale that fits, and says so', (length, says) => {
		const d = elevationOf(
			fixturePlan(fixtureCase({ enclosure: { depth: { value: length, how: 'measured' } } })),
			'right',
			A4
		);
		expect(called(d, 'head/scale')).toMatchObject({ text: says });
	});

	test('[drawing R1] a wall that goes on above what is drawn ends in a break, not in an outline', () => {
		const tall = { height: { value: 2700, how: 'measured' } };
		const d = elevationOf(fixturePlan(fixtureCase({ enclosure: tall })), 'right', A4);
		expect([called(d, 'outline/break') !== undefined, called(d, 'outline') !== undefined]).toEqual([true, false]);
	});
});

describe('larger sheets and both units', () => {
	test.each([
		['A4', 'mm', '1:10, mm', 10],
		['A3', 'mm', '1:7.5, mm', 7.5],
		['Letter', 'in', '1\u2033 = 1\u2032-0\u2033, inches', 12],
		['Tabloid', 'in', '1 1/2\u2033 = 1\u2032-0\u2033, inches', 8]
	] as const)('[drawing R26] on %s a wall of 914 is larger, and says its scale', (sheet, unit, says, scale) => {
		const d = elevationOf(fixturePlan(fixtureCase()), 'right', { reader: 'installer', sheet, tape: { unit } });
		expect(called(d, 'head/scale')).toMatchObject({ text: says });
		const { x0, x1 } = extent(path(d, 'running/line'));
		expect((x1 - x0) * scale).toBeCloseTo(914, 6);
	});

	test('[drawing R26] each figure stands in the other unit too, in brackets, and the head says so', () => {
		const both = { reader: 'installer', sheet: 'A3', tape: { unit: 'mm' }, both: true } as const;
		const d = elevationOf(fixturePlan(fixtureCase()), 'right', both);
		expect(called(d, 'head/scale')).toMatchObject({ text: '1:7.5, mm, inches in brackets' });
		// 100 and 700 mm are 3.937 and 27.559 in, \u2212150 mm is \u22125.906 in: to the nearest sixteenth.
		expect(called(d, 'schedule/bar-control/x/0/other')).toMatchObject({ text: '(3 15/16, 27 9/16)' });
		expect(called(d, 'schedule/bar-control/y/0/other')).toMatchObject({ text: '(\u22125 7/8)' });
		expect(called(d, 'schedule/bar-control/x/0')).toMatchObject({ text: '100, 700' });
	});
});

describe('room to move and centre lines', () => {
	const d = elevationOf(fixturePlan(fixtureCase()), 'right', A4);

	test('[drawing R28] the room of a bar is a box to scale at each of its centres', () => {
		// The fixture gives the bar 12 left, 25 right, 10 down and up; 1:10.
		for (const i of [0, 1]) {
			const box = extent(path(d, `bar-control/drift/${String(i)}`));
			const [x, y] = middle(d, `bar-control/flange/${String(i)}/centre`);
			for (const [n, is] of [
				[x - box.x0, 1.2],
				[box.x1 - x, 2.5],
				[box.y1 - y, 1],
				[y - box.y0, 1]
			] as const) {
				expect(n).toBeCloseTo(is, 6);
			}
		}
	});

	test('[drawing R28] where there is none no box is drawn, and words say so', () => {
		expect(d.entities.some((e) => e.id.startsWith('handset-rest/drift'))).toBe(false);
		expect(called(d, 'schedule/handset-rest/drift/0')).toMatchObject({ text: 'no room to move' });
	});

	test('[drawing R28] the centre line of a bar runs through the middles of its flanges', () => {
		const axis = path(d, 'bar-control/axis');
		expect(axis.layer).toBe('axis');
		const centres = [0, 1].map((i) => middle(d, `bar-control/flange/${String(i)}/centre`));
		expect(axis.d.map(({ to }) => to.map((n) => n.toFixed(6)))).toEqual(centres.map((c) => c.map((n) => n.toFixed(6))));
	});

	test('[drawing R27] left and right are said for who sits on the seat: the client to the therapist, nobody to who fits', () => {
		const says = (reader: 'therapist' | 'installer') =>
			words(elevationOf(fixturePlan(fixtureCase()), 'right', { ...A4, reader })).replaceAll(' | ', ' ');
		expect(says('therapist')).toContain('Left here is left on the wall: the client\u2019s left.');
		expect(says('installer')).toContain('Left here is left on the wall: the left of whoever sits on the seat.');
	});
});

describe('what a sheet says', () => {
	test('[drawing R6] a mark over a wall nobody knows is dashed, its tag too, and a box asks', () => {
		const d = elevationOf(fixturePlan(fixtureCase()), 'left', A4);
		expect(path(d, 'seat/outline').layer).toBe('thing-open');
		expect(path(d, 'seat/tag/disc').layer).toBe('tag-open');
		expect(words(d)).toContain('is open: do not drill');
		expect(words(d)).toContain('What is behind the left wall?');
	});

	test('[drawing R6] a mark on a wall that is known is drawn, and no box asks', () => {
		const d = elevationOf(fixturePlan(fixtureCase()), 'back', A4);
		expect(words(d)).not.toContain('do not drill');
	});

	test('[drawing R13] a mark that waits for an answer from elsewhere is open on a wall that is known; what is asked of a person is not told', () => {
		const plain = fixturePlan(fixtureCase());
		const waits = [{ row: 'NEED-HIP', about: ['bar-back'], whom: 'who set the limit of the hip', asks: 'How high?' }];
		const d = elevationOf({ ...plain, probes: { ...plain.probes, waits } }, 'back', A4);
		const said = words(d).replaceAll(' | ', ' ');
		expect(said).toContain('is open: do not drill');
		expect(said).toContain('The therapist is still asking somebody about it');
		expect(said).toContain('Settled on');
		expect(said).not.toMatch(/hip|How high|What is behind|see the question/);
	});

	test('[drawing R7] questions that find no room on a wall are pointed at, on a wall with room all have their box', () => {
		const open = fixtureCase({ enclosure: { walls: { ...WALLS, right: {} } } });
		const plan = fixturePlan(open);
		const asking = plan.findings.map((f, i) => ({
			...f,
			missing: `What is behind mark ${String(i)}, and how thick is it?`
		}));
		const boxes = (d: Drawing) => d.entities.filter((e) => /^question\/\d$/.test(e.id)).length;
		const crowded = elevationOf({ ...plan, findings: asking }, 'right', A4);
		expect([boxes(crowded), words(crowded).includes('More questions on')]).toEqual([1, true]);
		const calm = elevationOf(plan, 'right', A4);
		expect([boxes(calm), words(calm).includes('More questions')]).toEqual([1, false]);
	});

	test('[drawing R6] letters follow the order wanted over the whole plan, on every sheet alike', () => {
		const plan = fixturePlan(fixtureCase());
		expect(lettersOf(plan)).toMatchObject({ seat: 'A', control: 'B', 'entry-bar': 'F' });
		expect(called(elevationOf(plan, 'back', A4), 'bar-back/tag/letter')).toMatchObject({ text: 'E' });
	});

	test('[drawing R6] the cautions are there: codes first, scan, backing, tile, seal, hot water, no load on the client', () => {
		const says = texts(elevationOf(fixturePlan(fixtureCase()), 'right', A4))
			.filter((t) => t.id.startsWith('cautions'))
			.map((t) => t.text)
			.join(' ');
		for (const part of [
			'Local codes and licensed practice come first',
			'Scan for cables and pipes',
			'prove the backing',
			'No hammer on tile',
			'Seal every hole',
			'Limit the hot water',
			'No load test with a person',
			'Aim at the mark',
			'do not scale'
		]) {
			expect(says).toContain(part);
		}
	});

	test('[drawing R6] an elevation carries no name, weight or age', () => {
		const says = words(elevationOf(fixturePlan(fixtureCase()), 'back', A4));
		for (const told of ['68', '71', 'kg', 'female', '1600']) expect(says.split(/\W+/)).not.toContain(told);
	});

	test('[drawing R6] an estimated reach is sketched and says so, a measured one is drawn', () => {
		const guessed = {
			role: 'client',
			sex: { value: 'female', how: 'told' },
			body: { stature: { value: 1600, how: 'told' } }
		};
		const layers = (client?: object) =>
			elevationOf(fixturePlan(fixtureCase(client ? { client } : {})), 'back', A4).entities.flatMap((e) =>
				e.id.startsWith('reach/') && e.kind === 'path' && e.layer !== 'patch' && e.layer !== 'leader' ? [e.layer] : []
			);
		expect(new Set(layers())).toEqual(new Set(['easy', 'stretched', 'leaning']));
		expect(new Set(layers(guessed))).toEqual(new Set(['easy-sketched', 'stretched-sketched']));
	});

	test('[drawing R6] where nobody knows the arm, as of a child, no reach is drawn', () => {
		const d = elevationOf(fixturePlan(fixtureCase({ client: CHILD })), 'back', A4);
		expect(d.entities.some((e) => e.id.startsWith('reach/'))).toBe(false);
	});
});

describe('parts to scale', () => {
	test('[drawing R1] an L bar has one tube round both legs and three flanges, all dimensioned', () => {
		const d = elevationOf(planOf(TEST_ROOMS['roll-in']), 'right', A4);
		const centres = [0, 1, 2].map((i) => middle(d, `bar-control/flange/${String(i)}/centre`));
		const [a = [0, 0], b = [0, 0], c = [0, 0]] = centres;
		const rounded = (...all: readonly number[]) => all.map((n) => Math.round(n * 1e6) / 1e6);
		expect(rounded(b[0] - a[0], a[1] - b[1], c[0] - a[0], a[1] - c[1])).toEqual([60, 0, 0, 60]);
		const tube = extent(path(d, 'bar-control/tube'));
		expect(rounded(tube.x1 - tube.x0, tube.y1 - tube.y0)).toEqual([61.6, 61.6]);
		expect(called(d, 'schedule/bar-control/x/0')).toMatchObject({ text: '150, 750' });
		expect(called(d, 'schedule/bar-control/y/0')).toMatchObject({ text: '\u2212150, +450' });
		expect(words(d)).toContain('L bar 600 by 600 c/c,');
	});

	test('[drawing R1] a seat on legs stands on the floor below each leg, and nothing goes into the wall', () => {
		const plan = planOf(TEST_ROOMS['roll-in']);
		const d = elevationOf(plan, 'left', A4);
		const [, datum] = middle(d, 'ladder/datum/ring');
		for (const [i, x] of [560 - 210, 560 + 210].entries()) {
			const { low } = plan.scene.room.floorUnder('left', x, x);
			expect((datum - extent(path(d, `seat/leg/${String(i)}`)).y1) * 10).toBeCloseTo(low, 6);
		}
		expect(words(d).replaceAll(' | ', ' ')).toContain('on its own legs, nothing into the wall');
		expect(d.entities.some((e) => e.id.startsWith('seat/plate'))).toBe(false);
	});

	test('[drawing R1] a post has no level and no flange, stands on the floor, and the floor and ceiling are asked', () => {
		const d = elevationOf(planOf(TEST_ROOMS.corner), 'right', A4);
		expect(called(d, 'schedule/entry-bar/y/0')).toMatchObject({ text: 'floor' });
		expect(d.entities.some((e) => e.id.startsWith('ladder/entry-bar') || e.id.includes('flange'))).toBe(false);
		expect(words(d).replaceAll(' | ', ' ')).toContain('the floor and ceiling must hold it: ask');
		expect([called(d, 'entry-bar/foot'), called(d, 'entry-bar/head')]).not.toContain(undefined);
	});

	test('[drawing R1] a rail is set out by its hinge, drawn folded up, and says how far out it comes', () => {
		const d = elevationOf(planOf(TEST_ROOMS.corner), 'left', A4);
		const [, hinge] = middle(d, 'rail-other/hinge');
		const up = extent(path(d, 'rail-other/folded'));
		expect((hinge - up.y0) * 15).toBeCloseTo(700, 6);
		expect(path(d, 'rail-other/folded').layer).toBe('folded');
		expect(called(d, 'rail-other/word')).toMatchObject({ text: 'folded up; down 700 out' });
		expect(called(d, 'schedule/rail-other/y/0')).toMatchObject({ text: '\u2212320' });
	});
});

describe('a call cord on paper', () => {
	const plan = planOf(TEST_ROOMS['step-in-tray']);
	const d = elevationOf(plan, 'back', A4);
	const scale = 15;

	test('[drawing R12] its upper bangle is set out, along the wall and from the datum line', () => {
		expect(called(d, 'schedule/call-cord/x/0')).toMatchObject({ text: '900' });
		expect(called(d, 'schedule/call-cord/y/0')).toMatchObject({ text: '\u2212100' });
		expect(words(d)).toContain('Call cord, upper bangle');
		const [, datum] = middle(d, 'ladder/datum/ring');
		expect((datum - middle(d, 'call-cord/upper')[1]) * scale).toBeCloseTo(-100, 6);
		expect(middle(d, 'running/call-cord.0/tick')[0]).toBeCloseTo(middle(d, 'call-cord/upper')[0], 6);
	});

	test('[drawing R12] its lower bangle hangs 100 above the floor below it, and the cord goes on above what is drawn', () => {
		const [, datum] = middle(d, 'ladder/datum/ring');
		const { high } = plan.scene.room.floorUnder('back', 900, 900);
		expect((datum - middle(d, 'call-cord/lower')[1]) * scale).toBeCloseTo(high + 100, 6);
		const [upper, lower] = [extent(path(d, 'call-cord/upper')), extent(path(d, 'call-cord/lower'))];
		const cord = extent(path(d, 'call-cord/cord'));
		expect(cord.y1).toBeCloseTo(lower.y0, 6);
		expect(cord.y0).toBeLessThan(upper.y0 - 600 / scale);
		expect(called(d, 'call-cord/word')).toMatchObject({ text: 'lower bangle 100 above the floor' });
	});

	test('[drawing R12] it says what holds it, and nothing goes into the wall', () => {
		const says = words(d).replaceAll(' | ', ' ');
		expect(says).toContain('hangs from the ceiling or a box high up, nothing into the wall here');
		expect(d.entities.some((e) => e.id.startsWith('call-cord/flange'))).toBe(false);
	});
});

describe('rooms of other types', () => {
	test('[drawing R1] an open side has no wall, and is measured from its corner', () => {
		const d = elevationOf(planOf(TEST_ROOMS.corner), 'right', A4);
		expect(d.title).toBe('Right side, open');
		expect(d.entities.some((e) => /^outline($|\/(left|right|break))/.test(e.id))).toBe(false);
		expect(words(d)).toContain('Back wall to the left, entry to the right.');
		expect(called(d, 'schedule/entry-bar/x/0')).toMatchObject({ text: '700' });
	});

	test('[drawing R1] where the side of the seat is open the back wall is measured from the other corner', () => {
		const walls = { back: {}, left: { stands: false }, right: {} };
		const { room } = fixturePlan(fixtureCase({ enclosure: { type: 'corner', walls } })).scene;
		expect(cornerOf(room, 'back')).toMatchObject({ side: 'right', at: 'corner', usual: false });
		expect(cornerOf(room, 'back').from(300)).toBe(614);
		const alone = { back: {}, left: { stands: false }, right: { stands: false } };
		const bare = fixturePlan(fixtureCase({ enclosure: { type: 'corner', walls: alone } })).scene.room;
		expect(cornerOf(bare, 'back')).toMatchObject({ side: 'left', at: 'end' });
	});

	test('[drawing R1] the wall beside the entry ends where it stands, is measured from its corner, and F is in the opening', () => {
		const d = elevationOf(planOf(TEST_ROOMS['alternate-roll-in']), 'front', A4);
		const outline = extent(path(d, 'outline'));
		expect((outline.x1 - outline.x0) * 20).toBeCloseTo(500, 6);
		expect(words(d)).toContain('Opening to the left, left wall to the right.');
		expect(called(d, 'schedule/entry-bar/x/0')).toMatchObject({ text: '374' });
		expect(called(d, 'running/end')).toMatchObject({ text: '(500)' });
		const f = called(d, 'floor/name');
		expect(f?.kind === 'text' && f.at[0] < outline.x0).toBe(true);
	});

	test.each(['left', 'right'] as const)(
		'[drawing R1] floor F is named beside the %s wall, clear of its outline and of the line of levels',
		(wall) => {
			const d = elevationOf(fixturePlan(fixtureCase({ client: CHILD })), wall, A4);
			const outline = extent(path(d, `outline/${wall}`));
			const rail = extent(path(d, 'ladder/line'));
			const word = called(d, 'floor/word');
			if (word?.kind !== 'text') throw new Error('floor F is not named');
			expect(word.text).toBe('floor');
			const { x0, x1 } = boxOf(word);
			const beside = wall === 'left' ? x1 < outline.x0 - 0.5 && x0 > rail.x1 + 0.5 : x0 > outline.x1 + 0.5;
			expect(beside, `${String(x0)} to ${String(x1)}`).toBe(true);
		}
	);

	test.each([
		['over-bath', 'right', 'rim', 540],
		['step-in-tray', 'right', 'edge', 150]
	] as const)('[drawing R1] of a room of type %s what is stepped over has its level', (type, wall, name, height) => {
		const d = elevationOf(planOf(TEST_ROOMS[type]), wall, A4);
		expect(called(d, 'ladder/step')).toMatchObject({ text: `\u2212${String(1000 - height)}` });
		expect(called(d, 'ladder/step/above/0')).toMatchObject({ text: String(height) });
		expect(called(d, 'ladder/step/at')).toMatchObject({ text: name });
		const [, datum] = middle(d, 'ladder/datum/ring');
		expect((datum - extent(path(d, 'step/section')).y0) * (d.frame?.scale ?? 0)).toBeCloseTo(height - 1000, 6);
	});

	test('[drawing R4] a board at the level of the rim shares its rung', () => {
		const d = elevationOf(planOf(TEST_ROOMS['over-bath']), 'back', A4);
		expect(called(d, 'ladder/step')).toBeUndefined();
		expect(called(d, 'ladder/seat.0/at')).toMatchObject({ text: 'rim' });
	});

	test('[drawing R6] what is wanted only later is grey, not filled, and says so; its figures are quiet', () => {
		const d = elevationOf(planOf(TEST_ROOMS['step-in-tray']), 'left', A4);
		expect(path(d, 'entry-bar/tube').layer).toBe('thing-later');
		expect(path(d, 'entry-bar/tag/disc').layer).toBe('tag-later');
		expect(called(d, 'entry-bar/word')).toMatchObject({ text: 'later' });
		expect(called(d, 'legend/thing-later/word')).toMatchObject({ text: 'later' });
		expect(called(d, 'ladder/entry-bar.0')).toMatchObject({ tone: 'grey' });
		expect(words(d)).toContain('no holes now, keep it clear');
	});

	test('[drawing R7] the schedule of a wall has the room to move of each mark', () => {
		const d = elevationOf(planOf(TEST_ROOMS['over-bath']), 'right', A4);
		expect(words(d)).toContain('aim at the mark');
		expect(called(d, 'schedule/handset-rest/drift/0')).toMatchObject({
			text: 'room to move \u219012 \u219225 \u219310 \u219110'
		});
		expect(called(d, 'schedule/outlet/drift/0')).toMatchObject({ text: 'no room to move' });
	});
});
