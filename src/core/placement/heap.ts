/** A queue that gives the least first. Shape: equal items come in no promised order; give a total order. */
export class Heap<T> {
	#items: T[] = [];
	readonly #compare: (a: T, b: T) => number;

	constructor(compare: (a: T, b: T) => number) {
		this.#compare = compare;
	}

	peek(): T | undefined {
		return this.#items[0];
	}

	/** Everything in the queue, in no promised order. */
	items(): readonly T[] {
		return this.#items;
	}

	copy(): Heap<T> {
		const copy = new Heap<T>(this.#compare);
		copy.#items = this.#items.slice();
		return copy;
	}

	push(item: T): void {
		const items = this.#items;
		let at = items.length;
		items.push(item);
		while (at > 0) {
			const up = (at - 1) >> 1;
			const parent = items[up] as T;
			if (this.#compare(parent, item) <= 0) break;
			items[at] = parent;
			at = up;
		}
		items[at] = item;
	}

	pop(): T | undefined {
		const items = this.#items;
		const least = items[0];
		const last = items.pop();
		if (items.length > 0 && last !== undefined) this.#sink(last);
		return least;
	}

	#sink(item: T): void {
		const items = this.#items;
		let at = 0;
		for (;;) {
			let down = 2 * at + 1;
			if (down >= items.length) break;
			if (down + 1 < items.length && this.#compare(items[down + 1] as T, items[down] as T) < 0) down++;
			if (this.#compare(items[down] as T, item) >= 0) break;
			items[at] = items[down] as T;
			at = down;
		}
		items[at] = item;
	}
}
