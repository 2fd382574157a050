import type { Pack, Quantity, Require, Row } from '../row.ts';

const mm = (n: number): Quantity => ({ n, unit: 'mm' });

const WISH = { origin: 'wish' } as const;
const STUDY_ENTRY = {
	document: 'Study of bars at the bath, 80 people',
	edition: '2011',
	source: { title: 'doi 10.1080/10400435.2011.614674', how: 'seen' }
} as const;
const STUDY_GRASP = {
	document: 'Study of hands on bars, 65 people',
	edition: '2025',
	source: { title: 'doi 10.2196/69442', how: 'seen' }
} as const;
const STUDY_RISING = {
	document: 'Study of bars in rising, 12 people of 69-88 years',
	edition: '2005',
	source: { title: 'bars 150 and 400 mm ahead of the seat edge compared', how: 'seen' }
} as const;
const STUDY_RAILS = {
	document: 'Study of rails on both sides, 11 people of 25-58 years',
	edition: '2019',
	source: { title: '330, 356 and 381 mm from the centre line at three heights compared', how: 'seen' }
} as const;
const STUDY_SEAT = {
	document: 'Study of seat height and rising, 55 people',
	edition: '2013',
	source: { title: 'pubmed 23740582', how: 'seen' }
} as const;
const STUDY_TRANSFER = {
	document: 'Study of independent transfers for the US Access Board',
	edition: '2010',
	source: { title: '95 % transfer within 25 mm of height and across 89 mm', how: 'seen' }
} as const;
const FEET = {
	document: 'Ergonomics course, seat height',
	edition: '2004',
	source: { title: 'height under the knee as the most a seat may have for flat feet', how: 'seen' }
} as const;
const PULL_CORD = {
	document: 'Approved Document M Volume 2, England, buildings other than dwellings',
	edition: '2015, amended 2020',
	clause: '4.30(e)',
	source: { title: 'bangles at 100 mm and at 800 to 1000 mm above the floor', how: 'seen' }
} as const;
const OURS = {
	document: 'Working habit of this house',
	edition: '1',
	source: { title: 'ours', how: 'judgement' }
} as const;

const OWN = ['client', 'either', 'unknown'];
const SITS = { washes: ['seated', 'both', 'unknown'] } as const;
const STANDS = { washes: ['standing'] } as const;
const IN_CHAIR = { washes: ['in-chair'] } as const;
const STEPS_IN = { walks: ['yes'] } as const;
/** Rooms so narrow that a bar on one side wall is within reach all along. */
const NARROW = { type: ['transfer', 'step-in-tray'] } as const;
const RISES = {
	washes: ['seated', 'both', 'unknown'],
	rises: ['alone', 'with-arms', 'with-help', 'unknown'],
	transfer: ['walks', 'stand-pivot', 'sitting-pivot', 'slide-board', 'unknown']
} as const;
const WEAK_RISER = { chair: ['no', 'unknown'], rises: ['with-arms', 'with-help'] } as const;

/** Where a rail has room, and who washes knows to fold it. */
const RAILS = { roomBeside: ['yes'], followsSteps: ['yes', 'unknown'] } as const;

const WIDE = { type: ['roll-in', 'alternate-roll-in', 'corner', 'over-bath'] } as const;
const STEADY = {
	...OURS,
	clause: 'standing in the shower',
	kind: 'horizontal-bar',
	purpose: 'steady',
	accessory: 'bar-control',
	says: 'A bar to steady on while standing.'
} as const;

/** Rooms where who sits has her back to the seat wall: on a board over a bath she sits away from it. */
const BACKED = { type: ['transfer', 'roll-in', 'alternate-roll-in', 'corner', 'step-in-tray'] } as const;
const ZONE_AHEAD = {
	...WISH,
	...OURS,
	clause: 'working zone',
	of: 'any',
	measure: 'ahead-of-shoulders',
	allowed: { min: mm(270) },
	says: 'What the hand works is in front, at least 270 mm ahead of the shoulders.',
	note: 'The zone ends at 420; how far is too far is what the wishes about reach count.'
} as const;
const ZONE_HEIGHT = {
	...WISH,
	...OURS,
	clause: 'working zone',
	of: 'any',
	and: 'seat',
	measure: 'above-seat',
	allowed: { min: mm(250), max: mm(500) },
	says: 'What the hand works is 250 to 500 mm above the seat.'
} as const;

const rows: readonly Row[] = [
	{
		...WISH,
		...STUDY_TRANSFER,
		id: 'EV-SEAT-CHAIR',
		clause: 'level transfer',
		when: { chair: ['yes'] },
		of: 'seat',
		measure: 'seat-above-chair',
		allowed: { min: mm(-25), max: mm(25) },
		says: 'The seat is level with the wheeled chair, within 25 mm.'
	},
	{
		...WISH,
		...STUDY_TRANSFER,
		id: 'EV-SEAT-GAP',
		clause: 'gap',
		when: { chair: ['yes'] },
		of: 'seat',
		measure: 'seat-end-to-entry',
		allowed: { max: mm(89) },
		says: 'From the end of the seat to the entry the gap to cross is at most 89 mm.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-SEAT-CENTRED',
		clause: 'seat lines',
		of: 'seat',
		measure: 'seat-off-centre',
		allowed: { max: mm(75) },
		says: 'The seat is in the middle of its wall, within 75 mm.'
	},
	{
		...WISH,
		...STUDY_SEAT,
		id: 'EV-SEAT-RISE',
		clause: '110 to 120 % of the lower leg',
		when: { ...WEAK_RISER, sits: ['free', 'one-hand', 'unknown'] },
		of: 'seat',
		measure: 'seat-above-easy-rise',
		allowed: { min: mm(0) },
		says: 'The seat is at least 110 % of the height under the knee, so that rising is easier.'
	},
	{
		...WISH,
		...FEET,
		id: 'EV-SEAT-FEET-FLAT',
		clause: 'feet flat',
		when: { chair: ['no', 'unknown'], rises: ['alone', 'cannot', 'unknown'], hipLimit: ['no', 'unknown'] },
		of: 'seat',
		measure: 'seat-above-knee-fold',
		allowed: { max: mm(0) },
		says: 'The feet stand flat: the seat is no higher than under the knee.'
	},
	{
		...WISH,
		...FEET,
		id: 'EV-SEAT-FEET-FIRST',
		clause: 'feet flat',
		when: {
			chair: ['no', 'unknown'],
			rises: ['with-arms', 'with-help'],
			sits: ['back-rest', 'held'],
			hipLimit: ['no', 'unknown']
		},
		of: 'seat',
		measure: 'seat-above-knee-fold',
		allowed: { max: mm(0) },
		says: 'Who does not sit steady by herself has both feet flat: the seat is no higher than under the knee.',
		note: 'Rising from it is harder then: the two pull apart, and steady sitting comes first.'
	},
	{
		...WISH,
		...STUDY_SEAT,
		id: 'EV-SEAT-FEET-HOLD',
		clause: '110 to 120 % of the lower leg',
		of: 'seat',
		measure: 'seat-above-high-rise',
		allowed: { max: mm(0) },
		says: 'The feet keep the floor: the seat is at most 120 % of the height under the knee.'
	},
	{
		...WISH,
		document: 'Building code appendix on hot water, Ontario',
		edition: '2012',
		source: { title: '43 C burns only after hours, and is the most proposed for care homes', how: 'seen' },
		id: 'EV-HEAT-NOT-FELT',
		clause: 'heat not felt, or not turned down in time',
		when: { scalds: ['yes'] },
		of: 'case',
		measure: 'water-temperature',
		allowed: { max: { n: 109.4, unit: 'degF' } },
		says: 'The water is at most 43 C (109.4 F): that it is too hot may not be felt, told or turned down in time.',
		note: 'Water of 49 C burns an older adult in about two minutes, an adult in about ten.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-HEAT-STOP',
		clause: 'heat not felt, or not turned down in time',
		when: { scalds: ['yes'] },
		of: 'case',
		measure: 'water-temperature',
		allowed: {
			ask: 'Does a stop on the control keep the water from getting hotter, whoever turns it, and who sets how warm it is?'
		},
		says: 'A stop keeps the water from getting hotter, whoever turns the control.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-BARS-SEEN',
		clause: 'seen without glasses',
		when: { seesBars: ['no'] },
		of: 'case',
		measure: 'inside-width',
		allowed: {
			ask: 'Do seat, bars and control stand out from the wall for the client, in the light there is, without glasses?'
		},
		says: 'Seat, bars and control stand out from the wall.'
	},
	{
		...ZONE_AHEAD,
		id: 'EV-ZONE-AHEAD',
		when: { ...SITS, ...BACKED, runsWater: OWN },
		purposes: ['run-water', 'divert', 'rest-handset']
	},
	{
		...ZONE_AHEAD,
		id: 'EV-ZONE-AHEAD-HANDSET',
		when: { ...SITS, ...BACKED, runsWater: ['helper'] },
		purposes: ['rest-handset']
	},
	{
		...ZONE_HEIGHT,
		id: 'EV-ZONE-HEIGHT',
		when: { ...SITS, runsWater: OWN },
		purposes: ['run-water', 'divert', 'rest-handset']
	},
	{
		...ZONE_HEIGHT,
		id: 'EV-ZONE-HEIGHT-HANDSET',
		when: { ...SITS, runsWater: ['helper'] },
		purposes: ['rest-handset']
	},
	{
		...WISH,
		...STUDY_RISING,
		id: 'EV-RISE-NEAR',
		clause: 'hand 150 mm ahead',
		when: RISES,
		of: 'horizontal-bar',
		purposes: ['rise'],
		and: 'seat',
		measure: 'near-end-past-seat',
		allowed: { max: mm(150) },
		says: 'The rising bar begins no more than 150 mm ahead of the edge of the seat.'
	},
	{
		...WISH,
		...STUDY_RISING,
		id: 'EV-RISE-FAR',
		clause: 'hand 400 mm ahead',
		when: RISES,
		of: 'horizontal-bar',
		purposes: ['rise'],
		and: 'seat',
		measure: 'far-end-past-seat',
		allowed: { min: mm(400) },
		says: 'The rising bar goes on to 400 mm ahead of the edge of the seat, where the leaning trunk reaches.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-RISE-HEIGHT',
		clause: 'rising and lowering',
		when: RISES,
		of: 'horizontal-bar',
		purposes: ['rise'],
		and: 'seat',
		measure: 'above-seat',
		allowed: { min: mm(200), max: mm(450) },
		says: 'The rising bar is 200 to 450 mm above the seat.',
		note: 'Pushing up wants 200 to 280, pulling and steadying up to shoulder height; within 25 mm nothing is critical.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-STEADY-ENTRY',
		clause: 'standing in the shower',
		when: NARROW,
		of: 'horizontal-bar',
		purposes: ['steady'],
		measure: 'bar-entry-end',
		allowed: { max: mm(300) },
		says: 'The bar on the control wall begins at most 300 mm from the entry.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-STEADY-BACK',
		clause: 'standing in the shower',
		when: NARROW,
		of: 'horizontal-bar',
		purposes: ['steady'],
		measure: 'bar-back-end',
		allowed: { max: mm(300) },
		says: 'The bar on the control wall goes on to at most 300 mm from the back wall.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-STEADY-HEIGHT',
		clause: 'standing in the shower',
		of: 'horizontal-bar',
		purposes: ['steady'],
		measure: 'bar-top-from-low-floor',
		allowed: { min: mm(800), max: mm(1000) },
		says: 'The bar to steady on is 800 to 1000 mm above the floor.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-STAND-LOW',
		clause: 'working zone',
		when: STANDS,
		of: 'any',
		purposes: ['run-water', 'rest-handset'],
		measure: 'envelope-bottom-above-shower-floor',
		allowed: { min: mm(900) },
		says: 'What the standing hand works is at least 900 mm above the floor.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-STAND-HIGH',
		clause: 'working zone',
		when: STANDS,
		of: 'any',
		purposes: ['run-water', 'rest-handset'],
		measure: 'envelope-top-above-shower-floor',
		allowed: { max: mm(1200) },
		says: 'What the standing hand works is at most 1200 mm above the floor.'
	},
	{
		...WISH,
		...STUDY_ENTRY,
		id: 'EV-ENTRY-EDGE',
		clause: 'bar at the entry edge',
		of: 'vertical-bar',
		measure: 'from-entry-line',
		allowed: { max: mm(150) },
		says: 'The vertical bar is at the entry, at most 150 mm inside it.'
	},
	{
		...WISH,
		...STUDY_GRASP,
		id: 'EV-ENTRY-FOOT',
		clause: 'grasp after a slip 9.4 % lower',
		of: 'vertical-bar',
		measure: 'foot-below-wrist',
		allowed: { min: mm(0) },
		says: 'The entry bar begins a tenth below the wrist: after a slip the hand goes lower.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-ENTRY-HEAD',
		clause: 'from wrist to shoulder',
		of: 'vertical-bar',
		measure: 'head-above-shoulder',
		allowed: { min: mm(0) },
		says: 'The entry bar goes up to the shoulder.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-CHAIR-AHEAD',
		clause: 'working zone',
		when: { ...IN_CHAIR, runsWater: OWN },
		of: 'any',
		purposes: ['run-water', 'divert', 'rest-handset'],
		measure: 'ahead-in-chair',
		allowed: { min: mm(270) },
		says: 'What the hand works is in front, at least 270 mm ahead of the shoulders in the parked chair.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-CHAIR-HEIGHT',
		clause: 'working zone',
		when: { ...IN_CHAIR, runsWater: OWN },
		of: 'any',
		purposes: ['run-water', 'divert', 'rest-handset'],
		measure: 'above-chair-seat',
		allowed: { min: mm(250), max: mm(500) },
		says: 'What the hand works is 250 to 500 mm above the seat of the shower chair.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-HELPER-LOW',
		clause: 'working zone of a helper',
		when: { runsWater: ['helper'] },
		of: 'any',
		purposes: ['run-water', 'set-temperature'],
		measure: 'envelope-bottom-above-bathroom-floor',
		allowed: { min: mm(900) },
		says: 'What the helper works is at least 900 mm above the floor the helper stands on.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-HELPER-HIGH',
		clause: 'working zone of a helper',
		when: { runsWater: ['helper'] },
		of: 'any',
		purposes: ['run-water', 'set-temperature'],
		measure: 'envelope-top-above-bathroom-floor',
		allowed: { max: mm(1200) },
		says: 'What the helper works is at most 1200 mm above the floor the helper stands on.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-HOLDER-HIGH',
		clause: 'washing standing',
		when: { washes: ['standing', 'both'] },
		of: 'handset-rest',
		purposes: ['hang-handset'],
		measure: 'holder-above-shoulder',
		allowed: { min: mm(150) },
		says: 'The high holder is at least 150 mm above the shoulder of who stands, so that the water falls on her.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-HOSE-HOLDER',
		clause: 'hose',
		of: 'handset-rest',
		and: 'outlet',
		measure: 'hose-to-spare',
		allowed: { min: mm(300) },
		says: 'The hose goes from its outlet to the hand shower with 300 mm to spare.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-HOSE-CONTROL',
		clause: 'hose',
		when: { controls: ['one'] },
		of: 'handset-rest',
		and: 'control',
		andPurposes: ['run-water'],
		measure: 'hose-to-spare',
		allowed: { min: mm(300) },
		says: 'The hose goes from the control that feeds it to the hand shower with 300 mm to spare.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-CONTROL-CLEAR',
		clause: 'above the bar',
		of: 'horizontal-bar',
		and: 'control',
		walls: 'same',
		measure: 'clear-above-bar',
		allowed: { min: mm(38) },
		says: 'A control is above a bar or beside it, never under it, where an arm on the bar would meet the lever.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-OUTLET-LOW',
		clause: 'hose',
		of: 'outlet',
		and: 'control',
		andPurposes: ['run-water'],
		measure: 'height-difference',
		allowed: { max: mm(300) },
		says: 'The outlet of the hose is within 300 mm of the height of the controls, so that it hangs clear of bars.'
	},
	{
		...WISH,
		...STUDY_RAILS,
		id: 'EV-RAIL-SIDE',
		clause: '330 to 381 mm from the centre line',
		of: 'fold-down-rail',
		purposes: ['push-up'],
		and: 'seat',
		measure: 'off-seat-centre-line',
		allowed: { min: mm(330), max: mm(381) },
		says: 'The rail is 330 to 381 mm beside the centre line of the seat.'
	},
	{
		...WISH,
		...STUDY_RAILS,
		id: 'EV-RAIL-HEIGHT',
		clause: '200 to 280 mm above the seat',
		// Where her own elbow is known it decides.
		when: { elbow: ['unknown'] },
		of: 'fold-down-rail',
		purposes: ['push-up'],
		and: 'seat',
		measure: 'above-seat',
		allowed: { min: mm(200), max: mm(280) },
		says: 'The rail is 200 to 280 mm above the seat, where the arms push.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-HELD-BY-WALL',
		clause: 'fixed',
		of: 'any',
		purposes: ['sit', 'step-in', 'step-out'],
		measure: 'held-by-the-wall',
		allowed: 'yes',
		says: 'It is held by the wall rather than standing on legs or between floor and ceiling.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-ENTRY-CLEAR',
		clause: 'clear of the sitter',
		when: { washes: ['seated', 'both', 'unknown'], oneHand: ['no', 'unknown'] },
		of: 'vertical-bar',
		purposes: ['step-in'],
		measure: 'off-the-seat-wall',
		allowed: 'yes',
		says: 'The entry bar is on another wall than the one behind who sits.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-ENTRY-HAND',
		clause: 'bar at the stronger hand',
		when: { oneHand: ['yes'] },
		of: 'vertical-bar',
		measure: 'at-stronger-hand',
		allowed: 'yes',
		says: 'The bar is on the side of the hand that holds: one side of the entry going in, the other coming out.'
	},
	{
		...WISH,
		...PULL_CORD,
		id: 'EV-CORD-HEIGHT',
		of: 'call-cord',
		measure: 'envelope-bottom-above-shower-floor',
		allowed: { min: mm(800), max: mm(1000) },
		says: 'The upper bangle of the call cord is 800 to 1000 mm above the floor, the lower one at 100 mm.',
		note: 'Whether the cord hangs clear of the spray, and whether it is reached from the floor, is tried on the spot.'
	},
	{
		...WISH,
		...OURS,
		id: 'EV-CALL-ASK',
		clause: 'calling for help',
		when: { callsHelp: ['unknown'] },
		of: 'case',
		measure: 'inside-width',
		allowed: { ask: 'How does the client call for help from the seat, and from the floor after a fall?' },
		says: 'She can call for help from the seat, and from the floor after a fall.'
	}
];

const requires: readonly Require[] = [
	{
		...OURS,
		id: 'EV-REQ-SEAT',
		clause: 'washing seated',
		when: SITS,
		kind: 'seat',
		purpose: 'sit',
		walls: ['seat-wall', 'beside'],
		accessory: 'seat',
		says: 'A seat, for washing seated.'
	},
	{
		...OURS,
		id: 'EV-REQ-CONTROL',
		clause: 'running the water',
		kind: 'control',
		purpose: 'run-water',
		walls: ['control-wall', 'beside'],
		accessory: 'control',
		says: 'A control, to run the water from the place of washing.'
	},
	{
		...OURS,
		id: 'EV-REQ-HANDSET',
		clause: 'putting the hand shower down',
		kind: 'handset-rest',
		purpose: 'rest-handset',
		walls: ['control-wall', 'beside'],
		accessory: 'handset-rest',
		says: 'A rest for the hand shower, within reach of the place of washing.'
	},
	{
		...STEADY,
		id: 'EV-REQ-STEADY',
		when: { washes: ['standing', 'both'], ...NARROW },
		walls: ['control-wall']
	},
	{
		...STEADY,
		id: 'EV-REQ-STEADY-WIDE',
		when: { washes: ['standing', 'both'], ...WIDE },
		walls: ['control-wall', 'beside']
	},
	{
		...OURS,
		id: 'EV-REQ-TEMPERATURE',
		clause: 'controls apart',
		when: { controls: ['apart'] },
		kind: 'control',
		purpose: 'set-temperature',
		walls: ['control-wall', 'beside'],
		accessory: 'temperature',
		says: 'A control for the temperature by itself, to be set from outside the spray.'
	},
	{
		...OURS,
		id: 'EV-REQ-DIVERTER',
		clause: 'two outlets',
		when: { secondOutlet: ['yes'] },
		kind: 'control',
		purpose: 'divert',
		walls: ['control-wall', 'beside'],
		accessory: 'diverter',
		says: 'A diverter, to choose between the hand shower and the other outlet from the place of washing.'
	},
	{
		...OURS,
		id: 'EV-REQ-OUTLET',
		clause: 'controls apart',
		when: { controls: ['apart'] },
		kind: 'outlet',
		purpose: 'feed-hose',
		walls: ['control-wall', 'beside'],
		accessory: 'outlet',
		says: 'An outlet for the hose of the hand shower.'
	},
	{
		...OURS,
		id: 'EV-REQ-HOLDER',
		clause: 'washing standing',
		when: { washes: ['standing', 'both'] },
		kind: 'handset-rest',
		purpose: 'hang-handset',
		walls: ['control-wall', 'beside'],
		accessory: 'handset-holder',
		says: 'A high holder for the hand shower, to wash standing with both hands free.'
	},
	{
		...STUDY_RAILS,
		id: 'EV-REQ-RAIL-ONE',
		clause: 'rails on both sides',
		when: { ...SITS, ...RAILS, rises: ['with-arms'], helpedBy: ['nobody', 'one', 'unknown'] },
		kind: 'fold-down-rail',
		purpose: 'push-up',
		walls: ['seat-wall'],
		accessory: 'rail-one',
		says: 'A fold-down rail beside the seat, to push up from with the arms.'
	},
	{
		...STUDY_RAILS,
		id: 'EV-REQ-RAIL-OTHER',
		clause: 'rails on both sides',
		when: { ...SITS, ...RAILS, rises: ['with-arms'], helpedBy: ['nobody', 'unknown'], oneHand: ['no', 'unknown'] },
		kind: 'fold-down-rail',
		purpose: 'push-up',
		walls: ['seat-wall'],
		accessory: 'rail-other',
		says: 'A second rail on the other side of the seat, to push up evenly.'
	},
	{
		...STUDY_RISING,
		id: 'EV-REQ-RISE',
		clause: 'bar beside the seat',
		when: RISES,
		kind: 'horizontal-bar',
		purpose: 'rise',
		walls: ['beside'],
		accessory: 'bar-back',
		says: 'A bar on the wall beside the seat, to rise and to sit down.'
	},
	{
		...STUDY_ENTRY,
		id: 'EV-REQ-ENTRY-BAR',
		clause: 'bar at the entry edge',
		when: STEPS_IN,
		kind: 'vertical-bar',
		purpose: 'step-in',
		walls: ['entry-side'],
		accessory: 'entry-bar',
		says: 'A vertical bar at the entry, to hold before the step in and after the step out.'
	},
	{
		...OURS,
		id: 'EV-REQ-EXIT-BAR',
		clause: 'bar at the entry edge',
		when: { ...STEPS_IN, oneHand: ['yes'] },
		kind: 'vertical-bar',
		purpose: 'step-out',
		walls: ['entry-side'],
		accessory: 'exit-bar',
		says: 'A second vertical bar on the other side of the entry: going out, the hand that holds is there.'
	},
	{
		...PULL_CORD,
		id: 'EV-REQ-CORD',
		when: { callsHelp: ['cord'] },
		kind: 'call-cord',
		purpose: 'call',
		walls: ['seat-wall', 'control-wall', 'beside'],
		accessory: 'call-cord',
		says: 'A cord to call for help with, from where one washes and from the floor.'
	}
];

/** What studies and working habits say about where help belongs. */
export const EVIDENCE: Pack = {
	id: 'evidence',
	name: 'Evidence and working habits',
	requires,
	rows,
	judgement: [
		'The studies were made at baths and toilets, most with few or young people; none with a seat in a level shower.',
		'After one-sided injury, which side is better for rising: ask, and try.',
		'In rising, who cannot lean forward rises easier by a higher bar, a lower one brings weight forward; an angled bar gives both, a vertical one steadies: try.',
		'A bar 355 to 485 mm above a seat is for pulling and steadying; pushing up wants a surface 200 to 280 mm above it.',
		'After a hip operation a higher seat may be ordered: ask.',
		'Wet and soapy reach, the spray, and tiredness.'
	]
};
