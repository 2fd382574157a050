import type { Purpose } from '#core/case/accessory.ts';
import type { MeasureId } from '#core/measures/registry.ts';
import type { Applies, Quantity, Row } from './row.ts';

/** Where a hand works from. */
type Station =
	'washing, others' | 'seat' | 'standing' | 'chair' | 'entry' | 'inside the entry' | 'before the seat' | 'dry side';

/**
 * Whose reach counts for what, from where, and how much: `must` be reached, a `wish`, or `beyond` the reach of somebody
 * who must not turn it. Hands are those of `body/hands.ts`: the stronger one for water and hand shower; the helper's
 * either hand.
 */
interface Use {
	readonly id: string;
	readonly purposes: readonly Purpose[];
	readonly station: Station;
	readonly how: 'stretched' | 'upright' | 'easy';
	readonly counts: 'must' | 'wish' | 'beyond';
	/** What is to be left of the arm. Units: mm. */
	readonly spare?: number;
	readonly when?: Applies;
	readonly says: string;
	readonly note?: string;
}

const MEASURE: Readonly<Record<Station, Readonly<Record<Use['how'], MeasureId>>>> = {
	seat: { stretched: 'reach-leaning', upright: 'reach-upright', easy: 'reach-easy' },
	standing: { stretched: 'reach-standing', upright: 'reach-standing', easy: 'reach-standing' },
	chair: {
		stretched: 'reach-from-chair',
		upright: 'reach-from-chair-upright',
		easy: 'reach-from-chair-upright'
	},
	entry: { stretched: 'reach-from-entry', upright: 'reach-from-entry', easy: 'reach-from-entry' },
	'inside the entry': { stretched: 'reach-inside-entry', upright: 'reach-inside-entry', easy: 'reach-inside-entry' },
	'before the seat': { stretched: 'reach-before-seat', upright: 'reach-before-seat', easy: 'reach-before-seat' },
	'washing, others': { stretched: 'household-reach', upright: 'household-reach', easy: 'household-reach' },
	'dry side': { stretched: 'helper-reach', upright: 'helper-reach', easy: 'helper-reach' }
};

/** Nearer than this a hand that must not turn a thing still might, by stretching. Units: mm. Ours: the model's own error. */
const BEYOND = 50;
/** Short by more than this a hand does not get there. Units: mm. Ours: twice the model's own error. */
const MISSED = 100;

const SITS = ['seated', 'both', 'unknown'];
const OWN = ['client', 'either', 'unknown'];
const WATER: readonly Purpose[] = ['run-water', 'divert'];
const REST: readonly Purpose[] = ['rest-handset'];
const CALL: readonly Purpose[] = ['call'];

/** The table: function x station x person -> what it counts. Source: design of the house; the figures are ours. */
const TABLE: readonly Use[] = [
	// On the seat.
	{
		id: 'BODY-REACH',
		purposes: WATER,
		station: 'seat',
		how: 'stretched',
		counts: 'must',
		when: { washes: SITS, runsWater: OWN },
		says: 'It is reached from the seat, stretched, with the lean that was seen done.'
	},
	{
		id: 'BODY-REACH-HANDSET',
		purposes: REST,
		station: 'seat',
		how: 'stretched',
		counts: 'must',
		when: { washes: SITS },
		says: 'It is reached from the seat, stretched, with the lean that was seen done.'
	},
	{
		id: 'BODY-REACH-RISE',
		purposes: ['rise'],
		station: 'seat',
		how: 'stretched',
		counts: 'must',
		when: { washes: SITS },
		says: 'The bar beside the seat is reached from it, with the lean that was seen done.'
	},
	{
		id: 'BODY-REACH-SIT-STEADY',
		purposes: ['sit-steady'],
		station: 'seat',
		how: 'stretched',
		counts: 'must',
		when: { washes: SITS },
		says: 'The bar to sit steady by is reached from the seat, with the lean that was seen done.'
	},
	{
		id: 'BODY-REACH-RAIL',
		purposes: ['push-up'],
		station: 'seat',
		how: 'stretched',
		counts: 'must',
		when: { washes: SITS },
		says: 'The rail beside the seat is reached from it.'
	},
	{
		id: 'WISH-RISE-STOOD',
		purposes: ['rise'],
		station: 'before the seat',
		how: 'stretched',
		counts: 'wish',
		when: { washes: SITS, walks: ['yes'] },
		says: 'The bar beside the seat is held standing in front of the seat too, before sitting down and after rising.'
	},
	{
		id: 'WISH-REACH-UPRIGHT',
		purposes: [...WATER, ...REST],
		station: 'seat',
		how: 'upright',
		counts: 'wish',
		spare: 50,
		when: { washes: SITS, runsWater: OWN },
		says: 'It is reached sitting upright, with 50 mm to spare.',
		note: 'The model of the arm is no surer than 40 mm.'
	},
	{
		id: 'WISH-REACH-EASY',
		purposes: [...WATER, ...REST],
		station: 'seat',
		how: 'easy',
		counts: 'wish',
		when: { washes: SITS, runsWater: OWN },
		says: 'It is reached sitting upright, without stretching.'
	},
	{
		id: 'WISH-REACH-HANDSET',
		purposes: REST,
		station: 'seat',
		how: 'upright',
		counts: 'wish',
		spare: 50,
		when: { washes: SITS, runsWater: ['helper'] },
		says: 'The hand shower is reached sitting upright, with 50 mm to spare, whoever runs the water.'
	},
	{
		id: 'WISH-TEMPERATURE-SEAT',
		purposes: ['set-temperature'],
		station: 'seat',
		how: 'stretched',
		counts: 'wish',
		when: { washes: SITS, runsWater: OWN },
		says: 'The temperature can be set from the seat.'
	},
	{
		id: 'BODY-REACH-CORD',
		purposes: CALL,
		station: 'seat',
		how: 'stretched',
		counts: 'must',
		when: { washes: SITS },
		says: 'The call cord is reached from the seat, stretched, with the lean that was seen done.'
	},
	{
		id: 'WISH-REACH-CORD',
		purposes: CALL,
		station: 'seat',
		how: 'easy',
		counts: 'wish',
		when: { washes: SITS },
		says: 'The call cord is reached from the seat sitting upright, without stretching.'
	},
	// On her feet.
	{
		id: 'BODY-REACH-STANDING',
		purposes: WATER,
		station: 'standing',
		how: 'stretched',
		counts: 'must',
		when: { washes: ['standing'], runsWater: OWN },
		says: 'It is reached standing in the shower.'
	},
	{
		id: 'BODY-REACH-STANDING-HANDSET',
		purposes: REST,
		station: 'standing',
		how: 'stretched',
		counts: 'must',
		when: { washes: ['standing'] },
		says: 'It is reached standing in the shower.'
	},
	{
		id: 'BODY-REACH-HOLDER-SEAT',
		purposes: ['hang-handset'],
		station: 'seat',
		how: 'stretched',
		counts: 'must',
		when: { washes: ['seated'] },
		says: 'The high holder is reached from the seat, with the lean that was seen done.'
	},
	{
		id: 'BODY-REACH-HOLDER',
		purposes: ['hang-handset'],
		station: 'standing',
		how: 'stretched',
		counts: 'must',
		when: { washes: ['standing', 'both'] },
		says: 'The high holder is reached standing in the shower.'
	},
	{
		id: 'WISH-REACH-STEADY',
		purposes: ['steady'],
		station: 'standing',
		how: 'stretched',
		counts: 'wish',
		when: { washes: ['standing', 'both'] },
		says: 'The bar to steady on is held standing in the shower.'
	},
	{
		id: 'WISH-REACH-STANDING',
		purposes: [...WATER, ...REST],
		station: 'standing',
		how: 'stretched',
		counts: 'wish',
		when: { washes: ['both'] },
		says: 'It is reached standing in the shower too.'
	},
	{
		id: 'BODY-REACH-CORD-STANDING',
		purposes: CALL,
		station: 'standing',
		how: 'stretched',
		counts: 'must',
		when: { washes: ['standing'] },
		says: 'The call cord is reached standing in the shower.'
	},
	{
		id: 'WISH-REACH-CORD-STANDING',
		purposes: CALL,
		station: 'standing',
		how: 'stretched',
		counts: 'wish',
		when: { washes: ['both'] },
		says: 'The call cord is reached standing in the shower too.'
	},
	// In a wheeled shower chair.
	{
		id: 'BODY-REACH-CHAIR',
		purposes: WATER,
		station: 'chair',
		how: 'stretched',
		counts: 'must',
		when: { washes: ['in-chair'], runsWater: OWN },
		says: 'It is reached from the parked shower chair, with the lean that was seen done, wherever it stands within 100 mm.'
	},
	{
		id: 'BODY-REACH-CHAIR-HANDSET',
		purposes: REST,
		station: 'chair',
		how: 'stretched',
		counts: 'must',
		when: { washes: ['in-chair'], runsWater: OWN },
		says: 'It is reached from the parked shower chair, with the lean that was seen done, wherever it stands within 100 mm.'
	},
	{
		id: 'WISH-REACH-CHAIR',
		purposes: [...WATER, ...REST],
		station: 'chair',
		how: 'upright',
		counts: 'wish',
		spare: 50,
		when: { washes: ['in-chair'], runsWater: OWN },
		says: 'It is reached upright in the parked shower chair, with 50 mm to spare.'
	},
	{
		id: 'BODY-REACH-CORD-CHAIR',
		purposes: CALL,
		station: 'chair',
		how: 'stretched',
		counts: 'must',
		when: { washes: ['in-chair'] },
		says: 'The call cord is reached from the parked shower chair, with the lean that was seen done, wherever it stands within 100 mm.'
	},
	{
		id: 'WISH-REACH-CORD-CHAIR',
		purposes: CALL,
		station: 'chair',
		how: 'upright',
		counts: 'wish',
		spare: 50,
		when: { washes: ['in-chair'] },
		says: 'The call cord is reached upright in the parked shower chair, with 50 mm to spare.'
	},
	// Who must not turn it.
	{
		id: 'BODY-BEYOND-SEAT',
		purposes: ['run-water', 'set-temperature'],
		station: 'seat',
		how: 'stretched',
		counts: 'beyond',
		when: { washes: SITS, runsWater: ['helper'] },
		says: 'It is beyond the reach of the client on the seat: the helper runs the water.'
	},
	{
		id: 'BODY-BEYOND-CHAIR',
		purposes: ['run-water', 'set-temperature'],
		station: 'chair',
		how: 'stretched',
		counts: 'beyond',
		when: { washes: ['in-chair'], runsWater: ['helper'] },
		says: 'It is beyond the reach of the client in the shower chair: the helper runs the water.'
	},
	// At the entry.
	{
		id: 'BODY-ENTRY-BAR',
		purposes: ['step-in'],
		station: 'entry',
		how: 'stretched',
		counts: 'must',
		says: 'The entry bar can be held before the step in.'
	},
	{
		id: 'BODY-EXIT-BAR',
		purposes: ['step-out'],
		station: 'inside the entry',
		how: 'stretched',
		counts: 'must',
		says: 'The bar for the way out can be held before the step out.'
	},
	{
		id: 'WISH-ENTRY-BAR-INSIDE',
		purposes: ['step-in'],
		station: 'inside the entry',
		how: 'stretched',
		counts: 'wish',
		says: 'The entry bar is still held after the step in, and before the step out.'
	},
	{
		id: 'WISH-WATER-FROM-ENTRY',
		purposes: ['run-water', 'set-temperature'],
		station: 'entry',
		how: 'stretched',
		counts: 'wish',
		when: { walks: ['yes'], runsWater: OWN },
		says: 'The water can be run before the step in.'
	},
	// Who else showers here.
	{
		id: 'WISH-WATER-HOUSEHOLD',
		purposes: ['run-water'],
		station: 'washing, others',
		how: 'stretched',
		counts: 'wish',
		when: { household: ['yes'] },
		says: 'Whoever else showers here runs the water too, standing.'
	},
	// The helper.
	{
		id: 'BODY-WATER-HELPER',
		purposes: ['run-water', 'set-temperature'],
		station: 'dry side',
		how: 'stretched',
		counts: 'must',
		when: { runsWater: ['helper'] },
		says: 'The helper runs the water from the dry side.'
	},
	{
		id: 'WISH-WATER-HELPER',
		purposes: ['run-water', 'set-temperature'],
		station: 'dry side',
		how: 'stretched',
		counts: 'wish',
		when: { helper: ['yes'], runsWater: OWN },
		says: 'The helper can run the water from the dry side.'
	},
	{
		id: 'WISH-WATER-HELPER-NEAR',
		purposes: ['run-water', 'set-temperature'],
		station: 'dry side',
		how: 'stretched',
		counts: 'wish',
		spare: 100,
		when: { runsWater: ['helper'] },
		says: 'The helper runs the water from the dry side without stretching, with 100 mm to spare.'
	},
	{
		id: 'WISH-HANDSET-HELPER',
		purposes: REST,
		station: 'dry side',
		how: 'stretched',
		counts: 'wish',
		when: { helper: ['yes'], runsWater: ['helper'] },
		says: 'The helper reaches the hand shower from the dry side.'
	}
];

const mm = (n: number): Quantity => ({ n, unit: 'mm' });

const BODY = {
	document: 'The person as measured',
	edition: '1',
	source: { title: 'reach of a two-link arm from what was measured', how: 'own' }
} as const;

/** The table as rows: each asks one reach of every mark with that function. */
export const REACH_ROWS: readonly Row[] = TABLE.map(
	({ id, purposes, station, how, counts, spare = 0, when, says, note }) => ({
		...BODY,
		id,
		clause: `reach, ${station}`,
		origin: counts === 'wish' ? 'wish' : 'body',
		...(when && { when }),
		of: 'any',
		purposes,
		...((station === 'seat' || station === 'before the seat') && { and: 'seat' as const }),
		measure: MEASURE[station][how],
		...(counts === 'wish' && { missed: MISSED }),
		allowed: counts === 'beyond' ? { max: mm(-BEYOND) } : { min: mm(spare) },
		says,
		...(note !== undefined && { note })
	})
);
