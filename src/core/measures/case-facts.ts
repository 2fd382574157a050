import { VARIANTS, type Accessory, type Kind } from '#core/case/accessory.ts';
import { sidesOf } from '#core/case/roles.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { clientOf } from './client.ts';
import type { Measure, Reading } from './scene.ts';
import { farSide, NO_FRONT_WALL } from './where.ts';

const yes = (fact: boolean): number => (fact ? 1 : 0);

function known(fact: { readonly value: number } | undefined, missing: string): Reading {
	return fact ? fact.value : { missing };
}

/** What of a kind is wanted on one wall and nowhere else. */
const on = (wanted: readonly Accessory[], kind: Kind, wall: WallId | undefined): readonly Accessory[] =>
	wanted.filter((a) => a.kind === kind && a.slots.length > 0 && a.slots.every((slot) => slot.wall === wall));

const barOn = (wanted: readonly Accessory[], wall: WallId): boolean => on(wanted, 'horizontal-bar', wall).length > 0;

const L_BARS = new Set(VARIANTS.filter(({ upright }) => upright).map(({ id }) => id));

const hasUpright = ({ slots }: Accessory): boolean => slots.every(({ variant }) => L_BARS.has(variant));

const HOLDS: readonly Kind[] = ['horizontal-bar', 'vertical-bar', 'fold-down-rail'];

const has = (wanted: readonly Accessory[], kind: Kind): boolean => wanted.some((a) => a.kind === kind);

/** What the record says by itself, before anything has a place. */
export const CASE_FACTS = {
	'inside-width': {
		what: 'Inside width of the compartment, along the back wall.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => s.room.footprint.width
	},
	'inside-depth': {
		what: 'Inside depth of the compartment, from the back wall to the entry line.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => s.room.footprint.depth
	},
	'force-asked': {
		what: 'Force every bracket that holds a person is asked to carry.',
		unit: 'N',
		slope: 0,
		about: 'case',
		of: (s) => s.holds.demand.force
	},
	'entry-width': {
		what: 'Clear width of the entry.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.entryWidth, 'How wide is the entry, clear?')
	},
	'outside-width': {
		what: 'Clear floor outside the entry, measured away from the entry line.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.clearWidth, 'How deep is the clear floor in front of the entry?')
	},
	'outside-length': {
		what: 'Clear floor outside the entry, along the entry line from the plane of the control wall.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) =>
			known(s.c.enclosure.clearLength, 'How long is the clear floor along the entry, from the control wall onward?')
	},
	threshold: {
		what: 'Rise of the threshold above the bathroom floor.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.threshold, 'How high is the threshold at the entry?')
	},
	'floor-fall': {
		what: 'Fall of the shower floor, rise over run.',
		unit: 'ratio',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.fall, 'How much does the shower floor fall over its length?')
	},
	'water-temperature': {
		what: 'Temperature of the mixed water at the hand shower.',
		unit: 'degC',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.water, 'How hot does the mixed water get at the hand shower?')
	},
	'hose-length': {
		what: 'Length of the hose of the hand shower.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.hose, 'How long is the hose of the hand shower?')
	},
	'transfer-side-agrees': {
		what: 'Whether the seat lies to the side the client moves to: a seat on the left wall lies to the left of who faces the control wall.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s) => {
			const side = clientOf(s.c).person.movesIn?.value;
			if (side === undefined)
				return { missing: 'To which own side, left or right, does the client move to get on the seat?' };
			return yes(side === s.room.seatWall);
		}
	},
	'transfer-side-out-agrees': {
		what: 'Whether the entry lies to the side the client moves to from the seat: to the right where the seat is on the left wall.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s) => {
			const side = clientOf(s.c).person.movesOut?.value;
			if (side === undefined)
				return { missing: 'To which own side, left or right, does the client move to leave the seat?' };
			return yes(side !== s.room.seatWall);
		}
	},
	'seat-present': {
		what: 'Whether there is a seat.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (_, wanted) => yes(has(wanted, 'seat'))
	},
	'bar-on-control-wall': {
		what: 'Whether the control wall has a horizontal bar.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s, wanted) => yes(barOn(wanted, s.room.controlWall))
	},
	'bar-on-back-wall': {
		what: 'Whether the back wall has a horizontal bar.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (_, wanted) => yes(barOn(wanted, 'back'))
	},
	'bar-on-seat-wall': {
		what: 'Whether the wall at the back of who washes has a horizontal bar.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s, wanted) => yes(barOn(wanted, s.room.seatWall))
	},
	'bar-on-far-side-wall': {
		what: 'Whether the side wall farthest from the entry has a horizontal bar.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s, wanted) => {
			const far = farSide(s.room);
			return far === undefined ? { missing: NO_FRONT_WALL } : yes(barOn(wanted, far));
		}
	},
	'inside-least': {
		what: 'The lesser of inside width and depth of the compartment.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: ({ room: { footprint } }) => Math.min(footprint.width, footprint.depth)
	},
	'inside-most': {
		what: 'The greater of inside width and depth of the compartment.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: ({ room: { footprint } }) => Math.max(footprint.width, footprint.depth)
	},
	'turning-circle': {
		what: 'Diameter of the largest circle free to turn in.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.turning, 'How wide is the largest circle free to turn in?')
	},
	'turning-over-shower': {
		what: 'How far the circle to turn in lies over the shower.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.turningOver, 'How far does the circle to turn in lie over the shower?')
	},
	'beside-seat-length': {
		what: 'Floor free beside the seat, along the way one sits.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.besideLength, 'How long is the floor free beside the seat, along the way one sits?')
	},
	'beside-seat-width': {
		what: 'Floor free beside the seat, across the way one sits.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.besideWidth, 'How wide is the floor free beside the seat?')
	},
	'room-along': {
		what: 'The bathroom wall to wall, along the seat wall.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.roomAlong, 'How long is the bathroom along the wall of the seat, wall to wall?')
	},
	'room-ahead': {
		what: 'The bathroom wall to wall, at right angles to the seat wall.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) =>
			known(s.c.enclosure.roomAhead, 'How long is the bathroom at right angles to the wall of the seat, wall to wall?')
	},
	'clear-floor-past-width': {
		what: 'Clear floor along the entry line, less the inside width of the compartment.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => {
			const { clearLength } = s.c.enclosure;
			if (!clearLength) return { missing: 'How long is the clear floor along the entry?' };
			return clearLength.value - s.room.footprint.width;
		}
	},
	'front-wall-length': {
		what: 'Length of the wall beside the entry.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => known(s.c.enclosure.frontWall?.length, NO_FRONT_WALL)
	},
	'drain-present': {
		what: 'Whether there is a drain in the floor.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s) => (s.c.enclosure.drain ? 1 : { missing: 'Is there a drain in the floor, and where?' })
	},
	'support-present': {
		what: 'Whether there is a bar or a rail to hold.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (_, wanted) => yes(wanted.some(({ kind }) => HOLDS.includes(kind)))
	},
	'rail-on-seat-wall': {
		what: 'Whether the wall behind who sits has a fold-down rail.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s, wanted) => yes(on(wanted, 'fold-down-rail', s.room.seatWall).length > 0)
	},
	'rail-on-corner-wall': {
		what: 'Whether the wall at the corner the seat is set out from has a fold-down rail.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s, wanted) => yes(on(wanted, 'fold-down-rail', sidesOf(s.c.enclosure, 'corner-wall')[0]).length > 0)
	},
	'vertical-bar-on-seat-wall': {
		what: 'Whether the wall behind who sits has an upright bar.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s, wanted) => yes(on(wanted, 'vertical-bar', s.room.seatWall).length > 0)
	},
	'vertical-bar-on-control-wall': {
		what: 'Whether the wall opposite the seat has an upright bar.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (s, wanted) => yes(on(wanted, 'vertical-bar', s.room.controlWall).length > 0)
	},
	'l-bar-on-back-wall': {
		what: 'Whether the wall opposite the entry has a bar with an upright leg.',
		unit: 'yes',
		slope: 0,
		about: 'case',
		of: (_, wanted) => yes(on(wanted, 'horizontal-bar', 'back').some(hasUpright))
	}
} satisfies Record<string, Measure>;
