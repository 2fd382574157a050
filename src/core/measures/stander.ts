import type { Side } from '#core/body/hands.ts';
import { toPlan, type WallId } from '#core/geometry/frame.ts';
import { add, times, type Vec } from '#core/geometry/vec.ts';
import { leanFan } from '#core/reach/lean.ts';
import { hipOf, isMissing, seatedPosture, standingPosture } from '#core/reach/station.ts';
import type { Posture } from '#core/reach/slack.ts';
import { handOf, type Hand } from './hand.ts';
import type { Missing, Scene } from './scene.ts';

/** How far outside the entry line somebody stands who has not stepped in, and inside it who just has. Ours. */
const OUTSIDE = 150;
const INSIDE = 250;
/** Where along the entry the best place to stand is looked for, as shares of its width. Ours: not beside the opening. */
const STANDS = [0.15, 0.325, 0.5, 0.675, 0.85] as const;
/** How far somebody who washes on her feet may stand from the middle of the shower. Ours. */
const STANDING_PLAY = 50;
/** In a large shower she may stand as near to a wall as the middle of a small one is. Units: mm. Ours. */
const FROM_WALL = 450;
/** Where a shower chair is parked: its back rest ahead of the wall behind it. Ours. */
export const CHAIR_BACK = 200;
/** How far off a parked chair may be: to either side, and twice as far ahead. Ours. */
export const CHAIR_PLAY = 100;
/** What is asked where an arm is not known. */
export const ASK_ARM = 'How long is the arm, from the shoulder to a rod held in the fist?';
/** What is asked where the shower chair is not known. */
export const ASK_CHAIR = 'How high is the seat of the wheeled chair?';

/** Where a body is while it acts. */
export type Station = 'entry' | 'inside-entry' | 'on-the-way' | 'washing' | 'chair' | 'before-seat';

/**
 * A hand at a station: one set of postures for each of nine points of the station's play, of which the best counts at
 * its point and the worst point in all.
 */
export interface Posed {
	readonly side: Side;
	readonly points: readonly Hand[];
}

/** Both hands of a body at a station; or what has to be asked. */
export type Stander = readonly Posed[] | Missing;

const standers = new WeakMap<Scene, Map<string, Stander>>();

/** A body at a station, facing a wall; made once a scene. Frame: plan; before the seat, seen from the spot before it. */
export function standerOf(s: Scene, id: string, at: { station: Station; wall: WallId; leaning?: boolean }): Stander {
	const known = standers.get(s) ?? new Map<string, Stander>();
	standers.set(s, known);
	const key = `${at.station} ${at.wall} ${at.leaning ? 'leaning' : ''} ${id}`;
	const found = known.get(key) ?? posed(s, id, at);
	known.set(key, found);
	return found;
}

function posed(s: Scene, id: string, at: { station: Station; wall: WallId; leaning?: boolean }): Stander {
	const body = s.bodies[id];
	const arms = s.arms[id];
	if (!body || !arms) return { missing: ASK_ARM };
	const hands: Posed[] = [];
	for (const side of ['left', 'right'] as const) {
		const arm = arms[side];
		if (!arm) continue;
		const points = at.station === 'chair' ? inChair(s, id, side, at.leaning) : onFeet(s, id, side, at);
		if ('missing' in points) return { missing: points.missing };
		hands.push({ side, points: points.map((postures) => handOf(arm, postures)) });
	}
	return hands.length > 0 ? hands : { missing: ASK_ARM };
}

type Points = readonly (readonly Posture[])[] | Missing;

/** Spots of a station: one list a point of its play. Units and frame: mm, plan frame. */
function spotsOf(s: Scene, station: Station): readonly (readonly Vec[])[] {
	const { width, depth } = s.room.footprint;
	const { opening, entryLine, bathroomFloor } = s.room;
	const across = (y: number, z: (x: number) => number) =>
		STANDS.map((share): Vec => {
			const x = opening.x0 + share * (opening.x1 - opening.x0);
			return [x, y, z(x)];
		});
	if (station === 'entry') return [across(entryLine + OUTSIDE, () => bathroomFloor)];
	const inside = Math.max(entryLine - INSIDE, depth / 2);
	const at = (y: number) => across(y, (x) => s.room.floorAt(x, y));
	if (station === 'inside-entry') return [at(inside)];
	if (station === 'on-the-way') return [[inside, depth / 2, Math.min(INSIDE, depth / 2)].flatMap(at)];
	// Before the seat somebody stands at the origin, on the floor in the middle: the seat's mark brings her there.
	if (station === 'before-seat') return [[[0, 0, s.room.floorAt(width / 2, depth / 2)]]];
	const play = [-STANDING_PLAY, 0, STANDING_PLAY];
	const spots = standsIn(width).flatMap((x) => standsIn(depth).map((y) => [x, y] as const));
	return play.flatMap((dx) =>
		play.map((dy) => spots.map(([x, y]): Vec => [x + dx, y + dy, s.room.floorAt(x + dx, y + dy)]))
	);
}

/** Where somebody stands to wash: in the middle, in a large shower nearer to either wall as well. Units: mm. */
const standsIn = (length: number): readonly number[] =>
	length > 2 * (FROM_WALL + STANDING_PLAY) ? [length / 2, FROM_WALL, length - FROM_WALL] : [length / 2];

function onFeet(s: Scene, id: string, side: Side, { station, wall }: { station: Station; wall: WallId }): Points {
	const body = s.bodies[id];
	if (!body) return { missing: ASK_ARM };
	const points: Posture[][] = [];
	for (const spots of spotsOf(s, station)) {
		const postures: Posture[] = [];
		for (const at of spots) {
			const facing = station === 'before-seat' ? s.room.sitting.ahead : facingOf(s, at, wall);
			const posture = standingPosture({ body, at, facing, side });
			if (isMissing(posture)) return { missing: `Measure: ${posture.missing}.` };
			postures.push(posture);
		}
		points.push(postures);
	}
	return points;
}

function facingOf(s: Scene, at: Vec, wall: WallId): Vec {
	const middle = toPlan(wall, [s.room.walls[wall].length / 2, 0], 0, s.room.footprint);
	const [x, y] = [middle[0] - at[0], middle[1] - at[1]];
	const far = Math.hypot(x, y);
	return [x / far, y / far, 0];
}

/** The floor below the back rest of the parked chair, so far off along the wall behind it and ahead. Frame: plan. */
export function chairPoint(s: Scene, [aside, ahead]: readonly [number, number]): Vec {
	const { corner, along, ahead: forward, run } = s.room.sitting;
	const at = add(corner, add(times(along, run / 2 + aside), times(forward, CHAIR_BACK + ahead)));
	return [at[0], at[1], s.room.floorAt(at[0], at[1])];
}

/** A shower chair parked with its back to the wall the client has behind her, anywhere within its play. */
function inChair(s: Scene, id: string, side: Side, leaning: boolean | undefined): Points {
	const [body, chair] = [s.bodies[id], s.c.people[id]?.chair.seatHeight];
	if (!body) return { missing: ASK_ARM };
	if (!chair) return { missing: ASK_CHAIR };
	const points: Posture[][] = [];
	const aside = [-CHAIR_PLAY, 0, CHAIR_PLAY];
	for (const off of aside.flatMap((x) => [0, CHAIR_PLAY, 2 * CHAIR_PLAY].map((y) => [x, y] as const))) {
		const backPlanePoint = add(chairPoint(s, off), [0, 0, chair.value]);
		const seated = {
			body,
			backPlanePoint,
			facing: s.room.sitting.ahead,
			sittingForward: body.person.sittingForward?.value ?? 0
		};
		const posture = seatedPosture({ ...seated, side });
		if (isMissing(posture)) return { missing: `Measure: ${posture.missing}.` };
		points.push(leaning ? [...leanFan(posture, hipOf(seated), travelOf(s, id))] : [posture]);
	}
	return points;
}

function travelOf(s: Scene, id: string): number {
	const lean = s.c.people[id]?.lean?.value;
	return lean === undefined ? Infinity : lean.kind === 'none' ? 0 : lean.at;
}
