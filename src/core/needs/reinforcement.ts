import { variantOf, type Accessory, type Kind, type Mark, type Slot } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { apart, around } from '#core/geometry/rect.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Scene } from '#core/measures/scene.ts';
import { slackOf } from '#core/rules/answer.ts';
import { bind, chosenFrom } from '#core/rules/bind.ts';
import { readingOn } from '#core/rules/judge.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import type { BoundRow, Row } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import type { Span } from './span.ts';
import { wantedFor } from './wanted.ts';

/** Where the wall of a new dwelling is to be solid for what a document asks for, now or later. Units and frame: mm, wall frame. */
export interface Reinforcement {
	readonly wall: WallId;
	readonly rect: Rect;
	/** Ids of the accessories whose fixings could lie there. */
	readonly of: readonly string[];
	readonly document: string;
	readonly edition: string;
	/** Clauses that ask for these accessories. */
	readonly clauses: readonly string[];
}

/** What holds a person. */
const HOLDING: readonly Kind[] = ['seat', 'horizontal-bar', 'vertical-bar', 'fold-down-rail'];

const known = new WeakMap<Scene, readonly Reinforcement[]>();

/**
 * Where a new dwelling needs solid backing so that the chosen document could be met: every fixing of every bar and seat it
 * asks for, in every part offered that has the size asked for, at every place its rows allow each by itself. No printed rectangle is copied.
 * Rows between two things are left out, so that an area is rather larger, never smaller; where no row bounds an axis the
 * wall does. What the wall holds today does not count.
 * Shape: none where the dwelling is not new or no document is chosen.
 * Source: ADA 2010, 608.3 and 608.4, exceptions for dwellings; ICC A117.1-2003, 1003.11.4 and 1004.11.2; Ontario Building
 * Code 3.3.4.9 and 9.5.2.3: all name the places of the bars themselves.
 */
export function reinforcementOf(scene: Scene): readonly Reinforcement[] {
	const found = known.get(scene) ?? reckoned(scene);
	known.set(scene, found);
	return found;
}

function reckoned(scene: Scene): readonly Reinforcement[] {
	const { reference, enclosure } = scene.c;
	if (reference === null || !enclosure.dwelling || enclosure.newBuilt?.value !== true) return [];
	// What was bought for now says nothing of what may be fitted one day.
	const c = { ...scene.c, parts: {} };
	const counts = chosenFrom(DOCUMENTS, reference);
	const chosen = DOCUMENTS.map((pack) => ({ ...pack, rows: pack.rows.filter(({ id }) => counts(pack, id)) }));
	const wanted = wantedFor(DOCUMENTS, c, scene.bodies).filter(({ kind }) => HOLDING.includes(kind));
	const rows = bind(chosen, wanted, c).filter(isOfOne);
	const areas = wanted.flatMap((accessory): readonly Reinforcement[] => {
		const own = rows.filter(({ about }) => about[0] === accessory.id).map(({ row }) => row);
		const inside = areasOf(scene, accessory, own);
		// No part that is offered has the size asked for: every size counts.
		const rects =
			inside.length > 0
				? inside
				: areasOf(
						scene,
						accessory,
						own.filter((row) => !isOfSize(row))
					);
		return rects.map((area) => ({ ...area, of: [accessory.id], ...askedIn(accessory) }));
	});
	return areas.reduce(withArea, []);
}

/** A row about one mark that steers, whatever else there is. */
const isOfOne = ({ row, about }: BoundRow): boolean => about.length === 1 && row.advice !== true;

/** A row about the part alone, wherever it is. */
const isOfSize = ({ measure }: Row): boolean => MEASURES[measure].unit === 'mm' && MEASURES[measure].slope === 0;

function askedIn({ because }: Accessory): Pick<Reinforcement, 'document' | 'edition' | 'clauses'> {
	const asks = DOCUMENTS.flatMap(({ requires }) => requires).find(({ id }) => id === because);
	return { document: asks?.document ?? '', edition: asks?.edition ?? '', clauses: asks ? [asks.clause] : [] };
}

/** Where the fixings of an accessory could lie, wall by wall. */
function areasOf(
	scene: Scene,
	accessory: Accessory,
	rows: readonly Row[]
): readonly Pick<Reinforcement, 'wall' | 'rect'>[] {
	const walls = [...new Set(accessory.slots.map(({ wall }) => wall))];
	return walls.flatMap((wall) => {
		const slots = accessory.slots.filter((slot) => slot.wall === wall);
		const discs = slots.flatMap((slot) => discsOf(scene, accessory, { slot, rows }));
		return joined(discs).map((rect) => ({ wall, rect }));
	});
}

/** Areas with one more; what lies in another, or what another lies in, is one with it. */
function withArea(areas: readonly Reinforcement[], one: Reinforcement): readonly Reinforcement[] {
	const same = areas.find(({ wall, rect }) => wall === one.wall && (isIn(rect, one.rect) || isIn(one.rect, rect)));
	if (!same) return [...areas, one];
	const both = {
		...same,
		rect: around([same.rect, one.rect]),
		of: [...same.of, ...one.of],
		clauses: [...new Set([...same.clauses, ...one.clauses])]
	};
	return areas.map((area) => (area === same ? both : area));
}

/** Where the discs of all brackets of a part could lie on their wall, over all places the rows leave it. Units and frame: mm, wall frame. */
function discsOf(
	scene: Scene,
	accessory: Accessory,
	{ slot, rows }: { readonly slot: Slot; readonly rows: readonly Row[] }
): readonly Rect[] {
	const variant = variantOf(slot.variant);
	const { outline, brackets } = variant;
	const { from, to, bottom, top } = scene.room.walls[slot.wall];
	const [across, up] = [
		{ from: from - outline.x0, to: to - outline.x1 },
		{ from: bottom - outline.y0, to: top - outline.y1 }
	];
	if (across.from > across.to || up.from > up.to) return [];
	const at = (x: number, y: number): Mark => ({
		accessory,
		variant,
		stage: 'proposed',
		place: { ...slot, x: mm(x), y: mm(y), turn: 0 }
	});
	const slackOn = (on: (measure: Measure) => boolean) => {
		const asked = rows.filter((row) => on(MEASURES[row.measure]));
		return (mark: Mark): number => Math.min(Infinity, ...asked.map((row) => slackAt(scene, row, mark)));
	};
	const middle = (up.from + up.to) / 2;
	if (slackOn(({ slope }) => slope === 0)(at(across.from, middle)) < 0) return [];
	const [alongX, alongY] = [slackOn(({ along }) => along === 'x'), slackOn(({ along }) => along === 'y')];
	const xs = allowedIn((x) => alongX(at(x, middle)), across);
	if (!xs) return [];
	// A floor falls evenly along a wall: the least and the most height are at its ends.
	const ys = [xs.from, xs.to].flatMap((x) => allowedIn((y) => alongY(at(x, y)), up) ?? []);
	if (ys.length === 0) return [];
	const [low, high] = [Math.min(...ys.map((y) => y.from)), Math.max(...ys.map((y) => y.to))];
	return brackets
		.filter(({ kind }) => kind !== 'none' && kind !== 'rest')
		.map(({ x, y, radius }) => ({
			x0: mm(Math.max(from, xs.from + x - radius)),
			y0: mm(Math.max(bottom, low + y - radius)),
			x1: mm(Math.min(to, xs.to + x + radius)),
			y1: mm(Math.min(top, high + y + radius))
		}));
}

/** How far a row is met at its best; not at all short where it does not speak of such a mark. */
function slackAt(scene: Scene, row: Row, mark: Mark): number {
	const reading = readingOn(scene, row, mark);
	return reading === null ? Infinity : slackOf(row, reading).best;
}

/** The first and the last allowed place; undefined where there is none. */
function allowedIn(slack: (at: number) => number, { from, to }: Span): Span | undefined {
	const first = firstIn(slack, { from, to });
	const last = firstIn((at) => slack(-at), { from: -to, to: -from });
	return first === undefined || last === undefined ? undefined : { from: first, to: -last };
}

/** One step of the grid of lengths. Units: mm. */
const TICK = 1 / 320;

/** No slack grows faster than a mark moves: nothing is allowed nearer than a place falls short. */
function firstIn(slack: (at: number) => number, { from, to }: Span): number | undefined {
	let at = from;
	for (;;) {
		const short = -slack(at);
		if (short <= 0) return at;
		if (at >= to) return undefined;
		at = Math.min(to, at + Math.max(short, TICK));
	}
}

/** Rectangles that meet or lie on one level as one, until none do. */
function joined(rects: readonly Rect[]): readonly Rect[] {
	return rects.reduce<readonly Rect[]>((done, rect) => {
		const other = done.find((one) => apart(one, rect) < 0 || isLevel(one, rect));
		return other ? joined([...done.filter((one) => one !== other), around([other, rect])]) : [...done, rect];
	}, []);
}

const isLevel = (a: Rect, b: Rect): boolean => Math.abs(a.y0 - b.y0) < 1 && Math.abs(a.y1 - b.y1) < 1;

const isIn = (a: Rect, b: Rect): boolean => a.x0 >= b.x0 && a.x1 <= b.x1 && a.y0 >= b.y0 && a.y1 <= b.y1;
