import type { WayOut } from '#core/placement/answer.ts';
import type { Answered } from './messages.ts';

/** What was found, and for which case: its text in canonical form. */
export interface Ground {
	readonly answered: Answered;
	readonly for: string;
	readonly waysOut: readonly WayOut[];
	/** The search was ended by hand before its proof. */
	readonly byHand: boolean;
}

/** How many cases are remembered. */
const MOST = 40;

/** What marks stood on in the cases last seen, so that undo brings it back without a search. */
export class Grounds {
	private readonly seen = new Map<string, Ground>();

	of(key: string): Ground | undefined {
		return this.seen.get(key);
	}

	remember(key: string, ground: Ground): void {
		this.seen.delete(key);
		this.seen.set(key, ground);
		const [oldest] = this.seen.keys();
		if (this.seen.size > MOST && oldest !== undefined) this.seen.delete(oldest);
	}
}
