import type { Entity, Spot } from './entity.ts';
import { keep, leaderOf, placeAnyhow, pointsOn, type Ground, type Sought } from './labels.ts';
import { circle } from './path.ts';
import type { SetOut } from './setting-out.ts';
import type { Thing } from './thing.ts';
import { PT, write } from './type.ts';

/** Radius of the disc with a letter on the wall. */
const TAG = 3.3;
/** Radius of the disc with a letter in a table. Units: mm. */
export const TABLE_TAG = 2.6;

/**
 * A disc with the letter of a mark; an open mark has a dashed ring, one for later a thin one.
 * Units and frame: mm of the sheet.
 */
export function tag(
	id: string,
	mark: Pick<SetOut, 'letter' | 'open' | 'later' | 'id'>,
	at: Spot,
	radius: number
): Entity[] {
	const size = (radius * 1.3) / PT;
	const [layer, tone] = mark.later
		? (['tag-later', 'grey'] as const)
		: mark.open
			? (['tag-open', 'ink'] as const)
			: (['tag', 'paper'] as const);
	const base: Spot = [at[0], at[1] + 0.33 * size * PT];
	return [
		{ ...circle(`${id}/disc`, layer, at, radius), about: mark.id },
		{
			...write(`${id}/letter`, mark.letter, base, {
				size,
				weight: mark.later ? 'regular' : 'semibold',
				tone,
				anchor: 'middle'
			}),
			about: mark.id
		}
	];
}

/** Between a tag and what it keeps clear of. Units: mm. */
const CLEAR = 0.3;

/** A tag for every thing: on a bar or a seat when it is free of other things, else beside it, else at the end of a leader. */
export function wallTags(things: readonly Thing[], ground: Ground): readonly Entity[] {
	const size = { width: 2 * (TAG + CLEAR), height: 2 * (TAG + CLEAR) };
	return things.flatMap((thing) => {
		const { covers, set } = thing;
		const carrier = carriesTag(thing) ? covers[0] : undefined;
		const around = { ...ground, things: ground.things.filter((box) => box !== carrier) };
		const sought: Sought = { ...size, wishes: wishes(thing), ends: covers.flatMap(pointsOn) };
		const placed = placeAnyhow(sought, around);
		keep(placed, size, ground);
		const id = `${set.id}/tag`;
		return [...leaderOf(id, placed, size), ...tag(id, set, placed.spot, TAG)];
	});
}

/** A bar carries its tag on the tube, a seat and a folded rail inside; smaller things have it beside them. */
function carriesTag({ set }: Thing): boolean {
	const { kind, diameter, stands } = set.mark.variant;
	return diameter > 0 || kind === 'fold-down-rail' || (kind === 'seat' && stands !== 'rims');
}

function wishes(thing: Thing): readonly Spot[] {
	const [first] = thing.covers;
	if (!first) return [];
	const [cx, cy] = [(first.x0 + first.x1) / 2, (first.y0 + first.y1) / 2];
	const [w, h] = [(first.x1 - first.x0) / 2, (first.y1 - first.y0) / 2];
	if (carriesTag(thing)) {
		return [0.5, 0.4, 0.6, 0.3, 0.7].map((k): Spot =>
			w > h ? [first.x0 + 2 * w * k, cy] : [cx, first.y0 + 2 * h * k]
		);
	}
	const off = TAG + 1.5;
	const sides: Spot[] = [
		[cx + w + off, cy],
		[cx - w - off, cy],
		[cx, cy - h - off],
		[cx, cy + h + off]
	];
	const corners: Spot[] = [
		[cx + w + off, cy - h],
		[cx - w - off, cy - h],
		[cx + w + off, cy + h],
		[cx - w - off, cy + h]
	];
	return [...sides, ...corners];
}
