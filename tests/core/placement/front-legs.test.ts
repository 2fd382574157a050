import { describe, expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { planCase } from '#core/plan.ts';
import { mm } from '#core/units/length.ts';
import { client } from './reduced.ts';

const QUICK: Case = { ...client('turns-left'), lead: 'reference-led' };
const { seatWall, walls } = QUICK.enclosure;
const board = { x0: mm(0), x1: mm(914), y0: mm(-900), y1: mm(600), thickness: mm(38), gravity: 0.42 } as const;
const behind = (kind: 'blocking' | 'sheet', thickness: number): Case => {
	const one = { ...board, kind, thickness: mm(thickness), how: 'measured' } as const;
	const wall = { ...walls[seatWall], surveyed: true, backing: { one } };
	return { ...QUICK, enclosure: { ...QUICK.enclosure, walls: { ...walls, [seatWall]: wall } } };
};
const seatOf = (c: Case) => planCase(c).marks.find(({ accessory }) => accessory.id === 'seat')?.variant;

// Source: the arithmetic of the brackets, structure R8 and R19, and the order of preference in the needs.
describe('what the wall holds of a seat', { timeout: 120_000 }, () => {
	test('[placement R7] declared for a seat: one without legs', () => {
		expect(seatOf(QUICK)).toMatchObject({ id: expect.stringMatching(/^seat-\d+in$/) as string });
	});

	test('[placement R7] one board of spruce: one with front legs, which still folds', () => {
		const seat = seatOf(behind('blocking', 38));
		expect(seat?.id).toMatch(/^seat-front-legs-/);
		expect(seat?.stands).toBeUndefined();
	});

	// The document asks for a seat that runs on to the entry; none that stands on four legs is as wide.
	test('[placement R7] a thin sheet: none that the document takes', () => {
		expect(seatOf(behind('sheet', 12))).toBeUndefined();
	});
});
