import type { Put } from './fixture.ts';

/** Where the plan of each example client once had everything, so that its sheets are drawn without a search. */
export const CLIENT_PLACES: Readonly<Record<string, readonly Put[]>> = {
	'first-flat': [
		['seat', 'seat-deep-700', 'left', 450, -520],
		['control', 'control-lever', 'back', 340, -150],
		['handset-rest', 'rest', 'back', 400, 0],
		['handset-high', 'rest', 'back', 400, 1020],
		['bar-back', 'l-bar-1000-750-left', 'back', 500, -250],
		['entry-bar', 'post-bar-1000', 'left', 50, -400]
	],
	'one-good-hand': [
		['seat', 'seat-400', 'right', 500, -450],
		['control', 'control-lever', 'back', 620, -100],
		['handset-rest', 'rest', 'back', 450, -100],
		['handset-holder', 'rest', 'back', 550, 180],
		['bar-back', 'bar-300', 'back', 150, 0],
		['entry-bar', 'post-bar-750', 'right', 850, -350],
		['exit-bar', 'post-bar-600', 'left', 160, -230]
	],
	'stands-for-now': [
		['seat', 'seat-16in', 'left', 457.2, -558.8],
		['control', 'control-lever', 'back', 406.4, -38.1],
		['handset-rest', 'rest', 'back', 558.8, -50.8],
		['handset-holder', 'rest', 'back', 558.8, 457.2],
		['bar-control', 'bar-12in', 'back', 101.6, -177.8],
		['bar-back', 'bar-16in', 'back', 558.8, -177.8],
		['entry-bar', 'post-bar-30in', 'left', 50.8, -457.2]
	],
	'stands-then-tires': [
		['seat', 'seat-820', 'right', 440, -517.4],
		['control', 'control-lever', 'left', 205, 5],
		['handset-rest', 'rest', 'back', 540, -50],
		['handset-holder', 'rest', 'back', 855, 550],
		['bar-control', 'bar-500', 'left', 340, -70],
		['bar-back', 'bar-300', 'back', 140, -70],
		['entry-bar', 'post-bar-750', 'left', 65, -300]
	],
	'strong-walls': [
		['seat', 'seat-32in', 'left', 482.6, -558.8],
		['control', 'control-lever', 'front', 1066.8, -50.8],
		['handset-rest', 'rest', 'back', 406.4, -50.8],
		['bar-back', 'bar-36in', 'back', 457.2, -152.4],
		['bar-control', 'bar-30in', 'right', 101.6, -152.4],
		['entry-bar', 'post-bar-30in', 'right', 965.2, -304.8]
	],
	'turns-left': [
		['seat', 'seat-32in', 'left', 457.2, -501.65],
		['control', 'control-lever', 'right', 457.2, 19.05],
		['handset-rest', 'rest', 'back', 660.4, 12.7],
		['bar-back', 'bar-12in', 'back', 501.65, -254],
		['bar-control', 'bar-16in', 'right', 228.6, -254],
		['entry-bar', 'post-bar-24in', 'right', 749.3, -431.8]
	],
	'water-by-her-son': [
		['seat', 'bath-board', 'back', 740, -460],
		['control', 'control-lever', 'right', 400, 50],
		['handset-rest', 'rest', 'back', 1250, 50],
		['bar-back', 'bar-300', 'back', 1000, -150],
		['entry-bar', 'post-bar-600', 'right', 600, -300]
	],
	'wheeled-in': [
		['control', 'control-lever', 'back', 780, 0],
		['temperature', 'control-lever', 'left', 300, 0],
		['outlet', 'hose-outlet', 'back', 1200, 0],
		['handset-rest', 'rest', 'back', 910, 0]
	]
};
