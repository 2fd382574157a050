import type { Case, Person } from '#core/case/record.ts';

/** A person with the id the case knows them by. */
export interface Named {
	readonly id: string;
	readonly person: Person;
}

/** The one client of a case. Fails: RangeError when there is none, which no read case can be. */
export function clientOf(c: Case): Named {
	const found = peopleOf(c).find(({ person }) => person.role === 'client');
	if (!found) throw new RangeError('a case has a client');
	return found;
}

/** Those who help, then whoever else showers here, each in the order of their ids. */
export function othersOf(c: Case): readonly Named[] {
	const all = peopleOf(c);
	const ofRole = (role: Person['role']) => all.filter(({ person }) => person.role === role);
	return [...ofRole('helper'), ...ofRole('household')];
}

/** What a case is called on the screen: the client's initials, never a name. */
export function nameOf(c: Case): string {
	return clientOf(c).person.initials ?? 'no initials';
}

function peopleOf(c: Case): readonly Named[] {
	return Object.entries(c.people)
		.sort(([a], [b]) => (a < b ? -1 : 1))
		.map(([id, person]) => ({ id, person }));
}
