import type { Mark } from '#core/case/accessory.ts';
import { toPlan } from '#core/geometry/frame.ts';
import type { Scene } from '#core/measures/scene.ts';
import { mm, type Mm } from '#core/units/length.ts';

/**
 * Height of a mark above the floor that counts: the bathroom floor at the entry for a seat, else the floor below it.
 * Units: mm.
 */
export function aboveFloor({ room }: Scene, { place, variant }: Mark): Mm {
	if (variant.kind === 'seat') return mm(place.y - room.bathroomFloor);
	const [x, y] = toPlan(place.wall, [place.x, place.y], 0, room.footprint);
	return mm(place.y - room.floorAt(x, y));
}
