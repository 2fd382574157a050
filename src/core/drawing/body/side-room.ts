import type { Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import { toPlan, type WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { Box, Entity, Spot } from '../entity.ts';
import type { Layer } from '../layers.ts';
import { line, rectangle, rounded, shape } from '../path.ts';
import { settingOut, type SetOut } from '../setting-out.ts';
import { piecesOf, type Piece } from './pieces.ts';
import type { Sideways } from './sideways.ts';

/** How thick what is cut is drawn. Units: mm of the room. */
export const CUT = 60;

/** The wall at the left and at the right of one that is looked at. */
export const BESIDE: Readonly<Record<WallId, readonly [left: WallId, right: WallId]>> = {
	back: ['left', 'right'],
	right: ['back', 'front'],
	front: ['right', 'left'],
	left: ['front', 'back']
};

/** What lies opposite a wall that is looked at: it is cut away. */
const CUT_AWAY: Readonly<Record<WallId, WallId>> = {
	back: 'front',
	front: 'back',
	left: 'right',
	right: 'left'
};

/** Which end of a picture is where one comes in; undefined where the entry is behind who looks, or ahead. */
export const entryEnd = (far: WallId): 'left' | 'right' | undefined =>
	far === 'left' ? 'left' : far === 'right' ? 'right' : undefined;

/** Floor, step and walls cut, and the datum line across. Units: `across` is how far from the far wall the floor is cut, mm. */
export function roomEntities(room: Room, side: Sideways, across: number, id: string): readonly Entity[] {
	const { seen, far } = side;
	const { length } = room.walls[far];
	const floor = (along: number): Spot => {
		const [x, y] = toPlan(far, [along, 0], across, room.footprint);
		return side.at(along, room.floorAt(x, y));
	};
	const [first, last] = [Math.max(0, seen.x0), Math.min(length, seen.x1)];
	const under = side.at(0, seen.low)[1];
	const [a, b] = [floor(first), floor(last)];
	return [
		shape(`${id}/floor/cut`, 'cut', a, b, [b[0], under], [a[0], under]),
		...BESIDE[far].flatMap((wall, i) => cutWall(room, side, { wall, end: i === 0 ? 'left' : 'right' }, id)),
		line(`${id}/floor`, 'outline', a, b),
		...outsideOf(room, side, id),
		...edgeOf(room, side, id)
	];
}

function cutWall(
	room: Room,
	{ at, seen, far }: Sideways,
	{ wall, end }: { wall: WallId; end: 'left' | 'right' },
	id: string
): readonly Entity[] {
	const { length } = room.walls[far];
	const [face, beyond] = end === 'left' ? [0, -CUT] : [length, length + CUT];
	const { stands, top } = room.walls[wall];
	if (!stands || wall === 'front' || beyond < seen.x0 - 1 || beyond > seen.x1 + 1) return [];
	const [high, low] = [at(face, Math.min(seen.high, top)), at(face, seen.low)];
	const out = at(beyond, 0)[0];
	const box: Box = { x0: Math.min(high[0], out), x1: Math.max(high[0], out), y0: high[1], y1: low[1] };
	return [rectangle(`${id}/wall/${wall}/cut`, 'cut', box), line(`${id}/wall/${wall}`, 'outline', high, low)];
}

/** The bathroom floor before the entry, where one looks along the entry line. */
function outsideOf(room: Room, { at, seen, far }: Sideways, id: string): readonly Entity[] {
	const end = entryEnd(far);
	if (!end) return [];
	const { length } = room.walls[far];
	const [from, to] = end === 'left' ? [seen.x0, 0] : [length, seen.x1];
	if (to - from < 1) return [];
	const [a, b] = [at(from, room.bathroomFloor), at(to, room.bathroomFloor)];
	const under = at(0, seen.low)[1];
	return [
		shape(`${id}/outside/cut`, 'cut', a, b, [b[0], under], [a[0], under]),
		line(`${id}/outside`, 'outline', a, b)
	];
}

/** A step lower than this is not drawn. Units: mm. Ours. */
const LEAST_STEP = 15;

/** Rim of a bath, edge of a tray or threshold: cut where one looks along it, a broken line where it is before who looks. */
function edgeOf(room: Room, { at, seen, far }: Sideways, id: string): readonly Entity[] {
	if (room.step < LEAST_STEP) return [];
	const top = room.bathroomFloor + room.step;
	const { length } = room.walls[far];
	const end = entryEnd(far);
	if (!end) {
		const [from, to] = [Math.max(0, seen.x0), Math.min(length, seen.x1)];
		return [line(`${id}/edge`, 'folded', at(from, top), at(to, top))];
	}
	const entry = end === 'left' ? 0 : length;
	const [x0, y0] = at(end === 'left' ? entry : entry - CUT, top);
	const x1 = at(end === 'left' ? entry + CUT : entry, top)[0];
	return [rectangle(`${id}/edge`, 'step-cut', { x0, y0, x1, y1: at(0, room.bathroomFloor)[1] })];
}

/** A mark as seen from the side. Units and frame: mm of the sheet. */
export interface SeenMark {
	readonly set: SetOut;
	readonly entities: readonly Entity[];
	readonly cover: Box;
	/** The foremost part of it: a tube, a board, a lever. */
	readonly front: Box;
	/** Before who looks, where the room is cut away. */
	readonly before: boolean;
}

/** Every mark that is seen, on the wall looked at and in section on the two beside it; dashed before who looks. */
export function marksSeen(plan: Plan, side: Sideways, id: string): readonly SeenMark[] {
	const { room } = plan.scene;
	return settingOut(plan).flatMap((set) => {
		const boxes = piecesOf(set.mark, room).map((piece) => ({ piece, box: boxOf(piece, set.mark, side, room) }));
		const cover = boxes.map(({ box }) => box).reduce(joined, NOTHING);
		if (!inside(cover, side.window)) return [];
		const before = set.mark.place.wall === CUT_AWAY[side.far] && set.mark.variant.stands !== 'rims';
		const layer = before ? 'folded' : layerOf(set);
		const entities = boxes.flatMap(({ piece, box }, i): Entity[] => {
			const at = clipped(box, side.window);
			if (at.x1 - at.x0 < 0.01 || at.y1 - at.y0 < 0.01) return [];
			const name = `${id}/${set.id}/${String(i)}`;
			const radius = Math.min(at.x1 - at.x0, at.y1 - at.y0) / 2;
			return [{ ...(piece.round ? rounded(name, layer, at, radius) : rectangle(name, layer, at)), about: set.id }];
		});
		return [
			{
				set,
				entities,
				cover: clipped(cover, side.window),
				front: clipped(boxes.at(-1)?.box ?? cover, side.window),
				before
			}
		];
	});
}

const layerOf = ({ later, open }: SetOut): Layer => (later ? 'thing-later' : open ? 'thing-open' : 'thing');

function boxOf({ x, y, off }: Piece, { place }: Mark, side: Sideways, room: Room): Box {
	const [a, b] = [0, 1].map((i) => {
		const [along = 0, level = 0, out = 0] = [x[i], y[i], off[i]];
		return side.spot(toPlan(place.wall, [along, level], out, room.footprint));
	});
	const [p, q] = [a ?? [0, 0], b ?? [0, 0]];
	return { x0: Math.min(p[0], q[0]), y0: Math.min(p[1], q[1]), x1: Math.max(p[0], q[0]), y1: Math.max(p[1], q[1]) };
}

const NOTHING: Box = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity };
const joined = (a: Box, b: Box): Box => ({
	x0: Math.min(a.x0, b.x0),
	y0: Math.min(a.y0, b.y0),
	x1: Math.max(a.x1, b.x1),
	y1: Math.max(a.y1, b.y1)
});
const inside = (b: Box, w: Box): boolean => b.x1 > w.x0 && b.x0 < w.x1 && b.y1 > w.y0 && b.y0 < w.y1;
const clipped = (b: Box, w: Box): Box => ({
	x0: Math.max(b.x0, w.x0),
	y0: Math.max(b.y0, w.y0),
	x1: Math.min(b.x1, w.x1),
	y1: Math.min(b.y1, w.y1)
});
