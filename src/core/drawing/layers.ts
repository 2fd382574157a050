/** Colours of the sheet by what they are for. A tint never carries meaning alone: it has an edge and a word. */
export const TONES = {
	paper: '#fcfaf4',
	ink: '#1a1916',
	/** Small text and light lines. */
	grey: '#57534a',
	/** Lines only, never text. */
	pale: '#8b867b',
	tint: '#efe9da',
	cut: '#cdc6b6',
	/** The datum line, its triangle, its 0 and its words; nothing else. */
	datum: '#1e38b4'
} as const;

/** Name of a colour. */
export type Tone = keyof typeof TONES;

/** How the paths of a layer are drawn. Units: mm on the sheet; `dash` is lengths on and off. */
export interface Style {
	readonly stroke?: Tone;
	readonly width: number;
	readonly dash?: readonly number[];
	readonly fill?: Tone;
}

/** Every kind of line there is. Source: widths of ISO 128-2 (0.7, 0.5, 0.35, 0.25, 0.18), the rest is ours. */
export const LAYERS = {
	sheet: { width: 0, fill: 'paper' },
	patch: { width: 0, fill: 'paper' },
	backing: { width: 0, fill: 'tint' },
	'backing-edge': { stroke: 'grey', width: 0.25, dash: [3.2, 0.8, 0.6, 0.8] },
	'backing-to-add': { stroke: 'ink', width: 0.35, dash: [5, 1.2] },
	'backing-to-keep': { stroke: 'ink', width: 0.35, dash: [6, 1, 0.6, 1, 0.6, 1] },
	tile: { stroke: 'pale', width: 0.1 },
	cables: { stroke: 'pale', width: 0.15, dash: [3, 0.9, 0.6, 0.9] },
	'cables-hatch': { stroke: 'pale', width: 0.13 },
	stud: { stroke: 'grey', width: 0.25, dash: [2.4, 1.1] },
	'stud-sought': { stroke: 'pale', width: 0.2, dash: [0.7, 1] },
	hatch: { stroke: 'grey', width: 0.18 },
	'hatch-likely': { stroke: 'grey', width: 0.18, dash: [1.4, 0.7] },
	'keep-out': { stroke: 'grey', width: 0.2 },
	'keep-out-likely': { stroke: 'pale', width: 0.2, dash: [0.7, 1] },
	seam: { stroke: 'ink', width: 0.35 },
	cut: { width: 0, fill: 'cut' },
	outline: { stroke: 'ink', width: 0.7 },
	break: { stroke: 'ink', width: 0.25 },
	easy: { stroke: 'grey', width: 0.35 },
	stretched: { stroke: 'grey', width: 0.35, dash: [4, 1.2] },
	leaning: { stroke: 'grey', width: 0.25, dash: [6, 1, 0.8, 1] },
	'leaning-sketched': { stroke: 'grey', width: 0.2, dash: [2.6, 1, 0.6, 1] },
	'easy-sketched': { stroke: 'grey', width: 0.25, dash: [2.2, 0.9] },
	'stretched-sketched': { stroke: 'grey', width: 0.25, dash: [0.9, 0.9] },
	'seat-line': { stroke: 'grey', width: 0.2, dash: [2, 0.8] },
	'seat-line-sketched': { stroke: 'pale', width: 0.2, dash: [0.9, 0.9] },
	projection: { stroke: 'pale', width: 0.15 },
	datum: { stroke: 'datum', width: 0.4 },
	'datum-sign': { width: 0, fill: 'datum' },
	'datum-ring': { stroke: 'datum', width: 0.35, fill: 'paper' },
	thing: { stroke: 'ink', width: 0.5, fill: 'paper' },
	'thing-open': { stroke: 'ink', width: 0.5, dash: [1.5, 1], fill: 'paper' },
	'thing-later': { stroke: 'grey', width: 0.3, dash: [3.6, 1.3] },
	folded: { stroke: 'ink', width: 0.25, dash: [1, 0.8] },
	section: { stroke: 'ink', width: 0.35 },
	'step-cut': { stroke: 'ink', width: 0.35, fill: 'cut' },
	detail: { stroke: 'ink', width: 0.35 },
	'detail-later': { stroke: 'grey', width: 0.2 },
	centre: { stroke: 'ink', width: 0.2 },
	axis: { stroke: 'ink', width: 0.25, dash: [4.5, 0.8, 0.5, 0.8] },
	drift: { stroke: 'ink', width: 0.2 },
	note: { stroke: 'ink', width: 0.25, fill: 'paper' },
	'figure-edge': { stroke: 'ink', width: 1 },
	'figure-edge-sketched': { stroke: 'ink', width: 0.8, dash: [1.6, 1] },
	'figure-edge-neutral': { stroke: 'grey', width: 0.7 },
	'figure-line': { stroke: 'ink', width: 0.5 },
	'figure-line-sketched': { stroke: 'ink', width: 0.4, dash: [1.6, 1] },
	'figure-line-neutral': { stroke: 'grey', width: 0.35 },
	'figure-skin': { width: 0, fill: 'paper' },
	'figure-cloth': { width: 0, fill: 'tint' },
	'figure-hair': { stroke: 'ink', width: 0.5, fill: 'cut' },
	'figure-hair-sketched': { stroke: 'ink', width: 0.4, dash: [1.6, 1], fill: 'cut' },
	'figure-hair-neutral': { stroke: 'grey', width: 0.35, fill: 'cut' },
	tag: { width: 0, fill: 'ink' },
	'tag-open': { stroke: 'ink', width: 0.5, dash: [1.3, 0.9], fill: 'paper' },
	'tag-later': { stroke: 'grey', width: 0.25, fill: 'paper' },
	leader: { stroke: 'ink', width: 0.2 },
	dimension: { stroke: 'ink', width: 0.25 },
	tick: { stroke: 'ink', width: 0.35 },
	origin: { stroke: 'ink', width: 0.35, fill: 'paper' },
	solid: { width: 0, fill: 'ink' },
	ring: { stroke: 'ink', width: 0.35, fill: 'paper' },
	square: { stroke: 'ink', width: 0.8, fill: 'paper' },
	'ring-open': { stroke: 'ink', width: 0.4, dash: [1.1, 0.85], fill: 'paper' },
	diamond: { stroke: 'ink', width: 0.4, fill: 'paper' },
	dash: { stroke: 'pale', width: 0.5 },
	rule: { stroke: 'pale', width: 0.25 },
	question: { stroke: 'ink', width: 0.5, dash: [1.5, 1], fill: 'paper' },
	'tick-box': { stroke: 'ink', width: 0.35, fill: 'paper' },
	frame: { stroke: 'ink', width: 0.5 },
	cell: { stroke: 'ink', width: 0.25 },
	plan: { stroke: 'grey', width: 0.35 },
	'plan-thing': { stroke: 'grey', width: 0.25 },
	'plan-told': { stroke: 'pale', width: 0.25, dash: [0.7, 0.7] },
	'plan-screen': { stroke: 'grey', width: 0.9 },
	'plan-swing': { stroke: 'pale', width: 0.15 },
	'plan-entry': { stroke: 'grey', width: 0.25, dash: [1.6, 1] },
	'plan-wall': { stroke: 'ink', width: 1.4 },
	'plan-wall-open': { stroke: 'ink', width: 1.4, dash: [1.6, 1] }
} as const satisfies Record<string, Style>;

/** A kind of line. */
export type Layer = keyof typeof LAYERS;
