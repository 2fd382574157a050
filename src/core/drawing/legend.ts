import type { Entity } from './entity.ts';
import type { Layer } from './layers.ts';
import { hatch, line, rectangle } from './path.ts';
import { write } from './type.ts';

const ROW = 4.6;
const SAMPLE = 7;

interface Sample {
	readonly word: string;
	/** Shown when one of these layers is on the sheet. */
	readonly layer: Layer;
	readonly draw: (id: string, x: number, y: number) => readonly Entity[];
}

const stroke =
	(layer: Layer) =>
	(id: string, x: number, y: number): readonly Entity[] => [line(id, layer, [x, y], [x + SAMPLE, y])];

const box = (x: number, y: number) => ({ x0: x, y0: y - 1.5, x1: x + SAMPLE, y1: y + 1.5 });

const SAMPLES: readonly Sample[] = [
	{ word: 'stud, found', layer: 'stud', draw: stroke('stud') },
	{ word: 'not found', layer: 'stud-sought', draw: stroke('stud-sought') },
	{
		word: 'backing',
		layer: 'backing-edge',
		draw: (id, x, y) => [rectangle(`${id}/fill`, 'backing', box(x, y)), rectangle(id, 'backing-edge', box(x, y))]
	},
	{
		word: 'no holes',
		layer: 'hatch',
		draw: (id, x, y) => [
			hatch(`${id}/hatch`, 'hatch', box(x, y), { gap: 1.5, lean: 'rising' }),
			rectangle(id, 'keep-out', box(x, y))
		]
	},
	{
		word: 'perhaps',
		layer: 'hatch-likely',
		draw: (id, x, y) => [
			hatch(`${id}/hatch`, 'hatch-likely', box(x, y), { gap: 1.8, lean: 'falling' }),
			rectangle(id, 'keep-out-likely', box(x, y))
		]
	}
];

/** How to read the lines of a wall, only those that are on it. */
export interface Legend {
	readonly height: number;
	readonly draw: (x: number, y: number) => readonly Entity[];
}

/** The legend of what was drawn. Units: mm. */
export function legendOf(drawn: readonly Entity[]): Legend {
	const layers = new Set(drawn.flatMap((e) => (e.kind === 'path' ? [e.layer] : [])));
	const samples = SAMPLES.filter((s) => layers.has(s.layer));
	return {
		height: samples.length * ROW,
		draw: (x, y) =>
			samples.flatMap((s, i) => [
				...s.draw(`legend/${s.layer}`, x, y + ROW * (i + 0.5)),
				write(`legend/${s.layer}/word`, s.word, [x + SAMPLE + 1.6, y + ROW * (i + 0.5) + 1], {
					size: 8.5,
					tone: 'grey'
				})
			])
	};
}
