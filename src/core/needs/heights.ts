import type { Mark } from '#core/case/accessory.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { readingOn } from '#core/rules/judge.ts';
import { limitsOf } from '#core/rules/limit.ts';
import type { Row } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';

/** Heights from the lowest to the highest. Units and frame: mm from the datum line. Shape: infinite where open. */
export interface Heights {
	readonly from: number;
	readonly to: number;
}

/** What of a measure is asked of a mark, beside the one other mark where it is about two. */
type Ask = (mark: Mark) => Reading | null;

/** How far a mark is moved to see that its height alone decides, and what may be lost over that. Units: mm. */
const PROBE = 500;
const SLIVER = 1;

/** The same mark higher by so much. Units: mm. */
const higher = (mark: Mark, by: number): Mark => ({ ...mark, place: { ...mark.place, y: mm(mark.place.y + by) } });

/** The ends of a reading; none where it is only a question. */
function endsOf(reading: Reading | null): readonly [least: number, most: number] | undefined {
	if (typeof reading === 'number') return [reading, reading];
	if (reading === null || !('best' in reading)) return undefined;
	return [Math.min(reading.best, reading.sure), Math.max(reading.best, reading.sure)];
}

/** Whether a measure rises (1) or falls (-1) mm for mm with the height of a mark; undefined where it does neither. */
function wayOf(ask: Ask, mark: Mark): 1 | -1 | undefined {
	const [low, here, high] = [-PROBE, 0, PROBE].map((by) => endsOf(ask(higher(mark, by)))?.[0]);
	if (low === undefined || here === undefined || high === undefined) return undefined;
	const steady = (way: 1 | -1): boolean =>
		Math.abs(high - here - way * PROBE) < SLIVER && Math.abs(here - low - way * PROBE) < SLIVER;
	return steady(1) ? 1 : steady(-1) ? -1 : undefined;
}

/**
 * The heights of a mark that a row allows with everything else where it is, by asking the measure of the row. Where that
 * lies between bounds, every height it may allow counts.
 * Shape: undefined where the height of the mark alone does not decide, or nothing is known.
 */
export function heightsOf(scene: Scene, row: Row, mark: Mark, other?: Mark): Heights | undefined {
	const { unit, along }: Measure = MEASURES[row.measure];
	if (unit !== 'mm' || along !== 'y') return undefined;
	const ask: Ask = (m) => readingOn(scene, row, m, other);
	const [ends, way] = [endsOf(ask(mark)), wayOf(ask, mark)];
	if (!ends || !way) return undefined;
	const { min = -Infinity, max = Infinity } = limitsOf(row);
	const { y } = mark.place;
	const levels = ends.flatMap((reading) => [y + way * (min - reading), y + way * (max - reading)]);
	return { from: Math.min(...levels), to: Math.max(...levels) };
}

/** What two ranges of heights have in common. Shape: from above to where they have nothing. */
export const inBoth = (a: Heights, b: Heights): Heights => ({
	from: Math.max(a.from, b.from),
	to: Math.min(a.to, b.to)
});
