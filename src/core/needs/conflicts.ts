import type { Measure } from '#core/measures/scene.ts';
import { mm } from '#core/units/length.ts';
import { formatFigure, formatLength } from '#core/units/format.ts';
import type { Cell, Quantity, SourceId } from './comparison.ts';
import { apart, inBoth, type Span } from './span.ts';

/** Two sources that nothing meets both of. */
export interface Conflict {
	readonly sources: readonly [SourceId, SourceId];
	/** How much lies between them. Units: as the quantity. */
	readonly apart: number;
}

/** What the most documents allow. */
export interface Suited {
	/** Every stretch that so many allow. Units and frame: as the quantity. */
	readonly spans: readonly Span[];
	/** Those that allow the first of them, and those that do not. */
	readonly by: readonly SourceId[];
	readonly not: readonly SourceId[];
}

/** Less apart is no conflict a tape would find. Units: mm, or as the measure. */
const LEAST = 1;

/** What is said of a source where there is room for one or two words. */
const NAMES: Readonly<Record<SourceId, string>> = {
	'ada-2010': 'ADA 2010',
	'a117-1-2003': 'A117.1 2003',
	'cbc-11b': 'California 11B',
	'on-obc-2012': 'Ontario',
	'bc-bcbc-2024': 'British Columbia',
	'uk-adm-2': 'England M 2',
	'uk-adm-1': 'England M 1',
	'fr-erp-2014': 'France',
	body: 'the person',
	wish: 'with ease'
};

/** A source in one or two words. */
export const nameOf = (source: SourceId): string => NAMES[source];

type Spanned = Cell & { readonly span: Span };

const spanned = (cells: readonly Cell[]): readonly Spanned[] =>
	cells.filter((one): one is Spanned => one.span !== undefined && one.span.from <= one.span.to);

/** Every two sources whose spans share nothing; what a document takes over from another is told once. */
export function conflictsIn(cells: readonly Cell[]): readonly Conflict[] {
	const own = spanned(cells).filter(({ as }) => as === undefined);
	return own.flatMap((a, i) =>
		own
			.slice(i + 1)
			// Where ease lies beyond what she can is no matter between documents.
			.filter((b) => !(a.source === 'body' && b.source === 'wish'))
			.map((b) => ({ sources: [a.source, b.source] as const, apart: apart(a.span, b.span) }))
			.filter((one) => one.apart > LEAST)
	);
}

/** What the most documents allow. Shape: undefined where fewer than two give a span. */
export function suitedBy(cells: readonly Cell[]): Suited | undefined {
	const all = spanned(cells).filter(({ source }) => source !== 'body' && source !== 'wish');
	if (all.length < 2) return undefined;
	const ends = [...new Set(all.flatMap(({ span }) => [span.from, span.to]))].toSorted((a, b) => a - b);
	const groups = ends.map((at) => all.filter(({ span }) => span.from <= at && at <= span.to));
	const most = Math.max(...groups.map(({ length }) => length));
	// Ends that lie in the same documents are ends of one stretch.
	const best = [...new Map(groups.map((group) => [group.map(({ source }) => source).join(), group])).values()];
	const widest = best.filter(({ length }) => length === most);
	const [first = []] = widest;
	return {
		spans: widest.map((group) => group.map(({ span }) => span).reduce(inBoth)),
		by: first.map(({ source }) => source),
		not: all.filter((one) => !first.includes(one)).map(({ source }) => source)
	};
}

/** Which documents and the person nothing meets at once, one plain sentence a pair; lengths in mm, for `onTape`. */
export const conflictWords = ({ axis, unit }: Quantity, { sources, apart: by }: Conflict): string => {
	const [a, b] = sources.map((source) => (source === 'wish' ? 'what is easy for the person' : nameOf(source)));
	const thing = axis === 'y' ? 'height' : axis === 'x' ? 'place along the wall' : 'value';
	return `No ${thing} meets both ${a ?? ''} and ${b ?? ''}: ${amount(by, unit)} lie between them.`;
};

/** What suits the most documents, and which it does not suit, in one plain sentence; lengths in mm, for `onTape`. */
export function suitedWords({ unit }: Quantity, { spans, by, not }: Suited): string {
	const total = by.length + not.length;
	const where = spans.map((span) => spanWords(span, unit)).join(', or ');
	if (not.length === 0) return `${where} suits all ${String(total)} documents.`;
	if (by.length === 1) return `No two of these ${String(total)} documents share a value.`;
	// With several stretches each leaves out others.
	const but = spans.length > 1 ? '' : `, not ${not.map(nameOf).join(', ')}`;
	return `${where} suits ${String(by.length)} of ${String(total)} documents${but}.`;
}

/** From where to where in words: "460 to 480 mm", "at least 900 mm"; in mm, for `onTape`. */
export function spanWords({ from, to }: Span, unit: Measure['unit']): string {
	if (!Number.isFinite(from)) return Number.isFinite(to) ? `at most ${amount(to, unit)}` : 'anything';
	if (!Number.isFinite(to)) return `at least ${amount(from, unit)}`;
	return figure(from, unit) === figure(to, unit) ? amount(from, unit) : `${figure(from, unit)} to ${amount(to, unit)}`;
}

const UNITS: Readonly<Record<Measure['unit'], string>> = { mm: 'mm', N: 'N', degC: 'C', ratio: '', yes: '' };

const figure = (n: number, unit: Measure['unit']): string =>
	unit === 'mm' ? formatFigure(mm(n), { unit: 'mm' }) : String(Number(n.toFixed(unit === 'ratio' ? 3 : 1)));

const amount = (n: number, unit: Measure['unit']): string =>
	unit === 'mm' ? formatLength(mm(n), { unit: 'mm' }) : `${figure(n, unit)} ${UNITS[unit]}`.trim();
