import { LOWER_BANGLE, type Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import { BACK_REST } from '../seat-plan.ts';

/**
 * A block of a part as seen from any side.
 * Units and frame: mm, along its wall, up from the datum line, and out from the wall. Shape: `round` ones have round ends.
 */
export interface Piece {
	readonly x: readonly [number, number];
	readonly y: readonly [number, number];
	readonly off: readonly [number, number];
	readonly round?: boolean;
}

const FLANGE = 8;
const BOARD = 30;
const PLATE = 20;
const LEG = 14;
const about = (at: number, half: number): readonly [number, number] => [at - half, at + half];

/** The blocks a mark is drawn from, the rear ones first. Sizes that the part does not have are drawn, never computed with. */
export function piecesOf(mark: Mark, room: Room): readonly Piece[] {
	switch (mark.variant.kind) {
		case 'horizontal-bar':
		case 'vertical-bar':
			return mark.variant.stands ? post(mark, room) : bar(mark);
		case 'fold-down-rail':
			return rail(mark);
		case 'seat':
			return mark.variant.stands === 'rims' ? acrossBath(mark, room) : seat(mark, room);
		case 'control':
			return knob(mark);
		case 'call-cord':
			return cord(mark, room);
		case 'outlet':
		case 'handset-rest':
			return small(mark);
	}
}

function bar({ variant, place }: Mark): readonly Piece[] {
	const { grip, diameter, gap, upright } = variant;
	const half = diameter / 2;
	const off: readonly [number, number] = [gap, gap + diameter];
	const at = variant.brackets.map((b) => ({ x: place.x + b.x, y: place.y + b.y, radius: b.radius }));
	const corner = place.x + (upright?.at === 'right' ? grip.x1 : grip.x0);
	return [
		...at.map(({ x, y, radius }): Piece => ({
			x: about(x, radius),
			y: about(y, radius),
			off: [0, FLANGE],
			round: true
		})),
		...at.map(({ x, y }): Piece => ({ x: about(x, half), y: about(y, half), off: [0, gap + half] })),
		{
			x: [place.x + grip.x0 - half, place.x + grip.x1 + half],
			y: [place.y + grip.y0 - half, place.y + grip.y1 + half],
			off,
			round: true
		},
		...(upright
			? [{ x: about(corner, half), y: [place.y - half, place.y + upright.length + half], off, round: true } as const]
			: [])
	];
}

function post({ variant, place }: Mark, room: Room): readonly Piece[] {
	const { gap, diameter, outline } = variant;
	const foot = place.y + outline.y0;
	return [
		{ x: about(place.x, diameter / 2), y: [foot, room.bathroomFloor + room.height], off: [gap, gap + diameter] },
		{ x: about(place.x, 50), y: [foot, foot + 12], off: about(gap + diameter / 2, 50) }
	];
}

function rail({ variant, place }: Mark): readonly Piece[] {
	const { length } = variant;
	const tube = 16;
	return [
		{ x: about(place.x, 50), y: [place.y - 150, place.y + 40], off: [0, 16] },
		{ x: about(place.x, tube), y: about(place.y - 110, tube), off: [10, length - 60], round: true },
		{
			x: about(place.x, tube),
			y: [place.y - 110 - tube, place.y + tube],
			off: [length - 2 * tube, length],
			round: true
		},
		{ x: about(place.x, tube), y: about(place.y, tube), off: [10, length], round: true }
	];
}

function seat({ variant, place }: Mark, room: Room): readonly Piece[] {
	const { outline, depth, gap, stands, frontLegs, backRest, arm } = variant;
	const x: readonly [number, number] = [place.x + outline.x0, place.x + outline.x1];
	const { low } = room.floorUnder(place.wall, ...x);
	const legs = stands === 'legs' ? [gap + 40, depth - 40] : frontLegs === undefined ? [] : [frontLegs];
	return [
		...(stands === 'legs' ? [] : [{ x, y: [place.y + outline.y0, place.y - BOARD], off: [0, PLATE] } as const]),
		...legs.map((out): Piece => ({ x: [x[0] + 26, x[0] + 54], y: [low, place.y - BOARD], off: about(out, LEG) })),
		...legs.map((out): Piece => ({ x: [x[1] - 54, x[1] - 26], y: [low, place.y - BOARD], off: about(out, LEG) })),
		...(backRest === undefined
			? []
			: [
					{
						x: [x[0] + BACK_REST.in, x[1] - BACK_REST.in],
						y: [place.y + BACK_REST.low, place.y + BACK_REST.high],
						off: [backRest - BOARD, backRest],
						round: true
					} as const
				]),
		{ x, y: [place.y - BOARD, place.y], off: [gap, depth], round: true },
		...(arm
			? [
					{
						x: [place.x + arm.x0, place.x + arm.x1],
						y: [place.y - BOARD, place.y],
						off: [gap, arm.to],
						round: true
					} as const
				]
			: [])
	];
}

const acrossBath = ({ variant, place }: Mark, room: Room): readonly Piece[] => [
	{
		x: [place.x + variant.outline.x0, place.x + variant.outline.x1],
		y: [place.y - BOARD, place.y],
		off: [0, room.footprint.depth],
		round: true
	}
];

const knob = ({ variant, place }: Mark): readonly Piece[] => [
	{ x: about(place.x, variant.outline.x1), y: about(place.y, variant.outline.y1), off: [0, PLATE], round: true },
	{ x: about(place.x, 28), y: about(place.y, 28), off: [PLATE, 75], round: true },
	{ x: about(place.x, 12), y: [place.y - 75, place.y + 12], off: [62, variant.depth], round: true }
];

const small = ({ variant, place }: Mark): readonly Piece[] => [
	{
		x: [place.x + variant.outline.x0, place.x + variant.outline.x1],
		y: [place.y + variant.outline.y0, place.y + variant.outline.y1],
		off: [0, FLANGE],
		round: true
	},
	{ x: about(place.x, 16), y: about(place.y, 16), off: [0, variant.depth], round: true }
];

function cord({ variant, place }: Mark, room: Room): readonly Piece[] {
	const low = room.floorUnder(place.wall, place.x, place.x).low + LOWER_BANGLE;
	const bangle = (y: number): Piece => ({
		x: about(place.x, 25),
		y: about(y, 25),
		off: about(variant.gripOff, 6),
		round: true
	});
	const top = place.y + variant.outline.y1;
	return [{ x: about(place.x, 2), y: [low, top], off: about(variant.gripOff, 2) }, bangle(place.y), bangle(low)];
}
