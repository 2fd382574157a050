import { capsule, type Joint } from '#core/drawing/body/capsule.ts';
import { drawn, circle, path, rect, text, type Px, type Shape, type Size } from './shape.ts';
import { pathData } from './sheet-shapes.ts';
import { seatedShapes } from './sitter-shapes.ts';
import type { Lengths, SideView } from './sitter-figure.ts';

/** A picture of how points are taped. Units: px for the size, mm for what it is drawn from. */
export interface ProtocolAsked extends Size {
	readonly lengths: Lengths;
	/** From the middle of the body to the shoulder. */
	readonly half: number;
}

/** Room for the words beside the tape, and for the earth behind the wall, px. */
const WORDS = 84;
const EARTH = 13;
const DOT = 6;
/** Where the hand stops without stretching, as a share of where it stops; drawn, never computed with. */
const COMFORTABLE = 0.84;
/** From level, degrees. */
const WAYS = [
	{ name: 'high', way: 52 },
	{ name: 'ahead', way: 0 },
	{ name: 'low', way: -48 }
] as const;

/** From the side: upright on the seat, the wall behind, tape on the wall beside where the hand stopped, high, ahead and low. */
export function protocolFromSide({ lengths, width, height }: ProtocolAsked): readonly Shape[] {
	const { ahead, shoulder, grip } = lengths;
	const high = shoulder + grip * 0.8;
	const scale = Math.min((width - WORDS - EARTH) / (ahead + grip), (height - 24) / high);
	const view: SideView = {
		scale,
		top: 2,
		at: (before, up) => [width - EARTH - 2 - before * scale, height - 2 - up * scale]
	};
	const at = (way: number, share: number): Px => {
		const turn = (way * Math.PI) / 180;
		return view.at(ahead + grip * share * Math.cos(turn), shoulder + grip * share * Math.sin(turn));
	};
	const [from, to] = [at(WAYS[0].way, 1), at(WAYS[2].way, 1)];
	const radius = String(grip * scale);
	return [
		...seatedShapes(lengths, view, { body: 'drawn', arm: 'drawn' }),
		drawn('how/sweep', 'hidden', `M${from.join(' ')}A${radius} ${radius} 0 0 0 ${to.join(' ')}`),
		...WAYS.flatMap(({ name, way }) => tapes(`how/${name}`, name, at(way, 1), at(way, COMFORTABLE)))
	];
}

/** Tape where the hand stopped, and a ring where it stopped without stretching. */
function tapes(id: string, name: string, just: Px, comfortable: Px): readonly Shape[] {
	return [
		circle(`${id}/comfortable`, 'thing', comfortable, DOT),
		circle(`${id}/just`, 'ink', just, DOT),
		text(`${id}/words`, 't-note halo end', [just[0] - DOT - 6, just[1] + 5], name)
	];
}

/** Seen from above, mm: drawn, never computed with. */
const THICK = { head: 84, shoulder: 62, thigh: 76, elbow: 44, wrist: 28 };
/** From the shoulder to the wall beside, and how far ahead of it the hand stops there, as shares of the arm. */
const BESIDE = 0.78;
const FARTHER = 0.6;

/** From above: the arm out to the side, tape on the wall beside where the hand stopped. */
export function protocolFromAbove({ lengths, half, width, height }: ProtocolAsked): readonly Shape[] {
	const { ahead, grip, thigh } = lengths;
	const aside = half + BESIDE * grip;
	const scale = Math.min(
		(width - EARTH - 24) / (Math.max(thigh, ahead + grip * FARTHER) + 100),
		(height - 62) / (half + 90 + aside)
	);
	const [back, middle] = [width - EARTH - 2, (half + 90) * scale + 2];
	const at = (before: number, left: number): Px => [back - before * scale, middle + left * scale];
	const joint = (before: number, left: number, thick: number): Joint => ({
		at: at(before, left),
		radius: thick * scale
	});
	const limbs: readonly (readonly [Joint, Joint])[] = [
		[joint(ahead + 20, 80, THICK.thigh), joint(thigh, 110, THICK.thigh * 0.8)],
		[joint(ahead + 20, -80, THICK.thigh), joint(thigh, -110, THICK.thigh * 0.8)],
		[joint(ahead, half - 30, THICK.shoulder), joint(ahead, 30 - half, THICK.shoulder)],
		[joint(ahead, half - 10, THICK.shoulder * 0.8), joint(ahead + 40, half + grip * 0.4, THICK.elbow)],
		[joint(ahead + 40, half + grip * 0.4, THICK.elbow), joint(ahead + 10, aside - 30, THICK.wrist)]
	];
	const outlines = limbs.map(([a, b]) => pathData(capsule(a, b), true));
	const wall = at(0, aside);
	const [side, front] = [at(ahead + 10, aside), at(ahead + grip * FARTHER, aside)];
	return [
		rect('how/earth-behind', 'earth', [back, 0], [back + EARTH, wall[1]]),
		rect('how/earth-beside', 'earth', [0, wall[1]], [back + EARTH, wall[1] + EARTH]),
		path('how/walls', 'cut', [[back, 0], wall, [0, wall[1]]]),
		...outlines.map((d, i) => drawn(`how/line/${String(i)}`, 'body-line', d)),
		...outlines.map((d, i) => drawn(`how/fill/${String(i)}`, 'body-fill', d)),
		circle('how/head', 'thing', at(ahead + 30, 0), THICK.head * scale),
		circle('how/side', 'ink', side, DOT),
		circle('how/front', 'ink', front, DOT),
		text('how/side/words', 't-note halo mid', [side[0], side[1] + EARTH + 22], 'to the side'),
		text('how/front/words', 't-note halo mid', [front[0], front[1] + EARTH + 22], 'ahead')
	];
}
