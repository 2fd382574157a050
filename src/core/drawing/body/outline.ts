import type { Side } from '#core/body/hands.ts';
import { add, less, size, times, type Vec } from '#core/geometry/vec.ts';
import type { Entity, Path, Segment, Spot } from '../entity.ts';
import type { Layer } from '../layers.ts';
import { circle } from '../path.ts';
import { capsule, type Joint } from './capsule.ts';
import { SKULL } from './drawn-body.ts';
import type { Limb } from './limb.ts';
import type { Sideways } from './sideways.ts';
import { betweenShoulders, trunkWay, type Stance } from './stance.ts';

/** How a figure is drawn: firmly, dashed where only estimated, or light where it is nobody's size. */
export type Line = 'drawn' | 'sketched' | 'neutral';

/** Thickness of the drawn body, mm: drawn, never computed with. Ours. */
const THICK = {
	face: 68,
	nose: 10,
	neck: 46,
	chest: 94,
	waist: 92,
	hip: 92,
	thigh: 86,
	knee: 58,
	calf: 54,
	ankle: 36,
	heel: 30,
	toe: 22,
	shoulder: 54,
	elbow: 42,
	wrist: 30,
	hand: 37,
	sleeve: 60
};
/** How far before the joints the middle of trunk and head are drawn, so that the back meets its rest. Ours. */
const AHEAD = 18;
const FOOT = { heel: -18, toe: 152, sole: 45 };
/** From the middle of the fist back to the wrist. Ours. */
const FIST = 78;
const SLEEVE = 0.52;

const EDGE: Readonly<Record<Line, Layer>> = {
	drawn: 'figure-edge',
	sketched: 'figure-edge-sketched',
	neutral: 'figure-edge-neutral'
};
const FOLD: Readonly<Record<Line, Layer>> = {
	drawn: 'figure-line',
	sketched: 'figure-line-sketched',
	neutral: 'figure-line-neutral'
};

interface Pen {
	readonly id: string;
	readonly line: Line;
	readonly at: (point: Vec, thick: number) => Joint;
	readonly facing: Vec;
	/** How much of the way she faces is seen from the side, to the right of the sheet; 1 is a full profile. */
	readonly turned: number;
}

/** A body as seen from the side: one calm outline, the far arm behind, the near one before. Units and frame: mm of the sheet. */
export function figureEntities(
	stance: Stance,
	arms: Readonly<Record<Side, Limb>>,
	side: Sideways,
	how: { readonly id: string; readonly line: Line }
): readonly Entity[] {
	const { scale } = side;
	const turned = side.along(add(stance.hip, stance.facing)) - side.along(stance.hip);
	const pen: Pen = {
		...how,
		facing: stance.facing,
		turned,
		at: (point, thick) => ({ at: side.spot(point), radius: thick / scale })
	};
	const { left, right } = stance.postures;
	const [far, near]: readonly [Side, Side] =
		side.near(left.shoulder) < side.near(right.shoulder) ? ['left', 'right'] : ['right', 'left'];
	return [
		...armEntities(pen, 'far', arms[far]),
		...limbs(pen, 'far-leg', 'figure-skin', lowerLeg(pen, stance.legs[far])),
		...limbs(pen, 'near-leg', 'figure-skin', lowerLeg(pen, stance.legs[near])),
		...headEntities(pen, stance),
		...limbs(pen, 'cloth', 'figure-cloth', [...trunk(pen, stance), ...thighs(pen, stance)]),
		...armEntities(pen, 'near', arms[near])
	];
}

type Pair = readonly [Joint, Joint];

/** All outlines first, then all fills. */
function limbs({ id, line }: Pen, name: string, fill: Layer, pairs: readonly Pair[]): readonly Path[] {
	const paths = pairs.map(([a, b]) => capsule(a, b));
	const of = (what: string, layer: Layer) =>
		paths.map((d, i): Path => ({ kind: 'path', id: `${id}/${name}/${what}/${String(i)}`, layer, d, closed: true }));
	return [...of('edge', EDGE[line]), ...of('fill', fill)];
}

function lowerLeg({ at, facing }: Pen, { joint, end }: Limb): readonly Pair[] {
	const below = (ahead: number, thick: number): Joint =>
		at(add(end, add(times(facing, ahead), [0, 0, thick - FOOT.sole - 30])), thick);
	const [heel, toe] = [below(FOOT.heel, THICK.heel), below(FOOT.toe, THICK.toe)];
	const calf = add(joint, times(less(end, joint), 0.3));
	return [
		[at(joint, THICK.knee - 4), at(calf, THICK.calf)],
		[at(calf, THICK.calf), at(end, THICK.ankle)],
		[at(end, THICK.ankle), heel],
		[at(end, THICK.ankle), toe],
		[heel, toe]
	];
}

function trunk({ at, facing }: Pen, stance: Stance): readonly Pair[] {
	const way = trunkWay(stance);
	const top = betweenShoulders(stance);
	const ahead = times(facing, AHEAD);
	const hip = at(add(stance.hip, ahead), THICK.hip);
	const waist = at(
		add(add(stance.hip, times(way, 0.42 * size(less(top, stance.hip)))), times(facing, AHEAD - 4)),
		THICK.waist
	);
	const chest = at(add(add(top, times(way, -62)), ahead), THICK.chest);
	const { left, right } = stance.postures;
	const shoulders = [left, right].map(({ shoulder }): Pair => [chest, at(shoulder, THICK.sleeve - 4)]);
	return [[hip, waist], [waist, chest], ...shoulders];
}

function thighs({ at, facing }: Pen, { legs }: Stance): readonly Pair[] {
	return [legs.left, legs.right].map(({ root, joint }): Pair => [
		at(add(root, times(facing, AHEAD)), THICK.thigh),
		at(joint, THICK.knee)
	]);
}

function armEntities(pen: Pen, name: string, { root, joint, end }: Limb): readonly Path[] {
	const { at, id, line } = pen;
	const fore = less(end, joint);
	const wrist = add(end, times(fore, -FIST / Math.max(FIST, size(fore))));
	const cuff = add(root, times(less(joint, root), SLEEVE));
	const sleeve: Pair = [at(root, THICK.sleeve - 4), at(cuff, THICK.sleeve - 8)];
	const skin = limbs(pen, `${name}-arm`, 'figure-skin', [
		[at(cuff, THICK.shoulder - 6), at(joint, THICK.elbow)],
		[at(joint, THICK.elbow), at(wrist, THICK.wrist)],
		[at(wrist, THICK.wrist), at(end, THICK.hand)]
	]);
	const d = capsule(...sleeve);
	return [
		...skin,
		{ kind: 'path', id: `${id}/${name}-sleeve`, layer: 'figure-cloth', d, closed: true },
		{ kind: 'path', id: `${id}/${name}-sleeve/line`, layer: FOLD[line], d: openAtRoot(d), closed: false }
	];
}

/** A capsule without the round of its first joint: the line of a sleeve that runs out on the trunk. */
function openAtRoot(d: readonly Segment[]): readonly Segment[] {
	const [start, second] = [d[0], d[2]];
	if (!start || !second || d.length < 6) return d;
	return [{ by: 'move', to: second.to }, ...d.slice(3), { by: 'line', to: start.to }];
}

function headEntities(pen: Pen, stance: Stance): readonly Entity[] {
	const { at, id, line, turned } = pen;
	const top = betweenShoulders(stance);
	const head = stance.head;
	const neck: Pair = [
		at(add(top, times(pen.facing, 8)), THICK.neck),
		at(add(head, add(times(pen.facing, -14), [0, 0, -34])), THICK.neck - 4)
	];
	const skull = at(head, SKULL);
	const unit = skull.radius / SKULL;
	const by = (ahead: number, up: number, thick: number): Joint => ({
		at: [skull.at[0] + ahead * turned * unit, skull.at[1] - up * unit],
		radius: thick * unit
	});
	const chin = by(24, -34, THICK.face);
	const nose: Pair = [by(70, 0, 16), by(94, -16, THICK.nose)];
	return [...limbs(pen, 'head', 'figure-skin', [neck, [skull, chin], nose]), hair(id, FOLD[line], skull, turned)];
}

/** The back of the head, from above the brow down to the nape. */
function hair(id: string, layer: Layer, { at: [x, y], radius }: Joint, turned: number): Path {
	const on = (degrees: number): Spot => [
		x + radius * turned * Math.cos((degrees * Math.PI) / 180),
		y - radius * Math.sin((degrees * Math.PI) / 180)
	];
	const clockwise = turned < 0;
	const arc = (to: Spot, r: number, turnsOn: boolean): Segment => ({ by: 'arc', to, radius: r, clockwise: turnsOn });
	return {
		kind: 'path',
		id: `${id}/hair`,
		layer:
			layer === 'figure-line'
				? 'figure-hair'
				: layer === 'figure-line-sketched'
					? 'figure-hair-sketched'
					: 'figure-hair-neutral',
		closed: true,
		d: [
			{ by: 'move', to: on(52) },
			arc(on(130), radius, clockwise),
			arc(on(218), radius, clockwise),
			{ by: 'line', to: [x - 0.12 * radius * turned, y + 0.02 * radius] },
			arc(on(52), radius * 1.1, !clockwise)
		]
	};
}

/** A wheeled chair under somebody, of no make. Units: mm of the room; `back` is where back rest and seat meet. */
export function chairEntities(
	{ back, facing, floor, sole }: { back: Vec; facing: Vec; floor: number; sole: number },
	side: Sideways,
	id: string
): readonly Path[] {
	const on = (ahead: number, up: number): Spot => {
		const [x, y] = add(back, times(facing, ahead));
		return side.spot([x, y, up]);
	};
	const seat = back[2];
	const bar = (name: string, a: Spot, b: Spot, thick: number): Path => ({
		kind: 'path',
		id: `${id}/chair/${name}`,
		layer: 'thing',
		d: capsule({ at: a, radius: thick / side.scale }, { at: b, radius: thick / side.scale }),
		closed: true
	});
	const wheel = (name: string, ahead: number, radius: number): readonly Path[] =>
		[radius, radius * 0.18].map((r, i) =>
			circle(`${id}/chair/${name}/${String(i)}`, 'thing', on(ahead, floor + radius), r / side.scale)
		);
	const rest = Math.max(floor + 40, sole);
	return [
		...wheel('rear', 60, 150),
		...wheel('front', 400, 70),
		bar('leg-rear', on(20, seat - 45), on(60, floor + 150), 12),
		bar('leg-front', on(400, seat - 45), on(400, floor + 140), 12),
		bar('foot-hanger', on(420, seat - 60), on(500, rest - 14), 10),
		bar('foot-rest', on(490, rest - 14), on(650, rest - 14), 12),
		bar('back-rest', on(-22, seat - 20), on(-40, seat + 430), 16),
		bar('seat', on(0, seat - 20), on(430, seat - 20), 20)
	];
}
