import type { Mark } from '#core/case/accessory.ts';
import type { Question } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import type { Finding } from '#core/rules/row.ts';

/**
 * Findings after some marks moved: the rows that speak of them are asked again, the rest stays as it was.
 * Shape: `before` is what `judge` gives for the same rows; the result is what it would give for the marks.
 */
export function judgedBeside(
	{ scene, rows }: Question,
	before: readonly Finding[],
	{ marks, ids }: { readonly marks: readonly Mark[]; readonly ids: readonly string[] }
): readonly Finding[] {
	const touched = rows.flatMap(({ about }, i) => (about.some((id) => ids.includes(id)) ? [i] : []));
	const asked = touched.flatMap((i) => rows[i] ?? []);
	const said = judge(scene, asked, marks);
	const after = before.slice();
	touched.forEach((at, i) => {
		const finding = said[i];
		if (finding) after[at] = finding;
	});
	return after;
}
