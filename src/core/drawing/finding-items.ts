import type { Plan } from '#core/plan.ts';
import { departureOf, mustBeSigned } from '#core/rules/departures.ts';
import { STRENGTHS, type Answer, type Finding } from '#core/rules/row.ts';
import { sentence } from '#core/rules/sentence.ts';
import type { Tape } from '#core/units/format.ts';
import type { Block } from './block.ts';
import { ANSWER_WORDS, glyph } from './glyph.ts';
import type { Item, List } from './item-list.ts';
import { lettersFor } from './setting-out.ts';
import { write } from './type.ts';

/** Answers that are told one by one, in this order; what is inside is only counted. */
const TOLD: readonly Answer[] = ['outside', 'borderline', 'unknown', 'ask'];

/** Heads under which findings are told. */
const HEADS = {
	must: 'Must be settled',
	wishes: 'Wishes not wholly met',
	document: 'Outside the range of the chosen document',
	judge: 'To judge on the spot'
} as const;

function headOf(plan: Plan, finding: Finding): keyof typeof HEADS {
	const { answer, strength, row } = finding;
	if (answer === 'ask') return mustBeSigned(plan.scene.c, finding) ? 'must' : 'judge';
	if (strength === 'must') return 'must';
	return row.origin === 'wish' ? 'wishes' : 'document';
}

/** Findings that belong on paper: habits of setting out stay off it. */
const onPaper = (plan: Plan): readonly Finding[] => plan.findings.filter((f) => f.strength !== 'tie-break');

/** Everything that is not inside, in groups, the strongest first, in the words every view uses. */
export function findingLists(plan: Plan, tape: Tape): readonly List[] {
	const rank = (f: Finding) => TOLD.indexOf(f.answer) * STRENGTHS.length + STRENGTHS.indexOf(f.strength);
	const told = onPaper(plan)
		.filter((f) => TOLD.includes(f.answer))
		.toSorted((a, b) => rank(a) - rank(b));
	return (['must', 'wishes', 'document', 'judge'] as const).map((head) => ({
		id: `findings/${head}`,
		title: HEADS[head],
		items: told.filter((f) => headOf(plan, f) === head).map((f) => itemOf(plan, f, tape))
	}));
}

function itemOf(plan: Plan, f: Finding, tape: Tape): Item {
	const reason = departureOf(plan.scene.c, f);
	const accepted = reason === undefined ? '' : ` Accepted: ${reason}`;
	const { document, edition, clause } = f.row;
	// What is ours carries a running number, which says nothing on paper.
	const source = `${document}${/^\d{4}/.test(edition) ? ` ${edition}` : ''}, ${clause}`;
	return { letters: lettersFor(plan, f.about), says: sentence(f, tape) + accepted, note: source, answer: f.answer };
}

/** How many findings have each answer, shape, number and word. */
export function findingCounts(plan: Plan): Block {
	const counted = onPaper(plan);
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
