import type { Mark } from '../case/accessory.ts';
import { aloneIn, pairIn, type Held, type Parts, type Tally } from './bound.ts';
import { halves, rootsOf, single, type Box } from './box.ts';
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

/** How a search is to end: at the proof, or with the first plan that breaks no must; and its budget of nodes. */
export interface Limits {
	readonly until: 'proof' | 'first';
	readonly nodes: number;
}

interface Option {
	readonly box: Box;
	/** What the box costs at least beside what is settled, its order keys included. */
	readonly own: Cost;
	/** The same with the least of every unknown behind it. */
	readonly all: Cost;
	readonly refined: boolean;
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
	readonly #given: readonly Held[];
	readonly #alone = new WeakMap<Box, { parts: Parts }>();
	readonly #halves = new WeakMap<Box, readonly [Box, Box]>();
	readonly #roots = new Map<string, readonly Box[]>();

	constructor(problem: Problem, limits: Limits) {
		this.#problem = problem;
		this.#limits = limits;
		this.#given = problem.given.map((mark) => ({ mark, radius: 0 }));
		this.bound = this.#zero();
	}

	/** Runs the search, pausing often. Shape: gives nothing; read `found`, `bound` and `tally` at any pause. */
	*run(): Generator<undefined, 'proved' | 'stopped', undefined> {
		yield* this.#settle([], this.#zero());
		if (this.#over()) return this.#limits.until === 'first' && this.found ? 'proved' : 'stopped';
		if (this.found) this.bound = this.found.cost;
		return 'proved';
	}

	#zero(): number[] {
		return new Array<number>(PART_COUNT + KEYS * this.#problem.unknowns.length).fill(0);
	}

	#over(): boolean {
		return this.tally.nodes >= this.#limits.nodes || (this.#limits.until === 'first' && this.found !== null);
	}

	/** Finds places for the unknowns behind those settled, given what these cost. */
	*#settle(settled: readonly Box[], cost: Cost): Generator<undefined, void, undefined> {
		const { unknowns } = this.#problem;
		const next = unknowns[settled.length];
		const ahead = this.#lookAhead(settled, settled.length);
		yield;
		if (!ahead || this.#over()) return;
		const total = ahead.reduce<Cost>((sum, option) => plus(sum, option.own), cost);
		if (settled.length === 0) this.bound = total;
		if (!this.#better(total)) return;
		// Every unknown at its own best, and they agree with one another: nothing behind these boxes is better.
		if (this.#agree(ahead)) this.#keep([...settled, ...ahead.map((o) => o.box)], total);
		else if (next) yield* this.#branch(settled, cost, { next, behind: ahead.slice(1) });
	}

	*#branch(
		settled: readonly Box[],
		cost: Cost,
		{ next, behind }: { readonly next: Unknown; readonly behind: readonly Option[] }
	): Generator<undefined, void, undefined> {
		const rest = behind.reduce<Cost>((sum, option) => plus(sum, option.own), cost);
		const heap = new Heap<Option>((a, b) => compare(a.all, b.all));
		const push = (box: Box) => {
			const own = this.#own(box, settled);
			if (own) heap.push({ box, own, all: plus(own, rest), refined: false });
		};
		this.#rootsBeside(next, settled).forEach(push);
		for (let option = heap.pop(); option; option = heap.pop()) {
			if (settled.length === 0) this.bound = option.all;
			if (this.#over() || !this.#better(option.all)) return;
			if (single(option.box)) {
				yield* this.#settle([...settled, option.box], plus(cost, option.own));
			} else if (option.refined) {
				this.#cut(option.box).forEach(push);
			} else {
				yield;
				const ahead = this.#lookAhead([...settled, option.box], settled.length + 1);
				if (!ahead) continue;
				const all = ahead.reduce<Cost>((sum, o) => plus(sum, o.own), plus(cost, option.own));
				heap.push({ ...option, all: compare(all, option.all) > 0 ? all : option.all, refined: true });
			}
		}
	}

	/** The cheapest place of every unknown from `from` on, each beside the boxes settled but not beside one another. */
	#lookAhead(settled: readonly Box[], from: number): readonly Option[] | null {
		const options: Option[] = [];
		for (const unknown of this.#problem.unknowns.slice(from)) {
			const least = this.#least(unknown, settled);
			if (!least) return null;
			options.push(least);
		}
		return options;
	}

	#least(unknown: Unknown, settled: readonly Box[]): Option | null {
		const heap = new Heap<Option>((a, b) => compare(a.own, b.own));
		const push = (box: Box) => {
			const own = this.#own(box, settled);
			if (own) heap.push({ box, own, all: own, refined: false });
		};
		this.#rootsBeside(unknown, settled).forEach(push);
		for (let option = heap.pop(); option; option = heap.pop()) {
			if (single(option.box)) return option;
			this.#cut(option.box).forEach(push);
		}
		return null;
	}

	/** What a box costs at least beside the boxes settled and the marks given; null when it breaks a must. */
	#own(box: Box, settled: readonly Box[]): Cost | null {
		const { scene } = this.#problem;
		let alone = this.#alone.get(box);
		if (!alone) {
			alone = { parts: aloneIn(scene, box, this.tally) };
			this.#alone.set(box, alone);
		}
		if (!alone.parts) return null;
		const cost = this.#zero();
		alone.parts.forEach((part, i) => (cost[i] = part));
		const me: Held = { mark: box.middle, radius: single(box) ? 0 : box.radius };
		for (const other of [...this.#given, ...settled.map(heldOf)]) {
			const rows = box.unknown.pairs.get(other.mark.accessory.id);
			if (!rows) continue;
			const parts = pairIn(scene, rows, [me, other], this.tally);
			if (!parts) return null;
			parts.forEach((part, i) => (cost[i] = (cost[i] ?? 0) + part));
		}
		box.keys.forEach((key, i) => (cost[PART_COUNT + KEYS * box.unknown.index + i] = key));
		return cost;
	}

	/** True when the places add nothing to one another's cost. */
	#agree(options: readonly Option[]): boolean {
		return options.every(({ box }, i) =>
			options.slice(i + 1).every((other) => {
				const line = box.unknown.accessory.line;
				const sameLine = line !== undefined && line === other.box.unknown.accessory.line;
				if (sameLine && box.middle.place.y !== other.box.middle.place.y) return false;
				const rows = box.unknown.pairs.get(other.box.unknown.accessory.id) ?? [];
				const parts = pairIn(this.#problem.scene, rows, [heldOf(box), heldOf(other.box)], this.tally);
				return parts?.every((part) => part === 0) ?? false;
			})
		);
	}

	#keep(boxes: readonly Box[], cost: Cost): void {
		this.found = { marks: boxes.map((box) => box.middle), cost };
	}

	#better(cost: Cost): boolean {
		return !this.found || compare(cost, this.found.cost) < 0;
	}

	#cut(box: Box): readonly [Box, Box] {
		let cut = this.#halves.get(box);
		if (!cut) {
			cut = halves(box);
			this.#halves.set(box, cut);
		}
		return cut;
	}

	/** All places of an unknown, on the height of its line where a companion already holds it. */
	#rootsBeside(unknown: Unknown, settled: readonly Box[]): readonly Box[] {
		const { line } = unknown.accessory;
		const mate = line === undefined ? undefined : settled.find((b) => b.unknown.accessory.line === line);
		const heights = mate ? ([mate.keys[2], mate.spot.ys.values[mate.y[1]] ?? NaN] as const) : null;
		const key = `${String(unknown.index)}:${heights?.join(':') ?? ''}`;
		let roots = this.#roots.get(key);
		if (!roots) {
			roots = rootsOf(unknown, heights);
			this.#roots.set(key, roots);
		}
		return roots;
	}
}

const heldOf = (box: Box): Held => ({ mark: box.middle, radius: single(box) ? 0 : box.radius });
