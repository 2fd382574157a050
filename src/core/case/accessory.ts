import type { WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { inches, mm, type LengthUnit, type Mm } from '#core/units/length.ts';

/** Kinds of accessory this version places, in the order they are solved and listed. */
export const KINDS = ['seat', 'control', 'handset-rest', 'horizontal-bar', 'vertical-bar'] as const;

/** A kind of accessory. */
export type Kind = (typeof KINDS)[number];

/** A wall by what it does: behind the seat, opposite it, or opposite the entry. */
type WallRole = 'seat-wall' | 'control-wall' | 'back';

/** Ids a plan gives its accessories, with their kinds and the walls they are meant for. */
export const PLACEABLE: Readonly<Record<string, { readonly kind: Kind; readonly walls: readonly WallRole[] }>> = {
	seat: { kind: 'seat', walls: ['seat-wall'] },
	control: { kind: 'control', walls: ['control-wall', 'back'] },
	'handset-rest': { kind: 'handset-rest', walls: ['control-wall', 'back'] },
	'bar-control': { kind: 'horizontal-bar', walls: ['control-wall'] },
	'bar-back': { kind: 'horizontal-bar', walls: ['back'] },
	'entry-bar': { kind: 'vertical-bar', walls: ['control-wall'] }
};

/** What an accessory is for, in the trade's words. */
export type Purpose = 'sit' | 'run-water' | 'rest-handset' | 'steady' | 'rise' | 'step-in';

/** How a bracket meets the wall: a three-hole flange, the plate of a seat, two light screws, or nothing to carry. */
export type Bracket = 'flange' | 'seat-plate' | 'rest' | 'none';

/**
 * One generic part that can be fitted, until the real one is read off.
 * Units and frame: mm; everything relative to the accessory's place, x right along the wall, y up.
 */
export interface Variant {
	readonly id: string;
	readonly kind: Kind;
	readonly name: string;
	/** The tape its size is sold by; none for what has one size everywhere. */
	readonly tape?: LengthUnit;
	/** Its outline on the wall, brackets included. */
	readonly outline: Rect;
	/** Centres of its brackets. */
	readonly brackets: readonly { readonly x: Mm; readonly y: Mm; readonly kind: Bracket; readonly radius: Mm }[];
	/** Where a hand works or holds: the whole operable envelope. */
	readonly grip: Rect;
	/** How far the hand stands off the wall. */
	readonly gripOff: Mm;
	/** Centre to centre for bars, extent along the wall for a seat; 0 otherwise. */
	readonly length: Mm;
	/** Tube diameter of a bar; 0 otherwise. */
	readonly diameter: Mm;
	/** Clear space between wall and tube of a bar; rear edge from the wall of a seat. */
	readonly gap: Mm;
	/** How far it stands out from the wall. */
	readonly depth: Mm;
}

/** Where an accessory is: a part at a point of a wall. Units and frame: mm, wall frame, y from the datum line. */
export interface Place {
	readonly wall: WallId;
	readonly variant: string;
	readonly x: Mm;
	readonly y: Mm;
	readonly turn: 0;
}

/** How far a place has come from being computed to being on the wall. */
type Stage = 'proposed' | 'pinned' | 'tried' | 'adopted' | 'marked' | 'built';

const TUBE = mm(32);
const CLEAR = mm(38);
const FLANGE = mm(40);

const square = (half: number): Rect => ({ x0: -half, y0: -half, x1: half, y1: half });

/** A size as the trade sells it. */
interface Size {
	readonly id: string;
	readonly words: string;
	readonly length: Mm;
	readonly tape: LengthUnit;
}

const metric = (n: number): Size => ({ id: String(n), words: String(n), length: mm(n), tape: 'mm' });
const imperial = (n: number): Size => ({
	id: `${String(n)}in`,
	words: `${String(n)} in`,
	length: inches(n),
	tape: 'in'
});

function seat({ id, words, length, tape }: Size): Variant {
	const half = length / 2;
	return {
		id: `seat-${id}`,
		kind: 'seat',
		name: `folding seat ${words} wide`,
		tape,
		outline: { x0: -half, y0: -140, x1: half, y1: 0 },
		brackets: [-1, 1].map((side) => ({ x: mm(side * (half - 60)), y: mm(-70), kind: 'seat-plate', radius: mm(50) })),
		grip: { x0: -half, y0: 0, x1: half, y1: 0 },
		gripOff: mm(395),
		length,
		diameter: mm(0),
		gap: mm(20),
		depth: mm(395)
	};
}

const BAR = { gripOff: mm(CLEAR + TUBE / 2), diameter: TUBE, gap: CLEAR, depth: mm(CLEAR + TUBE) } as const;

const flange = (x: Mm, y: Mm): Variant['brackets'][number] => ({ x, y, kind: 'flange', radius: FLANGE });

function horizontalBar({ id, words, length, tape }: Size): Variant {
	return {
		...BAR,
		id: `bar-${id}`,
		kind: 'horizontal-bar',
		name: `horizontal bar ${words} c/c`,
		tape,
		outline: { x0: -FLANGE, y0: -FLANGE, x1: length + FLANGE, y1: FLANGE },
		brackets: [flange(mm(0), mm(0)), flange(length, mm(0))],
		grip: { x0: 0, y0: 0, x1: length, y1: 0 },
		length
	};
}

function verticalBar({ id, words, length, tape }: Size): Variant {
	return {
		...BAR,
		id: `post-bar-${id}`,
		kind: 'vertical-bar',
		name: `vertical bar ${words} c/c`,
		tape,
		outline: { x0: -FLANGE, y0: -FLANGE, x1: FLANGE, y1: length + FLANGE },
		brackets: [flange(mm(0), mm(0)), flange(mm(0), length)],
		grip: { x0: 0, y0: 0, x1: 0, y1: length },
		length
	};
}

const CONTROL: Variant = {
	id: 'control-lever',
	kind: 'control',
	name: 'single-lever control',
	outline: square(85),
	brackets: [],
	grip: square(75),
	gripOff: mm(120),
	length: mm(0),
	diameter: mm(0),
	gap: mm(0),
	depth: mm(120)
};

const REST: Variant = {
	id: 'rest',
	kind: 'handset-rest',
	name: 'rest for the hand shower',
	outline: { x0: -30, y0: -45, x1: 30, y1: 45 },
	brackets: [{ x: mm(0), y: mm(0), kind: 'rest', radius: mm(20) }],
	grip: square(0),
	gripOff: mm(70),
	length: mm(0),
	diameter: mm(0),
	gap: mm(0),
	depth: mm(70)
};

/**
 * Every generic part, by kind, mm sizes before inch sizes, smallest first.
 * Source: ranges of trade sizes are common practice, no source; control projection from the range 50-100 of a handle
 * on a 20 mm plate, ours.
 */
export const VARIANTS: readonly Variant[] = [
	...[...[450, 600, 700, 800, 820].map(metric), ...[18, 24, 28, 32].map(imperial)].map(seat),
	CONTROL,
	REST,
	...[
		...[300, 400, 450, 500, 600, 700, 750, 900, 1060, 1220].map(metric),
		...[12, 16, 18, 24, 30, 32, 36, 42, 48].map(imperial)
	].map(horizontalBar),
	...[...[450, 600, 750].map(metric), ...[18, 24, 30].map(imperial)].map(verticalBar)
];

/**
 * The part with an id.
 * Fails: RangeError when there is none.
 */
export function variantOf(id: string): Variant {
	const found = VARIANTS.find((v) => v.id === id);
	if (!found) throw new RangeError(`no part is called ${id}`);
	return found;
}

/** One thing wanted: what, for whom, with which hand, where it may go, and the row that asks for it. */
export interface Accessory {
	readonly id: string;
	readonly kind: Kind;
	readonly purpose: Purpose;
	readonly for: string;
	/** The hands that may use it; the best of them counts. */
	readonly hands: readonly ('left' | 'right')[];
	/** Wall and part pairs it may take. */
	readonly slots: readonly Slot[];
	/** Accessories that share this one's height: one unknown for all bars on a line. */
	readonly line?: string;
	/** The row that asks for it. */
	readonly because: string;
	/** The same in plain words. */
	readonly reason: string;
}

/** A wall and a part. */
export interface Slot {
	readonly wall: WallId;
	readonly variant: string;
}

/** An accessory at a place. */
export interface Mark {
	readonly accessory: Accessory;
	readonly place: Place;
	readonly variant: Variant;
	readonly stage: Stage;
}
