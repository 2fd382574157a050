import type { Case } from '#core/case/record.ts';
import { conditionsOf } from '#core/rules/applies.ts';

/** When what was fitted is looked at again after hand-over, and which facts are too old to plan by. */
export interface LookAgain {
	/** Units: months. */
	readonly every: 6 | 12;
	/** Why, in one plain sentence. */
	readonly says: string;
	readonly stale: readonly Stale[];
}

/** A fact of a person that is old beside the newest one of the case. `path` from the person on; `when` its day. */
interface Stale {
	readonly person: string;
	readonly path: readonly string[];
	readonly when: string;
}

/** Source: house design; a body, a condition or an aid may have changed. Units: years. */
const OLD = 1;

const FIRST = 'First 6 to 8 weeks after hand-over, then every';
const SOONER = 'sooner after a fall, a new diagnosis, a weight that changed by a tenth, or a new aid.';

/** When to look again. Shape: no clock is asked; facts age against the newest day in the record. */
export function lookAgainOf(c: Case): LookAgain {
	const { growing } = conditionsOf(c);
	const { prognosis } = Object.values(c.people).find(({ role }) => role === 'client') ?? {};
	const because =
		growing === 'yes'
			? 'the client still grows'
			: prognosis?.value === 'worsening'
				? 'the condition is expected to worsen'
				: prognosis?.value === 'varying'
					? 'the condition changes'
					: undefined;
	const says = because ? `${FIRST} 6 months, because ${because}; ${SOONER}` : `${FIRST} 12 months; ${SOONER}`;
	return { every: because ? 6 : 12, says, stale: staleIn(c) };
}

function staleIn({ people }: Case): readonly Stale[] {
	const dated = Object.entries(people).flatMap(([person, all]) => datedIn(all, person, []));
	const newest = dated.reduce((latest, { when }) => (when > latest ? when : latest), '');
	const [year = '', ...rest] = newest.split('-');
	const oldest = [String(Number(year) - OLD), ...rest].join('-');
	return dated.filter(({ when }) => when < oldest);
}

/** Every fact with a day. Days are written year-month-day, so that they compare as words. */
function datedIn(value: unknown, person: string, path: readonly string[]): readonly Stale[] {
	if (typeof value !== 'object' || value === null) return [];
	if ('when' in value && typeof value.when === 'string') return [{ person, path, when: value.when }];
	return Object.entries(value).flatMap(([key, inner]) => datedIn(inner, person, [...path, key]));
}
