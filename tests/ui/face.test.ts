import { expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { faceShapes, faceWords } from '#ui/drawing/face-shapes.ts';
import { screenView } from '#ui/drawing/screen-view.ts';
import { openedCase } from './a-plan.ts';

const TILES = { across: 150, up: 150, joint: 3, x: 100, y: 0, how: 'measured' };
const SWITCH = { kind: 'electric-point', x0: 150, x1: 230, y0: 60, y1: 140, how: 'measured' };

/** The face of the back wall as a phone draws it, tiled so and with these things behind it. */
function faceOf(tiles: object | undefined, keepOuts: object) {
	const opened = openedCase().case;
	const back = {
		...opened.enclosure.walls.back,
		...(tiles && { facing: { kind: 'tile', thickness: 9, tiles } }),
		keepOuts
	};
	const enclosure = { ...opened.enclosure, walls: { ...opened.enclosure.walls, back } };
	const c = { ...opened, enclosure } as unknown as Case;
	const room = roomOf(c.enclosure);
	const view = screenView({ room, wall: 'back', marks: [], width: 390, height: 500 });
	const face = { scene: { c, room }, wall: 'back', view } as const;
	return { shapes: faceShapes(face), words: faceWords(face), view };
}

test('[ui R23] joints of tiles that were seen are drawn where they are, and not where they would be a grey area', () => {
	const { shapes, view } = faceOf(TILES, {});
	expect(shapes.map(({ id }) => id)).toEqual(['tiles']);
	expect(shapes[0]?.attrs['d']).toContain(`M${String(Math.round(view.x(253) * 10) / 10)} `);
	expect(faceOf({ ...TILES, how: 'told' }, {}).shapes).toEqual([]);
	expect(faceOf({ ...TILES, across: 12, up: 12 }, {}).shapes).toEqual([]);
	expect(faceOf(undefined, {}).shapes).toEqual([]);
});

test('[ui R23] strips where cables may run go from an electric point to the ends of its wall, and say so once', () => {
	const { shapes, words, view } = faceOf(undefined, { point: SWITCH });
	expect(shapes.map(({ id }) => id)).toEqual(['cables/0', 'cables/1']);
	expect(shapes[0]?.attrs['x']).toBeCloseTo(view.x(125), 1);
	expect(Number(shapes[1]?.attrs['width'])).toBeCloseTo(view.right - view.left, 1);
	expect(words.map(({ says }) => says[0])).toEqual(['cables may run here']);
	expect(faceOf(undefined, {}).words).toEqual([]);
});
