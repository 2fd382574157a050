import type { Pack, Row } from '../row.ts';
import {
	ASK,
	barPlaceRows,
	barRows,
	handShowerRows,
	requiresOf,
	rowOf,
	seatRows,
	SHOWER,
	stallRows,
	valveRows,
	type Province
} from './canada.ts';

const BRITISH_COLUMBIA: Province = {
	id: 'BC',
	from: {
		document: 'British Columbia Building Code',
		edition: '2024',
		source: { title: 'BCBC 2024, Division B Part 3: NBC 2020, with what the Province changed marked', how: 'seen' }
	},
	clauses: {
		stall: '3.8.3.17.(1)(a)',
		clearFloor: '3.8.3.17.(1)(b)',
		closing: '3.8.3.17.(1)(c)',
		threshold: '3.8.3.17.(1)(e)',
		seat: '3.8.3.17.(1)(g)',
		seatSize: '3.8.3.17.(1)(g)',
		seatHeight: '3.8.3.17.(1)(g)',
		seatWall: '3.8.3.17.(1)(g)',
		seatLoad: '3.8.3.17.(1)(g)',
		inTheWay: '3.8.3.17.(1)(f)',
		upright: '3.8.3.17.(1)(f)(ii)',
		lBar: '3.8.3.17.(1)(f)(iii)',
		valve: '3.8.3.17.(1)(h)',
		force: '3.8.3.17.(1)(h), 3.8.3.8.(1)(b)',
		handShower: '3.8.3.17.(1)(i)',
		soap: '3.8.3.17.(1)(j)',
		barLoad: '3.7.2.7.(1)',
		barDiameter: '3.7.2.7.(1)',
		barGap: '3.7.2.7.(1)(e)',
		barSlip: '3.7.2.7.(1)'
	},
	closes: {
		kinds: ['unknown', 'curtain', 'door-out', 'door-in', 'slides', 'screen'],
		words: 'a door or a curtain'
	},
	bevel: {
		ask: 'Is a threshold of more than 6 mm bevelled no steeper than 1 in 2?',
		says: 'A threshold of more than 6 mm is bevelled no steeper than 1 in 2.'
	},
	floorFree:
		'Does nothing that reaches into the clear floor outside the entry, a basin at the end of the seat above all, hinder the way across?',
	length: {},
	gap: { min: 35, max: 45 },
	newtons: '22 N'
};

const ROW = { ...rowOf(BRITISH_COLUMBIA), ...ASK } as const;

const rows: readonly Row[] = [
	...barRows(BRITISH_COLUMBIA),
	...stallRows(BRITISH_COLUMBIA),
	...barPlaceRows(BRITISH_COLUMBIA),
	...seatRows(BRITISH_COLUMBIA),
	{
		...ROW,
		id: 'BC-37',
		clause: '3.8.3.17.(1)(g)',
		allowed: { ask: 'Does the seat take up no water, and is it easily cleaned?' },
		says: 'The seat is impervious and easily cleaned.',
		note: 'Put in by British Columbia: the national text does not have it.'
	},
	...valveRows(BRITISH_COLUMBIA),
	...handShowerRows(BRITISH_COLUMBIA),
	{
		...ROW,
		id: 'BC-38',
		clause: '3.8.5.7.(1)(d), (e)',
		when: { ...SHOWER, dwelling: ['yes'], newBuilt: ['yes'] },
		allowed: {
			ask: 'Is this an adaptable dwelling unit, and then: does the plumbing let such a shower be fitted, and are the walls backed where its bars may be added?'
		},
		says: 'An adaptable dwelling unit is made ready for such a shower and its bars.',
		note: 'Backed with plywood or solid lumber behind the finish (A-3.8.5.7.(1)(e)).'
	}
];

/** The building code of British Columbia, as far as it speaks of an accessible shower and what is fitted in it. */
export const BC_BCBC_2024: Pack = {
	id: 'bc-bcbc-2024',
	name: 'British Columbia Building Code 3.8.3.17',
	scope: {
		short: 'British Columbia',
		binds:
			'At least one stall of every group of showers of buildings in British Columbia, those in suites of care or residential occupancy apart (3.8.2.8.(12)).',
		homes: 'A home is not bound; an adaptable dwelling unit is made ready for such a shower and its bars (3.8.5.7).'
	},
	requires: requiresOf(BRITISH_COLUMBIA),
	rows,
	judgement: [
		'It is the text of the National Building Code of Canada 2020: the Province put in only that the seat is impervious and easily cleaned.',
		'Orders that changed the code after those of 2024 were not read.',
		'Where a height is printed as one value, 10 mm are ours: the text names no tolerance.',
		'Widths printed as between two figures take both figures in: our reading.',
		'Fold-away bars may stand in for the L-shaped one (A-3.8.3.17.(1)(f)): where they do, that is the reason of a departure from what is asked of it.',
		'The L-shaped bar is beside the seat because a bar behind it keeps one from leaning back and one opposite is out of reach (A-3.8.3.17.(1)(f)).',
		'What (1)(d) asks for is not among these rows.',
		'Which edge of a bar its heights and distances are taken from is not said: axis and flange centre are ours.',
		'Which floor the heights are taken from is not said: of the seat it is the bathroom floor, of all else the shower floor below it.',
		'The level part of the L-shaped bar may run to either side of the upright one; the drawing of the clause was not seen.',
		'Where a helper runs the water, whether the client reaches the controls is told and steers nothing: they are kept out of reach.',
		'The place at 2030 mm is a rest of its own: that whoever washes gets there is not asked of it.',
		'How hot the water may be: no limit was seen.',
		'Any grab bar that is put up in housing is said to carry 1.3 kN too (9.31.2.3 of the national text, read at second hand).',
		'The bench of a dressing room (3.8.3.17.(2)) is no shower seat.',
		'How near the bars come to the controls: a hand that works them is told, no distance is printed.'
	]
};
