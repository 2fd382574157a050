import type { Fact, How } from '#core/case/fact.ts';
import type { Json } from '#core/log/json.ts';
import type { Field } from './spec.ts';

/** What is kept when a value is entered: plain, or a fact with the words it was typed in and the day. */
export function enteredFact(field: Field, before: Json | undefined, entered: Entered): Json {
	if (field.plain) return entered.value;
	const known = (before as unknown as Fact<Json> | undefined)?.how;
	// What was only assumed becomes known by being entered; what was told stays told until somebody says otherwise.
	const how: How = known === undefined || known === 'assumed' ? (field.how ?? 'measured') : known;
	const typed = entered.typed === undefined ? {} : { typed: entered.typed };
	return { value: entered.value, how, ...typed, when: entered.when };
}

/** A value as it was entered, and the day, as year-month-day. */
export interface Entered {
	readonly value: Json;
	readonly typed?: string;
	readonly when: string;
}

/** The day of a moment where the person is, as year-month-day. */
export function dayOf(moment: Date): string {
	const two = (n: number): string => String(n).padStart(2, '0');
	return `${String(moment.getFullYear())}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}
