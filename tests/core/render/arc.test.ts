import type { Spot } from '#core/drawing/entity.ts';
import { arcCurves } from '#core/render/arc.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const bezier = (from: Spot, [a, b, to]: readonly [Spot, Spot, Spot], t: number): Spot => {
	const u = 1 - t;
	const at = (i: 0 | 1) => u ** 3 * from[i] + 3 * u * u * t * a[i] + 3 * u * t * t * b[i] + t ** 3 * to[i];
	return [at(0), at(1)];
};

describe('arcs as curves', () => {
	test('[render R1] stay on their circle to 0.0003 of the radius, the way round they should', () => {
		const angle = fc.double({ min: -3, max: 3, noNaN: true });
		const sweep = fc.double({ min: 0.05, max: Math.PI, noNaN: true });
		const radius = fc.double({ min: 0.1, max: 80, noNaN: true });
		fc.assert(
			fc.property(angle, sweep, radius, fc.boolean(), (start, by, r, clockwise) => {
				// y grows downward, so a growing angle turns clockwise.
				const end = start + (clockwise ? by : -by);
				const on = (a: number): Spot => [7 + r * Math.cos(a), 5 + r * Math.sin(a)];
				let from = on(start);
				for (const curve of arcCurves(from, { by: 'arc', to: on(end), radius: r, clockwise })) {
					for (let t = 0; t <= 1; t += 0.1) {
						const [x, y] = bezier(from, curve, t);
						// A half circle has two centres to choose from when its chord is the diameter: both are the same point.
						expect(Math.abs(Math.hypot(x - 7, y - 5) - r)).toBeLessThan(0.0003 * r + 1e-6 * r);
					}
					from = curve[2];
				}
				expect(Math.hypot(from[0] - on(end)[0], from[1] - on(end)[1])).toBeLessThan(1e-6 * r);
			})
		);
	});
});
