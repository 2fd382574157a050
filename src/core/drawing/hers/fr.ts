import type { Messages } from './messages.ts';

/** Her sheets in French. No-break spaces stand before colons and question marks. */
export const fr: Messages = {
	pictures: {
		title: 'Où vos mains trouvent un appui',
		says: 'Le même numéro désigne la même chose à chaque page.',
		dashed: 'En tirets\u00a0: nous posons encore des questions.',
		thin: 'Fin et gris\u00a0: pour plus tard.',
		poses: {
			sitting: 'En position assise, de côté',
			standing: 'Debout',
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
		letters: (pairs) => `L’installateur a des lettres\u00a0: ${pairs}.`
	},
	mind: {
		title: 'Le plus important',
		says: {
			'helper-turns': 'Seule la personne qui vous aide ouvre l’eau.',
			brakes: 'Serrez les freins de la chaise avant d’ouvrir l’eau.',
			'sit-in-time': 'Prenez le siège avant d’être à bout de forces.',
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
	notes: { title: 'Bon à savoir', says: 'Gardez cette page sous les yeux.' },
	choices: {
		title: 'Est-ce que cela vous va\u00a0?',
		says: 'Cochez une case par objet. Pas maintenant\u00a0: on en reparle.',
		answers: ['Oui', 'Pas cela', 'Pas maintenant'],
		states: {
			'asks-wall': 'Ce n’est pas encore posé\u00a0: le mur reste à voir.',
			asks: 'Ce n’est pas encore posé\u00a0: nous posons d’abord des questions.',
			later: 'C’est pour plus tard.',
			'no-place': 'La place n’est pas encore sûre\u00a0: nous cherchons.'
		},
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
		bar: 'Barre',
		'l-bar': 'Barre en L',
		'upright-in': 'Barre debout à l’entrée',
		'upright-out': 'Barre debout pour la sortie',
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
	uses: {
		sit: {
			purpose: 'Pour se laver sur le siège.',
			how: 'Touchez le siège avec les jambes. Prenez place, bien au fond.'
		},
		'sit-across': {
			purpose: 'Pour prendre place avant de tourner.',
			how: 'Prenez place sur la planche. Passez une jambe, puis l’autre.'
		},
		'run-water': { purpose: 'Pour ouvrir et fermer l’eau.', how: 'Tournez-le sans hâte.' },
		'run-water-helped': {
			purpose: 'Pour ouvrir et fermer l’eau.',
			how: 'La personne qui vous aide le tourne et teste l’eau.'
		},
		'set-temperature': { purpose: 'Pour une eau plus chaude ou plus froide.', how: 'Commencez par l’eau froide.' },
		'set-temperature-helped': {
			purpose: 'Pour une eau plus chaude ou plus froide.',
			how: 'La personne qui vous aide le tourne et teste l’eau.'
		},
		divert: { purpose: 'Pour choisir par où l’eau sort.', how: 'Tournez-le quand l’eau est fermée.' },
		'divert-helped': {
			purpose: 'Pour choisir par où l’eau sort.',
			how: 'La personne qui vous aide le tourne.'
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
		rise: {
			purpose: 'Pour se lever et pour s’asseoir en douceur.',
			how: 'Tenez la barre et penchez-vous. Poussez sur les jambes. Ne vous y pendez pas.'
		},
		'push-up': {
			purpose: 'Pour se lever du siège.',
			how: 'Baissez-la d’abord. Poussez de la main vers le bas. Ne vous y pendez pas.'
		},
		'sit-steady': {
			purpose: 'Pour ne pas glisser ni tomber de côté.',
			how: 'Gardez une main sur la barre.'
		},
		'sit-steady-rail': {
			purpose: 'Pour ne pas glisser ni tomber de côté.',
			how: 'Baissez-la d’abord. Posez-y le bras.'
		},
		'hold-ahead': {
			purpose: 'Pour avoir un appui devant vous.',
			how: 'Baissez-la d’abord. Tenez-la d’une main.'
		},
		'step-in': {
			purpose: 'Pour se tenir avant d’entrer ou de sortir.',
			how: 'Tenez-vous d’abord. Avancez ensuite.'
		},
		'step-out': { purpose: 'Pour se tenir en sortant.', how: 'Tenez-vous d’abord. Avancez ensuite.' },
		call: { purpose: 'Pour appeler à l’aide.', how: 'Tirez et lâchez. Il descend très bas, à portée depuis le sol.' }
	},
	tests: {
		hand: 'Testez l’eau avec la main avant de vous laver.',
		'left-hand': 'Testez l’eau avec la main gauche avant de vous laver.',
		'right-hand': 'Testez l’eau avec la main droite avant de vous laver.',
		thermometer: 'Testez l’eau avec un thermomètre avant de vous laver.'
	},
	signing: {
		says: 'Voilà ce dont nous avons parlé.',
		name: 'Nom',
		date: 'Le',
		signed: 'Signature',
		helped: 'Lu avec moi par',
		owner: {
			wanted: 'Les murs ne sont pas à vous. Rien n’est posé avant un accord écrit du propriétaire.',
			refused: 'Le propriétaire n’est pas d’accord. Rien n’est posé sans son accord.'
		},
		ownerSigns: 'Accord du propriétaire'
	},
	caseLine: (id, state) => `Dossier ${id}, révision \u2013, ${state}`
};
