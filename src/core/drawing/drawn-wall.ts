import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Level } from './level.ts';
import type { SetOut } from './setting-out.ts';
import type { Reader } from './sheet.ts';
import type { View } from './view.ts';

/** A wall on its way to a sheet. */
export interface DrawnWall {
	readonly plan: Plan;
	readonly wall: WallId;
	readonly sets: readonly SetOut[];
	readonly levels: readonly Level[];
	readonly unit: LengthUnit;
	/** The unit of the figures in brackets, where both are asked for. */
	readonly other: LengthUnit | undefined;
	readonly view: View;
	readonly reader: Reader;
}
