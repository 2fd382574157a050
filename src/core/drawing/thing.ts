import { LOWER_BANGLE, type Kind, type Variant } from '#core/case/accessory.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { bar, lBar, post } from './bar-parts.ts';
import type { Box, Entity } from './entity.ts';
import { figure } from './figure.ts';
import type { Layer } from './layers.ts';
import type { Drawn, Ground } from './part.ts';
import { board, onLegs, seat } from './seat-parts.ts';
import type { SetOut } from './setting-out.ts';
import { callCord, control, holder, outlet, rail, rest } from './small-parts.ts';
import type { Wording } from './labels.ts';

/** An accessory drawn on its wall, with the areas it covers and its words. Units and frame: mm of the sheet. */
export interface Thing {
	readonly set: SetOut;
	readonly entities: readonly Entity[];
	/** The first is the one that may carry the tag. */
	readonly covers: readonly Box[];
	readonly words: readonly Wording[];
}

const PARTS: Readonly<Record<Kind, (set: SetOut, on: Ground) => Drawn>> = {
	'horizontal-bar': (set, on) => (set.mark.variant.upright ? lBar(set, on) : bar(set, on)),
	'vertical-bar': (set, on) => (set.mark.variant.stands ? post(set, on) : bar(set, on)),
	'fold-down-rail': rail,
	seat: (set, on) => ({ legs: onLegs, rims: board, wall: seat })[heldBy(set.mark.variant)](set, on),
	control,
	outlet,
	'call-cord': callCord,
	'handset-rest': (set, on) => (set.mark.accessory.purpose === 'rest-handset' ? rest : holder)(set, on)
};

const heldBy = ({ stands }: Variant): 'legs' | 'rims' | 'wall' =>
	stands === 'legs' || stands === 'rims' ? stands : 'wall';

/** Layers of what is wanted only later. */
const LATER: Partial<Readonly<Record<Layer, Layer>>> = {
	thing: 'thing-later',
	'thing-open': 'thing-later',
	folded: 'thing-later',
	detail: 'detail-later',
	centre: 'detail-later',
	axis: 'detail-later'
};

/**
 * Draws the part of a mark to scale with the centres of its brackets. A part that is open is dashed; one that is wanted
 * only later is grey, dashed long, and lets what is behind it be seen.
 */
export function thingOf(set: SetOut, on: Ground, unit: LengthUnit): Thing {
	const { entities, covers } = PARTS[set.mark.variant.kind](set, on);
	return {
		set,
		covers,
		words: wordsOf(set, covers, unit),
		entities: entities.map((e) => ({
			...e,
			about: set.id,
			...(set.later && e.kind === 'path' && { layer: LATER[e.layer] ?? e.layer })
		}))
	};
}

function wordsOf({ id, mark, later }: SetOut, covers: readonly Box[], unit: LengthUnit): readonly Wording[] {
	const { kind, stands, length, backRest } = mark.variant;
	const texts = [
		...(later ? ['later'] : []),
		...(kind === 'fold-down-rail' ? [`folded up; down ${figure(length, unit)} out`] : []),
		...(backRest === undefined ? [] : [`back rest ${figure(backRest, unit)} out`]),
		...(stands === 'floor-and-ceiling' ? ['on to the ceiling'] : []),
		...(kind === 'call-cord' ? [`lower bangle ${figure(LOWER_BANGLE, unit)} above the floor`] : [])
	];
	// The lower bangle of a cord, and the back rest of a seat, is the second area it covers.
	const on = covers[kind === 'call-cord' || backRest !== undefined ? 1 : 0];
	return on && texts.length > 0 ? [{ id: `${id}/word`, text: texts.join(', '), on }] : [];
}
