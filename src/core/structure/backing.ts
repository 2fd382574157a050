import type { Flange, Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { modelOf, radiusOf, type HoldingBracket } from './bracket.ts';
import type { Holds } from './carrying.ts';
import { LAG_SCREW } from './fastener.ts';
import { checkWood } from './wood.ts';

/** Backing to be added behind a wall so that brackets are held. Units and frame: mm, wall frame. */
export interface NeededBacking {
	readonly wall: WallId;
	readonly rect: Rect;
	/** Ids of the accessories it is for. */
	readonly marks: readonly string[];
	/** Solid wood of at least this thickness carries by calculation; undefined where no wood that is sold does. */
	readonly thickness?: number;
	/** How it is fixed, and what is to be found out first. */
	readonly how: string;
}

/** Thicknesses of solid wood, one board to three. Units: mm. Common practice, no source. */
const THICKNESSES = [38, 76, 89, 114];
/** Heights in which it is sold. Units: mm. Common practice, no source. */
const HEIGHTS = [140, 184, 235, 286];
/** Gravity of the lightest wood to be used: spruce, pine, fir. Source: NDS species table (from memory). */
const GRAVITY = 0.42;
/** Wood is to go on past the disc of a bracket by this. Units: mm. Ours. */
const PAST = 30;
/** A stud no farther than this from the brackets is where a board ends. Units: mm. Common practice, no source. */
const BAY = 650;

interface Piece {
	readonly rect: Rect;
	readonly marks: readonly string[];
	readonly brackets: readonly { readonly kind: HoldingBracket; readonly flange?: Flange }[];
}

interface Walls {
	readonly c: Case;
	readonly room: Room;
	readonly holds: Holds;
}

/**
 * The backing that marks still need on walls that may be opened.
 * Units and frame: mm, wall frame. Shape: none where no backing may be added or the demand itself is not known.
 */
export const backingNeeded = (walls: Walls, marks: readonly Mark[]): readonly NeededBacking[] =>
	walls.c.enclosure.backingMayBeAdded?.value === true ? backingFor(walls, marks) : [];

/**
 * The same on any wall, to say what would help: every bracket that is not sure to be held lies in a piece with wood past
 * its disc, pieces that meet are one, and each runs on to the measured studs beside it.
 * Units and frame: mm, wall frame.
 */
export function backingFor({ c, room, holds }: Walls, marks: readonly Mark[]): readonly NeededBacking[] {
	const damp = c.enclosure.dampBehind?.value === true;
	return (['back', 'left', 'right', 'front'] as const).flatMap((wall) => {
		const pieces = marks.filter((m) => m.place.wall === wall).flatMap((m) => piecesOf(holds, m));
		return joined(pieces).map((piece): NeededBacking => {
			const checks = (depth: number) =>
				piece.brackets.map(({ kind, flange }) =>
					checkWood({ depth, gravity: GRAVITY, sheet: false, damp }, modelOf(kind, flange), holds.demand.force)
				);
			const thickness = THICKNESSES.find((depth) => checks(depth).every(({ outcome }) => outcome === 'carries'));
			const lags = thickness !== undefined && checks(thickness).some(({ fastener }) => fastener === LAG_SCREW);
			const wood = thickness === undefined ? 'none' : lags ? 'with lag screws' : 'with wood screws';
			const rect = sized(piece.rect, room, wall);
			return {
				wall,
				marks: [...new Set(piece.marks)],
				...(thickness !== undefined && { thickness }),
				...betweenStuds(rect, c, wall, wood)
			};
		});
	});
}

function piecesOf(holds: Holds, { accessory, place, variant }: Mark): readonly Piece[] {
	return variant.brackets.flatMap(({ kind, flange, x, y }): Piece[] => {
		if (kind === 'none' || kind === 'rest') return [];
		const at = [place.x + x, place.y + y] as const;
		if (holds.at(place.wall, { kind, ...(flange && { flange }) }, ...at).sure >= 0) return [];
		const past = radiusOf(kind, flange) + PAST;
		const rect = { x0: at[0] - past, x1: at[0] + past, y0: at[1] - past, y1: at[1] + past };
		return [{ rect, marks: [accessory.id], brackets: [{ kind, ...(flange && { flange }) }] }];
	});
}

/** Pieces at nearly one height, or that meet, as one band. */
function joined(pieces: readonly Piece[]): readonly Piece[] {
	const level = (a: Rect, b: Rect) => Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0) > 0;
	return pieces
		.toSorted((a, b) => a.rect.y0 - b.rect.y0 || a.rect.x0 - b.rect.x0)
		.reduce<readonly Piece[]>((bands, piece) => {
			const band = bands.find(
				(b) => level(b.rect, piece.rect) && heightOf(b.rect, piece.rect) <= (HEIGHTS.at(-1) ?? 0)
			);
			if (!band) return [...bands, piece];
			const [a, b] = [band.rect, piece.rect];
			const rect = {
				x0: Math.min(a.x0, b.x0),
				x1: Math.max(a.x1, b.x1),
				y0: Math.min(a.y0, b.y0),
				y1: Math.max(a.y1, b.y1)
			};
			const both = {
				rect,
				marks: [...band.marks, ...piece.marks],
				brackets: [...band.brackets, ...piece.brackets]
			};
			return bands.map((one) => (one === band ? both : one));
		}, []);
}

const heightOf = (a: Rect, b: Rect): number => Math.max(a.y1, b.y1) - Math.min(a.y0, b.y0);

/** A band in a height that is sold, about its middle, inside its wall. */
function sized(rect: Rect, room: Room, wall: WallId): Rect {
	const needed = rect.y1 - rect.y0;
	const height = HEIGHTS.find((sold) => sold >= needed - 1) ?? needed;
	const middle = (rect.y0 + rect.y1) / 2;
	const { from, to } = room.walls[wall];
	return {
		x0: Math.max(from, rect.x0),
		x1: Math.min(to, rect.x1),
		y0: middle - height / 2,
		y1: middle + height / 2
	};
}

/** What is said of the wood, by the screws it takes for it to carry. */
const SAYS = {
	'with wood screws': 'solid wood, screwed to the side of a stud at each end, never into its own end grain alone',
	'with lag screws':
		'solid wood, screwed to the side of a stud at each end, never into its own end grain alone; it carries with lag screws of 1/4 in, which the holes of the real part must take',
	none: 'no wood carries this by calculation: a seat with front legs, a seat on legs, or a plate with a paper that names the bracket'
} as const;

/** The band run on to the nearest measured studs, and how it is fixed. */
function betweenStuds(rect: Rect, c: Case, wall: WallId, wood: keyof typeof SAYS): Pick<NeededBacking, 'rect' | 'how'> {
	const studs = Object.values(c.enclosure.walls[wall].studs).filter(
		({ how }) => how === 'measured' || how === 'observed'
	);
	const left = studs.map(({ x }) => x).filter((x) => x <= rect.x0 && x > rect.x0 - BAY);
	const right = studs.map(({ x }) => x).filter((x) => x >= rect.x1 && x < rect.x1 + BAY);
	const ends = { x0: Math.max(...left), x1: Math.min(...right) };
	const found = Number.isFinite(ends.x0) && Number.isFinite(ends.x1);
	const what = SAYS[wood];
	return {
		rect: found ? { ...rect, ...ends } : rect,
		how: found ? `From stud to stud: ${what}.` : `On to the stud on each side, to be found: ${what}.`
	};
}
