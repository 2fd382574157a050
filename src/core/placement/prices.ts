import type { BoundRow } from '#core/rules/row.ts';
import { aloneIn, pairIn, type Held, type Tally, type Weighed } from './bound.ts';
import { Box } from './box.ts';
import type { Price } from './cost.ts';
import type { Problem, Unknown } from './problem.ts';

/** Rows about an unknown and another that can still add something, by the other's number. */
export type Pairs = readonly (readonly BoundRow[])[];

/** What a box costs at least beside what is settled. */
export interface Own extends Price {
	readonly pairs: Pairs;
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** What boxes of a problem cost at least, alone and beside one another. What was worked out once is kept with its box. */
export class Prices {
	readonly #problem: Problem;
	readonly #given: readonly Held[];
	readonly #tally: Tally;

	constructor(problem: Problem, tally: Tally) {
		this.#problem = problem;
		this.#given = problem.given.map((mark) => ({ mark, half: [0, 0], radius: 0 }));
		this.#tally = tally;
	}

	/** Every row about an unknown and another, by the other's number; marks given are numbered after the unknowns. */
	pairsOf({ pairs }: Unknown): Pairs {
		const { unknowns, given } = this.#problem;
		return [...unknowns.map((u) => u.accessory.id), ...given.map((m) => m.accessory.id)].map(
			(id) => pairs.get(id) ?? []
		);
	}

	/**
	 * What a box costs at least beside boxes settled and the marks given; null when it breaks a must.
	 * Settled boxes only shrink, so rows that could add nothing before are not asked again.
	 */
	own(box: Box, settled: readonly Box[], before: Pairs): Own | null {
		for (const mate of settled) if (offLine(box, mate)) return null;
		const alone = this.#alone(box);
		if (!alone) return null;
		const own = { high: alone.high, low: alone.low, pairs: before };
		for (const mate of settled) if (!this.#add(own, box, { mate, index: mate.unknown.index })) return null;
		for (let i = 0; i < this.#given.length; i++) {
			const mate = this.#given[i] as Held;
			if (!this.#add(own, box, { mate, index: this.#problem.unknowns.length + i })) return null;
		}
		return own;
	}

	/** True when two boxes need not add anything to one another's cost. */
	agree(box: Box, other: Box): boolean {
		if (offLine(box, other)) return false;
		const rows = box.unknown.pairs.get(other.unknown.accessory.id) ?? [];
		const weighed = rows.length === 0 ? { high: 0, low: 0 } : this.#pair(box, other, rows);
		return weighed?.high === 0 && weighed.low === 0;
	}

	#alone(box: Box): Weighed {
		if (box.alone !== undefined) return box.alone;
		this.#tally.nodes++;
		this.#tally.evaluations += box.rows.length;
		return (box.alone = aloneIn(this.#problem.scene, box.rows, box));
	}

	/** Adds what a box costs beside one mark; false when together they break a must. */
	#add(own: Mutable<Own>, box: Box, { mate, index }: { readonly mate: Held; readonly index: number }): boolean {
		const rows = own.pairs[index] ?? [];
		if (rows.length === 0) return true;
		const weighed = this.#pair(box, mate, rows);
		if (!weighed) return false;
		own.high += weighed.high;
		own.low += weighed.low;
		if (weighed.open.length < rows.length) own.pairs = own.pairs.with(index, weighed.open);
		return true;
	}

	#pair(box: Box, mate: Held, rows: readonly BoundRow[]): Weighed {
		this.#tally.evaluations += rows.length;
		const earlier = mate instanceof Box && mate.unknown.index < box.unknown.index;
		const [keeper, other] = earlier ? [mate, box] : [box, mate];
		const kept = keeper.beside.get(other);
		if (kept !== undefined) return kept;
		const weighed = pairIn(this.#problem.scene, rows, box, mate);
		keeper.beside.set(other, weighed);
		return weighed;
	}
}

/** True when two companions on one line have no height in common. */
function offLine(box: Box, mate: Box): boolean {
	const { line } = box.unknown.accessory;
	return line !== undefined && mate.unknown.accessory.line === line && (mate.y[0] > box.y[1] || mate.y[1] < box.y[0]);
}
