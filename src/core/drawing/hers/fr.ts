import type { Messages } from './messages.ts';

/** Her sheets in French. No-break spaces stand before colons and question marks. */
export const fr: Messages = {
	pictures: {
		title: 'Où vos mains trouvent un appui',
		says: 'Même numéro, même chose, sur chaque page.',
		keep: 'Gardez celle-ci en vue.',
		dashed: 'En tirets\u00a0: nous posons encore des questions.',
		thin: 'Fin et gris\u00a0: pour plus tard.',
		poses: {
			sitting: 'En position assise, de côté',
			standing: 'Se laver debout',
			rising: 'Pour se lever',
			stepping: 'Pour entrer',
			helper: 'Avec la personne qui vous aide'
		},
		walls: {
			'seat-ahead': 'Le mur en face de vous',
			'seat-behind': 'Le mur derrière vous',
			'seat-left': 'Le mur à votre gauche',
			'seat-right': 'Le mur à votre droite',
			'entry-ahead': 'Le mur en face, en entrant',
			'entry-behind': 'Le mur à côté de l’entrée',
			'entry-left': 'À votre gauche, en entrant',
			'entry-right': 'À votre droite, en entrant'
		},
		letters: (pairs) => `Pour l’installateur\u00a0: ${pairs}.`
	},
	mind: {
		title: 'Le plus important',
		says: {
			'helper-turns': 'Seule la personne qui vous aide ouvre l’eau.',
			brakes: 'Serrez les freins de la chaise avant d’ouvrir l’eau.',
			'sit-in-time': 'Asseyez-vous avant la fatigue.',
			'one-hand-holds': 'Une main tient avant que l’autre ne lâche.',
			'sit-back': 'Asseyez-vous bien au fond avant de vous laver.',
			'hold-first': 'Tenez-vous d’abord. Bougez ensuite.'
		},
		lean: (hold) =>
			hold === 'nothing'
				? 'Penchez-vous ensuite un peu vers le robinet.'
				: hold === 'something'
					? 'Tenez-vous quand vous vous penchez vers le robinet.'
					: `Tenez la barre ${String(hold)} quand vous vous penchez vers le robinet.`
	},
	when: {
		title: 'Quand vous pouvez vous en servir',
		bars: 'Pas avant ________ le ________________. Le joint doit être sec. L’installateur doit d’abord tirer sur chaque barre.',
		parts:
			'Pas avant ________ le ________________. Le joint doit être sec. L’installateur doit d’abord tester chaque pièce.'
	},
	wrong: {
		title: 'Arrêtez et appelez-nous si',
		says: {
			'bar-moves': 'une barre bouge ou grince',
			'seat-wobbles': 'le siège bouge',
			'tile-cracks': 'un carreau se fend',
			'water-behind': 'de l’eau passe derrière',
			'suddenly-hot': 'l’eau brûle tout à coup',
			'part-loose': 'une pièce se détache',
			'cord-silent': 'le cordon n’appelle plus'
		},
		ring: 'Téléphone'
	},
	load: {
		title: 'Pour qui c’est prévu',
		says: ({ kg }) => `Prévu pour des personnes jusqu’à ${String(kg)}\u00a0kg.`,
		more: 'Si une personne plus lourde veut s’en servir, appelez-nous avant.',
		table: 'Ce que chaque pièce peut porter',
		lowest: 'L’installateur le note. Le plus petit nombre compte.',
		unit: 'kg'
	},
	again: {
		title: 'Quand nous revenons voir',
		says: (months) => `D’abord 6 à 8 semaines après la pose. Ensuite, tous les ${String(months)} mois.`,
		sooner: 'Plus tôt après une chute, ou si vous bougez autrement.',
		who: 'Qui vient'
	},
	until: {
		title: 'En attendant la suite',
		says: {
			seated: 'Lavez-vous sur le siège, comme à présent.',
			standing: 'Lavez-vous debout, une main sur ce qui est posé.',
			both: 'Lavez-vous comme à présent, debout ou sur le siège.',
			'in-chair': 'Lavez-vous dans votre chaise de douche.',
			unknown: 'Lavez-vous comme à présent.'
		}
	},
	notes: { title: 'Bon à savoir' },
	choices: {
		title: 'Est-ce que cela vous va\u00a0?',
		says: 'Cochez une case par objet. «\u00a0Pas maintenant\u00a0» veut dire\u00a0: on en reparle.',
		answers: ['Oui', 'Pas cela', 'Pas maintenant'],
		states: {
			'asks-wall': 'Pas encore en place\u00a0: le mur reste à voir.',
			asks: 'Pas encore en place\u00a0: nous posons d’abord des questions.',
			later: 'C’est pour plus tard.',
			'no-place': 'La place n’est pas encore sûre\u00a0: nous cherchons.'
		},
		helped: {
			one: 'Seulement avec la personne qui vous aide.',
			two: 'Seulement avec deux personnes près de vous.'
		},
		hand: { left: 'Utilisez la main gauche.', right: 'Utilisez la main droite.' },
		nowhere: (names) => `Il manque encore un mur pour\u00a0: ${names}.`
	},
	things: {
		seat: 'Siège',
		board: 'Planche sur la baignoire',
		tap: 'Robinet',
		temperature: 'Bouton eau chaude, eau froide',
		diverter: 'Bouton de sortie d’eau',
		outlet: 'Départ du flexible',
		rest: 'Support de la douchette',
		'high-holder': 'Support haut de la douchette',
		'fixed-holder': 'Support fixe de la douchette',
		bar: 'Barre d’appui',
		'l-bar': 'Barre d’appui en L',
		'upright-in': 'Barre verticale à l’entrée',
		'upright-out': 'Barre verticale pour la sortie',
		'pole-in': 'Poteau à l’entrée',
		'pole-out': 'Poteau pour la sortie',
		rail: 'Barre qui se baisse',
		cord: 'Cordon d’appel'
	},
	places: {
		'seat-ahead': 'devant vous',
		'seat-behind': 'derrière vous',
		'seat-left': 'à votre gauche',
		'seat-right': 'à votre droite',
		'entry-ahead': 'sur le mur d’en face',
		'entry-behind': 'à côté de l’entrée',
		'entry-left': 'à votre gauche',
		'entry-right': 'à votre droite'
	},
	which: {
		higher: 'la plus haute',
		lower: 'la plus basse',
		longer: 'la plus longue',
		shorter: 'la plus courte',
		left: 'celle de gauche',
		right: 'celle de droite',
		'nearer-seat': 'la plus proche du siège',
		'farther-seat': 'la plus loin du siège',
		'nearer-entry': 'la plus proche de l’entrée',
		'farther-entry': 'la plus loin de l’entrée'
	},
	uses: {
		sit: {
			purpose: 'Pour se laver sur le siège.',
			how: 'Sentez le siège contre vos jambes. Asseyez-vous bien au fond.'
		},
		'sit-across': {
			purpose: 'Pour s’asseoir d’abord, puis tourner.',
			how: 'Asseyez-vous sur la planche. Passez une jambe, puis l’autre.'
		},
		'run-water': { purpose: 'Pour ouvrir et fermer l’eau.', how: 'Tournez-le doucement.' },
		'run-water-helped': {
			purpose: 'Pour ouvrir et fermer l’eau.',
			how: 'Seule la personne qui vous aide le tourne. Elle teste d’abord l’eau.'
		},
		'set-temperature': { purpose: 'Pour une eau plus chaude ou plus froide.', how: 'Commencez par l’eau froide.' },
		'set-temperature-helped': {
			purpose: 'Pour une eau plus chaude ou plus froide.',
			how: 'Seule la personne qui vous aide le tourne. Elle teste d’abord l’eau.'
		},
		divert: { purpose: 'Pour choisir par où l’eau sort.', how: 'Tournez-le quand l’eau est fermée.' },
		'divert-helped': {
			purpose: 'Pour choisir par où l’eau sort.',
			how: 'Seule la personne qui vous aide le tourne, quand l’eau est fermée.'
		},
		'feed-hose': { purpose: 'Le flexible de la douchette part d’ici.', how: 'Ne vous y tenez pas.' },
		'rest-handset': {
			purpose: 'Pour que la douchette ne traîne jamais par terre.',
			how: 'Prenez-la ici. Remettez-la avant de vous lever.'
		},
		'rest-handset-standing': {
			purpose: 'Pour que la douchette ne traîne jamais par terre.',
			how: 'Prenez-la ici. Remettez-la à la fin.'
		},
		'hang-handset': {
			purpose: 'Pour accrocher la douchette quand l’eau coule.',
			how: 'Accrochez-la, et la main est libre. Ne vous y tenez pas.'
		},
		'fix-handset': {
			purpose: 'Pour que la douchette ne bouge pas.',
			how: 'Placez-la avant de vous laver. Ne vous y tenez pas.'
		},
		steady: {
			purpose: 'Pour être stable sur le siège.',
			how: 'Une main tient la barre, l’autre lave.'
		},
		'steady-standing': {
			purpose: 'Pour être stable debout.',
			how: 'Une main tient la barre, l’autre lave.'
		},
		'steady-one-hand': {
			purpose: 'Pour être stable en se lavant.',
			how: 'Tenez-la pour bouger ou vous pencher. Ne la lâchez qu’une fois stable.'
		},
		rise: {
			purpose: 'Pour se lever et pour s’asseoir en douceur.',
			how: 'Tenez la barre et penchez-vous en avant. Poussez sur les jambes. N’y mettez pas tout votre poids.'
		},
		'push-up': {
			purpose: 'Pour se lever du siège.',
			how: 'Baissez-la d’abord. Poussez dessus pour vous lever. À la fin, relevez-la.'
		},
		'sit-steady': {
			purpose: 'Pour ne pas glisser ni tomber de côté.',
			how: 'Gardez une main sur la barre.'
		},
		'sit-steady-rail': {
			purpose: 'Pour ne pas glisser ni tomber de côté.',
			how: 'Baissez-la d’abord. Posez-y le bras. À la fin, relevez-la.'
		},
		'hold-ahead': {
			purpose: 'Pour avoir un appui devant vous.',
			how: 'Baissez-la d’abord. Tenez-la d’une main. À la fin, relevez-la.'
		},
		'step-in': {
			purpose: 'Pour se tenir avant d’entrer ou de sortir.',
			how: 'Tenez-vous d’abord. Avancez ensuite.'
		},
		'step-out': { purpose: 'Pour se tenir en sortant.', how: 'Tenez-vous d’abord. Avancez ensuite.' },
		call: {
			purpose: 'Pour appeler à l’aide.',
			how: 'Tirez et lâchez. Il descend très bas\u00a0: on l’atteint depuis le sol.'
		}
	},
	tests: {
		hand: 'Testez l’eau avec la main avant de vous laver.',
		'left-hand': 'Testez l’eau avec la main gauche avant de vous laver.',
		'right-hand': 'Testez l’eau avec la main droite avant de vous laver.',
		'same-hand': 'Testez l’eau avec la même main avant de vous laver.',
		thermometer: 'Testez l’eau avec un thermomètre avant de vous laver.'
	},
	signing: {
		says: 'Voilà ce dont nous avons parlé.',
		name: 'Nom',
		date: 'Fait le',
		signed: 'Signature',
		helped: 'Lu avec moi par',
		owner: {
			wanted: 'Les murs sont à quelqu’un d’autre. Rien n’est posé avant un accord écrit du propriétaire.',
			refused: 'Le propriétaire n’est pas d’accord. Rien n’est posé sans son accord.'
		},
		ownerSigns: 'Accord du propriétaire'
	},
	caseLine: (id, state) => `Dossier ${id}, révision \u2013, ${state}`
};
