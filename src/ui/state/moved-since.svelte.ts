import type { Case } from '#core/case/record.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { movedBetween, type Measures, type Moved } from './moved.ts';
import type { PlanState } from './plan-state.svelte.ts';

/** What is compared: the case and the plan as they stand, and the unit to say it in. */
export interface Stands {
	readonly c: Case;
	readonly plan: PlanState;
	readonly unit: LengthUnit;
}

/** What has moved since a number was opened. */
export class MovedSince {
	private from = $state.raw<{ readonly c: Case; readonly measures: Measures }>();
	private readonly read: () => Stands;

	readonly rows: readonly Moved[] = $derived.by(() => this.compare());

	constructor(read: () => Stands) {
		this.read = read;
	}

	/** Remembers how things stand. */
	begin(): void {
		const { c, plan } = this.read();
		this.from = { c, measures: plan.measures };
	}

	private compare(): readonly Moved[] {
		const { c, plan, unit } = this.read();
		// Nothing was changed yet: a search that ends meanwhile moved nothing.
		if (!this.from || this.from.c === c) return [];
		return movedBetween(plan.settledFor(this.from.c) ?? this.from.measures, plan.measures, unit);
	}
}
