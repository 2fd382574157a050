import type { Rect, WallPoint } from '#core/geometry/vec.ts';

interface Grid {
	readonly columns: number;
	readonly rows: number;
	readonly point: (i: number, j: number) => WallPoint;
	readonly value: (i: number, j: number) => number;
}

const cells = (length: number, step: number): number => Math.max(1, Math.ceil(length / step - 1e-9));

// One ring of nodes more than the window, laid on its edge and valued outside: so every line closes within the window.
function gridOf(slackAt: (x: number, y: number) => number, window: Rect, step: number): Grid {
	const inner = { i: cells(window.x1 - window.x0, step), j: cells(window.y1 - window.y0, step) };
	const within = (k: number, most: number): number => Math.min(most, Math.max(0, k - 1)) / most;
	const point = (i: number, j: number): WallPoint => [
		window.x0 + (window.x1 - window.x0) * within(i, inner.i),
		window.y0 + (window.y1 - window.y0) * within(j, inner.j)
	];
	const [columns, rows] = [inner.i + 3, inner.j + 3];
	const values = Array.from({ length: columns * rows }, (_, k) => {
		const [i, j] = [k % columns, Math.floor(k / columns)];
		const ring = i === 0 || j === 0 || i === columns - 1 || j === rows - 1;
		return ring ? -1 : slackAt(...point(i, j));
	});
	return { columns, rows, point, value: (i, j) => values[j * columns + i] ?? -1 };
}

type Corner = readonly [number, number];
interface Crossing {
	readonly key: string;
	readonly at: WallPoint;
}

function crossing(grid: Grid, a: Corner, b: Corner): Crossing {
	const [va, vb] = [grid.value(...a), grid.value(...b)];
	const [[ax, ay], [bx, by]] = [grid.point(...a), grid.point(...b)];
	const t = va / (va - vb);
	const [first, last] = a[0] + a[1] < b[0] + b[1] ? [a, b] : [b, a];
	return { key: `${String(first)} ${String(last)}`, at: [ax + (bx - ax) * t, ay + (by - ay) * t] };
}

// Lines of one cell, each from where the walk round the cell comes out of the set to where it goes back in.
function linesOf(grid: Grid, i: number, j: number): readonly (readonly [Crossing, Crossing])[] {
	const corners: readonly Corner[] = [
		[i, j],
		[i + 1, j],
		[i + 1, j + 1],
		[i, j + 1]
	];
	const values = corners.map((corner) => grid.value(...corner));
	const leaving: Crossing[] = [];
	const entering: Crossing[] = [];
	corners.forEach((a, k) => {
		const b = corners[(k + 1) % 4] ?? a;
		const [from, to] = [(values[k] ?? -1) >= 0, (values[(k + 1) % 4] ?? -1) >= 0];
		if (from && !to) leaving.push(crossing(grid, a, b));
		if (!from && to) entering.push(crossing(grid, a, b));
	});
	// On a saddle the middle of the cell decides whether its two corners inside belong together.
	const middle = values.reduce((sum, v) => sum + v, 0);
	const inOrder = (values[0] ?? -1) >= 0 === middle >= 0;
	return leaving.flatMap((out, k) => {
		const back = leaving.length === 1 || inOrder ? entering[k] : entering[1 - k];
		return back ? [[out, back] as const] : [];
	});
}

function closed(start: string, next: Map<string, { readonly to: string; readonly at: WallPoint }>): WallPoint[] {
	const line: WallPoint[] = [];
	for (let key = start, step = next.get(key); step; key = step.to, step = next.get(key)) {
		next.delete(key);
		line.push(step.at);
	}
	// On the edge of the window neighbours fall together.
	return line.filter(([x, y], k) => {
		const before = line.at(k - 1);
		return before?.[0] !== x || before[1] !== y;
	});
}

/**
 * The outline of where a slack is 0 or more, within a window.
 * Units and frame: mm, wall frame; `step` is the widest mesh.
 * Shape: closed lines, the first point not repeated; the set lies to the left, so holes turn the other way; ordered from
 * the lowest, then leftmost.
 */
export function contourOn(
	slackAt: (x: number, y: number) => number,
	window: Rect,
	step: number
): readonly (readonly WallPoint[])[] {
	const grid = gridOf(slackAt, window, step);
	const next = new Map<string, { readonly to: string; readonly at: WallPoint }>();
	for (let j = 0; j < grid.rows - 1; j++)
		for (let i = 0; i < grid.columns - 1; i++)
			for (const [from, to] of linesOf(grid, i, j)) next.set(from.key, { to: to.key, at: from.at });
	return [...next.keys()].map((key) => closed(key, next)).filter((line) => line.length > 2);
}
