import type { Flange } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Room } from '#core/enclosure/room.ts';
import { WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import { arithmeticOf, type Arithmetic } from './arithmetic.ts';
import type { Meets } from './bracket.ts';
import type { Demand } from './demand.ts';
import { membersOf } from './member.ts';
import { depthOf, holdsIn, regionOf, type Fixed, type Region } from './region.ts';

/** Stands for a distance without end: nothing in the way, or, negative, no place at all. Units: mm. */
export const FAR = 1e4;

/** How a bracket is held at a point. Units: mm, + inside. Shape: slope at most 1 along any direction on the wall. */
interface Holding {
	/** What could still be: counts what is told or assumed; FAR where nobody knows, or where backing may be added. */
	readonly best: number;
	/** Distance to the nearest place that carries, counting only what is seen, measured or declared. */
	readonly sure: number;
	/** What to ask, when it is not sure that it carries and not sure that it does not. */
	readonly missing?: string;
	/** What the screws go into, as recorded. */
	readonly into?: string;
}

/** Where each kind of bracket carries the demand, on every wall. Units and frame: mm, wall frame. */
export interface Holds {
	readonly demand: Demand;
	readonly at: (wall: WallId, bracket: Meets, x: number, y: number) => Holding;
	/** How far any place of a wall has come to carrying a bracket: surely, not surely but to be asked, or nowhere. */
	readonly atBest: (wall: WallId, bracket: Fixed) => 'sure' | 'asked' | 'nowhere';
	/** The calculation at a point, for the sheet. */
	readonly arithmetic: (wall: WallId, bracket: Meets & { readonly kind: Fixed }, x: number, y: number) => Arithmetic;
}

interface Backed {
	readonly regions: readonly Region[];
	/** Those of the regions that carry somewhere. */
	readonly known: readonly Region[];
	readonly open: boolean;
	readonly ask: string;
	readonly probe: string;
	readonly marginal: string;
	readonly paper: string;
	/** Plugs in masonry. */
	readonly plugs: string;
	/** The load itself is not known. */
	readonly weigh: boolean;
}

/**
 * Where brackets carry the demand. The pipes and edges a hole must keep from are not in it: see holeSlack.
 * Units and frame: mm, wall frame.
 */
export function carryingOf(room: Room, c: Case, demand: Demand): Holds {
	const onWall = (wall: WallId) => ({
		flange: backed(room, c, { wall, bracket: 'flange', demand }),
		'seat-plate': backed(room, c, { wall, bracket: 'seat-plate', demand }),
		'leg-plate': backed(room, c, { wall, bracket: 'leg-plate', demand }),
		'rail-plate': backed(room, c, { wall, bracket: 'rail-plate', demand }),
		rest: backed(room, c, { wall, bracket: 'rest', demand })
	});
	const walls = { back: onWall('back'), left: onWall('left'), right: onWall('right'), front: onWall('front') };
	const real = new Map<WallId, Map<Flange, Backed>>(WALL_IDS.map((wall) => [wall, new Map()]));
	const readOff = (wall: WallId, flange: Flange): Backed => {
		const found = real.get(wall)?.get(flange) ?? backed(room, c, { wall, bracket: 'flange', flange, demand });
		real.get(wall)?.set(flange, found);
		return found;
	};
	const behind = (wall: WallId, kind: Fixed, flange?: Flange) => (flange ? readOff(wall, flange) : walls[wall][kind]);
	return {
		demand,
		at: (wall, { kind, flange }, x, y) =>
			kind === 'none' ? { best: FAR, sure: FAR } : holdingAt(behind(wall, kind, flange), x, y),
		atBest: (wall, bracket) => atBest(walls[wall][bracket]),
		arithmetic: (wall, { kind, flange }, x, y) =>
			arithmeticOf(behind(wall, kind, flange).regions, {
				bracket: kind,
				...(flange && { flange }),
				surveyed: room.walls[wall].surveyed,
				force: demand.force,
				x,
				y
			})
	};
}

const RANK = { sure: 2, asked: 1, nowhere: 0 } as const;

/** The walls on which some place holds a seat with front legs better than any holds one without. */
export const betterOnLegs = ({ atBest }: Holds): readonly WallId[] =>
	WALL_IDS.filter((wall) => RANK[atBest(wall, 'leg-plate')] > RANK[atBest(wall, 'seat-plate')]);

function backed(room: Room, c: Case, on: { wall: WallId; bracket: Fixed; flange?: Flange; demand: Demand }): Backed {
	const { demand, bracket, flange } = on;
	const { surveyed } = room.walls[on.wall];
	const damp = c.enclosure.dampBehind?.value === true;
	const toAdd = c.enclosure.backingMayBeAdded?.value === true;
	const members = membersOf(room.walls[on.wall], c.enclosure.walls[on.wall]);
	const asked = { bracket, ...(flange && { flange }), force: demand.force, damp };
	const regions = members.map((member) => regionOf(member, asked));
	const what = surveyed ? [] : [`What is behind the ${on.wall} wall?`];
	const add = surveyed
		? `Backing is to be added behind the ${on.wall} wall.`
		: 'Backing is to be added where nothing carries.';
	return {
		regions,
		known: regions.filter(holdsIn),
		open: !surveyed || toAdd,
		ask: [...what, ...(toAdd ? [add] : [])].join(' '),
		weigh: demand.open && bracket !== 'rest',
		plugs: `What do plugs in the masonry of the ${on.wall} wall take? Pull them on this wall, at a place to be covered, before fixing.`,
		paper: `Does the paper for the ${on.wall} wall name this bracket, or only another?`,
		marginal: `By calculation what is behind the ${on.wall} wall is marginal: somebody licensed to judge it decides.`,
		probe: `Is what was told about the ${on.wall} wall really behind it? Probe before drilling.`
	};
}

function holdingAt(b: Backed, x: number, y: number): Holding {
	const { sure: seen, known } = nearest(b.known, x, y);
	const sure = b.weigh ? NONE : seen;
	const best = b.open ? FAR : known.depth;
	const told = sure.depth < 0 && known.depth >= 0;
	const name = (told ? known : sure).region?.member.name;
	return {
		best,
		sure: sure.depth,
		...(sure.depth < 0 && best >= 0 ? { missing: b.weigh ? WEIGH : told ? doubt(b, known.region) : b.ask } : {}),
		...(known.depth >= 0 && name !== undefined ? { into: name } : {})
	};
}

function atBest({ known, open, weigh }: Backed): 'sure' | 'asked' | 'nowhere' {
	if (!weigh && known.some(isSure)) return 'sure';
	return open || known.length > 0 ? 'asked' : 'nowhere';
}

/** What holds only by the milder of two readings is not sure. */
const isSure = ({ member, named, check }: Region): boolean => member.sure && named && check.outcome === 'carries';

function doubt(b: Backed, region: Region | undefined): string {
	if (region?.check.outcome === 'marginal') return b.marginal;
	if (region?.named === false) return region.member.kind === 'masonry' ? b.plugs : b.paper;
	return b.probe;
}

/** What is asked while nobody was weighed; of a person, so only of whoever asks them. */
export const WEIGH = 'How heavy is the client? The wall is to carry the full weight.';

interface Found {
	readonly depth: number;
	readonly region?: Region;
}

const NONE: Found = { depth: -FAR };

/** The region a point lies deepest in, among the sure ones and among all. The search asks often, so one pass does both. */
function nearest(regions: readonly Region[], x: number, y: number): { readonly sure: Found; readonly known: Found } {
	let sure: Found = NONE;
	let known: Found = sure;
	for (const region of regions) {
		const depth = depthOf(region, x, y);
		if (depth > known.depth) known = { depth, region };
		if (depth > sure.depth && isSure(region)) sure = { depth, region };
	}
	return { sure, known };
}
