import { MEASURES } from '#core/measures/registry.ts';
import { limitsOf } from '#core/rules/limit.ts';
import type { BoundRow, Finding } from '#core/rules/row.ts';
import { asMissed, charge, PART_COUNT, PARTS, type Cost } from './cost.ts';

/** How far a finding is outside; 0 inside and where nothing is known. Units: as the measure, 1 for a yes/no row. */
export function shortOf({ row, answer, slack }: Finding): number {
	if (answer !== 'outside' && answer !== 'borderline') return 0;
	return MEASURES[row.measure].unit === 'yes' ? 1 : Math.max(0, -(slack ?? 0));
}

/** Whether a mark pays for little room to a limit of a row; where one figure alone is asked there is no room to have. */
export function asksRoom({ row, strength }: Pick<BoundRow, 'row' | 'strength'>): boolean {
	const { min, max } = limitsOf(row);
	return MEASURES[row.measure].slope === 1 && strength !== 'tie-break' && min !== max;
}

/**
 * What a shortfall counts at the strength of its row: a wish in whole 25 mm steps squared, a document in whole mm, a
 * must in mm as they are.
 */
export function counted({ row, strength }: Pick<BoundRow, 'row' | 'strength'>, short: number): number {
	if (strength === 'must') return short;
	const parts = new Array<number>(PART_COUNT).fill(0);
	charge(parts, strength, asMissed(row, short), MEASURES[row.measure].unit === 'yes' ? 'yes-no' : 'mm');
	return parts.reduce((a, b) => a + b, 0);
}

/**
 * What findings weigh together, to compare two plans whose marks are given or found alike.
 * Shape: broken musts, their mm, then the parts of a cost from wishes to documents; tie-breaks are left out.
 */
export function priceOf(findings: readonly Finding[]): Cost {
	const parts = new Array<number>(PART_COUNT).fill(0);
	let broken = 0;
	let mm = 0;
	for (const finding of findings) {
		const short = shortOf(finding);
		if (short === 0) continue;
		const unit = MEASURES[finding.row.measure].unit === 'yes' ? 'yes-no' : 'mm';
		if (finding.strength === 'must') {
			broken++;
			if (unit === 'mm') mm += short;
		} else charge(parts, finding.strength, asMissed(finding.row, short), unit);
	}
	return [broken, mm, ...parts.slice(0, PARTS.tie)];
}
