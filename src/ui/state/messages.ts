import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Better } from '#core/further.ts';
import type { Placed, Probes, WayOut } from '#core/placement/answer.ts';
import type { OnPaper } from '#core/drawing/sheet.ts';
import type { FileName } from '#core/files/names.ts';
import type { Beside } from '#core/report.ts';
import type { Worth } from '#core/worth.ts';

/** What the page asks the Worker. A later question about places makes the one before it stale. */
export type Asked =
	| { readonly kind: 'plan'; readonly serial: number; readonly c: Case }
	/** The search under way is to end with the best it has. */
	| { readonly kind: 'enough'; readonly serial: number }
	/** Nothing is looked for any more. */
	| { readonly kind: 'drop'; readonly serial: number }
	/** Marks as they stand: what explains them, and whether one that was moved would do better elsewhere. */
	| ({ readonly kind: 'stands'; readonly serial: number } & Stands)
	| {
			/** One file of a plan, written. */
			readonly kind: 'file';
			readonly serial: number;
			readonly name: FileName;
			readonly c: Case;
			readonly placed: Placed;
			readonly beside: Partial<Beside>;
			readonly fonts: Fonts;
			readonly how: Omit<OnPaper, 'reader'>;
	  };

/** A case with its marks where they stand, and the one that was moved last, if one was. */
export interface Stands {
	readonly c: Case;
	readonly marks: readonly Mark[];
	readonly moved: string | undefined;
}

/** The bytes of the two fonts that paper is set in. */
interface Fonts {
	readonly regular: Uint8Array;
	readonly semibold: Uint8Array;
}

/** What the Worker found: places, and what was asked of them afterwards. */
export interface Answered {
	readonly placed: Placed;
	readonly probes: Probes;
}

/** How far a search is: rows asked, what no plan goes below, and the best plan so far. */
export interface Underway {
	readonly evaluations: number;
	readonly bound: readonly number[];
	readonly found?: { readonly marks: readonly Mark[]; readonly cost: readonly number[] };
}

/** What the Worker says. */
export type Said =
	| { readonly kind: 'ready' }
	| ({ readonly kind: 'progress'; readonly serial: number } & Underway)
	| ({ readonly kind: 'planned'; readonly serial: number } & Answered)
	/** The search was ended before it had any plan. */
	| { readonly kind: 'nothing'; readonly serial: number }
	| { readonly kind: 'ways-out'; readonly serial: number; readonly ways: readonly WayOut[] }
	| { readonly kind: 'explained'; readonly serial: number; readonly probes: Probes }
	/** What measuring could move of the marks that were planned or explained. */
	| { readonly kind: 'weighed'; readonly serial: number; readonly worth: readonly Worth[] }
	| { readonly kind: 'better'; readonly serial: number; readonly better: Better }
	| { readonly kind: 'file'; readonly serial: number; readonly content: string | Uint8Array<ArrayBuffer> }
	| { readonly kind: 'failed'; readonly serial: number; readonly why: string };
