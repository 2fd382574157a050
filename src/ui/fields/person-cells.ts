import type { How } from '#core/case/fact.ts';
import type { Person } from '#core/case/record.ts';
import type { Cell, Choice, ChoiceField, Field, FieldPath, NumberField } from './spec.ts';
import type { Quantity } from './quantity.ts';

const SIDES: readonly Choice[] = [
	{ value: 'left', label: 'left' },
	{ value: 'right', label: 'right' }
];

function number(label: string, path: FieldPath, quantity: Quantity = 'length', dimension?: string): NumberField {
	return { kind: 'number', label, path, quantity, ...(dimension === undefined ? {} : { dimension }) };
}

function choice(label: string, path: FieldPath, choices: readonly Choice[], how: How = 'observed'): ChoiceField {
	return { kind: 'choice', label, path, choices, how };
}

function cell(id: string, hint: string, ...fields: readonly [Field, ...Field[]]): Cell {
	return { id, label: fields[0].label, hint, fields };
}

function taped(id: string, label: string, hint: string): Cell {
	return cell(id, hint, number(label, ['body', id], 'length', id));
}

const MASS = cell('mass', 'Said or weighed.', number('Mass', ['mass'], 'mass'));

const WEAKER_SIDE = cell(
	'weakerSide',
	'The own left or right of the client: the side used less or affected.',
	choice(
		'Weaker side',
		['weakerSide'],
		[...SIDES, { value: 'both', label: 'both' }, { value: 'neither', label: 'neither' }]
	)
);

const CHAIR: Cell = {
	id: 'chair',
	label: 'Chair seat, high × wide',
	hint: 'The wheeled chair: loaded seat to floor, and the widest part.',
	fields: [number('Chair seat, high', ['chair', 'seatHeight']), number('Chair, wide', ['chair', 'width'])]
};

/** The first numbers of a visit that stand in the person's record, in the order they are asked. */
const FIRST: readonly Cell[] = [
	MASS,
	taped('wristStanding', 'Wrist, standing', 'Floor to the crease of the wrist, arm hanging.'),
	taped(
		'shoulderAboveSeat',
		'Shoulder above the seat',
		'As usual, not at best: loaded seat to the bony point of the shoulder.'
	),
	taped('shoulderStanding', 'Shoulder, standing', 'Floor to the bony point of the shoulder.'),
	cell(
		'rightArm',
		'Bony point of the shoulder to the middle of a rod in the fist, arm straight.',
		number('Right arm to the grip', ['arms', 'right', 'toGrip'], 'length', 'right')
	),
	WEAKER_SIDE,
	cell(
		'leftArm',
		'Bony point of the shoulder to the middle of a rod in the fist, arm straight.',
		number('Left arm to the grip', ['arms', 'left', 'toGrip'], 'length', 'left')
	),
	cell(
		'movesIn',
		'From chair or standing toward the seat, as the person sees it.',
		choice('Moves in toward', ['movesIn'], SIDES)
	),
	taped('popliteal', 'Under the knee to floor', 'Barefoot, thigh level: floor to the hollow of the knee.'),
	CHAIR,
	taped('elbowAboveSeat', 'Elbow above the seat', 'Upper arm hanging: loaded seat to the underside of the elbow.')
];

/** The first numbers of a visit. Shape: who walks in is not asked for a wheeled chair, as long as none is recorded. */
export function firstCells({ transfer, chair }: Person): readonly Cell[] {
	const wheeled = transfer?.value !== 'walks' || chair.seatHeight !== undefined || chair.width !== undefined;
	return wheeled ? FIRST : FIRST.filter((one) => one !== CHAIR);
}

/** How one washes, moves and holds on: what may be otherwise before long. */
const WASHES = cell(
	'washes',
	'On most days, on the worse usual day.',
	choice(
		'Washes',
		['washes'],
		[
			{ value: 'seated', label: 'seated' },
			{ value: 'standing', label: 'standing' },
			{ value: 'both', label: 'standing or seated', short: 'either' },
			{ value: 'in-chair', label: 'in a shower chair' }
		]
	)
);

const WAYS: readonly Choice[] = [
	{ value: 'walks', label: 'walks' },
	{ value: 'stand-pivot', label: 'stands and turns' },
	{ value: 'sitting-pivot', label: 'slides over sitting' },
	{ value: 'slide-board', label: 'with a board' },
	{ value: 'hoist', label: 'with a hoist' }
];

const TRANSFER = cell('transfer', 'How the seat is reached.', choice('Transfer', ['transfer'], WAYS));

const LEAVES = cell('leaves', 'Where that is another way than in, tired or wet.', choice('Gets out', ['leaves'], WAYS));

const RISES = cell(
	'rises',
	'From a seat as high as the lower leg.',
	choice(
		'Rises',
		['rises'],
		[
			{ value: 'alone', label: 'alone, arms folded', short: 'alone' },
			{ value: 'with-arms', label: 'alone, pushing with the arms', short: 'with the arms' },
			{ value: 'with-help', label: 'with help' },
			{ value: 'cannot', label: 'cannot' }
		]
	)
);

const RUNS_WATER = cell(
	'runsWater',
	'Who turns it on and sets how warm it is. The helper: because the client must not.',
	choice(
		'Runs the water',
		['runsWater'],
		[
			{ value: 'client', label: 'the client' },
			{ value: 'helper', label: 'the helper, because the client must not', short: 'the helper' },
			{ value: 'either', label: 'either' }
		]
	)
);

const NEEDS_HOLD = cell(
	'needsHold',
	'Standing, does one hand have to hold on?',
	choice('Needs a hold', ['needsHold'], yesNo())
);

const WEAKER_HOLDS = cell(
	'weakerHolds',
	'Closes round a wet bar and bears on it, on a bad day.',
	choice('Weaker hand holds a bar', ['weakerHolds'], yesNo())
);

const SITS = cell(
	'sits',
	'Feet on the floor, on a flat seat without arms.',
	choice(
		'Sits steady',
		['sits'],
		[
			{ value: 'free', label: 'with both hands free', short: 'hands free' },
			{ value: 'one-hand', label: 'with one hand on something', short: 'one hand holds' },
			{ value: 'back-rest', label: 'against a back rest only', short: 'on a back rest' },
			{ value: 'held', label: 'only held', short: 'only held' }
		]
	)
);

const STANDS_FOR = cell(
	'standsFor',
	'With a hand on a bar. A shower takes about ten minutes.',
	number('Stands for', ['standsFor'], 'minutes')
);

const TIRES = cell(
	'tires',
	'Worn out, dizzy or short of breath before she has washed.',
	choice('Tires while washing', ['tires'], yesNo(), 'told')
);

const HELPED_BY = cell(
	'helpedBy',
	'Getting in and out.',
	choice(
		'Helped in and out by',
		['helpedBy'],
		[
			{ value: 'nobody', label: 'nobody' },
			{ value: 'one', label: 'one' },
			{ value: 'two', label: 'two' }
		]
	)
);

/** The wheeled chair as it is parked to cross. */
const PARKED: readonly Cell[] = [
	cell('chairLength', 'Back to front, feet on the rests.', number('Chair, long', ['chair', 'length'])),
	cell(
		'approach',
		'As it stands when she crosses to the seat.',
		choice(
			'Chair is parked',
			['chair', 'approach'],
			[
				{ value: 'beside', label: 'beside the seat', short: 'beside' },
				{ value: 'aslant', label: 'aslant' },
				{ value: 'facing', label: 'facing it', short: 'facing' }
			]
		)
	),
	cell(
		'gap',
		'Edge of the chair seat to edge of the seat, along the way she crosses.',
		number('Gap between the seats', ['chair', 'gap'])
	),
	cell(
		'obstacle',
		'Arm rest or wheel above the chair seat, where she crosses; 0 when nothing is.',
		number('In the way, above the chair seat', ['chair', 'obstacle'])
	)
];

/** What she walks with. */
const WALKING_AID: readonly Cell[] = [
	cell(
		'aid',
		'In the bathroom.',
		choice(
			'Walks with',
			['walkingAid', 'kind'],
			[
				{ value: 'none', label: 'nothing' },
				{ value: 'stick', label: 'a stick' },
				{ value: 'crutches', label: 'crutches' },
				{ value: 'frame', label: 'a frame' }
			]
		)
	),
	cell('aidWidth', 'Where it is widest.', number('Walking aid, wide', ['walkingAid', 'width']))
];

const EXPECTED = choice(
	'Condition',
	['prognosis'],
	[
		{ value: 'stable', label: 'stable' },
		{ value: 'improving', label: 'improving' },
		{ value: 'worsening', label: 'worsening' },
		{ value: 'varying', label: 'changing from day to day', short: 'varying' }
	],
	'told'
);

/** What changes the choice of things, or whom to ask; what counts is the worse usual day. Paths begin at the person. */
export const MINDED: readonly Cell[] = [
	cell(
		'consents',
		'To be assessed, and that the marks go to who fits them.',
		choice('The client agrees', ['consents'], yesNo(), 'told')
	),
	cell(
		'ownFigure',
		'On her own and the therapist\u2019s sheets. Without a yes they show a figure of nobody\u2019s size.',
		choice('Drawn at own size', ['ownFigure'], yesNo(), 'told')
	),
	cell('prognosis', 'What is expected of it. What will be otherwise is entered further below.', EXPECTED),
	cell(
		'overlooks',
		'Things on that side are overlooked or not seen.',
		choice('Overlooks a side', ['overlooks'], [...SIDES, { value: 'neither', label: 'neither' }])
	),
	cell(
		'followsSteps',
		'Does what she is asked, in order, and knows what a thing is for.',
		choice('Follows steps', ['followsSteps'], yesNo())
	),
	cell(
		'skinAtRisk',
		'Sore, or soon so, where she sits.',
		choice('Skin at risk where she sits', ['skinAtRisk'], yesNo())
	),
	cell(
		'washedBelow',
		'While she sits, by herself or somebody else.',
		choice('Washed from below', ['washedBelow'], yesNo(), 'told')
	),
	cell(
		'seizures',
		'May lose consciousness or control of her limbs.',
		choice('Seizures', ['seizures'], yesNo(), 'told')
	),
	cell(
		'callsHelp',
		'From the seat, and from the floor after a fall.',
		choice(
			'Calls for help by',
			['callsHelp'],
			[
				{ value: 'cord', label: 'a cord on the wall', short: 'a cord' },
				{ value: 'worn', label: 'something worn' },
				{ value: 'none-wanted', label: 'nothing, by her own wish', short: 'nothing' }
			],
			'told'
		)
	),
	cell(
		'hipLimit',
		'A hip that must not bend past level, as after an operation.',
		choice('Hip must not bend past level', ['hipLimit'], yesNo(), 'told')
	),
	cell(
		'feelsHeat',
		'Feels in time that water is too hot, wherever it meets the skin.',
		choice('Feels heat in time', ['feelsHeat'], yesNo())
	),
	cell(
		'seesBars',
		'Tells a bar from a wall of nearly its colour, in the shower, without glasses.',
		choice('Sees a bar on its wall', ['seesBars'], yesNo())
	)
];

const LEAN: Cell = {
	id: 'lean',
	label: 'Leans forward',
	hint: 'Watched, at the shoulder: how far the trunk leans and comes back.',
	fields: [{ kind: 'lean', label: 'Leans forward', path: ['lean'], how: 'observed' }]
};

/** What else could move a mark. Shape: nobody is asked what a hand holds that is as good as the other. */
export function moreCells({ weakerSide, weakerHolds, transfer, chair }: Person): readonly Cell[] {
	const wheeled = transfer?.value !== 'walks' || Object.keys(chair).length > 0;
	const spared = weakerSide?.value !== 'neither' || weakerHolds !== undefined;
	return [
		WASHES,
		TRANSFER,
		RISES,
		NEEDS_HOLD,
		SITS,
		STANDS_FOR,
		TIRES,
		HELPED_BY,
		...(spared ? [WEAKER_HOLDS] : []),
		RUNS_WATER,
		LEAN,
		cell('sittingForward', 'Back rest to the back, sitting as usual.', number('Sits forward by', ['sittingForward'])),
		LEAVES,
		cell('movesOut', 'From the seat back to chair or standing.', choice('Moves out toward', ['movesOut'], SIDES)),
		...(wheeled ? PARKED : []),
		...WALKING_AID,
		cell(
			'sex',
			'Only for estimates of what is not measured.',
			choice(
				'Sex',
				['sex'],
				[
					{ value: 'female', label: 'female' },
					{ value: 'male', label: 'male' }
				]
			)
		),
		cell('age', 'For estimates of what is not measured, for growth and for scalding.', number('Age', ['age'], 'years')),
		taped('stature', 'Stature', 'Barefoot. In old age a poor guide to the limbs.'),
		taped('handLength', 'Hand', 'Crease of the wrist to the tip of the middle finger.'),
		...bothSides(({ side, name }) => [
			cell(
				`${side}-upperArm`,
				'Bony point of the shoulder to the point of the elbow.',
				number(`${name} upper arm`, ['arms', side, 'upperArm'])
			),
			...JOINTS.map(({ id, label, hint }) =>
				cell(`${side}-${id}`, hint, number(`${name} ${label}`, ['arms', side, id], 'degrees'))
			),
			cell(
				`${side}-closesRound`,
				'The thickest round bar the fingers close round.',
				number(`${name} hand closes round`, ['arms', side, 'closesRound'])
			),
			cell(
				`${side}-feels`,
				'What it touches, and how hot that is.',
				choice(`${name} hand feels`, ['arms', side, 'feels'], yesNo())
			)
		])
	];
}

/** How far the joints of an arm go. */
const JOINTS = [
	{ id: 'flexion', label: 'arm lifts in front to', hint: 'How far the arm lifts in front; 90 is level.' },
	{ id: 'abduction', label: 'arm lifts sideways to', hint: 'How far the arm lifts to its own side; 90 is level.' },
	{
		id: 'adduction',
		label: 'arm crosses by',
		hint: 'How far the level arm goes past straight ahead, to the other side.'
	},
	{ id: 'elbowDeficit', label: 'elbow stays bent by', hint: 'What is missing to straight when it is stretched.' },
	{ id: 'elbowFlexion', label: 'elbow bends to', hint: 'How far it bends from straight.' },
	{ id: 'hurtsFrom', label: 'arm hurts from', hint: 'Lifting it, ahead or sideways, hurts from here; 90 is level.' }
] as const;

interface OnSide {
	readonly side: 'left' | 'right';
	readonly name: string;
}

const bothSides = (of: (on: OnSide) => readonly Cell[]): readonly Cell[] =>
	interleaved(of({ side: 'right', name: 'Right' }), of({ side: 'left', name: 'Left' }));

const interleaved = (a: readonly Cell[], b: readonly Cell[]): readonly Cell[] =>
	a.flatMap((one, i) => [one, ...b.slice(i, i + 1)]);

/** What may be expected to be otherwise before long. */
export const LATER: readonly Cell[] = [
	WASHES,
	TRANSFER,
	RISES,
	WEAKER_SIDE,
	WEAKER_HOLDS,
	NEEDS_HOLD,
	SITS,
	STANDS_FOR,
	HELPED_BY,
	RUNS_WATER,
	LEAN,
	MASS
].map((one) => ({ ...one, id: `later-${one.id}` }));

const ARM_HINT = 'Bony point of the shoulder to the middle of a rod in the fist.';

/** How far somebody other than the client reaches, standing. */
const standingReach = (id: string, name: string, hint: string): readonly Cell[] => [
	cell(
		`${id}-shoulder`,
		hint,
		number(`${name}: shoulder, standing`, ['body', 'shoulderStanding'], 'length', 'shoulderStanding')
	),
	...(['right', 'left'] as const).map((side) =>
		cell(
			`${id}-${side}-arm`,
			ARM_HINT,
			number(`${name}: ${side} arm to the grip`, ['arms', side, 'toGrip'], 'length', side)
		)
	)
];

/** What is asked of somebody else who showers here. */
export const HOUSEHOLD: readonly Cell[] = [
	cell('household-age', 'A child is not let alone to the control.', number('Who else: age', ['age'], 'years')),
	cell('household-mass', 'Bars and seat carry whoever uses them.', number('Who else: mass', ['mass'], 'mass')),
	...standingReach('household', 'Who else', 'Floor to the bony point of the shoulder, barefoot.')
];

/** What is asked of somebody who helps. */
export const HELPER: readonly Cell[] = [
	cell('helper-mass', 'Who helps holds on too.', number('Helper: mass', ['mass'], 'mass')),
	...standingReach('helper', 'Helper', 'Floor to the bony point of the shoulder, shoes on.'),
	...(['right', 'left'] as const).map((side) =>
		cell(
			`helper-${side}-flexion`,
			'How far the arm lifts in front; 90 is level.',
			number(`Helper: ${side} arm lifts in front to`, ['arms', side, 'flexion'], 'degrees')
		)
	)
];

function yesNo(): readonly Choice[] {
	return [
		{ value: true, label: 'yes' },
		{ value: false, label: 'no' }
	];
}
