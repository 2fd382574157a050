import { BARS } from './bars.ts';
import { BODY_FIT } from './body-fit.ts';
import { CASE_FACTS } from './case-facts.ts';
import { CLEARANCES } from './clearances.ts';
import { CONTROLS } from './controls.ts';
import { EXTENTS } from './extents.ts';
import { HOLDING } from './holding.ts';
import type { Measure } from './scene.ts';
import { SEATS } from './seats.ts';
import { SITTING } from './sitting.ts';
import { STANDING } from './standing.ts';
import { TRANSFER } from './transfer.ts';
import { WALLS } from './walls.ts';

/** Every quantity a row can ask of a scene, once. */
export const MEASURES = {
	...CASE_FACTS,
	...WALLS,
	...CLEARANCES,
	...SEATS,
	...CONTROLS,
	...BARS,
	...EXTENTS,
	...SITTING,
	...STANDING,
	...HOLDING,
	...BODY_FIT,
	...TRANSFER
} satisfies Record<string, Measure>;

/** The name of a measure. */
export type MeasureId = keyof typeof MEASURES;
