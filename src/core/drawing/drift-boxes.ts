import type { Entity } from './entity.ts';
import { line, rectangle } from './path.ts';
import type { SetOut } from './setting-out.ts';
import type { View } from './view.ts';

/**
 * The room round every centre of some marks, to scale: a box, a line where there is room along one way only, nothing
 * where there is none. Units and frame: mm of the sheet.
 */
export function driftBoxes(sets: readonly SetOut[], view: View): readonly Entity[] {
	return sets.flatMap(({ id, points, drift }) => {
		if (!drift) return [];
		return points.flatMap(([x, y], i): Entity[] => {
			const [x0, y1] = view.spot(x - drift.left, y - drift.lower);
			const [x1, y0] = view.spot(x + drift.right, y + drift.higher);
			const [wide, high] = [x1 > x0, y1 > y0];
			if (!wide && !high) return [];
			const name = `${id}/drift/${String(i)}`;
			const box = wide && high ? rectangle(name, 'drift', { x0, y0, x1, y1 }) : line(name, 'drift', [x0, y0], [x1, y1]);
			return [{ ...box, about: id }];
		});
	});
}
