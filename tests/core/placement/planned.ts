import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase, mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import { place } from '#core/placement/place.ts';
import { questionOf, turned, type Question } from '#core/plan.ts';

/** The example clients, by folder. */
export const CLIENTS = [
	'first-flat',
	'one-good-hand',
	'stands-for-now',
	'stands-then-tires',
	'strong-walls',
	'turns-left',
	'water-by-her-son',
	'wheeled-in'
] as const;

/** Rows a search may ask before its plan in hand is looked at: what a therapist sees within seconds. */
const ENOUGH = 1_200_000;

/** A case's question and the plan in hand, in the client's own room. Shape: no marks where nothing meets every must. */
export function planned(c: Case, enough = ENOUGH): Question & { readonly marks: readonly Mark[] } {
	const own = questionOf(c);
	const solved = turned(c) ? questionOf(mirroredCase(c)) : own;
	const run = place(solved.scene, solved.rows, solved.wanted);
	let step = run.next();
	while (!step.done && !(step.value.found && step.value.evaluations > enough)) step = run.next();
	const marks = step.done ? step.value.marks : (step.value.found?.marks ?? []);
	const back = (mark: Mark): Mark => {
		const accessory = own.wanted.find((a) => a.id === mark.accessory.id) ?? mark.accessory;
		if (solved === own) return mark;
		const there = mirroredPlace(mark.place, solved.scene.room.footprint);
		return { ...mark, accessory, place: there, variant: variantOf(there.variant) };
	};
	return { ...own, marks: marks.map(back) };
}
