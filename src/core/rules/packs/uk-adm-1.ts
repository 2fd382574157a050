import type { Pack, Quantity, Row } from '../row.ts';

const ROW = {
	document: 'Approved Document M Volume 1, England, dwellings',
	edition: '2015, amended 2016',
	source: { title: 'Approved Document M Volume 1, text and diagrams', how: 'seen' },
	origin: 'document'
} as const;
const ASK = { of: 'case', measure: 'inside-width' } as const;
/** A bath is no level access shower, nor is one that is planned over it. */
const SHOWER = { type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] } as const;
const M4_2 = { ...SHOWER, category: ['m4-2'] } as const;
const ADAPTABLE = { ...SHOWER, category: ['m4-3-adaptable'] } as const;
const ACCESSIBLE = { ...SHOWER, category: ['m4-3-accessible'] } as const;
const M4_3 = { ...SHOWER, category: ['m4-3-adaptable', 'm4-3-accessible'] } as const;
const ANY_CATEGORY = { ...SHOWER, category: ['m4-2', 'm4-3-adaptable', 'm4-3-accessible'] } as const;
const WORKED = { of: 'control', purposes: ['run-water', 'set-temperature', 'divert'] } as const;

const mm = (n: number): Quantity => ({ n, unit: 'mm' });

const IN_CLOAKROOM = 'In a WC or cloakroom 1000 by 1000 mm is enough.';
const NOT_NAMED = 'The clause does not name a shower valve.';
/** The clause names switches, sockets, stopcocks and controls; that a shower valve is one of them is our reading. */
const VALVE = {
	...ROW,
	...WORKED,
	advice: true,
	note: NOT_NAMED
} as const;

const rows: readonly Row[] = [
	{
		...ROW,
		...ASK,
		id: 'U1-00',
		clause: 'M4(2), M4(3)',
		when: { ...SHOWER, category: ['unknown'], newBuilt: ['yes', 'unknown'] },
		allowed: {
			ask: 'Is this a new dwelling in England, and which category does a planning condition ask of it: M4(2), M4(3) adaptable or M4(3) accessible?'
		},
		says: 'The category that a planning condition asks of a new dwelling is known.'
	},
	{
		...ROW,
		...ASK,
		id: 'U1-08-M42',
		clause: '2.26',
		when: M4_2,
		allowed: { ask: 'Do walls, ducts and boxings carry 1.5 kN/m2?' },
		says: 'The walls carry 1.5 kN/m2.',
		note: 'High loads at a point may want more strength there: the load of this plan is reckoned by itself.'
	},
	{
		...VALVE,
		id: 'U1-09-M42-LOW',
		clause: '2.30(b)',
		when: M4_2,
		measure: 'middle-from-high-floor',
		allowed: { min: mm(450) },
		says: 'The centre line of a control is at least 450 mm above the floor.'
	},
	{
		...VALVE,
		id: 'U1-09-M42-HIGH',
		clause: '2.30(b)',
		when: M4_2,
		measure: 'middle-from-low-floor',
		allowed: { max: mm(1200) },
		says: 'The centre line of a control is at most 1200 mm above the floor.'
	},
	{
		...VALVE,
		id: 'U1-10-M42',
		clause: '2.30(b)',
		when: M4_2,
		measure: 'middle-from-corner',
		allowed: { min: mm(300) },
		says: 'A control is at least 300 mm from an inside corner.'
	},
	{
		...ROW,
		id: 'U1-01-M42',
		clause: 'Diagram 2.5',
		of: 'case',
		when: M4_2,
		measure: 'inside-least',
		allowed: { min: mm(1000) },
		says: 'The level access shower is at least 1000 by 1000 mm.'
	},
	{
		...ROW,
		...ASK,
		id: 'U1-06',
		clause: '3.36(c)',
		when: M4_3,
		allowed: { ask: 'Is the room of the shower a wet room?' },
		says: 'The room of the shower is a wet room.'
	},
	{
		...ROW,
		...ASK,
		id: 'U1-08-M43',
		clause: '3.36(d)',
		when: M4_3,
		allowed: { ask: 'Do walls, ducts and boxings carry 1.5 kN/m2?' },
		says: 'The walls carry 1.5 kN/m2.',
		note: 'High loads at a point may want more strength there: the load of this plan is reckoned by itself.'
	},
	{
		...ROW,
		...ASK,
		id: 'U1-11',
		clause: '3.36(e)',
		when: M4_3,
		allowed: { ask: 'Does the ceiling carry a hoist with a load of 200 kg?' },
		says: 'The ceiling carries a hoist with a load of 200 kg.'
	},
	{
		...ROW,
		...WORKED,
		id: 'U1-07-SEAT-WALL',
		clause: '3.43(d)',
		when: ACCESSIBLE,
		measure: 'off-the-seat-wall',
		allowed: 'yes',
		says: 'The controls are on another wall than the seat.'
	},
	{
		...ROW,
		...WORKED,
		id: 'U1-07-ADJACENT',
		clause: '3.43(d)',
		when: ACCESSIBLE,
		measure: 'on-control-wall',
		allowed: 'no',
		says: 'The controls are on a wall that makes a corner with the one of the seat, not on the one opposite.'
	},
	{
		...VALVE,
		id: 'U1-09-M43-LOW',
		clause: '3.44(b)',
		when: M4_3,
		measure: 'middle-from-high-floor',
		allowed: { min: mm(700) },
		says: 'The centre line of a control is at least 700 mm above the floor.'
	},
	{
		...VALVE,
		id: 'U1-09-M43-HIGH',
		clause: '3.44(b)',
		when: M4_3,
		measure: 'middle-from-low-floor',
		allowed: { max: mm(1000) },
		says: 'The centre line of a control is at most 1000 mm above the floor.'
	},
	{
		...VALVE,
		id: 'U1-10-M43',
		clause: '3.44(b)',
		when: M4_3,
		measure: 'middle-from-corner',
		allowed: { min: mm(700) },
		says: 'A control is at least 700 mm from an inside corner.',
		note: `${NOT_NAMED} Volume 2 has one 500 mm from the wall of the seat.`
	},
	{
		...ROW,
		id: 'U1-01-AD',
		clause: 'Diagram 3.10',
		of: 'case',
		when: ADAPTABLE,
		measure: 'inside-least',
		allowed: { min: mm(1200) },
		says: 'The level access shower is at least 1200 by 1200 mm.',
		note: IN_CLOAKROOM
	},
	{
		...ROW,
		id: 'U1-01-ACC',
		clause: 'Diagram 3.11',
		of: 'case',
		when: ACCESSIBLE,
		measure: 'inside-least',
		allowed: { min: mm(1200) },
		says: 'The level access shower is at least 1200 by 1200 mm.',
		note: `Where it widens to that when the bath beside it goes, 1000 by 1200 mm is enough. ${IN_CLOAKROOM}`
	},
	{
		...ROW,
		id: 'U1-02',
		clause: 'Diagrams 2.5, 3.10, 3.11',
		of: 'case',
		when: ANY_CATEGORY,
		measure: 'outside-width',
		allowed: { min: mm(500) },
		says: 'Along an open side of the shower 500 mm of floor are clear.'
	},
	{
		...ROW,
		...ASK,
		id: 'U1-02-BOTH',
		clause: 'Diagram 3.11',
		when: ACCESSIBLE,
		allowed: {
			ask: 'Are 500 mm of floor clear along both open sides of the shower, with fittings up to 500 mm into one of them at most?'
		},
		says: 'Along both open sides of the shower 500 mm of floor are clear; fittings come into one of them only, up to 500 mm.'
	},
	{
		...ROW,
		id: 'U1-03',
		clause: 'Diagrams 2.5, 3.10, 3.11',
		of: 'case',
		when: ANY_CATEGORY,
		measure: 'turning-circle',
		allowed: { min: mm(1500) },
		says: 'A circle of 1500 mm is free to turn in; it may lie over the shower.'
	},
	{
		...ROW,
		id: 'U1-04',
		clause: 'Diagram 3.11',
		of: 'case',
		when: ACCESSIBLE,
		measure: 'turning-over-shower',
		allowed: { max: mm(500) },
		says: 'The circle to turn in lies over the shower by 500 mm at most.'
	},
	{
		...ROW,
		id: 'U1-05',
		clause: 'Appendix A',
		of: 'case',
		when: ANY_CATEGORY,
		measure: 'threshold',
		allowed: { max: mm(0) },
		says: 'The shower has no lip or upstand.'
	}
];

/** Approved Document M Volume 1 of England, as far as it speaks of a level access shower in a new dwelling. */
export const UK_ADM_1: Pack = {
	id: 'uk-adm-1',
	name: 'Approved Document M Volume 1',
	scope: {
		short: 'England M 1',
		binds: 'New dwellings in England where a planning condition asks for category M4(2) or M4(3).',
		homes: 'A home that stands, or an adaptation in one, is not bound.'
	},
	requires: [],
	rows,
	judgement: [
		'What was read is the 2015 edition with the amendments of 2016; later ones were not looked at.',
		'It prints no height of a seat, a rail or a hand shower, no diameter of a rail and no temperature: none is borrowed from Volume 2.',
		'No seat, rail or bar is asked for, so none is placed because of it.',
		'That a shower valve is one of the controls of 2.30 and 3.44 is our reading: its height and its distance from a corner are told and never steer.',
		'Whether the room is a WC or a cloakroom, or the shower widens when a bath goes: smaller sizes are allowed there, and the record does not tell.',
		'How far along its open side the clear floor runs, and where the circle to turn in lies.',
		'That the shower is in a corner (3.43d): a compartment of any type in the record has one.',
		'That adjacent walls are walls at right angles to each other (3.43d) is our reading.',
		'Whether 800 mm lie between the centre line of the WC and the edge of the shower (Diagram 3.11): the WC is not in the record.',
		'Whether the falls of the floor are shallow (Appendix A): no figure is printed.',
		'Showers over a bath are not judged.'
	]
};
