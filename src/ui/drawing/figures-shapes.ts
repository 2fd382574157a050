import type { Mark } from '#core/case/accessory.ts';
import { cornerOf } from '#core/drawing/setting-out.ts';
import { signed, figure } from '#core/drawing/figure.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { drawn, text, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';

/** What the figures beside a wall speak of. */
export interface Figured {
	readonly room: Room;
	readonly wall: WallId;
	readonly marks: readonly Mark[];
	readonly touched: Mark | undefined;
	readonly unit: LengthUnit;
}

/** Figures nearer than this on the ladder move apart, px. */
const APART = 20;

/** Heights from the datum line on a ladder to the left; the touched one is heavy. */
export function ladderShapes({ marks, touched, unit }: Figured, view: ScreenView): readonly Shape[] {
	const hung = marks.filter(({ variant }) => variant.stands !== 'floor-and-ceiling');
	const levels = [...new Set([0, ...hung.map(({ place }): number => place.y)])].sort((a, b) => b - a);
	const x = view.left - 22;
	const seats = spread(levels.map((level) => view.y(level) + 6));
	const rungs = levels.flatMap((level, i): Shape[] => {
		const y = view.y(level);
		const at = seats[i] ?? y;
		const heavy = touched?.place.y === level;
		return [
			drawn(
				`ladder/${String(level)}`,
				'fine',
				`M${String(x - 6)} ${String(y + 4)}l12 -8M${String(x - 6)} ${String(y)}H${String(x + 7)}`
			),
			text(
				`ladder/${String(level)}/figure`,
				heavy ? 't-lead strong end halo' : 't-text end halo',
				[x - 12, at],
				signed(level, unit)
			)
		];
	});
	const top = levels[0] === undefined ? view.y(0) : Math.min(view.y(levels[0]), view.y(0)) - 14;
	return [drawn('ladder/line', 'fine', `M${String(x)} ${String(view.bottom)}V${String(top)}`), ...rungs];
}

/** Heights of figures so that none lies on another, each as near its own as can be. Shape: from top to bottom. */
function spread(wishes: readonly number[]): readonly number[] {
	const down: number[] = [];
	for (const wish of wishes) down.push(Math.max(wish, (down.at(-1) ?? -Infinity) + APART));
	// What was pushed down is shared with what pushed: half of the push goes up again.
	const pushed = Math.max(0, ...down.map((y, i) => y - (wishes[i] ?? y)));
	return down.map((y, i) => (y > (wishes[i] ?? y) || pushed > 0 ? y - pushed / 2 : y));
}

/** How far the touched mark is from the corner it is measured from, above the wall. */
export function runningShapes({ room, wall, touched, unit }: Figured, view: ScreenView): readonly Shape[] {
	if (touched?.place.wall !== wall) return [];
	const corner = cornerOf(room, wall);
	const from = corner.side === 'left' ? view.left : view.right;
	const [x, y] = view.at(touched.place.x, touched.place.y);
	const up = view.top - 22;
	const [a, b] = [Math.min(from, x), Math.max(from, x)];
	const ticks = [a, b].map((n) => `M${String(n - 6)} ${String(up + 5)}l12 -10`).join('');
	return [
		drawn(
			'running/line',
			'fine',
			`M${String(x)} ${String(up - 8)}V${String(y)}M${String(a)} ${String(up)}H${String(b)}${ticks}`
		),
		text('running/figure', 't-lead strong mid halo', [(a + b) / 2, up - 7], figure(corner.from(touched.place.x), unit))
	];
}
