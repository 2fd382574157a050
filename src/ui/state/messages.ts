import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Placed, Probes } from '#core/placement/answer.ts';
import type { OnPaper } from '#core/drawing/sheet.ts';

/** What the page asks the Worker. A later `plan` makes the one before it stale. */
export type Asked =
	| { readonly kind: 'plan'; readonly serial: number; readonly c: Case }
	| {
			readonly kind: 'pdf';
			readonly serial: number;
			readonly c: Case;
			readonly placed: Placed;
			readonly fonts: Fonts;
			readonly how: OnPaper;
	  };

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

/** What the Worker says. */
export type Said =
	| { readonly kind: 'ready' }
	| { readonly kind: 'progress'; readonly serial: number; readonly nodes: number; readonly marks?: readonly Mark[] }
	| ({ readonly kind: 'planned'; readonly serial: number } & Answered)
	| { readonly kind: 'pdf'; readonly serial: number; readonly bytes: Uint8Array<ArrayBuffer> }
	| { readonly kind: 'failed'; readonly serial: number; readonly why: string };
