import type { Pack, Row } from '../row.ts';
import {
	ASK,
	barPlaceRows,
	barRows,
	handShowerRows,
	ONE_VALUE,
	OPERATED,
	requiresOf,
	rowOf,
	seatRows,
	SHOWER,
	stallRows,
	valveRows,
	type Province
} from './canada.ts';

const ONTARIO: Province = {
	id: 'ON',
	from: {
		document: 'Ontario Building Code',
		edition: 'O. Reg. 332/12, as amended to O. Reg. 867/21',
		source: { title: 'Ontario Regulation 332/12, text of e-Laws', how: 'seen' }
	},
	clauses: {
		stall: '3.8.3.13.(2)(a)',
		clearFloor: '3.8.3.13.(2)(b)',
		closing: '3.8.3.13.(2)(c)',
		threshold: '3.8.3.13.(2)(e)',
		seat: '3.8.3.13.(2)(f)',
		seatSize: '3.8.3.13.(2)(f)(i)',
		seatHeight: '3.8.3.13.(2)(f)(ii)',
		seatWall: '3.8.3.13.(2)(f)(ii)',
		seatLoad: '3.8.3.13.(2)(f)(iii)',
		inTheWay: '3.8.3.13.(2)(g)(i)',
		upright: '3.8.3.13.(2)(g)(ii)',
		lBar: '3.8.3.13.(2)(g)(iii)',
		valve: '3.8.3.13.(2)(h), (2.1)',
		force: '3.8.3.13.(2)(h), (2.1)',
		handShower: '3.8.3.13.(2)(i)',
		soap: '3.8.3.13.(2)(j)',
		barLoad: '3.8.3.8.(7)(a)',
		barDiameter: '3.8.3.8.(7)(b)',
		barGap: '3.8.3.8.(7)(c)',
		barSlip: '3.8.3.8.(7)(d)'
	},
	closes: { kinds: ['unknown', 'door-out', 'door-in', 'slides', 'screen'], words: 'a door' },
	bevel: {
		ask: 'Is the entry level, or its threshold bevelled?',
		says: 'A threshold is bevelled; else the entry is level.'
	},
	floorFree: 'Does nothing that reaches into the clear floor outside the entry hinder the way in?',
	length: { ...ONE_VALUE, note: 'The text prints one length: a longer bar is told, not failed.' },
	gap: { min: 38, max: 50 },
	newtons: '22.2 N'
};

const ROW = rowOf(ONTARIO);

const rows: readonly Row[] = [
	{
		...ROW,
		...ASK,
		id: 'ON-36',
		clause: '3.3.4.9, 9.5.2.3',
		when: { ...SHOWER, dwelling: ['yes'], newBuilt: ['yes'] },
		allowed: {
			ask: 'Are the stud walls of the main bathroom reinforced where the vertical bar and the L-shaped bar may be added?'
		},
		says: 'In a new dwelling the stud walls of the main bathroom are reinforced where the bars may be added.',
		note: 'The bars themselves are not asked for there, and walls of masonry are left out.'
	},
	...barRows(ONTARIO),
	...stallRows(ONTARIO),
	...seatRows(ONTARIO),
	{
		...ROW,
		...OPERATED,
		id: 'ON-13',
		clause: '3.8.3.13.(2)(f)(iv)',
		and: 'seat',
		measure: 'apart-in-plan',
		allowed: { max: { n: 500, unit: 'mm' } },
		says: 'The edge of the seat is at most 500 mm from the controls.',
		note: 'From its nearest edge to theirs, seen from above: our reading.'
	},
	...barPlaceRows(ONTARIO),
	...valveRows(ONTARIO),
	...handShowerRows(ONTARIO),
	{
		...ROW,
		id: 'ON-35',
		clause: '7.6.5.1, 7.6.5.2.(4)',
		of: 'case',
		measure: 'water-temperature',
		allowed: { max: { n: 49, unit: 'degC' } },
		says: 'The water is at most 49 C.'
	}
];

/** The building code of Ontario, as far as it speaks of a barrier-free shower and what is fitted in it. */
export const ON_OBC_2012: Pack = {
	id: 'on-obc-2012',
	name: 'Ontario Building Code 3.8.3.13',
	scope: {
		short: 'Ontario',
		binds:
			'Showers of buildings in Ontario, as many as the table of 3.8.3.13 counts by their number; those of single patients or residents in care; barrier-free suites of hotels (3.8.2.4).',
		homes:
			'Inside a suite of residential occupancy nothing of it binds (3.8.3.13.(1)); in a new dwelling the walls of the main bathroom are only made ready for the bars (3.3.4.9, 9.5.2.3).'
	},
	requires: requiresOf(ONTARIO),
	rows,
	judgement: [
		'Ontario Regulation 163/24 is said to replace this text from 2025; it was not read.',
		'Where a length or a height is printed as one value, 10 mm are ours: the text names no tolerance.',
		'Widths printed as between two figures take both figures in: our reading.',
		'Who renovates may keep bars that are there in place of those asked for (Part 11): that is the reason of a departure from their lengths and places.',
		'In a suite of residential occupancy, and with one shower in the building, the text is only compared with.',
		'What (2)(d) asks for is not among these rows.',
		'Which edge of a bar its heights and distances are taken from is not said: axis and flange centre are ours.',
		'Which floor the heights are taken from is not said: of the seat it is the bathroom floor, of all else the shower floor below it.',
		'The level part of the L-shaped bar may run to either side of the upright one.',
		'Where a helper runs the water, whether the client reaches the controls is told and steers nothing: they are kept out of reach.',
		'The place at 2030 mm is a rest of its own: that whoever washes gets there is not asked of it.',
		'Fold-down rails are not spoken of: 3.8.3.8.(8) is about those beside a water closet.',
		'How near the bars come to the controls: a hand that works them is told, no distance is printed.'
	]
};
