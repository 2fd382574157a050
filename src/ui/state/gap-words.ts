import { PARTS } from '#core/placement/cost.ts';

/** What a search leaves open between the plan in hand and what no plan goes below; empty where nothing is. */
export function gapWords(cost: readonly number[], bound: readonly number[]): string {
	const at = (part: keyof typeof PARTS): number => (cost[PARTS[part]] ?? 0) - (bound[PARTS[part]] ?? 0);
	if (at('shouldNo') !== 0) return 'One with more wishes met may exist.';
	if (at('should') !== 0) return 'One nearer to the wishes may exist.';
	if (at('preferNo') !== 0) return 'One that meets more of the document may exist.';
	if (at('prefer') !== 0) return `One nearer to the document, by ${String(at('prefer'))} mm at most, may exist.`;
	return at('tie') !== 0 ? 'Only rounder figures may still be found.' : '';
}
