import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { Entity, Spot } from './entity.ts';
import { line, rectangle } from './path.ts';
import type { View } from './view.ts';
import { endsOf } from './wall-ends.ts';
import type { Wording } from './labels.ts';

/** What is stepped over, with a level of its own on the sheet. Units: mm from the datum line. */
export interface Step {
	readonly name: 'rim' | 'edge';
	readonly level: number;
	/** Above the bathroom floor. */
	readonly height: number;
}

/** How wide a rim and an edge are drawn, and how far the sides of a bath run in. Units: mm of the wall. Source: ours. */
export const RIM = 50;
const SIDE = 80;

/** The rim of a bath or the edge of a tray; nothing in other rooms, or where its height is not recorded. */
export function stepOf({ scene: { c, room } }: Plan): Step | undefined {
	const { type } = c.enclosure;
	if (room.step === 0 || (type !== 'over-bath' && type !== 'step-in-tray')) return undefined;
	return {
		name: type === 'over-bath' ? 'rim' : 'edge',
		level: room.bathroomFloor + room.step,
		height: room.step
	};
}

/** The step cut through along a side: the whole bath, of a tray its edge at the entry. */
export function stepOn(
	plan: Plan,
	wall: WallId,
	view: View
): { entities: readonly Entity[]; words: readonly Wording[] } {
	const step = stepOf(plan);
	if (!step) return { entities: [], words: [] };
	return step.name === 'rim' ? bath(plan, wall, view, step) : trayEdge(plan, wall, view, step);
}

function bath({ scene: { room } }: Plan, wall: WallId, view: View, { level }: Step): ReturnType<typeof stepOn> {
	const { length } = room.walls[wall];
	const floor = (x: number) => room.floorUnder(wall, x, x).low;
	const { left, right } = endsOf(room, wall);
	const [from, to] = [RIM + SIDE, length - RIM - SIDE];
	const section: readonly Spot[] = [
		// On the side one steps in from, the outside of the bath goes down to the bathroom floor.
		...(left === 'entry' ? [view.spot(0, room.bathroomFloor)] : []),
		view.spot(0, level),
		view.spot(RIM, level),
		view.spot(from, floor(from)),
		view.spot(to, floor(to)),
		view.spot(length - RIM, level),
		view.spot(length, level),
		...(right === 'entry' ? [view.spot(length, room.bathroomFloor)] : [])
	];
	const [x0, x1, y] = [view.x(0), view.x(length), view.y(level)];
	const wishes = [0.5, 0.25, 0.75].map((share): Spot => [x0 + share * (x1 - x0), y - 2.6]);
	return {
		entities: [
			line('step/far-rim', 'detail', view.spot(RIM, level), view.spot(length - RIM, level)),
			line('step/section', 'section', ...section)
		],
		words: [{ id: 'step/word', text: 'rim of the bath', on: { x0, x1, y0: y, y1: y }, wishes }]
	};
}

/** Seen from the side the edge is cut at the entry; from inside the front it runs across the opening. */
function trayEdge({ scene: { room } }: Plan, wall: WallId, view: View, { level }: Step): ReturnType<typeof stepOn> {
	const { length } = room.walls[wall];
	const { x0, x1 } = room.opening;
	const { width } = room.footprint;
	const spans = {
		left: [0, RIM],
		right: [length - RIM, length],
		front: [width - x1, width - x0],
		back: [0, 0]
	} as const;
	const [from, to] = spans[wall];
	if (to - from <= 0) return { entities: [], words: [] };
	const box = { x0: view.x(from), x1: view.x(to), y0: view.y(level), y1: view.y(room.bathroomFloor) };
	return {
		entities: [rectangle('step/section', wall === 'front' ? 'section' : 'step-cut', box)],
		words: [{ id: 'step/word', text: 'edge of the tray', on: box }]
	};
}
