import type { Block } from '#core/drawing/block.ts';
import type { Text } from '#core/drawing/entity.ts';
import { space } from '#core/drawing/block.ts';
import { flowed, poured, type Column } from '#core/drawing/flow.ts';
import { write } from '#core/drawing/type.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const named = (id: string, height: number, again?: Block): Block => ({
	height,
	draw: (x, y) => [write(id, id, [x, y], { size: 10 })],
	...(again && { again })
});

const page: Column = { x: 20, y0: 30, y1: 130 };
const at = (entities: readonly { id: string }[]) => entities.map((e) => [e.id, (e as Text).at[1]]);

describe('blocks down pages', () => {
	test.each([
		[99, 1],
		[100, 1],
		[101, 2]
	])('[drawing R7] blocks of %i mm together on pages of 100 take %i', (height, pages) => {
		expect(flowed([named('a', height - 40), named('b', 40)], page)).toHaveLength(pages);
	});

	test('[drawing R7] every block is drawn once, in order, and none goes over the edge of its page', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 20 }), (heights) => {
				const pages = flowed(
					heights.map((h, i) => named(String(i), h)),
					page
				);
				expect(pages.flatMap((p) => p.map((e) => e.id))).toEqual(heights.map((_, i) => String(i)));
				for (const [id, y] of pages.flatMap(at))
					expect(Number(y) + (heights[Number(id)] ?? 0)).toBeLessThanOrEqual(130);
			})
		);
	});

	test('[drawing R7] empty space alone begins no page', () => {
		expect(flowed([named('a', 99), space(4)], page)).toHaveLength(1);
		expect(at(flowed([named('a', 99), space(4), named('b', 9)], page)[1] ?? [])).toEqual([['b', 30]]);
	});

	test('[drawing R7] a list that goes on on another page says its head again', () => {
		const head = named('head', 6);
		const pages = flowed([named('a', 60, head), named('b', 60, head)], page);
		expect(pages.map(at)).toEqual([
			[['a', 30]],
			[
				['head', 30],
				['b', 36]
			]
		]);
	});
});

describe('blocks down columns', () => {
	const columns = { above: { x: 20, y0: 0, y1: 50 }, below: { x: 20, y0: 60, y1: 100 } };

	test('[drawing R4] each stands where the last one ended, and tells how many found no room', () => {
		const blocks = ['a', 'b', 'c', 'd'].map((id) => named(id, 30));
		const { entities, left, columns: free } = poured(blocks, columns, ['below', 'above']);
		expect([at(entities), left]).toEqual([
			[
				['a', 60],
				['b', 0]
			],
			2
		]);
		expect([free.above.y0, free.below.y0]).toEqual([30, 90]);
	});

	test('[drawing R4] what is no higher than its column has room in it, a hair more has not', () => {
		expect(poured([named('a', 40)], columns, ['below']).left).toBe(0);
		expect(poured([named('a', 40.001)], columns, ['below']).left).toBe(1);
	});
});
