import type { How } from '#core/case/fact.ts';
import type { Wall } from '#core/case/record.ts';
import { grown } from '#core/geometry/rect.ts';
import type { Rect } from '#core/geometry/vec.ts';

type Recorded = Wall['keepOuts'][string];
type Existing = Wall['existing'][string];

/** Part of a wall that something must stay out of. Units and frame: mm, wall frame. */
export interface KeepOut {
	readonly id: string;
	readonly kind: Recorded['kind'] | 'stays' | 'goes';
	/** What is there already, in the trade's words, where it is that. */
	readonly what?: string;
	/** As recorded, widened by its uncertainty and by the clearance its kind needs. */
	readonly rect: Rect;
	readonly how: How;
	/** What it matters for: the holes of a bracket, or bodies on the wall as well. */
	readonly stops: 'holes' | 'holes and bodies';
}

// Strip round water that nobody has located: a judgement of ours. One found by looking or measuring needs no more than
// its uncertainty, because a bracket's screws lie inside its disc.
const WATER_NOT_LOCATED = 75;
// Each side of a cable's path: a judgement of ours, BS 7671 522.6.202 gives no width.
const CABLE = 25;
// Five diameters of a #14 screw between an old hole and a new one: a judgement of ours.
const OLD_HOLE = 31;

/** The keep-outs of a wall, each as wide as it must be taken. Units and frame: mm, wall frame. */
export function keepOutsOf(wall: Wall): readonly KeepOut[] {
	const behind = Object.entries(wall.keepOuts).map(([id, k]): KeepOut => ({
		id,
		kind: k.kind,
		rect: grown(k, (k.uncertain ?? 0) + clearance(k)),
		how: k.how,
		stops: k.kind === 'niche' || k.kind === 'electric-point' ? 'holes and bodies' : 'holes'
	}));
	return [...behind, ...Object.entries(wall.existing).map(([id, e]) => standing(`existing/${id}`, e))];
}

/**
 * Where cables may run: straight up, down and along from every electric point, as wide as the point and 25 mm each side.
 * Units and frame: mm, wall frame. Source: BS 7671 522.6.202, which gives no width; old work keeps to no such rule.
 */
export function cableStrips(
	{ keepOuts }: Wall,
	{
		from,
		to,
		bottom,
		top
	}: { readonly from: number; readonly to: number; readonly bottom: number; readonly top: number }
): readonly Rect[] {
	return Object.values(keepOuts).flatMap((k) => {
		if (k.kind !== 'electric-point') return [];
		const { x0, x1, y0, y1 } = grown(k, CABLE);
		return [
			{ x0, x1, y0: bottom, y1: top },
			{ x0: from, x1: to, y0, y1 }
		];
	});
}

/** What is on a wall already, in the trade's words. */
export const EXISTING: Readonly<Record<Existing['what'], string>> = {
	'grab-bar': 'grab bar',
	seat: 'seat',
	shelf: 'shelf',
	'towel-rail': 'towel rail',
	screen: 'screen',
	other: 'thing'
};

/** What stays is in the way of everything, what is taken away leaves its old holes somewhere in its outline. */
function standing(id: string, { what, fate, how, ...rect }: Existing): KeepOut {
	return fate === 'keep'
		? { id, kind: 'stays', what: EXISTING[what], rect, how, stops: 'holes and bodies' }
		: { id, kind: 'goes', what: EXISTING[what], rect: grown(rect, OLD_HOLE), how, stops: 'holes' };
}

function clearance({ kind, how }: Recorded): number {
	switch (kind) {
		case 'pipe':
		case 'valve-body':
			return how === 'measured' || how === 'observed' ? 0 : WATER_NOT_LOCATED;
		case 'cable':
			return CABLE;
		case 'old-hole':
			return OLD_HOLE;
		case 'rod':
		case 'seam':
		case 'niche':
		case 'electric-point':
			return 0;
	}
}
