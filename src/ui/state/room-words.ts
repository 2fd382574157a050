import type { Enclosure } from '#core/case/record.ts';
import type { Room } from '#core/enclosure/room.ts';
import { WALL_IDS, type WallId } from '#core/geometry/frame.ts';

/** What is stepped over at the entry, by the type of enclosure. */
export function stepName(type: Enclosure['type']): 'threshold' | 'edge of the tray' | 'rim of the bath' {
	if (type === 'over-bath') return 'rim of the bath';
	return type === 'step-in-tray' ? 'edge of the tray' : 'threshold';
}

/** Up to this it is rolled over and not drawn. Units: mm. Source: ADA 2010, 608.7, 1/2 in. */
const LEVEL_ENTRY = 13;

/** Whether something is stepped over at the entry. */
export const isSteppedOver = ({ step }: Room): boolean => step > LEVEL_ENTRY;

const SIDES: Readonly<Record<WallId, string>> = { back: 'Back', left: 'Left', right: 'Right', front: 'Front' };

/** What a side is called: a wall, or open. */
export function sideName({ walls }: Room, wall: WallId): string {
	return walls[wall].stands ? `${SIDES[wall]} wall` : `${SIDES[wall]} side, open`;
}

/** The sides one can look at: those that stand, and open ones something stands on. */
export function sidesSeen({ walls }: Room, used: readonly WallId[]): readonly WallId[] {
	return WALL_IDS.filter((id) => walls[id].stands || used.includes(id));
}

/** The room in words, for those who do not see it from above. */
export function roomWords(room: Room, type: Enclosure['type']): string {
	const { walls, opening, footprint, seatWall } = room;
	const named = (stands: boolean): string[] =>
		(['back', 'left', 'right'] as const).filter((id) => walls[id].stands === stands);
	const opened = named(false);
	const front = opening.x0 > 0 ? 'on the left' : opening.x1 < footprint.width ? 'on the right' : undefined;
	return [
		`${listed(named(true))} ${named(true).length === 1 ? 'wall stands' : 'walls stand'}`,
		...(opened.length > 0 ? [`${listed(opened)} open`] : []),
		...(front ? [`a wall beside the entry ${front}`] : []),
		isSteppedOver(room)
			? `entry over the ${stepName(type)}`
			: room.step > 0
				? 'a level entry'
				: 'nothing recorded that is stepped over',
		`who sits has the ${seatWall} wall behind`
	].join('; ');
}

function listed(words: readonly string[]): string {
	return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}
