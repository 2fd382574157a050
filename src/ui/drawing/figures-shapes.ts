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
	const levels = [...new Set(marks.map(({ place }) => place.y))].sort((a, b) => b - a);
	const x = view.left - 22;
	let last = -Infinity;
	const rungs = levels.flatMap((level): Shape[] => {
		const y = view.y(level);
		const at = Math.max(y + 6, last + APART);
		last = at;
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
