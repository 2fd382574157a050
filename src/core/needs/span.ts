import type { Mark } from '#core/case/accessory.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { slackOf } from '#core/rules/answer.ts';
import { readingOn } from '#core/rules/judge.ts';
import { limitsOf } from '#core/rules/limit.ts';
import type { Row } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';

/** What is allowed along a line, from the least to the most. Units: mm. Shape: infinite where open; from above to where nothing is. */
export interface Span {
	readonly from: number;
	readonly to: number;
}

/** An axis of a wall: along it, or in height from the datum line. */
export type Axis = 'x' | 'y';

/** A row with the mark it speaks of and the one other, where it is about two. */
export interface Asked {
	readonly row: Row;
	readonly mark: Mark;
	readonly other?: Mark | undefined;
}

/** What the measure of a row gives with its mark so far along an axis from where it is. Units: mm. */
type Ask = (by: number) => Reading | null;

/** How far a mark is moved to see that its place alone decides: along a wall past its ends, where distances turn. Units: mm. */
const PROBE: Readonly<Record<Axis, number>> = { x: 2500, y: 500 };
/** What may be lost over that. Units: mm. */
const SLIVER = 1;
/** Farther from its place no mark is looked for. Units: mm. */
const FAR = 2500;
/** One step of the grid of lengths. Units: mm. */
const TICK = 1 / 320;

const NOTHING: Span = { from: Infinity, to: -Infinity };

function moved(mark: Mark, axis: Axis, by: number): Mark {
	return { ...mark, place: { ...mark.place, [axis]: mm(mark.place[axis] + by) } };
}

const askOf =
	(scene: Scene, axis: Axis, { row, mark, other }: Asked): Ask =>
	(by) =>
		readingOn(scene, row, moved(mark, axis, by), other);

/** The ends of a reading; none where it is only a question. */
function endsOf(reading: Reading | null): readonly [least: number, most: number] | undefined {
	if (typeof reading === 'number') return [reading, reading];
	if (reading === null || !('best' in reading)) return undefined;
	return [Math.min(reading.best, reading.sure), Math.max(reading.best, reading.sure)];
}

/** Whether a measure rises (1) or falls (-1) mm for mm with the place of a mark; undefined where it does neither. */
function wayOf(ask: Ask, axis: Axis): 1 | -1 | undefined {
	const far = PROBE[axis];
	const [low, here, high] = [-far, 0, far].map((by) => endsOf(ask(by))?.[0]);
	if (low === undefined || here === undefined || high === undefined) return undefined;
	const steady = (way: 1 | -1): boolean =>
		Math.abs(high - here - way * far) < SLIVER && Math.abs(here - low - way * far) < SLIVER;
	return steady(1) ? 1 : steady(-1) ? -1 : undefined;
}

/**
 * The places of a mark along an axis that a row allows with everything else where it is, by asking the measure of the row.
 * Where that lies between bounds, every place it may allow counts.
 * Units and frame: mm, wall frame. Shape: undefined where the place of the mark along it does not decide mm for mm, or
 * nothing is known.
 */
export function spanOn(scene: Scene, axis: Axis, asked: Asked): Span | undefined {
	const { row, mark } = asked;
	const { unit, along }: Measure = MEASURES[row.measure];
	if (unit !== 'mm' || along !== axis) return undefined;
	const ask = askOf(scene, axis, asked);
	const [ends, way] = [endsOf(ask(0)), wayOf(ask, axis)];
	if (!ends || !way) return undefined;
	const { min = -Infinity, max = Infinity } = limitsOf(row);
	const at = mark.place[axis];
	const places = ends.flatMap((reading) => [at + way * (min - reading), at + way * (max - reading)]);
	return { from: Math.min(...places), to: Math.max(...places) };
}

/**
 * The same for any measure of length, however it turns along the axis: the places next to where the mark is, found by going
 * as far as the row leaves free. Shape: undefined where it does not depend on that axis, or nothing is known.
 */
export function spanNear(scene: Scene, axis: Axis, asked: Asked): Span | undefined {
	const straight = spanOn(scene, axis, asked);
	const { unit, slope }: Measure = MEASURES[asked.row.measure];
	if (straight || unit !== 'mm' || slope === 0) return straight;
	const ask = askOf(scene, axis, asked);
	const slackAt = (by: number): number => {
		const reading = ask(by);
		return reading === null ? -Infinity : slackOf(asked.row, reading).best;
	};
	const far = PROBE[axis];
	const probed = [-far, -SLIVER, 0, SLIVER, far].map(slackAt);
	if (probed.some((slack) => !Number.isFinite(slack)) || probed.every((slack) => slack === probed[0])) return undefined;
	const at = asked.mark.place[axis];
	const inside = insideNear(slackAt);
	if (inside === undefined) return NOTHING;
	const [from, to] = ([-1, 1] as const).map((way) => endFrom(slackAt, inside, way)) as [number, number];
	return { from: mm0(at + from), to: mm0(at + to) };
}

/** On the grid of lengths, but for what is open. */
const mm0 = (n: number): number => (Number.isFinite(n) ? mm(n) : n);

/** The nearest way along the axis to a place that is allowed. Shape: what is closer than a millimetre may be stepped over. */
function insideNear(slackAt: (by: number) => number): number | undefined {
	if (slackAt(0) >= 0) return 0;
	const found = ([-1, 1] as const).flatMap((way) => {
		let [before, by, slack] = [0, 0, slackAt(0)];
		while (slack < 0 && Math.abs(by) <= FAR) {
			before = by;
			by += way * Math.max(-slack, SLIVER);
			slack = slackAt(by);
		}
		return slack < 0 ? [] : [closedIn(slackAt, by, before)];
	});
	return found.toSorted((a, b) => Math.abs(a) - Math.abs(b))[0];
}

/** From an allowed place on to the last allowed one; infinite where there is none within a wall's length. */
function endFrom(slackAt: (by: number) => number, inside: number, way: 1 | -1): number {
	let [by, next, slack] = [inside, inside, slackAt(inside)];
	while (slack >= 0) {
		by = next;
		if (Math.abs(by) > FAR) return way * Infinity;
		next = by + way * Math.max(slack, SLIVER);
		slack = slackAt(next);
	}
	return closedIn(slackAt, by, next);
}

/** The last allowed place between an allowed one and one that is not, to a step of the grid. */
function closedIn(slackAt: (by: number) => number, inside: number, outside: number): number {
	let [yes, no] = [inside, outside];
	while (Math.abs(yes - no) > TICK) {
		const middle = (yes + no) / 2;
		if (slackAt(middle) >= 0) yes = middle;
		else no = middle;
	}
	return yes;
}

/** What two spans have in common. Shape: from above to where they have nothing. */
export const inBoth = (a: Span, b: Span): Span => ({ from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) });

/** How much lies between two spans; below 0 where they share something. */
export function apart(a: Span, b: Span): number {
	const { from, to } = inBoth(a, b);
	return from - to;
}
