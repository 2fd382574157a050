import { fromTicks, inches, mm, toTicks, type LengthUnit, type Mm } from './length.ts';

/** How lengths are shown: the unit, and the smallest step shown (0.1 mm or 1/16 in when not told). */
export interface Tape {
	readonly unit: LengthUnit;
	readonly step?: Mm;
}

/** A length in inches as it is set in type. The fraction is reduced; numerator 0 goes with denominator 1. */
export interface InchParts {
	readonly sign: '' | '-';
	readonly whole: number;
	readonly numerator: number;
	readonly denominator: number;
}

const FINEST = { mm: mm(0.1), in: inches(1 / 16) } as const;
const HEIGHT_STEP = { mm: mm(5), in: inches(1 / 4) } as const;
const SIXTY_FOURTH = toTicks(inches(1 / 64));

/**
 * A length with its unit, to the nearest step: "863.6 mm", "34 1/2 in".
 * Units and frame: mm in.
 * Fails: RangeError when an inch step is not whole sixty-fourths.
 */
export function formatLength(length: Mm, tape: Tape): string {
	return `${formatFigure(length, tape)} ${tape.unit}`;
}

/**
 * The figure alone, for a column or a dimension line whose unit is said elsewhere: "863.6", "34 1/2".
 * Units and frame: mm in.
 * Fails: RangeError when an inch step is not whole sixty-fourths.
 */
export function formatFigure(length: Mm, tape: Tape): string {
	const step = tape.step ?? FINEST[tape.unit];
	if (tape.unit === 'mm') return String(Math.round(roundNearest(length, step) * 10) / 10);
	const { sign, whole, numerator, denominator } = inchParts(length, step);
	return sign + mixed(whole, numerator, denominator);
}

/**
 * A height with its unit, to 5 mm or 1/4 in: a finer figure is more than a hand can mark. Finer only where the tape's step says so.
 * Units and frame: mm in, height over any floor.
 */
export function formatHeight(height: Mm, tape: Tape): string {
	return formatLength(height, { step: HEIGHT_STEP[tape.unit], ...tape });
}

/**
 * Feet and inches as US drawings write them: 6'-4 1/2". A length under a foot keeps its 0'.
 * Units and frame: mm in.
 * Fails: RangeError when the step is not whole sixty-fourths of an inch.
 */
export function formatFeet(length: Mm, step: Mm = FINEST.in): string {
	const { sign, whole, numerator, denominator } = inchParts(length, step);
	return `${sign}${String(Math.floor(whole / 12))}'-${mixed(whole % 12, numerator, denominator)}"`;
}

/**
 * A length in whole inches and a reduced fraction, to the nearest step; halves go away from zero.
 * Units and frame: mm in, inches out.
 * Fails: RangeError when the step is not whole sixty-fourths of an inch.
 */
export function inchParts(length: Mm, step: Mm = FINEST.in): InchParts {
	if (toTicks(step) % SIXTY_FOURTH !== 0) throw new RangeError('an inch step must be whole sixty-fourths of an inch');
	const rounded = toTicks(roundNearest(length, step)) / SIXTY_FOURTH;
	const size = Math.abs(rounded);
	const shared = greatestShared(size % 64, 64);
	return {
		sign: rounded < 0 ? '-' : '',
		whole: Math.floor(size / 64),
		numerator: (size % 64) / shared,
		denominator: 64 / shared
	};
}

/**
 * The nearest multiple of the step that still keeps the limit: up for a minimum, down for a maximum.
 * Units and frame: mm.
 * Shape: never beyond the limit, and less than one step inside it.
 * Fails: RangeError when the step is not above zero.
 */
export function roundInward(value: Mm, limit: 'min' | 'max', step: Mm): Mm {
	return inSteps(value, step, limit === 'min' ? Math.ceil : Math.floor);
}

/**
 * A sentence of ours with its millimetres told on another tape, to 1/8 in: "within 25 mm" is "within 1 in".
 * Shape: the same sentence on a mm tape. Not for what a document prints.
 */
export function onTape(sentence: string, { unit }: Tape): string {
	if (unit === 'mm') return sentence;
	const told = (n: string): string => formatFigure(mm(Number(n)), { unit, step: inches(1 / 8) });
	return sentence
		.replace(/(\d+(?:\.\d+)?) to (\d+(?:\.\d+)?) mm\b/g, (_, a: string, b: string) => `${told(a)} to ${told(b)} in`)
		.replace(/(\d+(?:\.\d+)?) mm\b/g, (_, n: string) => `${told(n)} in`);
}

function roundNearest(value: Mm, step: Mm): Mm {
	return inSteps(value, step, (n) => Math.sign(n) * Math.round(Math.abs(n)));
}

function inSteps(value: Mm, step: Mm, round: (n: number) => number): Mm {
	const ticks = toTicks(step);
	if (ticks <= 0) throw new RangeError('a step must be above zero');
	return fromTicks(round(toTicks(value) / ticks) * ticks);
}

function mixed(whole: number, numerator: number, denominator: number): string {
	if (numerator === 0) return String(whole);
	const fraction = `${String(numerator)}/${String(denominator)}`;
	return whole === 0 ? fraction : `${String(whole)} ${fraction}`;
}

function greatestShared(a: number, b: number): number {
	return b === 0 ? a : greatestShared(b, a % b);
}
