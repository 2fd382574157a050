import { bodiesOf } from '#core/body/body.ts';
import { variantOf, type Accessory, type Mark } from '#core/case/accessory.ts';
import { caseSchema, type Case } from '#core/case/record.ts';
import { roomOf } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import { reachOf } from '#core/reach/reach.ts';
import type { Finding } from '#core/rules/row.ts';
import { backingNeeded } from '#core/structure/backing.ts';
import { carryingOf } from '#core/structure/carrying.ts';
import { demandOf } from '#core/structure/demand.ts';
import { mm } from '#core/units/length.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const declared = {
	kind: 'declared',
	x0: 38,
	x1: 876,
	y0: -320,
	y1: 230,
	load: 1334,
	fixing: '3 screws',
	holds: 'bars-and-seat'
} as const;

/** What is behind the walls of the example. */
export const WALLS = {
	back: {
		studs: { a: { x: 40, width: 38, how: 'measured' }, b: { x: 446, width: 38, how: 'measured' } },
		backing: { sheet: { kind: 'sheet', x0: 38, x1: 876, y0: -320, y1: 230, thickness: 18, how: 'observed' } },
		surveyed: true
	},
	left: {},
	right: {
		studs: {
			a: { x: 30, width: 38, how: 'measured' },
			b: { x: 436, width: 38, how: 'measured' },
			c: { x: 842, width: 38, how: 'told' }
		},
		backing: { sheet: { ...declared, document: 'paper of the panel' } },
		keepOuts: {
			rodA: { kind: 'rod', x0: 0, x1: 38, y0: -1000, y1: 1030, how: 'measured' },
			rodB: { kind: 'rod', x0: 876, x1: 914, y0: -1000, y1: 1030, how: 'measured' },
			seam: { kind: 'seam', x0: 38, x1: 876, y0: 262, y1: 338, how: 'measured' },
			pipe: { kind: 'pipe', x0: 540, x1: 540.5, y0: -960, y1: 15, how: 'told' }
		}
	}
};

/** A client whose reach is known. */
export const CLIENT = {
	role: 'client',
	sex: measured('female'),
	age: measured(71),
	mass: measured(68),
	body: { stature: measured(1600), shoulderAboveSeat: measured(530), shoulderBreadth: measured(360) },
	arms: { left: { toGrip: measured(640) }, right: { toGrip: measured(560) } },
	sittingForward: measured(40),
	lean: measured({ kind: 'holding', at: 250 })
};

/** A client no survey speaks of, so that no reach is known. */
export const CHILD = { role: 'client', age: measured(6), mass: measured(21) };

/** A transfer compartment 914 x 914 x 2134 with its seat on the left, as somebody would record it. */
export function fixtureCase(change: { enclosure?: object; client?: object; more?: object } = {}): Case {
	return caseSchema.parse({
		schema: 'graspline-case',
		version: 1,
		id: 'example-0417',
		tape: { unit: 'mm', step: 5 },
		lead: 'person-led',
		reference: 'ada-2010',
		people: { client: change.client ?? CLIENT },
		enclosure: {
			type: 'transfer',
			seatWall: 'left',
			width: measured(914),
			depth: measured(914),
			height: measured(2134),
			datum: measured(1000),
			fall: measured(0.0208),
			fallsTo: 'back',
			walls: WALLS,
			...change.enclosure
		},
		...change.more
	});
}

/** Where an accessory is: its id, part, wall and place. */
export type Put = readonly [id: string, part: string, wall: WallId, x: number, y: number];

/** Where each accessory of the example goes. */
export const EXAMPLE: readonly Put[] = [
	['seat', 'seat-600', 'left', 470, -560],
	['control', 'control-lever', 'right', 540, 100],
	['handset-rest', 'rest', 'right', 300, 180],
	['bar-control', 'bar-600', 'right', 100, -150],
	['bar-back', 'bar-450', 'back', 300, -150],
	['entry-bar', 'post-bar-600', 'right', 835, -40]
];

/** The same places for the other hand, in a room of one length on each side. */
export const mirrored = (puts: readonly Put[], length: number): readonly Put[] =>
	puts.map(([id, part, wall, x, y]) => {
		const variant = variantOf(part);
		const along = variant.kind === 'horizontal-bar' ? variant.length : 0;
		const other = { left: 'right', right: 'left', back: 'back', front: 'front' } as const;
		return [id, variant.mirror ?? part, other[wall], length - x - along, y];
	});

const COMMON = { for: 'client', hands: ['left', 'right'], slots: [], because: 'row' } as const;

/** Purposes by id, of what is not for steadying oneself. */
const PURPOSES: Readonly<Record<string, Accessory['purpose']>> = {
	seat: 'sit',
	control: 'run-water',
	temperature: 'set-temperature',
	diverter: 'divert',
	outlet: 'feed-hose',
	'handset-rest': 'rest-handset',
	'handset-holder': 'hang-handset',
	'rail-one': 'push-up',
	'rail-other': 'push-up',
	'call-cord': 'call'
};

function markAt([id, part, wall, x, y]: Put, later: readonly string[]): Mark {
	const variant = variantOf(part);
	const reason = 'To steady oneself while seated.';
	const when = later.includes(id) ? 'later' : 'now';
	const accessory: Accessory = { ...COMMON, id, kind: variant.kind, purpose: PURPOSES[id] ?? 'steady', when, reason };
	return { accessory, variant, stage: 'proposed', place: { wall, variant: part, x: mm(x), y: mm(y), turn: 0 } };
}

const CARRIES: Finding['row'] = {
	id: 'wall/carries',
	document: 'Structure',
	edition: '1',
	clause: 'brackets',
	source: { title: 'fixture', how: 'own' },
	origin: 'wall',
	of: 'any',
	measure: 'carries',
	allowed: { min: { n: 0, unit: 'mm' } },
	says: 'Every bracket is where the wall carries.'
};

/** Rooms to move that come round from mark to mark: some on every side, some on two, none. */
const ROOMS = [
	{ left: 12, right: 25, lower: 10, higher: 10 },
	{ left: 0, right: 6, lower: 0, higher: 4 },
	{ left: 0, right: 0, lower: 0, higher: 0 }
] as const;

/** A plan with marks at given places, some of them only later, judged only by what is behind the wall. */
export function fixturePlan(c: Case, puts: readonly Put[] = EXAMPLE, later: readonly string[] = []): Plan {
	const room = roomOf(c.enclosure);
	const holds = carryingOf(room, c, demandOf(c));
	const bodies = bodiesOf(c.people);
	const marks = puts.map((put) => markAt(put, later));
	const findings = marks.flatMap((m): Finding[] => {
		if (m.variant.brackets.length === 0) return [];
		const held = m.variant.brackets.map((b) => holds.at(m.place.wall, b, m.place.x + b.x, m.place.y + b.y));
		const asks = held.find((h) => h.sure < 0 && h.best >= 0)?.missing;
		const common = { row: CARRIES, strength: 'must', about: [m.accessory.id] } as const;
		return [asks === undefined ? { ...common, answer: 'inside' } : { ...common, answer: 'unknown', missing: asks }];
	});
	return {
		scene: { c, room, holds, bodies, arms: reachOf(bodies) },
		wanted: marks.map((m) => m.accessory),
		nowhere: [],
		rows: [],
		others: [],
		told: [],
		findings,
		backing: backingNeeded({ c, room, holds }, marks),
		marks,
		status: 'optimal',
		cost: [],
		bound: [],
		evaluations: 0,
		nodes: 0,
		basis: findings.some((f) => f.answer === 'unknown') ? 'provisional' : 'settled',
		digest: '4f3a91c07be24f3a91c07be24f3a91c07be24f3a91c07be24f3a91c07be20000',
		probes: {
			reasons: [],
			drifts: marks.map((m, i) => ({ accessory: m.accessory.id, ...(ROOMS[i % 3] ?? ROOMS[2]) })),
			leans: [],
			questions: [],
			waits: []
		}
	};
}
