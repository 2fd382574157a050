import type { Mark } from '#core/case/accessory.ts';
import { MEASURES } from '#core/measures/registry.ts';
import { STRENGTHS, type Finding } from '#core/rules/row.ts';
import { counted, shortOf } from './price.ts';
import { called, outBy } from './told.ts';
import { fallen } from './worse.ts';

/** What changes from one plan to another, strongest and most first, in plain sentences with mm for `onTape`. */
export interface Changes {
	readonly worse: readonly string[];
	readonly better: readonly string[];
}

/** The most changes of a kind that are told. */
const MOST = 3;
/** A change of fewer mm than this is not told while the answer stays. Source: what a hand can mark, ours. */
const TOLD = 5;
const COUNTING = ['must', 'should', 'prefer'];

interface Change {
	readonly was: Finding;
	readonly is: Finding;
	/** How much more it counts; negative when less. */
	readonly more: number;
}

const countOf = (f: Finding): number => counted(f, shortOf(f));

function standing(f: Finding): string {
	if (f.answer === 'unknown') return 'not known';
	const short = shortOf(f);
	if (f.answer === 'not-here') return 'nothing to judge';
	if (short === 0) return 'met';
	return MEASURES[f.row.measure].unit === 'yes' || f.slack === undefined ? 'not met' : `${outBy(short)} outside`;
}

function told({ was, is }: Change, marks: readonly Mark[]): string {
	const names = is.about.flatMap((id) => marks.find((m) => m.accessory.id === id) ?? []).map(called);
	const about = names.length > 0 ? ` (${names.join(', ')})` : '';
	return `${is.row.says.replace(/\.$/, '')}${about}: ${standing(is)}, in the plan ${standing(was)}.`;
}

/** What counts more and what counts less in another plan: musts, wishes and document rows; habits are left out. */
export function changesBetween(before: readonly Finding[], after: readonly Finding[], marks: readonly Mark[]): Changes {
	const key = (f: Finding) => `${f.row.id}/${f.about.join('+')}/${f.strength}`;
	const old = new Map(before.map((f) => [key(f), f]));
	const all = after.flatMap((is): Change[] => {
		const was = old.get(key(is));
		if (!was || !COUNTING.includes(is.strength) || is.answer === 'ask') return [];
		const more = countOf(is) - countOf(was);
		const told = fallen(was, is) !== 0 || Math.abs(shortOf(is) - shortOf(was)) >= TOLD;
		return told ? [{ was, is, more }] : [];
	});
	// As plans are compared: by strength, and inside a strength rows of yes or no before mm.
	const rank = ({ is: { row, strength } }: Change) =>
		2 * STRENGTHS.indexOf(strength) + (MEASURES[row.measure].unit === 'yes' ? 0 : 1);
	const by = ({ was, is }: Change) => fallen(was, is) || shortOf(is) - shortOf(was);
	const grew = all.filter((c) => by(c) > 0);
	const shrank = all.filter((c) => by(c) < 0);
	const say = (list: readonly Change[]) =>
		list
			.toSorted((a, b) => rank(a) - rank(b) || Math.abs(b.more) - Math.abs(a.more))
			.slice(0, MOST)
			.map((c) => told(c, marks));
	return { worse: say(grew), better: say(shrank) };
}
