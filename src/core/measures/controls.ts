import type { Mark } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Measure, Reading, Scene } from './scene.ts';
import { less, size } from '#core/geometry/vec.ts';
import { targetOf } from './hand.ts';
import { inches } from '#core/units/length.ts';
import { alongSeatWall, centreLine, farSide, floorUnder, fromSeatWall, NO_FRONT_WALL, seatFront } from './where.ts';

/** The two sides of the operable envelope, along the seat wall. */
function sides(s: Scene, m: Mark): readonly [number, number] {
	const { wall, x } = m.place;
	const { grip, gripOff } = m.variant;
	const one = alongSeatWall(s, wall, { x: x + grip.x0, off: gripOff });
	const other = alongSeatWall(s, wall, { x: x + grip.x1, off: gripOff });
	return [Math.min(one, other), Math.max(one, other)];
}

const middle = ({ place, variant }: Mark): number => place.y + (variant.grip.y0 + variant.grip.y1) / 2;

/** The two sides of the operable envelope, from the seat wall. */
function sidesAhead(s: Scene, m: Mark): readonly number[] {
	const { wall, x } = m.place;
	const { grip, gripOff } = m.variant;
	return [grip.x0, grip.x1].map((across) => fromSeatWall(s, wall, { x: x + across, off: gripOff }));
}

/** Deeper than this over an obstruction, less height is reached from a chair beside it or before it. Units: mm. Source: ADA 2010, 308.3.2 and 308.2.2. */
const DEEP = { side: inches(10), forward: inches(20) } as const;

/** How deep over the seat one reaches, from its front edge, negative ahead of it; and how far beside the seat that is. */
function overSeat(s: Scene, m: Mark, seat: Mark): { readonly deep: number; readonly beside: number } {
	const { grip, gripOff } = m.variant;
	const at = { x: m.place.x + (grip.x0 + grip.x1) / 2, off: gripOff };
	const off = Math.abs(alongSeatWall(s, m.place.wall, at) - centreLine(s, seat));
	return {
		deep: seatFront(s, seat) - fromSeatWall(s, m.place.wall, at),
		beside: Math.max(0, off - seat.variant.length / 2)
	};
}

const overBathroomFloor = (s: Scene, { place, variant }: Mark): number =>
	place.y + variant.grip.y1 - s.room.bathroomFloor;

/** The height of what is reached, less what the reach is short of being deep, or how far beside the seat it is. */
const heightOver =
	(from: keyof typeof DEEP) =>
	(s: Scene, m: Mark, seat: Mark): number => {
		const { deep, beside } = overSeat(s, m, seat);
		return overBathroomFloor(s, m) - Math.max(0, DEEP[from] - deep, beside);
	};

/** Whether a mark is on one of the walls named from the side wall farthest from the entry. */
function onWallsOf(s: Scene, m: Mark, others: readonly WallId[]): Reading {
	const far = farSide(s.room);
	if (far === undefined) return { missing: NO_FRONT_WALL };
	return m.place.wall === far || others.includes(m.place.wall) ? 1 : 0;
}

/** Controls, handset rests and holders: the whole operable envelope counts. */
export const CONTROLS = {
	'on-control-wall': {
		what: 'Whether it is on the wall opposite the seat.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (s, m) => (m.place.wall === s.room.controlWall ? 1 : 0)
	},
	'on-back-wall': {
		what: 'Whether it is on the wall opposite the entry.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (_, m) => (m.place.wall === 'back' ? 1 : 0)
	},
	'on-far-side-wall': {
		what: 'Whether it is on the side wall farthest from the entry.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (s, m) => onWallsOf(s, m, [])
	},
	'on-far-side-or-back-wall': {
		what: 'Whether it is on the side wall farthest from the entry, or on the wall opposite the entry.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (s, m) => onWallsOf(s, m, ['back'])
	},
	'envelope-bottom-above-shower-floor': {
		what: 'Lowest operable point above the highest shower floor below it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => m.place.y + m.variant.grip.y0 - floorUnder(s, m).high
	},
	'envelope-top-above-shower-floor': {
		what: 'Highest operable point above the lowest shower floor below it.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => m.place.y + m.variant.grip.y1 - floorUnder(s, m).low
	},
	'envelope-bottom-above-bathroom-floor': {
		what: 'Lowest operable point above the bathroom finish floor at the entry, where a helper stands.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => m.place.y + m.variant.grip.y0 - s.room.bathroomFloor
	},
	'envelope-top-above-bathroom-floor': {
		what: 'Highest operable point above the bathroom finish floor at the entry, where a helper stands.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: overBathroomFloor
	},
	'near-edge-from-centre-line': {
		what: 'From the centre line of the seat toward the opening, to the nearer edge of the operable envelope.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, m, seat) => sides(s, m)[0] - centreLine(s, seat)
	},
	'far-edge-from-centre-line': {
		what: 'From the centre line of the seat toward the opening, to the farther edge of the operable envelope.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, m, seat) => sides(s, m)[1] - centreLine(s, seat)
	},
	'edge-off-centre-line': {
		what: 'From the centre line of the seat, to either side, to the farther edge of the operable envelope.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, m, seat) => Math.max(...sides(s, m).map((side) => Math.abs(side - centreLine(s, seat))))
	},
	'edge-from-seat-wall': {
		what: 'From the seat wall to the farther edge of the operable envelope.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, m) => Math.max(...sidesAhead(s, m))
	},
	'near-edge-from-seat-wall': {
		what: 'From the seat wall to the nearer edge of the operable envelope.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, m) => Math.min(...sidesAhead(s, m))
	},
	'over-seat-depth': {
		what: 'From the front edge of the seat back to what is reached over it, less how far beside the seat that is; negative ahead of the edge.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, m, seat) => {
			const { deep, beside } = overSeat(s, m, seat);
			return deep - beside;
		}
	},
	'over-seat-top': {
		what: 'Top of the seat above the bathroom floor, less how far what is reached is beside or ahead of it.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, m, seat) => {
			const { deep, beside } = overSeat(s, m, seat);
			return seat.place.y - s.room.bathroomFloor - Math.max(0, -deep, beside);
		}
	},
	'over-seat-from-side': {
		what: 'Highest operable point above the bathroom floor, less what the reach over the seat is short of 10 in, or how far beside it is.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: heightOver('side')
	},
	'over-seat-from-front': {
		what: 'Highest operable point above the bathroom floor, less what the reach over the seat is short of 20 in, or how far beside it is.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: heightOver('forward')
	},
	'height-difference': {
		what: 'Difference in height between the middles of what the hand works, without sign.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'pair',
		of: (_, a, b) => Math.abs(middle(a) - middle(b))
	},
	'hose-to-spare': {
		what: 'Length of the hose less the way from its outlet to the hand shower.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, a, b) => {
			const { hose } = s.c.enclosure;
			if (!hose) return { missing: 'How long is the hose of the hand shower?' };
			return hose.value - size(less(targetOf(a, s.room).from, targetOf(b, s.room).from));
		}
	},
	'centres-apart': {
		what: 'From the middle of one operable envelope to the middle of another.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: (s, a, b) => size(less(targetOf(a, s.room).from, targetOf(b, s.room).from))
	}
} satisfies Record<string, Measure>;
