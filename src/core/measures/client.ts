import type { Case, Person } from '#core/case/record.ts';

/**
 * The one person a case is about, with her id.
 * Fails: RangeError when the record has none; reading a record refuses that.
 */
export function clientOf(c: Case): { readonly id: string; readonly person: Person } {
	for (const id in c.people) {
		const person = c.people[id];
		if (person?.role === 'client') return { id, person };
	}
	throw new RangeError('a case has one client');
}
