import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { together } from '#core/placement/nudge.ts';

/** A case in which everything stands held where it is, but free marks on the height line of one that may move. */
export function heldCase(c: Case, marks: readonly Mark[], mayMove: string): Case {
	const one = marks.find(({ accessory }) => accessory.id === mayMove);
	const held = marks.filter((mark) => mark.stage === 'proposed' && !(one && mark !== one && together(mark, one)));
	const places = Object.fromEntries(
		held.map(({ accessory, place }) => [accessory.id, { ...place, stage: 'pinned' as const }])
	);
	return { ...c, places: { ...c.places, ...places } };
}
