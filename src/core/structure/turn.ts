import { depthIn, grown } from '#core/geometry/rect.ts';
import type { Rect, WallPoint } from '#core/geometry/vec.ts';
import type { Flange } from '#core/case/accessory.ts';
import { screwTensions } from './flange.ts';
import { edgeOf, WOOD_SCREW } from './fastener.ts';

/** How a flange is turned at a place, and what that comes to. */
export interface Turned {
	/** Degrees clockwise from up to its first hole, as one faces the wall. */
	readonly turn: number;
	/** Tension of the worst screw under the force straight down along the wall. Units: N. */
	readonly tension: number;
	/** One sentence for whoever fixes it. */
	readonly says: string;
}

/** The turns that are counted, degrees clockwise from up to the first hole, with the words for them. */
const TURNS: Readonly<Record<number, Readonly<Record<number, string>>>> = {
	2: {
		0: 'Turn the flange so that one hole is at the top and one at the bottom.',
		90: 'Turn the flange so that one hole is at each side.'
	},
	3: {
		0: 'Turn the flange so that one hole is at the top.',
		90: 'Turn the flange so that one hole is at the right.',
		180: 'Turn the flange so that two holes are at the top.',
		270: 'Turn the flange so that one hole is at the left.'
	},
	4: {
		0: 'Turn the flange so that one hole is at the top.',
		45: 'Turn the flange so that two holes are at the top.'
	}
};

/** The turns of a flange that are counted, in degrees. */
export const turnsOf = ({ holes }: Flange): readonly number[] => Object.keys(TURNS[holes] ?? {}).map(Number);

/** The turn at which the worst screw has the least under a force straight down, wherever it bites. Units: degrees. */
export const turnDown = (flange: Flange): number => {
	const worst = (turn: number) => Math.max(...screwTensions(flange, 1, turn));
	return turnsOf(flange).toSorted((a, b) => worst(a) - worst(b))[0] ?? 0;
};

/**
 * Where the holes of a flange turned so are, from its centre.
 * Units and frame: mm, wall frame; `turn` in degrees clockwise from up to the first hole. Source: exact geometry.
 */
export const holesTurned = ({ circle, holes }: Flange, turn: number): readonly WallPoint[] =>
	Array.from({ length: holes }, (_, i): WallPoint => {
		const angle = ((turn + (360 * i) / holes) * Math.PI) / 180;
		// A hair of rounding would tell left from right.
		return [rounded(circle * Math.sin(angle)), rounded(circle * Math.cos(angle))];
	});

const rounded = (n: number): number => Math.round(n * 1e6) / 1e6 + 0;

/** How far the holes keep from the edge of wood, and whose they are. Units: mm. */
interface Kept {
	readonly edge: number;
	readonly flange: Flange;
}

/**
 * Where the centre of a flange may be, turned so, for its holes to keep from the edge of wood.
 * Units and frame: mm, wall frame; `edge` from a hole to the edge of the wood. Shape: inside out where it does not fit.
 */
export function centresTurned(wood: Rect, turn: number, { edge, flange }: Kept): Rect {
	const r = grown(wood, -edge);
	const holes = holesTurned(flange, turn);
	const [xs, ys] = [holes.map(([x]) => x), holes.map(([, y]) => y)];
	return {
		x0: r.x0 - Math.min(...xs),
		x1: r.x1 - Math.max(...xs),
		y0: r.y0 - Math.min(...ys),
		y1: r.y1 - Math.max(...ys)
	};
}

/** The narrowest strip of wood for a flange, turned as it takes least, with wood screws. Units: mm. Source: exact geometry. */
export function stripOf(flange: Flange): number {
	const high = turnsOf(flange).map((turn) => {
		const ys = holesTurned(flange, turn).map(([, y]) => y);
		return Math.max(...ys) - Math.min(...ys);
	});
	return Math.min(...high) + 2 * edgeOf(WOOD_SCREW);
}

/** A flange that is to be turned. Units: `force` in N, `edge` in mm from a hole to the edge of the wood. */
interface ToTurn extends Kept {
	readonly force: number;
}

/**
 * The turn at which all holes of a flange bite wood and its worst screw has the least under a force straight down.
 * That pulls the upper edge off the wall, so two holes at the top come first, then one at a side, the deeper in the wood.
 * Units and frame: mm, wall frame. Shape: undefined where no turn fits.
 */
export function bestTurn(wood: Rect, [x, y]: WallPoint, { force, edge, flange }: ToTurn): Turned | undefined {
	const [best] = turnsOf(flange)
		.map((turn) => ({
			turn,
			depth: depthIn(centresTurned(wood, turn, { edge, flange }), x, y),
			// A hole at the left or at the right is the same to it, past what a cosine is rounded by.
			tension: Number(Math.max(...screwTensions(flange, force, turn)).toFixed(6))
		}))
		.filter(({ depth }) => depth >= 0)
		.toSorted((a, b) => a.tension - b.tension || b.depth - a.depth);
	return best && { turn: best.turn, tension: best.tension, says: TURNS[flange.holes]?.[best.turn] ?? '' };
}
