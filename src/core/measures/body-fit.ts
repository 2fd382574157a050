import type { Estimate } from '#core/body/estimate.ts';
import type { Mark } from '#core/case/accessory.ts';
import type { Dimension } from '#core/body/survey.ts';
import type { Measure, Reading, Scene } from './scene.ts';
import { centreLine, seatEdge } from './where.ts';

// One-sided 95 % of a normal spread.
const DEVIATIONS = 1.645;
// A hand goes lower after a slip than where it would rest. Source: study of bar grasps, 2025, doi 10.2196/69442: 9.4 %.
const LOWER_AFTER_A_SLIP = 0.9;

const ASK: Readonly<Partial<Record<Dimension, string>>> = {
	popliteal: 'How high is it from the floor to under the knee, barefoot?',
	elbowAboveSeat: 'How high is the elbow above the seat, the upper arm hanging?',
	hipBreadth: 'How wide are the hips, sitting?',
	wristStanding: 'How high is the wrist, standing?',
	shoulderStanding: 'How high is the shoulder, standing?',
	shoulderAboveSeat: 'How high is the shoulder above the seat, as usual?'
};

/** A quantity that hangs on one dimension of a body: between its bounds where that is only estimated. */
function on(s: Scene, m: Mark, name: Dimension, of: (value: number) => number): Reading {
	const dim: Estimate | undefined = s.bodies[m.accessory.for]?.dims[name];
	const missing = ASK[name] ?? `How much is it: ${name}?`;
	if (!dim) return { missing };
	if (dim.how !== 'estimated') return of(dim.value);
	const by = DEVIATIONS * dim.sd;
	return { best: of(dim.value + by), sure: of(dim.value - by), missing };
}

/**
 * Level of the floor where the feet stand: below the front edge of the seat; of a board over a bath the lower of the
 * floors on both sides of the rim, for one sits down and rises outside.
 */
function feet(s: Scene, seat: Mark): number {
	const [x, y] = seatEdge(s, seat);
	const below = s.room.floorAt(x, y);
	return seat.variant.stands === 'rims' ? Math.min(below, s.room.bathroomFloor) : below;
}

const seatOver = (share: number) => (s: Scene, seat: Mark) =>
	on(s, seat, 'popliteal', (under) => seat.place.y - feet(s, seat) - share * under);

/** How a seat and an entry bar suit one body. */
export const BODY_FIT = {
	'seat-above-knee-fold': {
		what: 'Seat above the floor at the feet, less the height under the knee; above 0 the feet hang.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: seatOver(1)
	},
	'seat-above-easy-rise': {
		what: 'Seat above the floor at the feet, less 110 % of the height under the knee; above 0 rising is easy.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: seatOver(1.1)
	},
	'seat-above-high-rise': {
		what: 'Seat above the floor at the feet, less 120 % of the height under the knee; above 0 the feet lose the floor.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: seatOver(1.2)
	},
	'seat-above-chair': {
		what: 'Top of the seat above the top of the seat of the wheeled chair on the bathroom floor.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, seat) => {
			const chair = s.c.people[seat.accessory.for]?.chair.seatHeight;
			if (!chair) return { missing: 'How high is the seat of the wheeled chair?' };
			return seat.place.y - s.room.bathroomFloor - chair.value;
		}
	},
	'seat-beyond-hips': {
		what: 'Width of the seat less the breadth of the hips.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: (s, seat) => on(s, seat, 'hipBreadth', (hips) => seat.variant.length - hips)
	},
	'hips-from-wall-beside': {
		what: 'From the wall beside the seat, at the corner it is set out from, to the nearer hip of somebody in its middle.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => on(s, seat, 'hipBreadth', (hips) => centreLine(s, seat) - hips / 2)
	},
	'above-elbow': {
		what: 'From the elbow of who sits, the upper arm hanging, up to what her arm pushes on.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'pair',
		of: (s, m, seat) => on(s, m, 'elbowAboveSeat', (elbow) => m.place.y - seat.place.y - elbow)
	},
	'holder-above-sitter': {
		what: 'From the shoulder of who sits up to a holder.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'pair',
		of: (s, m, seat) => on(s, m, 'shoulderAboveSeat', (shoulder) => m.place.y - seat.place.y - shoulder)
	},
	'holder-above-shoulder': {
		what: 'From the shoulder of who stands in the middle of the shower up to a holder.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, m) => {
			const { width, depth } = s.room.footprint;
			const floor = s.room.floorAt(width / 2, depth / 2);
			return on(s, m, 'shoulderStanding', (shoulder) => m.place.y - floor - shoulder);
		}
	},
	'foot-below-wrist': {
		what: 'From the lower flange centre of a vertical bar up to a tenth below the wrist of somebody at the entry.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, bar) =>
			on(s, bar, 'wristStanding', (wrist) => s.room.bathroomFloor + LOWER_AFTER_A_SLIP * wrist - bar.place.y)
	},
	'head-above-shoulder': {
		what: 'From the shoulder of somebody at the entry up to the upper flange centre of a vertical bar.',
		unit: 'mm',
		slope: 1,
		along: 'y',
		about: 'mark',
		of: (s, bar) =>
			on(s, bar, 'shoulderStanding', (shoulder) => bar.place.y + bar.variant.length - s.room.bathroomFloor - shoulder)
	}
} satisfies Record<string, Measure>;
