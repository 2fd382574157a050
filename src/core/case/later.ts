import type { Case, Person } from './record.ts';

/** A case as it is expected to be later: every person with what is to be otherwise. Shape: null when nothing is expected. */
export function laterCase(c: Case): Case | null {
	if (Object.values(c.people).every(({ later }) => later === undefined)) return null;
	const people = Object.fromEntries(Object.entries(c.people).map(([id, person]) => [id, grown(person)]));
	return { ...c, people };
}

function grown({ later, ...now }: Person): Person {
	if (!later) return now;
	const then: Person = { ...now, ...later };
	// What was expected has come.
	delete then.prognosis;
	return then;
}
