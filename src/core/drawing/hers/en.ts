import type { Messages } from './messages.ts';

/** Her sheets in English. */
export const en: Messages = {
	pictures: {
		title: 'Where your hands find help',
		says: 'Same number, same thing, on every page.',
		keep: 'Keep this page in sight.',
		dashed: 'Dashed: we are still asking about it.',
		thin: 'Thin and grey: for later.',
		poses: {
			sitting: 'Sitting, from the side',
			standing: 'Standing to wash',
			rising: 'Getting up',
			stepping: 'Stepping in',
			helper: 'With your helper'
		},
		walls: {
			'seat-ahead': 'The wall you face',
			'seat-behind': 'The wall behind you',
			'seat-left': 'The wall on your left',
			'seat-right': 'The wall on your right',
			'entry-ahead': 'The wall you face as you come in',
			'entry-behind': 'The wall beside the way in',
			'entry-left': 'On your left as you come in',
			'entry-right': 'On your right as you come in'
		},
		letters: (pairs) => `For the fitter: ${pairs}.`
	},
	mind: {
		title: 'The one thing to keep in mind',
		says: {
			'helper-turns': 'Only your helper turns the water.',
			brakes: 'Put the brakes of the chair on before the water runs.',
			'sit-in-time': 'Sit down before you are tired.',
			'one-hand-holds': 'One hand holds before the other hand lets go.',
			'sit-back': 'Sit right back before you wash.',
			'hold-first': 'Take hold first. Then move.'
		},
		lean: (hold) =>
			hold === 'nothing'
				? 'Then lean a little to reach the tap.'
				: hold === 'something'
					? 'Hold on when you lean to the tap.'
					: `Hold bar ${String(hold)} when you lean to the tap.`
	},
	when: {
		title: 'When you may use it',
		bars: 'Not before ________ on ________________. The seal must be dry. The fitter must have pulled on every bar.',
		parts: 'Not before ________ on ________________. The seal must be dry. The fitter must have tried every part.'
	},
	wrong: {
		title: 'Stop, and ring us, if',
		says: {
			'bar-moves': 'a bar moves or creaks',
			'seat-wobbles': 'the seat wobbles',
			'tile-cracks': 'a tile cracks',
			'water-behind': 'water runs behind a part',
			'suddenly-hot': 'the water is suddenly hot',
			'part-loose': 'a part comes loose',
			'cord-silent': 'the cord brings no help'
		},
		ring: 'Ring'
	},
	load: {
		title: 'Who it is planned for',
		says: ({ kg, lb, stone, over }, tape) =>
			tape === 'in'
				? `Planned for people up to ${String(lb)} lb (${String(kg)} kg).`
				: `Planned for people up to ${String(kg)} kg (${String(stone)} st ${String(over)} lb).`,
		more: 'Ask us first if someone heavier will use it.',
		table: 'What each part can take',
		lowest: 'The fitter writes this in. The lowest number counts.',
		unit: 'kg or lb'
	},
	again: {
		title: 'When we look at it again',
		says: (months) => `First 6 to 8 weeks after it is fitted. Then every ${String(months)} months.`,
		sooner: 'Sooner after a fall, or when you move in a new way.',
		who: 'Who comes'
	},
	until: {
		title: 'Until the rest is fitted',
		says: {
			seated: 'Wash sitting, as you do now.',
			standing: 'Wash standing, with a hand on what is there.',
			both: 'Wash as you do now, standing or sitting.',
			'in-chair': 'Wash in your shower chair.',
			unknown: 'Wash as you do now.'
		}
	},
	notes: { title: 'Good to know' },
	choices: {
		title: 'Is this right for you?',
		says: 'Tick one box for each. Not now means: ask me again later.',
		answers: ['Yes', 'Not this', 'Not now'],
		states: {
			'asks-wall': 'Not fitted yet: we are asking about the wall.',
			asks: 'Not fitted yet: we are asking first.',
			later: 'This is for later.',
			'no-place': 'No place yet: we are asking.'
		},
		helped: {
			one: 'Use it only with your helper beside you.',
			two: 'Use it only with both helpers beside you.'
		},
		hand: { left: 'Use your left hand.', right: 'Use your right hand.' },
		nowhere: (names) => `We found no wall yet for: ${names}.`
	},
	things: {
		seat: 'Seat',
		board: 'Board across the bath',
		tap: 'Tap',
		temperature: 'Knob for warm and cold',
		diverter: 'Switch for the water',
		outlet: 'Where the hose starts',
		rest: 'Rest for the hand shower',
		'high-holder': 'High holder for the hand shower',
		'fixed-holder': 'Fixed holder for the hand shower',
		bar: 'Bar',
		'l-bar': 'L-shaped bar',
		'upright-in': 'Upright bar at the way in',
		'upright-out': 'Upright bar for the way out',
		'pole-in': 'Pole at the way in',
		'pole-out': 'Pole for the way out',
		rail: 'Fold-down bar',
		cord: 'Call cord'
	},
	places: {
		'seat-ahead': 'in front of you',
		'seat-behind': 'behind you',
		'seat-left': 'on your left',
		'seat-right': 'on your right',
		'entry-ahead': 'on the wall you face',
		'entry-behind': 'beside the way in',
		'entry-left': 'on your left',
		'entry-right': 'on your right'
	},
	which: {
		higher: 'the higher one',
		lower: 'the lower one',
		longer: 'the longer one',
		shorter: 'the shorter one',
		left: 'the left one',
		right: 'the right one',
		'nearer-seat': 'nearer the seat',
		'farther-seat': 'farther from the seat',
		'nearer-entry': 'nearer the way in',
		'farther-entry': 'farther from the way in'
	},
	uses: {
		sit: {
			purpose: 'To wash sitting down.',
			how: 'Feel the seat with your legs. Then sit down, right back.'
		},
		'sit-across': {
			purpose: 'To sit down first and then turn in.',
			how: 'Sit down. Then lift in one leg, and then the other.'
		},
		'run-water': { purpose: 'To turn the water on and off.', how: 'Turn it slowly.' },
		'run-water-helped': {
			purpose: 'To turn the water on and off.',
			how: 'Only your helper turns it. Helper: test the water first.'
		},
		'set-temperature': { purpose: 'To make the water warmer or colder.', how: 'Begin with cold.' },
		'set-temperature-helped': {
			purpose: 'To make the water warmer or colder.',
			how: 'Only your helper sets it. Helper: test the water first.'
		},
		divert: { purpose: 'To choose where the water comes out.', how: 'Turn it while the water is off.' },
		'divert-helped': {
			purpose: 'To choose where the water comes out.',
			how: 'Only your helper turns it. Helper: turn it while the water is off.'
		},
		'feed-hose': {
			purpose: 'The hose of the hand shower starts here.',
			how: 'Do not hold on to it.'
		},
		'rest-handset': {
			purpose: 'So that the hand shower is never on the floor.',
			how: 'Lift it off. Put it back before you get up.'
		},
		'rest-handset-standing': {
			purpose: 'So that the hand shower is never on the floor.',
			how: 'Lift it off. Put it back when you are done.'
		},
		'hang-handset': {
			purpose: 'To hang up the shower while it runs.',
			how: 'Hang it up, and your hand is free. Do not hold on to it.'
		},
		'fix-handset': {
			purpose: 'To keep the hand shower in one place.',
			how: 'Set it before you wash. Do not hold on to it.'
		},
		steady: {
			purpose: 'To steady you while you sit and wash.',
			how: 'Hold it with one hand while the other hand washes.'
		},
		'steady-standing': {
			purpose: 'To steady you while you stand and wash.',
			how: 'Hold it with one hand while the other hand washes.'
		},
		'steady-one-hand': {
			purpose: 'To steady you while you wash.',
			how: 'Hold it when you move or lean. Be still before you let go.'
		},
		rise: {
			purpose: 'To get up, and to sit down gently.',
			how: 'Hold the bar and lean forward. Push up with your legs. Do not hang your weight on it.'
		},
		'push-up': {
			purpose: 'To push yourself up from the seat.',
			how: 'Fold it down first. Push down on it to get up. Fold it up when you are done.'
		},
		'sit-steady': {
			purpose: 'To sit without sliding or tipping.',
			how: 'Keep one hand on it while you wash.'
		},
		'sit-steady-rail': {
			purpose: 'To sit without sliding or tipping.',
			how: 'Fold it down first. Rest your arm on it. Fold it up when you are done.'
		},
		'hold-ahead': {
			purpose: 'To have a hold in front of you.',
			how: 'Fold it down first. Hold it with one hand. Fold it up when you are done.'
		},
		'step-in': {
			purpose: 'To hold before you step in or out.',
			how: 'Take hold first. Then step.'
		},
		'step-out': { purpose: 'To hold when you step out.', how: 'Take hold first. Then step.' },
		call: {
			purpose: 'To call for help.',
			how: 'Pull it and let go. It hangs low, so you can pull it from the floor.'
		}
	},
	tests: {
		hand: 'Test the water with your hand before you wash.',
		'left-hand': 'Test the water with your left hand before you wash.',
		'right-hand': 'Test the water with your right hand before you wash.',
		'same-hand': 'Test the water with the same hand before you wash.',
		thermometer: 'Test the water with a thermometer before you wash.'
	},
	signing: {
		says: 'This is what we talked about.',
		name: 'Name',
		date: 'Date',
		signed: 'Signed',
		helped: 'Read with me by',
		owner: {
			wanted: 'The walls belong to someone else. Nothing is fitted before the owner agrees in writing.',
			refused: 'The owner of the walls has not agreed. Nothing is fitted before that.'
		},
		ownerSigns: 'The owner agrees'
	},
	caseLine: (id, state) => `Case ${id}, revision \u2013, ${state}`
};
