import type { Measure } from '#core/measures/scene.ts';
import { formatFigure, formatLength } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import type { Cell, Quantity } from './comparison.ts';
import type { Conflict, Suited } from './conflicts.ts';
import type { DocumentSays } from './documents.ts';
import { isDocument, nameOf, type SourceId } from './source.ts';
import type { Span } from './span.ts';

/** The person within a sentence. */
const IN_WORDS: Partial<Readonly<Record<SourceId, string>>> = {
	body: 'what the person can',
	wish: 'what is easy for the person'
};

const UNITS: Readonly<Record<Measure['unit'], string>> = { mm: 'mm', N: 'N', degC: 'C', ratio: '', yes: '' };

/** Words for a value below and above what is allowed. */
const BEYOND = { y: ['too low', 'too high'], x: ['too near', 'too far'], other: ['too little', 'too much'] } as const;

/** What a source goes by in its own text: the clauses of its rows, each once; of the person who says so. */
export function clausesOf({ source, findings }: Cell): string {
	const rows = findings.map(({ row }) => row);
	return [...new Set(rows.map(({ document, clause }) => (isDocument(source) ? clause : document)))].join(', ');
}

/** Sources one value cannot meet, in one plain sentence; lengths in mm, for `onTape`. */
export function conflictWords({ axis, unit }: Quantity, { source, with: against }: Conflict): string {
	const thing = axis === 'y' ? 'height' : axis === 'x' ? 'place along the wall' : 'value';
	const inWords = (one: SourceId): string => IN_WORDS[one] ?? nameOf(one);
	const others = against.map((one) => `${inWords(one.source)} (${amount(one.apart, unit)} between)`);
	const last = others.at(-1) ?? '';
	const listed = others.length > 1 ? `${others.slice(0, -1).join(', ')} or ${last}` : last;
	return `No ${thing} meets both ${inWords(source)} and ${listed}.`;
}

/** What suits the most documents, and which it does not suit, in one plain sentence; lengths in mm, for `onTape`. */
export function suitedWords({ unit }: Quantity, { spans, by, not }: Suited): string {
	const total = String(by.length + not.length);
	if (by.length === 1) return `No two of these ${total} documents share a value.`;
	const where = capital(spans.map((span) => spanWords(span, unit)).join(', or '));
	if (not.length === 0) return `${where} suits ${by.length === 2 ? 'both' : `all ${total}`} documents.`;
	// With several stretches each leaves out others.
	const but = spans.length > 1 ? '' : `, not ${not.map(nameOf).join(', ')}`;
	return `${where} suits ${String(by.length)} of ${total} documents${but}.`;
}

/** What is allowed in words: "460 to 480 mm", "at least 900 mm"; in mm, for `onTape`. */
export function spanWords({ from, to }: Span, unit: Measure['unit']): string {
	if (from > to) return 'nothing meets all';
	if (!Number.isFinite(from)) return Number.isFinite(to) ? `at most ${amount(to, unit)}` : 'anything';
	if (!Number.isFinite(to)) return `at least ${amount(from, unit)}`;
	const [low, high] = [figure(from, unit), amount(to, unit)];
	return low === figure(to, unit) ? high : `${low} to ${high}`;
}

/** What the plan has of a quantity; in mm, for `onTape`. */
export function hereWords({ at, unit }: Quantity): string {
	if (at === undefined) return 'not known';
	return unit === 'yes' ? (at > 0 ? 'so' : 'not so') : amount(at, unit);
}

/** How the plan stands to what one source allows: "30 mm too high", "12 mm to spare"; in mm, for `onTape`. */
export function standingWords({ at, unit, axis }: Quantity, { span, answer }: Cell): string {
	if (answer === 'unknown') return 'not known';
	if (answer === 'borderline') return 'at its edge';
	if (unit === 'yes' || !span || at === undefined) return answer === 'inside' ? 'as asked' : 'not as asked';
	const [less, more] = BEYOND[axis ?? 'other'];
	const [low, high] = [at - span.from, span.to - at];
	const least = Math.min(low, high);
	if (answer === 'inside') return Number.isFinite(least) ? `${amount(Math.max(0, least), unit)} to spare` : 'anywhere';
	if (span.from > span.to || least >= 0) return 'not all met';
	return low < high ? `${amount(-low, unit)} ${less}` : `${amount(-high, unit)} ${more}`;
}

/** What a document binds, what it counts with and how it counts a single value, a sentence each; lengths in mm, for `onTape`. */
export const scopeWords = ({ as, binds, homes, tolerance }: DocumentSays): readonly string[] => [
	binds,
	homes,
	...(as ? [`It counts with ${nameOf(as)}, but for what it says otherwise.`] : []),
	...(tolerance === undefined ? [] : [`A single value counts ${String(tolerance)} mm either way: that is ours.`])
];

/** A source with those that say the same because they take it over. */
export interface Told {
	readonly cell: Cell;
	readonly also: readonly SourceId[];
}

/** Every cell that says something of its own, with who takes it over. */
export const toldOnce = (cells: readonly Cell[]): readonly Told[] =>
	cells
		.filter(({ as }) => as === undefined || !cells.some(({ source }) => source === as))
		.map((cell) => ({ cell, also: cells.filter(({ as }) => as === cell.source).map(({ source }) => source) }));

/** Whether a quantity needs somebody to look at it: something is outside or borderline, or two sources exclude each other. */
export const needsLook = ({ cells, conflicts }: Quantity): boolean =>
	conflicts.length > 0 ||
	cells.some(({ source, answer }) => isDocument(source) && (answer === 'outside' || answer === 'borderline'));

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const figure = (n: number, unit: Measure['unit']): string =>
	unit === 'mm' ? formatFigure(mm(n), { unit: 'mm' }) : String(Number(n.toFixed(unit === 'ratio' ? 3 : 1)));

const amount = (n: number, unit: Measure['unit']): string =>
	unit === 'mm' ? formatLength(mm(n), { unit: 'mm' }) : `${figure(n, unit)} ${UNITS[unit]}`.trim();
