import { describe, expect, test } from 'vitest';
import { bodiesOf } from '#core/body/body.ts';
import { VARIANTS, variantOf, type Mark, type Variant } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { wantedFor } from '#core/needs/wanted.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import { inches } from '#core/units/length.ts';
import {
	alternate,
	answers,
	barPart,
	caseWith,
	mark,
	marksOf,
	otherHand,
	outside,
	rollIn,
	workedPart
} from './baseline.ts';

/** An L seat by inches: along its own wall from the wall beside it, and out from its own wall. */
interface Shape {
	readonly from: number;
	readonly to: number;
	readonly rear: number;
	readonly front: number;
	readonly armFront: number;
	readonly armEnd: number;
}

/** From 1.0 to 33.5 out from the wall beside it, as the seat of baseline T1; its arm 13.5 wide, 22.5 out. */
const L: Shape = { from: 1, to: 33.5, rear: 2, front: 15.5, armFront: 14.5, armEnd: 22.5 };

/** Its part. The corner with the wall beside it lies at the right end of the left wall. */
function part({ from, to, rear, front, armFront, armEnd }: Shape): Variant {
	const half = (to - from) / 2;
	const model = variantOf('l-seat-820-right');
	return {
		...model,
		brackets: model.brackets.map((b, i) => ({ ...b, x: inches(i === 0 ? 2.5 - half : half - 2.5) })),
		outline: { x0: inches(-half), y0: -140, x1: inches(half), y1: 0 },
		length: inches(to - from),
		gap: inches(rear),
		depth: inches(front),
		arm: { x0: inches(half - (armFront - from)), x1: inches(half), to: inches(armEnd) }
	};
}

/** On a wall whose right end is the corner, so many inches long. */
const seat = (wall: WallId, length: number, shape: Shape): Mark =>
	mark('seat', {
		purpose: 'sit',
		wall,
		x: inches(length - (shape.from + shape.to) / 2),
		y: inches(18),
		variant: part(shape)
	});

const onLeft = (change: Partial<Shape> = {}): readonly Mark[] => [
	...marksOf().filter((m) => m.accessory.id !== 'seat'),
	seat('left', 36, { ...L, ...change })
];

/** Case and marks for the other hand, the arm of the seat with them. */
function mirrored(c: Case, marks: readonly Mark[]): readonly [Case, readonly Mark[]] {
	const [other, across] = otherHand(c, marks);
	const turned = ({ arm, ...rest }: Variant): Variant => ({
		...rest,
		...(arm && { arm: { x0: inches(-arm.x1 / 25.4), x1: inches(-arm.x0 / 25.4), to: arm.to } })
	});
	return [other, across.map((m) => ({ ...m, variant: turned(m.variant) }))];
}

const OF_L = ['ADA-ST-LREAR', 'ADA-ST-LFRONT', 'ADA-ST-LEND'] as const;

// Every fixture: the clause named in the title, just under, on and just over its figure, in inches.
describe.each(['as drawn', 'in the mirrored room'])('L-shaped seats %s, clause fixtures', (hand) => {
	const found = (c: Case, marks: readonly Mark[]) =>
		answers(...(hand === 'as drawn' ? ([c, marks] as const) : mirrored(c, marks)));
	const out = (change: Partial<Shape>) => outside(found(caseWith(), onLeft(change)));

	test('[rules R3] 610.3.2 baseline T1 with an L seat is inside every clause, and its rows speak of it', () => {
		expect(out({})).toEqual([]);
		const all = found(caseWith(), onLeft());
		expect(OF_L.map((id) => all[id])).toEqual(['inside', 'inside', 'inside']);
		expect(all['ADA-ST-SIDE']).toBe('not-here');
	});

	test('[rules R3] 610.3.1, 610.3.2 the rows of the L do not speak of a rectangular seat, that of its side does', () => {
		const all = found(caseWith(), marksOf());
		expect(OF_L.map((id) => all[id])).toEqual(['not-here', 'not-here', 'not-here']);
		expect(all['ADA-ST-SIDE']).toBe('inside');
	});

	test.each([
		['610.3.2 rear edge of the L, 1 1/2 at most', { from: 1.4375 }, []],
		['610.3.2 rear edge of the L, on 1 1/2', { from: 1.5 }, []],
		['610.3.2 rear edge of the L, over 1 1/2', { from: 1.5625 }, ['ADA-ST-LREAR']],
		['610.3.2 front edge of the L, under 14', { armFront: 13.9375 }, ['ADA-ST-LFRONT']],
		['610.3.2 front edge of the L, on 14', { armFront: 14 }, []],
		['610.3.2 front edge of the L, on 15', { armFront: 15 }, []],
		['610.3.2 front edge of the L, over 15', { armFront: 15.0625 }, ['ADA-ST-LFRONT']],
		['610.3.2 end of the L, under 22', { armEnd: 21.9375 }, ['ADA-ST-LEND']],
		['610.3.2 end of the L, on 22', { armEnd: 22 }, []],
		['610.3.2 end of the L, on 23', { armEnd: 23 }, []],
		['610.3.2 end of the L, between 23 and the printed 585', { armEnd: 23.025 }, ['ADA-ST-LEND']],
		['610.3.2 end of the L, over 23', { armEnd: 23.0625 }, ['ADA-ST-LEND']],
		['610.3.2 rear edge of the main part, on 2 1/2', { rear: 2.5 }, []],
		['610.3.2 rear edge of the main part, over 2 1/2', { rear: 2.5625 }, ['ADA-ST-REAR']],
		['610.3.2 front edge of the main part, under 15', { front: 14.9375 }, ['ADA-ST-FRONT']],
		['610.3.2 front edge of the main part, on 15', { front: 15 }, []],
		['610.3.2 front edge of the main part, on 16', { front: 16 }, []],
		['610.3.2 front edge of the main part, over 16', { front: 16.0625 }, ['ADA-ST-FRONT']],
		['610.3 end of the seat, on 3 from the entry', { to: 33 }, []],
		['610.3 end of the seat, over 3 from the entry', { to: 32.9375 }, ['ADA-ST-END']]
	] as const)('[rules R3] %s', (_, change, rows) => {
		expect(out(change)).toEqual(rows);
	});

	test.each([
		['ADA-ST-LFRONT', { armFront: 13.98 }],
		['ADA-ST-LEND', { armEnd: 23.025 }]
	] as const)('[rules R4] 610.3.2 %s is borderline where only the printed millimetres allow it', (id, change) => {
		expect(found(caseWith(), onLeft(change))[id]).toBe('borderline');
	});

	test('[rules R3] 610.3.2 an arm at the entry runs along no wall', () => {
		const there = onLeft().map((m): Mark => {
			const { arm } = m.variant;
			if (!arm) return m;
			const turned = { x0: inches(-arm.x1 / 25.4), x1: inches(-arm.x0 / 25.4), to: arm.to };
			return { ...m, variant: { ...m.variant, arm: turned } };
		});
		expect(outside(found(caseWith(), there))).toEqual(['ADA-ST-LREAR', 'ADA-ST-LFRONT']);
	});

	// The seat takes 60 by 30 from 1.0 to 28.5; its arm ends 22.5 off its wall, so the bar may not begin before that.
	test('[rules R3] 608.3.2 a bar of a roll-in is not over the arm, and begins at most 6 past its end', () => {
		const bars = (from: number): readonly Mark[] => [
			seat('left', 30, { ...L, to: 28.5 }),
			mark('control', {
				purpose: 'run-water',
				wall: 'back',
				x: inches(24),
				y: inches(42),
				variant: workedPart('control', { across: 0, up: 4 })
			}),
			mark('bar-back', {
				purpose: 'rise',
				wall: 'back',
				x: inches(from),
				y: inches(34 - 0.625),
				variant: barPart('horizontal-bar', { length: 55.5 - from })
			}),
			mark('bar-control', {
				purpose: 'steady',
				wall: 'right',
				x: inches(4.5),
				y: inches(34 - 0.625),
				variant: barPart('horizontal-bar', { length: 22.5 })
			})
		];
		const at = (from: number) => outside(found(rollIn(), bars(from)));
		expect(at(22.4375)).toEqual(['ADA-GB-NOSEAT']);
		expect(at(22.5)).toEqual([]);
		expect(at(28.5)).toEqual([]);
		expect(at(28.5625)).toEqual(['ADA-GB-CORNER-SEAT']);
	});

	// The seat on the wall beside the entry, 24 long at the left: its corner is with the left wall.
	test('[rules R3] 610.3.2 on the wall beside the entry the arm runs along the side wall', () => {
		const on = (from: number) => {
			const all = found(alternate(), [seat('front', 60, { ...L, from, to: from + 21.5, armFront: 14.5 })]);
			return OF_L.map((id) => all[id]);
		};
		expect(on(0.5)).toEqual(['inside', 'inside', 'inside']);
		expect(on(1.5625)).toEqual(['outside', 'inside', 'inside']);
	});
});

test('[rules R1] 608.6 an upright bar of the hand shower is asked about, in a compartment of every type', () => {
	for (const c of [caseWith(), rollIn(), alternate()]) expect(answers(c, [])['ADA-HS-CLR']).toBe('ask');
});

describe('L-shaped seats as sold', () => {
	const sold = VARIANTS.filter((v) => v.arm);

	test('[rules R3] 610.3.2 each size, set 1/2 to 1 1/4 in from the wall beside it, has an arm as the clause asks', () => {
		expect(sold.length).toBeGreaterThan(0);
		for (const v of sold) {
			const at = (gap: number) => {
				const corner = v.id.endsWith('-right') ? 'left' : 'right';
				const x = corner === 'left' ? inches(36 - gap) - v.length / 2 : inches(gap) + v.length / 2;
				const c = caseWith({ enclosure: { seatWall: corner } });
				const all = answers(c, [mark('seat', { purpose: 'sit', wall: corner, x, y: 457, variant: v })]);
				return OF_L.map((id) => all[id]);
			};
			expect(at(0.5)).toEqual(['inside', 'inside', 'inside']);
			expect(at(1.25)).toEqual(['inside', 'inside', 'inside']);
			expect(at(1.75)).toEqual(['outside', 'outside', 'inside']);
		}
	});

	test('[needs R4] none is offered, whoever leads', () => {
		for (const lead of ['person-led', 'reference-led']) {
			const c = caseWith({ case: { lead } });
			const slots = wantedFor(packsFor(c.reference), c, bodiesOf(c.people)).find((a) => a.kind === 'seat')?.slots ?? [];
			expect(slots.length).toBeGreaterThan(0);
			expect(slots.filter(({ variant }) => variantOf(variant).arm)).toEqual([]);
		}
	});

	test('[rules R3] 610.3.2 each has its like for the other hand', () => {
		for (const v of sold) {
			const like = variantOf(v.mirror ?? '');
			expect(like.mirror).toBe(v.id);
			expect([like.length, like.depth, like.arm?.to]).toEqual([v.length, v.depth, v.arm?.to]);
			expect([like.arm?.x0, like.arm?.x1].map(Number)).toEqual([-Number(v.arm?.x1), -Number(v.arm?.x0)]);
		}
	});
});
