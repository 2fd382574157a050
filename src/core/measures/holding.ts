import type { Side } from '#core/body/hands.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { size, type Vec } from '#core/geometry/vec.ts';
import { handsOf } from './client.ts';
import { most, targetOf, type Target } from './hand.ts';
import type { Measure, Missing, Reading, Scene } from './scene.ts';
import { standerOf, type Posed } from './stander.ts';

/** Stands for no reach at all. Units: mm. */
const NONE = -1e4;

/** What both arms have left at a mark: for every point of a station's play, every spot in it, left and right. Units: mm. */
type Arms = readonly Float64Array[];

const held = new WeakMap<Scene, WeakMap<Mark, Map<string, Arms>>>();

/** Worked out once a mark and way of facing: a search asks for the same mark beside many others. */
function armsAt(s: Scene, m: Mark, at: { station: Together['station']; wall: WallId }): Arms | Missing {
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

function leftAt(stander: readonly Posed[], target: Target): Arms {
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

/** Two things that hands are on at once, standing. */
export const HOLDING = {
	'held-in-turn': {
		what: 'The less of what is left of the arms on two bars from one spot on the way, so that the next is held before the last is let go.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, a, b) => together(s, a, b, { station: 'on-the-way' }),
		over: atMost('on-the-way')
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
