import type { Box, Entity, Spot } from '../entity.ts';
import { freeSpot } from '../free-spot.ts';
import type { Layer } from '../layers.ts';
import { circle, cross, line, lines, shape } from '../path.ts';
import { PT, widthOf, write } from '../type.ts';
import { notYet, type Bored } from './holes-bored.ts';

/** How far the cross of a hole goes past its edge. Units: mm. */
const PAST = 2;
/** Half of the cross at the centre of a flange. Units: mm. */
const CENTRE = 4;
/** How far from its hole a number may stand. Units: mm. */
const NEAR = 16;
const NUMBER = { size: 9, tone: 'grey', anchor: 'middle' } as const;

/** Where a flange is drawn: its centre, and the part of the template that is its own. Units and frame: mm of the sheet. */
export interface Seat {
	readonly centre: Spot;
	readonly art: Box;
}

/**
 * A flange at its own size as it is seen from inside the room: outline, circle of its holes, each hole with its cross
 * and number, the cross of its centre, the plumb line through it, and which way is up.
 * Units and frame: mm of the sheet, one a mm of the wall.
 */
export function artOf(bored: Bored, { centre, art }: Seat): readonly Entity[] {
	const [x, y] = centre;
	const { flange, set, at } = bored;
	const id = `template/${bored.id}`;
	const about = set.id;
	const flat = set.later ? 'thing-later' : notYet(bored) === undefined ? 'thing' : 'thing-open';
	const edge: Layer = notYet(bored) === undefined ? 'centre' : 'folded';
	const half = (flange.hole ?? 0) / 2;
	const holes = bored.holes.map((hole) => ({
		id: `template/${hole.id}`,
		spot: [x + hole.at[0] - at[0], y - hole.at[1] + at[1]] as const
	}));
	return [
		{ ...circle(`${id}/flange`, flat, centre, flange.radius), about },
		circle(`${id}/circle`, 'axis', centre, flange.circle),
		line(`${id}/plumb`, 'axis', [x, art.y0], [x, art.y1]),
		...holes.flatMap((hole) => [
			...(half > 0 ? [circle(`${hole.id}/edge`, edge, hole.spot, half)] : []),
			{ ...cross(`${hole.id}/cross`, 'centre', hole.spot, half + PAST), about }
		]),
		cross(`${id}/centre`, 'tick', centre, CENTRE),
		...up(`${id}/up`, [art.x0 + 6, art.y0 + 3]),
		...numbers(
			bored,
			holes.map(({ spot }) => spot),
			{ centre, art }
		)
	];
}

/** The arrow that points up, with its word under it; `at` is its tip. */
const up = (id: string, [x, y]: Spot): readonly Entity[] => [
	lines(`${id}/shaft`, 'tick', [
		[
			[x, y + 3],
			[x, y + 9]
		]
	]),
	shape(`${id}/tip`, 'solid', [x, y], [x + 1.6, y + 3.4], [x - 1.6, y + 3.4]),
	write(`${id}/word`, 'up', [x, y + 12.6], { size: 10.5, weight: 'semibold', anchor: 'middle' })
];

/** A box round a point. Units: mm. */
const round = ([x, y]: Spot, half: number): Box => ({ x0: x - half, x1: x + half, y0: y - half, y1: y + half });

/** Points of a circle close enough together that nothing comes between them. */
const along = ([x, y]: Spot, radius: number): readonly Box[] =>
	Array.from({ length: 90 }, (_, i) => {
		const angle = (i * Math.PI) / 45;
		return round([x + radius * Math.cos(angle), y + radius * Math.sin(angle)], radius * 0.036 + 0.3);
	});

/** The number of each hole beside it, clear of every line. */
function numbers(bored: Bored, holes: readonly Spot[], { centre, art }: Seat): readonly Entity[] {
	const [x, y] = centre;
	const { radius, circle: ring, hole = 0 } = bored.flange;
	const em = NUMBER.size * PT;
	const height = 0.93 * em;
	const taken: Box[] = [
		...holes.map((spot) => round(spot, hole / 2 + PAST)),
		...along(centre, radius),
		...along(centre, ring),
		round(centre, CENTRE),
		{ x0: art.x0, x1: art.x1, y0: y - 0.5, y1: y + 0.5 },
		{ x0: x - 0.5, x1: x + 0.5, y0: art.y0, y1: art.y1 },
		{ x0: art.x0, x1: art.x0 + 11, y0: art.y0, y1: art.y0 + 18 }
	];
	return holes.flatMap(([hx, hy], i) => {
		const text = String(i + 1);
		const from = Math.atan2(hy - y, hx - x);
		const off = (hole / 2 + PAST + 1.6) / ring;
		const wishes = [ring - 4, ring + 4].flatMap((far) =>
			[off, -off].map((by): Spot => [x + far * Math.cos(from + by), y + far * Math.sin(from + by)])
		);
		const width = widthOf(text, NUMBER.size);
		const within = { x0: hx - NEAR, x1: hx + NEAR, y0: Math.max(art.y0, hy - NEAR), y1: Math.min(art.y1, hy + NEAR) };
		const spot = freeSpot({ width, height, wishes, taken, within });
		if (!spot) return [];
		taken.push(round(spot, height / 2 + 0.3));
		return [write(`template/${bored.id}.${text}/number`, text, [spot[0], spot[1] + 0.255 * em], NUMBER)];
	});
}
