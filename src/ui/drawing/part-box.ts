import type { Mark } from '#core/case/accessory.ts';
import type { Box } from '#core/drawing/entity.ts';
import { BACK_REST } from '#core/drawing/seat-plan.ts';
import type { ScreenView } from './screen-view.ts';

/** How far a picture goes beyond the part's outline, from its place. Units: px. */
const BEYOND: Partial<Readonly<Record<Mark['variant']['kind'], Box>>> = {
	'handset-rest': { x0: -10, y0: -44, x1: 10, y1: 6 },
	outlet: { x0: -12, y0: -12, x1: 18, y1: 40 },
	control: { x0: -6, y0: -6, x1: 6, y1: 6 }
};
const HOLDER: Box = { x0: -6, y0: -36, x1: 34, y1: 8 };
/** The least half of a bar's flange or tube, px. */
const LEAST = 11;

/** What a part covers on its wall as it is drawn. Units: px. */
export function partBox({ accessory, place, variant }: Mark, view: ScreenView): Box {
	const { x0, y0, x1, y1 } = variant.outline;
	const [x, y] = view.at(place.x, place.y);
	const beyond =
		variant.kind === 'handset-rest' && accessory.purpose !== 'rest-handset' ? HOLDER : BEYOND[variant.kind];
	const least = variant.diameter > 0 ? LEAST : 0;
	const top = variant.backRest === undefined ? y1 : BACK_REST.high;
	const [left, high] = view.at(place.x + x0, place.y + top);
	const [right, low] = view.at(place.x + x1, place.y + y0);
	return {
		x0: Math.min(left, x + (beyond?.x0 ?? -least)),
		y0: Math.max(Math.min(high, y + (beyond?.y0 ?? -least)), view.top - 14),
		x1: Math.max(right, x + (beyond?.x1 ?? least)),
		y1: Math.max(low, y + (beyond?.y1 ?? least))
	};
}

/** The same in the pieces it is made of: an L bar leaves what lies between its legs free. Units: px. */
export function partBoxes(mark: Mark, view: ScreenView): readonly Box[] {
	const whole = partBox(mark, view);
	const { upright, outline } = mark.variant;
	if (!upright) return [whole];
	const wide = Math.max(2 * LEAST, 2 * outline.y0 * -view.scale);
	const leg = upright.at === 'left' ? { x0: whole.x0, x1: whole.x0 + wide } : { x0: whole.x1 - wide, x1: whole.x1 };
	return [
		{ ...whole, y0: whole.y1 - wide },
		{ ...whole, ...leg }
	];
}
