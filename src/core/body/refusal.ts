import type { Person } from '#core/case/record.ts';
import { SURVEY } from './survey.ts';

/** Why nothing is estimated for a body. */
export interface Refusal {
	readonly why: string;
}

/** The largest squared Mahalanobis distance of what was measured. Ours: three standard deviations of one measure. */
const FAR = 9;
const MASS = [45, 125] as const;
const ADULT = 18;

function statureRange(person: Person): readonly [number, number] {
	if (person.sex) return SURVEY[person.sex.value].stature;
	return [SURVEY.female.stature[0], SURVEY.male.stature[1]];
}

const outside = (n: number | undefined, [least, most]: readonly [number, number]): boolean =>
	n !== undefined && (n < least || n > most);

/**
 * Why this body lies outside the survey, or null: then missing dimensions may be estimated.
 * Units: stature in mm, mass in kg; the ends of a range belong to it.
 */
export function refusalOf(person: Person, distance: number): Refusal | null {
	const stature = statureRange(person);
	const range = `${String(Math.round(stature[0]))} to ${String(Math.round(stature[1]))} mm`;
	if (person.age && person.age.value < ADULT) return { why: 'younger than 18: measure, no estimate' };
	if (outside(person.body.stature?.value, stature)) return { why: `stature outside ${range}: measure, no estimate` };
	if (outside(person.mass?.value, MASS)) return { why: 'mass outside 45 to 125 kg: measure, no estimate' };
	if (distance > FAR) return { why: 'measures that do not go together in the survey: measure, no estimate' };
	return null;
}
