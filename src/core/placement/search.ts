import type { Mark } from '#core/case/accessory.ts';
import type { Tally } from './bound.ts';
import { rootsOf, single, type Box } from './box.ts';
import { exceeds, partsOf, type Cost, type Price } from './cost.ts';
import { itemsOf, withItem, withoutLeast, type Heap } from './heap.ts';
import { Prices, type Own, type Pairs } from './prices.ts';
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
	/** Rows asked in the first run for a plan and in the run for a better one before the proof; as is usual where left out. */
	readonly before?: { readonly first: number; readonly better: number };
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

/** Two unknowns that do not agree. */
type Torn = readonly [Front, Front];

/** Two unknowns, and what they cost at least beside one another more than each at its best. */
interface Dearer {
	readonly pair: Torn;
	readonly more: Price;
}

/** What is settled next, and what is known of the others, two at a time, none twice. */
interface Next {
	readonly front: Front;
	readonly known: readonly Dearer[];
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

const sum = (a: Price, b: Price): Price => ({ high: a.high + b.high, low: a.low + b.low });
const less = (a: Price, b: Price): Price => ({ high: a.high - b.high, low: a.low - b.low });

const NOTHING: Price = { high: 0, low: 0 };

/** Rows asked in the first run for a plan, how many times as many in the next, and in the run for a better one. Ours. */
const FIRST_RUN = 20_000;
const LONGER = 1.25;
const SECOND_RUN = 1_000_000;

/** How far two unknowns are weighed beside one another; what is known by then holds. Ours. */
const MOST_STEPS = 400;

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
	readonly #prices: Prices;
	#best: (Total & Settled) | null = null;
	#lowest: Settled = { ...NOTHING, boxes: [] };
	/** Which unknown had no place left when last so many were settled: likely the next to have none. */
	readonly #failed: number[] = [];
	/** Every unknown beside what is given alone, by number. */
	#roots: readonly Front[] = [];
	#round = 0;
	/** How often each unknown was the one that had no place left, by number: the harder ones are settled first. */
	readonly #hard: number[];
	/** Rows asked when this run ends. */
	#runEnds = 0;
	/** Whether the first plan is still looked for below the first boxes. */
	#diving = false;

	constructor(problem: Problem, limits: Limits) {
		this.#problem = problem;
		this.#limits = limits;
		this.#hard = problem.unknowns.map(() => 0);
		this.#prices = new Prices(problem, this.tally);
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
	 * Short runs for a first plan, each with what was learned before it, and one for a better plan, the hardest unknowns first;
	 * then one for the proof, the two that cost most beside one another first.
	 */
	*#runs(fronts: readonly Front[]): Generator<undefined, void, undefined> {
		const run = function* (this: Search, share: number) {
			this.#runEnds = this.tally.evaluations + share;
			yield* this.#settle({ ...NOTHING, boxes: [] }, fronts);
			return this.#over() && !this.#ended();
		}.bind(this);
		const { first, better } = this.#limits.before ?? { first: FIRST_RUN, better: SECOND_RUN };
		for (let share = first; !this.found; share *= LONGER) if (!(yield* run(share))) return;
		if (yield* run(better)) yield* run(Infinity);
	}

	/** True when nothing more is to be looked for. */
	#ended(): boolean {
		return (
			this.tally.evaluations >= this.#limits.evaluations || (this.#limits.until === 'first' && this.found !== null)
		);
	}

	/** Whether this is the run for the proof. */
	get #proving(): boolean {
		return this.#runEnds === Infinity;
	}

	/** True when this run ends. */
	#over(): boolean {
		return this.#ended() || this.tally.evaluations >= this.#runEnds || (this.#diving && this.found !== null);
	}

	/** Finds places for the unknowns behind those settled, given what these cost and the fronts from a step before. */
	*#settle(settled: Settled, before: readonly Front[]): Generator<undefined, void, undefined> {
		const ahead = this.#lookAhead(settled, before);
		yield;
		if (ahead && !this.#over()) yield* this.#decide(settled, ahead);
	}

	/** Finds places for the unknowns behind those settled, each known at its best beside these. */
	*#decide(settled: Settled, ahead: readonly Front[]): Generator<undefined, void, undefined> {
		const total = this.#totalOf(settled, ahead);
		if (settled.boxes.length === 0) this.#raiseBound({ ...total, boxes: boxesOf(ahead) });
		if (!this.#better(total)) return;
		// Every unknown at its own best, and they agree with one another: nothing behind these boxes is better.
		const torn = this.#torn(ahead);
		if (torn.length === 0) {
			this.#keepBetter([...settled.boxes, ...boxesOf(ahead)], total);
			return;
		}
		const next = this.#proving ? yield* this.#next(settled, ahead, torn) : this.#hardest(ahead, torn);
		// What agrees is left where it is.
		if (next) yield* this.#branch(settled, [next.front, ...ahead.filter((front) => front !== next.front)], next.known);
	}

	/** Unknowns that at their best do not agree with one another, two at a time. */
	#torn(ahead: readonly Front[]): readonly Torn[] {
		return ahead.flatMap((one, i) =>
			ahead
				.slice(i + 1)
				.flatMap((other) => (this.#prices.agree(one.item.box, other.item.box) ? [] : [[one, other] as const]))
		);
	}

	/** While plans are looked for: of those that do not agree the one that most often had no place left. */
	#hardest(ahead: readonly Front[], torn: readonly Torn[]): Next | null {
		const hard = ({ item }: Front): number => this.#hard[item.box.unknown.index] ?? 0;
		const among = ahead.filter((front) => torn.some((pair) => pair.includes(front)));
		const front = among.toSorted((a, b) => hard(b) - hard(a))[0];
		return front ? { front, known: [] } : null;
	}

	/**
	 * The unknown to settle next: of the two that cost most beside one another the one that more others do not agree with.
	 * What two cost at least together is added to the bound for as many as share none with one another.
	 * Shape: null when together they cannot beat the plan in hand.
	 */
	*#next(
		settled: Settled,
		ahead: readonly Front[],
		torn: readonly Torn[]
	): Generator<undefined, Next | null, undefined> {
		const total = this.#totalOf(settled, ahead);
		const dearer: Dearer[] = [];
		for (const pair of torn) {
			// The last two are weighed by settling them.
			const least = ahead.length === 2 ? total : this.#together(settled, ahead, pair);
			yield;
			if (!least || this.#over()) return null;
			dearer.push({ pair, more: less(least, total) });
		}
		dearer.sort((a, b) => b.more.high - a.more.high || b.more.low - a.more.low);
		const matched: typeof dearer = [];
		for (const one of dearer)
			if (!matched.some(({ pair }) => pair.some((front) => one.pair.includes(front)))) matched.push(one);
		const all = matched.reduce<Price>((price, { more }) => sum(price, more), total);
		if (this.#dear(all, NOTHING) || !matched[0]) return null;
		if (settled.boxes.length === 0) this.#raiseBound({ ...all, boxes: boxesOf(ahead) });
		const apart = (front: Front): number => torn.filter((pair) => pair.includes(front)).length;
		const [one, other] = matched[0].pair;
		const front = apart(other) > apart(one) ? other : one;
		return { front, known: matched.slice(1) };
	}

	/** What two unknowns cost at least beside what is settled and one another, all others at their best. Shape: null as in `next`. */
	#together(settled: Settled, ahead: readonly Front[], pair: Torn): Price | null {
		const others = ahead
			.filter((front) => !pair.includes(front))
			.reduce<Price>((all, { item }) => sum(all, item), settled);
		let steps = 0;
		for (const { branch, done } of this.#rising({ ...others, boxes: settled.boxes }, pair, []))
			if (done || ++steps > MOST_STEPS) return branch.all;
		return null;
	}

	/** A run that begins anew knows less at first: what was known before still holds. */
	#raiseBound(lowest: Settled): void {
		if (!exceeds(this.#lowest, lowest)) this.#lowest = lowest;
	}

	*#branch(
		settled: Settled,
		fronts: readonly Front[],
		known: readonly Dearer[]
	): Generator<undefined, void, undefined> {
		const [first, ...behind] = fronts;
		// One plan early: bounds prune only against a plan in hand.
		if (first && !this.found) {
			const diving = this.#diving;
			this.#diving = true;
			yield* this.#settle(joinedTo(settled, first.item), behind);
			this.#diving = diving;
		}
		for (const { branch, done } of this.#rising(settled, fronts, known)) {
			if (settled.boxes.length === 0)
				this.#raiseBound({ ...branch.all, boxes: [branch.box, ...boxesOf(branch.ahead)] });
			if (this.#over()) return;
			if (done && single(branch.box) && branch.known === 'own')
				yield* this.#settle(joinedTo(settled, branch), branch.ahead);
			else if (done) yield* this.#decide(joinedTo(settled, branch), branch.ahead);
			else yield;
		}
	}

	/** Boxes of the first unknown, the cheapest first with what lies behind it; done where one is a place, weighed beside all. */
	*#rising(
		settled: Settled,
		[first, ...behind]: readonly Front[],
		knownOf: readonly Dearer[]
	): Generator<{ readonly branch: Branch; readonly done: boolean }, void, undefined> {
		let queue: Heap<Branch> | null = null;
		const joining = (to: Heap<Branch> | null, branch: Omit<Branch, 'all'>): Heap<Branch> | null => {
			const total = this.#totalOf(joinedTo(settled, branch), branch.ahead);
			const all = raised(total, beyond(branch.ahead, knownOf));
			return this.#better(all) ? withItem(to, { ...branch, all }, byTotal) : to;
		};
		for (const { box, high, low, pairs } of itemsOf(first ?? null))
			queue = joining(queue, { box, high, low, pairs, ahead: behind, known: 'before' });
		while (queue) {
			const branch: Branch = queue.item;
			queue = withoutLeast(queue, byTotal);
			const { box, pairs, ahead, known } = branch;
			if (!this.#better(branch.all)) return;
			// While plans are looked for, the first place that comes up is tried.
			const done = single(box) && known === (this.#proving ? 'ahead' : 'own');
			yield { branch, done };
			if (done) continue;
			if (known === 'own') {
				const nearer = this.#lookAhead(joinedTo(settled, branch), ahead);
				if (nearer) queue = joining(queue, { ...branch, ahead: nearer, known: 'ahead' });
				continue;
			}
			for (const part of known === 'before' ? [box] : box.halves()) {
				const own = this.#prices.own(part, settled.boxes, pairs);
				if (own) queue = joining(queue, { ...own, box: part, ahead, known: 'own' });
			}
		}
	}

	/**
	 * The cheapest of every unknown not settled, each beside the boxes settled but not beside one another.
	 * Shape: null when an unknown has no place left, or when together they cannot beat the plan in hand.
	 */
	#lookAhead(settled: Settled, before: readonly Front[]): readonly Front[] | null {
		this.#round++;
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
		const own = this.#prices.own(box, settled, before);
		return own && !this.#dear(others, own)
			? { box, high: own.high, low: own.low, pairs: own.pairs, asOf: this.#round }
			: null;
	}

	/** Every place of an unknown, nothing known of its cost; null when it has none. */
	#whole(unknown: Unknown): Front | null {
		const pairs = this.#prices.pairsOf(unknown);
		let front: Front | null = null;
		for (const box of rootsOf(unknown)) front = withItem(front, { box, ...NOTHING, pairs, asOf: 0 }, inOrder);
		return front;
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
			const own = this.#prices.own(place, settled.boxes, this.#prices.pairsOf(place.unknown));
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

/** What twos are known to cost at least more than each of them costs by now at its best. */
function beyond(ahead: readonly Front[], known: readonly Dearer[]): Price {
	const now = ({ item }: Front): Price =>
		ahead.find((front) => front.item.box.unknown === item.box.unknown)?.item ?? NOTHING;
	let all = NOTHING;
	for (const { pair, more } of known) {
		const [one, other] = pair;
		const least = sum(more, sum(one.item, other.item));
		const alone = sum(now(one), now(other));
		if (exceeds(least, alone)) all = sum(all, less(least, alone));
	}
	return all;
}

/** A total with more added; which place comes first then no longer decides, as dearer places may come before. */
const raised = (total: Total, more: Price): Total =>
	exceeds(more, NOTHING) ? { ...sum(total, more), ranks: total.ranks.map(() => 0) } : total;

const boxesOf = (fronts: readonly Front[]): readonly Box[] => fronts.map(({ item }) => item.box);

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
