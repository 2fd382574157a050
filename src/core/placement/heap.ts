/** A queue that is never changed: what is added or taken gives another, and both share what they have in common. */
export interface Heap<T> {
	/** The least. */
	readonly item: T;
	readonly left: Heap<T> | null;
	readonly right: Heap<T> | null;
	/** How many steps along the right until the queue ends. */
	readonly depth: number;
}

/** Negative or zero when the first comes first. Shape: a total order, or equal items come in no promised order. */
export type Order<T> = (a: T, b: T) => number;

function made<T>(item: T, one: Heap<T> | null, other: Heap<T> | null): Heap<T> {
	const [a, b] = [one?.depth ?? 0, other?.depth ?? 0];
	return a >= b ? { item, left: one, right: other, depth: b + 1 } : { item, left: other, right: one, depth: a + 1 };
}

/** Everything of both queues. Source: leftist heaps, C. A. Crane, 1972. */
function joined<T>(a: Heap<T> | null, b: Heap<T> | null, order: Order<T>): Heap<T> | null {
	if (!a) return b;
	if (!b) return a;
	return order(a.item, b.item) <= 0
		? made(a.item, a.left, joined(a.right, b, order))
		: made(b.item, b.left, joined(a, b.right, order));
}

/** A queue with one item more. */
export const withItem = <T>(heap: Heap<T> | null, item: T, order: Order<T>): Heap<T> => {
	const one: Heap<T> = { item, left: null, right: null, depth: 1 };
	return joined(heap, one, order) ?? one;
};

/** A queue without its least. */
export const withoutLeast = <T>(heap: Heap<T>, order: Order<T>): Heap<T> | null => joined(heap.left, heap.right, order);

/** Everything in a queue, in no promised order. */
export function* itemsOf<T>(heap: Heap<T> | null): Generator<T, void, undefined> {
	const waiting = [heap];
	while (waiting.length > 0) {
		const next = waiting.pop();
		if (!next) continue;
		yield next.item;
		waiting.push(next.left, next.right);
	}
}
