import type { Plan } from './plan.ts';

/** How a search ended, in words for people. */
export function statusWords(status: Plan['status']): string {
	switch (status) {
		case 'optimal':
			return 'no better place on these figures';
		case 'bounded':
			return 'good places, the search was stopped before the proof';
		case 'impossible':
			return 'no place meets everything that must be met';
		case 'given':
			return 'every place was given and is judged as it stands';
	}
}

/** What a plan rests on, in words for people. */
export function basisWords(basis: Plan['basis']): string {
	return basis === 'settled' ? 'settled' : 'provisional, because something is not known';
}
