import type { Case } from '#core/case/record.ts';
import type { Finding } from './row.ts';

/** What is recorded for a finding: why outside is accepted, or what was answered; nothing where nothing is. */
export const departureOf = ({ departures }: Case, { row, about }: Pick<Finding, 'row' | 'about'>): string | undefined =>
	departures[`${row.id}/${about[0] ?? 'case'}`]?.reason;

/** What somebody named is still to be asked: what it is about waits for it. */
export const waits = (c: Case, finding: Finding): boolean =>
	finding.answer === 'ask' && finding.row.whom !== undefined && departureOf(c, finding) === undefined;

/** What a document asks is judged on the spot; what the plan itself asks stays open until it is answered in the record. */
export const mustBeSigned = (c: Case, finding: Finding): boolean => {
	const { answer, strength, row } = finding;
	return (
		answer === 'ask' &&
		strength === 'must' &&
		row.origin !== 'document' &&
		(row.whom === undefined || waits(c, finding))
	);
};
