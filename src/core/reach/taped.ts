import type { Body } from '#core/body/body.ts';
import { lengthSeen } from '#core/body/estimate.ts';
import type { Side } from '#core/body/hands.ts';
import { INTO, toPlan, type Footprint } from '#core/geometry/frame.ts';
import { dot, leftOf, less, type Vec } from '#core/geometry/vec.ts';
import { mm } from '#core/units/length.ts';
import type { ReachKind } from './arm.ts';

/** What has to be known of a room to tell where she sat. Units and frame: mm, plan frame, levels from the datum line. */
export interface TestRoom {
	readonly footprint: Footprint;
	readonly bathroomFloor: number;
	readonly floorAt: (x: number, y: number) => number;
}

/** A taped point as it lies from who sat. */
export interface Taped {
	readonly id: string;
	/**
	 * Ahead of the plane of her back, from her centre line toward this hand, above the loaded seat.
	 * Units: mm. Shape: the same for a left and a right hand that are each other's mirror image.
	 */
	readonly at: Vec;
	readonly reach: 'comfortable' | 'just';
	readonly hand: ReachKind;
	/** How far a hand may stop off the surface it belongs to. Units: mm. */
	readonly sd: number;
}

/** How well a hand finds the end of its own reach again, two links and a shoulder that moves included. Units: mm. Ours. */
const STOPS_SD = { just: 20, comfortable: 30 } as const;

const seenSd = (how: Parameters<typeof lengthSeen>[0]['how']): number => lengthSeen({ value: 0, how }).sd;

/** Where the plane of her back met her centre line at the top of the loaded seat. Units and frame: mm, plan frame. */
export function backOf(
	{ behind, x, off, floor, seatHeight }: NonNullable<Body['person']['reachTest']>,
	room: TestRoom
): Vec {
	const [px, py] = toPlan(behind, [x, 0], off, room.footprint);
	return [px, py, (floor === 'bathroom' ? room.bathroomFloor : room.floorAt(px, py)) + seatHeight];
}

/** The points taped for one hand, in the order of their ids; none where nobody said where she sat. */
export function tapedOf({ person }: Body, side: Side, room: TestRoom): readonly Taped[] {
	const sat = person.reachTest;
	const { points = {} } = person.arms[side];
	if (!sat) return [];
	const facing = INTO[sat.behind];
	const back = backOf(sat, room);
	const outward = side === 'left' ? 1 : -1;
	return Object.entries(points)
		.toSorted(([a], [b]) => (a < b ? -1 : 1))
		.map(([id, point]) => {
			const off = point.hand === 'grip' ? point.off : 0;
			const from = less(toPlan(point.wall, [point.x, point.y], off, room.footprint), back);
			return {
				id,
				// On the grid, so that a room and its mirror image give the same figures.
				at: [mm(dot(from, facing)), mm(outward * dot(from, leftOf(facing))), mm(from[2])],
				reach: point.reach,
				hand: point.hand,
				sd: Math.hypot(STOPS_SD[point.reach], seenSd(point.how), seenSd(sat.how))
			};
		});
}
