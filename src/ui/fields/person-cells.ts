import type { Cell, Choice, ChoiceField, Field, FieldPath, NumberField } from './spec.ts';
import type { Quantity } from './quantity.ts';

const SIDES: readonly Choice[] = [
	{ value: 'left', label: 'left' },
	{ value: 'right', label: 'right' }
];

function number(label: string, path: FieldPath, quantity: Quantity = 'length', dimension?: string): NumberField {
	return { kind: 'number', label, path, quantity, ...(dimension === undefined ? {} : { dimension }) };
}

function choice(label: string, path: FieldPath, choices: readonly Choice[]): ChoiceField {
	return { kind: 'choice', label, path, choices, how: 'observed' };
}

function cell(id: string, hint: string, ...fields: readonly [Field, ...Field[]]): Cell {
	return { id, label: fields[0].label, hint, fields };
}

function taped(id: string, label: string, hint: string): Cell {
	return cell(id, hint, number(label, ['body', id], 'length', id));
}

/** The twelve numbers of a visit that stand in the person's record, in the order they are asked. */
export const TWELVE: readonly Cell[] = [
	cell('mass', 'Said or weighed.', number('Mass', ['mass'], 'mass')),
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
	cell(
		'weakerSide',
		'The side that is spared.',
		choice(
			'Weaker side',
			['weakerSide'],
			[...SIDES, { value: 'both', label: 'both' }, { value: 'neither', label: 'neither' }]
		)
	),
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
	{
		id: 'chair',
		label: 'Chair seat, high × wide',
		hint: 'The wheeled chair: loaded seat to floor, and the widest part.',
		fields: [number('Chair seat, high', ['chair', 'seatHeight']), number('Chair, wide', ['chair', 'width'])]
	},
	taped('elbowAboveSeat', 'Elbow above the seat', 'Upper arm hanging: loaded seat to the underside of the elbow.')
];

/** What else could move a mark. */
export const MORE: readonly Cell[] = [
	cell(
		'washes',
		'On most days, on the worse usual day.',
		choice(
			'Washes',
			['washes'],
			[
				{ value: 'seated', label: 'seated' },
				{ value: 'standing', label: 'standing' },
				{ value: 'both', label: 'both' }
			]
		)
	),
	cell(
		'transfer',
		'How the seat is reached.',
		choice(
			'Transfer',
			['transfer'],
			[
				{ value: 'walks', label: 'walks in' },
				{ value: 'stand-pivot', label: 'stands and turns' },
				{ value: 'sitting-pivot', label: 'slides over sitting' },
				{ value: 'slide-board', label: 'with a board' },
				{ value: 'hoist', label: 'with a hoist' }
			]
		)
	),
	cell(
		'rises',
		'From a seat as high as the lower leg.',
		choice(
			'Rises',
			['rises'],
			[
				{ value: 'alone', label: 'alone' },
				{ value: 'with-arms', label: 'with the arms' },
				{ value: 'with-help', label: 'with help' },
				{ value: 'cannot', label: 'cannot' }
			]
		)
	),
	cell('needsHold', 'Standing, does one hand have to hold on?', choice('Needs a hold', ['needsHold'], yesNo())),
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
	cell('age', 'Only for estimates of what is not measured.', number('Age', ['age'], 'years')),
	taped('stature', 'Stature', 'Barefoot. In old age a poor guide to the limbs.'),
	cell('sittingForward', 'Back rest to the back, sitting as usual.', number('Sits forward by', ['sittingForward'])),
	cell('lean', 'Watched, at the shoulder: how far the trunk leans and comes back.', {
		kind: 'lean',
		label: 'Leans forward',
		path: ['lean'],
		how: 'observed'
	}),
	cell('movesOut', 'From the seat back to chair or standing.', choice('Moves out toward', ['movesOut'], SIDES)),
	taped('handLength', 'Hand', 'Crease of the wrist to the tip of the middle finger.'),
	cell(
		'rightFlexion',
		'How far the arm lifts in front; 90 is level.',
		number('Right arm lifts to', ['arms', 'right', 'flexion'], 'degrees')
	),
	cell(
		'leftFlexion',
		'How far the arm lifts in front; 90 is level.',
		number('Left arm lifts to', ['arms', 'left', 'flexion'], 'degrees')
	),
	cell(
		'rightElbow',
		'What is missing to straight when it is stretched.',
		number('Right elbow stays bent by', ['arms', 'right', 'elbowDeficit'], 'degrees')
	),
	cell(
		'leftElbow',
		'What is missing to straight when it is stretched.',
		number('Left elbow stays bent by', ['arms', 'left', 'elbowDeficit'], 'degrees')
	)
];

/** What is asked of somebody who helps. */
export const HELPER: readonly Cell[] = [
	cell(
		'helper-shoulder',
		'Floor to the bony point of the shoulder, shoes on.',
		number('Helper: shoulder, standing', ['body', 'shoulderStanding'], 'length', 'shoulderStanding')
	),
	cell(
		'helper-arm',
		'Bony point of the shoulder to the middle of a rod in the fist.',
		number('Helper: right arm to the grip', ['arms', 'right', 'toGrip'], 'length', 'right')
	),
	cell(
		'helper-left-arm',
		'Bony point of the shoulder to the middle of a rod in the fist.',
		number('Helper: left arm to the grip', ['arms', 'left', 'toGrip'], 'length', 'left')
	)
];

function yesNo(): readonly Choice[] {
	return [
		{ value: true, label: 'yes' },
		{ value: false, label: 'no' }
	];
}
