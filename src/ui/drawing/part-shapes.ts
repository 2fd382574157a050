import type { Mark } from '#core/case/accessory.ts';
import { circle, drawn, rect, type Px, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';

/** A part as it is seen on its wall. */
export function partShapes(mark: Mark, view: ScreenView): readonly Shape[] {
	return (SHAPES[mark.variant.kind] ?? plain)(mark, view);
}

const SHAPES: Readonly<Partial<Record<string, (mark: Mark, view: ScreenView) => readonly Shape[]>>> = {
	'horizontal-bar': bar,
	'vertical-bar': bar,
	seat,
	control,
	'handset-rest': rest
};

/** What has no picture of its own: its outline. */
function plain({ accessory: { id }, place, variant: { outline } }: Mark, view: ScreenView): readonly Shape[] {
	const a = view.at(place.x + outline.x0, place.y + outline.y1);
	return [rect(`${id}/body`, 'thing', a, view.at(place.x + outline.x1, place.y + outline.y0), 4)];
}

function bar({ accessory: { id }, place, variant }: Mark, view: ScreenView): readonly Shape[] {
	const flanges = variant.brackets.map((b) => view.at(place.x + b.x, place.y + b.y));
	const [first = view.at(place.x, place.y), last = first] = flanges;
	const half = Math.max((variant.diameter * view.scale) / 2, 5);
	const [dx, dy] = variant.kind === 'horizontal-bar' ? [0, half] : [half, 0];
	return [
		rect(`${id}/tube`, 'thing', [first[0] - dx, first[1] - dy], [last[0] + dx, last[1] + dy], half),
		...variant.brackets.map((b, i) => {
			const at = flanges[i] ?? first;
			return circle(`${id}/flange/${String(i)}`, 'thing', at, Math.max(b.radius * view.scale, 11));
		})
	];
}

function seat({ accessory: { id }, place, variant }: Mark, view: ScreenView): readonly Shape[] {
	const { outline } = variant;
	const a = view.at(place.x + outline.x0, place.y);
	const b = view.at(place.x + outline.x1, place.y + outline.y0);
	const board: Px = [b[0], a[1] + Math.max(14, 25 * view.scale)];
	const [x0, x1] = [a[0] + (b[0] - a[0]) * 0.2, a[0] + (b[0] - a[0]) * 0.8];
	return [
		drawn(
			`${id}/legs`,
			'line',
			`M${String(x0)} ${String(board[1])}V${String(b[1])}M${String(x1)} ${String(board[1])}V${String(b[1])}`
		),
		rect(`${id}/board`, 'thing', a, board, 4)
	];
}

function control({ accessory: { id }, place, variant }: Mark, view: ScreenView): readonly Shape[] {
	const [x, y] = view.at(place.x, place.y);
	const r = variant.outline.x1 * view.scale;
	const w = Math.max(4, r * 0.13);
	const lever = `M${String(x - w)} ${String(y)}L${String(x - w * 0.7)} ${String(y - r * 1.02)}A${String(w * 0.7)} ${String(w * 0.7)} 0 0 1 ${String(x + w * 0.7)} ${String(y - r * 1.02)}L${String(x + w)} ${String(y)}Z`;
	return [
		circle(`${id}/plate`, 'thing', [x, y], r),
		drawn(`${id}/lever`, 'thing', lever),
		circle(`${id}/hub`, 'ink', [x, y], 4)
	];
}

function rest({ accessory: { id }, place, variant }: Mark, view: ScreenView): readonly Shape[] {
	const { outline } = variant;
	const a = view.at(place.x + outline.x0, place.y + outline.y1);
	const b = view.at(place.x + outline.x1, place.y + outline.y0);
	const [x, y] = view.at(place.x, place.y);
	return [
		rect(`${id}/body`, 'thing', a, b, 3),
		drawn(
			`${id}/handset`,
			'thing',
			`M${String(x - 4)} ${String(y + 4)}L${String(x - 10)} ${String(y - 34)}A9 9 0 0 1 ${String(x + 8)} ${String(y - 34)}L${String(x + 4)} ${String(y + 4)}Z`
		)
	];
}
