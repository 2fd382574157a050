import { caseSchema } from '#core/case/record.ts';
import type { Json } from '#core/log/json.ts';

/** Why a state cannot be a case, at one path: one sentence, or null when nothing is wrong there. */
export function refusalAt(state: Json, path: readonly string[], show: (n: number) => string): string | null {
	const read = caseSchema.safeParse(state);
	if (read.success) return null;
	const here = read.error.issues.find((issue) => path.every((key, i) => String(issue.path[i]) === key));
	const issue = here ?? read.error.issues[0];
	if (!issue) return null;
	if (issue.code === 'too_big') return `More than can be here: at most ${show(Number(issue.maximum))}.`;
	if (issue.code === 'too_small') return `Less than can be here: at least ${show(Number(issue.minimum))}.`;
	return issue.code === 'invalid_type' ? 'This is not a number that can stand here.' : `${issue.message}.`;
}
