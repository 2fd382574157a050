import type { LeanNeed } from '#core/measures/lean-need.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Strength } from '#core/rules/row.ts';

/** How the search ended: proven best on these figures, bounded, impossible, or everything was given. */
type Status = 'optimal' | 'bounded' | 'impossible' | 'given';

/** Why a mark has a coordinate: the rows that hold it, with what they would do 10 mm to either side. */
export interface Reason {
	readonly accessory: string;
	/** Which way the mark was moved, on the wall as seen from inside. */
	readonly towards: 'left' | 'right' | 'lower' | 'higher';
	readonly row: string;
	readonly strength: Strength;
	/** Plain sentence. */
	readonly says: string;
}

/** Rows that cannot all be met together; dropping any one of them frees the rest. */
export interface Clash {
	readonly rows: readonly { readonly row: string; readonly about: readonly string[]; readonly says: string }[];
}

/** What the search gives. Shape: marks in the order of their accessories; empty when impossible. */
export interface Placed {
	readonly marks: readonly Mark[];
	readonly status: Status;
	/** Cost by strength, as compared. */
	readonly cost: readonly number[];
	/** Lower bound of the cost when bounded; equal to cost when optimal. */
	readonly bound: readonly number[];
	readonly evaluations: number;
	readonly nodes: number;
	/** When impossible: rows that cannot be met together. */
	readonly clash?: Clash;
}

/** What was asked of the answer afterwards. */
export interface Probes {
	readonly reasons: readonly Reason[];
	readonly leans: readonly LeanNeed[];
	/** Findings that are open, as questions. */
	readonly questions: readonly { readonly id: string; readonly about: readonly string[]; readonly asks: string }[];
}
