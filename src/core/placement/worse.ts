import type { Answer, BoundRow, Finding } from '#core/rules/row.ts';
import { counted, shortOf } from './price.ts';

const RANK: readonly Answer[] = ['inside', 'borderline', 'unknown', 'outside'];

/** Strengths that place a mark; reported rows never do. */
export const STEERING = ['must', 'should', 'prefer', 'tie-break'] as const;

/** What is not here, or only asked, stands like what is inside. */
const rank = ({ answer }: Finding): number => Math.max(0, RANK.indexOf(answer));

/** How many answers a finding has gone down; negative when it went up. */
export const fallen = (was: Finding, is: Finding): number => rank(is) - rank(was);

/** True when an answer is less good, or its shortfall grew at all. */
export const worse = (was: Finding, is: Finding): boolean => fallen(was, is) > 0 || shortOf(is) > shortOf(was) + 1e-9;

/** True when an answer is less good, or its shortfall counts more at its strength. */
export const countsMore = (was: Finding, is: Finding): boolean =>
	fallen(was, is) > 0 || (fallen(was, is) === 0 && counted(is, shortOf(is)) > counted(was, shortOf(was)) + 1e-9);

/** True when two findings are of one bound row. */
export const sameRow = (a: BoundRow | Finding, b: BoundRow | Finding): boolean =>
	a.row.id === b.row.id && a.later === b.later && a.strength === b.strength && a.about.join() === b.about.join();
