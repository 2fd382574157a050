import type { Mark } from '#core/case/accessory.ts';
import { figure } from '#core/drawing/figure.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { markName } from './names.ts';

/** What can be compared before and after a change: reaches and marks, by what they are called. Units: mm. */
export type Measures = ReadonlyMap<string, number>;

/** One thing a change moved. */
export interface Moved {
	readonly what: string;
	readonly was: string;
	readonly is: string;
}

/** Reach of each hand and place of each mark, named as the table names them. */
export function measuresOf(reaches: readonly Reach[], marks: readonly Mark[]): Measures {
	return new Map([
		...reaches.map(({ name, length }) => [name, length] as const),
		...marks.flatMap((mark): [string, number][] => [
			[`${markName(mark)}, from the datum`, mark.place.y],
			[`${markName(mark)}, along the wall`, mark.place.x]
		])
	]);
}

/** A reach with what it is called. Units: mm. */
export interface Reach {
	readonly name: string;
	readonly length: number;
}

/** What differs by a step one can see on the tape; a thing that is only there before or after shows a dash. */
export function movedBetween(before: Measures, after: Measures, unit: LengthUnit): readonly Moved[] {
	const shown = (n: number | undefined): string => (n === undefined ? '–' : figure(n, unit));
	return [...new Set([...before.keys(), ...after.keys()])]
		.map((what) => ({ what, was: shown(before.get(what)), is: shown(after.get(what)) }))
		.filter(({ was, is }) => was !== is);
}
