import type { Pack, Row } from '../row.ts';
import { FIXED } from './fixed.ts';

const ROW = {
	document: 'Habits of setting out',
	edition: '1',
	source: { title: 'ours', how: 'judgement' },
	origin: 'craft'
} as const;

const rows: readonly Row[] = [
	{
		...ROW,
		id: 'CRAFT-ONE-HEIGHT',
		clause: 'one line',
		of: 'handset-rest',
		purposes: ['rest-handset'],
		and: 'control',
		andPurposes: ['run-water'],
		measure: 'height-difference',
		allowed: { max: { n: 0, unit: 'mm' } },
		ourTolerance: 3,
		says: 'The rest of the hand shower is on one height with the control.'
	},
	{
		...ROW,
		id: 'CRAFT-TOGETHER',
		clause: 'close together',
		of: 'handset-rest',
		purposes: ['rest-handset'],
		and: 'control',
		andPurposes: ['run-water'],
		measure: 'centres-apart',
		allowed: { max: { n: 300, unit: 'mm' } },
		says: 'The rest of the hand shower is within 300 mm of the control.'
	},
	{
		...ROW,
		id: 'CRAFT-OUTLET',
		clause: 'close together',
		of: 'outlet',
		and: 'handset-rest',
		andPurposes: ['rest-handset'],
		measure: 'centres-apart',
		allowed: { max: { n: 300, unit: 'mm' } },
		says: 'The outlet of the hose is within 300 mm of the rest of the hand shower.'
	},
	{
		...ROW,
		id: 'CRAFT-OUTLET-HEIGHT',
		clause: 'one line',
		of: 'outlet',
		and: 'control',
		andPurposes: ['run-water'],
		measure: 'height-difference',
		allowed: { max: { n: 0, unit: 'mm' } },
		ourTolerance: 3,
		says: 'The outlet of the hose is on one height with the control.'
	},
	{
		...ROW,
		id: 'CRAFT-TEMPERATURE-HEIGHT',
		clause: 'one line',
		of: 'control',
		purposes: ['set-temperature'],
		and: 'control',
		andPurposes: ['run-water'],
		measure: 'height-difference',
		allowed: { max: { n: 0, unit: 'mm' } },
		ourTolerance: 3,
		says: 'The temperature is set on one height with the control.'
	},
	{
		...ROW,
		source: { title: 'common practice, no source', how: 'judgement' },
		id: 'CRAFT-TEMPERATURE-ENTRY',
		clause: 'from outside the spray',
		of: 'control',
		purposes: ['set-temperature'],
		measure: 'from-entry-line',
		allowed: { max: { n: 300, unit: 'mm' } },
		says: 'The temperature is set within 300 mm of the entry, from outside the spray.'
	},
	{
		...ROW,
		id: 'CRAFT-HOLDER',
		clause: 'close together',
		of: 'handset-rest',
		purposes: ['hang-handset'],
		and: 'handset-rest',
		andPurposes: ['rest-handset'],
		measure: 'centres-apart',
		allowed: { max: { n: 300, unit: 'mm' } },
		says: 'The high holder is as near above the rest as its height lets it be, within 300 mm.'
	},
	{
		...ROW,
		id: 'CRAFT-HIGH',
		clause: 'one line',
		of: 'handset-rest',
		purposes: ['fix-handset'],
		and: 'handset-rest',
		andPurposes: ['rest-handset'],
		measure: 'apart-in-plan',
		allowed: { max: { n: 0, unit: 'mm' } },
		says: 'The head-height holder is over the rest of the hand shower.'
	},
	{
		...ROW,
		id: 'CRAFT-CORD-SEAT',
		clause: 'close together',
		of: 'call-cord',
		and: 'seat',
		measure: 'off-seat-front',
		allowed: { max: { n: 150, unit: 'mm' } },
		says: 'The call cord hangs within 150 mm of the front edge of the seat, ahead of it or behind it.'
	},
	{
		...ROW,
		id: 'CRAFT-CORD-HEIGHT',
		clause: 'inside its range',
		of: 'call-cord',
		measure: 'envelope-bottom-above-shower-floor',
		allowed: { min: { n: 850, unit: 'mm' }, max: { n: 950, unit: 'mm' } },
		says: 'The upper bangle of the call cord is 850 to 950 mm above the floor, off the ends of its range.'
	},
	{
		...ROW,
		id: 'CRAFT-CORD-CONTROL',
		clause: 'told apart',
		of: 'call-cord',
		and: 'control',
		measure: 'centres-apart',
		allowed: { min: { n: 300, unit: 'mm' } },
		says: 'The call cord hangs 300 mm from a control or farther, so that neither is taken for the other.'
	},
	{
		...ROW,
		id: 'CRAFT-SEAT-NO-LEGS',
		clause: 'clear floor',
		of: 'seat',
		measure: 'wall-alone-holds',
		allowed: 'yes',
		says: 'The seat has no front legs to stub a toe on or to wheel into.'
	},
	{
		...ROW,
		id: 'CRAFT-BAR-BACK',
		clause: 'along the wall',
		of: 'horizontal-bar',
		purposes: ['steady'],
		measure: 'bar-back-end',
		allowed: { max: { n: 100, unit: 'mm' } },
		says: 'The bar to steady on begins near the back wall.'
	},
	{
		...ROW,
		id: 'CRAFT-BAR-ENTRY',
		clause: 'along the wall',
		of: 'horizontal-bar',
		purposes: ['steady'],
		measure: 'bar-entry-end',
		allowed: { max: { n: 100, unit: 'mm' } },
		says: 'The bar to steady on runs close to the entry.',
		note: 'The guidance to 608.3.1 prints no distance; 100 mm is ours.'
	},
	{
		...ROW,
		source: { title: 'common practice, no source', how: 'judgement' },
		id: 'CRAFT-DOOR-IN',
		clause: 'help from outside',
		when: { closing: ['door-in'] },
		of: 'case',
		measure: 'inside-width',
		allowed: { ask: 'Can the door be opened outward, or lifted off, when somebody lies behind it?' },
		says: 'A door that opens inward can be got out of the way from outside.'
	},
	{
		...ROW,
		source: { title: 'common practice, no source', how: 'judgement' },
		id: 'CRAFT-DRIVER',
		clause: 'room for the driver',
		...FIXED,
		measure: 'driver-room',
		allowed: { min: { n: 60, unit: 'mm' } },
		says: 'A driver gets at every screw: brackets are 60 mm from the wall beside.'
	},
	{
		...ROW,
		id: 'CRAFT-CROSSINGS',
		clause: 'tile joints',
		when: { tiles: ['yes'] },
		of: 'any',
		measure: 'off-crossings',
		allowed: { min: { n: 0, unit: 'mm' } },
		says: 'No bracket lies over a crossing of tile joints.'
	}
];

/** Habits of setting out that decide when nothing else does. */
export const CRAFT: Pack = {
	id: 'craft',
	name: 'Habits of setting out',
	requires: [],
	rows,
	judgement: ['The look of the wall; tiles that are not in straight rows.']
};
