import type { Side } from '#core/body/hands.ts';
import type { Mark } from '#core/case/accessory.ts';
import { toPlan, type WallId } from '#core/geometry/frame.ts';
import { add, less, size, times, type Vec } from '#core/geometry/vec.ts';
import { leanFan } from '#core/reach/lean.ts';
import { BEFORE_BACK, hipOf, isMissing, seatedPosture, standingPosture } from '#core/reach/station.ts';
import type { Posture } from '#core/reach/slack.ts';
import { handsOf } from './client.ts';
import { handOf, most, targetOf, type Hand, type Target } from './hand.ts';
import type { Measure, Missing, Reading, Scene } from './scene.ts';
import { fromSeatWall, seatPoint } from './where.ts';

/** How far outside the entry line somebody stands who has not stepped in, and inside it who just has. Ours. */
const OUTSIDE = 150;
const INSIDE = 250;
/** Where along the entry the best place to stand is looked for, as shares of its width. Ours: not beside the opening. */
const STANDS = [0.15, 0.325, 0.5, 0.675, 0.85] as const;
/** How far somebody who washes on her feet may stand from the middle of the shower. Ours. */
const STANDING_PLAY = 50;
/** In a large shower she may stand as near to a wall as the middle of a small one is. Units: mm. Ours. */
const FROM_WALL = 450;
/** Where a shower chair is parked: its back rest ahead of the wall behind it, and how far off it may be. Ours. */
const CHAIR_BACK = 200;
const CHAIR_PLAY = 100;
/** How far in front of the edge of the seat somebody stands who is about to sit down, or just rose. Ours. */
const BEFORE_SEAT = 100;
/** Stands for no reach at all. Units: mm. */
const NONE = -1e4;

const ASK_ARM = 'How long is the arm, from the shoulder to a rod held in the fist?';
const ASK_LEAN = 'How far does the client lean out of the seat, with one hand holding or free?';
const ASK_CHAIR = 'How high is the seat of the wheeled chair?';

/** Where a body is while it acts. */
type Station = 'entry' | 'inside-entry' | 'on-the-way' | 'washing' | 'chair' | 'before-seat';

/**
 * A hand at a station: one set of postures for each of nine points of the station's play, of which the best counts at
 * its point and the worst point in all.
 */
interface Placed {
	readonly side: Side;
	readonly points: readonly Hand[];
}

type Stander = readonly Placed[] | Missing;

const standers = new WeakMap<Scene, Map<string, Stander>>();

function standerOf(s: Scene, id: string, at: { station: Station; wall: WallId; leaning?: boolean }): Stander {
	const known = standers.get(s) ?? new Map<string, Stander>();
	standers.set(s, known);
	const key = `${at.station} ${at.wall} ${at.leaning ? 'leaning' : ''} ${id}`;
	const found = known.get(key) ?? placed(s, id, at);
	known.set(key, found);
	return found;
}

function placed(s: Scene, id: string, at: { station: Station; wall: WallId; leaning?: boolean }): Stander {
	const body = s.bodies[id];
	const arms = s.arms[id];
	if (!body || !arms) return { missing: ASK_ARM };
	const hands: Placed[] = [];
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
function chairPoint(s: Scene, [aside, ahead]: readonly [number, number]): Vec {
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

/** The least over the points of a station's play. */
function throughout(points: readonly Hand[], which: 'arm' | 'shorter' | 'longer', target: Target): number {
	let least = Infinity;
	for (const hand of points) least = Math.min(least, most(hand[which], hand.postures, target));
	return least;
}

function best(hands: readonly Placed[], may: readonly Side[], target: Target): Reading {
	let [best, sure, open] = [-Infinity, -Infinity, false];
	for (const { side, points } of hands) {
		if (!may.includes(side)) continue;
		const spread = points.some((hand) => hand.longer !== hand.shorter);
		const most = throughout(points, 'longer', target);
		best = Math.max(best, most);
		sure = Math.max(sure, spread ? throughout(points, 'shorter', target) : most);
		open ||= spread;
	}
	if (best === -Infinity) return { missing: ASK_ARM };
	return open ? { best, sure, missing: ASK_ARM } : best;
}

const BOTH: readonly Side[] = ['left', 'right'];

function reach(s: Scene, m: Mark, station: Station): Reading {
	const stander = standerOf(s, m.accessory.for, { station, wall: m.place.wall });
	return 'missing' in stander ? stander : best(stander, handsOf(s, m), targetOf(m, s.room));
}

function helperReach(s: Scene, m: Mark): Reading {
	const helper = Object.keys(s.c.people).find((id) => s.c.people[id]?.role === 'helper');
	if (helper === undefined) return { missing: 'Who helps?' };
	const stander = standerOf(s, helper, { station: 'entry', wall: m.place.wall });
	return 'missing' in stander ? stander : best(stander, BOTH, targetOf(m, s.room));
}

/** From the shower chair, upright or with the lean seen done; where lean was not asked, up to every lean there is. */
function fromChair(s: Scene, m: Mark, leaning: boolean): Reading {
	const of = (lean: boolean): Reading => {
		const stander = standerOf(s, m.accessory.for, { station: 'chair', wall: m.place.wall, leaning: lean });
		return 'missing' in stander ? stander : best(stander, handsOf(s, m), targetOf(m, s.room));
	};
	if (!leaning) return of(false);
	if (s.c.people[m.accessory.for]?.lean) return of(true);
	const [upright, most] = [of(false), of(true)];
	const [least, greatest] = [ends(upright).sure, ends(most).best];
	if (least === undefined || greatest === undefined) return upright;
	return greatest > least ? { best: greatest, sure: least, missing: ASK_LEAN } : least;
}

function ends(reading: Reading): { readonly best?: number; readonly sure?: number } {
	if (typeof reading === 'number') return { best: reading, sure: reading };
	return 'best' in reading ? reading : {};
}

/** A bar from in front of the seat, back to it: where rising ends and sitting down begins. */
function beforeSeat(s: Scene, m: Mark, seat: Mark): Reading {
	const stander = standerOf(s, m.accessory.for, { station: 'before-seat', wall: m.place.wall });
	if ('missing' in stander) return stander;
	const point = seatPoint(s, seat);
	const spot = add([point[0], point[1], 0], times(s.room.sitting.ahead, seat.variant.depth + BEFORE_SEAT));
	return best(stander, handsOf(s, m), moved(targetOf(m, s.room), spot));
}

const moved = ({ from, to, ...rest }: Target, by: Vec): Target => {
	const near = less(from, by);
	return { ...rest, from: near, to: from === to ? near : less(to, by) };
};

/** What both arms have left at a mark: for every point of a station's play, every spot in it, left and right. Units: mm. */
type Arms = readonly Float64Array[];

const held = new WeakMap<Scene, WeakMap<Mark, Map<string, Arms>>>();

/** Worked out once a mark and way of facing: a search asks for the same mark beside many others. */
function armsAt(s: Scene, m: Mark, at: { station: Station; wall: WallId }): Arms | Missing {
	const marks = held.get(s) ?? new WeakMap<Mark, Map<string, Arms>>();
	held.set(s, marks);
	const known = marks.get(m) ?? new Map<string, Arms>();
	marks.set(m, known);
	const key = `${at.station} ${at.wall}`;
	const found = known.get(key);
	if (found) return found;
	const stander = standerOf(s, m.accessory.for, at);
	if ('missing' in stander) return stander;
	const made = leftAt(stander, targetOf(m, s.room));
	known.set(key, made);
	return made;
}

function leftAt(stander: readonly Placed[], target: Target): Arms {
	return (stander[0]?.points ?? []).map(({ postures }, point) => {
		const left = new Float64Array(2 * postures.length).fill(NONE);
		for (const { side, points } of stander) {
			const hand = points[point];
			hand?.postures.forEach((posture, i) => {
				left[2 * i + SIDES.indexOf(side)] = most(hand.arm, [posture], target);
			});
		}
		return left;
	});
}

const SIDES: readonly Side[] = ['left', 'right'];

/**
 * Two things from one spot at once: one hand on each; with one hand for both, the same hand on the one, then on the
 * other. At each point of the station's play the best spot, way to face and hands count, and the worst point in all; while the
 * marks move about, what it is at most.
 */
function together(s: Scene, a: Mark, b: Mark, { station, free = [0, 0] }: Together): Reading {
	const pairs = handsOn(handsOf(s, a), handsOf(s, b), station === 'on-the-way');
	const best: number[] = [];
	for (const wall of a.place.wall === b.place.wall ? [a.place.wall] : [a.place.wall, b.place.wall]) {
		const [atA, atB] = [armsAt(s, a, { station, wall }), armsAt(s, b, { station, wall })];
		if ('missing' in atA) return atA;
		if ('missing' in atB) return atB;
		for (let point = 0; point < atA.length; point++) {
			const both = bestOf(atA[point], atB[point], { pairs, free });
			best[point] = Math.max(best[point] ?? NONE, both);
		}
	}
	return Math.min(...best);
}

interface Together {
	readonly station: 'washing' | 'on-the-way';
	/** How far each mark may be from where it is. Units: mm. */
	readonly free?: readonly [number, number];
}

type HandPairs = readonly (readonly [number, number])[];

/** Which hand may be on which of two things, by number; one alone only where it may go from the one to the other. */
function handsOn(mayA: readonly Side[], mayB: readonly Side[], inTurn: boolean): HandPairs {
	const oneOnly = mayA.length === 1 && mayB.length === 1 && mayA[0] === mayB[0];
	return mayA.flatMap((one) =>
		mayB
			.filter((other) => (one === other ? inTurn && oneOnly : true))
			.map((other): [number, number] => [SIDES.indexOf(one), SIDES.indexOf(other)])
	);
}

function bestOf(
	a: Float64Array | undefined,
	b: Float64Array | undefined,
	{ pairs, free }: { pairs: HandPairs; free: readonly [number, number] }
): number {
	let best = NONE;
	if (!a || !b) return best;
	for (let spot = 0; spot < a.length; spot += 2) {
		for (const [one, other] of pairs) {
			const both = Math.min((a[spot + one] ?? NONE) + free[0], (b[spot + other] ?? NONE) + free[1]);
			if (both > best) best = both;
		}
	}
	return best;
}

const atMost =
	(station: Together['station']) =>
	(s: Scene, a: Mark, b: Mark, spreads: readonly [Vec, Vec]): Reading =>
		together(s, a, b, { station, free: [size(spreads[0]), size(spreads[1])] });

/** What hands reach standing or in a shower chair: at the entry, inside it, before the seat, from the dry side. */
export const STANDING = {
	'reach-from-entry': {
		what: 'What is left of the arm at the hand, standing 150 outside the entry line; below 0 it does not reach.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: (s, m) => reach(s, m, 'entry')
	},
	'reach-inside-entry': {
		what: 'What is left of the arm at the hand, standing just inside the entry; below 0 it does not reach.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: (s, m) => reach(s, m, 'inside-entry')
	},
	'reach-standing': {
		what: 'What is left of the arm at the hand, standing within 50 of where she washes, wherever it is least: the middle, in a large shower also 450 from a wall.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: (s, m) => reach(s, m, 'washing')
	},
	'reach-from-chair': {
		what: 'What is left of the stretched arm at the hand, in the parked shower chair, with the lean recorded, wherever in its play it is least.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: (s, m) => fromChair(s, m, true)
	},
	'reach-from-chair-upright': {
		what: 'What is left of the stretched arm at the hand, upright in the parked shower chair, wherever in its play it is least.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: (s, m) => fromChair(s, m, false)
	},
	'helper-reach': {
		what: "What is left of the helper's arm at the hand, standing 150 outside the entry line.",
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: helperReach
	},
	'reach-before-seat': {
		what: 'What is left of the arm at the hand, standing in front of the seat with the back to it.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: beforeSeat
	},
	'held-in-turn': {
		what: 'The less of what is left of the arms on two bars from one spot on the way, so that the next is held before the last is let go.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, a, b) => together(s, a, b, { station: 'on-the-way' }),
		over: atMost('on-the-way')
	},
	'above-chair-seat': {
		what: 'From the seat of the parked shower chair up to the middle of what the hand works.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => {
			const chair = s.c.people[m.accessory.for]?.chair.seatHeight;
			if (!chair) return { missing: ASK_CHAIR };
			const { grip } = m.variant;
			return m.place.y + (grip.y0 + grip.y1) / 2 - chairPoint(s, [0, 0])[2] - chair.value;
		}
	},
	'ahead-in-chair': {
		what: 'From the shoulder line of who sits in the parked shower chair forward to the middle of what the hand works.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, m) => {
			const { grip, gripOff } = m.variant;
			const forward = s.c.people[m.accessory.for]?.sittingForward?.value ?? 0;
			const at = fromSeatWall(s, m.place.wall, { x: m.place.x + (grip.x0 + grip.x1) / 2, off: gripOff });
			return at - CHAIR_BACK - CHAIR_PLAY - BEFORE_BACK - forward;
		}
	},
	'at-stronger-hand': {
		what: 'Whether a bar at the entry is on the side of the stronger hand: going in for stepping in, going out for stepping out.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (s, { accessory, place }) => {
			const weaker = s.c.people[accessory.for]?.weakerSide?.value;
			if (weaker !== 'left' && weaker !== 'right') return 1;
			// Going in one faces the back wall; going out left and right change places.
			const side = place.wall === 'front' ? s.c.enclosure.frontWall?.side : place.wall;
			return (side === weaker) === (accessory.purpose === 'step-out') ? 1 : 0;
		}
	},
	'worked-while-held': {
		what: 'The less of what is left of the arms, one hand working the one thing while the other holds the other, standing.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, a, b) => together(s, a, b, { station: 'washing' }),
		over: atMost('washing')
	}
} satisfies Record<string, Measure>;
