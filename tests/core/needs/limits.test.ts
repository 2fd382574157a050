import { describe, expect, test } from 'vitest';
import { variantOf, VARIANTS, type Mark } from '#core/case/accessory.ts';
import { questionOf } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import { NEEDS } from '#core/rules/packs/needs.ts';
import { caseWith, mark } from '../rules/baseline.ts';

const told = <T>(value: T) => ({ value, how: 'told' as const });
type Tree = Readonly<Record<string, unknown>>;

const WIDE = { type: 'roll-in', width: told(1600), depth: told(1600), fall: told(0), datum: told(0) };

type Spot = readonly [Mark['place']['wall'], number, number];
const at = (id: string, purpose: Mark['accessory']['purpose'], variant: string, [wall, x, y]: Spot) =>
	mark(id, { purpose, wall, x, y, variant: variantOf(variant) });
const seatAt = (y: number, x: number, part = 'seat-450') => at('seat', 'sit', part, ['left', x, y]);

/** One thing that is tried: who and where, and what stands there. */
interface Tried {
	readonly client: Tree;
	readonly enclosure?: Tree;
	readonly marks?: readonly Mark[];
}

/** What is inside, at the limit where there is one, and what is just outside, with where the limit is from. */
type Limit = readonly [row: string, source: string, inside: readonly Tried[], outside: readonly Tried[]];

const crosses = (chair: Tree, enclosure: Tree = {}): Tried => ({
	client: { transfer: told('sitting-pivot'), chair: { seatHeight: told(480), ...chair } },
	enclosure: { ...WIDE, ...enclosure }
});
const parks = (clearLength: number): Tried =>
	crosses(
		{ width: told(650), length: told(1100), approach: told('beside') },
		{ clearLength: told(clearLength), clearWidth: told(650) }
	);
const entry = (client: Tree): Tried => ({ client, enclosure: { ...WIDE, entryWidth: told(700) } });
const half = variantOf('seat-450').length / 2;
/** A seat with so much floor beyond its end, between the back wall and an open entry; then between two walls. */
const open = (by: string, beside: number): Tried => ({
	client: { helpedBy: told(by) },
	enclosure: WIDE,
	marks: [seatAt(450, 1600 - half - beside)]
});
/** Between the back wall and a wall beside the entry: less than 600 on this side, so much on the other. */
const walled = (beside: number): Tried => ({
	client: { helpedBy: told('one') },
	enclosure: {
		...WIDE,
		type: 'alternate-roll-in',
		frontWall: { side: 'left', length: told(600) },
		walls: { back: {}, left: {}, right: {}, front: { stands: true } }
	},
	marks: [seatAt(450, 1600 - half - beside)]
});
const overlooks = (side: string, x: number): Tried => ({
	client: { overlooks: told(side), weakerSide: told('neither') },
	enclosure: WIDE,
	marks: [seatAt(450, 800), at('control', 'run-water', 'control-lever', ['right', x, 900])]
});
/** So much hose to spare, on the grid of lengths: outlet or control and rest on one wall, 300 apart. */
const hose = (spare: number, from: 'control' | 'outlet'): Tried => {
	const [a, b] = [variantOf(from === 'control' ? 'control-lever' : 'hose-outlet'), variantOf('rest')];
	const way = Math.hypot(300, a.gripOff - b.gripOff);
	const purpose = from === 'control' ? 'run-water' : 'feed-hose';
	return {
		client: { washedBelow: told(true) },
		enclosure: {
			...WIDE,
			controls: from === 'control' ? 'one' : 'apart',
			hose: told(Math.ceil((way + spare) * 320) / 320)
		},
		marks: [
			at('handset-rest', 'rest-handset', 'rest', ['right', 900, 900]),
			at(from, purpose, a.id, ['right', 600, 900])
		]
	};
};
const rail = (above: number): Tried => ({
	client: {
		rises: told('with-arms'),
		body: { elbowAboveSeat: told(240), popliteal: told(388), shoulderAboveSeat: told(567), shoulderBreadth: told(365) }
	},
	enclosure: WIDE,
	marks: [seatAt(450, 800), at('rail-one', 'push-up', 'rail-600', ['left', 1150, 450 + above])]
});
const ONE_HAND = { weakerSide: told('left'), weakerHolds: told(false) };
const holder = (above: number): Tried => ({
	client: ONE_HAND,
	enclosure: WIDE,
	marks: [seatAt(450, 800), at('handset-holder', 'hang-handset', 'rest', ['right', 800, 450 + 567 + above])]
});
const steady = (above: number): Tried => ({
	client: { sits: told('one-hand'), transfer: told('hoist'), rises: told('cannot') },
	enclosure: WIDE,
	marks: [seatAt(450, 800), at('bar-back', 'sit-steady', 'bar-450', ['back', 300, 450 + above])]
});
const closes = (round: number, of: 'bar-back' | 'entry-bar'): Tried => ({
	client: {
		transfer: told('walks'),
		chair: {},
		rises: told('alone'),
		arms: { left: { toGrip: told(600), closesRound: told(round) }, right: { toGrip: told(600) } }
	},
	enclosure: WIDE,
	marks:
		of === 'bar-back'
			? [at(of, 'rise', 'bar-450', ['back', 300, 800])]
			: [at(of, 'step-in', 'post-bar-450', ['right', 1550, 800])]
});
const THICK = [variantOf('bar-450').diameter, variantOf('post-bar-450').diameter] as const;
const ON_LEGS = VARIANTS.find(({ kind, stands }) => kind === 'seat' && stands === 'legs')?.id ?? 'none';
const hoisted = (part: string): Tried => ({
	client: { transfer: told('hoist'), rises: told('cannot') },
	enclosure: WIDE,
	marks: [seatAt(450, 800, part)]
});
const washing = (width: number) =>
	entry({ washes: told('in-chair'), chair: { seatHeight: told(530), width: told(width) } });
const aided = (width: number) => entry({ walkingAid: { kind: told('frame'), width: told(width) } });

const LIMITS: readonly Limit[] = [
	['NEED-HOIST-UNDER', 'a base on wheels goes under the seat', [hoisted('seat-450')], [hoisted(ON_LEGS)]],
	['BODY-CHAIR-THROUGH', 'geometry', [washing(700)], [washing(701)]],
	['NEED-AID-THROUGH', 'geometry', [aided(700)], [aided(701)]],
	['NEED-CHAIR-PARKS', 'geometry of a box', [parks(1100)], [parks(1099)]],
	[
		'NEED-OBSTACLE',
		'Access Board study: 152 stops 42 %',
		[crosses({ obstacle: told(0) })],
		[crosses({ obstacle: told(1) })]
	],
	['NEED-GAP', 'Access Board study: 95 % cross 89', [crosses({ gap: told(89) })], [crosses({ gap: told(90) })]],
	[
		'NEED-HELPER-BESIDE',
		'Access Board report 4-21-4; 600 is common practice',
		[walled(600), walled(1600 - 2 * half - 600), open('one', 100)],
		[walled(599), walled(1600 - 2 * half - 599)]
	],
	['NEED-HELPERS-BESIDE', 'the same', [open('two', 600)], [open('two', 599)]],
	[
		'NEED-IN-SIGHT',
		'ours: the middle of who sits',
		[overlooks('left', 800), overlooks('right', 800), overlooks('left', 801), overlooks('right', 799)],
		[overlooks('left', 799), overlooks('right', 801)]
	],
	['NEED-BELOW-HOSE', 'common practice', [hose(600, 'outlet')], [hose(599, 'outlet')]],
	['NEED-BELOW-HOSE-CONTROL', 'common practice', [hose(600, 'control')], [hose(599, 'control')]],
	['NEED-RAIL-ELBOW', 'Lee 2019: within 25 few differences', [rail(215), rail(265)], [rail(214), rail(266)]],
	['NEED-HOLDER-SEATED', 'ours', [holder(50), holder(300)], [holder(49), holder(301)]],
	['NEED-SIT-STEADY-HEIGHT', 'ours', [steady(200), steady(450)], [steady(199), steady(451)]],
	['NEED-HAND-CLOSES', 'as measured', [closes(THICK[0], 'bar-back')], [closes(THICK[0] - 1, 'bar-back')]],
	['NEED-HAND-CLOSES-UPRIGHT', 'as measured', [closes(THICK[1], 'entry-bar')], [closes(THICK[1] - 1, 'entry-bar')]]
];

/** What a row answers of what is tried. */
function answers(row: string, { client, enclosure = {}, marks = [] }: Tried): readonly string[] {
	const question = questionOf(caseWith({ case: { reference: null }, client, enclosure }));
	const there = marks.flatMap((m) => {
		const accessory = question.wanted.find(({ id }) => id === m.accessory.id);
		return accessory ? [{ ...m, accessory }] : [];
	});
	return judge(question.scene, question.rows, there)
		.filter((f) => f.row.id === row && f.answer !== 'not-here')
		.map((f) => f.answer);
}

describe('[needs R27] limits of what a person needs', () => {
	test('every row that is not a question has its limit here', () => {
		const limited = NEEDS.rows.filter(({ allowed }) => typeof allowed === 'string' || !('ask' in allowed));
		expect(LIMITS.map(([row]) => row).toSorted()).toEqual(limited.map(({ id }) => id).toSorted());
	});

	test.each(LIMITS)('%s, %s: inside at its limit, outside just past it', (row, _, inside, outside) => {
		for (const [i, tried] of inside.entries()) expect(answers(row, tried), `inside ${String(i)}`).toEqual(['inside']);
		for (const [i, tried] of outside.entries())
			expect(answers(row, tried), `outside ${String(i)}`).toEqual(['outside']);
	});

	test('every question names whom', () => {
		const asks = NEEDS.rows.filter(({ allowed }) => typeof allowed === 'object' && 'ask' in allowed);
		expect(asks.length).toBeGreaterThan(15);
		expect(asks.filter(({ whom }) => whom === undefined).map(({ id }) => id)).toEqual([]);
	});
});
