import type { Mark } from '#core/case/accessory.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Scene } from '#core/measures/scene.ts';
import { findingOf, readingOn, sceneFor, slackOf } from '#core/rules/judge.ts';
import { applies } from '#core/rules/applies.ts';
import type { BoundRow, Finding } from '#core/rules/row.ts';
import { inches, mm } from '#core/units/length.ts';
import { counted, shortOf } from './price.ts';
import { moved } from './nudge.ts';
import { countsMore } from './worse.ts';

/**
 * The room round a mark inside which no answer worsens, all marks drifting at once.
 * Units and frame: mm, wall frame, left and right as seen from inside. Shape: whole steps of the tape, never above 25
 * along the wall and 10 in height; 0 is no room. Marks on one height line drift in height together.
 */
export interface Drift {
	readonly accessory: string;
	readonly left: number;
	readonly right: number;
	readonly lower: number;
	readonly higher: number;
}

/** The most that is ever told. Units: mm. Source: ours; drilling is aimed at the mark. */
const MOST = { x: 25, y: 10 } as const;
/** What a tape is read to. */
const READ = { mm: mm(1), in: inches(1 / 16) } as const;
/** A row about one mark is asked no farther apart than this. Units: mm. */
const GRAIN = 1;
/** Floors fall by this at most: a measure along one axis changes by it along the other. */
const FALL = 0.1;
const HOLDING = ['must', 'should', 'prefer'];

/** More than anything drifts. Units: mm. */
const FREE = 1e4;

/** One way things may drift: a mark along its wall, or all on one height line up and down. */
interface Way {
	readonly axis: 'x' | 'y';
	readonly ids: readonly string[];
	/** How far, toward less and toward more. Units: mm. */
	readonly room: [less: number, more: number];
	readonly open: [less: boolean, more: boolean];
}

/** A row that holds, the ways its marks may drift, and how much it can lose before it counts more. */
interface Hold {
	readonly bound: BoundRow;
	readonly was: Finding;
	readonly marks: readonly [Mark, Mark?];
	readonly ways: readonly Way[];
	/** How much a mm of each way changes it at most. */
	readonly slopes: readonly number[];
	readonly spare: number;
}

/** How much its slack can fall before a row answers less well or its shortfall counts more. Units: mm. */
function spareOf(bound: BoundRow, was: Finding, slack: { best: number; sure: number }): number {
	if (was.answer === 'inside') return slack.sure;
	if (was.answer === 'unknown') return slack.best;
	const short = shortOf(was);
	// What is missed already cannot be missed by more.
	if (short >= (bound.row.missed ?? Infinity)) return FREE;
	if (bound.strength !== 'should') return 0;
	const now = counted(bound, short);
	// Whole steps: the most it may fall short and count no more.
	let [low, high] = [0, 25];
	while (high - low > 0.01) {
		const middle = (low + high) / 2;
		if (counted(bound, short + middle) > now) high = middle;
		else low = middle;
	}
	return low;
}

function holdOf(scene: Scene, bound: BoundRow, marks: readonly Mark[], ways: readonly Way[]): Hold[] {
	const { row, about } = bound;
	const measure: Measure = MEASURES[row.measure];
	const seen = sceneFor(scene, bound);
	if (!HOLDING.includes(bound.strength) || measure.slope === 0 || !applies(row.when, seen.c)) return [];
	const [a, b] = about.map((id) => marks.find((m) => m.accessory.id === id));
	const reading = a && (about.length === 1 || b) ? readingOn(seen, row, a, b) : null;
	if (!a || reading === null) return [];
	const was = findingOf(bound, reading);
	if (was.answer === 'ask') return [];
	const mine = ways.filter((w) => w.ids.some((id) => about.includes(id)));
	const slopes = mine.map(
		(w) =>
			(measure.along === undefined || measure.along === w.axis ? 1 : FALL) *
			w.ids.filter((id) => about.includes(id)).length
	);
	const spare = spareOf(bound, was, slackOf(row, reading));
	return [{ bound, was, marks: b ? [a, b] : [a], ways: mine, slopes, spare }];
}

function waysOf(marks: readonly Mark[]): Way[] {
	const free = marks.filter((m) => m.stage !== 'built');
	const way = (axis: 'x' | 'y', ids: readonly string[]): Way => ({ axis, ids, room: [0, 0], open: [true, true] });
	const lines = new Map<string, string[]>();
	for (const { accessory } of free) {
		const line = accessory.line === undefined ? accessory.id : `line ${accessory.line}`;
		lines.set(line, [...(lines.get(line) ?? []), accessory.id]);
	}
	return [...free.map((m) => way('x', [m.accessory.id])), ...[...lines.values()].map((ids) => way('y', ids))];
}

/** True when a row counts no more with its marks drifted so. */
function heldAt(scene: Scene, { bound, was, marks, ways }: Hold, by: readonly number[]): boolean {
	const along = (m: Mark, axis: 'x' | 'y') => {
		const i = ways.findIndex((w) => w.axis === axis && w.ids.includes(m.accessory.id));
		return by[i] ?? 0;
	};
	const drifted = (m: Mark) => moved(m, along(m, 'x'), along(m, 'y'));
	const [a, b] = marks;
	const reading = readingOn(sceneFor(scene, bound), bound.row, drifted(a), b && drifted(b));
	return reading === null || !countsMore(was, findingOf(bound, reading));
}

/** Where a way is asked: its ends and its middle, or so close together that nothing lies between. */
function spotsOf({ room: [less, more] }: Way, close: boolean): readonly number[] {
	const count = close ? Math.max(2, Math.ceil((less + more) / GRAIN)) : 2;
	const spots = Array.from({ length: count + 1 }, (_, i) => -less + ((less + more) * i) / count);
	return [...new Set([...spots, 0])];
}

/** True when a row stands all over the face at `by` along one way, the other ways anywhere in their room. */
function standsAt(scene: Scene, hold: Hold, way: Way, by: number): boolean {
	const most = hold.ways.map((w) => (w === way ? Math.abs(by) : Math.max(...w.room)));
	const change = most.reduce((sum, m, i) => sum + m * (hold.slopes[i] ?? 1), 0);
	// No measure changes by more than its marks move.
	if (change <= hold.spare) return true;
	const close = hold.marks[1] === undefined;
	const grid = hold.ways.map((w) => (w === way ? [by] : spotsOf(w, close)));
	const all = grid.reduce<readonly (readonly number[])[]>(
		(sum, spots) => sum.flatMap((at) => spots.map((s) => [...at, s])),
		[[]]
	);
	return all.every((at) => heldAt(scene, hold, at));
}

/**
 * The room round every mark that is not built, the least side made as great as can be before any other grows.
 * Rows that must, should or by choice ought to hold are asked; a wish counts in the 25 mm steps of its cost.
 * Shape: in the order of the marks. A row about two marks is asked at the corners, edges and middles of both rooms.
 */
export function driftsOf(scene: Scene, rows: readonly BoundRow[], marks: readonly Mark[]): readonly Drift[] {
	const ways = waysOf(marks);
	const holds = rows.flatMap((bound) => holdOf(scene, bound, marks, ways));
	const touching = new Map(ways.map((way) => [way, holds.filter((h) => h.ways.includes(way))]));
	const step = READ[scene.c.tape.unit];
	// In a mirrored room the mirrored side comes first.
	const ends = scene.room.seatWall === 'left' ? ([0, 1] as const) : ([1, 0] as const);
	for (let next = least(ways, ends); next; next = least(ways, ends)) {
		const { way, end } = next;
		const to = mm(way.room[end] + step);
		const by = end === 0 ? -to : to;
		const fits = to <= MOST[way.axis] && touching.get(way)?.every((hold) => standsAt(scene, hold, way, by));
		if (fits) way.room[end] = to;
		else way.open[end] = false;
	}
	return marks.flatMap(({ accessory: { id } }) => {
		const [x, y] = (['x', 'y'] as const).map((axis) => ways.find((w) => w.axis === axis && w.ids.includes(id)));
		if (!x || !y) return [];
		return [{ accessory: id, left: x.room[0], right: x.room[1], lower: y.room[0], higher: y.room[1] }];
	});
}

/** The side with the least room that may still grow. */
function least(ways: readonly Way[], ends: readonly (0 | 1)[]): { way: Way; end: 0 | 1 } | null {
	let found: { way: Way; end: 0 | 1 } | null = null;
	for (const way of ways)
		for (const end of ends) {
			const less = !found || way.room[end] < found.way.room[found.end];
			if (way.open[end] && less) found = { way, end };
		}
	return found;
}
