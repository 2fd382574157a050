import { variantOf, type Accessory, type Mark } from '#core/case/accessory.ts';
import type { Question } from '#core/plan.ts';

/**
 * The marks of a case as they stand: given ones where the record has them, the others where they were last found.
 * Shape: in the order wanted; what shares the height line of a given one stands at its height.
 */
export function standingMarks({ scene, wanted }: Question, found: readonly Mark[]): readonly Mark[] {
	const { places } = scene.c;
	const heights = new Map(
		wanted.flatMap(({ id, line }) => (line && places[id] ? [[line, places[id].y] as const] : []))
	);
	return wanted.flatMap((accessory): Mark[] => {
		const given = places[accessory.id];
		if (given) {
			const { stage, ...place } = given;
			return [{ accessory, place, variant: variantOf(place.variant), stage }];
		}
		const mark = found.find((one) => one.accessory.id === accessory.id);
		return mark ? [free(mark, accessory, heights)] : [];
	});
}

function free(mark: Mark, accessory: Accessory, heights: ReadonlyMap<string, Mark['place']['y']>): Mark {
	const y = heights.get(accessory.line ?? '') ?? mark.place.y;
	return { ...mark, accessory, stage: 'proposed', place: { ...mark.place, y } };
}
