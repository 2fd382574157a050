import { toPlan, WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { overlap, widened, type Box, type Entity, type Spot } from '../entity.ts';
import { figure } from '../figure.ts';
import { boxAt, freeSpot } from '../free-spot.ts';
import { swungOut } from '../key-plan.ts';
import { line, lines, rectangle, rounded, shape } from '../path.ts';
import { closingIn, drainBox, drainIn } from '../plan-floor.ts';
import { boxRound } from '../seat-plan.ts';
import { settingOut, type SetOut } from '../setting-out.ts';
import { spread } from '../spread.ts';
import { RIM, stepOf } from '../step.ts';
import { TABLE_TAG, tag } from '../tag.ts';
import { boxOf, PT, widthOf, write } from '../type.ts';
import { endsOf, spanOf } from '../wall-ends.ts';
import { fall } from './fall.ts';
import { coveredBy, thingsFromAbove, type FloorView, type Free } from './floor-things.ts';
import { OUT, TAG_SIZE, wallTagAt } from './wall-tag.ts';

/** How thick a cut wall is drawn, and how far the letters and the dimensions stand off its face. Units: mm of the sheet. */
const CUT = 2.4;
const LETTERS = 6.6;
const DIMENSION = 12.4;
const PITCH = 2 * TABLE_TAG + 0.8;
const SMALL = 8.5;

/** What a floor plan needs over, under and to the right of the room on its sheet. Units: mm of the sheet. */
export const AROUND = { right: 9.6, above: 20, below: 17 } as const;
const FIGURE = { size: 14, weight: 'semibold' } as const;

/** A length in the other unit, in brackets: fractions need larger type. */
const OTHER = { mm: { unit: 'in', size: 11 }, in: { unit: 'mm', size: 9.5 } } as const;
const inBrackets = (length: number, unit: LengthUnit): string => `(${figure(length, OTHER[unit].unit)})`;

/** What it needs to the left, where its depth is told. Units: mm of the sheet. */
export function leftOf({ scene: { room } }: Plan, unit: LengthUnit): number {
	const { depth } = room.footprint;
	const one = widthOf(figure(depth, unit), FIGURE.size, FIGURE.weight);
	return DIMENSION + 2.4 + Math.max(one, widthOf(inBrackets(depth, unit), OTHER[unit].size));
}

/** What is drawn: the sheet that shows each wall, and figures in one unit or in both. */
export interface Floor {
	readonly plan: Plan;
	readonly unit: LengthUnit;
	readonly both: boolean;
	readonly sheets: ReadonlyMap<WallId, number>;
}

/** The room on a sheet at a scale, its inside upper left corner at a spot. */
export function floorView({ footprint }: Plan['scene']['room'], scale: number, [x0, y0]: Spot): FloorView {
	const box = { x0, y0, x1: x0 + footprint.width / scale, y1: y0 + footprint.depth / scale };
	return { box, scale, spot: (x, y) => [x0 + x / scale, y0 + y / scale] };
}

/** How far what stands before the entry reaches below the room: letters of the front wall, a door. Units: mm of the sheet. */
export function beforeEntry(plan: Plan, scale: number): number {
	const front = plan.marks.some(({ place }) => place.wall === 'front');
	return Math.max(front ? LETTERS + TABLE_TAG : CUT, swungOut(plan, { scale }));
}

/**
 * The room from above to scale: walls cut, entry and what closes it, drain, fall, everything that is fitted, its letters
 * outside its wall, the tag of each wall with the sheet that shows it, and the inside dimensions.
 * Units and frame: mm of the sheet. Shape: no word lies on another.
 */
export function floorPlan(on: Floor, view: FloorView): readonly Entity[] {
	const { plan } = on;
	const { room, c } = plan.scene;
	const sets = settingOut(plan);
	const things = thingsFromAbove(sets, room, view);
	const drain = drainIn(c.enclosure, view.spot);
	const covered = drainBox(c.enclosure, view.spot);
	const closing = closingIn(c.enclosure, room, view.spot);
	const taken: Box[] = [...coveredBy(things), ...coveredBy(closing), ...(covered ? [widened(covered, 0.6)] : [])];
	const words = things.flatMap((e) => (e.kind === 'text' ? [widened(boxOf(e), 0.6)] : []));
	const within = widened(view.box, -1);
	return [
		...WALL_IDS.flatMap((wall) => side(plan, wall, view)),
		...step(plan, view),
		...drain,
		...closing,
		...things,
		...WALL_IDS.flatMap((wall) => letters(plan, { wall, sets }, view)),
		...[...on.sheets].flatMap(([wall, sheet]) => wallTag(plan, { wall, sheet }, { view, taken, words, within })),
		...drainWord(covered, { taken, within }),
		...fall(plan, { view, taken, within }),
		...entry(plan, view),
		...dimensions(on, view)
	];
}

/** A wall as far as it stands, cut, its face a thick line; dashed where the side is open. */
function side(plan: Plan, wall: WallId, view: FloorView): readonly Entity[] {
	const { room } = plan.scene;
	const at = (along: number, off: number): Spot => {
		const [x, y] = toPlan(wall, [along, 0], -off * view.scale, room.footprint);
		return view.spot(x, y);
	};
	const { stands, length } = room.walls[wall];
	const { from, to } = spanOf(room, wall);
	const ends = endsOf(room, wall);
	// Round an inside corner the cut goes on.
	const past = (end: 'left' | 'right'): number => (ends[end] === 'corner' ? CUT * view.scale : 0);
	const open = stands ? [[0, from] as const, [to, length] as const] : [[0, length] as const];
	return [
		...(stands
			? [
					rectangle(`floor/cut/${wall}`, 'cut', boxRound(at(from - past('left'), 0), at(to + past('right'), CUT))),
					line(`floor/face/${wall}`, 'outline', at(from, 0), at(to, 0))
				]
			: []),
		...open
			.filter(([a, b]) => b > a)
			.map(([a, b], i) => line(`floor/open/${wall}/${String(i)}`, 'plan-entry', at(a, 0), at(b, 0)))
	];
}

/** The inside of a bath, or the edge of a tray along the entry. */
function step(plan: Plan, { box, spot, scale }: FloorView): readonly Entity[] {
	const { opening, footprint } = plan.scene.room;
	switch (stepOf(plan)?.name) {
		case 'rim':
			return [rounded('floor/rim', 'plan-thing', widened(box, -RIM / scale), 3)];
		case 'edge':
			return [
				line(
					'floor/edge',
					'plan-thing',
					spot(opening.x0, footprint.depth - RIM),
					spot(opening.x1, footprint.depth - RIM)
				)
			];
		case undefined:
			return [];
	}
}

/** The letters of the marks of a wall in a row outside it, each with a line to its place. */
function letters(
	plan: Plan,
	{ wall, sets }: { readonly wall: WallId; readonly sets: readonly SetOut[] },
	view: FloorView
): readonly Entity[] {
	const { footprint } = plan.scene.room;
	const level = wall === 'back' || wall === 'front';
	const here = sets
		.filter((s) => s.mark.place.wall === wall)
		.map((s) => {
			const xs = s.points.map(([x]) => x);
			const [x, y] = toPlan(wall, [(Math.min(...xs) + Math.max(...xs)) / 2, 0], 0, footprint);
			const face = view.spot(x, y);
			return { s, face, at: face[level ? 0 : 1] };
		})
		.toSorted((a, b) => a.at - b.at);
	const places = spread(
		here.map(({ at }) => ({ at, before: PITCH / 2, after: PITCH / 2 })),
		(level ? view.box.x0 : view.box.y0) - 1,
		(level ? view.box.x1 : view.box.y1) + 1
	);
	const [dx, dy] = OUT[wall];
	return here.flatMap(({ s, face: [fx, fy] }, i) => {
		const at = places[i] ?? 0;
		const spot: Spot = level ? [at, fy + dy * LETTERS] : [fx + dx * LETTERS, at];
		const out = CUT + 1;
		const knee: Spot = [fx + dx * out, fy + dy * out];
		return [
			{ ...line(`floor/${s.id}/at`, 'leader', [fx, fy], knee, spot), about: s.id },
			...tag(`floor/${s.id}`, s, spot, TABLE_TAG)
		];
	});
}

/** How far the tag of a wall stands from it at best, and the shares of the wall it is tried at. */
const OFF = [9, 14, 20, 28] as const;
const SHARES = [0.5, 0.38, 0.62, 0.26, 0.74, 0.14, 0.86] as const;

function wallTag(
	plan: Plan,
	on: { readonly wall: WallId; readonly sheet: number },
	{ view, taken, words, within }: Free & { readonly view: FloorView; readonly words: Box[] }
): readonly Entity[] {
	const { room } = plan.scene;
	const { from, to } = spanOf(room, on.wall);
	const wishes = OFF.flatMap((off) =>
		SHARES.map((share): Spot => {
			const [x, y] = toPlan(on.wall, [from + share * (to - from), 0], off * view.scale, room.footprint);
			return view.spot(x, y);
		})
	);
	const square = { width: TAG_SIZE, height: TAG_SIZE, wishes, within };
	// In a room that is full it stands on a thing, never on a word.
	const spot = freeSpot({ ...square, taken }) ?? freeSpot({ ...square, taken: words }) ?? wishes[0] ?? [0, 0];
	const box = boxAt(spot, square);
	taken.push(box);
	words.push(box);
	return wallTagAt(`floor/wall/${on.wall}`, on, spot);
}

/** The word of the drain beside it, where there is room. */
function drainWord(drain: Box | undefined, { taken, within }: Free): readonly Entity[] {
	if (!drain) return [];
	const width = widthOf('drain', SMALL);
	const y = (drain.y0 + drain.y1) / 2;
	const off = width / 2 + 1.4;
	const middle = (drain.x0 + drain.x1) / 2;
	const wishes: readonly Spot[] = [
		[drain.x1 + off, y],
		[drain.x0 - off, y],
		[middle, drain.y1 + 3],
		[middle, drain.y0 - 3]
	];
	const free = wishes.find(([x, at]) => {
		const box = { x0: x - width / 2, x1: x + width / 2, y0: at - 1.6, y1: at + 1.6 };
		const inside = box.x0 >= within.x0 && box.x1 <= within.x1 && box.y0 >= within.y0 && box.y1 <= within.y1;
		return inside && !taken.some((other) => overlap(box, other));
	});
	if (!free) return [];
	const hand = { size: SMALL, tone: 'grey', anchor: 'middle' } as const;
	const word = write('floor/drain/word', 'drain', [free[0], free[1] + 0.33 * SMALL * PT], hand);
	taken.push(boxOf(word));
	return [word];
}

/** The entry by its word, and F, the floor heights are told above. */
function entry(plan: Plan, { spot, scale }: FloorView): readonly Entity[] {
	const { opening, footprint } = plan.scene.room;
	const [x, y] = spot((opening.x0 + opening.x1) / 2, footprint.depth);
	const at = y + beforeEntry(plan, scale) + 5;
	return [
		shape('floor/f/sign', 'solid', [x - 11, at], [x - 12.3, at - 2.3], [x - 9.7, at - 2.3]),
		write('floor/f', 'floor F', [x - 8.6, at], { size: 10.5, weight: 'semibold' }),
		write('floor/entry', 'entry', [x + 6, at], { size: 10, tone: 'grey' })
	];
}

/** Inside width over the room, inside depth to its left. */
function dimensions({ plan, unit, both }: Floor, { box }: FloorView): readonly Entity[] {
	const { width, depth } = plan.scene.room.footprint;
	const [y, x] = [box.y0 - DIMENSION, box.x0 - DIMENSION];
	const other = { size: OTHER[unit].size, tone: 'grey' } as const;
	const [cx, cy] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
	const across = write('floor/width', figure(width, unit), [cx, y - 1.4], { ...FIGURE, anchor: 'middle' });
	const ends = (ticks: readonly Spot[]): readonly (readonly Spot[])[] =>
		ticks.map(([u, v]) => [
			[u - 1.2, v + 1.2],
			[u + 1.2, v - 1.2]
		]);
	return [
		line('floor/width/line', 'dimension', [box.x0, y], [box.x1, y]),
		lines(
			'floor/width/ticks',
			'tick',
			ends([
				[box.x0, y],
				[box.x1, y]
			])
		),
		across,
		line('floor/depth/line', 'dimension', [x, box.y0], [x, box.y1]),
		lines(
			'floor/depth/ticks',
			'tick',
			ends([
				[x, box.y0],
				[x, box.y1]
			])
		),
		write('floor/depth', figure(depth, unit), [x - 1.8, cy + 1.6], { ...FIGURE, anchor: 'end' }),
		...(both
			? [
					write('floor/width/other', inBrackets(width, unit), [cx + across.width / 2 + 2.4, y - 1.4], other),
					write('floor/depth/other', inBrackets(depth, unit), [x - 1.8, cy + 6.6], { ...other, anchor: 'end' })
				]
			: [])
	];
}
