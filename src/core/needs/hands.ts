import type { Purpose } from '#core/case/accessory.ts';
import type { Person } from '#core/case/record.ts';

type Side = 'left' | 'right';

const BOTH: readonly Side[] = ['left', 'right'];
/** What must not hang on the weaker hand. */
const ESSENTIAL: readonly Purpose[] = ['run-water', 'rest-handset'];

/** The hands that may use something: the stronger one for running the water and the hand shower, either for the rest. */
export function handsFor(purpose: Purpose, person: Person): readonly Side[] {
	const weaker = person.weakerSide?.value;
	if (!ESSENTIAL.includes(purpose) || (weaker !== 'left' && weaker !== 'right')) return BOTH;
	return [weaker === 'left' ? 'right' : 'left'];
}
