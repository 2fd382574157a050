import type { Room } from '#core/enclosure/room.ts';
import { toPlan, type WallId } from '#core/geometry/frame.ts';
import { drawn, path, rect, text, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';

const HATCH = 13;

/** The wall itself: hatched cuts beside it, the floor as it falls, a break where it goes on above. */
export function wallShapes(room: Room, wall: WallId, view: ScreenView): readonly Shape[] {
	const { length } = room.walls[wall];
	const level = (x: number): number => {
		const [px, py] = toPlan(wall, [x, 0], 0, room.footprint);
		return room.floorAt(px, py);
	};
	const { left, right, top } = view;
	const low = view.y(Math.min(level(0), level(length)));
	return [
		rect('wall/earth-left', 'earth', [left - HATCH, top], [left, low]),
		rect('wall/earth-right', 'earth', [right, top], [right + HATCH, low]),
		path('wall/cut', 'cut', [[left, top], view.at(0, level(0)), view.at(length, level(length)), [right, top]]),
		view.broken
			? broken(view)
			: path('wall/top', 'cut', [
					[left, top],
					[right, top]
				])
	];
}

function broken({ left, right, top }: ScreenView): Shape {
	const [a, middle, b] = [left - 24, (left + right) / 2, right + 24].map((n) => String(Math.round(n)));
	const y = String(top);
	return drawn('wall/break', 'fine', `M${a ?? ''} ${y}H${middle ?? ''}l6 -9l10 18l6 -9H${b ?? ''}`);
}

/** The datum line, across everything. */
export function datumShapes(view: ScreenView): readonly Shape[] {
	const y = view.y(0);
	return [
		path('datum/line', 'datum-line', [
			[0, y],
			[view.width, y]
		]),
		text('datum/words', 't-note blue halo', [6, y - 7], 'datum')
	];
}
