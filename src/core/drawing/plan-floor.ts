import type { Enclosure } from '#core/case/record.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { Box, Entity, Path, Segment, Spot } from './entity.ts';
import { entryClosing, type EntryClosing } from './entry-closing.ts';
import type { Layer } from './layers.ts';
import { line, lines, rectangle } from './path.ts';
import { isSeen } from './seen.ts';

/** A plan of a room on a sheet. Units and frame: plan frame in, mm of the sheet out. */
type At = (x: number, y: number) => Spot;

/** A drain is never drawn smaller than this. Units: mm of the sheet. */
const LEAST_DRAIN = 1.4;
/** Length of one bow of a curtain, and the radius it is drawn with. Units: mm of the sheet. */
const BOW = { chord: 1.8, radius: 1.1 };
/** How far apart sliding leaves lie, and how thick a leaf in its frame is. Units: mm of the sheet. */
const LEAF = 0.8;

/** Where the drain lies on the sheet. */
export function drainBox({ drain }: Enclosure, at: At): Box | undefined {
	if (!drain) return undefined;
	const [a, b] = [
		at(drain.x - drain.wide / 2, drain.y - drain.deep / 2),
		at(drain.x + drain.wide / 2, drain.y + drain.deep / 2)
	];
	const grow = (from: number, to: number): number => Math.max(0, LEAST_DRAIN - (to - from)) / 2;
	const [x, y] = [grow(a[0], b[0]), grow(a[1], b[1])];
	return { x0: a[0] - x, y0: a[1] - y, x1: b[0] + x, y1: b[1] + y };
}

/** The drain from above: its outline with a cross, sketched where it is only told. */
export function drainIn(e: Enclosure, at: At): readonly Entity[] {
	const box = drainBox(e, at);
	if (!box || !e.drain) return [];
	const layer = isSeen(e.drain.how) ? 'plan-thing' : 'plan-told';
	const { x0, y0, x1, y1 } = box;
	return [
		rectangle('key/drain', layer, box),
		lines('key/drain/cross', layer, [
			[
				[x0, y0],
				[x1, y1]
			],
			[
				[x0, y1],
				[x1, y0]
			]
		])
	];
}

/** What closes the entry from above, sketched where it is only told. */
export function closingIn(e: Enclosure, room: Room, at: At): readonly Entity[] {
	const closing = entryClosing(e, room);
	return closing ? drawn(closing, room, at) : [];
}

function drawn(closing: EntryClosing, { entryLine }: Room, at: At): readonly Entity[] {
	const as = (layer: Layer): Layer => (closing.seen ? layer : 'plan-told');
	const ends = ([x0, x1]: readonly [number, number]) => [at(x0, entryLine), at(x1, entryLine)] as const;
	switch (closing.kind) {
		case 'curtain':
			return [wave('key/curtain', as('plan-thing'), ...ends(closing.span))];
		case 'screen':
			return [line('key/screen', as('plan-screen'), ...ends(closing.span))];
		case 'not hung': {
			const [a, b] = ends(closing.span);
			return [rectangle('key/leaf', as('plan-thing'), { x0: a[0], y0: a[1], x1: b[0], y1: b[1] + LEAF })];
		}
		case 'slides':
			return closing.leaves.map((leaf, i) => {
				const [a, b] = ends(leaf);
				const off = LEAF * (i - 0.5);
				return line(`key/leaf/${String(i)}`, as('plan'), [a[0], a[1] + off], [b[0], b[1] + off]);
			});
		case 'hung': {
			const { hinge, tip, closed, furthest, radius, clockwise } = closing.leaf;
			const scaled = Math.hypot(at(...closed)[0] - at(...hinge)[0], at(...closed)[1] - at(...hinge)[1]);
			return [
				...(radius > 0 ? [swing('key/swing', at(...closed), at(...furthest), { radius: scaled, clockwise })] : []),
				line('key/leaf', as('plan'), at(...hinge), at(...tip))
			];
		}
	}
}

function swing(id: string, from: Spot, to: Spot, arc: { radius: number; clockwise: boolean }): Path {
	const d: readonly Segment[] = [
		{ by: 'move', to: from },
		{ by: 'arc', to, ...arc }
	];
	return { kind: 'path', id, layer: 'plan-swing', d, closed: false };
}

/** A line in bows to one side and the other. */
function wave(id: string, layer: Layer, from: Spot, to: Spot): Path {
	const count = Math.max(2, Math.round(Math.hypot(to[0] - from[0], to[1] - from[1]) / BOW.chord));
	const bows = Array.from({ length: count }, (_, i): Segment => {
		const share = (i + 1) / count;
		const end: Spot = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
		return { by: 'arc', to: end, radius: BOW.radius, clockwise: i % 2 === 0 };
	});
	return { kind: 'path', id, layer, d: [{ by: 'move', to: from }, ...bows], closed: false };
}
