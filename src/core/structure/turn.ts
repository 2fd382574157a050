import { depthIn, grown } from '#core/geometry/rect.ts';
import type { Rect, WallPoint } from '#core/geometry/vec.ts';
import { FLANGE, screwTensions } from './flange.ts';
import { edgeOf, WOOD_SCREW } from './fastener.ts';

/** A way a flange is turned: degrees clockwise from up to its one hole, as one faces the wall; the other two are across from it. */
type Turn = 0 | 90 | 180 | 270;

/** How a flange is turned at a place, and what that comes to. */
interface Turned {
	readonly turn: Turn;
	/** Tension of the worst screw under the force straight down along the wall. Units: N. */
	readonly tension: number;
	/** One sentence for whoever fixes it. */
	readonly says: string;
}

/** The turns that are counted. */
export const TURNS: readonly Turn[] = [0, 90, 180, 270];

/** The narrowest strip of wood for a flange, one side of its triangle of holes along it. Units: mm. Source: exact geometry. */
export const STRIP = 1.5 * FLANGE.circle + 2 * edgeOf(WOOD_SCREW);

const SAYS: Readonly<Record<Turn, string>> = {
	0: 'Turn the flange so that one hole is at the top.',
	90: 'Turn the flange so that one hole is at the right.',
	180: 'Turn the flange so that two holes are at the top.',
	270: 'Turn the flange so that one hole is at the left.'
};

/**
 * Where the centre of a flange may be, turned so, for its holes to keep from the edge of wood: they reach r the way of the
 * one hole, r/2 the other way, and 0.866 r across. Units and frame: mm, wall frame; `edge` from a hole to the edge of the wood.
 * Shape: inside out where it does not fit.
 */
export function centresTurned(wood: Rect, turn: Turn, edge: number): Rect {
	const r = grown(wood, -edge);
	const [far, near, across] = [FLANGE.circle, FLANGE.circle / 2, (FLANGE.circle * Math.sqrt(3)) / 2];
	switch (turn) {
		case 0:
			return { x0: r.x0 + across, x1: r.x1 - across, y0: r.y0 + near, y1: r.y1 - far };
		case 180:
			return { x0: r.x0 + across, x1: r.x1 - across, y0: r.y0 + far, y1: r.y1 - near };
		case 90:
			return { x0: r.x0 + near, x1: r.x1 - far, y0: r.y0 + across, y1: r.y1 - across };
		case 270:
			return { x0: r.x0 + far, x1: r.x1 - near, y0: r.y0 + across, y1: r.y1 - across };
	}
}

/** A flange that is to be turned. Units: `force` in N, `edge` in mm from a hole to the edge of the wood. */
interface ToTurn {
	readonly force: number;
	readonly edge: number;
}

/**
 * The turn at which all three holes of a flange bite wood and its worst screw has the least under a force straight down.
 * That pulls the upper edge off the wall, so two holes at the top come first, then one at a side, the deeper in the wood.
 * Units and frame: mm, wall frame. Shape: undefined where no turn fits.
 */
export function bestTurn(wood: Rect, [x, y]: WallPoint, { force, edge }: ToTurn): Turned | undefined {
	const [best] = TURNS.map((turn) => ({
		turn,
		depth: depthIn(centresTurned(wood, turn, edge), x, y),
		// A hole at the left or at the right is the same to it, past what a cosine is rounded by.
		tension: Number(Math.max(...screwTensions(FLANGE, force, turn)).toFixed(6))
	}))
		.filter(({ depth }) => depth >= 0)
		.toSorted((a, b) => a.tension - b.tension || b.depth - a.depth);
	return best && { turn: best.turn, tension: best.tension, says: SAYS[best.turn] };
}
