import type { Drawing, Entity, Path, Segment, Text } from '#core/drawing/entity.ts';
import { LAYERS, TONES, type Style } from '#core/drawing/layers.ts';
import { PT } from '#core/drawing/type.ts';

const FAMILY = "'Source Sans 3', 'Source Sans Pro', sans-serif";

/**
 * A drawing as an SVG file: one user unit is one mm, text stays text.
 * Units and frame: mm, y down. Shape: the same drawing gives the same bytes; coordinates to 1/10000 mm.
 */
export function svgOf({ title, size, entities }: Drawing): string {
	const [w, h] = [number(size.width), number(size.height)];
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" lang="en">`,
		`<title>${escaped(title)}</title>`,
		`<g stroke-linejoin="round" font-family="${FAMILY}" font-kerning="none" xml:space="preserve">`,
		...entities.map(element),
		'</g>',
		'</svg>',
		''
	].join('\n');
}

function element(e: Entity): string {
	const about = e.about === undefined ? '' : ` data-about="${escaped(e.about)}"`;
	const head = `id="${escaped(e.id)}"${about}`;
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

function text(t: Text, head: string): string {
	const anchor = t.anchor === 'start' ? '' : ` text-anchor="${t.anchor}"`;
	const weight = t.weight === 'semibold' ? ' font-weight="600"' : '';
	const place = `x="${number(t.at[0])}" y="${number(t.at[1])}" font-size="${number(t.size * PT)}"`;
	const open = `<text ${head} ${place}${weight}${anchor} fill="${TONES[t.tone]}"`;
	const [only, ...more] = t.runs;
	// A page without the font squeezes a line to its true width, so that nothing runs into its neighbour.
	if (only && more.length === 0)
		return `${open} textLength="${number(t.width)}" lengthAdjust="spacingAndGlyphs">${escaped(only.text)}</text>`;
	return `${open} aria-label="${escaped(t.text)}">${t.runs.map((_, i) => span(t, i)).join('')}</text>`;
}

function span({ runs }: Text, i: number): string {
	const [run, before] = [runs[i], runs[i - 1]];
	if (!run) return '';
	const dx = run.x - (before ? before.x + before.width : 0);
	const dy = (before?.rise ?? 0) - run.rise;
	const shift = (dx === 0 ? '' : ` dx="${number(dx)}"`) + (dy === 0 ? '' : ` dy="${number(dy)}"`);
	const weight = run.weight === 'semibold' ? '600' : '400';
	return `<tspan font-size="${number(run.size * PT)}" font-weight="${weight}"${shift}>${escaped(run.text)}</tspan>`;
}

const number = (n: number): string => String(Number(n.toFixed(4)) + 0);

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (s: string): string => s.replace(/[&<>"]/g, (c) => ENTITIES[c] ?? c);
