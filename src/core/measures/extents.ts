import type { Mark } from '#core/case/accessory.ts';
import { sidesOf } from '#core/case/roles.ts';
import { FAR } from '#core/structure/carrying.ts';
import { cornersOn, ends, top } from './bars.ts';
import type { Measure, Missing, Reading, Scene } from './scene.ts';
import { boxOf, spansOf, type Ends } from './walls.ts';
import { centreLine, floorUnder, fromSeatWall } from './where.ts';

/** The middle of what a hand works, along its wall and in height. */
const middle = ({ place, variant: { grip } }: Mark) => ({
	x: place.x + (grip.x0 + grip.x1) / 2,
	y: place.y + (grip.y0 + grip.y1) / 2
});

/** The middle of what a hand works, to the nearest wall that makes an inside corner with its own. */
function fromCorner(s: Scene, m: Mark): number {
	const { wall } = m.place;
	const { length } = s.room.walls[wall];
	const { x } = middle(m);
	const { first, last } = cornersOn(s, wall);
	return Math.min(FAR, ...(first ? [x] : []), ...(last ? [length - x] : []));
}

const NO_LEG: Missing = { missing: 'Has the bar an upright leg?' };

/** Where the upright leg of a bar stands, from the seat wall. */
function uprightFromSeatWall(s: Scene, { place, variant }: Mark): Reading {
	const { upright, length, gripOff } = variant;
	if (!upright) return NO_LEG;
	const x = place.x + (upright.at === 'right' ? length : 0);
	return fromSeatWall(s, place.wall, { x, off: gripOff });
}

/** The end of a level bar nearer to the seat wall, its flange included. */
function overAllFromSeatWall(s: Scene, { place, variant }: Mark): number {
	const { outline, gripOff } = variant;
	const ends = [outline.x0, outline.x1].map((x) => fromSeatWall(s, place.wall, { x: place.x + x, off: gripOff }));
	return Math.min(...ends);
}

/** Between the footprint of one part and where the hand works another, both seen from above; 0 where they meet. */
function apartInPlan(s: Scene, worked: Mark, seat: Mark): number {
	const { grip, gripOff } = worked.variant;
	const one = boxOf(s, worked, { x0: grip.x0, x1: grip.x1, to: gripOff });
	const off = ([a0, a1]: Ends, [b0, b1]: Ends): number => Math.max(0, a0 - b1, b0 - a1);
	return Math.min(
		...spansOf(seat).map((span) => {
			const other = boxOf(s, seat, span);
			return Math.hypot(off(one.width, other.width), off(one.depth, other.depth));
		})
	);
}

/** How long parts are, where they begin, and where their middles are: what documents print that fix places, not reach. */
export const EXTENTS = {
	'bar-length': {
		what: 'Length of a bar, from flange centre to flange centre.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, bar) => bar.variant.length
	},
	'bar-over-all': {
		what: 'Length of a level bar from end to end, flanges included.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, { variant: { outline } }) => outline.x1 - outline.x0
	},
	'upright-length': {
		what: 'Length of the upright leg of a bar, flange centre to flange centre; 0 where it has none.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, bar) => bar.variant.upright?.length ?? 0
	},
	'upright-from-seat-wall': {
		what: 'From the seat wall to the axis of the upright leg of a bar.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: uprightFromSeatWall
	},
	'bar-axis-from-high-floor': {
		what: 'Axis of a level bar above the highest floor under it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, bar) => bar.place.y - floorUnder(s, bar).high
	},
	'bar-axis-from-low-floor': {
		what: 'Axis of a level bar above the lowest floor under it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, bar) => bar.place.y - floorUnder(s, bar).low
	},
	'foot-above-floor': {
		what: 'Lower flange centre of an upright bar above the floor below it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, bar) => bar.place.y + bar.variant.grip.y0 - floorUnder(s, bar).high
	},
	'bar-start-from-seat-wall': {
		what: 'From the seat wall to the nearer flange centre of a bar.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, bar) => Math.min(...ends(s, bar))
	},
	'bar-over-all-from-seat-wall': {
		what: 'From the seat wall to the nearer end of a level bar, flange included.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: overAllFromSeatWall
	},
	'foot-above-bar': {
		what: 'From the top of a level bar up to the lower flange centre of an upright one.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'pair',
		of: (_, upright, bar) => upright.place.y + upright.variant.grip.y0 - top(bar)
	},
	'seat-width': {
		what: 'Width of the seat, from side edge to side edge.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, seat) => seat.variant.length
	},
	'seat-depth': {
		what: 'Depth of the seat, from its rear edge to its front edge.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, seat) => seat.variant.depth - seat.variant.gap
	},
	'seat-centre-from-corner': {
		what: 'From the corner a seat is set out from to its centre line.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: centreLine
	},
	'on-seat-wall': {
		what: 'Whether it is on the wall behind who sits.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (s, m) => (m.place.wall === s.room.seatWall ? 1 : 0)
	},
	'on-corner-wall': {
		what: 'Whether it is on the wall that makes the corner the seat is set out from.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (s, m) => (sidesOf(s.c.enclosure, 'corner-wall').includes(m.place.wall) ? 1 : 0)
	},
	'middle-from-seat-wall': {
		what: 'From the seat wall to the middle of what the hand works or holds.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, m) => fromSeatWall(s, m.place.wall, { x: middle(m).x, off: m.variant.gripOff })
	},
	'middle-from-corner': {
		what: 'From the middle of what the hand works to the nearest inside corner of its wall.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: fromCorner
	},
	'middle-from-high-floor': {
		what: 'Middle of what the hand works or holds, of a rail its top, above the highest shower floor below it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => middle(m).y - floorUnder(s, m).high
	},
	'middle-from-low-floor': {
		what: 'The same above the lowest shower floor below it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => middle(m).y - floorUnder(s, m).low
	},
	'apart-in-plan': {
		what: 'Seen from above, from the nearest edge of what one part takes up, as a seat, to the nearest edge of what the hand works of another.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: apartInPlan
	}
} satisfies Record<string, Measure>;
