import type { Reading } from '#core/measures/scene.ts';
import { limitsOf, printedLimitsOf, type Limits } from './limit.ts';
import type { Answer, Row } from './row.ts';

/** How far a reading is inside a row; negative outside. Units: as the measure. Shape: best >= sure. */
export interface Slack {
	readonly best: number;
	readonly sure: number;
}

// One step of the grid of lengths: what lies on a strict limit is outside by this.
const TICK = 1 / 320;
// What sums of floating numbers may lose; a thousandth of the grid of lengths.
const NOTHING = 1e-6;

const NOT_KNOWN: Slack = { best: Infinity, sure: -Infinity };

/**
 * How far a reading is inside what a row allows, at its best and as far as is known for sure.
 * Units: as the measure; 0 or 1 inside and -1 outside for a row of yes or no.
 * Shape: slope at most that of the reading; infinite, + and -, where nothing is known or the row only asks. Decided by
 * exact inches.
 */
export function slackOf(row: Row, reading: Reading): Slack {
	const limits = limitsOf(row);
	const strict = isStrict(row) ? TICK : 0;
	if (typeof reading === 'number') {
		const slack = slackIn(limits, reading, strict);
		return { best: slack, sure: slack };
	}
	if (!('best' in reading)) return NOT_KNOWN;
	const low = Math.min(reading.best, reading.sure);
	const high = Math.max(reading.best, reading.sure);
	return {
		best: slackIn(limits, Math.min(Math.max(middleOf(limits), low), high), strict),
		sure: Math.min(slackIn(limits, low, strict), slackIn(limits, high, strict))
	};
}

/** The answer a reading gets from a row. Shape: unknown is never inside. */
export function answerOf(row: Row, reading: Reading): Answer {
	if (asks(row)) return 'ask';
	const { best, sure } = slackOf(row, reading);
	if (sure >= 0) return 'inside';
	if (best >= 0) return 'unknown';
	const printed = typeof reading === 'number' && slackIn(printedLimitsOf(row), reading, 0) >= 0;
	return printed && !isStrict(row) ? 'borderline' : 'outside';
}

const asks = ({ allowed }: Row): boolean => typeof allowed === 'object' && 'ask' in allowed;

const isStrict = ({ allowed }: Row): boolean => typeof allowed === 'object' && 'strict' in allowed;

function slackIn({ min = -Infinity, max = Infinity }: Limits, value: number, strict: number): number {
	const slack = Math.min(value - min, max - value) - strict;
	return Math.abs(slack) < NOTHING ? 0 : slack;
}

/** Where a value has the most slack. */
function middleOf({ min, max }: Limits): number {
	if (min === undefined) return max === undefined ? 0 : -Infinity;
	return max === undefined ? Infinity : (min + max) / 2;
}
