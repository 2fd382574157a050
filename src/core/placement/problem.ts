import { VARIANTS, variantOf, type Accessory, type Mark } from '#core/case/accessory.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Scene } from '#core/measures/scene.ts';
import type { BoundRow } from '#core/rules/row.ts';
import type { Mm } from '#core/units/length.ts';
import { axisOf, spotOf, type Spot } from './lattice.ts';

/** One accessory that still looks for its place. */
export interface Unknown {
	/** Its number in the order of solving. */
	readonly index: number;
	readonly accessory: Accessory;
	readonly spots: readonly Spot[];
	/** Rows about it alone. */
	readonly rows: readonly BoundRow[];
	/** Rows about it and another, by the other's accessory id. */
	readonly pairs: ReadonlyMap<string, readonly BoundRow[]>;
}

/** What is to be solved: what looks for a place, what has one, and the rows that steer. */
export interface Problem {
	readonly scene: Scene;
	readonly unknowns: readonly Unknown[];
	readonly given: readonly Mark[];
}

const WALLS = ['back', 'left', 'right', 'front'] as const;

/** Order of a wall, then of a part: the first two order keys of a place. */
export const slotKeys = (slot: { readonly wall: string; readonly variant: string }): readonly [number, number] => [
	WALLS.findIndex((w) => w === slot.wall),
	VARIANTS.findIndex((v) => v.id === slot.variant)
];

/** Accessories that have a place in the record, as marks. Shape: an entry no accessory asks for is passed over. */
function givenMarks(scene: Scene, wanted: readonly Accessory[]): readonly Mark[] {
	return wanted.flatMap((accessory) => {
		const place = scene.c.places[accessory.id];
		if (!place) return [];
		const { stage, ...rest } = place;
		return [{ accessory, place: rest, variant: variantOf(place.variant), stage }];
	});
}

/** One axis for all that share a height line, so that one height is one unknown. */
function shareLines(unknowns: readonly Unknown[], { scene, given }: Pick<Problem, 'scene' | 'given'>): Unknown[] {
	const heights = new Map<string, Set<Mm>>();
	for (const u of unknowns) {
		if (!u.accessory.line) continue;
		const all = heights.get(u.accessory.line) ?? new Set<Mm>();
		for (const spot of u.spots) for (const y of spot.ys.values) all.add(y);
		heights.set(u.accessory.line, all);
	}
	for (const mark of given) if (mark.accessory.line) heights.set(mark.accessory.line, new Set([mark.place.y]));
	return unknowns.map((u) => {
		const line = u.accessory.line ? heights.get(u.accessory.line) : undefined;
		if (!line) return u;
		const ys = axisOf(line, scene.c.tape);
		return { ...u, spots: u.spots.map((spot) => ({ ...spot, ys })) };
	});
}

/** What is one subtraction is asked before what takes an arm: most places are refused by the first few rows. */
function cheapFirst(rows: readonly BoundRow[]): readonly BoundRow[] {
	const cheap = ({ row }: BoundRow): boolean => {
		const measure: Measure = MEASURES[row.measure];
		return measure.slope === 0 || measure.along !== undefined;
	};
	return [...rows.filter(cheap), ...rows.filter((r) => !cheap(r))];
}

/** Sets a problem out: unknowns in the order wanted, each with its lattice and the rows that speak of it. */
export function problemOf(scene: Scene, rows: readonly BoundRow[], wanted: readonly Accessory[]): Problem {
	const given = givenMarks(scene, wanted);
	const open = wanted.filter((a) => !given.some((m) => m.accessory.id === a.id));
	const unknowns = open.map((accessory, index) => {
		const mine = cheapFirst(rows.filter((r) => r.strength !== 'reported' && r.about.includes(accessory.id)));
		const alone = mine.filter((r) => r.about.length === 1);
		const pairs = new Map<string, BoundRow[]>();
		for (const row of mine) {
			const other = row.about.find((id) => id !== accessory.id);
			if (other !== undefined) pairs.set(other, [...(pairs.get(other) ?? []), row]);
		}
		const spots = [...accessory.slots]
			.sort((a, b) => slotKeys(a)[0] - slotKeys(b)[0] || slotKeys(a)[1] - slotKeys(b)[1])
			.map((slot) => spotOf(scene, accessory, slot, alone));
		return { index, accessory, spots, rows: alone, pairs };
	});
	return { scene, given, unknowns: shareLines(unknowns, { scene, given }) };
}
