import type { Pack, Quantity, Require, Row } from '../row.ts';

const FROM = {
	document: 'ICC A117.1',
	edition: '2003',
	source: { title: 'US Access Board, comparison of ADA and IBC, chapter 6 (A117.1-2003 printed beside)', how: 'seen' }
} as const;
const TYPE_B = {
	title: 'US Access Board, comparison of ADA and IBC, chapter 8 (A117.1-2003 printed beside)',
	how: 'seen'
} as const;

const ROW = { ...FROM, origin: 'document' } as const;
const ASK = { of: 'case', measure: 'inside-width' } as const;
const TRANSFER = { type: ['transfer'] } as const;
const ROLL_IN = { type: ['roll-in'] } as const;
const ALTERNATE = { type: ['alternate-roll-in'] } as const;
const ROLLED_IN = { type: ['roll-in', 'alternate-roll-in'] } as const;
const SHOWER = { type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] } as const;
const UPRIGHT = { of: 'vertical-bar', purposes: ['step-in'], when: TRANSFER, clause: '608.3.1.2' } as const;
const OPERATED = { of: 'any', purposes: ['run-water', 'set-temperature', 'divert', 'rest-handset'] } as const;

const inches = (n: number, printed: number): Quantity => ({ n, unit: 'in', printed });

const AT_ENTRY = 'At the entry no figure is printed.';

const rows: readonly Row[] = [
	{
		...ROW,
		...ASK,
		id: 'A03-CLR-S-LAVATORY',
		clause: '608.2.2',
		when: ROLL_IN,
		allowed: {
			ask: 'Does nothing stand in the clear floor along the entry, but for one lavatory to roll under at the end away from the controls, or at either end where they are on the back wall and there is no seat?'
		},
		says: 'In the clear floor along the entry stands at most one lavatory, at the end away from the controls.'
	},
	{
		...ROW,
		id: 'A03-SEATWALL',
		clause: '608.2.3',
		of: 'case',
		when: ALTERNATE,
		measure: 'front-wall-length',
		allowed: { min: inches(24, 610), max: inches(36, 915) },
		says: 'The wall beside the entry, which carries the seat, is 24 to 36 in long.'
	},
	{
		...ROW,
		id: 'A03-VB-REQ',
		clause: '608.3.1.2',
		of: 'case',
		when: TRANSFER,
		measure: 'vertical-bar-on-control-wall',
		allowed: 'yes',
		says: 'The control wall has an upright bar.'
	},
	{
		...ROW,
		...UPRIGHT,
		id: 'A03-VB-WALL',
		measure: 'on-control-wall',
		allowed: 'yes',
		says: 'The upright bar is on the control wall.'
	},
	{
		...ROW,
		...UPRIGHT,
		id: 'A03-VB-LEN',
		measure: 'bar-length',
		allowed: { min: inches(18, 455) },
		says: 'The upright bar is at least 18 in long.'
	},
	{
		...ROW,
		...UPRIGHT,
		id: 'A03-VB-Z',
		and: 'horizontal-bar',
		walls: 'same',
		measure: 'foot-above-bar',
		allowed: { min: inches(3, 75), max: inches(6, 150) },
		says: 'The upright bar begins 3 to 6 in above the horizontal one of its wall.'
	},
	{
		...ROW,
		...UPRIGHT,
		id: 'A03-VB-X',
		measure: 'from-entry-line',
		allowed: { max: inches(4, 100) },
		says: 'The upright bar is at most 4 in inward from the front edge of the shower.'
	},
	{
		...ROW,
		id: 'A03-GB-CORNER-S0',
		clause: '608.3.2',
		of: 'horizontal-bar',
		when: { ...ROLL_IN, seat: ['no'] },
		measure: 'bar-corner-gap',
		allowed: { max: inches(6, 150) },
		says: 'The bar ends at most 6 in from the wall of every corner it runs to.',
		note: AT_ENTRY
	},
	{
		...ROW,
		id: 'A03-GB-CORNER-S1',
		clause: '608.3.2',
		of: 'horizontal-bar',
		when: { ...ROLL_IN, seat: ['yes'] },
		measure: 'bar-corner-gap-off-seat',
		allowed: { max: inches(6, 150) },
		says: 'The bar ends at most 6 in from the wall of every corner it runs to, the one behind the seat apart.',
		note: AT_ENTRY
	},
	{
		...ROW,
		id: 'A03-GB-CORNER-A',
		clause: '608.3.3',
		of: 'horizontal-bar',
		when: ALTERNATE,
		measure: 'bar-corner-gap-off-seat',
		allowed: { max: inches(6, 150) },
		says: 'The bar ends at most 6 in from the wall of every corner it runs to, the one behind the seat apart.',
		note: AT_ENTRY
	},
	{
		...ROW,
		id: 'A03-ST-REQ-A',
		clause: '608.4',
		of: 'case',
		when: ALTERNATE,
		measure: 'seat-present',
		allowed: 'yes',
		says: 'There is a seat.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'A03-CT-X-T',
		clause: '608.5.1',
		and: 'seat',
		when: TRANSFER,
		on: 'control-wall',
		measure: 'edge-off-centre-line',
		allowed: { max: inches(15, 380) },
		says: 'Controls and hand shower are at most 15 in to either side of the centre line of the seat.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'A03-CT-Z-LOW',
		clause: '608.5.2, 608.5.3',
		when: ROLLED_IN,
		measure: 'envelope-bottom-above-shower-floor',
		allowed: { min: inches(38, 965) },
		says: 'Controls and hand shower are at least 38 in above the shower floor.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'A03-CT-Z-HIGH',
		clause: '608.5.2, 608.5.3',
		when: ROLLED_IN,
		measure: 'envelope-top-above-shower-floor',
		allowed: { max: inches(48, 1220) },
		says: 'Controls and hand shower are at most 48 in above the shower floor.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'A03-CT-WALL-A',
		clause: '608.5.3',
		when: ALTERNATE,
		measure: 'on-far-side-or-back-wall',
		allowed: 'yes',
		says: 'Controls and hand shower are on the end wall adjacent to the seat, or on the back wall opposite it.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'A03-CT-X-A',
		clause: '608.5.3',
		when: ALTERNATE,
		on: 'beside',
		measure: 'edge-from-seat-wall',
		allowed: { max: inches(27, 685) },
		says: 'On the end wall, controls and hand shower are at most 27 in from the wall of the seat.'
	},
	{
		...ROW,
		...ASK,
		id: 'A03-B-SIZE',
		clause: '1004.11.3.1.3.3',
		source: TYPE_B,
		when: { ...SHOWER, dwelling: ['yes'] },
		allowed: {
			ask: 'If this is a Type B dwelling whose only place to wash is a shower: is it at least 36 in by 36 in (915 by 915 mm), with a clear floor 48 in (1220 mm) long from the wall of the shower head by 30 in (760 mm) deep?'
		},
		says: 'In a Type B dwelling without a bath the shower is at least 36 by 36 in, with a clear floor of 48 by 30 in.'
	}
];

const requires: readonly Require[] = [
	{
		...FROM,
		id: 'A03-REQ-UPRIGHT',
		clause: '608.3.1.2',
		when: TRANSFER,
		kind: 'vertical-bar',
		purpose: 'step-in',
		walls: ['control-wall'],
		accessory: 'entry-bar',
		says: 'The control wall of a transfer compartment has an upright bar near the entry.'
	},
	{
		...FROM,
		id: 'A03-REQ-SEAT-A',
		clause: '608.4',
		when: ALTERNATE,
		kind: 'seat',
		purpose: 'sit',
		walls: ['seat-wall'],
		accessory: 'seat',
		says: 'An alternate roll-in compartment has a seat.'
	}
];

/** ICC A117.1-2003, where its showers differ from the ADA Standards of 2010. */
export const A117_1_2003: Pack = {
	id: 'a117-1-2003',
	name: 'ICC A117.1-2003',
	scope: {
		short: 'A117.1 2003',
		binds:
			'What a building code that adopts it wants accessible in the United States; it was read beside the International Building Code of 2003.',
		homes:
			'By itself it binds no private house; its Type A and Type B dwellings have walls reinforced for bars and a seat.'
	},
	differsFrom: {
		pack: 'ada-2010',
		instead: [
			'ADA-CLR-S-LAVATORY',
			'ADA-GB-CORNER-S0',
			'ADA-GB-CORNER-S1',
			'ADA-CT-X-T-NEAR',
			'ADA-CT-X-T-FAR',
			'ADA-CT-Z-R-BAR',
			'ADA-CT-Z-R-HIGH',
			'ADA-CT-WALL-A0',
			'ADA-CT-WALL-A1',
			'ADA-CT-X-Aa'
		]
	},
	requires,
	rows,
	judgement: [
		'It was read where the Access Board prints it beside the ADA standards, not in its own book; later editions (2009, 2017) were not read.',
		'Everything not listed here counts as in the ADA standards of 2010, the strength of 250 lbf (609.8, 610.4) and 120 F (608.9) included.',
		'The upright bar is measured from flange centre to flange centre, from the top of the horizontal bar to its own lower flange centre, and inward to its axis.',
		'The upright bar may be one piece with the horizontal one (608.3.1.3): what is placed are two.',
		'A seat in a roll-in of either type folds where it stands over the least inside size (608.4); here it is held to fold wherever it stands.',
		'In a Type A dwelling bars and seat may be left out where the wall is reinforced for them; Type A and Type B dwellings are reinforced wherever bars and seats would be fixed (1003.11.4, 1004.11.2), and no rectangle is printed.',
		'Bars that swing up need not keep the gaps of 609.3; none of them is asked to here.',
		'The controls of a Type B dwelling need not lie in reach (1004.9).',
		'A fixed shower head opposite the seat is allowed in an alternate roll-in (608.5.3): none is placed.',
		'That bars at the seat begin at its front edge, and which bar serves which wall, is read as in the ADA standards.'
	]
};
