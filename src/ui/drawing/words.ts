import type { Box } from '#core/drawing/entity.ts';
import { freeSpot } from '#core/drawing/free-spot.ts';
import { widthOf } from '#core/drawing/type.ts';
import { text, type Px, type Shape } from './shape.ts';

/** Words that name something on a drawing and stand where there is room beside it. Units: px of the drawing, y down. */
export interface Words {
	readonly id: string;
	/** What they look like; soft when absent. */
	readonly tone?: 'ink' | 'soft' | 'blue';
	/** The same in other words, the fullest first. */
	readonly says: readonly string[];
	/** Where their middle would like to be, best first. */
	readonly wishes: readonly Px[];
	/** What they must not leave, or they would name something else. */
	readonly within: Box;
}

/** The size notes are set in, how many px a pt has, and how high a line of them is. */
const NOTE = { pt: 12, px: 96 / 72, line: 18 } as const;
/** From the middle of a line to its base line, px. */
const BASE = 5;
const BESIDE = 3;

/** How wide a note is. Units: px. */
export const noteWidth = (says: string): number => (widthOf(says, NOTE.pt) / 25.4) * 72 * NOTE.px + 2 * BESIDE;

/**
 * Words, each where it lies on nothing that is taken and on no other words; what finds no room is left out.
 * Shape: in the order given, which is the order in which they choose.
 */
export function laidWords(words: readonly Words[], taken: readonly Box[]): readonly Shape[] {
	const held = [...taken];
	return words.flatMap((one) => {
		const laid = firstFree(one, held);
		if (!laid) return [];
		const [x, y] = laid.at;
		held.push(boxAround(laid.at, noteWidth(laid.says), NOTE.line));
		return [text(one.id, `t-note halo mid ${one.tone ?? 'soft'}`, [x, y + BASE], laid.says)];
	});
}

function firstFree({ says, wishes, within }: Words, taken: readonly Box[]): { at: Px; says: string } | undefined {
	for (const each of says) {
		const at = freeSpot({ width: noteWidth(each), height: NOTE.line, wishes, taken, within });
		if (at) return { at, says: each };
	}
	return undefined;
}

/** A box round its middle. */
export const boxAround = ([x, y]: Px, width: number, height: number): Box => ({
	x0: x - width / 2,
	y0: y - height / 2,
	x1: x + width / 2,
	y1: y + height / 2
});

/** What two boxes have in common; turned inside out where they have nothing. */
export const common = (a: Box, b: Box): Box => ({
	x0: Math.max(a.x0, b.x0),
	y0: Math.max(a.y0, b.y0),
	x1: Math.min(a.x1, b.x1),
	y1: Math.min(a.y1, b.y1)
});

/** What shapes cover, without their lines' own widths: rectangles, circles, words, and paths of single straight lines. */
export const covered = (shapes: readonly Shape[]): readonly Box[] => shapes.flatMap(coversOf);

function coversOf({ tag, attrs, runs = [] }: Shape): readonly Box[] {
	const n = (key: string): number => Number(attrs[key] ?? 0);
	switch (tag) {
		case 'rect':
			return [{ x0: n('x'), y0: n('y'), x1: n('x') + n('width'), y1: n('y') + n('height') }];
		case 'circle':
			return [boxAround([n('cx'), n('cy')], 2 * n('r'), 2 * n('r'))];
		case 'path':
			return String(attrs['d']).split('M').flatMap(lineBox);
		case 'text':
			return [textBox([n('x'), n('y')], String(attrs['class']).split(' '), runs.map((run) => run.text).join(''))];
	}
}

/** The box of a piece of a path that is one straight line: to a point, along or up. */
function lineBox(piece: string): readonly Box[] {
	const found = /^(?<x>[^ ]+) (?<y>[^ LHV]+)(?<way>[LHV])(?<a>[^ a-z]+)(?: (?<b>[^ a-zA-Z]+))?$/.exec(piece)?.groups;
	if (!found) return [];
	const [x, y, a, b] = [found['x'], found['y'], found['a'], found['b']].map(Number) as [number, number, number, number];
	const [u, v] = { L: [a, b], H: [a, y], V: [x, a] }[found['way'] as 'L' | 'H' | 'V'] as [number, number];
	return [{ x0: Math.min(x, u), y0: Math.min(y, v), x1: Math.max(x, u), y1: Math.max(y, v) }];
}

const SIZES: Readonly<Record<string, number>> = { 't-note': 16, 't-text': 18, 't-lead': 22 };

function textBox([x, y]: Px, classes: readonly string[], says: string): Box {
	const size = SIZES[classes.find((one) => one in SIZES) ?? 't-note'] ?? 16;
	const width = (noteWidth(says) * size) / 16;
	const x0 = x - (classes.includes('mid') ? width / 2 : classes.includes('end') ? width : 0);
	return { x0, y0: y - size * 0.8, x1: x0 + width, y1: y + size * 0.25 };
}
