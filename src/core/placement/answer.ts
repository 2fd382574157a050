import type { LeanNeed } from '#core/measures/lean-need.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Drift } from './drift.ts';

/**
 * How the search ended: proven best on these figures, bounded, impossible, or everything was given.
 * Shape: the best may be proven but for tie-breaks; `bound` then lies below `cost` in these alone.
 */
type Status = 'optimal' | 'bounded' | 'impossible' | 'given';

/** Why a mark has one of its coordinates. Lengths in its sentences are in mm, for `onTape`. */
export interface Reason {
	readonly accessory: string;
	readonly axis: 'along' | 'height';
	/** Rows that get worse 10 mm to a side, the strongest first, at most one a side. */
	readonly rows: readonly string[];
	/** The strongest reason in one plain sentence. */
	readonly says: string;
	/** Rows, clauses, figures, limits, and what 10 mm would do, in one line. */
	readonly expert: string;
}

/** A must that plays a part in a clash. */
interface Clashing {
	readonly row: string;
	readonly about: readonly string[];
	readonly says: string;
}

/** Rows that cannot all be met together; dropping any one of them frees the rest. */
export interface Clash {
	readonly rows: readonly Clashing[];
	/** Told where a budget ended before every member was shown to be needed. */
	readonly unproved?: true;
}

/** A must that a way out gives up. Lengths in its sentences are in mm, for `onTape`. */
export interface GivenUp {
	readonly row: string;
	readonly about: readonly string[];
	/** The row with what it is about. */
	readonly says: string;
	/** How far it falls short; null for a row of yes or no. Units: mm. */
	readonly short: number | null;
	/** What can be done next about it. */
	readonly next: string;
}

/** A plan that a search found once some musts were given up, with every other must met. */
export interface WayOut {
	readonly gives: readonly GivenUp[];
	readonly marks: readonly Mark[];
	/** No plan that keeps the same other rows gives up less. */
	readonly proved: boolean;
}

/** Another plan worth a look: what differs, and what it costs and gains beside the plan. */
export interface Alternative {
	readonly kind: 'wall' | 'part' | 'handing' | 'reference' | 'plumbing';
	/** What differs, in one plain sentence. */
	readonly says: string;
	/** What gets worse and what gets better, strongest first, in plain sentences with mm for `onTape`. */
	readonly worse: readonly string[];
	readonly better: readonly string[];
	readonly marks: readonly Mark[];
	/** Nothing better of this kind exists; false when the budget ended first. */
	readonly proved: boolean;
}

/** What the search gives. Shape: marks in the order of their accessories; empty when impossible. */
export interface Placed {
	readonly marks: readonly Mark[];
	readonly status: Status;
	/** Cost by strength, as compared. */
	readonly cost: readonly number[];
	/** Lower bound of the cost; equal to it when optimal, but for tie-breaks. */
	readonly bound: readonly number[];
	readonly evaluations: number;
	readonly nodes: number;
	/**
	 * When impossible: sets of rows that cannot be met together, each sharing no row with one before it; with all of them
	 * relaxed nothing clashes.
	 */
	readonly clashes?: readonly Clash[];
}

/** What was asked of the answer afterwards. */
export interface Probes {
	readonly reasons: readonly Reason[];
	/** The room round every mark that is not built, in the order of the marks. */
	readonly drifts: readonly Drift[];
	readonly leans: readonly LeanNeed[];
	/** Findings that are open, as questions. */
	readonly questions: readonly { readonly id: string; readonly about: readonly string[]; readonly asks: string }[];
	/** Whom else to ask what, and the accessories that wait for the answer; none where nothing waits. */
	readonly waits: readonly Wait[];
}

/** A question somebody else answers. */
export interface Wait {
	readonly row: string;
	readonly about: readonly string[];
	readonly whom: string;
	readonly asks: string;
}
