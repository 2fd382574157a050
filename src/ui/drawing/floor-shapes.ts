import type { Enclosure } from '#core/case/record.ts';
import { entryClosing, type EntryClosing } from '#core/drawing/entry-closing.ts';
import { isSeen } from '#core/drawing/seen.ts';
import type { Room } from '#core/enclosure/room.ts';
import { drawn, path, rect, type Px, type Shape } from './shape.ts';

/** A plan of a room on the screen: plan frame in mm in, px out. */
type At = (x: number, y: number) => Px;

/** Length of one bow of a curtain and how far it goes to its side; how far apart sliding leaves lie. Units: px. */
const BOW = { long: 12, off: 8 };
const LEAF = 5;

/** What closes the entry and the drain, from above; sketched where they are only told. */
export function floorShapes(
	e: Pick<Enclosure, 'closing' | 'entryWidth' | 'drain'>,
	room: Room,
	at: At
): readonly Shape[] {
	const closing = entryClosing(e, room);
	return [...drainShapes(e.drain, at), ...(closing ? closingShapes(closing, room, at) : [])];
}

function drainShapes(drain: Enclosure['drain'], at: At): readonly Shape[] {
	if (!drain) return [];
	const [a, b] = [
		at(drain.x - drain.wide / 2, drain.y - drain.deep / 2),
		at(drain.x + drain.wide / 2, drain.y + drain.deep / 2)
	];
	const kind = isSeen(drain.how) ? 'fine' : 'sketch2';
	const cross = `M${short(a)}L${short(b)}M${short([a[0], b[1]])}L${short([b[0], a[1]])}`;
	return [rect('room/drain', kind, a, b), drawn('room/drain/cross', kind, cross)];
}

function closingShapes(closing: EntryClosing, { entryLine }: Room, at: At): readonly Shape[] {
	const as = (kind: string): string => (closing.seen ? kind : 'sketch2');
	const ends = ([x0, x1]: readonly [number, number]) => [at(x0, entryLine), at(x1, entryLine)] as const;
	switch (closing.kind) {
		case 'curtain':
			return [drawn('room/curtain', as('fine'), wave(...ends(closing.span)))];
		case 'screen':
			return [path('room/screen', as('line'), ends(closing.span))];
		case 'not hung': {
			const [a, b] = ends(closing.span);
			return [rect('room/leaf', as('fine'), a, [b[0], b[1] + LEAF])];
		}
		case 'slides':
			return closing.leaves.map((leaf, i) => {
				const [a, b] = ends(leaf);
				const off = LEAF * (i - 0.5);
				return path(`room/leaf/${String(i)}`, as('line'), [
					[a[0], a[1] + off],
					[b[0], b[1] + off]
				]);
			});
		case 'hung': {
			const { hinge, tip, closed, furthest, clockwise } = closing.leaf;
			const [from, to] = [at(...closed), at(...furthest)];
			const radius = String(Math.abs(from[0] - at(...hinge)[0]));
			return [
				drawn('room/swing', 'fine2', `M${short(from)}A${radius} ${radius} 0 0 ${clockwise ? '1' : '0'} ${short(to)}`),
				path('room/leaf', as('line'), [at(...hinge), at(...tip)])
			];
		}
	}
}

/** A line in bows to one side and the other. */
function wave(from: Px, to: Px): string {
	const count = Math.max(2, Math.round((to[0] - from[0]) / BOW.long));
	const step = (to[0] - from[0]) / count;
	const bows = Array.from({ length: count }, (_, i) => {
		const off = i % 2 === 0 ? -BOW.off : BOW.off;
		return `q${String(step / 2)} ${String(off)} ${String(step)} 0`;
	});
	return `M${short(from)}${bows.join('')}`;
}

const short = ([x, y]: Px): string => `${String(Math.round(x * 100) / 100)} ${String(Math.round(y * 100) / 100)}`;
