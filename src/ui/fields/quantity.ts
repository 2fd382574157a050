import { formatLength, type Tape } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import { parseLength } from '#core/units/parse.ts';

/** What a number counts. */
export type Quantity = 'length' | 'mass' | 'years' | 'minutes' | 'degrees' | 'fall' | 'warmth' | 'force' | 'plain';

/** What became of what was typed: a number in the record's unit, nothing, or a sentence saying why not. */
export type Reading =
	| { readonly kind: 'value'; readonly value: number }
	| { readonly kind: 'empty' }
	| { readonly kind: 'refused'; readonly why: string };

interface Unit {
	readonly name: string;
	readonly pattern: RegExp;
	readonly toRecord: (n: number) => number;
}

const own = (n: number): number => n;
const tenth = (n: number): number => Math.round(n * 10) / 10;

/** The units each quantity is typed in; the first is the record's own. */
const UNITS: Readonly<Record<Exclude<Quantity, 'length' | 'fall'>, readonly Unit[]>> = {
	mass: [
		{ name: 'kg', pattern: /^kgs?$/, toRecord: own },
		{ name: 'lb', pattern: /^(lb|lbs|pounds?)$/, toRecord: (n) => tenth(n * 0.45359237) }
	],
	years: [{ name: 'years', pattern: /^(y|years?)$/, toRecord: own }],
	minutes: [{ name: 'minutes', pattern: /^(m|min|mins|minutes?)$/, toRecord: own }],
	degrees: [{ name: 'degrees', pattern: /^(°|deg|degrees?)$/, toRecord: own }],
	warmth: [
		{ name: '°C', pattern: /^°? ?c$/, toRecord: own },
		{ name: '°F', pattern: /^°? ?f$/, toRecord: (n) => tenth(((n - 32) * 5) / 9) }
	],
	force: [
		{ name: 'N', pattern: /^n$/, toRecord: own },
		{ name: 'lbf', pattern: /^lbf?$/, toRecord: (n) => tenth(n * 4.4482216152605) }
	],
	plain: []
};

const NUMBER = /^(\d*[.,]?\d+)\s*(\D.*)?$/;

/** Reads what was typed; a bare number is in the tape's or the record's own unit. */
export function readQuantity(text: string, quantity: Quantity, tape: Tape): Reading {
	if (text.trim() === '') return { kind: 'empty' };
	if (quantity === 'length') return readLength(text, tape);
	if (quantity === 'fall') return readFall(text);
	return readNumber(text, quantity);
}

/** A number of the record in words: with its unit, lengths on the tape. */
export function showQuantity(value: number, quantity: Quantity, tape: Tape): string {
	if (quantity === 'length') return formatLength(mm(value), tape);
	if (quantity === 'fall') return value === 0 ? 'level' : `1:${String(tenth(1 / value))}`;
	const unit = UNITS[quantity][0]?.name ?? '';
	return `${String(Math.round(value * 100) / 100)} ${unit}`.trim();
}

/** The same length on the other tapes, small beside what was typed. */
export function otherUnits(value: number): readonly string[] {
	return [`${String(tenth(value))} mm`, formatLength(mm(value), { unit: 'in' })];
}

function readLength(text: string, tape: Tape): Reading {
	const read = parseLength(text, tape.unit);
	return read.kind === 'length' ? { kind: 'value', value: read.value } : refused(read.why);
}

function readNumber(text: string, quantity: Exclude<Quantity, 'length' | 'fall'>): Reading {
	const units = UNITS[quantity];
	const [, figure = '', named = ''] = NUMBER.exec(text.trim().toLowerCase()) ?? [];
	const unit = named === '' ? units[0] : units.find((one) => one.pattern.test(named.trim()));
	if (figure === '') return refused(`this is not a number - write for example ${example(units)}`);
	if (!unit && named !== '') return refused(`${named} is not a unit here - write ${example(units)}`);
	const n = Number(figure.replace(',', '.'));
	return { kind: 'value', value: unit ? unit.toRecord(n) : n };
}

/** Rise over run: 1:48, 2 %, or 0.02. */
function readFall(text: string): Reading {
	const said = text.trim().toLowerCase().replace(',', '.');
	if (/^(level|flat|0|none)$/.test(said)) return { kind: 'value', value: 0 };
	const [, run = ''] = /^1 ?: ?(\d+\.?\d*)$/.exec(said) ?? [];
	const [, percent = ''] = /^(\d*\.?\d+) ?%$/.exec(said) ?? [];
	if (Number(run) > 0) return { kind: 'value', value: Math.round(1e6 / Number(run)) / 1e6 };
	if (percent !== '') return { kind: 'value', value: Math.round(Number(percent) * 1e4) / 1e6 };
	if (/^0?\.\d+$/.test(said)) return { kind: 'value', value: Number(said) };
	return refused('this is not a fall - write for example 1:48 or 2 %');
}

function example(units: readonly Unit[]): string {
	return units.length === 0 ? '12' : units.map(({ name }) => `12 ${name}`).join(' or ');
}

function refused(why: string): Reading {
	return { kind: 'refused', why: why.charAt(0).toUpperCase() + why.slice(1) + (why.endsWith('.') ? '' : '.') };
}
