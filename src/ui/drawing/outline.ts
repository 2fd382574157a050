import { widened, type Box } from '#core/drawing/entity.ts';
import type { RoomWall } from '#core/enclosure/room.ts';
import { contourOn } from '#core/reach/contour.ts';
import type { ScreenView } from './screen-view.ts';
import type { Px } from './shape.ts';
import { common, noteWidth, type Words } from './words.ts';

/** The line round what a hand reaches on a wall. Units: px of the drawing. */
export interface Outline {
	/** The wall it is drawn on. */
	readonly face: Box;
	readonly d: string;
	readonly points: readonly Px[];
}

/** How a wall is drawn, and how wide the mesh of a contour is there. Units: mm for `mesh`. */
interface Meshed {
	readonly view: ScreenView;
	readonly mesh: number;
}

/** So many places along its line words may choose from. */
const CHOICES = 24;

/** The outline of where a slack on a wall is 0 or more, as far as the wall is drawn; undefined where it is nowhere. */
export function outlineOn(
	{ from, to }: RoomWall,
	slackAt: (x: number, y: number) => number,
	{ view, mesh }: Meshed
): Outline | undefined {
	const window = { x0: from, x1: to, y0: levelAt(view, view.bottom), y1: levelAt(view, view.top) };
	const lines = contourOn(slackAt, window, mesh).map((line) => line.map(([x, y]) => view.at(x, y)));
	if (lines.length === 0) return undefined;
	const d = lines.map((line) => `M${line.map((at) => at.map((n) => n.toFixed(1)).join(' ')).join('L')}Z`).join('');
	return { d, points: lines.flat(), face: { x0: view.x(from), y0: view.top, x1: view.x(to), y1: view.bottom } };
}

/** The name of an outline stands on its line, where that runs farthest from the lines of the others. */
export function onItsLine(
	named: Pick<Words, 'id' | 'tone'> & { readonly name: string },
	{ points, face }: Outline,
	others: readonly Outline[]
): Words {
	const { name, ...look } = named;
	const every = Math.max(1, Math.floor(points.length / CHOICES));
	const elsewhere = others.flatMap((other) => other.points);
	const far = ([x, y]: Px): number => Math.min(60, ...elsewhere.map(([u, v]) => Math.hypot(u - x, v - y)));
	const wishes = points
		.filter((_, i) => i % every === 0)
		.map((at) => ({ at, far: far(at) }))
		.sort((a, b) => b.far - a.far)
		.map(({ at }) => at);
	const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
	const extent = { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
	return { ...look, says: [name], wishes, within: common(widened(extent, noteWidth(name) / 2), face) };
}

const levelAt = (view: ScreenView, py: number): number => (view.y(0) - py) / view.scale;
