import type { Plan } from '#core/plan.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Box, Entity, Spot } from '../entity.ts';
import { line } from '../path.ts';
import type { OnWall } from '../part.ts';
import { thingOf, type Thing } from '../thing.ts';
import { spanOf } from '../wall-ends.ts';
import type { HerItem } from './item.ts';
import { numbersOn, type Pointed } from './numbers.ts';

/** How much of a wall is always shown above its floor, and above its highest thing. Units: mm of the wall. */
const SHOWN = { least: 1450, over: 160 };

/** Another picture in the same row, to share its scale and datum line with. Units and frame: mm of the sheet. */
export interface Neighbour {
	readonly scale: number;
	readonly datum: number;
}

interface Shown {
	readonly items: readonly HerItem[];
	readonly box: Box;
	readonly neighbour?: Neighbour;
}

/** A wall in a box of the sheet, its floor at the foot of the box, or as the picture beside it where it fits so. */
function onWall({ scene: { room } }: Plan, wall: WallId, { items, box, neighbour }: Shown): OnWall {
	const { length } = room.walls[wall];
	const feet = items.flatMap(({ set }) => (set ? [set.mark.place.y + set.mark.variant.outline.y0] : []));
	const low = Math.min(room.floorUnder(wall, 0, length).low, ...feet);
	const tops = items.flatMap(({ set }) =>
		set && !set.mark.variant.stands ? [set.mark.place.y + set.mark.variant.outline.y1 + SHOWN.over] : []
	);
	const top = Math.max(low + SHOWN.least, ...tops);
	const least = Math.max(length / (box.x1 - box.x0), (top - low) / (box.y1 - box.y0));
	const fits = (n: Neighbour) =>
		length / n.scale <= box.x1 - box.x0 && n.datum - top / n.scale >= box.y0 && n.datum - low / n.scale <= box.y1;
	const own = { scale: least, datum: box.y1 + low / least };
	const { scale, datum } = neighbour && fits(neighbour) ? neighbour : own;
	const left = (box.x0 + box.x1 - length / scale) / 2;
	const x = (wallX: number) => left + wallX / scale;
	const y = (level: number) => datum - level / scale;
	return {
		scale,
		broken: true,
		window: { x0: x(0), y0: y(top), x1: x(length), y1: y(low) },
		x,
		y,
		spot: (wallX, level) => [x(wallX), y(level)]
	};
}

/** A wall with her things on it and their numbers: outline and floor, no figures. Units and frame: mm of the sheet. */
export function wallPicture(
	plan: Plan,
	wall: WallId,
	{ id, ...shown }: Shown & { readonly id: string }
): readonly Entity[] {
	const { items, box } = shown;
	const here = items.filter(({ set }) => set?.mark.place.wall === wall);
	const view = onWall(plan, wall, { ...shown, items: here });
	const { room, c } = plan.scene;
	const things = here.flatMap(({ set }) => (set ? [thingOf(set, { view, room }, c.tape.unit)] : []));
	const drawn = things
		.flatMap(({ entities }) => entities)
		// Centres and axes are for who fits it.
		.filter((e) => e.kind === 'path' && e.layer !== 'centre' && e.layer !== 'axis')
		.map((e) => ({ ...cut(e, view.window.y0), id: `${id}/${e.id}` }));
	return [
		...outlineOf(plan, wall, view, id),
		line(`${id}/datum`, 'datum', [box.x0, view.y(0)], [box.x1, view.y(0)]),
		...drawn,
		...numbersOn(pointedAt(things, view.window.y0), here, { taken: things.flatMap(({ covers }) => covers), box, id })
	];
}

/** What goes on above a picture, as a post does, ends at its upper edge. */
const cut = (e: Entity, top: number): Entity =>
	e.kind === 'text' ? e : { ...e, d: e.d.map((step) => ({ ...step, to: [step.to[0], Math.max(top, step.to[1])] })) };

function outlineOf({ scene: { room } }: Plan, wall: WallId, view: OnWall, id: string): readonly Entity[] {
	const { stands, length } = room.walls[wall];
	const { from, to } = spanOf(room, wall);
	const floor = (x: number) => view.spot(x, room.floorUnder(wall, x, x).low);
	const up = (x: number): Spot => [view.x(x), view.window.y0];
	return [
		line(`${id}/floor`, 'outline', floor(0), floor(length)),
		...(stands
			? [line(`${id}/left`, 'outline', up(from), floor(from)), line(`${id}/right`, 'outline', up(to), floor(to))]
			: [])
	];
}

const pointedAt = (things: readonly Thing[], top: number): readonly Pointed[] =>
	things.flatMap(({ set, covers: [first] }) =>
		first ? [{ id: set.id, on: { ...first, y0: Math.max(top, first.y0) } }] : []
	);
