import { caseOf } from '#core/case/read.ts';
import type { Case } from '#core/case/record.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { STEP } from '#ui/fields/enclosure-cells.ts';

/**
 * A case of which nothing is known yet. The size of the room is the one the transfer type is named after, and is said to
 * be assumed until it is measured.
 */
export function blankCase(id: string, unit: LengthUnit): Case {
	const assumed = (value: number) => ({ value, how: 'assumed' as const });
	const wall = {};
	const read = caseOf({
		schema: 'graspline-case',
		version: 1,
		id,
		tape: { unit, step: STEP[unit] },
		lead: 'person-led',
		reference: 'ada-2010',
		people: { client: { role: 'client' } },
		enclosure: {
			type: 'transfer',
			seatWall: 'right',
			width: assumed(914.4),
			depth: assumed(914.4),
			height: assumed(2133.6),
			walls: { back: wall, left: wall, right: wall }
		}
	});
	if (read.kind === 'bad') throw new RangeError('a blank case must be a case');
	return read.case;
}
