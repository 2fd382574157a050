import type { Case } from '#core/case/record.ts';
import { widened, type Box } from '#core/drawing/entity.ts';
import { figure } from '#core/drawing/figure.ts';
import { EXISTING } from '#core/enclosure/keep-out.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { Reinforcement } from '#core/needs/reinforcement.ts';
import type { NeededBacking } from '#core/structure/backing.ts';
import { studsBehind } from '#core/structure/member.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { drawn, rect, type Px, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';
import { common, noteWidth, type Words } from './words.ts';

/** What is said of a keep-out, the shorter where there is no room for more. */
const KEEP_OUT_WORDS: Readonly<Record<string, readonly string[]>> = {
	pipe: ['pipe'],
	cable: ['cable'],
	seam: ['seam'],
	'valve-body': ['valve body'],
	'old-hole': ['old hole'],
	niche: ['niche'],
	'electric-point': ['electric point', 'electric']
};

/** How far from what they name words may stand, px. */
const NEAR = 90;
const LINE = 18;

/** A wall whose inside is drawn. */
export interface Behind {
	readonly scene: Pick<Scene, 'c' | 'room'>;
	readonly wall: WallId;
	readonly view: ScreenView;
	/** Backing to be added on this wall. */
	readonly needed: readonly NeededBacking[];
	/** Where this wall of a new dwelling is to be solid. */
	readonly kept: readonly Reinforcement[];
	readonly unit: LengthUnit;
}

/**
 * What is behind a wall, as far as the wall goes: studs and backing as hidden lines, what must not be drilled as hatched
 * areas, backing to be added as empty boxes of long dashes, what is to be kept solid as boxes of dashes and dots.
 */
export function behindShapes({ scene: { c, room }, wall, view, needed, kept }: Behind): readonly Shape[] {
	const { studs, backing, keepOuts, existing } = recorded(c, room, wall);
	const area = (id: string, kind: string, of: Rect): readonly Shape[] => {
		const box = cut(of, room, { wall, view });
		return box ? [rect(id, kind, [box.x0, box.y0], [box.x1, box.y1])] : [];
	};
	return [
		...backing.flatMap(([id, b]) => area(`backing/${id}`, known(b) ? 'hidden' : 'sketch2', b)),
		...studs.flatMap(([id, s]) => {
			const edges = edgesOf(s, room, { wall, view });
			return edges ? [drawn(`stud/${id}`, known(s) ? 'hidden' : 'sketch2', edges)] : [];
		}),
		...keepOuts.flatMap(([id, k]) => area(`keep-out/${id}`, 'keep-out', k)),
		// What stays is in the way like the rest; what goes leaves but its outline.
		...existing.flatMap(([id, e]) => area(`existing/${id}`, e.fate === 'keep' ? 'keep-out' : 'sketch', e)),
		...needed.flatMap((n, i) => area(`to-add/${String(i)}`, 'to-add', n.rect)),
		...kept.flatMap((k, i) => area(`to-keep/${String(i)}`, 'to-keep', k.rect))
	];
}

/** The words for what is behind, each once; those for what must be added or must not be drilled choose their room first. */
export function behindWords({ scene: { c, room }, wall, view, needed, kept, unit }: Behind): readonly Words[] {
	const { studs, backing, keepOuts, existing } = recorded(c, room, wall);
	const face = faceOf(room, wall, view);
	const on = (of: Rect) => cut(of, room, { wall, view });
	const firstOfKind = keepOuts.filter(([, k], i) => keepOuts.findIndex(([, other]) => other.kind === k.kind) === i);
	const first = studs
		.map(([, s]) => on({ x0: s.x - s.width / 2, x1: s.x + s.width / 2, y0: -1e5, y1: 1e5 }))
		.find(Boolean);
	return [
		...needed.flatMap(({ rect: of, thickness }, i) => {
			const [thick, high] = [thickness ?? 0, of.y1 - of.y0].map((n) => figure(n, unit));
			const says = thickness === undefined ? 'no wood carries this' : `add ${thick ?? ''} \u00d7 ${high ?? ''}`;
			return around(`words/to-add/${String(i)}`, [says], { box: on(of), face });
		}),
		...kept.flatMap(({ rect: of }, i) => {
			const [wide, high] = [of.x1 - of.x0, of.y1 - of.y0].map((n) => figure(n, unit));
			const says = [`keep solid ${wide ?? ''} \u00d7 ${high ?? ''}`, 'keep solid'];
			return around(`words/to-keep/${String(i)}`, says, { box: on(of), face });
		}),
		...firstOfKind.flatMap(([id, k]) => {
			const says = KEEP_OUT_WORDS[k.kind];
			return says ? around(`words/keep-out/${id}`, says, { box: on(k), face }) : [];
		}),
		...existing.flatMap(([id, { what, fate, ...of }]) =>
			around(
				`words/existing/${id}`,
				[`${EXISTING[what]} ${fate === 'keep' ? 'stays' : 'taken away'}`, EXISTING[what]],
				{
					box: on(of),
					face
				}
			)
		),
		...backing.flatMap(([id, b]) => {
			const load = b.kind === 'declared' ? `${String(b.load)} N` : '';
			const says = load === '' ? [b.kind] : [`reinforced, ${load} by its paper`, `${load} by its paper`, load];
			return inside(`words/backing/${id}`, says, on(b));
		}),
		...(first ? [besideFoot('words/stud', 'stud', first, face)] : [])
	];
}

/** What is recorded behind a wall that stands. */
function recorded({ enclosure }: Case, room: Room, wall: WallId) {
	const recordedWall = enclosure.walls[wall];
	const { backing, keepOuts, existing } = recordedWall;
	const there = room.walls[wall].stands;
	return {
		studs: there ? studsBehind(recordedWall, room.walls[wall]) : [],
		backing: there ? Object.entries(backing) : [],
		keepOuts: there ? Object.entries(keepOuts) : [],
		existing: there ? Object.entries(existing) : []
	};
}

interface Face {
	readonly wall: WallId;
	readonly view: ScreenView;
}

/** The wall as far as it stands, px. */
export function faceOf(room: Room, wall: WallId, view: ScreenView): Box {
	const { from, to, length } = room.walls[wall];
	return { x0: view.x(from), y0: view.top, x1: view.x(to), y1: view.y(room.floorUnder(wall, 0, length).low) };
}

/** An area of a wall cut to what stands of it and is drawn, px; none where nothing is left. */
export function cut(of: Rect, room: Room, { wall, view }: Face): Box | undefined {
	const [x0, x1] = [view.x(of.x0), view.x(of.x1)];
	const box = common({ x0, x1, y0: view.y(of.y1), y1: view.y(of.y0) }, faceOf(room, wall, view));
	return box.x1 - box.x0 >= 1 && box.y1 - box.y0 >= 1 ? box : undefined;
}

/** The edges of a stud that lie on the wall, from its floor up. */
function edgesOf(stud: { x: number; width: number }, room: Room, { wall, view }: Face): string | undefined {
	const { from, to } = room.walls[wall];
	const edges = [stud.x - stud.width / 2, stud.x + stud.width / 2].filter((x) => x > from && x < to);
	if (edges.length === 0) return undefined;
	const round = (n: number): string => String(Math.round(n * 10) / 10);
	return edges
		.map((x) => `M${round(view.x(x))} ${round(view.top)}V${round(view.y(room.floorUnder(wall, x, x).low))}`)
		.join('');
}

/** Words on an area or close beside it. */
function around(
	id: string,
	says: readonly string[],
	{ box, face }: { box: Box | undefined; face: Box }
): readonly Words[] {
	if (!box) return [];
	const half = noteWidth(says[0] ?? '') / 2;
	const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
	const beside = [box.x1 + half + 4, box.x0 - half - 4];
	const wishes: readonly Px[] = [
		...[box.y0 + LINE, y, box.y1 - LINE].flatMap((at) => beside.map((to): Px => [to, at])),
		[x, box.y1 + LINE / 2 + 2],
		[x, box.y0 - LINE / 2 - 2]
	];
	return [{ id, says, wishes, within: common(widened(box, NEAR), face) }];
}

/** Words inside an area, low in it. */
function inside(id: string, says: readonly string[], box: Box | undefined): readonly Words[] {
	if (!box) return [];
	const half = noteWidth(says[0] ?? '') / 2;
	const low = box.y1 - LINE;
	const wishes: readonly Px[] = [
		[box.x0 + half + 50, low],
		[box.x0 + half + 6, low],
		[(box.x0 + box.x1) / 2, low]
	];
	return [{ id, says, wishes, within: box }];
}

/** Words beside the foot of something upright. */
function besideFoot(id: string, says: string, box: Box, face: Box): Words {
	const half = noteWidth(says) / 2;
	const low = face.y1 - 24;
	const wishes: readonly Px[] = [box.x1 + half + 2, box.x0 - half - 2].map((x) => [x, low]);
	return {
		id,
		says: [says],
		wishes,
		within: common({ ...widened(box, 2 * half + 8), y0: face.y0, y1: face.y1 }, face)
	};
}

function known(what: { readonly kind?: string; readonly how?: string }): boolean {
	return what.kind === 'declared' || what.how === 'measured' || what.how === 'observed';
}
