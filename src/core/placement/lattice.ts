import type { Accessory, Mark, Slot } from '#core/case/accessory.ts';
import { variantOf } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { wallLength } from '#core/geometry/frame.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Scene } from '#core/measures/scene.ts';
import { sceneFor } from '#core/rules/judge.ts';
import { limitsOf } from '#core/rules/limit.ts';
import type { BoundRow } from '#core/rules/row.ts';
import { mm, type Mm } from '#core/units/length.ts';

/** The values a coordinate may take, rising, and how far from round each is on the tape of the house. */
export interface Axis {
	readonly values: readonly Mm[];
	readonly rough: readonly number[];
}

/** A slot with the lattice of its places. */
export interface Spot {
	readonly slot: Slot;
	readonly xs: Axis;
	readonly ys: Axis;
}

const PROBE = 40;
const GRID = 1 / 320;

/** 0 on the round figures of a tape, 1 on its halves, 2 on its steps, 4 elsewhere. Source: common practice, no source. */
function roughness(value: number, tape: Case['tape']): number {
	const coarse = tape.unit === 'in' ? [4, 2, 1] : [5, 2, 1];
	const whole = (steps: number) => {
		const count = value / (steps * tape.step);
		return Math.abs(count - Math.round(count)) * tape.step < GRID / 2;
	};
	const found = coarse.findIndex(whole);
	return found < 0 ? 4 : found;
}

/** A coordinate axis over some values. Shape: sorted, each once. */
export function axisOf(values: Iterable<number>, tape: Case['tape']): Axis {
	const sorted = [...new Set([...values].map((v) => mm(v)))].sort((a, b) => a - b);
	return { values: sorted, rough: sorted.map((v) => roughness(v, tape)) };
}

function steps(from: number, to: number, step: number): number[] {
	const first = Math.ceil(from / step);
	const last = Math.floor(to / step);
	return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
}

const numberOf = (scene: Scene, row: BoundRow, mark: Mark): number => {
	const measure = MEASURES[row.row.measure];
	if (measure.about !== 'mark' || measure.slope !== 1) return NaN;
	const reading = measure.of(sceneFor(scene, row), mark);
	if (typeof reading === 'number') return reading;
	return 'best' in reading ? reading.best : NaN;
};

/** The coordinates at which a row about this mark alone is met exactly, when it moves straight along the axis. */
function limitValues(scene: Scene, row: BoundRow, mark: Mark, axis: 'x' | 'y'): number[] {
	const at = (d: number): number =>
		numberOf(scene, row, { ...mark, place: { ...mark.place, [axis]: (mark.place[axis] + d) as Mm } });
	const [before, here, after] = [at(-PROBE), at(0), at(PROBE)];
	const slope = (after - here) / PROBE;
	const straight = Math.abs(after - 2 * here + before) < 1e-6 && Math.abs(Math.abs(slope) - 1) < 0.05;
	if (!straight) return [];
	const { min, max } = limitsOf(row.row);
	// Rounded inward: toward more where the row asks for at least, toward less where it asks for at most.
	const inward = (limit: number, up: boolean): number => {
		const value = mark.place[axis] + (limit - here) / slope;
		const ticks = value / GRID;
		return (up === slope > 0 ? Math.ceil(ticks - 1e-6) : Math.floor(ticks + 1e-6)) * GRID;
	};
	return [...(min === undefined ? [] : [inward(min, true)]), ...(max === undefined ? [] : [inward(max, false)])];
}

/**
 * The places of one slot: every marking step from the corner and from the datum line, and every printed limit of a row
 * about this mark alone, rounded inward.
 * Units and frame: mm, wall frame.
 */
export function spotOf(scene: Scene, accessory: Accessory, slot: Slot, rows: readonly BoundRow[]): Spot {
	const { room, c } = scene;
	const length = wallLength(slot.wall, room.footprint);
	const [low, high] = [room.bathroomFloor, room.top(slot.wall)];
	const variant = variantOf(slot.variant);
	const middle = {
		wall: slot.wall,
		variant: slot.variant,
		x: mm(length / 2),
		y: mm((low + high) / 2),
		turn: 0
	} as const;
	const mark: Mark = { accessory, place: middle, variant, stage: 'proposed' };
	const limits = (axis: 'x' | 'y') => rows.flatMap((row) => limitValues(scene, row, mark, axis));
	const within = (from: number, to: number) => (v: number) => v >= from && v <= to;
	return {
		slot,
		xs: axisOf([...steps(0, length, c.tape.step), ...limits('x').filter(within(0, length))], c.tape),
		ys: axisOf([...steps(low, high, c.tape.step), ...limits('y').filter(within(low, high))], c.tape)
	};
}
