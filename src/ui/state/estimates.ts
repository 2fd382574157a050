import type { Body } from '#core/body/body.ts';
import type { Estimate } from '#core/body/estimate.ts';
import type { Field } from '#ui/fields/spec.ts';

/** What stands in for a dimension of a person while nobody measured it; undefined where only measuring helps. */
export function estimateFor(bodies: Readonly<Record<string, Body>>, field: Field): Estimate | undefined {
	const [root, id = ''] = field.path;
	if (field.kind !== 'number' || field.dimension === undefined || root !== 'people') return undefined;
	const body = bodies[id];
	if (field.dimension === 'left' || field.dimension === 'right') return body?.arms[field.dimension].toGrip;
	return (body?.dims as Readonly<Record<string, Estimate>> | undefined)?.[field.dimension];
}
