import type { Case, Person } from '#core/case/record.ts';
import { clientOf } from '#core/measures/client.ts';
import type { Applies, ConditionId } from './row.ts';

/** The facts of a case that conditions of rows may name; what is not recorded is `unknown`. */
export function conditionsOf(c: Case): Readonly<Record<ConditionId, string>> {
	const { person } = clientOf(c);
	const transfer = person.transfer?.value ?? 'unknown';
	return {
		washes: person.washes?.value ?? 'unknown',
		transfer,
		rises: person.rises?.value ?? 'unknown',
		type: c.enclosure.type,
		dwelling: c.enclosure.dwelling ? 'yes' : 'no',
		walks: WALKS[transfer],
		helper: Object.values(c.people).some((p) => p.role === 'helper') ? 'yes' : 'no',
		chair: chairOf(person),
		// Every generic bar is a round tube.
		section: 'round'
	};
}

/** Whether conditions hold for a case. A row without conditions speaks of every case. */
export function applies(when: Applies | undefined, c: Case): boolean {
	return when === undefined || holds(when, conditionsOf(c));
}

/** Whether conditions hold for the facts of a case. */
export function holds(when: Applies, facts: Readonly<Record<ConditionId, string>>): boolean {
	for (const id in when) {
		const allowed = when[id as ConditionId];
		if (allowed && !allowed.includes(facts[id as ConditionId])) return false;
	}
	return true;
}

/** Whether she comes in on her own feet, alone or held. */
const WALKS = {
	walks: 'yes',
	'stand-pivot': 'yes',
	'sitting-pivot': 'no',
	'slide-board': 'no',
	hoist: 'no',
	unknown: 'unknown'
} as const;

/** Whether she comes from a wheeled chair. */
function chairOf(person: Person): string {
	const { seatHeight, width, length } = person.chair;
	if (seatHeight ?? width ?? length) return 'yes';
	const transfer = person.transfer?.value;
	if (transfer === undefined) return 'unknown';
	return transfer === 'walks' ? 'no' : 'yes';
}
