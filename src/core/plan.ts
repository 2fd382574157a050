import type { Accessory } from './case/accessory.ts';
import type { Scene } from './measures/scene.ts';
import type { Placed, Probes } from './placement/answer.ts';
import type { BoundRow, Finding } from './rules/row.ts';

/** Everything computed from one case. Shape: the same case gives the same plan. */
export interface Plan extends Placed {
	readonly scene: Scene;
	readonly wanted: readonly Accessory[];
	readonly rows: readonly BoundRow[];
	readonly findings: readonly Finding[];
	readonly probes: Probes;
	/** Settled, or provisional because something about wall or body is not known. */
	readonly basis: 'settled' | 'provisional';
	readonly digest: string;
}
