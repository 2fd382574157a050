import type { Mark } from '#core/case/accessory.ts';
import { mm } from '#core/units/length.ts';

/** True when a mark moves up and down with another: it is the same, or on its height line. */
export const together = (a: Mark, b: Mark): boolean =>
	a.accessory.id === b.accessory.id || (a.accessory.line !== undefined && a.accessory.line === b.accessory.line);

/** A mark moved along its wall and in height. Units and frame: mm, wall frame. */
export const moved = (mark: Mark, dx: number, dy: number): Mark => ({
	...mark,
	place: { ...mark.place, x: mm(mark.place.x + dx), y: mm(mark.place.y + dy) }
});

/** Marks with one of them moved along an axis; what shares its height line goes up and down with it. */
export const nudged = (marks: readonly Mark[], mark: Mark, axis: 'x' | 'y', by: number): readonly Mark[] =>
	marks.map((m) => {
		if (axis === 'y') return together(m, mark) ? moved(m, 0, by) : m;
		return m.accessory.id === mark.accessory.id ? moved(m, by, 0) : m;
	});
