import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import { person } from '#core/case/person.ts';
import type { Case } from '#core/case/record.ts';
import { disagreementsOf } from '#core/needs/disagreements.ts';
import { lookAgainOf } from '#core/needs/look-again.ts';
import { seatLinesOf } from '#core/needs/seat-lines.ts';
import { questionOf } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import { posePicture } from '#core/drawing/body/poses.ts';
import { fixturePlan } from '../drawing/fixture.ts';
import { caseWith, mark, marksOf } from '../rules/baseline.ts';

const told = <T>(value: T) => ({ value, how: 'told' as const });

/** Paths of a schema down to what is one fact or one plain value. */
function leaves(schema: z.ZodType, path: readonly string[] = []): readonly string[] {
	const { def } = schema as unknown as {
		def: { type: string; innerType?: z.ZodType; shape?: Record<string, z.ZodType> };
	};
	if (def.innerType) return leaves(def.innerType, path);
	if (def.type !== 'object' || !def.shape || 'value' in def.shape) return [path.join('.')];
	return Object.entries(def.shape).flatMap(([key, inner]) => leaves(inner, [...path, key]));
}

type Tree = { readonly [key: string]: unknown };

/** A tree with one leaf set. */
function set(tree: Tree, path: readonly string[], value: unknown): Tree {
	const [head = '', ...rest] = path;
	if (rest.length === 0) return { ...tree, [head]: value };
	return { ...tree, [head]: set((tree[head] ?? {}) as Tree, rest, value) };
}

/** Where a fact is tried: what of the client and of the room differs from the baseline. */
interface Where {
	readonly client?: Tree;
	readonly enclosure?: Tree;
}

const part = (
	id: string,
	wall: Mark['place']['wall'],
	x: number,
	y: number,
	purpose: Mark['accessory']['purpose'],
	of: string
) => mark(id, { purpose, wall, x, y, variant: variantOf(of) });
/** Marks beside those of the baseline, where they are wanted. */
const MORE: readonly Mark[] = [
	part('handset-rest', 'right', 700, 900, 'rest-handset', 'rest'),
	part('handset-holder', 'right', 700, 1500, 'hang-handset', 'rest'),
	part('entry-bar', 'right', 850, 800, 'step-in', 'post-bar-450'),
	part('exit-bar', 'left', 60, 800, 'step-out', 'post-bar-450'),
	part('call-cord', 'right', 300, 900, 'call', 'call-cord'),
	part('rail-one', 'left', 100, 650, 'push-up', 'rail-600'),
	part('rail-other', 'left', 800, 650, 'push-up', 'rail-600')
];

/** What a case comes to with things where they are: all a screen, a sheet or a terminal is made from, without its facts. */
function comesTo(c: Case): Readonly<Record<string, unknown>> {
	const question = questionOf(c);
	const marks = [...marksOf(), ...MORE].flatMap((m): readonly Mark[] => {
		const accessory = question.wanted.find(({ id }) => id === m.accessory.id);
		return accessory ? [{ ...m, accessory }] : [];
	});
	const { scene, wanted, nowhere, rows } = question;
	return {
		wanted,
		nowhere,
		rows: rows.map(({ row: { id }, about, strength, later }) => [id, about, strength, later]),
		// What waits for somebody else's answer is told from these too.
		findings: judge(scene, rows, marks).map(({ row: { id }, about, answer, measured, slack }) => [
			id,
			about,
			answer,
			measured,
			slack
		]),
		demand: scene.holds.demand,
		seatLines: seatLinesOf({ scene, rows, marks }),
		disagreements: disagreementsOf({ scene, rows, marks, wanted, nowhere }),
		lookAgain: lookAgainOf(c)
	};
}

const changed = (a: Readonly<Record<string, unknown>>, b: Readonly<Record<string, unknown>>): readonly string[] =>
	Object.keys(a).filter((key) => JSON.stringify(a[key]) !== JSON.stringify(b[key]));

/** Two values of a fact, and where it is tried. */
type Entry = readonly [unknown, unknown, (Where | undefined)?];

const mm = (a: number, b: number, where?: Where): Entry => [told(a), told(b), where];
const either = (where?: Where): Entry => [told(true), told(false), where];

/** Nothing measured of the body, so that what is measured moves the rest. */
const BARE: Where = { client: { body: {}, arms: { left: {}, right: {} } } };
const STANDS: Where = { client: { transfer: told('walks'), chair: {}, washes: told('standing') } };
const ON_FOOT: Where = { client: { transfer: told('walks'), chair: {} } };
const ROOMY = { type: 'roll-in', width: told(1600), depth: told(1600) };
/** Room for a rail on both sides of the seat, which she pushes up from. */
const RAILS: Where = { client: { rises: told('with-arms') }, enclosure: ROOMY };
const CROSSES: Where = {
	client: {
		transfer: told('sitting-pivot'),
		chair: { seatHeight: told(480), width: told(650), length: told(1100), approach: told('beside') }
	},
	enclosure: { clearLength: told(1200), clearWidth: told(1000) }
};
const AID: Where = { client: { walkingAid: { kind: told('frame') } } };

const OTHER = { left: 'right', right: 'left' } as const;
/** Three points on the back wall, which is beside who sits with her back to a side wall. */
const taped = (side: 'left' | 'right', more: number) => {
	const from = (x: number) => (side === 'left' ? x : 914.4 - x);
	const one = (x: number, y: number) => ({
		wall: 'back',
		hand: 'fingertip',
		reach: 'just',
		x: from(x),
		y,
		how: 'measured'
	});
	return { low: one(665 + more, 600), level: one(815 + more, 1024), high: one(618 + more, 1500) };
};
const SAT = { x: 457, off: 60, seatHeight: 457, floor: 'shower', how: 'measured', when: '2026-01-10' };

/** Of one arm: what is reached is reached by it, because the other side is the weaker. */
function armFacts(side: 'left' | 'right'): Readonly<Record<string, Entry>> {
	const only: Where = { client: { weakerSide: told(OTHER[side]), weakerHolds: told(false) } };
	/** With an elbow that was recorded, so that the length of the upper arm tells how high it lifts the hand. */
	const bends: Where = {
		client: {
			...only.client,
			arms: {
				left: {},
				right: {},
				[side]: { toGrip: told(611), elbowFlexion: told(130), flexion: told(50), abduction: told(50) }
			}
		}
	};
	const tried: Where = {
		client: { ...BARE.client, ...only.client, reachTest: { ...SAT, behind: side } },
		enclosure: { seatWall: side }
	};
	return Object.fromEntries(
		Object.entries({
			toGrip: mm(600, 500, only),
			upperArm: mm(250, 340, bends),
			flexion: mm(160, 40, only),
			abduction: mm(160, 5, { ...only, enclosure: { seatWall: side } }),
			adduction: mm(60, 0, { ...only, enclosure: { seatWall: OTHER[side] } }),
			elbowDeficit: mm(0, 60, only),
			elbowFlexion: mm(150, 60, only),
			hurtsFrom: mm(20, 170, only),
			closesRound: mm(30, 40),
			feels: either({ client: { weakerSide: told('neither') } }),
			points: [taped(side, 0), taped(side, -60), tried]
		} satisfies Record<string, Entry>).map(([name, entry]) => [`arms.${side}.${name}`, entry])
	);
}

/** A reach test taped on both sides of nothing: what was taped is the same, where she sat is not. */
const SEATED_AT: Where = {
	client: {
		...BARE.client,
		weakerSide: told('right'),
		arms: { left: { points: taped('left', 0) }, right: {} },
		reachTest: { ...SAT, behind: 'left' }
	},
	enclosure: { threshold: told(30), floorRise: told(40) }
};

const LENGTHS: Readonly<Record<string, Entry>> = Object.fromEntries(
	Object.entries({
		stature: mm(1560, 1700, BARE),
		armSpan: mm(1600, 1720, BARE),
		kneeHeight: mm(490, 540, BARE),
		sittingHeight: mm(830, 890, BARE),
		forearmToGrip: mm(305, 335, BARE),
		handLength: mm(170, 190, BARE),
		shoulderStanding: mm(1250, 1400, STANDS),
		wristStanding: mm(740, 840, STANDS),
		shoulderAboveSeat: mm(480, 600),
		elbowAboveSeat: mm(200, 260, RAILS),
		popliteal: mm(370, 440),
		buttockPopliteal: mm(460, 510, BARE),
		shoulderBreadth: mm(330, 400),
		hipBreadth: mm(360, 480)
	} satisfies Record<string, Entry>).map(([name, entry]) => [`body.${name}`, entry])
);

/** What may be otherwise later. */
const ABILITIES: Readonly<Record<string, Entry>> = {
	mass: [told(60), told(150)],
	weakerSide: [told('left'), told('right')],
	weakerHolds: either({ client: { weakerSide: told('left') } }),
	washes: [told('seated'), told('standing')],
	runsWater: [told('client'), told('helper')],
	sittingForward: mm(0, 120),
	lean: [told({ kind: 'none' }), told({ kind: 'free', at: 250 })],
	movesIn: [told('left'), told('right')],
	movesOut: [told('left'), told('right')],
	transfer: [told('walks'), told('hoist')],
	leaves: [told('walks'), told('hoist')],
	rises: [told('with-arms'), told('alone'), ON_FOOT],
	needsHold: either(STANDS),
	sits: [told('free'), told('held')],
	standsFor: [told(5), told(30), STANDS],
	tires: either(STANDS),
	helpedBy: [told('nobody'), told('two')],
	overlooks: [told('left'), told('right')],
	followsSteps: either(),
	skinAtRisk: either(),
	washedBelow: either(),
	seizures: either(),
	callsHelp: [told('cord'), told('worn')],
	hipLimit: either(),
	feelsHeat: either(),
	seesBars: either()
};

/** Two values for every fact of a person. */
const FACTS: Readonly<Record<string, Entry>> = {
	sex: [told('female'), told('male'), BARE],
	age: [told(40), told(80), BARE],
	...LENGTHS,
	...armFacts('left'),
	...armFacts('right'),
	'reachTest.behind': ['left', 'right', SEATED_AT],
	'reachTest.x': [457, 480, SEATED_AT],
	'reachTest.off': [60, 90, SEATED_AT],
	'reachTest.seatHeight': [457, 430, SEATED_AT],
	'reachTest.floor': ['shower', 'bathroom', SEATED_AT],
	'reachTest.how': ['measured', 'told', SEATED_AT],
	'reachTest.when': [
		'2024-01-10',
		'2026-01-10',
		{ client: { ...SEATED_AT.client, mass: { ...told(60), when: '2026-02-01' } } }
	],
	...ABILITIES,
	'chair.seatHeight': mm(450, 530),
	'chair.width': mm(600, 1000, CROSSES),
	'chair.length': mm(1000, 1300, CROSSES),
	'chair.obstacle': mm(0, 200, CROSSES),
	'chair.approach': [told('beside'), told('facing'), CROSSES],
	'chair.gap': mm(50, 120, CROSSES),
	'walkingAid.kind': [told('none'), told('frame')],
	'walkingAid.width': mm(600, 1000, AID),
	consents: either(),
	prognosis: [told('stable'), told('worsening')],
	...Object.fromEntries(Object.entries(ABILITIES).map(([name, entry]) => [`later.${name}`, entry]))
};

/** Words kept for the record, and nothing else. */
const WORDS = ['initials', 'goals'];

/** What only a drawing asks: whether a figure has her size. */
const DRAWN = 'ownFigure';

/** The case with one fact of the client as told. */
const withFact = (path: string, value: unknown, { client = {}, enclosure = {} }: Where = {}): Case =>
	caseWith({ case: { reference: null }, client: set(client, path.split('.'), value), enclosure });

/** What of a plan two values of a fact make different. */
function moves(path: string, [one, other, where]: Entry): readonly string[] {
	const [a, b] = [one, other].map((value) => comesTo(withFact(path, value, where)));
	return changed(a ?? {}, b ?? {});
}

describe('[needs R26] every fact of a person moves something', () => {
	test('every fact the record of a person can hold is tried here', () => {
		const all = leaves(person).filter((path) => path !== 'role' && path !== DRAWN && !WORDS.includes(path));
		expect(all.length).toBeGreaterThan(90);
		expect(all.filter((path) => !(path in FACTS))).toEqual([]);
		expect(Object.keys(FACTS).filter((path) => !all.includes(path))).toEqual([]);
	});

	test.each(Object.entries(FACTS))('%s', (path, entry) => {
		const found = moves(path, entry);
		expect(found).not.toEqual([]);
	});

	test('role: who helps and who else showers here are not the same', () => {
		const of = (role: string) =>
			comesTo(caseWith({ case: { reference: null }, others: { other: { role, mass: told(60) } } }));
		expect(changed(of('helper'), of('household'))).toContain('rows');
	});

	test('ownFigure moves the figure that is drawn, and nothing else', () => {
		const entry = either();
		expect(moves(DRAWN, entry)).toEqual([]);
		const drawn = [entry[0], entry[1]].map((value) => {
			const c = withFact(DRAWN, value);
			const plan = fixturePlan(c, [['seat', 'seat-450', 'left', 457, 430]]);
			return posePicture(plan, 'sitting', { x0: 0, y0: 0, x1: 180, y1: 120 }, 'p');
		});
		expect(drawn.map(({ whose }) => whose)).toEqual(['own', 'neutral']);
		expect(JSON.stringify(drawn[0]?.entities)).not.toEqual(JSON.stringify(drawn[1]?.entities));
	});

	test('words of the record move nothing, so that what is compared is not the record', () => {
		for (const path of WORDS) expect(moves(path, ['A.B.', 'C.D.'])).toEqual([]);
		expect(moves('mass', [told(60), { ...told(60), by: 'nurse' }])).toEqual([]);
	});
});

describe('[needs R26] whose the walls are moves something', () => {
	const of = (enclosure: Tree) => comesTo(caseWith({ case: { reference: null }, enclosure }));

	test('tenure, and permission', () => {
		expect(changed(of({ tenure: told('own') }), of({ tenure: told('rented') }))).toContain('findings');
		const rented = { tenure: told('rented') };
		expect(changed(of({ ...rented, permission: told(true) }), of({ ...rented, permission: told(false) }))).toContain(
			'findings'
		);
	});
});
