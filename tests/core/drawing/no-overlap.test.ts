import { variantOf } from '#core/case/accessory.ts';
import { elevationSheetsOf } from '#core/drawing/elevation.ts';
import { overlap, widened, type Box, type Drawing, type Path, type Spot, type Text } from '#core/drawing/entity.ts';
import { extent } from '#core/drawing/path.ts';
import { figure, signed } from '#core/drawing/figure.ts';
import { wallQuestions } from '#core/drawing/question.ts';
import { cornerOf, hasLevel, settingOut } from '#core/drawing/setting-out.ts';
import { packOf } from '#core/drawing/pack.ts';
import { SHEET_NAMES, type OnPaper } from '#core/drawing/sheet.ts';
import { boxOf, printable } from '#core/drawing/type.ts';
import { WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHILD, CLIENT, fixtureCase, fixturePlan, mirrored, WALLS, type Put } from './fixture.ts';
import { planOf, TEST_ROOMS, type TestRoom } from './rooms.ts';

/** Time for many plans on a machine with other work. Units: ms. */
const LONG = 240_000;

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const between = (min: number, max: number) => fc.integer({ min, max });

/** Accessories anywhere on walls of one length, overlapping or not. */
const puts = (length: number): fc.Arbitrary<readonly Put[]> =>
	fc.tuple(
		fc.tuple(
			fc.constant('seat'),
			fc.constantFrom('seat-450', 'seat-600', 'seat-off-wall-450'),
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
			between(40, Math.max(40, length - 650)),
			between(-300, 100)
		),
		fc.tuple(
			fc.constant('bar-back'),
			fc.constantFrom('bar-300', 'bar-600'),
			fc.constantFrom('back' as const, 'right' as const),
			between(40, Math.max(40, length - 650)),
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
	readonly how: OnPaper;
}

/** A room with its seat on the left wall, and where everything goes; drawn in a mirror when the seat is on the right. */
interface Spec {
	readonly length: number;
	readonly height: number;
	readonly datum: number;
	readonly fall: number;
	readonly fallsTo: 'back' | 'entry' | 'seat' | 'control';
	readonly seatWall: 'left' | 'right';
	readonly how: OnPaper;
	readonly surveyed: boolean;
	readonly all: readonly Put[];
	/** Which are only for later. */
	readonly later?: readonly string[];
}

function drawn(client: object, spec: Spec): Drawn {
	const { length, height, datum, fall, fallsTo, seatWall, how, surveyed, all, later } = spec;
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
		// Walls not looked at may be opened, so that the backing to be added is drawn as well.
		backingMayBeAdded: { value: !surveyed, how: 'told' },
		// A new dwelling is to be solid for what its document asks for.
		newBuilt: { value: how.tape.unit === 'mm', how: 'told' },
		walls: { ...walls, back: { ...walls.back, surveyed } }
	};
	const puts = seatWall === 'left' ? raised : mirrored(raised, length);
	return { plan: fixturePlan(fixtureCase({ enclosure, client }), puts, later), how };
}

/** On every sheet, in either unit or both, for either reader. */
const hows: fc.Arbitrary<OnPaper> = fc.record({
	reader: fc.constantFrom('therapist' as const, 'installer' as const),
	sheet: fc.constantFrom(...SHEET_NAMES),
	tape: fc.record({ unit: fc.constantFrom('mm' as const, 'in' as const) }),
	both: fc.boolean()
});

const specs: fc.Arbitrary<Spec> = fc
	.record({
		length: between(600, 3000),
		height: between(1500, 4000),
		datum: fc.constantFrom(0, 900, 1000, 1016, 1250, 1500),
		fall: fc.constantFrom(0, 0.0208, 0.05),
		fallsTo: fc.constantFrom('back' as const, 'entry' as const, 'seat' as const, 'control' as const),
		seatWall: fc.constantFrom('left' as const, 'right' as const),
		how: hows,
		surveyed: fc.boolean()
	})
	.chain((s) => puts(s.length).map((all) => ({ ...s, all })));

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

/** What a part covers; an L bar is its two legs. */
function boxesOf(e: Path): readonly Box[] {
	const [a, b, c, f, g, h] = e.d;
	if (e.d.length !== 6 || !a || !b || !c || !f || !g || !h) return [extent(e)];
	return [extent({ ...e, d: [a, b, c, f] }), extent({ ...e, d: [f, g, h, a] })];
}

/** Words on the wall and tags that lie on a part which is not their own. */
function onThings(d: Drawing, plan: Plan): readonly string[] {
	const parts = settingOut(plan).flatMap(({ id }) =>
		d.entities.flatMap((e) =>
			e.kind === 'path' && e.id.startsWith(`${id}/`) && ['thing', 'thing-open', 'thing-later'].includes(e.layer)
				? boxesOf(e).map((box) => ({ id, box: widened(box, -0.1) }))
				: []
		)
	);
	return texts(d)
		.filter((t) => t.id.endsWith('/word') || t.id.endsWith('/tag/letter') || t.id.startsWith('studs/'))
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

/** Kinds of line that stand for something behind the wall and are not explained on its sheets. */
function withoutLegend(sheets: readonly Drawing[]): readonly string[] {
	const explained = new Set<string>([
		'stud',
		'stud-sought',
		'backing-edge',
		'backing-to-add',
		'backing-to-keep',
		'hatch',
		'hatch-likely',
		'thing-later',
		'drift'
	]);
	const layers = sheets.flatMap((d) =>
		d.entities.flatMap((e) => (e.kind === 'path' && explained.has(e.layer) ? [e.layer] : []))
	);
	const legend = sheets.flatMap(texts).map((t) => t.id);
	return [...new Set(layers)].filter((layer) => !legend.includes(`legend/${layer}/word`));
}

/** Leaders and the boxes of words on their way. */
function throughWords(d: Drawing): readonly string[] {
	const strokes = d.entities.flatMap((e) => {
		const [from, to] = e.kind === 'path' && e.layer === 'leader' && e.id.endsWith('/leader') ? e.d : [];
		return from && to ? [{ id: e.id.replace(/\/leader$/, ''), stroke: [from.to, to.to] as const }] : [];
	});
	const words = texts(d).map((t) => ({ id: t.id, box: widened(boxOf(t), -0.1) }));
	return strokes.flatMap(({ id, stroke }, i) => [
		...words.flatMap((w) => (!w.id.startsWith(id) && met(stroke, w.box) ? [`${id} through ${w.id}`] : [])),
		...strokes.slice(i + 1).flatMap((o) => (crossing(stroke, o.stroke) ? [`${id} across ${o.id}`] : []))
	]);
}

type Stroke = readonly [Spot, Spot];

/** Looked at point by point, apart from how the drawing itself asks. */
const met = ([[x, y], [u, v]]: Stroke, b: Box): boolean =>
	Array.from({ length: 401 }, (_, i) => i / 400).some((k) => {
		const [px, py] = [x + k * (u - x), y + k * (v - y)];
		return px > b.x0 && px < b.x1 && py > b.y0 && py < b.y1;
	});

/** By solving for both parameters. */
function crossing([a, b]: Stroke, [c, d]: Stroke): boolean {
	const [rx, ry, sx, sy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
	const det = rx * sy - ry * sx;
	if (Math.abs(det) < 1e-9) return false;
	const t = ((c[0] - a[0]) * sy - (c[1] - a[1]) * sx) / det;
	const k = ((c[0] - a[0]) * ry - (c[1] - a[1]) * rx) / det;
	return t > 1e-6 && t < 1 - 1e-6 && k > 1e-6 && k < 1 - 1e-6;
}

/** Texts over the border of a question box, of a tick box, or of the title block. */
function onBorders(d: Drawing): readonly string[] {
	const frames = d.entities.flatMap((e) =>
		e.kind === 'path' && ['question', 'frame'].includes(e.layer) ? [{ id: e.id, box: extent(e) }] : []
	);
	return frames.flatMap(({ id, box }) =>
		texts(d).flatMap((t) => {
			const b = widened(boxOf(t), -0.05);
			const inside = b.x0 >= box.x0 && b.x1 <= box.x1 && b.y0 >= box.y0 && b.y1 <= box.y1;
			return overlap(b, box) && !inside ? [`${t.id} over ${id}`] : [];
		})
	);
}

/** Words that are wanted on a wall and stand neither there nor under a number. */
function missingWords(plan: Plan, wall: WallId, how: OnPaper, sheets: readonly Drawing[]): readonly string[] {
	const [first] = sheets;
	if (!first?.frame) return ['no drawing'];
	const { room } = plan.scene;
	const sets = settingOut(plan).filter((s) => s.mark.place.wall === wall);
	const { unit } = how.tape;
	const said = sheets.flatMap(texts);
	const has = (id: string) => said.some((t) => t.id === id || t.id.startsWith(`${id}/`));
	const named = (id: string) => has(id) || (has(`${id}/number`) && has(`notes/${id}`));
	const corner = cornerOf(room, wall);
	const printed = (prefix: string) => said.filter((t) => t.id.startsWith(prefix)).map((t) => t.text);
	return [
		...sets.flatMap((set) => [
			...(has(`${set.id}/tag/letter`) ? [] : [`tag ${set.id}`]),
			...(has(`schedule/${set.id}/name`) ? [] : [`row ${set.id}`]),
			...(set.drift && !has(`schedule/${set.id}/drift`) ? [`room of ${set.id}`] : []),
			...set.points.flatMap(([x, y]) => [
				...(printed('running/').includes(figure(corner.from(x), unit)) ? [] : [`along ${set.id}`]),
				...(!hasLevel(set) || printed('ladder/').includes(signed(y, unit)) ? [] : [`level ${set.id}`])
			]),
			...(set.later && !named(`${set.id}/word`) ? [`later ${set.id}`] : [])
		]),
		...first.entities.flatMap((e) => {
			const [, id] = /^(keep-out\/[^/]+|to-add\/\d+|to-keep\/\d+)$/.exec(e.id) ?? [];
			return id === undefined || named(`${id}/word`) ? [] : [`words of ${id}`];
		}),
		...wallQuestions(plan, sets, how.reader).flatMap((q) => (has(`${q.id}/asks`) ? [] : [`question ${q.id}`])),
		...said.flatMap((t) => {
			const [, id] = /^(.*)\/number$/.exec(t.id) ?? [];
			return id === undefined || id.startsWith('notes/') || has(`notes/${id}`) ? [] : [`note ${id}`];
		})
	];
}

function check({ plan, how }: Drawn): void {
	for (const wall of WALL_IDS) {
		const sheets = elevationSheetsOf(plan, wall, how);
		for (const d of sheets) {
			expect(clashes(d)).toEqual([]);
			expect(onThings(d, plan)).toEqual([]);
			expect(beyondSheet(d)).toEqual([]);
			expect(throughWords(d)).toEqual([]);
			expect(onBorders(d)).toEqual([]);
			const ids = d.entities.map((e) => e.id);
			expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
		}
		expect(withoutLegend(sheets)).toEqual([]);
		expect(missingWords(plan, wall, how, sheets)).toEqual([]);
	}
}

const ROOM = {
	height: 2100,
	fall: 0.05,
	surveyed: true,
	how: { reader: 'therapist', sheet: 'A4', tape: { unit: 'in' } }
} as const;

/** Arrangements that once came out with one thing on another. */
const FOUND: readonly (readonly [string, Spec])[] = [
	[
		'words of the fall under a wall that is short on paper',
		{
			...ROOM,
			length: 1427,
			datum: 1016,
			fallsTo: 'entry',
			seatWall: 'left',
			all: [
				['seat', 'seat-450', 'left', 307, -438],
				['control', 'control-lever', 'right', 271, 1],
				['bar-control', 'bar-300', 'right', 69, -267],
				['entry-bar', 'post-bar-750', 'right', 1129, 0]
			]
		}
	],
	[
		'more levels over the datum line than the wall is high on paper',
		{
			...ROOM,
			length: 1696,
			height: 1907,
			datum: 900,
			fallsTo: 'back',
			seatWall: 'right',
			all: [
				['seat', 'seat-450', 'left', 766, -404],
				['control', 'control-lever', 'right', 997, -2],
				['handset-rest', 'rest', 'right', 486, 237],
				['bar-control', 'bar-300', 'right', 63, 82],
				['bar-back', 'bar-300', 'right', 874, -136],
				['entry-bar', 'post-bar-450', 'right', 1398, -68]
			]
		}
	],
	[
		'more levels under the datum line than the wall is high on paper, on a long wall',
		{
			...ROOM,
			length: 2661,
			height: 2861,
			datum: 1016,
			fallsTo: 'entry',
			seatWall: 'right',
			how: { ...ROOM.how, sheet: 'Letter' },
			all: [
				['seat', 'seat-450', 'left', 584, -488],
				['control', 'control-lever', 'right', 1321, 1],
				['handset-rest', 'rest', 'right', 2179, 7],
				['bar-control', 'bar-300', 'right', 484, 3],
				['bar-back', 'bar-300', 'right', 725, -176],
				['entry-bar', 'post-bar-750', 'right', 2444, -64]
			]
		}
	],
	[
		'a bar over the upper edge of its wall and the studs above it',
		{
			...ROOM,
			length: 900,
			height: 1900,
			datum: 1016,
			fallsTo: 'back',
			seatWall: 'left',
			all: [
				['seat', 'seat-450', 'left', 450, -404],
				['entry-bar', 'post-bar-750', 'right', 842, 200]
			]
		}
	]
];

/** A thing moved along its wall as far as it must to be all of it there. */
function onItsWall([id, part, wall, x, y]: Put, length: number): Put {
	const { outline } = variantOf(part);
	return [id, part, wall, Math.max(-outline.x0, Math.min(length - outline.x1, x)), y];
}

/** A room of some type, its things moved about, some of them only later. */
const rooms: fc.Arbitrary<{ room: TestRoom; how: Drawn['how'] }> = fc
	.record({
		room: fc.constantFrom(...Object.values(TEST_ROOMS)),
		how: hows
	})
	.chain(({ room, how }) =>
		fc.record({
			moves: fc.array(fc.tuple(between(-150, 150), between(-200, 200)), {
				minLength: room.puts.length,
				maxLength: room.puts.length
			}),
			later: fc.subarray(room.puts.map(([id]) => id)),
			how: fc.constant(how),
			room: fc.constant(room)
		})
	)
	.map(({ room, how, moves, later }) => {
		const { walls } = planOf(room).scene.room;
		const puts = room.puts.map(([id, part, wall, x, y], i): Put => {
			const [dx, dy] = moves[i] ?? [0, 0];
			return onItsWall([id, part, wall, x + dx, part === 'post' ? y : y + dy], walls[wall].length);
		});
		return { room: { ...room, puts, later }, how };
	});

/** Twelve things within a hand or two of each other, or on one line, most of them only for later. */
const crowded: fc.Arbitrary<Spec> = fc
	.record({
		length: fc.constantFrom(600, 760, 914, 1524, 3000),
		height: between(1800, 2600),
		datum: fc.constantFrom(900, 1000, 1016),
		fall: fc.constantFrom(0, 0.0208),
		fallsTo: fc.constantFrom('back' as const, 'entry' as const),
		seatWall: fc.constantFrom('left' as const, 'right' as const),
		how: hows,
		surveyed: fc.boolean(),
		line: fc.constantFrom('all at the datum line', 'all at one height', 'within 200', 'in a row')
	})
	.chain(({ line, ...s }) => {
		const at = {
			'all at the datum line': fc.tuple(between(40, s.length - 40), fc.constant(0)),
			'all at one height': fc.tuple(between(40, s.length - 40), fc.constant(-133)),
			'within 200': fc.tuple(between(100, 300), between(-100, 100)),
			'in a row': fc.tuple(fc.constant(200), between(-300, 400))
		}[line];
		const parts = [
			'rest',
			'rest',
			'rest',
			'rest',
			'hose-outlet',
			'hose-outlet',
			'control-lever',
			'control-lever',
			'rest',
			'rest'
		];
		const one = (part: string, i: number): fc.Arbitrary<Put> =>
			fc
				.tuple(at, fc.constantFrom('right' as const, 'back' as const))
				.map(([[x, y], wall]): Put => [`t${String(i)}`, part, wall, x, y]);
		const bars = ['bar-300', 'post-bar-450'].map((part, i) => one(part, 20 + i));
		const things = fc.tuple(...parts.map(one), ...bars);
		const later = fc.subarray([...parts.map((_, i) => `t${String(i)}`), 't20', 't21']);
		const held = (all: readonly Put[]) => all.map((put) => onItsWall(put, s.length));
		return fc.tuple(things, later).map(([all, not]): Spec => ({ ...s, all: held(all), later: not }));
	});

describe('labels', () => {
	test.each(FOUND)('[drawing R4] what once lay on another keeps clear of it: %s', (_, spec) => {
		check(drawn(CHILD, spec));
	});

	test(
		'[drawing R4] no text lies on another, on a strange part, or beyond the sheet, over plans of every kind',
		() => {
			fc.assert(
				fc.property(specs, (spec) => {
					check(drawn(CHILD, spec));
				}),
				{ numRuns: 150 }
			);
		},
		LONG
	);

	test(
		'[drawing R27] nor where a dozen things crowd on a wall, and no word of any is left out',
		() => {
			fc.assert(
				fc.property(crowded, (spec) => {
					check(drawn(CHILD, spec));
				}),
				{ numRuns: 60 }
			);
		},
		LONG
	);

	test.each(Object.entries(TEST_ROOMS))('[drawing R4] nor in a room of type %s, on either tape', (_, room) => {
		for (const client of [CHILD, CLIENT]) {
			for (const how of [
				{ reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } },
				{ reader: 'therapist', sheet: 'Letter', tape: { unit: 'in' } }
			] as const) {
				const plan = planOf(room, client);
				check({ plan, how });
				for (const d of packOf(plan, how)) {
					expect(clashes(d)).toEqual([]);
					expect(beyondSheet(d)).toEqual([]);
				}
			}
		}
	});

	test(
		'[drawing R4] nor wherever things are in rooms of every type',
		() => {
			fc.assert(
				fc.property(rooms, ({ room, how }) => {
					const plan = planOf(room);
					check({ plan, how });
					for (const d of packOf(plan, how)) {
						expect(clashes(d)).toEqual([]);
						expect(beyondSheet(d)).toEqual([]);
					}
				}),
				{ numRuns: 60 }
			);
		},
		LONG
	);

	test(
		'[drawing R4] nor where reach is drawn',
		() => {
			fc.assert(
				fc.property(specs, (spec) => {
					check(drawn(CLIENT, spec));
				}),
				{ numRuns: 12 }
			);
		},
		LONG
	);

	test(
		'[drawing R4] nor on any sheet of the set, in texts of any length',
		() => {
			const name = fc.string({ minLength: 1, maxLength: 200, unit: 'grapheme' }).filter((s) => s.trim() !== '');
			fc.assert(
				fc.property(specs, name, (spec, says) => {
					const { plan, how } = drawn(CHILD, spec);
					const probes = {
						reasons: [],
						drifts: [],
						leans: [{ accessory: 'control', degrees: 3, travel: 30, says }],
						waits: [],
						questions: [{ id: 'q', about: ['seat'], asks: says }]
					};
					for (const d of packOf({ ...plan, probes }, how)) {
						expect(clashes(d)).toEqual([]);
						expect(beyondSheet(d)).toEqual([]);
						for (const t of texts(d)) expect(printable(t.text)).toBe(t.text);
					}
				}),
				{ numRuns: 25 }
			);
		},
		LONG
	);
});
