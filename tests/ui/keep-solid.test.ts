import { describe, expect, test } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import { overlap } from '#core/drawing/entity.ts';
import { reinforcementOf } from '#core/needs/reinforcement.ts';
import { mm } from '#core/units/length.ts';
import { balloonShapes } from '#ui/drawing/balloon-shapes.ts';
import { behindShapes, behindWords } from '#ui/drawing/behind-shapes.ts';
import { partBoxes } from '#ui/drawing/part-box.ts';
import { screenView } from '#ui/drawing/screen-view.ts';
import { boxAround } from '#ui/drawing/words.ts';
import { fixtureCase, fixturePlan, type Put } from '../core/drawing/fixture.ts';

const NEW = { newBuilt: { value: true, how: 'told' }, fall: { value: 0, how: 'measured' } } as const;

describe('a new dwelling on the screen', () => {
	test('[ui R19] where a wall is to be solid is a box of its own dashes, as large as it is, with its size', () => {
		const { scene } = fixturePlan(fixtureCase({ enclosure: NEW }));
		const { room } = scene;
		const view = screenView({ room, wall: 'back', marks: [], width: 700, height: 700 });
		const kept = reinforcementOf(scene).filter(({ wall }) => wall === 'back');
		const asked = { scene, wall: 'back', view, needed: [], kept, unit: 'mm' } as const;
		const { attrs } = behindShapes(asked).find(({ id }) => id === 'to-keep/0') ?? {};
		expect(attrs?.['class']).toBe('to-keep');
		// ADA 2010, 609.4 with a 32 mm tube and an 80 mm flange: 782.2 to 938.4 above the floor, 1000 below the datum line.
		expect(Number(attrs?.['y'])).toBeCloseTo(view.y(-61.6), 1);
		expect(Number(attrs?.['height'])).toBeCloseTo(156.2 * view.scale, 1);
		expect(Number(attrs?.['width'])).toBeCloseTo(914 * view.scale, 1);
		const words = behindWords(asked).find(({ id }) => id === 'words/to-keep/0');
		expect(words?.says).toEqual(['keep solid 914 \u00d7 156', 'keep solid']);
		expect(behindShapes({ ...asked, kept: [] }).some(({ id }) => id.startsWith('to-keep'))).toBe(false);
	});
});

describe('an L bar among other things', () => {
	const between: readonly Put[] = [
		['control', 'control-lever', 'back', 700, 50],
		['rest', 'rest', 'back', 600, 200]
	];
	const enclosure = { width: { value: 1600, how: 'measured' }, walls: { left: {}, back: {}, right: {} } };

	test.each(['left', 'right'] as const)(
		'[ui R14] upright on the %s: its letter is on it or led to it, and what is between its legs is free',
		(at) => {
			const { marks, scene } = fixturePlan(fixtureCase({ enclosure }), [
				...between,
				['bar-back', `l-bar-1000-750-${at}`, 'back', 450, -190]
			]);
			const { room } = scene;
			const view = screenView({ room, wall: 'back', marks, width: 340, height: 480 });
			const bar = marks.find(({ accessory }) => accessory.id === 'bar-back') as Mark;
			const boxes = partBoxes(bar, view);
			expect(boxes).toHaveLength(2);
			// Its corner and both ends are in them, the middle between its legs is not.
			const covers = (x: number, y: number) => boxes.some((box) => overlap(box, boxAround(view.at(x, y), 2, 2)));
			const { length } = variantOf(bar.variant.id);
			const corner = at === 'left' ? 450 : 450 + length;
			for (const [x, y] of [
				[450, -190],
				[1450, -190],
				[corner, 560]
			] as const)
				expect(covers(x, y)).toBe(true);
			expect(covers(mm(950), mm(185))).toBe(false);

			const lettered = marks.map(
				(mark, i) => ({ mark, letter: 'ABC'.charAt(i), answer: 'inside', wishes: 0 }) as const
			);
			const shapes = balloonShapes(lettered, view);
			const { attrs } = shapes.find(({ id }) => id === 'bar-back/balloon') ?? {};
			const letter = boxAround([Number(attrs?.['cx']), Number(attrs?.['cy'])], 50, 50);
			const led = shapes.some(({ id }) => id === 'bar-back/leader');
			expect(led || boxes.some((box) => overlap(box, letter))).toBe(true);
		}
	);
});
