import type { Mark } from '#core/case/accessory.ts';
import type { Vec } from '#core/geometry/vec.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Scene } from '#core/measures/scene.ts';
import { concerns, readingOn, sceneFor, slackOf } from '#core/rules/judge.ts';
import { limitsOf } from '#core/rules/limit.ts';
import type { BoundRow } from '#core/rules/row.ts';
import type { Box } from './box.ts';
import { asMissed, charge, DRILL_ROOM, HALF_TICK, PART_COUNT, PARTS, priced, type Price } from './cost.ts';
import { asksRoom } from './price.ts';

/** A mark known as well as its box: where its middle is, and how far it may be from there along each axis. Units: mm. */
export interface Held {
	readonly mark: Mark;
	readonly half: readonly [number, number];
	readonly radius: number;
}

/**
 * What rows say of a box: a price no place of it goes below, and the rows that can still add something in a part of the
 * box; null when every place of it breaks a must.
 */
export type Weighed = (Price & { readonly open: readonly BoundRow[] }) | null;

/** Counts what one search asked. */
export interface Tally {
	/** Rows asked, and those whose answer was remembered. */
	evaluations: number;
	nodes: number;
}

/** The steepest floor a record may hold: heights over it change by this along the wall. */
const FALL = 0.1;

/** How much a measure changes at most while a mark moves about in what holds it. Units: mm. */
function play({ half, radius }: Held, along: 'x' | 'y' | undefined): number {
	if (along === undefined) return radius;
	return along === 'x' ? half[0] + FALL * half[1] : half[1] + FALL * half[0];
}

/** What one row says of a box: every place breaks it, no place pays for it, or it stays open. */
type Said = 'broken' | 'met' | 'open';

/** The most slack a row of a pair can have while its marks move about, where its measure tells; undefined where not. */
function overIn(scene: Scene, { row }: BoundRow, a: Held, b: Held): number | undefined {
	const measure: Measure = MEASURES[row.measure];
	if (measure.about !== 'pair' || !measure.over || a.radius + b.radius === 0) return undefined;
	// What is at most tells of a limit from below only.
	if (limitsOf(row).max !== undefined || !concerns(row, a.mark, b.mark)) return undefined;
	const reading = measure.over(scene, a.mark, b.mark, [spreadOf(a), spreadOf(b)]);
	return slackOf(row, reading).best;
}

/** How far a mark may be from the middle of what holds it, along each axis of the plan. Units: mm. */
function spreadOf({ mark, half: [x, y] }: Held): Vec {
	const { wall } = mark.place;
	return wall === 'left' || wall === 'right' ? [0, x, y] : [x, 0, y];
}

/** What one row adds at least to `parts`, with its marks anywhere in their boxes. */
function addRow(all: Scene, parts: number[], bound: BoundRow, a: Held, b: Held | undefined): Said {
	const scene = sceneFor(all, bound);
	const dear = b && overIn(scene, bound, a, b);
	if (dear !== undefined && dear < -HALF_TICK) {
		if (bound.strength === 'must') return 'broken';
		charge(parts, bound.strength, asMissed(bound.row, -dear - HALF_TICK), 'mm');
		return 'open';
	}
	const reading = readingOn(scene, bound.row, a.mark, b?.mark);
	if (reading === null || (typeof reading === 'object' && !('best' in reading))) return 'met';
	const { slope, unit, along }: Measure = MEASURES[bound.row.measure];
	// Every measure changes by no more than its marks move, so a shortfall in the middle less the radius is shared by all.
	const reach = slope === 0 ? 0 : play(a, along) + (b ? play(b, along) : 0);
	const slack = slackOf(bound.row, reading);
	// What sums of floating numbers lose must not close a box of more than one place.
	const shortfall = -slack.best - (reach > 0 ? reach + HALF_TICK : 0);
	if (shortfall > 0 && bound.strength === 'must') return 'broken';
	charge(parts, bound.strength, asMissed(bound.row, shortfall), unit === 'yes' ? 'yes-no' : 'mm');
	const drills = asksRoom(bound);
	if (drills && reach === 0 && slack.sure >= 0 && slack.sure + HALF_TICK < DRILL_ROOM) add(parts, 1);
	const far = !drills || slack.sure - reach > DRILL_ROOM || slack.sure + reach < -HALF_TICK;
	return slack.best - reach > HALF_TICK && far ? 'met' : 'open';
}

const add = (parts: number[], tie: number): void => {
	parts[PARTS.tie] = (parts[PARTS.tie] ?? 0) + tie;
};

const least = (rough: readonly number[], [from, to]: readonly [number, number]): number => {
	let found = Infinity;
	for (let i = from; i <= to && found > 0; i++) found = Math.min(found, rough[i] ?? Infinity);
	return found;
};

/** What rows about an unknown alone cost at least in a box, with how round its figures can be. */
export function aloneIn(scene: Scene, rows: readonly BoundRow[], box: Box): Weighed {
	const parts = zero();
	add(parts, least(box.spot.xs.rough, box.x) + least(box.spot.ys.rough, box.y));
	return weigh(scene, rows, { a: box, b: undefined, parts });
}

/** What rows about two marks cost at least, the marks anywhere in what holds them. */
export const pairIn = (scene: Scene, rows: readonly BoundRow[], a: Held, b: Held): Weighed =>
	weigh(scene, rows, { a, b, parts: zero() });

const zero = (): number[] => new Array<number>(PART_COUNT).fill(0);

interface Asked {
	readonly a: Held;
	readonly b: Held | undefined;
	/** What is there already. */
	readonly parts: number[];
}

function weigh(scene: Scene, rows: readonly BoundRow[], { a, b, parts }: Asked): Weighed {
	let open: BoundRow[] | undefined;
	for (let i = 0; i < rows.length; i++) {
		const row = rows[i] as BoundRow;
		const said =
			b && row.about[0] !== a.mark.accessory.id ? addRow(scene, parts, row, b, a) : addRow(scene, parts, row, a, b);
		if (said === 'broken') return null;
		if (said === 'met') open ??= rows.slice(0, i);
		else open?.push(row);
	}
	const { high, low } = priced(parts);
	return { high, low, open: open ?? rows };
}
