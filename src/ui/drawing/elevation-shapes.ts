import type { Mark } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { reinforcementOf } from '#core/needs/reinforcement.ts';
import type { SeatLine } from '#core/needs/seat-lines.ts';
import { backingNeeded } from '#core/structure/backing.ts';
import { balloonShapes, postLetterAt, type Lettered } from './balloon-shapes.ts';
import { behindShapes, behindWords } from './behind-shapes.ts';
import { faceShapes, faceWords } from './face-shapes.ts';
import { ladderShapes, runningShapes } from './figures-shapes.ts';
import { partBoxes } from './part-box.ts';
import { partShapes } from './part-shapes.ts';
import { profileShapes } from './profile-shapes.ts';
import type { ReachField } from './reach-field.ts';
import type { ScreenView } from './screen-view.ts';
import { seatLineShapes } from './seat-line-shapes.ts';
import { aboutAll, circle, type Shape } from './shape.ts';
import { datumShapes, wallShapes, wallWords } from './wall-shapes.ts';
import { covered, laidWords } from './words.ts';

/** What one wall of the screen shows. */
export interface ElevationAsked {
	readonly scene: Scene;
	readonly wall: WallId;
	readonly lettered: readonly Lettered[];
	/** The accessory under the finger. */
	readonly touched: string | undefined;
	readonly unit: LengthUnit;
	/** Where what is in hand was taken from. */
	readonly from: readonly Mark[];
	readonly field: ReachField;
	/** Heights that pull apart for the seat, drawn where the seat is touched on its wall. */
	readonly heights?: readonly SeatLine[];
	readonly view: ScreenView;
}

/** One wall: what is behind it, where the hand reaches, the parts, their letters, and the figures of the touched one. */
export function elevationShapes(asked: ElevationAsked): readonly Shape[] {
	const { scene, wall, lettered, unit, view } = asked;
	const marks = lettered.map(({ mark }) => mark);
	const here = lettered.filter(({ mark }) => mark.place.wall === wall);
	const touched = marks.find(({ accessory }) => accessory.id === asked.touched);
	const seat = marks.find(({ accessory }) => accessory.kind === 'seat');
	const figured = { room: scene.room, wall, marks: here.map(({ mark }) => mark), touched, unit };
	const needed = backingNeeded(scene, marks).filter((backing) => backing.wall === wall);
	const kept = reinforcementOf(scene).filter((area) => area.wall === wall);
	const behind = { scene, wall, view, needed, kept, unit };
	const side = { room: scene.room, type: scene.c.enclosure.type, wall, view };
	const reach = touched
		? asked.field.of({ scene, wall, mark: handed(touched, marks), seat }, view, asked.from.length > 0)
		: { shapes: [], words: [] };
	const sides = wallShapes(side);
	const datum = datumShapes(view);
	const profile = seat ? profileShapes(seat, scene.room, wall, view) : [];
	const ring =
		touched?.place.wall === wall ? [circle('touched', 'touched', view.at(touched.place.x, heldAt(touched)), 44)] : [];
	const figures = [...ladderShapes(figured, view), ...runningShapes(figured, view)];
	const balloons = balloonShapes(here, view);
	const seated = touched === seat && touched?.place.wall === wall ? (asked.heights ?? []) : [];
	const taken = [
		...here.flatMap(({ mark }) => partBoxes(mark, view)),
		...covered([...sides, ...datum, ...profile, ...ring, ...figures, ...balloons])
	];
	const heights = seatLineShapes({ room: scene.room, wall, lines: seated, view }, taken);
	const words = laidWords(
		[...wallWords(side), ...reach.words, ...behindWords(behind), ...faceWords(behind)],
		[...taken, ...covered(heights)]
	);
	return [
		...reach.shapes,
		...faceShapes(behind),
		...behindShapes(behind),
		...sides,
		...datum,
		...profile,
		...heights,
		...asked.from
			.filter(({ place }) => place.wall === wall)
			.flatMap((mark) => leftBehind(partShapes({ mark, room: scene.room, view }))),
		...here.flatMap(({ mark }) => aboutAll(mark.accessory.id, partShapes({ mark, room: scene.room, view }))),
		...ring,
		...words,
		...figures,
		...balloons
	];
}

/** A part where it was: sketched, not drawn. */
function leftBehind(shapes: readonly Shape[]): readonly Shape[] {
	return shapes.map((shape) => ({ ...shape, id: `was/${shape.id}`, attrs: { ...shape.attrs, class: 'sketch2' } }));
}

/** A post is seen to be touched where its letter is; its foot is on the floor. */
function heldAt({ place, variant }: Mark): number {
	return variant.stands === 'floor-and-ceiling' ? postLetterAt(place.y, variant.length) : place.y;
}

/** A seat has no hand; the hand that works the control is drawn for it. */
function handed(touched: Mark, marks: readonly Mark[]): Mark {
	if (touched.accessory.kind !== 'seat') return touched;
	return marks.find(({ accessory }) => accessory.kind === 'control') ?? touched;
}
