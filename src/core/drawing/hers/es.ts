import type { Messages } from './messages.ts';

/** Her sheets in Spanish. */
export const es: Messages = {
	pictures: {
		title: 'Dónde se apoyan sus manos',
		says: 'Mismo número, misma pieza, en cada hoja.',
		keep: 'Tenga esta a la vista.',
		dashed: 'A trazos: aún estamos preguntando.',
		thin: 'Fino y gris: para más adelante.',
		poses: {
			sitting: 'Al lavarse, vista de lado',
			standing: 'Al lavarse de pie',
			rising: 'Al levantarse',
			stepping: 'Al entrar',
			helper: 'Con quien le ayuda'
		},
		walls: {
			'seat-ahead': 'La pared de enfrente',
			'seat-behind': 'La pared de detrás',
			'seat-left': 'La pared a su izquierda',
			'seat-right': 'La pared a su derecha',
			'entry-ahead': 'La pared de enfrente, al entrar',
			'entry-behind': 'La pared junto a la entrada',
			'entry-left': 'A su izquierda, al entrar',
			'entry-right': 'A su derecha, al entrar'
		},
		letters: (pairs) => `Para el instalador: ${pairs}.`
	},
	mind: {
		title: 'Lo más importante',
		says: {
			'helper-turns': 'El agua la abre solo quien le ayuda.',
			brakes: 'Ponga los frenos de la silla antes de abrir el agua.',
			'sit-in-time': 'Siéntese antes de cansarse.',
			'one-hand-holds': 'Una mano se agarra antes de soltar la otra.',
			'sit-back': 'Siéntese bien atrás antes de lavarse.',
			'hold-first': 'Primero, agárrese. Luego, muévase.'
		},
		lean: (hold) =>
			hold === 'nothing'
				? 'Luego inclínese un poco para llegar al grifo.'
				: hold === 'something'
					? 'Agárrese al inclinarse hacia el grifo.'
					: `Agarre la barra ${String(hold)} al inclinarse hacia el grifo.`
	},
	when: {
		title: 'Cuándo puede usar la ducha',
		bars: 'No antes de las ________ del ________________. El sellado debe estar seco. El instalador debe tirar antes de cada barra.',
		parts:
			'No antes de las ________ del ________________. El sellado debe estar seco. El instalador debe probar antes cada pieza.'
	},
	wrong: {
		title: 'Pare y llámenos si',
		says: {
			'bar-moves': 'una barra se mueve o cruje',
			'seat-wobbles': 'el asiento se mueve',
			'tile-cracks': 'se rompe un azulejo',
			'water-behind': 'entra agua por detrás',
			'suddenly-hot': 'el agua quema de pronto',
			'part-loose': 'una pieza se suelta',
			'cord-silent': 'el cordón no funciona'
		},
		ring: 'Teléfono'
	},
	load: {
		title: 'Para qué peso está prevista',
		says: ({ kg }) => `Para personas de hasta ${String(kg)}\u00a0kg.`,
		more: 'Si la va a usar alguien de más peso, pregúntenos antes.',
		table: 'Cuánto aguanta cada pieza',
		lowest: 'Lo anota el instalador. Vale el número más bajo.',
		unit: 'kg'
	},
	again: {
		title: 'Cuándo volvemos a revisar',
		says: (months) => `La primera vez, de 6 a 8 semanas después de la obra. Luego, cada ${String(months)} meses.`,
		sooner: 'Antes, si se cae o si se mueve de otra manera.',
		who: 'Quién viene'
	},
	until: {
		title: 'Mientras falte algo',
		says: {
			seated: 'Lávese en el asiento, como ahora.',
			standing: 'Lávese de pie, con una mano en lo que ya está puesto.',
			both: 'Lávese como ahora, de pie o en el asiento.',
			'in-chair': 'Lávese en su silla de ducha.',
			unknown: 'Lávese como ahora.'
		}
	},
	notes: { title: 'Conviene saber' },
	choices: {
		title: '¿Le parece bien?',
		says: 'Una marca por pieza. «Ahora no» quiere decir: pregúnteme luego.',
		answers: ['Sí', 'Esto no', 'Ahora no'],
		states: {
			'asks-wall': 'Aún sin instalar: preguntamos por la pared.',
			asks: 'Aún sin instalar: antes preguntamos.',
			later: 'Esto es para más adelante.',
			'no-place': 'Aún no tiene sitio: estamos preguntando.'
		},
		helped: {
			one: 'Solo con quien le ayuda a su lado.',
			two: 'Solo con dos personas a su lado.'
		},
		hand: { left: 'Use la mano izquierda.', right: 'Use la mano derecha.' },
		nowhere: (names) => `Aún no hay pared para: ${names}.`
	},
	things: {
		seat: 'Asiento',
		board: 'Tabla sobre la bañera',
		tap: 'Grifo o llave del agua',
		temperature: 'Control de agua fría y caliente',
		diverter: 'Control de la salida del agua',
		outlet: 'Toma de la manguera',
		rest: 'Apoyo de la ducha de mano',
		'high-holder': 'Soporte alto de la ducha de mano',
		'fixed-holder': 'Soporte fijo de la ducha de mano',
		bar: 'Barra de apoyo',
		'l-bar': 'Barra de apoyo en L',
		'upright-in': 'Barra vertical en la entrada',
		'upright-out': 'Barra vertical para la salida',
		'pole-in': 'Poste en la entrada',
		'pole-out': 'Poste para la salida',
		rail: 'Barra que se baja',
		cord: 'Cordón para llamar'
	},
	places: {
		'seat-ahead': 'delante de usted',
		'seat-behind': 'detrás de usted',
		'seat-left': 'a su izquierda',
		'seat-right': 'a su derecha',
		'entry-ahead': 'en la pared de enfrente',
		'entry-behind': 'junto a la entrada',
		'entry-left': 'a su izquierda',
		'entry-right': 'a su derecha'
	},
	which: {
		higher: 'la más alta',
		lower: 'la más baja',
		longer: 'la más larga',
		shorter: 'la más corta',
		left: 'la de la izquierda',
		right: 'la de la derecha',
		'nearer-seat': 'la más cercana al asiento',
		'farther-seat': 'la más lejana del asiento',
		'nearer-entry': 'la más cercana a la entrada',
		'farther-entry': 'la más lejana de la entrada'
	},
	uses: {
		sit: {
			purpose: 'Para lavarse en el asiento.',
			how: 'Toque el asiento con las piernas. Luego siéntese, bien atrás.'
		},
		'sit-across': {
			purpose: 'Para sentarse antes de girar hacia dentro.',
			how: 'Siéntese. Luego meta una pierna y después la otra.'
		},
		'run-water': { purpose: 'Para abrir y cerrar el agua.', how: 'Gírelo despacio.' },
		'run-water-helped': {
			purpose: 'Para abrir y cerrar el agua.',
			how: 'Lo gira solo quien le ayuda. Quien ayuda prueba antes el agua.'
		},
		'set-temperature': { purpose: 'Para el agua más fría o más caliente.', how: 'Empiece por el agua fría.' },
		'set-temperature-helped': {
			purpose: 'Para el agua más fría o más caliente.',
			how: 'Lo gira solo quien le ayuda. Quien ayuda prueba antes el agua.'
		},
		divert: { purpose: 'Para elegir por dónde sale el agua.', how: 'Gírelo con el agua cerrada.' },
		'divert-helped': {
			purpose: 'Para elegir por dónde sale el agua.',
			how: 'Lo gira solo quien le ayuda, con el agua cerrada.'
		},
		'feed-hose': { purpose: 'Aquí nace la manguera de la ducha.', how: 'No se agarre aquí.' },
		'rest-handset': {
			purpose: 'Para que la ducha de mano no quede en el suelo.',
			how: 'Tómela de aquí. Déjela en su sitio antes de levantarse.'
		},
		'rest-handset-standing': {
			purpose: 'Para que la ducha de mano no quede en el suelo.',
			how: 'Tómela de aquí. Déjela en su sitio al terminar.'
		},
		'hang-handset': {
			purpose: 'Para colgar la ducha con el agua abierta.',
			how: 'Cuélguela y tendrá la mano libre. No se agarre aquí.'
		},
		'fix-handset': {
			purpose: 'Para que la ducha de mano no se mueva.',
			how: 'Colóquela antes de lavarse. No se agarre aquí.'
		},
		steady: {
			purpose: 'Para estar firme en el asiento.',
			how: 'Agárrela con una mano y lávese con la otra.'
		},
		'steady-standing': {
			purpose: 'Para estar firme de pie.',
			how: 'Agárrela con una mano y lávese con la otra.'
		},
		'steady-one-hand': {
			purpose: 'Para estar firme al lavarse.',
			how: 'Agárrela al moverse o al inclinarse. No la suelte hasta estar quieto el cuerpo.'
		},
		rise: {
			purpose: 'Para levantarse y para sentarse despacio.',
			how: 'Agárrela y eche el cuerpo hacia delante. Haga fuerza con las piernas. No se cuelgue de la barra.'
		},
		'push-up': {
			purpose: 'Para levantarse del asiento.',
			how: 'Primero, bájela. Empuje hacia abajo para levantarse. Al terminar, súbala.'
		},
		'sit-steady': {
			purpose: 'Para no resbalar ni caer hacia un lado.',
			how: 'Tenga una mano en la barra al lavarse.'
		},
		'sit-steady-rail': {
			purpose: 'Para no resbalar ni caer hacia un lado.',
			how: 'Primero, bájela. Luego apoye el brazo. Al terminar, súbala.'
		},
		'hold-ahead': {
			purpose: 'Para tener un apoyo delante.',
			how: 'Primero, bájela. Agárrela con una mano. Al terminar, súbala.'
		},
		'step-in': {
			purpose: 'Para agarrarse antes de entrar o salir.',
			how: 'Primero, agárrese. Luego, dé el paso.'
		},
		'step-out': { purpose: 'Para agarrarse al salir.', how: 'Primero, agárrese. Luego, dé el paso.' },
		call: { purpose: 'Para pedir ayuda.', how: 'Tire y suelte. Llega casi al suelo: se alcanza también desde allí.' }
	},
	tests: {
		hand: 'Pruebe el agua con la mano antes de lavarse.',
		'left-hand': 'Pruebe el agua con la mano izquierda antes de lavarse.',
		'right-hand': 'Pruebe el agua con la mano derecha antes de lavarse.',
		'same-hand': 'Pruebe el agua con la misma mano antes de lavarse.',
		thermometer: 'Mida el agua con un termómetro antes de lavarse.'
	},
	signing: {
		says: 'Esto es lo que hemos hablado.',
		name: 'Nombre',
		date: 'Fecha',
		signed: 'Firma',
		helped: 'Leído conmigo por',
		owner: {
			wanted: 'Las paredes son de otra persona. No se pone nada sin su permiso por escrito.',
			refused: 'El dueño de las paredes no ha dado permiso. Sin él no se pone nada.'
		},
		ownerSigns: 'Permiso del dueño'
	},
	caseLine: (id, state) => `Caso ${id}, revisión \u2013, ${state}`
};
