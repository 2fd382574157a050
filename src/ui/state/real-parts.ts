import { VARIANTS, type Mark } from '#core/case/accessory.ts';
import { isReadable } from '#core/case/read-off.ts';

/** Whether the real part of a mark can be read off: a bar of one leg with a flange at each end. */
export const isReadOff = ({ variant: { kind, stands, upright } }: Pick<Mark, 'variant'>): boolean =>
	isReadable(kind) && stands === undefined && upright === undefined;

/** What the record says a mark is of where it holds the place: of a real part the sold one that is nearest to it in size. */
export function heldAs({ variant }: Pick<Mark, 'variant'>): string {
	if (!isReadOff({ variant }) || VARIANTS.some(({ id }) => id === variant.id)) return variant.id;
	const off = ({ length }: (typeof VARIANTS)[number]): number => Math.abs(length - variant.length);
	const [nearest] = VARIANTS.filter(
		(sold) => sold.kind === variant.kind && !sold.special && isReadOff({ variant: sold })
	).toSorted((a, b) => off(a) - off(b));
	return nearest?.id ?? variant.id;
}
