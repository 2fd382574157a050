import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { WallPoint } from '#core/geometry/vec.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Scene } from '#core/measures/scene.ts';
import type { Plan } from '#core/plan.ts';
import { contourOn } from '#core/reach/contour.ts';
import { mm } from '#core/units/length.ts';
import type { Entity, Spot } from './entity.ts';
import { line } from './path.ts';
import type { View } from './view.ts';
import type { Wording } from './labels.ts';

/** Widest mesh the outline is looked for on. Units: mm of the wall. */
const MESH = 25;

const KINDS = [
	{ layer: 'easy', measure: 'reach-easy', word: 'easy reach' },
	{ layer: 'stretched', measure: 'reach-upright', word: 'stretched' },
	{ layer: 'leaning', measure: 'reach-leaning', word: 'with the lean seen' }
] as const;

/** Outlines of reach on a wall with their words. */
export interface Contours {
	readonly entities: readonly Entity[];
	readonly words: readonly Wording[];
}

/**
 * How far the client reaches on a wall from her seat, easily and stretched, upright, with the better hand, as a rod there
 * would be gripped. What rests on an estimate is sketched and says so; nothing where nobody knows or there is no seat.
 */
export function contoursOn(plan: Plan, wall: WallId, view: View): Contours {
	const seat = plan.marks.find((m) => m.variant.kind === 'seat');
	const { stands, from, to } = plan.scene.room.walls[wall];
	// Behind her back a reach says nothing, and on an open side nothing is held.
	if (!seat || !stands || wall === plan.scene.room.seatWall) return { entities: [], words: [] };
	const person = seat.accessory.for;
	const sketched = isSketched(plan.scene, person);
	const lean = plan.scene.bodies[person]?.person.lean?.value;
	const leans = lean !== undefined && lean.kind !== 'none';
	const parts = KINDS.filter(({ layer }) => leans || layer !== 'leaning').map(({ layer, measure, word }): Contours => {
		const slackAt = slackOn(plan.scene, MEASURES[measure], { seat, wall });
		const window = {
			x0: from,
			y0: levelAt(view, view.window.y1),
			x1: to,
			y1: levelAt(view, view.window.y0)
		};
		const lines = contourOn(slackAt, window, MESH).flatMap((ring) => openParts(ring, window));
		const drawn = lines.map((points) => points.map(([x, y]): Spot => view.spot(x, y)));
		return {
			entities: drawn.map((points, i) =>
				line(`reach/${layer}/${String(i)}`, sketched ? `${layer}-sketched` : layer, ...points)
			),
			words: wordOn(drawn, `reach/${layer}/word`, sketched ? `${word}, estimated` : word)
		};
	});
	return { entities: parts.flatMap((p) => p.entities), words: parts.flatMap((p) => p.words) };
}

const levelAt = (view: View, y: number): number => (view.datum - y) * view.scale;

/** What is left of the arm for a rod gripped at a point of the wall; far outside where it is not known. Units: mm. */
function slackOn(scene: Scene, measure: Measure, on: { seat: Mark; wall: WallId }): (x: number, y: number) => number {
	const rod = { ...variantOf('bar-300'), grip: { x0: 0, y0: 0, x1: 0, y1: 0 } };
	const accessory = { ...on.seat.accessory, id: 'reach', kind: rod.kind, hands: ['left', 'right'] as const };
	return (x, y) => {
		if (measure.about !== 'pair') return -1;
		const place = { wall: on.wall, variant: rod.id, x: mm(x), y: mm(y), turn: 0 as const };
		const reading = measure.of(scene, { accessory, place, variant: rod, stage: 'proposed' }, on.seat);
		if (typeof reading === 'number') return reading;
		return 'sure' in reading ? reading.sure : -1;
	};
}

/** Whether arm or shoulder height of a person is an estimate. */
function isSketched(scene: Scene, person: string): boolean {
	const arms = scene.arms[person];
	const shoulder = scene.bodies[person]?.dims.shoulderAboveSeat;
	return shoulder?.how === 'estimated' || arms?.left?.how === 'estimated' || arms?.right?.how === 'estimated';
}

/** The parts of a closed outline that do not run along the edge of the window. */
function openParts(
	ring: readonly WallPoint[],
	window: { x0: number; y0: number; x1: number; y1: number }
): readonly (readonly WallPoint[])[] {
	const onEdge = ([x, y]: WallPoint, [u, v]: WallPoint) =>
		(x === u && (x === window.x0 || x === window.x1)) || (y === v && (y === window.y0 || y === window.y1));
	const steps = ring.map((a, i) => [a, ring[(i + 1) % ring.length] ?? a] as const);
	const cut = steps.findIndex(([a, b]) => onEdge(a, b));
	if (cut < 0) return [[...ring, ...ring.slice(0, 1)]];
	const parts: WallPoint[][] = [];
	for (const [a, b] of [...steps.slice(cut), ...steps.slice(0, cut)]) {
		const open = parts.at(-1);
		if (onEdge(a, b)) parts.push([]);
		else if (open && open.length > 0) open.push(b);
		else open?.push(a, b);
	}
	return parts.filter((part) => part.length > 1);
}

/** The word of an outline, on its line: the upper parts first. */
function wordOn(drawn: readonly (readonly Spot[])[], id: string, text: string): readonly Wording[] {
	const wishes = drawn.flat().toSorted((a, b) => a[1] - b[1]);
	const [first] = wishes;
	return first ? [{ id, text, wishes, on: { x0: first[0], y0: first[1], x1: first[0], y1: first[1] } }] : [];
}
