import type { Mark } from '#core/case/accessory.ts';
import { VARIANTS } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Scene } from '#core/measures/scene.ts';
import { judge } from '#core/rules/judge.ts';
import type { BoundRow, Finding } from '#core/rules/row.ts';

/** Broken musts, then the five parts of a cost: worked out from findings alone, by the words of the house design. */
export type Price = readonly [number, number, number, number, number, number];

const NONE: Price = [0, 0, 0, 0, 0, 0];

const sum = (a: Price, b: Price): Price => a.map((n, i) => n + (b[i] ?? 0)) as unknown as Price;

function priceOf(f: Finding): Price {
	if (f.row.of === 'case' || f.strength === 'reported' || !['inside', 'outside', 'borderline'].includes(f.answer))
		return NONE;
	const { slope, unit } = MEASURES[f.row.measure];
	const yesNo = unit === 'yes';
	const short = f.answer === 'inside' ? 0 : yesNo ? 1 : -(f.slack ?? 0);
	const out = Math.min(short, f.row.missed ?? short);
	const { allowed, ourTolerance = 0 } = f.row;
	const oneFigure =
		typeof allowed === 'object' && 'min' in allowed && allowed.min.n === allowed.max?.n && ourTolerance === 0;
	const room = slope === 1 && f.strength !== 'tie-break' && !oneFigure;
	const near = room && f.answer === 'inside' && (f.slack ?? Infinity) < 5 ? 1 : 0;
	switch (f.strength) {
		case 'must':
			return [out > 0 ? 1 : 0, 0, 0, 0, 0, near];
		case 'should':
			return yesNo ? [0, out, 0, 0, 0, 0] : [0, 0, Math.floor(out / 25) ** 2, 0, 0, near];
		case 'prefer':
			return yesNo ? [0, 0, 0, out, 0, 0] : [0, 0, 0, 0, Math.ceil(out), near];
		case 'tie-break':
			return [0, 0, 0, 0, 0, Math.ceil(out / 10)];
	}
}

/** 0 on the round figures of the tape, 1 on its halves, 2 on its steps, 4 elsewhere. */
function unround(value: number, { unit, step }: Case['tape']): number {
	const on = (many: number) => {
		const left = Math.abs(value % (many * step));
		return Math.min(left, many * step - left) < 0.001;
	};
	const [round, half] = unit === 'in' ? [4, 2] : [5, 2];
	return on(round) ? 0 : on(half) ? 1 : on(1) ? 2 : 4;
}

/** What findings cost together. */
export const priceOfAll = (findings: readonly Finding[]): Price => findings.map(priceOf).reduce(sum, NONE);

/** What the figures of new marks cost for not being round. */
export const priceOfFigures = (c: Case, marks: readonly Mark[]): Price => [
	0,
	0,
	0,
	0,
	0,
	marks.map((m) => unround(m.place.x, c.tape) + unround(m.place.y, c.tape)).reduce((a, b) => a + b, 0)
];

/** What marks cost by the rows that speak only of them. */
export function price(scene: Scene, rows: readonly BoundRow[], marks: readonly Mark[]): Price {
	const ids = marks.map((m) => m.accessory.id);
	const speaks = rows.filter((r) => r.about.length === ids.length && ids.every((id) => r.about.includes(id)));
	const own = marks.length === 1 ? priceOfFigures(scene.c, marks) : NONE;
	return sum(priceOfAll(judge(scene, speaks, marks)), own);
}

/** Wall, part, height, distance: what decides between places that cost the same. */
export const orderOf = ({ place }: Mark): readonly number[] => [
	['back', 'left', 'right'].indexOf(place.wall),
	VARIANTS.findIndex((v) => v.id === place.variant),
	place.y,
	place.x
];
