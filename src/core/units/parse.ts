import { inches, mm, type LengthUnit, type Mm } from './length.ts';

/** What became of a typed length: a length, or what was seen and why it was not taken. */
export type ParsedLength =
	| { readonly kind: 'length'; readonly value: Mm }
	| { readonly kind: 'refused'; readonly saw: string; readonly why: string };

interface Refusal {
	readonly why: string;
}

type Outcome = Mm | Refusal;

const LONGEST = mm(10_000);
const TOO_LONG = 'this is longer than 10 m';
const MOST_CHARACTERS = 40;

const FRACTIONS: Readonly<Record<string, string>> = {
	'½': '1/2',
	'¼': '1/4',
	'¾': '3/4',
	'⅛': '1/8',
	'⅜': '3/8',
	'⅝': '5/8',
	'⅞': '7/8'
};
const DECIMAL = String.raw`\d*[.,]?\d+`;
const FRACTION = String.raw`\d+/\d+`;
const FEET = new RegExp(String.raw`^(${DECIMAL}) ?(?:'|ft\.?|feet|foot)(?: ?-? ?(.+))?$`);
const INCHES = new RegExp(String.raw`^(?:(\d+)(?: ?- ?| ))?(${FRACTION})$|^(${DECIMAL})$`);
const WITH_UNIT = /^(.*?) ?(mm|cm|m|"|in\.?|inch|inches)$/;

/**
 * The length somebody typed: 34 1/2 in, 34-1/2", 6'-4 1/2", 86,5 cm, 1.2 m; a bare number is in the unit given.
 * Units and frame: mm out.
 * Shape: 0 to 10 m.
 * Fails: `refused`, with what was seen and a sentence that says how to write it.
 */
export function parseLength(text: string, unit: LengthUnit): ParsedLength {
	const saw = text.trim().slice(0, MOST_CHARACTERS);
	const outcome =
		text.trim().length > MOST_CHARACTERS ? refuse('this is too long for a length') : read(plain(text), unit);
	return typeof outcome === 'number' ? { kind: 'length', value: outcome } : { kind: 'refused', saw, why: outcome.why };
}

function read(text: string, unit: LengthUnit): Outcome {
	if (text === '') return refuse('nothing was written');
	if (text.startsWith('-')) return refuse('a length cannot be negative');
	const length = FEET.test(text) ? readFeet(text) : readPlain(text, unit);
	if (typeof length === 'number' && length > LONGEST) return refuse(TOO_LONG);
	return length;
}

function readPlain(text: string, unit: LengthUnit): Outcome {
	const [, number = text, named = unit] = WITH_UNIT.exec(text) ?? [];
	switch (named) {
		case 'mm':
			return readMetric(number, 1);
		case 'cm':
			return readMetric(number, 10);
		case 'm':
			return readMetric(number, 1000);
		default:
			return readInches(number);
	}
}

function readMetric(figure: string, factor: number): Outcome {
	if (figure.includes('/')) return refuse('a fraction is read in inches only - write in after it');
	// In mm and cm nobody measures to thousandths: three digits after a point are as likely a thousands mark.
	if (factor < 1000 && /[1-9]\d*\.\d{3}$/.test(figure)) return twoReadings(figure);
	const n = readDecimal(figure);
	return typeof n === 'number' ? mm(n * factor) : n;
}

function readFeet(text: string): Outcome {
	const [, figure = '', rest] = FEET.exec(text) ?? [];
	const feet = readDecimal(figure);
	if (typeof feet !== 'number') return feet;
	if (rest === undefined) return inches(feet * 12);
	if (!Number.isInteger(feet)) return refuse('write whole feet before inches');
	const more = readInches(rest.replace(/ ?(?:"|in\.?|inch|inches)$/, ''));
	if (typeof more !== 'number') return more;
	return more < inches(12) ? mm(inches(feet * 12) + more) : refuse('after feet there must be fewer than 12 inches');
}

function readInches(figure: string): Outcome {
	const [, whole = '0', fraction, decimal] = INCHES.exec(figure) ?? [];
	if (fraction !== undefined) return readFraction(whole, fraction);
	const n = readDecimal(decimal ?? figure);
	return typeof n === 'number' ? inches(n) : n;
}

function readFraction(before: string, fraction: string): Outcome {
	const whole = readDecimal(before);
	if (typeof whole !== 'number') return whole;
	const [numerator = 0, denominator = 0] = fraction.split('/').map(Number);
	// A third or a fifth is on no tape; it is a slip of the finger.
	if (![2, 4, 8, 16, 32, 64].includes(denominator))
		return refuse(`a tape has halves to sixty-fourths, not ${fraction}`);
	if (numerator >= denominator) return refuse(`${fraction} is not less than one inch`);
	return inches(whole + numerator / denominator);
}

function readDecimal(figure: string): number | Refusal {
	if (/^\d+([ -]\d+)+$/.test(figure)) return refuse('these are two numbers - write one, without a space or dash');
	if (/[1-9]\d*,\d{3}$/.test(figure)) return twoReadings(figure);
	if (!new RegExp(`^${DECIMAL}$`).test(figure))
		return refuse('this is not a length - write for example 865 mm or 34 1/2 in');
	const n = Number(figure.replace(',', '.'));
	// In mm, the smallest unit, this is already more than the limit.
	return n > LONGEST ? refuse(TOO_LONG) : n;
}

function twoReadings(figure: string): Refusal {
	return refuse(
		`${figure} can be read as ${figure.replace(/[.,]/g, '')} or as a decimal - write it without a thousands mark`
	);
}

/** Brings the many ways to write a prime, a dash, a blank and a fraction to one. */
function plain(text: string): string {
	return text
		.toLowerCase()
		.replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign] ?? sign}`)
		.replace(/[⁄∕]/g, '/')
		.replace(/[‐‑‒–—−]/g, '-')
		.replace(/[’‘′]/g, "'")
		.replace(/[”“″]|''/g, '"')
		.replace(/ ?\/ ?/g, '/')
		.replace(/\s+/g, ' ')
		.trim();
}

function refuse(why: string): Refusal {
	return { why };
}
