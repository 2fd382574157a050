import { jointsOf, stripsOn } from '#core/drawing/face-lines.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { cut, faceOf } from './behind-shapes.ts';
import { drawn, rect, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';
import { noteWidth, type Words } from './words.ts';

/** Joints nearer to each other than this are a grey area. Units: px. */
const NEAREST = 6;
const SAYS = 'cables may run here';

/** A wall whose face is drawn. */
interface Face {
	readonly scene: Pick<Scene, 'c' | 'room'>;
	readonly wall: WallId;
	readonly view: ScreenView;
}

/** What the face of a wall tells whoever drills it: joints of tiles where they were seen, strips where cables may run. */
export const faceShapes = (face: Face): readonly Shape[] => [...tileShapes(face), ...stripShapes(face)];

function tileShapes({ scene: { c, room }, wall, view }: Face): readonly Shape[] {
	const on = room.walls[wall];
	const { x0, x1, y0, y1 } = faceOf(room, wall, view);
	const { across, up } = on.stands
		? jointsOf(c.enclosure.walls[wall], { ...on, bottom: on.bottom - BELOW }, NEAREST / view.scale)
		: { across: [], up: [] };
	const levels = up.map(view.y).filter((y) => y > y0 && y < y1);
	const d = [
		...across.map((x) => `M${short(view.x(x))} ${short(y0)}V${short(y1)}`),
		...levels.map((y) => `M${short(x0)} ${short(y)}H${short(x1)}`)
	].join('');
	return d === '' ? [] : [drawn('tiles', 'tile', d)];
}

function stripShapes(face: Face): readonly Shape[] {
	return boxesOf(face).map(({ x0, x1, y0, y1 }, i) => rect(`cables/${String(i)}`, 'cables', [x0, y0], [x1, y1]));
}

/** What is said of the strips, once, where there is room for it. */
export function faceWords(face: Face): readonly Words[] {
	const half = noteWidth(SAYS) / 2;
	return boxesOf(face)
		.toSorted((a, b) => b.x1 - b.x0 - (a.x1 - a.x0))
		.slice(0, 1)
		.map((box): Words => {
			const y = (box.y0 + box.y1) / 2;
			const wishes = [box.x0 + half + 6, box.x1 - half - 6, (box.x0 + box.x1) / 2].flatMap((x) =>
				[y, box.y1 + 12, box.y0 - 12].map((at) => [x, at] as const)
			);
			return {
				id: 'words/cables',
				says: [SAYS, 'cables'],
				wishes,
				within: { ...box, y0: box.y0 - 24, y1: box.y1 + 24 }
			};
		});
}

function boxesOf({ scene: { c, room }, wall, view }: Face) {
	const on = room.walls[wall];
	if (!on.stands) return [];
	return stripsOn(c.enclosure.walls[wall], on).flatMap((strip) => cut(strip, room, { wall, view }) ?? []);
}

/** A floor that falls goes on below its entry. Units: mm. */
const BELOW = 200;

const short = (n: number): string => String(Math.round(n * 10) / 10);
