import type { Plan } from '#core/plan.ts';
import { departureOf } from '#core/report.ts';
import { STRENGTHS, type Answer, type Finding } from '#core/rules/row.ts';
import { sentence } from '#core/rules/sentence.ts';
import type { Tape } from '#core/units/format.ts';
import type { Block } from './block.ts';
import { ANSWER_WORDS, glyph } from './glyph.ts';
import type { Item } from './item-list.ts';
import { lettersFor } from './setting-out.ts';
import { write } from './type.ts';

/** Answers that are told one by one, in this order; what is inside is only counted. */
const TOLD: readonly Answer[] = ['outside', 'borderline', 'unknown', 'ask'];

/** Findings that are read together, by what they ask of the reader. Habits of setting out stay off the paper. */
export const GROUPS = [
	{ id: 'must', head: 'Must be settled', has: (f: Finding) => f.strength === 'must' },
	{
		id: 'wishes',
		head: 'Wishes not wholly met',
		has: (f: Finding) => f.strength !== 'must' && f.row.origin === 'wish'
	},
	{
		id: 'document',
		head: 'Outside the range of a clause, or to ask',
		has: (f: Finding) => !['must', 'tie-break'].includes(f.strength) && f.row.origin !== 'wish'
	}
] as const;

/** Everything of a group that is not inside, the strongest first, in the words every view uses. */
export function findingItems(plan: Plan, tape: Tape, group: (typeof GROUPS)[number]): readonly Item[] {
	const rank = (f: Finding) => TOLD.indexOf(f.answer) * STRENGTHS.length + STRENGTHS.indexOf(f.strength);
	return plan.findings
		.filter((f) => TOLD.includes(f.answer) && group.has(f))
		.toSorted((a, b) => rank(a) - rank(b))
		.map((f) => {
			const reason = departureOf(plan.scene, f.row.id, f.about);
			const accepted = reason === undefined ? '' : ` Accepted: ${reason}`;
			const { document, edition, clause } = f.row;
			// What is ours carries a running number, which says nothing on paper.
			const source = `${document}${/^\d{4}/.test(edition) ? ` ${edition}` : ''}, ${clause}`;
			return { letters: lettersFor(plan, f.about), says: sentence(f, tape) + accepted, note: source, answer: f.answer };
		});
}

/** How many findings have each answer, shape, number and word. */
export function findingCounts(plan: Plan): Block {
	const counted = plan.findings.filter((f) => GROUPS.some(({ has }) => has(f)));
	const answers = (['inside', ...TOLD] as const).filter((a) => counted.some((f) => f.answer === a));
	return {
		height: 5.4 * answers.length,
		draw: (x, y) =>
			answers.flatMap((answer, i) => {
				const count = counted.filter((f) => f.answer === answer).length;
				const base = y + 5.4 * i + 3.6;
				return [
					...glyph(`counts/${answer}`, answer, [x + 2.2, base - 1.3]),
					write(`counts/${answer}/word`, `${String(count)} ${ANSWER_WORDS[answer]}`, [x + 6, base], { size: 10.5 })
				];
			})
	};
}
