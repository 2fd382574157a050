import type { Enclosure } from '#core/case/record.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { figure } from './figure.ts';
import { asTold, isSeen } from './seen.ts';

type Point = readonly [x: number, y: number];
type Span = readonly [x0: number, x1: number];

/** What closes the entry, from above. Units and frame: mm, plan frame; spans along the width, on the entry line. */
export type EntryClosing = { readonly seen: boolean } & (
	| { readonly kind: 'curtain' | 'screen' | 'not hung'; readonly span: Span }
	| { readonly kind: 'slides'; readonly leaves: readonly [Span, Span] }
	| { readonly kind: 'hung'; readonly leaf: Leaf }
);

/** The leaf of a door, drawn a little open: its hinge, its free end there and where that goes, from closed to furthest. */
interface Leaf {
	readonly hinge: Point;
	readonly tip: Point;
	readonly closed: Point;
	readonly furthest: Point;
	readonly radius: number;
	/** The free end goes round with the clock, as seen from above. */
	readonly clockwise: boolean;
}

/** How far open a leaf is drawn. Units: radians. Ours. */
const AJAR = Math.PI / 6;
/** How much of the entry two sliding leaves cover twice. Ours. */
const LAP = 0.06;

/** What closes the entry of a room; nothing where that is not known or nothing does. */
export function entryClosing(
	{ closing, entryWidth }: Pick<Enclosure, 'closing' | 'entryWidth'>,
	{ opening, entryLine }: Room
): EntryClosing | undefined {
	const { x0, x1 } = opening;
	if (!closing || closing.kind === 'open' || x1 <= x0) return undefined;
	const seen = isSeen(closing.how);
	const span: Span = [x0, x1];
	switch (closing.kind) {
		case 'curtain':
			return { kind: 'curtain', seen, span };
		case 'screen':
			// On which side it leaves its gap is not known.
			return { kind: 'screen', seen: seen && freeBeside(entryWidth, span) === undefined, span };
		case 'slides': {
			const [middle, lap] = [(x0 + x1) / 2, LAP * (x1 - x0)];
			const leaves = [
				[x0, middle + lap],
				[middle - lap, x1]
			] as const;
			return { kind: 'slides', seen, leaves };
		}
		case 'door-in':
		case 'door-out': {
			if (!closing.hinge) return { kind: 'not hung', seen, span };
			const radius = Math.min(entryWidth?.value ?? x1 - x0, x1 - x0);
			const inward = closing.kind === 'door-in';
			return {
				kind: 'hung',
				seen,
				leaf: leafOf({ span, radius, inward, atLeft: closing.hinge === 'left' }, entryLine)
			};
		}
	}
}

/** What a fixed screen leaves of the entry. Units: mm. Shape: undefined where none of it is known to stay free. */
const freeBeside = (entryWidth: Enclosure['entryWidth'], [x0, x1]: Span): number | undefined =>
	entryWidth && entryWidth.value < x1 - x0 ? entryWidth.value : undefined;

/** Inward the leaf is drawn with all it sweeps, outward only as far as it is ajar. */
function leafOf(
	on: { readonly span: Span; readonly radius: number; readonly inward: boolean; readonly atLeft: boolean },
	entryLine: number
): Leaf {
	const { span, radius, inward, atLeft } = on;
	const hinge: Point = [atLeft ? span[0] : span[1], entryLine];
	const at = (angle: number): Point => [
		hinge[0] + (atLeft ? 1 : -1) * radius * Math.cos(angle),
		entryLine + (inward ? -1 : 1) * radius * Math.sin(angle)
	];
	const most = inward ? Math.asin(Math.min(1, entryLine / radius)) : AJAR;
	return {
		hinge,
		radius,
		closed: at(0),
		tip: at(Math.min(AJAR, most)),
		furthest: at(most),
		clockwise: atLeft !== inward
	};
}

const CLOSES = {
	curtain: 'A curtain closes the entry',
	slides: 'A sliding door closes the entry',
	screen: 'A fixed screen stands in the entry',
	'door-in': 'The door of the entry opens inward',
	'door-out': 'The door of the entry opens outward'
} as const;

/** What closes the entry in a sentence; empty where that is not known or nothing does. */
export function closingSays(e: Enclosure, { opening }: Room, unit: LengthUnit): string {
	const { closing, entryWidth } = e;
	if (!closing || closing.kind === 'open') return '';
	const says = CLOSES[closing.kind];
	const told = asTold(closing.how);
	if (closing.kind === 'screen') {
		const free = freeBeside(entryWidth, [opening.x0, opening.x1]);
		const gap = free === undefined ? '' : `; ${figure(free, unit)} ${unit} stay free, on which side is not known`;
		return `${says}${told}${gap}.`;
	}
	if (closing.kind !== 'door-in' && closing.kind !== 'door-out') return `${says}${told}.`;
	return closing.hinge
		? `${says}, hung on the ${closing.hinge} as one looks in${told}.`
		: `${says}${told}; on which side it is hung is not known, so it is drawn closed.`;
}
