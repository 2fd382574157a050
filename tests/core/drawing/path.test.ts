import type { Path } from '#core/drawing/entity.ts';
import { hatch } from '#core/drawing/path.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const strokes = ({ d }: Path) => d.flatMap((s, i) => (s.by === 'move' ? [[s.to, d[i + 1]?.to ?? s.to] as const] : []));

describe('hatching', () => {
	test('[drawing R5] every line runs at 45 degrees from edge to edge of its rectangle, evenly apart', () => {
		const place = fc.double({ min: -30, max: 200, noNaN: true });
		const size = fc.double({ min: 0.5, max: 120, noNaN: true });
		const lean = fc.constantFrom('rising' as const, 'falling' as const);
		fc.assert(
			fc.property(place, place, size, size, lean, (x0, y0, w, h, way) => {
				const box = { x0, y0, x1: x0 + w, y1: y0 + h };
				const onEdge = ([x, y]: readonly [number, number]) =>
					Math.min(Math.abs(x - x0), Math.abs(x - box.x1), Math.abs(y - y0), Math.abs(y - box.y1)) < 1e-6;
				const each = strokes(hatch('h', 'hatch', box, { gap: 1.5, lean: way }));
				for (const [a, b] of each) {
					expect(onEdge(a) && onEdge(b)).toBe(true);
					expect(b[1] - a[1]).toBeCloseTo(way === 'rising' ? a[0] - b[0] : b[0] - a[0], 6);
				}
				// A line meets the axis across its way every gap times the root of two.
				const sums = each.map(([a]) => (way === 'rising' ? a[0] + a[1] : a[0] - a[1]));
				for (const [i, sum] of sums.slice(1).entries()) expect(sum - (sums[i] ?? 0)).toBeCloseTo(1.5 * Math.SQRT2, 6);
				const across = (w + h) / (1.5 * Math.SQRT2);
				expect(each.length).toBeGreaterThan(across - 3);
			})
		);
	});
});
