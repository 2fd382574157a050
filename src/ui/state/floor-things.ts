import { roomOf } from '#core/enclosure/room.ts';
import { isObject, type Json } from '#core/log/json.ts';
import { inches, type LengthUnit } from '#core/units/length.ts';
import { dragged, partsOf, WHOLE, type Spread, type Thing } from './spread.ts';
import type { Kind, Site } from './site.ts';

/** A drain as it is put on a floor by hand: a plain square one. Units: mm. Common practice, no source. */
const DRAIN_SIZE: Readonly<Record<LengthUnit, number>> = { mm: 100, in: inches(4) };

/** What can be put on a floor. */
export const DRAIN: Kind = { label: 'Drain' };

/** At which end of the entry a door is hung, looking in. */
export type Hinge = 'left' | 'right';

const LENGTH = ['frontWall', 'length'];

/** What lies on the floor plan and is moved there: the drain, and the wall beside the entry by its end. */
function thingsOnFloor(enclosure: Json | undefined): readonly Thing[] {
	if (!isObject(enclosure)) return [];
	return [...drainOf(enclosure['drain']), ...frontWallOf(enclosure)];
}

function drainOf(drain: Json | undefined): readonly Thing[] {
	if (!isObject(drain)) return [];
	const { x, y, wide, deep, how } = drain;
	if (typeof x !== 'number' || typeof y !== 'number' || typeof wide !== 'number' || typeof deep !== 'number') return [];
	const kind = how === 'assumed' ? 'assumed' : undefined;
	return [{ key: 'drain', path: ['drain'], name: 'Drain', kind, spread: { x, y: -y, wide, deep } }];
}

function frontWallOf({ frontWall, walls }: Readonly<Record<string, Json>>): readonly Thing[] {
	const front = isObject(walls) ? walls['front'] : undefined;
	if (!isObject(front) || front['stands'] !== true || !isObject(frontWall)) return [];
	const { side, length } = frontWall;
	if (!isObject(length) || typeof length['value'] !== 'number' || (side !== 'left' && side !== 'right')) return [];
	const kind = length['how'] === 'assumed' ? 'assumed' : undefined;
	const spread: Spread = { from: side, long: length['value'] };
	return [{ key: LENGTH.join('/'), path: LENGTH, name: 'Wall beside the entry', kind, spread, stays: true }];
}

/** The floor of the room, with what is moved on its plan. */
export const FLOOR: Site<Kind> = {
	home: ['enclosure'],
	things: thingsOnFloor,
	area: ({ footprint: { width, depth } }) => ({ from: 0, to: width, bottom: -depth, top: 0 }),
	room: (_, seen) => roomOf(seen),
	made: (_, { unit, at, on }) => {
		const size = DRAIN_SIZE[unit];
		const put = dragged({ ...at, wide: size, deep: size }, WHOLE, { x: 0, y: 0 }, on);
		const parts = partsOf(put).map(({ path: [key = ''], value }) => [key, value] as const);
		// Nobody has said yet where it is, nor how large.
		return { path: ['drain'], to: { ...Object.fromEntries(parts), how: 'assumed' } };
	}
};
