import type { Accessory, Kind } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { clientOf } from './client.ts';
import type { Measure, Reading } from './scene.ts';
import { farSide, NO_FRONT_WALL } from './where.ts';

const yes = (fact: boolean): number => (fact ? 1 : 0);

function known(fact: { readonly value: number } | undefined, missing: string): Reading {
	return fact ? fact.value : { missing };
}

const barOn = (wanted: readonly Accessory[], wall: WallId): boolean =>
	wanted.some((a) => a.kind === 'horizontal-bar' && a.slots.length > 0 && a.slots.every((slot) => slot.wall === wall));

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
	}
} satisfies Record<string, Measure>;
