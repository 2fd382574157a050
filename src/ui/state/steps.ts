/** A place on the path of a case. */
export type StepId = 'person' | 'enclosure' | 'places' | 'sheets';

/** How far a step is: drawn as a tick on the datum line. */
export type StepState = 'done' | 'open' | 'here' | 'ahead';

/** The steps of the path that work, in order. */
export const STEPS: readonly { readonly id: StepId; readonly name: string }[] = [
	{ id: 'person', name: 'Person' },
	{ id: 'enclosure', name: 'Enclosure' },
	{ id: 'places', name: 'Places' },
	{ id: 'sheets', name: 'Sheets' }
];

/** The step an address names; the first one when it names none. */
export function stepOf(text: string | null): StepId {
	return STEPS.find(({ id }) => id === text)?.id ?? 'person';
}
