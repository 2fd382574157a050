import type { Kind, Variant } from '#core/case/accessory.ts';
import { formatFigure } from '#core/units/format.ts';
import { inches, mm, type LengthUnit } from '#core/units/length.ts';

/** The finest step a figure on paper shows. */
const STEP = { mm: mm(1), in: inches(1 / 16) } as const;

/** A length as it stands on paper, in whole mm or to 1/16 in. Units: mm in. */
export const figure = (length: number, unit: LengthUnit): string =>
	formatFigure(mm(length), { unit, step: STEP[unit] }).replace('-', '\u2212');

/** A level from the datum line, with its sign. Units: mm in. */
export function signed(level: number, unit: LengthUnit): string {
	const plain = figure(level, unit);
	return level > 0 && plain !== '0' ? `+${plain}` : plain.replace('\u22120', '0');
}

const NAMES: Readonly<Record<Kind, string>> = {
	seat: 'Folding seat',
	control: 'Control, middle of plate',
	'handset-rest': 'Rest for hand shower',
	'horizontal-bar': 'Horizontal bar',
	'vertical-bar': 'Vertical bar',
	outlet: 'Outlet of the hose',
	'fold-down-rail': 'Fold-down rail'
};

/** A part's name on paper, with its trade size. */
export function partName({ kind, length }: Variant, unit: LengthUnit): string {
	if (kind === 'seat') return `${NAMES.seat} ${figure(length, unit)} wide, middle of top`;
	return length > 0 ? `${NAMES[kind]} ${figure(length, unit)} c/c` : NAMES[kind];
}
