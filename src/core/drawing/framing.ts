import type { Wall } from '#core/case/record.ts';
import type { KeepOut } from '#core/enclosure/keep-out.ts';
import type { RoomWall } from '#core/enclosure/room.ts';
import { reinforcementOf, type Reinforcement } from '#core/needs/reinforcement.ts';
import type { Plan } from '#core/plan.ts';
import { studsBehind } from '#core/structure/member.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Entity } from './entity.ts';
import { cableBands, tileLines } from './face-lines.ts';
import { figure } from './figure.ts';
import { isSeen } from './seen.ts';
import type { Wording } from './labels.ts';
import { hatch, line, lines, rectangle } from './path.ts';
import type { View } from './view.ts';

/** What is behind a wall, drawn, and the words it needs. */
export interface Framing {
	readonly entities: readonly Entity[];
	readonly words: readonly Wording[];
}

/** Backing, there, to be added and to be kept for later, studs and keep-outs of a wall, as hidden lines cut to what is drawn. */
export function framingOf({ scene, backing: needed }: Plan, wall: RoomWall, view: View, unit: LengthUnit): Framing {
	if (!wall.stands) return { entities: [], words: [] };
	const recorded = scene.c.enclosure.walls[wall.id];
	const parts = [
		...Object.entries(recorded.backing).map(([id, b]) => backing(id, b, view, unit)),
		{ entities: tileLines(recorded, wall, view), words: [] },
		cableBands(recorded, wall, view),
		...needed.filter((b) => b.wall === wall.id).map((b, i) => toAdd(`to-add/${String(i)}`, b, view, unit)),
		...reinforcementOf(scene)
			.filter((kept) => kept.wall === wall.id)
			.map((kept, i) => toKeep(`to-keep/${String(i)}`, kept, view, unit)),
		...studsBehind(recorded, wall).map(([id, s]) => stud(id, s, view)),
		...wall.keepOuts.map((k) => keepOut(k, view))
	];
	return { entities: parts.flatMap((p) => p.entities), words: parts.flatMap((p) => p.words) };
}

function backing(id: string, b: Wall['backing'][string], view: View, unit: LengthUnit): Framing {
	const box = view.box(b);
	if (!box) return { entities: [], words: [] };
	const text = backingWords(b, unit);
	const known = b.kind === 'declared' || isSeen(b.how);
	const edge = known ? 'backing-edge' : 'stud-sought';
	return {
		entities: [rectangle(`backing/${id}`, 'backing', box), rectangle(`backing/${id}/edge`, edge, box)],
		words: [{ id: `backing/${id}/word`, text: known ? text : `${text}, told`, on: box }]
	};
}

function backingWords(b: Wall['backing'][string], unit: LengthUnit): string {
	switch (b.kind) {
		case 'declared':
			return `declared ${String(Math.round(b.load))} N`;
		case 'masonry':
			return b.unit === undefined ? 'masonry' : `${b.unit} masonry`;
		case 'sheet':
			return `sheet ${figure(b.thickness, unit)}`;
		case 'blocking':
			return `wood blocking ${figure(b.thickness, unit)}`;
	}
}

/** Backing that is not there yet, with the wood it takes. */
function toAdd(id: string, { rect, thickness }: Plan['backing'][number], view: View, unit: LengthUnit): Framing {
	const box = view.box(rect);
	if (!box) return { entities: [], words: [] };
	const high = figure(rect.y1 - rect.y0, unit);
	const text = thickness === undefined ? 'no wood carries this' : `add ${figure(thickness, unit)} \u00d7 ${high}`;
	return { entities: [rectangle(id, 'backing-to-add', box)], words: [{ id: `${id}/word`, text, on: box }] };
}

/** Where the wall of a new dwelling is to be solid, with the size of that. */
function toKeep(id: string, { rect }: Reinforcement, view: View, unit: LengthUnit): Framing {
	const box = view.box(rect);
	if (!box) return { entities: [], words: [] };
	const [wide, high] = [figure(rect.x1 - rect.x0, unit), figure(rect.y1 - rect.y0, unit)];
	const text = `keep solid ${wide} \u00d7 ${high}`;
	return { entities: [rectangle(id, 'backing-to-keep', box)], words: [{ id: `${id}/word`, text, on: box }] };
}

function stud(id: string, s: Wall['studs'][string], view: View): Framing {
	const { y0, y1 } = view.window;
	const layer = isSeen(s.how) ? 'stud' : 'stud-sought';
	const edges = [s.x - s.width / 2, s.x + s.width / 2].map((x) => view.x(x));
	const inside = edges.filter((x) => x > view.wall.x0 && x < view.wall.x1);
	return { entities: inside.map((x, i) => line(`stud/${id}/${String(i)}`, layer, [x, y0], [x, y1])), words: [] };
}

const WORDS: Readonly<Record<KeepOut['kind'], string>> = {
	pipe: 'pipes',
	cable: 'cable',
	rod: 'edge rod',
	seam: 'seam',
	'valve-body': 'valve body',
	'old-hole': 'old hole',
	niche: 'niche',
	'electric-point': 'switch or socket',
	stays: 'stays',
	goes: 'taken away'
};

function keepOut({ id, kind, what, rect, how }: KeepOut, view: View): Framing {
	const box = view.box(rect);
	if (!box) return { entities: [], words: [] };
	const sure = isSeen(how);
	const middle = (box.y0 + box.y1) / 2;
	const called = what === undefined ? WORDS[kind] : `${what} ${WORDS[kind]}`;
	return {
		entities: [
			...(sure ? [] : [rectangle(`keep-out/${id}/under`, 'patch', box)]),
			hatch(`keep-out/${id}/hatch`, sure ? 'hatch' : 'hatch-likely', box, {
				gap: sure ? 1.5 : 3,
				lean: sure ? 'rising' : 'falling'
			}),
			rectangle(`keep-out/${id}`, sure ? 'keep-out' : 'keep-out-likely', box),
			...(kind === 'seam'
				? [
						lines(`keep-out/${id}/seam`, 'seam', [
							[
								[box.x0, middle],
								[box.x1, middle]
							]
						])
					]
				: [])
		],
		words: [{ id: `keep-out/${id}/word`, text: sure ? called : `${called} likely`, on: box }]
	};
}
