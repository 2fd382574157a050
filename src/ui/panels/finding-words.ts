import type { Allowed, Finding, Quantity, Row } from '#core/rules/row.ts';
import { formatFigure, onTape, type Tape } from '#core/units/format.ts';
import { inches } from '#core/units/length.ts';

/** What tells a finding from every other: a row may be asked of a person as she is and as she is expected to be. */
export function keyOf({ row, about, later }: Finding): string {
	return [row.id, ...about, ...(later ? ['later'] : [])].join(' ');
}

/** Where the sentence comes from: document, edition and clause. */
export function sourceWords({ row }: Finding): string {
	return `${row.document} ${row.edition}, ${row.clause}`;
}

/**
 * What a row allows: ": 38 to 48 in", ": at least 36 in"; empty where nothing is counted. A document keeps the unit it
 * prints; what is the person's or ours is told on the tape of the reader.
 */
export function allowedWords({ origin, allowed }: Row, tape: Tape): string {
	const printed = limitWords(allowed);
	return origin === 'document' ? printed : onTape(printed, tape);
}

function limitWords(allowed: Allowed): string {
	if (typeof allowed === 'string' || 'ask' in allowed) return '';
	const { min, max } = allowed;
	if (min && max) return min.n === max.n ? `: ${exactly(min)}` : `: ${figure(min)} to ${exactly(max)}`;
	if (min) return `: at least ${exactly(min)}`;
	return max ? `: at most ${exactly(max)}` : '';
}

/** A limit in mm, where it is a length. */
export function limitInMm(limit: Quantity | undefined): number | undefined {
	if (limit?.unit === 'mm') return limit.n;
	return limit?.unit === 'in' ? inches(limit.n) : undefined;
}

const UNITS: Readonly<Record<Quantity['unit'], string>> = {
	mm: 'mm',
	in: 'in',
	N: 'N',
	lbf: 'lbf',
	degC: '°C',
	degF: '°F',
	ratio: ''
};

const figure = ({ n, unit }: Quantity): string =>
	unit === 'in' ? formatFigure(inches(n), { unit: 'in' }) : String(Math.round(n * 100) / 100);
const exactly = (limit: Quantity): string => `${figure(limit)} ${UNITS[limit.unit]}`.trim();
