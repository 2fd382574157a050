import type { Enclosure } from '#core/case/record.ts';
import type { Room } from '#core/enclosure/room.ts';
import { toPlan, type WallId } from '#core/geometry/frame.ts';
import { isSteppedOver, stepName } from '#ui/state/room-words.ts';
import { cornerAt, entryAt } from './corner-at.ts';
import { drawn, path, rect, text, type Px, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';
import { noteWidth, type Words } from './words.ts';

/** A side of a room on the screen. */
export interface WallAsked {
	readonly room: Room;
	readonly type: Enclosure['type'];
	readonly wall: WallId;
	readonly view: ScreenView;
}

const HATCH = 13;
/** How thick what is stepped over is drawn, mm. */
const STEP_THICK = 60;

/** The side itself: what stands of it with the walls that meet it, the floor as it falls, what is stepped over. */
export function wallShapes(asked: WallAsked): readonly Shape[] {
	const { room, wall, view } = asked;
	const { length, from, to, stands } = room.walls[wall];
	const ends = stands ? { from, to } : { from: 0, to: length };
	return [
		...cornerShapes(asked),
		path('wall/floor', 'cut', [floorAt(asked, 0), floorAt(asked, length)]),
		...(stands ? standing(asked, ends) : open(asked)),
		...(wall === 'front' && stands ? entryShapes(asked) : []),
		...stepShapes(asked),
		...(room.walls[wall].stands && view.broken ? [broken(view.x(from), view.x(to), view.top)] : [])
	];
}

function floorAt({ room, wall, view }: WallAsked, x: number): Px {
	const [px, py] = toPlan(wall, [x, 0], 0, room.footprint);
	return view.at(x, room.floorAt(px, py));
}

/** Hatched where another wall meets this side. */
function cornerShapes(asked: WallAsked): readonly Shape[] {
	const { room, wall, view } = asked;
	const { length } = room.walls[wall];
	const { left, right, top } = view;
	const low = Math.max(floorAt(asked, 0)[1], floorAt(asked, length)[1]);
	return [
		...(cornerAt(room, wall, 'left') ? [rect('wall/earth-left', 'earth', [left - HATCH, top], [left, low])] : []),
		...(cornerAt(room, wall, 'right') ? [rect('wall/earth-right', 'earth', [right, top], [right + HATCH, low])] : [])
	];
}

function standing(asked: WallAsked, { from, to }: { from: number; to: number }): readonly Shape[] {
	const { view } = asked;
	const [a, b] = [view.x(from), view.x(to)];
	return [
		path('wall/left', 'cut', [floorAt(asked, from), [a, view.top]]),
		path('wall/right', 'cut', [floorAt(asked, to), [b, view.top]]),
		...(view.broken
			? []
			: [
					path('wall/top', 'cut', [
						[a, view.top],
						[b, view.top]
					])
				])
	];
}

/** Where no wall stands: nothing is drawn but the ends of the side. */
function open({ view }: WallAsked): readonly Shape[] {
	const { left, right, top, bottom } = view;
	const [a, b] = [String(left), String(right)];
	return [
		drawn('wall/open', 'hidden', `M${a} ${String(bottom)}V${String(top)}M${b} ${String(bottom)}V${String(top)}`),
		text('wall/open-words', 't-note soft halo mid', [(left + right) / 2, top + 24], 'open: no wall on this side')
	];
}

/** Beside the front wall one comes in. */
function entryShapes({ room, wall, view }: WallAsked): readonly Shape[] {
	const { from, to, length } = room.walls[wall];
	const [x0, x1] = from === 0 ? [to, length] : [0, from];
	const edge = view.x(from === 0 ? length : 0);
	return [
		drawn('wall/entry', 'hidden', `M${String(edge)} ${String(view.bottom)}V${String(view.top)}`),
		text('wall/entry-words', 't-note soft halo mid', [view.x((x0 + x1) / 2), view.top + 24], 'entry')
	];
}

/** What is stepped over: in section at the entry end of a side, from the front beside the front wall. */
function stepShapes(asked: WallAsked): readonly Shape[] {
	const { room, type, wall, view } = asked;
	if (!isSteppedOver(room)) return [];
	const { length, from, to, stands } = room.walls[wall];
	const top = room.bathroomFloor + room.step;
	const end = entryAt(room, wall);
	const words = stepName(type);
	const [x0, x1] = end === 'left' ? [0, STEP_THICK] : [length - STEP_THICK, length];
	const gap = from === 0 ? ([to, length] as const) : ([0, from] as const);
	return [
		...(type === 'over-bath' && wall !== 'front' ? rimShapes(asked, top) : []),
		...(end ? [rect('wall/step', 'thing', view.at(x0, top), [view.x(x1), floorAt(asked, x0)[1]])] : []),
		...(wall === 'front' && stands
			? [rect('wall/step', 'thing', view.at(gap[0], top), [view.x(gap[1]), floorAt(asked, gap[0])[1]])]
			: []),
		...(end && type !== 'over-bath'
			? [
					text(
						'wall/step-words',
						end === 'left' ? 't-note soft halo' : 't-note soft halo end',
						[end === 'left' ? view.left : view.right, view.bottom + 14],
						words
					)
				]
			: [])
	];
}

/** A bath hides the foot of its walls: its rim runs along all of them. */
function rimShapes({ view }: WallAsked, top: number): readonly Shape[] {
	const y = view.y(top);
	return [
		path('wall/rim', 'fine', [
			[view.left, y],
			[view.right, y]
		])
	];
}

/** What is said of the wall where there is room: the datum line, and the rim of a bath below itself. */
export function wallWords({ room, type, wall, view }: WallAsked): readonly Words[] {
	const y = view.y(0);
	const half = noteWidth('datum') / 2 + 2;
	const column = { x0: 0, y0: y - 60, x1: view.left - 26, y1: y + 60 };
	const datum: Words = {
		id: 'datum/words',
		tone: 'blue',
		says: ['datum'],
		wishes: [
			[half, y - 13],
			[half, y + 13]
		],
		within: column
	};
	if (type !== 'over-bath' || wall === 'front' || !isSteppedOver(room)) return [datum];
	const rim = view.y(room.bathroomFloor + room.step);
	const under = rim + 28;
	const [left, right] = [view.left + 60, view.right - 66 - STEP_THICK * view.scale];
	const wishes: readonly Px[] = [right, (left + right) / 2, left].map((x) => [x, under]);
	const within = { x0: view.left, y0: rim + 2, x1: view.right, y1: view.bottom };
	return [datum, { id: 'wall/rim-words', says: ['rim of the bath'], wishes, within }];
}

function broken(left: number, right: number, top: number): Shape {
	const [a, middle, b] = [left - 24, (left + right) / 2, right + 24].map((n) => String(Math.round(n)));
	return drawn('wall/break', 'fine', `M${a ?? ''} ${String(top)}H${middle ?? ''}l6 -9l10 18l6 -9H${b ?? ''}`);
}

/** The datum line, across everything. */
export function datumShapes(view: ScreenView): readonly Shape[] {
	const y = view.y(0);
	return [
		path('datum/line', 'datum-line', [
			[0, y],
			[view.width, y]
		])
	];
}
