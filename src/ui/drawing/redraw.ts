import { Circle, Path, Rect, SVG, Text, Tspan, type Container, type Element } from '@svgdotjs/svg.js';
import type { Shape } from './shape.ts';

/** What stands on the surface: each shape with its element. */
export type Standing = Map<string, { readonly shape: Shape; readonly element: Element }>;

/** A surface on an svg element of the page. */
export function surfaceOn(svg: SVGSVGElement): Container {
	return SVG(svg);
}

/**
 * Brings a surface to the shapes: one element an id, touched only where it changed, in the order of the shapes.
 * Only attributes are set: nothing is measured by the page.
 */
export function redraw(surface: Container, standing: Standing, shapes: readonly Shape[]): void {
	const wanted = new Set(shapes.map(({ id }) => id));
	for (const [id, { element }] of standing) {
		if (wanted.has(id)) continue;
		element.remove();
		standing.delete(id);
	}
	let before: Node | null = null;
	for (const shape of shapes) {
		const element = brought(surface, standing.get(shape.id), shape);
		standing.set(shape.id, { shape, element });
		before = inOrder(surface.node, element.node, before);
	}
}

function brought(surface: Container, had: { shape: Shape; element: Element } | undefined, shape: Shape): Element {
	if (had && same(had.shape, shape)) return had.element;
	if (had?.shape.tag === shape.tag && !shape.runs) {
		had.element.attr({ ...attrsOf(shape) });
		return had.element;
	}
	const made = elementFor(shape);
	if (had) had.element.replace(made);
	else made.addTo(surface);
	return made;
}

function elementFor(shape: Shape): Element {
	switch (shape.tag) {
		case 'path':
			return new Path().attr({ ...attrsOf(shape) });
		case 'circle':
			return new Circle().attr({ ...attrsOf(shape) });
		case 'rect':
			return new Rect().attr({ ...attrsOf(shape) });
		case 'text': {
			const element = new Text().attr({ ...attrsOf(shape) });
			for (const { text, attrs } of shape.runs ?? []) {
				const run = new Tspan().attr({ ...attrs });
				run.node.textContent = text;
				element.node.append(run.node);
			}
			return element;
		}
	}
}

function attrsOf({ about, attrs }: Shape): Readonly<Record<string, string | number>> {
	return about === undefined ? attrs : { ...attrs, 'data-about': about };
}

function inOrder(parent: Node, node: Node, before: Node | null): Node {
	const place = before ? before.nextSibling : parent.firstChild;
	if (place !== node) parent.insertBefore(node, place);
	return node;
}

function same(a: Shape, b: Shape): boolean {
	return JSON.stringify(a) === JSON.stringify(b);
}
