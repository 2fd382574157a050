import type { Pack, Quantity, Require, Row } from '../row.ts';

const mm = (n: number): Quantity => ({ n, unit: 'mm' });

const OURS = {
	document: 'What the person needs',
	edition: '1',
	source: { title: 'ours', how: 'judgement' },
	origin: 'wish'
} as const;
const TRADE = { ...OURS, source: { title: 'common practice, no source', how: 'judgement' } } as const;
const STUDY_RAILS = {
	document: 'Study of rails on both sides, 11 people of 25-58 years',
	edition: '2019',
	source: { title: 'rails on both sides take load off the legs; that they steady who sits is ours', how: 'seen' }
} as const;
const STUDY_SIDE = {
	...OURS,
	document: 'Study of one-sided help in rising, 12 people of 69-88 years',
	edition: '2006',
	source: { title: 'a bar on one side loads the knee of that side more and spares the other', how: 'seen' }
} as const;
const STUDY_TRANSFER = {
	...OURS,
	document: 'Study of independent transfers for the US Access Board',
	edition: '2010'
} as const;
const STUDY_CARERS = {
	...OURS,
	document: 'Report on assisted showering for the US Access Board, 4-21-4',
	edition: '2010'
} as const;

const SITS = { washes: ['seated', 'both', 'unknown'] } as const;
/** Asks of the case: what is measured is not looked at. */
const CASE = { of: 'case', measure: 'inside-width' } as const;
/** Asks of the seat: what is measured is not looked at. */
const SEAT = { of: 'seat', measure: 'seat-off-centre' } as const;

/** What has to be asked of somebody else; each keeps waiting nothing but what it speaks of. */
const asks: readonly Row[] = [
	{
		...OURS,
		...CASE,
		id: 'NEED-CONSENT',
		clause: 'consent',
		when: { consents: ['unknown'] },
		whom: 'the client',
		allowed: { ask: 'Does the client agree to be assessed, and that the marks go to who fits them?' },
		says: 'The client agreed to be assessed, and that the marks go to who fits them.'
	},
	{
		...OURS,
		...CASE,
		// Nothing is settled against the will of the client.
		origin: 'room',
		id: 'NEED-CONSENT-REFUSED',
		clause: 'consent',
		when: { consents: ['no'] },
		whom: 'who decides with or for the client',
		allowed: {
			ask: 'The client did not agree. Who can decide this is left alone; for who cannot: who found that, who decided in the interest of the client, and where is it written?'
		},
		says: 'What the client did not agree to is not carried out.'
	},
	{
		...OURS,
		...CASE,
		origin: 'room',
		id: 'NEED-PERMISSION',
		clause: 'permission',
		when: { permission: ['wanted', 'refused'] },
		whom: 'the owner of the walls',
		allowed: {
			ask: 'Are holes and backing agreed to in writing? The owner may want the work described, its permits, and a word on what is put back one day.'
		},
		says: 'Who owns the walls agreed in writing to holes and backing.',
		note: 'In the United States a landlord may not refuse reasonable changes that the tenant pays for; a description of the work, good workmanship, permits and, where reasonable, putting it back may be asked for (24 CFR 100.203). Elsewhere other law holds.'
	},
	{
		...OURS,
		...CASE,
		id: 'NEED-EXPECTED',
		clause: 'now and later',
		when: { worsens: ['yes'] },
		whom: 'who treats the client',
		allowed: {
			ask: 'What is likely to change in the next year or so? Enter it as expected before long, and the marks are kept for both.'
		},
		says: 'A condition that worsens is planned for as it will be, too.'
	},
	{
		...TRADE,
		...CASE,
		id: 'NEED-DRY',
		clause: 'drying',
		whom: 'the client',
		allowed: { ask: 'Where does the client get dry, seated or holding on, out of the wet, a towel within reach?' },
		says: 'There is a dry place to dry oneself, seated or holding on.'
	},
	{
		...TRADE,
		...CASE,
		id: 'NEED-AID-PARKED',
		clause: 'walking aid',
		when: { aid: ['stick', 'crutches', 'frame'] },
		whom: 'the client',
		allowed: { ask: 'Where does the walking aid stand during the shower, in reach before the step out?' },
		says: 'The walking aid stands in reach before the step out.'
	},
	{
		...TRADE,
		...CASE,
		id: 'NEED-SEIZURES',
		clause: 'seizures',
		when: { seizures: ['yes'] },
		whom: 'who treats the seizures, and the client',
		allowed: { ask: 'Who is within call all through the shower, and how does help get in from outside?' },
		says: 'Somebody is within call, and help gets in from outside.'
	},
	{
		...TRADE,
		...SEAT,
		id: 'NEED-HOIST',
		clause: 'hoist',
		when: { hoisted: ['yes'] },
		whom: 'who supplies the hoist',
		allowed: { ask: 'Does the hoist bring the client over this seat, and which sling stays in place?' },
		says: 'The hoist brings the client over the seat.'
	},
	{
		...TRADE,
		...SEAT,
		id: 'NEED-SEAT-SUPPORT',
		clause: 'sitting balance',
		when: { sits: ['back-rest', 'held'] },
		whom: 'who treats the sitting balance',
		allowed: { ask: 'Does this seat need a back rest, arm rests or a belt, or is it a shower chair?' },
		says: 'The seat supports who does not sit steady unaided.'
	},
	{
		...TRADE,
		...SEAT,
		id: 'NEED-SKIN',
		clause: 'skin',
		when: { skinAtRisk: ['yes'] },
		whom: 'who looks after the skin',
		allowed: { ask: 'Which padding, and may the seat have an opening or an edge where the skin is at risk?' },
		says: 'The seat spares the skin.'
	},
	{
		...TRADE,
		...SEAT,
		id: 'NEED-BELOW',
		clause: 'washing from below',
		when: { washedBelow: ['yes'] },
		whom: 'the client and who helps',
		allowed: { ask: 'Does the seat need an opening at the front, and does the skin bear its edge?' },
		says: 'The seat leaves room to wash from below.'
	},
	{
		...TRADE,
		...SEAT,
		id: 'NEED-HIP',
		clause: 'a hip that must not bend past level',
		when: { hipLimit: ['yes'] },
		whom: 'who set the limit of the hip',
		allowed: { ask: 'How high must a seat be, and until when does the limit hold?' },
		says: 'The limit of the hip is known, and when it ends.'
	},
	{
		...TRADE,
		...SEAT,
		id: 'NEED-HANDLING',
		clause: 'two helpers',
		when: { helpedBy: ['two'] },
		whom: 'who wrote the moving and handling plan',
		allowed: { ask: 'Where do both helpers stand, and do they reach the client on this seat?' },
		says: 'Both helpers have the place the moving and handling plan gives them.'
	},
	{
		...OURS,
		...SEAT,
		id: 'NEED-GROWS',
		clause: 'growth',
		when: { growing: ['yes'] },
		whom: 'the family',
		allowed: { ask: 'Can the seat be set higher as the client grows, and who measures again in six months?' },
		says: 'What is fitted for who still grows can be set higher.'
	},
	{
		...STUDY_SIDE,
		id: 'NEED-RISING-SIDE',
		clause: 'one-sided help',
		when: { weaker: ['one'] },
		of: 'horizontal-bar',
		purposes: ['rise'],
		measure: 'bar-diameter',
		whom: 'who treats the weaker side',
		allowed: {
			ask: 'A bar tends to load the knee on the side of the hand that holds it. On which side was rising tried, and which was better?'
		},
		says: 'The bar to rise by is on the side that was tried.'
	},
	{
		...OURS,
		...CASE,
		id: 'NEED-TENURE',
		clause: 'permission',
		when: { permission: ['unknown'] },
		whom: 'the client',
		allowed: {
			ask: 'Whose are the walls, and if somebody else owns them: are holes and backing agreed to in writing?'
		},
		says: 'Whose the walls are is known.'
	},
	{
		...OURS,
		...CASE,
		id: 'NEED-CAPACITY',
		clause: 'consent',
		when: { followsSteps: ['no'], consents: ['yes'] },
		whom: 'who decides with the client',
		allowed: { ask: 'Was it agreed to by somebody who could decide it, or in whose name, and where is that written?' },
		says: 'Who agreed could decide it, or somebody did in the name of the client.'
	},
	{
		...TRADE,
		...CASE,
		id: 'NEED-WITHIN-CALL',
		clause: 'calling for help',
		when: { callsHelp: ['none-wanted'], followsSteps: ['no'] },
		whom: 'who helps or lives with the client',
		allowed: { ask: 'Who is within call all through the shower, where nothing is there to call with?' },
		says: 'Where nothing is there to call with, somebody is within call.'
	},
	{
		...TRADE,
		...SEAT,
		id: 'NEED-LEGS-OVER',
		clause: 'over the rim',
		when: { ...SITS, type: ['over-bath'] },
		whom: 'the client, watched doing it',
		allowed: {
			ask: 'Sitting on a board as high as the rim, without a back to it: do both legs go over, and who lifts the second one?'
		},
		says: 'Both legs go over the rim from the board.'
	},
	{
		...OURS,
		...SEAT,
		id: 'NEED-ONE-HAND-HOLDS',
		clause: 'sitting balance',
		when: { sits: ['one-hand'], oneHand: ['yes'] },
		whom: 'who treats the sitting balance',
		allowed: { ask: 'The one hand that holds also washes: what holds the trunk meanwhile?' },
		says: 'The trunk is held while the one good hand washes.'
	},
	{
		...OURS,
		id: 'NEED-WEAKER-HOLDS',
		clause: 'the weaker hand',
		when: { weaker: ['one'], oneHand: ['unknown'] },
		of: 'horizontal-bar',
		measure: 'bar-diameter',
		whom: 'the client, watched doing it',
		allowed: { ask: 'Does the weaker hand close round a wet bar and bear on it, on a bad day?' },
		says: 'A bar for the weaker hand is one that it holds.'
	},
	{
		...OURS,
		id: 'NEED-STEPS-BEYOND',
		clause: 'who runs the water',
		when: { followsSteps: ['no'], runsWater: ['helper'] },
		of: 'control',
		purposes: ['run-water'],
		measure: 'inside-wall',
		whom: 'who helps or lives with the client',
		allowed: {
			ask: 'By standing up, or leaning further than was seen, this control may still be got at: what keeps the water from getting hot?'
		},
		says: 'Who must not turn the control does not get at hot water by it.'
	},
	{
		...OURS,
		id: 'NEED-STEPS-WATER',
		clause: 'who runs the water',
		when: { followsSteps: ['no'], runsWater: ['client', 'either', 'unknown'] },
		of: 'control',
		purposes: ['run-water'],
		measure: 'inside-wall',
		whom: 'who helps or lives with the client',
		allowed: {
			ask: 'Does the client know how this control works, may the client be left alone with it, and who sets how warm it gets?'
		},
		says: 'Who does not keep steps in mind has a familiar control, and somebody who sets it.'
	}
];

const rows: readonly Row[] = [
	...asks,
	{
		...OURS,
		source: { title: 'a base on wheels goes under the seat', how: 'judgement' },
		id: 'NEED-HOIST-UNDER',
		clause: 'hoist',
		when: { hoisted: ['yes'] },
		of: 'seat',
		measure: 'held-by-the-wall',
		allowed: 'yes',
		says: 'Nothing stands under the seat where the base of a hoist goes.'
	},
	{
		...OURS,
		source: { title: 'geometry: what is wider than the entry does not pass it', how: 'derived' },
		// No plan for who washes in it goes round that.
		origin: 'body',
		id: 'BODY-CHAIR-THROUGH',
		clause: 'through the entry',
		when: { washes: ['in-chair'] },
		of: 'case',
		measure: 'entry-beyond-chair',
		allowed: { min: mm(0) },
		says: 'The wheeled chair passes the entry.'
	},
	{
		...OURS,
		source: { title: 'geometry: what is wider than the entry does not pass it', how: 'derived' },
		id: 'NEED-AID-THROUGH',
		clause: 'through the entry',
		when: { aidWidth: ['yes'] },
		of: 'case',
		measure: 'entry-beyond-aid',
		allowed: { min: mm(0) },
		says: 'The walking aid passes the entry.'
	},
	{
		...OURS,
		source: { title: 'geometry: the box round a turned chair', how: 'derived' },
		id: 'NEED-CHAIR-PARKS',
		clause: 'parked chair',
		when: { ...SITS, crosses: ['yes'], chair: ['yes'] },
		of: 'case',
		measure: 'floor-beyond-chair',
		allowed: { min: mm(0) },
		says: 'The chair has room on the clear floor outside the entry as it is parked to cross.'
	},
	{
		...STUDY_TRANSFER,
		source: { title: '47 of 113 people could not cross 152 mm; that nothing should stand there is ours', how: 'seen' },
		id: 'NEED-OBSTACLE',
		clause: 'obstacle',
		when: { ...SITS, slides: ['yes'] },
		of: 'case',
		measure: 'obstacle-above-chair',
		allowed: { max: mm(0) },
		says: 'Nothing stands above the seat of the chair on the way across, or it swings away.',
		note: 'Of those who transfer by themselves 42 % could not cross what stands 152 mm above the seat.'
	},
	{
		...STUDY_TRANSFER,
		source: { title: '95 % cross 89 mm', how: 'seen' },
		id: 'NEED-GAP',
		clause: 'gap',
		when: { ...SITS, gap: ['yes'] },
		of: 'case',
		measure: 'gap-crossed',
		allowed: { max: mm(89) },
		says: 'The gap between both seats, the chair as it is parked, is at most 89 mm.'
	},
	{
		...STUDY_CARERS,
		source: { title: 'who helps wants open sides; 600 mm to stand is common practice, no source', how: 'seen' },
		id: 'NEED-HELPER-BESIDE',
		clause: 'open sides',
		when: { ...SITS, helpedBy: ['one'] },
		of: 'seat',
		measure: 'seat-floor-beside',
		allowed: { min: mm(600) },
		says: 'Who helps stands beside the seat: 600 mm on one side of it.'
	},
	{
		...STUDY_CARERS,
		source: { title: 'who helps wants open sides; 600 mm to stand is common practice, no source', how: 'seen' },
		id: 'NEED-HELPERS-BESIDE',
		clause: 'open sides',
		when: { ...SITS, helpedBy: ['two'] },
		of: 'seat',
		measure: 'seat-floor-both-sides',
		allowed: { min: mm(600) },
		says: 'Both helpers stand beside the seat: 600 mm on either side of it.'
	},
	{
		...OURS,
		id: 'NEED-IN-SIGHT',
		clause: 'the side that is overlooked',
		when: { ...SITS, overlooks: ['yes'] },
		of: 'any',
		purposes: [
			'run-water',
			'set-temperature',
			'divert',
			'rest-handset',
			'hang-handset',
			'rise',
			'push-up',
			'sit-steady',
			'call'
		],
		and: 'seat',
		measure: 'toward-overlooked-side',
		allowed: { max: mm(0) },
		says: 'Nothing that is needed lies on the side that is overlooked.'
	},
	{
		...TRADE,
		id: 'NEED-BELOW-HOSE',
		clause: 'washing from below',
		when: { ...SITS, washedBelow: ['yes'] },
		of: 'handset-rest',
		purposes: ['rest-handset'],
		and: 'outlet',
		measure: 'hose-to-spare',
		allowed: { min: mm(600) },
		says: 'The hose goes under who sits: 600 mm to spare at the rest of the hand shower.'
	},
	{
		...TRADE,
		id: 'NEED-BELOW-HOSE-CONTROL',
		clause: 'washing from below',
		when: { ...SITS, washedBelow: ['yes'], controls: ['one'] },
		of: 'handset-rest',
		purposes: ['rest-handset'],
		and: 'control',
		andPurposes: ['run-water'],
		measure: 'hose-to-spare',
		allowed: { min: mm(600) },
		says: 'The hose goes under who sits: 600 mm to spare at the rest of the hand shower.'
	},
	{
		...OURS,
		id: 'NEED-RAIL-ELBOW',
		clause: 'pushing up',
		of: 'fold-down-rail',
		purposes: ['push-up'],
		and: 'seat',
		measure: 'above-elbow',
		allowed: { min: mm(-25), max: mm(25) },
		says: 'The rail is as high as the elbow, within 25 mm: there the arm pushes.',
		note: 'An elbow cannot be estimated from other lengths; within 25 mm heights of rails made no difference in the study.'
	},
	{
		...OURS,
		id: 'NEED-HOLDER-SEATED',
		clause: 'washing with one hand',
		when: { washes: ['seated'] },
		of: 'handset-rest',
		purposes: ['hang-handset'],
		and: 'seat',
		measure: 'holder-above-sitter',
		allowed: { min: mm(50), max: mm(300) },
		says: 'The high holder is 50 to 300 mm above the shoulder of who sits: the water falls on the head, and the hand still gets there.'
	},
	{
		...OURS,
		id: 'NEED-SIT-STEADY-HEIGHT',
		clause: 'sitting steady',
		of: 'horizontal-bar',
		purposes: ['sit-steady'],
		and: 'seat',
		measure: 'above-seat',
		allowed: { min: mm(200), max: mm(450) },
		says: 'The bar to sit steady by is 200 to 450 mm above the seat.'
	},
	...(['horizontal-bar', 'vertical-bar'] as const).map((of): Row => ({
		...OURS,
		source: { title: 'as measured on the hand', how: 'judgement' },
		id: of === 'horizontal-bar' ? 'NEED-HAND-CLOSES' : 'NEED-HAND-CLOSES-UPRIGHT',
		clause: 'a hand that closes',
		when: { closes: ['yes'] },
		of,
		measure: 'hand-beyond-bar',
		allowed: { min: mm(0) },
		says: 'The hand closes round the bar.'
	}))
];

const ARM_RESTS = {
	...STUDY_RAILS,
	clause: 'sitting balance',
	kind: 'fold-down-rail',
	purpose: 'push-up',
	walls: ['seat-wall']
} as const;
const UNSTEADY = {
	...SITS,
	sits: ['back-rest', 'held'],
	roomBeside: ['yes'],
	// A sling swings past the seat.
	hoisted: ['no']
} as const;

const requires: readonly Require[] = [
	{
		...OURS,
		id: 'NEED-REQ-SEAT-REST',
		clause: 'resting',
		when: { rests: ['yes'], seat: ['yes'] },
		kind: 'seat',
		purpose: 'sit',
		walls: ['seat-wall', 'beside'],
		accessory: 'seat',
		says: 'A seat to sit down on: standing does not last as long as a shower, about ten minutes, or may end at any moment.'
	},
	{
		...OURS,
		id: 'NEED-REQ-HOLDER-SEATED',
		clause: 'washing with one hand',
		when: { washes: ['seated'], oneHand: ['yes'] },
		kind: 'handset-rest',
		purpose: 'hang-handset',
		walls: ['control-wall', 'beside'],
		accessory: 'handset-holder',
		says: 'A high holder for the hand shower, so that the one hand that holds is free to wash.'
	},
	{
		...ARM_RESTS,
		id: 'NEED-REQ-RAIL-ONE',
		when: { ...UNSTEADY, helpedBy: ['nobody', 'one', 'unknown'] },
		accessory: 'rail-one',
		says: 'A fold-down rail beside the seat, as an arm rest for who does not sit steady unaided.'
	},
	{
		...ARM_RESTS,
		id: 'NEED-REQ-RAIL-OTHER',
		when: { ...UNSTEADY, helpedBy: ['nobody', 'unknown'] },
		accessory: 'rail-other',
		says: 'A second rail on the other side of the seat, to be held on both sides.'
	},
	{
		...OURS,
		id: 'NEED-REQ-SIT-STEADY',
		clause: 'sitting steady',
		when: { ...SITS, sits: ['one-hand', 'back-rest'] },
		kind: 'horizontal-bar',
		purpose: 'sit-steady',
		walls: ['beside'],
		accessory: 'bar-back',
		says: 'A bar on the wall beside the seat, to sit steady by.'
	}
];

/** What follows from what the person can, needs and expects, beside reach. */
export const NEEDS: Pack = {
	id: 'needs',
	name: 'What the person needs',
	requires,
	rows,
	judgement: [
		'Pain, tiredness and balance change from day to day: what counts is the worse usual day.',
		'Who helps, where and how, is agreed with those who help.'
	]
};
