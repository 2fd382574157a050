import type { Mark } from '#core/case/accessory.ts';
import type { BoundRow } from '#core/rules/row.ts';
import { aloneIn, pairIn, type Held, type Tally } from './bound.ts';
import { rootsOf, single, type Box, type Floor } from './box.ts';
import { exceeds, partsOf, type Cost, type Price } from './cost.ts';
import { itemsOf, withItem, withoutLeast, type Heap } from './heap.ts';
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

/** Rows about an unknown and another that can still add something, by the other's number. */
type Pairs = readonly (readonly BoundRow[])[];

/** What a box costs at least beside what is settled. */
interface Own extends Price {
	readonly pairs: Pairs;
}

/** A box of an unknown not settled, with its price. */
interface Option extends Own {
	readonly box: Box;
	/** The look-ahead in which it was worked out; a price from one before still holds from below. */
	readonly asOf: number;
}

/** Every place of an unknown that may still be part of a better plan, the cheapest option first. */
type Front = Heap<Option>;

/** An option of the unknown being settled, with the fronts of every unknown behind it. */
interface Branch extends Own {
	readonly box: Box;
	/** The price of everything, and the ranks of everything by number. */
	readonly all: Total;
	readonly ahead: readonly Front[];
	/** What has been worked out beside the boxes settled: nothing yet, its own price, or what lies behind it too. */
	readonly known: 'before' | 'own' | 'ahead';
}

/** A price with what decides between equals: the rank of every unknown, in their order. */
interface Total extends Price {
	readonly ranks: readonly number[];
}

/** Boxes settled, and what they cost together. */
interface Settled extends Price {
	readonly boxes: readonly Box[];
}

const inOrder = (a: Option, b: Option): number => a.high - b.high || a.low - b.low || a.box.rank - b.box.rank;

function byTotal({ all: a }: Branch, { all: b }: Branch): number {
	return a.high - b.high || a.low - b.low || byRanks(a.ranks, b.ranks);
}

function byRanks(a: readonly number[], b: readonly number[]): number {
	for (let i = 0; i < a.length; i++) {
		const difference = (a[i] ?? 0) - (b[i] ?? 0);
		if (difference !== 0) return difference;
	}
	return 0;
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const sum = (a: Price, b: Price): Price => ({ high: a.high + b.high, low: a.low + b.low });
const less = (a: Price, b: Price): Price => ({ high: a.high - b.high, low: a.low - b.low });

const NOTHING: Price = { high: 0, low: 0 };

/** Rows asked in the first run for a plan, and how many times as many in the next; the same for the proof. Ours. */
const FIRST_RUN = 20_000;
const LONGER = 1.25;
const PROOF_RUN = 1_000_000;
const MUCH_LONGER = 4;

const UNTRIED: Floor = { high: 0, low: 0, exact: false };

/**
 * Branch and bound over boxes of places, one unknown after the other.
 * Each unknown is searched best first; a box is cut only when nothing cheaper is left. The least cost of every later
 * unknown beside what is settled is added to the bound (look-ahead). Costs are compared as words are in a dictionary,
 * and sums keep that order, so the first plan that meets its bound is best and unique. Which unknown is settled next
 * changes from run to run, never which plan is best.
 */
export class Search {
	readonly tally: Tally = { evaluations: 0, nodes: 0 };
	found: Found | null = null;
	readonly #problem: Problem;
	readonly #limits: Limits;
	readonly #given: readonly Held[];
	#best: (Total & Settled) | null = null;
	#lowest: Settled = { ...NOTHING, boxes: [] };
	/** Which unknown had no place left when last so many were settled: likely the next to have none. */
	readonly #failed: number[] = [];
	/** Every unknown beside what is given alone, by number. */
	#roots: readonly Front[] = [];
	#round = 0;
	/** How often each unknown was the one that had no place left, by number: the harder ones are settled first. */
	readonly #hard: number[];
	/** Whether this run settles the hardest first; else in the order of the problem. */
	#hardFirst = false;
	/** Rows asked when this run ends. */
	#runEnds = 0;
	/** Whether the first plan is still looked for below the first boxes. */
	#diving = false;

	constructor(problem: Problem, limits: Limits) {
		this.#problem = problem;
		this.#limits = limits;
		this.#hard = problem.unknowns.map(() => 0);
		this.#given = problem.given.map((mark) => ({ mark, half: [0, 0], radius: 0 }));
	}

	/** A cost no plan goes below. */
	get bound(): Cost {
		return this.#costOf(this.#lowest, this.#lowest.boxes);
	}

	/** Runs the search, pausing often. Shape: gives nothing; read `found`, `bound` and `tally` at any pause. */
	*run(): Generator<undefined, 'proved' | 'stopped', undefined> {
		const fronts = this.#problem.unknowns.map((unknown) => this.#whole(unknown));
		if (fronts.every((front) => front !== null)) yield* this.#runs(fronts);
		if (this.#ended()) return this.#limits.until === 'first' && this.found ? 'proved' : 'stopped';
		if (this.#best) this.#lowest = this.#best;
		return 'proved';
	}

	/**
	 * One run after the other, each with the plan in hand and what was learned, until one ends by itself. Short ones look
	 * for a first plan, the hardest unknowns first; then long ones for the proof, in the plain order and hardest first.
	 */
	*#runs(fronts: readonly Front[]): Generator<undefined, void, undefined> {
		let share = FIRST_RUN;
		do {
			const had = this.found !== null;
			this.#runEnds = this.tally.evaluations + share;
			yield* this.#settle({ ...NOTHING, boxes: [] }, fronts);
			this.#hardFirst = !this.found || (had && !this.#hardFirst);
			if (!this.found) share *= LONGER;
			else if (!had) share = PROOF_RUN;
			else if (!this.#hardFirst) share *= MUCH_LONGER;
		} while (!this.#ended() && this.#over());
	}

	/** True when nothing more is to be looked for. */
	#ended(): boolean {
		return (
			this.tally.evaluations >= this.#limits.evaluations || (this.#limits.until === 'first' && this.found !== null)
		);
	}

	/** True when this run ends. */
	#over(): boolean {
		return this.#ended() || this.tally.evaluations >= this.#runEnds || (this.#diving && this.found !== null);
	}

	/** Finds places for the unknowns behind those settled, given what these cost and the fronts from a step before. */
	*#settle(settled: Settled, before: readonly Front[]): Generator<undefined, void, undefined> {
		const ahead = this.#lookAhead(settled, before);
		yield;
		if (!ahead || this.#over()) return;
		const boxes = ahead.map((front) => front.item.box);
		const total = this.#totalOf(settled, ahead);
		if (settled.boxes.length === 0) this.#raiseBound({ ...total, boxes });
		if (!this.#better(total)) return;
		// Every unknown at its own best, and they agree with one another: nothing behind these boxes is better.
		const torn = this.#torn(boxes);
		if (torn < 0) this.#keepBetter([...settled.boxes, ...boxes], total);
		// What agrees is left where it is.
		else yield* this.#branch(settled, [...ahead.slice(torn, torn + 1), ...ahead.toSpliced(torn, 1)]);
	}

	/** Number in a list of the one to settle next: of those that do not agree with another the hardest; -1 where all agree. */
	#torn(boxes: readonly Box[]): number {
		const hard = (i: number): number => (this.#hardFirst ? (this.#hard[boxes[i]?.unknown.index ?? -1] ?? 0) : 0);
		let found = -1;
		for (const [i, box] of boxes.entries()) {
			if (found >= 0 && hard(i) <= hard(found)) continue;
			if (boxes.some((other, j) => j !== i && !this.#agree(box, other))) found = i;
		}
		return found;
	}

	/** A run that begins anew knows less at first: what was known before still holds. */
	#raiseBound(lowest: Settled): void {
		if (!exceeds(this.#lowest, lowest)) this.#lowest = lowest;
	}

	*#branch(settled: Settled, [first, ...behind]: readonly Front[]): Generator<undefined, void, undefined> {
		if (!first) return;
		// One plan early: bounds prune only against a plan in hand.
		if (!this.found) {
			const diving = this.#diving;
			this.#diving = true;
			yield* this.#settle(joinedTo(settled, first.item), behind);
			this.#diving = diving;
		}
		const queue: { heap: Heap<Branch> | null } = { heap: null };
		const push = (branch: Omit<Branch, 'all'>) => {
			const all = this.#totalOf(joinedTo(settled, branch), branch.ahead);
			if (this.#better(all)) queue.heap = withItem(queue.heap, { ...branch, all }, byTotal);
		};
		const pushFresh = (box: Box, pairs: Pairs, ahead: readonly Front[]) => {
			const own = this.#own(
				box,
				settled.boxes,
				pairs,
				ahead.reduce<Price>((all, { item }) => sum(all, item), settled)
			);
			if (own) push({ ...own, box, ahead, known: 'own' });
		};
		for (const { box, high, low, pairs } of itemsOf(first))
			push({ box, high, low, pairs, ahead: behind, known: 'before' });
		while (queue.heap) {
			const branch: Branch = queue.heap.item;
			queue.heap = withoutLeast(queue.heap, byTotal);
			const { box, pairs, ahead, known } = branch;
			if (settled.boxes.length === 0)
				this.#raiseBound({ ...branch.all, boxes: [box, ...ahead.map(({ item }) => item.box)] });
			if (this.#over() || !this.#better(branch.all)) return;
			if (known === 'before') pushFresh(box, pairs, ahead);
			else if (single(box)) yield* this.#settle(joinedTo(settled, branch), ahead);
			else if (known === 'ahead') for (const half of box.halves()) pushFresh(half, pairs, ahead);
			else {
				yield;
				const nearer = this.#lookAhead(joinedTo(settled, branch), ahead);
				if (nearer) push({ ...branch, ahead: nearer, known: 'ahead' });
			}
		}
	}

	/**
	 * The cheapest of every unknown not settled, each beside the boxes settled but not beside one another.
	 * Shape: null when an unknown has no place left, or when together they cannot beat the plan in hand.
	 */
	#lookAhead(settled: Settled, before: readonly Front[]): readonly Front[] | null {
		if (!this.#mayFit(settled, before)) return null;
		this.#round++;
		const last = settled.boxes.at(-1);
		const fronts = before.slice();
		let { high, low } = settled;
		for (const { item } of fronts) {
			high += item.high;
			low += item.low;
		}
		for (const i of this.#order(settled.boxes.length, fronts)) {
			const front = fronts[i] as Front;
			high -= front.item.high;
			low -= front.item.low;
			const raised = this.#raise(front, settled.boxes, { high, low });
			if (!raised) {
				const { index } = front.item.box.unknown;
				this.#failed[settled.boxes.length] = index;
				this.#hard[index] = (this.#hard[index] ?? 0) + 1;
				if (last) last.floors[index] ??= UNTRIED;
				return null;
			}
			fronts[i] = raised;
			high += raised.item.high;
			low += raised.item.low;
		}
		if (settled.boxes.length === 0)
			this.#roots = fronts.toSorted((a, b) => a.item.box.unknown.index - b.item.box.unknown.index);
		return fronts;
	}

	/**
	 * False when what is known of the box settled last, beside one other unknown and nothing else, is too dear already.
	 * It is the same whatever else is settled, so it is kept with the box, once that unknown had no place left beside it.
	 */
	#mayFit({ boxes, high, low }: Settled, fronts: readonly Front[]): boolean {
		const last = boxes.at(-1);
		if (!last || boxes.length < 2) return true;
		let total: Price = { high, low };
		for (const { item } of fronts) total = sum(total, item);
		for (const { item } of fronts) {
			const { index } = item.box.unknown;
			if (!last.floors[index]) continue;
			const others = less(total, item);
			const floor = this.#floor(last, index, others);
			if (exceeds(floor, item)) total = sum(others, floor);
			if (this.#dear(total, NOTHING)) return false;
		}
		return true;
	}

	/** The least an unknown costs beside one box alone; where that is too dear beside the others, as much as is known of it. */
	#floor(box: Box, index: number, others: Price): Price {
		const known = box.floors[index] ?? UNTRIED;
		const root = this.#roots[index];
		if (known.exact || this.#dear(others, known) || !root || !this.#best) return known;
		this.#round++;
		const found = this.#raise(root, [box], others);
		// Whole numbers: what is dearer than what is left costs one more at least.
		const more = sum(less(this.#best, others), { high: 0, low: 1 });
		const floor = found ? { high: found.item.high, low: found.item.low, exact: true } : { ...more, exact: false };
		box.floors[index] = floor;
		return floor;
	}

	/** Numbers of fronts, first the one that had no place left when last as many were settled. */
	#order(depth: number, fronts: readonly Front[]): readonly number[] {
		const all = fronts.map((_, i) => i);
		const first = fronts.findIndex(({ item }) => item.box.unknown.index === this.#failed[depth]);
		return first < 0 ? all : [first, ...all.filter((i) => i !== first)];
	}

	/**
	 * The cheapest box of an unknown beside boxes settled: a place when they are places, else half as wide as they are.
	 * Settling more makes nothing cheaper, so prices from a step before are kept until a box comes up.
	 * Shape: null when no place is left, or none that beats the plan in hand beside the others.
	 */
	#raise(before: Front, settled: readonly Box[], others: Price): Front | null {
		const width = widest(settled) / 2;
		let queue: Front | null = before;
		while (queue) {
			const top: Option = queue.item;
			if (this.#dear(others, top)) return null;
			const narrow = single(top.box) || top.box.radius <= width;
			if (narrow && top.asOf === this.#round) return queue;
			const now: Option | null = narrow ? this.#option(top.box, settled, top.pairs, others) : null;
			if (now && now.high === top.high && now.low === top.low) {
				// What was least and costs no more is least still.
				queue = { ...queue, item: now };
				continue;
			}
			queue = withoutLeast(queue, inOrder);
			if (now) queue = withItem(queue, now, inOrder);
			if (narrow) continue;
			for (const half of top.box.halves()) {
				const part = this.#option(half, settled, top.pairs, others);
				if (part) queue = withItem(queue, part, inOrder);
			}
		}
		return null;
	}

	/** A box as an option of this look-ahead; null when it cannot beat the plan in hand beside the others. */
	#option(box: Box, settled: readonly Box[], before: Pairs, others: Price): Option | null {
		const own = this.#own(box, settled, before, others);
		return own && !this.#dear(others, own)
			? { box, high: own.high, low: own.low, pairs: own.pairs, asOf: this.#round }
			: null;
	}

	/** Every row about an unknown and another, by the other's number. */
	#pairsOf({ pairs }: Unknown): Pairs {
		const { unknowns, given } = this.#problem;
		return [...unknowns.map((u) => u.accessory.id), ...given.map((m) => m.accessory.id)].map(
			(id) => pairs.get(id) ?? []
		);
	}

	/** Every place of an unknown, nothing known of its cost; null when it has none. */
	#whole(unknown: Unknown): Front | null {
		const pairs = this.#pairsOf(unknown);
		let front: Front | null = null;
		for (const box of rootsOf(unknown)) front = withItem(front, { box, ...NOTHING, pairs, asOf: 0 }, inOrder);
		return front;
	}

	/** True when a companion on the same line is settled at heights this box has not. */
	#offLine(box: Box, settled: readonly Box[]): boolean {
		const { line } = box.unknown.accessory;
		if (line === undefined) return false;
		return settled.some((b) => b.unknown.accessory.line === line && (b.y[0] > box.y[1] || b.y[1] < box.y[0]));
	}

	/**
	 * What a box costs at least beside the boxes settled and the marks given; null when it breaks a must.
	 * Settled boxes only shrink, so what cannot add anything is not asked again.
	 */
	#own(box: Box, settled: readonly Box[], before: Pairs, others: Price): Own | null {
		if (this.#offLine(box, settled)) return null;
		if (box.alone === undefined) box.alone = aloneIn(this.#problem.scene, box.rows, box, this.tally);
		if (!box.alone) return null;
		const own = { high: box.alone.high, low: box.alone.low, pairs: before };
		for (const mate of settled) if (!this.#beside(own, box, mate, { index: mate.unknown.index, others })) return null;
		for (const [i, held] of this.#given.entries()) {
			if (!this.#beside(own, box, held, { index: this.#problem.unknowns.length + i, others })) return null;
		}
		return own;
	}

	/** Adds what a box costs beside one mark; false when it breaks a must, or is dearer than the plan in hand. */
	#beside(own: Mutable<Own>, box: Box, held: Held, { index, others }: { index: number; others: Price }): boolean {
		const rows = own.pairs[index] ?? [];
		if (rows.length === 0) return true;
		const best = this.#best;
		const most = best && less(less(best, others), own);
		const weighed = pairIn(this.#problem.scene, rows, [box, held], { tally: this.tally, most });
		if (!weighed) return false;
		own.high += weighed.high;
		own.low += weighed.low;
		if (weighed.open !== rows) own.pairs = own.pairs.with(index, weighed.open);
		return true;
	}

	/** True when two places add nothing to one another's cost. */
	#agree(box: Box, other: Box): boolean {
		if (this.#offLine(box, [other])) return false;
		const rows = box.unknown.pairs.get(other.unknown.accessory.id) ?? [];
		const weighed = pairIn(this.#problem.scene, rows, [box, other], { tally: this.tally, most: null });
		return weighed?.high === 0 && weighed.low === 0;
	}

	#totalOf(settled: Settled, ahead: readonly Front[]): Total {
		let { high, low } = settled;
		const ranks = new Array<number>(this.#problem.unknowns.length).fill(0);
		for (const box of settled.boxes) ranks[box.unknown.index] = box.rank;
		for (const { item } of ahead) {
			high += item.high;
			low += item.low;
			ranks[item.box.unknown.index] = item.box.rank;
		}
		return { high, low, ranks };
	}

	/** Keeps a plan, and whatever is better by moving one unknown, with what shares its line, to its best beside the rest. */
	#keepBetter(boxes: readonly Box[], total: Total): void {
		this.#keep(boxes, total);
		for (let at = 0, idle = 0; idle < boxes.length && this.#best; at = (at + 1) % boxes.length) {
			if (this.#over()) return;
			const moved = this.#moved(this.#best.boxes, at);
			if (moved && this.#better(moved)) {
				this.#keep(moved.boxes, moved);
				idle = 0;
			} else idle++;
		}
	}

	#moved(boxes: readonly Box[], at: number): (Total & Settled) | null {
		const line = boxes[at]?.unknown.accessory.line;
		const moving = boxes.filter((b, i) => i === at || (line !== undefined && b.unknown.accessory.line === line));
		const mates = moving.filter((b) => b !== boxes[at]);
		let settled: Settled | null = { ...NOTHING, boxes: [] };
		for (const box of boxes)
			if (!moving.includes(box)) settled = settled && this.#withPlace(settled, box.unknown.index, box);
		for (const { unknown } of [...moving.filter((b) => !mates.includes(b)), ...mates])
			settled = settled && this.#withPlace(settled, unknown.index);
		return settled && { ...settled, ...this.#totalOf(settled, []) };
	}

	/** Boxes settled with one more: a place given, or the best there is beside them. */
	#withPlace(settled: Settled, index: number, place?: Box): Settled | null {
		const root = this.#roots[index];
		if (!root) return null;
		if (place) {
			const own = this.#own(place, settled.boxes, this.#pairsOf(place.unknown), settled);
			return own && joinedTo(settled, { ...own, box: place });
		}
		this.#round++;
		const front = this.#raise(root, settled.boxes, settled);
		return front && joinedTo(settled, front.item);
	}

	#keep(boxes: readonly Box[], total: Total): void {
		const ordered = boxes.toSorted((a, b) => a.unknown.index - b.unknown.index);
		this.found = { marks: ordered.map((box) => box.mark), cost: this.#costOf(total, ordered) };
		this.#best = { ...total, boxes: ordered };
	}

	/** A cost as it is told: its parts, then the order keys of every unknown. */
	#costOf(price: Price, boxes: readonly Box[]): Cost {
		const keys = this.#problem.unknowns.flatMap(
			({ index }) => boxes.find((b) => b.unknown.index === index)?.keys ?? [0, 0, 0, 0]
		);
		return [...partsOf(price), ...keys];
	}

	/** True when two prices together are more than that of the plan in hand. */
	#dear(a: Price, b: Price): boolean {
		const best = this.#best;
		if (!best) return false;
		const high = a.high + b.high;
		return high > best.high || (high === best.high && a.low + b.low > best.low);
	}

	#better(total: Total): boolean {
		const best = this.#best;
		if (!best) return true;
		return (total.high - best.high || total.low - best.low || byRanks(total.ranks, best.ranks)) < 0;
	}
}

const joinedTo = (settled: Settled, { box, high, low }: Price & { readonly box: Box }): Settled => ({
	boxes: [...settled.boxes, box],
	high: settled.high + high,
	low: settled.low + low
});

/** How wide a box beside others may be: as they are, the places among them apart. Units: mm. */
function widest(settled: readonly Box[]): number {
	let width = 0;
	for (const box of settled) if (!single(box)) width = Math.max(width, box.radius);
	return width;
}
