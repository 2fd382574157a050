import { toPlan } from '#core/geometry/frame.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { Box, Entity, Spot } from '../entity.ts';
import type { Layer } from '../layers.ts';
import { layerOf } from '../part.ts';
import { circle, extent, lines, rectangle } from '../path.ts';
import { boxRound, cornersOf, seatFromAbove } from '../seat-plan.ts';
import type { SetOut } from '../setting-out.ts';

/** A plan of a room on a sheet. Units and frame: plan frame in, mm of the sheet out; `scale` mm of the room to one of the sheet. */
export interface FloorView {
	readonly box: Box;
	readonly spot: (x: number, y: number) => Spot;
	readonly scale: number;
}

/** Where words inside the room may stand; what is placed is added. Units and frame: mm of the sheet. */
export interface Free {
	readonly taken: Box[];
	readonly within: Box;
}

/** The least a thing is drawn out from its wall. Units: mm of the sheet. */
const LEAST = 1;

/** Every mark from above, to scale, what lies higher over what lies lower. */
export const thingsFromAbove = (sets: readonly SetOut[], room: Room, view: FloorView): readonly Entity[] =>
	sets
		.toSorted((a, b) => a.mark.place.y - b.mark.place.y)
		.flatMap((set) => drawn(set, room, view).map((e) => ({ ...e, about: set.id })));

/** What the things cover. Units and frame: mm of the sheet. */
export const coveredBy = (things: readonly Entity[]): readonly Box[] =>
	things.flatMap((e) => (e.kind === 'path' ? [extent(e)] : []));

function drawn(set: SetOut, room: Room, view: FloorView): readonly Entity[] {
	const { variant, place } = set.mark;
	const layer: Layer = set.later ? 'thing-later' : layerOf(set);
	const id = `floor/${set.id}`;
	if (variant.kind === 'seat') return seatFromAbove(room, set.mark, { id, layer, spot: view.spot });
	const corner = cornersOf(room, set.mark, view);
	if (variant.kind === 'vertical-bar') {
		const [x, y] = toPlan(place.wall, [place.x, 0], variant.gap + variant.diameter / 2, room.footprint);
		const held = variant.stands ? [] : [lines(`${id}/held`, layer, [[corner([0, 0]), corner([0, variant.gap])]])];
		return [...held, circle(id, layer, view.spot(x, y), Math.max(LEAST, variant.diameter / view.scale) / 2)];
	}
	if (variant.diameter > 0 && variant.kind === 'horizontal-bar') {
		const along = variant.brackets.map(({ x }) => x);
		const held = [...new Set(along)].map((x) => [corner([x, 0]), corner([x, variant.gap])]);
		const ends = [
			corner([Math.min(...along), variant.gap]),
			corner([Math.max(...along), variant.gap + variant.diameter])
		];
		return [lines(`${id}/held`, layer, held), rectangle(id, layer, boxRound(ends[0] ?? [0, 0], ends[1] ?? [0, 0]))];
	}
	const { x0, x1 } = variant.outline;
	const out = Math.max(variant.depth, LEAST * view.scale);
	// A rail is drawn folded down, where it is in the way.
	const line: Layer = variant.kind === 'fold-down-rail' && !set.later ? 'folded' : layer;
	return [rectangle(id, line, boxRound(corner([x0, 0]), corner([x1, out])))];
}
