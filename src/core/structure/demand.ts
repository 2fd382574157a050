import type { Case } from '#core/case/record.ts';
import { newtons, type Newton } from '#core/units/force.ts';

/** The force every bracket that holds a person must carry, and where it comes from. No weight is named in the words. */
export interface Demand {
	readonly force: Newton;
	readonly because: string;
	/** Somebody's weight is not recorded, so that the force may be more. */
	readonly open: boolean;
	/** What the figure asks for besides, in plain sentences. */
	readonly notes: readonly string[];
}

// 250 lbf as the documents print it, so that a wall declared for 1112 N carries it.
const PRESET = newtons(1112);
/** Standard gravity, m/s2. Source: BIPM, The International System of Units. */
const GRAVITY = 9.80665;
/** Mass in kg above which a working load must be marked on the parts: a common trigger, 25 stone. */
const MARKED_ABOVE = 159;

/**
 * The greater of the preset and the full weight of the heaviest person who uses the room.
 * Units: N. Source: 1112 N of ICC A117.1 609.8 and ADA 2010 609.8 and 610.4; the full weight, once, is a judgement of
 * ours, because a catch can reach it.
 */
export function demandOf(c: Case): Demand {
	// What is fitted must carry whoever it is to carry later as well.
	const masses = Object.values(c.people).map(({ mass, later }) => {
		const most = Math.max(mass?.value ?? 0, later?.mass?.value ?? 0);
		return most > 0 ? most : undefined;
	});
	const heaviest = Math.max(0, ...masses.map((mass) => mass ?? 0));
	const weight = heaviest * GRAVITY;
	const more = weight > PRESET;
	return {
		force: more ? newtons(weight) : PRESET,
		because: more ? 'the full weight of the heaviest user' : 'the 1112 N (250 lbf) of the documents',
		open: Object.values(c.people).some((p) => p.role === 'client' && p.mass === undefined),
		notes: [
			...(masses.includes(undefined) ? ['A weight is not recorded: weigh, or the figure may be too small.'] : []),
			...(more ? ['This is more than the 1112 N of the documents; ask for parts and backing that take it.'] : []),
			...(heaviest > MARKED_ABOVE
				? ['Bars and seat need a marked working load of at least this, and the wall a written statement.']
				: [])
		]
	};
}
