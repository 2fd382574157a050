import type { Mark } from '#core/case/accessory.ts';
import { axisOf, type Axis } from '#core/placement/lattice.ts';
import { aloneIn, pairIn } from '#core/placement/bound.ts';
import { Box } from '#core/placement/box.ts';
import type { Problem } from '#core/placement/problem.ts';
import type { Choices } from './integer-program.ts';

const SPAN = 3;
const STRIDE = 4;

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

/** A reduced problem written out place by place. */
export function choicesOf({ scene, unknowns }: Problem): Choices {
	const tally = { evaluations: 0, nodes: 0 };
	const places = unknowns.map((u) =>
		u.spots.flatMap((spot) =>
			spot.xs.values.flatMap((_, ix) =>
				spot.ys.values.flatMap((y, iy) => {
					const box = new Box(u, spot, [ix, ix], [iy, iy]);
					const weighed = aloneIn(scene, u.rows, box, tally);
					return weighed ? [{ box, y, parts: weighed.parts }] : [];
				})
			)
		)
	);
	return {
		unknowns: places.map((list, i) => ({ line: unknowns[i]?.accessory.line, places: list })),
		pair: (i, p, j, q) => {
			const [a, b] = [places[i]?.[p]?.box, places[j]?.[q]?.box];
			if (!a || !b) return null;
			const rows = a.unknown.pairs.get(b.unknown.accessory.id) ?? [];
			return pairIn(scene, rows, [a, b], tally)?.parts ?? null;
		}
	};
}
