import type { Case, Person } from '#core/case/record.ts';
import { canonical } from '#core/log/canonical.ts';

/**
 * What places depend on, as one text: the case without what nobody computes with, and without what is only asked and answered.
 * Shape: two cases of one text have the same plan but for what waits for an answer.
 */
export function placesKey(c: Case): string {
	return canonical(computed(c));
}

/** The same without where marks are held. */
export function freeKey(c: Case): string {
	return canonical({ ...computed(c), places: {} });
}

/** The same of everybody: what stands here moves no mark. */
const SAID: Pick<Person, 'initials' | 'goals' | 'consents' | 'ownFigure'> = {
	initials: '-',
	goals: '-',
	consents: { value: true, how: 'assumed' },
	ownFigure: { value: false, how: 'assumed' }
};

function computed(c: Case): Case {
	const people = Object.fromEntries(Object.entries(c.people).map(([id, person]) => [id, { ...person, ...SAID }]));
	return { ...c, people, departures: {} };
}
