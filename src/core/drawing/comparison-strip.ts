import type { Quantity } from '#core/needs/comparison.ts';
import type { Told } from '#core/needs/comparison-words.ts';
import { isDocument } from '#core/needs/source.ts';
import type { Span } from '#core/needs/span.ts';
import type { Box, Entity, Spot } from './entity.ts';
import { circle, line, rectangle, shape } from './path.ts';

/** The scale all rows of a quantity share, across the sheet. Units: mm of the sheet, from its left. */
export interface Scale {
	readonly left: number;
	readonly width: number;
	readonly low: number;
	readonly high: number;
}

/** Half the height of a mark at the end of a span. Units: mm. */
const END = 1.3;
/** Narrower than this a span is a bar and a dot. Units: mm. */
const NARROW = 0.6;
const HEAD = 1.5;

/** A scale on which every closed end and the plan's own value lie inside, with air beyond them. */
export function scaleOf({ at, cells }: Quantity, left: number, width: number): Scale {
	const ends = [at, ...cells.flatMap(({ span }) => (span && span.from <= span.to ? [span.from, span.to] : []))].filter(
		(n): n is number => n !== undefined && Number.isFinite(n)
	);
	const [low, high] = [Math.min(...ends), Math.max(...ends)];
	const air = Math.max(0.1 * (high - low), 5);
	return { left, width, low: low - air, high: high + air };
}

/** Where a value is on a scale; beyond its ends at them. Units: mm of the sheet. */
export const onScale = ({ left, width, low, high }: Scale, n: number): number =>
	left + (width * (Math.min(Math.max(n, low), high) - low)) / (high - low);

/** What one source allows, at the height of its row: a line with its ends, an arrow where it is open. */
export function spanLine(id: string, { cell }: Told, scale: Scale, y: number): readonly Entity[] {
	const { span, advice } = cell;
	if (!span || span.from > span.to) return [];
	const layer = advice ? 'thing-later' : isDocument(cell.source) ? 'outline' : 'tick';
	const [x0, x1] = [onScale(scale, span.from), onScale(scale, span.to)];
	const drawn =
		x1 - x0 < NARROW ? [circle(`${id}/dot`, 'solid', [(x0 + x1) / 2, y], 0.7)] : [line(id, layer, [x0, y], [x1, y])];
	return [
		...drawn,
		...endOf(`${id}/from`, [x0, y], Number.isFinite(span.from) ? 'closed' : 'left'),
		...endOf(`${id}/to`, [x1, y], Number.isFinite(span.to) ? 'closed' : 'right')
	];
}

function endOf(id: string, [x, y]: Spot, end: 'closed' | 'left' | 'right'): readonly Entity[] {
	if (end === 'closed') return [line(id, 'tick', [x, y - END], [x, y + END])];
	const back = end === 'left' ? HEAD : -HEAD;
	return [line(id, 'tick', [x + back, y - 0.9], [x, y], [x + back, y + 0.9])];
}

/** What the person can and what is easy for her, behind all rows: broken edges round the one, whole ones round the other. */
export function bands(
	id: string,
	{ cells }: Quantity,
	scale: Scale,
	{ y0, y1 }: Pick<Box, 'y0' | 'y1'>
): readonly Entity[] {
	return (['body', 'wish'] as const).flatMap((source) => {
		const span = cells.find((cell) => cell.source === source)?.span;
		if (!span || span.from > span.to) return [];
		const { from, to } = span;
		const [x0, x1] = [onScale(scale, from), onScale(scale, to)];
		const edge = source === 'body' ? 'stretched' : 'easy';
		const edges = [from, to].flatMap((end, i) =>
			Number.isFinite(end)
				? [line(`${id}/${source}/${String(i)}`, edge, [i === 0 ? x0 : x1, y0], [i === 0 ? x0 : x1, y1])]
				: []
		);
		return [rectangle(`${id}/${source}`, source === 'body' ? 'backing' : 'cut', { x0, x1, y0, y1 }), ...edges];
	});
}

/** Where the plan itself is, through all rows. */
export function planLine(
	id: string,
	{ at }: Quantity,
	scale: Scale,
	{ y0, y1 }: Pick<Box, 'y0' | 'y1'>
): readonly Entity[] {
	if (at === undefined) return [];
	const x = onScale(scale, at);
	return [
		line(id, 'outline', [x, y0], [x, y1]),
		shape(`${id}/sign`, 'solid', [x - 1.6, y0 - 2.4], [x + 1.6, y0 - 2.4], [x, y0])
	];
}

/** What all the rows of a quantity say lies within; its own words must be told apart. */
export const hasStrip = ({ at, cells }: Quantity): boolean =>
	at !== undefined && cells.filter(({ span }: { readonly span?: Span }) => span !== undefined).length > 1;
