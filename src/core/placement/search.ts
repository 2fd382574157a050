import type { Mark } from '#core/case/accessory.ts';
import type { BoundRow } from '#core/rules/row.ts';
import { aloneIn, pairIn, type Held, type Tally } from './bound.ts';
import { rootsOf, single, type Box } from './box.ts';
import { compare, PART_COUNT, plus, type Cost } from './cost.ts';
import { Heap } from './heap.ts';
import type { Problem, Unknown } from './problem.ts';

/** A plan found so far. */
export interface Found {
	readonly marks: readonly Mark[];
	readonly cost: Cost;
}

/** How far a search is. `bound` is a cost no plan goes below. */
export interface Progress extends Tally {
	readonly found: Found | null;
	readonly bound: Cost;
}

/** How a search is to end: at the proof, or with the first plan that breaks no must; and how many rows it may ask. */
export interface Limits {
	readonly until: 'proof' | 'first';
	readonly evaluations: number;
}

interface Option extends Own {
	readonly box: Box;
	/** The look-ahead in which it was worked out; a bound from one before still holds. */
	readonly asOf: number;
}

/** What a box costs beside what is settled. */
interface Own {
	/** No place of it costs less; its order keys are included. */
	readonly own: Cost;
	/** The rows about it and another that can still add something, by the other's number. All of them, where none are. */
	readonly pairs: Pairs;
}

type Pairs = readonly (readonly BoundRow[] | undefined)[];

/** A mark that counts beside a box: its number, and where it is. */
interface Beside {
	readonly index: number;
	readonly held: Held;
}

/** The cheapest option of an unknown, with every other place of it in boxes that cost no less. */
interface Front {
	readonly least: Option;
	readonly open: Heap<Option>;
}

/** An option of the unknown being settled, with the fronts of every unknown behind it. */
interface Branch extends Own {
	readonly box: Box;
	readonly all: Cost;
	readonly ahead: readonly Front[];
	/** What has been worked out beside the boxes settled: nothing yet, its own cost, or what lies behind it too. */
	readonly known: 'before' | 'own' | 'ahead';
}

const KEYS = 4;

/**
 * Branch and bound over boxes of places, one unknown after the other.
 * Each unknown is searched best first; a box is cut only when nothing cheaper is left. The least cost of every later
 * unknown beside what is settled is added to the bound (look-ahead). Costs are compared as words are in a dictionary,
 * and sums keep that order, so the first plan that meets its bound is best and unique.
 */
export class Search {
	readonly tally: Tally = { evaluations: 0, nodes: 0 };
	found: Found | null = null;
	bound: Cost;
	readonly #problem: Problem;
	readonly #limits: Limits;
	readonly #given: readonly Beside[];
	#round = 0;

	constructor(problem: Problem, limits: Limits) {
		this.#problem = problem;
		this.#limits = limits;
		const open = problem.unknowns.length;
		this.#given = problem.given.map((mark, i) => ({ index: open + i, held: { mark, half: [0, 0], radius: 0 } }));
		this.bound = this.#zero();
	}

	/** Runs the search, pausing often. Shape: gives nothing; read `found`, `bound` and `tally` at any pause. */
	*run(): Generator<undefined, 'proved' | 'stopped', undefined> {
		const fronts = this.#problem.unknowns.map((unknown) => this.#whole(unknown));
		if (fronts.every((front) => front !== null)) yield* this.#settle([], this.#zero(), fronts);
		if (this.#over()) return this.#limits.until === 'first' && this.found ? 'proved' : 'stopped';
		if (this.found) this.bound = this.found.cost;
		return 'proved';
	}

	#zero(): number[] {
		return new Array<number>(PART_COUNT + KEYS * this.#problem.unknowns.length).fill(0);
	}

	#over(): boolean {
		return (
			this.tally.evaluations >= this.#limits.evaluations || (this.#limits.until === 'first' && this.found !== null)
		);
	}

	/** Finds places for the unknowns behind those settled, given what these cost and the fronts from a step before. */
	*#settle(settled: readonly Box[], cost: Cost, before: readonly Front[]): Generator<undefined, void, undefined> {
		const ahead = this.#lookAhead(settled, before, cost);
		yield;
		if (!ahead || this.#over()) return;
		const total = sumOf(cost, ahead);
		if (settled.length === 0) this.bound = total;
		if (!this.#better(total)) return;
		const boxes = ahead.map((front) => front.least.box);
		// Every unknown at its own best, and they agree with one another: nothing behind these boxes is better.
		const torn = boxes.findIndex((box, i) => boxes.slice(i + 1).some((other) => !this.#agree(box, other)));
		if (torn < 0) this.#keep([...settled, ...boxes], total);
		// The first that does not agree with another is settled next; what agrees is left where it is.
		else yield* this.#branch(settled, cost, [...ahead.slice(torn, torn + 1), ...ahead.toSpliced(torn, 1)]);
	}

	*#branch(
		settled: readonly Box[],
		cost: Cost,
		[first, ...behind]: readonly Front[]
	): Generator<undefined, void, undefined> {
		if (!first) return;
		const heap = new Heap<Branch>((a, b) => compare(a.all, b.all));
		const push = (branch: Omit<Branch, 'all'>) => {
			heap.push({ ...branch, all: sumOf(plus(cost, branch.own), branch.ahead) });
		};
		const pushFresh = (box: Box, pairs: Pairs, ahead: readonly Front[]) => {
			const own = this.#own(box, settled, pairs);
			if (own) push({ ...own, box, ahead, known: 'own' });
		};
		const { box: best, own: least } = first.least;
		// One plan early: bounds prune only against a plan in hand.
		if (!this.found) yield* this.#settle([...settled, best], plus(cost, least), behind);
		for (const { box, own, pairs } of first.open.items()) push({ box, own, pairs, ahead: behind, known: 'before' });
		for (let branch = heap.pop(); branch; branch = heap.pop()) {
			if (settled.length === 0) this.bound = branch.all;
			if (this.#over() || !this.#better(branch.all)) return;
			const { box, own, pairs, ahead, known } = branch;
			if (known === 'before') pushFresh(box, pairs, ahead);
			else if (single(box)) yield* this.#settle([...settled, box], plus(cost, own), ahead);
			else if (known === 'ahead') for (const half of box.halves()) pushFresh(half, pairs, ahead);
			else {
				yield;
				const nearer = this.#lookAhead([...settled, box], ahead, plus(cost, own));
				if (nearer) push({ box, own, pairs, ahead: nearer, known: 'ahead' });
			}
		}
	}

	/**
	 * The cheapest of every unknown not settled, each beside the boxes settled but not beside one another.
	 * Shape: null when an unknown has no place left, or when together they cannot beat the plan in hand.
	 */
	#lookAhead(settled: readonly Box[], before: readonly Front[], cost: Cost): readonly Front[] | null {
		this.#round++;
		const fronts = [...before];
		for (const [i, front] of fronts.entries()) {
			const others = fronts.reduce<Cost>((sum, { least }, j) => (j === i ? sum : plus(sum, least.own)), cost);
			const raised = this.#raise(front, settled, others);
			if (!raised) return null;
			fronts[i] = raised;
		}
		return fronts;
	}

	/**
	 * The cheapest box of an unknown beside boxes settled: a place when they are places, else no wider than they are.
	 * Settling more makes nothing cheaper, so bounds from a step before are kept until a box comes up.
	 * Shape: null when no place is left, or none that beats the plan in hand beside the others.
	 */
	#raise(before: Front, settled: readonly Box[], others: Cost): Front | null {
		const { box, own, pairs } = before.least;
		const now = this.#fine(box, settled) && this.#own(box, settled, pairs);
		// What was least and costs no more is least still, and the queue behind it needs no second copy.
		if (now && compare(now.own, own) === 0) {
			return this.#better(plus(others, own)) ? { ...before, least: { ...now, box, asOf: this.#round } } : null;
		}
		const open = before.open.copy();
		const push = (part: Box, rows: Pairs) => {
			const cost = this.#own(part, settled, rows);
			if (cost) open.push({ ...cost, box: part, asOf: this.#round });
		};
		for (let least = open.peek(); least; least = open.peek()) {
			if (!this.#better(plus(others, least.own))) return null;
			const fresh = least.asOf === this.#round;
			if (fresh && this.#fine(least.box, settled)) return { least, open };
			open.pop();
			if (fresh) for (const half of least.box.halves()) push(half, least.pairs);
			else push(least.box, least.pairs);
		}
		return null;
	}

	#fine(box: Box, settled: readonly Box[]): boolean {
		return single(box) || settled.some((other) => !single(other) && box.radius <= other.radius);
	}

	/** Every place of an unknown, nothing known of its cost; null when it has none. */
	#whole(unknown: Unknown): Front | null {
		const open = new Heap<Option>((a, b) => compare(a.own, b.own));
		for (const box of rootsOf(unknown)) open.push({ box, own: this.#zero(), pairs: [], asOf: 0 });
		const least = open.peek();
		return least ? { least, open } : null;
	}

	/** True when a companion on the same line is settled at heights this box has not. */
	#offLine(box: Box, settled: readonly Box[]): boolean {
		const { line } = box.unknown.accessory;
		const mate = line === undefined ? undefined : settled.find((b) => b.unknown.accessory.line === line);
		return mate !== undefined && (mate.y[0] > box.y[1] || mate.y[1] < box.y[0]);
	}

	/**
	 * What a box costs at least beside the boxes settled and the marks given; null when it breaks a must.
	 * Settled boxes only shrink, so what cannot add anything is not asked again.
	 */
	#own(box: Box, settled: readonly Box[], before: Pairs): Own | null {
		const { scene } = this.#problem;
		if (this.#offLine(box, settled)) return null;
		if (box.alone === undefined) box.alone = aloneIn(scene, box.rows, box, this.tally);
		if (!box.alone) return null;
		const own = this.#zero();
		addTo(own, box.alone.parts);
		const pairs = before.slice();
		for (const { index, held } of [...this.#given, ...settled.map(besideOf)]) {
			const rows = before[index] ?? box.unknown.pairs.get(held.mark.accessory.id);
			if (!rows || rows.length === 0) continue;
			const weighed = pairIn(scene, rows, [box, held], this.tally);
			if (!weighed) return null;
			addTo(own, weighed.parts);
			pairs[index] = weighed.open;
		}
		box.keys.forEach((key, i) => (own[PART_COUNT + KEYS * box.unknown.index + i] = key));
		return { own, pairs };
	}

	/** True when two places add nothing to one another's cost. */
	#agree(box: Box, other: Box): boolean {
		if (this.#offLine(box, [other])) return false;
		const rows = box.unknown.pairs.get(other.unknown.accessory.id) ?? [];
		const weighed = pairIn(this.#problem.scene, rows, [box, other], this.tally);
		return weighed?.parts.every((part) => part === 0) ?? false;
	}

	#keep(boxes: readonly Box[], cost: Cost): void {
		const inOrder = boxes.toSorted((a, b) => a.unknown.index - b.unknown.index);
		this.found = { marks: inOrder.map((box) => box.mark), cost };
	}

	#better(cost: Cost): boolean {
		return !this.found || compare(cost, this.found.cost) < 0;
	}
}

const besideOf = (box: Box): Beside => ({ index: box.unknown.index, held: box });

function addTo(sum: number[], parts: readonly number[]): void {
	for (let i = 0; i < parts.length; i++) sum[i] = (sum[i] ?? 0) + (parts[i] ?? 0);
}

const sumOf = (cost: Cost, fronts: readonly Front[]): Cost =>
	fronts.reduce<Cost>((sum, front) => plus(sum, front.least.own), cost);
