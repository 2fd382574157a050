import { basisWords, statusWords } from '#core/words.ts';
import type { PlanState } from './plan-state.svelte.ts';

/** How the plan stands, in words: what the search says, and what it rests on. */
export function standingWords(plan: PlanState): { readonly says: string; readonly basis: string } {
	if (plan.broke !== undefined) return { says: `The search broke off: ${plan.broke}`, basis: 'The last plan stays.' };
	if (plan.searching !== undefined) {
		const says = plan.marks.length === 0 ? 'Looking for places' : 'Places found, looking for better ones';
		return { says, basis: `${plan.searching.toLocaleString('en-GB')} looked at` };
	}
	const { answered } = plan;
	if (!answered) return { says: 'Looking for places', basis: '' };
	return {
		says: capital(statusWords(answered.placed.status)),
		basis: plan.plan ? capital(basisWords(plan.plan.basis)) : ''
	};
}

function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
