import type { Drawing, Entity, Path, Segment, Text } from '#core/drawing/entity.ts';
import { LAYERS, TONES, type Style } from '#core/drawing/layers.ts';
import { PT } from '#core/drawing/type.ts';
import type { Run, Shape } from './shape.ts';

/** A sheet as shapes of the screen; what is paper shows on any light of the screen. Units: mm of the sheet. */
export function sheetShapes({ entities }: Drawing): readonly Shape[] {
	return entities.map((entity: Entity, i) => {
		const shape = entity.kind === 'path' ? pathShape(entity) : textShape(entity);
		// A sheet may draw one thing twice; on a surface every id stands once.
		return { ...shape, id: `${entity.id} ${String(i)}` };
	});
}

function pathShape({ id, d, closed, layer }: Path): Shape {
	const style: Style = LAYERS[layer];
	const attrs: Record<string, string | number> = {
		d: pathData(d, closed),
		fill: style.fill ? TONES[style.fill] : 'none'
	};
	if (style.stroke) {
		attrs['stroke'] = TONES[style.stroke];
		attrs['stroke-width'] = style.width;
		attrs['stroke-linejoin'] = 'round';
	}
	if (style.dash) attrs['stroke-dasharray'] = style.dash.join(' ');
	return { id, tag: 'path', attrs };
}

/** Steps of a path as a screen writes them. */
export const pathData = (d: readonly Segment[], closed: boolean): string =>
	`${d.map(step).join('')}${closed ? 'Z' : ''}`;

function step(s: Segment): string {
	const to = `${String(s.to[0])} ${String(s.to[1])}`;
	if (s.by === 'arc') return `A${String(s.radius)} ${String(s.radius)} 0 0 ${s.clockwise ? '1' : '0'} ${to}`;
	return `${s.by === 'move' ? 'M' : 'L'}${to}`;
}

const WEIGHTS = { regular: 400, semibold: 600 } as const;

function textShape(t: Text): Shape {
	return {
		id: t.id,
		tag: 'text',
		attrs: {
			class: `on-paper tone-${t.tone}`,
			x: t.at[0],
			y: t.at[1],
			'font-size': t.size * PT,
			'font-weight': WEIGHTS[t.weight],
			'text-anchor': t.anchor
		},
		runs: t.runs.map((run, i) => {
			const before = t.runs[i - 1];
			const attrs: Record<string, string | number> = {
				'font-size': run.size * PT,
				'font-weight': WEIGHTS[run.weight],
				dx: run.x - (before ? before.x + before.width : 0),
				dy: (before?.rise ?? 0) - run.rise
			};
			return { text: run.text, attrs } satisfies Run;
		})
	};
}
