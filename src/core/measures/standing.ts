import type { Mark } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { toPlan } from '#core/geometry/frame.ts';
import type { Vec } from '#core/geometry/vec.ts';
import { isMissing, standingPosture } from '#core/reach/station.ts';
import type { Posture } from '#core/reach/slack.ts';
import { handOf, most, targetOf, type Hand } from './hand.ts';
import type { Measure, Missing, Reading, Scene } from './scene.ts';

/** How far outside the entry line somebody stands who has not stepped in. Ours. */
const OUTSIDE = 150;
/** Where along the entry the best place to stand is looked for, as shares of its width. Ours: not beside the opening. */
const STANDS = [0.15, 0.325, 0.5, 0.675, 0.85] as const;

const ASK_ARM = 'How long is the arm, from the shoulder to a rod held in the fist?';

type Where = 'entry' | 'inside';

/** Somebody on her feet at the entry or in the middle of the compartment, facing one wall. */
type Stander = { readonly hands: readonly Hand[] } | Missing;

const standers = new WeakMap<Scene, Map<string, Stander>>();

function standerOf(s: Scene, id: string, at: { where: Where; wall: WallId }): Stander {
	const known = standers.get(s) ?? new Map<string, Stander>();
	standers.set(s, known);
	const key = `${at.where} ${at.wall} ${id}`;
	const found = known.get(key) ?? standing(s, id, at);
	known.set(key, found);
	return found;
}

function spots(s: Scene, where: Where): readonly Vec[] {
	const { width, depth } = s.room.footprint;
	if (where === 'inside') return [[width / 2, depth / 2, s.room.floorAt(width / 2, depth / 2)]];
	return STANDS.map((share) => [share * width, s.room.entryLine + OUTSIDE, s.room.bathroomFloor]);
}

function facing(s: Scene, at: Vec, wall: WallId): Vec {
	const middle = toPlan(wall, [s.room.walls[wall].length / 2, 0], 0, s.room.footprint);
	const [x, y] = [middle[0] - at[0], middle[1] - at[1]];
	const far = Math.hypot(x, y);
	return [x / far, y / far, 0];
}

function standing(s: Scene, id: string, { where, wall }: { where: Where; wall: WallId }): Stander {
	const body = s.bodies[id];
	const arms = s.arms[id];
	if (!body || !arms) return { missing: ASK_ARM };
	const hands: Hand[] = [];
	for (const side of ['left', 'right'] as const) {
		const arm = arms[side];
		if (!arm) continue;
		const postures: Posture[] = [];
		for (const at of spots(s, where)) {
			const posture = standingPosture({ body, at, facing: facing(s, at, wall), side });
			if (isMissing(posture)) return { missing: `Measure: ${posture.missing}.` };
			postures.push(posture);
		}
		hands.push(handOf(arm, postures));
	}
	return hands.length > 0 ? { hands } : { missing: ASK_ARM };
}

function reach(s: Scene, m: Mark, { who, where, anyHand }: { who: string; where: Where; anyHand?: true }): Reading {
	const stander = standerOf(s, who, { where, wall: m.place.wall });
	if ('missing' in stander) return stander;
	const target = targetOf(m, s.room);
	let best = -Infinity;
	let sure = -Infinity;
	let open = false;
	for (const { side, shorter, longer, postures } of stander.hands) {
		if (!anyHand && !m.accessory.hands.includes(side)) continue;
		const greatest = most(longer, postures, target);
		best = Math.max(best, greatest);
		sure = Math.max(sure, shorter === longer ? greatest : most(shorter, postures, target));
		open ||= longer !== shorter;
	}
	if (best === -Infinity) return { missing: ASK_ARM };
	return open ? { best, sure, missing: ASK_ARM } : best;
}

function helperReach(s: Scene, m: Mark): Reading {
	for (const id in s.c.people) {
		if (s.c.people[id]?.role === 'helper') return reach(s, m, { who: id, where: 'entry', anyHand: true });
	}
	return { missing: 'Who helps?' };
}

/** What hands reach standing: before the step in, in the middle of the compartment, and from the dry side. */
export const STANDING = {
	'reach-from-entry': {
		what: 'What is left of the arm at the hand, standing 150 outside the entry line; below 0 it does not reach.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: (s, m) => reach(s, m, { who: m.accessory.for, where: 'entry' })
	},
	'reach-standing': {
		what: 'What is left of the arm at the hand, standing in the middle of the shower; below 0 it does not reach.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: (s, m) => reach(s, m, { who: m.accessory.for, where: 'inside' })
	},
	'helper-reach': {
		what: "What is left of the helper's arm at the hand, standing 150 outside the entry line.",
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: helperReach
	}
} satisfies Record<string, Measure>;
