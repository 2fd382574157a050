import type { Purpose } from '#core/case/accessory.ts';
import type { Person } from '#core/case/record.ts';

/** A side of a body. */
export type Side = 'left' | 'right';

const BOTH: readonly Side[] = ['left', 'right'];
const ONE: Readonly<Record<Side, readonly Side[]>> = { left: ['left'], right: ['right'] };
/** What must not hang on the weaker hand. */
const ESSENTIAL: readonly Purpose[] = ['run-water', 'set-temperature', 'divert', 'rest-handset', 'hang-handset'];

/** What may be hot. */
const HOT: readonly Purpose[] = ['run-water', 'set-temperature', 'divert'];

/**
 * The hands that may use something: the stronger one for water and hand shower, and where both are as good the one that
 * feels heat for the water; for bars either, unless the weaker hand was seen not to hold.
 */
export function handsFor(purpose: Purpose, person: Person): readonly Side[] {
	const weaker = person.weakerSide?.value;
	if (weaker !== 'left' && weaker !== 'right') return HOT.includes(purpose) ? feelingOf(person) : BOTH;
	if (!ESSENTIAL.includes(purpose) && person.weakerHolds?.value !== false) return BOTH;
	return ONE[weaker === 'left' ? 'right' : 'left'];
}

function feelingOf({ arms }: Person): readonly Side[] {
	const feeling = BOTH.filter((side) => arms[side].feels?.value !== false);
	return feeling.length > 0 ? feeling : BOTH;
}
