import type { Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import { INTO, oppositeWall, toPlan, WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { Block } from './block.ts';
import { overlap, type Box, type Entity, type Spot } from './entity.ts';
import { entryClosing } from './entry-closing.ts';
import { circle, line, lines, rectangle, rounded } from './path.ts';
import { closingIn, drainBox, drainIn } from './plan-floor.ts';
import { seatFromAbove } from './seat-plan.ts';
import type { Reader } from './sheet.ts';
import { stepOf } from './step.ts';
import { boxOf, write } from './type.ts';
import { BESIDE, spanOf } from './wall-ends.ts';
import { wrapped } from './wrap.ts';

const SMALL = 8.5;

/** Where a plan of the room lies on a sheet. Units: mm. */
export interface PlanView {
	readonly box: Box;
	readonly spot: (x: number, y: number) => Spot;
	readonly scale: number;
}

/** A plan of the room with its upper left corner at a place, its greater side `size` long. Units: mm of the sheet. */
export function planView({ footprint }: Room, [x0, y0]: Spot, size: number): PlanView {
	const scale = Math.max(footprint.width, footprint.depth) / size;
	const box = { x0, y0, x1: x0 + footprint.width / scale, y1: y0 + footprint.depth / scale };
	return { box, scale, spot: (x, y) => [x0 + x / scale, y0 + y / scale] };
}

/**
 * The room from above: walls as far as they stand, open sides and the entry dashed, what closes it, what is stepped over,
 * drain, seat, posts and rails folded down. The word of the entry stands `clear` lower than usual. Units: mm of the sheet.
 */
export function roomPlan(plan: Plan, view: PlanView, clear = 0): readonly Entity[] {
	const { room, c } = plan.scene;
	const { x0, x1 } = room.opening;
	const middle = view.spot((x0 + x1) / 2, room.footprint.depth);
	const drain = drainBox(c.enclosure, view.spot);
	const closing = entryClosing(c.enclosure, room);
	// A leaf leaves its opening open.
	const open = closing === undefined || closing.kind === 'hung';
	return [
		...WALL_IDS.flatMap((wall) => sideOf(room, wall, view, wall !== 'front' || open)),
		...stepIn(plan, view),
		...drainIn(c.enclosure, view.spot),
		...closingIn(c.enclosure, room, view.spot),
		write('key/entry/word', 'entry', [middle[0], middle[1] + 4 + Math.max(clear, swungOut(plan, view))], {
			size: SMALL,
			tone: 'grey',
			anchor: 'middle'
		}),
		...plan.marks.flatMap((mark) => thingIn(room, mark, view)).flatMap((e) => patched(e, drain))
	];
}

/** How far a door stands out from the entry. Units: mm of the sheet. */
export function swungOut({ scene: { c, room } }: Plan, { scale }: Pick<PlanView, 'scale'>): number {
	const closing = entryClosing(c.enclosure, room);
	return closing?.kind === 'hung' ? Math.max(0, closing.leaf.furthest[1] - room.entryLine) / scale : 0;
}

/** A word over the drain stands on paper. */
function patched(e: Entity, drain: Box | undefined): readonly Entity[] {
	if (e.kind === 'path' || !drain || !overlap(boxOf(e), drain)) return [e];
	return [rectangle(`${e.id}/patch`, 'patch', boxOf(e)), e];
}

/** A part of a side on the plan, wall frame in. */
function stretch(room: Room, wall: WallId, [from, to]: readonly [number, number]): (view: PlanView) => [Spot, Spot] {
	const [a, b] = [from, to].map((x) => toPlan(wall, [x, 0], 0, room.footprint));
	return ({ spot }) => [spot(a?.[0] ?? 0, a?.[1] ?? 0), spot(b?.[0] ?? 0, b?.[1] ?? 0)];
}

function sideOf(room: Room, wall: WallId, view: PlanView, dashed: boolean): readonly Entity[] {
	const { stands, length } = room.walls[wall];
	const { from, to } = spanOf(room, wall);
	const open = (
		stands
			? [
					[0, from],
					[to, length]
				]
			: [[0, length]]
	) as readonly (readonly [number, number])[];
	return [
		...open
			.filter(([a, b]) => dashed && b > a)
			.map((part, i) => line(`key/open/${wall}/${String(i)}`, 'plan-entry', ...stretch(room, wall, part)(view))),
		...(stands ? [line(`key/side/${wall}`, 'plan', ...stretch(room, wall, [from, to])(view))] : [])
	];
}

/** The inside of a bath, or the edge of a tray along the entry. */
function stepIn(plan: Plan, view: PlanView): readonly Entity[] {
	const step = stepOf(plan);
	if (!step) return [];
	const { x0, y0, x1, y1 } = view.box;
	if (step.name === 'rim') {
		const inside = { x0: x0 + 1.1, y0: y0 + 1.1, x1: x1 - 1.1, y1: y1 - 1.1 };
		return [rounded('key/rim', 'plan-thing', inside, 1.5)];
	}
	const { opening, footprint } = plan.scene.room;
	const [a, b] = [view.spot(opening.x0, footprint.depth), view.spot(opening.x1, footprint.depth)];
	return [line('key/edge', 'plan-thing', [a[0], a[1] - 1], [b[0], b[1] - 1])];
}

/** A seat with what holds it off its wall, a post, or a rail folded down, from above. */
function thingIn(room: Room, mark: Mark, view: PlanView): readonly Entity[] {
	const { variant, accessory, place } = mark;
	const id = `key/${accessory.id}`;
	if (variant.stands === 'floor-and-ceiling') {
		const [x, y] = toPlan(place.wall, [place.x, 0], variant.gap + variant.diameter / 2, room.footprint);
		return [circle(id, 'plan-thing', view.spot(x, y), 0.8)];
	}
	const corner = ([along, out]: readonly [number, number]): Spot => {
		const [x, y] = toPlan(place.wall, [place.x + along, 0], out, room.footprint);
		return view.spot(x, y);
	};
	if (variant.kind === 'fold-down-rail') {
		return [line(id, 'plan-swing', corner([0, 0]), corner([0, variant.depth]))];
	}
	return variant.kind === 'seat' ? seatFromAbove(room, mark, { id, layer: 'plan-thing', spot: view.spot }) : [];
}

/** The key plan of an elevation: which wall, and how one stands before it. */
export function keyPlan(plan: Plan, wall: WallId, { width, reader }: { width: number; reader: Reader }): Block {
	const { room } = plan.scene;
	const seat = seatOn(plan, wall);
	const size = 20;
	const words = wrapped(looking(plan, wall, reader), width - size - 4, 9);
	const { from, to } = spanOf(room, wall);
	const out = swungOut(plan, planView(room, [0, 0], size));
	return {
		height: Math.max(31 + out, 8.4 + 4.06 * words.length),
		draw: (x, y) => {
			const view = planView(room, [x + 0.7, y + 4.4], size);
			const { x0, x1, y0 } = view.box;
			return [
				...roomPlan(plan, view),
				write('key/back/word', 'back', [(x0 + x1) / 2, y0 - 1.6], { size: SMALL, tone: 'grey', anchor: 'middle' }),
				line(
					'key/wall',
					room.walls[wall].stands ? 'plan-wall' : 'plan-wall-open',
					...stretch(room, wall, [from, to])(view)
				),
				...arrow(view, wall, seat ? seat.variant.depth / view.scale - 1 : 0),
				...words.map((text, i) =>
					write(`key/words/${String(i)}`, text, [x + size + 4, y + 7.4 + 4.06 * i], { size: 9 })
				)
			];
		}
	};
}

/** The seat that is on a wall. */
const seatOn = ({ marks }: Plan, wall: WallId): Mark | undefined =>
	marks.find(({ variant, place }) => variant.kind === 'seat' && variant.stands !== 'rims' && place.wall === wall);

const TOWARD: Readonly<Record<WallId, Spot>> = { back: [0, -1], left: [-1, 0], right: [1, 0], front: [0, 1] };

/** An arrow that points at the wall from inside, clear of the seat's word. */
function arrow({ box }: PlanView, wall: WallId, clear: number): readonly Entity[] {
	const [cx, cy] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
	const [dx, dy]: Spot = TOWARD[wall];
	const off = 2.2;
	const run = (dx === 0 ? box.y1 - box.y0 : box.x1 - box.x0) - off - clear - 1;
	const long = Math.min(6.4, Math.max(2.4, run));
	// On the seat's side it stops before the seat.
	const at = {
		back: [cx, box.y0 + off],
		left: [box.x0 + off, cy],
		right: [box.x1 - off, cy],
		front: [cx, box.y1 - off]
	} as const;
	const tip: Spot = [at[wall][0] - dx * clear, at[wall][1] - dy * clear];
	const wing = (side: number): Spot => [tip[0] - 1.8 * dx + side * 1.1 * dy, tip[1] - 1.8 * dy + side * 1.1 * dx];
	return [
		lines('key/arrow', 'detail', [
			[[tip[0] - long * dx, tip[1] - long * dy], tip],
			[wing(1), tip, wing(-1)]
		])
	];
}

const AT = { left: 'You look to the left as you come in.', right: 'You look to the right as you come in.' } as const;

function looking(plan: Plan, wall: WallId, reader: Reader): string {
	const { walls } = plan.scene.room;
	const open = WALL_IDS.some((one) => one !== 'front' && !walls[one].stands) ? ' A dashed side is open.' : '';
	return `${wayOf(plan, wall)} ${leftHere(plan, wall, reader)}${open}${notHung(plan)}`;
}

/** Which way round a wall lies for somebody on the seat: by her left and right beside her, by before and behind along her. */
function leftHere({ marks }: Plan, wall: WallId, reader: Reader): string {
	const seat = marks.find(({ variant }) => variant.kind === 'seat' && variant.stands !== 'rims');
	if (!seat) return 'Left here is left on the wall.';
	const [x, y] = INTO[seat.place.wall];
	// To the right along a wall, as one faces it from inside.
	const [u, v] = INTO[BESIDE[wall].left];
	const along = x * u + y * v;
	const who = reader === 'therapist' ? 'the client' : 'whoever sits on the seat';
	if (along !== 0) return `Left here is left on the wall, ${along > 0 ? 'behind' : 'before'} ${who}.`;
	// Plan y runs to the front, so that what is to her right is a turn clockwise from where she faces.
	const side = x * v - y * u > 0 ? 'left' : 'right';
	const whose = reader === 'therapist' ? `the client\u2019s ${side}` : `the ${side} of ${who}`;
	return `Left here is left on the wall: ${whose}.`;
}

/** A door is drawn closed where its side is not known. */
const notHung = ({ scene: { c, room } }: Plan): string =>
	entryClosing(c.enclosure, room)?.kind === 'not hung' ? ' How the door is hung is not known.' : '';

/** Which way one looks at a wall, in a sentence. */
export function wayOf(plan: Plan, wall: WallId): string {
	if (wall === 'back') return 'You look in from the entry.';
	if (seatOn(plan, wall)) return 'You look towards the seat.';
	if (seatOn(plan, oppositeWall(wall))) return 'You look away from the seat.';
	return wall === 'front' ? 'You look out from inside.' : AT[wall];
}
