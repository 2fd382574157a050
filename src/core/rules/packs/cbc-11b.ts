import type { Pack, Quantity, Row } from '../row.ts';

const FROM = {
	document: 'California Building Code',
	edition: 'chapter 11B',
	source: { title: 'California Building Code, chapter 11B, as quoted by clause', how: 'seen' }
} as const;
const STRENGTH = {
	document: 'California Building Code',
	edition: 'chapter 16',
	clause: '1607.9.2',
	source: { title: 'California Building Code, chapter 16, as quoted by clause', how: 'seen' },
	origin: 'document',
	measure: 'carries-printed',
	allowed: { min: { n: 0, unit: 'mm' } },
	note: 'Reckoned with the load of this plan, in the worst direction; where that is less, it stays a question.'
} as const;

const ROW = { ...FROM, origin: 'document' } as const;
const ASK = { of: 'case', measure: 'inside-width' } as const;
const SHOWER = { type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] } as const;
const SEATED_ROLL_IN = { type: ['roll-in'], seat: ['yes'] } as const;
const OPERATED = { of: 'any', purposes: ['run-water', 'set-temperature', 'divert', 'rest-handset'] } as const;

const inches = (n: number, printed: number): Quantity => ({ n, unit: 'in', printed });

const rows: readonly Row[] = [
	{
		...ROW,
		...ASK,
		id: 'CA-DISPENSER',
		clause: '11B-603.5',
		allowed: {
			ask: 'Are dispensers and the like, where there are any, worked at 40 in (1016 mm) above the floor or lower?'
		},
		says: 'Dispensers and the like are worked at most 40 in above the floor.'
	},
	{
		...ROW,
		...ASK,
		id: 'CA-TRANSFER-WHERE',
		clause: '11B-608.2.1',
		when: { type: ['transfer'], dwelling: ['no'] },
		allowed: { ask: 'Is this a room of lodging, of student housing or of a dwelling?' },
		says: 'A transfer compartment is allowed in lodging, student housing and dwellings alone.'
	},
	{
		...ROW,
		...ASK,
		id: 'CA-CT-CLOSE',
		clause: '11B-608.5',
		when: SHOWER,
		allowed: { ask: 'Can who showers open and close the water at the controls?' },
		says: 'At the controls the water is opened and closed.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'CA-CT-X-S-NEAR',
		clause: '11B-608.5.2',
		when: SEATED_ROLL_IN,
		measure: 'near-edge-from-seat-wall',
		allowed: { min: inches(16, 406) },
		says: 'Controls and hand shower are at least 16 in from the wall of the seat.'
	},
	{
		...ROW,
		...OPERATED,
		id: 'CA-CT-X-S-FAR',
		clause: '11B-608.5.2',
		when: SEATED_ROLL_IN,
		measure: 'edge-from-seat-wall',
		allowed: { max: inches(27, 686) },
		says: 'Controls and hand shower are at most 27 in from the wall of the seat.'
	},
	{
		...ROW,
		...ASK,
		id: 'CA-SOAP-Z',
		clause: '11B-608.10',
		when: SHOWER,
		allowed: {
			ask: 'If there is a soap dish: is it on the control wall, at most 40 in (1016 mm) above the shower floor, and in reach from the seat?'
		},
		says: 'A soap dish is on the control wall, at most 40 in above the shower floor, in reach from the seat.'
	},
	{
		...ROW,
		id: 'CA-FALL',
		clause: '11B-809.10.6.2',
		of: 'case',
		when: { ...SHOWER, dwelling: ['yes'] },
		measure: 'floor-fall',
		allowed: { max: { n: 1 / 24, unit: 'ratio' } },
		says: 'In a dwelling the shower floor falls at most 1/2 in in a foot.'
	},
	{
		...STRENGTH,
		id: 'CA-LOAD-BAR',
		of: 'any',
		purposes: ['steady', 'rise', 'sit-steady', 'step-in', 'step-out'],
		says: 'Every fixing of a bar carries 250 lb (1.11 kN) in any direction, by calculation.'
	},
	{
		...STRENGTH,
		id: 'CA-LOAD-SEAT',
		of: 'seat',
		says: 'Every fixing of the seat carries 250 lb (1.11 kN) in any direction, by calculation.'
	}
];

/** Chapter 11B of the California Building Code, where its showers differ from the ADA Standards of 2010, as far as it was read. */
export const CBC_11B: Pack = {
	id: 'cbc-11b',
	name: 'California Building Code 11B',
	scope: {
		short: 'California 11B',
		binds: 'New work and alterations in California that the state code wants accessible; which those are was not read.',
		homes:
			'A private home takes it as a reference only; what other parts of the state code ask of new dwellings was not read.'
	},
	differsFrom: { pack: 'ada-2010', instead: ['ADA-CT-X-S', 'ADA-LOAD-BAR', 'ADA-LOAD-SEAT'] },
	requires: [],
	rows,
	judgement: [
		'Clauses were read one by one as quoted, without the edition named: 11B-603.5, 608.2.1, 608.5 to 608.5.2, 608.10, 809.10.6.2 and 1607.9.2. Every other row counts as in the ADA standards of 2010.',
		'Not read: 11B-608.2.2, 608.3, 608.5.3 past its first line, 608.6, 608.9 and 610.',
		'California prints 914, 1219, 686 and 406 mm beside 36, 48, 27 and 16 in; exact inches decide, but for what is borderline by an ADA row the millimetres of that row are told.',
		'No soap dish and no dispenser is placed: they are asked about.',
		'New dwellings are said to need reinforcement for bars in one bathroom of the entry level since July 2024 (residential code, R327); its text and figures were not read, ask the building office.'
	]
};
