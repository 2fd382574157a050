import type { Case } from '#core/case/record.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import type { Cell, Choice, ChoiceField } from './spec.ts';

const REFERENCE: ChoiceField = {
	kind: 'choice',
	label: 'Reference document',
	path: ['reference'],
	plain: true,
	needed: true,
	choices: [
		...DOCUMENTS.map(({ id, name, scope }): Choice => ({
			value: id,
			label: name,
			...(scope && { short: scope.short })
		})),
		{ value: null, label: 'none' }
	],
	// Without a document only the person can lead.
	along: { null: [{ path: ['lead'], to: 'person-led' }] }
};

const LEAD: ChoiceField = {
	kind: 'choice',
	label: 'Led by',
	path: ['lead'],
	plain: true,
	needed: true,
	choices: [
		{ value: 'person-led', label: 'the person' },
		{ value: 'reference-led', label: 'the document' }
	]
};

const CATEGORY: ChoiceField = {
	kind: 'choice',
	label: 'Category of dwelling',
	path: ['enclosure', 'category'],
	choices: [
		{ value: 'm4-2', label: 'M4(2), accessible and adaptable', short: 'M4(2)' },
		{ value: 'm4-3-adaptable', label: 'M4(3)(2)(a), wheelchair adaptable', short: 'M4(3)(2)(a)' },
		{ value: 'm4-3-accessible', label: 'M4(3)(2)(b), wheelchair accessible', short: 'M4(3)(2)(b)' }
	],
	how: 'told'
};

const cell = (id: string, hint: string, field: ChoiceField): Cell => ({
	id,
	label: field.label,
	hint,
	fields: [field]
});

/** Which document the plan is held against, and whether it leads; the category is asked where that document has some, or is recorded. */
export function referenceCells({ reference, lead, enclosure }: Case): readonly Cell[] {
	const follows = reference !== null || lead === 'reference-led';
	const categories = reference === 'uk-adm-1' || enclosure.category !== undefined;
	return [
		cell('reference', 'What places are held against; none of them binds a private home by itself.', REFERENCE),
		...(categories ? [cell('category', 'What a planning condition asks of this new dwelling.', CATEGORY)] : []),
		...(follows ? [cell('lead', 'What gives way first when not everything can be had.', LEAD)] : [])
	];
}
