import type { Mark } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Reading, Scene } from '#core/measures/scene.ts';
import { mm } from '#core/units/length.ts';
import { onItsLine, outlineOn, type Outline } from './outline.ts';
import type { ScreenView } from './screen-view.ts';
import { drawn, type Shape } from './shape.ts';
import type { Words } from './words.ts';

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
			const others = Object.values(named).flatMap((one) => (one && one !== own ? [one] : []));
			const look = { id: `reach/${name}-words`, tone: name === 'easy' ? 'ink' : 'soft', name } as const;
			return own ? [onItsLine(look, own, others)] : [];
		})
	};
}

type ReachMeasure = 'reach-upright' | 'reach-easy' | 'reach-leaning' | 'reach-from-entry';

function outline(
	reached: Reached,
	measure: ReachMeasure,
	drawnOn: Parameters<typeof outlineOn>[2]
): Outline | undefined {
	const { scene, wall } = reached;
	return outlineOn(scene.room.walls[wall], (x, y) => slackAt(reached, measure, x, y), drawnOn);
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
