import { variantOf, type Mark } from '#core/case/accessory.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Scene } from '#core/measures/scene.ts';
import { asMissed, charge, DRILL_ROOM, HALF_TICK, PART_COUNT, PARTS } from '#core/placement/cost.ts';
import { axisOf, type Axis } from '#core/placement/lattice.ts';
import { asksRoom } from '#core/placement/price.ts';
import type { Problem, Unknown } from '#core/placement/problem.ts';
import { judge } from '#core/rules/judge.ts';
import type { Finding } from '#core/rules/row.ts';
import type { Choice, Choices } from './integer-program.ts';

const SPAN = 3;
const STRIDE = 4;

interface Priced extends Choice {
	readonly mark: Mark;
}

/** A few values of an axis on both sides of one of them. */
function near({ values }: Axis, at: number, problem: Problem): Axis {
	const middle = values.findIndex((v) => v === at);
	const kept = values.filter((_, i) => Math.abs(i - middle) <= SPAN * STRIDE && (i - middle) % STRIDE === 0);
	return axisOf(kept, problem.scene.c.tape);
}

/** A problem cut down to some places round a plan of it, few enough for a general library to take on. */
export function reduced(problem: Problem, marks: readonly Mark[]): Problem {
	const unknowns = problem.unknowns.map((u) => {
		const mark = marks.find((m) => m.accessory.id === u.accessory.id);
		const spots = u.spots
			.filter(({ slot }) => slot.wall === mark?.place.wall && slot.variant === mark.place.variant)
			.map((spot) => ({
				...spot,
				xs: near(spot.xs, mark?.place.x ?? NaN, problem),
				ys: near(spot.ys, mark?.place.y ?? NaN, problem)
			}));
		return { ...u, spots };
	});
	return { ...problem, unknowns };
}

/** What findings cost together, part by part; null when a must is broken. */
function priceOf(findings: readonly Finding[]): number[] | null {
	const parts = new Array<number>(PART_COUNT).fill(0);
	for (const finding of findings) {
		const { row, strength, answer, slack = 0 } = finding;
		if (answer !== 'inside' && answer !== 'outside' && answer !== 'borderline') continue;
		const { unit } = MEASURES[row.measure];
		const out = answer === 'inside' ? 0 : unit === 'yes' ? 1 : -slack;
		if (out > 0 && strength === 'must') return null;
		charge(parts, strength, asMissed(row, out), unit === 'yes' ? 'yes-no' : 'mm');
		const near = answer === 'inside' && slack + HALF_TICK < DRILL_ROOM;
		if (near && asksRoom(finding)) parts[PARTS.tie] = (parts[PARTS.tie] ?? 0) + 1;
	}
	return parts;
}

/** Every place an unknown may take that breaks no must alone, with what its rows and its figures cost. */
function placesOf(scene: Scene, { accessory, spots, rows }: Unknown): readonly Priced[] {
	return spots.flatMap(({ slot, xs, ys }) =>
		ys.values.flatMap((y, iy) =>
			xs.values.flatMap((x, ix) => {
				const place = { ...slot, x, y, turn: 0 } as const;
				const mark: Mark = { accessory, place, variant: variantOf(slot.variant), stage: 'proposed' };
				const parts = priceOf(judge(scene, rows, [mark]));
				if (!parts) return [];
				parts[PARTS.tie] = (parts[PARTS.tie] ?? 0) + (xs.rough[ix] ?? 0) + (ys.rough[iy] ?? 0);
				return [{ mark, y, parts }];
			})
		)
	);
}

/** A reduced problem written out place by place, its prices worked out from what the judge says. */
export function choicesOf({ scene, unknowns }: Problem): Choices {
	const places = unknowns.map((u) => placesOf(scene, u));
	return {
		unknowns: places.map((list, i) => ({ line: unknowns[i]?.accessory.line, places: list })),
		pair: (i, p, j, q) => {
			const [a, b] = [places[i]?.[p]?.mark, places[j]?.[q]?.mark];
			if (!a || !b) return null;
			return priceOf(judge(scene, unknowns[i]?.pairs.get(b.accessory.id) ?? [], [a, b]));
		}
	};
}
