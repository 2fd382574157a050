import type { Cell } from './spec.ts';

/** The language of her own sheets; English where nobody chose. Its path begins at the record. */
export const LANGUAGE: Cell = {
	id: 'language',
	label: 'Her sheets in',
	hint: 'What she and her family read at home. English when nobody says.',
	fields: [
		{
			kind: 'choice',
			label: 'Her sheets in',
			path: ['language'],
			plain: true,
			choices: [
				{ value: 'en', label: 'English' },
				{ value: 'es', label: 'Spanish' },
				{ value: 'fr', label: 'French' }
			]
		}
	]
};
