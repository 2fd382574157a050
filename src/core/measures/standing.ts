import type { Side } from '#core/body/hands.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Person } from '#core/case/record.ts';
import { add, less, times, type Vec } from '#core/geometry/vec.ts';
import { BEFORE_BACK } from '#core/reach/station.ts';
import { handsOf } from './client.ts';
import { most, targetOf, type Hand, type Target } from './hand.ts';
import type { Measure, Reading, Scene } from './scene.ts';
import {
	ASK_ARM,
	ASK_CHAIR,
	CHAIR_BACK,
	CHAIR_PLAY,
	chairPoint,
	standerOf,
	type Posed,
	type Station
} from './stander.ts';
import { fromSeatWall, seatEdge } from './where.ts';

/** How far in front of the edge of the seat somebody stands who is about to sit down, or just rose. Ours. */
const BEFORE_SEAT = 100;

const ASK_LEAN = 'How far does the client lean out of the seat, with one hand holding or free?';

/** The least over the points of a station's play. */
function throughout(points: readonly Hand[], which: 'shorter' | 'longer', target: Target): number {
	let least = Infinity;
	for (const hand of points) least = Math.min(least, most(hand[which], hand.postures, target));
	return least;
}

function best(hands: readonly Posed[], may: readonly Side[], target: Target): Reading {
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

/** Of everybody in a role who stands at a station, the one who reaches least. */
function leastOf(
	s: Scene,
	m: Mark,
	{ role, station }: { role: Person['role']; station: Station }
): Reading | undefined {
	const readings = Object.keys(s.c.people)
		.filter((id) => s.c.people[id]?.role === role)
		.map((id) => {
			const stander = standerOf(s, id, { station, wall: m.place.wall });
			return 'missing' in stander ? stander : best(stander, BOTH, targetOf(m, s.room));
		});
	return readings.reduce<Reading | undefined>(
		(least, one) => (least === undefined ? one : lesser(least, one)),
		undefined
	);
}

/** The less of two readings; what is not known of the one may be less than the other. */
function lesser(a: Reading, b: Reading): Reading {
	const [one, other] = [ends(a), ends(b)];
	if (one.sure === undefined || one.best === undefined) return a;
	if (other.sure === undefined || other.best === undefined) return b;
	const [sure, best] = [Math.min(one.sure, other.sure), Math.min(one.best, other.best)];
	return sure === best ? sure : { sure, best, missing: ASK_ARM };
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
	const [x, y] = seatEdge(s, seat);
	const spot = add([x, y, 0], times(s.room.sitting.ahead, BEFORE_SEAT));
	return best(stander, handsOf(s, m), moved(targetOf(m, s.room), spot));
}

const moved = ({ from, to, ...rest }: Target, by: Vec): Target => {
	const near = less(from, by);
	return { ...rest, from: near, to: from === to ? near : less(to, by) };
};

/** What hands reach standing or in a shower chair: at the entry, inside it, before the seat, from the dry side. */
export const STANDING = {
	'household-reach': {
		what: 'What is left of the arm at the hand of whoever else showers here, standing in it, of the one who reaches least.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: (s, m) => leastOf(s, m, { role: 'household', station: 'washing' }) ?? { missing: 'Who else showers here?' }
	},
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
		of: (s, m) => leastOf(s, m, { role: 'helper', station: 'entry' }) ?? { missing: 'Who helps?' }
	},
	'reach-before-seat': {
		what: 'What is left of the arm at the hand, standing in front of the seat with the back to it.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: beforeSeat
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
	}
} satisfies Record<string, Measure>;
