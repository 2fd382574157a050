import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import { BESIDE } from '../wall-ends.ts';
import type { Where } from './messages.ts';

const FROM_ENTRY: Readonly<Record<WallId, Where>> = {
	back: 'entry-ahead',
	left: 'entry-left',
	right: 'entry-right',
	front: 'entry-behind'
};

/** Whether she has a seat from the start, with a wall at her back. On a board across a bath she turns. */
export const facesARoom = ({ marks }: Plan): boolean =>
	marks.some(
		({ variant, accessory }) => variant.kind === 'seat' && variant.stands !== 'rims' && accessory.when !== 'later'
	);

/** A side of the room as she finds it: as she sits, or where she has no seat as she comes in. */
export function whereIs(plan: Plan, wall: WallId): Where {
	if (!facesARoom(plan)) return FROM_ENTRY[wall];
	const { seatWall } = plan.scene.room;
	if (wall === seatWall) return 'seat-behind';
	// Who turns the back to a wall has on the left what lies to the right of it.
	if (wall === BESIDE[seatWall].right) return 'seat-left';
	return wall === BESIDE[seatWall].left ? 'seat-right' : 'seat-ahead';
}
