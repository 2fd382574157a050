import type { Case } from '#core/case/record.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
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

/** The words for what is behind, each once. */
export function behindWords(c: Case, wall: WallId, view: ScreenView): readonly Shape[] {
	const { studs, backing, keepOuts } = c.enclosure.walls[wall];
	const low = view.bottom - 22;
	const words: { id: string; x: number; y: number; says: string }[] = [];
	const [stud] = Object.values(studs);
	if (stud) words.push({ id: 'stud', x: view.x(stud.x + stud.width / 2) + 6, y: low, says: 'stud' });
	const seen = (area: Rect): boolean => view.y(area.y0) > view.top + 4;
	for (const [id, area] of Object.entries(backing)) {
		if (!seen(area)) continue;
		const says = area.kind === 'declared' ? `reinforced, ${String(area.load)} N by its paper` : area.kind;
		words.push({
			id: `backing/${id}`,
			x: view.x(Math.max(area.x0, 0)) + 50,
			y: Math.min(view.y(area.y0) - 6, low),
			says
		});
	}
	const said = new Set<string>();
	for (const [id, area] of Object.entries(keepOuts)) {
		if (said.has(area.kind) || area.kind === 'rod' || !seen(area)) continue;
		said.add(area.kind);
		const y = Math.max(view.y(area.y1) + 16, view.top + 40);
		words.push({
			id: `keep-out/${id}`,
			x: view.x(Math.max(area.x0, 0)) + 6,
			y,
			says: KEEP_OUT_WORDS[area.kind] ?? area.kind
		});
	}
	return words.map(({ id, x, y, says }) => text(`words/${id}`, 't-note soft halo', [x, y], says));
}

function areaShape(id: string, kind: string, area: Rect, view: ScreenView): Shape | undefined {
	const a = [view.x(area.x0), Math.max(view.y(area.y1), view.top)] as const;
	const b = [view.x(area.x1), Math.min(view.y(area.y0), view.bottom)] as const;
	if (b[1] - a[1] < 1) return undefined;
	return rect(id, kind, a, b);
}

function known(area: { readonly kind: string; readonly how?: string }): boolean {
	return area.kind === 'declared' || area.how === 'measured' || area.how === 'observed';
}
