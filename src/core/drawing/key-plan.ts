import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { Block } from './block.ts';
import type { Box, Entity, Spot } from './entity.ts';
import { line, lines, rectangle } from './path.ts';
import { PT, write } from './type.ts';
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

/** The room from above: walls, the open entry, and the seat. */
export function roomPlan(plan: Plan, view: PlanView): readonly Entity[] {
	const { x0, y0, x1, y1 } = view.box;
	return [
		line('key/walls', 'plan', [x0, y1], [x0, y0], [x1, y0], [x1, y1]),
		line('key/entry', 'plan-entry', [x0, y1], [x1, y1]),
		write('key/entry/word', 'entry', [(x0 + x1) / 2, y1 + 4], { size: SMALL, tone: 'grey', anchor: 'middle' }),
		...seatOn(plan, view)
	];
}

function seatOn(plan: Plan, view: PlanView): readonly Entity[] {
	const seat = plan.marks.find((m) => m.variant.kind === 'seat');
	const { room } = plan.scene;
	if (!seat) return [];
	const { x } = seat.place;
	const half = seat.variant.length / 2;
	const { gap, depth } = seat.variant;
	const { footprint } = room;
	const box =
		seat.place.wall === 'left'
			? { x0: gap, x1: depth, y0: footprint.depth - x - half, y1: footprint.depth - x + half }
			: seat.place.wall === 'right'
				? { x0: footprint.width - depth, x1: footprint.width - gap, y0: x - half, y1: x + half }
				: { x0: x - half, x1: x + half, y0: gap, y1: depth };
	const [a, b] = [view.spot(box.x0, box.y0), view.spot(box.x1, box.y1)];
	const on = { x0: a[0], y0: a[1], x1: b[0], y1: b[1] };
	const middle: Spot = [(on.x0 + on.x1) / 2, (on.y0 + on.y1) / 2 + 0.33 * SMALL * PT];
	const word = write('key/seat/word', 'seat', middle, { size: SMALL, tone: 'grey', anchor: 'middle' });
	return [rectangle('key/seat', 'plan-thing', on), ...(word.width + 1 < on.x1 - on.x0 ? [word] : [])];
}

/** The key plan of an elevation: which wall, and how one stands before it. */
export function keyPlan(plan: Plan, wall: WallId, width: number): Block {
	const { room } = plan.scene;
	const seat = plan.marks.find((m) => m.variant.kind === 'seat');
	const size = 20;
	const words = wrapped(looking(room, wall), width - size - 4, 9);
	return {
		height: 31,
		draw: (x, y) => {
			const view = planView(room, [x + 0.7, y + 4.4], size);
			const { x0, y0, x1, y1 } = view.box;
			const wallLine: Record<WallId, readonly [Spot, Spot]> = {
				back: [
					[x0 - 0.35, y0],
					[x1 + 0.35, y0]
				],
				left: [
					[x0, y0 - 0.35],
					[x0, y1]
				],
				right: [
					[x1, y0 - 0.35],
					[x1, y1]
				],
				front: [
					[x0, y1],
					[x1, y1]
				]
			};
			return [
				...roomPlan(plan, view),
				write('key/back/word', 'back', [(x0 + x1) / 2, y0 - 1.6], { size: SMALL, tone: 'grey', anchor: 'middle' }),
				line('key/wall', 'plan-wall', ...wallLine[wall]),
				...arrow(view, wall, wall === seat?.place.wall ? seat.variant.depth / view.scale - 1 : 0),
				...words.map((text, i) =>
					write(`key/words/${String(i)}`, text, [x + size + 4, y + 7.4 + 4.06 * i], { size: 9 })
				)
			];
		}
	};
}

const TOWARD: Readonly<Record<WallId, Spot>> = { back: [0, -1], left: [-1, 0], right: [1, 0], front: [0, 1] };

/** An arrow that points at the wall from inside, clear of the seat's word. */
function arrow({ box }: PlanView, wall: WallId, clear: number): readonly Entity[] {
	const [cx, cy] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
	const [dx, dy]: Spot = TOWARD[wall];
	const long = 6.4;
	const off = 2.2;
	// On the seat's side it stops before the seat.
	const at = { back: [cx, box.y0 + off], left: [box.x0 + off, cy], right: [box.x1 - off, cy], front: [cx, box.y1 - off] } as const;
	const tip: Spot = [at[wall][0] - dx * clear, at[wall][1] - dy * clear];
	const wing = (side: number): Spot => [tip[0] - 1.8 * dx + side * 1.1 * dy, tip[1] - 1.8 * dy + side * 1.1 * dx];
	return [
		lines('key/arrow', 'detail', [
			[[tip[0] - long * dx, tip[1] - long * dy], tip],
			[wing(1), tip, wing(-1)]
		])
	];
}

function looking(room: Room, wall: WallId): string {
	if (wall === 'back') return 'You look in from the entry. Left here is left on the wall.';
	const way = wall === room.seatWall ? 'You look towards the seat.' : 'You look away from the seat.';
	return `${way} Left here is left on the wall.`;
}
