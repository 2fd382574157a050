import type { Pack, Quantity, Require, Row } from '../row.ts';

const FROM = {
	document: 'Approved Document M Volume 2, England, buildings other than dwellings',
	edition: '2015, amended 2020'
} as const;
const VOLUME_2 = { title: 'Approved Document M Volume 2, text and diagrams', how: 'seen' } as const;

const ROW = { ...FROM, source: VOLUME_2, origin: 'document' } as const;
const ASK = { of: 'case', measure: 'inside-width' } as const;
/** Ours: on a figure that stands alone in text or diagram; none is printed. */
const NOMINAL = { ourTolerance: 10 } as const;
/** A bath is another matter. */
const SHOWER = { type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] } as const;
const HERE = { when: SHOWER } as const;
const OPERATED = { of: 'control', purposes: ['run-water', 'set-temperature', 'divert'] } as const;
const ON_C = { on: 'corner-wall' } as const;
const LOWEST = { of: 'handset-rest', purposes: ['rest-handset'] } as const;
const HIGHEST = { of: 'handset-rest', purposes: ['hang-handset'] } as const;
const OPEN_SIDE = { of: 'fold-down-rail', purposes: ['push-up'], and: 'seat' } as const;
const AHEAD = { of: 'fold-down-rail', purposes: ['hold-ahead'] } as const;
const BESIDE = { of: 'horizontal-bar', purposes: ['rise', 'sit-steady'] } as const;

const mm = (n: number): Quantity => ({ n, unit: 'mm' });
const nominal = (n: number) => ({ min: mm(n), max: mm(n) });

const rows: readonly Row[] = [
	{
		...ROW,
		...HERE,
		id: 'U2-17-UPPER-LOW',
		clause: '4.30(e)',
		of: 'call-cord',
		measure: 'middle-from-high-floor',
		allowed: { min: mm(800) },
		says: 'The upper bangle of the pull cord is at least 800 mm above the floor.'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-17-UPPER-HIGH',
		clause: '4.30(e)',
		of: 'call-cord',
		measure: 'middle-from-low-floor',
		allowed: { max: mm(1000) },
		says: 'The upper bangle of the pull cord is at most 1000 mm above the floor.'
	},
	{
		...ROW,
		...ASK,
		...HERE,
		id: 'U2-17-LOWER',
		clause: '4.30(e), 5.18(e)',
		allowed: {
			ask: 'Is there a pull cord with a second bangle 100 mm above the floor, within reach of the seat and of the floor?'
		},
		says: 'A pull cord is reached from the seat and from the floor; its lower bangle is 100 mm above it.'
	},
	{
		...ROW,
		...ASK,
		...HERE,
		id: 'U2-18',
		clause: '5.4(k)',
		allowed: { ask: 'Do fittings, bars and rails stand out from the wall behind them?' },
		says: 'Fittings, bars and rails stand out from their background.'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-06-SEAT',
		clause: '5.18(b)',
		of: 'case',
		measure: 'seat-present',
		allowed: 'yes',
		says: 'There is a seat.'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-06-TIPS',
		clause: '5.18(b)',
		of: 'seat',
		measure: 'seat-folds',
		allowed: 'yes',
		says: 'The seat tips up.'
	},
	{
		...ROW,
		...ASK,
		...HERE,
		id: 'U2-06',
		clause: '5.18(b)',
		allowed: { ask: 'Is the seat slip resistant, and does no spring throw it up?' },
		says: 'The seat is slip resistant and not spring loaded.'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-19-SEAT-WALL',
		clause: '5.18(b)',
		of: 'case',
		measure: 'rail-on-seat-wall',
		allowed: 'yes',
		says: 'The wall behind the seat has a drop-down rail.'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-19-CONTROLS',
		clause: '5.18(b)',
		of: 'case',
		measure: 'rail-on-corner-wall',
		allowed: 'yes',
		says: 'The wall of the controls, at the corner of the seat, has a drop-down rail.'
	},
	{
		...ROW,
		...ASK,
		...HERE,
		id: 'U2-15',
		clause: '5.18(m), Diagram 23',
		allowed: {
			ask: 'Does a curtain, 1200 mm from the wall of the controls, go round the seat and the lowered rails, and is it drawn from the seat?'
		},
		says: 'A curtain goes round the seat and the lowered rails and is drawn from the seat.'
	},
	{
		...ROW,
		...ASK,
		...HERE,
		id: 'U2-16',
		clause: '5.18(n)',
		allowed: { ask: 'Is there a shelf that is reached from the seat or from the wheelchair?' },
		says: 'A shelf is reached from the seat or from the wheelchair.'
	},
	{
		...ROW,
		...OPERATED,
		...HERE,
		id: 'U2-12-LOW',
		clause: '5.18(q), Diagram 23',
		measure: 'middle-from-high-floor',
		allowed: { min: mm(750) },
		says: 'The middle of a control is at least 750 mm above the floor.'
	},
	{
		...ROW,
		...OPERATED,
		...HERE,
		id: 'U2-12-HIGH',
		clause: '5.18(q), Diagram 23',
		measure: 'middle-from-low-floor',
		allowed: { max: mm(1000) },
		says: 'The middle of a control is at most 1000 mm above the floor.'
	},
	{
		...ROW,
		id: 'U2-11-LENGTH',
		clause: 'Diagram 22',
		source: { title: VOLUME_2.title, how: 'derived' },
		of: 'vertical-bar',
		...HERE,
		...ON_C,
		measure: 'bar-length',
		allowed: { min: mm(500) },
		advice: true,
		says: 'An upright bar on the wall of the controls is at least 500 mm long.',
		note: 'Drawn so in a changing room; of a shower the diagrams name the bar without figures.'
	},
	{
		...ROW,
		...NOMINAL,
		id: 'U2-11-FOOT',
		clause: 'Diagram 22',
		source: { title: VOLUME_2.title, how: 'derived' },
		of: 'vertical-bar',
		...HERE,
		...ON_C,
		measure: 'foot-above-floor',
		allowed: nominal(800),
		advice: true,
		says: 'An upright bar on the wall of the controls begins 800 mm above the floor.',
		note: 'Drawn so in a changing room; of a shower the diagrams name the bar without figures.'
	},
	{
		...ROW,
		...NOMINAL,
		...BESIDE,
		...HERE,
		...ON_C,
		id: 'U2-10-Z-LOW',
		clause: 'Diagram 22',
		source: { title: VOLUME_2.title, how: 'derived' },
		measure: 'bar-top-from-high-floor',
		allowed: nominal(680),
		says: 'The top of the level bar on the wall of the controls is 680 mm above the floor, where the floor below it is highest.',
		note: 'Diagram 22 draws it level with the rails; Diagram 23 prints no height.'
	},
	{
		...ROW,
		...NOMINAL,
		...BESIDE,
		...HERE,
		...ON_C,
		id: 'U2-10-Z-HIGH',
		clause: 'Diagram 22',
		source: { title: VOLUME_2.title, how: 'derived' },
		measure: 'bar-top-from-low-floor',
		allowed: nominal(680),
		says: 'The top of the level bar on the wall of the controls is 680 mm above the floor, where the floor below it is lowest.',
		note: 'Diagram 22 draws it level with the rails; Diagram 23 prints no height.'
	},
	{
		...ROW,
		...NOMINAL,
		...HERE,
		id: 'U2-03',
		clause: 'Diagrams 22, 23',
		of: 'seat',
		measure: 'seat-top-above-bathroom-floor',
		allowed: nominal(480),
		says: 'The top of the seat is 480 mm above the floor.'
	},
	{
		...ROW,
		...NOMINAL,
		...HERE,
		id: 'U2-08',
		clause: 'Diagrams 22, 23',
		of: 'fold-down-rail',
		measure: 'middle-from-high-floor',
		allowed: nominal(680),
		says: 'The top of a drop-down rail is 680 mm above the floor.'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-02',
		clause: 'Diagrams 22, 23, 24',
		of: 'case',
		measure: 'turning-circle',
		allowed: { min: mm(1500) },
		says: 'There are 1500 by 1500 mm to turn in.',
		note: 'Drawn as a square; the widest circle is what is measured, so the corners of the square are looked at.'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-01-ALONG',
		clause: 'Diagram 23',
		of: 'case',
		measure: 'room-along',
		allowed: { min: mm(2000) },
		says: 'The room is at least 2000 mm long along the wall of the seat.',
		note: 'With a WC in the corner, 2400 mm (Diagram 24).'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-01-AHEAD',
		clause: 'Diagram 23',
		of: 'case',
		measure: 'room-ahead',
		allowed: { min: mm(2200) },
		says: 'The room is at least 2200 mm long at right angles to the wall of the seat.',
		note: 'With a WC in the corner, 2500 mm (Diagram 24).'
	},
	{
		...ROW,
		...NOMINAL,
		...HERE,
		id: 'U2-04',
		clause: 'Diagram 23',
		of: 'seat',
		measure: 'seat-centre-from-corner',
		allowed: nominal(500),
		says: 'The centre line of the seat is 500 mm from the wall of the controls.'
	},
	{
		...ROW,
		...NOMINAL,
		...HERE,
		id: 'U2-05',
		clause: 'Diagram 23',
		of: 'seat',
		measure: 'seat-front',
		allowed: nominal(650),
		says: 'The front edge of the seat is 650 mm from the wall behind it.'
	},
	{
		...ROW,
		...NOMINAL,
		...OPEN_SIDE,
		...HERE,
		id: 'U2-07',
		clause: 'Diagram 23',
		measure: 'off-seat-centre-line',
		allowed: { min: mm(300), max: mm(320) },
		says: 'The drop-down rail on the wall of the seat is 320 mm from the centre line of the seat.',
		note: 'Diagram 24 prints 300 mm: what lies between the two is taken as meant.'
	},
	{
		...ROW,
		...OPEN_SIDE,
		// Where a rail on both sides is wanted, the other one is not this one.
		when: { ...SHOWER, rises: ['alone', 'with-help', 'cannot', 'unknown'], sits: ['free', 'one-hand', 'unknown'] },
		id: 'U2-07-SIDE',
		clause: 'Diagram 23',
		measure: 'near-edge-from-centre-line',
		allowed: { min: mm(0) },
		says: 'The drop-down rail on the wall of the seat is on its open side, away from the wall of the controls.'
	},
	{
		...ROW,
		...NOMINAL,
		...AHEAD,
		...HERE,
		...ON_C,
		id: 'U2-09',
		clause: 'Diagram 23',
		source: { title: VOLUME_2.title, how: 'derived' },
		measure: 'middle-from-seat-wall',
		allowed: nominal(900),
		says: 'The drop-down rail on the wall of the controls is 900 mm from the wall of the seat.',
		note: 'Summed up from 250, 600 and 50 mm.'
	},
	{
		...ROW,
		...BESIDE,
		...HERE,
		id: 'U2-10-WALL',
		clause: 'Diagram 23',
		measure: 'on-corner-wall',
		allowed: 'yes',
		says: 'The level bar beside the seat is on the wall of the controls.'
	},
	{
		...ROW,
		...NOMINAL,
		...BESIDE,
		...HERE,
		...ON_C,
		id: 'U2-10-START',
		clause: 'Diagram 23',
		measure: 'bar-over-all-from-seat-wall',
		allowed: nominal(250),
		says: 'The level bar on the wall of the controls begins 250 mm from the wall of the seat.'
	},
	{
		...ROW,
		...NOMINAL,
		...BESIDE,
		...HERE,
		...ON_C,
		id: 'U2-10-LENGTH',
		clause: 'Diagram 23',
		measure: 'bar-over-all',
		allowed: nominal(600),
		says: 'The level bar on the wall of the controls is 600 mm long, from end to end.'
	},
	{
		...ROW,
		...OPERATED,
		...HERE,
		id: 'U2-13-WALL',
		clause: 'Diagram 23',
		measure: 'on-corner-wall',
		allowed: 'yes',
		says: 'The controls are on the wall at the corner of the seat, at right angles to the wall behind it.'
	},
	{
		...ROW,
		...NOMINAL,
		...HERE,
		...ON_C,
		id: 'U2-13-CONTROL',
		clause: 'Diagram 23',
		of: 'control',
		purposes: ['run-water'],
		measure: 'middle-from-seat-wall',
		allowed: nominal(500),
		says: 'The control is 500 mm from the wall of the seat.'
	},
	{
		...ROW,
		...HERE,
		id: 'U2-13-HEAD-WALL',
		clause: 'Diagram 23',
		of: 'handset-rest',
		measure: 'on-corner-wall',
		allowed: 'yes',
		says: 'The head of the shower is on the wall of the controls.'
	},
	{
		...ROW,
		...NOMINAL,
		...HERE,
		...ON_C,
		id: 'U2-13-HEAD',
		clause: 'Diagram 23',
		of: 'handset-rest',
		measure: 'middle-from-seat-wall',
		allowed: nominal(500),
		says: 'The head of the shower is 500 mm from the wall of the seat.'
	},
	{
		...ROW,
		...LOWEST,
		...HERE,
		id: 'U2-14-LOW',
		clause: 'Diagram 23',
		measure: 'middle-from-low-floor',
		allowed: { max: mm(1200) },
		says: 'The head of the shower is had as low as 1200 mm above the floor.',
		note: 'The rest of the hand shower stands for the lowest place of the head.'
	},
	{
		...ROW,
		...HIGHEST,
		...HERE,
		id: 'U2-14-HIGH',
		clause: 'Diagram 23',
		measure: 'middle-from-high-floor',
		allowed: { min: mm(1400) },
		says: 'The head of the shower is had as high as 1400 mm above the floor.',
		note: 'The high holder stands for the highest place of the head.'
	},
	{
		...ROW,
		...ASK,
		...HERE,
		id: 'U2-14',
		clause: 'Diagram 23',
		allowed: { ask: 'Does the head of the shower come off and stay at every height from 1200 to 1400 mm?' },
		says: 'The head of the shower comes off and is set at any height from 1200 to 1400 mm.'
	}
];

const REQUIRE = { ...FROM, source: VOLUME_2, ...HERE } as const;

const requires: readonly Require[] = [
	{
		...REQUIRE,
		id: 'U2-REQ-CORD',
		clause: '4.30(e), 5.18(e)',
		kind: 'call-cord',
		purpose: 'call',
		walls: ['seat-wall', 'control-wall', 'beside'],
		accessory: 'call-cord',
		says: 'A cord to call for help with is reached from the seat and from the floor.'
	},
	{
		...REQUIRE,
		id: 'U2-REQ-SEAT',
		clause: '5.18(b), Diagram 23',
		kind: 'seat',
		purpose: 'sit',
		walls: ['seat-wall'],
		part: 'seat-off-wall',
		accessory: 'seat',
		says: 'There is a tip-up seat, its front edge well off the wall behind it.'
	},
	{
		...REQUIRE,
		id: 'U2-REQ-RAIL-SEAT-WALL',
		clause: '5.18(b), Diagram 23',
		kind: 'fold-down-rail',
		purpose: 'push-up',
		walls: ['seat-wall'],
		accessory: 'rail-other',
		says: 'There is a drop-down rail on the open side of the seat.'
	},
	{
		...REQUIRE,
		id: 'U2-REQ-RAIL-CONTROLS',
		clause: '5.18(b), Diagram 23',
		kind: 'fold-down-rail',
		purpose: 'hold-ahead',
		walls: ['corner-wall'],
		accessory: 'rail-ahead',
		says: 'There is a drop-down rail on the wall of the controls, ahead of the seat.'
	},
	{
		...REQUIRE,
		id: 'U2-REQ-CONTROL',
		clause: '5.18(q), Diagram 23',
		kind: 'control',
		purpose: 'run-water',
		walls: ['corner-wall'],
		accessory: 'control',
		says: 'The water is turned on and off at a control.'
	},
	{
		...REQUIRE,
		id: 'U2-REQ-BAR',
		clause: 'Diagram 23',
		kind: 'horizontal-bar',
		purpose: 'rise',
		walls: ['corner-wall'],
		part: 'bar-over-all',
		accessory: 'bar-back',
		says: 'The wall of the controls has a level bar beside the seat.'
	},
	{
		...REQUIRE,
		id: 'U2-REQ-HEAD-LOW',
		clause: 'Diagram 23',
		kind: 'handset-rest',
		purpose: 'rest-handset',
		walls: ['corner-wall'],
		accessory: 'handset-rest',
		says: 'The head of the shower has a low place.'
	},
	{
		...REQUIRE,
		id: 'U2-REQ-HEAD-HIGH',
		clause: 'Diagram 23',
		kind: 'handset-rest',
		purpose: 'hang-handset',
		walls: ['corner-wall'],
		accessory: 'handset-holder',
		says: 'The head of the shower has a high place.'
	}
];

/** Approved Document M Volume 2 of England, as far as it speaks of a shower room used seated by one person. */
export const UK_ADM_2: Pack = {
	id: 'uk-adm-2',
	name: 'Approved Document M Volume 2',
	scope: {
		short: 'England M 2',
		binds:
			'Guidance in England for buildings other than dwellings: showers of sports buildings and of staff, and of hotel bedrooms (5.15 to 5.18, 4.19).',
		homes: 'It does not speak of homes.'
	},
	requires,
	rows,
	judgement: [
		'What was read is the 2015 edition with the amendments of 2020; later ones were not looked at.',
		'The diagrams print one figure where a range would be a tolerance, and none is stated: 10 mm to either side are ours.',
		'No load, no diameter and no gap to the wall of a rail in a shower is printed: the load of the plan is reckoned instead. Handrails of stairs (1.37) and the rail at a bath (Diagram 26) are other things.',
		'Control and head are taken at the middle of what the hand works; of several controls the one that runs the water is 500 mm from the wall of the seat.',
		'The head is had from 1200 to 1400 mm where its lowest place is no higher than the one and its highest no lower than the other: our reading. A rest and a high holder stand for both; whether it slides between them is asked.',
		'The level bar is taken from end to end, flanges included: from the middles of its flanges it would meet the drop-down rail beyond it.',
		'A drop-down rail on the seat wall is 320 mm from the centre line in Diagram 23, 300 mm in Diagram 24; one nearer the corner, which neither draws, is held to the same.',
		'The seat is measured from the bathroom floor, all else from the floor directly below.',
		'How wide and how deep the seat is, and how far out its back rest: no figure is printed.',
		'How long the drop-down rails are: no figure is printed.',
		'An upright bar on the wall of the controls is not asked for: Diagram 24 names it and prints no place.',
		'Whether seats for either side of transfer are offered (5.18(a)): the record holds one shower.',
		'Where the towel rail is (Diagram 23), and how hot a heat emitter gets (5.4(j)).',
		'Showers over a bath are not judged.'
	]
};
