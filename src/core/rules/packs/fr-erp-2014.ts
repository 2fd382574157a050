import type { Pack, Require, Row } from '../row.ts';

const FROM = { document: 'French order of 8 December', edition: '2014' } as const;
const ARTICLE_11 = { title: 'France, order of 8 December 2014 (ETLL1413935A), article 11', how: 'seen' } as const;
const ARTICLE_18 = { title: 'France, order of 8 December 2014 (ETLL1413935A), article 18', how: 'seen' } as const;
const ANNEX_2 = { title: 'France, order of 8 December 2014 (ETLL1413935A), annex 2', how: 'seen' } as const;
const ARTICLE_10 = { title: 'France, order of 31 May 1994 (LOGC9400024A), article 10', how: 'seen' } as const;

const ROW = { ...FROM, source: ARTICLE_18, origin: 'document' } as const;
/** What the order of 2014 took the place of, told beside it. */
const SUPERSEDED = {
	document: 'French order of 31 May',
	edition: '1994',
	clause: 'art. 10',
	source: ARTICLE_10,
	origin: 'document',
	advice: true,
	note: 'Superseded; the order of 2014 prints no figure for it.'
} as const;

const ASK = { of: 'case', measure: 'inside-width' } as const;
/** Over a bath there is no shower cubicle. */
const SHOWER = { type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] } as const;
const TURNED = { of: 'control', purposes: ['run-water', 'set-temperature', 'divert'] } as const;
const USED = { of: 'any', purposes: ['run-water', 'set-temperature', 'divert', 'rest-handset'] } as const;

const mm = (n: number) => ({ n, unit: 'mm' }) as const;

const REACHED = {
	clause: 'art. 18 II 2',
	and: 'seat',
	measure: 'reach-leaning',
	allowed: { min: mm(0) },
	says: 'Taps and hand shower are reached from the seat.'
} as const;

const rows: readonly Row[] = [
	{
		...ROW,
		...TURNED,
		id: 'FR-01-LOW',
		clause: 'art. 11 II 2 a',
		source: ARTICLE_11,
		measure: 'middle-from-high-floor',
		allowed: { min: mm(900), max: mm(1300) },
		says: 'What is turned by hand is 900 to 1300 mm above the floor, where the floor below it is highest.'
	},
	{
		...ROW,
		...TURNED,
		id: 'FR-01-HIGH',
		clause: 'art. 11 II 2 a',
		source: ARTICLE_11,
		measure: 'middle-from-low-floor',
		allowed: { min: mm(900), max: mm(1300) },
		says: 'What is turned by hand is 900 to 1300 mm above the floor, where the floor below it is lowest.'
	},
	{
		...ROW,
		...TURNED,
		id: 'FR-02',
		clause: 'art. 11 II 2 a',
		source: ARTICLE_11,
		measure: 'middle-from-corner',
		allowed: { min: mm(400), strict: true },
		says: 'What is turned by hand is more than 400 mm from an inside corner.'
	},
	{
		...ROW,
		...ASK,
		id: 'FR-02-OBSTACLE',
		clause: 'art. 11 II 2 a',
		source: ARTICLE_11,
		allowed: {
			ask: 'Is what is turned by hand more than 400 mm from whatever else keeps a wheelchair from coming near it?'
		},
		says: 'What is turned by hand is more than 400 mm from whatever else keeps a wheelchair away.'
	},
	{
		...ROW,
		id: 'FR-05',
		clause: 'art. 18 II 2',
		of: 'case',
		when: SHOWER,
		measure: 'seat-present',
		allowed: 'yes',
		says: 'There is something to sit on.'
	},
	{
		...ROW,
		id: 'FR-06',
		clause: 'art. 18 II 2',
		of: 'case',
		when: SHOWER,
		measure: 'support-present',
		allowed: 'yes',
		says: 'There is something to hold on to when standing.'
	},
	{
		...ROW,
		id: 'FR-07',
		clause: 'art. 18 II 2',
		of: 'case',
		when: SHOWER,
		measure: 'drain-present',
		allowed: 'yes',
		says: 'The floor has a drain.'
	},
	{
		...ROW,
		...USED,
		...REACHED,
		id: 'FR-08',
		when: { ...SHOWER, runsWater: ['client', 'either', 'unknown'] },
		note: 'The text prints no figure: the reach is the one of the person, as measured.'
	},
	{
		...ROW,
		...USED,
		...REACHED,
		id: 'FR-08-HELPER',
		when: { ...SHOWER, runsWater: ['helper'] },
		advice: true,
		note: 'Where a helper runs the water it is kept beyond the reach of the client, against the text.'
	},
	{
		...ROW,
		...ASK,
		id: 'FR-08-OTHER',
		clause: 'art. 18 II 2',
		when: SHOWER,
		allowed: { ask: 'Are clothes hooks, hair dryer, mirror and the lock of the door reached by who sits?' },
		says: 'Clothes hooks, hair dryer, mirror and lock of the door are reached by who sits.'
	},
	{
		...ROW,
		id: 'FR-04',
		clause: 'art. 18 II 2, annex 2 (2)',
		source: ANNEX_2,
		of: 'case',
		when: SHOWER,
		measure: 'turning-circle',
		allowed: { min: mm(1500) },
		says: 'A circle at least 1500 mm wide is free to turn in, in the shower or else before its entry.'
	},
	{
		...ROW,
		id: 'FR-03-WIDTH',
		clause: 'art. 18 II 2, annex 2 (4)',
		source: ANNEX_2,
		of: 'case',
		when: SHOWER,
		measure: 'beside-seat-width',
		allowed: { min: mm(800) },
		says: 'The floor free beside the seat is at least 800 mm wide, outside the swing of a door.'
	},
	{
		...ROW,
		id: 'FR-03-LENGTH',
		clause: 'art. 18 II 2, annex 2 (4)',
		source: ANNEX_2,
		of: 'case',
		when: SHOWER,
		measure: 'beside-seat-length',
		allowed: { min: mm(1300) },
		says: 'The floor free beside the seat is at least 1300 mm long, outside the swing of a door.'
	},
	{
		...SUPERSEDED,
		id: 'FR-L1',
		of: 'seat',
		measure: 'seat-top-above-bathroom-floor',
		allowed: { min: mm(460), max: mm(500) },
		says: 'The top of the seat is 460 to 500 mm above the bathroom floor.'
	},
	{
		...SUPERSEDED,
		id: 'FR-L2-LOW',
		of: 'horizontal-bar',
		measure: 'bar-axis-from-high-floor',
		allowed: { min: mm(700), max: mm(800) },
		says: 'The level part of a bar is 700 to 800 mm above the floor, where the floor below it is highest.'
	},
	{
		...SUPERSEDED,
		id: 'FR-L2-HIGH',
		of: 'horizontal-bar',
		measure: 'bar-axis-from-low-floor',
		allowed: { min: mm(700), max: mm(800) },
		says: 'The level part of a bar is 700 to 800 mm above the floor, where the floor below it is lowest.'
	}
];

const REQUIRE = { ...FROM, source: ARTICLE_18, clause: 'art. 18 II 2', when: SHOWER } as const;

const requires: readonly Require[] = [
	{
		...REQUIRE,
		id: 'FR-REQ-CONTROL',
		kind: 'control',
		purpose: 'run-water',
		walls: ['control-wall', 'beside'],
		accessory: 'control',
		says: 'The water is turned on and off at a tap who sits can reach.'
	},
	{
		...REQUIRE,
		id: 'FR-REQ-SEAT',
		kind: 'seat',
		purpose: 'sit',
		walls: ['seat-wall'],
		accessory: 'seat',
		says: 'An adapted shower has something to sit on.'
	},
	{
		...REQUIRE,
		id: 'FR-REQ-SUPPORT',
		kind: 'horizontal-bar',
		purpose: 'steady',
		walls: ['control-wall', 'beside'],
		accessory: 'bar-control',
		says: 'An adapted shower has something to hold on to when standing.'
	}
];

/** The French order on existing premises open to the public, as far as it speaks of an adapted shower; beside it two heights of the order of 1994. */
export const FR_ERP_2014: Pack = {
	id: 'fr-erp-2014',
	name: 'France, order of 8 December 2014',
	scope: {
		short: 'France',
		binds: 'Premises open to the public in existing buildings in France.',
		homes: 'A private home is not bound; for housing France has other orders, which were not read here.'
	},
	requires,
	rows,
	judgement: [
		'The text names no point of a control for its height or its distance from a corner; the middle of what the hand works is our reading (art. 11 II 2 a).',
		'More than 400 mm is read strictly: 400 mm is not enough (art. 11 II 2 a).',
		'The height is read above the shower floor directly below the control, and has to lie in the range wherever under it the floor is highest and lowest.',
		'Which way the rectangle of 800 by 1300 mm lies beside the seat is not said: its long side along the way one sits is our reading (annex 2 (4)).',
		'Whether the circle to turn in is in the shower or before its entry, and what of it a door or a basin may cover (annex 2 (2)).',
		'Something to hold when standing may be any bar, rail or post; the text prints neither its height nor its place, and a level bar is what we propose for it (art. 18 II 2).',
		'Reach from the seat has no figure in the text: it is the measured one of the person, with the lean that was seen done; counting the hand shower with the taps is our reading (art. 18 II 2).',
		'The free floor in front of each control, which the text wants too (art. 11 II 2), is looked at on the spot.',
		'How many cubicles are adapted and where, whether fittings stand out by contrast, the door and its lock (art. 11, 18).',
		'Heights of seat and bar are those of the order of 31 May 1994, art. 10, which is superseded: told as advice, never steering. That the height of a bar is that of its axis, and of a seat that of its top above the bathroom floor, is our reading.',
		'The 1994 sizes of the cubicle are left out: the order of 2014 has its own.',
		'No figure in the order is a single value to meet, so there is no tolerance of ours.'
	]
};
