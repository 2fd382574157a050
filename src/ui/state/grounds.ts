import type { WayOut } from '#core/placement/answer.ts';
import type { Answered } from './messages.ts';
import type { Measures } from './moved.ts';

/** What was found, and for what, as far as places depend on it. */
export interface Ground {
	readonly answered: Answered;
	readonly for: string;
	/** The same without where marks were held. */
	readonly free: string;
	readonly waysOut: readonly WayOut[];
	/** The search was ended by hand before its proof. */
	readonly byHand: boolean;
}

/** How many cases are remembered. */
const MOST = 40;

/** What marks stood on in the cases last seen, so that undo brings it back without a search. */
export class Grounds {
	private readonly seen = new Map<string, Ground>();
	private readonly settled = new Map<string, Measures>();

	of(key: string): Ground | undefined {
		return this.seen.get(key);
	}

	/** Reaches and places as a search left them; undefined where none did. */
	settledFor(key: string): Measures | undefined {
		return this.settled.get(key);
	}

	settle(key: string, measures: Measures): void {
		this.settled.set(key, measures);
	}

	remember(key: string, ground: Ground): void {
		this.seen.delete(key);
		this.seen.set(key, ground);
		const [oldest] = this.seen.keys();
		if (this.seen.size > MOST && oldest !== undefined) this.seen.delete(oldest);
	}
}
