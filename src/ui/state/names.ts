import type { Accessory, Mark, Purpose } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';

const NAMES: Readonly<Record<string, string>> = {
	seat: 'Seat',
	control: 'Control',
	temperature: 'Temperature control',
	diverter: 'Diverter',
	outlet: 'Outlet of the hose',
	'handset-rest': 'Handset rest',
	'handset-high': 'Head-height holder',
	'handset-holder': 'Holder of the hand shower',
	'entry-bar': 'Entry bar',
	'exit-bar': 'Exit bar',
	'rail-one': 'Fold-down rail',
	'rail-other': 'Other fold-down rail',
	'rail-ahead': 'Fold-down rail ahead',
	'call-cord': 'Call cord'
};

/** Bars along a wall look alike: they are called by what they are for. */
const BARS: Partial<Readonly<Record<Purpose, string>>> = {
	rise: 'Bar to rise by',
	steady: 'Bar to steady on',
	'sit-steady': 'Bar to sit steady by'
};

/** What a thing wanted is called on the screen, wherever it is. */
export function nameOf({ id, purpose }: Pick<Accessory, 'id' | 'purpose'>): string {
	return NAMES[id] ?? BARS[purpose] ?? 'Bar';
}

/** What a mark is called where several walls are spoken of: a bar also by the wall it is on. */
export function markName({ accessory, place }: Pick<Mark, 'accessory' | 'place'>): string {
	const name = nameOf(accessory);
	return accessory.kind === 'horizontal-bar' ? `${name}, ${place.wall} wall` : name;
}

/** What something is called of which only the record is at hand. */
export function recordedName(id: string, wall: WallId): string {
	return NAMES[id] ?? `The bar on the ${wall} wall`;
}
