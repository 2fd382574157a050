import { caseSchema, type Case } from '#core/case/record.ts';
import { carryingOf, type Holds } from '#core/structure/carrying.ts';
import { demandOf } from '#core/structure/demand.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { enclosureWith } from '../enclosure/some-room.ts';

/** A case with one client of a mass in kg, walls and further facts of the enclosure as told. */
export function caseWith(
	walls: Record<string, unknown> = {},
	enclosure: Record<string, unknown> = {},
	people: Record<string, unknown> = { client: { role: 'client', mass: { value: 70, how: 'told' } } }
): Case {
	return caseSchema.parse({
		schema: 'graspline-case',
		version: 1,
		id: 'some',
		tape: { unit: 'mm', step: 5 },
		lead: 'person-led',
		reference: null,
		people,
		enclosure: enclosureWith({ fall: { value: 0, how: 'measured' }, ...enclosure }, walls)
	});
}

/** Where the walls of a case carry its own demand. */
export const holdsOf = (c: Case): Holds => carryingOf(roomOf(c.enclosure), c, demandOf(c));

/** Where a back wall carries 1112 N, surveyed unless said otherwise. */
export const backWall = (back: Record<string, unknown>, enclosure: Record<string, unknown> = {}): Holds =>
	holdsOf(caseWith({ back: { surveyed: true, ...back } }, enclosure));
