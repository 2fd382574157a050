import { LOWER_BANGLE, type Mark } from '#core/case/accessory.ts';
import { BACK_REST } from '#core/drawing/seat-plan.ts';
import type { Room } from '#core/enclosure/room.ts';
import { circle, drawn, path, rect, type Px, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';

/** A part to be drawn on its wall. */
export interface PartAsked {
	readonly mark: Mark;
	readonly room: Room;
	readonly view: ScreenView;
}

/** A part as it is seen on its wall; dashed where it is wanted only later. */
export function partShapes(asked: PartAsked): readonly Shape[] {
	const { accessory, variant } = asked.mark;
	const shapes = SHAPES[variant.kind](asked);
	if (accessory.when !== 'later') return shapes;
	return shapes.map((shape) => ({
		...shape,
		attrs: { ...shape.attrs, class: `${String(shape.attrs['class'])} later` }
	}));
}

const SHAPES: Readonly<Record<Mark['variant']['kind'], (asked: PartAsked) => readonly Shape[]>> = {
	'horizontal-bar': (asked) => (asked.mark.variant.upright ? lBar(asked) : bar(asked)),
	'vertical-bar': (asked) => (asked.mark.variant.stands ? post(asked) : bar(asked)),
	'fold-down-rail': rail,
	seat,
	control,
	outlet,
	'call-cord': callCord,
	'handset-rest': (asked) => (asked.mark.accessory.purpose === 'rest-handset' ? rest(asked) : holder(asked))
};

function bar({ mark: { accessory, place, variant }, view }: PartAsked): readonly Shape[] {
	const flanges = variant.brackets.map((b) => view.at(place.x + b.x, place.y + b.y));
	const [first = view.at(place.x, place.y), last = first] = flanges;
	const half = halfOf(variant, view);
	const [dx, dy] = variant.kind === 'horizontal-bar' ? [0, half] : [half, 0];
	return [
		rect(`${accessory.id}/tube`, 'thing', [first[0] - dx, first[1] - dy], [last[0] + dx, last[1] + dy], half),
		...flangeShapes({ accessory, place, variant }, view)
	];
}

/** A bar with its upright leg, in one outline. */
function lBar({ mark: { accessory, place, variant }, view }: PartAsked): readonly Shape[] {
	const half = halfOf(variant, view);
	const rise = variant.upright?.length ?? 0;
	const atLeft = variant.upright?.at === 'left';
	const [corner, y] = view.at(place.x + (atLeft ? 0 : variant.length), place.y);
	const end = view.x(place.x + (atLeft ? variant.length : 0));
	const top = view.y(place.y + rise);
	const [inner, outer] = atLeft ? [half, -half] : [-half, half];
	const outline: readonly Px[] = [
		[corner + outer, top],
		[corner + inner, top],
		[corner + inner, y - half],
		[end, y - half],
		[end, y + half],
		[corner + outer, y + half]
	];
	return [
		path(`${accessory.id}/tube`, 'thing', outline, 'closed'),
		...flangeShapes({ accessory, place, variant }, view)
	];
}

function halfOf({ diameter }: Mark['variant'], view: ScreenView): number {
	return Math.max((diameter * view.scale) / 2, 5);
}

function flangeShapes(
	{ accessory, place, variant }: Pick<Mark, 'accessory' | 'place' | 'variant'>,
	view: ScreenView
): readonly Shape[] {
	return variant.brackets.map((b, i) =>
		circle(
			`${accessory.id}/flange/${String(i)}`,
			'thing',
			view.at(place.x + b.x, place.y + b.y),
			Math.max(b.radius * view.scale, 11)
		)
	);
}

/** A post from the floor to the ceiling, which is seldom drawn. */
function post({ mark: { accessory, place, variant }, view }: PartAsked): readonly Shape[] {
	const half = halfOf(variant, view);
	const [x, floor] = view.at(place.x, place.y);
	const foot = Math.max(half * 2.2, 12);
	return [
		rect(`${accessory.id}/tube`, 'thing', [x - half, view.top - 8], [x + half, floor - 6]),
		rect(`${accessory.id}/foot`, 'thing', [x - foot, floor - 7], [x + foot, floor], 2),
		...(view.broken
			? []
			: [rect(`${accessory.id}/head`, 'thing', [x - foot, view.top - 14], [x + foot, view.top - 7], 2)])
	];
}

/** Its end toward whoever looks, its plate, and where it is when it is folded up. */
function rail({ mark: { accessory, place, variant }, view }: PartAsked): readonly Shape[] {
	const [x, y] = view.at(place.x, place.y);
	const half = Math.max(18 * view.scale, 6);
	const wide = Math.max(variant.outline.x1 * view.scale, 13);
	return [
		rect(`${accessory.id}/folded`, 'folded', [x - half, view.y(place.y + variant.length)], [x + half, y], half),
		rect(`${accessory.id}/plate`, 'thing', [x - wide, y], [x + wide, view.y(place.y + variant.outline.y0)], 4),
		rect(`${accessory.id}/end`, 'thing', [x - half, y - half], [x + half, y + half], half)
	];
}

function seat(asked: PartAsked): readonly Shape[] {
	const { mark, room, view } = asked;
	const { accessory, place, variant } = mark;
	const { id } = accessory;
	const { outline, frontLegs } = variant;
	const legged = variant.stands === 'legs' || frontLegs !== undefined;
	const a = view.at(place.x + outline.x0, place.y);
	const b = view.at(place.x + outline.x1, place.y + outline.y0);
	const board: Px = [b[0], a[1] + Math.max(14, 25 * view.scale)];
	const { low } = room.floorUnder(place.wall, place.x, place.x);
	const foot = legged ? view.y(low) : b[1];
	const share = legged ? 0.1 : 0.2;
	const [x0, x1] = [share, 1 - share].map((part) => a[0] + (b[0] - a[0]) * part);
	const leg = (x: number | undefined): string => `M${String(x)} ${String(board[1])}V${String(foot)}`;
	return [
		...backRestShapes(asked),
		drawn(`${id}/legs`, 'line', leg(x0) + leg(x1)),
		...armShapes(asked, board[1]),
		rect(`${id}/board`, 'thing', a, board, 4)
	];
}

/** The back rest of a seat that stands off its wall, sketched: its own size is read off the part. */
function backRestShapes({ mark: { accessory, place, variant }, view }: PartAsked): readonly Shape[] {
	if (variant.backRest === undefined) return [];
	const { x0, x1 } = variant.outline;
	const a = view.at(place.x + x0 + BACK_REST.in, place.y + BACK_REST.high);
	const b = view.at(place.x + x1 - BACK_REST.in, place.y + BACK_REST.low);
	return [rect(`${accessory.id}/back-rest`, 'folded', a, b, 4)];
}

/** The arm of an L seat, seen end on: its leg, and its end in front of the rest of the board. */
function armShapes({ mark: { accessory, place, variant }, room, view }: PartAsked, under: number): readonly Shape[] {
	if (!variant.arm) return [];
	const [x0, x1] = [view.x(place.x + variant.arm.x0), view.x(place.x + variant.arm.x1)];
	const middle = place.x + (variant.arm.x0 + variant.arm.x1) / 2;
	const floor = view.y(room.floorUnder(place.wall, middle, middle).low);
	return [
		drawn(`${accessory.id}/arm/leg`, 'line', `M${String(view.x(middle))} ${String(under)}V${String(floor)}`),
		rect(`${accessory.id}/arm`, 'thing', [x0, view.y(place.y)], [x1, under + 4], 4)
	];
}

function control({ mark: { accessory, place, variant }, view }: PartAsked): readonly Shape[] {
	const [x, y] = view.at(place.x, place.y);
	const r = variant.outline.x1 * view.scale;
	const w = Math.max(4, r * 0.13);
	const lever = `M${String(x - w)} ${String(y)}L${String(x - w * 0.7)} ${String(y - r * 1.02)}A${String(w * 0.7)} ${String(w * 0.7)} 0 0 1 ${String(x + w * 0.7)} ${String(y - r * 1.02)}L${String(x + w)} ${String(y)}Z`;
	return [
		circle(`${accessory.id}/plate`, 'thing', [x, y], r),
		drawn(`${accessory.id}/lever`, 'thing', lever),
		circle(`${accessory.id}/hub`, 'ink', [x, y], 4)
	];
}

/** A rose on the wall with the hose hanging from it. */
function outlet({ mark: { accessory, place, variant }, view }: PartAsked): readonly Shape[] {
	const [x, y] = view.at(place.x, place.y);
	const r = Math.max(variant.outline.x1 * view.scale, 9);
	return [
		drawn(`${accessory.id}/hose`, 'line', `M${String(x)} ${String(y)}v${String(r + 8)}c0 16 12 18 16 6`),
		circle(`${accessory.id}/rose`, 'thing', [x, y], r),
		circle(`${accessory.id}/hub`, 'ink', [x, y], 3)
	];
}

/** A cord from above with a bangle to pull from where one washes, and one to pull from the floor. */
function callCord({ mark: { accessory, place, variant }, room, view }: PartAsked): readonly Shape[] {
	const [x, y] = view.at(place.x, place.y);
	const low = view.y(room.floorUnder(place.wall, place.x, place.x).high + LOWER_BANGLE);
	const r = Math.max(variant.outline.x1 * view.scale, 7);
	const over = view.broken ? view.top - 8 : view.top;
	return [
		drawn(
			`${accessory.id}/cord`,
			'line',
			`M${String(x)} ${String(over)}V${String(y - r)}M${String(x)} ${String(y + r)}V${String(low - r)}`
		),
		circle(`${accessory.id}/upper`, 'thing', [x, y], r),
		circle(`${accessory.id}/lower`, 'thing', [x, low], r)
	];
}

function bodyOf({ mark: { accessory, place, variant }, view }: PartAsked): Shape {
	const { outline } = variant;
	const a = view.at(place.x + outline.x0, place.y + outline.y1);
	return rect(`${accessory.id}/body`, 'thing', a, view.at(place.x + outline.x1, place.y + outline.y0), 3);
}

/** A rest with the handset put down in it. */
function rest(asked: PartAsked): readonly Shape[] {
	const { mark, view } = asked;
	const [x, y] = view.at(mark.place.x, mark.place.y);
	return [
		bodyOf(asked),
		drawn(
			`${mark.accessory.id}/handset`,
			'thing',
			`M${String(x - 4)} ${String(y + 4)}L${String(x - 10)} ${String(y - 34)}A9 9 0 0 1 ${String(x + 8)} ${String(y - 34)}L${String(x + 4)} ${String(y + 4)}Z`
		)
	];
}

/** A holder overhead: the handset leans out of it and water falls from it. */
function holder(asked: PartAsked): readonly Shape[] {
	const { mark, view } = asked;
	const [x, y] = view.at(mark.place.x, mark.place.y);
	const at = (dx: number, dy: number): string => `${String(x + dx)} ${String(y + dy)}`;
	return [
		bodyOf(asked),
		drawn(`${mark.accessory.id}/handset`, 'thing', `M${at(-4, 3)}L${at(14, -26)}L${at(22, -22)}L${at(4, 7)}Z`),
		drawn(`${mark.accessory.id}/head`, 'thing', `M${at(8, -34)}L${at(32, -20)}L${at(27, -13)}L${at(5, -27)}Z`),
		drawn(`${mark.accessory.id}/water`, 'fine', `M${at(21, -10)}l3 12M${at(28, -6)}l3 12`)
	];
}
