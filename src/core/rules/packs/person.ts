import type { Pack, Quantity, Row } from '../row.ts';

const mm = (n: number): Quantity => ({ n, unit: 'mm' });

const ROOM = {
	document: 'The room as surveyed',
	edition: '1',
	source: { title: 'geometry of the parts and walls', how: 'derived' },
	origin: 'room'
} as const;
const WALL = {
	document: 'The walls as recorded',
	edition: '1',
	source: { title: 'calculation of what screws carry', how: 'derived' },
	origin: 'wall'
} as const;
const BODY = {
	document: 'The person as measured',
	edition: '1',
	source: { title: 'reach of a two-link arm from what was measured', how: 'own' },
	origin: 'body'
} as const;
const WISH = { ...BODY, origin: 'wish' } as const;

const SITS = { washes: ['seated', 'both', 'unknown'] } as const;
const WORKED = { of: 'any', purposes: ['run-water', 'rest-handset'] } as const;
const FIXED = { of: 'any', purposes: ['sit', 'rest-handset', 'steady', 'rise', 'step-in'] } as const;

const rows: readonly Row[] = [
	{
		...ROOM,
		id: 'ROOM-INSIDE-WALL',
		clause: 'fits',
		of: 'any',
		measure: 'inside-wall',
		allowed: { min: mm(0) },
		says: 'The part fits on its wall.'
	},
	{
		...ROOM,
		id: 'ROOM-APART',
		clause: 'fits',
		of: 'any',
		and: 'any',
		walls: 'same',
		measure: 'outlines-apart',
		allowed: { min: mm(10) },
		says: 'Parts on one wall leave 10 mm between them.',
		note: '10 mm is ours: room for the seal and the tool.'
	},
	{
		...ROOM,
		id: 'ROOM-CORNER',
		clause: 'fits',
		of: 'any',
		and: 'any',
		walls: 'other',
		measure: 'boxes-apart',
		allowed: { min: mm(0) },
		says: 'Parts on two walls do not meet in the corner.'
	},
	{
		...ROOM,
		...FIXED,
		id: 'ROOM-HOLES-CLEAR',
		clause: 'drilling',
		measure: 'holes-clear',
		allowed: { min: mm(0) },
		says: 'No hole meets a pipe, a cable, a rod, a seam or the edge of the wall.'
	},
	{
		...ROOM,
		document: 'The person as measured',
		id: 'ROOM-TRANSFER-SIDE',
		clause: 'side of transfer',
		when: { chair: ['yes'] },
		origin: 'wish',
		of: 'case',
		measure: 'transfer-side-agrees',
		allowed: 'yes',
		says: 'The seat lies to the side the client moves to when getting in.'
	},
	{
		...ROOM,
		document: 'The person as measured',
		id: 'ROOM-TRANSFER-SIDE-OUT',
		clause: 'side of transfer',
		when: { chair: ['yes'] },
		origin: 'wish',
		of: 'case',
		measure: 'transfer-side-out-agrees',
		allowed: 'yes',
		says: 'The entry lies to the side the client moves to when getting out.'
	},
	{
		...WALL,
		...FIXED,
		id: 'WALL-CARRIES',
		clause: 'carries',
		measure: 'carries',
		allowed: { min: mm(0) },
		says: 'Every fixing bites into what carries the load of this plan, by calculation.'
	},
	{
		...BODY,
		...WORKED,
		id: 'BODY-REACH',
		clause: 'reach, stretched',
		when: SITS,
		and: 'seat',
		measure: 'reach-leaning',
		allowed: { min: mm(0) },
		says: 'It is reached from the seat, stretched, with the lean that was seen done.'
	},
	{
		...BODY,
		id: 'BODY-REACH-RISE',
		clause: 'reach, stretched',
		when: SITS,
		of: 'horizontal-bar',
		purposes: ['rise'],
		and: 'seat',
		measure: 'reach-leaning',
		allowed: { min: mm(0) },
		says: 'The bar beside the seat is reached from it, with the lean that was seen done.'
	},
	{
		...BODY,
		...WORKED,
		id: 'BODY-REACH-STANDING',
		clause: 'reach, standing',
		when: { washes: ['standing'] },
		measure: 'reach-standing',
		allowed: { min: mm(0) },
		says: 'It is reached standing in the shower.'
	},
	{
		...BODY,
		id: 'BODY-SEAT-WIDTH',
		clause: 'seat width',
		of: 'seat',
		measure: 'seat-beyond-hips',
		allowed: { min: mm(0) },
		says: 'The seat is at least as wide as the hips.'
	},
	{
		...BODY,
		id: 'BODY-SEAT-BACK-WALL',
		clause: 'seat place',
		of: 'seat',
		measure: 'hips-from-back-wall',
		allowed: { min: mm(0) },
		says: 'In the middle of the seat the hip does not meet the back wall.'
	},
	{
		...BODY,
		id: 'BODY-ENTRY-BAR',
		clause: 'reach, stepping in',
		of: 'vertical-bar',
		measure: 'reach-from-entry',
		allowed: { min: mm(0) },
		says: 'The entry bar can be held before the step in.'
	},
	{
		...WISH,
		...WORKED,
		id: 'WISH-REACH-UPRIGHT',
		clause: 'reach, upright',
		when: SITS,
		and: 'seat',
		measure: 'reach-upright',
		allowed: { min: mm(50) },
		says: 'It is reached sitting upright, with 50 mm to spare.',
		note: 'The model of the arm is no surer than 40 mm.'
	},
	{
		...WISH,
		...WORKED,
		id: 'WISH-REACH-EASY',
		clause: 'reach, easy',
		when: SITS,
		and: 'seat',
		measure: 'reach-easy',
		allowed: { min: mm(0) },
		says: 'It is reached sitting upright, without stretching.'
	},
	{
		...WISH,
		id: 'WISH-WATER-FROM-ENTRY',
		clause: 'water before stepping in',
		when: { walks: ['yes'] },
		of: 'control',
		measure: 'reach-from-entry',
		allowed: { min: mm(0) },
		says: 'The water can be run before the step in.'
	},
	{
		...WISH,
		id: 'WISH-WATER-HELPER',
		clause: 'water from the dry side',
		when: { helper: ['yes'] },
		of: 'control',
		measure: 'helper-reach',
		allowed: { min: mm(0) },
		says: 'The helper can run the water from the dry side.'
	},
	{
		...WISH,
		...WORKED,
		id: 'WISH-REACH-STANDING',
		clause: 'reach, standing',
		when: { washes: ['both'] },
		measure: 'reach-standing',
		allowed: { min: mm(0) },
		says: 'It is reached standing in the shower too.'
	}
];

/** What this room, these walls and this body allow. */
export const PERSON: Pack = {
	id: 'person',
	name: 'Room, walls and the person as measured',
	requires: [],
	rows,
	judgement: [
		'The trial on the wall outranks every figure.',
		'Whether a bar is in the way of an arm, and how the spray falls.'
	]
};
