import type { Kind, Mark, Purpose, Variant } from '#core/case/accessory.ts';
import { formatFigure } from '#core/units/format.ts';
import { inches, mm, type LengthUnit } from '#core/units/length.ts';

/** The finest step a figure on paper shows. */
const STEP = { mm: mm(1), in: inches(1 / 16) } as const;

/** A length as it stands on paper, in whole mm or to 1/16 in. Units: mm in. */
export const figure = (length: number, unit: LengthUnit): string =>
	formatFigure(mm(length), { unit, step: STEP[unit] }).replace('-', '\u2212');

/** The unit of the figures, and the one that stands in brackets beside it where both are asked for. */
export interface Units {
	readonly unit: LengthUnit;
	readonly other?: LengthUnit | undefined;
}

/** Something told in figures, in both units where both are asked for. */
export const inBoth = ({ unit, other }: Units, told: (unit: LengthUnit) => string): string =>
	other === undefined ? told(unit) : `${told(unit)} (${told(other)})`;

/** A level from the datum line, with its sign. Units: mm in. */
export function signed(level: number, unit: LengthUnit): string {
	const plain = figure(level, unit);
	return level > 0 && plain !== '0' ? `+${plain}` : plain.replace('\u22120', '0');
}

/** Where the datum line is, in the words that stand on it. Units: mm above the bathroom floor at the entry, F. */
export function datumWords(height: number, unit: LengthUnit): string {
	const level = figure(height, unit);
	return level === '0' ? 'Datum line: the floor F' : `Datum line, ${level} above floor F`;
}

const NAMES: Readonly<Record<Kind, string>> = {
	seat: 'Folding seat',
	control: 'Control',
	'handset-rest': 'Rest for hand shower',
	'horizontal-bar': 'Horizontal bar',
	'vertical-bar': 'Vertical bar',
	outlet: 'Outlet of the hose',
	'fold-down-rail': 'Fold-down rail',
	'call-cord': 'Call cord'
};

/** What is called by what it is for. */
const BY_PURPOSE: Partial<Readonly<Record<Purpose, string>>> = {
	'set-temperature': 'Temperature control',
	divert: 'Diverter',
	'hang-handset': 'High holder for hand shower',
	'fix-handset': 'Head-height holder for hand shower'
};

const STANDING: Partial<Readonly<Record<NonNullable<Variant['stands']>, string>>> = {
	legs: 'Shower seat on legs',
	rims: 'Board across the bath',
	'floor-and-ceiling': 'Post'
};

/** A part's name on paper, with its trade size and the point that is set out. */
export function partName({ variant, accessory }: Pick<Mark, 'variant' | 'accessory'>, unit: LengthUnit): string {
	const { kind, stands, upright, arm, frontLegs, backRest } = variant;
	const plain = upright
		? 'L bar'
		: arm
			? 'Folding L seat'
			: frontLegs !== undefined
				? `Folding seat ${backRest === undefined ? 'with front legs' : 'before a back rest'}`
				: ((stands && STANDING[stands]) ?? BY_PURPOSE[accessory.purpose] ?? NAMES[kind]);
	return `${plain}${sizeOf(variant, unit)}`;
}

function sizeOf({ kind, stands, upright, arm, outline, length }: Variant, unit: LengthUnit): string {
	const size = figure(length, unit);
	if (upright) return ` ${size} by ${figure(upright.length, unit)} c/c, upright on the ${upright.at}`;
	if (stands === 'floor-and-ceiling') return ', floor to ceiling';
	if (stands === 'rims') return ', middle of top';
	if (arm)
		return ` ${size} wide, arm ${figure(arm.to, unit)} out on the ${arm.x0 === outline.x0 ? 'left' : 'right'}, middle of top`;
	if (kind === 'seat') return ` ${size} wide, middle of top`;
	if (kind === 'control') return ', middle of plate';
	if (kind === 'call-cord') return ', upper bangle';
	if (kind === 'fold-down-rail') return ` ${size} long, hinge`;
	return length > 0 ? ` ${size} c/c` : '';
}
