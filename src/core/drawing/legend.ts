import { stacked, type Block } from './block.ts';
import type { Entity } from './entity.ts';
import type { Layer } from './layers.ts';
import { hatch, line, rectangle } from './path.ts';
import { boxOf, write } from './type.ts';
import type { View } from './view.ts';
import { wrapped } from './wrap.ts';

const ROW = 4.6;
const SAMPLE = 7;
/** Between a sample and its words, and from one line of them to the next. Units: mm. */
const AIR = 1.6;
const NEXT = 3.6;
const SIZE = 8.5;
/** From here down nothing of the sheet's head stands in the ladder's column. Units: mm of the sheet. */
const UNDER_HEAD = 28;

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
	{ word: 'add backing', layer: 'backing-to-add', draw: (id, x, y) => [rectangle(id, 'backing-to-add', box(x, y))] },
	{
		word: 'keep solid',
		layer: 'backing-to-keep',
		draw: (id, x, y) => [rectangle(id, 'backing-to-keep', box(x, y))]
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
	},
	{
		word: 'cables?',
		layer: 'cables',
		draw: (id, x, y) => [
			hatch(`${id}/hatch`, 'cables-hatch', box(x, y), { gap: 2.4, lean: 'falling' }),
			rectangle(id, 'cables', box(x, y))
		]
	},
	{ word: 'joint of tiles', layer: 'tile', draw: stroke('tile') },
	{ word: 'later', layer: 'thing-later', draw: stroke('thing-later') },
	{
		word: 'room to move, to scale',
		layer: 'drift',
		draw: (id, x, y) => [rectangle(id, 'drift', { x0: x + 2, y0: y - 1, x1: x + 5, y1: y + 1 })]
	}
];

/** The legend of what was drawn: in the lowest free stretch of the ladder's column, or as a block for another place. */
export function legendIn(
	drawn: readonly Entity[],
	rungs: readonly Entity[],
	view: View
): { entities: readonly Entity[]; elsewhere: readonly Block[] } {
	const block = legendOf(drawn, view.rail - view.ladder - 1);
	if (block.height === 0) return { entities: [], elsewhere: [] };
	const texts = rungs.flatMap((e) => (e.kind === 'text' ? [boxOf(e)] : []));
	for (let y = view.window.y1 - 12 - block.height; y > UNDER_HEAD; y -= 2) {
		const near = texts.some((t) => t.y0 < y + block.height + 3 && t.y1 > y - 3);
		const crosses = Math.abs(view.datum - y - block.height / 2) < block.height / 2 + 5;
		if (!near && !crosses) return { entities: block.draw(view.ladder, y), elsewhere: [] };
	}
	return { entities: [], elsewhere: [block] };
}

/** How to read the lines of a wall, only those that are on it. */
function legendOf(drawn: readonly Entity[], width: number): Block {
	const layers = new Set(drawn.flatMap((e) => (e.kind === 'path' ? [e.layer] : [])));
	return stacked(...SAMPLES.filter((s) => layers.has(s.layer)).map((s) => row(s, width)));
}

/** A sample beside its words. */
function row({ word, layer, draw }: Sample, width: number): Block {
	const id = `legend/${layer}`;
	const lines = wrapped(word, width - SAMPLE - AIR, SIZE);
	return {
		height: ROW + NEXT * (lines.length - 1),
		draw: (x, y) => [
			...draw(id, x, y + ROW / 2),
			...lines.map((text, i) =>
				write(
					i === 0 ? `${id}/word` : `${id}/word/${String(i)}`,
					text,
					[x + SAMPLE + AIR, y + ROW / 2 + 1 + NEXT * i],
					{
						size: SIZE,
						tone: 'grey'
					}
				)
			)
		]
	};
}
