import type { LengthUnit } from '#core/units/length.ts';

/** One document's span on a range strip. Units: mm; an open end is undefined. */
export interface Span {
	readonly name: string;
	readonly min: number | undefined;
	readonly max: number | undefined;
}

/** A quantity with everything between what and what. Units: mm. */
export interface Strip {
	readonly value: number;
	readonly spans: readonly Span[];
	readonly easy?: readonly [number, number] | undefined;
	readonly stretched?: readonly [number, number] | undefined;
}

/** A strip laid out. Units: px; y of each row is its middle. */
export interface LaidStrip {
	readonly width: number;
	readonly height: number;
	readonly rows: readonly {
		readonly name: string;
		readonly y: number;
		readonly from: number;
		readonly to: number;
		readonly open: 'from' | 'to' | 'no';
	}[];
	readonly bands: readonly { readonly kind: 'easy' | 'stretched'; readonly x: number; readonly width: number }[];
	readonly mark: number;
	readonly ticks: readonly number[];
	readonly figures: readonly { readonly x: number; readonly value: number }[];
	readonly body: { readonly top: number; readonly bottom: number };
}

/** What the scale counts in, mm. */
const STEPS: Readonly<Record<LengthUnit, readonly number[]>> = {
	mm: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000],
	in: [0.25, 0.5, 1, 2, 4, 6, 12, 24, 48].map((n) => n * 25.4)
};
const NAMES = 70;
const ROW = 20;
const TOP = 24;

/** Lays a strip out in a width. Shape: the mark and every closed end lie inside; figures are round and three at most. */
export function laidStrip(strip: Strip, width: number, unit: LengthUnit): LaidStrip {
	const ends = [
		strip.value,
		...strip.spans.flatMap(({ min, max }) => [min, max]),
		...(strip.easy ?? []),
		...(strip.stretched ?? [])
	].filter((n) => n !== undefined);
	const pad = Math.max(20, (Math.max(...ends) - Math.min(...ends)) * 0.08);
	const [low, high] = [Math.min(...ends) - pad, Math.max(...ends) + pad];
	const x = (value: number): number => NAMES + ((value - low) / (high - low)) * (width - NAMES - 4);
	const bottom = TOP + Math.max(1, strip.spans.length) * ROW + 2;
	const step = STEPS[unit].find((size) => (high - low) / size <= 8) ?? 1000;
	const ticks = multiples(step, low, high);
	return {
		width,
		height: bottom + 26,
		rows: strip.spans.map(({ name, min, max }, i) => ({
			name,
			y: TOP + ROW * (i + 0.5),
			from: min === undefined ? NAMES : x(min),
			to: max === undefined ? width - 4 : x(max),
			open: min === undefined ? 'from' : max === undefined ? 'to' : 'no'
		})),
		bands: (['stretched', 'easy'] as const).flatMap((kind) => {
			const band = strip[kind];
			return band ? [{ kind, x: x(band[0]), width: Math.max(0, x(band[1]) - x(band[0])) }] : [];
		}),
		mark: x(strip.value),
		ticks: ticks.map(x),
		figures: threeOf(ticks).map((value) => ({ x: x(value), value })),
		body: { top: TOP, bottom }
	};
}

function multiples(step: number, low: number, high: number): readonly number[] {
	const first = Math.ceil(low / step);
	const count = Math.max(0, Math.floor(high / step) - first + 1);
	return Array.from({ length: count }, (_, i) => (first + i) * step);
}

function threeOf(ticks: readonly number[]): readonly number[] {
	if (ticks.length <= 3) return ticks;
	const middle = ticks.length > 4 ? ticks[Math.floor((ticks.length - 1) / 2)] : undefined;
	return [ticks[0], middle, ticks.at(-1)].filter((n) => n !== undefined);
}
