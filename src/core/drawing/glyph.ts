import type { Answer } from '#core/rules/row.ts';
import type { Entity, Path, Spot } from './entity.ts';
import { circle, line, rectangle, shape } from './path.ts';

/** What each answer is called beside its shape. */
export const ANSWER_WORDS: Readonly<Record<Answer, string>> = {
	inside: 'inside',
	borderline: 'borderline',
	outside: 'outside',
	unknown: 'not known',
	ask: 'to judge',
	'not-here': 'not here'
};

const R = 1.75;

/** The shape of an answer, told from the others by its outline alone. Units and frame: mm, `at` its middle. */
export function glyph(id: string, answer: Answer, at: Spot): readonly Entity[] {
	const [x, y] = at;
	switch (answer) {
		case 'inside':
			return [circle(id, 'solid', at, R)];
		case 'borderline':
			return [circle(id, 'ring', at, R), leftHalf(`${id}/half`, at)];
		case 'outside':
			return [rectangle(id, 'square', { x0: x - 1.4, y0: y - 1.4, x1: x + 1.4, y1: y + 1.4 })];
		case 'unknown':
			return [circle(id, 'ring-open', at, R)];
		case 'ask':
			return [shape(id, 'diamond', [x, y - 2], [x + 2, y], [x, y + 2], [x - 2, y])];
		case 'not-here':
			return [line(id, 'dash', [x - 1.2, y], [x + 1.2, y])];
	}
}

const leftHalf = (id: string, [x, y]: Spot): Path => ({
	kind: 'path',
	id,
	layer: 'solid',
	closed: true,
	d: [
		{ by: 'move', to: [x, y + R] },
		{ by: 'arc', to: [x, y - R], radius: R, clockwise: true }
	]
});
