import { screwLoad, type BracketModel } from './bracket.ts';
import { LAG_SCREW, WOOD_SCREW, type Fastener } from './fastener.ts';
import { combined, penetrationFactor } from './screw.ts';

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
	/** The screw that is counted in each hole. Shape: undefined where none is calculated. */
	readonly fastener?: Fastener;
	/** Every load that was looked at, the one that decides first. Shape: empty where nothing is calculated. */
	readonly used: readonly Used[];
	readonly lines: readonly string[];
}

// Weak or unknown softwood, from the table of NDS values.
const UNKNOWN_WOOD = 0.37;
// A screw that ends inside a sheet holds less than the formula says in tests: a judgement of ours.
const SHEET = 0.75;
// Wet service, NDS, from memory.
const DAMP = 0.7;

const RANK: Readonly<Record<Outcome, number>> = { carries: 2, marginal: 1, 'does not': 0 };

/**
 * Whether the worst screw of a bracket holds in wood: the wood screw, or the lag screw where that alone makes the verdict better.
 * Units: N. Source: NDS withdrawal, US practice for sound dry wood; see fastener.ts, screw.ts and the README.
 */
export function checkWood(wood: Wood, model: BracketModel, force: number): Check {
	const screw = checkScrew(wood, model, force);
	if (screw.outcome === 'carries') return screw;
	const lag = withScrew(wood, model, force, LAG_SCREW);
	const held = `A ${WOOD_SCREW.name} ${screw.outcome === 'marginal' ? 'is marginal' : 'does not carry'} here`;
	if (RANK[lag.outcome] > RANK[screw.outcome]) {
		const holes = 'Every hole of the real part must take it: holes of 5 to 7 mm are usual.';
		return { ...lag, lines: [`${held}; counted is a ${LAG_SCREW.name}. ${holes}`, ...lag.lines] };
	}
	return { ...screw, lines: [...screw.lines, `A ${LAG_SCREW.name} would come to the same.`] };
}

/** The same with the wood screw alone, for wood in which a lag screw would be too near an edge. */
export const checkScrew = (wood: Wood, model: BracketModel, force: number): Check =>
	withScrew(wood, model, force, WOOD_SCREW);

function withScrew(wood: Wood, model: BracketModel, force: number, fastener: Fastener): Check {
	const { name, diameter, tip, least, leastSays } = fastener;
	const gravity = wood.gravity ?? UNKNOWN_WOOD;
	const perMm = fastener.withdrawal(gravity);
	const thread = Math.min(fastener.longest, Math.max(0, wood.depth - tip));
	const factor = (wood.sheet ? SHEET : 1) * (wood.damp ? DAMP : 1);
	const holds = perMm * thread * factor;
	const bitten = penetrationFactor(fastener.bite(wood.depth), diameter, fastener.full);
	const across = fastener.across(gravity) * bitten * (wood.damp ? DAMP : 1);
	const load = screwLoad(model, force);
	const values = { withdrawal: holds, lateral: across };
	const pulled = combined(values, load.anyDirection, load.shear).used;
	// What a force along the wall loads across rather than out is looked at along the wall as well.
	const shear = force * model.direct;
	const pushed = model.direct > model.leverage ? combined(values, load.inPlane, shear).used : undefined;
	const used = Math.max(pulled, pushed ?? 0);
	const part = (n: number) =>
		across > 0 && holds > 0 ? `${String(Math.round(n * 100))} % of what it takes` : 'no value';
	const deepEnough = wood.depth >= least;
	const carries = deepEnough && holds >= load.anyDirection;
	const beside = holds >= load.sum1991 && used <= 1;
	return {
		outcome: carries ? (beside ? 'carries' : 'marginal') : 'does not',
		fastener,
		used: deepEnough
			? [
					{ what: 'any direction', share: load.anyDirection / holds },
					{ what: 'along the wall', share: load.inPlane / holds },
					{ what: '1991 sum', share: load.sum1991 / holds }
				]
			: [],
		lines: [
			`Wood: specific gravity ${gravity.toFixed(2)}${wood.gravity === undefined ? ', the weakest, because it is not recorded' : ''}.`,
			`One ${name} (${diameter.toFixed(2)} mm): ${one(wood.depth)} mm of wood, ${one(tip)} mm tip not counted: ${one(thread)} mm thread.`,
			`It holds ${perMm.toFixed(2)} N/mm x ${one(thread)} mm${factorText(wood)} = ${one(holds)} N.`,
			...(deepEnough ? [] : [`The wood is thinner than ${one(least)} mm, ${leastSays}: no value counts.`]),
			`Worst screw, one force in any direction: ${compared(load.anyDirection, holds)}.`,
			`One force along the wall: ${compared(load.inPlane, holds)}.`,
			`Pull and moment together, the superseded 1991 sum: ${compared(load.sum1991, holds)}.`,
			`Tension with ${one(load.shear)} N shear on the same screw: ${part(pulled)}.`,
			...(pushed === undefined
				? []
				: [`Along the wall alone, ${one(load.inPlane)} N tension with ${one(shear)} N shear: ${part(pushed)}.`])
		]
	};
}

function factorText({ sheet, damp }: Wood): string {
	return `${sheet ? ` x ${String(SHEET)} (screw ends in a sheet)` : ''}${damp ? ` x ${String(DAMP)} (damp behind)` : ''}`;
}

const compared = (load: number, holds: number): string => `${one(load)} N, ${load <= holds ? 'held' : 'not held'}`;

const one = (n: number): string => n.toFixed(1);
