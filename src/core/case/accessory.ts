import type { WallRole } from './roles.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { readOffVariant } from './read-off.ts';
import { inches, mm, type LengthUnit, type Mm } from '#core/units/length.ts';

/** Kinds of accessory this version places, in the order they are solved and listed. */
export const KINDS = [
	'seat',
	'control',
	'outlet',
	'handset-rest',
	'horizontal-bar',
	'vertical-bar',
	'fold-down-rail',
	'call-cord'
] as const;

/** A kind of accessory. */
export type Kind = (typeof KINDS)[number];

/** Ids a plan gives its accessories, with their kinds and the walls they are meant for. */
export const PLACEABLE: Readonly<Record<string, { readonly kind: Kind; readonly walls: readonly WallRole[] }>> = {
	seat: { kind: 'seat', walls: ['seat-wall', 'beside'] },
	control: { kind: 'control', walls: ['control-wall', 'beside'] },
	temperature: { kind: 'control', walls: ['control-wall', 'beside'] },
	diverter: { kind: 'control', walls: ['control-wall', 'beside'] },
	outlet: { kind: 'outlet', walls: ['control-wall', 'beside'] },
	'handset-rest': { kind: 'handset-rest', walls: ['control-wall', 'beside'] },
	'handset-high': { kind: 'handset-rest', walls: ['control-wall', 'beside'] },
	'handset-holder': { kind: 'handset-rest', walls: ['control-wall', 'beside'] },
	'bar-control': { kind: 'horizontal-bar', walls: ['control-wall', 'beside'] },
	'bar-back': { kind: 'horizontal-bar', walls: ['beside'] },
	'bar-seat-wall': { kind: 'horizontal-bar', walls: ['seat-wall'] },
	'entry-bar': { kind: 'vertical-bar', walls: ['entry-side'] },
	'exit-bar': { kind: 'vertical-bar', walls: ['entry-side'] },
	'rail-one': { kind: 'fold-down-rail', walls: ['seat-wall'] },
	'rail-other': { kind: 'fold-down-rail', walls: ['seat-wall'] },
	'rail-ahead': { kind: 'fold-down-rail', walls: ['corner-wall'] },
	'call-cord': { kind: 'call-cord', walls: ['seat-wall', 'control-wall', 'beside'] }
};

/** What an accessory is for, in the trade's words. */
export type Purpose =
	| 'sit'
	| 'run-water'
	| 'set-temperature'
	| 'divert'
	| 'feed-hose'
	| 'rest-handset'
	| 'hang-handset'
	| 'fix-handset'
	| 'steady'
	| 'rise'
	| 'push-up'
	| 'sit-steady'
	| 'hold-ahead'
	| 'step-in'
	| 'step-out'
	| 'call';

/** How a bracket meets the wall: a three-hole flange, the plate of a seat without or with front legs or of a rail, two light screws, or nothing to carry. */
export type Bracket = 'flange' | 'seat-plate' | 'leg-plate' | 'rail-plate' | 'rest' | 'none';

/** A round flange with equal screws. Units: mm; `circle` is the radius its screws stand on. */
export interface Flange {
	readonly radius: number;
	readonly circle: number;
	readonly holes: number;
	/** From the face of the wall to the axis of the bar. */
	readonly standOff: number;
	/** Diameter of its holes; generic ones have none yet. */
	readonly hole?: number;
}

/** Parts offered only where a row asks for them: a bar with an upright leg, one sold by its length over all, a seat before a back rest off its wall, a seat deeper than most. */
export type SpecialPart = 'l-bar' | 'bar-over-all' | 'seat-off-wall' | 'seat-deep';

/** One bracket of a part. Units and frame: mm, from the place of the part. */
export interface PartBracket {
	readonly x: Mm;
	readonly y: Mm;
	readonly kind: Bracket;
	readonly radius: Mm;
	/** The flange of a real part, once read off. */
	readonly flange?: Flange;
}

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
	readonly brackets: readonly PartBracket[];
	/** Where a hand works or holds: the whole operable envelope. */
	readonly grip: Rect;
	/** How far the hand stands off the wall. */
	readonly gripOff: Mm;
	/** How far out a grip ends that runs away from the wall; none for what is held along it. */
	readonly gripTo?: Mm;
	/** Centre to centre for bars, extent along the wall for a seat; 0 otherwise. */
	readonly length: Mm;
	/** Tube diameter of a bar; 0 otherwise. */
	readonly diameter: Mm;
	/** Clear space between wall and tube of a bar; rear edge from the wall of a seat. */
	readonly gap: Mm;
	/** How far it stands out from the wall. */
	readonly depth: Mm;
	/** What it stands on, or hangs from, instead of being held by the wall. */
	readonly stands?: 'legs' | 'rims' | 'floor-and-ceiling' | 'ceiling';
	/** How far out from the wall the back rest of a seat is that stands off it. */
	readonly backRest?: Mm;
	/** How far out from the wall the front legs of a seat stand that the wall holds behind. */
	readonly frontLegs?: Mm;
	/** It is offered only where a row asks for such a part. */
	readonly special?: SpecialPart;
	/** The upright leg of an L bar: which end it rises from, and how high. */
	readonly upright?: { readonly at: 'left' | 'right'; readonly length: Mm };
	/** The arm of an L seat, along the wall beside it: from where to where along its own wall, and how far out it ends. */
	readonly arm?: { readonly x0: Mm; readonly x1: Mm; readonly to: Mm };
	/** The same part for the other hand. */
	readonly mirror?: string;
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

/** A horizontal bar as long from end to end as its size says. */
function barOverAll(size: Size): Variant {
	const bar = horizontalBar({ ...size, length: mm(size.length - 2 * FLANGE) });
	return {
		...bar,
		id: `bar-over-all-${size.id}`,
		name: `horizontal bar ${size.words} over all`,
		special: 'bar-over-all'
	};
}

/** A horizontal bar with an upright leg at one end. */
function lBar(along: Size, up: Size, at: 'left' | 'right'): Variant {
	const bar = horizontalBar(along);
	const corner = at === 'left' ? mm(0) : along.length;
	const id = along === up ? along.id : `${along.id}-${up.id}`;
	return {
		...bar,
		id: `l-bar-${id}-${at}`,
		name: `L bar ${along.words} by ${up.words}, upright on the ${at}`,
		outline: { ...bar.outline, y1: up.length + FLANGE },
		brackets: [...bar.brackets, flange(corner, up.length)],
		special: 'l-bar',
		upright: { at, length: up.length },
		mirror: `l-bar-${id}-${at === 'left' ? 'right' : 'left'}`
	};
}

/** A rail that folds down beside a seat, away from the wall; folded up it stands along it. */
function rail({ id, words, length, tape }: Size): Variant {
	return {
		id: `rail-${id}`,
		kind: 'fold-down-rail',
		name: `fold-down rail ${words} long`,
		tape,
		outline: { x0: -60, y0: -160, x1: 60, y1: length },
		brackets: [{ x: mm(0), y: mm(-60), kind: 'rail-plate', radius: mm(90) }],
		grip: square(0),
		gripOff: mm(length - 300),
		gripTo: length,
		length,
		diameter: mm(0),
		gap: mm(0),
		depth: length
	};
}

/** A shower seat on its own legs: the wall holds nothing of it. */
function onLegs({ id, words, length, tape }: Size): Variant {
	const part = seat({ id, words, length, tape });
	return { ...part, id: `seat-legs-${id}`, name: `shower seat on legs ${words} wide`, brackets: [], stands: 'legs' };
}

/** Front legs stand no farther in from the front edge than this, so that who sits on it barely lifts the hinge. Source: ours. */
const LEGS_IN = 30;

/** A folding seat whose front legs carry with the wall; they fold down with it. */
function withFrontLegs(size: Size): Variant {
	const part = seat(size);
	return {
		...part,
		id: `seat-front-legs-${size.id}`,
		name: `${part.name} with front legs`,
		brackets: part.brackets.map((plate) => ({ ...plate, kind: 'leg-plate' })),
		frontLegs: mm(part.depth - LEGS_IN)
	};
}

/** How far out the front edge of a deep seat is, by the tape: 400 from its rear edge, or more. Source: Ontario Building Code 3.8.3.13.(2)(f)(i); the rest is ours. */
const DEEP = { mm: mm(430), in: inches(17) } as const;

/** A folding seat deeper than most. */
function deepSeat(size: Size): Variant {
	const to = DEEP[size.tape];
	const id = `seat-deep-${size.id}`;
	return {
		...seat(size),
		id,
		name: `deep folding seat ${size.words} wide`,
		special: 'seat-deep',
		gripOff: to,
		depth: to
	};
}

/** How far out a seat that stands off its back rest begins and ends, by the tape. Source: Approved Document M Volume 2, Diagram 23, for its front edge; the rest is ours. */
const OFF_WALL = { mm: { rest: mm(250), front: mm(650) }, in: { rest: inches(10), front: inches(25.5) } } as const;

/** A folding seat off the wall, before a back rest; front legs carry with the wall. */
function offWall(size: Size): Variant {
	const { rest, front } = OFF_WALL[size.tape];
	return {
		...withFrontLegs(size),
		id: `seat-off-wall-${size.id}`,
		name: `folding seat ${size.words} wide before a back rest`,
		gripOff: front,
		gap: rest,
		backRest: rest,
		special: 'seat-off-wall',
		depth: front,
		frontLegs: mm(front - LEGS_IN)
	};
}

/** How wide the arm of an L seat is, and how far out from the wall it ends, by the tape. Source: middle of ADA 2010, 610.3.2. */
const ARM = { mm: { wide: mm(345), to: mm(570) }, in: { wide: inches(13.5), to: inches(22.5) } } as const;

/** A folding seat with an arm along the wall beside it; a leg under the arm carries what the wall does not. */
function lSeat({ id, words, length, tape }: Size, at: 'left' | 'right'): Variant {
	const part = seat({ id, words, length, tape });
	const { wide, to } = ARM[tape];
	const { x0, x1 } = part.outline;
	return {
		...part,
		id: `l-seat-${id}-${at}`,
		name: `folding L seat ${words} wide, arm on the ${at}`,
		arm: at === 'left' ? { x0: mm(x0), x1: mm(x0 + wide), to } : { x0: mm(x1 - wide), x1: mm(x1), to },
		mirror: `l-seat-${id}-${at === 'left' ? 'right' : 'left'}`
	};
}

/** A board laid across the rims of a bath: set out along the bath by its middle, sat on facing along the bath. */
const BOARD: Variant = {
	id: 'bath-board',
	kind: 'seat',
	name: 'board across the bath',
	outline: { x0: -175, y0: -60, x1: 175, y1: 0 },
	brackets: [],
	grip: { x0: -175, y0: 0, x1: 175, y1: 0 },
	gripOff: mm(350),
	length: mm(700),
	diameter: mm(0),
	gap: mm(0),
	depth: mm(350),
	stands: 'rims'
};

/** A post from floor to ceiling, 100 in front of the wall, that the wall need not hold. */
const POST: Variant = {
	...BAR,
	id: 'post',
	kind: 'vertical-bar',
	name: 'post from floor to ceiling',
	outline: { x0: -50, y0: 0, x1: 50, y1: 1900 },
	brackets: [],
	grip: { x0: 0, y0: 300, x1: 0, y1: 1800 },
	gripOff: mm(116),
	length: mm(1800),
	gap: mm(100),
	depth: mm(140),
	stands: 'floor-and-ceiling'
};

const OUTLET: Variant = {
	id: 'hose-outlet',
	kind: 'outlet',
	name: 'outlet of the hose',
	outline: square(35),
	brackets: [],
	grip: square(0),
	gripOff: mm(60),
	length: mm(0),
	diameter: mm(0),
	gap: mm(0),
	depth: mm(60)
};

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

/** The lower bangle of a call cord above the floor, for who has fallen. Units: mm. Source: Approved Document M Volume 2, 4.30(e). */
export const LOWER_BANGLE = mm(100);

/**
 * A cord that hangs from the ceiling or a box high up, set out by its upper bangle. Its outline goes down to the lower bangle
 * where the upper one hangs lowest, and up past where bars are held, so that nothing crosses it. Source of the sizes: ours.
 */
const CALL_CORD: Variant = {
	id: 'call-cord',
	kind: 'call-cord',
	name: 'call cord with two bangles',
	outline: { x0: -30, y0: -700, x1: 30, y1: 600 },
	brackets: [],
	grip: square(0),
	gripOff: mm(30),
	length: mm(0),
	diameter: mm(0),
	gap: mm(0),
	depth: mm(40),
	stands: 'ceiling'
};

/**
 * Every generic part, by kind, mm sizes before inch sizes, smallest first.
 * Source: ranges of trade sizes are common practice, no source; control projection from the range 50-100 of a handle
 * on a 20 mm plate, ours.
 */
export const VARIANTS: readonly Variant[] = [
	...[...[350, 400, 450, 600, 700, 800, 820].map(metric), ...[14, 16, 18, 24, 28, 32].map(imperial)].map(seat),
	...[...[400, 450, 600, 700, 820].map(metric), ...[16, 18, 24, 28, 32].map(imperial)].map(withFrontLegs),
	...[...[450, 600, 700, 820].map(metric), ...[18, 24, 28, 32].map(imperial)].map(deepSeat),
	...[...[450, 500].map(metric), ...[18, 20].map(imperial)].map(offWall),
	...[...[500].map(metric), ...[20].map(imperial)].map(onLegs),
	BOARD,
	...[...[700, 820].map(metric), ...[28, 32].map(imperial)].flatMap((size) => [
		lSeat(size, 'left'),
		lSeat(size, 'right')
	]),
	CONTROL,
	OUTLET,
	REST,
	...[
		...[300, 400, 450, 500, 600, 700, 750, 900, 1060, 1220].map(metric),
		...[12, 16, 18, 24, 30, 32, 36, 42, 48].map(imperial)
	].map(horizontalBar),
	...[metric(600), imperial(23.25)].map(barOverAll),
	...[...[600, 750].map(metric), ...[24, 30].map(imperial)].flatMap((size) => [
		lBar(size, size, 'left'),
		lBar(size, size, 'right')
	]),
	...[[metric(1000), metric(750)] as const, [imperial(40), imperial(30)] as const].flatMap(([along, up]) => [
		lBar(along, up, 'left'),
		lBar(along, up, 'right')
	]),
	...[...[300, 450, 600, 750, 900, 1000].map(metric), ...[12, 18, 24, 30, 36, 40].map(imperial)].map(verticalBar),
	POST,
	...[...[600, 700, 850].map(metric), ...[24, 28, 34].map(imperial)].map(rail),
	CALL_CORD
];

/**
 * The part with an id, generic or read off.
 * Fails: RangeError when there is none.
 */
export function variantOf(id: string): Variant {
	const found = BY_ID.get(id) ?? readOffVariant(id);
	if (!found) throw new RangeError(`no part is called ${id}`);
	BY_ID.set(id, found);
	return found;
}

/** Every part that was asked for; a real one is made once, so that what is worked out for it is kept with it. */
const BY_ID = new Map(VARIANTS.map((v) => [v.id, v]));

/** One thing wanted: what, for whom, with which hand, where it may go, and the row that asks for it. */
export interface Accessory {
	readonly id: string;
	readonly kind: Kind;
	readonly purpose: Purpose;
	readonly for: string;
	/** The hands that may use it, for words and pictures. */
	readonly hands: readonly ('left' | 'right')[];
	/** When it is wanted: now, only later, or for both; what is fitted stays. */
	readonly when: 'now' | 'later' | 'both';
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
