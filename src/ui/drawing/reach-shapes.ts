import type { Mark } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { contourOn } from '#core/reach/contour.ts';
import { mm } from '#core/units/length.ts';
import type { ScreenView } from './screen-view.ts';
import { drawn, text, type Shape } from './shape.ts';

/** Whose hand is drawn: of the mark that is touched, from the seat. */
export interface Reached {
	readonly scene: Scene;
	readonly wall: WallId;
	readonly mark: Mark;
	readonly seat: Mark | undefined;
}

/**
 * Where the hand of a mark reaches on a wall: the easy field and the stretched one behind it, with their words.
 * Units: mm for the mesh of the contours.
 */
export function reachShapes(reached: Reached, view: ScreenView, mesh: number): readonly Shape[] {
	const seated = reached.seat !== undefined && reached.mark.accessory.purpose !== 'step-in';
	const drawnOn = { view, mesh };
	const stretched = outline(reached, seated ? 'reach-upright' : 'reach-from-entry', drawnOn);
	const easy = seated ? outline(reached, 'reach-easy', drawnOn) : undefined;
	const leaning = seated ? outline(reached, 'reach-leaning', drawnOn) : undefined;
	const edge = isEstimated(reached) ? 'sketch' : 'fine';
	return [
		...(stretched ? [drawn('reach/stretched', 'stretched', stretched.d)] : []),
		...(easy ? [drawn('reach/easy', 'easy', easy.d), drawn('reach/easy-edge', edge, easy.d)] : []),
		...(stretched ? [drawn('reach/stretched-edge', edge, stretched.d)] : []),
		...(leaning ? [drawn('reach/leaning-edge', 'sketch', leaning.d)] : []),
		...(leaning ? [text('reach/leaning-words', 't-note soft halo mid', leaning.low, 'leaning')] : []),
		...(stretched ? [text('reach/stretched-words', 't-note soft halo mid', stretched.top, 'stretched')] : []),
		...(easy ? [text('reach/easy-words', 't-note halo mid', easy.low, 'easy')] : [])
	];
}

type ReachMeasure = 'reach-upright' | 'reach-easy' | 'reach-leaning' | 'reach-from-entry';

interface Outline {
	readonly d: string;
	readonly top: readonly [number, number];
	readonly low: readonly [number, number];
}

function outline(
	reached: Reached,
	measure: ReachMeasure,
	{ view, mesh }: { readonly view: ScreenView; readonly mesh: number }
): Outline | undefined {
	const { scene, wall } = reached;
	const { from, to } = scene.room.walls[wall];
	const window = { x0: from, x1: to, y0: levelAt(view, view.bottom), y1: levelAt(view, view.top) };
	const lines = contourOn((x, y) => slackAt(reached, measure, x, y), window, mesh);
	const points = lines.flat().map(([x, y]) => view.at(x, y));
	if (points.length === 0) return undefined;
	const d = lines
		.map(
			(line) =>
				`M${line
					.map(([x, y]) =>
						view
							.at(x, y)
							.map((n) => n.toFixed(1))
							.join(' ')
					)
					.join('L')}Z`
		)
		.join('');
	const middle = points.reduce((sum, [x]) => sum + x, 0) / points.length;
	const ys = points.map(([, y]) => y);
	return { d, top: [middle, Math.min(...ys) + 20], low: [middle, Math.max(...ys) - 8] };
}

/** The judge's own measure, asked of the hand alone wherever it is on the wall. */
function slackAt({ scene, wall, mark, seat }: Reached, id: ReachMeasure, x: number, y: number): number {
	const measure: Measure = MEASURES[id];
	const hand = { ...mark.variant, diameter: mm(0), grip: { x0: 0, y0: 0, x1: 0, y1: 0 } };
	const there: Mark = { ...mark, variant: hand, place: { ...mark.place, wall, x: mm(x), y: mm(y) } };
	if (measure.about === 'mark') return sureOf(measure.of(scene, there));
	return seat ? sureOf(measure.of(scene, there, seat)) : -1;
}

function sureOf(reading: Reading): number {
	if (typeof reading === 'number') return reading;
	return 'sure' in reading ? reading.sure : -1;
}

function isEstimated({ scene, mark }: Reached): boolean {
	const arms = scene.arms[mark.accessory.for];
	return mark.accessory.hands.some((side) => arms?.[side]?.how === 'estimated');
}

function levelAt(view: ScreenView, py: number): number {
	return (view.y(0) - py) / view.scale;
}
