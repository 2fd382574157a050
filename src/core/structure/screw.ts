import { inches } from '#core/units/length.ts';

/** One pound per square inch in N/mm2. */
const PSI = 4.4482216152605 / 25.4 ** 2;
/** One lbf/in^1.75 in N/mm^1.75, the odd unit of the lag screw formula. */
const LAG = 4.4482216152605 / 25.4 ** 1.75;

/** The wood and the screw in it. `gravity` is oven-dry specific gravity, `diameter` the shank in mm. */
export interface Held {
	readonly gravity: number;
	readonly diameter: number;
}

/**
 * Shank diameter of a wood screw gauge.
 * Units: mm. Source: 0.060 in + 0.013 in a gauge number; Wood Handbook (USDA FPL), table 8-9.
 */
export const gaugeDiameter = (gauge: number): number => inches(0.06 + 0.013 * gauge);

/**
 * Reference design withdrawal of a wood screw from side grain, per mm of thread. It already holds a factor of about 5.5.
 * Units: N/mm. Source: NDS, W = 2850 G^2 D lbf/in, which is 19.650 G^2 D.
 */
export const woodScrewWithdrawal = ({ gravity, diameter }: Held): number => 2850 * PSI * gravity ** 2 * diameter;

/**
 * Mean ultimate withdrawal of a wood screw from side grain, per mm of thread.
 * Units: N/mm. Source: Wood Handbook, 15700 G^2 D lbf/in.
 */
export const woodScrewUltimate = ({ gravity, diameter }: Held): number => 15700 * PSI * gravity ** 2 * diameter;

/**
 * Reference design withdrawal of a lag screw from side grain, per mm of thread without the tip.
 * Units: N/mm. Source: NDS, W = 1800 G^1.5 D^0.75 lbf/in.
 */
export const lagWithdrawal = ({ gravity, diameter }: Held): number => 1800 * LAG * gravity ** 1.5 * diameter ** 0.75;

/**
 * Mean ultimate withdrawal of a lag screw from side grain, per mm of thread without the tip.
 * Units: N/mm. Source: Wood Handbook, 8100 G^1.5 D^0.75 lbf/in.
 */
export const lagUltimate = ({ gravity, diameter }: Held): number => 8100 * LAG * gravity ** 1.5 * diameter ** 0.75;

/**
 * Allowable load of a wood screw across its axis at full penetration.
 * Units: N. Source: older allowable rule C D^2 with C = 3960, 3240, 2520 lbf/in2 for three groups of softwood; the
 * limits of the groups, 0.43 and 0.48, from the Wood Handbook's classes (from memory).
 */
export function lateral({ gravity, diameter }: Held): number {
	const c = gravity >= 0.48 ? 3960 : gravity >= 0.43 ? 3240 : 2520;
	return c * PSI * diameter ** 2;
}

/** Lateral values of a lag screw of 1/4 in across the grain under the thinnest plate of the table, by least gravity. Units: lbf. */
const LAG_ACROSS = [
	[0.67, 130],
	[0.55, 120],
	[0.49, 110],
	[0.42, 100],
	[0, 90]
] as const;

/**
 * Allowable load of a lag screw of 1/4 in across its axis at full penetration, across the grain, which takes less than along it.
 * Units: N. Source: NDS, table 12K, steel side plate of 14 gage; a flange is thicker, and in wood of less than 0.35 none is printed.
 */
export function lagLateral(gravity: number): number {
	const [, lbf] = LAG_ACROSS.find(([least]) => gravity >= least) ?? LAG_ACROSS[4];
	return lbf * PSI * 25.4 ** 2;
}

/**
 * The part of its lateral value a screw has at a depth of penetration: all at the full depth, none under four diameters.
 * Units: mm in, ratio out. Source: NDS, seven diameters for wood screws (from memory), eight for lag screws (table 12K).
 */
export function penetrationFactor(penetration: number, diameter: number, full = 7 * diameter): number {
	if (penetration < 4 * diameter) return 0;
	return Math.min(penetration / full, 1);
}

/** What one screw may take along and across its axis. Units: N. */
export interface ScrewValues {
	readonly withdrawal: number;
	readonly lateral: number;
}

/**
 * What one screw may take of a slanting force.
 * Units: N; `tension` along the screw, `shear` across it. Source: NDS, combined withdrawal and lateral load (from
 * memory): Z' = W Z / (W cos^2 a + Z sin^2 a), a the angle from the surface of the wood.
 */
export function combined(
	values: ScrewValues,
	tension: number,
	shear: number
): { readonly allowed: number; readonly used: number } {
	const force = Math.hypot(tension, shear);
	const cos2 = (shear / force) ** 2;
	const { withdrawal: w, lateral: z } = values;
	const allowed = (w * z) / (w * cos2 + z * (1 - cos2));
	return { allowed, used: force / allowed };
}

/** Tensile strength of the steel of studs, 45 ksi. Units: MPa. */
const STUD_STEEL = 310.264;
/** The base metal delivered is at least this part of the design thickness. Source: AISI S100 (from memory). */
const DELIVERED = 0.95;

/**
 * What a screw may take in pull-out from sheet steel, flange bending not counted.
 * Units: N; `mil` least base metal in thousandths of an inch, diameter in mm. Source: AISI S100, 0.85 t d Fu by a factor of 3 (formula from memory).
 */
export const steelPullOut = (mil: number, diameter: number): number =>
	(0.85 * (mil / DELIVERED) * 0.0254 * diameter * STUD_STEEL) / 3;
