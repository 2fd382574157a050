import type { Case } from '#core/case/record.ts';
import { figure } from '#core/drawing/figure.ts';
import { widthOf } from '#core/drawing/type.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { NeededBacking } from '#core/structure/backing.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { drawn, rect, text, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';

const KEEP_OUT_WORDS: Readonly<Record<string, string>> = {
	pipe: 'pipe',
	cable: 'cable',
	rod: 'rod',
	seam: 'seam',
	'valve-body': 'valve body',
	'old-hole': 'old hole',
	niche: 'niche'
};

/** The size notes are set in, and how many px a mm of the page has. */
const NOTE = { pt: 12, px: 96 / 25.4 } as const;

/** What is known behind a wall: studs and backing as hidden lines, what must not be drilled as hatched areas. */
export function behindShapes(c: Case, wall: WallId, view: ScreenView): readonly Shape[] {
	const { studs, backing, keepOuts } = c.enclosure.walls[wall];
	return [
		...Object.entries(backing).flatMap(([id, area]) => {
			const shape = areaShape(`backing/${id}`, known(area) ? 'hidden' : 'sketch2', area, view);
			return shape ? [shape] : [];
		}),
		...Object.entries(studs).map(([id, { x, width, how }]) => {
			const kind = how === 'measured' || how === 'observed' ? 'hidden' : 'sketch2';
			const [a, b] = [view.x(x - width / 2), view.x(x + width / 2)].map((n) => String(Math.round(n * 10) / 10));
			const [from, to] = [String(view.top), String(view.bottom)];
			return drawn(`stud/${id}`, kind, `M${a ?? ''} ${from}V${to}M${b ?? ''} ${from}V${to}`);
		}),
		...Object.entries(keepOuts).flatMap(([id, area]) => {
			const shape = areaShape(`keep-out/${id}`, 'keep-out', area, view);
			return shape ? [shape] : [];
		})
	];
}

/** Backing to be added for marks: an empty box of long dashes, and the wood it takes, clear of the word under what is later. */
export function toAddShapes(
	needed: readonly (NeededBacking & { readonly later: boolean })[],
	unit: LengthUnit,
	view: ScreenView
): { readonly boxes: readonly Shape[]; readonly words: readonly Shape[] } {
	const drawable = needed.flatMap(({ rect: area, thickness, later }, i) => {
		const box = areaShape(`to-add/${String(i)}`, 'to-add', area, view);
		return box ? [{ i, area, thickness, below: later ? 34 : 16, box }] : [];
	});
	return {
		boxes: drawable.map(({ box }) => box),
		words: drawable.map(({ i, area: { x0, y0, y1 }, thickness, below }) => {
			const [thick, high] = [thickness ?? 0, y1 - y0].map((n) => figure(n, unit));
			const says = thickness === undefined ? 'no wood carries this' : `add ${thick ?? ''} \u00d7 ${high ?? ''}`;
			return text(`words/to-add/${String(i)}`, 't-note soft halo', [view.x(x0) + 4, view.y(y0) + below], says);
		})
	};
}

/** The words for what is behind, each once. */
export function behindWords({ c, room }: Scene, wall: WallId, view: ScreenView): readonly Shape[] {
	const { studs, backing, keepOuts } = c.enclosure.walls[wall];
	const low = view.y(room.walls[wall].bottom) - 22;
	const words: { id: string; x: number; y: number; says: string }[] = [];
	const [stud] = Object.values(studs);
	if (stud) words.push({ id: 'stud', x: view.x(stud.x + stud.width / 2) + 6, y: low, says: 'stud' });
	const seen = (area: Rect): boolean => view.y(area.y0) > view.top + 4;
	for (const [id, area] of Object.entries(backing)) {
		if (!seen(area)) continue;
		const start = view.x(Math.max(area.x0, room.walls[wall].from));
		const load = area.kind === 'declared' ? `${String(area.load)} N` : '';
		const says = load === '' ? [area.kind] : [`reinforced, ${load} by its paper`, `${load} by its paper`, load];
		const placed = fitted(says, start, view);
		words.push({ id: `backing/${id}`, y: Math.min(view.y(area.y0) - 6, low), ...placed });
	}
	const said = new Set<string>();
	for (const [id, area] of Object.entries(keepOuts)) {
		if (said.has(area.kind) || area.kind === 'rod' || !seen(area)) continue;
		said.add(area.kind);
		const y = Math.max(view.y(area.y1) + 16, view.top + 40);
		words.push({
			id: `keep-out/${id}`,
			x: view.x(Math.max(area.x0, room.walls[wall].from)) + 6,
			y,
			says: KEEP_OUT_WORDS[area.kind] ?? area.kind
		});
	}
	return spread(words).map(({ id, x, y, says }) => text(`words/${id}`, 't-note soft halo', [x, y], says));
}

/** The longest of some words that ends inside the wall; set in where there is room, else from the edge. */
function fitted(words: readonly string[], start: number, { right }: ScreenView): { x: number; says: string } {
	const indents = [50, 6];
	const tries = words.flatMap((says) => indents.map((indent) => ({ x: start + indent, says })));
	const found = tries.find(({ x, says }) => x + widthOf(says, NOTE.pt) * NOTE.px < right - 4);
	return found ?? { x: start + 6, says: words.at(-1) ?? '' };
}

/** Words that would lie on others of the same line go down a line. */
function spread<W extends { x: number; y: number; says: string }>(words: readonly W[]): readonly W[] {
	const placed: W[] = [];
	for (const word of words) {
		const meets = (y: number) => (other: W) =>
			Math.abs(other.y - y) < LINE && word.x < other.x + wide(other) && other.x < word.x + wide(word);
		let { y } = word;
		while (placed.some(meets(y))) y += LINE;
		placed.push({ ...word, y });
	}
	return placed;
}

const LINE = 18;
const wide = ({ says }: { says: string }): number => widthOf(says, NOTE.pt) * NOTE.px + 6;

function areaShape(id: string, kind: string, area: Rect, view: ScreenView): Shape | undefined {
	const a = [view.x(area.x0), Math.max(view.y(area.y1), view.top)] as const;
	const b = [view.x(area.x1), Math.min(view.y(area.y0), view.bottom)] as const;
	if (b[1] - a[1] < 1) return undefined;
	return rect(id, kind, a, b);
}

function known(area: { readonly kind: string; readonly how?: string }): boolean {
	return area.kind === 'declared' || area.how === 'measured' || area.how === 'observed';
}
