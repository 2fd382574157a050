import type { MeasureId } from '#core/measures/registry.ts';
import { MEASURES } from '#core/measures/registry.ts';
import { formatLength, onTape, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import { exactly, limitsOf } from './limit.ts';
import type { Finding, Quantity, Row } from './row.ts';

/** Words for a value below and above what is allowed. */
type Beyond = readonly [less: string, more: string];

const HEIGHT: Beyond = ['too low', 'too high'];
const DISTANCE: Beyond = ['too near', 'too far'];
const SIZE: Beyond = ['too small', 'too large'];
const ROOM: Beyond = ['too little', 'too much'];
const REACH: Beyond = ['out of reach', 'too much'];

const WORDS: Readonly<Partial<Record<MeasureId, Beyond>>> = {
	'inside-width': ['too narrow', 'too wide'],
	'inside-depth': ['too shallow', 'too deep'],
	'entry-width': ['too narrow', 'too wide'],
	'outside-width': ['too narrow', 'too wide'],
	'outside-length': ['too short', 'too long'],
	threshold: HEIGHT,
	'water-temperature': ['too cold', 'too hot'],
	'hose-length': ['too short', 'too long'],
	'bar-top-from-high-floor': HEIGHT,
	'bar-top-from-low-floor': HEIGHT,
	'bar-gap': SIZE,
	'bar-diameter': ['too thin', 'too thick'],
	'bar-perimeter': ['too thin', 'too thick'],
	'bar-end-from-control-wall': ['too near the control wall', 'too far from the control wall'],
	'from-entry-line': DISTANCE,
	'bar-entry-end': DISTANCE,
	'bar-back-end': DISTANCE,
	'bar-corner-gap': DISTANCE,
	'bar-corner-gap-off-seat': DISTANCE,
	'clear-of-seat': ['over the seat', 'too far'],
	'underside-above-bar': HEIGHT,
	'bar-height-difference': ['too little', 'apart'],
	'height-difference': ['too little', 'apart'],
	'centres-apart': DISTANCE,
	'near-end-past-seat': ['too far back', 'too far ahead'],
	'near-end-past-seat-edge': ['too far back', 'too far ahead'],
	'far-end-past-seat': ['too short', 'too long'],
	'seat-top-above-bathroom-floor': HEIGHT,
	'seat-end-to-entry': DISTANCE,
	'seat-side-to-wall-beside': DISTANCE,
	'seat-off-centre': DISTANCE,
	'seat-centre-from-corner': DISTANCE,
	'seat-width': ['too narrow', 'too wide'],
	'seat-depth': ['too shallow', 'too deep'],
	'bar-length': ['too short', 'too long'],
	'bar-over-all': ['too short', 'too long'],
	'bar-start-from-seat-wall': DISTANCE,
	'bar-over-all-from-seat-wall': DISTANCE,
	'bar-axis-from-high-floor': HEIGHT,
	'bar-axis-from-low-floor': HEIGHT,
	'upright-length': ['too short', 'too long'],
	'upright-from-seat-wall': DISTANCE,
	'foot-above-floor': HEIGHT,
	'foot-above-bar': HEIGHT,
	'middle-from-seat-wall': DISTANCE,
	'middle-from-corner': DISTANCE,
	'middle-from-high-floor': HEIGHT,
	'middle-from-low-floor': HEIGHT,
	'apart-in-plan': DISTANCE,
	'inside-least': SIZE,
	'inside-most': SIZE,
	'turning-circle': SIZE,
	'turning-over-shower': DISTANCE,
	'beside-seat-length': ['too short', 'too long'],
	'beside-seat-width': ['too narrow', 'too wide'],
	'room-along': ['too short', 'too long'],
	'room-ahead': ['too short', 'too long'],
	'front-wall-length': ['too short', 'too long'],
	'seat-rear': DISTANCE,
	'seat-front': DISTANCE,
	'seat-arm-rear': DISTANCE,
	'seat-arm-front': DISTANCE,
	'seat-arm-end': DISTANCE,
	'envelope-bottom-above-shower-floor': HEIGHT,
	'envelope-top-above-shower-floor': HEIGHT,
	'envelope-bottom-above-bathroom-floor': HEIGHT,
	'envelope-top-above-bathroom-floor': HEIGHT,
	'near-edge-from-centre-line': ['behind the centre line', 'too far'],
	'far-edge-from-centre-line': DISTANCE,
	'edge-off-centre-line': DISTANCE,
	'edge-from-seat-wall': DISTANCE,
	'reach-leaning': REACH,
	'reach-upright': REACH,
	'reach-easy': ['beyond easy reach', 'too much'],
	'reach-from-entry': REACH,
	'reach-standing': REACH,
	'helper-reach': REACH,
	'ahead-of-shoulders': ['not far enough ahead', 'too far ahead'],
	'above-seat': HEIGHT,
	'seat-above-knee-fold': HEIGHT,
	'seat-above-easy-rise': HEIGHT,
	'seat-above-high-rise': HEIGHT,
	'seat-above-chair': HEIGHT,
	'seat-beyond-hips': ['too narrow', 'too wide'],
	'foot-below-wrist': ['too high', 'too low'],
	'head-above-shoulder': ['too short', 'too long']
};

/** Measures that are what is left of one length over another: only how far inside or outside says something. */
const DIFFERENCES: ReadonlySet<MeasureId> = new Set<MeasureId>([
	'reach-leaning',
	'reach-upright',
	'reach-easy',
	'reach-from-entry',
	'reach-standing',
	'helper-reach',
	'seat-above-knee-fold',
	'seat-above-easy-rise',
	'seat-above-high-rise',
	'seat-beyond-hips',
	'hips-from-wall-beside',
	'foot-below-wrist',
	'head-above-shoulder',
	'near-end-past-seat',
	'near-end-past-seat-edge',
	'clear-of-seat',
	'underside-above-bar',
	'near-edge-from-centre-line',
	'far-edge-from-centre-line'
]);

/**
 * A finding in plain words, for screen, terminal and paper alike.
 * Units and frame: lengths in the unit of the tape.
 */
export function sentence(finding: Finding, tape: Tape): string {
	const { row, answer, missing } = finding;
	const says = onTape(row.says, tape);
	switch (answer) {
		case 'not-here':
			return `${says} Nothing here to judge by it.`;
		case 'ask':
			return row.whom === undefined ? `To ask: ${asksFor(finding, tape)}` : asksFor(finding, tape);
		case 'unknown':
			return `${says} Not known: ${missing ?? 'it has not been measured.'}`;
		case 'borderline':
			return `${says} Here ${told(finding, tape)}; ${exactWords(finding, tape)}.`;
		case 'inside':
			// Without a figure nothing is near that it could meet.
			return MEASURES[row.measure].unit === 'yes' || finding.measured === undefined
				? says
				: `${says} Here ${figures(finding, spare(finding, tape), tape)}.`;
		case 'outside':
			return MEASURES[row.measure].unit === 'yes'
				? `${says} Here it is not so.`
				: `${says} Here ${figures(finding, beyond(finding, tape), tape)}.`;
	}
}

/** What a row asks, in its own words. */
export const askOf = (row: Row): string =>
	typeof row.allowed === 'object' && 'ask' in row.allowed ? row.allowed.ask : row.says;

/** What a finding that only asks wants to know, with the figure it is about where that is not a matter of yes or no. */
export function asksFor({ row, measured }: Finding, tape: Tape): string {
	const ask = row.whom === undefined ? askOf(row) : `Ask ${row.whom}: ${askOf(row)}`;
	return MEASURES[row.measure].unit === 'N' && measured !== undefined
		? `${ask} Here ${amount(row, measured, tape)}.`
		: ask;
}

/** What is measured with how far it is inside or outside; the second alone where it says the same, or the first means little. */
function figures(finding: Finding, apart: string, tape: Tape): string {
	const { row, measured, slack } = finding;
	if (measured === undefined) return 'nothing recorded behind this wall does';
	if (slack === undefined) return told(finding, tape);
	const twice = Math.abs(measured) === Math.abs(slack);
	return twice || DIFFERENCES.has(row.measure) ? apart : `${told(finding, tape)}, ${apart}`;
}

const told = ({ row, measured = 0 }: Finding, tape: Tape): string => amount(row, measured, tape);

function amount(row: Row, value: number, tape: Tape): string {
	const decimal = (digits: number): string => String(Number(value.toFixed(digits)));
	switch (MEASURES[row.measure].unit) {
		case 'mm':
			return formatLength(mm(value), tape);
		case 'degC':
			return `${decimal(1)} C`;
		case 'ratio':
			return decimal(3);
		case 'N':
			return `${decimal(0)} N`;
		case 'yes':
			return value > 0 ? 'so' : 'not so';
	}
}

function spare({ row, slack }: Finding, tape: Tape): string {
	return `${amount(row, slack ?? 0, tape)} to spare`;
}

function beyond({ row, measured = 0, slack = 0 }: Finding, tape: Tape): string {
	const { min = -Infinity } = limitsOf(row);
	const [less, more] = WORDS[row.measure] ?? ROOM;
	return `${amount(row, -slack, tape)} ${measured < min ? less : more}`;
}

/** Which exact inches a printed round figure stands for. */
function exactWords({ row, measured = 0 }: Finding, tape: Tape): string {
	if (typeof row.allowed !== 'object' || 'ask' in row.allowed) return '';
	const { min, max } = row.allowed;
	const limit = min && measured < exactly(min) ? min : max;
	return limit
		? `the document prints ${printed(limit)}, but ${unitWords(limit)} is ${amount(row, exactly(limit), exact(tape))}`
		: '';
}

const printed = ({ printed: figure, unit }: Quantity): string => `${figure ?? ''} ${unit === 'degF' ? 'C' : 'mm'}`;

const unitWords = ({ n, unit }: Quantity): string => `${n} ${unit === 'degF' ? 'F' : unit}`;

/** A sliver between two units shows only in millimetres. */
const exact = (tape: Tape): Tape => (tape.unit === 'mm' ? tape : { unit: 'mm' });
