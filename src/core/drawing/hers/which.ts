import type { Mark } from '#core/case/accessory.ts';
import { toPlan } from '#core/geometry/frame.ts';
import type { Vec } from '#core/geometry/vec.ts';
import type { Plan } from '#core/plan.ts';
import type { Which } from './messages.ts';
import { facesARoom } from './where.ts';

/** From so much on two bars are told apart by where they are along the wall, how high, and how long. Units: mm. Ours. */
const APART = { along: 250, high: 80, long: 80 };

interface Bar {
	readonly along: number;
	readonly high: number;
	readonly long: number;
	readonly at: Vec;
}

function barOf({ scene: { room } }: Plan, { place, variant: { outline } }: Mark): Bar {
	const along = place.x + (outline.x0 + outline.x1) / 2;
	const high = place.y + (outline.y0 + outline.y1) / 2;
	const long = Math.max(outline.x1 - outline.x0, outline.y1 - outline.y0);
	return { along, high, long, at: toPlan(place.wall, [along, high], 0, room.footprint) };
}

/** Which of two bars on one wall a mark is: by where it is if that tells them apart, else by height, else by length. */
export function whichOf(plan: Plan, mark: Mark, other: Mark): Which {
	const [a, b] = [barOf(plan, mark), barOf(plan, other)];
	const along = alongWall(plan, mark, [a, b]);
	if (Math.abs(a.along - b.along) >= APART.along) return along;
	if (Math.abs(a.high - b.high) >= APART.high) return a.high > b.high ? 'higher' : 'lower';
	if (Math.abs(a.long - b.long) >= APART.long) return a.long > b.long ? 'longer' : 'shorter';
	return along;
}

/** From the seat or, where she has none yet, from the way in; on a wall across those, left and right of who looks at it. */
function alongWall(plan: Plan, { place: { wall } }: Mark, [a, b]: readonly [Bar, Bar]): Which {
	const { seatWall } = plan.scene.room;
	const seat = plan.marks.find(({ variant }) => variant.kind === 'seat');
	const beside = wall === 'left' || wall === 'right';
	if (facesARoom(plan) && seat && beside !== (seatWall === 'left' || seatWall === 'right')) {
		const from = barOf(plan, seat).at;
		const far = ({ at }: Bar) => Math.hypot(at[0] - from[0], at[1] - from[1]);
		return far(a) < far(b) ? 'nearer-seat' : 'farther-seat';
	}
	// The way in is where y is greatest.
	if (beside) return a.at[1] > b.at[1] ? 'nearer-entry' : 'farther-entry';
	return a.along < b.along ? 'left' : 'right';
}
