import type { Cell } from './comparison.ts';
import { isDocument, type SourceId } from './source.ts';
import { apart, inBoth, type Span } from './span.ts';

/** Sources that one value cannot meet together with another. */
export interface Conflict {
	readonly source: SourceId;
	/** What it shares nothing with, with how much lies between. Units: as the quantity. */
	readonly with: readonly { readonly source: SourceId; readonly apart: number }[];
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

type Spanned = Cell & { readonly span: Span };
/** Two sources with how much lies between them. */
type Pair = readonly [a: SourceId, b: SourceId, apart: number];

const spanned = (cells: readonly Cell[]): readonly Spanned[] =>
	cells.filter((one): one is Spanned => one.span !== undefined && one.span.from <= one.span.to);

/**
 * Every two sources whose spans share nothing, gathered under the one that stands against most.
 * Shape: each pair once; what a document takes over from another is told once.
 */
export function conflictsIn(cells: readonly Cell[]): readonly Conflict[] {
	const own = spanned(cells).filter(({ as }) => as === undefined);
	const pairs = own.flatMap((a, i) =>
		own
			.slice(i + 1)
			// Where ease lies beyond what she can is no matter between documents.
			.filter((b) => isDocument(a.source) || isDocument(b.source))
			.map((b): Pair => [a.source, b.source, apart(a.span, b.span)])
			.filter(([, , between]) => between > LEAST)
	);
	return gathered(pairs);
}

function gathered(pairs: readonly Pair[]): readonly Conflict[] {
	if (pairs.length === 0) return [];
	const counted = (source: SourceId) => pairs.filter(([a, b]) => a === source || b === source);
	// Of several that stand against as many the later one, so that a row of those before it reads on.
	const source = pairs
		.flatMap(([a, b]) => [a, b])
		.reduce((most, one) => (counted(one).length > counted(most).length ? one : most));
	const taken = counted(source);
	const against = taken.map(([a, b, between]) => ({ source: a === source ? b : a, apart: between }));
	return [{ source, with: against }, ...gathered(pairs.filter((pair) => !taken.includes(pair)))];
}

/** What the most documents allow. Shape: undefined where fewer than two give a span. */
export function suitedBy(cells: readonly Cell[]): Suited | undefined {
	const all = spanned(cells).filter(({ source }) => isDocument(source));
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
