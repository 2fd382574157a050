import type { Body } from '#core/body/body.ts';
import type { Mark } from '#core/case/accessory.ts';
import { add, less, type Vec } from '#core/geometry/vec.ts';
import { easySlack, STILL } from '#core/reach/slack.ts';
import { leanFan } from '#core/reach/lean.ts';
import { hipOf, isMissing, seatedPosture } from '#core/reach/station.ts';
import { handOf, most, targetOf, type Hand, type Target } from './hand.ts';
import { handsFor } from '#core/body/hands.ts';
import { handsOf } from './client.ts';
import type { Measure, Missing, Reading, Scene } from './scene.ts';
import { fromSeatWall, seatPoint } from './where.ts';

/** A person on a seat whose mark lies at the origin of the plan frame. Units and frame: mm. */
interface Sitter {
	readonly upright: readonly Hand[];
	/** With the lean seen done; where lean was not asked, every lean there is. */
	readonly leaning: readonly Hand[];
	readonly leanAsked: boolean;
	/** Height of the hip, and the shoulder line from the back rest. */
	readonly hipHeight: number;
	readonly shoulderLine: number;
}

/** How far forward somebody may sit of whom it was not asked. Units: mm. Source: house definitions, 80 to 140; ours. */
const MAY_SIT = 140;

/** What might be reached if more were known is not counted beyond this: it only says that a target may be in reach. */
const ENOUGH = 100;

const ORIGIN: Vec = [0, 0, 0];
const ASK_LEAN = 'How far does the client lean out of the seat, with one hand holding or free?';
const ASK_FORWARD = 'How far in front of the back rest does the client sit?';
const ASK_ARM = 'How long is the arm, from the shoulder to a rod held in the fist?';

const sitters = new WeakMap<Scene, Map<string, Sitter | Missing>>();
const forwards = new WeakMap<Scene, Map<string, Sitter | Missing>>();

function kept(of: typeof sitters, s: Scene, id: string, sittingForward: number): Sitter | Missing {
	const known = of.get(s);
	const found = known?.get(id);
	if (found) return found;
	const made = seated(s, id, sittingForward);
	if (known) known.set(id, made);
	else of.set(s, new Map([[id, made]]));
	return made;
}

const sitterOf = (s: Scene, id: string): Sitter | Missing =>
	kept(sitters, s, id, s.c.people[id]?.sittingForward?.value ?? 0);

/** The same person as far forward as may be, when nobody asked; null when it was asked. */
const forwardOf = (s: Scene, id: string): Sitter | Missing | null =>
	s.c.people[id]?.sittingForward ? null : kept(forwards, s, id, MAY_SIT);

/** What holds however far forward she sits, and what may hold. */
function whichever(back: Reading, front: Reading): Reading {
	if (typeof back === 'object' && !('best' in back)) return back;
	if (typeof front === 'object' && !('best' in front)) return front;
	const [a, b] = [
		typeof back === 'number' ? { sure: back, best: back } : back,
		typeof front === 'number' ? { sure: front, best: front } : front
	];
	return { sure: Math.min(a.sure, b.sure), best: Math.max(a.best, b.best), missing: ASK_FORWARD };
}

function seated(s: Scene, id: string, sittingForward: number): Sitter | Missing {
	const body: Body | undefined = s.bodies[id];
	const arms = s.arms[id];
	if (!body || !arms) return { missing: ASK_ARM };
	const facing = s.room.sitting.ahead;
	const seat = { backPlanePoint: ORIGIN, facing, sittingForward };
	const hip = hipOf(seat);
	const lean = body.person.lean?.value;
	const travel = lean === undefined ? Infinity : lean.kind === 'none' ? 0 : lean.at;
	const upright: Hand[] = [];
	const leaning: Hand[] = [];
	for (const side of ['left', 'right'] as const) {
		const posture = seatedPosture({ ...seat, body, side });
		if (isMissing(posture)) return { missing: `Measure: ${posture.missing}.` };
		const arm = arms[side];
		if (!arm) continue;
		upright.push(handOf(arm, [posture]));
		leaning.push(handOf(arm, leanFan(posture, hip, travel)));
	}
	return {
		upright,
		leaning,
		leanAsked: lean !== undefined,
		hipHeight: hip[2],
		shoulderLine: Math.hypot(hip[0], hip[1])
	};
}

/** The target as it lies from the seat's mark. */
function fromSeat(s: Scene, m: Mark, seat: Mark, spread: Vec): Target {
	const { from, to, kind } = targetOf(m, s.room);
	const origin = seatPoint(s, seat);
	const near = less(from, origin);
	return { from: near, to: from === to ? near : less(to, origin), kind, spread };
}

const usable = (s: Scene, hands: readonly Hand[], m: Mark): readonly Hand[] => {
	const may = handsOf(s, m);
	return hands.filter(({ side }) => may.includes(side));
};

function bestOf(hands: readonly Hand[], of: (hand: Hand) => number): number {
	let best = -Infinity;
	for (const hand of hands) best = Math.max(best, of(hand));
	return best;
}

/** Slack of the best hand that may use a mark, between an arm as short and as long as it may be. */
function between(target: Target, sure: readonly Hand[], best: { hands: readonly Hand[]; ask: string }): Reading {
	if (sure.length === 0) return { missing: ASK_ARM };
	const open = best.hands !== sure || sure.some((h) => h.longer !== h.arm);
	if (!open) return bestOf(sure, (h) => most(h.arm, h.postures, target));
	const least = bestOf(sure, (h) => most(h.shorter, h.postures, target));
	const greatest = bestOf(best.hands, (h) => most(h.longer, h.postures, target, ENOUGH));
	// Never less than what is sure.
	if (greatest <= least) return least;
	return { best: greatest, sure: least, missing: best.ask };
}

function stretched(s: Scene, m: Mark, seat: Mark, spread = STILL): Reading {
	const target = fromSeat(s, m, seat, spread);
	const back = stretchedBy(s, sitterOf(s, m.accessory.for), m, target);
	const forward = forwardOf(s, m.accessory.for);
	return forward ? whichever(back, stretchedBy(s, forward, m, target)) : back;
}

function stretchedBy(s: Scene, sitter: Sitter | Missing, m: Mark, target: Target): Reading {
	if ('missing' in sitter) return sitter;
	const leaning = usable(s, sitter.leaning, m);
	if (sitter.leanAsked) return between(target, leaning, { hands: leaning, ask: ASK_ARM });
	return between(target, usable(s, sitter.upright, m), { hands: leaning, ask: ASK_LEAN });
}

function upright(s: Scene, m: Mark, seat: Mark, spread = STILL): Reading {
	const sitter = sitterOf(s, m.accessory.for);
	if ('missing' in sitter) return sitter;
	const hands = usable(s, sitter.upright, m);
	return between(fromSeat(s, m, seat, spread), hands, { hands, ask: ASK_ARM });
}

function easy(s: Scene, m: Mark, seat: Mark, spread = STILL): Reading {
	const sitter = sitterOf(s, m.accessory.for);
	if ('missing' in sitter) return sitter;
	const hands = usable(s, sitter.upright, m);
	if (hands.length === 0) return { missing: ASK_ARM };
	const { from, kind } = fromSeat(s, m, seat, spread);
	return bestOf(hands, ({ arm, postures: [posture] }) =>
		posture ? easySlack(arm, posture, from, kind, sitter.hipHeight, spread) : -Infinity
	);
}

/** The middle of what a hand works, from the plane the back rests on and from the top of the seat. */
function ahead(s: Scene, m: Mark): Reading {
	const sitter = sitterOf(s, m.accessory.for);
	if ('missing' in sitter) return sitter;
	const { grip, gripOff } = m.variant;
	const x = m.place.x + (grip.x0 + grip.x1) / 2;
	const least = fromSeatWall(s, m.place.wall, { x, off: gripOff }) - sitter.shoulderLine;
	return forwardOf(s, m.accessory.for) ? { best: least, sure: least - MAY_SIT, missing: ASK_FORWARD } : least;
}

/** A bar with the hand that does not work: with either, where both may. */
function otherHand(s: Scene, m: Mark, seat: Mark): Reading {
	const person = s.c.people[m.accessory.for];
	const sitter = sitterOf(s, m.accessory.for);
	if ('missing' in sitter) return sitter;
	const [working, ...more] = person ? handsFor('run-water', person) : [];
	const hands = sitter.leaning.filter(({ side }) => more.length > 0 || side !== working);
	return between(fromSeat(s, m, seat, STILL), hands, { hands, ask: ASK_ARM });
}

/** Seat and mark move about as the mark alone does by as much, seen from the seat. */
const together =
	(of: (s: Scene, m: Mark, seat: Mark, spread: Vec) => Reading) =>
	(s: Scene, m: Mark, seat: Mark, [mark, other]: readonly [Vec, Vec]): Reading =>
		of(s, m, seat, add(mark, other));

/** What hands reach from the seat. */
export const SITTING = {
	'reach-leaning': {
		what: 'What is left of the stretched arm at the hand, sitting, with the lean recorded; below 0 it does not reach.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, m, seat) => stretched(s, m, seat),
		over: together(stretched)
	},
	'reach-upright': {
		what: 'What is left of the stretched arm at the hand, sitting upright; below 0 it does not reach.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, m, seat) => upright(s, m, seat),
		over: together(upright)
	},
	'reach-easy': {
		what: 'What is left of the unstretched arm at the hand, sitting upright; below 0 the arm must stretch.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, m, seat) => easy(s, m, seat),
		over: together(easy)
	},
	'reach-other-hand': {
		what: 'What is left of the stretched arm of the hand that does not work, at a bar, sitting with the lean recorded.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: otherHand
	},
	'ahead-of-shoulders': {
		what: 'From the shoulder line of the sitter forward to the middle of what the hand works.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: ahead
	},
	'above-seat': {
		what: 'From the top of the seat up to the middle of what the hand works.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'pair',
		of: (_, m, seat) => m.place.y + (m.variant.grip.y0 + m.variant.grip.y1) / 2 - seat.place.y
	}
} satisfies Record<string, Measure>;
