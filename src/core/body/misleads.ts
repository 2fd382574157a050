import type { Body } from './body.ts';

/** From this age on a spine may have shortened. Units: years. Source: widening of the estimates, ours. */
const SHORTENED = 60;

/**
 * Where an estimate of this body misleads, and what to measure instead; plain sentences with mm for `onTape`.
 * Source: regressions on stature, 0.30 mm of the height under the knee and 0.40 of the arm for each mm; the survey sat erect.
 */
export function misleadsIn({ person, dims, arms }: Body): readonly string[] {
	// Of somebody else only the reach from where they stand is looked at.
	if (person.role !== 'client') return [];
	const { stature, kneeHeight } = person.body;
	const old = person.age === undefined || person.age.value >= SHORTENED;
	const estimated = (one: { readonly how: string } | undefined): boolean => one?.how === 'estimated';
	const byStature = stature !== undefined && kneeHeight === undefined && old;
	return [
		...(byStature && estimated(dims.popliteal)
			? [
					'The height under the knee is estimated from stature. Spines shorten with age, legs do not: 60 mm lost put the seat 18 mm too low. Measure under the knee, or the knee sitting.'
				]
			: []),
		...(byStature && (estimated(arms.left.toGrip) || estimated(arms.right.toGrip))
			? [
					'An arm is estimated from stature. Spines shorten with age, arms do not: 60 mm lost make the arm 24 mm too short. Measure the arm.'
				]
			: []),
		...(estimated(dims.shoulderAboveSeat)
			? [
					'The shoulder above the seat is estimated from people who sat erect. Who sits slumped reaches lower: measure it as the client sits.'
				]
			: [])
	];
}
