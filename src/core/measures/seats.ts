import type { Mark } from '#core/case/accessory.ts';
import { alongSeatWall, centreLine, fromSeatWall, seatFront } from './where.ts';
import type { Measure, Missing, Scene } from './scene.ts';

const NO_ARM: Missing = { missing: 'Has the seat an arm along the wall beside it?' };

/** Both long edges of the arm of an L seat, from the corner the seat is set out from, the nearer first. Units: mm. */
function armEdges(s: Scene, { place, variant }: Mark): readonly [number, number] | undefined {
	if (!variant.arm) return undefined;
	const { x0, x1 } = variant.arm;
	const [a, b] = [x0, x1].map((x) => alongSeatWall(s, place.wall, { x: place.x + x, off: 0 })) as [number, number];
	return a < b ? [a, b] : [b, a];
}

/** A seat on its wall. */
export const SEATS = {
	'seat-top-above-bathroom-floor': {
		what: 'Top of the seat, under no load, above the bathroom finish floor at the entry.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, seat) => seat.place.y - s.room.bathroomFloor
	},
	'seat-end-to-entry': {
		what: 'From the end of the seat to the far end of its wall: the entry line, or the edge of the entry.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => s.room.sitting.run - (centreLine(s, seat) + seat.variant.length / 2)
	},
	'seat-side-to-wall-beside': {
		what: 'From the side edge of the seat to the wall beside it at the corner it is set out from.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => centreLine(s, seat) - seat.variant.length / 2
	},
	'seat-off-centre': {
		what: 'From the centre line of the seat to the middle of its wall, without sign.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => Math.abs(centreLine(s, seat) - s.room.sitting.run / 2)
	},
	'seat-off-rims': {
		what: 'From the rims of the bath up to the top of a board on them, without sign; 0 for any other seat.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, seat) => {
			if (seat.variant.stands !== 'rims') return 0;
			if (!s.c.enclosure.threshold) return { missing: 'How high is the rim of the bath above the bathroom floor?' };
			return Math.abs(seat.place.y - s.room.bathroomFloor - s.room.step);
		}
	},
	'post-off-floor': {
		what: 'From the highest floor along its wall up to the foot of a post, without sign; 0 for what the wall holds.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => {
			if (m.variant.stands !== 'floor-and-ceiling') return 0;
			return Math.abs(m.place.y + m.variant.outline.y0 - s.room.walls[m.place.wall].bottom);
		}
	},
	'other-rail-beyond': {
		what: 'From one rail on along the seat wall to another, away from the corner the seat is set out from.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, a, b) =>
			alongSeatWall(s, b.place.wall, { x: b.place.x, off: 0 }) -
			alongSeatWall(s, a.place.wall, { x: a.place.x, off: 0 })
	},
	'off-seat-centre-line': {
		what: 'From the centre line of the seat to the middle of what is beside it on its wall, without sign.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, m, seat) => Math.abs(alongSeatWall(s, m.place.wall, { x: m.place.x, off: 0 }) - centreLine(s, seat))
	},
	'off-seat-front': {
		what: 'From the front edge of the seat to the middle of what the hand works, ahead of it or behind it, without sign.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'pair',
		of: (s, m, seat) => {
			const { grip, gripOff } = m.variant;
			const x = m.place.x + (grip.x0 + grip.x1) / 2;
			return Math.abs(fromSeatWall(s, m.place.wall, { x, off: gripOff }) - seatFront(s, seat));
		}
	},
	'off-the-seat-wall': {
		what: 'Whether it is on another wall than the one behind who sits.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (s, m) => (m.place.wall === s.room.seatWall ? 0 : 1)
	},
	'on-side-wall': {
		what: 'Whether it is on a wall that runs from the entry to the back.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (_, m) => (m.place.wall === 'left' || m.place.wall === 'right' ? 1 : 0)
	},
	'on-front-wall': {
		what: 'Whether it is on the wall beside the entry.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (_, m) => (m.place.wall === 'front' ? 1 : 0)
	},
	'seat-folds': {
		what: 'Whether the seat folds up against its wall; one on legs or on the rims of a bath does not.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (_, seat) => (seat.variant.stands === undefined ? 1 : 0)
	},
	'wall-alone-holds': {
		what: 'Whether a seat has no front legs beside the wall that holds it.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (_, seat) => (seat.variant.frontLegs === undefined ? 1 : 0)
	},
	'held-by-the-wall': {
		what: 'Whether the wall holds the part, not legs or a post between floor and ceiling.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: (_, m) => (m.variant.stands === undefined || m.variant.stands === 'rims' ? 1 : 0)
	},
	'seat-rear': {
		what: 'From the seat wall to the rear edge of the seat.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, seat) => seat.variant.gap
	},
	'seat-front': {
		what: 'From the seat wall to the front edge of the seat.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, seat) => seat.variant.depth
	},
	'seat-arm-rear': {
		what: 'From the wall beside an L seat, at the corner it is set out from, to the rear edge of its arm.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => armEdges(s, seat)?.[0] ?? NO_ARM
	},
	'seat-arm-front': {
		what: 'From the wall beside an L seat, at the corner it is set out from, to the front edge of its arm.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => armEdges(s, seat)?.[1] ?? NO_ARM
	},
	'seat-arm-end': {
		what: 'From the seat wall to the end of the arm of an L seat.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (_, seat) => seat.variant.arm?.to ?? NO_ARM
	}
} satisfies Record<string, Measure>;
