import type { Mark } from '#core/case/accessory.ts';
import { widened, type Box } from '#core/drawing/entity.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { contourOn } from '#core/reach/contour.ts';
import { mm } from '#core/units/length.ts';
import type { ScreenView } from './screen-view.ts';
import { drawn, type Px, type Shape } from './shape.ts';
import { common, noteWidth, type Words } from './words.ts';

/** Whose hand is drawn: of the mark that is touched, from the seat. */
export interface Reached {
	readonly scene: Scene;
	readonly wall: WallId;
	readonly mark: Mark;
	readonly seat: Mark | undefined;
}

/** A field of a hand with what is said of it. */
export interface Field {
	readonly shapes: readonly Shape[];
	readonly words: readonly Words[];
}

/**
 * Where the hand of a mark reaches on a wall: the easy field and the stretched one behind it, with their words.
 * Units: mm for the mesh of the contours.
 */
export function reachShapes(reached: Reached, view: ScreenView, mesh: number): Field {
	const seated = reached.seat !== undefined && reached.mark.accessory.purpose !== 'step-in';
	const drawnOn = { view, mesh };
	const stretched = outline(reached, seated ? 'reach-upright' : 'reach-from-entry', drawnOn);
	const easy = seated ? outline(reached, 'reach-easy', drawnOn) : undefined;
	const leaning = seated ? outline(reached, 'reach-leaning', drawnOn) : undefined;
	const edge = isEstimated(reached) ? 'sketch' : 'fine';
	const named = { easy, stretched, leaning };
	return {
		shapes: [
			...(stretched ? [drawn('reach/stretched', 'stretched', stretched.d)] : []),
			...(easy ? [drawn('reach/easy', 'easy', easy.d), drawn('reach/easy-edge', edge, easy.d)] : []),
			...(stretched ? [drawn('reach/stretched-edge', edge, stretched.d)] : []),
			...(leaning ? [drawn('reach/leaning-edge', 'sketch', leaning.d)] : [])
		],
		words: (['leaning', 'easy', 'stretched'] as const).flatMap((name) => {
			const own = named[name];
			const others = Object.values(named).filter((one) => one !== own);
			return own
				? [
						onItsLine(
							name,
							own,
							others.flatMap((one) => one?.points ?? [])
						)
					]
				: [];
		})
	};
}

type ReachMeasure = 'reach-upright' | 'reach-easy' | 'reach-leaning' | 'reach-from-entry';

type FieldName = 'leaning' | 'easy' | 'stretched';

interface Outline {
	/** The wall it is drawn on. */
	readonly face: Box;
	readonly d: string;
	readonly points: readonly Px[];
}

/** So many places along its line words may choose from. */
const CHOICES = 24;

/** The name of a field stands on its line, where that runs farthest from the lines of the others. */
function onItsLine(name: FieldName, { points, face }: Outline, others: readonly Px[]): Words {
	const every = Math.max(1, Math.floor(points.length / CHOICES));
	const far = ([x, y]: Px): number => Math.min(60, ...others.map(([u, v]) => Math.hypot(u - x, v - y)));
	const wishes = points
		.filter((_, i) => i % every === 0)
		.map((at) => ({ at, far: far(at) }))
		.sort((a, b) => b.far - a.far)
		.map(({ at }) => at);
	const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
	const extent = { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
	const within = common(widened(extent, noteWidth(name) / 2), face);
	return { id: `reach/${name}-words`, tone: name === 'easy' ? 'ink' : 'soft', says: [name], wishes, within };
}

function outline(
	reached: Reached,
	measure: ReachMeasure,
	{ view, mesh }: { readonly view: ScreenView; readonly mesh: number }
): Outline | undefined {
	const { scene, wall } = reached;
	const { from, to } = scene.room.walls[wall];
	const window = { x0: from, x1: to, y0: levelAt(view, view.bottom), y1: levelAt(view, view.top) };
	const lines = contourOn((x, y) => slackAt(reached, measure, x, y), window, mesh).map((line) =>
		line.map(([x, y]) => view.at(x, y))
	);
	if (lines.length === 0) return undefined;
	const d = lines.map((line) => `M${line.map((at) => at.map((n) => n.toFixed(1)).join(' ')).join('L')}Z`).join('');
	return { d, points: lines.flat(), face: { x0: view.x(from), y0: view.top, x1: view.x(to), y1: view.bottom } };
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
