import type { Drawing, Entity, Path, Segment, Text } from '#core/drawing/entity.ts';
import { LAYERS, TONES, type Style } from '#core/drawing/layers.ts';
import { PT, startOf, type Run } from '#core/drawing/type.ts';
import { refuseMissing } from './missing.ts';

const FAMILY = "'Source Sans 3', 'Source Sans Pro', sans-serif";

/**
 * A drawing as an SVG file: one user unit is one mm, text stays text.
 * Units and frame: mm, y down. Shape: the same drawing gives the same bytes; coordinates to 1/10000 mm.
 * Fails: GlyphMissing when the fonts lack a sign.
 */
export function svgOf(drawing: Drawing): string {
	refuseMissing([drawing]);
	const { title, size, entities, language = 'en' } = drawing;
	const [w, h] = [number(size.width), number(size.height)];
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" lang="${language}">`,
		`<title>${escaped(title)}</title>`,
		`<g stroke-linejoin="round" font-family="${FAMILY}" font-kerning="none">`,
		...entities.map(element),
		'</g>',
		'</svg>',
		''
	].join('\n');
}

function element(e: Entity): string {
	const about = e.about === undefined ? '' : ` data-about="${escaped(e.about)}"`;
	const head = `id="${named(e.id)}"${about}`;
	return e.kind === 'path' ? path(e, head) : text(e, head);
}

function path({ d, closed, layer }: Path, head: string): string {
	const style: Style = LAYERS[layer];
	const fill = style.fill ? TONES[style.fill] : 'none';
	const stroke = style.stroke ? ` stroke="${TONES[style.stroke]}" stroke-width="${number(style.width)}"` : '';
	const dash = style.dash ? ` stroke-dasharray="${style.dash.map(number).join(' ')}"` : '';
	return `<path ${head} d="${d.map(step).join('')}${closed ? 'Z' : ''}" fill="${fill}"${stroke}${dash}/>`;
}

function step(s: Segment): string {
	const to = s.to.map(number).join(' ');
	if (s.by === 'arc') return `A${number(s.radius)} ${number(s.radius)} 0 0 ${s.clockwise ? '1' : '0'} ${to}`;
	return `${s.by === 'move' ? 'M' : 'L'}${to}`;
}

/** A text is one element; a fraction is a group of its runs that is read aloud as one. */
function text(t: Text, head: string): string {
	const [only, ...more] = t.runs;
	if (!only) return '';
	if (more.length === 0) return run(t, only, ` ${head}`);
	return `<g ${head} role="img" aria-label="${escaped(t.text)}">${t.runs.map((each) => run(t, each, '')).join('')}</g>`;
}

function run(t: Text, { text: words, x, rise, size, weight, width }: Run, head: string): string {
	const place = `x="${number(startOf(t) + x)}" y="${number(t.at[1] - rise)}" font-size="${number(size * PT)}"`;
	const bold = weight === 'semibold' ? ' font-weight="600"' : '';
	// A page without the font squeezes a run to its true width, so that nothing runs into its neighbour.
	const length = `textLength="${number(width)}" lengthAdjust="spacingAndGlyphs"`;
	return `<text${head} ${place}${bold} fill="${TONES[t.tone]}" ${length}>${escaped(words)}</text>`;
}

const number = (n: number): string => String(Number(n.toFixed(4)) + 0);

/** An id without blanks, and without what XML has no sign for: each is told by its number. Source: XML 1.0, 2.2 and SVG 2, 5.3.1. */
const named = (id: string): string =>
	escaped(id.replace(/[\s\p{C}]/gu, (c) => `u${(c.codePointAt(0) ?? 0).toString(16)}.`));

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (s: string): string => s.replace(/[&<>"]/g, (c) => ENTITIES[c] ?? c);
