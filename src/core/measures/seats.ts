import { centreLine } from './where.ts';
import type { Measure } from './scene.ts';

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
		what: 'From the end of the seat to the entry line.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => s.room.footprint.depth - (centreLine(s, seat) + seat.variant.length / 2)
	},
	'seat-side-to-back-wall': {
		what: 'From the side edge of the seat to the back wall.',
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
		of: (s, seat) => Math.abs(centreLine(s, seat) - s.room.footprint.depth / 2)
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
	}
} satisfies Record<string, Measure>;
