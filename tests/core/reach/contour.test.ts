import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WallPoint } from '#core/geometry/vec.ts';
import { contourOn } from '#core/reach/contour.ts';

const WINDOW = { x0: 0, y0: 0, x1: 1000, y1: 2000 };
const disc = (x: number, y: number, r: number) => (px: number, py: number) => r - Math.hypot(px - x, py - y);

/** Twice the area of a closed line, positive when it turns to the left. */
const area = (line: readonly WallPoint[]): number =>
	line.reduce((sum, [x, y], k) => {
		const [nx, ny] = line[(k + 1) % line.length] ?? [x, y];
		return sum + (x * ny - nx * y) / 2;
	}, 0);

describe('contours', () => {
	// Source: a circle's own equation and area.
	test('[reach R8] a disc comes out round, to half a millimetre at a mesh of 20', () => {
		const lines = contourOn(disc(500, 900, 300), WINDOW, 20);
		expect(lines).toHaveLength(1);
		for (const [x, y] of lines[0] ?? []) expect(Math.abs(Math.hypot(x - 500, y - 900) - 300)).toBeLessThan(0.5);
		expect(area(lines[0] ?? [])).toBeGreaterThan(0.997 * Math.PI * 300 ** 2);
		expect(area(lines[0] ?? [])).toBeLessThan(Math.PI * 300 ** 2);
	});

	test('[reach R8] a ring has a hole that turns the other way', () => {
		const ring = (x: number, y: number) => Math.min(disc(500, 900, 300)(x, y), -disc(500, 900, 100)(x, y));
		const lines = contourOn(ring, WINDOW, 20);
		expect(lines.map((line) => Math.sign(area(line)))).toEqual([1, -1]);
	});

	test('[reach R8] what the window cuts off closes along its edge', () => {
		const lines = contourOn(disc(0, 0, 500), WINDOW, 25);
		expect(lines).toHaveLength(1);
		expect(lines[0]).toContainEqual([0, 0]);
		expect(Math.abs(area(lines[0] ?? []) - (Math.PI * 500 ** 2) / 4)).toBeLessThan(500);
		expect(contourOn(() => 1, WINDOW, 70)).toHaveLength(1);
		expect(area(contourOn(() => 1, WINDOW, 70)[0] ?? [])).toBeCloseTo(2_000_000, 3);
	});

	test('[reach R8] nothing reached, no line', () => {
		expect(contourOn(() => -1, WINDOW, 50)).toEqual([]);
	});

	test('[reach R8] two corners of a mesh that touch only if its middle does', () => {
		const saddle = (middle: number) => (x: number, y: number) => (x === y ? 1 + middle : -1);
		const window = { x0: 0, y0: 0, x1: 10, y1: 10 };
		expect(contourOn(saddle(0.5), window, 10)).toHaveLength(1);
		expect(contourOn(saddle(-0.5), window, 10)).toHaveLength(2);
	});

	test('[reach R8] any set of discs: closed lines within the window that enclose it, the same every time', () => {
		const discs = fc.array(
			fc.tuple(
				fc.integer({ min: -100, max: 1100 }),
				fc.integer({ min: -100, max: 2100 }),
				fc.integer({ min: 60, max: 400 })
			),
			{ minLength: 1, maxLength: 5 }
		);
		fc.assert(
			fc.property(discs, (all) => {
				const slackAt = (x: number, y: number) => Math.max(...all.map(([cx, cy, r]) => disc(cx, cy, r)(x, y)));
				const lines = contourOn(slackAt, WINDOW, 20);
				expect(contourOn(slackAt, WINDOW, 20)).toEqual(lines);
				let counted = 0;
				for (let x = 2; x < 1000; x += 4) for (let y = 2; y < 2000; y += 4) if (slackAt(x, y) >= 0) counted += 16;
				const enclosed = lines.reduce((sum, line) => sum + area(line), 0);
				expect(Math.abs(enclosed - counted)).toBeLessThan(1000 + 0.03 * counted);
				for (const [x, y] of lines.flat()) expect(x >= 0 && x <= 1000 && y >= 0 && y <= 2000).toBe(true);
			}),
			{ numRuns: 20 }
		);
	});
});
