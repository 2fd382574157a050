import type { Case } from '#core/case/record.ts';
import { readOffId } from '#core/case/read-off.ts';
import type { Plan } from '#core/plan.ts';
import { EXAMPLE, fixtureCase, fixturePlan, type Put } from './fixture.ts';

/** A real bar as it is read off. Units: mm; `across`, `circle` and `hole` are diameters. */
export interface Real {
	readonly centres: number;
	readonly across: number;
	readonly circle: number;
	readonly holes: 2 | 3 | 4;
	readonly hole: number;
}

/** A bar whose holes can be worked out by hand: three on a circle of 60. */
export const REAL: Real = { centres: 600, across: 80, circle: 60, holes: 3, hole: 6.5 };

/** The id of the part a real bar is. */
const idOf = (kind: 'horizontal-bar' | 'vertical-bar', { centres, across, circle, holes, hole }: Real): string =>
	readOffId(kind, {
		name: 'bar from the shelf',
		centres,
		diameter: 32,
		standOff: 54,
		flange: { across, circle, holes, hole }
	} as Case['parts'][string]);

const PLACES = { 'bar-control': [100, -150], 'bar-back': [300, -150], 'entry-bar': [835, -40] } as const;

/** The bars of the example that can be read off. */
export type Bar = keyof typeof PLACES;

/** What of the example is otherwise: what is wanted only later, where bars are, the room. */
interface Otherwise {
	readonly later?: readonly string[];
	readonly at?: Readonly<Partial<Record<Bar, readonly [number, number]>>>;
	readonly enclosure?: object;
}

/** The example with real parts for some of its bars, at their places or elsewhere. */
export function readOffPlan(
	parts: Readonly<Partial<Record<Bar, Real>>>,
	{ later = [], at = {}, enclosure = {} }: Otherwise = {}
): Plan {
	const puts = EXAMPLE.map((put): Put => {
		const [id, , wall] = put;
		const real = parts[id as Bar];
		if (!real) return put;
		const [x, y] = at[id as Bar] ?? PLACES[id as Bar];
		return [id, idOf(id === 'entry-bar' ? 'vertical-bar' : 'horizontal-bar', real), wall, x, y];
	});
	return fixturePlan(fixtureCase({ enclosure }), puts, later);
}
