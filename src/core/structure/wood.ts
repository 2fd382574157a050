import { screwLoad, type BracketModel } from './bracket.ts';
import { combined, gaugeDiameter, lateral, penetrationFactor, woodScrewWithdrawal } from './screw.ts';

/** Wood that screws bite. Units: mm; `gravity` is oven-dry specific gravity, left out when nobody knows it. */
export interface Wood {
	readonly depth: number;
	readonly gravity?: number;
	readonly sheet: boolean;
	readonly damp: boolean;
}

/** What a calculation comes to. Marginal: carries the force in any direction, but not every check printed beside it. */
export type Outcome = 'carries' | 'marginal' | 'does not';

/** A load beside what takes it. `share` is load by what may be taken; above 1 it is not held. */
export interface Used {
	readonly what: string;
	readonly share: number;
}

/** A calculation, with the lines that show it. */
export interface Check {
	readonly outcome: Outcome;
	/** Every load that was looked at, the one that decides first. Shape: empty where nothing is calculated. */
	readonly used: readonly Used[];
	readonly lines: readonly string[];
}

const GAUGE = 14;
/** Shank of the screw every generic bracket is checked with, a judgement of ours. Units: mm. */
export const SHANK = gaugeDiameter(GAUGE);
// The point of a screw, one diameter, holds nothing: a judgement of ours.
const TIP = SHANK;
// Screws with more thread than this are not on the shelf. Units: mm. Common practice, no source.
const LONGEST_THREAD = 64;
// Weak or unknown softwood, from the table of NDS values.
const UNKNOWN_WOOD = 0.37;
// A screw that ends inside a sheet holds less than the formula says in tests: a judgement of ours.
const SHEET = 0.75;
// Wet service, NDS, from memory.
const DAMP = 0.7;
// Least penetration in diameters, NDS, from memory.
const LEAST = 6;

/**
 * Whether the worst screw of a bracket holds in wood.
 * Units: N. Source: NDS withdrawal of wood screws, US practice for sound dry wood; see screw.ts and the README.
 */
export function checkWood(wood: Wood, model: BracketModel, force: number): Check {
	const gravity = wood.gravity ?? UNKNOWN_WOOD;
	const screw = { gravity, diameter: SHANK };
	const perMm = woodScrewWithdrawal(screw);
	const thread = Math.min(LONGEST_THREAD, Math.max(0, wood.depth - TIP));
	const factor = (wood.sheet ? SHEET : 1) * (wood.damp ? DAMP : 1);
	const holds = perMm * thread * factor;
	const across = lateral(screw) * penetrationFactor(wood.depth, SHANK) * (wood.damp ? DAMP : 1);
	const load = screwLoad(model, force);
	const { used } = combined({ withdrawal: holds, lateral: across }, load.anyDirection, load.shear);
	const deepEnough = wood.depth >= LEAST * SHANK;
	const carries = deepEnough && holds >= load.anyDirection;
	const beside = holds >= load.sum1991 && used <= 1;
	return {
		outcome: carries ? (beside ? 'carries' : 'marginal') : 'does not',
		used: deepEnough
			? [
					{ what: 'any direction', share: load.anyDirection / holds },
					{ what: 'along the wall', share: load.inPlane / holds },
					{ what: '1991 sum', share: load.sum1991 / holds }
				]
			: [],
		lines: [
			`Wood: specific gravity ${gravity.toFixed(2)}${wood.gravity === undefined ? ', the weakest, because it is not recorded' : ''}.`,
			`One screw #${String(GAUGE)} (${SHANK.toFixed(2)} mm): ${one(wood.depth)} mm of wood, ${one(TIP)} mm tip not counted: ${one(thread)} mm thread.`,
			`It holds ${perMm.toFixed(2)} N/mm x ${one(thread)} mm${factorText(wood)} = ${one(holds)} N.`,
			...(deepEnough ? [] : [`The wood is thinner than ${one(LEAST * SHANK)} mm, six diameters: no value counts.`]),
			`Worst screw, one force in any direction: ${compared(load.anyDirection, holds)}.`,
			`One force along the wall: ${compared(load.inPlane, holds)}.`,
			`Pull and moment together, the superseded 1991 sum: ${compared(load.sum1991, holds)}.`,
			`Tension with ${one(load.shear)} N shear on the same screw: ${across > 0 && holds > 0 ? `${String(Math.round(used * 100))} % of what it takes` : 'no value'}.`
		]
	};
}

function factorText({ sheet, damp }: Wood): string {
	return `${sheet ? ` x ${String(SHEET)} (screw ends in a sheet)` : ''}${damp ? ` x ${String(DAMP)} (damp behind)` : ''}`;
}

const compared = (load: number, holds: number): string => `${one(load)} N, ${load <= holds ? 'held' : 'not held'}`;

const one = (n: number): string => n.toFixed(1);
