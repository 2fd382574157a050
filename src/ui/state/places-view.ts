import type { Mark } from '#core/case/accessory.ts';
import type { Finding } from '#core/rules/row.ts';
import { weightiest } from '#ui/panels/answers.ts';
import type { Lettered } from '#ui/drawing/balloon-shapes.ts';
import type { Question } from '#core/plan.ts';

const COUNTS: readonly string[] = ['must', 'should', 'prefer'];

/** Letter of the nth accessory wanted, the same as on the sheets: A to Z, then A2. */
function letterOf(n: number): string {
	return String.fromCharCode(65 + (n % 26)) + (n < 26 ? '' : String(Math.floor(n / 26) + 1));
}

/**
 * Marks with their letters, the answer that weighs most of what must be and of the documents, and how many wishes are
 * not met: a wish that gives way is a choice, not a fault.
 */
export function letteredMarks(
	{ wanted }: Question,
	marks: readonly Mark[],
	findings: readonly Finding[]
): readonly Lettered[] {
	return wanted.flatMap(({ id }, i) => {
		const mark = marks.find(({ accessory }) => accessory.id === id);
		if (!mark) return [];
		const about = findingsAbout(findings, id);
		const binding = about.filter(
			({ strength, row, answer }) => answer !== 'ask' && (strength === 'must' || row.origin === 'document')
		);
		const wishes = about.filter(({ row, answer }) => row.origin === 'wish' && answer === 'outside').length;
		return [{ mark, letter: letterOf(i), answer: weightiest(binding.map(({ answer }) => answer)), wishes }];
	});
}

/** What steering rows say about one accessory. */
export function findingsAbout(findings: readonly Finding[], id: string): readonly Finding[] {
	return findings.filter(
		({ about, strength, answer }) => about.includes(id) && COUNTS.includes(strength) && answer !== 'not-here'
	);
}
