import { handsFor, type Side } from '#core/body/hands.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Case, Person } from '#core/case/record.ts';
import type { Scene } from './scene.ts';

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

const BOTH: readonly Side[] = ['left', 'right'];

/** The hands that may use a mark: by what it is for, and the hands of the person it is for. */
export function handsOf(s: Scene, { accessory }: Mark): readonly Side[] {
	const person = s.c.people[accessory.for];
	return person ? handsFor(accessory.purpose, person) : BOTH;
}
