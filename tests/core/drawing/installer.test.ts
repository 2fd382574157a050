import { variantOf } from '#core/case/accessory.ts';
import type { Drawing, Path } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import { extent } from '#core/drawing/path.ts';
import type { OnPaper } from '#core/drawing/sheet.ts';
import { settingOut, wallsUsed } from '#core/drawing/setting-out.ts';
import type { Plan } from '#core/plan.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHILD, fixtureCase, fixturePlan, WALLS, type Put } from './fixture.ts';
import { beyondSheet, clashes, PAPERS, saidIn, texts, USUAL } from './installer-paper.ts';
import { planOf, TEST_ROOMS, type TestRoom } from './rooms.ts';

const [MM = USUAL[0], INCH = USUAL[1]] = USUAL;
if (!MM || !INCH) throw new RangeError('two papers are usual');

const EXAMPLE = fixturePlan(fixtureCase({ client: CHILD }));
const OPEN = fixturePlan(
	fixtureCase({
		client: CHILD,
		enclosure: {
			drain: { x: 457, y: 700, wide: 100, deep: 100, how: 'observed' },
			backingMayBeAdded: { value: true, how: 'told' },
			walls: { ...WALLS, back: { ...WALLS.back, surveyed: false, backing: {} } }
		}
	})
);

const first = (plan: Plan, how: OnPaper): Drawing => {
	const [sheet] = packOf(plan, how);
	if (!sheet) throw new RangeError('a pack has a first sheet');
	return sheet;
};

const path = (d: Drawing, id: string): Path => {
	const found = d.entities.find((e): e is Path => e.kind === 'path' && e.id === id);
	if (!found) throw new RangeError(`no path ${id}`);
	return found;
};

const text = (d: Drawing, id: string): string => texts(d).find((t) => t.id === id)?.text ?? '';

/** What a sheet says under one id, its lines joined. */
const lines = (d: Drawing, id: string): string =>
	texts(d)
		.filter((t) => new RegExp(`^${id}/\\d+$`).test(t.id))
		.map((t) => t.text)
		.join(' ');

describe('what goes where', () => {
	test.each([
		['A4', 'mm', '1:10, mm', 10],
		['A3', 'mm', '1:7.5, mm', 7.5],
		['Letter', 'in', '1\u2033 = 1\u2032-0\u2033, inches', 12]
	] as const)(
		'[drawing R16] on %s in %s the plan of the room is at the scale it states',
		(sheet, unit, says, scale) => {
			const d = first(EXAMPLE, { reader: 'installer', sheet, tape: { unit } });
			expect(text(d, 'head/scale')).toBe(says);
			const width = extent(path(d, 'floor/width/line'));
			const depth = extent(path(d, 'floor/depth/line'));
			expect(width.x1 - width.x0).toBeCloseTo(914 / scale, 6);
			expect(depth.y1 - depth.y0).toBeCloseTo(914 / scale, 6);
			expect(text(d, 'floor/width')).toBe(unit === 'mm' ? '914' : '36');
		}
	);

	test('[drawing R16] what is fitted lies at its place along its wall: the bar of the back wall 300 to 750 from the left', () => {
		const d = first(EXAMPLE, MM);
		const room = extent(path(d, 'floor/width/line'));
		const bar = extent(path(d, 'floor/bar-back'));
		expect((bar.x0 - room.x0) * 10).toBeCloseTo(300, 6);
		expect((bar.x1 - room.x0) * 10).toBeCloseTo(750, 6);
		// The seat: 600 wide about 470 from the entry along the left wall.
		const seat = extent(path(d, 'floor/seat'));
		const depth = extent(path(d, 'floor/depth/line'));
		expect((depth.y1 - seat.y1) * 10).toBeCloseTo(170, 6);
		expect((depth.y1 - seat.y0) * 10).toBeCloseTo(770, 6);
	});

	test('[drawing R16] every mark has its letter outside its wall, every wall the number of the sheet that shows it', () => {
		for (const plan of [EXAMPLE, OPEN, ...Object.values(TEST_ROOMS).map((room) => planOf(room))]) {
			const pack = packOf(plan, MM);
			const [d] = pack;
			if (!d) throw new RangeError('a pack has a first sheet');
			for (const { id, letter } of settingOut(plan)) expect(text(d, `floor/${id}/letter`)).toBe(letter);
			for (const wall of wallsUsed(plan)) {
				const number = Number(text(d, `floor/wall/${wall}`));
				expect(lines(d, `walls/${wall}/name`)).toContain(`sheet ${String(number)}`);
				expect(lines(d, `walls/${wall}/name`).startsWith(pack[number - 1]?.title ?? 'no sheet')).toBe(true);
			}
		}
	});

	test('[drawing R16] the list of sheets has every sheet under its number', () => {
		for (const how of PAPERS) {
			const pack = packOf(OPEN, how);
			const [d] = pack;
			if (!d) throw new RangeError('a pack has a first sheet');
			for (const [i, { title }] of pack.entries()) {
				if (title.startsWith('What goes where')) continue;
				const row = texts(d).find((t) => {
					const [, from = '', to = from] = /^(\d+)(?:\u2013(\d+))?$/.exec(t.text) ?? [];
					return t.id.startsWith('sheets/') && Number(from) <= i + 1 && i + 1 <= Number(to);
				});
				expect(lines(d, `${row?.id ?? ''}/title`)).toBe(title);
			}
		}
	});

	test('[drawing R16] drain, entry, F and the fall are drawn; the arrow of the fall points down the floor', () => {
		const d = first(OPEN, MM);
		expect(text(d, 'floor/drain/word')).toBe('drain');
		expect(text(d, 'floor/entry')).toBe('entry');
		expect(text(d, 'floor/f')).toBe('floor F');
		expect(lines(d, 'notes/room/0')).toBe('The shower floor falls 1:48 towards the back.');
		// 0.0208 is 1:48, to the back wall, which is up on the sheet.
		expect(text(d, 'floor/fall')).toBe('fall 1:48');
		const [tail, head] = path(d, 'floor/fall/arrow').d;
		expect(head?.to[1]).toBeLessThan(tail?.to[1] ?? 0);
	});

	test.each([
		['left', 'towards the back wall'],
		['right', 'towards the entry']
	] as const)('[drawing R16] with the seat on the %s wall both lefts are told', (seatWall, says) => {
		const puts: readonly Put[] = [['seat', 'seat-600', seatWall, 450, -560]];
		const d = first(fixturePlan(fixtureCase({ client: CHILD, enclosure: { seatWall } }), puts), MM);
		expect(lines(d, 'notes/sides')).toContain(`The left of whoever sits on the seat is another one: it is ${says}.`);
	});

	test('[drawing R16] units, tolerance, datum line and F are told', () => {
		const d = first(EXAMPLE, MM);
		expect(lines(d, 'notes/figures')).toContain('Dimensions are in mm. Do not scale. \u00b13 mm unless');
		expect(lines(d, 'notes/datum')).toContain('1000 mm above F');
		expect(lines(first(EXAMPLE, { ...INCH, both: true }), 'notes/figures')).toContain('Those in brackets are in mm.');
	});
});

describe('the lists for who fits it', () => {
	const said = (plan: Plan): string => saidIn(plan, MM).join(' ');

	test('[drawing R18] backing to be added is told with where it lies, how large it is and what it is', () => {
		const pack = packOf(OPEN, MM);
		const d = pack.find(({ title }) => title === 'Behind the walls');
		expect(OPEN.backing.length).toBeGreaterThan(0);
		for (const [i, { rect, thickness }] of OPEN.backing.entries()) {
			const says = d ? lines(d, `add/${String(i)}/says`) : '';
			for (const n of [rect.x1 - rect.x0, rect.y1 - rect.y0, thickness ?? 0]) {
				expect(says).toContain(String(Math.round(n)));
			}
			expect(says).toContain('from corner');
		}
	});

	test('[drawing R26] asked for in both units it has every figure in inches too, by 25.4 apart from what prints it', () => {
		const pack = packOf(OPEN, { ...MM, both: true });
		const d = pack.find(({ title }) => title === 'Behind the walls');
		expect(d && text(d, 'head/unit')).toBe('mm, inches in brackets');
		for (const [i, { rect, thickness }] of OPEN.backing.entries()) {
			const says = d ? lines(d, `add/${String(i)}/says`) : '';
			const size = /; (\d+) \u00d7 (\d+) \((.+) \u00d7 (.+?)\)/.exec(says)?.slice(1) ?? [];
			const inches = (figure = '') =>
				figure.split(' ').reduce((sum, one) => {
					const [over = 0, under = 1] = one.split('/').map(Number);
					return sum + over / under;
				}, 0);
			expect(Math.abs(inches(size[2]) * 25.4 - (rect.x1 - rect.x0))).toBeLessThanOrEqual(25.4 / 32);
			expect(Math.abs(inches(size[3]) * 25.4 - (rect.y1 - rect.y0))).toBeLessThanOrEqual(25.4 / 32);
			expect(says.match(/\(/g)).toHaveLength(thickness === undefined ? 3 : 4);
		}
	});

	test('[drawing R26] every list says how high the datum line is; the loads are in N and mm on either tape', () => {
		for (const how of [MM, INCH]) {
			const lists = packOf(OPEN, how).filter((d) => text(d, 'head/unit') !== '');
			expect(lists.length).toBeGreaterThan(3);
			const says = how === MM ? 'Datum line, 1000 above floor F' : 'Datum line, 39 3/8 above floor F';
			for (const d of lists) expect(text(d, 'datum/words')).toBe(says);
			expect(lists.filter(({ title }) => title === 'Loads').map((d) => text(d, 'head/unit'))).toEqual(['N, mm']);
		}
	});

	test('[drawing R18] every open question of the walls and the room stands on the sheet of questions, with its letters', () => {
		const plan = fixturePlan(
			fixtureCase({ client: CHILD, enclosure: { fall: undefined, walls: { ...WALLS, back: {} } } })
		);
		const d = packOf(plan, MM).find(({ title }) => title === 'To find out on site');
		const all = d ? texts(d).map((t) => t.text) : [];
		for (const asks of plan.scene.room.unknowns) expect(all.join(' ')).toContain(asks);
		const open = settingOut(plan).filter((s) => s.unseen);
		expect(open.length).toBeGreaterThan(0);
		for (const { letter } of open) expect(all).toContain(letter);
		expect(all).toContain('Back wall');
		expect(all.filter((t) => t.endsWith('open: do not drill')).length).toBeGreaterThan(0);
	});

	test('[drawing R18] the cautions are told, and every mark has its row to tick', () => {
		const all = said(EXAMPLE);
		for (const says of [
			'Local codes and licensed practice come first',
			'Scan for cables, pipes and metal',
			'Prove the backing. The first hole is a probe',
			'No hammer on tile',
			'Fill and seal every hole',
			'Stop and ring when drawing and table differ',
			'Limit the hot water and measure it, mixed, at the handset'
		]) {
			expect(all).toContain(says);
		}
		const sheets = packOf(EXAMPLE, MM).filter(({ title }) => title === 'On site');
		for (const { id, mark } of settingOut(EXAMPLE)) {
			const row = sheets.flatMap(texts).filter((t) => t.id.startsWith(`confirm/${id}/`));
			const rowSays = row.map((t) => t.text);
			for (const says of ['agrees with the sheet', 'agrees, note', 'stop and ring', 'found', 'part fitted', 'date']) {
				expect(rowSays, `${mark.accessory.kind} ${says}`).toContain(says);
			}
		}
	});
});

/** A room of some type, its things moved along their walls, some of them only later. */
const rooms = fc
	.record({
		room: fc.constantFrom(...Object.values(TEST_ROOMS)),
		how: fc.constantFrom(...PAPERS)
	})
	.chain(({ room, how }) =>
		fc.record({
			how: fc.constant(how),
			later: fc.subarray(room.puts.map(([id]) => id)),
			moves: fc
				.array(fc.integer({ min: -300, max: 300 }), { minLength: room.puts.length, maxLength: room.puts.length })
				.map((moves): readonly Put[] => moved(room, moves)),
			room: fc.constant(room)
		})
	)
	.map(({ room, how, later, moves }) => ({ how, room: { ...room, puts: moves, later } }));

function moved(room: TestRoom, moves: readonly number[]): readonly Put[] {
	const { walls } = planOf(room).scene.room;
	return room.puts.map(([id, part, wall, x, y], i): Put => {
		const { outline } = variantOf(part);
		const most = walls[wall].length - outline.x1;
		return [id, part, wall, Math.min(most, Math.max(-outline.x0, x + (moves[i] ?? 0))), y];
	});
}

const OWN = ['What goes where', 'Marks', 'Behind the walls', 'To find out on site', 'On site'];

function check(plan: Plan, how: OnPaper): void {
	for (const d of packOf(plan, how).filter(({ title }) => OWN.some((own) => title.startsWith(own)))) {
		expect(clashes(d)).toEqual([]);
		expect(beyondSheet(d)).toEqual([]);
		const ids = d.entities.map((e) => e.id);
		expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
	}
}

describe('labels for who fits it', () => {
	test.each(PAPERS.map((how) => [how.sheet, how.tape.unit, how] as const))(
		'[drawing R4] no text lies on another or beyond the sheet, on %s in %s',
		(_, __, how) => {
			for (const plan of [EXAMPLE, OPEN, ...Object.values(TEST_ROOMS).map((room) => planOf(room))]) check(plan, how);
		}
	);

	test('[drawing R4] nor wherever things are in rooms of every type', () => {
		fc.assert(
			fc.property(rooms, ({ room, how }) => {
				check(planOf(room), how);
			}),
			{ numRuns: 60 }
		);
	}, 60_000);
});
