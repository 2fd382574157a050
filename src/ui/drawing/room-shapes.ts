import type { Mark } from '#core/case/accessory.ts';
import type { Enclosure } from '#core/case/record.ts';
import type { Room } from '#core/enclosure/room.ts';
import { entryClosing } from '#core/drawing/entry-closing.ts';
import { figure } from '#core/drawing/figure.ts';
import { backRestPlan, heldOff, seatPlan } from '#core/drawing/seat-plan.ts';
import { INTO, toPlan, WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { isSteppedOver, stepName } from '#ui/state/room-words.ts';
import { floorShapes } from './floor-shapes.ts';
import { drawn, path, rect, text, type Px, type Shape } from './shape.ts';
import type { GripView } from './thing-boxes.ts';

/** A room from above. Units: px for the size. */
export interface RoomAsked {
	readonly room: Room;
	readonly type: Enclosure['type'];
	/** What the survey tells of its entry and its floor. */
	readonly survey?: Pick<Enclosure, 'closing' | 'entryWidth' | 'drain'>;
	readonly marks: readonly Mark[];
	/** The side that is looked at elsewhere on the screen. */
	readonly wall?: WallId | undefined;
	/** Sizes are written beside it. */
	readonly unit?: LengthUnit | undefined;
	readonly width: number;
	readonly height: number;
}

/** Room beside the plan, px: figures above and to the left, the entry and its words below. */
const BESIDE = {
	sized: { left: 76, right: 22, top: 40, bottom: 52 },
	bare: { left: 14, right: 14, top: 14, bottom: 30 }
};
const EARTH = 9;
/** How thick what is stepped over is drawn, and how far a bath's inside lies from its rim, mm. */
const STEP_THICK = 60;

/** How a room lies on the screen from above. Its y goes up toward the back wall, where it is 0. */
export interface PlanView extends GripView {
	/** Where a point of the plan is. Frame: plan frame in. */
	readonly at: (x: number, y: number) => Px;
}

/** The room from above, the back wall on top: walls, open sides, entry, what is stepped over, and what stands out. */
export function roomShapes(asked: RoomAsked, view = planView(asked)): readonly Shape[] {
	const { room, marks, wall } = asked;
	const seats = marks.filter(({ variant }) => variant.kind === 'seat');
	return [
		...(asked.type === 'over-bath' ? [bath(room, view)] : []),
		...WALL_IDS.flatMap((id) => sideShapes(room, id, view)),
		...entryShapes(asked, view),
		...(asked.survey ? floorShapes(asked.survey, room, view.at) : []),
		...seats.flatMap((mark) => seatShapes(mark, room, view)),
		...marks.filter((mark) => !seats.includes(mark)).map((mark) => markShape(mark, room, view)),
		...(wall ? lookShapes(room, wall, view) : []),
		...(asked.unit ? sizeShapes(room, asked.unit, view) : [])
	];
}

/** The largest scale at which the room stands in the space given, with its door. */
export function planView(asked: RoomAsked): PlanView {
	const { room, unit, width, height } = asked;
	const beside = unit ? BESIDE.sized : BESIDE.bare;
	const [wide, deep] = [width - beside.left - beside.right, height - beside.top - beside.bottom];
	const scale = Math.max(0.01, Math.min(wide / room.footprint.width, deep / (room.footprint.depth + swungOut(asked))));
	const left = beside.left + (wide - room.footprint.width * scale) / 2;
	return {
		width,
		height,
		scale,
		left: 0,
		right: width,
		top: 0,
		bottom: height,
		x: (x) => left + x * scale,
		y: (up) => beside.top - up * scale,
		at: (x, y) => [left + x * scale, beside.top + y * scale]
	};
}

/** How far a door stands out from the entry. Units: mm. */
function swungOut({ survey, room }: RoomAsked): number {
	const closing = survey && entryClosing(survey, room);
	return closing?.kind === 'hung' ? Math.max(0, closing.leaf.furthest[1] - room.entryLine) : 0;
}

function onWall(room: Room, wall: WallId, view: PlanView): (x: number, off: number) => Px {
	return (x, off) => {
		const [px, py] = toPlan(wall, [x, 0], off, room.footprint);
		return view.at(px, py);
	};
}

function sideShapes(room: Room, id: WallId, view: PlanView): readonly Shape[] {
	const { stands, from, to, length } = room.walls[id];
	const at = onWall(room, id, view);
	if (stands) {
		const thick = EARTH / view.scale;
		return [
			rect(`room/${id}/earth`, 'earth', at(from, 0), at(to, -thick)),
			path(`room/${id}`, 'cut', [at(from, 0), at(to, 0)])
		];
	}
	if (id === 'front') return [];
	const [x, y] = at(length / 2, 0);
	const [ix, iy] = INTO[id];
	const kind = ix === 0 ? 't-note soft halo mid' : ix > 0 ? 't-note soft halo' : 't-note soft halo end';
	return [
		path(`room/${id}`, 'hidden', [at(0, 0), at(length, 0)]),
		text(`room/${id}/open`, kind, [x + ix * 8, y + (iy > 0 ? 20 : 5)], 'open')
	];
}

/** Where one comes in, with what is stepped over. */
function entryShapes(asked: RoomAsked, view: PlanView): readonly Shape[] {
	const { room, type, unit } = asked;
	const { opening, footprint, step } = room;
	if (opening.x1 <= opening.x0) return [];
	const [a, b] = [view.at(opening.x0, footprint.depth), view.at(opening.x1, footprint.depth)];
	const thick = STEP_THICK * view.scale;
	const words = isSteppedOver(room)
		? `entry over the ${stepName(type)}${unit ? `, ${figure(step, unit)}` : ''}`
		: 'entry';
	const edge =
		isSteppedOver(room) && type !== 'over-bath'
			? [rect('room/step', 'fine', [a[0], a[1] - thick], b)]
			: [path('room/entry', isSteppedOver(room) ? 'fine' : 'hidden', [a, b])];
	return [
		...edge,
		text('room/entry-words', 't-note halo mid', [(a[0] + b[0]) / 2, a[1] + 21 + swungOut(asked) * view.scale], words)
	];
}

/** The inside of a bath. */
function bath({ footprint: { width, depth } }: Room, view: PlanView): Shape {
	const edge = STEP_THICK;
	return rect('room/bath', 'fine2', view.at(edge, edge), view.at(width - edge, depth - edge), 140 * view.scale);
}

function seatShapes({ accessory, place, variant }: Mark, room: Room, view: PlanView): readonly Shape[] {
	const at = onWall(room, place.wall, view);
	const { outline, gap, depth, stands } = variant;
	const off = stands === 'rims' ? { near: 0, far: room.footprint.depth } : { near: gap, far: depth };
	const kind = accessory.when === 'later' ? 'thing later' : 'thing';
	const [a, b] = [at(place.x + outline.x0, off.near), at(place.x + outline.x1, off.far)];
	const [cx, cy] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
	const [dx, dy] = INTO[room.seatWall];
	const tip = 11;
	const rest = backRestPlan(variant).map(([along, out]) => at(place.x + along, out));
	return [
		...heldOff(variant).map((along, i) =>
			path(`room/seat/held/${String(i)}`, 'fine', [at(place.x + along, 0), at(place.x + along, gap)])
		),
		...(rest.length > 0 ? [path('room/seat/back-rest', kind, rest, 'closed')] : []),
		variant.arm
			? path(
					'room/seat',
					kind,
					seatPlan(variant).map(([along, out]) => at(place.x + along, out)),
					'closed'
				)
			: rect('room/seat', kind, a, b, 3),
		// Which way who sits there faces.
		drawn(
			'room/faces',
			'ink',
			`M${String(cx + dx * tip)} ${String(cy + dy * tip)}L${String(cx - dy * 7)} ${String(cy + dx * 7)}L${String(cx + dy * 7)} ${String(cy - dx * 7)}Z`
		)
	];
}

/** A part along its wall, as far as it stands out. */
function markShape({ accessory, place, variant }: Mark, room: Room, view: PlanView): Shape {
	const at = onWall(room, place.wall, view);
	const half = 4 / view.scale;
	const [x0, x1] = [place.x + variant.outline.x0, place.x + variant.outline.x1];
	const narrow = x1 - x0 < 2 * half;
	const far = Math.max(variant.kind === 'fold-down-rail' ? variant.depth : variant.gripOff + 16, 2 * half);
	const [a, b] = narrow ? [place.x - half, place.x + half] : [x0, x1];
	return rect(
		`room/mark/${accessory.id}`,
		accessory.when === 'later' ? 'fine later' : 'fine',
		at(a, variant.gap),
		at(b, far),
		2
	);
}

/** From where the side that is drawn elsewhere is looked at. */
function lookShapes(room: Room, wall: WallId, view: PlanView): readonly Shape[] {
	const { from, to } = room.walls[wall];
	const at = onWall(room, wall, view);
	const [x, y] = at((from + to) / 2, 0);
	const [dx, dy] = INTO[wall];
	const p = (off: number, side: number): string =>
		`${String(x + dx * off - dy * side)} ${String(y + dy * off + dx * side)}`;
	return [
		path('room/looked', 'looked', [at(from, 0), at(to, 0)]),
		drawn('room/look', 'line', `M${p(40, 0)}L${p(12, 0)}M${p(20, 7)}L${p(12, 0)}L${p(20, -7)}`)
	];
}

function sizeShapes(room: Room, unit: LengthUnit, view: PlanView): readonly Shape[] {
	const { width, depth } = room.footprint;
	const [a, b, c] = [view.at(0, 0), view.at(width, 0), view.at(0, depth)];
	const up = a[1] - EARTH - 10;
	const out = a[0] - EARTH - 12;
	const tick = (x: number, y: number): string => `M${String(x - 5)} ${String(y + 5)}l10 -10`;
	return [
		drawn('room/wide', 'fine', `M${String(a[0])} ${String(up)}H${String(b[0])}${tick(a[0], up)}${tick(b[0], up)}`),
		text('room/wide/figure', 't-text strong mid halo', [(a[0] + b[0]) / 2, up - 6], `${figure(width, unit)} ${unit}`),
		drawn('room/deep', 'fine', `M${String(out)} ${String(a[1])}V${String(c[1])}${tick(out, a[1])}${tick(out, c[1])}`),
		text('room/deep/figure', 't-text strong end halo', [out - 6, (a[1] + c[1]) / 2 + 6], figure(depth, unit))
	];
}
