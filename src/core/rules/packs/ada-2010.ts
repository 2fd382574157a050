import type { Pack, Quantity, Require, Row } from '../row.ts';

const FROM = { document: 'ADA Standards', edition: '2010' } as const;
const CHAPTER_3 = { title: 'US Access Board, ADA Standards, chapter 3', how: 'seen' } as const;
const CHAPTER_6 = { title: 'US Access Board, ADA Standards, chapter 6', how: 'seen' } as const;

const ROW = { ...FROM, source: CHAPTER_6, origin: 'document' } as const;
const ASK = { of: 'case', measure: 'inside-width' } as const;
const TRANSFER = { type: ['transfer'] } as const;
const ROLL_IN = { type: ['roll-in'] } as const;
const ALTERNATE = { type: ['alternate-roll-in'] } as const;
const ROLLED_IN = { type: ['roll-in', 'alternate-roll-in'] } as const;
const OF_ADA = { type: ['transfer', 'roll-in', 'alternate-roll-in'] } as const;
const SEATED = { seat: ['yes'] } as const;
const SEATLESS = { seat: ['no'] } as const;
/** A bath is another matter (607): what is a shower compartment, of the three types or of none. */
const SHOWER = { type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] } as const;
const ANY_BAR = { of: 'any', purposes: ['steady', 'rise', 'sit-steady', 'step-in', 'step-out'] } as const;
/** What is worked by hand and has no heights of its own in 608. */
const CORD = { source: CHAPTER_3, of: 'call-cord' } as const;
const FROM_FRONT = { and: 'seat', when: { approach: ['forward'] } } as const;
const FROM_SIDE = { and: 'seat', when: { approach: ['side'] } } as const;
const OPERATED = { of: 'any', purposes: ['run-water', 'set-temperature', 'divert', 'rest-handset'] } as const;

/** Ours: what stands for the conventional tolerance of 104.1.1 on an absolute value, about 1/8 in. */
const ABSOLUTE = { ourTolerance: 3 } as const;

const inches = (n: number, printed: number): Quantity => ({ n, unit: 'in', printed });
const absolute = (n: number, printed: number) => ({ min: inches(n, printed), max: inches(n, printed) });

const RANGE_BAR = { min: inches(33, 840), max: inches(36, 915) };
const DWELLING = 'In a dwelling, walls reinforced for it may stand in for it.';

const rows: readonly Row[] = [
	{
		...ROW,
		...ASK,
		id: 'ADA-SLOPE',
		clause: '304.2, 305.2',
		source: CHAPTER_3,
		allowed: { ask: 'Is the clear floor outside the entry no steeper than 1:48, without steps?' },
		says: 'The clear floor outside the entry is no steeper than 1:48.'
	},
	{
		...ROW,
		id: 'ADA-TURN',
		clause: '304.3.1',
		source: CHAPTER_3,
		of: 'case',
		measure: 'turning-circle',
		allowed: { min: inches(60, 1525) },
		says: 'In the bathroom a circle of at least 60 in is free to turn in.',
		note: 'A T-shaped space may stand in for the circle (304.3.2); it is looked at.'
	},
	{
		...ROW,
		...CORD,
		id: 'ADA-REACH-LOW',
		clause: '308.2.1, 308.3.1',
		measure: 'envelope-bottom-above-bathroom-floor',
		allowed: { min: inches(15, 380) },
		says: 'The call cord is worked at least 15 in above the floor.',
		note: 'The upper bangle counts; the lower one is for who has fallen.'
	},
	{
		...ROW,
		...CORD,
		id: 'ADA-REACH-HIGH',
		clause: '308.2.1, 308.3.1',
		measure: 'envelope-top-above-bathroom-floor',
		allowed: { max: inches(48, 1220) },
		says: 'The call cord is worked at most 48 in above the floor.'
	},
	{
		...ROW,
		...CORD,
		...FROM_FRONT,
		id: 'ADA-REACH-F-OVER',
		clause: '308.2.2',
		measure: 'over-seat-from-front',
		allowed: { max: inches(44, 1120) },
		says: 'From a chair facing the seat, what is reached more than 20 in deep over it is at most 44 in above the floor.',
		note: 'Less deep up to 48 in; between 16 and 20 in deep the limit falls inch by inch, which is ours.'
	},
	{
		...ROW,
		...CORD,
		...FROM_FRONT,
		id: 'ADA-REACH-F-DEPTH',
		clause: '308.2.2',
		measure: 'over-seat-depth',
		allowed: { max: inches(25, 635) },
		says: 'From a chair facing the seat nothing is reached more than 25 in deep over it.'
	},
	{
		...ROW,
		...CORD,
		...FROM_SIDE,
		id: 'ADA-REACH-S-OVER',
		clause: '308.3.2',
		measure: 'over-seat-from-side',
		allowed: { max: inches(46, 1170) },
		says: 'From a chair with its side to the seat, what is reached more than 10 in deep over it is at most 46 in above the floor.',
		note: 'Less deep up to 48 in; between 8 and 10 in deep the limit falls inch by inch, which is ours.'
	},
	{
		...ROW,
		...CORD,
		...FROM_SIDE,
		id: 'ADA-REACH-S-SEAT',
		clause: '308.3.2',
		measure: 'over-seat-top',
		allowed: { max: inches(34, 865) },
		says: 'A seat reached over from the side is at most 34 in high.'
	},
	{
		...ROW,
		...CORD,
		...FROM_SIDE,
		id: 'ADA-REACH-S-DEPTH',
		clause: '308.3.2',
		measure: 'over-seat-depth',
		allowed: { max: inches(24, 610) },
		says: 'From a chair with its side to the seat nothing is reached more than 24 in deep over it.'
	},
	{
		...ROW,
		...ABSOLUTE,
		id: 'ADA-SIZE-T-WIDTH',
		clause: '608.2.1',
		of: 'case',
		when: TRANSFER,
		measure: 'inside-width',
		allowed: absolute(36, 915),
		says: 'The compartment is 36 in wide inside.'
	},
	{
		...ROW,
		...ABSOLUTE,
		id: 'ADA-SIZE-T-DEPTH',
		clause: '608.2.1',
		of: 'case',
		when: TRANSFER,
		measure: 'inside-depth',
		allowed: absolute(36, 915),
		says: 'The compartment is 36 in deep inside.'
	},
	{
		...ROW,
		id: 'ADA-ENTRY',
		clause: '608.2.1',
		of: 'case',
		when: TRANSFER,
		measure: 'entry-width',
		allowed: { min: inches(36, 915) },
		says: 'The entry is at least 36 in wide.'
	},
	{
		...ROW,
		id: 'ADA-CLR-T-WIDTH',
		clause: '608.2.1',
		of: 'case',
		when: TRANSFER,
		measure: 'outside-width',
		allowed: { min: inches(36, 915) },
		says: 'The clear floor outside the entry is at least 36 in wide.'
	},
	{
		...ROW,
		id: 'ADA-CLR-T-LENGTH',
		clause: '608.2.1',
		of: 'case',
		when: TRANSFER,
		measure: 'outside-length',
		allowed: { min: inches(48, 1220) },
		says: 'The clear floor outside the entry is at least 48 in long, measured from the control wall.'
	},
	{
		...ROW,
		id: 'ADA-SIZE-S-WIDTH',
		clause: '608.2.2',
		of: 'case',
		when: ROLL_IN,
		measure: 'inside-width',
		allowed: { min: inches(60, 1525) },
		says: 'The compartment is at least 60 in wide inside.'
	},
	{
		...ROW,
		id: 'ADA-SIZE-S-DEPTH',
		clause: '608.2.2',
		of: 'case',
		when: ROLL_IN,
		measure: 'inside-depth',
		allowed: { min: inches(30, 760) },
		says: 'The compartment is at least 30 in deep inside.'
	},
	{
		...ROW,
		id: 'ADA-ENTRY-S',
		clause: '608.2.2',
		of: 'case',
		when: ROLL_IN,
		measure: 'entry-width',
		allowed: { min: inches(60, 1525) },
		says: 'The entry is at least 60 in wide.'
	},
	{
		...ROW,
		id: 'ADA-CLR-S-WIDTH',
		clause: '608.2.2.1',
		of: 'case',
		when: ROLL_IN,
		measure: 'outside-width',
		allowed: { min: inches(30, 760) },
		says: 'The clear floor outside the entry is at least 30 in wide.'
	},
	{
		...ROW,
		id: 'ADA-CLR-S-LENGTH',
		clause: '608.2.2.1',
		of: 'case',
		when: ROLL_IN,
		measure: 'outside-length',
		allowed: { min: inches(60, 1525) },
		says: 'The clear floor outside the entry is at least 60 in long, beside the open face.'
	},
	{
		...ROW,
		...ASK,
		id: 'ADA-CLR-S-LAVATORY',
		clause: '608.2.2.1',
		when: ROLL_IN,
		allowed: {
			ask: 'Does nothing stand in the clear floor along the entry, but for one lavatory to roll under at an end where neither controls nor seat are?'
		},
		says: 'In the clear floor along the entry stands at most one lavatory, at the end away from controls and seat.'
	},
	{
		...ROW,
		...ABSOLUTE,
		id: 'ADA-SIZE-A',
		clause: '608.2.3',
		of: 'case',
		when: ALTERNATE,
		measure: 'inside-depth',
		allowed: absolute(36, 915),
		says: 'The compartment is 36 in deep inside.'
	},
	{
		...ROW,
		id: 'ADA-SIZE-A2',
		clause: '608.2.3',
		of: 'case',
		when: ALTERNATE,
		measure: 'inside-width',
		allowed: { min: inches(60, 1525) },
		says: 'The compartment is at least 60 in wide inside.'
	},
	{
		...ROW,
		id: 'ADA-ENTRY-A',
		clause: '608.2.3',
		of: 'case',
		when: ALTERNATE,
		measure: 'entry-width',
		allowed: { min: inches(36, 915) },
		says: 'The entry, at one end of the long side, is at least 36 in wide.'
	},
	{
		...ROW,
		...ABSOLUTE,
		id: 'ADA-GB-SAMEZ',
		clause: '608.3',
		of: 'horizontal-bar',
		and: 'horizontal-bar',
		when: SHOWER,
		measure: 'bar-height-difference',
		allowed: absolute(0, 0),
		says: 'Horizontal bars are at one height.'
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-T-CONTROL',
		clause: '608.3.1',
		of: 'case',
		when: TRANSFER,
		measure: 'bar-on-control-wall',
		allowed: 'yes',
		says: 'The control wall has a horizontal bar.',
		note: DWELLING
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-T-BACK',
		clause: '608.3.1',
		of: 'case',
		when: TRANSFER,
		measure: 'bar-on-back-wall',
		allowed: 'yes',
		says: 'The back wall has a horizontal bar.',
		note: DWELLING
	},
	{
		...ROW,
		...ABSOLUTE,
		id: 'ADA-GB-18',
		clause: '608.3.1',
		of: 'horizontal-bar',
		purposes: ['rise', 'sit-steady'],
		when: TRANSFER,
		measure: 'bar-end-from-control-wall',
		allowed: { min: inches(18, 455) },
		says: 'The back-wall bar reaches 18 in from the control wall.',
		note: 'The clause names the point; a bar that runs on past it is not counted as outside.'
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-S-BACK',
		clause: '608.3.2',
		of: 'case',
		when: ROLL_IN,
		measure: 'bar-on-back-wall',
		allowed: 'yes',
		says: 'The back wall has a horizontal bar.',
		note: DWELLING
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-S-OPPOSITE',
		clause: '608.3.2',
		of: 'case',
		when: ROLL_IN,
		measure: 'bar-on-control-wall',
		allowed: 'yes',
		says: 'The side wall opposite the seat, or opposite who washes, has a horizontal bar.',
		note: DWELLING
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-S0',
		clause: '608.3.2',
		of: 'case',
		when: { ...ROLL_IN, ...SEATLESS },
		measure: 'bar-on-seat-wall',
		allowed: 'yes',
		says: 'Without a seat the third wall has a horizontal bar too.',
		note: DWELLING
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-S-STEADY',
		clause: '608.3.2',
		of: 'horizontal-bar',
		purposes: ['steady'],
		when: ROLL_IN,
		measure: 'on-control-wall',
		allowed: 'yes',
		says: 'The bar to steady on is the one of the side wall opposite the seat, or opposite who washes.',
		note: 'The other walls have bars of their own; which bar serves which wall is our reading.'
	},
	{
		...ROW,
		id: 'ADA-GB-CORNER-S0',
		clause: '608.3.2, 608.3.3',
		of: 'horizontal-bar',
		when: { ...ROLLED_IN, ...SEATLESS },
		measure: 'bar-corner-gap',
		allowed: { max: inches(6, 150) },
		says: 'The bar ends at most 6 in from the wall of every corner it runs to.',
		note: 'At the entry no figure is printed.'
	},
	{
		...ROW,
		id: 'ADA-GB-CORNER-S1',
		clause: '608.3.2, 608.3.3',
		of: 'horizontal-bar',
		when: { ...ROLLED_IN, ...SEATED },
		measure: 'bar-corner-gap-off-seat',
		allowed: { max: inches(6, 150) },
		says: 'The bar ends at most 6 in from the wall of every corner it runs to, the one behind the seat apart.',
		note: 'At the entry no figure is printed.'
	},
	{
		...ROW,
		id: 'ADA-GB-CORNER-SEAT',
		clause: '608.3.2, 608.3.3',
		of: 'horizontal-bar',
		and: 'seat',
		when: ROLLED_IN,
		on: 'beside',
		measure: 'near-end-past-seat-edge',
		allowed: { max: inches(6, 150) },
		says: 'The bar of the wall beside the seat begins at most 6 in past the front edge of the seat.',
		note: 'That the front edge of the seat, or the end of its arm on that wall, stands for the corner behind it is our reading.'
	},
	{
		...ROW,
		id: 'ADA-GB-NOSEAT',
		clause: '608.3.2, 608.3.3',
		of: 'horizontal-bar',
		and: 'seat',
		when: ROLLED_IN,
		measure: 'clear-of-seat',
		allowed: { min: inches(0, 0) },
		says: 'No bar is above the seat.'
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-A-BACK',
		clause: '608.3.3',
		of: 'case',
		when: ALTERNATE,
		measure: 'bar-on-back-wall',
		allowed: 'yes',
		says: 'The back wall has a horizontal bar.',
		note: DWELLING
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-A-FAR',
		clause: '608.3.3',
		of: 'case',
		when: ALTERNATE,
		measure: 'bar-on-far-side-wall',
		allowed: 'yes',
		says: 'The side wall farthest from the entry has a horizontal bar.',
		note: DWELLING
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-A-STEADY',
		clause: '608.3.3',
		of: 'horizontal-bar',
		purposes: ['steady'],
		when: ALTERNATE,
		measure: 'on-back-wall',
		allowed: 'yes',
		says: 'The bar to steady on is the one of the back wall.',
		note: 'The other wall has a bar of its own; which bar serves which wall is our reading.'
	},
	{
		...ROW,
		id: 'ADA-GB-WALLS-A-RISE',
		clause: '608.3.3',
		of: 'horizontal-bar',
		purposes: ['rise', 'sit-steady'],
		when: ALTERNATE,
		measure: 'on-far-side-wall',
		allowed: 'yes',
		says: 'The bar beside the seat is the one of the side wall farthest from the entry.',
		note: 'The other wall has a bar of its own; which bar serves which wall is our reading.'
	},
	{
		...ROW,
		id: 'ADA-ST-REQ',
		clause: '608.4',
		of: 'case',
		when: TRANSFER,
		measure: 'seat-present',
		allowed: 'yes',
		says: 'There is a seat.',
		note: DWELLING
	},
	{
		...ROW,
		...ASK,
		id: 'ADA-CT-FORCE',
		clause: '608.5, 309.4',
		allowed: {
			ask: 'Do the controls work with one hand, without tight grasp or twist of the wrist, with 5 lbf (22.2 N) at most?'
		},
		says: 'Controls work with one hand and little force.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-WALL',
		clause: '608.5.1',
		when: TRANSFER,
		measure: 'on-control-wall',
		allowed: 'yes',
		says: 'Controls and hand shower are on the wall opposite the seat.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-Z-T-LOW',
		clause: '608.5.1',
		when: TRANSFER,
		measure: 'envelope-bottom-above-shower-floor',
		allowed: { min: inches(38, 965) },
		says: 'Controls and hand shower are at least 38 in above the shower floor.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-Z-T-HIGH',
		clause: '608.5.1',
		when: TRANSFER,
		measure: 'envelope-top-above-shower-floor',
		allowed: { max: inches(48, 1220) },
		says: 'Controls and hand shower are at most 48 in above the shower floor.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-X-T-NEAR',
		clause: '608.5.1',
		and: 'seat',
		when: TRANSFER,
		on: 'control-wall',
		measure: 'near-edge-from-centre-line',
		allowed: { min: inches(0, 0) },
		says: 'Controls and hand shower are not behind the centre line of the seat, counted toward the opening.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-X-T-FAR',
		clause: '608.5.1',
		and: 'seat',
		when: TRANSFER,
		on: 'control-wall',
		measure: 'far-edge-from-centre-line',
		allowed: { max: inches(15, 380) },
		says: 'Controls and hand shower are at most 15 in from the centre line of the seat toward the opening.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-WALL-S1',
		clause: '608.5.2',
		when: { ...ROLL_IN, ...SEATED },
		measure: 'on-back-wall',
		allowed: 'yes',
		says: 'Controls and hand shower are on the back wall, adjacent to the wall of the seat.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-X-S',
		clause: '608.5.2',
		when: { ...ROLL_IN, ...SEATED },
		measure: 'edge-from-seat-wall',
		allowed: { max: inches(27, 685) },
		says: 'Controls and hand shower are at most 27 in from the wall of the seat.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-Z-R-BAR',
		clause: '608.5.2, 608.5.3',
		and: 'horizontal-bar',
		walls: 'same',
		when: ROLLED_IN,
		measure: 'underside-above-bar',
		allowed: { min: inches(1.5, 38) },
		says: 'Controls and hand shower are above the bar of their wall, their underside at least 1 1/2 in over its top.',
		note: 'The clause says above the bar; the figure is that of 609.3.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-Z-R-HIGH',
		clause: '608.5.2, 608.5.3',
		when: ROLLED_IN,
		measure: 'envelope-top-above-shower-floor',
		allowed: { max: inches(48, 1220) },
		says: 'Controls and hand shower are at most 48 in above the shower floor.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-WALL-A0',
		clause: '608.5.3',
		when: { ...ALTERNATE, ...SEATLESS },
		measure: 'on-far-side-wall',
		allowed: 'yes',
		says: 'Without a seat, controls and hand shower are on the side wall farthest from the entry.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-WALL-A1',
		clause: '608.5.3',
		when: { ...ALTERNATE, ...SEATED },
		measure: 'on-far-side-or-back-wall',
		allowed: 'yes',
		says: 'Controls and hand shower are on the side wall adjacent to the seat, or on the back wall opposite it.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-X-Aa',
		clause: '608.5.3',
		when: { ...ALTERNATE, ...SEATED },
		on: 'beside',
		measure: 'edge-from-seat-wall',
		allowed: { max: inches(27, 685) },
		says: 'On the side wall, controls and hand shower are at most 27 in from the wall behind the seat.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'ADA-CT-X-Ab',
		clause: '608.5.3',
		and: 'seat',
		when: ALTERNATE,
		on: 'control-wall',
		measure: 'edge-off-centre-line',
		allowed: { max: inches(15, 380) },
		says: 'On the back wall, controls and hand shower are at most 15 in to either side of the centre line of the seat.'
	},
	{
		...ROW,
		id: 'ADA-HS-HOSE',
		clause: '608.6',
		of: 'case',
		measure: 'hose-length',
		allowed: { min: inches(59, 1500) },
		says: 'The hose of the hand shower is at least 59 in long.'
	},
	{
		...ROW,
		...ASK,
		id: 'ADA-HS-TYPE',
		clause: '608.6',
		allowed: {
			ask: 'Can the hand shower be used fixed and in the hand, with an on/off that never stops the flow wholly?'
		},
		says: 'The hand shower works fixed and in the hand, with an on/off that does not shut tight.',
		note: 'That a fixed head may stand in for it does not go for dwellings, lodging and care.'
	},
	{
		...ROW,
		...ASK,
		id: 'ADA-HS-CLR',
		clause: '608.6',
		allowed: {
			ask: 'If the hand shower slides on an upright bar: does its lower end stay at least 1 1/2 in above the grab bar, and does it not run behind one?'
		},
		says: 'An upright bar the hand shower slides on is not in the way of the grab bars.',
		note: 'The figure is that of the guide to the chapter; the clause prints none.'
	},
	{
		...ROW,
		...ASK,
		id: 'ADA-HS-LOW',
		clause: '608.6',
		when: SHOWER,
		allowed: {
			ask: 'If the hand shower slides on an upright bar: can what is worked of it be set at 48 in above the shower floor or lower?'
		},
		says: 'A hand shower that slides on an upright bar can be set at 48 in or lower.',
		note: 'Source: the guide to the chapter; a rest that is placed is judged by 608.5.'
	},
	{
		...ROW,
		id: 'ADA-TEMP',
		clause: '608.6',
		of: 'case',
		measure: 'water-temperature',
		allowed: { max: { n: 120, unit: 'degF', printed: 49 } },
		says: 'The water is at most 120 F (49 C).'
	},
	{
		...ROW,
		id: 'ADA-THR-R',
		clause: '608.7',
		of: 'case',
		when: ROLLED_IN,
		measure: 'threshold',
		allowed: { max: inches(0.5, 13) },
		says: 'The threshold is at most 1/2 in high.'
	},
	{
		...ROW,
		...ASK,
		id: 'ADA-THR-R-BEVEL',
		clause: '608.7, 303',
		when: ROLLED_IN,
		allowed: { ask: 'Is at most 1/4 in of the threshold upright, and what is higher bevelled no steeper than 1:2?' },
		says: 'Of the threshold at most 1/4 in is upright; what is higher is bevelled no steeper than 1:2.'
	},
	{
		...ROW,
		id: 'ADA-THR-T',
		clause: '608.7',
		of: 'case',
		when: TRANSFER,
		measure: 'threshold',
		allowed: { max: inches(0.5, 13) },
		says: 'The threshold is at most 1/2 in high.',
		note: 'In an existing building up to 2 in (51) where a lower one would disturb the reinforcement of the slab.'
	},
	{
		...ROW,
		...ASK,
		id: 'ADA-ENC',
		clause: '608.8',
		when: { closing: ['unknown', 'door-out', 'door-in', 'slides', 'screen'] },
		allowed: { ask: 'Do doors or screens leave the controls and the way from chair to seat free?' },
		says: 'Doors and screens are not in the way of controls or transfer.'
	},
	{
		...ROW,
		...ANY_BAR,
		id: 'ADA-GB-DIA',
		clause: '609.2.1',
		measure: 'bar-diameter',
		allowed: { min: inches(1.25, 32), max: inches(2, 51) },
		says: 'A round bar is 1 1/4 to 2 in thick.'
	},
	{
		...ROW,
		...ANY_BAR,
		id: 'ADA-GB-PERIM',
		clause: '609.2.2',
		when: { section: ['other'] },
		measure: 'bar-perimeter',
		allowed: { min: inches(4, 100), max: inches(4.8, 120) },
		says: 'A bar that is not round measures 4 to 4.8 in round its section.'
	},
	{
		...ROW,
		...ANY_BAR,
		id: 'ADA-GB-SECTION',
		clause: '609.2.2',
		when: { section: ['other'] },
		measure: 'bar-diameter',
		allowed: { max: inches(2, 51) },
		says: 'A bar that is not round is at most 2 in across.'
	},
	{
		...ROW,
		...ANY_BAR,
		...ABSOLUTE,
		id: 'ADA-GB-WALLGAP',
		clause: '609.3',
		measure: 'bar-gap',
		allowed: absolute(1.5, 38),
		says: 'The space between wall and bar is 1 1/2 in.'
	},
	{
		...ROW,
		id: 'ADA-GB-ABOVE',
		clause: '609.3',
		of: 'horizontal-bar',
		and: 'seat',
		walls: 'same',
		measure: 'clear-above-bar',
		allowed: { min: inches(12, 305) },
		says: 'Above a bar 12 in are free of what projects, controls, shower fittings and other bars apart.'
	},
	{
		...ROW,
		...ANY_BAR,
		id: 'ADA-GB-BELOW',
		clause: '609.3',
		and: 'any',
		walls: 'same',
		measure: 'clear-of-bar',
		allowed: { min: inches(1.5, 38) },
		says: 'Between a bar and what projects below it, at its ends, or as control, fitting or bar above it, 1 1/2 in are free.'
	},
	{
		...ROW,
		id: 'ADA-GB-END',
		clause: '609.3',
		of: 'horizontal-bar',
		and: 'horizontal-bar',
		walls: 'other',
		measure: 'corner-clearance',
		allowed: { min: inches(1.5, 38) },
		says: 'Between the end of a bar and a bar that crosses it in a corner 1 1/2 in are free.',
		note: 'That a crossing bar counts as a projecting object is our reading.'
	},
	{
		...ROW,
		id: 'ADA-GB-Z-LOW',
		clause: '609.4',
		of: 'horizontal-bar',
		measure: 'bar-top-from-high-floor',
		allowed: RANGE_BAR,
		says: 'The top of the bar is 33 to 36 in above the floor, where the floor below it is highest.'
	},
	{
		...ROW,
		id: 'ADA-GB-Z-HIGH',
		clause: '609.4',
		of: 'horizontal-bar',
		measure: 'bar-top-from-low-floor',
		allowed: RANGE_BAR,
		says: 'The top of the bar is 33 to 36 in above the floor, where the floor below it is lowest.'
	},
	{
		...ROW,
		...ASK,
		id: 'ADA-GB-FIX',
		clause: '609.5, 609.6',
		allowed: {
			ask: 'Are bar and wall beside it free of sharp or rough places, and does the bar not turn in its fittings?'
		},
		says: 'Bars have no sharp edges and do not turn in their fittings.'
	},
	{
		...ROW,
		...ANY_BAR,
		id: 'ADA-LOAD-BAR',
		clause: '609.8',
		measure: 'carries-printed',
		allowed: { min: { n: 0, unit: 'mm' } },
		says: 'Every fixing of a bar carries 250 lbf (1112 N), by calculation.',
		note: 'Reckoned with the load of this plan; where that is less, it stays a question.'
	},
	{
		...ROW,
		id: 'ADA-ST-Z',
		clause: '610.3',
		of: 'seat',
		measure: 'seat-top-above-bathroom-floor',
		allowed: { min: inches(17, 430), max: inches(19, 485) },
		says: 'The top of the seat is 17 to 19 in above the bathroom floor.'
	},
	{
		...ROW,
		id: 'ADA-ST-END',
		clause: '610.3',
		of: 'seat',
		when: OF_ADA,
		measure: 'seat-end-to-entry',
		allowed: { max: inches(3, 75) },
		says: 'The seat ends at most 3 in from the entry.'
	},
	{
		...ROW,
		id: 'ADA-ST-FOLD',
		clause: '610.3',
		of: 'seat',
		when: ROLLED_IN,
		measure: 'seat-folds',
		allowed: 'yes',
		says: 'The seat folds up.'
	},
	{
		...ROW,
		id: 'ADA-ST-WALL-S',
		clause: '610.3',
		of: 'seat',
		when: ROLL_IN,
		measure: 'on-side-wall',
		allowed: 'yes',
		says: 'The seat is on a side wall, adjacent to the controls.',
		note: 'That the controls are on the back wall beside it is asked by 608.5.2.'
	},
	{
		...ROW,
		id: 'ADA-ST-WALL-A',
		clause: '610.3',
		of: 'seat',
		when: ALTERNATE,
		measure: 'on-front-wall',
		allowed: 'yes',
		says: 'The seat is on the wall beside the entry, opposite the back wall.'
	},
	{
		...ROW,
		id: 'ADA-ST-REAR',
		clause: '610.3.1, 610.3.2',
		of: 'seat',
		when: SHOWER,
		measure: 'seat-rear',
		allowed: { max: inches(2.5, 64) },
		says: 'The rear edge of the seat is at most 2 1/2 in from the seat wall.'
	},
	{
		...ROW,
		id: 'ADA-ST-FRONT',
		clause: '610.3.1, 610.3.2',
		of: 'seat',
		when: SHOWER,
		measure: 'seat-front',
		allowed: { min: inches(15, 380), max: inches(16, 405) },
		says: 'The front edge of the seat is 15 to 16 in from the seat wall.'
	},
	{
		...ROW,
		id: 'ADA-ST-SIDE',
		clause: '610.3.1',
		of: 'seat',
		shape: 'rectangular',
		when: SHOWER,
		measure: 'seat-side-to-wall-beside',
		allowed: { max: inches(1.5, 38) },
		says: 'The side edge of the seat is at most 1 1/2 in from the wall beside it.'
	},
	{
		...ROW,
		id: 'ADA-ST-LREAR',
		clause: '610.3.2',
		of: 'seat',
		shape: 'L',
		when: SHOWER,
		measure: 'seat-arm-rear',
		allowed: { max: inches(1.5, 38) },
		says: 'The rear edge of the L of the seat is at most 1 1/2 in from the wall beside it.'
	},
	{
		...ROW,
		id: 'ADA-ST-LFRONT',
		clause: '610.3.2',
		of: 'seat',
		shape: 'L',
		when: SHOWER,
		measure: 'seat-arm-front',
		allowed: { min: inches(14, 355), max: inches(15, 380) },
		says: 'The front edge of the L of the seat is 14 to 15 in from the wall beside it.'
	},
	{
		...ROW,
		id: 'ADA-ST-LEND',
		clause: '610.3.2',
		of: 'seat',
		shape: 'L',
		when: SHOWER,
		measure: 'seat-arm-end',
		allowed: { min: inches(22, 560), max: inches(23, 585) },
		says: 'The end of the L of the seat is 22 to 23 in from the seat wall.'
	},
	{
		...ROW,
		id: 'ADA-LOAD-SEAT',
		clause: '610.4',
		of: 'seat',
		measure: 'carries-printed',
		allowed: { min: { n: 0, unit: 'mm' } },
		says: 'Every fixing of the seat carries 250 lbf (1112 N), by calculation.',
		note: 'Reckoned with the load of this plan; where that is less, it stays a question.'
	}
];

/** A bar a roll-in type has. */
const BAR = { ...FROM, source: CHAPTER_6, kind: 'horizontal-bar' } as const;
const CONTROL = {
	...FROM,
	source: CHAPTER_6,
	clause: '608.5',
	kind: 'control',
	purpose: 'run-water',
	accessory: 'control',
	says: 'The water is turned on and off at a control.'
} as const;
const HAND_SHOWER = {
	...FROM,
	source: CHAPTER_6,
	clause: '608.6',
	kind: 'handset-rest',
	purpose: 'rest-handset',
	accessory: 'handset-rest',
	says: 'The hand shower has a rest.'
} as const;
const REINFORCED = 'or in a dwelling the wall is reinforced for one';

const requires: readonly Require[] = [
	{
		...FROM,
		source: CHAPTER_6,
		id: 'ADA-REQ-SEAT',
		clause: '608.4',
		when: TRANSFER,
		kind: 'seat',
		purpose: 'sit',
		walls: ['seat-wall'],
		accessory: 'seat',
		says: 'A transfer compartment has a seat.'
	},
	{ ...CONTROL, id: 'ADA-REQ-CONTROL', when: TRANSFER, walls: ['control-wall'] },
	{ ...CONTROL, id: 'ADA-REQ-CONTROL-R', when: ROLLED_IN, walls: ['control-wall', 'beside'] },
	{ ...HAND_SHOWER, id: 'ADA-REQ-HAND-SHOWER', when: TRANSFER, walls: ['control-wall'] },
	{ ...HAND_SHOWER, id: 'ADA-REQ-HAND-SHOWER-R', when: ROLLED_IN, walls: ['control-wall', 'beside'] },
	{
		...BAR,
		id: 'ADA-REQ-BAR-CONTROL',
		clause: '608.3.1',
		when: TRANSFER,
		purpose: 'steady',
		walls: ['control-wall'],
		accessory: 'bar-control',
		says: `The control wall of a transfer compartment has a bar, ${REINFORCED}.`
	},
	{
		...BAR,
		id: 'ADA-REQ-BAR-BACK',
		clause: '608.3.1',
		when: TRANSFER,
		purpose: 'rise',
		walls: ['beside'],
		accessory: 'bar-back',
		says: `The back wall of a transfer compartment has a bar, ${REINFORCED}.`
	},
	{
		...BAR,
		id: 'ADA-REQ-BAR-OPPOSITE-R',
		clause: '608.3.2, 608.3.3',
		when: ROLLED_IN,
		purpose: 'steady',
		walls: ['control-wall'],
		accessory: 'bar-control',
		says: `The wall opposite the seat, or opposite who washes, has a bar in a roll-in compartment, ${REINFORCED}.`
	},
	{
		...BAR,
		id: 'ADA-REQ-BAR-BESIDE-R',
		clause: '608.3.2, 608.3.3',
		when: ROLLED_IN,
		purpose: 'rise',
		walls: ['beside'],
		accessory: 'bar-back',
		says: `The wall beside the seat, or beside who washes, has a bar in a roll-in compartment, ${REINFORCED}.`
	},
	{
		...BAR,
		id: 'ADA-REQ-BAR-SEAT-WALL-S0',
		clause: '608.3.2',
		when: { ...ROLL_IN, ...SEATLESS },
		purpose: 'rise',
		walls: ['seat-wall'],
		accessory: 'bar-seat-wall',
		says: `Without a seat all three walls of a standard roll-in compartment have bars, ${REINFORCED}.`
	}
];

/** The 2010 standards of the US Access Board, as far as they speak of a shower compartment of the three types and what is fitted in it. */
export const ADA_2010: Pack = {
	id: 'ada-2010',
	name: 'ADA Standards 2010',
	scope: {
		short: 'ADA 2010',
		binds:
			'New work and alterations by public bodies, public accommodations and commercial facilities in the United States (101.2).',
		homes:
			'A private house or flat is not bound, owned or rented; dwellings of public bodies, dormitories, shelters and nursing homes are, and so are the rooms of a home that are used as a public place.'
	},
	requires,
	rows,
	judgement: [
		'No document binds a private home by itself; a departure may be as good or better (103).',
		'Whether a T-shaped space to turn in is free where no circle is (304.3.2), and how far knees and toes go under what is beside either (306).',
		'In a dwelling bars and seat may be left out where the wall behind every fixing they would have is reinforced (608.3, 608.4); here they are placed, so that what is to be reinforced is drawn.',
		'In the bathroom of one person behind a private office reinforced walls may stand in for bars too (608.3).',
		'A compartment of another shape than the three of 608.2 is none of them: of it only what is the same for all three is judged.',
		'Over a bath only what is the same for a shower is judged, by the clause of the shower: height of the seat (610.2), hose and water (607.6), force, what closes it, and bars as such (609). Where bars, seat and controls of a bath go (607.4, 607.5) is not.',
		'Fold-down rails are not counted among the bars of 609: what they carry is reckoned with the load of this plan.',
		'How near to the entry the bar of the control wall begins: no figure is printed.',
		'Whether nothing overlaps the clear floor outside the entry: its size is judged, its use is looked at.',
		'An L-shaped seat (610.3.2) is judged where the record gives one and never proposed: no clause asks for it.',
		'The centre line of an L-shaped seat is taken in the middle of its length along the seat wall: the text names none (608.5.1).',
		'Whether the arm of an L-shaped seat carries, which its leg bears and not the wall (610.4).',
		'In a standard roll-in without a seat the controls may be on any of the three walls (advisory to 608.5.2).',
		'The record of an alternate roll-in has its entry at one end of the front (608.2.3).',
		'Whether a hotel room needs a seat (608.4): a seat in a roll-in is wanted where the person washes seated.',
		'A slide bar is not placed, only asked about; the rest stands for the place where the hand shower is within 48 in, and a high holder is beside it.',
		'Reach ranges (308) are asked of the call cord alone: controls and hand shower have the heights of 608.5 instead (it asks for 309.4 alone). How the chair is parked tells the approach; where that is not recorded only 15 to 48 in counts.',
		'That the seat is what a call cord is reached over, from its front edge, is our reading; whether knees and toes go under it as far as one reaches (308.2.2), and what else stands in the way, is looked at.',
		'That the high holder beside a rest, and folding a seat or a rail, are not counted as operable parts (309) is our reading.',
		'Coat hooks in reach and shelves 40 to 48 in high (603.4): none is placed.',
		'Shower floor heights are read directly below the item; the seat is measured from the bathroom floor.',
		'Controls and hand shower count with their whole operable part, lever sweep included.',
		'Whether a control carries a sharp edge, and how the parts age.'
	]
};
