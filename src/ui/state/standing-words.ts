import { basisWords, statusWords } from '#core/words.ts';
import { gapWords } from './gap-words.ts';
import type { Underway } from './messages.ts';
import type { PlanState } from './plan-state.svelte.ts';

/** How the plan stands, in words. Lengths in mm, for `onTape`. */
export interface StandingWords {
	/** What the search says. */
	readonly says: string;
	/** What it rests on. */
	readonly basis: string;
}

/** How the plan stands: what the search says, and what it rests on. */
export function standingWords(plan: PlanState): StandingWords {
	if (plan.broke !== undefined) return { says: `The search broke off: ${plan.broke}`, basis: 'The last plan stays.' };
	if (plan.underway) return wordsOnTheWay(plan.underway);
	if (plan.emptyHanded) return { says: 'Stopped before any place was found', basis: 'What was there before stays.' };
	const { answered } = plan;
	if (!answered) return { says: 'Looking for places', basis: '' };
	const broken = brokenWords(plan);
	if (!plan.fresh) {
		const basis = `What is free was placed before this change and has not moved. ${broken}`;
		return { says: 'Judged as it stands', basis: basis.trim() };
	}
	const { status, cost, bound } = answered.placed;
	return {
		says: capital(statusWords(status)),
		basis: [
			status === 'impossible' || broken !== '' ? '' : `${capital(basisWords(plan.basis))}.`,
			status === 'bounded' ? gapWords(cost, bound) : '',
			status === 'optimal' ? heldWords(plan) : '',
			broken
		]
			.filter((words) => words !== '')
			.join(' ')
	};
}

function wordsOnTheWay({ evaluations, found, bound }: Underway): StandingWords {
	const asked = `${evaluations.toLocaleString('en-GB')} rows asked.`;
	return found
		? { says: 'Places found, looking for better ones', basis: `${gapWords(found.cost, bound)} ${asked}` }
		: { says: 'Looking for places', basis: asked };
}

/** What must hold and does not: only marks that were given can be so. */
function brokenWords({ judgedAtRest }: PlanState): string {
	const broken = judgedAtRest.filter(({ strength, answer }) => strength === 'must' && answer === 'outside').length;
	if (broken === 0) return '';
	return broken === 1 ? 'One thing that must be met is not.' : `${String(broken)} things that must be met are not.`;
}

function heldWords({ atRest }: PlanState): string {
	const held = atRest.filter(({ stage }) => stage !== 'proposed').length;
	return held > 0 ? `${String(held)} of ${String(atRest.length)} stand where they are held.` : '';
}

function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
