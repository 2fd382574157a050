import { expect, test } from 'vitest';
import { redraw, surfaceOn, type Standing } from '#ui/drawing/redraw.ts';
import { circle, path, text, type Shape } from '#ui/drawing/shape.ts';

function surface() {
	const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
	const standing: Standing = new Map();
	const root = surfaceOn(svg);
	return {
		svg,
		draw: (shapes: readonly Shape[]) => {
			redraw(root, standing, shapes);
		}
	};
}

const LINE = path('line', 'fine', [
	[0, 0],
	[10, 0]
]);

test('[drawing-on-screen R1] an element is touched only when its shape changed', () => {
	const { svg, draw } = surface();
	draw([LINE, circle('dot', 'ink', [5, 5], 2)]);
	const [line, dot] = svg.children;
	const changes: string[] = [];
	const watch = new MutationObserver((seen) => {
		changes.push(...seen.map(({ target }) => target.nodeName));
	});
	watch.observe(svg, { attributes: true, childList: true, subtree: true });
	draw([LINE, circle('dot', 'ink', [6, 5], 2)]);
	const seen = watch.takeRecords().map(({ target }) => target.nodeName);
	expect([...svg.children]).toEqual([line, dot]);
	expect(dot?.getAttribute('cx')).toBe('6');
	expect(new Set([...changes, ...seen])).toEqual(new Set(['circle']));
});

test('[drawing-on-screen R2] what is gone goes, what is new comes in its place in the order', () => {
	const { svg, draw } = surface();
	draw([LINE, circle('dot', 'ink', [5, 5], 2)]);
	draw([circle('new', 'ink', [1, 1], 1), circle('dot', 'ink', [5, 5], 2)]);
	expect([...svg.children].map((e) => e.getAttribute('cx'))).toEqual(['1', '5']);
});

test('[drawing-on-screen R3] a fraction is a run of its own', () => {
	const { svg, draw } = surface();
	draw([text('figure', 't-text', [0, 0], '19 1/4')]);
	expect(svg.textContent).toBe('19 1/4');
	expect(svg.querySelector('.frac')?.textContent).toBe('1/4');
});
