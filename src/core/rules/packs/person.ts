import { REACH_ROWS } from '../functions.ts';
import type { Pack, Quantity, Row } from '../row.ts';
import { FIXED } from './fixed.ts';

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

const SITTING = ['seated', 'both', 'unknown'];
const HELD = { measure: 'held-in-turn', allowed: { min: mm(0) } } as const;

/** The way in and out, step by step: a hand is on the next thing before the last is let go. */
const WAY = [
	{
		...HELD,
		id: 'ROUTE-ENTRY-STEADY',
		when: { transfer: ['walks'], washes: ['standing', 'both'] },
		of: 'vertical-bar',
		and: 'horizontal-bar',
		andPurposes: ['steady'],
		says: 'From the bar at the entry the hand goes to the bar to steady on, one held before the other is let go.'
	},
	{
		...HELD,
		id: 'ROUTE-ENTRY-SEAT',
		when: { transfer: ['walks'], washes: ['seated', 'unknown'] },
		of: 'vertical-bar',
		and: 'horizontal-bar',
		andPurposes: ['rise'],
		says: 'From the bar at the entry the hand goes to the bar beside the seat, one held before the other is let go.'
	},
	{
		...HELD,
		id: 'ROUTE-STEADY-SEAT',
		when: { transfer: ['walks'], washes: ['both'] },
		of: 'horizontal-bar',
		purposes: ['steady'],
		and: 'horizontal-bar',
		andPurposes: ['rise'],
		says: 'From the bar to steady on the hand goes to the bar beside the seat, one held before the other is let go.'
	},
	{
		id: 'ROUTE-PIVOT',
		when: { transfer: ['stand-pivot'], washes: SITTING },
		of: 'vertical-bar',
		purposes: ['step-in'],
		and: 'seat',
		andPurposes: ['sit'],
		measure: 'reach-before-seat',
		allowed: { min: mm(0) },
		says: 'The bar at the entry is held all through the turn, until the client stands with her back to the seat.'
	},
	{
		id: 'TWO-HANDS-STANDING',
		when: { washes: ['standing'] },
		of: 'control',
		purposes: ['run-water'],
		and: 'horizontal-bar',
		andPurposes: ['steady'],
		measure: 'worked-while-held',
		allowed: { min: mm(0) },
		says: 'Standing, one hand runs the water while the other holds the bar to steady on.'
	}
] as const;

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
		when: { chair: ['yes'], washes: SITTING },
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
		when: { chair: ['yes'], washes: SITTING },
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
		...WALL,
		// The part decides it, wherever it goes.
		origin: 'room',
		id: 'WALL-PART-MARKED',
		clause: 'carries',
		when: { readOff: ['yes'] },
		...FIXED,
		measure: 'marked-load',
		allowed: 'yes',
		says: 'The load marked on the real part is at least the force of this plan.'
	},
	{
		...WALL,
		document: 'The load of this plan',
		source: { title: 'marked working loads as policies ask for them; the signature is ours', how: 'judgement' },
		// Never a wish, whether or not backing may be added.
		origin: 'room',
		id: 'WALL-LOAD-SIGNED',
		clause: 'signed for',
		when: { statement: ['wanted'] },
		of: 'case',
		measure: 'force-asked',
		allowed: { ask: 'Does somebody competent sign that bars, seat, fixings and wall carry the force of this plan?' },
		says: 'Somebody competent signs that bars, seat, fixings and wall carry the force of this plan.',
		note: 'Only a signature answers it: record the paper, who signed and for how many newtons.'
	},
	...REACH_ROWS,
	{
		...BODY,
		document: 'Study of seat height and rising, 55 people',
		edition: '2013',
		source: { title: 'pubmed 23740582; that nobody who rises from it is lifted off the floor is ours', how: 'seen' },
		id: 'BODY-FEET-HOLD',
		clause: '110 to 120 % of the lower leg',
		when: { chair: ['no', 'unknown'], type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] },
		of: 'seat',
		measure: 'seat-above-high-rise',
		allowed: { max: mm(0) },
		says: 'The feet keep the floor: the seat is at most 120 % of the height under the knee.',
		note: 'From a wheeled chair the level of its seat comes first, over a bath the rim decides: there it is a wish.'
	},
	{
		...BODY,
		document: 'Study of independent transfers for the US Access Board',
		edition: '2010',
		source: {
			title: 'half of the people reach 711 mm up and 356 mm down from 561 mm; that nobody goes further is ours',
			how: 'seen'
		},
		id: 'BODY-SEAT-TRANSFER',
		clause: 'higher and lower than the chair',
		when: { chair: ['yes'], transfer: ['stand-pivot', 'sitting-pivot', 'slide-board', 'unknown'] },
		of: 'seat',
		measure: 'seat-above-chair',
		allowed: { min: mm(-205), max: mm(150) },
		says: 'The seat is at most 150 mm higher and 205 mm lower than the wheeled chair: half of those who move across get no further.',
		note: 'Within 25 mm nearly all manage; a person who was seen to manage more is tried on the wall.'
	},
	{
		...BODY,
		source: { title: 'geometry: on a seat as high as under the knee the thigh is level', how: 'derived' },
		id: 'BODY-HIP-LIMIT',
		clause: 'a hip that must not bend past level',
		when: { hipLimit: ['yes'] },
		of: 'seat',
		measure: 'seat-above-knee-fold',
		allowed: { min: mm(0) },
		says: 'The hip bends no further than level: the seat is no lower than under the knee.',
		note: 'Who set the limit says when it ends, and whether the seat must be higher still.'
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
		measure: 'hips-from-wall-beside',
		allowed: { min: mm(0) },
		says: 'In the middle of the seat the hip does not meet the back wall.'
	},
	{
		...ROOM,
		id: 'ROOM-BOARD',
		clause: 'fits',
		when: { type: ['over-bath'] },
		of: 'seat',
		measure: 'seat-off-rims',
		allowed: { min: mm(0), max: mm(0) },
		says: 'A board lies on the rims of the bath.'
	},
	{
		...ROOM,
		id: 'ROOM-POST',
		clause: 'fits',
		of: 'vertical-bar',
		measure: 'post-off-floor',
		allowed: { min: mm(0), max: mm(0) },
		says: 'A post stands on the floor.'
	},
	{
		...ROOM,
		id: 'ROOM-CEILING',
		clause: 'fits',
		of: 'vertical-bar',
		measure: 'ceiling-holds',
		allowed: 'yes',
		says: 'The ceiling takes the pressure of a post.'
	},
	{
		...ROOM,
		id: 'ROOM-DRAIN',
		clause: 'fits',
		when: { drain: ['yes'] },
		of: 'any',
		measure: 'feet-off-drain',
		allowed: { min: mm(0) },
		says: 'What stands on the floor does not stand on the drain.'
	},
	{
		...ROOM,
		id: 'ROOM-DOOR',
		clause: 'fits',
		when: { closing: ['door-in'] },
		of: 'any',
		measure: 'clear-of-door',
		allowed: { min: mm(0) },
		says: 'A door that opens inward passes by.'
	},
	{
		...ROOM,
		id: 'ROOM-RAILS',
		clause: 'fits',
		of: 'fold-down-rail',
		and: 'fold-down-rail',
		walls: 'same',
		measure: 'other-rail-beyond',
		allowed: { min: mm(0) },
		says: 'Of two rails the first is the one nearer to the wall beside the seat.',
		note: 'Two alike are told apart by their order, so that no plan counts twice.'
	},
	{
		...WISH,
		id: 'WISH-HOLD-LEANING',
		clause: 'lean, holding',
		when: { washes: SITTING, lean: ['holding'], oneHand: ['no', 'unknown'] },
		of: 'horizontal-bar',
		purposes: ['rise'],
		and: 'seat',
		measure: 'reach-other-hand',
		allowed: { min: mm(0) },
		says: 'While one hand works, the other can hold the bar beside the seat: the lean was seen with one hand holding.',
		note: 'What was held is not recorded: it may have been the edge of the seat.'
	},
	...WAY.flatMap(({ id, when, says, ...pair }) => [
		{ ...BODY, ...pair, id, clause: 'a hand on something', when: { ...when, needsHold: ['yes'] }, says },
		{
			...WISH,
			...pair,
			id: `WISH-${id}`,
			clause: 'a hand on something',
			when: { ...when, needsHold: ['unknown'] },
			says
		}
	])
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
